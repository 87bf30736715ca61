//! Every stream of the line with its solids and its water, and whether mass closes at each machine.
//!
//! The streams are put together from the solved figures, each by the formula of its own kind (dust
//! from the sanded thickness, offcuts from the area yield), so that closing is a check and not a
//! consequence of how they were computed.

use crate::domain::balance::outcome::Case;
use crate::domain::balance::solved::Solved;
use crate::domain::balance::station::Station;
use crate::domain::recipe::input::MOST_LIQUIDS;
use crate::domain::recipe::liquid::LiquidId;
use arrayvec::ArrayVec;
use uom::ConstZero;
use uom::si::f64::{ArealMassDensity, MassRate, Ratio};
use uom::si::mass_rate::kilogram_per_second;

/// A machine, or the world outside the line.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Node {
    /// Where things come from and go to.
    Outside,
    /// Blender.
    Blender,
    /// Sifter behind the blender.
    Sifter,
    /// The way to the former, where the furnish dries.
    Way,
    /// Former with the edge trim and its return.
    Former,
    /// Press.
    Press,
    /// Cooling and stacking, where the board comes to its moisture.
    Stack,
    /// Sander.
    Sander,
    /// Saw.
    Saw,
}

impl Node {
    /// The machines, in the material's order.
    pub const MACHINES: &'static [Node] =
        &[Self::Blender, Self::Sifter, Self::Way, Self::Former, Self::Press, Self::Stack, Self::Sander, Self::Saw];

    /// The station of the page that the machine belongs to.
    #[must_use]
    pub const fn station(self) -> Station {
        match self {
            Self::Outside => Station::Fibre,
            Self::Blender => Station::Blender,
            Self::Sifter | Self::Way | Self::Former => Station::Mat,
            Self::Press => Station::Press,
            Self::Stack | Self::Sander | Self::Saw => Station::Board,
        }
    }
}

/// What flows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum StreamName {
    /// Fibre.
    Fibre,
    /// A liquid with the water that thins it.
    Liquid(LiquidId),
    /// Dosed water.
    Water,
    /// Furnish from the blender.
    Furnish,
    /// Lumps rejected.
    Reject,
    /// Furnish behind the sifter.
    Sifted,
    /// Water lost on the way to the former.
    TransportVapour,
    /// Furnish into the former.
    Laid,
    /// Trimmed edges, leaving the mat and returning to the former.
    Trim,
    /// The mat.
    Mat,
    /// Water sprayed on the mat.
    SurfaceSpray,
    /// Water driven out in the press.
    PressVapour,
    /// Raw board from the press.
    RawBoard,
    /// Water that the board takes up until it has its moisture; it may also lose some.
    Conditioning,
    /// Raw board at its moisture.
    Conditioned,
    /// Sanded off.
    SanderDust,
    /// Sanded board.
    Sanded,
    /// Edges and crosscuts.
    Offcuts,
    /// Finished board.
    Board,
}

/// One stream.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stream {
    /// What it is.
    pub name: StreamName,
    /// Where it comes from.
    pub from: Node,
    /// Where it goes.
    pub to: Node,
    /// Solids.
    pub solids: MassRate,
    /// Water.
    pub water: MassRate,
}

/// Mass in and out of one machine.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Closure {
    /// The machine.
    pub node: Node,
    /// Solids in.
    pub solids_in: MassRate,
    /// Solids out.
    pub solids_out: MassRate,
    /// Water in.
    pub water_in: MassRate,
    /// Water out.
    pub water_out: MassRate,
}

impl Closure {
    /// What does not close, relative to all mass through the machine: solids, then water.
    #[must_use]
    pub fn relative_gap(&self) -> (Ratio, Ratio) {
        // A machine with nothing in and nothing out closes.
        let least = MassRate::new::<kilogram_per_second>(f64::MIN_POSITIVE);
        let through = (self.solids_in + self.water_in).abs().max(least);
        ((self.solids_in - self.solids_out).abs() / through, (self.water_in - self.water_out).abs() / through)
    }
}

/// The most streams a recipe has.
const MOST_STREAMS: usize = MOST_LIQUIDS + 20;

/// All streams.
pub type Streams = ArrayVec<Stream, MOST_STREAMS>;

/// The streams of a solved recipe, in the material's order.
#[must_use]
pub fn streams(case: &Case) -> Streams {
    let Case { input, solved } = case;
    let Solved { water, mat, line, losses, .. } = solved;
    let board = &input.board;
    let zero = MassRate::ZERO;
    let mut list = Streams::new();
    let mut put = |name, from, to, solids: MassRate, water: MassRate| {
        list.push(Stream { name, from, to, solids, water });
    };

    put(StreamName::Fibre, Node::Outside, Node::Blender, solved.fibre, solved.fibre * input.fibre_moisture.dry_basis());
    for flow in &solved.liquids {
        let to = if flow.on_faces { Node::Press } else { Node::Blender };
        put(StreamName::Liquid(flow.id), Node::Outside, to, flow.solids, flow.water + flow.thinning);
    }
    put(StreamName::Water, Node::Outside, Node::Blender, zero, water.dose);

    let furnish_moisture = water.blender_out.dry_basis();
    put(StreamName::Furnish, Node::Blender, Node::Sifter, solved.solids, solved.solids * furnish_moisture);
    put(StreamName::Reject, Node::Sifter, Node::Outside, losses.reject, losses.reject * furnish_moisture);
    put(StreamName::Sifted, Node::Sifter, Node::Way, line.net_solids, line.net_solids * furnish_moisture);
    put(StreamName::TransportVapour, Node::Way, Node::Outside, zero, losses.transport_vapour);

    let pressed_area = line.net_solids / mat.od;
    let mat_moisture = water.mat.dry_basis();
    put(StreamName::Laid, Node::Way, Node::Former, line.net_solids, line.net_solids * mat_moisture);
    if let Some(trim) = losses.trim {
        put(StreamName::Trim, Node::Former, Node::Former, trim, trim * mat_moisture);
    }
    put(StreamName::Mat, Node::Former, Node::Press, mat.od * pressed_area, mat.water * pressed_area);
    put(StreamName::SurfaceSpray, Node::Outside, Node::Press, zero, losses.surface_spray);
    put(StreamName::PressVapour, Node::Press, Node::Outside, zero, losses.press_vapour);

    let moist = |areal: ArealMassDensity, moisture: Ratio| {
        let solids = areal / board.moisture.wet_per_dry() * pressed_area;
        (solids, solids * moisture)
    };
    let exit = input.exit_moisture().dry_basis();
    let kept = board.moisture.dry_basis();
    let (solids, water) = moist(mat.raw_board, exit);
    put(StreamName::RawBoard, Node::Press, Node::Stack, solids, water);
    put(StreamName::Conditioning, Node::Outside, Node::Stack, zero, solids * (kept - exit));
    let (solids, water) = moist(mat.raw_board, kept);
    put(StreamName::Conditioned, Node::Stack, Node::Sander, solids, water);
    put(StreamName::SanderDust, Node::Sander, Node::Outside, losses.sander_dust, losses.sander_dust * kept);
    let (solids, water) = moist(board.density * board.thickness, kept);
    put(StreamName::Sanded, Node::Sander, Node::Saw, solids, water);
    put(StreamName::Offcuts, Node::Saw, Node::Outside, losses.offcuts, losses.offcuts * kept);
    let solids = line.finished_mass / board.moisture.wet_per_dry();
    put(StreamName::Board, Node::Saw, Node::Outside, solids, line.finished_mass - solids);
    list
}

/// Mass in and out of every machine.
#[must_use]
pub fn closures(streams: &[Stream]) -> ArrayVec<Closure, 8> {
    let sum = |ends: fn(&Stream) -> Node, node: Node, part: fn(&Stream) -> MassRate| -> MassRate {
        streams.iter().filter(|stream| ends(stream) == node).map(part).sum()
    };
    Node::MACHINES
        .iter()
        .map(|node| Closure {
            node: *node,
            solids_in: sum(|stream| stream.to, *node, |stream| stream.solids),
            solids_out: sum(|stream| stream.from, *node, |stream| stream.solids),
            water_in: sum(|stream| stream.to, *node, |stream| stream.water),
            water_out: sum(|stream| stream.from, *node, |stream| stream.water),
        })
        .collect()
}

/// The largest relative gap of all machines, solids and water.
#[must_use]
pub fn largest_gap(closures: &[Closure]) -> Ratio {
    closures
        .iter()
        .map(Closure::relative_gap)
        .fold(Ratio::ZERO, |largest, (solids, water)| largest.max(solids).max(water))
}
