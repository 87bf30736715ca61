//! What all sections of the page share.

use super::systems::Compared;
use crate::ui::signal::Memo;
use crate::ui::state::State;
use std::sync::Arc;

/// The comparison as the sections see it.
#[derive(Clone, Copy)]
pub struct Comparison {
    /// The app.
    pub state: State,
    /// The systems, solved.
    pub shown: Memo<Arc<Compared>>,
    /// Hours a year; `None` where none are entered that count.
    pub hours: Memo<Option<u16>>,
}
