//! The economy of a change: what is entered, and each system's costs, capacity and margin.

use super::comparison::Comparison;
use super::parts::{KeptBox, number_box};
use super::table;
use crate::browser::element::{Part, View, el, many};
use crate::browser::graph::*;
use crate::domain::Entry;
use crate::domain::compare::draft::CompareDraft;
use crate::domain::compare::economy::field::{EconomyField, SystemEconomyEntries, SystemEconomyField};
use crate::domain::compare::system_choice::SystemChoice;
use crate::ui::field::loose::{LooseBox, number};
use crate::ui::signal::memo;

/// Boxes and table.
pub fn section(comparison: Comparison) -> View {
    let Comparison { state, shown, .. } = comparison;
    let words = &state.words.compare.economy;
    let boxes = EconomyField::ALL.iter().map(|field| {
        let field = *field;
        let kept = KeptBox {
            id: format!("economy-{}", field.key()),
            words: (words.field)(field),
            kind: field.kind(),
            limit: field.limit(),
            get: move |typed: &CompareDraft| typed.economy.entry(field).clone(),
            put: move |typed: &mut CompareDraft, entry: Entry| *typed.economy.entry_mut(field) = entry,
        };
        number_box(state, kept)
    });
    let agents = move || {
        shown.with(|shown| {
            let of = |(at, key): (usize, &SystemChoice)| {
                let field = SystemEconomyField::ReleaseAgent;
                let (own, put) = (key.clone(), key.clone());
                let label = (words.system_field)(field);
                let named = format!("{}: {}", label.label, shown.name(at));
                el("div").class("named").child(el("p").child(shown.name(at))).child(number(LooseBox {
                    key: format!("release-agent-{at}"),
                    words: label,
                    named: Some(named),
                    kind: field.kind(),
                    limit: field.limit(),
                    entry: memo(move || {
                        let entered = state.compare.typed.with(|typed| typed.system_economy.get(&own).cloned());
                        entered.unwrap_or_else(SystemEconomyEntries::default).entry(field).clone()
                    }),
                    put: Callback::new(move |entry: Entry| {
                        state.compare.typed.update(|typed| {
                            *typed.system_economy.entry(put.clone()).or_default().entry_mut(field) = entry;
                        });
                    }),
                }))
            };
            shown.keys.iter().enumerate().map(of).collect::<View>()
        })
    };
    let result = move || shown.with(|shown| table::economy(state, shown));
    many([
        el("p").class("note").child(words.hint).view(),
        el("div").class("fields").child(boxes.collect::<View>()).child(agents).view(),
        el("div").class("results").child(result).view(),
    ])
    .view()
}
