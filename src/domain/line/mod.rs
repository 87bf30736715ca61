//! At the line: from a solved recipe to pump settings, and what really runs.
//!
//! `LineBook` is what a mill typed about its line; `check_line` reads it. Every sheet takes a solved recipe and
//! a checked line and gives figures with findings:
//!
//! - `setting_sheet`: what every pump has to be set to;
//! - `rate_card`: the same over fibre flows and moistures;
//! - `run`: what the readings of the running line say;
//! - `Tank::state`: how long the tanks last;
//! - `changeover`: how to step from one recipe to another, and when the new furnish arrives where;
//! - `deliver`: what a new delivery of a liquid moves.
//!
//! `working` explains every key figure.

/// Makes a uom quantity of a number in SI base units.
macro_rules! si {
    ($quantity:ident, $value:expr) => {
        uom::si::f64::$quantity { dimension: std::marker::PhantomData, units: std::marker::PhantomData, value: $value }
    };
}

mod group;

// What is typed.

/// What a mill's line is, as typed.
pub mod book;
/// Catch tests and their rows.
pub mod catch_test;
/// The line of the invented mill of the example.
pub mod example;
/// What a pump or a tank holds, across recipes.
pub mod feeds;
/// The address of every number that is typed at the line.
pub mod field;
/// What a box at the line may hold and what is usual.
pub mod limit;
/// Pumps.
pub mod pump;
/// What a pump's drive is set to.
pub mod setting;
/// Tanks.
pub mod tank;

// From what is typed to what can be reckoned with.

/// From a book to pumps and tanks, or to what is wrong with them.
pub mod check;
/// What there is to say at the line, as data.
pub mod finding;
/// What would help a pump to serve a flow.
pub mod help;
/// Reads boxes and puts down what is wrong with them.
mod read;

// What catch tests tell.

/// A pump's line at the density of today.
pub mod curve;
/// How far a pump has moved since an earlier catch test.
pub mod drift;

// Sheets.

/// From one recipe to another.
pub mod changeover;
/// The likely reason when something runs off the recipe.
pub mod culprit;
/// What a new delivery of a liquid moves.
pub mod delivery;
/// Figures of the running line, held against the recipe.
pub mod deviation;
/// Nozzles to open.
pub mod nozzles;
/// Pump settings over fibre flows and moistures.
pub mod rate_card;
/// What was read off the running line.
pub mod reading;
/// What really runs.
pub mod running;
/// What every pump has to be set to.
pub mod setting_sheet;
/// In what order a changeover steps, and why.
pub mod step;
/// What brings what runs back to the recipe.
pub mod trim;

// Explained.

/// Every key figure of the line by name.
pub mod figure;
/// How each key figure came about.
pub mod working;

pub use crate::statistics::regression::{Fit, Model, RSquared};
pub use book::{CardField, CardRows, DeliveryField, LineBook, RunningField, ToleranceField, TransportField};
pub use catch_test::{
    CalibrationDraft, CalibrationField, CalibrationId, Caught, LEAST_ROWS, RowDraft, RowField, RowId,
};
pub use changeover::{Changeover, changeover};
pub use check::{CheckedLine, Tolerances, Transport, check_line, examine};
pub use culprit::Culprit;
pub use curve::{Curve, SettingFor};
pub use delivery::{Delivered, deliver};
pub use deviation::{Check, Deviation, RunFigure};
pub use drift::{Drift, drift};
pub use example::example_line;
pub use feeds::{Fed, Feeds, Tie};
pub use field::LineField;
pub use figure::LineFigure;
pub use finding::{LineFinding, LinePlace, LineWhat, Standing};
pub use help::Help;
pub use pump::{Metering, Pump, PumpDraft, PumpField, PumpId, ReadingWay};
pub use rate_card::{RateCard, rate_card};
pub use reading::{Reading, Readings, Sample, read_running};
pub use running::{Known, Running, run};
pub use setting::{Setting, SettingUnit};
pub use setting_sheet::{PumpRow, SettingSheet, setting_sheet, try_setting_sheet};
pub use tank::{Tank, TankDraft, TankField, TankId, TankState, TankWay};
pub use working::{LineOrigin, LineWorking};
