//! The balance of one recipe as a list of instructions over a few varied inputs, made from the
//! formulas that the workings show.
//!
//! A formula that explains a figure on the page is also what draws are evaluated with: there is no
//! second model. What does not depend on a varied input is worked out while the tape is made; what is
//! left runs over a block of draws at a time, each instruction a plain loop. The same list gives exact
//! derivatives, by going through it backwards (reverse accumulation).

use crate::domain::balance::figure::{Figure, LiquidFigure};
use crate::domain::balance::outcome::Case;
use crate::domain::chemistry::water;
use crate::domain::compare::output::Output;
use crate::domain::compare::variable;
use crate::domain::recipe::field::Field;
use crate::domain::recipe::input::Dosing;
use crate::domain::working::{Constant, Expr, Given, Origin, working};
use uom::si::f64::ThermodynamicTemperature;

/// Draws evaluated at a time: enough to make the work between two instructions small, few enough
/// for all registers to stay in the processor's nearest cache.
pub const LANES: usize = 64;

/// One number for each draw of a block.
pub type Lane = [f64; LANES];

#[derive(Debug, Clone, Copy, PartialEq)]
enum Node {
    /// The input at this place.
    Input(u16),
    /// The same for all draws.
    Constant(f64),
    Add(u16, u16),
    Sub(u16, u16),
    Mul(u16, u16),
    Div(u16, u16),
    Max(u16, u16),
    /// Sensible heat of water from a temperature on, J/kg.
    SensibleHeat(u16),
}

/// The instructions.
#[derive(Debug, Clone, PartialEq)]
pub struct Tape {
    /// In an order in which each comes after those it reads.
    nodes: Vec<Node>,
    outputs: Vec<u16>,
    /// Where a number below zero, or none, means that the recipe has no balance.
    guards: Vec<u16>,
    inputs: usize,
}

/// The registers of one block.
#[derive(Debug, Clone)]
pub struct Block {
    lanes: Vec<Lane>,
}

impl Tape {
    /// The tape of `outputs` over `inputs`. `None` where the recipe does not give one of the outputs
    /// or does not use one of the inputs.
    #[must_use]
    pub fn new(case: &Case, inputs: &[Field], outputs: &[Output]) -> Option<Self> {
        let mut maker = Maker { case, inputs, nodes: Vec::new(), known: Vec::new(), open: Vec::new() };
        for (at, field) in inputs.iter().enumerate() {
            variable::get(&case.input, *field)?;
            maker.nodes.push(Node::Input(u16::try_from(at).ok()?));
        }
        let mut places = Vec::with_capacity(outputs.len());
        for output in outputs {
            places.push(maker.output(*output)?);
        }
        let guards = maker.guards()?;
        Some(Self { nodes: maker.nodes, outputs: places, guards, inputs: inputs.len() })
    }

    /// Registers to run the tape in.
    #[must_use]
    pub fn block(&self) -> Block {
        let fill = |node: &Node| match node {
            Node::Constant(value) => [*value; LANES],
            _ => [0.0; LANES],
        };
        Block { lanes: self.nodes.iter().map(fill).collect() }
    }

    /// Works out all draws of a block. Nothing is allocated.
    pub fn run(&self, block: &mut Block) {
        for (at, node) in self.nodes.iter().enumerate() {
            let Some((before, rest)) = block.lanes.split_at_mut_checked(at) else { return };
            let Some(out) = rest.first_mut() else { return };
            let of = |place: u16| before.get(place as usize);
            match *node {
                Node::Input(_) | Node::Constant(_) => {}
                Node::Add(a, b) => each(out, of(a), of(b), |a, b| a + b),
                Node::Sub(a, b) => each(out, of(a), of(b), |a, b| a - b),
                Node::Mul(a, b) => each(out, of(a), of(b), |a, b| a * b),
                Node::Div(a, b) => each(out, of(a), of(b), |a, b| a / b),
                // Not `f64::max`, which would hide what is not a number.
                Node::Max(a, b) => each(out, of(a), of(b), |a, b| if a < b { b } else { a }),
                Node::SensibleHeat(a) => each(out, of(a), of(a), |a, _| sensible_heat(a)),
            }
        }
    }

    /// The draws of an output, once the block was run.
    #[must_use]
    pub fn output<'a>(&self, block: &'a Block, at: usize) -> Option<&'a Lane> {
        block.lanes.get(*self.outputs.get(at)? as usize)
    }

    /// Marks the draws of a block for which the recipe has no balance.
    pub fn mark_impossible(&self, block: &Block, impossible: &mut [bool; LANES]) {
        for guard in &self.guards {
            if let Some(lane) = block.lanes.get(*guard as usize) {
                for (mark, value) in impossible.iter_mut().zip(lane) {
                    // What is not a number is impossible as well.
                    *mark |= value.is_nan() | (*value < 0.0);
                }
            }
        }
    }

    /// How many instructions a draw takes.
    #[must_use]
    pub fn instructions(&self) -> usize {
        self.nodes.iter().filter(|node| !matches!(node, Node::Input(_) | Node::Constant(_))).count()
    }

    /// Value and derivatives of an output at one point: ∂y/∂x for each input, exact to rounding.
    ///
    /// At the kink of a maximum the derivative is that of the first side. Source: reverse
    /// accumulation, Griewank and Walther, Evaluating Derivatives, 2nd ed. (2008), section 3.2.
    #[must_use]
    pub fn derivatives(&self, at: &[f64], output: usize) -> Option<(f64, Vec<f64>)> {
        let mut values = Vec::with_capacity(self.nodes.len());
        for node in &self.nodes {
            let of = |place: u16| values.get(place as usize).copied().unwrap_or(f64::NAN);
            values.push(match *node {
                Node::Input(place) => at.get(place as usize).copied()?,
                Node::Constant(value) => value,
                Node::Add(a, b) => of(a) + of(b),
                Node::Sub(a, b) => of(a) - of(b),
                Node::Mul(a, b) => of(a) * of(b),
                Node::Div(a, b) => of(a) / of(b),
                Node::Max(a, b) => {
                    if of(a) < of(b) {
                        of(b)
                    } else {
                        of(a)
                    }
                }
                Node::SensibleHeat(a) => sensible_heat(of(a)),
            });
        }
        let place = *self.outputs.get(output)? as usize;
        let mut slopes = vec![0.0; self.nodes.len()];
        *slopes.get_mut(place)? = 1.0;
        for (at, node) in self.nodes.iter().enumerate().rev() {
            let slope = slopes[at];
            let of = |place: u16| values[place as usize];
            let mut add = |place: u16, part: f64| slopes[place as usize] += slope * part;
            match *node {
                Node::Input(_) | Node::Constant(_) => {}
                Node::Add(a, b) => {
                    add(a, 1.0);
                    add(b, 1.0);
                }
                Node::Sub(a, b) => {
                    add(a, 1.0);
                    add(b, -1.0);
                }
                Node::Mul(a, b) => {
                    add(a, of(b));
                    add(b, of(a));
                }
                Node::Div(a, b) => {
                    add(a, 1.0 / of(b));
                    add(b, -values[at] / of(b));
                }
                Node::Max(a, b) => add(if of(a) < of(b) { b } else { a }, 1.0),
                Node::SensibleHeat(a) => add(a, -heat_capacity(of(a))),
            }
        }
        slopes.truncate(self.inputs);
        Some((values[place], slopes))
    }
}

impl Block {
    /// The draws of an input, filled in before the block is run.
    pub fn input_mut(&mut self, at: usize) -> Option<&mut Lane> {
        self.lanes.get_mut(at)
    }
}

#[inline]
fn each(out: &mut Lane, a: Option<&Lane>, b: Option<&Lane>, of: impl Fn(f64, f64) -> f64) {
    if let (Some(a), Some(b)) = (a, b) {
        for at in 0..LANES {
            out[at] = of(a[at], b[at]);
        }
    }
}

fn temperature(kelvin: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature { value: kelvin, ..ThermodynamicTemperature::default() }
}

fn sensible_heat(kelvin: f64) -> f64 {
    water::sensible_heat(temperature(kelvin)).map_or(f64::NAN, |heat| heat.value)
}

fn heat_capacity(kelvin: f64) -> f64 {
    water::heat_capacity(temperature(kelvin)).map_or(f64::NAN, |heat| heat.value)
}

/// Makes a tape.
struct Maker<'a> {
    case: &'a Case,
    inputs: &'a [Field],
    nodes: Vec<Node>,
    known: Vec<(Figure, u16)>,
    /// Figures whose formulas are being written down: none may lead back to itself.
    open: Vec<Figure>,
}

impl Maker<'_> {
    fn output(&mut self, output: Output) -> Option<u16> {
        if let Output::Figure(figure) = output {
            return self.figure(figure);
        }
        let working = output.working(self.case)?;
        self.formula(&working.formula, &working.givens)
    }

    fn figure(&mut self, figure: Figure) -> Option<u16> {
        if let Some((_, place)) = self.known.iter().find(|(known, _)| *known == figure) {
            return Some(*place);
        }
        if self.open.contains(&figure) {
            return None;
        }
        let working = working(figure, self.case)?;
        self.open.push(figure);
        let place = self.formula(&working.formula, &working.givens);
        self.open.pop();
        self.known.push((figure, place?));
        place
    }

    fn formula(&mut self, formula: &Expr, givens: &[Given]) -> Option<u16> {
        let mut places = Vec::with_capacity(givens.len());
        for given in givens {
            places.push(match given.origin {
                Origin::Field(field) => self.field(field)?,
                Origin::Figure(figure) => self.figure(figure)?,
                Origin::Constant(Constant::SensibleHeat) => {
                    let from = self.field(Field::MatTemperature)?;
                    self.put(Node::SensibleHeat(from))?
                }
                Origin::Constant(_) => self.put(Node::Constant(given.amount.base))?,
            });
        }
        self.expression(formula, &places)
    }

    fn field(&mut self, field: Field) -> Option<u16> {
        // A board that leaves the press as it is sold has one moisture, not two.
        let field = match field {
            Field::ExitMoisture if self.case.input.line.exit_moisture.is_none() => Field::BoardMoisture,
            other => other,
        };
        match self.inputs.iter().position(|input| *input == field) {
            Some(at) => u16::try_from(at).ok(),
            None => self.put(Node::Constant(variable::get(&self.case.input, field)?)),
        }
    }

    fn expression(&mut self, expr: &Expr, givens: &[u16]) -> Option<u16> {
        let mut both = |a: &Expr, b: &Expr| Some((self.expression(a, givens)?, self.expression(b, givens)?));
        let node = match expr {
            Expr::Given(at) => return givens.get(*at).copied(),
            Expr::Number(number) => Node::Constant(*number),
            Expr::Add(a, b) => both(a, b).map(|(a, b)| Node::Add(a, b))?,
            Expr::Sub(a, b) => both(a, b).map(|(a, b)| Node::Sub(a, b))?,
            Expr::Mul(a, b) => both(a, b).map(|(a, b)| Node::Mul(a, b))?,
            Expr::Div(a, b) => both(a, b).map(|(a, b)| Node::Div(a, b))?,
            Expr::Max(a, b) => both(a, b).map(|(a, b)| Node::Max(a, b))?,
            // No formula of the line's balance takes a root; the bench's statistics are not drawn.
            Expr::Sqrt(_) => return None,
        };
        self.put(node)
    }

    fn constant(&self, place: u16) -> Option<f64> {
        match self.nodes.get(place as usize) {
            Some(Node::Constant(value)) => Some(*value),
            _ => None,
        }
    }

    /// Puts a node down, once; one that only reads constants as the constant it comes to.
    fn put(&mut self, node: Node) -> Option<u16> {
        let both = |a, b| self.constant(a).zip(self.constant(b));
        let folded = match node {
            Node::Input(_) | Node::Constant(_) => None,
            Node::Add(a, b) => both(a, b).map(|(a, b)| a + b),
            Node::Sub(a, b) => both(a, b).map(|(a, b)| a - b),
            Node::Mul(a, b) => both(a, b).map(|(a, b)| a * b),
            Node::Div(a, b) => both(a, b).map(|(a, b)| a / b),
            Node::Max(a, b) => both(a, b).map(|(a, b)| a.max(b)),
            Node::SensibleHeat(a) => self.constant(a).map(sensible_heat),
        };
        let node = folded.map_or(node, Node::Constant);
        let place = self.nodes.iter().position(|other| *other == node).unwrap_or(self.nodes.len());
        if place == self.nodes.len() {
            self.nodes.push(node);
        }
        u16::try_from(place).ok()
    }

    /// What must not be below zero, apart from what does not vary: such a recipe was solved already.
    fn guards(&mut self) -> Option<Vec<u16>> {
        let mut guards = Vec::new();
        // The same limits as in `solve`: room for fibre beside the doses per volume of board, and
        // a mat that does not dry below zero.
        let ids = self.case.input.liquids.as_slice();
        let on_board: Vec<_> =
            ids.iter().filter(|liquid| hangs_on_board(ids, liquid.dosing)).map(|liquid| liquid.id).collect();
        if !on_board.is_empty() {
            let mut left = self.put(Node::Constant(1.0 - 1e-9))?;
            for id in on_board {
                let share = self.figure(Figure::Liquid(id, LiquidFigure::Share))?;
                left = self.put(Node::Sub(left, share))?;
            }
            guards.push(left);
        }
        // What is sprayed on the faces leaves room for a mat.
        if ids.iter().any(|liquid| liquid.dosing.on_faces().is_some()) {
            guards.push(self.figure(Figure::MatOvenDry)?);
        }
        let mat = self.figure(Figure::MatMoisture)?;
        let slack = self.put(Node::Constant(1e-12))?;
        guards.push(self.put(Node::Add(mat, slack))?);
        for (small, large) in variable::ordered(&self.case.input) {
            if variable::get(&self.case.input, small).is_some() && variable::get(&self.case.input, large).is_some() {
                let (small, large) = (self.field(small)?, self.field(large)?);
                guards.push(self.put(Node::Sub(large, small))?);
            }
        }
        guards.retain(|guard| self.constant(*guard).is_none());
        Some(guards)
    }
}

/// Whether a dose comes, perhaps by way of other liquids, from a dose per volume of board.
fn hangs_on_board(liquids: &[crate::domain::recipe::input::Liquid], dosing: Dosing) -> bool {
    let mut dosing = dosing;
    // The tree of bases is no deeper than it has liquids.
    for _ in 0..=liquids.len() {
        match dosing {
            Dosing::LiquidPerBoard(_) => return true,
            Dosing::SolidsOnLiquid(_, base) => match liquids.get(base) {
                Some(base) => dosing = base.dosing,
                None => return false,
            },
            _ => return false,
        }
    }
    false
}
