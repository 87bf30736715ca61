//! The amount asked for: one box, by mass or by volume as its unit says.

use super::context::MixingContext;
use super::entry_box::{EntryBox, EntryField};
use crate::domain::Entry;
use crate::domain::mixing::{AmountWay, MixDraft, MixField};
use crate::quantity::{Kind, Unit, format};
use crate::t;
use crate::ui::state::State;
use crate::ui::text::symbol_shown;
use leptos::prelude::*;

/// Where the amount of one section is kept.
#[derive(Clone, Copy)]
pub struct AmountPlace {
    /// `data-field` on the page.
    pub key: &'static str,
    /// How it is asked for.
    pub way: fn(&mut MixDraft) -> &mut AmountWay,
    /// The box by mass, and that by volume.
    pub fields: (MixField, MixField),
}

/// Where the amount of the solution is kept.
pub const SOLUTION_AMOUNT: AmountPlace = AmountPlace {
    key: "solution",
    way: |mix| &mut mix.solution_way,
    fields: (MixField::SolutionMass, MixField::SolutionVolume),
};

impl AmountPlace {
    const fn field(self, way: AmountWay) -> MixField {
        match way {
            AmountWay::Mass => self.fields.0,
            AmountWay::Volume => self.fields.1,
        }
    }

    /// Puts an amount in the box.
    pub fn put(self, mix: &mut MixDraft, way: AmountWay, entry: Entry) {
        *(self.way)(mix) = way;
        *mix.entry_mut(self.field(way)) = entry;
    }
}

/// The place as a box.
pub fn amount_field(
    state: State,
    sheet: MixingContext,
    place: AmountPlace,
    way: Memo<AmountWay>,
    name: String,
) -> EntryField {
    let field = Memo::new(move |_| place.field(way.get()));
    EntryField {
        key: place.key.to_owned(),
        name: Signal::stored(name),
        kind: Signal::derive(move || field.get().kind()),
        limit: Signal::derive(move || field.get().limit()),
        entry: Memo::new(move |_| sheet.draft.with(|mix| mix.entry(field.get()).clone())),
        put: Callback::new(move |entry| {
            let field = field.get_untracked();
            state.edit_mix(Some(field.key().to_owned()), |mix| *mix.entry_mut(field) = entry);
        }),
    }
}

/// The box. Its units are those of mass and of volume.
#[component]
pub fn AmountBox(
    /// What it is.
    field: EntryField,
    /// Where it is kept.
    place: AmountPlace,
    /// What is made up now, by mass or by volume in base units.
    equivalent: Callback<Kind, Option<f64>>,
    /// The line below the number.
    #[prop(optional, into)]
    aside: Signal<String>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<MixingContext>();
    let EntryField { name, kind, entry, put, .. } = field;
    let unit = Memo::new(move |_| state.unit(kind.get()));
    let option = move |each: Unit| {
        view! { <option value=each.symbol() prop:selected=move || unit.get() == each>{symbol_shown(each)}</option> }
    };
    let choose = move |event| {
        let Some(chosen) = Unit::from_symbol(&event_target_value(&event)) else { return };
        let text = sheet.just_typed(place.key, entry, kind);
        let other = if chosen.dimension() == Kind::BatchMass.dimension() { Kind::BatchMass } else { Kind::BatchVolume };
        if other == kind.get_untracked() {
            if let Some(text) = text {
                put.run(Entry::typed(text, chosen));
            }
        } else {
            // The same batch in the other measure; what was just typed keeps its digits.
            let mark = state.units.get_untracked().mark;
            let same = untrack(|| equivalent.run(other)).map(|base| format::editable(chosen.from_base(base), mark));
            let way = if other == Kind::BatchMass { AmountWay::Mass } else { AmountWay::Volume };
            state.edit_mix(None, |mix| match text.or(same) {
                Some(text) => place.put(mix, way, Entry::typed(text, chosen)),
                None => *(place.way)(mix) = way,
            });
        }
        state.settings.update(|settings| settings.units.choose(other, chosen));
    };
    let options = [Kind::BatchMass, Kind::BatchVolume].into_iter().flat_map(Kind::units).map(option).collect_view();
    view! {
        <EntryBox field=field label=name aside=aside>
            <select class="unit" aria-label=move || t!("common-unit-of", name = name.get()) on:change=choose>
                {options}
            </select>
        </EntryBox>
    }
}
