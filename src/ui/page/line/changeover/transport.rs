//! How long material travels from station to station.

use crate::domain::line::limit::limit;
use crate::domain::line::{LineField, TransportField};
use crate::domain::recipe::check::read_entry;
use crate::quantity::Amount;
use crate::t;
use crate::ui::page::line::settings::line_box::{LineFieldBox, LineMessages};
use crate::ui::part::amount::with_unit;
use crate::ui::state::State;
use leptos::prelude::*;

const ALL: [LineField; 5] = [
    LineField::Transport(TransportField::BlenderToFormer),
    LineField::Transport(TransportField::FormerToPress),
    LineField::Transport(TransportField::PressToSaw),
    LineField::Transport(TransportField::Mixing),
    LineField::Transport(TransportField::StepGap),
];

/// The boxes, folded. They are there from the start: a warning leads to one of them.
#[component]
pub fn TransportTimes() -> impl IntoView {
    let state = expect_context::<State>();
    let note = move || {
        let of = |part: &TransportField| {
            let field = LineField::Transport(*part);
            let base = state
                .line
                .book(|book| read_entry(book.transport.entry(*part), part.kind(), &limit(field, book)).ok().flatten());
            let time = base
                .map_or_else(|| "–".to_owned(), |base| with_unit(state, Amount::from_base(part.kind(), base), None));
            format!("{} {time}", label(*part))
        };
        TransportField::ALL.iter().map(of).collect::<Vec<_>>().join(" · ")
    };
    let one = |part: &TransportField| view! { <LineFieldBox field=LineField::Transport(*part) label=label(*part)/> };
    view! {
        <details class="fold-section" id="transport-times">
            <summary>
                <h2>{t!("change-transport")}</h2>
                <span class="note">{note}</span>
            </summary>
            <div class="transport-boxes">{TransportField::ALL.iter().map(one).collect_view()}</div>
            <div class="box-messages"><LineMessages fields=&ALL/></div>
        </details>
    }
}

fn label(part: TransportField) -> String {
    match part {
        TransportField::BlenderToFormer => t!("change-blender-former"),
        TransportField::FormerToPress => t!("change-former-press"),
        TransportField::PressToSaw => t!("change-press-saw"),
        TransportField::Mixing => t!("change-mixing"),
        TransportField::StepGap => t!("change-step-gap"),
    }
}
