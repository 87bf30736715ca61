//! All words that a person reads: the texts of each language in a folder of Fluent resources, and here which of them is said when,
//! with which numbers.
//!
//! Nothing here touches a page, so that every message can be tested natively.

mod bench;
pub mod compare;
mod context;
/// Words in Fluent resources.
pub mod fluent;
mod isolated;
mod line;
mod show;
mod sources;
mod width;
mod words;

pub use bench::{BenchContext, BenchWords};
pub use context::{Carrier, CautionWords, Context, FieldWords, FigureWords, Loose, Message, SystemWords};
pub use isolated::isolated;
pub use line::{LineContext, LineWords};
pub use show::{lower_first, shown, symbol_shown, trimmed, trimmed_to, unit_short, unit_shown};
pub use sources::{named_line, named_recipe, source_text, typical_liquids};
pub use width::{in_unit, plus_minus, width_shown};
pub use words::{WORDS, library, versions};

use crate::domain::balance::machine::Machine;
use crate::domain::chemistry::solute::Solute;
use crate::domain::chemistry::solution::MakeUpError;
use crate::domain::mixing::glue_batch::GlueError;
use crate::domain::recipe::binder_system::SystemKey;
use crate::domain::recipe::caution::Caution;
use crate::domain::recipe::draft::{FeedWay, LiquidDraft, WaterWay};
use crate::domain::recipe::limit::Source;
use crate::domain::working::{Constant, Ground};
use crate::domain::{
    BoardKind, DoseWay, Draft, Faces, Field, Figure, Finding, Furnish, Grade, Role, Station, Substance, What,
};
use crate::quantity::kind::UnitSystem;
use crate::record::store::library::{SaveError, Unread};
use crate::record::{Refusal, StoreError};
use std::borrow::Cow;

/// What is said of what.
#[allow(clippy::struct_field_names, reason = "a page is a noun here")]
pub struct Words {
    /// Label and hint of a field. A liquid's field is labelled without the liquid's name.
    pub field: fn(Field, &Draft) -> FieldWords,
    /// A field by its full name, as messages call it: with the liquid's name.
    pub field_name: fn(Field, &Draft) -> String,
    /// Label and basis of a figure. A liquid's figure is labelled without the liquid's name, a
    /// machine's with the machine's.
    pub figure: fn(Figure) -> FigureWords,
    /// What a liquid is called: its own name, or what it is while it has none.
    pub liquid: fn(&LiquidDraft) -> Cow<'_, str>,
    /// What was found, and how to fix it.
    pub finding: fn(&Finding, &Context<'_>) -> Message,
    /// What is wrong or unusual with an entry outside the recipe, and how to fix it.
    pub loose_entry: fn(&What, &Loose<'_>, &Context<'_>) -> Message,
    /// How grave a finding is, in one word or two.
    pub grade: fn(Grade) -> &'static str,
    /// A caution.
    pub caution: fn(Caution) -> CautionWords,
    /// Where a usual window comes from.
    pub source: fn(Source) -> Cow<'static, str>,
    /// A station of the line.
    pub station: fn(Station) -> &'static str,
    /// What a liquid is for.
    pub role: fn(Role) -> &'static str,
    /// What a liquid is made of.
    pub substance: fn(Substance) -> &'static str,
    /// A machine that may limit the line.
    pub machine: fn(Machine) -> &'static str,
    /// A way to fix the fibre flow.
    pub feed_way: fn(FeedWay) -> &'static str,
    /// The faces of the mat that a spray goes on.
    pub faces: fn(Faces) -> &'static str,
    /// What the furnish is made of.
    pub furnish: fn(Furnish) -> &'static str,
    /// The kind of board.
    pub board_kind: fn(BoardKind) -> &'static str,
    /// A way to fix the water dose.
    pub water_way: fn(WaterWay) -> &'static str,
    /// A way to enter a dose, its base named.
    pub dose_way: fn(DoseWay, &Draft) -> Cow<'static, str>,
    /// A binder system of the starting library.
    pub binder_system: fn(SystemKey) -> SystemWords,
    /// A system of units.
    pub system: fn(UnitSystem) -> &'static str,
    /// A substance that is dissolved in water.
    pub solute: fn(Solute) -> &'static str,
    /// Why a solution cannot be made up. Amounts of liquid are named by mass or volume as asked for.
    pub make_up: fn(&MakeUpError, &Context<'_>) -> Message,
    /// Why a glue cannot be mixed. The names of the parts stand in their places.
    pub glue: fn(&GlueError, &[&str], &Context<'_>) -> Message,
    /// A number from a table.
    pub constant: fn(Constant) -> &'static str,
    /// Where a formula comes from.
    pub ground: fn(Ground) -> Cow<'static, str>,
    /// Why a text is not taken, and where in it the trouble is.
    pub refusal: fn(&Refusal, Carrier) -> Message,
    /// Why a stored record is not shown.
    pub unread: fn(&Unread) -> Message,
    /// Why the store did not do what it was asked.
    pub store: fn(&StoreError) -> Message,
    /// Why something was not saved.
    pub unsaved: fn(&SaveError) -> Message,
    /// The bench.
    pub bench: BenchWords,
    /// The comparison.
    pub compare: compare::CompareWords,
    /// The line.
    pub line: LineWords,
}
