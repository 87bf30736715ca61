//! Two small sums of the chemistry: what an isocyanate does with water, and formaldehyde to urea.

use super::boxes::field;
use super::result::{self, ResultLine, worked};
use crate::browser::element::{Part, View, el, many};
use crate::domain::Caution;
use crate::domain::chemistry::molar_mass::Species;
use crate::domain::mixing::{Isocyanate, MixField, MixSection, formaldehyde_ratio, isocyanate as water_reaction};
use crate::quantity::format::significant;
use crate::quantity::{Amount, Kind};
use crate::ui::part::amount::with_unit;
use crate::ui::part::caution;
use crate::ui::signal::memo;
use crate::ui::state::{State, state};
use leptos::reactive::prelude::*;
use uom::si::molar_mass::gram_per_mole;

/// What an NCO content stands for.
pub fn isocyanate() -> View {
    let state = state();
    let page = &state.words.mix_page;
    let outcome = memo(move || state.mix.with(water_reaction));
    let shown = move || match outcome.get() {
        Ok(isocyanate) => groups(state, &isocyanate),
        Err(_) => el("p").class("empty").child(page.fill_in).view(),
    };
    el("section")
        .set("aria-labelledby", "isocyanate")
        .child(el("h2").set("id", "isocyanate").child(page.isocyanate))
        .child(el("p").child(page.isocyanate_hint))
        .child(
            el("div")
                .class("fields")
                .child(MixField::of(MixSection::Isocyanate).map(|each| field(state, each)).collect::<View>()),
        )
        .child(el("div").class("results").set("aria-live", "polite").child(shown))
        .child(caution::list(vec![Caution::Isocyanate]))
        .view()
}

fn groups(state: State, isocyanate: &Isocyanate) -> View {
    let page = &state.words.mix_page;
    let mark = state.units.get().mark;
    let number = |value: f64| significant(value, 4, mark);
    let molar = |substance: Species| {
        format!("{}\u{a0}g/mol", significant(substance.molar_mass().get::<gram_per_mole>(), 5, mark))
    };
    let nco = with_unit(state, Amount::from_base(Kind::Share, isocyanate.nco.value), None);
    let group = molar(Species::IsocyanateGroup);
    let per_kilogram = |value: f64| format!("{}\u{a0}g/kg", number(value * 1_000.0));
    let reaction = &isocyanate.reaction;
    let lines = [
        ResultLine {
            key: "equivalent_weight",
            label: page.equivalent_weight,
            value: format!("{}\u{a0}g/mol", number(isocyanate.equivalent_weight.get::<gram_per_mole>())),
            worked: worked(page.work_equivalent, &format!("{group} / {nco}")),
        },
        ResultLine {
            key: "water_used",
            label: page.water_used,
            value: per_kilogram(reaction.water.value),
            worked: worked(page.work_water_used, &format!("{nco} / 2 · {} / {group}", molar(Species::Water))),
        },
        ResultLine {
            key: "gas_released",
            label: page.gas_released,
            value: per_kilogram(reaction.carbon_dioxide.value),
            worked: worked(page.work_gas, &format!("{nco} / 2 · {} / {group}", molar(Species::CarbonDioxide))),
        },
    ];
    many([result::list(lines).view(), el("p").class("note").child(page.upper_bound).view()]).view()
}

/// Formaldehyde to urea.
pub fn ratio() -> View {
    let state = state();
    let page = &state.words.mix_page;
    let outcome = memo(move || state.mix.with(formaldehyde_ratio));
    let shown = move || match outcome.get() {
        Ok((charge, after)) => {
            let mark = state.units.get().mark;
            let line = |key, label, value: f64, worked: String| ResultLine {
                key,
                label,
                value: format!("{}\u{a0}mol/mol", significant(value, 4, mark)),
                worked,
            };
            let lines = [
                Some(line("fu_charge", page.ratio_charge, charge.value, page.work_ratio.to_owned())),
                after.map(|after| line("fu_after", page.ratio_after, after.value, String::new())),
            ];
            many([
                result::list(lines.into_iter().flatten()).view(),
                el("p").class("note").child(page.ratio_note).view(),
            ])
            .view()
        }
        Err(_) => el("p").class("empty").child(page.fill_in).view(),
    };
    el("section")
        .set("aria-labelledby", "ratio")
        .child(el("h2").set("id", "ratio").child(page.ratio))
        .child(el("p").child(page.ratio_hint))
        .child(
            el("div")
                .class("fields")
                .child(MixField::of(MixSection::Ratio).map(|each| field(state, each)).collect::<View>()),
        )
        .child(el("div").class("results").set("aria-live", "polite").child(shown))
        .child(caution::list(vec![Caution::Formaldehyde]))
        .view()
}
