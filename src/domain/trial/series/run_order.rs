//! A run order that looks like chance and is the same for the same seed, on every machine.
//!
//! The generator is PCG-XSH-RR 64/32 (O'Neill, PCG: A Family of Simple Fast Space-Efficient Statistically
//! Good Algorithms for Random Number Generation, 2014), seeded with the number shown and the reference
//! implementation's default stream; a number below n is drawn by Lemire's rejection (2019), so that none
//! is favoured; the order is the shuffle of Fisher and Yates (Durstenfeld, 1964). A test holds the
//! generator against the reference implementation's published output, so that an update of the crate
//! cannot change an order that is on paper.

use oorandom::Rand32;

/// Draws orders from a seed.
#[derive(Debug, Clone)]
pub struct Chance(Rand32);

impl Chance {
    /// Begins at a seed.
    #[must_use]
    pub fn from_seed(seed: u64) -> Self {
        Self(Rand32::new(seed))
    }

    /// Brings things into an order drawn by chance: from the last place down, each is swapped with one
    /// drawn from all up to it.
    pub fn shuffle<T>(&mut self, things: &mut [T]) {
        for last in (1..things.len()).rev() {
            let Ok(range) = u32::try_from(last + 1) else { continue };
            let with = self.0.rand_range(0..range) as usize;
            things.swap(last, with);
        }
    }
}
