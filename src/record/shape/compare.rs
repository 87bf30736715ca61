//! The shape of what is chosen and typed where systems are compared.

use super::fields;
use crate::domain::compare::draft::{Chosen, CompareDraft, Typed};

fields!(Chosen { Must what, Must key });
fields!(Typed { Must what, Must entry });
fields!(default CompareDraft { May systems, May reference, May own_conditions, May chosen, May typed });
