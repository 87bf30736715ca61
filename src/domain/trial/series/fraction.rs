//! Useful fractions of two-level designs.
//!
//! Source: NIST/SEMATECH e-Handbook of Statistical Methods, section 5.3.3.4.7 (summary tables of useful
//! fractional factorial designs), after Box, Hunter and Hunter (2005).

use crate::domain::trial::series::word::Word;

/// A row of the table: factors k, generators p, and the generating words of the last p factors.
type Row = (usize, usize, &'static [&'static str]);

const TABLE: &[Row] = &[
    (3, 1, &["AB"]),
    (4, 1, &["ABC"]),
    (5, 1, &["ABCD"]),
    (5, 2, &["AB", "AC"]),
    (6, 1, &["ABCDE"]),
    (6, 2, &["ABC", "BCD"]),
    (6, 3, &["AB", "AC", "BC"]),
    (7, 1, &["ABCDEF"]),
    (7, 2, &["ABCD", "ABDE"]),
    (7, 3, &["ABC", "BCD", "ACD"]),
    (7, 4, &["AB", "AC", "BC", "ABC"]),
    (8, 1, &["ABCDEFG"]),
    (8, 2, &["ABCD", "ABEF"]),
    (8, 3, &["ABC", "ABD", "BCDE"]),
    (8, 4, &["BCD", "ACD", "ABC", "ABD"]),
];

/// How many generators the table has fractions for, with so many factors: the largest fraction first.
#[must_use]
pub fn offered(factors: usize) -> Vec<u8> {
    TABLE.iter().filter(|(k, ..)| *k == factors).filter_map(|(_, p, _)| u8::try_from(*p).ok()).collect()
}

/// The generating words of the last `generators` of `factors` factors; `None` where the table has no
/// such fraction.
#[must_use]
pub fn generators(factors: usize, generators: usize) -> Option<Vec<Word>> {
    let (.., words) = TABLE.iter().find(|(k, p, _)| (*k, *p) == (factors, generators))?;
    words.iter().map(|word| Word::parse(word)).collect()
}
