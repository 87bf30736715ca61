//! The uncertainty of the chosen figures, worked out.

use crate::domain::compare::Output;
use crate::domain::compare::draft::UncertaintyDraft;
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::uncertainty::budget::Budget;
use crate::domain::compare::uncertainty::source::{self, UncertaintySource};
use crate::domain::compare::uncertainty::study::{RequestedFigure, Study, StudyError, UncertainInput};
use crate::statistics::draws::DrawSummary;
use crate::ui::chart::series::letter;
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::systems::Compared;
use crate::ui::state::compare::DrawsFound;
use crate::ui::table::FigureUncertainty;
use crate::ui::text::words;
use leptos::prelude::*;

/// The uncertainty of the figures compared.
#[derive(Debug, Clone, PartialEq)]
pub struct PageStudy {
    /// All sources on the page.
    pub sources: Vec<UncertaintySource>,
    /// Those that are not exact, as the study has them.
    pub uncertain: Vec<UncertainInput>,
    /// The systems that have a result.
    pub systems: Vec<ComparedSystem>,
    /// The place of each in the comparison.
    pub places: Vec<usize>,
    /// The study of every figure and difference, or why there is none.
    pub study: Result<Study, StudyError>,
    /// Each of them to first order; `None` where it comes to no number.
    pub budgets: Vec<Option<Budget>>,
}

/// The uncertainty, as it is whenever something changes.
pub fn study(context: CompareContext) -> Memo<Option<PageStudy>> {
    let own = Memo::new(move |_| {
        context.state.compare.typed.with(|typed| (typed.uncertainty.sources.clone(), typed.uncertainty.figures.clone()))
    });
    Memo::new(move |_| {
        own.track();
        let typed = context.state.compare.typed.with_untracked(|typed| typed.uncertainty.clone());
        context.shown.with(|shown| work_out(shown, &typed))
    })
}

/// The figures that can be chosen, with whether they are: those of the table that the reference gives.
pub fn choosable(shown: &Compared, typed: &UncertaintyDraft) -> Vec<(Output, bool)> {
    let gives = |output: &Output| {
        shown.ready.iter().filter_map(|system| system.case()).any(|case| output.value(case).is_some())
    };
    let all = Output::side_by_side(1).into_iter().filter(gives);
    all.map(|output| (output, typed.is_chosen(&output.key()))).collect()
}

/// The study of the figures chosen; `None` without a system that has a result.
pub fn work_out(shown: &Compared, typed: &UncertaintyDraft) -> Option<PageStudy> {
    let systems = shown.ready.clone();
    let reference = shown.ready_at(None);
    let sources = source::all(typed, &systems);
    let uncertain: Vec<UncertainInput> = sources.iter().filter_map(|source| source.uncertain(typed)).collect();
    let cases: Vec<_> = systems.iter().filter_map(|system| system.case().cloned()).collect();
    cases.first()?;
    let outputs: Vec<Output> =
        choosable(shown, typed).into_iter().filter(|(_, chosen)| *chosen).map(|(output, _)| output).collect();
    let asked = RequestedFigure::all(&cases, reference, &outputs);
    let study = Study::new(&cases, &uncertain, &asked);
    let budgets = match &study {
        Ok(study) => (0..asked.len()).map(|at| study.budget(at)).collect(),
        Err(_) => Vec::new(),
    };
    Some(PageStudy { sources, uncertain, systems, places: shown.places.clone(), study, budgets })
}

/// A cost per year is worked out for one hour: so many times that is what is shown. `None` where no hours are known.
fn times(asked: RequestedFigure, hours: Option<u16>) -> Option<u16> {
    if matches!(asked.output(), Output::CostPerYear(_)) { hours } else { Some(1) }
}

impl PageStudy {
    /// A figure's place to first order, for so many hours a year.
    #[must_use]
    pub fn budget(&self, at: usize, hours: Option<u16>) -> Option<Budget> {
        let budget = self.budgets.get(at)?.clone()?;
        let times = times(budget.asked, hours)?;
        Some(if times == 1 { budget } else { budget.times(f64::from(times)) })
    }

    /// What the draws say of it, if they are of what is on the page.
    #[must_use]
    pub fn summary(&self, at: usize, found: &DrawsFound, hours: Option<u16>) -> Option<DrawSummary> {
        let asked = self.budgets.get(at)?.as_ref()?.asked;
        let times = f64::from(times(asked, hours)?);
        found.summaries.get(at).copied().flatten().map(|summary| summary.times(times))
    }

    /// Whether these draws are of what is on the page.
    #[must_use]
    pub fn is_of(&self, found: &DrawsFound) -> bool {
        self.study.as_ref().ok().is_some_and(|study| found.study.as_ref() == Some(study))
    }

    /// The value near which a difference lies: the reference's; `None` for a figure by itself.
    #[must_use]
    pub fn around(&self, asked: RequestedFigure, hours: Option<u16>) -> Option<f64> {
        let RequestedFigure::Difference { reference, output, .. } = asked else { return None };
        let times = f64::from(times(asked, hours)?);
        output.value(self.systems.get(reference)?.case()?).map(|amount| amount.base * times)
    }

    /// Every figure by both methods, to be given out.
    pub fn measured<T>(
        &self,
        found: &DrawsFound,
        hours: Option<u16>,
        act: impl FnOnce(&[FigureUncertainty<'_>]) -> T,
    ) -> T {
        let now = self.is_of(found);
        let both = |at: usize| {
            let budget = self.budget(at, hours)?;
            Some((budget, self.summary(at, found, hours).filter(|_| now)))
        };
        let all: Vec<_> = (0..self.budgets.len()).filter_map(both).collect();
        let mut measured = Vec::with_capacity(all.len());
        for (budget, summary) in &all {
            let around = self.around(budget.asked, hours);
            measured.push(FigureUncertainty { budget, summary: summary.as_ref(), around });
        }
        act(&measured)
    }

    /// A figure asked for in words: its system by letter and name, or the letters of both.
    #[must_use]
    pub fn name(&self, asked: RequestedFigure) -> String {
        let letter = |at: usize| self.places.get(at).map_or('?', |place| letter(*place));
        match asked {
            RequestedFigure::Of { system, .. } => {
                format!("{} {}", letter(system), self.systems.get(system).map_or("", |system| system.name.as_str()))
            }
            RequestedFigure::Difference { system, reference, .. } => {
                format!("{} − {}", letter(system), letter(reference))
            }
        }
    }

    /// A figure asked for by the letter of its system, or of both.
    #[must_use]
    pub fn letters(&self, asked: RequestedFigure) -> String {
        match asked {
            RequestedFigure::Of { system, .. } => {
                self.places.get(system).map_or_else(String::new, |place| letter(*place).to_string())
            }
            difference => self.name(difference),
        }
    }

    /// A source in words: the number that it acts on.
    #[must_use]
    pub fn source_name(&self, source: &UncertaintySource) -> String {
        let target = source.targets.first();
        let draft = target.and_then(|(system, field)| self.systems.get(*system).map(|system| (&system.draft, *field)));
        draft.map_or_else(String::new, |(draft, field)| words::field_name(field, draft))
    }
}
