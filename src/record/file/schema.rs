//! The JSON Schemas of the files, made from the types and kept beside the tests.

use crate::domain::trial::{BoardDraft, BoardId, SeriesDraft};
use crate::domain::{Draft, LiquidDraft, LiquidId, Role};
use crate::record::content::revision::Title;
use crate::record::content::trial::TrialContent;
use crate::record::file::recipe::RecipeFile;

const RECIPE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/schema/recipe.schema.json");
const TRIAL: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/schema/trial.schema.json");

fn schema<T: schemars::JsonSchema>() -> serde_json::Value {
    let mut schema = serde_json::to_value(schemars::schema_for!(T)).unwrap_or_default();
    schema.sort_all_objects();
    schema
}

/// Regenerate with `HAULM_WRITE=1 cargo test --lib record::file::schema`.
#[test]
fn schemas_in_the_repository_are_those_of_the_types() {
    for (path, schema) in [(RECIPE, schema::<RecipeFile>()), (TRIAL, schema::<TrialContent>())] {
        let made = serde_json::to_string_pretty(&schema).unwrap_or_default() + "\n";
        if std::env::var_os("HAULM_WRITE").is_some() {
            assert!(std::fs::write(path, &made).is_ok(), "{path} can be written");
        }
        let kept = std::fs::read_to_string(path).unwrap_or_default();
        assert!(
            kept == made,
            "{path} is behind the types: regenerate it, and see whether the format version must rise"
        );
    }
}

fn sample() -> RecipeFile {
    let mut draft = Draft::default();
    draft.plain.board_density.text = "680".to_owned();
    draft.liquids.push(LiquidDraft::blank(LiquidId(1), Role::Binder));
    RecipeFile::new(Title { name: "Straw 16 mm".to_owned(), ..Title::default() }, draft, None)
}

fn sample_trial() -> TrialContent {
    let mut trial = TrialContent::of("Straw 16 mm".to_owned(), sample().draft, None);
    trial.series = Some(SeriesDraft::default());
    trial.boards = vec![BoardDraft::blank(BoardId(1))];
    trial
}

/// A sound file is valid; with each of these parts replaced it is not.
fn check(schema: &serde_json::Value, sound: &serde_json::Value, spoilt: &[(&str, serde_json::Value)]) {
    let Ok(validator) = jsonschema::validator_for(schema) else {
        unreachable!("the schema is one: {schema}");
    };
    let told: Vec<_> = validator.iter_errors(sound).map(|error| error.to_string()).collect();
    assert!(validator.is_valid(sound), "{told:?}");
    for (pointer, value) in spoilt {
        let mut spoilt = sound.clone();
        let place = spoilt.pointer_mut(pointer);
        assert!(place.is_some(), "the sample has {pointer}");
        if let Some(place) = place {
            *place = value.clone();
        }
        assert!(!validator.is_valid(&spoilt), "{pointer} is checked");
    }
}

#[test]
fn an_exported_recipe_is_valid_and_a_spoilt_one_is_not() {
    check(
        &schema::<RecipeFile>(),
        &serde_json::to_value(sample()).unwrap_or_default(),
        &[
            ("/haulm", "library".into()),
            ("/version", "one".into()),
            ("/tags", 5.into()),
            ("/draft/feed_way", "by_guess".into()),
            ("/draft/plain/board_density", "680".into()),
            ("/draft/liquids/0/id", (-1).into()),
        ],
    );
}

#[test]
fn an_exported_trial_is_valid_and_a_spoilt_one_is_not() {
    let file = sample_trial().file().unwrap_or_default();
    check(
        &schema::<TrialContent>(),
        &serde_json::from_str(&file).unwrap_or_default(),
        &[
            ("/sheet/overage_of", "of_guess".into()),
            ("/sheet/boxes/mat_length", 450.into()),
            ("/series/factors", "density".into()),
            ("/boards/0/thickness/0", "16".into()),
            ("/model", "all".into()),
        ],
    );
}
