//! The JSON Schema of the recipe file, made from the types and kept beside the tests.

use super::file::RecipeFile;
use super::revision::Title;
use crate::domain::{Draft, LiquidDraft, LiquidId, Role};

const KEPT: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/schema/recipe.schema.json");

fn schema() -> serde_json::Value {
    let mut schema = serde_json::to_value(schemars::schema_for!(RecipeFile)).unwrap_or_default();
    schema.sort_all_objects();
    schema
}

/// Regenerate with `HAULM_WRITE=1 cargo test --lib record::schema`.
#[test]
fn schema_in_the_repository_is_that_of_the_types() {
    let made = serde_json::to_string_pretty(&schema()).unwrap_or_default() + "\n";
    if std::env::var_os("HAULM_WRITE").is_some() {
        assert!(std::fs::write(KEPT, &made).is_ok(), "{KEPT} can be written");
    }
    let kept = std::fs::read_to_string(KEPT).unwrap_or_default();
    assert!(kept == made, "{KEPT} is behind the types: regenerate it, and see whether the format version must rise");
}

fn sample() -> RecipeFile {
    let mut draft = Draft::default();
    draft.plain.board_density.text = "680".to_owned();
    draft.liquids.push(LiquidDraft::blank(LiquidId(1), Role::Binder));
    RecipeFile::new(Title { name: "Straw 16 mm".to_owned(), ..Title::default() }, draft, None)
}

#[test]
fn an_exported_file_is_valid_and_a_spoilt_one_is_not() {
    let schema = schema();
    let Ok(validator) = jsonschema::validator_for(&schema) else {
        unreachable!("the schema is one: {schema}");
    };
    let sound = serde_json::to_value(sample()).unwrap_or_default();
    assert!(
        validator.is_valid(&sound),
        "{:?}",
        validator.iter_errors(&sound).map(|e| e.to_string()).collect::<Vec<_>>()
    );

    let spoilt = |pointer: &str, value: serde_json::Value| {
        let mut spoilt = sound.clone();
        let place = spoilt.pointer_mut(pointer);
        assert!(place.is_some(), "the sample has {pointer}");
        if let Some(place) = place {
            *place = value;
        }
        spoilt
    };
    for (pointer, value) in [
        ("/haulm", "library".into()),
        ("/version", "one".into()),
        ("/tags", 5.into()),
        ("/draft/feed_way", "by_guess".into()),
        ("/draft/plain/board_density", "680".into()),
        ("/draft/liquids/0/id", (-1).into()),
    ] {
        assert!(!validator.is_valid(&spoilt(pointer, value)), "{pointer} is checked");
    }
}
