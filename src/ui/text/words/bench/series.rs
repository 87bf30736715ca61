//! Findings of a series and of what it tells.

use crate::domain::trial::{TrialFinding, TrialPlace, TrialProblem};
use crate::ui::text::{BenchContext, Message};
use crate::{t, told};

pub(super) fn series(finding: &TrialFinding, context: &BenchContext<'_>) -> Message {
    match finding.what {
        TrialProblem::NoFactors => told!("bench-finding-no-factors"),
        TrialProblem::SameFactor => told!("bench-finding-same-factor"),
        TrialProblem::LevelsAlike => told!("bench-finding-levels-alike"),
        TrialProblem::FactorUnnamed => told!("bench-finding-factor-unnamed"),
        TrialProblem::LevelBlank => told!("bench-finding-level-blank"),
        TrialProblem::LevelNotANumber => {
            told!("bench-finding-level-not-a-number", typed = typed(finding, context))
        }
        TrialProblem::FactorMissing => told!("bench-finding-factor-missing"),
        TrialProblem::DoseBesideSystem => told!("bench-finding-dose-beside-system"),
        TrialProblem::TooManyFactors { most } => told!("bench-finding-too-many-factors", most = most),
        TrialProblem::TooManyRuns { runs, most } => told!("bench-finding-too-many-runs", runs = runs, most = most),
        TrialProblem::FractionNeedsTwoLevels => told!("bench-finding-fraction-needs-two-levels"),
        TrialProblem::NoSuchFraction { factors } => told!("bench-finding-no-such-fraction", factors = factors),
        TrialProblem::BlocksDoNotFit => told!("bench-finding-blocks-do-not-fit"),
        TrialProblem::ResolutionThree => told!("bench-finding-resolution-three"),
        TrialProblem::ResolutionFour => told!("bench-finding-resolution-four"),
        TrialProblem::BlockHidesInteraction => told!("bench-finding-block-hides-interaction"),
        TrialProblem::MadeRunsStay { made, open } => {
            told!("bench-finding-made-runs-stay", made = made, all = made + open, open = open)
        }
        TrialProblem::RunsOutsideDesign { count } => told!("bench-finding-runs-outside-design", count = count),
        TrialProblem::RunUnsolved { place } => told!("bench-finding-run-unsolved", run = place),
        TrialProblem::RunsMissing { count } => told!("bench-finding-runs-missing", count = count),
        TrialProblem::BoardsWithoutRun { count } => told!("bench-finding-boards-without-run", count = count),
        TrialProblem::TooFewResults => told!("bench-finding-too-few-results"),
        TrialProblem::NoVariation => told!("bench-finding-no-variation"),
        TrialProblem::NoFreedom => told!("bench-finding-no-freedom"),
        // The others belong to the sheet and the boards, which are told of before.
        _ => told!("bench-finding-other"),
    }
}

/// What was typed at the place of the finding.
fn typed<'a>(finding: &TrialFinding, context: &BenchContext<'a>) -> &'a str {
    let TrialPlace::Series(field) = finding.place else { return "" };
    context.series.entry(field).map_or("", |entry| entry.text.trim())
}

/// What a new run order moves.
#[must_use]
pub fn redraw(made: usize, open: usize) -> String {
    t!("bench-redraw", made = made, open = open)
}
