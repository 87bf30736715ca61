//! Corrections that do something: each is followed, and what it would do is computed.

use super::line_check::{exact, runs, scaled};
use super::mill::Mill;
use approx::assert_relative_eq;
use haulm::domain::line::{
    FlowSource, LineField, MeterReading, Model, PumpAction, PumpCorrection, PumpField, PumpId, RangeStatus, Readings,
    Setting, Verdict,
};
use haulm::quantity::Unit;
use uom::si::f64::{MassRate, Ratio, Velocity};
use uom::si::mass_rate::kilogram_per_hour;
use uom::si::ratio::ratio;

const WAX: PumpId = PumpId(2);

fn of(mill: &Mill, readings: &Readings, pump: PumpId) -> PumpCorrection {
    *runs(mill, readings).corrections.iter().find(|correction| correction.pump == pump).unwrap()
}

/// Worked by hand: the wax pump of the example by its catch tests, net kg in 120 s at 10 to 50 Hz. Least squares: slope
/// 4.665 kg/h per Hz, intercept −0.78 kg/h. At 25 Hz it gives 115.845 kg/h.
#[test]
fn the_new_setting_starts_from_the_present_one() {
    let mill = Mill::new();
    let mut readings = exact(&mill);
    let target = of(&mill, &readings, WAX).target.get::<kilogram_per_hour>();
    let wax = readings.pumps.iter_mut().find(|reading| reading.pump == WAX).unwrap();
    wax.setting = Some(Setting(25.0));
    wax.meter = Some(MeterReading::Mass(MassRate::new::<kilogram_per_hour>(115.845)));
    let expected = 25.0 + (target - 115.845) / 4.665;
    let PumpAction::Set { setting, status } = of(&mill, &readings, WAX).action else { panic!("no setting") };
    // The drive takes tenths of a Hz.
    assert_relative_eq!(setting.0, (expected * 10.0).round() / 10.0, max_relative = 1e-9);
    assert_eq!(status, RangeStatus::Within);
}

/// A pump that delivers 8 % less than its catch-test line says is not told the setting that it has.
#[test]
fn a_pump_that_disagrees_with_its_line_gets_no_setting() {
    let mill = Mill::new();
    let mut readings = exact(&mill);
    scaled(&mut readings, 2, 0.92);
    let correction = of(&mill, &readings, WAX);
    let PumpAction::CatchTestFirst { metered, by_line } = correction.action else { panic!("{:?}", correction.action) };
    assert_relative_eq!((metered / by_line).value, 0.92, max_relative = 1e-9);
}

/// Meter and line agree, and the pump runs 8 % low since it was set so: the correction raises it to its target.
#[test]
fn following_the_correction_reaches_the_target() {
    let mill = Mill::new();
    for factor in [0.92, 1.06, 1.2] {
        let mut readings = exact(&mill);
        let sheet = mill.sheet();
        let row = sheet.rows.iter().find(|row| row.pump == WAX).unwrap();
        let now = row.mass * Ratio::new::<ratio>(factor);
        let wax = readings.pumps.iter_mut().find(|reading| reading.pump == WAX).unwrap();
        wax.meter = Some(MeterReading::Mass(now));
        wax.setting = row.curve.unwrap().setting(now);
        let PumpAction::Set { setting, .. } = of(&mill, &readings, WAX).action else { panic!("no setting") };
        // Half a step of a tenth of a Hz is 0.23 kg/h.
        let after = row.curve.unwrap().flow(setting);
        assert!((after - row.mass).get::<kilogram_per_hour>().abs() <= 0.24, "{factor}: {after:?}");
    }
}

#[test]
fn through_the_origin_the_setting_is_proportional() {
    let mut mill = Mill::new();
    mill.book.pump_mut(WAX).unwrap().model = Model::ThroughOrigin;
    mill.put(LineField::Pump(WAX, PumpField::SettingStep), "0.001", Unit::Hertz);
    let mut readings = exact(&mill);
    let wax = readings.pumps.iter_mut().find(|reading| reading.pump == WAX).unwrap();
    let low = wax.setting.unwrap().0 * 0.95;
    wax.setting = Some(Setting(low));
    scaled(&mut readings, 2, 0.95);
    let correction = of(&mill, &readings, WAX);
    let PumpAction::Set { setting, .. } = correction.action else { panic!("{:?}", correction.action) };
    assert_relative_eq!(setting.0, low * correction.factor.unwrap().value, epsilon = 5e-4);
}

#[test]
fn a_flow_inferred_from_a_setting_is_called_inferred() {
    let mill = Mill::new();
    let mut readings = exact(&mill);
    for reading in &mut readings.pumps {
        reading.meter = None;
    }
    let check = runs(&mill, &readings);
    assert!(check.corrections.iter().all(|correction| correction.source == FlowSource::Inferred));
    assert!(
        check.corrections.iter().all(|correction| correction.action == PumpAction::Keep),
        "{:?}",
        check.corrections
    );
}

/// Without the present setting there is nothing to start from, however well the flow is known.
#[test]
fn a_meter_alone_gives_no_setting() {
    let mill = Mill::new();
    let mut readings = exact(&mill);
    for reading in &mut readings.pumps {
        reading.setting = None;
    }
    scaled(&mut readings, 2, 0.9);
    assert_eq!(of(&mill, &readings, WAX).action, PumpAction::EnterSetting);
}

#[test]
fn beyond_what_is_allowed_there_is_no_setting_anywhere() {
    let mut mill = Mill::new();
    // The wax takes some 24 Hz.
    mill.put(LineField::Pump(WAX, PumpField::MostSetting), "20", Unit::Hertz);
    let sheet = mill.sheet();
    let row = sheet.rows.iter().find(|row| row.pump == WAX).unwrap();
    assert_eq!((row.set_to, row.range_status), (None, RangeStatus::AboveLimit));
    let mut readings = exact(&mill);
    let wax = readings.pumps.iter_mut().find(|reading| reading.pump == WAX).unwrap();
    wax.setting = Some(Setting(20.0));
    wax.meter = Some(MeterReading::Mass(row.curve.unwrap().flow(Setting(20.0))));
    assert_eq!(of(&mill, &readings, WAX).action, PumpAction::Cannot { status: RangeStatus::AboveLimit });
    let (table, _) = haulm::domain::line::settings_table(&mill.draft, &mill.case, &mill.line(), &mill.book);
    let table = table.unwrap();
    let cells = table.cells.iter().flatten().flatten().flat_map(|cell| &cell.pumps);
    let mut beyond = 0;
    for cell in cells.filter(|cell| !cell.range_status.is_allowed()) {
        assert_eq!(cell.setting, None);
        beyond += 1;
    }
    assert!(beyond > 0);
}

/// Beyond what was tested it is a setting, with its mark.
#[test]
fn beyond_what_was_tested_is_marked() {
    let mill = Mill::new();
    let mut readings = exact(&mill);
    readings.belt *= 2.2;
    // The belt scale alone says so, and nothing contradicts it.
    readings.sample = None;
    let correction = of(&mill, &readings, WAX);
    let PumpAction::Set { setting, status } = correction.action else { panic!("{:?}", correction.action) };
    assert!(setting.0 > 50.0 && status == RangeStatus::AboveTested, "{setting:?}");
}

#[test]
fn a_setting_shows_no_more_than_the_drive_takes() {
    let mut mill = Mill::new();
    let steps = |mill: &Mill| mill.sheet().rows.iter().map(|row| row.set_to.unwrap().0).collect::<Vec<_>>();
    for (setting, step) in steps(&mill).iter().zip([0.001, 0.1, 1.0]) {
        assert_relative_eq!(*setting, (setting / step).round() * step, epsilon = 1e-12);
    }
    mill.put(LineField::Pump(WAX, PumpField::SettingStep), "0.5", Unit::Hertz);
    assert_relative_eq!(steps(&mill)[1] * 2.0, (steps(&mill)[1] * 2.0).round(), epsilon = 1e-12);
}

/// A mat that is 5 % heavy at the speed the line has: faster by 5 %, and not the speed it has already.
#[test]
fn the_former_is_corrected_from_the_real_line_speed() {
    let mill = Mill::new();
    let mut readings = exact(&mill);
    let speed = readings.line_speed.unwrap();
    readings.line_speed = Some(speed / 1.05);
    let sample = readings.sample.as_mut().unwrap();
    sample.mass *= 1.05;
    let former = runs(&mill, &readings).former.unwrap();
    assert_relative_eq!(former.factor.value, 1.0 / 1.05, max_relative = 1e-12);
    assert_relative_eq!(former.line_speed.unwrap().value, speed.value, max_relative = 1e-12);
    readings.line_speed = None;
    let former = runs(&mill, &readings).former.unwrap();
    assert_eq!(former.line_speed, None::<Velocity>, "no speed was read");
}

/// Nothing is within tolerance that was not read.
#[test]
fn only_what_was_read_is_within() {
    let mill = Mill::new();
    let mut readings = exact(&mill);
    assert!(runs(&mill, &readings).checks.iter().all(|check| check.verdict() == Verdict::Within));
    readings.pumps.clear();
    readings.sample = None;
    let check = runs(&mill, &readings);
    assert!(!check.checks.is_empty());
    assert!(check.checks.iter().all(|check| check.verdict() == Verdict::NotRead), "{:?}", check.checks);
}
