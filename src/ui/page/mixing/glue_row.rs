//! A liquid of the glue: whether it goes into the tank, in what proportion, and what to weigh of it.

use super::context::{MixingContext, part_name, shown_parts};
use super::entry_box::{EntryBox, EntryField};
use super::value::Value;
use crate::domain::mixing::glue_batch::BatchPart;
use crate::domain::mixing::{PartKey, PremixCandidate, SHARE, ShareWay, TankPart, part_of};
use crate::quantity::Kind;
use crate::t;
use crate::ui::components::Rank;
use crate::ui::state::State;
use crate::ui::text::{lower_first, words};
use leptos::prelude::*;

/// The box for the parts by mass of a liquid.
pub fn share_field(state: State, sheet: MixingContext, at: usize, key: PartKey) -> EntryField {
    let own = key.clone();
    let name = Signal::derive(move || {
        let name = sheet.tank.with(|tank| tank.get(at).map(|part| part_name(state, part)).unwrap_or_default());
        t!("mixing-parts-of", name = name)
    });
    EntryField {
        key: format!("share.{at}"),
        name,
        kind: Signal::stored(Kind::Ratio),
        limit: Signal::stored(SHARE),
        entry: Memo::new(move |_| {
            let part = state.mix.with(|mix| mix.part(&own).cloned());
            part.unwrap_or_else(|| TankPart::untouched(own.clone())).share
        }),
        put: Callback::new(move |entry| {
            state.edit_mix(Some(format!("share.{at}")), |mix| mix.part_mut(&key).share = entry);
        }),
    }
}

/// The row.
#[component]
pub fn GlueRow(
    /// Its place.
    at: usize,
    /// What it is.
    part: PartKey,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<MixingContext>();
    let candidate = Memo::new(move |_| sheet.tank.with(|tank| tank.get(at).cloned()));
    let of = move |read: fn(&PremixCandidate) -> f64, kind: Kind| {
        Signal::derive(move || {
            let base = candidate.with(|part| part.as_ref().map(read));
            base.map_or_else(Default::default, |base| shown_parts(state, kind, base))
        })
    };
    let name =
        Memo::new(move |_| candidate.with(|part| part.as_ref().map(|part| part_name(state, part))).unwrap_or_default());
    let note = Memo::new(move |_| candidate.with(|part| part.as_ref().map(part_note)).unwrap_or_default());
    let in_tank = Memo::new(move |_| candidate.with(|part| part.as_ref().is_some_and(|part| part.in_tank)));
    let is_typed = Memo::new(move |_| state.mix.with(|mix| mix.share_way == ShareWay::Typed));
    // What to weigh of it, with its share; nothing for one that stays out, or while nothing can be computed.
    let weighed = Memo::new(move |_| {
        sheet.tank.with(|tank| {
            sheet.glue.with(|glue| {
                let batch = glue.as_ref().ok()?;
                part_of(batch, tank, at).map(|part| (*part, (part.mass / batch.mass).value))
            })
        })
    });
    let result = move |kind: Kind, read: fn(&BatchPart, f64) -> f64| {
        Signal::derive(move || {
            let base = weighed.with(|weighed| weighed.as_ref().map(|(part, share)| read(part, *share)));
            base.map_or_else(Default::default, |base| shown_parts(state, kind, base))
        })
    };
    let ticked = part.clone();
    let tick = move |event| {
        let (ticked, now) = (ticked.clone(), event_target_checked(&event));
        state.edit_mix(None, |mix| mix.part_mut(&ticked).in_tank = Some(now));
    };
    let share = move || {
        (is_typed.get() && in_tank.get()).then(|| {
            let field = share_field(state, sheet, at, part.clone());
            view! { <EntryBox field=field column="share"/> }
        })
    };
    let solids = of(|part| part.solids.value, Kind::Solids);
    let density = of(|part| part.density.value, Kind::LiquidDensity);
    view! {
        <tr class:out=move || !in_tank.get()>
            <td class="l tick">
                <input
                    id=format!("in-tank-{at}")
                    type="checkbox"
                    aria-label=move || t!("mixing-in-tank-of", name = name.get())
                    prop:checked=move || in_tank.get()
                    on:change=tick
                />
            </td>
            <th scope="row" class="l"><b>{move || name.get()}</b> " " <span class="note">{move || note.get()}</span></th>
            <td class="roomy"><Value key=format!("solids.{at}") parts=solids unit_in_head=true/></td>
            <td class="roomy"><Value key=format!("density.{at}") parts=density unit_in_head=true/></td>
            <td class="parts" hidden=move || !is_typed.get()>{share}</td>
            <td class="roomy"><Value key=format!("share.{at}") parts=result(Kind::Share, |_, share| share) unit_in_head=true/></td>
            <td class="edge">
                <Value key=format!("weigh.{at}") parts=result(Kind::BatchMass, |part, _| part.mass.value) rank=Rank::Lead unit_in_head=true/>
            </td>
            <td class="roomy">
                <Value key=format!("litres.{at}") parts=result(Kind::BatchVolume, |part, _| part.volume.value) unit_in_head=true/>
            </td>
        </tr>
    }
}

/// What the part is for.
fn part_note(part: &PremixCandidate) -> String {
    match (&part.key, part.role) {
        (PartKey::Liquid(_), Some(role)) => lower_first(words::role(role)),
        (PartKey::Thinning, _) => t!("mixing-to-spray-solids"),
        _ => t!("mixing-recipe-dose"),
    }
}
