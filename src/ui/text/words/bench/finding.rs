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

pub(super) fn finding(finding: &TrialFinding, context: &BenchContext<'_>) -> Message {
    if let TrialProblem::Entry(what) = finding.what {
        return entry(finding, what, context);
    }
    let place = place_called(finding.place, context);
    let (what, fix) = told(finding, context).unwrap_or_else(|| told_of_series(finding, context));
    Message { what: format!("{place}: {what}"), fix }
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
fn told(finding: &TrialFinding, context: &BenchContext<'_>) -> Option<(String, String)> {
    let amount = |amount: Amount| shown(amount, &context.plain);
    let (what, fix): (String, String) = match finding.what {
        TrialProblem::NotWhole => ("not a whole number.".to_owned(), "Enter a whole number, such as 2.".to_owned()),
        TrialProblem::RecipeUnsolved => (
            "the recipe cannot be computed as it is made here, so there is nothing to weigh out.".to_owned(),
            "Fix what the recipe page points at, or open another recipe.".to_owned(),
        ),
        TrialProblem::OutOfRange => (
            "the figures became too large or too small to compute with.".to_owned(),
            "Check mat size, number of boards and doses for a slip in the decimal mark or the unit.".to_owned(),
        ),
        TrialProblem::TooWet { excess, mat, way_out } => (
            format!(
                "the furnish is too wet. A batch holds {} more water than the target mat moisture needs; no water is \
                 weighed out, and the mat comes out at {}.",
                amount(excess),
                amount(mat)
            ),
            match way_out {
                Some(fibre) => format!(
                    "Dry the fibre to {}, at which no water is in excess; or take liquids with more solids, smaller \
                     doses, or a higher mat moisture.",
                    amount(fibre)
                ),
                None => "No fibre is dry enough: the liquids alone bring more water than is needed. Take liquids with \
                         more solids, thin them less, lower their doses, or accept a higher mat moisture."
                    .to_owned(),
            },
        ),
        TrialProblem::Split { batches, boards } => (
            format!("the blender does not take all at once: {batches} equal batches, {} boards each.", amount(boards)),
            if boards.base.fract().abs() > 1e-9 {
                "A batch does not make whole boards. Mix the batches before forming, or change the number of boards."
            } else {
                "Weigh out and blend one batch after another."
            }
            .to_owned(),
        ),
        TrialProblem::TooManyBatches { whole } => (
            format!("so small that it would take more than a hundred batches; all together weigh {}.", amount(whole)),
            "Check the capacity and its unit, or make fewer boards.".to_owned(),
        ),
        TrialProblem::BelowMinimum { mass, minimum, boards, dilute } => {
            return Some(below_least(mass, minimum, boards, dilute, finding, context));
        }
        TrialProblem::RoundingShifts { target, actual } => (
            format!("the rounded masses give a dose of {}, not {}.", amount(actual), amount(target)),
            "Weigh on a balance with a finer step, or make a larger batch.".to_owned(),
        ),
        TrialProblem::WeighedOver { scale, accepted } => {
            let more = amount(Amount::from_base(Kind::Share, scale.base - 1.0));
            let accept = accepted.map_or_else(
                || "accept the mass as it is".to_owned(),
                |dose| format!("accept the dose as it is, {}", amount(dose)),
            );
            (
                format!("{more} over the plan."),
                format!(
                    "If it is in the blender, add to the other lines what the sheet shows, or {accept}. If not, take the excess back."
                ),
            )
        }
        TrialProblem::LikelySlip { planned, entered, slip } => likely_slip(planned, entered, slip, context),
        TrialProblem::RecoveredTooMuch { put_in, recovered } => (
            format!("{} of solids recovered, {} weighed in.", amount(recovered), amount(put_in)),
            "Check the recovered mass, its tare and the furnish moisture.".to_owned(),
        ),
        TrialProblem::UnlikelyDensity { value } => (
            format!("the density comes to {}; boards have 100 to 1 500 kg/m³.", amount(value)),
            "Check mass, length, width and thickness, and their units. The target is not compared until then."
                .to_owned(),
        ),
        TrialProblem::LoadInKilonewton { meant } => (
            "the load is far too small for a board.".to_owned(),
            format!("Was it read in kN? Did you mean {}?", amount(meant)),
        ),
        TrialProblem::SpanInCentimetre { meant } => (
            "the span is shorter than four times the thickness.".to_owned(),
            format!("Was it measured in cm? Did you mean {}?", amount(meant)),
        ),
        TrialProblem::NegativeSwelling => (
            "thinner after soaking than before.".to_owned(),
            "Check whether the two thicknesses were swapped.".to_owned(),
        ),
        TrialProblem::SpanOffStandard { required } => (
            format!("EN 310 asks for {} at this thickness.", amount(required)),
            "Set the supports to it: 20 times the thickness, 100 to 1 000 mm. At another span results do not compare."
                .to_owned(),
        ),
        TrialProblem::OverCapacity { mass, capacity } => (
            format!(
                "with what was weighed the batch comes to {}; the blender takes {}.",
                amount(mass),
                amount(capacity)
            ),
            "Take back what is not in the blender yet, or blend in two parts.".to_owned(),
        ),
        TrialProblem::DryAboveMoist => (
            "heavier oven-dry than moist.".to_owned(),
            "Check both masses for a slip, and whether two pieces were taken for each other.".to_owned(),
        ),
        TrialProblem::TooFewBoards => (
            "one board has no scatter, so there is no quantile to hold against the requirement.".to_owned(),
            "Test two boards at least; five tell much more.".to_owned(),
        ),
        TrialProblem::MissesRequirement { value, required } => (
            format!(
                "the {} 95 % quantile is {}; {} is required.",
                match finding.place {
                    TrialPlace::Property(property) if property.tail() == Some(Tail::Upper) => "upper",
                    _ => "lower",
                },
                amount(value),
                amount(required)
            ),
            "Change the mean, or find what scatters between the boards.".to_owned(),
        ),
        TrialProblem::OffTarget { value, target } => (
            format!(
                "the boards come to {} at the target board moisture; the target is {}.",
                amount(value),
                amount(target)
            ),
            "Lay the furnish shown for the next mat. Correct the thickness at the stops, not with furnish.".to_owned(),
        ),
        TrialProblem::UnevenProfile { deviation, kind } => (
            format!(
                "the density there is {} off the mean of the board, more than {} ({}, unverified).",
                signed(deviation, context),
                amount(Amount::from_base(Kind::Share, kind.density_spread().unwrap_or_default())),
                kind.density_standard().unwrap_or_default()
            ),
            "Spread the mat more evenly. Weigh the furnish into the frame field by field.".to_owned(),
        ),
        _ => return None,
    };
    Some((what, fix))
}

/// "7.28 g planned, 72.8 g entered: did you mean 7.28 g?"
fn likely_slip(planned: Amount, entered: Amount, slip: Slip, context: &BenchContext<'_>) -> (String, String) {
    let amount = |amount: Amount| shown(amount, &context.plain);
    let what = format!("{} planned, {} entered.", amount(planned), amount(entered));
    let ask = match slip {
        Slip::Factor { meant } => format!("Did you mean {}?", amount(meant)),
        Slip::Swapped { with } => {
            format!("It fits {}. Were the two swapped?", lower_first(&line(with, context.plain.draft)))
        }
        Slip::FarOff => "Is the entry correct?".to_owned(),
    };
    (what, format!("{ask} Nothing is corrected by it until you confirm it."))
}

/// A share with its sign.
fn signed(share: Amount, context: &BenchContext<'_>) -> String {
    let size = shown(Amount { base: share.base.abs(), ..share }, &context.plain);
    format!("{}{size}", if share.base < 0.0 { '\u{2212}' } else { '+' })
}

fn below_least(
    mass: Amount,
    minimum: Amount,
    boards: Option<Amount>,
    dilute: Option<Amount>,
    finding: &TrialFinding,
    context: &BenchContext<'_>,
) -> (String, String) {
    let amount = |amount: Amount| shown(amount, &context.plain);
    let what = format!("{} is below the {} that this balance weighs sensibly.", amount(mass), amount(minimum));
    let boards = boards.map(|boards| format!("weigh out for {} boards in the same number of batches", amount(boards)));
    let dilute = dilute.map(|solids| {
        format!("thin it to {} solids with part of the water, and weigh the thinned liquid", amount(solids))
    });
    let ways: Vec<String> = boards.into_iter().chain(dilute).collect();
    let fix = match ways.join(", or ") {
        ways if ways.is_empty() => match finding.place {
            TrialPlace::Line(LineId::Fibre) => "Make more boards, or take a balance with a finer step.".to_owned(),
            _ => "Use a balance with a finer step, or a blender for a larger batch.".to_owned(),
        },
        ways => {
            let mut ways = ways;
            if let Some(first) = ways.get_mut(..1) {
                first.make_ascii_uppercase();
            }
            format!("{ways}; or take a balance with a finer step.")
        }
    };
    (what, fix)
}
