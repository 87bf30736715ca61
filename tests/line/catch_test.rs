//! Catch tests: rows as they come, and every entry that cannot be.

use super::mill::Mill;
use haulm::domain::line::{
    CalibrationField, CalibrationId, Feeds, LineField, LineFindingKind, LinePlace, Model, PumpField, PumpId, RSquared,
    RowField, RowId, Setting, SettingUnit, Tie, check_line, drift, examine, tested_flows,
};
use haulm::domain::recipe::draft::Entry;
use haulm::domain::recipe::finding::What;
use haulm::domain::{Grade, Role, Substance};
use haulm::quantity::Unit;
use uom::si::f64::MassDensity;
use uom::si::mass_density::kilogram_per_cubic_meter;

const PUMP: PumpId = PumpId(1);
/// The example's last catch test of that pump.
const TEST: CalibrationId = CalibrationId(2);

const fn row(row: u16, part: RowField) -> LineField {
    LineField::Row(PUMP, TEST, RowId(row), part)
}

/// What is said about the catch test once `change` was made.
fn said(change: impl FnOnce(&mut Mill)) -> Vec<(Grade, LinePlace, LineFindingKind)> {
    let mut mill = Mill::new();
    change(&mut mill);
    let examined = examine(&mill.book, PUMP, TEST).unwrap();
    let stopped = examined.findings.iter().any(|finding| finding.grade == Grade::Stop);
    assert_eq!(examined.calibration.is_none(), stopped, "a test counts unless something stands in the way");
    examined.findings.into_iter().map(|finding| (finding.grade, finding.place, finding.what)).collect()
}

#[track_caller]
fn check(change: impl FnOnce(&mut Mill), grade: Grade, place: LinePlace, what: impl Fn(&LineFindingKind) -> bool) {
    let found = said(change);
    assert!(found.iter().any(|(g, p, w)| (*g, *p) == (grade, place) && what(w)), "{found:#?}");
}

#[test]
fn the_example_has_nothing_to_say() {
    let mill = Mill::new();
    assert_eq!(mill.line().findings, vec![]);
    assert_eq!(said(|_| ()), vec![]);
}

#[test]
fn what_cannot_be_is_said() {
    let at = LinePlace::Field;
    let whole = LinePlace::Calibration(PUMP, TEST);
    let kg =
        |row_id, part, text: &'static str| move |mill: &mut Mill| mill.put(row(row_id, part), text, Unit::Kilogram);
    check(
        |mill| mill.put(row(2, RowField::Seconds), "0", Unit::Second),
        Grade::Stop,
        at(row(2, RowField::Seconds)),
        |what| matches!(what, LineFindingKind::Entry(What::NotAllowed { .. })),
    );
    check(kg(1, RowField::Mass, "-3"), Grade::Stop, at(row(1, RowField::Mass)), |what| {
        matches!(what, LineFindingKind::Entry(What::NotAllowed { .. }))
    });
    check(
        kg(1, RowField::Tare, "5"),
        Grade::Stop,
        at(row(1, RowField::Mass)),
        |what| matches!(what, LineFindingKind::NegativeMass { net } if (net.base + 2.29).abs() < 1e-9),
    );
    check(
        |mill| {
            mill.put(
                LineField::Tank(haulm::domain::line::TankId(1), haulm::domain::line::TankField::Capacity),
                "5",
                Unit::Litre,
            );
            mill.put(
                LineField::Tank(haulm::domain::line::TankId(1), haulm::domain::line::TankField::Heel),
                "0",
                Unit::Litre,
            );
        },
        Grade::Stop,
        at(row(3, RowField::Mass)),
        |what| matches!(what, LineFindingKind::AboveTank { most, .. } if (most.base - 6.15).abs() < 1e-9),
    );
    check(
        |mill| mill.put(row(3, RowField::Setting), "30", Unit::Percent),
        Grade::Unusual,
        at(row(3, RowField::Setting)),
        |what| matches!(what, LineFindingKind::SettingsNotIncreasing { before } if (before.base - 0.35).abs() < 1e-12),
    );
    check(
        |mill| (1..=5).for_each(|id| mill.put(row(id, RowField::Setting), "40", Unit::Percent)),
        Grade::Stop,
        whole,
        |what| *what == LineFindingKind::OneSetting,
    );
    check(
        |mill| mill.book.pump_mut(PUMP).unwrap().calibration_mut(TEST).unwrap().rows.truncate(2),
        Grade::Stop,
        whole,
        |what| *what == LineFindingKind::FewRows { rows: 2, least: 3 },
    );
    check(
        |mill| {
            for (id, mass) in [(1, "10"), (2, "8"), (3, "6"), (4, "4"), (5, "2")] {
                mill.put(row(id, RowField::Mass), mass, Unit::Kilogram);
            }
        },
        Grade::Stop,
        whole,
        |what| *what == LineFindingKind::FlowNotIncreasing,
    );
    check(
        |mill| mill.put(LineField::Calibration(PUMP, TEST, CalibrationField::Density), "", Unit::KilogramPerCubicMetre),
        Grade::Stop,
        at(LineField::Calibration(PUMP, TEST, CalibrationField::Density)),
        |what| *what == LineFindingKind::Entry(What::Missing),
    );
    check(kg(3, RowField::Mass, "7,1.2"), Grade::Stop, at(row(3, RowField::Mass)), |what| {
        matches!(what, LineFindingKind::Entry(What::Unreadable(_)))
    });
}

#[test]
fn a_suspicious_row_is_pointed_at_and_still_counts() {
    let place = LinePlace::Row(PUMP, TEST, RowId(3));
    let spoil = |mill: &mut Mill| mill.put(row(3, RowField::Mass), "7.6", Unit::Kilogram);
    check(spoil, Grade::Unusual, place, |what| matches!(what, LineFindingKind::Suspect { .. }));
    let mut mill = Mill::new();
    spoil(&mut mill);
    let with = examine(&mill.book, PUMP, TEST).unwrap();
    assert_eq!((with.rows.len(), with.calibration.is_some()), (5, true));
    // Set aside by the user, and by nobody else.
    mill.book.pump_mut(PUMP).unwrap().calibration_mut(TEST).unwrap().row_mut(RowId(3)).unwrap().excluded = true;
    let without = examine(&mill.book, PUMP, TEST).unwrap();
    assert_eq!((without.rows.len(), without.suspects.len()), (4, 0));
}

#[test]
fn the_line_appears_as_rows_come() {
    let mut mill = Mill::new();
    let id = mill.book.pump_mut(PUMP).unwrap().start_calibration(7);
    let blank = examine(&mill.book, PUMP, id).unwrap();
    assert!(blank.fit.is_none() && blank.calibration.is_none());
    mill.put(LineField::Calibration(PUMP, id, CalibrationField::Density), "1230", Unit::KilogramPerCubicMetre);
    for (at, (setting, mass)) in (1..).zip([("20", "2.7"), ("60", "7.9"), ("80", "10.6")]) {
        let field = |part| LineField::Row(PUMP, id, RowId(at), part);
        mill.put(field(RowField::Setting), setting, Unit::Percent);
        mill.put(field(RowField::Seconds), "60", Unit::Second);
        mill.put(field(RowField::Mass), mass, Unit::Kilogram);
        let examined = examine(&mill.book, PUMP, id).unwrap();
        assert_eq!(examined.rows.len(), usize::from(at));
        assert_eq!(examined.fit.is_some(), at >= 2, "two rows fix a line");
        assert_eq!(examined.calibration.is_some(), at >= 3, "three make it count");
    }
    // It is the last one that counts, and the others are kept.
    let pump = mill.line().pumps.remove(0);
    assert_eq!(pump.calibrations.iter().map(|test| test.id.0).collect::<Vec<_>>(), [1, 2, 3]);
    assert_eq!(pump.last().unwrap().id, id);
}

/// Worked by hand: 2.71 kg in 60 s with a vessel of 0.5 kg are 2.21 kg, 132.6 kg/h.
#[test]
fn the_vessel_is_taken_off() {
    let mut mill = Mill::new();
    mill.put(row(1, RowField::Tare), "500 g", Unit::Kilogram);
    let caught = examine(&mill.book, PUMP, TEST).unwrap().rows[0];
    assert!((Unit::KilogramPerHour.from_base(caught.flow().value) - 132.6).abs() < 1e-9);
}

#[test]
fn a_line_through_the_origin_says_so() {
    let mut mill = Mill::new();
    mill.book.pump_mut(PUMP).unwrap().model = Model::ThroughOrigin;
    let fit = examine(&mill.book, PUMP, TEST).unwrap().fit.unwrap();
    assert!(matches!(fit.r_squared, Some(RSquared::Uncentred(r)) if r > 0.999) && fit.intercept == 0.0);
}

#[test]
fn pumps_are_held_against_each_other() {
    let mut mill = Mill::new();
    mill.book.pumps[1].name = " p1 Binder ".to_owned();
    mill.book.pumps[2].feeds = mill.book.pumps[0].feeds.clone();
    let found = mill.line().findings;
    let places: Vec<_> = found.iter().map(|finding| (finding.place, finding.grade)).collect();
    let share = LinePlace::Field(LineField::Pump(PUMP, PumpField::Share));
    assert_eq!(places, [(LinePlace::Pump(PumpId(2)), Grade::Unusual), (share, Grade::Unusual)]);
    assert!(matches!(found[0].what, LineFindingKind::SamePumpName));
    assert!(matches!(found[1].what, LineFindingKind::SharesNotWhole { sum } if (sum.base - 2.0).abs() < 1e-12));
}

#[test]
fn limits_and_nozzles_that_contradict_are_said() {
    let field = |part| LineField::Pump(PUMP, part);
    let cases: [(PumpField, &str, PumpField, LineFindingKind); 5] = [
        (PumpField::LeastSetting, "96", PumpField::MostSetting, LineFindingKind::LimitsCrossed),
        (PumpField::NozzleLeast, "41", PumpField::NozzleMost, LineFindingKind::WindowCrossed),
        (PumpField::Nozzles, "2.5", PumpField::Nozzles, LineFindingKind::NotWhole),
        (PumpField::NozzleMost, "", PumpField::NozzleMost, LineFindingKind::NozzlesIncomplete),
        (PumpField::Nozzles, "", PumpField::Nozzles, LineFindingKind::NozzlesIncomplete),
    ];
    for (typed, text, place, what) in cases {
        let mut mill = Mill::new();
        mill.book.entry_mut(field(typed)).unwrap().text = text.to_owned();
        let found = mill.line().findings;
        assert!(found.iter().any(|f| f.place == LinePlace::Field(field(place)) && f.what == what), "{found:#?}");
    }
}

#[test]
fn a_tie_follows_the_liquid_by_name_or_by_kind() {
    let mill = Mill::new();
    let mut draft = mill.draft.clone();
    let feeds = mill.book.pumps[0].feeds.clone();
    let was = feeds.within(&draft).unwrap();
    draft.liquids.reverse();
    assert_eq!(feeds.within(&draft), Some(was), "the order means nothing");
    draft.liquid_mut(haulm::domain::LiquidId(1)).unwrap().name = draft.liquids[1].name.to_uppercase();
    assert_eq!(feeds.within(&draft), Some(was), "nor does the case");
    draft.liquid_mut(haulm::domain::LiquidId(1)).unwrap().name = "another".to_owned();
    assert_eq!(feeds.within(&draft), None);
    let by_kind = Feeds::Liquid(Tie { name: String::new(), role: Role::Binder, substance: Substance::Pmdi });
    assert_eq!(by_kind.within(&draft), Some(was), "without a name the kind decides");
}

#[test]
fn identical_catch_tests_have_not_drifted() {
    let mut mill = Mill::new();
    let pump = mill.book.pump_mut(PUMP).unwrap();
    let mut again = pump.calibration(TEST).unwrap().clone();
    again.id = CalibrationId(9);
    pump.calibrations = vec![pump.calibration(TEST).unwrap().clone(), again];
    let pump = mill.line().pumps.remove(0);
    let drifts = drift(&pump, Setting(0.5), MassDensity::new::<kilogram_per_cubic_meter>(1230.0));
    assert_eq!((drifts.len(), drifts[0].change.unwrap().value, drifts[0].certain), (1, 0.0, Some(false)));
}

/// A pump that meters volume delivers more mass of a denser liquid; both its tests are brought to one density.
#[test]
fn drift_is_not_a_change_of_density() {
    let mut mill = Mill::new();
    let pump = mill.book.pump_mut(PUMP).unwrap();
    let old = pump.calibration(TEST).unwrap().clone();
    let mut denser = old.clone();
    denser.id = CalibrationId(9);
    denser.entries.density.text = "1291.5".to_owned();
    for row in &mut denser.rows {
        row.entries.mass.text = format!("{}", row.entries.mass.text.parse::<f64>().unwrap() * 1.05);
    }
    pump.calibrations = vec![old, denser];
    let pump = mill.line().pumps.remove(0);
    let drift = drift(&pump, Setting(0.5), MassDensity::new::<kilogram_per_cubic_meter>(1230.0))[0];
    assert!(drift.change.unwrap().value.abs() < 1e-12);
}

#[test]
fn the_examples_binder_pump_has_drifted() {
    let mill = Mill::new();
    let drift = mill.sheet().rows[0].drift.unwrap();
    assert_eq!(drift.certain, Some(true));
    assert!((0.01..0.03).contains(&drift.change.unwrap().value));
}

#[test]
fn another_scale_keeps_what_was_typed() {
    let mut mill = Mill::new();
    let pump = mill.book.pump_mut(PUMP).unwrap();
    pump.set_unit(SettingUnit::Rpm);
    assert_eq!((pump.entries.most_setting.text.as_str(), pump.entries.most_setting.unit), ("95", Unit::TurnPerMinute));
    let checked = check_line(&mill.book);
    assert_eq!(checked.pumps[0].last().unwrap().rows[0].setting, Setting(20.0));
}

/// A pump with a test that has a fault is told the fault, not to run another one.
#[test]
fn a_faulty_test_is_said_to_be_one() {
    for spoil in [
        (LineField::Calibration(PUMP, TEST, CalibrationField::Density), Unit::KilogramPerCubicMetre, ""),
        (row(3, RowField::Mass), Unit::Kilogram, "abc"),
    ] {
        let mut mill = Mill::new();
        mill.book.pump_mut(PUMP).unwrap().calibrations.remove(0);
        mill.put(spoil.0, spoil.2, spoil.1);
        let said = mill.sheet().findings;
        let about: Vec<_> = said.iter().filter(|finding| finding.pump() == Some(PUMP)).map(|f| &f.what).collect();
        assert_eq!(about, [&LineFindingKind::FaultyTest]);
        let marked = mill.line().findings;
        assert!(marked.iter().any(|finding| finding.place == LinePlace::Field(spoil.0)), "{marked:?}");
    }
}

/// Time and vessel of a row are those of the rows below until they have their own; a row with nothing else waits.
#[test]
fn time_vessel_and_density_carry_down() {
    let mut mill = Mill::new();
    let recipe = Entry::typed("1230", Unit::KilogramPerCubicMetre);
    let pump = mill.book.pump_mut(PUMP).unwrap();
    let id = pump.offer_calibration(7, Some(&recipe));
    let test = pump.calibration_mut(id).unwrap();
    assert_eq!((test.entries.density.text.as_str(), test.entries.density.preset), ("1230", true));
    test.row_mut(RowId(1)).unwrap().entries.seconds = Entry::typed("45", Unit::Second);
    test.row_mut(RowId(1)).unwrap().entries.tare = Entry::typed("0.5", Unit::Kilogram);
    test.carry_down(RowId(1), RowField::Seconds);
    test.carry_down(RowId(1), RowField::Tare);
    let texts = |test: &haulm::domain::line::CalibrationDraft| {
        test.rows
            .iter()
            .map(|row| (row.entries.seconds.text.clone(), row.entries.tare.text.clone()))
            .collect::<Vec<_>>()
    };
    assert!(texts(test).iter().all(|row| *row == ("45".to_owned(), "0.5".to_owned())), "{:?}", texts(test));
    assert!(test.rows[1].is_blank() && test.rows[2].is_blank());
    // What was typed below stays.
    test.row_mut(RowId(2)).unwrap().entries.seconds = Entry::typed("60", Unit::Second);
    test.row_mut(RowId(1)).unwrap().entries.seconds = Entry::typed("30", Unit::Second);
    test.carry_down(RowId(1), RowField::Seconds);
    assert_eq!(test.rows[1].entries.seconds.text, "60");
    let added = test.add_row(SettingUnit::Percent);
    assert_eq!(test.row(added).unwrap().entries.tare.text, "0.5");
    // Without an earlier test the recipe's density is offered.
    pump.calibrations.clear();
    let id = pump.offer_calibration(8, Some(&Entry::typed("1240", Unit::KilogramPerCubicMetre)));
    assert_eq!(pump.calibration(id).unwrap().entries.density.text, "1240");
}

/// A catch that is not complete waits: it is no error, and the test counts without it.
#[test]
fn an_incomplete_catch_waits() {
    let field = LineField::Row(PUMP, TEST, RowId(6), RowField::Setting);
    let found = said(|mill| {
        mill.book.open_row(field);
        mill.put(field, "90", Unit::Percent);
    });
    assert_eq!(found, [(Grade::Note, LinePlace::Row(PUMP, TEST, RowId(6)), LineFindingKind::CatchIncomplete)]);
    // A mass that was cleared is missing, not wrong.
    check(
        |mill| mill.put(row(3, RowField::Mass), "", Unit::Kilogram),
        Grade::Note,
        LinePlace::Row(PUMP, TEST, RowId(3)),
        |what| *what == LineFindingKind::CatchIncomplete,
    );
}

fn texts(column: &[&str]) -> Vec<String> {
    column.iter().map(|text| (*text).to_owned()).collect()
}

/// Behind the last catch there is always one row to type the next one into, with time and tare carried down to it.
#[test]
fn the_next_catch_has_its_row() {
    let mut mill = Mill::new();
    mill.put(row(5, RowField::Tare), "0.4", Unit::Kilogram);
    let spare = RowId(6);
    let field = |part| LineField::Row(PUMP, TEST, spare, part);
    let shown = |mill: &Mill, part| mill.book.entry_shown(field(part)).map(|entry| (entry.text, entry.preset));
    assert_eq!(shown(&mill, RowField::Seconds), Some(("60".to_owned(), true)));
    assert_eq!(shown(&mill, RowField::Tare), Some(("0.4".to_owned(), true)));
    assert_eq!(shown(&mill, RowField::Mass), Some((String::new(), true)));
    assert_eq!(mill.book.entry(field(RowField::Mass)), None, "nothing is stored before something is typed");
    // Only the row that is next comes to be.
    mill.book.open_row(LineField::Row(PUMP, TEST, RowId(9), RowField::Mass));
    assert_eq!(mill.book.calibration(PUMP, TEST).unwrap().rows.len(), 5);
    mill.book.open_row(field(RowField::Mass));
    mill.put(field(RowField::Mass), "12.5", Unit::Kilogram);
    let test = mill.book.calibration(PUMP, TEST).unwrap();
    assert_eq!(test.row(spare).unwrap().entries.seconds.text, "60");
    assert_eq!(test.spare_row(SettingUnit::Percent).map(|row| row.id), Some(RowId(7)));
    // A blank last row is the next one already.
    let pump = mill.book.pump_mut(PUMP).unwrap();
    let blank = pump.start_calibration(9);
    assert_eq!(pump.calibration(blank).unwrap().spare_row(SettingUnit::Percent), None);
}

#[test]
fn a_pasted_column_makes_the_rows_that_it_takes() {
    let mut mill = Mill::new();
    let pump = mill.book.pump_mut(PUMP).unwrap();
    let id = pump.start_calibration(9);
    let test = pump.calibration_mut(id).unwrap();
    test.row_mut(RowId(1)).unwrap().entries.seconds = Entry::typed("60", Unit::Second);
    test.carry_down(RowId(1), RowField::Seconds);
    test.fill_column(
        RowId(2),
        RowField::Mass,
        &texts(&["2.7", " 5.4 ", "8.1", "10.8"]),
        Unit::Kilogram,
        SettingUnit::Percent,
    );
    let masses: Vec<_> = test.rows.iter().map(|row| row.entries.mass.text.as_str()).collect();
    assert_eq!(masses, ["", "2.7", "5.4", "8.1", "10.8"]);
    assert!(test.rows.iter().all(|row| row.entries.seconds.text == "60"), "the time is carried down to new rows");
    // Into the spare row.
    test.fill_column(RowId(6), RowField::Mass, &texts(&["13.5"]), Unit::Kilogram, SettingUnit::Percent);
    assert_eq!(test.rows.len(), 6);
}

/// Worked by hand: the other four settings, 20, 35, 65 and 80 %, have their mean at 50 %, where a line goes through the mean of their flows,
/// (162.6 + 279.6 + 518.4 + 636.6)/4 = 399.3 kg/h. The third catch, 6.22 kg in 60 s, is 373.2 kg/h: 26.1 kg/h below.
#[test]
fn an_excluded_catch_has_its_residual_and_its_reason() {
    let mut mill = Mill::new();
    mill.put(row(3, RowField::Mass), "6.22", Unit::Kilogram);
    let draft = mill.book.pump_mut(PUMP).unwrap().calibration_mut(TEST).unwrap().row_mut(RowId(3)).unwrap();
    draft.excluded = true;
    draft.reason = "hose slipped off".to_owned();
    let examined = examine(&mill.book, PUMP, TEST).unwrap();
    assert_eq!((examined.rows.len(), examined.excluded.len()), (4, 1));
    let fit = examined.fit.unwrap();
    let line = Unit::KilogramPerHour.from_base(fit.at(0.5));
    assert!((line - 399.3).abs() < 1e-9, "{line}");
    let residual = examined.caught(RowId(3)).unwrap().residual(&fit);
    assert!((Unit::KilogramPerHour.from_base(residual.value) + 26.1).abs() < 1e-9);
    // An excluded catch that cannot be read says nothing.
    mill.put(row(3, RowField::Mass), "abc", Unit::Kilogram);
    let examined = examine(&mill.book, PUMP, TEST).unwrap();
    assert_eq!((examined.excluded.len(), examined.findings), (0, vec![]));
    let text = serde_json::to_string(&mill.book).unwrap();
    assert!(text.contains("hose slipped off"));
    assert_eq!(serde_json::from_str::<haulm::domain::line::LineBook>(&text).unwrap(), mill.book);
}

/// Each test against the one before it, at one setting.
#[test]
fn tests_over_time() {
    let mill = Mill::new();
    let pump = mill.line().pumps.remove(0);
    let density = MassDensity::new::<kilogram_per_cubic_meter>(1230.0);
    let all = tested_flows(&pump, Setting(0.425), density);
    assert_eq!(all.iter().map(|each| each.test).collect::<Vec<_>>(), [TEST, CalibrationId(1)]);
    assert_eq!(all[0].drift, drift(&pump, Setting(0.425), density).first().copied());
    assert_eq!(all[1].drift, None, "the first has none before it");
    let change = all[0].flow / all[1].flow - uom::si::f64::Ratio::new::<uom::si::ratio::ratio>(1.0);
    assert!((change.value - all[0].drift.unwrap().change.unwrap().value).abs() < 1e-12);
}
