//! The parts of a glue: which go into the tank, in what proportions, and what to weigh in of each.

use super::result::worked;
use crate::browser::element::{Part, View, each, el};
use crate::browser::graph::*;
use crate::domain::mixing::glue_batch::{Batch, GlueError};
use crate::domain::mixing::{MixError, PartKey, PremixCandidate, SHARE, ShareWay, TankPart};
use crate::quantity::{Amount, Kind};
use crate::ui::field::loose::{LooseBox, number};
use crate::ui::part::amount::with_unit;
use crate::ui::signal::{Memo, memo};
use crate::ui::state::{State, state};
use crate::ui::text::FieldWords;

/// What comes of the tank.
type Outcome = Result<Batch, MixError<GlueError>>;

/// What a part is called.
pub fn name(state: State, candidate: &PremixCandidate) -> String {
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
pub fn parts(tank: Memo<Vec<PremixCandidate>>, outcome: Memo<Outcome>) -> View {
    let state = state();
    let page = &state.words.mix_page;
    let keys =
        move || tank.with(|tank| tank.iter().map(|candidate| candidate.key.clone()).enumerate().collect::<Vec<_>>());
    el("fieldset")
        .class("tank")
        .child(el("legend").child(page.in_tank))
        .child(el("ul").child(each(keys, row_key, move |part| part_line(state, tank, outcome, part))))
        .view()
}

fn row_key((at, key): &(usize, PartKey)) -> String {
    let part = match key {
        PartKey::Liquid(name) => name,
        PartKey::Thinning => "thinning",
        PartKey::Water => "water",
    };
    format!("{at} {part}")
}

fn part_line(
    state: State,
    tank: Memo<Vec<PremixCandidate>>,
    outcome: Memo<Outcome>,
    (at, key): (usize, PartKey),
) -> View {
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
    el("li")
        .child(
            el("label")
                .class("tick")
                .set("for", labelled)
                .child(
                    el("input")
                        .set("id", id)
                        .set("type", "checkbox")
                        .property("checked", move || in_tank.get())
                        .on("change", tick),
                )
                .child(move || name.get()),
        )
        .child(share)
        .child(move || weighed(state, tank, outcome, at))
        .view()
}

/// The box for the parts by mass.
fn share_box(state: State, at: usize, key: PartKey, name: Memo<String>) -> View {
    let page = &state.words.mix_page;
    let own = key.clone();
    let entry = memo(move || {
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

/// What to weigh in of a part; nothing for one that stays out, or while nothing can be computed.
fn weighed(state: State, tank: Memo<Vec<PremixCandidate>>, outcome: Memo<Outcome>, at: usize) -> Option<View> {
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
            el("dl")
                .class("weighed")
                .child(
                    el("div")
                        .child(el("dt").child(page.mass))
                        .child(
                            el("dd")
                                .child(el("span").class("value").set("data-figure", format!("weigh.{at}")).child(mass))
                                .text(" · ")
                                .child(
                                    el("span")
                                        .set("data-figure", format!("litres.{at}"))
                                        .child(show(Kind::BatchVolume, part.volume.value)),
                                ),
                        )
                        .child(el("dd").class("worked").child(working)),
                )
                .child(
                    el("div")
                        .child(el("dt").child(page.per_hundred))
                        .child(el("dd").set("data-figure", format!("share.{at}")).child(share)),
                )
                .view(),
        )
    })
}
