//! Recipe files: out and in again, and what is refused, with the place.

use crate::faults::cases;
use crate::json::{json_value, with_part_replaced};
use crate::sample::{draft, stamp, title};
use haulm::record::content::revision::Revision;
use haulm::record::file::recipe::{LARGEST, RecipeFile};
use haulm::record::refusal::{Refusal, TextPosition};
use proptest::prelude::*;
use serde_json::{Value, json};

fn sample() -> RecipeFile {
    RecipeFile::new(title("Straw 16"), draft("680"), None)
}

fn edited(edit: impl FnOnce(&mut Value)) -> String {
    let mut value = serde_json::to_value(sample()).unwrap();
    edit(&mut value);
    value.to_string()
}

#[test]
fn a_recipe_goes_out_and_comes_in_again() {
    let revision = Revision::first(title("Straw 16"), draft("680"), stamp(1)).unwrap();
    let file = RecipeFile::of(&revision);
    let text = file.text().unwrap();
    insta::assert_snapshot!(text.lines().take(24).collect::<Vec<_>>().join("\n"));
    let read = RecipeFile::read(&text).unwrap();
    assert_eq!(read, file);
    let again = read.into_revision(stamp(2)).unwrap();
    assert_eq!((again.title(), &again.content().draft), (revision.title(), &revision.content().draft));
    assert_ne!(again.recipe(), revision.recipe());
}

#[test]
fn unknown_keys_live_on_and_never_stand_in_for_known_ones() {
    let text = edited(|value| {
        value["trial"] = json!([1, 2]);
        value["parents"] = json!("not ours");
        value["app"] = json!("9.9.9");
    });
    let revision = RecipeFile::read(&text).unwrap().into_revision(stamp(1)).unwrap();
    let revision = Revision::read(revision.id(), revision.text()).unwrap();
    let file = RecipeFile::read(&RecipeFile::of(&revision).text().unwrap()).unwrap();
    assert_eq!((&file.extra["trial"], file.app.as_str()), (&json!([1, 2]), env!("CARGO_PKG_VERSION")));
}

/// The file's own keys are written once, and say what the app has to say, whatever a revision brings along.
#[test]
fn no_key_is_written_twice() {
    let extra = json!({ "app": "9.9.9", "revision": 5, "haulm": "list", "version": 7, "draft": 3, "later": 2.5 });
    let content = Revision::first(title("Straw 16"), draft("680"), stamp(1)).unwrap().into_content();
    let revision = Revision::with(content, extra.as_object().unwrap().clone()).unwrap();
    let text = RecipeFile::of(&revision).text().unwrap();
    for key in ["haulm", "version", "app", "revision", "draft", "later"] {
        assert_eq!(text.matches(&format!("\n  \"{key}\":")).count(), 1, "{key}: {text}");
    }
    assert_eq!(RecipeFile::read(&text).unwrap(), RecipeFile::of(&revision));
}

/// A number that no machine type holds stays as it was written, up to the sign of its exponent.
#[test]
fn unknown_numbers_stay_as_they_were_written() {
    let numbers = ["-0", "1.50", "1e+400", "123456789012345678901234567890.10"];
    for number in numbers {
        let text =
            edited(|value| value["later"] = json!(null)).replace("\"later\":null", &format!("\"later\":[{number}]"));
        let file = RecipeFile::read(&text).unwrap();
        let revision = file.clone().into_revision(stamp(1)).unwrap();
        assert!(revision.text().contains(&format!("\"later\":[{number}]")), "{}", revision.text());
        assert!(file.text().unwrap().contains(&format!("    {number}\n")), "{number}");
    }
}

#[test]
fn a_byte_order_mark_is_no_matter() {
    assert_eq!(RecipeFile::read(&format!("\u{feff}{}", sample().text().unwrap())), Ok(sample()));
}

#[test]
fn little_is_enough() {
    let file = RecipeFile::read(
        r#"{"haulm": "recipe", "version": 1, "draft":
            {"feed_way": "oven_dry", "water_way": "none", "liquids": [], "plain": {}}}"#,
    );
    assert_eq!(file.unwrap().name, "");
}

#[track_caller]
fn check_refused(text: &str, expected: Refusal) {
    assert_eq!(RecipeFile::read(text), Err(expected));
}

fn at(line: usize, column: usize) -> TextPosition {
    TextPosition { line, column }
}

#[test]
fn refused_with_the_place() {
    let large = " ".repeat(LARGEST + 1);
    check_refused(&large, Refusal::TooLarge { bytes: LARGEST + 1, limit: LARGEST });
    check_refused("", Refusal::Empty);
    check_refused("\u{feff}\r\n", Refusal::Empty);
    for (twice, key) in [
        (r#"{"haulm": "recipe", "version": 1, "version": 1}"#, "version"),
        (r#"{"haulm": "recipe", "haulm": "library", "version": 1}"#, "haulm"),
        (r#"{"haulm": "recipe", "version": 1, "later": 1, "draft": {}, "later": 2}"#, "later"),
    ] {
        check_refused(twice, Refusal::DuplicateKey { key: key.to_owned() });
    }
    check_refused("{\n  \"haulm\": recipe }", Refusal::NotJson { at: at(2, 12), cut_short: false });
    check_refused("{\"haulm\": \"recipe\",\n", Refusal::NotJson { at: at(2, 1), cut_short: true });
    check_refused("name;density\nStraw;680", Refusal::NotJson { at: at(1, 2), cut_short: false });
    for foreign in
        ["{}", "[]", "3", "\"text\"", "null", r#"{"recipe": 1}"#, r#"{"haulm": null}"#, r#"["recipe", 1]"#, "[1, 2, 3]"]
    {
        check_refused(foreign, Refusal::Foreign);
    }
    check_refused(r#"{"haulm": "library"}"#, Refusal::OtherKind { kind: "library".to_owned() });
    check_refused(r#"{"haulm": 3, "version": 1}"#, Refusal::OtherKind { kind: String::new() });
    check_refused(&edited(|value| value["version"] = json!(2)), Refusal::Newer { version: 2, known: 1 });
    check_refused(&edited(|value| value["version"] = json!(u64::MAX)), Refusal::Newer { version: u64::MAX, known: 1 });
    for version in [json!(0), json!(-1), json!("1"), json!(1.5), json!(null)] {
        check_refused(&edited(|value| value["version"] = version), Refusal::NoVersion);
    }
    // Within a part: with the place, and what is before it.
    let text = serde_json::to_string_pretty(&serde_json::to_value(sample()).unwrap()).unwrap();
    let twice = text.replacen("\n    \"feed_way\":", "\n    \"feed_way\": \"belt\",\n    \"feed_way\":", 1);
    let line = twice.lines().position(|line| line.contains("\"feed_way\"")).unwrap() + 2;
    match RecipeFile::read(&twice) {
        Err(Refusal::Damaged { at, before, what }) => {
            assert_eq!((at, before.as_str()), (TextPosition { line, column: 14 }, "\"feed_way\""));
            assert_eq!(what, "duplicate field `feed_way`");
        }
        other => panic!("{other:?}"),
    }
    let deep = format!("{}{}", "[".repeat(100_000), "]".repeat(100_000));
    check_refused(&deep, Refusal::TooDeep { at: at(1, 49) });
    let in_a_text = edited(|value| value["x"] = json!("[\\\"{".repeat(200)));
    assert!(RecipeFile::read(&in_a_text).is_ok(), "brackets in a text do not nest");
}

#[test]
fn damage_is_named_and_placed() {
    let check = |edit: fn(&mut Value), expected: &str, last: &str| {
        let mut value = serde_json::to_value(sample()).unwrap();
        edit(&mut value);
        match RecipeFile::read(&serde_json::to_string_pretty(&value).unwrap()) {
            Err(Refusal::Damaged { at, before, what }) => {
                assert!(what.contains(expected), "{what}");
                assert!(before.contains(last) && before.len() <= 40, "{before}");
                assert!(at.line > 1, "{at:?}");
            }
            other => panic!("{expected}: {other:?}"),
        }
    };
    check(|value| drop(value.as_object_mut().unwrap().remove("draft")), "missing field `draft`", "}");
    check(|value| value["draft"]["feed_way"] = json!("guess"), "unknown variant `guess`", r#""feed_way": "guess""#);
    check(
        |value| value["draft"]["plain"]["thickness"]["unit"] = json!("ell"),
        "unknown variant `ell`",
        r#""unit": "ell""#,
    );
    check(
        |value| value["draft"]["plain"]["thickness"]["text"] = json!(16),
        "invalid type: integer `16`",
        r#""text": 16"#,
    );
    check(|value| value["draft"]["liquids"][0]["id"] = json!(70_000), "70000", r#""id": 70000"#);
    check(|value| value["tags"] = json!("trial"), "invalid type: string \"trial\"", r#""tags": "trial""#);
    check(|value| value["revision"] = json!("abc"), "32 hexadecimal digits", r#""revision": "abc""#);
}

/// 100 MB, or brackets without end. How soon: `tests/bench/record.rs`.
#[test]
fn what_is_huge_is_refused() {
    let huge = "[".repeat(100_000_000);
    assert!(matches!(RecipeFile::read(&huge), Err(Refusal::TooLarge { .. })));
    assert!(matches!(RecipeFile::read(&huge[..LARGEST]), Err(Refusal::TooDeep { .. })));
}

/// The words are another matter, but nothing that is read may bring the reader down, and what is
/// taken can be written and read again.
fn check_any(text: &str) {
    if let Ok(file) = RecipeFile::read(text) {
        assert_eq!(RecipeFile::read(&file.text().unwrap()).as_ref(), Ok(&file));
        let revision = file.into_revision(stamp(1)).unwrap();
        assert_eq!(Revision::read(revision.id(), revision.text()).as_ref(), Ok(&revision));
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: cases(400), ..ProptestConfig::default() })]

    #[test]
    fn any_text(text in any::<String>()) {
        check_any(&text);
    }

    #[test]
    fn anything_like_json(text in r#"[\[\]{}":,0-9a-z\\ \n.eE+-]{0,200}"#) {
        check_any(&text);
    }

    #[test]
    fn any_json_under_our_name(mut value in json_value()) {
        if let Some(map) = value.as_object_mut() {
            map.insert("haulm".to_owned(), json!("recipe"));
            map.insert("version".to_owned(), json!(1));
        }
        check_any(&value.to_string());
    }

    #[test]
    fn a_file_with_one_part_replaced(pick in any::<usize>(), part in json_value()) {
        let value = serde_json::to_value(sample()).unwrap();
        check_any(&with_part_replaced(value, pick, part).to_string());
    }

    #[test]
    fn a_file_with_bytes_changed(changes in proptest::collection::vec((any::<usize>(), any::<u8>()), 1..8)) {
        let mut bytes = sample().text().unwrap().into_bytes();
        for (place, byte) in changes {
            let place = place % bytes.len();
            bytes[place] = byte;
        }
        check_any(&String::from_utf8_lossy(&bytes));
    }

    #[test]
    fn a_file_cut_off(end in any::<usize>()) {
        let text = sample().text().unwrap();
        let end = text.floor_char_boundary(end % (text.len() - 2));
        match RecipeFile::read(&text[..end]) {
            Err(Refusal::Empty) => prop_assert_eq!(end, 0),
            Err(Refusal::NotJson { cut_short: true, .. }) => {}
            other => prop_assert!(false, "{:?}", other),
        }
    }
}
