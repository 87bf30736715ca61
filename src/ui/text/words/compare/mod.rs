//! The comparison: names, answers, uncertainty.

mod answer;
mod economy;
mod emission;
mod name;
mod side;
mod uncertainty;

pub use answer::{answer, break_even, limited, no_answer, no_price, no_range};
pub use economy::{field as economy_field, system_field as system_economy_field};
pub use emission::{article, error as emission_error, field as emission_field, market};
pub use name::{form, instrument, obstacle, output};
pub use side::{difference, not_side_by_side, unpriced};
pub use uncertainty::{agreement_note, no_study, uncertain, why};
