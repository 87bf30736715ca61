//! The period balance: what is unaccounted for over a shift or a week, and which meter drifts.

use crate::browser::{clock, page};
use crate::domain::Grade;
use crate::domain::line::period::{PeriodPart, Uncertain};
use crate::domain::line::{
    LineField, LineFinding, LineFindingKind, LinePlace, PeriodBalance, PeriodField, PeriodLiquidField, PeriodLiquidId,
    read_period,
};
use crate::quantity::{Amount, Kind};
use crate::t;
use crate::ui::components::{Fold, Mark};
use crate::ui::page::line::context::with_context;
use crate::ui::page::line::settings::line_box::{LineFieldBox, LineMessage, said_at_rest};
use crate::ui::state::State;
use crate::ui::text::{shown, words};
use leptos::prelude::*;

/// The fold.
#[component]
pub fn PeriodBalanceFold() -> impl IntoView {
    let state = expect_context::<State>();
    let since = Memo::new(move |_| state.line.book(|book| book.period.started).map(clock::date_time));
    let note = Memo::new(move |_| since.get().map_or_else(|| t!("check-no-period"), |at| t!("check-since", time = at)));
    let started = Memo::new(move |_| state.line.book(|book| !book.period.liquids.is_empty()));
    let liquids =
        Memo::new(move |_| state.line.book(|book| book.period.liquids.iter().map(|own| own.id).collect::<Vec<_>>()));
    let start = move |_| {
        let at = clock::now();
        let draft = state.draft.get_untracked();
        let step = state.line.change(|record| record.book.period = record.book.period.next(&draft, at));
        state.tell_undo(t!("check-period-started"), move || state.line.take_back(&step));
        request_animation_frame(|| page::focus_field("line.period.belt_total"));
    };
    let plain = move |part: PeriodPart| {
        let fields = PeriodField::ALL.iter().filter(move |field| field.place() == part);
        fields.map(|field| view! { <PeriodBox field=LineField::Period(*field)/> }).collect_view()
    };
    view! {
        <Fold id="period" title=t!("line-period-balance") note=note>
            <p class="note">{t!("check-period-hint")}</p>
            <p><button type="button" class:primary=move || !started.get() on:click=start>{t!("check-start-period")}</button></p>
            <Show when=move || started.get()>
                <div class="period-boxes">
                    <div class="given-boxes">{plain(PeriodPart::Furnish)}</div>
                    <For each=move || liquids.get() key=|id| *id let:id><PeriodLiquid id=id/></For>
                    <h3>{t!("check-uncertainties")}</h3>
                    <div class="given-boxes">{plain(PeriodPart::Uncertainty)}</div>
                    <PeriodResult/>
                </div>
            </Show>
        </Fold>
    }
}

#[component]
fn PeriodBox(
    /// The field.
    field: LineField,
) -> impl IntoView {
    let state = expect_context::<State>();
    let words = state.line.record.with_untracked(|record| words::line::field(field, &record.book));
    let hint = (!words.hint.is_empty()).then(|| view! { <span class="note">{words.hint}</span> });
    view! {
        <div class="period-box">
            <LineFieldBox field=field label=words.label.to_owned()/>
            {hint}
            <LineMessage field=field said=said_at_rest(state, field)/>
        </div>
    }
}

#[component]
fn PeriodLiquid(
    /// The liquid.
    id: PeriodLiquidId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let name = Memo::new(move |_| state.line.book(|book| words::line::period_liquid(id, book)));
    let boxes = PeriodLiquidField::ALL
        .iter()
        .map(|part| view! { <PeriodBox field=LineField::PeriodLiquid(id, *part)/> })
        .collect_view();
    view! {
        <div role="group" aria-label=move || name.get()>
            <h3>{move || name.get()}</h3>
            <div class="given-boxes">{boxes}</div>
        </div>
    }
}

#[component]
fn PeriodResult() -> impl IntoView {
    let state = expect_context::<State>();
    let found = Memo::new(move |_| {
        let (readings, said) = state.line.book(read_period);
        (readings.and_then(|readings| readings.balance().ok()), said)
    });
    let said = move || {
        let of_entry = |finding: &&LineFinding| {
            // What is wrong with an entry is at its box, and what is still to be entered is no fault.
            !matches!((finding.place, &finding.what), (LinePlace::Field(_), LineFindingKind::Entry(_)))
        };
        let say = |finding: &LineFinding| {
            let message = with_context(state, |context| words::line::finding(finding, context));
            view! { <p><Mark grade=finding.grade/> " " {message.what} " " {message.fix}</p> }
        };
        found.with(|(_, said)| said.iter().filter(of_entry).map(say).collect_view())
    };
    let result = move || {
        found.with(|(balance, _)| match balance {
            Some(balance) => told(state, balance),
            None => view! { <p>{t!("check-period-incomplete")}</p> }.into_any(),
        })
    };
    view! { <div class="period-result" role="status" aria-live="polite">{said} {result}</div> }
}

fn told(state: State, balance: &PeriodBalance) -> AnyView {
    let grade = if balance.drifting.is_empty() && balance.explained { Grade::Note } else { Grade::Unusual };
    let verdict = with_context(state, |context| words::line::period(balance, context));
    let amount =
        |base: f64| with_context(state, |context| shown(Amount::from_base(Kind::BatchMass, base), &context.plain));
    let row = |name: String, key: String, found: Uncertain| {
        let is_beyond = found.is_beyond_chance();
        let (value, half) = found.rounded();
        let mark = is_beyond.then(|| view! { <Mark grade=Grade::Unusual/> " " });
        let words = if is_beyond { t!("check-beyond-chance") } else { t!("check-within-chance") };
        view! {
            <tr class:warn=is_beyond>
                <th scope="row" class="l">{name}</th>
                <td><span data-figure=format!("period.{key}")>{amount(value)}</span></td>
                <td>{amount(half)}</td>
                <td class="l">{mark} {words}</td>
            </tr>
        }
    };
    let liquids = balance.liquids.iter().map(|(id, found)| {
        let name = state.line.book(|book| words::line::period_liquid(*id, book));
        row(name, id.0.to_string(), *found)
    });
    let fibre = row(t!("check-fibre-oven-dry"), "fibre".to_owned(), balance.fibre);
    view! {
        <p class="verdict"><Mark grade=grade/> " " {verdict.what} " " {verdict.fix}</p>
        <div class="scroll" tabindex="0" role="region" aria-label=t!("check-unaccounted")>
            <table class="plain-table unaccounted" aria-label=t!("check-unaccounted")>
                <thead><tr>
                    <th scope="col" class="l">{t!("check-material")}</th>
                    <th scope="col">{t!("check-unaccounted")}</th>
                    <th scope="col">{t!("check-half-interval")}</th>
                    <th scope="col" class="l">{t!("check-status")}</th>
                </tr></thead>
                <tbody>{liquids.collect_view()} {fibre}</tbody>
            </table>
        </div>
        <p class="note">{t!("check-unaccounted-hint")}</p>
    }
    .into_any()
}
