//! Every figure with its uncertainty by both methods, and where the two disagree and why.

use super::study::PageStudy;
use crate::browser::clock;
use crate::browser::element::{Part, View, el, many};
use crate::browser::graph::*;
use crate::domain::Grade;
use crate::domain::compare::uncertainty::agreement::{Agreement, DisagreementCause, compare, is_exact};
use crate::domain::compare::uncertainty::budget::Budget;
use crate::domain::compare::uncertainty::study::Study;
use crate::statistics::draws::DrawSummary;
use crate::ui::page::compare::comparison::Comparison;
use crate::ui::part::finding::told;
use crate::ui::signal::{Memo, RwSignal, effect, memo};
use crate::ui::state::State;
use crate::ui::state::compare::DrawsFound;
use crate::ui::text::{Message, plus_minus, trimmed_to, unit_shown};
use html_escape::encode_double_quoted_attribute as escape;
use std::sync::Arc;
use std::sync::atomic::{AtomicU32, Ordering};
use std::time::Duration;

/// Places of one figure's systems and differences: the first, and the one behind the last.
type Group = (usize, usize);

/// The table, and what there is to say about it. `at_once` fills it in one go, for paper.
pub fn results(comparison: Comparison, study: Memo<Option<PageStudy>>, at_once: bool) -> View {
    let Comparison { state, .. } = comparison;
    let found = state.compare.found;
    // What the table looks like; its figures may change and leave that as it is.
    let shape = memo(move || {
        study.with(|known| {
            let known = known.as_ref()?;
            let study = known.study.as_ref().ok()?;
            Some((groups(study), found.with(|found| known.is_of(found))))
        })
    });
    let wrong = move || {
        study.with(|known| match known.as_ref().map(|known| (&known.study, &known.systems)) {
            Some((Err(error), systems)) => Some(told(Grade::Unusual, (state.words.compare.no_study)(*error, systems))),
            _ => None,
        })
    };
    let said = move || {
        study.with(|known| {
            let known = known.as_ref()?;
            let study = known.study.as_ref().ok()?;
            Some(found.with(|found| notes(state, known, study, found)))
        })
    };
    many([
        wrong.view(),
        (move || {
            shape.with(|shape| shape.as_ref().map(|(groups, now)| framed(comparison, study, groups, *now, at_once)))
        })
        .view(),
        said.view(),
    ])
    .view()
}

fn groups(study: &Study) -> Vec<Group> {
    let mut groups: Vec<Group> = Vec::new();
    for (at, asked) in study.asked().iter().enumerate() {
        let same = at > 0 && study.asked().get(at - 1).is_some_and(|before| before.output() == asked.output());
        match groups.last_mut().filter(|_| same) {
            Some((_, to)) => *to = at + 1,
            None => groups.push((at, at + 1)),
        }
    }
    groups
}

/// The table without its rows, and what fills it.
fn framed(comparison: Comparison, study: Memo<Option<PageStudy>>, groups: &[Group], now: bool, at_once: bool) -> View {
    let Comparison { state, hours, .. } = comparison;
    let page = &state.words.compare.page;
    let sheet = &state.words.compare.sheet;
    let mut head =
        vec![sheet.figure, page.system, sheet.value, page.standard, page.freedom, page.factor, page.expanded];
    if now {
        head.extend([page.standard_drawn, page.interval, page.both]);
    }
    let head = head.into_iter().map(|words| el("th").set("scope", "col").child(words)).collect::<View>();
    let mut table = el("table").child(el("thead").child(el("tr").child(head)));
    let mut bodies: Vec<(Group, RwSignal<String>)> = Vec::with_capacity(groups.len());
    for group in groups {
        let markup = RwSignal::new(String::new());
        table = table.child(move || el("tbody").markup(&markup.get()));
        bodies.push((*group, markup));
    }
    let from = Filling { state, study, hours };
    if at_once {
        bodies.iter().for_each(|body| untrack(|| put(from, *body)));
    }
    let yearly = bodies.last().copied();
    // Whoever fills the table, and no longer has this number, stops.
    let turn = Arc::new(AtomicU32::new(0));
    let left = turn.clone();
    on_cleanup(move || _ = left.fetch_add(1, Ordering::Relaxed));
    effect(move || {
        study.track();
        state.compare.found.track();
        state.units.track();
        state.currency.track();
        let own = turn.fetch_add(1, Ordering::Relaxed) + 1;
        fill(from, turn.clone(), own, bodies.clone(), 0);
    });
    // The hours are typed: only the cost a year, which stands last, follows them.
    effect(move || {
        hours.track();
        if let Some(last) = yearly {
            untrack(|| put(from, last));
        }
    });
    el("div")
        .class(if now { "scroll all-figures both" } else { "scroll all-figures" })
        .set("tabindex", "0")
        .set("role", "region")
        .set("aria-label", sheet.uncertainty)
        .child(table)
        .view()
}

/// What the rows are filled from.
#[derive(Clone, Copy)]
struct Filling {
    state: State,
    study: Memo<Option<PageStudy>>,
    hours: Memo<Option<u16>>,
}

/// Fills the rows a few figures at a time: a key or a click that comes meanwhile is not held up. What stood there
/// stays until its turn.
fn fill(from: Filling, turn: Arc<AtomicU32>, own: u32, bodies: Vec<(Group, RwSignal<String>)>, mut at: usize) {
    if turn.load(Ordering::Relaxed) != own {
        return;
    }
    let began = clock::now();
    while let Some(body) = bodies.get(at).copied() {
        untrack(|| put(from, body));
        at += 1;
        if clock::now().saturating_sub(began) >= FILLING {
            break;
        }
    }
    if at < bodies.len() {
        set_timeout(move || fill(from, turn, own, bodies, at), Duration::ZERO);
    }
}

/// So many milliseconds at a time; what is laid out after it takes as many again.
const FILLING: u64 = 5;

fn put(from: Filling, (group, markup): (Group, RwSignal<String>)) {
    let Filling { state, study, hours } = from;
    let rows = study.with(|known| {
        let known = known.as_ref()?;
        let study = known.study.as_ref().ok()?;
        Some(state.compare.found.with(|found| rows(state, known, study, found, group, hours.get())))
    });
    let rows = rows.unwrap_or_default();
    if markup.with(|before| *before != rows) {
        markup.set(rows);
    }
}

/// What there is to say of all figures together.
fn notes(state: State, known: &PageStudy, study: &Study, found: &DrawsFound) -> View {
    let page = &state.words.compare.page;
    if !known.is_of(found) {
        return found.study.is_some().then(|| el("p").class("note").child(page.draws_old)).view();
    }
    let mut said = Said::default();
    for at in 0..study.asked().len() {
        if let Some((budget, summary)) = known.budget(at, Some(1)).zip(known.summary(at, found, Some(1)))
            && !exact(known, &budget, Some(&summary))
        {
            said.note(&compare(study, &budget, &summary, 1));
        }
    }
    many([el("p").class("note").child((page.drawn_from)(found.draws, found.seed)).view(), said.view(state)]).view()
}

/// What no source acts on has nothing to disagree about.
fn exact(known: &PageStudy, budget: &Budget, summary: Option<&DrawSummary>) -> bool {
    let around = known.around(budget.asked, Some(1)).unwrap_or(budget.value);
    is_exact(budget, summary, around)
}

/// The rows of one figure: its systems and differences. As markup: a table of a hundred rows is there in a
/// few milliseconds.
fn rows(
    state: State,
    known: &PageStudy,
    study: &Study,
    found: &DrawsFound,
    (from, to): Group,
    hours: Option<u16>,
) -> String {
    let now = known.is_of(found);
    let mark = state.units.get().mark;
    let none = state.words.tools.no_figure;
    let mut markup = String::new();
    for at in from..to {
        let Some(asked) = study.asked().get(at).copied() else { continue };
        let kind = asked.kind();
        markup.push_str("<tr>");
        if at == from {
            let unit = state.unit(kind);
            let symbol = state.currency.with(|currency| unit_shown(unit, currency).into_owned());
            let label = (state.words.compare.output)(asked.output()).label;
            markup.push_str(&format!(
                "<th scope=\"rowgroup\" rowspan=\"{}\">{}<span class=\"note\">{}</span></th>",
                to - from,
                escape(label),
                escape(&symbol)
            ));
        }
        let mut cell = |text: &str| {
            markup.push_str("<td>");
            markup.push_str(&escape(text));
            markup.push_str("</td>");
        };
        cell(&known.name(asked));
        let Some(budget) = known.budget(at, hours) else {
            (0..if now { 8 } else { 5 }).for_each(|_| cell(none));
            markup.push_str("</tr>");
            continue;
        };
        let around = known.around(asked, hours);
        let pair = |value, width| state.with_context(|context| plus_minus(kind, value, width, around, context));
        let (value, standard) = pair(budget.value, budget.standard);
        cell(&value);
        cell(&standard);
        cell(&budget.freedom.map_or_else(|| "∞".to_owned(), |freedom| trimmed_to(freedom, 3, mark)));
        cell(&trimmed_to(budget.factor, 3, mark));
        cell(&format!("± {}", pair(budget.value, budget.expanded).1));
        if now {
            match known.summary(at, found, hours) {
                Some(summary) => {
                    let end = |value| pair(value, budget.standard).0;
                    cell(&pair(summary.mean, summary.standard).1);
                    cell(&format!("{} … {}", end(summary.low), end(summary.high)));
                    if exact(known, &budget, Some(&summary)) {
                        cell(state.words.compare.page.exact);
                    } else {
                        let agreement = compare(study, &budget, &summary, 1);
                        cell(&state.with_context(|context| (state.words.compare.agreement_note)(&agreement, context)));
                    }
                }
                None => [none; 3].into_iter().for_each(&mut cell),
            }
        }
        markup.push_str("</tr>");
    }
    markup
}

/// What is to be said of all figures together.
#[derive(Default)]
struct Said {
    all: usize,
    agree: usize,
    /// One that disagrees for each kind of disagreement, and how many there are.
    kinds: Vec<(Agreement, usize)>,
    /// Each reason once, as grave as it is anywhere.
    why: Vec<DisagreementCause>,
}

impl Said {
    fn note(&mut self, agreement: &Agreement) {
        self.all += 1;
        if agreement.agree {
            self.agree += 1;
            return;
        }
        match self.kinds.iter_mut().find(|(other, _)| other.noisy == agreement.noisy) {
            Some((_, count)) => *count += 1,
            None => self.kinds.push((agreement.clone(), 1)),
        }
        for why in &agreement.why {
            match self.why.iter_mut().find(|other| std::mem::discriminant(*other) == std::mem::discriminant(why)) {
                Some(DisagreementCause::AtBound(most)) => {
                    if let DisagreementCause::AtBound(share) = why {
                        *most = most.max(*share);
                    }
                }
                Some(_) => {}
                None => self.why.push(*why),
            }
        }
    }

    fn view(self, state: State) -> View {
        let words = &state.words.compare;
        let say = |(agreement, count): &(Agreement, usize)| {
            let message = (words.agreement)(agreement);
            let what = (words.page.of_figures)(*count, self.all, &message.what);
            told(Grade::Note, Message { what, ..message })
        };
        let why = |why: &DisagreementCause| el("li").child(state.with_context(|context| (words.why)(*why, context)));
        many([
            el("p").child((words.page.agreeing)(self.agree, self.all)).view(),
            self.kinds.iter().map(say).collect::<View>(),
            (!self.why.is_empty())
                .then(|| el("ul").class("note").child(self.why.iter().map(why).collect::<View>()))
                .view(),
        ])
        .view()
    }
}
