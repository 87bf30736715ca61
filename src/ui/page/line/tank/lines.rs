//! What there is to say about tanks and the delivery, as lines of the warning slot.

use super::context::TankSheet;
use crate::browser::page;
use crate::domain::Grade;
use crate::domain::line::{LineField, LineFinding, LineFindingKind, LinePlace, TankId};
use crate::ui::components::SlotLine;
use crate::ui::page::line::context::with_context;
use crate::ui::page::line::lines::{common_lines, go_to_field, slot_line};
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// The lines of the warning slot.
pub fn tank_lines(state: State, sheet: TankSheet) -> Vec<SlotLine> {
    let mut lines = common_lines(state);
    let mut all = sheet.tanks.with(|tanks| tanks.iter().flat_map(|tank| tank.findings.clone()).collect::<Vec<_>>());
    state.line.checked.with(|line| {
        let about = |found: &&LineFinding| {
            let own = match found.place {
                LinePlace::Field(field) => matches!(field, LineField::Tank(..)),
                LinePlace::Tank(_) => true,
                _ => false,
            };
            own && !matches!(found.what, LineFindingKind::Entry(_))
        };
        all.extend(line.findings.iter().filter(about).cloned());
    });
    // What is wrong with an entry is said below the boxes.
    let delivery =
        |found: &&LineFinding| found.grade != Grade::Note && !matches!(found.what, LineFindingKind::Entry(_));
    sheet.delivery.with(|now| all.extend(now.findings.iter().filter(delivery).cloned()));
    all.dedup();
    for found in &all {
        let message = with_context(state, |context| words::line::finding(found, context));
        let show = match found.place {
            LinePlace::Tank(id) => Some(Callback::new(move |()| to_tank(sheet, id))),
            LinePlace::Field(field) => Some(Callback::new(move |()| go_to_field(state, field))),
            _ => None,
        };
        lines.push(slot_line(found.grade, format!("{} {}", message.what, message.fix), show));
    }
    lines
}

/// Opens a tank's details, where its order is marked.
fn to_tank(sheet: TankSheet, id: TankId) {
    sheet.open_tank.set(Some(id));
    request_animation_frame(move || page::show(&format!("#tank-order-{}", id.0)));
}
