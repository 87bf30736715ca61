//! How each figure of a board made was computed: the standards' formulas with the readings put in.

use crate::domain::trial::boards::density::DensityTarget;
use crate::domain::trial::boards::field::{BendingField, BoardField, BondField, PieceField, SwellingField};
use crate::domain::trial::boards::measured::MeasuredBoard;
use crate::domain::trial::boards::property::Property;
use crate::domain::working::symbol::symbol;
use crate::domain::working::{Expr, Given, Ground, Symbol, Working};
use crate::quantity::{Amount, Kind};
use crate::statistics::distribution::{CONFIDENCE, one_sided_t, two_sided_t};
use crate::statistics::sample::SampleSummary;

/// A figure of one board, or of all.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum BoardFigure {
    /// Density of the whole board.
    WholeDensity,
    /// Density of a piece.
    Density(u8),
    /// Moisture of a piece.
    Moisture(u8),
    /// Oven-dry density of a piece that was dried.
    OvenDryDensity(u8),
    /// Bending strength of a piece.
    BendingStrength(u8),
    /// Modulus of elasticity of a piece.
    BendingModulus(u8),
    /// Internal bond of a piece.
    InternalBond(u8),
    /// Thickness swelling of a piece.
    Swelling(u8),
    /// Half the width of the 95 % interval of a property's mean.
    HalfWidth(Property),
    /// Lower 5 % quantile of a property.
    Lower(Property),
    /// Upper 5 % quantile of a property.
    Upper(Property),
    /// By how much the next mat is to be multiplied.
    Correction,
}

impl BoardFigure {
    /// What the figure measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::WholeDensity | Self::Density(_) | Self::OvenDryDensity(_) => Kind::BoardDensity,
            Self::Moisture(_) => Kind::Moisture,
            Self::BendingStrength(_) | Self::BendingModulus(_) | Self::InternalBond(_) => Kind::Strength,
            Self::Swelling(_) => Kind::Share,
            Self::HalfWidth(property) | Self::Lower(property) | Self::Upper(property) => property.kind(),
            Self::Correction => Kind::Ratio,
        }
    }
}

/// Where a number put in comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum BoardOrigin {
    /// A reading.
    Field(BoardField),
    /// Another figure.
    Figure(BoardFigure),
    /// Mean of the boards.
    Mean,
    /// Standard deviation between boards.
    Deviation,
    /// Quantile of Student's distribution.
    Student,
    /// Square root of the number of boards.
    RootOfCount,
    /// target density.
    Target,
    /// Density made.
    Made,
    /// Target thickness.
    TargetThickness,
    /// Thickness made.
    MadeThickness,
}

/// How a figure of a board was computed.
pub type BoardWorking = Working<BoardFigure, BoardOrigin>;

const QUANTILE: Ground = Ground::Published("EN 326-1, unverified");
const INTERVAL: Ground = Ground::Published("Student's distribution, 95 %");

#[derive(Default)]
struct Pad {
    givens: Vec<Given<BoardOrigin>>,
}

impl Pad {
    fn put(&mut self, origin: BoardOrigin, symbol: Symbol, kind: Kind, base: f64) -> Expr {
        let at = self.givens.iter().position(|given| given.origin == origin).unwrap_or_else(|| {
            self.givens.push(Given { origin, symbol, amount: Amount::from_base(kind, base) });
            self.givens.len() - 1
        });
        Expr::Given(at)
    }

    fn read(&mut self, field: BoardField, letter: &'static str, index: &'static str, base: f64) -> Expr {
        self.put(BoardOrigin::Field(field), symbol(letter, index), field.kind(), base)
    }

    fn done(self, figure: BoardFigure, letter: Symbol, formula: Expr, base: f64, ground: Ground) -> BoardWorking {
        let result = Amount::from_base(figure.kind(), base);
        Working { figure, symbol: letter, givens: self.givens, formula, result, ground }
    }
}

/// How a figure of one board was computed; `None` where the board does not give it.
#[must_use]
pub fn board_working(figure: BoardFigure, board: &MeasuredBoard) -> Option<BoardWorking> {
    let mut pad = Pad::default();
    let (letter, formula, base, standard) = match figure {
        BoardFigure::WholeDensity => {
            let whole = board.whole.as_ref()?;
            let mass = pad.read(BoardField::Mass, "m", "", whole.mass.value);
            let length = pad.read(BoardField::Length, "l", "", whole.length.value);
            let width = pad.read(BoardField::Width, "b", "", whole.width.value);
            let count = whole.thickness.len() as f64;
            let points = (0..=u8::MAX).zip(&whole.thickness).map(|(at, thickness)| {
                let symbol = symbol("t", "").of_liquid(usize::from(at) + 1);
                pad.put(BoardOrigin::Field(BoardField::Thickness(at)), symbol, Kind::Thickness, thickness.value)
            });
            let mean = Expr::sum(points.collect::<Vec<_>>()) / Expr::Number(count);
            (symbol("ρ", "whole"), mass / (length * width * mean), whole.density().value, "EN 323")
        }
        BoardFigure::Density(at) => {
            let (_, piece) = board.pieces.iter().find(|(own, _)| *own == at)?;
            let field = |part| BoardField::Piece(at, part);
            let mass = pad.read(field(PieceField::Mass), "m", "", piece.mass.value);
            let length = pad.read(field(PieceField::Length), "l", "", piece.length.value);
            let width = pad.read(field(PieceField::Width), "b", "", piece.width.value);
            let thickness = pad.read(field(PieceField::Thickness), "t", "", piece.thickness.value);
            (symbol("ρ", ""), mass / (length * width * thickness), piece.density().value, "EN 323")
        }
        BoardFigure::Moisture(at) => {
            let (_, piece) = board.pieces.iter().find(|(own, _)| *own == at)?;
            let field = |part| BoardField::Piece(at, part);
            let moist = pad.read(field(PieceField::Mass), "m", "", piece.mass.value);
            let dry = pad.read(field(PieceField::Dry), "m", "0", piece.dry?.value);
            (symbol("ω", ""), (moist - dry.clone()) / dry, piece.moisture()?.value, "EN 322")
        }
        BoardFigure::OvenDryDensity(at) => {
            let (_, piece) = board.pieces.iter().find(|(own, _)| *own == at)?;
            let (density, moisture) = (piece.density().value, piece.moisture()?.value);
            let of = |figure| BoardOrigin::Figure(figure);
            let moist = pad.put(of(BoardFigure::Density(at)), symbol("ρ", ""), Kind::BoardDensity, density);
            let water = pad.put(of(BoardFigure::Moisture(at)), symbol("ω", ""), Kind::Moisture, moisture);
            (symbol("ρ", "0"), moist / (Expr::ONE + water), density / (1.0 + moisture), "EN 322; EN 323")
        }
        BoardFigure::BendingStrength(at) => {
            let (_, piece) = board.bending.iter().find(|(own, _)| *own == at)?;
            let field = |part| BoardField::Bending(at, part);
            let load = pad.read(field(BendingField::Load), "F", "max", piece.load.value);
            let span = pad.read(field(BendingField::Span), "l", "", piece.span.value);
            let width = pad.read(field(BendingField::Width), "b", "", piece.width.value);
            let thickness = pad.read(field(BendingField::Thickness), "t", "", piece.thickness.value);
            let below = Expr::Number(2.0) * width * thickness.clone() * thickness;
            (symbol("f", "m"), Expr::Number(3.0) * load * span / below, piece.strength().value, "EN 310")
        }
        BoardFigure::BendingModulus(at) => {
            let (_, piece) = board.bending.iter().find(|(own, _)| *own == at)?;
            let field = |part| BoardField::Bending(at, part);
            let slope = pad.read(field(BendingField::Slope), "ΔF/Δa", "", piece.slope?.value);
            let span = pad.read(field(BendingField::Span), "l", "", piece.span.value);
            let width = pad.read(field(BendingField::Width), "b", "", piece.width.value);
            let thickness = pad.read(field(BendingField::Thickness), "t", "", piece.thickness.value);
            let above = span.clone() * span.clone() * span * slope;
            let below = Expr::Number(4.0) * width * thickness.clone() * thickness.clone() * thickness;
            (symbol("E", "m"), above / below, piece.modulus()?.value, "EN 310")
        }
        BoardFigure::InternalBond(at) => {
            let (_, piece) = board.bond.iter().find(|(own, _)| *own == at)?;
            let field = |part| BoardField::Bond(at, part);
            let load = pad.read(field(BondField::Load), "F", "max", piece.load.value);
            let length = pad.read(field(BondField::Length), "l", "", piece.length.value);
            let width = pad.read(field(BondField::Width), "b", "", piece.width.value);
            (symbol("f", "t"), load / (length * width), piece.strength().value, "EN 319")
        }
        BoardFigure::Swelling(at) => {
            let (_, piece) = board.swelling.iter().find(|(own, _)| *own == at)?;
            let field = |part| BoardField::Swelling(at, part);
            let after = pad.read(field(SwellingField::After), "t", "2", piece.after.value);
            let before = pad.read(field(SwellingField::Before), "t", "1", piece.before.value);
            (symbol("G", "t"), (after - before.clone()) / before, piece.swelling().value, "EN 317")
        }
        BoardFigure::HalfWidth(_) | BoardFigure::Lower(_) | BoardFigure::Upper(_) | BoardFigure::Correction => {
            return None;
        }
    };
    Some(pad.done(figure, letter, formula, base, Ground::Published(standard)))
}

/// How a figure over all boards was computed; `None` with too few of them, and for figures of one board.
#[must_use]
pub fn summary_working(figure: BoardFigure, summary: &SampleSummary) -> Option<BoardWorking> {
    let mut pad = Pad::default();
    let kind = figure.kind();
    let freedom = summary.count.checked_sub(1)? as f64;
    let deviation = pad.put(BoardOrigin::Deviation, symbol("s", ""), kind, summary.deviation?);
    let student = |pad: &mut Pad, t: f64| pad.put(BoardOrigin::Student, symbol("t", ""), Kind::Ratio, t);
    let (letter, formula, base, ground) = match figure {
        BoardFigure::HalfWidth(_) => {
            let t = student(&mut pad, two_sided_t(CONFIDENCE, freedom)?);
            let root = pad.put(BoardOrigin::RootOfCount, symbol("√n", ""), Kind::Ratio, (summary.count as f64).sqrt());
            (symbol("u", ""), t * deviation / root, summary.half_width?, INTERVAL)
        }
        BoardFigure::Lower(_) | BoardFigure::Upper(_) => {
            let t = student(&mut pad, one_sided_t(CONFIDENCE, freedom)?);
            let mean = pad.put(BoardOrigin::Mean, symbol("x̄", ""), kind, summary.mean);
            match figure {
                BoardFigure::Lower(_) => (symbol("L", "5 %"), mean - t * deviation, summary.lower?, QUANTILE),
                _ => (symbol("U", "5 %"), mean + t * deviation, summary.upper?, QUANTILE),
            }
        }
        _ => return None,
    };
    Some(pad.done(figure, letter, formula, base, ground))
}

/// How the correction of the next mat was computed.
#[must_use]
pub fn correction_working(target: &DensityTarget) -> BoardWorking {
    let mut pad = Pad::default();
    let aim = pad.put(BoardOrigin::Target, symbol("ρ", "b"), Kind::BoardDensity, target.target);
    let made = pad.put(BoardOrigin::Made, symbol("ρ", "made"), Kind::BoardDensity, target.made);
    let aim_thickness =
        pad.put(BoardOrigin::TargetThickness, symbol("t", "b"), Kind::Thickness, target.target_thickness.value);
    let thickness = pad.put(BoardOrigin::MadeThickness, symbol("t", "made"), Kind::Thickness, target.thickness.value);
    let letter = symbol("k", "next");
    let formula = aim * aim_thickness / (made * thickness);
    pad.done(BoardFigure::Correction, letter, formula, target.correction.value, Ground::Definition)
}
