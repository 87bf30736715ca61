//! Findings of a series and of what it tells.

use crate::domain::trial::{TrialFinding, TrialPlace, TrialProblem};
use crate::ui::text::BenchContext;

fn said(what: impl Into<String>, fix: impl Into<String>) -> (String, String) {
    (what.into(), fix.into())
}

pub(super) fn series(finding: &TrialFinding, context: &BenchContext<'_>) -> (String, String) {
    match finding.what {
        TrialProblem::NoFactors => said("nothing is varied yet.", "Add factor with two levels at least."),
        TrialProblem::SameFactor => said("there twice.", "Remove one, and give its levels to the other."),
        TrialProblem::LevelsAlike => said(
            "two to six levels are needed, and no two alike.",
            "Type levels far enough apart to show in the boards.",
        ),
        TrialProblem::FactorUnnamed => said("the factor has no name.", "Enter one, such as “Press temperature”."),
        TrialProblem::LevelBlank => said("nothing entered.", "Enter the level, or remove it."),
        TrialProblem::LevelNotANumber => said(
            format!("“{}” is not a number.", typed(finding, context)),
            "Enter a number in the unit of the factor. Clear the unit for levels in words.",
        ),
        TrialProblem::FactorMissing => said(
            "the liquid that it doses is not in the recipe.",
            "Choose a liquid of the recipe, or remove the factor.",
        ),
        TrialProblem::DoseBesideSystem => said(
            "the dose of one liquid cannot be varied while whole binder systems are exchanged.",
            "Make each dose a binder system of its own, or remove one of the two factors.",
        ),
        TrialProblem::TooManyFactors { most } => {
            said(format!("more than the {most} factors that a series holds."), "Vary the most promising ones first.")
        }
        TrialProblem::TooManyRuns { runs, most } => said(
            format!("{runs} runs are more than the {most} that a series holds."),
            "Take fewer levels, factors or replicates, or a fraction of two levels.",
        ),
        TrialProblem::FractionNeedsTwoLevels => said(
            "a fraction is made of factors with two levels each.",
            "Leave two levels to each factor, or make all combinations.",
        ),
        TrialProblem::NoSuchFraction { factors } => said(
            format!("the published table has no such fraction of {factors} factors."),
            "Choose one that is offered, or make all combinations.",
        ),
        TrialProblem::BlocksDoNotFit => said(
            "its runs cannot be split so without losing a main effect in the blocks.",
            "Take fewer blocks, a block a replicate, or two levels throughout.",
        ),
        TrialProblem::ResolutionThree => said(
            "in this fraction main effects are aliased with two-factor interactions.",
            "Good for sorting out what matters. Use a larger fraction to be sure of an effect.",
        ),
        TrialProblem::ResolutionFour => said(
            "in this fraction two-factor interactions are aliased with each other.",
            "Main effects are clear of them. Use a larger fraction if interactions matter.",
        ),
        TrialProblem::BlockHidesInteraction => {
            said("a two-factor interaction is confounded with the blocks.", "Take fewer blocks if it matters.")
        }
        TrialProblem::MadeRunsStay { made, open } => said(
            match made {
                1 => format!("1 of {} runs is made and stays as it is.", made + open),
                _ => format!("{made} of {} runs are made and stay as they are.", made + open),
            },
            format!(
                "A new run order, another number of replicates or another factor moves only {}.",
                if open == 1 { "the run not made yet".to_owned() } else { format!("the {open} runs not made yet") }
            ),
        ),
        TrialProblem::RunsOutsideDesign { count } => said(
            match count {
                1 => "one run was made at levels that are not in the plan any more.".to_owned(),
                _ => format!("{count} runs were made at levels that are not in the plan any more."),
            },
            "Their boards keep their levels and results, and are left out of the effects. Undo the change to include them.",
        ),
        TrialProblem::RunUnsolved { place } => {
            said(format!("run {place} cannot be made out."), "Fix what its own sheet points at, or change the levels.")
        }
        TrialProblem::RunsMissing { count } => said(
            format!("{} without a result, left out of the effects.", runs(count)),
            "Enter the results of its boards. With runs missing the effects are less sure and not told as cleanly apart.",
        ),
        TrialProblem::BoardsWithoutRun { count } => said(
            match count {
                1 => "one result of a run that is not in the series, left out.".to_owned(),
                _ => format!("{count} results of runs that are not in the series, left out."),
            },
            "Give each board the number of its run.",
        ),
        TrialProblem::TooFewResults => said(
            "too few results to tell an effect.",
            "Enter the results of more runs; every combination once at least.",
        ),
        TrialProblem::NoVariation => {
            said("all results are alike, so there is nothing to explain.", "Check the entries, or measure more finely.")
        }
        TrialProblem::NoFreedom => said(
            "the model takes up all results, so there is no telling how sure an effect is.",
            "Make replicates, or look at main effects only.",
        ),
        // The others belong to the sheet and the boards, which are told of before.
        _ => said("there is something to look at.", "Check the entries."),
    }
}

/// What was typed at the place of the finding.
fn typed<'a>(finding: &TrialFinding, context: &BenchContext<'a>) -> &'a str {
    let TrialPlace::Series(field) = finding.place else { return "" };
    context.series.entry(field).map_or("", |entry| entry.text.trim())
}

/// What a new run order moves.
pub(super) fn redraw(made: usize, open: usize) -> String {
    let made = match made {
        1 => "1 run is made and keeps its number and levels.".to_owned(),
        _ => format!("{made} runs are made and keep their numbers and levels."),
    };
    let open = if open == 1 { "the run not made yet".to_owned() } else { format!("the {open} runs not made yet") };
    format!("{made} Draw a new order for {open}?").replace("keep its number", "keep their numbers")
}

fn runs(count: usize) -> String {
    if count == 1 { "one run".to_owned() } else { format!("{count} runs") }
}
