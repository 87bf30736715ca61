//! The row of a line: what is planned, what was weighed, what remains.

use super::boxes::SheetBox;
use super::context::WeighContext;
use super::figure::SheetValue;
use super::rows::{Meant, OverChoice, Question, RowStatus, RowText};
use super::sheet_box::BenchBox;
use crate::browser::page;
use crate::domain::Grade;
use crate::domain::trial::weigh_sheet::progress::next_line;
use crate::domain::trial::weigh_sheet::weighing::{Answer, BatchDraft};
use crate::domain::trial::{LineId, WeighFigure, WeighLineFigure};
use crate::t;
use crate::ui::components::Mark;
use leptos::prelude::*;

/// The row.
#[component]
pub fn WeighRow(
    /// What is weighed.
    id: LineId,
    /// Its place in the order of addition, from 1.
    place: usize,
    /// All rows.
    rows: Memo<Vec<(LineId, RowText)>>,
) -> impl IntoView {
    let sheet = expect_context::<WeighContext>();
    let row = Memo::new(move |_| {
        rows.with(|rows| rows.iter().find(|(own, _)| *own == id).map(|(_, row)| row.clone()).unwrap_or_default())
    });
    let is_active = Memo::new(move |_| sheet.active() == Some(id));
    let is_asking = Memo::new(move |_| sheet.asking() == Some(id));
    // What is built in the last cells; their texts follow by themselves, so that a button that was pressed stays.
    let shape = Memo::new(move |_| row.with(|row| Shape::of(&row.status)));
    let name = Memo::new(move |_| t!("bench-actual-of", name = row.with(|row| row.name.clone())));
    let figure = move |part| WeighFigure::Line(id, part);
    let cells = move || {
        match shape.get() {
        Shape::Asked => view! { <td class="l ask" colspan="3"><SlipQuestion id=id row=row/></td> }.into_any(),
        Shape::Over => view! {
            <td class="l ask" colspan="2"><OverQuestion id=id row=row/></td>
            <td class="l extra dose"><TargetDose row=row/></td>
        }
        .into_any(),
        Shape::Plain => view! {
            <td class="add" class:active=move || is_active.get()><ToAdd id=id row=row/></td>
            <td class="extra given" data-figure=format!("given.{}", id.key())>{move || row.with(|row| row.given.clone())}</td>
            <td class="l extra dose"><TargetDose row=row/></td>
        }
        .into_any(),
    }
    };
    view! {
        <tr
            class="weigh-line"
            data-line=id.key()
            class:warn=move || shape.get() == Shape::Asked
            class:active=move || is_active.get()
            class:asking=move || is_asking.get()
            on:focusin=move |_| sheet.focused.set(Some(id))
            on:focusout=move |_| sheet.focused.set(None)
        >
            <td class="l place">{place}</td>
            <th scope="row" class="l name">
                <b>{move || row.with(|row| row.name.clone())}</b>
                <span class="sub folded">
                    <span class="target-below">{move || row.with(|row| row.target.clone())} " "</span>
                    {move || row.with(|row| row.spray.clone())}
                </span>
            </th>
            <td class="extra target"><SheetValue figure=figure(WeighLineFigure::Rounded) unit_in_head=true/></td>
            <td class="extra volume"><SheetValue figure=figure(WeighLineFigure::Volume) unit_in_head=true/></td>
            <td class="extra time"><SheetValue figure=figure(WeighLineFigure::SprayTime) unit_in_head=true/></td>
            <td class="edge actual">
                <BenchBox which=SheetBox::Weighed(id) name=name column="actual" unit_in_head=true/>
            </td>
            {cells}
        </tr>
    }
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Shape {
    Plain,
    Asked,
    Over,
}

impl Shape {
    const fn of(status: &RowStatus) -> Self {
        match status {
            RowStatus::ToAdd | RowStatus::Done => Self::Plain,
            RowStatus::Asked(_) => Self::Asked,
            RowStatus::Over(_) => Self::Over,
        }
    }
}

/// What remains to be added, or that nothing does.
#[component]
fn ToAdd(
    /// What is weighed.
    id: LineId,
    /// Its row.
    row: Memo<RowText>,
) -> impl IntoView {
    let is_done = move || row.with(|row| row.status == RowStatus::Done);
    view! {
        <span class="amount" data-figure=format!("to_add.{}", id.key())>{move || row.with(|row| row.to_add.clone())}</span>
        <Show when=is_done><span class="note">"✓ " {t!("bench-done")}</span></Show>
    }
}

#[component]
fn TargetDose(
    /// The row.
    row: Memo<RowText>,
) -> impl IntoView {
    view! {
        {move || row.with(|row| row.dose.0.clone())}
        " "
        <span class="note">{move || row.with(|row| row.dose.1.clone())}</span>
    }
}

/// Changes what was weighed of the batch shown.
fn change_batch(sheet: WeighContext, change: impl FnOnce(&mut BatchDraft)) {
    let bench = sheet.desk.state.bench;
    let (run, batch) = untrack(|| bench.place());
    bench.edit(|trial| {
        if let Some(lines) = trial.batch_mut(run, batch) {
            change(lines);
        }
    });
}

/// After an answer the focus goes on to the line that is weighed next, else to the one that was asked about.
fn go_on(sheet: WeighContext, id: LineId) {
    request_animation_frame(move || {
        let next = sheet.lines.with_untracked(|lines| next_line(lines)).unwrap_or(id);
        page::focus_field(&SheetBox::Weighed(next).key());
    });
}

/// A mass that looks like a slip: used only once somebody answers.
#[component]
fn SlipQuestion(
    /// What is weighed.
    id: LineId,
    /// Its row.
    row: Memo<RowText>,
) -> impl IntoView {
    let sheet = expect_context::<WeighContext>();
    let question = Memo::new(move |_| match row.with(|row| row.status.clone()) {
        RowStatus::Asked(question) => Some(question),
        _ => None,
    });
    let answers = move || {
        let Question { offer, keep, .. } = question.get()?;
        let offer = offer.map(|meant| {
            let words = match &meant {
                Meant::Mass(words, _) => words.clone(),
                Meant::Swap(_) => t!("bench-swap"),
            };
            let put = move |_| {
                change_batch(sheet, |lines| match &meant {
                    Meant::Mass(_, entry) => lines.enter(id, entry.clone()),
                    Meant::Swap(with) => lines.swap(id, *with),
                });
                go_on(sheet, id);
            };
            view! { <button type="button" class="primary" on:click=put>{words}</button> }
        });
        let confirm = move |_| {
            change_batch(sheet, |lines| lines.set_answer(id, Answer::Correct));
            go_on(sheet, id);
        };
        Some(view! { {offer} <button type="button" on:click=confirm>{keep}</button> })
    };
    view! {
        <span class="flag folded"><Mark grade=Grade::Unusual/> " " {t!("bench-check")}</span>
        <div class="question" role="group" aria-label=move || row.with(|row| row.name.clone())>
            <span class="flag"><Mark grade=Grade::Unusual/> " " {move || question.get().map(|own| own.words)}</span>
            {answers}
        </div>
    }
}

/// More than planned was weighed: all others grow, or it is accepted.
#[component]
fn OverQuestion(
    /// What is weighed.
    id: LineId,
    /// Its row.
    row: Memo<RowText>,
) -> impl IntoView {
    let sheet = expect_context::<WeighContext>();
    let over = Memo::new(move |_| match row.with(|row| row.status.clone()) {
        RowStatus::Over(over) => over,
        _ => OverChoice::default(),
    });
    let button = move |answer: Answer, words: fn(&OverChoice) -> String| {
        let pressed = move || over.with(|over| over.accepted == (answer == Answer::Accept)).to_string();
        let answer = move |_| change_batch(sheet, |lines| lines.set_answer(id, answer));
        view! { <button type="button" aria-pressed=pressed on:click=answer>{move || over.with(words)}</button> }
    };
    let by = move || over.with(|over| over.by.clone());
    view! {
        <b class="over-by">{by}</b>
        <div class="question" role="group" aria-label=move || format!("{}, {}", row.with(|row| row.name.clone()), by())>
            <span class="seg">
                {button(Answer::Correct, |over| over.scale.clone())}
                {button(Answer::Accept, |over| over.accept.clone())}
            </span>
        </div>
    }
}
