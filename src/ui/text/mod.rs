//! All words that a person reads: the texts of each language in a folder of Fluent resources, and here which of them is said when,
//! with which numbers.
//!
//! Nothing here touches a page, so that every message can be tested natively.

mod context;
/// Words in Fluent resources.
pub mod fluent;
mod isolated;
mod show;
mod sources;
mod width;
/// Which text is said when.
pub mod words;

pub use context::{
    BenchContext, Carrier, CautionWords, Context, FieldWords, FigureWords, LineContext, Loose, Message, SystemWords,
};
pub use isolated::isolated;
pub use show::{lower_first, shown, symbol_shown, trimmed, trimmed_to, unit_short, unit_shown};
pub use sources::{named_line, named_recipe, source_text, typical_liquids};
pub use width::{in_unit, plus_minus, width_shown};
pub use words::{library, versions};
