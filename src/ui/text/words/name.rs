//! Names of things: liquids, stations, machines, choices, kinds of figures.

use crate::domain::balance::machine::Machine;
use crate::domain::chemistry::solute::Solute;
use crate::domain::recipe::draft::{FeedWay, LiquidDraft, WaterWay};
use crate::domain::recipe::limit::Source;
use crate::domain::{BoardKind, DoseWay, Draft, Faces, Furnish, Grade, Role, Station, Substance};
use crate::quantity::Dimension;
use crate::quantity::kind::UnitSystem;
use std::borrow::Cow;

pub(super) fn liquid(liquid: &LiquidDraft) -> Cow<'_, str> {
    let name = liquid.name.trim();
    if !name.is_empty() {
        Cow::Borrowed(name)
    } else if liquid.substance == Substance::Other {
        Cow::Borrowed(role(liquid.role))
    } else {
        Cow::Borrowed(substance(liquid.substance))
    }
}

pub(super) fn grade(grade: Grade) -> &'static str {
    match grade {
        Grade::Stop => "Cannot be computed",
        Grade::Unusual => "Outside the usual",
        Grade::Note => "Note",
    }
}

pub(super) fn source(source: Source) -> Cow<'static, str> {
    match source {
        Source::Published(source) => Cow::Borrowed(source),
        Source::Unverified(of) => Cow::Owned(format!("unverified; {of}")),
        Source::Mill => Cow::Borrowed("this mill's own limit"),
        Source::FromMemory => Cow::Borrowed("unverified"),
        Source::CommonPractice => Cow::Borrowed("trade practice"),
    }
}

pub(super) fn station(station: Station) -> &'static str {
    match station {
        Station::Fibre => "Fibre",
        Station::Blender => "Blender",
        Station::Mat => "Mat",
        Station::Press => "Press",
        Station::Board => "Board",
    }
}

pub(super) fn role(role: Role) -> &'static str {
    match role {
        Role::Binder => "Binder",
        Role::Hardener => "Hardener",
        Role::Wax => "Wax",
        Role::Scavenger => "Formaldehyde scavenger",
        Role::ReleaseAgent => "Release agent",
        Role::Other => "Other liquid",
    }
}

pub(super) fn substance(substance: Substance) -> &'static str {
    match substance {
        Substance::Uf => "UF resin",
        Substance::Muf => "MUF resin",
        Substance::Pf => "PF resin",
        Substance::Pmdi => "pMDI",
        Substance::Soy => "Soy adhesive",
        Substance::Tannin => "Tannin adhesive",
        Substance::WaxEmulsion => "Wax emulsion",
        Substance::AmmoniumSulfate => "Ammonium sulfate solution",
        Substance::AmmoniumChloride => "Ammonium chloride solution",
        Substance::AmmoniumNitrate => "Ammonium nitrate solution",
        Substance::Urea => "Urea solution",
        Substance::Other => "Something else",
    }
}

pub(super) fn machine(machine: Machine) -> &'static str {
    match machine {
        Machine::FibreSupply => "Fibre supply",
        Machine::Blender => "Blender",
        Machine::Press => "Press",
        Machine::LineSpeed => "Line speed",
    }
}

pub(super) fn furnish(furnish: Furnish) -> &'static str {
    match furnish {
        Furnish::Straw => "Straw",
        Furnish::Wood => "Wood",
        Furnish::Mixed => "Straw and wood",
    }
}

pub(super) fn board_kind(kind: BoardKind) -> &'static str {
    match kind {
        BoardKind::Fibreboard => "Fibreboard (EN 622-1, EN 622-5)",
        BoardKind::Particleboard => "Particleboard (EN 312)",
        BoardKind::Other => "Other",
    }
}

pub(super) fn feed_way(way: FeedWay) -> &'static str {
    match way {
        FeedWay::OvenDry => "Oven-dry fibre flow",
        FeedWay::Belt => "Belt scale reading, moist fibre",
        FeedWay::LineSpeed => "From a line speed",
        FeedWay::PressFactor => "From a press factor",
        FeedWay::None => "None (laboratory)",
    }
}

pub(super) fn faces(faces: Faces) -> &'static str {
    match faces {
        Faces::Both => "Both faces",
        Faces::Top => "Top face",
        Faces::Bottom => "Bottom face",
    }
}

pub(super) fn water_way(way: WaterWay) -> &'static str {
    match way {
        WaterWay::ToMatMoisture => "To a mat moisture",
        WaterWay::OnFibre => "Fixed, on oven-dry fibre",
        WaterWay::Flow => "Fixed flow",
        WaterWay::None => "No water dosed",
    }
}

pub(super) fn dose_way(way: DoseWay, draft: &Draft) -> Cow<'static, str> {
    match way {
        DoseWay::SolidsOnFibre => Cow::Borrowed("Solids on oven-dry fibre"),
        DoseWay::SolidsOnLiquid(base) => Cow::Owned(match draft.liquid(base) {
            Some(base) => format!("Solids on the solids of {}", liquid(base)),
            None => "Solids on the solids of a liquid that is not there".to_owned(),
        }),
        DoseWay::LiquidOnFibre => Cow::Borrowed("Liquid as delivered on oven-dry fibre"),
        DoseWay::LiquidPerBoard => Cow::Borrowed("Liquid as delivered per volume of finished board"),
        DoseWay::LiquidOnFaces(Faces::Both) => Cow::Borrowed("Liquid as delivered on each of both mat faces"),
        DoseWay::LiquidOnFaces(Faces::Top) => Cow::Borrowed("Liquid as delivered on the top mat face"),
        DoseWay::LiquidOnFaces(Faces::Bottom) => Cow::Borrowed("Liquid as delivered on the bottom mat face"),
    }
}

pub(super) fn system(system: UnitSystem) -> &'static str {
    match system {
        UnitSystem::Metric => "Metric",
        UnitSystem::Us => "US customary",
    }
}

pub(super) fn solute(solute: Solute) -> &'static str {
    match solute {
        Solute::AmmoniumSulfate => "Ammonium sulfate",
        Solute::AmmoniumChloride => "Ammonium chloride",
        Solute::AmmoniumNitrate => "Ammonium nitrate",
        Solute::Urea => "Urea",
    }
}

pub(super) fn dimension(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Mass => "mass",
        Dimension::MassFlow => "mass per time",
        Dimension::Volume => "volume",
        Dimension::VolumeFlow => "volume per time",
        Dimension::Density => "mass per volume",
        Dimension::ArealMass => "mass per area",
        Dimension::LinearMass => "mass per length",
        Dimension::Length => "length",
        Dimension::Area => "area",
        Dimension::AreaFlow => "area per time",
        Dimension::Speed => "speed",
        Dimension::Time => "time",
        Dimension::Slowness => "time per thickness",
        Dimension::Temperature => "temperature",
        Dimension::SpecificEnergy => "heat per mass",
        Dimension::HeatFlow => "heat per time",
        Dimension::Fraction => "a share",
        Dimension::Moisture => "moisture",
        Dimension::Force => "force",
        Dimension::Stress => "force per area",
        Dimension::Stiffness => "force per length",
        Dimension::Frequency => "frequency",
        Dimension::Rotation => "shaft speed",
        Dimension::FlowPerFrequency => "mass per time and frequency",
        Dimension::FlowPerRotation => "mass per time and shaft speed",
        Dimension::SpecificVolume => "volume per mass",
        Dimension::Expansion => "expansion per temperature",
        Dimension::Price => "money per mass",
        Dimension::Cost => "money per volume of board",
        Dimension::YearCost => "money per year",
        Dimension::Number => "a bare number",
    }
}
