//! What holds for every text of the app, and the snapshots that show them.

use haulm::ui::text::Message;

/// Compares a text with the snapshot `AREA_NAME` in `tests/snapshots`.
macro_rules! snapshot {
    ($area:literal, $name:literal, $text:expr) => {
        insta::with_settings!(
            {snapshot_path => concat!(env!("CARGO_MANIFEST_DIR"), "/tests/snapshots"), prepend_module_to_snapshot => false, omit_expression => true},
            { insta::assert_snapshot!(concat!($area, "_", $name), $text) }
        )
    };
}

/// Words that blame or plead, and what leaks from the program.
const NEVER: &[&str] = &["invalid", "please", "nan", "inf", "unwrap", "error"];

/// Asserts that a text has none of the words that no text has, nothing that leaks, and no double or stray spaces.
pub fn sound(text: &str) {
    let lower = text.to_lowercase();
    for word in lower.split(|c: char| !c.is_alphanumeric()) {
        assert!(!NEVER.contains(&word), "{word:?} in {text:?}");
    }
    // "Some" and "amount" are words of English; as a program writes them they have a bracket.
    for leak in ["Some(", "None", "Amount {", "  ", " ,", " ."] {
        assert!(!text.contains(leak), "{leak:?} in {text:?}");
    }
    // What was typed is quoted as it is.
    let unquoted: String = text.split('“').map(|part| part.split_once('”').map_or(part, |(_, after)| after)).collect();
    assert!(!unquoted.contains(".."), "{text:?}");
}

/// A message as the snapshots have it; both of its parts are whole sentences.
pub fn written(message: &Message) -> String {
    for part in [&message.what, &message.fix] {
        sound(part);
        assert!(part.ends_with(['.', '?']), "no whole sentence: {part:?}");
    }
    format!("  {}\n    → {}\n", message.what, message.fix)
}
