//! The parts that pages are made of; their css is under `style/component/`.

mod announce;
mod cautions;
mod choice;
mod figure;
mod fold;
mod grid;
mod limit_bar;
mod mark;
mod measured;
mod menu;
mod notice;
mod number_box;
mod tabs;
mod text_box;
mod unit_choice;
mod warning_slot;
mod working;

pub use announce::Announce;
pub use cautions::{CautionItem, Cautions};
pub use choice::{Choice, ChoiceOption};
pub use figure::{FigureValue, Rank};
pub use fold::Fold;
pub use grid::Grid;
pub use limit_bar::LimitBar;
pub use mark::Mark;
pub use measured::Measured;
pub use menu::Menu;
pub use notice::{UNDO, UndoNotice};
pub use number_box::{BoxMessage, BoxState, NumberBox};
pub use tabs::Tabs;
pub use text_box::{TextArea, TextBox};
pub use unit_choice::UnitChoice;
pub use warning_slot::{SlotLine, WarningSlot};
pub use working::{WorkingFrame, WorkingPanel, opens, working_text};
