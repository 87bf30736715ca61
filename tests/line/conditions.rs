//! The pump settings at the belt scale and the fibre moisture that are entered at the line.
//!
//! Figures by hand from the mass balance of the invented mill, not by the app: fibre 8500 kg/h oven-dry, 4 % binder without water (340
//! kg/h), wax 68 kg/h of solids at 55 %: solids 8908 kg/h, 55.64 kg/h of water in the wax; the mat needs 11.3 % of 8908 = 1006.60 kg/h of
//! water. At 6 % the fibre brings 510 kg/h, so 440.97 are dosed, and the belt scale reads 9010.

use super::mill::Mill;
use approx::assert_relative_eq;
use haulm::domain::Grade;
use haulm::domain::line::{
    ConditionField, Conditions, LineField, LineFindingKind, LinePlace, ReadOn, at_conditions, pump_settings,
};
use haulm::domain::recipe::finding::What;
use haulm::quantity::Unit;

const BELT: LineField = LineField::Condition(ConditionField::Belt);
const MOISTURE: LineField = LineField::Condition(ConditionField::Moisture);

fn conditions(mill: &Mill) -> Conditions {
    at_conditions(&mill.case, &mill.book, "Straw")
}

fn per_hour(flow: uom::si::f64::MassRate) -> f64 {
    flow.value * 3600.0
}

#[test]
fn blank_boxes_are_the_recipe() {
    let mill = Mill::new();
    let now = conditions(&mill);
    assert_eq!(now.case.as_ref().unwrap().solved, mill.case.solved);
    assert_relative_eq!(per_hour(now.target.unwrap()), 8882.5, max_relative = 1e-9);
    assert_eq!(now.findings, []);
}

#[test]
fn a_changed_moisture_moves_the_belt_target_and_the_water() {
    let mut mill = Mill::new();
    mill.put(MOISTURE, "6", Unit::PercentDryBasis);
    let now = conditions(&mill);
    let case = now.case.unwrap();
    assert_relative_eq!(per_hour(now.target.unwrap()), 9010.0, max_relative = 1e-9);
    assert_relative_eq!(per_hour(case.solved.fibre), 8500.0, max_relative = 1e-9);
    assert_relative_eq!(per_hour(case.solved.water.dose), 440.97, max_relative = 1e-4);
    let settings = pump_settings(&mill.draft, &case, &mill.line());
    assert_relative_eq!(per_hour(settings.rows[0].mass), 340.0, max_relative = 1e-9);
    assert_relative_eq!(per_hour(settings.rows[2].mass), 440.97, max_relative = 1e-4);
}

#[test]
fn a_belt_scale_read_at_another_flow_scales_everything() {
    let mut mill = Mill::new();
    mill.put(BELT, "4.505 t/h", Unit::KilogramPerHour);
    mill.put(MOISTURE, "6", Unit::PercentDryBasis);
    let now = conditions(&mill);
    let case = now.case.unwrap();
    // Half of the fibre; the target is still that of the recipe.
    assert_relative_eq!(per_hour(now.target.unwrap()), 9010.0, max_relative = 1e-9);
    assert_relative_eq!(per_hour(case.solved.fibre), 4250.0, max_relative = 1e-9);
    assert_relative_eq!(per_hour(case.solved.water.dose), 220.48, max_relative = 1e-4);
}

#[test]
fn wet_fibre_is_told_and_an_entry_that_cannot_be_used_gives_no_settings() {
    let mut mill = Mill::new();
    mill.put(MOISTURE, "15", Unit::PercentDryBasis);
    let now = conditions(&mill);
    assert!(now.recipe.iter().any(|finding| matches!(finding.what, What::TooWet { .. })));
    assert!(now.findings.iter().any(|finding| finding.grade == Grade::Unusual));
    mill.put(MOISTURE, "-2", Unit::PercentDryBasis);
    let now = conditions(&mill);
    assert_eq!((now.case, now.target), (None, None));
    assert!(
        now.findings.iter().any(|finding| finding.grade == Grade::Stop && finding.place == LinePlace::Field(MOISTURE))
    );
}

#[test]
fn what_was_entered_on_another_recipe_is_told() {
    let mut mill = Mill::new();
    mill.book.conditions_on = Some(ReadOn { recipe: "Other".to_owned(), at: 0 });
    assert_eq!(conditions(&mill).findings, []);
    mill.put(BELT, "9000", Unit::KilogramPerHour);
    let said = conditions(&mill).findings;
    assert!(
        matches!(&said[..], [one] if matches!(&one.what, LineFindingKind::OtherRecipe { recipe } if recipe == "Other"))
    );
}
