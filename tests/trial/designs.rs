//! Designs against published tables.

use haulm::domain::trial::series::design::{Design, roman};
use haulm::domain::trial::series::fraction::offered;
use haulm::domain::trial::series::word::{Word, products};

fn words(texts: &[&str]) -> Vec<Word> {
    texts.iter().map(|text| Word::parse(text).unwrap()).collect()
}

/// Source: Box, Hunter and Hunter (2005), table of two-level fractions; resolution computed from the generators.
#[test]
fn fractions_are_the_published_ones() {
    type Row = (usize, usize, u32, usize, &'static [&'static str]);
    let table: &[Row] = &[
        (3, 1, 3, 4, &["C=AB"]),
        (4, 1, 4, 8, &["D=ABC"]),
        (5, 1, 5, 16, &["E=ABCD"]),
        (5, 2, 3, 8, &["D=AB", "E=AC"]),
        (6, 1, 6, 32, &["F=ABCDE"]),
        (6, 2, 4, 16, &["E=ABC", "F=BCD"]),
        (6, 3, 3, 8, &["D=AB", "E=AC", "F=BC"]),
        (7, 1, 7, 64, &["G=ABCDEF"]),
        (7, 2, 4, 32, &["F=ABCD", "G=ABDE"]),
        (7, 3, 4, 16, &["E=ABC", "F=BCD", "G=ACD"]),
        (7, 4, 3, 8, &["D=AB", "E=AC", "F=BC", "G=ABC"]),
        (8, 1, 8, 128, &["H=ABCDEFG"]),
        (8, 2, 5, 64, &["G=ABCD", "H=ABEF"]),
        (8, 3, 4, 32, &["F=ABC", "G=ABD", "H=BCDE"]),
        (8, 4, 4, 16, &["E=BCD", "F=ACD", "G=ABC", "H=ABD"]),
    ];
    for (factors, p, resolution, runs, generators) in table {
        let design = Design::fraction(*factors, *p).unwrap();
        assert_eq!(design.resolution(), Some(*resolution), "2^({factors}-{p})");
        assert_eq!(design.runs.len(), *runs);
        let letters: Vec<String> =
            design.generators_in_letters().iter().map(|generator| generator.replace(' ', "")).collect();
        assert_eq!(letters, *generators);
        assert_eq!(design.notation(), format!("2^({factors}\u{2212}{p}) {}", roman(*resolution)));
    }
    assert_eq!(offered(7), [1, 2, 3, 4]);
    assert!(offered(2).is_empty() && Design::fraction(7, 5).is_none());
}

/// Source: Box, Hunter and Hunter (2005), table of two-level fractions: the smallest number of runs at which main
/// effects are clear of two-factor interactions. By hand: k factors take at least 2k runs for that, and a fraction
/// the next power of two.
#[test]
fn resolution_four_takes_the_published_number_of_runs() {
    for (factors, runs) in [(4, 8), (5, 16), (6, 16), (7, 16), (8, 16)] {
        let smallest = offered(factors)
            .into_iter()
            .filter_map(|p| Design::fraction(factors, usize::from(p)))
            .filter(|design| design.resolution() >= Some(4))
            .map(|design| design.runs.len())
            .min();
        assert_eq!(smallest, Some(runs), "{factors} factors");
    }
}

/// Source: NIST/SEMATECH e-Handbook, section 5.3.3.4.3 (confounding): the 2^(8−3) example there has its
/// defining relation from the products of three words, seven in all. The alias structure of the half
/// fraction 2^(5−1) V is in every textbook: main effects with four-factor, pairs with three-factor
/// interactions.
#[test]
fn aliases_of_a_half_fraction() {
    let design = Design::fraction(5, 1).unwrap();
    assert_eq!(design.defining_in_letters(), "I = ABCDE");
    let table: Vec<String> = design
        .alias_table(4)
        .iter()
        .map(|row| {
            let with: Vec<String> = row.with.iter().map(|word| word.to_text()).collect();
            format!("{} = {}", row.effect.to_text(), with.join(" = "))
        })
        .collect();
    assert_eq!(table[0], "A = BCDE");
    assert_eq!(table[5], "AB = CDE");
    assert_eq!(table.len(), 15);
    assert_eq!(Design::fraction(8, 3).unwrap().defining.len(), 7);
}

/// 2^(7−4) III: each main effect with three pairs, each pair named once.
#[test]
fn aliases_of_a_saturated_fraction() {
    let design = Design::fraction(7, 4).unwrap();
    assert_eq!(design.defining.len(), 15);
    let table = design.alias_table(2);
    assert_eq!(table.len(), 7);
    for row in &table {
        assert_eq!((row.effect.order(), row.with.len()), (1, 3));
    }
    assert_eq!(table[0].with, words(&["BD", "CE", "FG"]));
}

/// Two effects are aliases exactly when their columns of signs are alike.
#[test]
fn aliases_have_the_same_column() {
    for (factors, p) in [(5, 2), (6, 2), (7, 3), (8, 4)] {
        let design = Design::fraction(factors, p).unwrap();
        let column = |word: Word| design.runs.iter().map(|run| word.sign(run)).collect::<Vec<_>>();
        let all = products(&(0..factors).map(Word::main).collect::<Vec<_>>());
        for one in &all {
            let aliases = design.aliases(*one);
            for other in &all {
                let alike = column(*one) == column(*other);
                assert_eq!(alike, one == other || aliases.contains(other), "{one:?} {other:?}");
            }
        }
        // Every column but the mean's is balanced.
        for word in all.iter().filter(|word| **word != Word::IDENTITY && !design.defining.contains(word)) {
            assert_eq!(column(*word).iter().map(|sign| i32::from(*sign)).sum::<i32>(), 0);
        }
    }
}

#[test]
fn full_designs_in_standard_order() {
    let design = Design::full(&[2, 2, 2]);
    let signs: Vec<String> =
        design.runs.iter().map(|run| run.iter().map(|level| if *level == 0 { '-' } else { '+' }).collect()).collect();
    // Source: Yates' order; NIST/SEMATECH e-Handbook, table 3.7 of section 5.3.3.3.1.
    assert_eq!(signs, ["---", "+--", "-+-", "++-", "--+", "+-+", "-++", "+++"]);
    let mixed = Design::full(&[3, 2]);
    assert_eq!(mixed.runs, [[0, 0], [1, 0], [2, 0], [0, 1], [1, 1], [2, 1]]);
    assert_eq!((mixed.notation().as_str(), mixed.resolution()), ("3 × 2", None));
    assert!(mixed.alias_table(4).is_empty());
}

/// Source: Montgomery (2013), suggested blocking arrangements for 2^k designs
/// (from memory: two blocks by the highest interaction; 2^3 in four by AB and AC; 2^5 in four loses orders
/// 3, 3 and 4).
#[test]
fn blocks_lose_as_little_as_can_be() {
    let lost = |levels: usize, halvings: u32| {
        let design = Design::full(&vec![2; levels]);
        let words = design.block_words(halvings).unwrap();
        design.lost_to_blocks(&words).iter().map(|word| word.order()).collect::<Vec<_>>()
    };
    assert_eq!(lost(2, 1), [2]);
    assert_eq!(lost(3, 1), [3]);
    assert_eq!(lost(4, 1), [4]);
    assert_eq!(lost(3, 2), [2, 2, 2]);
    assert_eq!(lost(4, 2), [2, 3, 3]);
    assert_eq!(lost(5, 2), [3, 3, 4]);
    assert!(Design::full(&[2, 2]).block_words(2).is_none());
    assert!(Design::full(&[3, 2, 2]).block_words(1).is_none());
    // In a saturated fraction every effect is some main effect's alias.
    assert!(Design::fraction(7, 4).unwrap().block_words(1).is_none());
    let quarter = Design::fraction(6, 2).unwrap();
    let words = quarter.block_words(1).unwrap();
    assert!(quarter.lowest(words[0]) >= 2);
}

#[test]
fn words_in_letters() {
    assert_eq!(Word::parse("ABH").unwrap().to_text(), "ABH");
    assert_eq!(Word::IDENTITY.to_text(), "I");
    assert_eq!(Word::main(8).to_text(), "J", "I is the mean");
    assert_eq!(Word::parse("AA"), None);
    assert_eq!(Word::parse("Z"), None);
    assert_eq!(words(&["ABC"])[0].times(words(&["BCD"])[0]), words(&["AD"])[0]);
}
