//! Names of other people within our sentences.

/// Characters that set the direction of the text after them (Unicode Standard Annex #9).
const fn sets_direction(c: char) -> bool {
    matches!(c, '\u{200e}' | '\u{200f}' | '\u{061c}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

/// A name that turns no text around it: one with characters that set the direction is put between U+2068 and
/// U+2069, and has none of these itself, so that it cannot end that early.
#[must_use]
pub fn isolated(name: &str) -> String {
    if !name.contains(sets_direction) {
        return name.to_owned();
    }
    let inside: String = name.chars().filter(|c| !matches!(c, '\u{2066}'..='\u{2069}')).collect();
    format!("\u{2068}{inside}\u{2069}")
}

#[cfg(test)]
mod tests {
    use super::isolated;

    #[test]
    fn a_name_turns_nothing_around_it() {
        assert_eq!(isolated("Straw, 15 mm"), "Straw, 15 mm");
        assert_eq!(isolated("\u{202e}wartS"), "\u{2068}\u{202e}wartS\u{2069}");
        assert_eq!(isolated("a\u{2069}\u{202e}b"), "\u{2068}a\u{202e}b\u{2069}");
    }
}
