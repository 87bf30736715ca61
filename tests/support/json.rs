//! Random JSON, and the parts of a JSON text, for the tests of what is read.

use proptest::prelude::*;
use serde_json::Value;

/// Any JSON value, up to six levels deep.
pub fn json_value() -> impl Strategy<Value = Value> {
    let leaf = prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        any::<i64>().prop_map(Value::from),
        any::<f64>().prop_map(Value::from),
        ".{0,12}".prop_map(Value::from),
    ];
    leaf.prop_recursive(6, 40, 6, |inner| {
        prop_oneof![
            proptest::collection::vec(inner.clone(), 0..6).prop_map(Value::from),
            proptest::collection::hash_map("[a-z_]{1,12}", inner, 0..6).prop_map(|map| map.into_iter().collect()),
        ]
    })
}

/// `value` with one of its parts replaced: the one at `pick`, counted around.
pub fn with_part_replaced(mut value: Value, pick: usize, part: Value) -> Value {
    let mut all = Vec::new();
    pointers(&value, "", &mut all);
    *value.pointer_mut(&all[pick % all.len()]).unwrap() = part;
    value
}

/// Pointers to every part of a value.
fn pointers(value: &Value, at: &str, all: &mut Vec<String>) {
    all.push(at.to_owned());
    match value {
        Value::Object(map) => map.iter().for_each(|(key, value)| pointers(value, &format!("{at}/{key}"), all)),
        Value::Array(list) => list.iter().enumerate().for_each(|(n, value)| pointers(value, &format!("{at}/{n}"), all)),
        _ => {}
    }
}
