//! The columns of the grids: their short heads, and the names by which Enter and a pasted column go down.

use crate::domain::trial::boards::field::{BendingField, BoardField, BoardTest, BondField, PieceField, SwellingField};
use crate::domain::trial::boards::working::BoardFigure;
use crate::t;

/// The head of a column of boxes.
pub fn head(field: BoardField) -> String {
    match field {
        BoardField::Laid => t!("trial-laid"),
        BoardField::Mass
        | BoardField::Piece(_, PieceField::Mass)
        | BoardField::Bending(_, BendingField::Mass)
        | BoardField::Bond(_, BondField::Mass) => t!("trial-mass"),
        BoardField::Length | BoardField::Piece(_, PieceField::Length) | BoardField::Bond(_, BondField::Length) => {
            t!("trial-length")
        }
        BoardField::Bending(_, BendingField::Length) => t!("trial-piece-length"),
        BoardField::Width
        | BoardField::Piece(_, PieceField::Width)
        | BoardField::Bending(_, BendingField::Width)
        | BoardField::Bond(_, BondField::Width) => t!("trial-width"),
        BoardField::Thickness(_)
        | BoardField::Piece(_, PieceField::Thickness)
        | BoardField::Bending(_, BendingField::Thickness)
        | BoardField::Bond(_, BondField::Thickness) => t!("trial-thickness"),
        BoardField::Moisture => t!("trial-moisture"),
        BoardField::Piece(_, PieceField::Position) => t!("trial-position"),
        BoardField::Piece(_, PieceField::Dry) => t!("trial-oven-dry"),
        BoardField::Bending(_, BendingField::Span) => t!("trial-span"),
        BoardField::Bending(_, BendingField::Load) | BoardField::Bond(_, BondField::Load) => t!("trial-load"),
        BoardField::Bending(_, BendingField::Slope) => t!("trial-slope"),
        BoardField::Swelling(_, SwellingField::Before) => t!("trial-before"),
        BoardField::Swelling(_, SwellingField::After) => t!("trial-after"),
        BoardField::Swelling(_, SwellingField::AfterTwo) => t!("trial-after-two"),
        BoardField::Swelling(_, SwellingField::MassBefore) => t!("trial-mass-before"),
        BoardField::Swelling(_, SwellingField::MassAfter) => t!("trial-mass-after"),
    }
}

/// The name of the column that a box is in.
pub const fn column(field: BoardField) -> &'static str {
    match field {
        BoardField::Laid => "board-laid",
        BoardField::Mass => "board-mass",
        BoardField::Length => "board-length",
        BoardField::Width => "board-width",
        BoardField::Thickness(0) => "board-thickness-1",
        BoardField::Thickness(1) => "board-thickness-2",
        BoardField::Thickness(2) => "board-thickness-3",
        BoardField::Thickness(3) => "board-thickness-4",
        BoardField::Thickness(_) => "board-thickness-more",
        BoardField::Moisture => "board-moisture",
        BoardField::Piece(_, field) => match field {
            PieceField::Position => "piece-position",
            PieceField::Mass => "piece-mass",
            PieceField::Length => "piece-length",
            PieceField::Width => "piece-width",
            PieceField::Thickness => "piece-thickness",
            PieceField::Dry => "piece-dry",
        },
        BoardField::Bending(_, field) => match field {
            BendingField::Span => "bending-span",
            BendingField::Width => "bending-width",
            BendingField::Thickness => "bending-thickness",
            BendingField::Load => "bending-load",
            BendingField::Slope => "bending-slope",
            BendingField::Length => "bending-length",
            BendingField::Mass => "bending-mass",
        },
        BoardField::Bond(_, field) => match field {
            BondField::Length => "bond-length",
            BondField::Width => "bond-width",
            BondField::Load => "bond-load",
            BondField::Thickness => "bond-thickness",
            BondField::Mass => "bond-mass",
        },
        BoardField::Swelling(_, field) => match field {
            SwellingField::Before => "swelling-before",
            SwellingField::After => "swelling-after",
            SwellingField::AfterTwo => "swelling-after-two",
            SwellingField::MassBefore => "swelling-mass-before",
            SwellingField::MassAfter => "swelling-mass-after",
        },
    }
}

/// The figures of a piece; each takes its place, from 0.
pub const fn piece_figures(test: BoardTest) -> &'static [fn(u8) -> BoardFigure] {
    match test {
        BoardTest::Density => &[BoardFigure::Density, BoardFigure::Moisture, BoardFigure::OvenDryDensity],
        BoardTest::Bending => &[BoardFigure::BendingStrength, BoardFigure::BendingModulus],
        BoardTest::Bond => &[BoardFigure::InternalBond],
        BoardTest::Swelling => &[BoardFigure::Swelling],
    }
}

/// The head of a column of figures.
pub fn figure_head(figure: BoardFigure) -> String {
    match figure {
        BoardFigure::Moisture(_) => t!("trial-moisture"),
        BoardFigure::OvenDryDensity(_) => t!("trial-density-oven-dry"),
        BoardFigure::BendingStrength(_) => t!("trial-strength"),
        BoardFigure::BendingModulus(_) => t!("trial-modulus"),
        BoardFigure::InternalBond(_) => t!("trial-internal-bond"),
        BoardFigure::Swelling(_) => t!("trial-swelling"),
        _ => t!("trial-density"),
    }
}

/// A test and its standard.
pub fn test_name(test: BoardTest) -> (String, &'static str) {
    match test {
        BoardTest::Density => (t!("trial-density-pieces"), "EN 323, EN 322"),
        BoardTest::Bending => (t!("trial-bending"), "EN 310"),
        BoardTest::Bond => (t!("trial-internal-bond"), "EN 319"),
        BoardTest::Swelling => (t!("trial-swelling-day"), "EN 317"),
    }
}
