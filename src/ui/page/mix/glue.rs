//! A premixed glue: the recipe's liquids in one tank.

use super::boxes::{amount, choose};
use super::parts;
use super::result::{self, ResultLine, worked};
use crate::browser::element::{Part, View, el, many};
use crate::domain::mixing::glue_batch::{Batch, GlueError};
use crate::domain::mixing::{
    MixDraft, MixError, MixField, PremixCandidate, ShareWay, batch, cautions, fill_in_shares, tank,
};
use crate::domain::{Draft, Grade};
use crate::quantity::{Amount, Kind};
use crate::ui::part::amount::with_unit;
use crate::ui::part::caution;
use crate::ui::part::finding::{mark, told};
use crate::ui::route::Page;
use crate::ui::signal::memo;
use crate::ui::state::{State, state};
use leptos::reactive::prelude::*;

/// The section.
pub fn glue() -> View {
    let state = state();
    let page = &state.words.mix_page;
    let tank = memo(move || {
        state.shown.with(|shown| {
            let of = |draft: &Draft, mix: &MixDraft| shown.case.as_ref().map(|case| tank(mix, draft, case));
            state.draft.with(|draft| state.mix.with(|mix| of(draft, mix))).unwrap_or_default()
        })
    });
    let outcome = memo(move || tank.with(|tank| state.mix.with(|mix| batch(mix, tank))));
    let nothing = move || tank.with(Vec::is_empty);
    let old = move || state.shown.with(|shown| shown.old);
    let put = move |way| {
        let mark = state.units.get_untracked().mark;
        state.mix.update(|mix| {
            mix.share_way = way;
            if way == ShareWay::Typed {
                tank.with_untracked(|tank| fill_in_shares(mix, tank, mark));
            }
        });
    };
    let results = move || match outcome.get() {
        Ok(batch) => mixed(state, &batch),
        Err(MixError::Entry) => el("p").class("empty").child(page.fill_in).view(),
        Err(MixError::Refused(_)) if tank.with(|tank| !tank.iter().any(|candidate| candidate.in_tank)) => {
            el("p").class("empty").child(page.tick).view()
        }
        Err(MixError::Refused(error)) => tank.with(|tank| refused(state, tank, &error)),
    };
    el("section")
        .set("aria-labelledby", "glue")
        .child(el("h2").set("id", "glue").child(page.glue))
        .child(el("p").child(page.glue_hint))
        .child(
            el("p")
                .class("empty")
                .set("hidden", move || !nothing())
                .child(page.no_recipe)
                .text(" ")
                .child(el("a").set("href", Page::Recipe.link()).child(state.words.tools.recipe)),
        )
        .child(
            el("div")
                .class("glue")
                .set("hidden", nothing)
                .child(
                    el("p")
                        .class("finding unusual")
                        .set("hidden", move || !old())
                        .child(mark(Grade::Unusual))
                        .text(" ")
                        .child(page.old_recipe),
                )
                .child(
                    el("div")
                        .class("fields")
                        .child(choose(
                            state,
                            "share-way",
                            page.parts,
                            ShareWay::ALL,
                            state.words.share_way,
                            |mix| mix.share_way,
                            put,
                        ))
                        .child(amount(
                            state,
                            "glue-way",
                            |mix| mix.glue_way,
                            |mix, way| mix.glue_way = way,
                            (MixField::GlueMass, MixField::GlueVolume),
                        )),
                )
                .child(parts::parts(tank, outcome))
                .child(el("div").class("results").set("aria-live", "polite").child(results))
                .child(move || tank.with(|tank| warnings(state, tank))),
        )
        .view()
}

/// What the mix is as a whole.
fn mixed(state: State, batch: &Batch) -> View {
    let page = &state.words.mix_page;
    let show = |kind: Kind, base: f64| with_unit(state, Amount::from_base(kind, base), None);
    let (mass, density) = (show(Kind::BatchMass, batch.mass.value), show(Kind::LiquidDensity, batch.mix.density.value));
    let solids = show(Kind::Solids, batch.mix.solids.value);
    let lines = [
        ResultLine { key: "glue_mass", label: page.mix, value: mass.clone(), worked: String::new() },
        ResultLine {
            key: "glue_volume",
            label: page.mix_volume,
            value: show(Kind::BatchVolume, batch.volume.value),
            worked: worked(page.work_volume, &format!("{mass} / {density}")),
        },
        ResultLine {
            key: "glue_solids",
            label: page.mix_solids,
            value: solids.clone(),
            worked: page.work_solids.to_owned(),
        },
        ResultLine {
            key: "glue_density",
            label: page.mix_density,
            value: density,
            worked: page.work_density.to_owned(),
        },
        ResultLine {
            key: "glue_water",
            label: page.mix_water,
            value: show(Kind::BatchMass, batch.water.value),
            worked: format!("{mass} · (1 − {solids})"),
        },
    ];
    many([result::list(lines).view(), el("p").class("note").child(page.ideal_mixing).view()]).view()
}

fn refused(state: State, tank: &[PremixCandidate], error: &GlueError) -> View {
    let inside = tank.iter().filter(|candidate| candidate.in_tank);
    let names: Vec<String> = inside.map(|candidate| parts::name(state, candidate)).collect();
    let names: Vec<&str> = names.iter().map(String::as_str).collect();
    told(Grade::Stop, state.with_context(|context| (state.words.glue)(error, &names, context)))
}

/// What can go wrong in a tank with all that in it.
fn warnings(state: State, tank: &[PremixCandidate]) -> View {
    let page = &state.words.mix_page;
    let cautions = cautions(tank);
    let pot_life =
        tank.iter().any(|candidate| candidate.in_tank && candidate.role == Some(crate::domain::Role::Hardener));
    many([
        (pot_life.then(|| {
            el("p")
                .class("finding unusual")
                .child(mark(Grade::Unusual))
                .text(" ")
                .child(el("strong").child(page.pot_life))
        }))
        .view(),
        caution::list(cautions).view(),
    ])
    .view()
}
