//! Systems stand for revisions, and opening another recipe changes no comparison in silence.

use haulm::domain::compare::draft::{CompareDraft, OpenRecipeChange};
use haulm::domain::compare::system_choice::SystemChoice;

fn revision(id: &str) -> SystemChoice {
    SystemChoice::Revision(id.to_owned())
}

#[test]
fn a_choice_is_read_back_from_its_key() {
    for choice in [
        SystemChoice::OpenRecipe,
        SystemChoice::Library("uf".to_owned()),
        SystemChoice::OwnSystem("0a".to_owned()),
        revision("0b"),
    ] {
        assert_eq!(SystemChoice::parse(&choice.key()), Some(choice.clone()));
        let text = serde_json::to_string(&choice).unwrap();
        assert_eq!(serde_json::from_str::<SystemChoice>(&text).unwrap(), choice);
    }
    for key in ["", "uf", "recipe:0a", "library:", "revision"] {
        assert_eq!(SystemChoice::parse(key), None, "{key}");
    }
}

/// Revisions whose ids begin with the same letter are of one recipe.
fn same(one: &str, other: &str) -> bool {
    one.chars().next() == other.chars().next()
}

fn comparing() -> CompareDraft {
    let mut typed = CompareDraft {
        systems: vec![SystemChoice::OpenRecipe, SystemChoice::Library("uf".to_owned())],
        reference: Some(SystemChoice::OpenRecipe),
        ..CompareDraft::default()
    };
    typed.solve.system = Some(SystemChoice::OpenRecipe);
    assert_eq!(typed.follow_open(Some("a1"), same), OpenRecipeChange::Same);
    typed
}

#[test]
fn a_save_of_the_open_recipe_changes_nothing() {
    let mut typed = comparing();
    assert_eq!(typed.follow_open(Some("a1"), same), OpenRecipeChange::Same);
    assert_eq!(typed.follow_open(Some("a2"), same), OpenRecipeChange::Same);
    assert_eq!((typed.systems[0].clone(), typed.conditions), (SystemChoice::OpenRecipe, None));
}

#[test]
fn another_open_recipe_leaves_the_compared_revision_in_place() {
    for now in [Some("b1"), None] {
        let mut typed = comparing();
        assert_eq!(typed.follow_open(now, same), OpenRecipeChange::Kept);
        assert_eq!(typed.systems, [revision("a1"), SystemChoice::Library("uf".to_owned())]);
        assert_eq!((typed.reference.clone(), typed.solve.system.clone()), (Some(revision("a1")), Some(revision("a1"))));
        // The library's systems stay on that recipe's fibre, board and line.
        assert_eq!(typed.conditions, Some(revision("a1")));
        assert_eq!(typed.follow_open(now, same), OpenRecipeChange::Same);
    }
}

#[test]
fn a_revision_compared_already_is_not_there_twice() {
    let mut typed = comparing();
    typed.systems.push(revision("a1"));
    typed.follow_open(Some("b1"), same);
    assert_eq!(typed.systems, [revision("a1"), SystemChoice::Library("uf".to_owned())]);
}
