//! The boards of a trial, measured, each with what it was made from.

use crate::domain::trial::boards::group::BoardMade;
use crate::domain::trial::boards::measured::measure;
use crate::domain::trial::boards::target::uneven;
use crate::domain::trial::finding::{TrialFinding, TrialProblem};
use crate::domain::trial::series::material::{RunSheet, sheets};
use crate::domain::trial::weigh_sheet::plan::plan;
use crate::domain::trial::weigh_sheet::sheet::{WeighSheet, make_out};
use crate::record::content::trial::TrialContent;

/// A board with what there is to say about it.
#[derive(Debug, Clone, PartialEq)]
pub struct BoardReading {
    /// The board.
    pub made: BoardMade,
    /// What there is to say, but for what is said at its boxes.
    pub findings: Vec<TrialFinding>,
}

impl TrialContent {
    /// The weigh sheet of a run, or the base sheet; `None` where it cannot be made out.
    #[must_use]
    pub fn sheet_of(&self, run: Option<u16>) -> Option<WeighSheet> {
        let (recipe, sheet) = self.basis_of(run);
        make_out(plan(&recipe, &sheet).plan?).sheet
    }

    /// One sheet a run of the series as planned, in run order; none without a series.
    #[must_use]
    pub fn run_sheets(&self) -> Vec<RunSheet> {
        let planned = self.series.as_ref().zip(self.planned());
        planned.map_or_else(Vec::new, |(draft, series)| sheets(&self.draft, &self.sheet, draft, &series))
    }

    /// Every board, measured; `planned` as [`run_sheets`](Self::run_sheets) gives them.
    #[must_use]
    pub fn board_readings(&self, planned: &[RunSheet]) -> Vec<BoardReading> {
        let one = |draft: &crate::domain::trial::BoardDraft| {
            let measured = measure(draft);
            let said = measured.findings.into_iter().filter(|own| !matches!(own.what, TrialProblem::Entry(_)));
            let findings = said.chain(uneven(&measured.board, self.made_with(draft).0.board_kind)).collect();
            let own = draft.run.and_then(|place| planned.iter().find(|sheet| sheet.run.place == place));
            let sheet = match own {
                Some(own) => own.sheet.clone(),
                None => {
                    let (recipe, sheet) = self.made_with(draft);
                    plan(&recipe, &sheet).plan.and_then(|plan| make_out(plan).sheet)
                }
            };
            let made = BoardMade { board: measured.board, run: own.map(|own| own.run.clone()), sheet };
            BoardReading { made, findings }
        };
        self.boards.iter().map(one).collect()
    }
}
