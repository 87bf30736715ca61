//! Whether a recipe can be run: what prevents it, in one small value for each cell of a grid.

use crate::domain::balance::machine::Machine;
use crate::domain::balance::outcome::{Case, examine};
use crate::domain::compare::variable;
use crate::domain::recipe::field::Field;
use crate::domain::recipe::finding::{Finding, What};

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
    /// The press factor is outside the typical range.
    PressFactor,
    /// The target mat moisture is outside the typical range.
    MatMoisture,
    /// Another input is outside its typical range.
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

    /// Whether it is only outside a typical range, which the mill may know better.
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

/// What all obstacles together come to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FeasibilityGrade {
    /// It can be run, and nothing is unusual.
    Free,
    /// It can be run, but something is outside its typical range.
    Advised,
    /// It cannot be run.
    Infeasible,
}

/// All that stands in the way of one recipe.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Feasibility(u16);

impl Feasibility {
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

    /// Whether this stands in the way.
    #[must_use]
    pub fn has(self, obstacle: Obstacle) -> bool {
        self.0 & obstacle.bit() != 0
    }

    /// What it comes to.
    #[must_use]
    pub fn standing(self) -> FeasibilityGrade {
        match (self.is_feasible(), self.is_usual()) {
            (false, _) => FeasibilityGrade::Infeasible,
            (true, false) => FeasibilityGrade::Advised,
            (true, true) => FeasibilityGrade::Free,
        }
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

/// What prevents running a solved recipe: what the recipe page says of it, as a limit or as advice just as there.
#[must_use]
pub fn feasibility(case: &Case, findings: &mut Vec<Finding>) -> Feasibility {
    findings.clear();
    examine(&case.input, &case.solved, findings);
    let mut feasibility = Feasibility::default();
    for finding in findings.iter() {
        match finding.what {
            What::TooWet { .. } => feasibility.add(Obstacle::TooWet),
            What::OverLimit { machine, .. } => feasibility.add(Obstacle::OverLimit(machine)),
            What::PressAddsWater => feasibility.add(Obstacle::PressAddsWater),
            What::MatThinnerThanBoard => feasibility.add(Obstacle::MatThinnerThanBoard),
            What::NotUsual { .. } => feasibility.add(Obstacle::PressFactor),
            _ => {}
        }
    }
    for field in variable::used(&case.input) {
        let Some(base) = variable::get(&case.input, field) else { continue };
        if variable::limit(&case.input, field).outside_usual(base).is_some() {
            feasibility.add(match field {
                Field::MatMoisture => Obstacle::MatMoisture,
                Field::WantedPressFactor => Obstacle::PressFactor,
                _ => Obstacle::Input,
            });
        }
    }
    feasibility
}
