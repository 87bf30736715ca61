//! The setting sheet against the recipe and the pumps.

use super::mill::Mill;
use super::support::solved;
use approx::assert_relative_eq;
use haulm::domain::line::pumps::nozzles::{Fits, open};
use haulm::domain::line::pumps::pump::Nozzles;
use haulm::domain::line::{
    Fed, Feeds, Help, LineField, LineFindingKind, LinePlace, Metering, PumpField, PumpId, RangeStatus, SettingUnit,
    Tie, pump_settings, try_pump_settings,
};
use haulm::domain::recipe::draft::{Entry, WaterWay};
use haulm::domain::{Field, Figure, Grade, LiquidFigure, LiquidId, Substance, work_out};
use haulm::quantity::Unit;
use proptest::prelude::*;
use uom::si::f64::VolumeRate;
use uom::si::volume_rate::cubic_meter_per_second;

const PUMP: PumpId = PumpId(1);

fn set(mill: &mut Mill, field: Field, text: &str) {
    let entry = mill.draft.entry_mut(field).unwrap();
    *entry = Entry::typed(text, entry.unit);
    mill.case = work_out(&mill.draft).case.unwrap();
}

/// Worked by hand: 4 % of 8500 kg/h is 340 kg/h of neat binder, 276.4 L/h at 1230 kg/m³, 38.28 kg and
/// 31.12 L a tonne of the 8882.5 kg/h that the belt shows.
#[test]
fn the_example_by_hand() {
    let sheet = Mill::new().sheet();
    assert_eq!(sheet.findings, vec![]);
    let row = &sheet.rows[0];
    let near = |found: f64, expected: f64| assert_relative_eq!(found, expected, max_relative = 1e-4);
    near(Unit::KilogramPerHour.from_base(row.mass.value), 340.0);
    near(Unit::LitrePerHour.from_base(row.volume.value), 276.423);
    near(Unit::KilogramPerTonne.from_base(row.per_fibre.value), 38.277_5);
    near(Unit::LitrePerTonne.from_base(row.volume_per_fibre.value), 31.119_9);
    let nozzles = row.nozzles.unwrap();
    assert_eq!((nozzles.open, nozzles.fits), (10, Fits::Within));
    near(Unit::LitrePerHour.from_base(nozzles.each.value), 27.642_3);
    let setting = row.setting.unwrap();
    let interval = setting.interval.unwrap();
    assert!(interval.low < setting.setting && setting.setting < interval.high);
    let flow = setting.flow.unwrap();
    assert!(flow.low < row.mass && row.mass < flow.high);
    assert_eq!(row.range_status, RangeStatus::Within);
    // Tested from 20 to 80 %.
    near(row.place.unwrap(), (setting.setting.0 - 0.2) / 0.6);
}

#[test]
fn setting_and_flow_cancel_within_the_tested_range() {
    let mill = Mill::new();
    for row in &mill.sheet().rows {
        let curve = row.curve.unwrap();
        let tested = curve.tested();
        for at in 0..=20 {
            let setting =
                haulm::domain::line::Setting(tested.low.0 + f64::from(at) / 20.0 * (tested.high.0 - tested.low.0));
            let back = curve.setting_for(curve.flow(setting)).unwrap();
            assert_relative_eq!(back.setting.0, setting.0, max_relative = 1e-12);
        }
    }
}

#[test]
fn a_pump_by_volume_follows_the_density_and_one_by_mass_does_not() {
    for (metering, factor) in [(Metering::Volume, 1.1), (Metering::Mass, 1.0)] {
        let mut mill = Mill::new();
        mill.book.pump_mut(PUMP).unwrap().metering = metering;
        let before = mill.sheet().rows[0].curve.unwrap().slope();
        set(&mut mill, Field::Liquid(LiquidId(1), haulm::domain::LiquidField::Density), "1353");
        let after = mill.sheet().rows[0].curve.unwrap().slope();
        assert_relative_eq!((after / before).value, factor, max_relative = 1e-12);
    }
}

#[track_caller]
fn out_of_reach(mill: &Mill, expected: RangeStatus) -> Vec<Help> {
    let sheet = mill.sheet();
    assert_eq!(sheet.rows[0].range_status, expected);
    let finding = sheet.findings.iter().find(|f| f.place == LinePlace::Pump(PUMP)).expect("it is said");
    assert_eq!(finding.grade, Grade::Unusual);
    match &finding.what {
        LineFindingKind::OutOfReach { range_status, help, .. } => {
            assert_eq!(*range_status, expected);
            help.clone()
        }
        other => panic!("{other:?}"),
    }
}

#[test]
fn outside_the_range_it_is_said_and_what_would_help() {
    let mut mill = Mill::new();
    set(&mut mill, Field::FibreFlow, "17000");
    let help = out_of_reach(&mill, RangeStatus::AboveTested);
    assert!(matches!(help[..], [Help::TestTo(..), Help::FibreAtMost(_), Help::OtherPump(_)]), "{help:?}");
    set(&mut mill, Field::FibreFlow, "25000");
    let help = out_of_reach(&mill, RangeStatus::AboveLimit);
    assert!(matches!(help[..], [Help::FibreAtMost(_), Help::OtherPump(_)]), "neat binder has no more solids: {help:?}");
    set(&mut mill, Field::FibreFlow, "3000");
    let help = out_of_reach(&mill, RangeStatus::BelowTested);
    assert!(
        matches!(help[..], [Help::TestTo(..), Help::FibreAtLeast(_), Help::OtherPump(_)]),
        "an isocyanate is never thinned: {help:?}"
    );
    mill.draft.liquids[0].substance = Substance::Uf;
    set(&mut mill, Field::FibreFlow, "3000");
    let help = out_of_reach(&mill, RangeStatus::BelowTested);
    assert!(
        matches!(help[..], [Help::TestTo(..), Help::FibreAtLeast(_), Help::Solids(_), Help::OtherPump(_)]),
        "{help:?}"
    );
    mill.put(LineField::Pump(PUMP, PumpField::LeastSetting), "18", Unit::Percent);
    out_of_reach(&mill, RangeStatus::BelowLimit);
}

/// At the fibre flow that is named as the largest, and with the solids that are named, the pump is within.
#[test]
fn what_is_said_to_help_does() {
    let mut tried = 0;
    use haulm::domain::Substance::{Pmdi, Uf};
    for (fibre, substance) in [("17000", Pmdi), ("3000", Pmdi), ("3000", Uf)] {
        let mut mill = Mill::new();
        mill.draft.liquids[0].substance = substance;
        set(&mut mill, Field::FibreFlow, fibre);
        let sheet = mill.sheet();
        let LineFindingKind::OutOfReach { help, .. } = &sheet.findings[0].what else { panic!("{:?}", sheet.findings) };
        for help in help {
            let mut fixed = Mill::new();
            fixed.draft.liquids[0].substance = substance;
            match help {
                Help::FibreAtMost(flow) | Help::FibreAtLeast(flow) => {
                    set(&mut fixed, Field::FibreFlow, &format!("{:e}", Unit::KilogramPerHour.from_base(flow.value)));
                }
                Help::Solids(solids) => {
                    set(&mut fixed, Field::FibreFlow, fibre);
                    let field = Field::Liquid(LiquidId(1), haulm::domain::LiquidField::Solids);
                    set(&mut fixed, field, &format!("{:e}", 100.0 * solids.ratio().value));
                }
                Help::TestTo(..) | Help::OtherPump(_) => continue,
            }
            assert_eq!(fixed.sheet().rows[0].range_status, RangeStatus::Within, "{help:?}");
            tried += 1;
        }
    }
    assert_eq!(tried, 4, "three fibre flows and the solids of the one that may be thinned");
}

#[test]
fn liquids_without_pumps_and_pumps_without_liquids_are_said() {
    let mut mill = Mill::new();
    mill.book.pumps.remove(2);
    mill.book.pumps[1].feeds = Feeds::Liquid(Tie {
        name: "not here".to_owned(),
        role: haulm::domain::Role::Other,
        substance: Substance::Other,
    });
    let found: Vec<_> = mill.sheet().findings.into_iter().map(|f| (f.grade, f.place, f.what)).collect();
    assert_eq!(
        found,
        [
            (Grade::Unusual, LinePlace::Liquid(LiquidId(2)), LineFindingKind::NoPump),
            (Grade::Unusual, LinePlace::Water, LineFindingKind::NoPump),
            (Grade::Note, LinePlace::Pump(PumpId(2)), LineFindingKind::NotInRecipe),
        ]
    );
}

#[test]
fn a_pump_without_a_catch_test_has_flows_and_no_setting() {
    let mut mill = Mill::new();
    mill.book.pumps[0].calibrations.clear();
    let sheet = mill.sheet();
    assert!(sheet.rows[0].setting.is_none() && sheet.rows[0].mass.value > 0.0);
    assert!(sheet.findings.iter().any(|f| f.grade == Grade::Stop && f.what == LineFindingKind::NotCalibrated));
}

#[test]
fn a_fixed_water_flow_names_no_fibre_flow() {
    let mut mill = Mill::new();
    mill.draft.water_way = WaterWay::Flow;
    set(&mut mill, Field::WaterFlow, "100");
    let sheet = mill.sheet();
    let water = sheet.rows.iter().find(|row| row.fed == Fed::Water).unwrap();
    assert_eq!((water.reach, water.range_status), (None, RangeStatus::BelowTested));
}

#[test]
fn two_pumps_share_a_liquid() {
    let mut mill = Mill::new();
    let mut second = mill.book.pumps[0].clone();
    second.id = PumpId(7);
    second.name = "P7".to_owned();
    mill.book.pumps.push(second);
    mill.put(LineField::Pump(PUMP, PumpField::Share), "60", Unit::Percent);
    mill.put(LineField::Pump(PumpId(7), PumpField::Share), "40", Unit::Percent);
    assert_eq!(mill.line().findings, vec![]);
    let sheet = mill.sheet();
    let flow = |id| sheet.rows.iter().find(|row| row.pump == PumpId(id)).unwrap().mass;
    assert_relative_eq!((flow(1) + flow(7)).value, Unit::KilogramPerHour.to_base(340.0), max_relative = 1e-12);
    assert_relative_eq!((flow(7) / flow(1)).value, 2.0 / 3.0, max_relative = 1e-12);
}

#[test]
fn nozzles_open_within_their_window() {
    let litres = |value: f64| VolumeRate::new::<cubic_meter_per_second>(Unit::LitrePerHour.to_base(value));
    let bank = |count| Nozzles { count, least: litres(10.0), most: litres(30.0) };
    for (count, flow, expected) in [
        (12, 200.0, (10, Fits::Within)),
        (8, 200.0, (8, Fits::Within)),
        (6, 200.0, (6, Fits::TooFew)),
        (6, 5.0, (1, Fits::TooMany)),
        (6, 30.0, (2, Fits::Within)),
        (6, 180.0, (6, Fits::Within)),
        (1, 10.0, (1, Fits::Within)),
    ] {
        let opened = open(&bank(count), litres(flow)).unwrap();
        assert_eq!((opened.open, opened.fits), expected, "{flow} L/h over {count}");
        assert_relative_eq!((opened.each * f64::from(opened.open)).value, litres(flow).value, max_relative = 1e-12);
    }
    let narrow = Nozzles { count: 9, least: litres(10.0), most: litres(12.0) };
    assert_eq!(open(&narrow, litres(19.0)).unwrap().fits, Fits::Between);
    assert_eq!(open(&bank(3), litres(0.0)), None);
}

/// A pump on every liquid and the water of any recipe.
fn pumped() -> impl Strategy<Value = Mill> {
    solved().prop_map(|(draft, case)| {
        let mut mill = Mill::new();
        let typed = mill.book.pumps[0].clone();
        mill.book.pumps.clear();
        let feeds = draft.liquids.iter().map(|liquid| Feeds::Liquid(Tie::to(liquid))).chain([Feeds::Water]);
        for (id, feeds) in (1..).zip(feeds) {
            mill.book.pumps.push(haulm::domain::line::PumpDraft { id: PumpId(id), feeds, ..typed.clone() });
        }
        Mill { draft, case, book: mill.book }
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn the_sheet_is_the_recipe(mill in pumped()) {
        let sheet = pump_settings(&mill.draft, &mill.case, &mill.line());
        for row in &sheet.rows {
            let figure = match row.fed {
                Fed::Liquid(id) => Figure::Liquid(id, LiquidFigure::Liquid),
                Fed::Thinning(id) => Figure::Liquid(id, LiquidFigure::Thinning),
                Fed::Water => Figure::WaterDose,
                Fed::FaceWater => Figure::SurfaceSpray,
            };
            assert_relative_eq!(row.mass.value, mill.case.figure(figure).unwrap().base, max_relative = 1e-15);
            if let Some(setting) = row.setting {
                assert_relative_eq!(row.curve.unwrap().flow(setting.setting).value, row.mass.value, max_relative = 1e-9, epsilon = 1e-15);
                prop_assert!(setting.setting.0.is_finite() && setting.setting.0 >= 0.0);
            } else {
                prop_assert!(row.mass.value == 0.0 || row.range_status == RangeStatus::BelowLimit);
            }
        }
    }

    /// At the smallest and the largest fibre flow that a pump serves it is at the edge of its settings.
    #[test]
    fn the_reach_ends_at_the_settings(mill in pumped()) {
        let mut checked = 0;
        for row in mill.sheet().rows {
            let Some(reach) = row.reach else { continue };
            checked += 1;
            let (curve, usable) = (row.curve.unwrap(), row.usable.unwrap());
            for (fibre, edge) in [(reach.least, usable.low), (reach.most, usable.high)] {
                let flow = row.mass * (fibre / mill.case.solved.fibre);
                assert_relative_eq!(curve.setting_for(flow).unwrap().setting.0, edge.0, max_relative = 1e-9);
            }
            let within = reach.least <= mill.case.solved.fibre && mill.case.solved.fibre <= reach.most;
            prop_assert!(within == (row.range_status == RangeStatus::Within) || (row.place.unwrap() * (1.0 - row.place.unwrap())).abs() < 1e-6);
        }
        prop_assume!(checked > 0, "nothing to check");
    }
}

#[test]
fn a_recipe_without_a_balance_or_a_line_is_said() {
    let mill = Mill::new();
    let line = mill.line();
    let why = |case, line: &haulm::domain::line::CheckedLine| {
        try_pump_settings(&mill.draft, case, line).map_err(|finding| (finding.grade, finding.what))
    };
    assert_eq!(why(None, &line), Err((Grade::Stop, LineFindingKind::NoRecipe)));
    let mut laboratory = mill.draft.clone();
    laboratory.feed_way = haulm::domain::recipe::draft::FeedWay::None;
    let of_laboratory = work_out(&laboratory).case.unwrap();
    assert_eq!(why(Some(&of_laboratory), &line), Err((Grade::Stop, LineFindingKind::NoFibreFlow)));
    let bare = haulm::domain::line::check_line(&haulm::domain::line::LineBook::default());
    assert_eq!(why(Some(&mill.case), &bare), Err((Grade::Stop, LineFindingKind::NoPumps)));
    assert_eq!(why(Some(&mill.case), &line), Ok(mill.sheet()));
}

#[test]
fn units_of_drives() {
    assert_eq!(SettingUnit::ALL.iter().map(|unit| unit.unit().symbol()).collect::<Vec<_>>(), ["%", "Hz", "rpm"]);
}
