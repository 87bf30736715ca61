//! Every figure with its uncertainty by both methods, and where the two disagree and why.

use super::Bench;
use super::desk::Found;
use super::sure::Known;
use crate::browser::element::{Part, View, el, many};
use crate::domain::Grade;
use crate::domain::compare::agreement::{Agreement, Why, compare};
use crate::domain::compare::study::Study;
use crate::ui::chart::drawing::escaped;
use crate::ui::part::finding::told;
use crate::ui::signal::Memo;
use crate::ui::state::State;
use crate::ui::text::{Message, plus_minus, trimmed_to, unit_shown};

/// The table, and what there is to say about it.
pub fn results(bench: Bench, sure: Memo<Option<Known>>) -> View {
    let Bench { state, .. } = bench;
    (move || {
        sure.with(|known| {
            let known = known.as_ref()?;
            let study = match &known.study {
                Ok(study) => study,
                Err(error) => {
                    return Some(told(Grade::Unusual, (state.words.compare.no_study)(*error, &known.systems)));
                }
            };
            Some(state.compare.found.with(|found| whole(bench, sure, known, study, found)))
        })
    })
    .view()
}

fn whole(bench: Bench, sure: Memo<Option<Known>>, known: &Known, study: &Study, found: &Found) -> View {
    let Bench { state, hours, .. } = bench;
    let page = &state.words.compare.page;
    let sheet = &state.words.compare.sheet;
    let now = known.is_of(found);
    let mut head =
        vec![sheet.figure, page.system, sheet.value, page.standard, page.freedom, page.factor, page.expanded];
    if now {
        head.extend([page.standard_drawn, page.interval, page.both]);
    }
    let head = head.into_iter().map(|words| el("th").set("scope", "col").child(words)).collect::<View>();
    let mut table = el("table").class("beside").child(el("thead").child(el("tr").child(head)));
    let mut said = Said::default();
    let mut at = 0;
    while let Some(first) = study.asked().get(at) {
        let from = at;
        while study.asked().get(at).is_some_and(|asked| asked.output() == first.output()) {
            at += 1;
        }
        let places = (from, at);
        table = if first.kind() == crate::quantity::Kind::YearCost {
            // The hours are typed: this alone follows them.
            let body = move || {
                let rows = sure.with(|known| {
                    let known = known.as_ref()?;
                    let study = known.study.as_ref().ok()?;
                    let mut said = Said::default();
                    let rows = |found: &Found| rows(state, known, study, found, places, hours.get(), &mut said);
                    Some(state.compare.found.with_untracked(rows))
                });
                el("tbody").markup(&rows.unwrap_or_default())
            };
            table.child(body)
        } else {
            table.child(el("tbody").markup(&rows(state, known, study, found, places, 1, &mut said)))
        };
    }
    many([
        el("div")
            .class("scroll all-figures")
            .set("tabindex", "0")
            .set("role", "region")
            .set("aria-label", sheet.uncertainty)
            .child(table)
            .view(),
        (found.study.is_some() && !now).then(|| el("p").class("note").child(page.draws_old)).view(),
        now.then(|| el("p").class("note").child((page.drawn_from)(found.draws, found.seed))).view(),
        now.then(|| said.view(state)).view(),
    ])
    .view()
}

/// The rows of one figure: its systems and differences. As markup: a table of a hundred rows is there in a
/// few milliseconds.
#[allow(clippy::too_many_arguments, reason = "what is shown, of what, and what is to be said of it")]
fn rows(
    state: State,
    known: &Known,
    study: &Study,
    found: &Found,
    (from, to): (usize, usize),
    hours: u16,
    said: &mut Said,
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
                escaped(label),
                escaped(&symbol)
            ));
        }
        let mut cell = |text: &str| {
            markup.push_str("<td>");
            markup.push_str(&escaped(text));
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
            // What no source acts on has nothing to disagree about.
            let exact = budget.standard <= 1e-9 * around.unwrap_or(budget.value).abs();
            match known.summary(at, found, hours) {
                Some(summary) => {
                    let end = |value| pair(value, budget.standard).0;
                    cell(&pair(summary.mean, summary.standard).1);
                    cell(&format!("{} … {}", end(summary.low), end(summary.high)));
                    if exact {
                        cell(state.words.compare.page.exact);
                    } else {
                        let agreement = compare(study, &budget, &summary, 1);
                        cell(&state.with_context(|context| (state.words.compare.verdict)(&agreement, context)));
                        said.note(&agreement);
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
    /// One that disagrees for each kind of verdict, and how many there are.
    kinds: Vec<(Agreement, usize)>,
    /// Each reason once, as grave as it is anywhere.
    why: Vec<Why>,
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
                Some(Why::Held(most)) => {
                    if let Why::Held(share) = why {
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
        let why = |why: &Why| el("li").child(state.with_context(|context| (words.why)(*why, context)));
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
