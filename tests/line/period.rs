//! A shift's mass balance: what is unaccounted for, and which reading drifts.

use approx::assert_relative_eq;
use haulm::domain::LiquidId;
use haulm::domain::line::period::{PeriodLiquid, PeriodQuantity, PeriodReadings, Uncertain};

const fn of(value: f64, uncertainty: f64) -> Uncertain {
    Uncertain { value, uncertainty }
}

const BINDER: LiquidId = LiquidId(1);

/// Eight hours worked by hand: 71 060 kg at 4.5 % are 68 000 kg of fibre; 9800 + 5000 − 12 080 = 2720 kg of neat binder; together 70 720 kg,
/// and boards of 7 % moisture weigh 75 670.4 kg.
fn shift() -> PeriodReadings {
    PeriodReadings {
        belt: of(71_060.0, 200.0),
        fibre_moisture: of(0.045, 0.001),
        liquids: vec![PeriodLiquid {
            id: BINDER,
            start: of(9_800.0, 20.0),
            delivered: of(5_000.0, 10.0),
            end: of(12_080.0, 20.0),
            metered: of(2_720.0, 14.0),
            solids: of(1.0, 0.001),
        }],
        boards: of(75_670.4, 150.0),
        board_moisture: of(0.07, 0.001),
        reject: 0.0,
    }
}

#[test]
fn a_shift_that_closes_has_nothing_unaccounted_for() {
    let balance = shift().balance().unwrap();
    assert!(balance.explained && balance.drifting.is_empty());
    let (id, binder) = balance.liquids[0];
    assert_eq!(id, BINDER);
    assert!(binder.value.abs() < 1e-9 && balance.fibre.value.abs() < 1e-6, "{balance:?}");
    // √(20² + 10² + 20² + 14²) kg.
    assert_relative_eq!(binder.uncertainty, 1_096.0_f64.sqrt(), max_relative = 1e-12);
    assert!(balance.fibre.uncertainty > 200.0 / 1.045 && balance.fibre.uncertainty < 400.0, "{:?}", balance.fibre);
}

/// The meter totals 8 % less than what left the tank: 217.6 kg, with its uncertainty; the tank or the meter, and the meter is named.
#[test]
fn a_flow_meter_that_drifts_is_named() {
    let mut readings = shift();
    readings.liquids[0].metered.value *= 0.92;
    let balance = readings.balance().unwrap();
    assert_relative_eq!(balance.liquids[0].1.value, 217.6, max_relative = 1e-9);
    assert_eq!(balance.drifting.len(), 1);
    assert!(balance.drifting[0].contains(&PeriodQuantity::Metered(BINDER)), "{balance:?}");
    let fibre = [PeriodQuantity::Belt, PeriodQuantity::Boards];
    assert!(!balance.drifting[0].iter().any(|named| fibre.contains(named)), "{balance:?}");
}

/// A belt scale 4 % low over the shift: the boards hold 2720 kg more fibre than went in.
#[test]
fn a_belt_scale_that_drifts_is_named() {
    let mut readings = shift();
    readings.belt.value *= 0.96;
    let balance = readings.balance().unwrap();
    assert_relative_eq!(balance.fibre.value, -2_720.0, max_relative = 1e-9);
    assert_eq!(balance.drifting.len(), 1);
    assert!(balance.drifting[0].contains(&PeriodQuantity::Belt), "{balance:?}");
    assert!(!balance.drifting[0].contains(&PeriodQuantity::Metered(BINDER)), "{balance:?}");
}

#[test]
fn a_reading_without_uncertainty_is_refused() {
    let mut readings = shift();
    readings.boards.uncertainty = 0.0;
    assert!(readings.balance().is_err());
}
