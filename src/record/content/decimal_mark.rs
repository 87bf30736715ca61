//! The decimal mark in what the app itself enters, such as an example: what a person entered stays as it was entered.

use crate::quantity::format::DecimalMark;
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::Value;

/// The same content with this mark in the text of every entry, none of which may have a mark other than the point.
#[must_use]
pub fn with_decimal_mark<T: Serialize + DeserializeOwned>(content: T, mark: DecimalMark) -> T {
    if mark == DecimalMark::Point {
        return content;
    }
    let marked = serde_json::to_value(&content).ok().and_then(|mut value| {
        mark_entries(&mut value, mark);
        serde_json::from_value(value).ok()
    });
    marked.unwrap_or(content)
}

/// An entry is what has a text and a unit.
fn mark_entries(value: &mut Value, mark: DecimalMark) {
    match value {
        Value::Object(parts) => {
            let has_unit = parts.contains_key("unit");
            match parts.get_mut("text") {
                Some(Value::String(text)) if has_unit => *text = text.replace('.', &mark.char().to_string()),
                _ => parts.values_mut().for_each(|part| mark_entries(part, mark)),
            }
        }
        Value::Array(parts) => parts.iter_mut().for_each(|part| mark_entries(part, mark)),
        _ => {}
    }
}

#[cfg(test)]
mod tests {
    use super::with_decimal_mark;
    use crate::domain::line::example::example_line;
    use crate::domain::recipe::example::example;
    use crate::domain::{Draft, Field, check};
    use crate::quantity::format::DecimalMark;

    #[test]
    fn an_example_with_a_comma_means_the_same() {
        let (point, comma) = (example(), with_decimal_mark(example(), DecimalMark::Comma));
        let text = |draft: &Draft| draft.entry(Field::FibreMoisture).map(|entry| entry.text.clone());
        assert_eq!(text(&point).as_deref(), Some("4.5"));
        assert_eq!(text(&comma).as_deref(), Some("4,5"));
        assert!(check(&comma).input.is_some());
        assert_eq!(check(&comma).input, check(&point).input);
        let line = with_decimal_mark(example_line(&comma), DecimalMark::Comma);
        assert!(!serde_json::to_string(&line).is_ok_and(|text| text.contains("\"8.64\"")));
    }
}
