//! The boxes of a board made: what was measured of the board, and of each test piece cut from it.

use crate::domain::recipe::draft::Entry;
use crate::domain::recipe::limit::Limit;
use crate::domain::recipe::limit::Source::{CommonPractice, Published};
use crate::quantity::{Kind, Unit};
use Unit as U;
use serde::{Deserialize, Serialize};

/// Declares one kind of test piece: its boxes, what each measures and may hold.
macro_rules! piece {
    ($(#[$doc:meta])* $draft:ident, $(#[$field_doc:meta])* $field:ident, $prefix:literal;
     $( $(#[$box_doc:meta])* $variant:ident $name:ident: $kind:ident, $unit:ident, $limit:expr; )*) => {
        $(#[$field_doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
        pub enum $field { $( $(#[$box_doc])* $variant, )* }

        impl $field {
            /// All of them, in the order of the page.
            pub const ALL: &'static [$field] = &[ $( $field::$variant, )* ];

            /// The stable key of the box.
            #[must_use]
            pub const fn key(self) -> &'static str {
                match self { $( Self::$variant => concat!($prefix, stringify!($name)), )* }
            }

            /// What the box measures.
            #[must_use]
            pub const fn kind(self) -> Kind {
                match self { $( Self::$variant => Kind::$kind, )* }
            }

            /// What the box may hold once anything of the piece was typed.
            #[must_use]
            pub const fn limit(self) -> Limit {
                match self { $( Self::$variant => $limit, )* }
            }
        }

        $(#[$doc])*
        #[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
        #[cfg_attr(test, derive(schemars::JsonSchema))]
        #[serde(default)]
        #[allow(missing_docs, reason = "each is the box of the same name")]
        pub struct $draft { $( pub $name: Entry, )* }

        impl Default for $draft {
            fn default() -> Self {
                Self { $( $name: Entry::empty(Unit::$unit), )* }
            }
        }

        impl $draft {
            /// The entry of a box.
            #[must_use]
            pub fn entry(&self, field: $field) -> &Entry {
                match field { $( $field::$variant => &self.$name, )* }
            }

            /// The entry of a box, to type into.
            pub fn entry_mut(&mut self, field: $field) -> &mut Entry {
                match field { $( $field::$variant => &mut self.$name, )* }
            }

            /// Whether nothing was typed.
            #[must_use]
            pub fn is_blank(&self) -> bool {
                $( self.$name.is_blank() && )* true
            }
        }
    };
}

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

piece! {
    /// A piece for density and moisture (EN 323, EN 322).
    PieceDraft,
    /// A box of a piece for density and moisture.
    PieceField, "piece_";
    /// Where in the board it was cut, from one edge; gives the profile.
    Position position: BenchExtent, Millimetre, Limit::from_to(U::Millimetre, 0.0, 10_000.0).optional();
    /// Mass as cut and conditioned.
    Mass mass: BenchMass, Gram, mass();
    /// Length.
    Length length: BenchExtent, Millimetre, side().usually(49.0, 51.0, Published("EN 323: 50 mm"));
    /// Width.
    Width width: BenchExtent, Millimetre, side().usually(49.0, 51.0, Published("EN 323: 50 mm"));
    /// Thickness.
    Thickness thickness: Thickness, Millimetre, thickness();
    /// Mass after drying at 103 °C to constant mass; blank when it was not dried.
    Dry dry: BenchMass, Gram, mass().optional();
}

piece! {
    /// A bending piece (EN 310).
    BendingDraft,
    /// A box of a bending piece.
    BendingField, "bending_";
    /// Span between the supports, usually 20 times the thickness.
    Span span: BenchExtent, Millimetre, side();
    /// Width.
    Width width: BenchExtent, Millimetre, side().usually(49.0, 51.0, Published("EN 310: 50 mm"));
    /// Thickness.
    Thickness thickness: Thickness, Millimetre, thickness();
    /// Maximum load.
    Load load: Force, Newton, load();
    /// Slope of load over deflection between 10 and 40 % of the maximum load; blank when not recorded.
    Slope slope: Slope, NewtonPerMillimetre, Limit::above_to(U::NewtonPerMillimetre, 0.0, 1_000_000.0).optional();
    /// Length of the piece; with its mass it gives its density.
    Length length: BenchExtent, Millimetre, side().optional();
    /// Mass of the piece; blank when it was not weighed.
    Mass mass: BenchMass, Gram, mass().optional();
}

piece! {
    /// A piece for internal bond (EN 319).
    BondDraft,
    /// A box of a piece for internal bond.
    BondField, "bond_";
    /// Length.
    Length length: BenchExtent, Millimetre, side().usually(49.0, 51.0, Published("EN 319: 50 mm"));
    /// Width.
    Width width: BenchExtent, Millimetre, side().usually(49.0, 51.0, Published("EN 319: 50 mm"));
    /// Maximum load.
    Load load: Force, Newton, load();
    /// Thickness of the piece; with its mass it gives its density.
    Thickness thickness: Thickness, Millimetre, thickness().optional();
    /// Mass of the piece; blank when it was not weighed.
    Mass mass: BenchMass, Gram, mass().optional();
}

piece! {
    /// A piece for thickness swelling (EN 317).
    SwellingDraft,
    /// A box of a piece for thickness swelling.
    SwellingField, "swelling_";
    /// Thickness before it lay in water.
    Before before: Thickness, Millimetre, thickness();
    /// Thickness after 24 hours in water.
    After after: Thickness, Millimetre, thickness();
    /// Thickness after 2 hours in water; blank when it was not measured.
    AfterTwo after_two: Thickness, Millimetre, thickness().optional();
    /// Mass before it lay in water; blank when it was not weighed.
    MassBefore mass_before: BenchMass, Gram, mass().optional();
    /// Mass after 24 hours in water; blank when it was not weighed.
    MassAfter mass_after: BenchMass, Gram, mass().optional();
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
            Self::Piece(at, field) => format!("{}.{at}", field.key()),
            Self::Bending(at, field) => format!("{}.{at}", field.key()),
            Self::Bond(at, field) => format!("{}.{at}", field.key()),
            Self::Swelling(at, field) => format!("{}.{at}", field.key()),
        }
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
