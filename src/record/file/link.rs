//! A recipe in a link: what differs from a blank recipe, an entry in the unit of its blank box as its bare text. So it is
//! short enough for a code that a camera reads off paper. A whole recipe file in a link is read too.

use crate::domain::recipe::draft::LiquidDraft;
use crate::domain::{Draft, LiquidId, Role};
use crate::record::file::recipe::{LARGEST, RecipeFile};
use crate::record::refusal::Refusal;
use serde_json::{Map, Value};

/// The part of an address behind `#` begins so where it holds a recipe.
pub const PREFIX: &str = "open=";
/// The longest such part that is unpacked, in bytes. A recipe with a dozen liquids has 2 000.
pub const LONGEST: usize = 16_000;

/// What a link without them says under the keys that every file has.
const KIND: (&str, &str) = ("haulm", "recipe");
const FIRST_VERSION: (&str, u32) = ("version", 1);

impl RecipeFile {
    /// The text for a link.
    ///
    /// # Errors
    /// When it has no JSON form. None lacks one.
    pub fn slim(&self) -> Result<String, serde_json::Error> {
        let mut file = serde_json::to_value(self)?;
        let blank = Blank::new()?;
        if let Some(draft) = file.get_mut("draft").and_then(Value::as_object_mut) {
            each_liquid(draft, |liquid| shorten(liquid, &blank.liquid));
            if let Some(plain) = draft.get_mut("plain").and_then(Value::as_object_mut) {
                shorten(plain, &blank.plain);
            }
            shorten(draft, &blank.draft);
        }
        let is_first = |key: &str, value: &Value| key == FIRST_VERSION.0 && *value == FIRST_VERSION.1;
        if let Value::Object(fields) = &mut file {
            fields.retain(|key, value| {
                let is_told = key == "app" || key == KIND.0 || is_first(key, value) || says_nothing(value);
                self.extra.contains_key(key) || !is_told
            });
        }
        Ok(file.to_string())
    }

    /// Reads the text of a link.
    ///
    /// # Errors
    /// As [`read`](Self::read).
    pub fn read_slim(text: &str) -> Result<Self, Refusal> {
        let whole = if text.len() <= LARGEST { whole(text) } else { None };
        Self::read(whole.as_deref().unwrap_or(text))
    }
}

/// The text of the file that a link stands for; `None` for a whole file, and for what is no JSON object, which
/// [`RecipeFile::read`] refuses in words.
fn whole(text: &str) -> Option<String> {
    let mut file: Map<String, Value> = serde_json::from_str(text).ok()?;
    if file.contains_key(KIND.0) {
        return None;
    }
    let blank = Blank::new().ok()?;
    file.insert(KIND.0.to_owned(), KIND.1.into());
    file.entry(FIRST_VERSION.0).or_insert_with(|| FIRST_VERSION.1.into());
    if let Some(draft) = file.get_mut("draft").and_then(Value::as_object_mut) {
        fill(draft, &blank.draft);
        if let Some(plain) = draft.get_mut("plain").and_then(Value::as_object_mut) {
            fill(plain, &blank.plain);
        }
        each_liquid(draft, |liquid| fill(liquid, &blank.liquid));
    }
    serde_json::to_string(&file).ok()
}

/// What a recipe says before anything is typed.
struct Blank {
    draft: Map<String, Value>,
    plain: Map<String, Value>,
    liquid: Map<String, Value>,
}

impl Blank {
    fn new() -> Result<Self, serde_json::Error> {
        let mut draft: Map<String, Value> = serde_json::from_value(serde_json::to_value(Draft::default())?)?;
        let plain = match draft.get("plain") {
            Some(Value::Object(plain)) => plain.clone(),
            _ => Map::new(),
        };
        // Its own boxes say which differ; a draft without any is still one.
        draft.insert("plain".to_owned(), Value::Object(Map::new()));
        let mut liquid: Map<String, Value> =
            serde_json::from_value(serde_json::to_value(LiquidDraft::blank(LiquidId(0), Role::Other))?)?;
        // Every liquid has a number of its own.
        liquid.remove("id");
        Ok(Self { draft, plain, liquid })
    }
}

/// Leaves out what is as in `blank`, and writes what was typed in the unit of the blank box as text alone.
fn shorten(fields: &mut Map<String, Value>, blank: &Map<String, Value>) {
    fields.retain(|key, value| blank.get(key) != Some(value));
    for (key, value) in fields {
        let unit = blank.get(key).and_then(|blank| blank.get("unit"));
        let text = value.as_object().filter(|entry| entry.len() == 2 && entry.get("unit") == unit);
        if let Some(text) = text.and_then(|entry| entry.get("text")).filter(|text| text.is_string()).cloned() {
            *value = text;
        }
    }
}

/// What is missing is as in `blank`; a bare text at a box was typed in the unit of the blank one.
fn fill(fields: &mut Map<String, Value>, blank: &Map<String, Value>) {
    for (key, of_blank) in blank {
        let unit = of_blank.get("unit");
        match (fields.get_mut(key), unit) {
            (None, _) => {
                fields.insert(key.clone(), of_blank.clone());
            }
            (Some(value), Some(unit)) if value.is_string() => {
                let text = value.take();
                *value = Value::Object(Map::from_iter([("text".to_owned(), text), ("unit".to_owned(), unit.clone())]));
            }
            _ => {}
        }
    }
}

fn each_liquid(draft: &mut Map<String, Value>, act: impl Fn(&mut Map<String, Value>)) {
    let liquids = draft.get_mut("liquids").and_then(Value::as_array_mut);
    liquids.into_iter().flatten().filter_map(Value::as_object_mut).for_each(act);
}

fn says_nothing(value: &Value) -> bool {
    match value {
        Value::Null => true,
        Value::String(text) => text.is_empty(),
        Value::Array(items) => items.is_empty(),
        _ => false,
    }
}
