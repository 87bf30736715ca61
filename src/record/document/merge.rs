//! Two versions of one document, merged over the version that both came from.
//!
//! A document is compared as the tree of its JSON. Changes in different places both stay; of two changes
//! in one place the later one stays. A number and the unit beside it are one place: "5 %" and "50 kg/h"
//! never become "5 kg/h". Items of a list that have an id are matched by it, wherever in the list they are.

use serde_json::{Map, Value};

/// What `later` changed in `base`, put into `earlier`, which changed `base` as well.
#[must_use]
pub fn merge(base: &Value, later: &Value, earlier: &Value) -> Value {
    if later == base {
        return earlier.clone();
    }
    if earlier == base || earlier == later {
        return later.clone();
    }
    match (base, later, earlier) {
        (Value::Object(base), Value::Object(later_fields), Value::Object(earlier_fields))
            if !is_entry(later_fields) && !is_entry(earlier_fields) =>
        {
            Value::Object(objects(base, later_fields, earlier_fields))
        }
        (Value::Array(base), Value::Array(later), Value::Array(earlier)) => {
            if [base, later, earlier].iter().all(|list| have_ids(list)) {
                by_id(base, later, earlier)
            } else {
                by_place(base, later, earlier)
            }
        }
        _ => later.clone(),
    }
}

/// What was typed into one box, beside its unit.
fn is_entry(fields: &Map<String, Value>) -> bool {
    fields.contains_key("text") && fields.contains_key("unit")
}

/// The same for something that may be missing. What was removed in one version and changed in the other stays.
fn maybe(base: Option<&Value>, later: Option<&Value>, earlier: Option<&Value>) -> Option<Value> {
    if later == base {
        return earlier.cloned();
    }
    if earlier == base {
        return later.cloned();
    }
    match (base, later, earlier) {
        (Some(base), Some(later), Some(earlier)) => Some(merge(base, later, earlier)),
        (_, later, earlier) => later.or(earlier).cloned(),
    }
}

fn objects(base: &Map<String, Value>, later: &Map<String, Value>, earlier: &Map<String, Value>) -> Map<String, Value> {
    let new = later.keys().filter(|key| !earlier.contains_key(*key));
    let merged = |key: &String| Some((key.clone(), maybe(base.get(key), later.get(key), earlier.get(key))?));
    earlier.keys().chain(new).filter_map(merged).collect()
}

/// What an item of a list is known by, whatever else it says.
fn id(item: &Value) -> Option<Value> {
    let fields = item.as_object()?;
    match (fields.get("run"), fields.get("batch")) {
        (Some(run), Some(batch)) => Some(Value::from(vec![run.clone(), batch.clone()])),
        _ => ["id", "what", "line", "property", "key"].iter().find_map(|key| fields.get(*key)).cloned(),
    }
}

/// Whether each item has an id of its own.
fn have_ids(list: &[Value]) -> bool {
    list.iter().enumerate().all(|(at, item)| id(item).is_some_and(|id| find(&list[..at], &id).is_none()))
}

fn find<'a>(list: &'a [Value], wanted: &Value) -> Option<&'a Value> {
    list.iter().find(|item| id(item).as_ref() == Some(wanted))
}

/// Lists whose items have ids. The order is the later one's if it changed the order, else the earlier one's.
fn by_id(base: &[Value], later: &[Value], earlier: &[Value]) -> Value {
    let ids = |list: &[Value]| list.iter().filter_map(id).collect::<Vec<Value>>();
    let (before, now, other) = (ids(base), ids(later), ids(earlier));
    let number = |item: &Value| item.get("id").and_then(Value::as_u64);
    let next = [base, later, earlier].into_iter().flatten().filter_map(number).max().map_or(0, |most| most + 1);
    let (mut items, mut added) = (Vec::new(), Vec::new());
    let in_both =
        |list: &[Value], other: &[Value]| list.iter().filter(|id| other.contains(id)).cloned().collect::<Vec<Value>>();
    let moved = in_both(&now, &before) != in_both(&before, &now);
    let (first, second) = if moved { (&now, &other) } else { (&other, &now) };
    let mut order = first.clone();
    for (at, id) in second.iter().enumerate() {
        if !order.contains(id) {
            // Behind the item that it is behind there.
            let behind = second[..at].iter().rev().find_map(|before| order.iter().position(|other| other == before));
            order.insert(behind.map_or(0, |behind| behind + 1), id.clone());
        }
    }
    for id in order {
        let (one, two) = (find(later, &id), find(earlier, &id));
        match (find(base, &id), one, two) {
            // Added here and there at once, under the same number: these are two items.
            (None, Some(one), Some(two)) if one != two && number(one).is_some() => {
                items.push(two.clone());
                added.push(one);
            }
            (base, one, two) => items.extend(maybe(base, one, two)),
        }
    }
    let added = added.into_iter().filter(|item| !earlier.iter().any(|other| same_but_id(item, other)));
    let renumbered: Vec<Value> = added.zip(next..).map(|(item, id)| with_id(item, id)).collect();
    items.extend(renumbered);
    Value::Array(items)
}

fn with_id(item: &Value, id: u64) -> Value {
    let mut item = item.clone();
    if let Some(fields) = item.as_object_mut() {
        fields.insert("id".to_owned(), id.into());
    }
    item
}

/// Whether it was put there under another number before.
fn same_but_id(one: &Value, other: &Value) -> bool {
    other.get("id").and_then(Value::as_u64).is_some_and(|id| with_id(one, id) == *other)
}

/// Lists whose items are known by their place alone.
fn by_place(base: &[Value], later: &[Value], earlier: &[Value]) -> Value {
    if base.len() == later.len() && base.len() == earlier.len() {
        let each = base.iter().zip(later).zip(earlier);
        return each.map(|((base, later), earlier)| merge(base, later, earlier)).collect();
    }
    if base.len() == later.len() {
        // The other one added or removed items: what was changed here goes to where its item is now.
        return moved(base, earlier, later);
    }
    if base.len() == earlier.len() {
        return moved(base, later, earlier);
    }
    // Both added or removed. What both only added at the end stays, the earlier one's first.
    let (start, other) = (frame(base, later).0, frame(base, earlier).0);
    if start < base.len() || other < base.len() {
        return Value::Array(later.to_vec());
    }
    let mut items = earlier.to_vec();
    items.extend(later[start..].iter().filter(|item| !earlier[other..].contains(item)).cloned());
    Value::Array(items)
}

/// How many items at the start and, behind those, at the end are the same.
fn frame(base: &[Value], list: &[Value]) -> (usize, usize) {
    let start = base.iter().zip(list).take_while(|(base, item)| base == item).count();
    let rest = base.len().min(list.len()) - start;
    let end = base.iter().rev().zip(list.iter().rev()).take(rest).take_while(|(base, item)| base == item).count();
    (start, end)
}

/// `list` has other items than `base`; `changed` has the same, some of them changed.
fn moved(base: &[Value], list: &[Value], changed: &[Value]) -> Value {
    let (start, end) = frame(base, list);
    let mut items = list.to_vec();
    for (at, (before, now)) in base.iter().zip(changed).enumerate() {
        if before == now {
            continue;
        }
        let place = if at < start {
            Some(at)
        } else if at >= base.len() - end {
            Some(list.len() - (base.len() - at))
        } else {
            None
        };
        if let Some(item) = place.and_then(|place| items.get_mut(place)) {
            *item = now.clone();
        } else if !items.contains(now) {
            // Its item was removed or replaced there: what was typed into it stays.
            items.push(now.clone());
        }
    }
    Value::Array(items)
}
