//! Fields: what each holds, per what.

use super::name;
use crate::domain::recipe::draft::FeedWay;
use crate::domain::recipe::field::LiquidField;
use crate::domain::{DoseWay, Draft, Field, LiquidId};
use crate::ui::text::FieldWords;
use crate::{field, t};
use std::borrow::Cow;

/// Label and hint of a field. A liquid's field is labelled without the liquid's name.
#[must_use]
pub fn field(field: Field, draft: &Draft) -> FieldWords {
    match field {
        Field::FibreFlow => fibre_flow(draft.feed_way),
        Field::WantedLineSpeed => field!("field-wanted-line-speed"),
        Field::WantedPressFactor => field!("field-wanted-press-factor"),
        Field::FibreMoisture => field!("field-fibre-moisture"),
        Field::FibrePrice => field!("field-fibre-price"),
        Field::MatMoisture => field!("field-mat-moisture"),
        Field::DryingLoss => field!("field-drying-loss"),
        Field::WaterOnFibre => field!("field-water-on-fibre"),
        Field::WaterFlow => field!("field-water-flow"),
        Field::BoardDensity => field!("field-board-density"),
        Field::BoardMoisture => field!("field-board-moisture"),
        Field::Thickness => field!("field-thickness"),
        Field::SandTop => field!("field-sand-top"),
        Field::SandBottom => field!("field-sand-bottom"),
        Field::SurfaceRatio => field!("field-surface-ratio"),
        Field::MatWidth => field!("field-mat-width"),
        Field::SpreadWidth => field!("field-spread-width"),
        Field::PressLength => field!("field-press-length"),
        Field::Reject => field!("field-reject"),
        Field::AreaYield => field!("field-area-yield"),
        Field::ExitMoisture => field!("field-exit-moisture"),
        Field::MatBulkDensity => field!("field-mat-bulk-density"),
        Field::MatTemperature => field!("field-mat-temperature"),
        Field::SurfaceSpray => field!("field-surface-spray"),
        Field::ShiftHours => field!("field-shift-hours"),
        Field::FibreSupply => field!("field-fibre-supply"),
        Field::BlenderCapacity => field!("field-blender-capacity"),
        Field::LeastPressFactor => field!("field-least-press-factor"),
        Field::SteamLimit => field!("field-steam-limit"),
        Field::TopLineSpeed => field!("field-top-line-speed"),
        Field::Liquid(id, part) => liquid_field(id, part, draft),
    }
}

fn fibre_flow(way: FeedWay) -> FieldWords {
    match way {
        FeedWay::Belt => field!("field-fibre-flow-belt"),
        FeedWay::OvenDry | FeedWay::LineSpeed | FeedWay::PressFactor | FeedWay::None => {
            field!("field-fibre-flow-oven-dry")
        }
    }
}

fn liquid_field(id: LiquidId, part: LiquidField, draft: &Draft) -> FieldWords {
    match part {
        LiquidField::Dose => dose(draft.liquid(id).map_or(DoseWay::SolidsOnFibre, |liquid| liquid.dose_way)),
        LiquidField::Solids => field!("field-liquid-solids"),
        LiquidField::Density => field!("field-liquid-density"),
        LiquidField::SpraySolids => field!("field-liquid-spray-solids"),
        LiquidField::Price => field!("field-liquid-price"),
    }
}

fn dose(way: DoseWay) -> FieldWords {
    match way {
        DoseWay::SolidsOnFibre => field!("field-dose-solids-on-fibre"),
        DoseWay::SolidsOnLiquid(_) => field!("field-dose-solids-on-liquid"),
        DoseWay::LiquidOnFibre => field!("field-dose-liquid-on-fibre"),
        DoseWay::LiquidPerBoard => field!("field-dose-liquid-per-board"),
        DoseWay::LiquidOnFaces(_) => field!("field-dose-liquid-on-faces"),
    }
}

/// A field by its full name, as messages call it: with the liquid's name.
#[must_use]
pub fn field_name(asked: Field, draft: &Draft) -> String {
    let of = match asked {
        Field::Liquid(id, part) => draft.liquid(id).map(|liquid| (liquid, part)),
        _ => None,
    };
    let Some((liquid, part)) = of else { return field(asked, draft).label.to_owned() };
    let name = name::liquid(liquid);
    match part {
        LiquidField::Dose => dose_of(liquid.dose_way, name),
        LiquidField::Solids => t!("field-liquid-solids-of", name = name),
        LiquidField::Density => t!("field-liquid-density-of", name = name),
        LiquidField::SpraySolids => t!("field-liquid-spray-solids-of", name = name),
        LiquidField::Price => t!("field-liquid-price-of", name = name),
    }
}

fn dose_of(way: DoseWay, name: Cow<'_, str>) -> String {
    match way {
        DoseWay::SolidsOnFibre => t!("field-dose-solids-on-fibre-of", name = name),
        DoseWay::SolidsOnLiquid(_) => t!("field-dose-solids-on-liquid-of", name = name),
        DoseWay::LiquidOnFibre => t!("field-dose-liquid-on-fibre-of", name = name),
        DoseWay::LiquidPerBoard => t!("field-dose-liquid-per-board-of", name = name),
        DoseWay::LiquidOnFaces(_) => t!("field-dose-liquid-on-faces-of", name = name),
    }
}
