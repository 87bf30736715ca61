//! What the tabs of series, boards and effects share: their boxes, their figures, and what is said about them.

mod context;
mod figure;
mod findings;
mod group_name;
mod place_choice;
mod trial_box;

pub use context::{BoardsFigure, TrialDesk};
pub use figure::{BoardsWorking, FigureOfBoard, amount_parts, board_name, close_working, signed_share};
pub use findings::slot_lines;
pub use group_name::{group_key, group_name, levels_of_run};
pub use place_choice::PlaceChoice;
pub use trial_box::{ColumnUnit, TrialBox, TrialMessages, paste_column};

pub use super::sheet::text::shown;
