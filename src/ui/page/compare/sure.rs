//! How sure the figures are: all that are compared, by first order and by Monte Carlo, and what to improve.

use super::desk::Found;
use super::parts::{follow, picked, select};
use super::solve::output_choices;
use super::sweep::first;
use super::systems::Compared;
use super::{Bench, draws, results, shares, sources};
use crate::browser::element::{Part, View, el};
use crate::domain::compare::Output;
use crate::domain::compare::draft::CompareDraft;
use crate::domain::compare::side::System;
use crate::domain::compare::uncertainty::budget::Budget;
use crate::domain::compare::uncertainty::source::{self, Source};
use crate::domain::compare::uncertainty::study::{Asked, NoStudy, Study, Uncertain};
use crate::statistics::draws::DrawSummary;
use crate::ui::chart::series::letter;
use crate::ui::field::choice::Choice;
use crate::ui::part::fold::fold;
use crate::ui::signal::{Memo, memo};
use crate::ui::state::State;
use crate::ui::table::Measured;

const OUTPUT: &str = "sure.output";
const FIRST_OUTPUT: &str = "mat_wet";
const OF: &str = "sure.of";

/// What is known of the uncertainty.
#[derive(Debug, Clone, PartialEq)]
pub struct Known {
    /// All sources on the page.
    pub sources: Vec<Source>,
    /// Those that are not exact, as the study has them.
    pub uncertain: Vec<Uncertain>,
    /// The systems that have a result.
    pub systems: Vec<System>,
    /// The letter of each.
    pub letters: Vec<char>,
    /// The study of every figure and difference, or why there is none.
    pub study: Result<Study, NoStudy>,
    /// Each of them to first order; `None` where it comes to no number.
    pub budgets: Vec<Option<Budget>>,
}

/// The uncertainty, as it is whenever something changes.
pub fn sure(bench: Bench) -> Memo<Option<Known>> {
    let Bench { state, shown, .. } = bench;
    let own = follow(state, &["plus_minus.", "form.", "freedom."]);
    memo(move || {
        own.track();
        state.compare.typed.with_untracked(|typed| shown.with(|shown| work_out(shown, typed)))
    })
}

fn work_out(shown: &Compared, typed: &CompareDraft) -> Option<Known> {
    let systems = shown.ready.clone();
    let reference = shown.ready_at("");
    let sources = source::all(typed, &systems);
    let uncertain: Vec<Uncertain> = sources.iter().filter_map(|source| source.uncertain(typed)).collect();
    let cases: Vec<_> = systems.iter().filter_map(|system| system.case().cloned()).collect();
    cases.first()?;
    let asked = Asked::all(&cases, reference, &Output::side_by_side(1));
    let study = Study::new(&cases, &uncertain, &asked);
    let budgets = match &study {
        Ok(study) => (0..asked.len()).map(|at| study.budget(at)).collect(),
        Err(_) => Vec::new(),
    };
    let letters = shown.places.iter().map(|place| letter(*place)).collect();
    Some(Known { sources, uncertain, systems, letters, study, budgets })
}

/// A cost a year is worked out for one hour: so many times that is what is shown.
fn times(asked: Asked, hours: u16) -> u16 {
    if matches!(asked.output(), Output::CostPerYear(_)) { hours } else { 1 }
}

impl Known {
    /// A figure's place to first order, for so many hours a year.
    #[must_use]
    pub fn budget(&self, at: usize, hours: u16) -> Option<Budget> {
        let budget = self.budgets.get(at)?.clone()?;
        let times = times(budget.asked, hours);
        Some(if times == 1 { budget } else { budget.times(f64::from(times)) })
    }

    /// What the draws say of it, if they are of what is on the page.
    #[must_use]
    pub fn summary(&self, at: usize, found: &Found, hours: u16) -> Option<DrawSummary> {
        let asked = self.budgets.get(at)?.as_ref()?.asked;
        found.summaries.get(at).copied().flatten().map(|summary| summary.times(f64::from(times(asked, hours))))
    }

    /// Whether these draws are of what is on the page.
    #[must_use]
    pub fn is_of(&self, found: &Found) -> bool {
        self.study.as_ref().ok().is_some_and(|study| found.study.as_ref() == Some(study))
    }

    /// The value near which a difference lies: the reference's; `None` for a figure by itself.
    #[must_use]
    pub fn around(&self, asked: Asked, hours: u16) -> Option<f64> {
        let Asked::Difference { reference, output, .. } = asked else { return None };
        output.value(self.systems.get(reference)?.case()?).map(|amount| amount.base * f64::from(times(asked, hours)))
    }

    /// Every figure by both methods, to be given out.
    pub fn measured<T>(&self, found: &Found, hours: u16, act: impl FnOnce(&[Measured<'_>]) -> T) -> T {
        let now = self.is_of(found);
        let both = |at: usize| {
            let budget = self.budget(at, hours)?;
            Some((budget, self.summary(at, found, hours).filter(|_| now)))
        };
        let all: Vec<_> = (0..self.budgets.len()).filter_map(both).collect();
        let mut measured = Vec::with_capacity(all.len());
        for (budget, summary) in &all {
            let around = self.around(budget.asked, hours);
            measured.push(Measured { budget, summary: summary.as_ref(), around });
        }
        act(&measured)
    }

    /// A figure asked for in words: its system by letter and name, or the letters of both.
    #[must_use]
    pub fn name(&self, asked: Asked) -> String {
        let letter = |at: usize| self.letters.get(at).copied().unwrap_or('?');
        match asked {
            Asked::Of { system, .. } => {
                format!("{} {}", letter(system), self.systems.get(system).map_or("", |system| system.name.as_str()))
            }
            Asked::Difference { system, reference, .. } => format!("{} − {}", letter(system), letter(reference)),
        }
    }

    /// The places of a figure's budgets: of each system, and of the differences.
    fn places(&self, key: &str) -> Vec<usize> {
        let of = |(at, budget): (usize, &Option<Budget>)| {
            budget.as_ref().filter(|budget| budget.asked.output().key() == key).map(|_| at)
        };
        self.budgets.iter().enumerate().filter_map(of).collect()
    }
}

/// The figures whose shares can be looked at: those of the table.
fn figures(state: State, shown: &Compared) -> Vec<Choice> {
    let side = Output::side_by_side(1);
    let plain = |key: &str| side.iter().any(|output| output.key() == key);
    let all = first(shown).map(|system| output_choices(state, system)).unwrap_or_default();
    all.into_iter().filter(|(key, _)| plain(key)).collect()
}

/// The place of the budget whose shares are looked at.
pub fn chosen(bench: Bench, sure: Memo<Option<Known>>) -> Memo<Option<usize>> {
    let Bench { state, shown, .. } = bench;
    let own = follow(state, &[OUTPUT, OF]);
    memo(move || {
        own.track();
        state.compare.typed.with_untracked(|typed| {
            let key = shown.with(|shown| picked(typed, OUTPUT, FIRST_OUTPUT, &figures(state, shown)));
            let of: usize = typed.choice(OF).parse().unwrap_or(0);
            sure.with(|known| {
                let places = known.as_ref()?.places(&key);
                places.get(of).or(places.first()).copied()
            })
        })
    })
}

/// The section.
pub fn section(bench: Bench, sure: Memo<Option<Known>>) -> View {
    let Bench { state, shown, .. } = bench;
    let page = &state.words.compare.page;
    let figures = memo(move || shown.with(|shown| figures(state, shown)));
    let key = memo(move || {
        state.compare.typed.with(|typed| figures.with(|figures| picked(typed, OUTPUT, FIRST_OUTPUT, figures)))
    });
    let of = memo(move || {
        key.with(|key| {
            sure.with(|known| {
                let Some(known) = known else { return Vec::new() };
                let name = |at: usize| known.budgets.get(at)?.as_ref().map(|budget| known.name(budget.asked));
                let names = known.places(key).into_iter().filter_map(name);
                names.enumerate().map(|(at, name)| (at.to_string(), name)).collect::<Vec<Choice>>()
            })
        })
    });
    let chosen = chosen(bench, sure);
    el("section")
        .set("aria-labelledby", "sure")
        .child(el("h2").set("id", "sure").set("tabindex", "-1").child(state.words.compare.sheet.uncertainty))
        .child(el("p").child(page.sure_hint))
        .child(fold(page.sources, move || sources::sources(bench, sure)))
        .child(draws::controls(state, sure))
        .child(draws::progress(state))
        .child(el("div").class("results").child(results::results(bench, sure, false)))
        .child(el("h3").child(page.shares))
        .child(
            el("div")
                .class("fields")
                .child(select(state, OUTPUT, page.sweep_output, FIRST_OUTPUT, figures))
                .child(select(state, OF, page.shares_of, "0", of)),
        )
        .child(shares::shares(bench, sure, chosen, true))
        .view()
}
