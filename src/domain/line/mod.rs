//! At the line: from a solved recipe to pump settings, line check, tanks and changeover.
//!
//! `LineBook` is what a mill typed about its line; `check_line` reads it. Every sheet takes a solved recipe and
//! a checked line and returns figures with findings.

/// The numbers entered beside pumps and tanks, in groups.
pub mod entries;

/// A mill's line as typed.
pub mod book;
/// From one recipe to another: the steps, and when the new furnish arrives where.
pub mod changeover;
/// From a book to pumps and tanks, or to what is wrong with them.
pub mod checked;
/// The line of the invented mill of the example.
pub mod example;
/// The address of every number that is typed at the line.
pub mod field;
/// Every key figure of the line by name.
pub mod figure;
/// Errors, warnings and notes at the line, as data.
pub mod finding;
/// The possible and the typical range of each box at the line.
pub mod limit;
/// What the line really does: readings, deviations, corrections.
pub mod line_check;
/// The mass balance of a shift or a week.
pub mod period;
/// Pumps: catch tests, settings, the settings table.
pub mod pumps;
mod read;
/// The steps of a changeover as one list.
pub mod schedule;
/// In what order a changeover steps, and why.
pub mod step;
/// Tanks and deliveries.
pub mod tanks;
/// How each key figure was computed.
pub mod working;

pub use crate::statistics::regression::{Fit, Model, RSquared};
pub use book::{LineBook, ReadOn};
pub use changeover::{Changeover, changeover};
pub use checked::{CheckedLine, Examined, Tolerances, Transport, check_line, examine};
pub use entries::{
    ConditionField, DeliveryEntries, DeliveryField, ReadOf, RunningField, TableField, TableRows, ToleranceField,
    TransportField, UncertaintyField,
};
pub use example::example_line;
pub use field::LineField;
pub use figure::LineFigure;
pub use finding::{LineFinding, LineFindingKind, LinePlace};
pub use line_check::actual::{Actual, FlowSource, LiquidActual, PumpActual};
pub use line_check::check::{LineCheck, check_readings};
pub use line_check::correction::{FormerCorrection, PumpAction, PumpCorrection};
pub use line_check::deviation::{Check, Deviation, RunFigure, Verdict};
pub use line_check::reading::{MeterReading, PumpReading, RawBoard, Readings, Sample, read_running};
pub use line_check::reconcile::model::LineModel;
pub use line_check::reconcile::quantity::LineQuantity;
pub use line_check::reconcile::uncertainty::Uncertainties;
pub use line_check::reconcile::verdict::{Doubt, DoubtfulReading, LineDensitySplit, LineReconciliation, LineVerdict};
pub use line_check::row::{CheckRow, blank_rows, check_rows};
pub use line_check::stale::stale;
pub use period::{
    PeriodBalance, PeriodDraft, PeriodField, PeriodLiquidField, PeriodLiquidId, PeriodQuantity, read_period,
};
pub use pumps::catch_test::{
    CalibrationDraft, CalibrationField, CalibrationId, Caught, LEAST_ROWS, RowDraft, RowField, RowId,
};
pub use pumps::conditions::{Conditions, at_conditions};
pub use pumps::curve::{Curve, SettingFor};
pub use pumps::drift::{Drift, TestedFlow, drift, tested_flows};
pub use pumps::help::Help;
pub use pumps::metering::Metering;
pub use pumps::pump::{Pump, PumpDraft, PumpField, PumpId, ReadingWay};
pub use pumps::pump_settings::{PumpRow, PumpSettings, on_line, pump_settings, try_pump_settings};
pub use pumps::range_status::RangeStatus;
pub use pumps::setting::{Setting, SettingUnit};
pub use pumps::settings_table::{SettingsTable, settings_table};
pub use schedule::{Scheduled, ScheduledEvent, next_steps, schedule};
pub use tanks::blend::{Blend, Stock};
pub use tanks::delivery::{Delivered, Moved, deliver};
pub use tanks::feeds::{Fed, Feeds, Tie};
pub use tanks::tank::{Tank, TankDraft, TankField, TankId, TankWay};
pub use tanks::tank_state::TankState;
pub use working::{LineOrigin, LineWorking};
