//! Two to six systems side by side: every figure of each, and what changes against a reference.

use super::output::{Output, limiting};
use crate::domain::balance::machine::Machine;
use crate::domain::balance::outcome::{Case, Outcome, work_out};
use crate::domain::compare::rounding::without_noise;
use crate::domain::compare::unpriced::missing;
use crate::domain::recipe::binder_system::add_liquids;
use crate::domain::recipe::check::read_field;
use crate::domain::recipe::draft::{Draft, FeedWay, LiquidDraft, WaterWay};
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::liquid::Faces;
use crate::quantity::{Amount, Unit};

/// The fewest systems that can be compared.
pub const FEWEST: usize = 2;
/// The most.
pub const MOST: usize = 6;

/// One system: a recipe, worked out.
#[derive(Debug, Clone, PartialEq)]
pub struct ComparedSystem {
    /// Its name: the recipe's, or the binder system's.
    pub name: String,
    /// The recipe as entered.
    pub draft: Draft,
    /// What came of it.
    pub outcome: Outcome,
}

impl ComparedSystem {
    /// Works out a recipe.
    #[must_use]
    pub fn new(name: impl Into<String>, draft: Draft) -> Self {
        let outcome = work_out(&draft);
        Self { name: name.into(), draft, outcome }
    }

    /// The solved recipe, unless something stands in the way.
    #[must_use]
    pub const fn case(&self) -> Option<&Case> {
        self.outcome.case.as_ref()
    }

    /// The machine that limits it.
    #[must_use]
    pub fn limiting(&self) -> Option<Machine> {
        self.case().and_then(limiting)
    }

    /// Prices that are missing: without them the system has no cost.
    #[must_use]
    pub fn unpriced(&self) -> Vec<Field> {
        if let Some(case) = self.case() {
            return missing(case, None);
        }
        let prices = self.draft.liquids.iter().map(|liquid| Field::Liquid(liquid.id, LiquidField::Price));
        let blank = |field: &Field| self.draft.entry(*field).is_some_and(|entry| entry.is_blank());
        std::iter::once(Field::FibrePrice).chain(prices).filter(blank).collect()
    }
}

/// The recipe of `conditions` with the liquids of a binder system in place of its own: what a system of
/// the library would be at this mill.
#[must_use]
pub fn with_liquids(conditions: &Draft, liquids: &[LiquidDraft]) -> Draft {
    let mut draft = Draft { liquids: Vec::new(), ..conditions.clone() };
    add_liquids(&mut draft, liquids);
    draft
}

/// The recipe of `system` on the fibre, board and line of `conditions`. What belongs to the system stays:
/// its liquids, the water it is run with, and the least press factor that cures it.
#[must_use]
pub fn on_conditions(conditions: &Draft, system: &Draft) -> Draft {
    let mut draft = system.clone();
    draft.feed_way = conditions.feed_way;
    draft.sprayed_faces = conditions.sprayed_faces;
    for field in Field::PLAIN.iter().filter(|field| Belongs::of(**field) != Belongs::System) {
        if let Some((entry, given)) = draft.entry_mut(*field).zip(conditions.entry(*field)) {
            entry.clone_from(given);
        }
    }
    draft
}

/// What a number of a recipe belongs to when systems are compared.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Belongs {
    /// The fibre: it is to be the same.
    Fibre,
    /// The board: it is to be the same.
    Board,
    /// The line: it is to be the same.
    Line,
    /// The system itself, which may differ.
    System,
}

impl Belongs {
    /// What a field belongs to.
    #[must_use]
    pub const fn of(field: Field) -> Self {
        match field {
            Field::FibreFlow
            | Field::WantedLineSpeed
            | Field::WantedPressFactor
            | Field::FibreMoisture
            | Field::FibrePrice
            | Field::FibreSupply => Self::Fibre,
            Field::BoardDensity
            | Field::BoardMoisture
            | Field::Thickness
            | Field::SandTop
            | Field::SandBottom
            | Field::SurfaceRatio => Self::Board,
            Field::MatMoisture
            | Field::DryingLoss
            | Field::WaterOnFibre
            | Field::WaterFlow
            | Field::LeastPressFactor
            | Field::Liquid(..) => Self::System,
            _ => Self::Line,
        }
    }
}

/// What differs.
#[derive(Debug, Clone, PartialEq)]
pub enum Differing {
    /// What fixes the fibre flow, for each system.
    FeedWay(Vec<FeedWay>),
    /// What fixes the water dose, for each system.
    WaterWay(Vec<WaterWay>),
    /// The faces that water is sprayed on, for each system.
    SprayedFaces(Vec<Faces>),
    /// A number, for each system; `None` where it is blank, not readable or not used.
    Number(Field, Vec<Option<Amount>>),
}

/// A difference between systems beside their liquids.
#[derive(Debug, Clone, PartialEq)]
pub struct SystemDifference {
    /// What it belongs to.
    pub belongs: Belongs,
    /// What differs.
    pub what: Differing,
}

impl SystemDifference {
    /// Whether systems can still be compared in fairness: only what belongs to the system differs.
    #[must_use]
    pub fn is_fair(&self) -> bool {
        self.belongs == Belongs::System
    }
}

/// One figure of all systems.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// The figure.
    pub output: Output,
    /// Its value for each system; `None` where a system does not give it.
    pub values: Vec<Option<Amount>>,
}

impl Row {
    /// How much more than the reference a system has of it, in `unit`. Taken in the unit in which both
    /// are shown, for not every unit is a multiple of the other.
    #[must_use]
    pub fn difference(&self, system: usize, reference: usize, unit: Unit) -> Option<f64> {
        let value = |at: usize| self.values.get(at).copied().flatten().map(|amount| amount.get(unit));
        let (own, other) = (value(system)?, value(reference)?);
        Some(without_noise(own - other, own.abs() + other.abs()))
    }

    /// How much more than the reference, as a share of the reference. `None` where a share means nothing: of zero, of
    /// a value on the other side of zero, or of a temperature.
    #[must_use]
    pub fn relative(&self, system: usize, reference: usize) -> Option<f64> {
        let value = |at: usize| self.values.get(at).copied().flatten().map(|amount| amount.base);
        let (own, other) = (value(system)?, value(reference)?);
        let temperature = self.output.kind().dimension() == crate::quantity::Dimension::Temperature;
        let crosses = own * other < 0.0;
        let share = without_noise(own - other, own.abs() + other.abs()) / other.abs();
        (share.is_finite() && !temperature && !crosses).then_some(share)
    }
}

/// Systems side by side.
#[derive(Debug, Clone, PartialEq)]
pub struct SideBySide {
    /// The place of the system that the others are compared with.
    pub reference: usize,
    /// The figures that at least one system gives, in the material's order.
    pub rows: Vec<Row>,
    /// What differs beside the liquids, what is to be the same first.
    pub differences: Vec<SystemDifference>,
}

/// Why systems cannot stand side by side.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SideBySideError {
    /// Fewer than [`FEWEST`].
    TooFew,
    /// More than [`MOST`].
    TooMany,
    /// The reference is not among them.
    NoReference,
}

/// Puts systems side by side, with costs for so many hours a year; without hours there is no cost per year.
///
/// # Errors
/// [`SideBySideError`].
pub fn side_by_side(
    systems: &[ComparedSystem],
    reference: usize,
    hours: Option<u16>,
) -> Result<SideBySide, SideBySideError> {
    match systems.len() {
        ..FEWEST => return Err(SideBySideError::TooFew),
        FEWEST..=MOST => {}
        _ => return Err(SideBySideError::TooMany),
    }
    if reference >= systems.len() {
        return Err(SideBySideError::NoReference);
    }
    let row = |output: Output| Row {
        output,
        values: systems.iter().map(|system| system.case().and_then(|case| output.value(case))).collect(),
    };
    let given = |row: &Row| row.values.iter().any(Option::is_some);
    let known = |output: &Output| hours.is_some() || !matches!(output, Output::CostPerYear(_));
    let rows = Output::side_by_side(hours.unwrap_or(1)).into_iter().filter(known).map(row).filter(given).collect();
    Ok(SideBySide { reference, rows, differences: differences(systems) })
}

/// What differs between the systems beside their liquids, what is to be the same first.
#[must_use]
pub fn differences(systems: &[ComparedSystem]) -> Vec<SystemDifference> {
    let mut found = Vec::new();
    let feed: Vec<_> = systems.iter().map(|system| system.draft.feed_way).collect();
    if !all_same(&feed) {
        found.push(SystemDifference { belongs: Belongs::Fibre, what: Differing::FeedWay(feed) });
    }
    let water: Vec<_> = systems.iter().map(|system| system.draft.water_way).collect();
    if !all_same(&water) {
        found.push(SystemDifference { belongs: Belongs::System, what: Differing::WaterWay(water) });
    }
    let faces: Vec<_> = systems.iter().map(|system| system.draft.sprayed_faces).collect();
    if !all_same(&faces) {
        found
            .push(SystemDifference { belongs: Belongs::of(Field::SurfaceSpray), what: Differing::SprayedFaces(faces) });
    }
    for field in Field::PLAIN {
        let amounts: Vec<_> = systems.iter().map(|system| amount(&system.draft, *field)).collect();
        let first = amounts.first().copied().flatten();
        if amounts.iter().any(|other| !same(first, *other)) {
            found.push(SystemDifference { belongs: Belongs::of(*field), what: Differing::Number(*field, amounts) });
        }
    }
    let mut sorted = Vec::with_capacity(found.len());
    for belongs in [Belongs::Fibre, Belongs::Board, Belongs::Line, Belongs::System] {
        sorted.extend(found.iter().filter(|difference| difference.belongs == belongs).cloned());
    }
    sorted
}

/// The numbers beside the liquids that all systems have in common.
#[must_use]
pub fn equal_inputs(systems: &[ComparedSystem]) -> Vec<(Field, Amount)> {
    let common = |field: &Field| {
        let mut amounts = systems.iter().map(|system| amount(&system.draft, *field));
        let first = amounts.next()??;
        amounts.all(|other| same(Some(first), other)).then_some((*field, first))
    };
    Field::PLAIN.iter().filter_map(common).collect()
}

fn all_same<T: PartialEq>(all: &[T]) -> bool {
    all.windows(2).all(|pair| matches!(pair, [a, b] if a == b))
}

/// The number of a field that the recipe's choices call for.
fn amount(draft: &Draft, field: Field) -> Option<Amount> {
    let used = match field {
        Field::FibreFlow => matches!(draft.feed_way, FeedWay::OvenDry | FeedWay::Belt),
        Field::WantedLineSpeed => draft.feed_way == FeedWay::LineSpeed,
        Field::WantedPressFactor => draft.feed_way == FeedWay::PressFactor,
        Field::MatMoisture => draft.water_way == WaterWay::ToMatMoisture,
        Field::WaterOnFibre => draft.water_way == WaterWay::OnFibre,
        Field::WaterFlow => draft.water_way == WaterWay::Flow,
        _ => true,
    };
    let base = read_field(draft, field).ok().flatten().filter(|_| used)?;
    Some(Amount::from_base(field.kind(), base))
}

/// Typed in different units, the same number differs by a rounding error.
fn same(a: Option<Amount>, b: Option<Amount>) -> bool {
    match (a, b) {
        (Some(a), Some(b)) => (a.base - b.base).abs() <= 1e-9 * a.base.abs().max(b.base.abs()),
        (None, None) => true,
        _ => false,
    }
}
