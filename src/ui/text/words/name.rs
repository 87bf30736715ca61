//! Names of things: liquids, stations, machines, choices, kinds of figures.

use crate::domain::balance::machine::Machine;
use crate::domain::chemistry::solute::Solute;
use crate::domain::recipe::draft::{FeedWay, LiquidDraft, WaterWay};
use crate::domain::recipe::limit::Source;
use crate::domain::{BoardKind, DoseWay, Draft, Faces, Furnish, Grade, Role, Station, Substance};
use crate::quantity::Dimension;
use crate::quantity::kind::UnitSystem;
use crate::ui::text::source_text;
use crate::{label, t};
use std::borrow::Cow;

/// What a liquid is called: its own name, or what it is while it has none.
#[must_use]
pub fn liquid(liquid: &LiquidDraft) -> Cow<'_, str> {
    let name = liquid.name.trim();
    if !name.is_empty() {
        Cow::Borrowed(name)
    } else if liquid.substance == Substance::Other {
        Cow::Borrowed(role(liquid.role))
    } else {
        Cow::Borrowed(substance(liquid.substance))
    }
}

/// How grave a finding is, in one word or two.
#[must_use]
pub fn grade(grade: Grade) -> &'static str {
    match grade {
        Grade::Stop => label!("name-grade-stop"),
        Grade::Unusual => label!("name-grade-unusual"),
        Grade::Note => label!("name-grade-note"),
    }
}

/// Where a usual window comes from.
#[must_use]
pub fn source(source: Source) -> Cow<'static, str> {
    match source {
        Source::Published(source) => Cow::Owned(source_text(source)),
        Source::Unverified(of) => Cow::Owned(t!("name-source-unverified-of", of = source_text(of))),
        Source::Mill => Cow::Borrowed(label!("name-source-mill")),
        Source::FromMemory => Cow::Borrowed(label!("name-source-from-memory")),
        Source::CommonPractice => Cow::Borrowed(label!("name-source-common-practice")),
    }
}

/// A station of the line.
#[must_use]
pub fn station(station: Station) -> &'static str {
    match station {
        Station::Fibre => label!("name-station-fibre"),
        Station::Blender => label!("name-station-blender"),
        Station::Mat => label!("name-station-mat"),
        Station::Press => label!("name-station-press"),
        Station::Board => label!("name-station-board"),
    }
}

/// What a liquid is for.
#[must_use]
pub fn role(role: Role) -> &'static str {
    match role {
        Role::Binder => label!("name-role-binder"),
        Role::Hardener => label!("name-role-hardener"),
        Role::Wax => label!("name-role-wax"),
        Role::Scavenger => label!("name-role-scavenger"),
        Role::ReleaseAgent => label!("name-role-release-agent"),
        Role::Other => label!("name-role-other"),
    }
}

/// What a liquid is made of.
#[must_use]
pub fn substance(substance: Substance) -> &'static str {
    match substance {
        Substance::Uf => label!("name-substance-uf"),
        Substance::Muf => label!("name-substance-muf"),
        Substance::Pf => label!("name-substance-pf"),
        Substance::Pmdi => label!("name-substance-pmdi"),
        Substance::Soy => label!("name-substance-soy"),
        Substance::Tannin => label!("name-substance-tannin"),
        Substance::WaxEmulsion => label!("name-substance-wax-emulsion"),
        Substance::AmmoniumSulfate => label!("name-substance-ammonium-sulfate"),
        Substance::AmmoniumChloride => label!("name-substance-ammonium-chloride"),
        Substance::AmmoniumNitrate => label!("name-substance-ammonium-nitrate"),
        Substance::Urea => label!("name-substance-urea"),
        Substance::Other => label!("name-substance-other"),
    }
}

/// A machine that may limit the line.
#[must_use]
pub fn machine(machine: Machine) -> &'static str {
    match machine {
        Machine::FibreSupply => label!("name-machine-fibre-supply"),
        Machine::Blender => label!("name-machine-blender"),
        Machine::Press => label!("name-machine-press"),
        Machine::LineSpeed => label!("name-machine-line-speed"),
    }
}

/// What the furnish is made of.
#[must_use]
pub fn furnish(furnish: Furnish) -> &'static str {
    match furnish {
        Furnish::Straw => label!("name-furnish-straw"),
        Furnish::Wood => label!("name-furnish-wood"),
        Furnish::Mixed => label!("name-furnish-mixed"),
    }
}

/// The kind of board.
#[must_use]
pub fn board_kind(kind: BoardKind) -> &'static str {
    match kind {
        BoardKind::Fibreboard => label!("name-board-kind-fibreboard"),
        BoardKind::Particleboard => label!("name-board-kind-particleboard"),
        BoardKind::Other => label!("name-board-kind-other"),
    }
}

/// A way to fix the fibre flow.
#[must_use]
pub fn feed_way(way: FeedWay) -> &'static str {
    match way {
        FeedWay::OvenDry => label!("name-feed-way-oven-dry"),
        FeedWay::Belt => label!("name-feed-way-belt"),
        FeedWay::LineSpeed => label!("name-feed-way-line-speed"),
        FeedWay::PressFactor => label!("name-feed-way-press-factor"),
        FeedWay::None => label!("name-feed-way-none"),
    }
}

/// The faces of the mat that a spray goes on.
#[must_use]
pub fn faces(faces: Faces) -> &'static str {
    match faces {
        Faces::Both => label!("name-faces-both"),
        Faces::Top => label!("name-faces-top"),
        Faces::Bottom => label!("name-faces-bottom"),
    }
}

/// A way to fix the water dose.
#[must_use]
pub fn water_way(way: WaterWay) -> &'static str {
    match way {
        WaterWay::ToMatMoisture => label!("name-water-way-to-mat-moisture"),
        WaterWay::OnFibre => label!("name-water-way-on-fibre"),
        WaterWay::Flow => label!("name-water-way-flow"),
        WaterWay::None => label!("name-water-way-none"),
    }
}

/// A way to enter a dose, its base named.
#[must_use]
pub fn dose_way(way: DoseWay, draft: &Draft) -> Cow<'static, str> {
    match way {
        DoseWay::SolidsOnFibre => Cow::Borrowed(label!("name-dose-way-solids-on-fibre")),
        DoseWay::SolidsOnLiquid(base) => Cow::Owned(match draft.liquid(base) {
            Some(base) => t!("name-dose-way-solids-on-liquid", name = liquid(base)),
            None => t!("name-dose-way-solids-on-missing"),
        }),
        DoseWay::LiquidOnFibre => Cow::Borrowed(label!("name-dose-way-liquid-on-fibre")),
        DoseWay::LiquidPerBoard => Cow::Borrowed(label!("name-dose-way-liquid-per-board")),
        DoseWay::LiquidOnFaces(Faces::Both) => Cow::Borrowed(label!("name-dose-way-liquid-on-both-faces")),
        DoseWay::LiquidOnFaces(Faces::Top) => Cow::Borrowed(label!("name-dose-way-liquid-on-top-face")),
        DoseWay::LiquidOnFaces(Faces::Bottom) => Cow::Borrowed(label!("name-dose-way-liquid-on-bottom-face")),
    }
}

/// A system of units.
#[must_use]
pub fn system(system: UnitSystem) -> &'static str {
    match system {
        UnitSystem::Metric => label!("name-system-metric"),
        UnitSystem::Us => label!("name-system-us"),
    }
}

/// A substance that is dissolved in water.
#[must_use]
pub fn solute(solute: Solute) -> &'static str {
    match solute {
        Solute::AmmoniumSulfate => label!("name-solute-ammonium-sulfate"),
        Solute::AmmoniumChloride => label!("name-solute-ammonium-chloride"),
        Solute::AmmoniumNitrate => label!("name-solute-ammonium-nitrate"),
        Solute::Urea => label!("name-solute-urea"),
    }
}

pub(super) fn dimension(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Mass => label!("name-dimension-mass"),
        Dimension::MassFlow => label!("name-dimension-mass-flow"),
        Dimension::Volume => label!("name-dimension-volume"),
        Dimension::VolumeFlow => label!("name-dimension-volume-flow"),
        Dimension::Density => label!("name-dimension-density"),
        Dimension::ArealMass => label!("name-dimension-areal-mass"),
        Dimension::LinearMass => label!("name-dimension-linear-mass"),
        Dimension::Length => label!("name-dimension-length"),
        Dimension::Area => label!("name-dimension-area"),
        Dimension::AreaFlow => label!("name-dimension-area-flow"),
        Dimension::Speed => label!("name-dimension-speed"),
        Dimension::Time => label!("name-dimension-time"),
        Dimension::Slowness => label!("name-dimension-slowness"),
        Dimension::Temperature => label!("name-dimension-temperature"),
        Dimension::SpecificEnergy => label!("name-dimension-specific-energy"),
        Dimension::HeatFlow => label!("name-dimension-heat-flow"),
        Dimension::Fraction => label!("name-dimension-fraction"),
        Dimension::Moisture => label!("name-dimension-moisture"),
        Dimension::Force => label!("name-dimension-force"),
        Dimension::Stress => label!("name-dimension-stress"),
        Dimension::Stiffness => label!("name-dimension-stiffness"),
        Dimension::Frequency => label!("name-dimension-frequency"),
        Dimension::Rotation => label!("name-dimension-rotation"),
        Dimension::FlowPerFrequency => label!("name-dimension-flow-per-frequency"),
        Dimension::FlowPerRotation => label!("name-dimension-flow-per-rotation"),
        Dimension::SpecificVolume => label!("name-dimension-specific-volume"),
        Dimension::Expansion => label!("name-dimension-expansion"),
        Dimension::Price => label!("name-dimension-price"),
        Dimension::Cost => label!("name-dimension-cost"),
        Dimension::YearCost => label!("name-dimension-year-cost"),
        Dimension::Number => label!("name-dimension-number"),
    }
}
