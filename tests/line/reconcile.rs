//! The line check by data reconciliation: which reading to distrust, and what follows.

use super::line_check::{exact, runs};
use super::mill::Mill;
use approx::assert_relative_eq;
use haulm::domain::line::{
    LineCheck, LineQuantity, LineReconciliation, LineVerdict, MeterReading, PumpAction, PumpId, Readings,
};
use haulm::quantity::{Moisture, Units};
use haulm::ui::text::{Context, LineContext, Message, words};
use std::fmt::Write;
use uom::si::f64::{ArealMassDensity, Length};

/// Everything read exactly, a raw board too.
fn all(mill: &Mill) -> Readings {
    let mut readings = exact(mill);
    let exit = mill.case.input.exit_moisture();
    readings.board.weight = Some(mill.case.solved.mat.od * exit.wet_per_dry());
    readings.board.thickness = Some(mill.case.solved.mat.pressed_thickness);
    readings.board.moisture = Some(exit);
    readings
}

fn checked(mill: &Mill, change: impl FnOnce(&mut Readings)) -> LineCheck {
    let mut readings = all(mill);
    change(&mut readings);
    runs(mill, &readings)
}

fn found(check: &LineCheck) -> &LineReconciliation {
    check.reconciliation.as_ref().expect("it was reconciled")
}

fn named(check: &LineCheck) -> Vec<LineQuantity> {
    found(check).doubts().iter().flat_map(|doubt| &doubt.readings).map(|reading| reading.quantity).collect()
}

fn told(mill: &Mill, check: &LineCheck) -> Message {
    let units = Units::default();
    let context =
        LineContext { plain: Context { units: &units, draft: &mill.draft, currency: "€" }, book: &mill.book };
    words::line::verdict(found(check), &context)
}

/// The targets of the recipe satisfy the balances of the line check: two derivations of the same mass balance.
#[test]
fn a_line_that_runs_as_the_recipe_says_is_consistent() {
    let mill = Mill::new();
    let check = checked(&mill, |_| ());
    assert_eq!(found(&check).verdict, LineVerdict::Consistent);
    assert!(found(&check).all.global.unwrap().chi_squared < 1e-9);
    assert!(
        check.corrections.iter().all(|correction| correction.action == PumpAction::Keep),
        "{:?}",
        check.corrections
    );
}

#[test]
fn a_belt_scale_that_reads_5_percent_low_is_named() {
    let mill = Mill::new();
    let check = checked(&mill, |readings| {
        readings.belt *= 0.95;
        readings.uncertainties.line_speed = Some(0.001);
    });
    assert_eq!(named(&check), [LineQuantity::BeltScale]);
    let truth = mill.case.solved.fibre_wet.value;
    assert_relative_eq!(found(&check).value(LineQuantity::BeltScale).unwrap(), truth, max_relative = 1e-6);
    assert_eq!(told(&mill, &check).what, "The belt scale reads 5\u{a0}% low: with it left out everything else agrees.");
    // The pumps are right as they are: by the belt scale alone all would be turned down by 5 %.
    assert!(
        check.corrections.iter().all(|correction| correction.action == PumpAction::Keep),
        "{:?}",
        check.corrections
    );
}

/// A line speed known to 0.5 % only could be off by nearly as much: both are named, and no pump is corrected before it is
/// known which.
#[test]
fn a_belt_scale_and_a_line_speed_are_told_together() {
    let mill = Mill::new();
    let check = checked(&mill, |readings| readings.belt *= 0.95);
    assert_eq!(named(&check), [LineQuantity::BeltScale, LineQuantity::LineSpeed]);
    assert!(found(&check).doubts()[0].extra_reading.is_some());
    assert!(check.corrections.iter().all(|correction| correction.action == PumpAction::Unsettled));
}

/// Meter and setting disagree by 8 %: a catch test decides, and no setting comes before it.
#[test]
fn a_pump_that_disagrees_with_its_line_is_named_and_not_corrected() {
    let mill = Mill::new();
    let check = checked(&mill, |readings| {
        if let Some(MeterReading::Mass(mass)) = &mut readings.pumps[0].meter {
            *mass *= 0.92;
        }
    });
    let pump = PumpId(1);
    let own = [LineQuantity::Meter(pump), LineQuantity::Setting(pump)];
    let named = named(&check);
    assert!(!named.is_empty() && named.iter().all(|quantity| own.contains(quantity)), "{named:?}");
    assert!(told(&mill, &check).fix.contains("Run a catch test on P1 binder."), "{:?}", told(&mill, &check));
    let action = check.corrections[0].action;
    assert!(matches!(action, PumpAction::CatchTestFirst { .. }), "{action:?}");
    assert!(check.corrections[1..].iter().all(|correction| correction.action == PumpAction::Keep));
}

/// Wet fibre: the meter reads 3 points low. It is not the pumps that dose too much alike.
#[test]
fn wet_fibre_is_found_and_no_pump_is_touched() {
    let mill = Mill::new();
    let check = checked(&mill, |readings| {
        let low = readings.moisture.dry_basis().value - 0.03;
        readings.moisture = Moisture::from_dry_basis(low).unwrap();
    });
    let named = named(&check);
    assert_eq!(named[0], LineQuantity::FibreMoisture, "{named:?}");
    let doubt = &found(&check).doubts()[0];
    assert_relative_eq!(doubt.readings[0].error(), -0.03, max_relative = 1e-6);
    let set = |action: &PumpAction| matches!(action, PumpAction::Set { .. });
    assert!(!check.corrections.iter().any(|correction| set(&correction.action)), "{:?}", check.corrections);
}

/// Speed and width come in one balance: both are named, with the reading that decides.
#[test]
fn what_cannot_be_separated_is_named_together() {
    let mill = Mill::new();
    let check = checked(&mill, |readings| readings.line_speed = readings.line_speed.map(|speed| speed * 1.05));
    let named = named(&check);
    assert_eq!(named[0], LineQuantity::LineSpeed, "{named:?}");
    assert!(named.contains(&LineQuantity::MatWidth), "{named:?}");
    let extra = found(&check).doubts()[0].extra_reading.unwrap();
    assert!(named.contains(&extra), "{extra:?}");
    // No new line speed comes of a speed in doubt.
    assert_eq!(check.former.and_then(|former| former.line_speed), None);
}

#[test]
fn a_density_deviation_is_split() {
    let mill = Mill::new();
    let thick = checked(&mill, |readings| {
        readings.board.thickness = readings.board.thickness.map(|thickness: Length| thickness * 1.03);
    });
    let split = thick.density_split.unwrap();
    assert_relative_eq!(split.thickness, -(1.03_f64.ln()), max_relative = 1e-6);
    assert!(split.mass.abs() < 1e-9 && split.moisture.abs() < 1e-9, "{split:?}");
    assert_relative_eq!(split.deviation, 1.0 / 1.03 - 1.0, max_relative = 1e-6);
    // A heavy mat at a speed that is low by as much: the former, or the speed.
    let heavy = checked(&mill, |readings| {
        let by = 1.04;
        readings.line_speed = readings.line_speed.map(|speed| speed / by);
        readings.sample.as_mut().unwrap().mass *= by;
        readings.board.weight = readings.board.weight.map(|weight: ArealMassDensity| weight * by);
    });
    assert_eq!(found(&heavy).verdict, LineVerdict::Consistent);
    let split = heavy.density_split.unwrap();
    assert_relative_eq!(split.mass, 1.04_f64.ln(), max_relative = 1e-6);
    let former = heavy.former.unwrap();
    let speed = mill.case.solved.line.speed.unwrap();
    assert_relative_eq!(former.line_speed.unwrap().value, speed.value, max_relative = 1e-6);
}

/// Without a raw board and a sample nothing is said of density, and nothing checks the belt scale.
#[test]
fn little_read_is_little_said() {
    let mill = Mill::new();
    let mut readings = exact(&mill);
    readings.sample = None;
    readings.line_speed = None;
    for reading in &mut readings.pumps {
        reading.setting = None;
    }
    let check = runs(&mill, &readings);
    assert_eq!(found(&check).verdict, LineVerdict::NothingChecked);
    assert_eq!(check.density_split, None);
    readings.line_speed = mill.case.solved.line.speed;
    readings.sample = exact(&mill).sample;
    let check = runs(&mill, &readings);
    assert_eq!(found(&check).verdict, LineVerdict::Consistent);
    assert!(!found(&check).unchecked().any(|quantity| quantity == LineQuantity::BeltScale));
}

/// A typed uncertainty counts: a belt scale known to 5 % only explains 5 %.
#[test]
fn a_typed_uncertainty_is_used() {
    let mill = Mill::new();
    let check = checked(&mill, |readings| {
        readings.belt *= 0.95;
        readings.uncertainties.belt_scale = Some(0.05);
    });
    assert_eq!(found(&check).verdict, LineVerdict::Consistent);
}

/// By volume a meter is checked through the density of its liquid.
#[test]
fn a_volume_meter_is_the_same_flow() {
    let mill = Mill::new();
    let sheet = mill.sheet();
    let check = checked(&mill, |readings| readings.pumps[1].meter = Some(MeterReading::Volume(sheet.rows[1].volume)));
    assert_eq!(found(&check).verdict, LineVerdict::Consistent);
    let flow = found(&check).value(LineQuantity::Meter(PumpId(2))).unwrap();
    assert_relative_eq!(flow, sheet.rows[1].mass.value, max_relative = 1e-9);
}

/// What is said of each, to be read.
#[test]
fn verdicts_in_words() {
    type Change<'a> = &'a dyn Fn(&mut Readings);
    let mill = Mill::new();
    let mut text = String::new();
    let cases: [(&str, Change<'_>); 7] = [
        ("all right", &|_| ()),
        ("belt scale 5 % low", &|readings| readings.belt *= 0.95),
        ("fibre moisture 3 points low", &|readings| {
            let low = readings.moisture.dry_basis().value - 0.03;
            readings.moisture = Moisture::from_dry_basis(low).unwrap();
        }),
        ("binder meter 8 % low", &|readings| {
            if let Some(MeterReading::Mass(mass)) = &mut readings.pumps[0].meter {
                *mass *= 0.92;
            }
        }),
        ("line speed 5 % high", &|readings| readings.line_speed = readings.line_speed.map(|speed| speed * 1.05)),
        ("board 4 % heavy, alone", &|readings| {
            readings.board.weight = readings.board.weight.map(|weight| weight * 1.04);
        }),
        ("belt scale and binder meter", &|readings| {
            readings.belt *= 0.93;
            if let Some(MeterReading::Mass(mass)) = &mut readings.pumps[0].meter {
                *mass *= 0.92;
            }
        }),
    ];
    for (title, change) in cases {
        let check = checked(&mill, |readings| change(readings));
        let message = told(&mill, &check);
        writeln!(text, "{title}\n  {}\n    → {}", message.what, message.fix).unwrap();
    }
    let units = Units::default();
    let context =
        LineContext { plain: Context { units: &units, draft: &mill.draft, currency: "€" }, book: &mill.book };
    let split =
        checked(&mill, |readings| readings.board.thickness = readings.board.thickness.map(|t: Length| t * 1.03));
    let message = words::line::split(&split.density_split.unwrap(), &context);
    writeln!(text, "density\n  {}\n    → {}", message.what, message.fix).unwrap();
    snapshot!("line", "verdicts", text);
}

/// A mat trimmed 6 % narrower than the recipe says explains a mat that is as much heavier at the speed the line has: with the width measured
/// the readings agree, and without it the mat or the speed is doubted.
#[test]
fn a_measured_mat_width_takes_the_place_of_the_recipes() {
    let mill = Mill::new();
    let width = mill.case.input.line.width.unwrap();
    let heavy = |readings: &mut Readings| {
        readings.sample.as_mut().unwrap().mass /= 0.94;
        readings.board.weight = readings.board.weight.map(|weight| weight / 0.94);
    };
    let check = checked(&mill, |readings| {
        heavy(readings);
        readings.mat_width = Some(width * 0.94);
    });
    assert_eq!(found(&check).verdict, LineVerdict::Consistent);
    let found_width = found(&check).value(LineQuantity::MatWidth).unwrap();
    assert_relative_eq!(found_width, width.value * 0.94, max_relative = 1e-6);
    let unknown = checked(&mill, heavy);
    assert!(matches!(found(&unknown).verdict, LineVerdict::Distrust(_)), "{:?}", found(&unknown).verdict);
}
