//! Two sums of the chemistry, folded: what an isocyanate does with water, and formaldehyde to urea.

use super::context::{MixingContext, shown};
use super::entry_box::{EntryBox, EntryField, EntryMessages};
use super::working::{ResultRow, ResultTable, worked};
use crate::domain::chemistry::molar_mass::Species;
use crate::domain::mixing::{Isocyanate, MixField, MixSection, formaldehyde_ratio, isocyanate};
use crate::quantity::Kind;
use crate::quantity::format::significant;
use crate::t;
use crate::ui::components::Fold;
use crate::ui::state::State;
use leptos::prelude::*;
use uom::si::molar_mass::gram_per_mole;

fn label(field: MixField) -> String {
    match field {
        MixField::Nco => t!("mixing-nco"),
        MixField::Formalin => t!("mixing-formalin"),
        MixField::Strength => t!("mixing-strength"),
        MixField::Urea => t!("mixing-urea"),
        MixField::ExtraUrea => t!("mixing-extra-urea"),
        MixField::Concentration => t!("mixing-concentration"),
        MixField::Coldest => t!("mixing-coldest"),
        MixField::MeasuredDensity => t!("mixing-measured-density"),
        MixField::SolutionMass | MixField::SolutionVolume => t!("mixing-solution"),
        MixField::GlueMass | MixField::GlueVolume => t!("mixing-amount"),
    }
}

fn hint(field: MixField) -> String {
    match field {
        MixField::Nco => t!("mixing-certificate"),
        MixField::Strength => t!("mixing-by-mass"),
        MixField::ExtraUrea => t!("common-optional"),
        _ => String::new(),
    }
}

/// The boxes of a fold, with what there is to say about them.
#[component]
fn SectionBoxes(
    /// The fold.
    section: MixSection,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<MixingContext>();
    let fields: Vec<(MixField, EntryField)> = MixField::of(section)
        .map(|field| (field, EntryField::of(state, sheet, field, Signal::stored(label(field)))))
        .collect();
    let boxes = fields.iter().map(|(field, own)| {
        view! { <EntryBox field=own.clone() label=own.name aside=hint(*field)/> }
    });
    let boxes = boxes.collect_view();
    let fields: Vec<EntryField> = fields.into_iter().map(|(_, own)| own).collect();
    view! {
        <div class="boxes">{boxes}</div>
        <EntryMessages fields=fields/>
    }
}

/// What an NCO content means.
#[component]
pub fn IsocyanateFold() -> impl IntoView {
    let state = expect_context::<State>();
    let found = Memo::new(move |_| state.mix.with(isocyanate));
    let note = Signal::derive(move || {
        found
            .with(|found| {
                let found = found.as_ref().ok()?;
                let mark = state.units.get().mark;
                let per_kilogram = |value: f64| format!("{}\u{a0}g", significant(value * 1_000.0, 3, mark));
                let nco = shown(state, Kind::Share, found.nco.value);
                let (water, gas) = (found.reaction.water.value, found.reaction.carbon_dioxide.value);
                Some(t!("mixing-isocyanate-note", nco = nco, water = per_kilogram(water), gas = per_kilogram(gas)))
            })
            .unwrap_or_default()
    });
    let rows = Signal::derive(move || {
        found.with(|found| found.as_ref().map(|found| isocyanate_rows(state, found)).unwrap_or_default())
    });
    let is_missing = move || found.with(Result::is_err);
    view! {
        <Fold id="isocyanate" title=t!("mixing-isocyanate") note=note>
            <SectionBoxes section=MixSection::Isocyanate/>
            <div aria-live="polite">
                <ResultTable rows=rows/>
                <p class="note">{move || if is_missing() { t!("mixing-fill-in") } else { t!("mixing-upper-bound") }}</p>
            </div>
        </Fold>
    }
}

fn isocyanate_rows(state: State, found: &Isocyanate) -> Vec<ResultRow> {
    let mark = state.units.get().mark;
    let number = |value: f64| significant(value, 4, mark);
    let molar = |substance: Species| {
        format!("{}\u{a0}g/mol", significant(substance.molar_mass().get::<gram_per_mole>(), 5, mark))
    };
    let nco = shown(state, Kind::Share, found.nco.value);
    let group = molar(Species::IsocyanateGroup);
    let per_kilogram = |value: f64| format!("{}\u{a0}g/kg", number(value * 1_000.0));
    let weight = format!("{}\u{a0}g/mol", number(found.equivalent_weight.get::<gram_per_mole>()));
    let water = worked(t!("mixing-work-water-used"), &format!("{nco} / 2 · {} / {group}", molar(Species::Water)));
    let gas = worked(t!("mixing-work-gas"), &format!("{nco} / 2 · {} / {group}", molar(Species::CarbonDioxide)));
    let of_weight = worked(t!("mixing-work-equivalent"), &format!("{group} / {nco}"));
    vec![
        ResultRow::new("equivalent_weight", t!("mixing-equivalent-weight"), weight, of_weight),
        ResultRow::new("water_used", t!("mixing-water-used"), per_kilogram(found.reaction.water.value), water),
        ResultRow::new(
            "gas_released",
            t!("mixing-gas-released"),
            per_kilogram(found.reaction.carbon_dioxide.value),
            gas,
        ),
    ]
}

/// Formaldehyde to urea.
#[component]
pub fn RatioFold() -> impl IntoView {
    let state = expect_context::<State>();
    let found = Memo::new(move |_| state.mix.with(formaldehyde_ratio));
    let rows = Signal::derive(move || {
        let Ok((charge, after)) = found.get() else { return Vec::new() };
        let mark = state.units.get().mark;
        let value = |value: f64| format!("{}\u{a0}mol/mol", significant(value, 4, mark));
        let of_charge =
            ResultRow::new("fu_charge", t!("mixing-ratio-charge"), value(charge.value), t!("mixing-work-ratio"));
        let after =
            after.map(|after| ResultRow::new("fu_after", t!("mixing-ratio-after"), value(after.value), String::new()));
        std::iter::once(of_charge).chain(after).collect()
    });
    let is_missing = move || found.with(Result::is_err);
    view! {
        <Fold id="ratio" title=t!("mixing-ratio") note=t!("mixing-ratio-hint")>
            <SectionBoxes section=MixSection::Ratio/>
            <div aria-live="polite">
                <ResultTable rows=rows/>
                <p class="note">{move || if is_missing() { t!("mixing-fill-in") } else { t!("mixing-ratio-note") }}</p>
            </div>
        </Fold>
    }
}
