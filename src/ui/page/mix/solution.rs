//! A solution made up from crystals.

use super::boxes::{amount, choose, field};
use super::result::{self, ResultLine, worked};
use crate::browser::element::{Part, View, el, many};
use crate::domain::chemistry::solute::Solute;
use crate::domain::mixing::target_amount::Wanted;
use crate::domain::mixing::{MadeUp, MixError, MixField, solution as made_up};
use crate::domain::{Grade, cautions_of_solution};
use crate::quantity::{Amount, Kind};
use crate::ui::part::amount::with_unit;
use crate::ui::part::caution;
use crate::ui::part::finding::told;
use crate::ui::signal::memo;
use crate::ui::state::{State, state};
use leptos::reactive::prelude::*;

/// The section.
pub fn solution() -> View {
    let state = state();
    let page = &state.words.mix_page;
    let outcome = memo(move || state.mix.with(made_up));
    let shown = move || match outcome.get() {
        Ok(made_up) => results(state, &made_up),
        Err(MixError::Entry) => el("p").class("empty").child(page.fill_in).view(),
        Err(MixError::Refused(error)) => {
            told(Grade::Stop, state.with_context(|context| (state.words.make_up)(&error, context)))
        }
    };
    let solute = memo(move || state.mix.with(|mix| mix.solute));
    let put = move |solute| state.mix.update(|mix| mix.solute = solute);
    el("section")
        .set("aria-labelledby", "solution")
        .child(el("h2").set("id", "solution").child(page.solution))
        .child(el("p").child(page.solution_hint).text(" ").child(page.pure))
        .child(
            el("div")
                .class("fields")
                .child(choose(state, "solute", page.solute, &Solute::ALL, state.words.solute, |mix| mix.solute, put))
                .child(field(state, MixField::Concentration))
                .child(amount(
                    state,
                    "solution-way",
                    |mix| mix.solution_way,
                    |mix, way| mix.solution_way = way,
                    (MixField::SolutionMass, MixField::SolutionVolume),
                ))
                .child(field(state, MixField::Coldest))
                .child(field(state, MixField::MeasuredDensity)),
        )
        .child(el("div").class("results").set("aria-live", "polite").child(shown))
        .child(move || caution::list(cautions_of_solution(solute.get())))
        .view()
}

fn results(state: State, MadeUp { order, make_up }: &MadeUp) -> View {
    let page = &state.words.mix_page;
    let show = |kind: Kind, base: f64| with_unit(state, Amount::from_base(kind, base), None);
    let mass = |base: f64| show(Kind::BatchMass, base);
    let share = show(Kind::Share, order.fraction.value);
    let density = make_up.density.map(|density| show(Kind::LiquidDensity, density.value));
    let total = mass(make_up.total.value);
    let total_worked = match (order.wanted, &density) {
        (Wanted::Volume(volume), Some(density)) => {
            worked(page.work_total, &format!("{} · {density}", show(Kind::BatchVolume, volume.value)))
        }
        _ => String::new(),
    };
    let volume = make_up.volume.zip(density.as_ref()).map(|(volume, density)| ResultLine {
        key: "solution_volume",
        label: page.volume,
        value: show(Kind::BatchVolume, volume.value),
        worked: match order.wanted {
            Wanted::Mass(_) => worked(page.work_volume, &format!("{total} / {density}")),
            Wanted::Volume(_) => String::new(),
        },
    });
    let lines = [
        Some(ResultLine {
            key: "crystals",
            label: page.crystals,
            value: mass(make_up.salt.value),
            worked: worked(page.work_crystals, &format!("{share} · {total}")),
        }),
        Some(ResultLine {
            key: "solution_water",
            label: page.water,
            value: mass(make_up.water.value),
            worked: worked(page.work_water, &format!("{total} − {}", mass(make_up.salt.value))),
        }),
        Some(ResultLine {
            key: "solution_water_volume",
            label: page.water_volume,
            value: show(Kind::BatchVolume, make_up.water_volume.value),
            worked: String::new(),
        }),
        Some(ResultLine { key: "solution_mass", label: page.total, value: total.clone(), worked: total_worked }),
        volume,
        density.clone().map(|value| ResultLine {
            key: "solution_density",
            label: page.density,
            value,
            worked: if order.density.is_some() {
                page.density_measured.to_owned()
            } else {
                page.density_source.to_owned()
            },
        }),
        Some(ResultLine {
            key: "saturation",
            label: page.saturation,
            value: show(Kind::Share, make_up.saturation.value),
            worked: page.saturation_source.to_owned(),
        }),
    ];
    many([
        result::list(lines.into_iter().flatten()).view(),
        (density.is_none().then(|| el("p").class("note").child(page.no_density))).view(),
    ])
    .view()
}
