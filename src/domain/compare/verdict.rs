//! Whether a recipe can be run: what stands in the way, in one small value for each cell of a grid.

use crate::domain::balance::machine::Machine;
use crate::domain::balance::outcome::{Case, examine};
use crate::domain::recipe::field::Field;
use crate::domain::recipe::finding::{Finding, What};
use crate::domain::recipe::limit::plain;

/// Something that stands in the way.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Obstacle {
    /// A number is outside what physics allows, or two contradict each other.
    NotAllowed,
    /// The doses or losses leave no balance.
    NoBalance,
    /// The furnish holds more water than the mat moisture wanted needs.
    TooWet,
    /// Beyond what a machine can do.
    OverLimit(Machine),
    /// The board would leave the press moister than the mat went in.
    PressAddsWater,
    /// The mat would be thinner than the pressed board.
    MatThinnerThanBoard,
    /// The press factor is outside the usual window.
    PressFactor,
    /// The mat moisture is outside the usual window.
    MatMoisture,
    /// A swept number is outside its own usual window.
    Input,
}

impl Obstacle {
    /// All of them, the gravest first.
    pub const ALL: [Obstacle; 12] = [
        Self::NotAllowed,
        Self::NoBalance,
        Self::TooWet,
        Self::OverLimit(Machine::FibreSupply),
        Self::OverLimit(Machine::Blender),
        Self::OverLimit(Machine::Press),
        Self::OverLimit(Machine::LineSpeed),
        Self::PressAddsWater,
        Self::MatThinnerThanBoard,
        Self::PressFactor,
        Self::MatMoisture,
        Self::Input,
    ];

    /// Whether it is only outside a usual window, which the mill may know better.
    #[must_use]
    pub const fn is_advice(self) -> bool {
        matches!(self, Self::PressFactor | Self::MatMoisture | Self::Input)
    }

    /// The stable key of the obstacle, on the page and in exports.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::NotAllowed => "not_allowed",
            Self::NoBalance => "no_balance",
            Self::TooWet => "too_wet",
            Self::OverLimit(Machine::FibreSupply) => "over_fibre_supply",
            Self::OverLimit(Machine::Blender) => "over_blender",
            Self::OverLimit(Machine::Press) => "over_press",
            Self::OverLimit(Machine::LineSpeed) => "over_line_speed",
            Self::PressAddsWater => "press_adds_water",
            Self::MatThinnerThanBoard => "mat_thinner_than_board",
            Self::PressFactor => "press_factor",
            Self::MatMoisture => "mat_moisture",
            Self::Input => "input",
        }
    }

    fn bit(self) -> u16 {
        Self::ALL.iter().position(|other| *other == self).map_or(0, |at| 1 << at)
    }
}

/// All that stands in the way of one recipe.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Verdict(u16);

impl Verdict {
    /// Adds an obstacle.
    pub(super) fn add(&mut self, obstacle: Obstacle) {
        self.0 |= obstacle.bit();
    }

    /// One obstacle alone.
    pub(super) fn only(obstacle: Obstacle) -> Self {
        Self(obstacle.bit())
    }

    /// The obstacles, the gravest first.
    pub fn obstacles(self) -> impl Iterator<Item = Obstacle> {
        Obstacle::ALL.into_iter().filter(move |obstacle| self.0 & obstacle.bit() != 0)
    }

    /// Whether the recipe can be run: nothing stands in the way but advice.
    #[must_use]
    pub fn is_feasible(self) -> bool {
        self.obstacles().all(Obstacle::is_advice)
    }

    /// Whether nothing at all is to be said.
    #[must_use]
    pub const fn is_usual(self) -> bool {
        self.0 == 0
    }
}

/// What stands in the way of a solved recipe: the findings that the recipe page has for it, and the
/// usual mat moisture.
#[must_use]
pub fn verdict(case: &Case, findings: &mut Vec<Finding>) -> Verdict {
    findings.clear();
    examine(&case.input, &case.solved, findings);
    let mut verdict = Verdict::default();
    for finding in findings.iter() {
        match finding.what {
            What::TooWet { .. } => verdict.add(Obstacle::TooWet),
            What::OverLimit { machine, .. } => verdict.add(Obstacle::OverLimit(machine)),
            What::PressAddsWater => verdict.add(Obstacle::PressAddsWater),
            What::MatThinnerThanBoard => verdict.add(Obstacle::MatThinnerThanBoard),
            What::NotUsual { .. } => verdict.add(Obstacle::PressFactor),
            _ => {}
        }
    }
    let limit = plain(Field::MatMoisture).within(case.input.typical_mat_moisture());
    if limit.outside_usual(case.solved.water.mat.dry_basis().value).is_some() {
        verdict.add(Obstacle::MatMoisture);
    }
    verdict
}
