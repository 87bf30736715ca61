//! The weigh sheet: masses in order of addition, rounded to the balance, and the doses they really give.

/// What was typed on the weigh sheet, raw, and the choices made.
pub mod draft;
/// The boxes of the weigh sheet.
pub mod field;
/// Every figure of the weigh sheet by name.
pub mod figure;
/// The doses and the moisture that the weighed masses really give.
pub mod given;
/// The possible and the typical range of each box.
pub mod limit;
/// What a line of the weigh sheet weighs.
pub mod line_id;
/// From the sheet's draft and the recipe to a plan.
pub mod plan;
/// The weigh sheet.
pub mod sheet;
/// What was weighed, and what remains to be added.
pub mod weighing;
/// How each figure of the weigh sheet was computed.
pub mod working;
