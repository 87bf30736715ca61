//! Figures that must come out in the region that the trade knows.

use haulm::domain::recipe::binder_system::{SystemKey, add_liquids};
use haulm::domain::{Draft, Entry, Field, Figure, LiquidField, work_out};
use haulm::quantity::Unit;

/// The press factor of a wide, long continuous press fed with 28 t/h of oven-dry fibre, 5 % additives
/// on it, boards at 7 % moisture (dry basis), 0.8 mm sanded off in all.
fn press_factor(thickness: &str, density: &str) -> f64 {
    let mut draft = Draft::default();
    for (field, text, unit) in [
        (Field::FibreFlow, "28", Unit::TonnePerHour),
        (Field::FibreMoisture, "4", Unit::PercentDryBasis),
        (Field::MatMoisture, "10", Unit::PercentDryBasis),
        (Field::BoardDensity, density, Unit::KilogramPerCubicMetre),
        (Field::BoardMoisture, "7", Unit::PercentDryBasis),
        (Field::Thickness, thickness, Unit::Millimetre),
        (Field::SandTop, "0.4", Unit::Millimetre),
        (Field::SandBottom, "0.4", Unit::Millimetre),
        (Field::MatWidth, "10", Unit::Foot),
        (Field::PressLength, "40", Unit::Metre),
    ] {
        *draft.entry_mut(field).unwrap() = Entry::typed(text, unit);
    }
    let mut liquids = SystemKey::Pmdi.system().liquids;
    liquids.truncate(1);
    *liquids[0].entry_mut(LiquidField::Dose) = Entry::typed("5", Unit::Percent);
    add_liquids(&mut draft, &liquids);
    let outcome = work_out(&draft);
    let case = outcome.case.unwrap_or_else(|| panic!("{:?}", outcome.findings));
    case.figure(Figure::PressFactor).unwrap().get(Unit::SecondPerMillimetre)
}

/// Common practice, no source: dryer and press of that size are built as a pair, so that the press
/// factor must come out between 6 and 20 s/mm.
#[test]
fn a_dryer_and_a_press_built_as_a_pair_give_an_ordinary_press_factor() {
    for thickness in ["12", "15", "19"] {
        for density in ["650", "700", "750"] {
            let factor = press_factor(thickness, density);
            assert!((6.0..=20.0).contains(&factor), "{thickness} mm at {density} kg/m³: {factor} s/mm");
        }
    }
}
