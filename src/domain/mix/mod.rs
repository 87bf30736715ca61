//! What is typed where solutions and glues are made up, and what comes of it.

mod draft;
mod field;
mod outcome;
mod tank;

pub use draft::{AmountWay, Entries, MixDraft, PartKey, ShareWay, TankPart};
pub use field::{MixField, SHARE};
pub use outcome::{Isocyanate, MadeUp, Trouble, formaldehyde_ratio, isocyanate, solution};
pub use tank::{Candidate, batch, cautions, fill_in_shares, tank, wets_isocyanate};
