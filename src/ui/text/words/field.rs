//! Fields: what each holds, per what.

use super::name;
use crate::domain::recipe::draft::FeedWay;
use crate::domain::recipe::field::LiquidField;
use crate::domain::{DoseWay, Draft, Field, LiquidId};
use crate::ui::text::FieldWords;

const fn words(label: &'static str, hint: &'static str) -> FieldWords {
    FieldWords { label, hint }
}

pub(super) fn field(field: Field, draft: &Draft) -> FieldWords {
    match field {
        Field::FibreFlow => fibre_flow(draft.feed_way),
        Field::WantedLineSpeed => words("Line speed wanted", "The fibre flow follows from it."),
        Field::WantedPressFactor => {
            words("Press factor wanted", "Pressing time per pressed thickness; the fibre flow follows from it.")
        }
        Field::FibreMoisture => words("Fibre moisture", "Of the dried fibre as it enters the blender."),
        Field::FibrePrice => words("Fibre price, oven-dry", "Per oven-dry mass."),
        Field::MatMoisture => words("Mat moisture wanted", "At the former; the water dose follows from it."),
        Field::DryingLoss => words(
            "Drying on the way, dry-basis points",
            "Points of dry-basis moisture lost between blender and former.",
        ),
        Field::WaterOnFibre => words("Water dose, water on oven-dry fibre", "kg of water per 100 kg oven-dry fibre."),
        Field::WaterFlow => words("Water dose, flow", ""),
        Field::BoardDensity => words("Board density", "Finished board at its board moisture (EN 323)."),
        Field::BoardMoisture => words("Board moisture", "At which the density is meant."),
        Field::Thickness => words("Finished thickness", "After sanding."),
        Field::SandTop => words("Sanded off, top face", ""),
        Field::SandBottom => words("Sanded off, bottom face", ""),
        Field::SurfaceRatio => {
            words("Density of the sanded-off layers, ratio to the mean", "1 when nothing better is known.")
        }
        Field::MatWidth => words("Mat width, trimmed", "As it enters the press."),
        Field::SpreadWidth => words("Spread width", "As the former lays it; the edges between return."),
        Field::PressLength => words("Press length, heated", ""),
        Field::Reject => words("Sifter reject, share of the furnish", ""),
        Field::AreaYield => words("Area yield", "Finished area per pressed area, after edges and crosscuts."),
        Field::ExitMoisture => words(
            "Board moisture leaving the press",
            "Leave blank to use the board moisture; the press water follows from it.",
        ),
        Field::MatBulkDensity => words("Bulk density of the loose mat, moist", "Gives the mat height."),
        Field::MatTemperature => words("Mat temperature before the press", ""),
        Field::SurfaceSpray => words("Face water", "Per area of each sprayed face."),
        Field::ShiftHours => words("Hours of a shift", ""),
        Field::FibreSupply => words("Most fibre the dryer supplies, oven-dry", "Blank: no limit."),
        Field::BlenderCapacity => words("Most furnish through the blender, oven-dry", "Blank: no limit."),
        Field::LeastPressFactor => words("Least press factor that cures", "Blank: no limit."),
        Field::SteamLimit => words("Mat moisture limit of the press", "Leave blank to use the typical range."),
        Field::TopLineSpeed => words("Top line speed", "Of former and press; blank: no limit."),
        Field::Liquid(id, part) => liquid_field(id, part, draft),
    }
}

fn fibre_flow(way: FeedWay) -> FieldWords {
    match way {
        FeedWay::Belt => {
            words("Fibre flow, belt scale reading, moist", "With its moisture, as the belt scale shows it.")
        }
        FeedWay::OvenDry | FeedWay::LineSpeed | FeedWay::PressFactor | FeedWay::None => {
            words("Fibre flow, oven-dry", "Into the blender, without its moisture.")
        }
    }
}

fn liquid_field(id: LiquidId, part: LiquidField, draft: &Draft) -> FieldWords {
    match part {
        LiquidField::Dose => dose(draft.liquid(id).map_or(DoseWay::SolidsOnFibre, |liquid| liquid.dose_way)),
        LiquidField::Solids => {
            words("Solids as delivered, by mass", "By the supplier's own method; 100 % for neat pMDI.")
        }
        LiquidField::Density => words("Density as delivered", ""),
        LiquidField::SpraySolids => words("Spray solids after thinning, by mass", "Blank: sprayed as delivered."),
        LiquidField::Price => words("Price as delivered", "Blank: left out of the cost."),
    }
}

fn dose(way: DoseWay) -> FieldWords {
    match way {
        DoseWay::SolidsOnFibre => words("Dose, solids on oven-dry fibre", "kg of solids per 100 kg oven-dry fibre."),
        DoseWay::SolidsOnLiquid(_) => {
            words("Dose, solids on the other liquid's solids", "kg of solids per 100 kg solids of the base.")
        }
        DoseWay::LiquidOnFibre => {
            words("Dose, liquid as delivered on oven-dry fibre", "kg of liquid per 100 kg oven-dry fibre.")
        }
        DoseWay::LiquidPerBoard => words("Dose, liquid as delivered per volume of finished board", ""),
        DoseWay::LiquidOnFaces(_) => words("Dose, liquid as delivered per area of face", "Per sprayed face."),
    }
}

pub(super) fn field_name(asked: Field, draft: &Draft) -> String {
    let label = field(asked, draft).label;
    let Field::Liquid(id, part) = asked else { return label.to_owned() };
    let Some(liquid) = draft.liquid(id) else { return label.to_owned() };
    let name = name::liquid(liquid);
    match part {
        LiquidField::Dose => format!("Dose of {name}, {}", label.trim_start_matches("Dose, ")),
        LiquidField::Solids => format!("Solids of {name}, as delivered"),
        LiquidField::Density => format!("Density of {name}"),
        LiquidField::SpraySolids => format!("Spray solids of {name}"),
        LiquidField::Price => format!("Price of {name}"),
    }
}
