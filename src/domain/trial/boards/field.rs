//! The boxes of a board made: what was measured of the board, and of each test piece cut from it.

use crate::domain::form::form;
use crate::domain::recipe::limit::Limit;
use crate::domain::recipe::limit::Source::{CommonPractice, Published};
use crate::quantity::{Kind, Unit as U};

const fn side() -> Limit {
    Limit::above_to(U::Millimetre, 0.0, 10_000.0)
}

const fn thickness() -> Limit {
    Limit::above_to(U::Millimetre, 0.0, 300.0)
}

const fn mass() -> Limit {
    Limit::above_to(U::Gram, 0.0, 1_000_000.0)
}

const fn load() -> Limit {
    Limit::above_to(U::Newton, 0.0, 1_000_000.0)
}

/// A kind of test piece.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum BoardTest {
    /// For density and moisture (EN 323, EN 322).
    Density,
    /// In bending (EN 310).
    Bending,
    /// Internal bond (EN 319).
    Bond,
    /// Thickness swelling (EN 317).
    Swelling,
}

form! {
    /// A box of a piece for density and moisture.
    enum PieceField at BoardTest {
        /// Where in the board it was cut, from one edge; gives the profile.
        Position: position, BenchExtent, Millimetre, "", BoardTest::Density,
            Limit::from_to(U::Millimetre, 0.0, 10_000.0).optional();
        /// Mass as cut and conditioned.
        Mass: mass, BenchMass, Gram, "", BoardTest::Density, mass();
        /// Length.
        Length: length, BenchExtent, Millimetre, "", BoardTest::Density,
            side().usually(49.0, 51.0, Published("EN 323: 50 mm"));
        /// Width.
        Width: width, BenchExtent, Millimetre, "", BoardTest::Density,
            side().usually(49.0, 51.0, Published("EN 323: 50 mm"));
        /// Thickness.
        Thickness: thickness, Thickness, Millimetre, "", BoardTest::Density, thickness();
        /// Mass after drying at 103 °C to constant mass; blank when it was not dried.
        Dry: dry, BenchMass, Gram, "", BoardTest::Density, mass().optional();
    }

    /// A piece for density and moisture (EN 323, EN 322).
    struct PieceDraft;
}

form! {
    /// A box of a bending piece.
    enum BendingField at BoardTest {
        /// Span between the supports, usually 20 times the thickness.
        Span: span, BenchExtent, Millimetre, "", BoardTest::Bending, side();
        /// Width.
        Width: width, BenchExtent, Millimetre, "", BoardTest::Bending,
            side().usually(49.0, 51.0, Published("EN 310: 50 mm"));
        /// Thickness.
        Thickness: thickness, Thickness, Millimetre, "", BoardTest::Bending, thickness();
        /// Maximum load.
        Load: load, Force, Newton, "", BoardTest::Bending, load();
        /// Slope of load over deflection between 10 and 40 % of the maximum load; blank when not recorded.
        Slope: slope, Slope, NewtonPerMillimetre, "", BoardTest::Bending,
            Limit::above_to(U::NewtonPerMillimetre, 0.0, 1_000_000.0).optional();
        /// Length of the piece; with its mass it gives its density.
        Length: length, BenchExtent, Millimetre, "", BoardTest::Bending, side().optional();
        /// Mass of the piece; blank when it was not weighed.
        Mass: mass, BenchMass, Gram, "", BoardTest::Bending, mass().optional();
    }

    /// A bending piece (EN 310).
    struct BendingDraft;
}

form! {
    /// A box of a piece for internal bond.
    enum BondField at BoardTest {
        /// Length.
        Length: length, BenchExtent, Millimetre, "", BoardTest::Bond,
            side().usually(49.0, 51.0, Published("EN 319: 50 mm"));
        /// Width.
        Width: width, BenchExtent, Millimetre, "", BoardTest::Bond, side().usually(49.0, 51.0, Published("EN 319: 50 mm"));
        /// Maximum load.
        Load: load, Force, Newton, "", BoardTest::Bond, load();
        /// Thickness of the piece; with its mass it gives its density.
        Thickness: thickness, Thickness, Millimetre, "", BoardTest::Bond, thickness().optional();
        /// Mass of the piece; blank when it was not weighed.
        Mass: mass, BenchMass, Gram, "", BoardTest::Bond, mass().optional();
    }

    /// A piece for internal bond (EN 319).
    struct BondDraft;
}

form! {
    /// A box of a piece for thickness swelling.
    enum SwellingField at BoardTest {
        /// Thickness before it lay in water.
        Before: before, Thickness, Millimetre, "", BoardTest::Swelling, thickness();
        /// Thickness after 24 hours in water.
        After: after, Thickness, Millimetre, "", BoardTest::Swelling, thickness();
        /// Thickness after 2 hours in water; blank when it was not measured.
        AfterTwo: after_two, Thickness, Millimetre, "", BoardTest::Swelling, thickness().optional();
        /// Mass before it lay in water; blank when it was not weighed.
        MassBefore: mass_before, BenchMass, Gram, "", BoardTest::Swelling, mass().optional();
        /// Mass after 24 hours in water; blank when it was not weighed.
        MassAfter: mass_after, BenchMass, Gram, "", BoardTest::Swelling, mass().optional();
    }

    /// A piece for thickness swelling (EN 317).
    struct SwellingDraft;
}

impl BoardTest {
    /// All of them, in the order of the page.
    pub const ALL: &'static [BoardTest] = &[Self::Density, Self::Bending, Self::Bond, Self::Swelling];

    /// The boxes of one piece, by its place from 0.
    #[must_use]
    pub fn fields(self, at: u8) -> Vec<BoardField> {
        match self {
            Self::Density => PieceField::ALL.iter().map(|field| BoardField::Piece(at, *field)).collect(),
            Self::Bending => BendingField::ALL.iter().map(|field| BoardField::Bending(at, *field)).collect(),
            Self::Bond => BondField::ALL.iter().map(|field| BoardField::Bond(at, *field)).collect(),
            Self::Swelling => SwellingField::ALL.iter().map(|field| BoardField::Swelling(at, *field)).collect(),
        }
    }
}

/// A box of a board made. Pieces and thickness points are named by their place, from 0.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum BoardField {
    /// Furnish really laid for the mat.
    Laid,
    /// Mass of the whole board.
    Mass,
    /// Length of the whole board.
    Length,
    /// Width of the whole board.
    Width,
    /// Thickness of the whole board at one point.
    Thickness(u8),
    /// Moisture of the board, where no piece was dried.
    Moisture,
    /// Of a piece for density and moisture.
    Piece(u8, PieceField),
    /// Of a bending piece.
    Bending(u8, BendingField),
    /// Of a piece for internal bond.
    Bond(u8, BondField),
    /// Of a piece for thickness swelling.
    Swelling(u8, SwellingField),
}

impl BoardField {
    /// The stable key of the box, as `data-field` on the page.
    #[must_use]
    pub fn key(self) -> String {
        match self {
            Self::Laid => "board_laid".to_owned(),
            Self::Mass => "board_mass".to_owned(),
            Self::Length => "board_length".to_owned(),
            Self::Width => "board_width".to_owned(),
            Self::Thickness(point) => format!("board_thickness.{point}"),
            Self::Moisture => "board_moisture".to_owned(),
            Self::Piece(at, field) => format!("piece_{}.{at}", field.key()),
            Self::Bending(at, field) => format!("bending_{}.{at}", field.key()),
            Self::Bond(at, field) => format!("bond_{}.{at}", field.key()),
            Self::Swelling(at, field) => format!("swelling_{}.{at}", field.key()),
        }
    }

    /// The place of its piece or point, from 0; `None` for a box of the whole board.
    #[must_use]
    pub const fn piece(self) -> Option<u8> {
        match self {
            Self::Laid | Self::Mass | Self::Length | Self::Width | Self::Moisture => None,
            Self::Thickness(at)
            | Self::Piece(at, _)
            | Self::Bending(at, _)
            | Self::Bond(at, _)
            | Self::Swelling(at, _) => Some(at),
        }
    }

    /// The test that its piece is for; `None` for a box of the whole board.
    #[must_use]
    pub const fn test(self) -> Option<BoardTest> {
        match self {
            Self::Piece(..) => Some(BoardTest::Density),
            Self::Bending(..) => Some(BoardTest::Bending),
            Self::Bond(..) => Some(BoardTest::Bond),
            Self::Swelling(..) => Some(BoardTest::Swelling),
            Self::Laid | Self::Mass | Self::Length | Self::Width | Self::Thickness(_) | Self::Moisture => None,
        }
    }

    /// Whether pieces cut alike share it, so that it is carried down to the pieces below.
    #[must_use]
    pub const fn is_carried_down(self) -> bool {
        matches!(
            self,
            Self::Piece(_, PieceField::Length | PieceField::Width)
                | Self::Bending(_, BendingField::Span | BendingField::Width | BendingField::Length)
                | Self::Bond(_, BondField::Length | BondField::Width)
        )
    }

    /// The same box of the piece at another place.
    const fn at(self, at: u8) -> Self {
        match self {
            Self::Thickness(_) => Self::Thickness(at),
            Self::Piece(_, field) => Self::Piece(at, field),
            Self::Bending(_, field) => Self::Bending(at, field),
            Self::Bond(_, field) => Self::Bond(at, field),
            Self::Swelling(_, field) => Self::Swelling(at, field),
            whole => whole,
        }
    }

    /// The same box of the piece above; `None` for the first one, and for a box of the whole board.
    #[must_use]
    pub fn above(self) -> Option<Self> {
        Some(self.at(self.piece()?.checked_sub(1)?))
    }

    /// The same box of the piece below; `None` for a box of the whole board.
    #[must_use]
    pub fn below(self) -> Option<Self> {
        Some(self.at(self.piece()?.checked_add(1)?))
    }

    /// Whether it is seldom read: its column is shown on demand.
    #[must_use]
    pub const fn is_seldom(self) -> bool {
        matches!(
            self,
            Self::Bending(_, BendingField::Length | BendingField::Mass)
                | Self::Bond(_, BondField::Thickness | BondField::Mass)
                | Self::Swelling(_, SwellingField::AfterTwo | SwellingField::MassBefore | SwellingField::MassAfter)
        )
    }

    /// What the box measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::Laid | Self::Mass => Kind::BenchMass,
            Self::Length | Self::Width => Kind::BenchExtent,
            Self::Thickness(_) => Kind::Thickness,
            Self::Moisture => Kind::Moisture,
            Self::Piece(_, field) => field.kind(),
            Self::Bending(_, field) => field.kind(),
            Self::Bond(_, field) => field.kind(),
            Self::Swelling(_, field) => field.kind(),
        }
    }

    /// What the box may hold.
    #[must_use]
    pub const fn limit(self) -> Limit {
        match self {
            Self::Laid => mass().optional(),
            Self::Mass => mass(),
            Self::Length | Self::Width => side().usually(100.0, 1_200.0, CommonPractice),
            Self::Thickness(_) => thickness().usually(2.0, 40.0, CommonPractice).optional(),
            Self::Moisture => Limit::from_to(U::PercentDryBasis, 0.0, 50.0)
                .usually(4.0, 11.0, crate::domain::recipe::limit::Source::FromMemory)
                .optional(),
            Self::Piece(_, field) => field.limit(),
            Self::Bending(_, field) => field.limit(),
            Self::Bond(_, field) => field.limit(),
            Self::Swelling(_, field) => field.limit(),
        }
    }
}
