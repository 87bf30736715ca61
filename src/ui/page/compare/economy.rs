//! The economy of a change: what is entered, and each system's costs, capacity and margin.

use super::comparison::Comparison;
use super::parts::{KeptBox, number_box};
use super::table;
use crate::browser::element::{Part, View, el, many};
use crate::browser::graph::*;
use crate::domain::Entry;
use crate::domain::compare::draft::CompareDraft;
use crate::domain::compare::economy::field::EconomyField;
use crate::domain::compare::system_choice::SystemChoice;
use crate::ui::field::loose::{LooseBox, number};
use crate::ui::signal::memo;

/// Boxes and table.
pub fn section(comparison: Comparison) -> View {
    let Comparison { state, shown, .. } = comparison;
    let words = &state.words.compare.economy;
    let boxes = EconomyField::COMMON.map(|field| {
        let kept = KeptBox {
            id: format!("economy-{}", field.key()),
            words: (words.field)(field),
            kind: field.kind(),
            limit: field.limit(),
            get: move |typed: &CompareDraft| {
                typed.economy.get(&field).cloned().unwrap_or_else(|| Entry::empty(field.unit()))
            },
            put: move |typed: &mut CompareDraft, entry: Entry| _ = typed.economy.insert(field, entry),
        };
        number_box(state, kept)
    });
    let agents = move || {
        shown.with(|shown| {
            let of = |(at, key): (usize, &SystemChoice)| {
                let field = EconomyField::ReleaseAgent;
                let (own, put) = (key.clone(), key.clone());
                let label = (words.field)(field);
                let named = format!("{}: {}", label.label, shown.name(at));
                el("div").class("named").child(el("p").child(shown.name(at))).child(number(LooseBox {
                    key: format!("release-agent-{at}"),
                    words: label,
                    named: Some(named),
                    kind: field.kind(),
                    limit: field.limit(),
                    entry: memo(move || {
                        let entered = state.compare.typed.with(|typed| typed.release_agent.get(&own).cloned());
                        entered.unwrap_or_else(|| Entry::empty(field.unit()))
                    }),
                    put: Callback::new(move |entry: Entry| {
                        state.compare.typed.update(|typed| _ = typed.release_agent.insert(put.clone(), entry));
                    }),
                }))
            };
            shown.keys.iter().enumerate().map(of).collect::<View>()
        })
    };
    let result = move || shown.with(|shown| table::economy(state, shown));
    many([
        el("p").class("note").child(words.hint).view(),
        el("div").class("fields").child(boxes.into_iter().collect::<View>()).child(agents).view(),
        el("div").class("results").child(result).view(),
    ])
    .view()
}
