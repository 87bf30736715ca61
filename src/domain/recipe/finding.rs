//! What there is to say about a recipe: data, without a word of any language.

use crate::domain::balance::machine::Machine;
use crate::domain::balance::station::Station;
use crate::domain::recipe::field::Field;
use crate::domain::recipe::limit::{Limit, Window};
use crate::domain::recipe::liquid::LiquidId;
use crate::quantity::Amount;
use crate::quantity::number::ReadError;

/// How grave a finding is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Grade {
    /// Cannot be computed.
    Stop,
    /// Computed, but outside what is usual or safe.
    Unusual,
    /// Worth knowing.
    Note,
}

/// Where a finding belongs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Place {
    /// A field.
    Field(Field),
    /// A liquid as a whole.
    Liquid(LiquidId),
    /// A station of the line.
    Station(Station),
}

/// What was found.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum What {
    /// A number is still to be filled in.
    Missing,
    /// The text is not a number.
    Unreadable(ReadError),
    /// Outside what physics allows.
    NotAllowed {
        /// What was read.
        value: Amount,
        /// What is allowed.
        limit: Limit,
        /// What may have been meant, such as 0.65 for a fraction typed as 65.
        meant: Option<Amount>,
    },
    /// A percentage so low that a fraction may have been typed.
    LikelyFraction {
        /// What was read.
        value: Amount,
        /// What may have been meant.
        meant: Amount,
    },
    /// Outside what is usual.
    NotUsual {
        /// What was read or solved.
        value: Amount,
        /// What is usual.
        window: Window,
        /// The unit of the window's numbers.
        unit: crate::quantity::Unit,
    },
    /// Spray solids are above the solids as delivered: water cannot thicken a liquid.
    SprayThicker,
    /// A liquid is dosed on itself, perhaps by way of others.
    BaseLoop,
    /// A liquid is dosed on one that is not in the recipe.
    BaseMissing,
    /// A liquid is dosed on one that is sprayed on the faces of the mat.
    BaseOnFaces,
    /// A flow is entered, and the recipe has no fibre flow that it could be for.
    NeedsFibreFlow,
    /// More liquids than a recipe holds.
    TooManyLiquids {
        /// How many it holds.
        most: usize,
    },
    /// The spread width is smaller than the mat width that is cut from it.
    SpreadNarrower,
    /// This field is needed by the way in which the fibre flow is fixed.
    NeededForFeed,
    /// The doses per volume of board, or those on the faces, would fill the board.
    DosesFillBoard {
        /// Their share of the board's oven-dry mass.
        share: Amount,
    },
    /// The furnish would lose more water on its way than it holds.
    DriesBelowZero {
        /// Furnish moisture as it leaves the blender.
        blender_out: Amount,
    },
    /// Figures left the range of numbers.
    OutOfRange,
    /// The furnish holds more water than the mat moisture wanted needs.
    TooWet {
        /// Water in excess: a mass flow, or without a fibre flow a dose on oven-dry fibre.
        excess: Amount,
        /// Mat moisture that comes out.
        mat: Amount,
        /// The fibre moisture at which the water dose would be zero; `None` where no fibre is dry
        /// enough.
        way_out: Option<Amount>,
    },
    /// A machine would have to do more than it can.
    OverLimit {
        /// The machine.
        machine: Machine,
        /// Share of its limit in use.
        used: Amount,
        /// Oven-dry fibre flow that it still serves.
        fibre_at_limit: Amount,
    },
    /// The board would leave the press moister than the mat went in.
    PressAddsWater,
    /// The former would lay a mat thinner than the pressed board.
    MatThinnerThanBoard,
    /// A formaldehyde resin without a hardener.
    NoHardener,
    /// A hardener that is not dosed on the solids of a binder.
    HardenerNotOnBinder,
    /// No binder among the liquids.
    NoBinder,
    /// Two liquids of one name.
    SameName,
}

/// One finding.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Finding {
    /// How grave.
    pub grade: Grade,
    /// Where.
    pub place: Place,
    /// What.
    pub what: What,
}

impl Finding {
    /// Something that cannot be computed, at a field.
    #[must_use]
    pub const fn stop(field: Field, what: What) -> Self {
        Self { grade: Grade::Stop, place: Place::Field(field), what }
    }

    /// What puts the gravest first: its grade, and within one grade what comes of the inputs before the inputs themselves.
    #[must_use]
    pub const fn weight(&self) -> (Grade, bool) {
        (self.grade, matches!(self.place, Place::Field(_)))
    }

    /// The station whose place on the strip the finding is pinned to.
    #[must_use]
    pub const fn station(&self) -> Station {
        match self.place {
            Place::Field(field) => field.station(),
            Place::Liquid(_) => Station::Blender,
            Place::Station(station) => station,
        }
    }
}
