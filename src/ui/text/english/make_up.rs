//! Solutions and glue mixes: why one cannot be made up.

use crate::domain::glue_batch::GlueError;
use crate::domain::solution::MakeUpError;
use crate::ui::text::{Context, Message};

pub(super) fn make_up(error: &MakeUpError, _context: &Context<'_>) -> Message {
    Message { what: format!("{error:?}"), mend: String::new() }
}

pub(super) fn glue(error: &GlueError, _names: &[&str], _context: &Context<'_>) -> Message {
    Message { what: format!("{error:?}"), mend: String::new() }
}
