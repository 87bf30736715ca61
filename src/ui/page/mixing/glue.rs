//! A premixed glue: the recipe's liquids in one tank, and what to weigh of each.

use super::amount_box::{AmountBox, AmountPlace, amount_field};
use super::context::{MixingContext, shown, shown_parts};
use super::entry_box::EntryMessages;
use super::glue_row::{GlueRow, share_field};
use super::value::Value;
use super::working::{ResultRow, WorkingTable, worked};
use crate::domain::mixing::glue_batch::Batch;
use crate::domain::mixing::{MixError, MixField, PartKey, ShareWay, enough_for, fill_in_shares};
use crate::quantity::Kind;
use crate::t;
use crate::ui::components::{Choice, ChoiceOption, Grid};
use crate::ui::route::Page;
use crate::ui::state::State;
use crate::ui::text::unit_shown;
use leptos::prelude::*;

const AMOUNT: AmountPlace =
    AmountPlace { key: "glue", way: |mix| &mut mix.glue_way, fields: (MixField::GlueMass, MixField::GlueVolume) };

/// The section.
#[component]
pub fn Glue() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<MixingContext>();
    let is_empty = Memo::new(move |_| sheet.tank.with(Vec::is_empty));
    let way = Memo::new(move |_| sheet.draft.with(|mix| mix.glue_way));
    let amount = amount_field(state, sheet, AMOUNT, way, t!("mixing-amount"));
    let equivalent = Callback::new(move |kind: Kind| {
        sheet.glue.with(|glue| {
            let batch = glue.as_ref().ok()?;
            Some(if kind == Kind::BatchMass { batch.mass.value } else { batch.volume.value })
        })
    });
    let own = amount.clone();
    let messages = Signal::derive(move || {
        let keys: Vec<PartKey> = match state.mix.with(|mix| mix.share_way) {
            ShareWay::Typed => sheet.tank.with(|tank| tank.iter().map(|part| part.key.clone()).collect()),
            ShareWay::Recipe => Vec::new(),
        };
        let shares = keys.into_iter().enumerate().map(|(at, key)| share_field(state, sheet, at, key));
        std::iter::once(own.clone()).chain(shares).collect::<Vec<_>>()
    });
    let why_not = move || match sheet.glue.get() {
        Ok(_) => None,
        Err(MixError::Entry) => Some(t!("mixing-fill-in")),
        Err(MixError::Refused(_)) => match sheet.glue_error(state) {
            Some(message) => Some(format!("{} {}", message.what, message.fix)),
            None => Some(t!("mixing-tick")),
        },
    };
    view! {
        <section class="panel glue" aria-labelledby="glue">
            <div class="glue-head">
                <h2 id="glue">{t!("mixing-glue")}</h2>
                <AmountBox field=amount place=AMOUNT equivalent=equivalent/>
                <ShareChoice/>
            </div>
            <Show when=move || is_empty.get()>
                <p class="empty">
                    {t!("mixing-no-recipe")} " " <a href=Page::Recipe.link()>{t!("recipe-title")}</a>
                </p>
            </Show>
            <div hidden=move || is_empty.get()>
                <GlueTable/>
                <EntryMessages fields=messages/>
                <p class="why-not">{why_not}</p>
                <GlueNote/>
                <GlueWorking/>
            </div>
        </section>
    }
}

/// In what proportions.
#[component]
fn ShareChoice() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<MixingContext>();
    let words = |way: &ShareWay| match way {
        ShareWay::Recipe => t!("mixing-from-recipe"),
        ShareWay::Typed => t!("mixing-own-parts"),
    };
    let options: Vec<ChoiceOption> =
        ShareWay::ALL.iter().enumerate().map(|(at, way)| ChoiceOption::new(at.to_string(), words(way))).collect();
    let now = Memo::new(move |_| {
        let now = state.mix.with(|mix| mix.share_way);
        ShareWay::ALL.iter().position(|way| *way == now).unwrap_or_default().to_string()
    });
    let choose = Callback::new(move |at: String| {
        let Some(way) = at.parse().ok().and_then(|at: usize| ShareWay::ALL.get(at)) else { return };
        let mark = state.units.get_untracked().mark;
        let tank = sheet.tank.get_untracked();
        state.edit_mix(None, |mix| {
            mix.share_way = *way;
            if *way == ShareWay::Typed {
                fill_in_shares(mix, &tank, mark);
            }
        });
    });
    view! { <Choice id="share-way" name=t!("mixing-proportions") labelled=true options=options value=now on_choose=choose/> }
}

#[component]
fn GlueTable() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<MixingContext>();
    let keys = Memo::new(move |_| {
        sheet.tank.with(|tank| tank.iter().map(|part| part.key.clone()).enumerate().collect::<Vec<_>>())
    });
    let is_typed = Memo::new(move |_| state.mix.with(|mix| mix.share_way == ShareWay::Typed));
    let unit = move |kind: Kind| move || unit_shown(state.unit(kind), "").into_owned();
    let head = view! {
        <th class="l">{t!("mixing-in-tank")}</th>
        <th class="l">{t!("mixing-liquid")}</th>
        <th class="roomy">{t!("mixing-solids")} ", " {unit(Kind::Solids)}</th>
        <th class="roomy">{t!("mixing-density")} ", " {unit(Kind::LiquidDensity)}</th>
        <th class="parts" hidden=move || !is_typed.get()>{t!("mixing-parts")}</th>
        <th class="roomy">{t!("mixing-share")} ", " {unit(Kind::Share)}</th>
        <th class="edge">{unit(Kind::BatchMass)}</th>
        <th class="roomy">{unit(Kind::BatchVolume)}</th>
    };
    let total = move |kind: Kind, base: fn(&Batch) -> f64| {
        Signal::derive(move || {
            let base = sheet.glue.with(|glue| glue.as_ref().ok().map(base));
            base.map_or_else(Default::default, |base| shown_parts(state, kind, base))
        })
    };
    let foot = view! {
        <td></td>
        <td class="l">{t!("mixing-glue")}</td>
        <td class="roomy"><Value key="glue_solids" parts=total(Kind::Solids, |batch| batch.mix.solids.value) unit_in_head=true/></td>
        <td class="roomy"><Value key="glue_density" parts=total(Kind::LiquidDensity, |batch| batch.mix.density.value) unit_in_head=true/></td>
        <td class="parts" hidden=move || !is_typed.get()></td>
        <td class="roomy"><Value key="glue_share" parts=total(Kind::Share, |_| 1.0) unit_in_head=true/></td>
        <td class="edge"><Value key="glue_mass" parts=total(Kind::BatchMass, |batch| batch.mass.value) unit_in_head=true/></td>
        <td class="roomy"><Value key="glue_volume" parts=total(Kind::BatchVolume, |batch| batch.volume.value) unit_in_head=true/></td>
    };
    let paste = Callback::new(move |cells: Vec<(String, String)>| {
        let keys = sheet.tank.with_untracked(|tank| tank.iter().map(|part| part.key.clone()).collect::<Vec<_>>());
        state.edit_mix(None, |mix| {
            for (cell, text) in cells {
                let at = cell.strip_prefix("share.").and_then(|at| at.parse::<usize>().ok());
                if let Some(key) = at.and_then(|at| keys.get(at)) {
                    let part = mix.part_mut(key);
                    part.share = crate::domain::Entry::typed(text, part.share.unit);
                }
            }
        });
    });
    view! {
        <Grid name=t!("mixing-glue") class="glue-table" head=head.into_any() foot=foot.into_any() on_paste=paste>
            <For each=move || keys.get() key=|(at, key)| (*at, key.clone()) let:part>
                <GlueRow at=part.0 part=part.1/>
            </For>
        </Grid>
    }
}

/// That the volumes are by ideal mixing, and for how much fibre the batch is enough.
#[component]
fn GlueNote() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<MixingContext>();
    let enough = Memo::new(move |_| {
        if sheet.draft.with(|mix| mix.share_way) == ShareWay::Typed {
            return None;
        }
        let fibre = state.shown.with(|shown| {
            let case = shown.case.as_ref()?;
            sheet.tank.with(|tank| sheet.glue.with(|glue| enough_for(glue.as_ref().ok()?, tank, case)))
        })?;
        Some(t!("mixing-enough", mass = shown(state, Kind::BatchMass, fibre.value)))
    });
    let is_mixed = Memo::new(move |_| sheet.glue.with(Result::is_ok));
    view! {
        <p class="note" hidden=move || !is_mixed.get()>{t!("mixing-ideal")} " " {move || enough.get()}</p>
    }
}

#[component]
fn GlueWorking() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<MixingContext>();
    let rows = Signal::derive(move || {
        sheet.glue.with(|glue| glue.as_ref().map(|batch| rows(state, batch)).unwrap_or_default())
    });
    let is_mixed = Memo::new(move |_| sheet.glue.with(Result::is_ok));
    view! { <div hidden=move || !is_mixed.get()><WorkingTable id="glue-working" rows=rows/></div> }
}

fn rows(state: State, batch: &Batch) -> Vec<ResultRow> {
    let mass = shown(state, Kind::BatchMass, batch.mass.value);
    let density = shown(state, Kind::LiquidDensity, batch.mix.density.value);
    let solids = shown(state, Kind::Solids, batch.mix.solids.value);
    let volume = shown(state, Kind::BatchVolume, batch.volume.value);
    let water = shown(state, Kind::BatchMass, batch.water.value);
    let of_volume = worked(t!("mixing-work-volume"), &format!("{mass} / {density}"));
    vec![
        ResultRow::new("", t!("mixing-row-part"), String::new(), t!("mixing-work-mass")),
        ResultRow::new("", t!("mixing-row-glue-volume"), volume, of_volume),
        ResultRow::new("", t!("mixing-row-solids"), solids.clone(), t!("mixing-work-solids")),
        ResultRow::new("", t!("mixing-row-glue-density"), density, t!("mixing-work-density")),
        ResultRow::new("glue_water", t!("mixing-row-glue-water"), water, format!("{mass} · (1 − {solids})")),
    ]
}
