//! All that follows from the trial as typed.

use crate::browser::graph::untrack;
use crate::domain::Draft;
use crate::domain::trial::boards::density::off_target;
use crate::domain::trial::boards::group::{BoardGroup, GroupBy, PropertyResult, groups, results};
use crate::domain::trial::boards::measured::MeasuredBoard;
use crate::domain::trial::boards::target::{Judged, judge};
use crate::domain::trial::finding::TrialPlace;
use crate::domain::trial::series::made::MadeRun;
use crate::domain::trial::series::material::{Needed, RunSheet, needed, sheets, unsolved};
use crate::domain::trial::series::runs::{of_run, series};
use crate::domain::trial::weigh_sheet::plan::plan;
use crate::domain::trial::weigh_sheet::sheet::make_out;
use crate::domain::trial::weigh_sheet::weighing::{Weighing, weigh};
use crate::domain::trial::{Series, SeriesDraft, SheetDraft, TrialFinding, TrialProblem, WeighSheet};
use crate::record::content::trial::{OpenTrial, TrialContent};
use crate::ui::signal::{Memo, memo, memo_after};
use crate::ui::state::State;
use crate::ui::text::{BenchContext, Context, Message};
use leptos::reactive::prelude::*;

/// What everything but the boards is made from.
#[derive(Clone, PartialEq)]
pub struct Basis {
    /// The recipe.
    pub recipe: Draft,
    /// The weigh-out sheet.
    pub sheet: SheetDraft,
    /// The series.
    pub series: Option<SeriesDraft>,
    /// The runs that were made.
    pub made: Vec<MadeRun>,
}

/// What comes of the series.
#[derive(Clone, PartialEq, Default)]
pub struct PlannedSeries {
    /// The series.
    pub series: Option<Series>,
    /// One sheet a run.
    pub sheets: Vec<RunSheet>,
    /// The material of all.
    pub needed: Vec<Needed>,
    /// What there is to say.
    pub findings: Vec<TrialFinding>,
}

/// What comes of the weigh-out sheet.
#[derive(Clone, PartialEq)]
pub struct Made {
    /// The recipe, that of the run.
    pub recipe: Draft,
    /// The sheet as typed, that of the run.
    pub typed: SheetDraft,
    /// The sheet, the last one that could be made out.
    pub sheet: Option<WeighSheet>,
    /// Whether the entries now give none.
    pub old: bool,
    /// What there is to say.
    pub findings: Vec<TrialFinding>,
    /// The trial and the run that it belongs to.
    of: (u32, u32),
}

/// Boards with the same target, and what is required of them.
#[derive(Clone, PartialEq)]
pub struct TestedGroup {
    /// The boards.
    pub group: BoardGroup,
    /// The requirements, checked against them.
    pub judged: Vec<Judged>,
    /// What there is to say of them.
    pub findings: Vec<TrialFinding>,
}

/// What comes of the boards.
#[derive(Clone, PartialEq)]
pub struct Tested {
    /// The boards, measured.
    pub boards: Vec<MeasuredBoard>,
    /// Every property that any of them gives.
    pub results: Vec<PropertyResult>,
    /// By combination, with what is required.
    pub combinations: Vec<TestedGroup>,
    /// By run.
    pub runs: Vec<BoardGroup>,
    /// What there is to say of single boards.
    pub findings: Vec<TrialFinding>,
}

/// The page's view of the bench.
#[derive(Clone, Copy)]
pub struct Desk {
    /// The app's state.
    pub state: State,
    /// Recipe, sheet and series as typed.
    pub basis: Memo<Basis>,
    /// The series.
    pub planned: Memo<PlannedSeries>,
    /// The sheet.
    pub made: Memo<Made>,
    /// The batch being weighed.
    pub weighing: Memo<Option<Weighing>>,
    /// The boards.
    pub tested: Memo<Tested>,
}

impl Desk {
    /// All that follows the trial on the page.
    pub fn new(state: State) -> Self {
        let bench = state.bench;
        let basis = memo(move || {
            bench.open.with(|OpenTrial { trial, .. }| Basis {
                recipe: trial.draft.clone(),
                sheet: trial.sheet.clone(),
                series: trial.series.clone(),
                made: trial.made(),
            })
        });
        let planned = memo(move || basis.with(plan_series));
        let made = memo_after(move |before: Option<&Made>| {
            let of = (bench.opening.get(), bench.run.get());
            basis.with(|basis| planned.with(|planned| make(basis, planned, of, before)))
        });
        let weighing = memo(move || {
            let (run, batch) = bench.place();
            made.with(|made| {
                let sheet = made.sheet.as_ref()?;
                Some(bench.open.with(|open| match open.trial.batch(run, batch) {
                    Some(lines) => weigh(sheet, lines),
                    None => weigh(sheet, &Default::default()),
                }))
            })
        });
        let tested = memo(move || planned.with(|planned| bench.open.with(|open| test(&open.trial, planned))));
        Self { state, basis, planned, made, weighing, tested }
    }

    /// A finding in words; `recipe` is that of the run spoken of.
    pub fn message(self, finding: &TrialFinding, recipe: &Draft, sheet: &SheetDraft) -> Message {
        let state = self.state;
        let units = state.units.get();
        let (run, batch) = untrack(|| state.bench.place());
        state.currency.with(|currency| {
            state.bench.open.with_untracked(|OpenTrial { trial, .. }| {
                let none = SeriesDraft::default();
                let context = BenchContext {
                    plain: Context { units: &units, draft: recipe, currency },
                    sheet,
                    batch: trial.batch(run, batch),
                    recovered: trial.recovered(run, batch),
                    series: trial.series.as_ref().unwrap_or(&none),
                    boards: &trial.boards,
                    requirements: &trial.requirements,
                };
                (state.words.bench.finding)(finding, &context)
            })
        })
    }

    /// What words need, with the trial's recipe.
    pub fn with_context<T>(self, act: impl FnOnce(&Context<'_>) -> T) -> T {
        let units = self.state.units.get();
        self.state
            .currency
            .with(|currency| self.basis.with(|basis| act(&Context { units: &units, draft: &basis.recipe, currency })))
    }
}

fn plan_series(basis: &Basis) -> PlannedSeries {
    let Some(draft) = &basis.series else { return PlannedSeries::default() };
    let outcome = series(&basis.recipe, draft, &basis.made);
    let mut findings = outcome.findings;
    let (mut made, mut all) = (Vec::new(), Vec::new());
    if let Some(series) = &outcome.series {
        made = sheets(&basis.recipe, &basis.sheet, draft, series);
        all = needed(series, &made);
        findings.extend(unsolved(&made));
    }
    PlannedSeries { series: outcome.series, sheets: made, needed: all, findings }
}

fn make(basis: &Basis, planned: &PlannedSeries, of: (u32, u32), before: Option<&Made>) -> Made {
    let run = planned.series.as_ref().and_then(|series| series.run(u16::try_from(of.1).unwrap_or(0)));
    let (recipe, typed) = match (run, &basis.series) {
        (Some(run), Some(draft)) => of_run(&basis.recipe, &basis.sheet, draft, run),
        _ => (basis.recipe.clone(), basis.sheet.clone()),
    };
    let outcome = plan(&recipe, &typed);
    let mut findings = outcome.findings;
    let sheet = outcome.plan.and_then(|plan| {
        let made = make_out(plan);
        findings.extend(made.findings);
        made.sheet
    });
    let last = before.filter(|before| sheet.is_none() && before.of == of).and_then(|before| before.sheet.clone());
    let old = last.is_some();
    Made { recipe, typed, sheet: sheet.or(last), old, findings, of }
}

fn test(trial: &TrialContent, planned: &PlannedSeries) -> Tested {
    let (mut made, mut findings) = (Vec::new(), Vec::new());
    for reading in trial.board_readings(&planned.sheets) {
        made.push(reading.made);
        findings.extend(reading.findings);
    }
    let required = |group: BoardGroup| {
        let (judged, said) = judge(&group.results, &trial.requirements);
        let said = said.into_iter().filter(|finding| !matches!(finding.what, TrialProblem::Entry(_)));
        let findings = said.chain(group.density.as_ref().and_then(off_target)).collect();
        TestedGroup { group, judged, findings }
    };
    let combinations = groups(&made, GroupBy::Combination).into_iter().map(required).collect();
    let runs = groups(&made, GroupBy::Run);
    let boards: Vec<MeasuredBoard> = made.into_iter().map(|own| own.board).collect();
    Tested { results: results(&boards), boards, combinations, runs, findings }
}

/// Whether a finding stands at a box already.
pub fn at_box(finding: &TrialFinding) -> bool {
    matches!(finding.what, TrialProblem::Entry(_)) && !matches!(finding.place, TrialPlace::Recipe(_))
}
