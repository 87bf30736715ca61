//! The whole way at once: from a draft to its solved balance and everything there is to say.

use crate::domain::balance::machine::Machine;
use crate::domain::balance::solve::{Unsolvable, solve};
use crate::domain::balance::solved::Solved;
use crate::domain::balance::station::Station;
use crate::domain::recipe::check::check;
use crate::domain::recipe::draft::{Draft, WaterWay};
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::finding::{Finding, Grade, Place, What};
use crate::domain::recipe::input::{Dosing, Feed, Input, WaterPlan};
use crate::domain::recipe::limit::press_factor;
use crate::domain::recipe::liquid::Role;
use crate::quantity::{Amount, Kind, Unit};

/// A recipe and its balance.
#[derive(Debug, Clone, PartialEq)]
pub struct Case {
    /// The recipe.
    pub input: Input,
    /// Its balance.
    pub solved: Solved,
}

/// What comes of a draft.
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome {
    /// The recipe with its balance, unless something stands in the way.
    pub case: Option<Case>,
    /// What there is to say, the gravest first, each grade in the order of the page.
    pub findings: Vec<Finding>,
}

/// Checks and solves a draft.
#[must_use]
pub fn work_out(draft: &Draft) -> Outcome {
    let checked = check(draft);
    let mut findings = checked.findings;
    let case = checked.input.and_then(|input| match solve(&input) {
        Ok(solved) => {
            let case = Case { input, solved };
            // What is divided by next to nothing further down, such as litres a shift by a density.
            if case.figures().all(|(_, amount)| amount.base.is_finite()) {
                examine(&case.input, &case.solved, &mut findings);
                return Some(case);
            }
            findings.push(explain(draft, &case.input, Unsolvable::OutOfRange));
            None
        }
        Err(unsolvable) => {
            findings.push(explain(draft, &input, unsolvable));
            None
        }
    });
    let of_grade = |grade| findings.iter().filter(move |finding| finding.grade == grade).copied();
    let findings = [Grade::Stop, Grade::Unusual, Grade::Note].into_iter().flat_map(of_grade).collect();
    Outcome { case, findings }
}

fn explain(draft: &Draft, input: &Input, unsolvable: Unsolvable) -> Finding {
    match unsolvable {
        Unsolvable::DosesFillBoard { share } => {
            let liquid = input
                .liquids
                .as_slice()
                .iter()
                .find(|liquid| matches!(liquid.dosing, Dosing::LiquidPerBoard(_) | Dosing::LiquidOnFaces(..)));
            let what = What::DosesFillBoard { share: Amount::from_base(Kind::Share, share.value) };
            let place = liquid.map_or(Place::Station(Station::Blender), |liquid| {
                Place::Field(Field::Liquid(liquid.id, LiquidField::Dose))
            });
            Finding { grade: Grade::Stop, place, what }
        }
        Unsolvable::DriesBelowZero { blender_out } => Finding::stop(
            Field::DryingLoss,
            What::DriesBelowZero { blender_out: Amount::from_base(Kind::Moisture, blender_out.dry_basis().value) },
        ),
        Unsolvable::MatTemperature => Finding::stop(Field::MatTemperature, What::OutOfRange),
        Unsolvable::OutOfRange => {
            let field = if draft.water_way == WaterWay::Flow { Field::WaterFlow } else { Field::FibreFlow };
            Finding::stop(field, What::OutOfRange)
        }
    }
}

/// What the solved balance gives to say.
pub(in crate::domain) fn examine(input: &Input, solved: &Solved, findings: &mut Vec<Finding>) {
    let mut say = |grade, station, what| findings.push(Finding { grade, place: Place::Station(station), what });
    let Solved { water, line, losses, mat, .. } = solved;

    if matches!(input.water, WaterPlan::ToMatMoisture(_)) && water.excess.value > 0.0 {
        let way_out = water.fibre_moisture_for_none.filter(|moisture| moisture.value >= 0.0);
        say(
            Grade::Unusual,
            Station::Blender,
            What::TooWet {
                excess: match input.feed {
                    Feed::None => Amount::from_base(Kind::Dose, (water.excess / solved.fibre).value),
                    _ => Amount::from_base(Kind::LiquidFlow, water.excess.value),
                },
                mat: Amount::from_base(Kind::Moisture, water.mat.dry_basis().value),
                way_out: way_out.map(|moisture| Amount::from_base(Kind::Moisture, moisture.value)),
            },
        );
    }
    for capacity in solved.capacities.iter().filter(|capacity| capacity.used.value > 1.0 + 1e-9) {
        say(
            Grade::Unusual,
            station_of(capacity.machine),
            What::OverLimit {
                machine: capacity.machine,
                used: Amount::from_base(Kind::Share, capacity.used.value),
                fibre_at_limit: Amount::from_base(Kind::FibreFlow, capacity.fibre_at_limit.value),
            },
        );
    }
    // A press factor that was typed is compared at its field.
    if let Some(factor) = line.press_factor.filter(|_| !matches!(input.feed, Feed::PressFactor(..))) {
        let unit = Unit::SecondPerMillimetre;
        let value = Amount::from_base(Kind::PressFactor, factor.value);
        let binders = input.liquids.as_slice().iter().filter(|liquid| liquid.role == Role::Binder);
        let window = press_factor(binders.map(|liquid| liquid.substance));
        if !(window.low..=window.high).contains(&value.get(unit)) {
            say(Grade::Unusual, Station::Press, What::NotUsual { value, window, unit });
        }
    }
    if losses.press_vapour.value < 0.0 {
        say(Grade::Unusual, Station::Press, What::PressAddsWater);
    }
    if mat.compaction.is_some_and(|compaction| compaction.value < 1.0) {
        say(Grade::Unusual, Station::Mat, What::MatThinnerThanBoard);
    }
}

const fn station_of(machine: Machine) -> Station {
    match machine {
        Machine::FibreSupply => Station::Fibre,
        Machine::Blender => Station::Blender,
        Machine::Press | Machine::LineSpeed => Station::Press,
    }
}
