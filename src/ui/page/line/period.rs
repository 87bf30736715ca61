//! The period balance: what is unaccounted for over a shift or a week, and which meter drifts.

use super::context::with_context;
use super::parts::{findings, number, numbers, table, table_row};
use crate::browser::clock;
use crate::browser::element::{Part, View, button, each, el, many};
use crate::browser::graph::*;
use crate::browser::page as browser;
use crate::domain::Grade;
use crate::domain::line::period::{PeriodPart, Uncertain};
use crate::domain::line::{LineField, PeriodBalance, PeriodField, PeriodLiquidField, PeriodLiquidId, read_period};
use crate::quantity::{Amount, Kind};
use crate::ui::part::finding::{mark, told};
use crate::ui::part::fold::fold;
use crate::ui::state::State;
use crate::ui::text::shown;

/// The section.
pub fn period(state: State) -> View {
    let page = &state.words.line_page;
    let started = move || state.line.book(|book| !book.period.liquids.is_empty());
    let start = move || {
        let at = clock::now();
        let draft = state.draft.get_untracked();
        let step = state.line.change(|record| record.book.period = record.book.period.next(&draft, at));
        state.tell_undo(page.period_started, move || state.line.take_back(&step));
        request_animation_frame(|| browser::focus_field("line.period.belt_total"));
    };
    let since = move || state.line.book(|book| book.period.started).map(clock::date_time).unwrap_or_default();
    let keys = move || state.line.book(|book| book.period.liquids.iter().map(|own| own.id).collect::<Vec<_>>());
    let fields = |part| {
        PeriodField::ALL.iter().filter(move |field| field.place() == part).map(|field| LineField::Period(*field))
    };
    many([
        el("p").child(page.period_hint).view(),
        el("p").class("empty").set("hidden", started).child(page.no_period).view(),
        el("p").child(button().class("primary").on_click(start).child(page.start_period)).view(),
        el("div")
            .class("period")
            .set("hidden", move || !started())
            .child(el("p").child(page.period_since).text(" ").child(since))
            .child(numbers(state, fields(PeriodPart::Furnish)))
            .child(el("div").class("readings").child(each(keys, |id| id.0.to_string(), move |id| liquid(state, id))))
            .child(fold(page.uncertainties, move || numbers(state, fields(PeriodPart::Uncertainty))))
            .child(el("div").class("results").set("aria-live", "polite").child(move || result(state)))
            .view(),
    ])
}

fn liquid(state: State, id: PeriodLiquidId) -> View {
    let name = move || state.line.book(|book| (state.words.line.period_liquid)(id, book));
    let boxes = PeriodLiquidField::ALL.iter().map(|part| number(state, LineField::PeriodLiquid(id, *part), true));
    el("div")
        .set("role", "group")
        .set("aria-label", name)
        .child(el("h3").child(name))
        .child(el("div").class("fields").child(boxes.collect::<View>()))
        .view()
}

fn result(state: State) -> View {
    let page = &state.words.line_page;
    let (readings, said) = state.line.book(read_period);
    let said = findings(state, &said);
    let Some(balance) = readings.and_then(|readings| readings.balance().ok()) else {
        return many([said, el("p").class("empty").child(page.period_incomplete).view()]);
    };
    let grade = if balance.drifting.is_empty() && balance.explained { Grade::Note } else { Grade::Unusual };
    let verdict = told(grade, with_context(state, |context| (state.words.line.period)(&balance, context)));
    many([said, verdict.view(), masses(state, &balance), el("p").class("note").child(page.unaccounted_hint).view()])
}

fn masses(state: State, balance: &PeriodBalance) -> View {
    let page = &state.words.line_page;
    let amount =
        |base: f64| with_context(state, |context| shown(Amount::from_base(Kind::BatchMass, base), &context.plain));
    let row = |name: String, key: String, found: Uncertain| {
        let status = if found.is_beyond_chance() {
            many([mark(Grade::Unusual), " ".view(), el("strong").child(page.beyond_chance).view()])
        } else {
            page.within_chance.view()
        };
        let (value, half) = found.rounded();
        table_row(
            name.view(),
            [
                el("span").set("data-figure", format!("period.{key}")).child(amount(value)).view(),
                amount(half).view(),
                status,
            ],
        )
    };
    let liquids = balance.liquids.iter().map(|(id, found)| {
        let name = state.line.book(|book| (state.words.line.period_liquid)(*id, book));
        row(name, id.0.to_string(), *found)
    });
    let fibre = row(page.fibre_od.to_owned(), "fibre".to_owned(), balance.fibre);
    let heads = [page.of_liquid, page.unaccounted, page.half_interval, page.verdict];
    table(page.unaccounted, &heads, liquids.chain([fibre]).collect())
}
