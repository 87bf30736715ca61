//! The emission sheet: what is entered, what comes of it, and the limits by market.

use super::comparison::Comparison;
use super::parts::{KeptBox, follow, number_box};
use super::table;
use crate::browser::element::{Part, View, el, many};
use crate::domain::Entry;
use crate::domain::compare::draft::CompareDraft;
use crate::domain::compare::emission::{EmissionField, sheet};
use crate::ui::table::emission as figures;
use leptos::reactive::prelude::*;

/// Boxes and table.
pub fn section(comparison: Comparison) -> View {
    let state = comparison.state;
    let words = &state.words.compare.emission;
    let boxes = EmissionField::ALL.iter().map(|field| {
        let field = *field;
        let kept = KeptBox {
            id: format!("emission-{}", field.key()),
            words: (words.field)(field),
            kind: field.kind(),
            limit: field.limit(),
            get: move |typed: &CompareDraft| typed.emission.entry(field).clone(),
            put: move |typed: &mut CompareDraft, entry: Entry| *typed.emission.entry_mut(field) = entry,
        };
        number_box(state, kept)
    });
    let own = follow(state, |typed| typed.emission.clone());
    let result = move || own.with(|own| table::shown(state, &figures(&sheet(own), state.words)));
    many([
        el("p").class("note").child(words.caution).view(),
        el("div").class("fields").child(boxes.collect::<View>()).view(),
        el("div").class("results").child(result).view(),
    ])
    .view()
}
