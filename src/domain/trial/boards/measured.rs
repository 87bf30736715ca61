//! From the boards as entered to boards ready to compute with.

use crate::domain::recipe::check::{read_entry, unusual};
use crate::domain::trial::boards::board::{BoardDraft, BoardId, MAX_PIECES};
use crate::domain::trial::boards::field::{BendingField, BoardField, BoardTest, BondField, PieceField, SwellingField};
use crate::domain::trial::boards::piece::{Bending, Bond, Piece, Swelling, Whole};
use crate::domain::trial::boards::property::Property;
use crate::domain::trial::finding::{TrialFinding, TrialPlace, TrialProblem};
use crate::quantity::{Amount, Kind, Moisture};
use uom::si::f64::{Force, Length, Mass, MassDensity};

/// A board made, measured.
#[derive(Debug, Clone, PartialEq)]
pub struct MeasuredBoard {
    /// Its number within the trial.
    pub id: BoardId,
    /// The run that it comes from.
    pub run: Option<u16>,
    /// Whether it was sanded before it was measured.
    pub sanded: bool,
    /// Furnish really laid for its mat, with its moisture.
    pub laid: Option<Mass>,
    /// Whether a density is so far off that it is asked about first and not compared with the target.
    pub doubtful: bool,
    /// The whole board.
    pub whole: Option<Whole>,
    /// Moisture typed for the board.
    pub moisture: Option<Moisture>,
    /// Pieces for density and moisture, with their places among the entries.
    pub pieces: Vec<(u8, Piece)>,
    /// Bending pieces.
    pub bending: Vec<(u8, Bending)>,
    /// Pieces for internal bond.
    pub bond: Vec<(u8, Bond)>,
    /// Pieces for thickness swelling.
    pub swelling: Vec<(u8, Swelling)>,
}

/// A board with what there is to say about it.
#[derive(Debug, Clone, PartialEq)]
pub struct Measured {
    /// The board, as far as it could be read: what is wrong is left out of it.
    pub board: MeasuredBoard,
    /// What there is to say.
    pub findings: Vec<TrialFinding>,
}

/// Densities in kg/m³ that a board of fibre or particles can have. Common practice, no source.
const LIKELY_DENSITY: (f64, f64) = (100.0, 1_500.0);
/// Bending strengths in Pa that boards have. Common practice, no source.
const BENDING_STRENGTH: (f64, f64) = (1e6, 150e6);
/// Internal bonds in Pa that boards have. Common practice, no source.
const BOND_STRENGTH: (f64, f64) = (0.02e6, 5e6);
/// A span of fewer thicknesses is no bending test.
const SHORTEST_SPAN: f64 = 4.0;
/// A piece's thickness is not the nominal one, so that its span is off by a few per cent. Common practice, no source.
const SPAN_TOLERANCE: f64 = 0.05;

/// Reads a board. A piece with nothing typed, or with nothing but what was carried down to it, is passed over; one that is half typed is asked about and
/// left out.
#[must_use]
pub fn measure(draft: &BoardDraft) -> Measured {
    let mut reader = Reader { draft, findings: Vec::new() };
    let board = reader.board();
    Measured { board, findings: reader.findings }
}

struct Reader<'a> {
    draft: &'a BoardDraft,
    findings: Vec<TrialFinding>,
}

impl Reader<'_> {
    fn number(&mut self, field: BoardField) -> Option<f64> {
        let (kind, limit) = (field.kind(), field.limit());
        let place = TrialPlace::Board(self.draft.id, field);
        match read_entry(self.draft.entry(field)?, kind, &limit) {
            Ok(None) => None,
            Ok(Some(base)) => {
                if let Some(what) = unusual(Amount::from_base(kind, base), &limit) {
                    self.findings.push(TrialFinding::unusual(place, TrialProblem::Entry(what)));
                }
                Some(base)
            }
            Err(what) => {
                self.findings.push(TrialFinding::stop(place, TrialProblem::Entry(what)));
                None
            }
        }
    }

    fn length(&mut self, field: BoardField) -> Option<Length> {
        self.number(field).map(|length| si!(Length, length))
    }

    fn mass(&mut self, field: BoardField) -> Option<Mass> {
        self.number(field).map(|mass| si!(Mass, mass))
    }

    fn force(&mut self, field: BoardField) -> Option<Force> {
        self.number(field).map(|load| si!(Force, load))
    }

    fn board(&mut self) -> MeasuredBoard {
        let draft = self.draft;
        let laid = self.mass(BoardField::Laid);
        let whole = draft.is_measured().then(|| self.whole()).flatten();
        let moisture = self.number(BoardField::Moisture).and_then(Moisture::from_dry_basis);
        let places = |test| draft.begun_pieces(test).into_iter();
        let pieces = places(BoardTest::Density).filter_map(|at| Some((at, self.piece(at)?))).collect();
        let bending = places(BoardTest::Bending).filter_map(|at| Some((at, self.bending(at)?))).collect();
        let bond = places(BoardTest::Bond).filter_map(|at| Some((at, self.bond(at)?))).collect();
        let swelling = places(BoardTest::Swelling).filter_map(|at| Some((at, self.swelling(at)?))).collect();
        let doubtful = self.findings.iter().any(|finding| matches!(finding.what, TrialProblem::UnlikelyDensity { .. }));
        MeasuredBoard {
            id: draft.id,
            run: draft.run,
            sanded: draft.sanded,
            laid,
            doubtful,
            whole,
            moisture,
            pieces,
            bending,
            bond,
            swelling,
        }
    }

    fn ask(&mut self, field: BoardField, what: TrialProblem) {
        self.findings.push(TrialFinding::unusual(TrialPlace::Board(self.draft.id, field), what));
    }

    fn check_density(&mut self, field: BoardField, density: MassDensity) {
        if !(LIKELY_DENSITY.0..=LIKELY_DENSITY.1).contains(&density.value) {
            self.ask(
                field,
                TrialProblem::UnlikelyDensity { value: Amount::from_base(Kind::BoardDensity, density.value) },
            );
        }
    }

    fn whole(&mut self) -> Option<Whole> {
        let mass = self.mass(BoardField::Mass);
        let length = self.length(BoardField::Length);
        let width = self.length(BoardField::Width);
        let all = (0..=u8::MAX).zip(self.draft.thickness.iter().take(MAX_PIECES));
        let points: Vec<u8> = all.filter(|(_, entry)| !entry.is_blank()).map(|(at, _)| at).collect();
        let thickness: Vec<Length> =
            points.iter().filter_map(|point| self.length(BoardField::Thickness(*point))).collect();
        if points.is_empty() {
            let what = TrialProblem::Entry(crate::domain::What::Missing);
            self.findings.push(TrialFinding::stop(TrialPlace::Board(self.draft.id, BoardField::Thickness(0)), what));
        }
        // A point that cannot be read would shift the mean unseen.
        if thickness.is_empty() || thickness.len() < points.len() {
            return None;
        }
        let whole = Whole { mass: mass?, length: length?, width: width?, thickness };
        self.check_density(BoardField::Mass, whole.density());
        Some(whole)
    }

    fn piece(&mut self, at: u8) -> Option<Piece> {
        let field = |part| BoardField::Piece(at, part);
        let position = self.length(field(PieceField::Position));
        let mass = self.mass(field(PieceField::Mass));
        let length = self.length(field(PieceField::Length));
        let width = self.length(field(PieceField::Width));
        let thickness = self.length(field(PieceField::Thickness));
        let dry = self.mass(field(PieceField::Dry));
        if mass.zip(dry).is_some_and(|(mass, dry)| dry > mass) {
            self.findings.push(TrialFinding::stop(
                TrialPlace::Board(self.draft.id, field(PieceField::Dry)),
                TrialProblem::DryAboveMoist,
            ));
            return None;
        }
        let piece = Piece { position, mass: mass?, length: length?, width: width?, thickness: thickness?, dry };
        self.check_density(field(PieceField::Mass), piece.density());
        Some(piece)
    }

    fn bending(&mut self, at: u8) -> Option<Bending> {
        let field = |part| BoardField::Bending(at, part);
        let span = self.length(field(BendingField::Span));
        let width = self.length(field(BendingField::Width));
        let thickness = self.length(field(BendingField::Thickness));
        let load = self.force(field(BendingField::Load));
        let slope = self.number(field(BendingField::Slope)).map(|slope| si!(SurfaceTension, slope));
        let volume = self.length(field(BendingField::Length)).zip(width).zip(thickness).map(|((l, b), t)| l * b * t);
        let density = self.mass(field(BendingField::Mass)).zip(volume).map(|(mass, volume)| mass / volume);
        let piece = Bending { span: span?, width: width?, thickness: thickness?, load: load?, slope, density };
        if let Some((own, what)) = bending_slip(&piece) {
            self.ask(field(own), what);
        }
        Some(piece)
    }

    fn bond(&mut self, at: u8) -> Option<Bond> {
        let field = |part| BoardField::Bond(at, part);
        let length = self.length(field(BondField::Length));
        let width = self.length(field(BondField::Width));
        let load = self.force(field(BondField::Load));
        let volume = self.length(field(BondField::Thickness)).zip(length).zip(width).map(|((t, l), b)| t * l * b);
        let density = self.mass(field(BondField::Mass)).zip(volume).map(|(mass, volume)| mass / volume);
        let piece = Bond { length: length?, width: width?, load: load?, density };
        if is_in_kilonewton(piece.strength().value, BOND_STRENGTH) {
            let meant = Amount::from_base(Kind::Force, piece.load.value * 1_000.0);
            self.ask(field(BondField::Load), TrialProblem::LoadInKilonewton { meant });
        }
        Some(piece)
    }

    fn swelling(&mut self, at: u8) -> Option<Swelling> {
        let field = |part| BoardField::Swelling(at, part);
        let before = self.length(field(SwellingField::Before));
        let after = self.length(field(SwellingField::After));
        let after_two = self.length(field(SwellingField::AfterTwo));
        let masses = self.mass(field(SwellingField::MassBefore)).zip(self.mass(field(SwellingField::MassAfter)));
        let piece = Swelling { before: before?, after: after?, after_two, masses };
        if piece.swelling().value < 0.0 {
            self.ask(field(SwellingField::After), TrialProblem::NegativeSwelling);
        }
        Some(piece)
    }
}

/// Whether a strength is too small for any board, and plausible with a thousand times the load.
fn is_in_kilonewton(strength: f64, (low, high): (f64, f64)) -> bool {
    strength < low / 10.0 && (low..=high).contains(&(strength * 1_000.0))
}

/// A load in kilonewtons, a span in centimetres, or a span that is not the standard's.
fn bending_slip(piece: &Bending) -> Option<(BendingField, TrialProblem)> {
    let slender = (piece.span / piece.thickness).value;
    if slender < SHORTEST_SPAN {
        let meant = Amount::from_base(Kind::BenchExtent, piece.span.value * 10.0);
        return Some((BendingField::Span, TrialProblem::SpanInCentimetre { meant }));
    }
    if is_in_kilonewton(piece.strength().value, BENDING_STRENGTH) {
        let meant = Amount::from_base(Kind::Force, piece.load.value * 1_000.0);
        return Some((BendingField::Load, TrialProblem::LoadInKilonewton { meant }));
    }
    let required = piece.standard_span();
    if ((piece.span / required).value - 1.0).abs() > SPAN_TOLERANCE {
        let required = Amount::from_base(Kind::BenchExtent, required.value);
        return Some((BendingField::Span, TrialProblem::SpanOffStandard { required }));
    }
    None
}

impl MeasuredBoard {
    /// Every value of a property that the board gives, in the base unit, in the order of its pieces.
    /// Values that left the range of numbers are dropped.
    ///
    /// Oven-dry density is ρ/(1+ω), with the piece's own moisture, or else the mean of the others, or else
    /// the board's as typed.
    #[must_use]
    pub fn values(&self, property: Property) -> Vec<f64> {
        let values: Vec<f64> = match property {
            Property::Density => match self.pieces.is_empty() {
                false => self.pieces.iter().map(|(_, piece)| piece.density().value).collect(),
                true => self.whole.iter().map(|whole| whole.density().value).collect(),
            },
            Property::Moisture => {
                let pieces = self.pieces.iter().filter_map(|(_, piece)| piece.moisture());
                let dried: Vec<f64> = pieces.map(|moisture| moisture.value).collect();
                if dried.is_empty() {
                    self.moisture.iter().map(|moisture| moisture.dry_basis().value).collect()
                } else {
                    dried
                }
            }
            Property::OvenDryDensity => {
                let Some(common) = self.mean(Property::Moisture) else { return Vec::new() };
                let dry = |density: f64, moisture: f64| density / (1.0 + moisture);
                match self.pieces.is_empty() {
                    false => self
                        .pieces
                        .iter()
                        .map(|(_, piece)| dry(piece.density().value, piece.moisture().map_or(common, |own| own.value)))
                        .collect(),
                    true => self.whole.iter().map(|whole| dry(whole.density().value, common)).collect(),
                }
            }
            Property::Thickness => match &self.whole {
                Some(whole) => whole.thickness.iter().map(|thickness| thickness.value).collect(),
                None => self.pieces.iter().map(|(_, piece)| piece.thickness.value).collect(),
            },
            Property::BendingStrength => self.bending.iter().map(|(_, piece)| piece.strength().value).collect(),
            Property::BendingModulus => {
                self.bending.iter().filter_map(|(_, piece)| piece.modulus()).map(|modulus| modulus.value).collect()
            }
            Property::InternalBond => self.bond.iter().map(|(_, piece)| piece.strength().value).collect(),
            Property::SwellingTwo => {
                self.swelling.iter().filter_map(|(_, piece)| piece.swelling_two()).map(|share| share.value).collect()
            }
            Property::Absorption => {
                self.swelling.iter().filter_map(|(_, piece)| piece.absorption()).map(|share| share.value).collect()
            }
            Property::Swelling => self.swelling.iter().map(|(_, piece)| piece.swelling().value).collect(),
        };
        values.into_iter().filter(|value| value.is_finite()).collect()
    }

    /// Mean of a property's values; `None` when the board gives none.
    #[must_use]
    pub fn mean(&self, property: Property) -> Option<f64> {
        let values = self.values(property);
        let mean = values.iter().sum::<f64>() / values.len() as f64;
        crate::quantity::number::finite(mean)
    }
}
