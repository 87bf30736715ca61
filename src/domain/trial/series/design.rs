//! Factorial designs: all combinations, or a fraction of those of two levels.

use crate::domain::trial::series::fraction;
use crate::domain::trial::series::word::{Word, letter, products, sort};

/// A factorial design, without the factors' meaning.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Design {
    /// How many levels each factor has.
    pub levels: Vec<u8>,
    /// What the last factors are made of in a fraction: each factor's place and its generating word.
    pub generators: Vec<(usize, Word)>,
    /// The defining relation without I: every word that is aliased with the mean. Empty for a
    /// full design.
    pub defining: Vec<Word>,
    /// The runs in standard order, the first factor changing fastest; a level a factor, from 0.
    pub runs: Vec<Vec<u8>>,
}

/// An effect and its aliases.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Aliases {
    /// The effect.
    pub effect: Word,
    /// The effects that have the same column, lowest order first.
    pub with: Vec<Word>,
}

impl Design {
    /// All combinations. Of no levels or none at all there is one empty run or none.
    #[must_use]
    pub fn full(levels: &[u8]) -> Self {
        let mut runs = vec![Vec::new()];
        for count in levels.iter().rev() {
            // Built from the last factor, so that the first one changes fastest.
            runs = runs
                .iter()
                .flat_map(|rest| {
                    (0..*count).map(move |level| std::iter::once(level).chain(rest.iter().copied()).collect())
                })
                .collect();
        }
        Self { levels: levels.to_vec(), generators: Vec::new(), defining: Vec::new(), runs }
    }

    /// The fraction 2^(k−p) of the published table; `None` where it has none.
    #[must_use]
    pub fn fraction(factors: usize, p: usize) -> Option<Self> {
        let words = fraction::generators(factors, p)?;
        let basic = factors.checked_sub(words.len())?;
        let mut design = Self::full(&vec![2; basic]);
        for run in &mut design.runs {
            let signs: Vec<u8> = words.iter().map(|word| u8::from(word.sign(run) > 0)).collect();
            run.extend(signs);
        }
        design.levels = vec![2; factors];
        design.generators = words.iter().enumerate().map(|(at, word)| (basic + at, *word)).collect();
        let relations: Vec<Word> =
            design.generators.iter().map(|(factor, word)| word.times(Word::main(*factor))).collect();
        design.defining = products(&relations).split_off(1);
        sort(&mut design.defining);
        Some(design)
    }

    /// Whether every factor has two levels, so that effects have words.
    #[must_use]
    pub fn is_two_level(&self) -> bool {
        self.levels.iter().all(|levels| *levels == 2)
    }

    /// The order of the shortest word of the defining relation: III, IV, V, …; `None` for a full design.
    #[must_use]
    pub fn resolution(&self) -> Option<u32> {
        self.defining.iter().map(|word| word.order()).min()
    }

    /// The aliases of an effect, lowest order first.
    #[must_use]
    pub fn aliases(&self, effect: Word) -> Vec<Word> {
        let mut with: Vec<Word> = self.defining.iter().map(|word| word.times(effect)).collect();
        sort(&mut with);
        with
    }

    /// Every main effect and two-factor interaction with its aliases up to an order. An interaction
    /// that stands beside an earlier one is not repeated. Empty for more than two levels.
    #[must_use]
    pub fn alias_table(&self, most_order: u32) -> Vec<Aliases> {
        if !self.is_two_level() {
            return Vec::new();
        }
        let factors = self.levels.len();
        let mains = (0..factors).map(Word::main);
        let pairs = (0..factors).flat_map(|one| (one + 1..factors).map(move |other| Word::pair(one, other)));
        let mut table: Vec<Aliases> = Vec::new();
        for effect in mains.chain(pairs) {
            if table.iter().any(|row| row.with.contains(&effect)) {
                continue;
            }
            let mut with = self.aliases(effect);
            with.retain(|word| word.order() <= most_order);
            table.push(Aliases { effect, with });
        }
        table
    }

    /// The design's name in the standard notation: "2^(5−1) V", "2^3", "3 × 2 × 2".
    #[must_use]
    pub fn notation(&self) -> String {
        let factors = self.levels.len();
        match (self.is_two_level(), self.resolution()) {
            (true, Some(resolution)) => {
                format!("2^({factors}\u{2212}{}) {}", self.generators.len(), roman(resolution))
            }
            (true, None) => format!("2^{factors}"),
            (false, _) => self.levels.iter().map(u8::to_string).collect::<Vec<_>>().join(" × "),
        }
    }

    /// The generators in the standard notation: "E = ABCD".
    #[must_use]
    pub fn generators_in_letters(&self) -> Vec<String> {
        self.generators.iter().map(|(factor, word)| format!("{} = {}", letter(*factor), word.to_text())).collect()
    }

    /// The defining relation in the standard notation: "I = ABD = ACE = BCDE"; empty for a full design.
    #[must_use]
    pub fn defining_in_letters(&self) -> String {
        if self.defining.is_empty() {
            return String::new();
        }
        let words: Vec<String> = self.defining.iter().map(|word| word.to_text()).collect();
        format!("I = {}", words.join(" = "))
    }

    /// Words whose signs split a replicate into 2^`halvings` blocks, so chosen that the effects that
    /// confounded with blocks are of the highest order there is, and as few of the lowest as can be.
    /// `None` where a main effect would be lost, and for more than two levels.
    ///
    /// Of one halving all words are tried, of two all pairs; more are not offered.
    #[must_use]
    pub fn block_words(&self, halvings: u32) -> Option<Vec<Word>> {
        let basic = self.levels.len() - self.generators.len();
        if !self.is_two_level() || !(1..=2).contains(&halvings) || basic < halvings as usize + 1 {
            return None;
        }
        let mut words: Vec<Word> = products(&(0..basic).map(Word::main).collect::<Vec<_>>()).split_off(1);
        sort(&mut words);
        let choices: Vec<Vec<Word>> = match halvings {
            1 => words.iter().map(|word| vec![*word]).collect(),
            _ => words
                .iter()
                .enumerate()
                .flat_map(|(at, one)| words.iter().skip(at + 1).map(move |other| vec![*one, *other]))
                .collect(),
        };
        // The lowest order lost, and how many are lost at it: the first as high, the second as low as can be.
        let loss = |choice: &Vec<Word>| {
            let orders: Vec<u32> = self.lost_to_blocks(choice).iter().map(|word| self.lowest(*word)).collect();
            let minimum = orders.iter().copied().min().unwrap_or(0);
            (minimum, orders.iter().filter(|order| **order == minimum).count())
        };
        let mut best: Option<(u32, usize, Vec<Word>)> = None;
        for choice in choices {
            let (minimum, count) = loss(&choice);
            let better = best.as_ref().is_none_or(|(most, fewest, _)| (minimum, *fewest) > (*most, count));
            if minimum >= 2 && better {
                best = Some((minimum, count, choice));
            }
        }
        best.map(|(.., words)| words)
    }

    /// The effects confounded with blocks made by these words, lowest order first.
    #[must_use]
    pub fn lost_to_blocks(&self, words: &[Word]) -> Vec<Word> {
        let mut lost = products(words).split_off(1);
        sort(&mut lost);
        lost
    }

    /// The order of the lowest effect that has the same column as this one.
    #[must_use]
    pub fn lowest(&self, effect: Word) -> u32 {
        self.defining.iter().map(|word| word.times(effect).order()).chain([effect.order()]).min().unwrap_or(0)
    }
}

/// A number in Roman numerals, up to 12: no design here has a longer word.
#[must_use]
pub fn roman(number: u32) -> &'static str {
    const NUMERALS: [&str; 13] = ["", "I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX", "X", "XI", "XII"];
    usize::try_from(number).ok().and_then(|at| NUMERALS.get(at)).copied().unwrap_or("")
}
