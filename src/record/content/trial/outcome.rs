//! What comes of a trial as typed: its series with a sheet a run, and its boards by run and by combination.

use crate::domain::Draft;
use crate::domain::trial::boards::density::off_target;
use crate::domain::trial::boards::group::{BoardGroup, GroupBy, PropertyResult, groups, results};
use crate::domain::trial::boards::measured::MeasuredBoard;
use crate::domain::trial::boards::target::{Judged, judge};
use crate::domain::trial::series::made::MadeRun;
use crate::domain::trial::series::material::{Needed, RunSheet, needed, sheets, unsolved};
use crate::domain::trial::series::runs::series;
use crate::domain::trial::{BoardId, Series, SeriesDraft, SheetDraft, TrialFinding, TrialProblem, WeighSheet};
use crate::record::content::trial::TrialContent;

/// What everything but the boards is made from.
#[derive(Debug, Clone, PartialEq)]
pub struct Basis {
    /// The recipe.
    pub recipe: Draft,
    /// The weigh sheet.
    pub sheet: SheetDraft,
    /// The series.
    pub series: Option<SeriesDraft>,
    /// The runs that were made.
    pub made: Vec<MadeRun>,
}

/// What comes of the series.
#[derive(Debug, Clone, PartialEq, Default)]
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

/// Boards with the same target, and what is required of them.
#[derive(Debug, Clone, PartialEq)]
pub struct TestedGroup {
    /// The boards.
    pub group: BoardGroup,
    /// The requirements, checked against them.
    pub judged: Vec<Judged>,
    /// What there is to say of them.
    pub findings: Vec<TrialFinding>,
}

/// What comes of the boards.
#[derive(Debug, Clone, PartialEq)]
pub struct Tested {
    /// The boards, measured.
    pub boards: Vec<MeasuredBoard>,
    /// The sheet that each was made from, in the same order.
    pub sheets: Vec<(BoardId, Option<WeighSheet>)>,
    /// Every property that any of them gives.
    pub results: Vec<PropertyResult>,
    /// By combination, with what is required.
    pub combinations: Vec<TestedGroup>,
    /// By run.
    pub runs: Vec<BoardGroup>,
    /// What there is to say of single boards.
    pub findings: Vec<TrialFinding>,
}

impl Basis {
    /// The series, with a sheet a run and the material of all.
    #[must_use]
    pub fn plan(&self) -> PlannedSeries {
        let Some(draft) = &self.series else { return PlannedSeries::default() };
        let outcome = series(&self.recipe, draft, &self.made);
        let mut findings = outcome.findings;
        let (mut made, mut all) = (Vec::new(), Vec::new());
        if let Some(series) = &outcome.series {
            made = sheets(&self.recipe, &self.sheet, draft, series);
            all = needed(series, &made);
            findings.extend(unsolved(&made));
        }
        PlannedSeries { series: outcome.series, sheets: made, needed: all, findings }
    }
}

impl Tested {
    /// The board with that number, measured.
    #[must_use]
    pub fn board(&self, id: BoardId) -> Option<&MeasuredBoard> {
        self.boards.iter().find(|board| board.id == id)
    }

    /// The sheet that a board was made from.
    #[must_use]
    pub fn sheet(&self, id: BoardId) -> Option<&WeighSheet> {
        self.sheets.iter().find(|(own, _)| *own == id)?.1.as_ref()
    }
}

impl TrialContent {
    /// What everything but the boards is made from.
    #[must_use]
    pub fn basis(&self) -> Basis {
        Basis { recipe: self.draft.clone(), sheet: self.sheet.clone(), series: self.series.clone(), made: self.made() }
    }

    /// The boards against their own targets and against what is required.
    #[must_use]
    pub fn tested(&self, planned: &PlannedSeries) -> Tested {
        let (mut made, mut findings) = (Vec::new(), Vec::new());
        for reading in self.board_readings(&planned.sheets) {
            made.push(reading.made);
            findings.extend(reading.findings);
        }
        let required = |group: BoardGroup| {
            let (judged, said) = judge(&group.results, &self.requirements);
            let said = said.into_iter().filter(|finding| !matches!(finding.what, TrialProblem::Entry(_)));
            let findings = said.chain(group.density.as_ref().and_then(off_target)).collect();
            TestedGroup { group, judged, findings }
        };
        let combinations = groups(&made, GroupBy::Combination).into_iter().map(required).collect();
        let runs = groups(&made, GroupBy::Run);
        let sheets = made.iter().map(|own| (own.board.id, own.sheet.clone())).collect();
        let boards: Vec<MeasuredBoard> = made.into_iter().map(|own| own.board).collect();
        Tested { results: results(&boards), boards, sheets, combinations, runs, findings }
    }
}
