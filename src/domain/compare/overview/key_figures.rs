//! The eight figures by which systems are compared first, grouped, with what marks a system out in each.

use crate::domain::balance::figure::Figure;
use crate::domain::balance::machine::Machine;
use crate::domain::balance::outcome::Case;
use crate::domain::compare::economy::costs::Economy;
use crate::domain::compare::output::Output;
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::variable;
use crate::domain::recipe::draft::Draft;
use crate::domain::recipe::field::Field;
use crate::domain::recipe::finding::What;
use crate::domain::recipe::limit::press_factor;
use crate::domain::recipe::liquid::Role;
use crate::quantity::{Amount, Kind, Unit};

/// What a key figure is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum KeyGroup {
    /// Water to dose, and how dry the fibre must be.
    Water,
    /// Press and output.
    Press,
    /// Cost.
    Cost,
}

/// A key figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum KeyFigure {
    /// Water to dose.
    WaterDose,
    /// Water over what the target mat moisture needs.
    WaterExcess,
    /// The fibre moisture at which no water would be dosed.
    FibreMoisture,
    /// Finished board.
    BoardOutput,
    /// Press factor.
    PressFactor,
    /// Water driven out in the press.
    PressVapour,
    /// Cost of fibre and liquids.
    Cost,
    /// The same with the release agent.
    CostWithAgent,
}

impl KeyFigure {
    /// All of them, in the order of the table.
    pub const ALL: [Self; 8] = [
        Self::WaterDose,
        Self::WaterExcess,
        Self::FibreMoisture,
        Self::BoardOutput,
        Self::PressFactor,
        Self::PressVapour,
        Self::Cost,
        Self::CostWithAgent,
    ];

    /// What it is about.
    #[must_use]
    pub const fn group(self) -> KeyGroup {
        match self {
            Self::WaterDose | Self::WaterExcess | Self::FibreMoisture => KeyGroup::Water,
            Self::BoardOutput | Self::PressFactor | Self::PressVapour => KeyGroup::Press,
            Self::Cost | Self::CostWithAgent => KeyGroup::Cost,
        }
    }

    /// The same figure among all those compared; `None` for the cost with release agent.
    #[must_use]
    pub const fn output(self) -> Option<Output> {
        Some(Output::Figure(match self {
            Self::WaterDose => Figure::WaterDose,
            Self::WaterExcess => Figure::WaterExcess,
            Self::FibreMoisture => Figure::FibreMoistureForNoWater,
            Self::BoardOutput => Figure::FinishedVolume,
            Self::PressFactor => Figure::PressFactor,
            Self::PressVapour => Figure::PressVapour,
            Self::Cost => Figure::Cost,
            Self::CostWithAgent => return None,
        }))
    }

    /// What it measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self.output() {
            Some(output) => output.kind(),
            None => Kind::Cost,
        }
    }

    /// The stable key on the page.
    #[must_use]
    pub fn key(self) -> String {
        self.output().map_or_else(|| "cost_with_agent".to_owned(), Output::key)
    }
}

/// What marks a system out in a figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum KeyMark {
    /// The furnish is too wet.
    TooWet,
    /// Above the typical range.
    High,
    /// Below the typical range.
    Low,
    /// Beyond a machine's limit.
    OverLimit(Machine),
}

/// A key figure of all systems.
#[derive(Debug, Clone, PartialEq)]
pub struct KeyRow {
    /// Which.
    pub figure: KeyFigure,
    /// Its value for each system; `None` where a system does not give it.
    pub values: Vec<Option<Amount>>,
    /// What marks each system out.
    pub marks: Vec<Option<KeyMark>>,
    /// The typical range where it is the same for all systems.
    pub typical: Option<(Amount, Amount)>,
    /// What the reference runs at now, to be compared with the figure.
    pub now: Option<Amount>,
}

/// Whether a board with these binders is pressed with a release agent: an isocyanate binds to steel. Common practice, no
/// source.
#[must_use]
pub fn needs_release_agent(draft: &Draft) -> bool {
    draft.liquids.iter().any(|liquid| liquid.role == Role::Binder && liquid.substance.is_isocyanate())
}

/// The cost with release agent, money per m³; `agent` in money per m² of board. `None` where a price is missing.
fn with_agent(system: &ComparedSystem, case: &Case, agent: Option<f64>) -> Option<Amount> {
    if agent.is_none() && needs_release_agent(&system.draft) {
        return None;
    }
    let materials = Economy::default().of_system(case, agent);
    // Materials without a price are no cost.
    Output::Figure(Figure::Cost).value(case)?;
    materials.total.map(|total| Amount::from_base(Kind::Cost, total))
}

/// The typical press factor of a system's binders.
fn typical_press_factor(case: &Case) -> (Amount, Amount) {
    let binders = case.input.liquids.as_slice().iter().filter(|liquid| liquid.role == Role::Binder);
    let window = press_factor(binders.map(|liquid| liquid.substance));
    let amount = |value| Amount::new(Kind::PressFactor, value, Unit::SecondPerMillimetre);
    (amount(window.low), amount(window.high))
}

fn mark(figure: KeyFigure, system: &ComparedSystem, case: &Case) -> Option<KeyMark> {
    let over = |machines: &[Machine]| {
        system.outcome.findings.iter().find_map(|finding| match finding.what {
            What::OverLimit { machine, .. } if machines.contains(&machine) => Some(KeyMark::OverLimit(machine)),
            _ => None,
        })
    };
    match figure {
        KeyFigure::WaterExcess => {
            let is_wet = system.outcome.findings.iter().any(|finding| matches!(finding.what, What::TooWet { .. }));
            is_wet.then_some(KeyMark::TooWet)
        }
        KeyFigure::PressFactor => over(&[Machine::Press]).or_else(|| {
            let (low, high) = typical_press_factor(case);
            let value = case.figure(Figure::PressFactor)?.base;
            match () {
                () if value > high.base => Some(KeyMark::High),
                () if value < low.base => Some(KeyMark::Low),
                () => None,
            }
        }),
        KeyFigure::BoardOutput => over(&[Machine::FibreSupply, Machine::Blender, Machine::LineSpeed]),
        _ => None,
    }
}

/// The key figures of all systems; `agents` is what each pays for release agent, money per m² of board. A figure that no
/// system gives is left out, unless a price for it can be asked for.
#[must_use]
pub fn key_rows(systems: &[ComparedSystem], agents: &[Option<f64>], reference: usize) -> Vec<KeyRow> {
    let row = |figure: KeyFigure| {
        let value = |(at, system): (usize, &ComparedSystem)| {
            let case = system.case()?;
            match figure.output() {
                Some(output) => output.value(case),
                None => with_agent(system, case, agents.get(at).copied().flatten()),
            }
        };
        let typical = || {
            let mut all = systems.iter().filter_map(|system| system.case().map(typical_press_factor));
            let first = all.next()?;
            all.all(|other| other == first).then_some(first)
        };
        let now = || {
            let case = systems.get(reference)?.case()?;
            variable::amount(&case.input, Field::FibreMoisture)
        };
        KeyRow {
            figure,
            values: systems.iter().enumerate().map(value).collect(),
            marks: systems.iter().map(|system| mark(figure, system, system.case()?)).collect(),
            typical: if figure == KeyFigure::PressFactor { typical() } else { None },
            now: if figure == KeyFigure::FibreMoisture { now() } else { None },
        }
    };
    let shown = |row: &KeyRow| row.figure.group() == KeyGroup::Cost || row.values.iter().any(Option::is_some);
    KeyFigure::ALL.into_iter().map(row).filter(shown).collect()
}
