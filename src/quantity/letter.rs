//! Small letters for capitals, so that a search and a unit's spelling need not mind them.
//!
//! By the order in which the scripts of Europe stand in Unicode, of which most give every capital and its small
//! letter a fixed distance. The standard library knows all scripts, and takes seven kilobytes of table that do
//! not compress into the download.

/// The small letter for a capital of the Latin, Greek, Cyrillic and Armenian scripts; any other character
/// itself. One for one: the sharp s stays, and the dotted capital I becomes i.
#[must_use]
pub fn lower(c: char) -> char {
    let code = u32::from(c);
    let even = code % 2 == 0;
    let to = match code {
        0x41..=0x5a | 0xc0..=0xd6 | 0xd8..=0xde | 0x391..=0x3a1 | 0x3a3..=0x3ab | 0x410..=0x42f => code + 32,
        0x130 => 0x69,
        0x178 => 0xff,
        0x100..=0x137 | 0x14a..=0x177 | 0x1de..=0x1ef | 0x1f8..=0x21f | 0x222..=0x233 if even => code + 1,
        0x139..=0x148 | 0x179..=0x17e | 0x1cd..=0x1dc | 0x4c1..=0x4ce if !even => code + 1,
        0x386 => 0x3ac,
        0x388..=0x38a => code + 37,
        0x38c => 0x3cc,
        0x38e | 0x38f => code + 63,
        0x400..=0x40f => code + 80,
        0x460..=0x481 | 0x48a..=0x4bf | 0x4d0..=0x52f | 0x1e00..=0x1e95 | 0x1ea0..=0x1eff if even => code + 1,
        0x4c0 => 0x4cf,
        0x531..=0x556 => code + 48,
        0x1e9e => 0xdf,
        // Ohm, kelvin and ångström, which have signs of their own.
        0x2126 => 0x3c9,
        0x212a => 0x6b,
        0x212b => 0xe5,
        _ => return c,
    };
    char::from_u32(to).unwrap_or(c)
}

/// A text with [small letters](lower) for capitals.
#[must_use]
pub fn lowered(text: &str) -> String {
    text.chars().map(lower).collect()
}

/// A name within a phrase: with a small letter for its first one.
#[must_use]
pub fn lower_first(name: &str) -> String {
    let mut chars = name.chars();
    chars.next().map(lower).into_iter().chain(chars).collect()
}

/// Whether it is a letter of a script in which mills are likely to write.
#[must_use]
pub fn is_letter(c: char) -> bool {
    matches!(
        u32::from(c),
        0x41..=0x5a | 0x61..=0x7a | 0xaa | 0xb5 | 0xba | 0xc0..=0xd6 | 0xd8..=0xf6 | 0xf8..=0x2af
        // Greek, Cyrillic, Armenian, Hebrew, Arabic, Devanagari, Thai, Georgian
        | 0x386 | 0x388..=0x3ff | 0x400..=0x481 | 0x48a..=0x52f | 0x531..=0x556 | 0x561..=0x587 | 0x5d0..=0x5ea
        | 0x620..=0x64a | 0x904..=0x939 | 0xe01..=0xe30 | 0x10a0..=0x10ff
        // More of Latin and Greek; kana, Chinese characters, hangul
        | 0x1e00..=0x1fff | 0x3041..=0x3096 | 0x30a1..=0x30fa | 0x3400..=0x4dbf | 0x4e00..=0x9fff | 0xac00..=0xd7a3
    )
}

#[cfg(test)]
mod tests {
    use super::{is_letter, lower, lower_first, lowered};

    /// Where we know a small letter it is the standard library's, and in these blocks we know all.
    #[test]
    fn small_letters_are_those_of_unicode() {
        for c in '\0'..=char::MAX {
            let theirs: Vec<char> = c.to_lowercase().collect();
            let known =
                matches!(u32::from(c), 0..=0x17f | 0x386..=0x3ab | 0x400..=0x587 | 0x1e00..=0x1eff | 0x2100..=0x212b);
            if (known || lower(c) != c) && c != 'İ' {
                assert_eq!([lower(c)], theirs[..], "{c} {:x}", u32::from(c));
            }
        }
    }

    #[test]
    fn texts() {
        for (text, expected) in [
            ("PF-Harz ÄÖÜ ß", "pf-harz äöü ß"),
            ("ΣΙΤΟΣ", "σιτοσ"),
            ("СОЛОМА Ё", "солома ё"),
            ("Łódź ŠŽ", "łódź šž"),
            ("İ", "i"),
            ("麦わら 🌾", "麦わら 🌾"),
        ] {
            assert_eq!(lowered(text), expected);
        }
        assert_eq!(lower_first("Östlich"), "östlich");
        assert_eq!(lower_first(""), "");
    }

    #[test]
    fn letters_are_those_of_unicode() {
        let taken = ('\0'..=char::MAX).filter(|c| is_letter(*c));
        // Places in these blocks where Unicode has no letter, or none yet.
        let odd = taken.filter(|c| !c.is_alphabetic()).count();
        assert!(odd < 60, "{odd}");
        for c in "azAZéßłŽωЖשعक麦わ한".chars() {
            assert!(is_letter(c), "{c}");
        }
        for c in "09 -_.×÷\u{202e}\u{300}🌾".chars() {
            assert!(!is_letter(c), "{c}");
        }
    }
}
