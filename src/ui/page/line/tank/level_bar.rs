//! The content of a tank, drawn.

use super::context::{TankNow, amount};
use crate::quantity::Kind;
use crate::t;
use crate::ui::state::State;
use leptos::prelude::*;
use uom::si::f64::Volume;

/// Width of the drawing.
const WIDTH: f64 = 96.0;

/// The level from empty to full, with a line where the heel ends. Nothing where the content is not known.
pub fn level_bar(state: State, row: &TankNow) -> Option<AnyView> {
    let (tank, found) = row.tank.as_ref().zip(row.state)?;
    let share = |volume: Volume| (volume / tank.capacity).value.clamp(0.0, 1.0);
    let (level, heel) = (share(found.content), share(tank.heel));
    let words = t!("tank-bar", level = amount(state, Kind::Share, level), heel = amount(state, Kind::Share, heel));
    Some(
        view! {
            <svg class="level-bar" viewBox="0 0 96 20" role="img" aria-label=words>
                <rect class="all" y="4" width=WIDTH height="12"></rect>
                <rect class="content" y="4" width=format!("{:.1}", level * WIDTH) height="12"></rect>
                <path class="heel" d=format!("M{:.1} 1V19", (heel * WIDTH).clamp(1.0, WIDTH - 1.0))></path>
            </svg>
        }
        .into_any(),
    )
}
