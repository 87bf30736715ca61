//! How a ± is stated: what it means, and whether it is a share of the value.

use crate::domain::compare::uncertainty::input_uncertainty::Form;
use serde::{Deserialize, Serialize};

/// How a ± is stated.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Statement {
    /// What it means.
    pub form: Form,
    /// Whether it is a share of the value.
    pub relative: bool,
}

impl Statement {
    /// All ways, in the order in which they are offered.
    pub const ALL: [Statement; 6] = {
        const fn stated(form: Form, relative: bool) -> Statement {
            Statement { form, relative }
        }
        [
            stated(Form::HalfWidth, false),
            stated(Form::HalfWidth, true),
            stated(Form::Interval95, false),
            stated(Form::Interval95, true),
            stated(Form::Standard, false),
            stated(Form::Standard, true),
        ]
    };

    /// Its stable key, on the page.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match (self.form, self.relative) {
            (Form::HalfWidth, false) => "limits",
            (Form::HalfWidth, true) => "limits_share",
            (Form::Interval95, false) => "interval",
            (Form::Interval95, true) => "interval_share",
            (Form::Standard, false) => "standard",
            (Form::Standard, true) => "standard_share",
        }
    }
}
