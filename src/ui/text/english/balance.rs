//! Machines and streams of the balance, and what workings rest on.

use super::name::liquid;
use crate::domain::Draft;
use crate::domain::balance::closure::{Node, StreamName};
use crate::domain::working::{Constant, Ground};
use std::borrow::Cow;

pub(super) fn node(node: Node) -> &'static str {
    match node {
        Node::Outside => "Outside the line",
        Node::Blender => "Blender",
        Node::Sifter => "Sifter",
        Node::Way => "Way to the former",
        Node::Former => "Former and edge trim",
        Node::Press => "Press",
        Node::Stack => "Cooling and stacking",
        Node::Sander => "Sander",
        Node::Saw => "Saw",
    }
}

pub(super) fn stream(name: StreamName, draft: &Draft) -> Cow<'_, str> {
    Cow::Borrowed(match name {
        StreamName::Fibre => "Fibre",
        StreamName::Liquid(id) => return draft.liquid(id).map_or(Cow::Borrowed("Liquid"), liquid),
        StreamName::Water => "Water dosed",
        StreamName::Furnish => "Furnish",
        StreamName::Reject => "Sifter reject",
        StreamName::Sifted => "Sifted furnish",
        StreamName::TransportVapour => "Water lost on the way",
        StreamName::Laid => "Furnish to the former",
        StreamName::Trim => "Mat trim, returned",
        StreamName::Mat => "Mat",
        StreamName::SurfaceSpray => "Face water",
        StreamName::PressVapour => "Water driven out in the press",
        StreamName::RawBoard => "Raw board",
        StreamName::Conditioning => "Water taken up while stacked",
        StreamName::Conditioned => "Raw board at its moisture",
        StreamName::SanderDust => "Sander dust",
        StreamName::Sanded => "Sanded board",
        StreamName::Offcuts => "Edges and crosscuts",
        StreamName::Board => "Finished board",
    })
}

pub(super) fn constant(constant: Constant) -> &'static str {
    match constant {
        Constant::WaterDensity => "Density of water at 20 °C",
        Constant::SensibleHeat => "Heat to warm the water from the mat's temperature to boiling",
        Constant::LatentHeat => "Heat to evaporate water at 101.325 kPa",
        Constant::DryerHeat => "Heat to warm water from 20 °C and to evaporate it at 101.325 kPa",
        Constant::HoursPerYear => "Hours per year, as chosen",
    }
}

pub(super) fn ground(ground: Ground) -> &'static str {
    match ground {
        Ground::Entered => "as entered",
        Ground::MassBalance => "mass in equals mass out",
        Ground::Definition => "by definition",
        Ground::Published(source) => source,
    }
}
