//! Saving what is on the page: what it follows, and what is asked before one revision is put over another.

use crate::sample::{draft, stamp, title};
use haulm::domain::{Draft, LiquidDraft, LiquidId, Role, Substance};
use haulm::record::content::revision::{Revision, Standing};
use haulm::record::document::open_draft::OpenDraft;
use haulm::record::store::MemoryStore;
use haulm::record::store::library::Library;
use haulm::record::store::library::save::{SaveAs, SaveOutcome, SaveQuestion};
use haulm::record::{RecipeId, RevisionId};

type Shelf = Library<MemoryStore>;

fn page(from: RevisionId, density: &str) -> OpenDraft {
    OpenDraft { from: Some(from), title: title("Straw"), draft: draft(density), remark: String::new(), example: false }
}

fn saved(library: &mut Shelf, page: &OpenDraft, how: SaveAs, at: u64) -> RevisionId {
    match library.save_page(page, how, stamp(at)).unwrap() {
        SaveOutcome::Saved(id) => id,
        other => panic!("{other:?}"),
    }
}

fn start() -> (Shelf, RevisionId, RecipeId) {
    let mut library = Library::open(MemoryStore::default()).unwrap();
    let new = OpenDraft { from: None, ..page(RevisionId::parse(&"0".repeat(32)).unwrap(), "680") };
    let one = saved(&mut library, &new, SaveAs::Next, 1);
    let recipe = library.revision(one).unwrap().recipe();
    (library, one, recipe)
}

#[test]
fn a_save_follows_what_the_page_came_from() {
    let (mut library, one, recipe) = start();
    assert_eq!(library.save_page(&page(one, "680"), SaveAs::Next, stamp(2)), Ok(SaveOutcome::Unchanged));
    let two = saved(&mut library, &page(one, "700"), SaveAs::Next, 3);
    assert_eq!(library.revision(two).unwrap().content().parents, [one]);
    assert_eq!(library.history(recipe).len(), 2);
}

/// Two heads were merged while the page still shows one of them.
#[test]
fn a_save_over_a_merge_asks_first_and_saves_nothing() {
    let (mut library, one, recipe) = start();
    let mine = saved(&mut library, &page(one, "700"), SaveAs::Next, 2);
    let other = library.revision(one).unwrap().next(title("Straw"), draft("710"), stamp(3)).unwrap();
    let theirs = library.save(other).unwrap();
    // Beside the other head the page is not behind: it goes on with its own.
    let mine = saved(&mut library, &page(mine, "701"), SaveAs::Next, 4);
    let merged = library.merge_heads(mine, theirs, stamp(5), |_, _| ()).unwrap();
    let before = library.history(recipe).len();
    for from in [one, mine, theirs] {
        let outcome = library.save_page(&page(from, "720"), SaveAs::Next, stamp(6));
        assert_eq!(outcome, Ok(SaveOutcome::Ask(SaveQuestion::Behind(merged))));
    }
    assert_eq!(library.history(recipe).len(), before);

    // On top: after the merge, and one head is left.
    let top = saved(&mut library, &page(mine, "720"), SaveAs::OnTop, 7);
    let listed = library.recipe(recipe).unwrap();
    assert_eq!((listed.head.summary.id, listed.others.len()), (top, 0));
    assert_eq!(library.revision(top).unwrap().content().parents, [merged]);
    assert_eq!(library.revision(top).unwrap().content().draft, draft("720"));
}

#[test]
fn on_top_of_two_heads_makes_them_one() {
    let (mut library, one, recipe) = start();
    for density in ["700", "710"] {
        let next = library.revision(one).unwrap().next(title("Straw"), draft(density), stamp(2)).unwrap();
        library.save(next).unwrap();
    }
    let top = saved(&mut library, &page(one, "720"), SaveAs::OnTop, 3);
    assert_eq!(library.revision(top).unwrap().content().parents.len(), 2);
    assert!(library.recipe(recipe).unwrap().others.is_empty());
}

#[test]
fn a_new_recipe_leaves_the_old_one_as_it_is() {
    let (mut library, one, recipe) = start();
    let two = saved(&mut library, &page(one, "700"), SaveAs::Next, 2);
    // From an older revision, too: nothing is asked, nothing is put over anything.
    let new = saved(&mut library, &page(one, "720"), SaveAs::NewRecipe("Straw, summer".to_owned()), 3);
    let revision = library.revision(new).unwrap();
    assert_ne!(revision.recipe(), recipe);
    let content = revision.content();
    assert_eq!((content.name.as_str(), &content.draft, content.copy_of), ("Straw, summer", &draft("720"), Some(one)));
    assert_eq!((content.parents.len(), library.version(new).unwrap().number), (0, 1));
    assert_eq!(library.recipe(recipe).unwrap().head.summary.id, two);
}

#[test]
fn other_binders_ask_before_they_make_another_recipe_of_it() {
    let (mut library, one, recipe) = start();
    let mut urea = page(one, "680");
    let mut resin = LiquidDraft::blank(LiquidId(1), Role::Binder);
    resin.substance = Substance::Uf;
    urea.draft = Draft { liquids: vec![resin], ..urea.draft };
    let outcome = library.save_page(&urea, SaveAs::Next, stamp(2));
    assert_eq!(outcome, Ok(SaveOutcome::Ask(SaveQuestion::OtherBinders(one))));
    assert_eq!(library.history(recipe).len(), 1);
    // Confirmed, it is the next revision.
    let two = saved(&mut library, &urea, SaveAs::OnTop, 3);
    assert_eq!(library.revision(two).unwrap().content().parents, [one]);
    assert_eq!(
        library.save_page(&OpenDraft { from: Some(two), ..urea }, SaveAs::Next, stamp(4)),
        Ok(SaveOutcome::Unchanged)
    );
}

#[test]
fn a_removed_recipe_that_is_saved_again_is_kept_again() {
    let (mut library, one, recipe) = start();
    library.remove(recipe, &stamp(2)).unwrap();
    let removal = library.recipe(recipe).unwrap().head.summary.id;
    assert_eq!(
        library.save_page(&page(one, "680"), SaveAs::Next, stamp(3)),
        Ok(SaveOutcome::Unchanged),
        "nothing typed, nothing saved"
    );
    assert_eq!(
        library.save_page(&page(one, "690"), SaveAs::Next, stamp(3)),
        Ok(SaveOutcome::Ask(SaveQuestion::Behind(removal)))
    );
    saved(&mut library, &page(removal, "680"), SaveAs::Next, 4);
    assert_eq!(library.recipe(recipe).unwrap().standing(), Standing::Kept);
}

// --- the page goes along with a later revision --------------------------------------------------------

/// A revision and one after it with another density, another name, or both.
fn two(density: &str, name: &str) -> (Revision, Revision) {
    let base = Revision::first(title("Straw"), draft("680"), stamp(1)).unwrap();
    let later = base.next(title(name), draft(density), stamp(2)).unwrap();
    (base, later)
}

#[test]
fn a_page_without_changes_shows_the_later_revision() {
    let (base, later) = two("700", "Straw 16");
    let shown = page(base.revision(), "680").advanced(&base, &later).unwrap();
    assert!(shown.says(&later));
    assert_eq!(shown.from, Some(later.revision()));
}

#[test]
fn what_is_typed_stays_where_the_later_revision_did_not_change_it() {
    let (base, later) = two("680", "Straw 16");
    let shown = page(base.revision(), "720").advanced(&base, &later).unwrap();
    assert_eq!((shown.draft, shown.title.name.as_str()), (draft("720"), "Straw 16"));
}

#[test]
fn a_page_stays_behind_where_both_changed_the_same() {
    let (base, later) = two("700", "Straw");
    assert_eq!(page(base.revision(), "720").advanced(&base, &later), None);
    let (base, later) = two("680", "Straw 16");
    let mut renamed = page(base.revision(), "680");
    renamed.title.name = "Straw A".to_owned();
    assert_eq!(renamed.advanced(&base, &later), None);
    // The same change twice is one.
    renamed.title.name = "Straw 16".to_owned();
    assert!(renamed.advanced(&base, &later).is_some());
}
