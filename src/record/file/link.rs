//! A recipe in a link: the recipe file without layout, and without the boxes that say what they say
//! in a blank recipe. [`RecipeFile::read`] reads it as any other.

use crate::domain::recipe::field::Plain;
use crate::record::file::recipe::RecipeFile;
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
        let mut file = serde_json::to_value(self)?;
        let blank = serde_json::to_value(Plain::default())?;
        if let Some(Value::Object(plain)) = file.pointer_mut("/draft/plain") {
            plain.retain(|key, entry| blank.get(key) != Some(entry));
        }
        let says_nothing = |value: &Value| match value {
            Value::Null => true,
            Value::String(text) => text.is_empty(),
            Value::Array(items) => items.is_empty(),
            _ => false,
        };
        if let Value::Object(fields) = &mut file {
            fields.retain(|key, value| key != "app" && !self.extra.contains_key(key) && !says_nothing(value));
        }
        Ok(file.to_string())
    }
}
