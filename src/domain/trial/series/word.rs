//! Words of a two-level design: effects written with the letters of their factors.

/// Letters of the factors. I stands for the mean and is left out, as is usual.
const LETTERS: &[u8] = b"ABCDEFGHJKLM";

/// An effect: the factors that take part in it. Without any it is the mean, I.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Default)]
pub struct Word(u16);

impl Word {
    /// The mean, I.
    pub const IDENTITY: Self = Self(0);

    /// The main effect of the factor at that place, from 0. Places past the letters give the mean.
    #[must_use]
    pub const fn main(factor: usize) -> Self {
        if factor < LETTERS.len() { Self(1 << factor) } else { Self::IDENTITY }
    }

    /// The interaction of two factors.
    #[must_use]
    pub const fn pair(one: usize, other: usize) -> Self {
        Self::main(one).times(Self::main(other))
    }

    /// The word with those letters; `None` for any other character, or for a letter twice.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        text.bytes().try_fold(Self::IDENTITY, |word, letter| {
            let factor = LETTERS.iter().position(|known| *known == letter)?;
            (!word.has(factor)).then(|| word.times(Self::main(factor)))
        })
    }

    /// The product: a factor that takes part in both drops out, as its square is I.
    #[must_use]
    pub const fn times(self, other: Self) -> Self {
        Self(self.0 ^ other.0)
    }

    /// How many factors take part.
    #[must_use]
    pub const fn order(self) -> u32 {
        self.0.count_ones()
    }

    /// Whether a factor takes part.
    #[must_use]
    pub const fn has(self, factor: usize) -> bool {
        factor < 16 && self.0 >> factor & 1 == 1
    }

    /// The word in letters, as is standard: "ABD"; "I" for the mean.
    #[must_use]
    pub fn to_text(self) -> String {
        if self == Self::IDENTITY {
            return "I".to_owned();
        }
        (0..LETTERS.len()).filter(|factor| self.has(*factor)).map(letter).collect()
    }

    /// The sign of the effect in a run: the product of its factors' levels, low −1 and high +1.
    #[must_use]
    pub fn sign(self, levels: &[u8]) -> i8 {
        let low = levels.iter().enumerate().filter(|(factor, level)| self.has(*factor) && **level == 0).count();
        if low.is_multiple_of(2) { 1 } else { -1 }
    }
}

/// The letter of the factor at that place, from 0.
#[must_use]
pub fn letter(factor: usize) -> char {
    LETTERS.get(factor).map_or('?', |letter| char::from(*letter))
}

/// Words by their order, then by their letters: main effects first.
pub(in crate::domain::trial) fn sort(words: &mut [Word]) {
    words.sort_by_cached_key(|word| (word.order(), word.to_text()));
}

/// All products of the words, each choice of them once, the identity first.
#[must_use]
pub fn products(words: &[Word]) -> Vec<Word> {
    words.iter().fold(vec![Word::IDENTITY], |mut all, word| {
        let more: Vec<Word> = all.iter().map(|product| product.times(*word)).collect();
        all.extend(more);
        all
    })
}
