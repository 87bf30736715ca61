//! Two versions of a document merged over the one that both came from: changes in different places both stay, and of two in one
//! place the later one.

use haulm::record::document::merge::merge;
use proptest::prelude::*;
use serde_json::{Value, json};

fn entry(text: &str, unit: &str) -> Value {
    json!({ "text": text, "unit": unit })
}

/// A document as ours are: boxes, a choice, and a list whose items have ids.
fn document() -> Value {
    json!({
        "name": "Straw", "note": "", "way": "oven_dry",
        "plain": { "flow": entry("8500", "kg/h"), "density": entry("680", "kg/m3"), "moisture": entry("4.5", "%") },
        "liquids": [
            { "id": 1, "name": "pMDI", "dose": entry("4", "%") },
            { "id": 2, "name": "Wax", "dose": entry("0.8", "%") },
        ],
        "rows": [entry("1", "g"), entry("2", "g"), entry("3", "g")],
    })
}

/// Every box of [`document`].
const BOXES: [&str; 11] = [
    "/name",
    "/note",
    "/way",
    "/plain/flow",
    "/plain/density",
    "/plain/moisture",
    "/liquids/0/dose",
    "/liquids/1/dose",
    "/liquids/1/name",
    "/rows/0",
    "/rows/2",
];

fn type_into(document: &mut Value, place: &str, text: &str) {
    let there = document.pointer_mut(place).expect("a box");
    *there = if there.is_object() { entry(text, "%") } else { text.into() };
}

fn typed(changes: &[(usize, String)]) -> Value {
    let mut document = document();
    for (at, text) in changes {
        type_into(&mut document, BOXES[*at], text);
    }
    document
}

fn changes() -> impl Strategy<Value = Vec<(usize, String)>> {
    prop::collection::vec((0..BOXES.len(), "[0-9]{1,3}"), 0..8)
}

/// Any JSON at all, with lists of all kinds.
fn any_json() -> impl Strategy<Value = Value> {
    let leaf = prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        (0_u64..9).prop_map(Value::from),
        "[a-c]{0,2}".prop_map(Value::from)
    ];
    leaf.prop_recursive(3, 24, 4, |inner| {
        prop_oneof![
            prop::collection::vec(inner.clone(), 0..4).prop_map(Value::from),
            prop::collection::btree_map("[a-c]|id|text|unit", inner.clone(), 0..4)
                .prop_map(|fields| Value::Object(fields.into_iter().collect())),
            prop::collection::btree_map(0_u64..5, inner, 0..4)
                .prop_map(|items| items.into_iter().map(|(id, value)| json!({ "id": id, "value": value })).collect()),
        ]
    })
}

proptest! {
    #[test]
    fn all_that_was_typed_in_either_tab_stays_and_the_later_one_has_a_box_of_both(one in changes(), two in changes()) {
        let (earlier, later) = (typed(&one), typed(&two));
        let merged = merge(&document(), &later, &earlier);
        for (at, place) in BOXES.iter().enumerate() {
            let changed = |version: &Value| version.pointer(place) != document().pointer(place);
            let wanted = if changed(&later) { &later } else { &earlier };
            prop_assert_eq!(merged.pointer(place), wanted.pointer(place), "{}", BOXES[at]);
        }
    }

    #[test]
    fn merging_once_more_changes_nothing(one in changes(), two in changes()) {
        let (base, earlier, later) = (document(), typed(&one), typed(&two));
        let merged = merge(&base, &later, &earlier);
        prop_assert_eq!(&merge(&base, &later, &merged), &merged);
        prop_assert_eq!(&merge(&base, &merged, &merged), &merged);
        prop_assert_eq!(&merge(&base, &base, &merged), &merged);
        prop_assert_eq!(&merge(&base, &merged, &base), &merged);
    }

    #[test]
    fn whatever_the_versions_are_one_without_changes_gives_the_other(base in any_json(), other in any_json()) {
        prop_assert_eq!(&merge(&base, &base, &other), &other);
        prop_assert_eq!(&merge(&base, &other, &base), &other);
        prop_assert_eq!(&merge(&base, &other, &other), &other);
    }

    #[test]
    fn nothing_stops_it(base in any_json(), one in any_json(), two in any_json()) {
        let merged = merge(&base, &one, &two);
        if one != base && two == base {
            prop_assert_eq!(merged, one);
        }
    }

    /// Three tabs, each told of the others' changes one after the other, in any order.
    #[test]
    fn three_tabs_come_to_the_same(all in prop::collection::vec("[0-9]{1,3}", 3), places in Just((0..BOXES.len()).collect::<Vec<_>>()).prop_shuffle()) {
        let base = document();
        let tabs: Vec<Value> = (0..3).map(|tab| typed(&[(places[tab], all[tab].clone())])).collect();
        let told = |first: usize, second: usize, third: usize| {
            let both = merge(&base, &tabs[second], &tabs[first]);
            merge(&base, &tabs[third], &both)
        };
        let wanted = told(0, 1, 2);
        prop_assert_eq!(&told(2, 1, 0), &wanted);
        prop_assert_eq!(&told(1, 2, 0), &wanted);
    }
}

#[test]
fn a_number_never_gets_the_unit_of_the_other_tab() {
    let base = json!({ "dose": entry("4", "%") });
    let earlier = json!({ "dose": entry("50", "kg/h") });
    let later = json!({ "dose": entry("5", "%") });
    assert_eq!(merge(&base, &later, &earlier), later);
    assert_eq!(merge(&base, &earlier, &later), earlier);
}

#[test]
fn liquids_are_matched_by_what_they_are_not_by_where_they_stand() {
    let base = document();
    let mut earlier = base.clone();
    // One tab puts a liquid in front and moves the others,
    let liquids = earlier["liquids"].as_array_mut().unwrap();
    liquids.reverse();
    liquids.insert(0, json!({ "id": 3, "name": "Urea", "dose": entry("1", "%") }));
    // the other one types into the first one.
    let mut later = base.clone();
    type_into(&mut later, "/liquids/0/dose", "4.5");
    let merged = merge(&base, &later, &earlier);
    let names: Vec<&str> =
        merged["liquids"].as_array().unwrap().iter().map(|liquid| liquid["name"].as_str().unwrap()).collect();
    assert_eq!(names, ["Urea", "Wax", "pMDI"]);
    assert_eq!(merged["liquids"][2]["dose"], entry("4.5", "%"));
    assert_eq!(merge(&base, &earlier, &later), merged);
}

#[test]
fn two_liquids_added_at_once_are_two_liquids() {
    let base = document();
    let added = |name: &str| {
        let mut document = base.clone();
        document["liquids"].as_array_mut().unwrap().push(json!({ "id": 3, "name": name, "dose": entry("1", "%") }));
        document
    };
    let merged = merge(&base, &added("Urea"), &added("Hardener"));
    let all: Vec<(u64, &str)> = merged["liquids"]
        .as_array()
        .unwrap()
        .iter()
        .map(|one| (one["id"].as_u64().unwrap(), one["name"].as_str().unwrap()))
        .collect();
    assert_eq!(all, [(1, "pMDI"), (2, "Wax"), (3, "Hardener"), (4, "Urea")]);
    assert_eq!(merge(&base, &added("Urea"), &merged), merged);
}

#[test]
fn a_liquid_removed_in_one_tab_and_typed_into_in_the_other_stays() {
    let base = document();
    let mut removed = base.clone();
    removed["liquids"].as_array_mut().unwrap().pop();
    let mut typed = base.clone();
    type_into(&mut typed, "/liquids/1/dose", "0.9");
    for merged in [merge(&base, &removed, &typed), merge(&base, &typed, &removed)] {
        assert_eq!(merged["liquids"], typed["liquids"]);
    }
    // Untouched by the other one, it goes.
    type_into(&mut typed, "/liquids/1/dose", "0.8");
    assert_eq!(merge(&base, &removed, &base)["liquids"].as_array().unwrap().len(), 1);
}

#[test]
fn a_row_added_in_one_tab_and_one_typed_into_in_the_other_both_stay() {
    let base = json!([entry("1", "g"), entry("2", "g")]);
    let added = json!([entry("1", "g"), entry("2", "g"), entry("3", "g")]);
    let typed = json!([entry("1.5", "g"), entry("2", "g")]);
    let both = json!([entry("1.5", "g"), entry("2", "g"), entry("3", "g")]);
    assert_eq!(merge(&base, &added, &typed), both);
    assert_eq!(merge(&base, &typed, &added), both);
    let removed = json!([entry("2", "g")]);
    let second = json!([entry("1", "g"), entry("2.5", "g")]);
    assert_eq!(merge(&base, &removed, &second), json!([entry("2.5", "g")]));
    let other = json!([entry("1", "g"), entry("2", "g"), entry("4", "g")]);
    assert_eq!(
        merge(&base, &added, &other),
        json!([entry("1", "g"), entry("2", "g"), entry("4", "g"), entry("3", "g")])
    );
}
