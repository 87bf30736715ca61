//! Trial boards: weigh sheets, series, boards made and tested, effects.

/// Boards made and tested.
pub mod boards;
/// Errors, warnings and notes at the bench, as data.
pub mod finding;
/// Series of trials: factors, design, run order, effects.
pub mod series;
/// The weigh sheet: what to weigh, and what was weighed.
pub mod weigh_sheet;

pub use boards::board::{BoardDraft, BoardId};
pub use boards::property::Property;
pub use finding::{TrialFinding, TrialPlace, TrialProblem};
pub use series::draft::SeriesDraft;
pub use series::runs::Series;
pub use weigh_sheet::draft::SheetDraft;
pub use weigh_sheet::field::WeighField;
pub use weigh_sheet::figure::{WeighFigure, WeighLineFigure};
pub use weigh_sheet::line_id::LineId;
pub use weigh_sheet::sheet::WeighSheet;
