//! A shift's mass balance: what is unaccounted for, and which reading drifts.

use super::mill::Mill;
use approx::assert_relative_eq;
use haulm::domain::line::period::{
    PeriodDrift, PeriodField, PeriodLiquid, PeriodLiquidField, PeriodLiquidId, PeriodQuantity, PeriodReadings,
    Uncertain, read_period,
};
use haulm::domain::line::{LineField, PeriodBalance};
use haulm::quantity::{Unit, Units};
use haulm::ui::text::{Context, LineContext, words};
use std::fmt::Write;

const fn of(value: f64, uncertainty: f64) -> Uncertain {
    Uncertain { value, uncertainty }
}

const BINDER: PeriodLiquidId = PeriodLiquidId(1);

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

/// The readings that the first error may be in.
fn names(balance: &PeriodBalance) -> Vec<PeriodQuantity> {
    balance.drifting[0].iter().map(|drift| drift.quantity).collect()
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
    assert!(names(&balance).contains(&PeriodQuantity::Metered(BINDER)), "{balance:?}");
    let fibre = [PeriodQuantity::Belt, PeriodQuantity::Boards];
    assert!(!names(&balance).iter().any(|named| fibre.contains(named)), "{balance:?}");
}

/// A belt scale 4 % low over the shift: the boards hold 2720 kg more fibre than went in.
#[test]
fn a_belt_scale_that_drifts_is_named() {
    let mut readings = shift();
    readings.belt.value *= 0.96;
    let balance = readings.balance().unwrap();
    assert_relative_eq!(balance.fibre.value, -2_720.0, max_relative = 1e-9);
    assert_eq!(balance.drifting.len(), 1);
    assert!(names(&balance).contains(&PeriodQuantity::Belt), "{balance:?}");
    assert!(!names(&balance).contains(&PeriodQuantity::Metered(BINDER)), "{balance:?}");
}

#[test]
fn a_reading_without_uncertainty_is_refused() {
    let mut readings = shift();
    readings.boards.uncertainty = 0.0;
    assert!(readings.balance().is_err());
}

/// The shift of the invented mill as it is typed: 71 060 kg over the belt at 4.5 % are 68 000 kg of fibre. Binder, 1230 kg/m³: 8000 L +
/// 5000 kg − 9853.66 L are 2720 kg. Wax, 950 kg/m³, 55 % solids: 10 000 − 8958.85 L are 989.09 kg, 544 kg of solids. Together 71 264 kg,
/// and boards of 7 % moisture weigh 76 252.5 kg: 3000 of 25.41749 kg.
fn typed() -> Mill {
    let mut mill = Mill::new();
    mill.book.period = mill.book.period.next(&mill.draft, 1_772_431_200_000);
    let ids: Vec<PeriodLiquidId> = mill.book.period.liquids.iter().map(|liquid| liquid.id).collect();
    let [binder, wax] = ids[..] else { panic!("two liquids: {ids:?}") };
    for (field, text, unit) in [
        (PeriodField::BeltTotal, "71060", Unit::Kilogram),
        (PeriodField::FibreMoisture, "4.5", Unit::PercentDryBasis),
        (PeriodField::Boards, "3000", Unit::One),
        (PeriodField::BoardMass, "25.41749", Unit::Kilogram),
        (PeriodField::BoardMoisture, "7", Unit::PercentDryBasis),
    ] {
        mill.put(LineField::Period(field), text, unit);
    }
    for (id, start, delivered, end, metered) in
        [(binder, "8000", "5000", "9853.66", "2720"), (wax, "10000", "0", "8958.85", "989.09")]
    {
        let field = |part| LineField::PeriodLiquid(id, part);
        mill.put(field(PeriodLiquidField::Start), start, Unit::Litre);
        mill.put(field(PeriodLiquidField::Delivered), delivered, Unit::Kilogram);
        mill.put(field(PeriodLiquidField::End), end, Unit::Litre);
        mill.put(field(PeriodLiquidField::Metered), metered, Unit::Kilogram);
    }
    mill
}

fn told(mill: &Mill) -> (PeriodBalance, String, String) {
    let (readings, said) = read_period(&mill.book);
    assert_eq!(said, vec![]);
    let balance = readings.unwrap().balance().unwrap();
    let units = Units::default();
    let context =
        LineContext { plain: Context { units: &units, draft: &mill.draft, currency: "€" }, book: &mill.book };
    let message = words::line::period(&balance, &context);
    (balance, message.what, message.fix)
}

#[test]
fn a_period_as_typed_closes() {
    let (balance, what, fix) = told(&typed());
    for (_, liquid) in &balance.liquids {
        assert!(liquid.value.abs() < 0.02, "{balance:?}");
        assert!(!liquid.is_beyond_chance());
    }
    assert!(balance.fibre.value.abs() < 1.0, "{:?}", balance.fibre);
    // A dip of 30 L of wax is 28.5 kg; √2 of them, and 1 %/√3 of 989.09 kg by the meter, and half a kilogram of no delivery.
    let wax = balance.liquids[1].1.uncertainty;
    assert_relative_eq!(wax, (2.0 * 28.5_f64.powi(2) + 5.7105_f64.powi(2) + 0.25).sqrt(), max_relative = 1e-4);
    assert_relative_eq!(balance.liquids[1].1.half_interval(), 1.959_964 * wax, max_relative = 1e-6);
    assert_eq!(what, "All readings of the period agree within their uncertainties.");
    assert_eq!(fix, "No meter drifts.");
}

/// An interval of ± 107.9 kg makes whole kilograms; one of ± 1135 kg tens of them; nothing is a plain nought.
#[test]
fn masses_show_no_more_than_is_known() {
    for (value, uncertainty, expected) in
        [(217.6, 55.05, (218.0, 108.0)), (-217.6, 579.1, (-220.0, 1_140.0)), (-0.0025, 40.71, (0.0, 79.8))]
    {
        let (rounded, half) = of(value, uncertainty).rounded();
        assert_relative_eq!(rounded, expected.0, epsilon = 1e-9);
        assert_relative_eq!(half, expected.1, max_relative = 1e-9);
        assert!(rounded != 0.0 || rounded.is_sign_positive());
    }
    assert_eq!(of(3.0, 0.0).rounded(), (3.0, 0.0));
}

/// 2720 · 0.92 = 2502.4: 217.6 kg unaccounted for, and the meter reads 8 % low.
#[test]
fn a_meter_that_drifts_is_told_in_words_and_kilograms() {
    let mut mill = typed();
    mill.put(LineField::PeriodLiquid(PeriodLiquidId(1), PeriodLiquidField::Metered), "2502.4", Unit::Kilogram);
    let (balance, what, fix) = told(&mill);
    assert_relative_eq!(balance.liquids[0].1.value, 217.6, epsilon = 0.02);
    assert!(balance.liquids[0].1.is_beyond_chance() && !balance.liquids[1].1.is_beyond_chance());
    assert!(what.starts_with("Either the flow meter of pMDI reads 8"), "{what}");
    assert!(what.ends_with("with one of them left out everything else agrees."), "{what}");
    assert!(fix.starts_with("Run a catch test on the pump of pMDI"), "{fix}");
}

#[test]
fn a_period_with_something_missing_has_no_balance_and_says_where() {
    let mut mill = typed();
    mill.put(LineField::Period(PeriodField::Boards), "", Unit::One);
    mill.put(LineField::PeriodLiquid(PeriodLiquidId(2), PeriodLiquidField::End), "abc", Unit::Litre);
    let (readings, said) = read_period(&mill.book);
    assert_eq!(readings, None);
    assert_eq!(said.len(), 2, "{said:?}");
}

#[test]
fn the_last_dips_are_the_first_of_the_next_period() {
    let mut mill = typed();
    mill.put(LineField::Period(PeriodField::Dip), "12", Unit::Litre);
    let next = mill.book.period.next(&mill.draft, 1);
    assert_eq!(next.liquids[0].entries.start.text, "9853.66");
    assert!(next.liquids[0].entries.end.is_blank() && next.liquids[0].entries.metered.is_blank());
    assert_eq!((next.entries.dip.text.as_str(), next.entries.belt_total.text.as_str()), ("12", ""));
    assert_eq!((next.liquids[1].entries.solids.text.as_str(), next.liquids[1].entries.solids.preset), ("55", true));
}

/// Every reading that can be doubted, alone; two that cannot be separated; two errors; and one that nothing explains.
#[test]
fn verdicts_in_words() {
    let mut mill = typed();
    mill.book.period.liquids[1].tie.name = String::new();
    let wax = PeriodLiquidId(2);
    let one = |quantity, read, estimate| PeriodDrift { quantity, read, estimate };
    let alone = [
        one(PeriodQuantity::Belt, 68_217.6, 71_060.0),
        one(PeriodQuantity::FibreMoisture, 0.045, 0.062),
        one(PeriodQuantity::Boards, 77_000.0, 75_670.0),
        one(PeriodQuantity::BoardMoisture, 0.09, 0.07),
        one(PeriodQuantity::Start(BINDER), 9_580.0, 9_800.0),
        one(PeriodQuantity::Delivered(BINDER), 5_200.0, 5_000.0),
        one(PeriodQuantity::End(wax), 8_511.0, 8_480.0),
        one(PeriodQuantity::Metered(wax), 910.0, 989.09),
        one(PeriodQuantity::Solids(wax), 0.55, 0.52),
    ];
    let balance = |drifting: Vec<Vec<PeriodDrift>>, explained| PeriodBalance {
        liquids: Vec::new(),
        fibre: of(0.0, 1.0),
        drifting,
        explained,
    };
    let mut all: Vec<PeriodBalance> = alone.iter().map(|drift| balance(vec![vec![*drift]], true)).collect();
    all.push(balance(vec![vec![alone[7], alone[6]]], true));
    all.push(balance(vec![vec![alone[0]], vec![alone[7], alone[6]]], true));
    all.push(balance(Vec::new(), false));
    all.push(balance(Vec::new(), true));
    let units = Units::default();
    let context =
        LineContext { plain: Context { units: &units, draft: &mill.draft, currency: "€" }, book: &mill.book };
    let mut text = String::new();
    for balance in &all {
        let message = words::line::period(balance, &context);
        writeln!(text, "{}\n  → {}", message.what, message.fix).unwrap();
    }
    snapshot!("line", "period_verdicts", text);
}
