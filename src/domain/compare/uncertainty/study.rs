//! What an uncertainty study is about: systems, their uncertain inputs, and the figures asked for.

use crate::domain::balance::outcome::Case;
use crate::domain::compare::output::Output;
use crate::domain::compare::uncertainty::input_uncertainty::{InputUncertainty, Shape};
use crate::domain::compare::uncertainty::tape::Tape;
use crate::domain::compare::variable;
use crate::domain::recipe::field::Field;
use crate::domain::recipe::limit::Limit;
use crate::quantity::Kind;

/// One source of uncertainty, and every number it acts on. An instrument that several systems have in
/// common acts on all of them at once: what the belt scale reads too much for one, it reads too much
/// for the others.
#[derive(Debug, Clone, PartialEq)]
pub struct UncertainInput {
    /// A system's place, and the field there.
    pub targets: Vec<(usize, Field)>,
    /// How uncertain.
    pub spread: InputUncertainty,
}

/// A figure that is asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RequestedFigure {
    /// A figure of one system.
    Of {
        /// The system's place.
        system: usize,
        /// The figure.
        output: Output,
    },
    /// How much more one system has of a figure than another.
    Difference {
        /// The system's place.
        system: usize,
        /// The place of the one it is compared with.
        reference: usize,
        /// The figure.
        output: Output,
    },
}

impl RequestedFigure {
    /// Every figure at once: figure by figure each system that gives it, then what each other one has more
    /// than the reference, where both give it.
    #[must_use]
    pub fn all(cases: &[Case], reference: usize, outputs: &[Output]) -> Vec<Self> {
        let mut all = Vec::new();
        for output in outputs.iter().copied() {
            let gives = |at: &usize| cases.get(*at).is_some_and(|case| output.value(case).is_some());
            let systems: Vec<usize> = (0..cases.len()).filter(gives).collect();
            all.extend(systems.iter().map(|system| Self::Of { system: *system, output }));
            if systems.contains(&reference) {
                let others = systems.into_iter().filter(|system| *system != reference);
                all.extend(others.map(|system| Self::Difference { system, reference, output }));
            }
        }
        all
    }

    /// The figure.
    #[must_use]
    pub const fn output(self) -> Output {
        match self {
            Self::Of { output, .. } | Self::Difference { output, .. } => output,
        }
    }

    /// What it measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        self.output().kind()
    }

    const fn terms(self) -> [Option<(usize, Output, f64)>; 2] {
        match self {
            Self::Of { system, output } => [Some((system, output, 1.0)), None],
            Self::Difference { system, reference, output } => {
                [Some((system, output, 1.0)), Some((reference, output, -1.0))]
            }
        }
    }
}

/// Why there is no study.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StudyError {
    /// Nothing is uncertain, or nothing is asked for.
    Empty,
    /// There is no such system.
    NoSystem(usize),
    /// The system does not use the field.
    NotUsed(usize, Field),
    /// The system does not give the figure.
    NotGiven(usize, Output),
}

/// An input of one system, and what acts on it.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::domain::compare) struct Varied {
    pub field: Field,
    /// Its value.
    pub at: f64,
    /// What it may hold; `None` where no draw can come near an end.
    pub reach: Option<InputRange>,
    /// The sources that act on it: place, and standard uncertainty in the base unit.
    pub sources: Vec<(usize, f64)>,
}

/// What an input may hold, in its base unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::domain::compare) struct InputRange {
    least: f64,
    above_least: bool,
    most: f64,
    below_most: bool,
}

impl InputRange {
    fn of(limit: &Limit) -> Self {
        Self {
            least: limit.unit.to_base(limit.least),
            above_least: limit.above_least,
            most: limit.unit.to_base(limit.most),
            below_most: limit.below_most,
        }
    }

    pub(in crate::domain::compare) fn allows(self, value: f64) -> bool {
        let above = if self.above_least { value > self.least } else { value >= self.least };
        let below = if self.below_most { value < self.most } else { value <= self.most };
        above & below
    }
}

/// How many standard uncertainties a draw can be away from the mean; `None` for no end.
fn farthest(shape: Shape) -> Option<f64> {
    match shape {
        Shape::Rectangular => Some(3.0_f64.sqrt()),
        // Far beyond what 2⁶⁴ random numbers can bring about.
        Shape::Normal => Some(16.0),
        Shape::Student(_) => None,
    }
}

/// One system, ready to be evaluated.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::domain::compare) struct SystemPart {
    pub varied: Vec<Varied>,
    pub outputs: Vec<Output>,
    pub tape: Tape,
}

impl SystemPart {
    pub(in crate::domain::compare) fn point(&self) -> Vec<f64> {
        self.varied.iter().map(|varied| varied.at).collect()
    }
}

/// A term of a figure asked for: a system's place, an output's place there, and its sign.
pub(in crate::domain::compare) type SignedOutput = (usize, usize, f64);

/// A study, ready to be carried out by either method.
#[derive(Debug, Clone, PartialEq)]
pub struct Study {
    pub(in crate::domain::compare) sources: Vec<(Shape, Option<f64>)>,
    pub(in crate::domain::compare) parts: Vec<SystemPart>,
    pub(in crate::domain::compare) asked: Vec<RequestedFigure>,
    pub(in crate::domain::compare) terms: Vec<[Option<SignedOutput>; 2]>,
}

impl Study {
    /// Puts a study together.
    ///
    /// # Errors
    /// [`StudyError`] names what is not there.
    pub fn new(cases: &[Case], uncertain: &[UncertainInput], asked: &[RequestedFigure]) -> Result<Self, StudyError> {
        if asked.is_empty() || uncertain.iter().all(|source| source.targets.is_empty()) {
            return Err(StudyError::Empty);
        }
        let mut parts = Vec::with_capacity(cases.len());
        for (system, case) in cases.iter().enumerate() {
            parts.push(part(system, case, uncertain, asked)?);
        }
        let mut terms = Vec::with_capacity(asked.len());
        for asked in asked {
            let mut places = [None; 2];
            for (place, term) in places.iter_mut().zip(asked.terms()) {
                if let Some((system, output, sign)) = term {
                    let part = parts.get(system).ok_or(StudyError::NoSystem(system))?;
                    let at = part.outputs.iter().position(|other| *other == output);
                    *place = Some((system, at.ok_or(StudyError::NotGiven(system, output))?, sign));
                }
            }
            terms.push(places);
        }
        if let Some((system, _)) =
            uncertain.iter().flat_map(|source| &source.targets).find(|(system, _)| *system >= cases.len())
        {
            return Err(StudyError::NoSystem(*system));
        }
        let sources = uncertain.iter().map(|source| (source.spread.shape(), source.spread.freedom)).collect();
        Ok(Self { sources, parts, asked: asked.to_vec(), terms })
    }

    /// The figures asked for.
    #[must_use]
    pub fn asked(&self) -> &[RequestedFigure] {
        &self.asked
    }

    /// How many instructions one draw takes, all systems together.
    #[must_use]
    pub fn instructions(&self) -> usize {
        self.parts.iter().map(|part| part.tape.instructions()).sum()
    }

    /// How many sources of uncertainty there are.
    #[must_use]
    pub fn sources(&self) -> usize {
        self.sources.len()
    }
}

fn part(
    system: usize,
    case: &Case,
    uncertain: &[UncertainInput],
    asked: &[RequestedFigure],
) -> Result<SystemPart, StudyError> {
    let mut varied: Vec<Varied> = Vec::new();
    for (source, UncertainInput { targets, spread }) in uncertain.iter().enumerate() {
        for (_, field) in targets.iter().filter(|(at, _)| *at == system) {
            let at = variable::get(&case.input, *field).ok_or(StudyError::NotUsed(system, *field))?;
            let acts = (source, spread.standard(at));
            match varied.iter_mut().find(|varied| varied.field == *field) {
                Some(varied) => varied.sources.push(acts),
                None => {
                    let reach = Some(InputRange::of(&variable::limit(&case.input, *field)));
                    varied.push(Varied { field: *field, at, reach, sources: vec![acts] });
                }
            }
        }
    }
    for varied in &mut varied {
        let farthest = |(source, standard): &(usize, f64)| {
            let source = uncertain.get(*source)?;
            farthest(source.spread.shape()).map(|times| times * standard)
        };
        let away: Option<f64> = varied.sources.iter().map(farthest).sum();
        let within = |away: f64| {
            varied.reach.is_some_and(|reach| reach.allows(varied.at - away) && reach.allows(varied.at + away))
        };
        if away.is_some_and(within) {
            varied.reach = None;
        }
    }
    let mut outputs: Vec<Output> = Vec::new();
    for (_, output, _) in asked.iter().flat_map(|asked| asked.terms()).flatten().filter(|(at, ..)| *at == system) {
        if !outputs.contains(&output) {
            outputs.push(output);
        }
    }
    if let Some(output) = outputs.iter().find(|output| output.value(case).is_none()) {
        return Err(StudyError::NotGiven(system, *output));
    }
    let fields: Vec<Field> = varied.iter().map(|varied| varied.field).collect();
    let tape = Tape::new(case, &fields, &outputs).ok_or(StudyError::Empty)?;
    Ok(SystemPart { varied, outputs, tape })
}
