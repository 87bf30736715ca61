//! The weigh sheet: masses in order of addition, rounded to the balance, and the doses they really give.

/// The actual doses and moisture of the weighed masses.
pub mod actual;
/// What was typed on the weigh sheet, raw, and the choices made.
pub mod draft;
/// The weigh sheet that a first start shows.
pub mod example;
/// The boxes of the weigh sheet.
pub mod field;
/// Every figure of the weigh sheet by name.
pub mod figure;
/// What belongs to the laboratory and not to one trial.
pub mod lab_setup;
/// What a line of the weigh sheet weighs.
pub mod line_id;
/// The mass and the target dose of each line.
pub mod masses;
/// From the sheet's draft and the recipe to a plan.
pub mod plan;
/// How far each line of a batch is.
pub mod progress;
/// The true blending loss, and the mass to lay.
pub mod recovery;
/// What was entered of the furnish recovered.
pub mod recovery_draft;
/// The weigh sheet.
pub mod sheet;
/// Masses that look like a slip.
pub mod slip;
/// What was weighed, and what remains to be added.
pub mod weighing;
/// How each figure of the weigh sheet was computed.
pub mod working;
