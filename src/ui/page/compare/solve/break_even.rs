//! The price at which two systems cost the same.

use super::answered::{AnswerLines, Answered};
use crate::domain::compare::break_even::{BreakEven, break_even as solve};
use crate::domain::compare::draft::BreakEvenDraft;
use crate::domain::compare::number_key::number_key;
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::system_choice::SystemChoice;
use crate::domain::{Field, Grade, LiquidField};
use crate::t;
use crate::ui::components::ChoiceOption;
use crate::ui::page::compare::choices::{KeyChoice, KeySlot, SystemSelect, SystemSlot, chosen_place, inputs, picked};
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::systems::Compared;
use crate::ui::page::compare::table::MissingPrices;
use crate::ui::text::words;
use leptos::prelude::*;

const FIRST: SystemSlot = SystemSlot {
    id: "equal.first",
    get: |typed| typed.break_even.system.as_ref(),
    set: |typed, choice| typed.break_even.system = choice,
};
const OTHER: SystemSlot = SystemSlot {
    id: "equal.other",
    get: |typed| typed.break_even.other.as_ref(),
    set: |typed, choice| typed.break_even.other = choice,
};
const PRICE: KeySlot = KeySlot {
    id: "equal.price",
    get: |typed| typed.break_even.price.clone(),
    set: |typed, key| typed.break_even.price = key,
};
/// Where the price moves: in both systems, or in the first one alone.
const MOVES: KeySlot = KeySlot {
    id: "equal.moves",
    get: |typed| if typed.break_even.alone { ALONE } else { BOTH }.to_owned(),
    set: |typed, key| typed.break_even.alone = key == ALONE,
};
const BOTH: &str = "both";
const ALONE: &str = "alone";

const fn is_price(field: &Field) -> bool {
    matches!(field, Field::FibrePrice | Field::Liquid(_, LiquidField::Price))
}

/// The place of the system to compare with: another than the first, as long as none is chosen.
fn other_at(own: &BreakEvenDraft, shown: &Compared) -> usize {
    let first = shown.ready_at(own.system.as_ref());
    let place = shown.keys.iter().position(|key| Some(key) == own.other.as_ref());
    let at = place.and_then(|place| shown.places.iter().position(|other| *other == place));
    at.unwrap_or(usize::from(first == 0))
}

/// The prices of a system. A liquid's first: the fibre's is much the same for all.
fn prices_of(system: &ComparedSystem) -> Vec<ChoiceOption> {
    let mut all: Vec<Field> = inputs(system).into_iter().filter(is_price).collect();
    let fibre = all.first() == Some(&Field::FibrePrice);
    all.rotate_left(usize::from(fibre));
    let option =
        |field: Field| ChoiceOption::new(number_key(&system.draft, field), words::field_name(field, &system.draft));
    all.into_iter().map(option).collect()
}

/// The answer as asked for; `Some(None)` for a system compared with itself.
pub fn answered(context: CompareContext, typed: &BreakEvenDraft) -> Option<Option<Answered>> {
    let (system, other, itself) = context.shown.with(|shown| {
        let (first, other) = (shown.ready_at(typed.system.as_ref()), other_at(typed, shown));
        Some((shown.ready.get(first)?.clone(), shown.ready.get(other)?.clone(), first == other))
    })?;
    if itself {
        return Some(None);
    }
    let key = picked(&typed.price, "", &prices_of(&system));
    let field = inputs(&system).into_iter().find(|field| number_key(&system.draft, *field) == key)?;
    let question = t!(
        "compare-break-even-question",
        price = words::field_name(field, &system.draft),
        first = system.name.clone(),
        second = other.name.clone()
    );
    let found = solve(&system, field, &other, typed.alone);
    let (grade, message) = context.with_draft(&system.draft, |own| match found {
        Ok(found) => {
            let grade = if matches!(found.at, BreakEven::At(_)) { Grade::Note } else { Grade::Unusual };
            (grade, words::compare::break_even(&found, field, [&system, &other], own))
        }
        Err(error) => (Grade::Unusual, words::compare::no_price(&error, [&system, &other])),
    });
    Some(Some(Answered { grade, question, message }))
}

/// The panel.
#[component]
pub fn BreakEvenPanel() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let own = context.follow(|typed| typed.break_even.clone());
    let first = chosen_place(context, FIRST);
    let other = Memo::new(move |_| own.with(|own| context.shown.with(|shown| other_at(own, shown))));
    let prices =
        Memo::new(move |_| context.shown.with(|shown| shown.ready.get(first.get()).map_or_else(Vec::new, prices_of)));
    let moves = vec![
        ChoiceOption::new(BOTH, t!("compare-moves-in-both")),
        ChoiceOption::new(ALONE, t!("compare-moves-in-first")),
    ];
    let answer = Memo::new(move |before: Option<&Option<Option<Answered>>>| match before {
        Some(before) if context.typing.get() => before.clone(),
        _ => own.with(|own| answered(context, own)),
    });
    let lines = move || {
        answer.get().map(|answer| match answer {
            Some(answered) => view! { <AnswerLines answered=answered/> }.into_any(),
            None => view! { <p class="note">{t!("compare-break-even-itself")}</p> }.into_any(),
        })
    };
    // What has to have a price for an answer: both systems.
    let needed = Memo::new(move |_| {
        context.shown.with(|shown| {
            let place = |at: usize| shown.places.get(at).and_then(|place| shown.keys.get(*place)).cloned();
            [place(first.get()), place(other.get())].into_iter().flatten().collect::<Vec<SystemChoice>>()
        })
    });
    view! {
        <section class="panel" aria-labelledby="break-even">
            <h2 id="break-even" tabindex="-1">{t!("compare-break-even")}</h2>
            <div class="given">
                <SystemSelect kept=FIRST label=t!("compare-system") chosen=first/>
                <KeyChoice kept=PRICE label=t!("compare-price") options=prices/>
                <SystemSelect kept=OTHER label=t!("compare-compared-with") chosen=other/>
                <KeyChoice kept=MOVES label=t!("compare-moves") prefer=BOTH options=Signal::stored(moves)/>
            </div>
            <div class="answer" aria-live="polite">{lines}</div>
            <MissingPrices systems=needed/>
        </section>
    }
}
