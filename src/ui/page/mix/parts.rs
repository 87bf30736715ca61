//! The parts of a glue: which go into the tank, in what proportions, and what to weigh in of each.

use super::result::worked;
use crate::domain::glue_batch::{Batch, GlueError};
use crate::domain::mix::{Candidate, PartKey, SHARE, ShareWay, TankPart, Trouble};
use crate::quantity::{Amount, Kind};
use crate::ui::erased::{derive, flag, live, memo};
use crate::ui::field::loose::{LooseBox, number};
use crate::ui::part::figure::with_unit;
use crate::ui::state::{State, state};
use crate::ui::text::FieldWords;
use leptos::prelude::*;

/// What comes of the tank.
type Outcome = Result<Batch, Trouble<GlueError>>;

/// What a part is called.
pub fn name(state: State, candidate: &Candidate) -> String {
    let page = &state.words.mix_page;
    match (&candidate.key, candidate.liquid) {
        (PartKey::Thinning, _) => page.thinning.to_owned(),
        (PartKey::Liquid(_), Some(id)) => state
            .draft
            .with(|draft| draft.liquid(id).map(|liquid| (state.words.liquid)(liquid).into_owned()))
            .unwrap_or_default(),
        (PartKey::Water | PartKey::Liquid(_), _) => page.water_dose.to_owned(),
    }
}

/// The parts, one under the other.
pub fn parts(tank: Memo<Vec<Candidate>>, outcome: Memo<Outcome>) -> AnyView {
    let state = state();
    let page = &state.words.mix_page;
    let keys =
        move || tank.with(|tank| tank.iter().map(|candidate| candidate.key.clone()).enumerate().collect::<Vec<_>>());
    view! {
        <fieldset class="tank">
            <legend>{page.in_tank}</legend>
            <ul>
                <For each=keys key=Clone::clone let:part>
                    {part_line(state, tank, outcome, part)}
                </For>
            </ul>
        </fieldset>
    }
    .into_any()
}

fn part_line(state: State, tank: Memo<Vec<Candidate>>, outcome: Memo<Outcome>, (at, key): (usize, PartKey)) -> AnyView {
    let candidate = memo(move || tank.with(|tank| tank.get(at).cloned()));
    let name = memo(move || candidate.get().map_or_else(String::new, |candidate| name(state, &candidate)));
    let in_tank = memo(move || candidate.with(|candidate| candidate.as_ref().is_some_and(|part| part.in_tank)));
    let typed = memo(move || state.mix.with(|mix| mix.share_way == ShareWay::Typed));
    let id = format!("in-tank-{at}");
    let labelled = id.clone();
    let ticked = key.clone();
    let tick = move |event| {
        let ticked = ticked.clone();
        let now = event_target_checked(&event);
        state.mix.update(|mix| mix.part_mut(&ticked).in_tank = Some(now));
    };
    let share = move || (typed.get() && in_tank.get()).then(|| share_box(state, at, key.clone(), name));
    view! {
        <li>
            <label class="tick" for=labelled>
                <input id=id type="checkbox" prop:checked=flag(move || in_tank.get()) on:change=tick/>
                {live(move || name.get())}
            </label>
            {share}
            {live(move || weighed(state, tank, outcome, at))}
        </li>
    }
    .into_any()
}

/// The box for the parts by mass.
fn share_box(state: State, at: usize, key: PartKey, name: Memo<String>) -> AnyView {
    let page = &state.words.mix_page;
    let own = key.clone();
    let entry = derive(move || {
        let part = state.mix.with(|mix| mix.part(&own).cloned());
        part.unwrap_or_else(|| TankPart::untouched(own.clone())).share
    });
    number(LooseBox {
        key: format!("share.{at}"),
        words: FieldWords { label: page.share, hint: "" },
        named: Some(format!("{}, {}", page.share, name.get_untracked())),
        kind: Kind::Ratio,
        limit: SHARE,
        entry,
        put: Callback::new(move |entry| state.mix.update(|mix| mix.part_mut(&key).share = entry)),
    })
}

/// What to weigh in of a part; nothing for one that stays out, or while nothing can be reckoned.
fn weighed(state: State, tank: Memo<Vec<Candidate>>, outcome: Memo<Outcome>, at: usize) -> Option<AnyView> {
    let page = &state.words.mix_page;
    // The batch has only the parts that go in.
    let place = tank.with(|tank| {
        let inside = tank.get(at).is_some_and(|candidate| candidate.in_tank);
        inside.then(|| tank.iter().take(at).filter(|candidate| candidate.in_tank).count())
    })?;
    outcome.with(|outcome| {
        let batch = outcome.as_ref().ok()?;
        let part = batch.parts.get(place)?;
        let show = |kind: Kind, base: f64| with_unit(state, Amount::from_base(kind, base), None);
        let share = show(Kind::Share, (part.mass / batch.mass).value);
        let mass = show(Kind::BatchMass, part.mass.value);
        let working = worked(page.work_mass, &format!("{share} · {}", show(Kind::BatchMass, batch.mass.value)));
        Some(
            view! {
                <dl class="weighed">
                    <div>
                        <dt>{page.mass}</dt>
                        <dd>
                            <span class="value" data-figure=format!("weigh.{at}")>{mass}</span>
                            " · "
                            <span data-figure=format!("litres.{at}")>{show(Kind::BatchVolume, part.volume.value)}</span>
                        </dd>
                        <dd class="worked">{working}</dd>
                    </div>
                    <div>
                        <dt>{page.per_hundred}</dt>
                        <dd data-figure=format!("share.{at}")>{share}</dd>
                    </div>
                </dl>
            }
            .into_any(),
        )
    })
}
