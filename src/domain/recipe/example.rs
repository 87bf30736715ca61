//! The example that a first start shows: a recipe of an invented wheat-straw mill.

use crate::domain::recipe::binder_system::{SystemKey, add_liquids};
use crate::domain::recipe::draft::{Draft, Entry};
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::product::BoardKind;
use crate::quantity::Unit;

/// What the invented mill typed, in the order of the page.
const TYPED: &[(Field, &str, Unit)] = &[
    (Field::FibreFlow, "8500", Unit::KilogramPerHour),
    (Field::FibreMoisture, "4.5", Unit::PercentDryBasis),
    (Field::FibrePrice, "95", Unit::PerTonne),
    (Field::FibreSupply, "10000", Unit::KilogramPerHour),
    (Field::BlenderCapacity, "10500", Unit::KilogramPerHour),
    (Field::MatMoisture, "10.5", Unit::PercentDryBasis),
    (Field::DryingLoss, "0.8", Unit::Percent),
    (Field::BoardDensity, "680", Unit::KilogramPerCubicMetre),
    (Field::BoardMoisture, "7", Unit::PercentDryBasis),
    (Field::Thickness, "15", Unit::Millimetre),
    (Field::SandTop, "0.3", Unit::Millimetre),
    (Field::SandBottom, "0.3", Unit::Millimetre),
    (Field::SurfaceRatio, "1.1", Unit::One),
    (Field::MatWidth, "1.9", Unit::Metre),
    (Field::SpreadWidth, "2", Unit::Metre),
    (Field::MatBulkDensity, "35", Unit::KilogramPerCubicMetre),
    (Field::MatTemperature, "32", Unit::Celsius),
    (Field::SurfaceSpray, "10", Unit::GramPerSquareMetre),
    (Field::Reject, "1", Unit::Percent),
    (Field::PressLength, "18", Unit::Metre),
    (Field::ExitMoisture, "5.5", Unit::PercentDryBasis),
    (Field::LeastPressFactor, "7", Unit::SecondPerMillimetre),
    (Field::TopLineSpeed, "30", Unit::MetrePerMinute),
    (Field::AreaYield, "92", Unit::Percent),
    (Field::ShiftHours, "8", Unit::Hour),
];

/// What it pays for its liquids, per tonne as delivered, in their order.
const PRICES: &[&str] = &["2100", "900"];

/// The teaching example: neat pMDI and wax on wheat straw, a 15 mm board. All of it is invented.
/// Nothing in it is marked as a preset, as if the mill had typed it.
#[must_use]
pub fn example() -> Draft {
    let mut draft = Draft { board_kind: BoardKind::Fibreboard, ..Draft::default() };
    for (field, text, unit) in TYPED {
        if let Some(entry) = draft.entry_mut(*field) {
            *entry = Entry::typed(*text, *unit);
        }
    }
    add_liquids(&mut draft, &SystemKey::Pmdi.system().liquids);
    for (liquid, price) in draft.liquids.iter_mut().zip(PRICES) {
        liquid.price = Entry::typed(*price, Unit::PerTonne);
        liquid.source = "Invented, for the example.".to_owned();
        for part in [LiquidField::Dose, LiquidField::Solids, LiquidField::Density] {
            liquid.entry_mut(part).preset = false;
        }
    }
    draft
}
