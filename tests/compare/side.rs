//! Systems side by side.

use haulm::domain::balance::machine::Machine;
use haulm::domain::compare::Output;
use haulm::domain::compare::side::{
    Belongs, ComparedSystem, Differing, SideBySideError, on_conditions, side_by_side, with_liquids,
};
use haulm::domain::recipe::binder_system::SystemKey;
use haulm::domain::{Draft, Entry, Field, Figure, LiquidField, example};
use haulm::quantity::Unit;

fn system(name: &str, draft: Draft) -> ComparedSystem {
    ComparedSystem::new(name, draft)
}

fn of_library(key: SystemKey) -> ComparedSystem {
    let mut draft = with_liquids(&example(), &key.system().liquids);
    for liquid in &mut draft.liquids {
        liquid.price = Entry::typed("600", Unit::PerTonne);
    }
    system(key.key(), draft)
}

fn base(value: Option<haulm::quantity::Amount>) -> f64 {
    value.unwrap().base
}

#[track_caller]
fn near(found: f64, expected: f64) {
    assert!((found - expected).abs() <= 1e-9 * expected.abs(), "{found} for {expected}");
}

#[test]
fn systems_of_the_library_on_one_mill_differ_in_their_liquids_only() {
    let systems: Vec<_> = [SystemKey::Pmdi, SystemKey::Uf, SystemKey::Muf, SystemKey::Soy].map(of_library).into();
    let side = side_by_side(&systems, 0, Some(6000)).unwrap();
    assert_eq!(side.differences, []);
    let row = |output| side.rows.iter().find(|row| row.output == output).unwrap();

    // F·(ω_f − ω_f0) = W − W*: the way to it by the fibre moisture for no water.
    let dryer = row(Output::DryerWater);
    for (at, system) in systems.iter().enumerate() {
        let case = system.case().unwrap();
        let figure = |figure| case.figure(figure).map(|amount| amount.base);
        let balance = base(dryer.values[at]);
        near(balance, figure(Figure::WaterOnHand).unwrap() - figure(Figure::WaterNeeded).unwrap());
        if let Some(none) = figure(Figure::FibreMoistureForNoWater) {
            near(balance, figure(Figure::Fibre).unwrap() * (0.045 - none));
        }
        // IAPWS-95: 2256.472 kJ/kg, and 334.9 kJ/kg from 20 °C to the boiling point.
        let heat = base(row(Output::DryerHeat).values[at]) / balance;
        assert!((heat / 1e3 - (2256.472 + 335.1)).abs() < 0.3, "{heat}");
        let year = base(row(Output::CostPerYear(6000)).values[at]);
        near(year, figure(Figure::Cost).unwrap() * figure(Figure::FinishedVolume).unwrap() * 6000.0 * 3600.0);
    }
    // Liquid UF brings water, neat pMDI none but its wax's.
    let water = row(Output::LiquidWater);
    assert!(base(water.values[1]) > 5.0 * base(water.values[0]));
    let unit = Unit::KilogramPerHour;
    near(
        dryer.difference(1, 0, unit).unwrap(),
        unit.from_base(base(dryer.values[1])) - unit.from_base(base(dryer.values[0])),
    );
    assert_eq!(dryer.difference(0, 0, unit), Some(0.0));
    let binder = row(Output::BinderOnFibre);
    near(base(binder.values[0]), 0.04);
    near(base(binder.values[1]), 0.12);
    near(binder.relative(1, 0).unwrap(), 2.0);
    assert_eq!(systems[1].unpriced(), []);
    let bare = system("UF", with_liquids(&example(), &SystemKey::Uf.system().liquids));
    assert_eq!(bare.unpriced().len(), bare.draft.liquids.len());
}

#[test]
fn the_limiting_machine_and_its_flow() {
    let system = system("as it is", example());
    let case = system.case().unwrap();
    let machine = system.limiting().unwrap();
    let limit = case.figure(Figure::FibreAtLimit(machine)).unwrap().base;
    near(base(Output::FibreAtLimit.value(case)), limit);
    for other in [Machine::FibreSupply, Machine::Blender, Machine::Press, Machine::LineSpeed] {
        assert!(case.figure(Figure::FibreAtLimit(other)).unwrap().base >= limit);
    }
    let volume = base(Output::VolumeAtLimit.value(case));
    near(volume / case.figure(Figure::FinishedVolume).unwrap().base, limit / case.figure(Figure::Fibre).unwrap().base);
    let working = Output::VolumeAtLimit.working(case).unwrap();
    let by_hand = working.formula.value(&|at| working.givens[at].amount.base);
    near(by_hand, volume);
}

#[test]
fn what_differs_is_said_and_can_be_made_the_same() {
    let first = system("first", example());
    let mut draft = example();
    // The same number in another unit is the same.
    *draft.entry_mut(Field::Thickness).unwrap() = Entry::typed("0.015", Unit::Metre);
    *draft.entry_mut(Field::BoardDensity).unwrap() = Entry::typed("700", Unit::KilogramPerCubicMetre);
    *draft.entry_mut(Field::MatMoisture).unwrap() = Entry::typed("9", Unit::PercentDryBasis);
    *draft.entry_mut(Field::FibreMoisture).unwrap() = Entry::typed("", Unit::PercentDryBasis);
    *draft.entry_mut(Field::BlenderCapacity).unwrap() = Entry::typed("", Unit::KilogramPerHour);
    draft.feed_way = haulm::domain::recipe::draft::FeedWay::Belt;
    draft.sprayed_faces = haulm::domain::Faces::Top;
    let second = system("second", draft.clone());
    let side = side_by_side(&[first.clone(), second], 0, Some(6000)).unwrap();
    let said: Vec<_> = side
        .differences
        .iter()
        .map(|difference| match &difference.what {
            Differing::Number(field, values) => (difference.belongs, Some(*field), values[1].map(|value| value.base)),
            Differing::FeedWay(_) | Differing::WaterWay(_) | Differing::SprayedFaces(_) => {
                (difference.belongs, None, None)
            }
        })
        .collect();
    assert_eq!(
        said,
        [
            (Belongs::Fibre, None, None),
            (Belongs::Fibre, Some(Field::FibreMoisture), None),
            (Belongs::Board, Some(Field::BoardDensity), Some(700.0)),
            (Belongs::Line, None, None),
            (Belongs::Line, Some(Field::BlenderCapacity), None),
            (Belongs::System, Some(Field::MatMoisture), Some(0.09)),
        ]
    );
    assert_eq!(side.differences.iter().filter(|difference| difference.is_fair()).count(), 1);
    // The second cannot be solved without its fibre moisture: its column is empty, the first's is not.
    assert!(side.rows.iter().all(|row| row.values[0].is_some() && row.values[1].is_none()));

    let same = system("second", on_conditions(&example(), &draft));
    let side = side_by_side(&[first, same.clone()], 1, Some(6000)).unwrap();
    let left: Vec<_> = side.differences.iter().map(|difference| difference.belongs).collect();
    assert_eq!(left, [Belongs::System]);
    assert_eq!(same.draft.liquids, draft.liquids);
    assert!(same.case().is_some());
}

#[test]
fn two_to_six() {
    let one = system("one", example());
    let many = |count| vec![one.clone(); count];
    assert_eq!(side_by_side(&many(1), 0, Some(1)), Err(SideBySideError::TooFew));
    assert_eq!(side_by_side(&many(7), 0, Some(1)), Err(SideBySideError::TooMany));
    assert_eq!(side_by_side(&many(2), 2, Some(1)), Err(SideBySideError::NoReference));
    assert!(side_by_side(&many(6), 5, Some(1)).is_ok());
    let price = Field::Liquid(one.draft.liquids[0].id, LiquidField::Price);
    assert!(!one.unpriced().contains(&price));
}
