//! How long tanks last.

use super::mill::Mill;
use approx::assert_relative_eq;
use haulm::domain::line::finding::LineFindingKind;
use haulm::domain::line::{Feeds, LineField, LinePlace, TankField, TankId, TankWay};
use haulm::domain::{Grade, Role};
use haulm::quantity::Unit;

const TANK: TankId = TankId(1);

/// Worked by hand: 42 % of 20 000 L are 8400 L, 7900 L above the heel, 9717 kg at 1230 kg/m³; at 340 kg/h
/// they last 28.579 h. A shift of 8 h uses 2720 kg. 11 600 L still fit.
#[test]
fn the_examples_tank_by_hand() {
    let mill = Mill::new();
    let state = mill.line().tank(TANK).unwrap().state(&mill.draft, &mill.case).unwrap();
    let near = |found: f64, unit: Unit, expected: f64| {
        assert_relative_eq!(unit.from_base(found), expected, max_relative = 1e-9);
    };
    near(state.usable.value, Unit::Litre, 7900.0);
    near(state.usable_mass.value, Unit::Kilogram, 9717.0);
    near(state.lasts.unwrap().value, Unit::Hour, 9717.0 / 340.0);
    near(state.per_shift.value, Unit::Kilogram, 2720.0);
    near(state.fits.value, Unit::Litre, 11_600.0);
    near(state.fits_mass.value, Unit::Kilogram, 14_268.0);
    let start = 1_772_431_200_000;
    let hours = (state.empty_at(start).unwrap() - start) as f64 / 3.6e6;
    assert_relative_eq!(hours, 9717.0 / 340.0, max_relative = 1e-6);
    // Three days to deliver, and it lasts a little more than one: overdue by 72 − 28.579 h.
    assert_relative_eq!(
        Unit::Hour.from_base(state.overdue_by(start).unwrap().value),
        72.0 - 9717.0 / 340.0,
        max_relative = 1e-6
    );
}

#[test]
fn level_volume_and_mass_are_one_content() {
    let mut states = Vec::new();
    for (way, text, unit) in [
        (TankWay::Level, "42", Unit::Percent),
        (TankWay::Volume, "8400", Unit::Litre),
        (TankWay::Mass, "10332", Unit::Kilogram),
    ] {
        let mut mill = Mill::new();
        mill.book.tank_mut(TANK).unwrap().set_way(way);
        mill.put(LineField::Tank(TANK, TankField::Content), text, unit);
        states.push(mill.line().tank(TANK).unwrap().state(&mill.draft, &mill.case).unwrap().lasts.unwrap().value);
    }
    for state in &states {
        assert_relative_eq!(*state, states[0], max_relative = 1e-12);
    }
}

#[test]
fn what_cannot_be_is_said() {
    let mut mill = Mill::new();
    mill.put(LineField::Tank(TANK, TankField::Heel), "20000", Unit::Litre);
    let line = mill.line();
    let place = LinePlace::Field(LineField::Tank(TANK, TankField::Heel));
    assert!(line.tanks.is_empty());
    assert!(line.findings.iter().any(|f| f.place == place && f.what == LineFindingKind::HeelTooLarge));

    for (way, text, expected) in [
        (TankWay::Volume, "21000", Some((Grade::Unusual, LineFindingKind::OverFull))),
        (TankWay::Volume, "400", Some((Grade::Unusual, LineFindingKind::TankEmpty))),
        (TankWay::Volume, "20000", None),
    ] {
        let mut mill = Mill::new();
        mill.book.tank_mut(TANK).unwrap().set_way(way);
        mill.put(LineField::Tank(TANK, TankField::Content), text, Unit::Litre);
        mill.put(LineField::Tank(TANK, TankField::LeadTime), "", Unit::Hour);
        let state = mill.line().tank(TANK).unwrap().state(&mill.draft, &mill.case).unwrap();
        let said: Vec<_> =
            state.findings(mill.line().tank(TANK).unwrap(), 0).into_iter().map(|f| (f.grade, f.what)).collect();
        assert_eq!(said, expected.into_iter().collect::<Vec<_>>(), "{text}");
        assert!(state.usable.value >= 0.0 && state.fits.value >= 0.0);
    }
}

#[test]
fn a_late_order_is_said() {
    let mill = Mill::new();
    let line = mill.line();
    let tank = line.tank(TANK).unwrap();
    let said = tank.state(&mill.draft, &mill.case).unwrap().findings(tank, 1_772_431_200_000);
    assert!(matches!(said[..], [ref f] if matches!(f.what, LineFindingKind::OrderOverdue { .. })), "{said:?}");
}

#[test]
fn nothing_drawn_lasts_for_ever_and_is_not_a_number_of_hours() {
    let mut mill = Mill::new();
    mill.draft.liquids.retain(|liquid| liquid.role != Role::Binder);
    mill.case = haulm::domain::work_out(&mill.draft).case.unwrap();
    assert!(mill.line().tank(TANK).unwrap().state(&mill.draft, &mill.case).is_none(), "its liquid is not there");
    let mut mill = Mill::new();
    mill.draft.liquids[0].dose.text = "0".to_owned();
    mill.case = haulm::domain::work_out(&mill.draft).case.unwrap();
    let state = mill.line().tank(TANK).unwrap().state(&mill.draft, &mill.case).unwrap();
    assert_eq!((state.lasts, state.empty_at(0), state.order_at(0)), (None, None, None));
}

#[test]
fn a_tank_of_water_serves_both_waters() {
    let tie = haulm::domain::line::Tie::to(&Mill::new().draft.liquids[0]);
    assert!(Feeds::Water.holds_for(&Feeds::Thinning(tie.clone())));
    assert!(!Feeds::Water.holds_for(&Feeds::Liquid(tie)));
}

/// A level that was read ten hours ago: what was drawn since is gone.
#[test]
fn a_level_has_its_time() {
    let mut mill = Mill::new();
    let read = 1_772_431_200_000;
    mill.book.tank_mut(TANK).unwrap().read_at = Some(read);
    let state = mill.line().tank(TANK).unwrap().state(&mill.draft, &mill.case).unwrap();
    let later = read + 10 * 3_600_000;
    assert_eq!(state.empty_at(later), state.empty_at(read), "looking later does not fill it");
    let left = |now: u64| state.overdue_by(now).unwrap().value;
    assert_relative_eq!(left(later) - left(read), 36_000.0, max_relative = 1e-9);
    let gone = read + 40 * 3_600_000;
    let line = mill.line();
    let said = state.findings(line.tank(TANK).unwrap(), gone);
    assert!(said.iter().any(|finding| finding.what == LineFindingKind::TankEmpty), "{said:?}");
}

/// Two tanks of one liquid last twice as long as one, and run empty together.
#[test]
fn tanks_of_one_liquid_share_its_draw() {
    let mut mill = Mill::new();
    let feeds = mill.book.tank(TANK).unwrap().feeds.clone();
    let second = mill.book.add_tank(feeds);
    mill.book.tank_mut(second).unwrap().set_way(TankWay::Volume);
    for (field, text) in [(TankField::Capacity, "20000"), (TankField::Heel, "500"), (TankField::Content, "8400")] {
        mill.put(LineField::Tank(second, field), text, Unit::Litre);
    }
    let line = mill.line();
    let state = |id| line.tank(id).unwrap().state_among(&line.tanks, &mill.draft, &mill.case).unwrap();
    let (first, second) = (state(TANK), state(second));
    let alone = line.tank(TANK).unwrap().state(&mill.draft, &mill.case).unwrap();
    assert_relative_eq!(first.lasts.unwrap().value, 2.0 * alone.lasts.unwrap().value, max_relative = 1e-9);
    assert_relative_eq!(first.lasts.unwrap().value, second.lasts.unwrap().value, max_relative = 1e-9);
    assert_relative_eq!((first.rate + second.rate).value, alone.rate.value, max_relative = 1e-9);
    assert_relative_eq!(first.rate.value, second.rate.value, max_relative = 1e-9);
}

/// Worked by hand: it lasts 28.579 h and a delivery takes 72 h. Ordered at once it comes 43.421 h after the tank runs empty; 7900 L over
/// 72 h are 109.72 L/h. Ordered 60 h before the level was read, it comes after 12 h, in time.
#[test]
fn an_ordered_delivery_is_not_overdue_and_can_be_late() {
    let read = 1_772_431_200_000;
    let said = |ordered: u64| {
        let mut mill = Mill::new();
        let tank = mill.book.tank_mut(TANK).unwrap();
        (tank.read_at, tank.ordered_at) = (Some(read), Some(ordered));
        let line = mill.line();
        let tank = line.tank(TANK).unwrap();
        let state = tank.state(&mill.draft, &mill.case).unwrap();
        (state.findings(tank, read), state.overdue_by(read), state.delivery_at(read))
    };
    let (findings, overdue, comes) = said(read);
    assert_eq!((overdue, comes), (None, Some(read + 72 * 3_600_000)));
    let [finding] = &findings[..] else { panic!("{findings:?}") };
    let LineFindingKind::DeliveryLate { by, at_most: Some(at_most) } = finding.what else { panic!("{finding:?}") };
    assert_relative_eq!(by.get(Unit::Hour), 72.0 - 9717.0 / 340.0, max_relative = 1e-6);
    assert_relative_eq!(at_most.get(Unit::LitrePerHour), 7900.0 / 72.0, max_relative = 1e-6);
    let (findings, overdue, comes) = said(read - 60 * 3_600_000);
    assert_eq!((findings, overdue, comes), (vec![], None, Some(read + 12 * 3_600_000)));
}
