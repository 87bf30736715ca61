//! Findings of a series and of what it tells.

use crate::domain::trial::{Finding, What};
use crate::ui::text::BenchContext;

fn said(what: impl Into<String>, mend: impl Into<String>) -> (String, String) {
    (what.into(), mend.into())
}

pub(super) fn series(finding: &Finding, _: &BenchContext<'_>) -> (String, String) {
    match finding.what {
        What::NoFactors => said("nothing is varied yet.", "Add a factor with two levels at least."),
        What::SameFactor => said("there twice.", "Remove one, and give its levels to the other."),
        What::LevelsAlike => said(
            "two to six levels are needed, and no two alike.",
            "Type levels far enough apart to show in the boards.",
        ),
        What::FactorMissing => said(
            "the liquid that it doses is not in the recipe.",
            "Choose a liquid of the recipe, or remove the factor.",
        ),
        What::DoseBesideSystem => said(
            "the dose of one liquid cannot be varied while whole binder systems are exchanged.",
            "Make each dose a binder system of its own, or remove one of the two factors.",
        ),
        What::TooManyFactors { most } => {
            said(format!("more than the {most} factors that a series holds."), "Vary the most promising ones first.")
        }
        What::TooManyRuns { runs, most } => said(
            format!("{runs} runs are more than the {most} that a series holds."),
            "Take fewer levels, factors or replicates, or a fraction of two levels.",
        ),
        What::FractionNeedsTwoLevels => said(
            "a fraction is made of factors with two levels each.",
            "Leave two levels to each factor, or make all combinations.",
        ),
        What::NoSuchFraction { factors } => said(
            format!("the published table has no such fraction of {factors} factors."),
            "Choose one that is offered, or make all combinations.",
        ),
        What::BlocksDoNotFit => said(
            "its runs cannot be split so without losing a main effect in the blocks.",
            "Take fewer blocks, a block a replicate, or two levels throughout.",
        ),
        What::ResolutionThree => said(
            "in this fraction a main effect cannot be told from an interaction of two factors.",
            "Good for sorting out what matters. Take a larger fraction to be sure of an effect.",
        ),
        What::ResolutionFour => said(
            "in this fraction interactions of two factors cannot be told from each other.",
            "Main effects stand clear of them. Take a larger fraction if interactions matter.",
        ),
        What::BlockHidesInteraction => {
            said("an interaction of two factors cannot be told from the blocks.", "Take fewer blocks if it matters.")
        }
        What::RunUnsolved { place } => {
            said(format!("run {place} cannot be made out."), "Mend what its own sheet points at, or change the levels.")
        }
        What::RunsMissing { count } => said(
            format!("{} without a result, left out of the effects.", runs(count)),
            "Type the results of its boards. With runs missing the effects are less sure and not told as cleanly apart.",
        ),
        What::BoardsWithoutRun { count } => said(
            match count {
                1 => "one result of a run that is not in the series, left out.".to_owned(),
                _ => format!("{count} results of runs that are not in the series, left out."),
            },
            "Give each board the number of its run.",
        ),
        What::TooFewResults => said(
            "too few results to tell an effect.",
            "Type the results of more runs; every combination once at least.",
        ),
        What::NoVariation => {
            said("all results are alike, so there is nothing to explain.", "Check the entries, or measure more finely.")
        }
        What::NoFreedom => said(
            "the model takes up all results, so there is no telling how sure an effect is.",
            "Make replicates, or look at main effects only.",
        ),
        // The others belong to the sheet and the boards, which are told of before.
        _ => said("there is something to look at.", "Check the entries."),
    }
}

fn runs(count: usize) -> String {
    if count == 1 { "one run".to_owned() } else { format!("{count} runs") }
}
