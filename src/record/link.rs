//! A recipe in a link: the recipe file without layout, and without the boxes that say what they say
//! in a blank recipe. [`RecipeFile::read`] reads it as any other.

use super::file::{RecipeFile, VERSION};
use super::sealed::{Extra, own_keys};
use super::shape;
use crate::domain::Draft;
use serde_json::Value;

/// The part of an address behind `#` begins so where it holds a recipe.
pub const PREFIX: &str = "open=";
/// The longest such part that is unpacked, in bytes. A recipe with a dozen liquids has 2 000.
pub const LONGEST: usize = 16_000;

impl RecipeFile {
    /// The text for a link.
    ///
    /// # Errors
    /// When it has no JSON form. None lacks one.
    pub fn slim(&self) -> Result<String, serde_json::Error> {
        let mut fields = Extra::new();
        own_keys(&mut fields, "recipe", VERSION, shape::value(self));
        let blank = shape::value(&Draft::default());
        if let (Some(Value::Object(plain)), Some(blank)) =
            (fields.get_mut("draft").and_then(|draft| draft.get_mut("plain")), blank.get("plain"))
        {
            plain.retain(|key, entry| blank.get(key) != Some(entry));
        }
        fields.retain(|key, value| {
            let says_nothing = match value {
                Value::Null => true,
                Value::String(text) => text.is_empty(),
                Value::Array(items) => items.is_empty(),
                _ => false,
            };
            key != "app" && !says_nothing
        });
        Ok(Value::Object(fields).to_string())
    }
}
