//! Writing what lays its parts open.

use super::{Fields, Need, Part, Shape, Whole};
use serde_json::{Map, Value};

/// A value as JSON, with sorted keys.
pub fn value<T: Shape + Clone>(value: &T) -> Value {
    // A copy, because parts are laid open to be changed.
    emptied(&mut value.clone())
}

/// As JSON; texts are moved out of it.
fn emptied(value: &mut dyn Shape) -> Value {
    match value.open() {
        Part::Text(text) => Value::String(std::mem::take(text)),
        Part::Named(named) => Value::String(named.name()),
        Part::Flag(flag) => Value::Bool(*flag),
        Part::Whole(whole) => whole.get().into(),
        Part::Any(any) => any.take(),
        Part::Maybe(room) => room.at(0).map_or(Value::Null, emptied),
        Part::List(room) => {
            let mut list = Vec::new();
            while let Some(value) = room.at(list.len()) {
                list.push(emptied(value));
            }
            Value::Array(list)
        }
        Part::Choice(choice) => {
            let word = choice.word().to_owned();
            match choice.held() {
                None => Value::String(word),
                Some(held) => {
                    let mut map = Map::new();
                    map.insert(word, emptied(held));
                    Value::Object(map)
                }
            }
        }
        Part::Fields(Fields { names, needs, fields }) => {
            let mut map = Map::new();
            for (place, (name, field)) in names.iter().zip(fields).enumerate() {
                let value = emptied(field);
                if needs.get(place) != Some(&Need::Spare) || says_something(&value) {
                    map.insert((*name).to_owned(), value);
                }
            }
            Value::Object(map)
        }
    }
}

fn says_something(value: &Value) -> bool {
    match value {
        Value::Bool(flag) => *flag,
        Value::String(text) => !text.is_empty(),
        Value::Array(list) => !list.is_empty(),
        _ => true,
    }
}

impl Whole<'_> {
    const fn get(&self) -> u64 {
        match self {
            Self::U8(number) => **number as u64,
            Self::U16(number) => **number as u64,
            Self::U32(number) => **number as u64,
            Self::U64(number) => **number,
        }
    }
}
