//! Findings at the bench: what happened, and how to fix it.

use super::name::{line, lower_first, place as place_called};
use super::series::series as told_of_series;
use crate::domain::trial::boards::property::Tail;
use crate::domain::trial::boards::target::requirement_limit;
use crate::domain::trial::weigh_sheet::slip::Slip;
use crate::domain::trial::weigh_sheet::weighing;
use crate::domain::trial::{LineId, TrialFinding, TrialPlace, TrialProblem};
use crate::domain::{Finding as RecipeFinding, What as RecipeWhat};
use crate::quantity::{Amount, Kind};
use crate::ui::text::words::finding::{finding as recipe_finding, loose_entry};
use crate::ui::text::{BenchContext, Loose, Message, shown};
use crate::{t, told};

/// What was found, and how to fix it.
#[must_use]
pub fn finding(finding: &TrialFinding, context: &BenchContext<'_>) -> Message {
    if let TrialProblem::Entry(what) = finding.what {
        return entry(finding, what, context);
    }
    let place = place_called(finding.place, context);
    let Message { what, fix } = told(finding, context).unwrap_or_else(|| told_of_series(finding, context));
    Message { what: t!("bench-finding-at", place = place, what = what), fix }
}

/// What is said of one entry, in the words that every box has.
fn entry(finding: &TrialFinding, what: RecipeWhat, context: &BenchContext<'_>) -> Message {
    if let TrialPlace::Recipe(place) = finding.place {
        return recipe_finding(&RecipeFinding { grade: finding.grade, place, what }, &context.plain);
    }
    let name = place_called(finding.place, context);
    let recipe = context.plain.draft;
    let (typed, kind, limit) = match finding.place {
        TrialPlace::Field(field) => (Some(context.sheet.entry(field)), field.kind(), context.sheet.limit(field)),
        TrialPlace::Line(id) => (context.batch.and_then(|batch| batch.entry(id)), Kind::BenchMass, weighing::LIMIT),
        TrialPlace::Recovery(field) => (context.recovered.map(|own| own.entry(field)), field.kind(), field.limit()),
        TrialPlace::Series(field) => {
            (context.series.entry(field), context.series.kind(field, recipe), context.series.limit(field, recipe))
        }
        TrialPlace::Board(id, field) => {
            let board = context.boards.iter().find(|board| board.id == id);
            (board.and_then(|board| board.entry(field)), field.kind(), field.limit())
        }
        TrialPlace::Property(property) => {
            let own = context.requirements.iter().find(|requirement| requirement.property == property);
            (own.map(|requirement| &requirement.value), property.kind(), requirement_limit(property))
        }
        // The box has no entry: the words leave out what was typed.
        TrialPlace::Sheet | TrialPlace::Design | TrialPlace::Recipe(_) => (None, Kind::Ratio, weighing::LIMIT),
    };
    let typed = typed.map_or("", |entry| entry.text.as_str());
    loose_entry(&what, &Loose { name: &name, typed, kind, limit }, &context.plain)
}

/// What is said of the sheet and of boards; `None` for what belongs to a series.
fn told(finding: &TrialFinding, context: &BenchContext<'_>) -> Option<Message> {
    let amount = |amount: Amount| shown(amount, &context.plain);
    Some(match finding.what {
        TrialProblem::NotWhole => told!("bench-finding-not-whole"),
        TrialProblem::RecipeUnsolved => told!("bench-finding-recipe-unsolved"),
        TrialProblem::OutOfRange => told!("bench-finding-out-of-range"),
        TrialProblem::TooWet { excess, mat, way_out: Some(fibre) } => {
            told!("bench-finding-too-wet", excess = amount(excess), mat = amount(mat), fibre = amount(fibre))
        }
        TrialProblem::TooWet { excess, mat, way_out: None } => {
            told!("bench-finding-too-wet-by-liquids", excess = amount(excess), mat = amount(mat))
        }
        TrialProblem::Split { batches, boards } if boards.base.fract().abs() > 1e-9 => {
            told!("bench-finding-split-in-parts", batches = batches, boards = amount(boards))
        }
        TrialProblem::Split { batches, boards } => {
            told!("bench-finding-split", batches = batches, boards = amount(boards))
        }
        TrialProblem::TooManyBatches { whole } => told!("bench-finding-too-many-batches", whole = amount(whole)),
        TrialProblem::BelowMinimum { mass, minimum, boards, dilute } => {
            below_minimum([mass, minimum], boards, dilute, finding, context)
        }
        TrialProblem::RoundingShifts { target, actual } => {
            told!("bench-finding-rounding-shifts", actual = amount(actual), target = amount(target))
        }
        TrialProblem::WeighedOver { scale, accepted } => {
            let more = amount(Amount::from_base(Kind::Share, scale.base - 1.0));
            match accepted {
                Some(dose) => told!("bench-finding-weighed-over-dose", more = more, dose = amount(dose)),
                None => told!("bench-finding-weighed-over-mass", more = more),
            }
        }
        TrialProblem::LikelySlip { planned, entered, slip } => likely_slip(planned, entered, slip, context),
        TrialProblem::RecoveredTooMuch { put_in, recovered } => {
            told!("bench-finding-recovered-too-much", recovered = amount(recovered), weighed = amount(put_in))
        }
        TrialProblem::UnlikelyDensity { value } => told!("bench-finding-unlikely-density", density = amount(value)),
        TrialProblem::LoadInKilonewton { meant } => told!("bench-finding-load-in-kilonewton", meant = amount(meant)),
        TrialProblem::SpanInCentimetre { meant } => told!("bench-finding-span-in-centimetre", meant = amount(meant)),
        TrialProblem::NegativeSwelling => told!("bench-finding-negative-swelling"),
        TrialProblem::SpanOffStandard { required } => {
            told!("bench-finding-span-off-standard", span = amount(required))
        }
        TrialProblem::OverCapacity { mass, capacity } => {
            told!("bench-finding-over-capacity", mass = amount(mass), capacity = amount(capacity))
        }
        TrialProblem::DryAboveMoist => told!("bench-finding-dry-above-moist"),
        TrialProblem::TooFewBoards => told!("bench-finding-too-few-boards"),
        TrialProblem::MissesRequirement { value, required } => {
            let tail = match finding.place {
                TrialPlace::Property(property) if property.tail() == Some(Tail::Upper) => "upper",
                _ => "lower",
            };
            told!("bench-finding-misses-requirement", tail = tail, value = amount(value), required = amount(required))
        }
        TrialProblem::OffTarget { value, target } => {
            told!("bench-finding-off-target", density = amount(value), target = amount(target))
        }
        TrialProblem::UnevenProfile { deviation, kind } => told!(
            "bench-finding-uneven-profile",
            deviation = signed(deviation, context),
            spread = amount(Amount::from_base(Kind::Share, kind.density_spread().unwrap_or_default())),
            standard = kind.density_standard().unwrap_or_default(),
        ),
        _ => return None,
    })
}

/// "7.28 g planned, 72.8 g entered: did you mean 7.28 g?"
fn likely_slip(planned: Amount, entered: Amount, slip: Slip, context: &BenchContext<'_>) -> Message {
    let amount = |amount: Amount| shown(amount, &context.plain);
    let (planned, entered) = (amount(planned), amount(entered));
    match slip {
        Slip::Factor { meant } => {
            told!("bench-finding-slip-meant", planned = planned, entered = entered, meant = amount(meant))
        }
        Slip::Swapped { with } => {
            let other = lower_first(&line(with, context.plain.draft));
            told!("bench-finding-slip-swapped", planned = planned, entered = entered, other = other)
        }
        Slip::FarOff => told!("bench-finding-slip-far-off", planned = planned, entered = entered),
    }
}

/// A share with its sign.
fn signed(share: Amount, context: &BenchContext<'_>) -> String {
    let size = shown(Amount { base: share.base.abs(), ..share }, &context.plain);
    format!("{}{size}", if share.base < 0.0 { '\u{2212}' } else { '+' })
}

/// A mass below the minimum of its balance, by what can be done: more boards, a thinner liquid.
fn below_minimum(
    [mass, minimum]: [Amount; 2],
    boards: Option<Amount>,
    dilute: Option<Amount>,
    finding: &TrialFinding,
    context: &BenchContext<'_>,
) -> Message {
    let amount = |amount: Amount| shown(amount, &context.plain);
    let (mass, minimum) = (amount(mass), amount(minimum));
    match (boards.map(amount), dilute.map(amount)) {
        (Some(boards), Some(solids)) => told!(
            "bench-finding-below-minimum-boards-or-thin",
            mass = mass,
            minimum = minimum,
            boards = boards,
            solids = solids,
        ),
        (Some(boards), None) => {
            told!("bench-finding-below-minimum-boards", mass = mass, minimum = minimum, boards = boards)
        }
        (None, Some(solids)) => {
            told!("bench-finding-below-minimum-thin", mass = mass, minimum = minimum, solids = solids)
        }
        (None, None) if finding.place == TrialPlace::Line(LineId::Fibre) => {
            told!("bench-finding-below-minimum-fibre", mass = mass, minimum = minimum)
        }
        (None, None) => told!("bench-finding-below-minimum", mass = mass, minimum = minimum),
    }
}
