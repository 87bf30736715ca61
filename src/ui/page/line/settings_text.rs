//! Settings and their changes in words, on the page and on paper.

use super::context::with_context;
use super::parts::setting;
use crate::domain::line::{LinePlace, PumpId, PumpRow, RSquared};
use crate::label;
use crate::ui::state::State;
use crate::ui::text::{trimmed_to, words};
use leptos::reactive::prelude::*;

/// The setting of one pump in words: the number, "off", or that there is none.
pub fn setting_text(state: State, row: &PumpRow) -> String {
    row.set_to.map_or_else(|| no_setting(row).to_owned(), |found| setting(state, found, row.unit))
}

/// Why there is no number to set a pump to.
pub fn no_setting(row: &PumpRow) -> &'static str {
    if row.mass.value <= 0.0 {
        label!("line-off")
    } else if row.setting.is_some() {
        label!("line-set-cannot")
    } else {
        label!("line-no-setting")
    }
}

/// A relative change with its sign.
pub fn signed(state: State, fraction: f64) -> String {
    let percent = (fraction * 10_000.0).round() / 100.0;
    let sign = if percent > 0.0 { "+" } else { "" };
    let number = trimmed_to(percent, 3, state.units.with(|units| units.mark));
    format!("{sign}{number}\u{a0}%")
}

/// R² to as many digits as tell good lines apart.
pub fn share_explained(state: State, r_squared: RSquared) -> String {
    trimmed_to(r_squared.value(), 5, state.units.with(|units| units.mark))
}

/// A pump by its name.
pub fn pump_name(state: State, id: PumpId) -> String {
    with_context(state, |context| words::line::place(LinePlace::Pump(id), context))
}
