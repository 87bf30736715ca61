//! From one recipe to another: what steps when, and when the new furnish arrives where.

use super::context::with_context;
use super::parts::{figure, findings, numbers, shown, table, table_row};
use crate::browser::clock;
use crate::browser::element::{Part, View, button, el, many};
use crate::browser::graph::*;
use crate::domain::line::changeover::{Arrival, Recipe};
use crate::domain::line::step::{Change, Step};
use crate::domain::line::working::between_working;
use crate::domain::line::{Changeover, LineField, LineFigure, TransportField, changeover};
use crate::domain::{cautions, work_out};
use crate::quantity::{Amount, Kind};
use crate::record::content::line::End;
use crate::record::content::revision::Standing;
use crate::record::{PlannedChangeover, RevisionId};
use crate::ui::field::choice::{self, Choice};
use crate::ui::part::amount::with_unit;
use crate::ui::part::caution;
use crate::ui::signal::{RwSignal, memo};
use crate::ui::state::State;

/// Stands for the recipe that is open.
const OPEN: &str = "open";

/// The section.
pub fn change(state: State) -> View {
    let page = &state.words.line_page;
    let choices = memo(move || recipes(state));
    let from = RwSignal::new(OPEN.to_owned());
    let to = RwSignal::new(String::new());
    let pick = |id: &'static str, label: &'static str, signal: RwSignal<String>| {
        let now = memo(move || signal.get());
        choice::labelled(
            id.to_owned(),
            label.to_owned().into(),
            choices,
            now,
            Callback::new(move |key| signal.set(key)),
        )
    };
    let plan = move || {
        let ends = end(state, &from.get_untracked()).zip(end(state, &to.get_untracked()));
        match ends {
            Some((from, to)) => {
                state.line.change(|record| record.planned = Some(PlannedChangeover { from, to, started: None }));
            }
            None => state.tell(page.choose_both),
        }
    };
    let planned = memo(move || state.line.record.with(|record| record.planned.is_some()));
    many([
        el("p").child(page.change_hint).view(),
        el("div")
            .class("fields")
            .child(pick("change-from", page.from_recipe, from))
            .child(pick("change-to", page.to_recipe, to))
            .view(),
        el("p").child(button().class("primary").on_click(plan).child(page.plan)).view(),
        (move || {
            if planned.get() { (move || laid(state)).view() } else { el("p").class("empty").child(page.no_plan).view() }
        })
        .view(),
        el("h3").child(page.transport).view(),
        numbers(state, TransportField::ALL.iter().map(|part| LineField::Transport(*part))),
    ])
}

/// The open recipe, and those in the library by their newest revision.
fn recipes(state: State) -> Vec<Choice> {
    let page = &state.words.line_page;
    let open = state.title.with(|title| title.name.clone());
    let mut all =
        vec![(String::new(), page.choose.to_owned()), (OPEN.to_owned(), format!("{open} ({})", page.as_open))];
    state.library.with(|library| {
        let kept = library.recipes().into_iter().filter(|listed| listed.standing() == Standing::Kept);
        all.extend(kept.map(|listed| (listed.head.summary.id.to_string(), listed.head.summary.name.clone())));
    });
    all
}

fn end(state: State, key: &str) -> Option<End> {
    if key == OPEN {
        let open = state.current_recipe();
        return Some(End { name: open.title.name, draft: open.draft });
    }
    let revision = state.library.with_untracked(|library| library.revision(RevisionId::parse(key)?))?;
    let content = revision.content();
    Some(End { name: content.name.clone(), draft: content.draft.clone() })
}

fn laid(state: State) -> View {
    let page = &state.words.line_page;
    let Some(PlannedChangeover { from, to, started }) = state.line.record.with(|record| record.planned.clone()) else {
        return View::Nothing;
    };
    let (old, new) = (work_out(&from.draft), work_out(&to.draft));
    let title = el("h3").child(format!("{} → {}", from.name, to.name)).view();
    let start = move |at: Option<u64>| {
        state.line.change(|record| {
            if let Some(planned) = &mut record.planned {
                planned.started = at;
            }
        });
    };
    let drop_it = move || {
        let dropped = state.line.change(|record| record.planned = None);
        state.tell_undo(page.plan_dropped, move || state.line.take_back(&dropped));
    };
    let actions = el("div")
        .class("actions")
        .child(
            started
                .is_none()
                .then(|| button().class("primary").on_click(move || start(Some(clock::now()))).child(page.start_now)),
        )
        .child(started.is_some().then(|| button().on_click(move || start(None)).child(page.not_started)))
        .child(button().on_click(drop_it).child(page.drop_plan))
        .view();
    let both = old.case.as_ref().zip(new.case.as_ref());
    let Some((old_case, new_case)) = both else {
        return many([title, el("p").class("empty").child(page.end_unsolved).view(), actions]);
    };
    let plan = state.line.checked.with(|line| {
        let old = Recipe { draft: &from.draft, case: old_case };
        let new = Recipe { draft: &to.draft, case: new_case };
        changeover(old, new, line, started.unwrap_or(0))
    });
    let clock_of = move |at: u64| if started.is_some() { clock::time_exact(at) } else { format!("+ {}", minutes(at)) };
    let between = plan.between.map(|made| {
        let one = |of: LineFigure, base: f64| {
            figure(state, "change", of, shown(state, of, base), between_working(of, &made, new_case))
        };
        let length = made.length.map(|length| {
            format!("{} {}", page.between_length, with_unit(state, Amount::from_base(Kind::Extent, length.value), None))
        });
        many([
            el("h3").child(page.between).view(),
            el("p").child(page.between_hint).view(),
            el("dl")
                .class("figures")
                .child(one(LineFigure::BetweenTime, made.time.value))
                .child(one(LineFigure::BetweenArea, made.area.value))
                .child(one(LineFigure::BetweenVolume, made.volume.value))
                .view(),
            length.map(|length| el("p").child(length)).view(),
        ])
    });
    let downstream = plan.downstream.iter().map(|step| {
        let at = step.at.map_or_else(|| (state.words.line.stop)(step.stop).to_owned(), clock_of);
        el("li")
            .child(el("strong").child(at))
            .text(" ")
            .child(
                el("strong").child(with_context(state, |context| (state.words.line.downstream)(&step.change, context))),
            )
            .view()
    });
    many([
        title,
        el("p")
            .child(match started {
                Some(at) => format!("{} {}.", page.started_at, clock::date_time(at)),
                None => page.before_start.to_owned(),
            })
            .view(),
        actions,
        findings(state, &plan.findings),
        timeline(state, &plan, started.is_some(), clock_of),
        el("h3").child(page.steps).view(),
        el("ol")
            .class("steps")
            .child(plan.steps.iter().map(|s| step(state, s, clock_of)).collect::<View>())
            .child(downstream.collect::<View>())
            .view(),
        between.view(),
        caution::list(cautions(&to.draft, &new)).view(),
    ])
}

/// "2:05" for so many milliseconds, cut to seconds.
fn minutes(milliseconds: u64) -> String {
    let seconds = milliseconds / 1_000;
    format!("{}:{:02}\u{a0}min", seconds / 60, seconds % 60)
}

fn timeline(state: State, plan: &Changeover, runs: bool, clock_of: impl Fn(u64) -> String + Copy) -> View {
    let page = &state.words.line_page;
    let left = move |at: u64| {
        move || {
            let now = state.line.now.get();
            if !runs {
                String::new()
            } else if now >= at {
                page.reached.to_owned()
            } else {
                format!("{} {}", page.in_time, minutes(at - now))
            }
        }
    };
    let row = |arrival: &Arrival| {
        let moment = |at: u64| many([clock_of(at).view(), el("span").class("left").child(left(at)).view()]);
        table_row(
            (state.words.line.stop)(arrival.stop).view(),
            [moment(arrival.begins), arrival.complete.map(moment).view()],
        )
    };
    let heads = [page.station, page.begins, page.complete];
    table(page.timeline, &heads, plan.arrivals.iter().map(row).collect())
}

fn step(state: State, step: &Step, clock_of: impl Fn(u64) -> String) -> View {
    let page = &state.words.line_page;
    let pipe = match step.change {
        Change::Pump { pipe: Some((way, volume, time)), .. } => {
            let volume = with_unit(state, Amount::from_base(Kind::BatchVolume, volume.value), None);
            let time = time.map(|time| with_unit(state, Amount::from_base(Kind::RunTime, time.value), None));
            let time = time.map_or_else(String::new, |time| format!(", {time}"));
            Some(format!("{} ({volume}{time})", (state.words.line.pipe)(way)))
        }
        _ => None,
    };
    let mat = step.mat_after.map(|moisture| {
        let moisture = Amount::from_base(Kind::Moisture, moisture.dry_basis().value);
        format!("{} {}", page.mat_then, with_unit(state, moisture, None))
    });
    el("li")
        .child(el("strong").child(clock_of(step.at)))
        .text(" ")
        .child(el("strong").child(with_context(state, |context| (state.words.line.change)(&step.change, context))))
        .child(el("p").child((state.words.line.why)(step.why)))
        .child(pipe.map(|words| el("p").child(words)))
        .child(mat.map(|words| el("p").class("note").child(words)))
        .view()
}
