//! What was really weighed, line by line, and what remains to be added.

use super::desk::Desk;
use super::parts::{act, cell, findings, shown, signed, table};
use super::sheet::on_balance;
use crate::browser::element::{Part, View, each, el, many};
use crate::browser::event::pasted;
use crate::browser::graph::*;
use crate::domain::Entry;
use crate::domain::trial::weigh_sheet::recovery::recovery;
use crate::domain::trial::weigh_sheet::recovery_draft::{RecoveryDraft, RecoveryField};
use crate::domain::trial::weigh_sheet::weighing::{Answer, BatchDraft, LIMIT};
use crate::domain::trial::{LineId, TrialPlace, TrialProblem};
use crate::quantity::{Kind, Unit};
use crate::ui::field::choice;
use crate::ui::field::loose::{self, LooseBox};
use crate::ui::signal::memo;
use crate::ui::text::FieldWords;

/// The section.
pub fn weighing(desk: Desk) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let bench = state.bench;
    let rows = move || {
        let opening = bench.opening.get();
        let (run, batch) = bench.place();
        let own = |id: LineId| (format!("{opening}.{}.{batch}.{}", run.unwrap_or(0), id.key()), id, run, batch);
        desk.made.with(|made| {
            made.sheet.as_ref().map_or_else(Vec::new, |sheet| sheet.lines.iter().map(|line| own(line.id)).collect())
        })
    };
    let clear = move || {
        let (run, batch) = untrack(|| bench.place());
        let before = bench.open.with_untracked(|open| open.trial.batch(run, batch).cloned());
        let Some(before) = before else { return };
        let put = move |lines| {
            bench.edit(|trial| {
                if let Some(place) = trial.batch_mut(run, batch) {
                    *place = lines;
                }
            });
        };
        put(Default::default());
        state.tell_undo(page.weighed_cleared, move || put(before.clone()));
    };
    el("div")
        .class("weighing")
        .child(el("p").child(page.weighing_hint))
        .child(places(desk))
        .child(move || desk.made.with(|made| made.sheet.is_none()).then(|| el("p").class("empty").child(page.fill_in)))
        .child(move || desk.made.with(|made| made.old).then(|| super::sheet::stale(state)))
        .child(el("ol").class("to-weigh").child(each(
            rows,
            |row| row.0.clone(),
            move |(_, id, run, batch)| row(desk, id, run, batch),
        )))
        .child(move || summary(desk))
        .child(
            el("div")
                .class("fields")
                .child(RecoveryField::ALL.iter().map(|field| recovered(desk, *field)).collect::<View>()),
        )
        .child(move || blending_loss(desk))
        .child(el("div").class("actions").child(act(page.clear_weighed, clear)))
        .view()
}

/// Which batch of the selected sheet.
fn places(desk: Desk) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let bench = state.bench;
    let batches = memo(move || {
        let count = desk.made.with(|made| made.sheet.as_ref().map_or(1, |sheet| sheet.batches));
        (1..=count).map(|at| (at.to_string(), format!("{} {at}", page.batch))).collect::<Vec<_>>()
    });
    let batch = memo(move || bench.batch.get().to_string());
    el("div")
        .class("fields")
        .child(move || {
            (batches.with(Vec::len) > 1).then(|| {
                choice::labelled(
                    "bench-batch".to_owned(),
                    page.batch.to_owned().into(),
                    batches,
                    batch,
                    Callback::new(move |chosen: String| bench.batch.set(chosen.parse().unwrap_or(1))),
                )
            })
        })
        .view()
}

fn row(desk: Desk, id: LineId, run: Option<u16>, batch: u16) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let name = desk.made.with_untracked(|made| (state.words.bench.line)(id, &made.recipe));
    let mass = move |weighing: bool| {
        desk.made.with(|made| {
            let sheet = made.sheet.as_ref()?;
            desk.weighing.with(|all| {
                let line = all.as_ref()?.lines.iter().find(|line| line.id == id)?;
                Some(on_balance(state, sheet, id, if weighing { line.to_add } else { line.planned }))
            })
        })
    };
    let number = loose::number(LooseBox {
        key: format!("weighed.{}", id.key()),
        words: FieldWords { label: page.weighed, hint: "" },
        named: Some(format!("{}, {name}", page.weighed)),
        kind: Kind::BenchMass,
        limit: LIMIT,
        entry: memo(move || {
            state
                .bench
                .open
                .with(|open| open.trial.batch(run, batch).and_then(|lines| lines.entry(id)).cloned())
                .unwrap_or_else(|| Entry::empty(Unit::Gram))
        }),
        put: Callback::new(move |entry| {
            state.bench.edit(|trial| {
                if let Some(lines) = trial.batch_mut(run, batch) {
                    lines.enter(id, entry);
                }
            });
        }),
    });
    let answer = move |answer: Answer| {
        state.bench.edit(|trial| {
            if let Some(lines) = trial.batch_mut(run, batch) {
                lines.set_answer(id, answer);
            }
        });
    };
    // A question about this line is answered beside it.
    let answers = move || {
        desk.weighing.with(|all| {
            let own = all.as_ref()?.findings.iter().find(|finding| finding.place == TrialPlace::Line(id))?;
            let (label, chosen) = match own.what {
                TrialProblem::LikelySlip { .. } => (page.entry_correct, Answer::Correct),
                TrialProblem::WeighedOver { .. } => (page.accept_dose, Answer::Accept),
                _ => return None,
            };
            Some(el("div").class("actions").child(act(label, move || answer(chosen))))
        })
    };
    // A column of cells fills the lines from this one on; a single cell is the box's own affair.
    let paste = move |event: Event| {
        let Some(text) = pasted(&event) else { return };
        let order: Vec<LineId> = desk.made.with_untracked(|made| {
            made.sheet.as_ref().map_or_else(Vec::new, |sheet| sheet.lines.iter().map(|line| line.id).collect())
        });
        if BatchDraft::is_column(&text) {
            event.prevent_default();
            state.bench.edit(|trial| {
                if let Some(lines) = trial.batch_mut(run, batch) {
                    lines.paste(&order, id, &text);
                }
            });
        }
    };
    el("li")
        .on("paste", paste)
        .child(el("h3").child(name))
        .child(
            el("p")
                .child(el("span").class("note").child(page.planned))
                .text(" ")
                .child(el("span").set("data-figure", format!("planned.{}", id.key())).child(move || mass(false))),
        )
        .child(number)
        .child(answers)
        .child(
            el("p")
                .class("to-add")
                .child(el("span").class("note").child(page.to_add))
                .text(" ")
                .child(el("strong").set("data-figure", format!("to_add.{}", id.key())).child(move || mass(true))),
        )
        .view()
}

/// What there is to say, and what the weighed masses give once all are there.
fn summary(desk: Desk) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    desk.made.with(|made| {
        desk.weighing.with(|weighing| {
            let Some(weighing) = weighing else { return View::Nothing };
            let said = findings(desk, &weighing.findings, &made.recipe, &made.typed);
            let Some(actual) = &weighing.actual else { return said };
            let head = [page.line, page.target_dose, page.actual_dose, page.deviation].map(str::to_owned);
            let rows = actual.doses.iter().map(|dose| {
                vec![
                    (state.words.bench.line)(LineId::Liquid(dose.id), &made.recipe),
                    shown(state, Kind::Dose, dose.target.value),
                    shown(state, Kind::Dose, dose.actual.value),
                    signed(state, Kind::Share, dose.deviation.value),
                ]
            });
            many([
                said,
                el("p").child(el("strong").child(page.complete)).view(),
                table(page.complete, &head, rows.collect()),
                el("p")
                    .child(page.mat_moisture)
                    .text(" ")
                    .child(el("strong").set("data-figure", "weighed_moisture").child(shown(
                        state,
                        Kind::Moisture,
                        actual.mat_moisture.value,
                    )))
                    .view(),
            ])
        })
    })
}

/// A box of the furnish recovered.
fn recovered(desk: Desk, field: RecoveryField) -> View {
    let bench = desk.state.bench;
    loose::number(LooseBox {
        key: field.box_key(),
        words: (desk.state.words.bench.recovery_field)(field),
        named: None,
        kind: field.kind(),
        limit: field.limit(),
        entry: memo(move || {
            let (run, batch) = bench.place();
            let entered = bench.open.with(|open| open.trial.recovered(run, batch).map(|own| own.entry(field).clone()));
            entered.unwrap_or_else(|| RecoveryDraft::default().entry(field).clone())
        }),
        put: Callback::new(move |entry| {
            let (run, batch) = untrack(|| bench.place());
            bench.edit(|trial| {
                if let Some(weighed) = trial.weighed_mut(run, batch) {
                    *weighed.recovered.entry_mut(field) = entry;
                }
            });
        }),
    })
}

/// The true blending loss and the mass to lay.
fn blending_loss(desk: Desk) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    desk.made.with(|made| {
        desk.weighing.with(|weighing| {
            let (Some(sheet), Some(weighing)) = (&made.sheet, weighing) else { return View::Nothing };
            let (run, batch) = state.bench.place();
            let mut said = Vec::new();
            let recovery =
                state.bench.open.with(|open| recovery(sheet, weighing, open.trial.recovered(run, batch)?, &mut said));
            let shown = recovery.map(|own| {
                el("dl")
                    .class("figures")
                    .child(cell(
                        state,
                        "blending_loss",
                        (page.blending_loss, ""),
                        shown(state, Kind::Share, own.loss.value),
                        true,
                        None,
                    ))
                    .child(cell(
                        state,
                        "mass_to_lay",
                        (page.mass_to_lay, ""),
                        shown(state, Kind::BenchMass, own.mat_mass.value),
                        true,
                        None,
                    ))
                    .view()
            });
            many([findings(desk, &said, &made.recipe, &made.typed), shown.view()])
        })
    })
}
