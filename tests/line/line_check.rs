//! The line check: what runs, and how far it is off.

use super::mill::Mill;
use super::support::{solved, something};
use approx::{assert_abs_diff_eq, assert_relative_eq};
use haulm::domain::line::tanks::draw::drawn;
use haulm::domain::line::{
    Deviation, Feeds, FlowSource, LineBook, LineCheck, LineField, LineFindingKind, LinePlace, MeterReading, PumpDraft,
    PumpField, PumpId, PumpReading, RawBoard, ReadingWay, Readings, RunFigure, RunningField, Sample, Tie,
    Uncertainties, Verdict, check_readings, read_running, stale,
};
use haulm::domain::{Case, Draft, Grade};
use haulm::quantity::{Moisture, Unit};
use proptest::prelude::*;
use uom::si::area::square_meter;
use uom::si::f64::{Area, MassRate};
use uom::si::mass_rate::kilogram_per_second;

/// The recipe run exactly, every pump at its setting, with a mat sample cut from it.
pub fn exact(mill: &Mill) -> Readings {
    let line = mill.line();
    let flow = |fed| drawn(&mill.case, fed).unwrap().0;
    let sheet = mill.sheet();
    let pumps = line.pumps.iter().filter_map(|pump| {
        let fed = pump.feeds.within(&mill.draft)?;
        let row = sheet.rows.iter().find(|row| row.pump == pump.id)?;
        Some(PumpReading {
            pump: pump.id,
            meter: Some(MeterReading::Mass(flow(fed) * pump.share)),
            setting: row.setting.map(|found| found.setting),
        })
    });
    let area = Area::new::<square_meter>(0.25);
    Readings {
        belt: mill.case.solved.fibre_wet,
        moisture: mill.case.input.fibre_moisture,
        pumps: pumps.collect(),
        line_speed: mill.case.solved.line.speed,
        mat_width: None,
        board: RawBoard::default(),
        uncertainties: Uncertainties::default(),
        sample: Some(Sample {
            area,
            mass: mill.case.solved.mat.wet * area,
            moisture: Some(mill.case.solved.water.mat),
        }),
    }
}

pub fn runs(mill: &Mill, readings: &Readings) -> LineCheck {
    let line = mill.line();
    check_readings(&mill.draft, &mill.case, &line, &line.tolerances.unwrap(), readings).unwrap()
}

pub fn scaled(readings: &mut Readings, id: u16, factor: f64) {
    for reading in &mut readings.pumps {
        if let Some(MeterReading::Mass(mass)) = &mut reading.meter
            && reading.pump.0 == id
        {
            *mass *= factor;
        }
    }
}

fn moisture(percent: f64) -> Moisture {
    Moisture::from_dry_basis(percent / 100.0).unwrap()
}

/// Worked by hand: 9000 kg/h at 5 % are 8571.43 kg/h oven-dry; 342.857 kg/h of neat binder on them are 4 %;
/// a mat of 2.8 kg on 0.25 m² at 12 % is 10 kg/m² oven-dry, and 10·1.07/(15 + 1.1·0.6) mm is 683.27 kg/m³.
#[test]
fn a_run_by_hand() {
    let mut mill = Mill::new();
    mill.put(LineField::Running(RunningField::Belt), "9000", Unit::KilogramPerHour);
    mill.put(LineField::Running(RunningField::Moisture), "5", Unit::PercentDryBasis);
    mill.put(LineField::Running(RunningField::SampleMass), "2.8", Unit::Kilogram);
    mill.put(LineField::Running(RunningField::SampleMoisture), "12", Unit::PercentDryBasis);
    mill.put(LineField::Pump(PumpId(1), PumpField::Reading), "342.857142857", Unit::KilogramPerHour);
    let (readings, findings) = read_running(&mill.book);
    assert_eq!(findings, vec![]);
    let running = runs(&mill, &readings.unwrap());
    assert_relative_eq!(
        Unit::KilogramPerHour.from_base(running.actual.fibre.value),
        8_571.428_571_4,
        max_relative = 1e-9
    );
    assert_relative_eq!(running.actual.liquids[0].on_fibre.value, 0.04, max_relative = 1e-9);
    assert_relative_eq!(running.actual.mat_od.unwrap().value, 10.0, max_relative = 1e-12);
    assert_relative_eq!(running.actual.density.unwrap().value, 10.7 / 0.01566, max_relative = 1e-12);
}

#[test]
fn readings_by_volume_and_by_setting_are_the_same_flow() {
    let mill = Mill::new();
    let by_mass = exact(&mill);
    let row = &mill.sheet().rows[0];
    let setting = row.setting.unwrap().setting;
    let cases = [
        (Some(MeterReading::Volume(row.volume)), None, FlowSource::Read),
        (None, Some(setting), FlowSource::Inferred),
        (Some(MeterReading::Volume(row.volume)), Some(setting), FlowSource::Read),
    ];
    for (meter, setting, source) in cases {
        let mut readings = by_mass.clone();
        readings.pumps[0] = PumpReading { meter, setting, ..readings.pumps[0] };
        let running = runs(&mill, &readings);
        assert_relative_eq!(running.actual.pumps[0].mass.value, row.mass.value, max_relative = 1e-12);
        assert_eq!((running.actual.pumps[0].source, running.actual.liquids[0].source), (source, source));
    }
}

/// With the line speed of the correction the mat weighs what it should.
#[test]
fn the_former_correction_is_the_recipes_line_speed_when_nothing_is_off() {
    let mill = Mill::new();
    let former = runs(&mill, &exact(&mill)).former.unwrap();
    assert_relative_eq!(former.factor.value, 1.0, max_relative = 1e-12);
    let speed = mill.case.solved.line.speed.unwrap();
    assert_relative_eq!(former.line_speed.unwrap().value, speed.value, max_relative = 1e-12);
}

#[test]
fn a_pump_that_was_not_read_is_assumed_and_said() {
    let mill = Mill::new();
    let mut readings = exact(&mill);
    readings.pumps.remove(0);
    let running = runs(&mill, &readings);
    assert_eq!(
        (running.actual.pumps[0].source, running.actual.liquids[0].source),
        (FlowSource::Assumed, FlowSource::Assumed)
    );
    let said: Vec<_> = running.findings.iter().map(|f| (f.grade, f.place, f.what.clone())).collect();
    assert_eq!(said, [(Grade::Note, LinePlace::Pump(PumpId(1)), LineFindingKind::Assumed)]);
    assert_abs_diff_eq!(running.actual.liquids[0].deviation.unwrap().value, 0.0, epsilon = 1e-12);
}

#[test]
fn half_a_sample_is_said() {
    let mut mill = Mill::new();
    mill.put(LineField::Running(RunningField::SampleMass), "", Unit::Kilogram);
    let (readings, findings) = read_running(&mill.book);
    assert!(readings.unwrap().sample.is_none());
    assert!(matches!(findings[0].what, LineFindingKind::SampleIncomplete));
    mill.put(LineField::Running(RunningField::Belt), "", Unit::KilogramPerHour);
    assert!(read_running(&mill.book).0.is_none());
}

#[test]
fn another_way_of_reading_starts_blank() {
    let mut mill = Mill::new();
    let pump = mill.book.pump_mut(PumpId(1)).unwrap();
    pump.set_reading_way(ReadingWay::VolumeMeter);
    assert_eq!((pump.entries.reading.text.as_str(), pump.entries.reading.unit), ("", Unit::LitrePerHour));
}

/// Any recipe with a pump on each liquid, the thinning of each, and the water.
fn pumped() -> impl Strategy<Value = Mill> {
    solved().prop_map(|(draft, case): (Draft, Case)| {
        let mut book = LineBook::default();
        let liquids = draft.liquids.iter().map(Tie::to);
        let feeds = liquids.flat_map(|tie| [Feeds::Liquid(tie.clone()), Feeds::Thinning(tie)]).chain([Feeds::Water]);
        for (id, feeds) in (1..).zip(feeds) {
            book.pumps.push(PumpDraft::blank(PumpId(id), feeds, haulm::domain::line::SettingUnit::Percent));
        }
        Mill { draft, case, book }
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 500, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_recipe_run_exactly_shows_no_deviation(mill in pumped()) {
        let running = runs(&mill, &exact(&mill));
        for check in &running.checks {
            prop_assert!(check.deviation.value().abs() < 1e-9, "{check:?}");
        }
        for correction in &running.corrections {
            prop_assert!((correction.target - correction.now).value.abs() <= 1e-9 * correction.now.value);
        }
    }

    #[test]
    fn a_moisture_error_shifts_all_doses_alike(mill in pumped(), read in 0.0..40.0_f64) {
        let mut readings = exact(&mill);
        readings.moisture = moisture(read);
        readings.sample = None;
        // A recipe can be past solving at another moisture; then nothing is said of the doses.
        let line = mill.line();
        let running = something(check_readings(&mill.draft, &mill.case, &line, &line.tolerances.unwrap(), &readings))?;
        let shift = mill.case.solved.fibre / running.actual.fibre - uom::si::f64::Ratio::new::<uom::si::ratio::ratio>(1.0);
        let by = something(running.actual.liquids.iter().map(|liquid| liquid.deviation).collect::<Option<Vec<_>>>())?;
        something(by.first())?;
        for by in by {
            assert_abs_diff_eq!(by.value, shift.value, epsilon = 1e-9);
        }
    }

    #[test]
    fn nothing_read_gives_what_is_no_number(mill in pumped(), belt in 1e-6..1e3_f64, wet in 0.0..200.0_f64, flows in prop::collection::vec(0.0..300.0_f64, 15)) {
        let mut readings = exact(&mill);
        readings.belt = MassRate::new::<kilogram_per_second>(belt);
        readings.moisture = moisture(wet);
        for (reading, flow) in readings.pumps.iter_mut().zip(flows) {
            reading.meter = Some(MeterReading::Mass(MassRate::new::<kilogram_per_second>(flow)));
        }
        let line = mill.line();
        let running = something(check_readings(&mill.draft, &mill.case, &line, &line.tolerances.unwrap(), &readings))?;
        prop_assert!(running.checks.iter().all(|check| check.deviation.value().is_finite() && check.actual.base.is_finite()));
        prop_assert!(running.corrections.iter().all(|correction| correction.change.is_finite() && correction.factor.is_none_or(|factor| factor.is_finite())));
    }
}

#[test]
fn deviations_of_moistures_are_in_points() {
    let mill = Mill::new();
    let mut readings = exact(&mill);
    readings.sample.as_mut().unwrap().moisture = Some(moisture(12.0));
    let running = runs(&mill, &readings);
    let check = running.check(RunFigure::MatMoisture).unwrap();
    assert!(
        matches!(check.deviation, Deviation::Points(by) if (by.value - 0.015).abs() < 1e-12)
            && check.verdict() == Verdict::Outside
    );
}

/// Readings belong to a recipe and a time.
#[test]
fn readings_from_before_a_changeover_are_stale() {
    let mut mill = Mill::new();
    assert_eq!(stale(&mill.book, "Straw, 15 mm", None), None, "nothing is known of their time");
    mill.book.read_on = Some(haulm::domain::line::ReadOn { recipe: "Straw, 15 mm".to_owned(), at: 1_000 });
    assert_eq!(stale(&mill.book, "Straw, 15 mm", None), None);
    assert_eq!(stale(&mill.book, "Straw, 15 mm", Some(999)), None, "read after the changeover");
    for (recipe, changed) in [("Straw, 18 mm", None), ("Straw, 15 mm", Some(2_000))] {
        let finding = stale(&mill.book, recipe, changed).unwrap();
        let stale = LineFindingKind::StaleReadings { recipe: "Straw, 15 mm".to_owned() };
        assert_eq!((finding.place, finding.what), (LinePlace::Line, stale));
    }
}
