//! What is compared: every figure of one recipe's balance, and some that only make sense beside
//! another recipe's.

use crate::domain::balance::figure::{Figure, LiquidFigure};
use crate::domain::balance::machine::Machine;
use crate::domain::balance::outcome::Case;
use crate::domain::compare::rounding::without_noise;
use crate::domain::compare::unpriced::missing;
use crate::domain::recipe::input::WaterPlan;
use crate::domain::recipe::liquid::{LiquidId, Role};
use crate::domain::working::symbol::symbol;
use crate::domain::working::{Constant, Expr, Given, Ground, Origin, Symbol, Working, given, working};
use crate::quantity::{Amount, Kind, Unit};

/// A figure to compare recipes by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Output {
    /// A figure of the balance.
    Figure(Figure),
    /// Solids of all binders on oven-dry fibre.
    BinderOnFibre,
    /// All liquids as delivered, by mass.
    LiquidFlow,
    /// Water that comes with all liquids, their thinning included.
    LiquidWater,
    /// Water that the fibre dryer would have to take out beyond what it does, for the water dose to
    /// be exactly zero: W − W*, which is F·(ω_f − ω_f0). Below zero it could leave that much in.
    /// Needs a mat moisture wanted.
    DryerWater,
    /// Heat that this water takes, from 20 °C, without losses of the dryer.
    DryerHeat,
    /// Oven-dry fibre flow at which the first machine is fully used.
    FibreAtLimit,
    /// Finished volume made per hour at that flow.
    VolumeAtLimit,
    /// Cost of all that has a price, at the flow of the recipe, for so many hours a year.
    CostPerYear(u16),
}

/// All machines that may limit the line.
const MACHINES: [Machine; 4] = [Machine::FibreSupply, Machine::Blender, Machine::Press, Machine::LineSpeed];

impl Output {
    /// What is compared side by side, in the material's order, for so many hours a year.
    #[must_use]
    pub fn side_by_side(hours: u16) -> Vec<Self> {
        let mut all: Vec<Self> = [
            Self::Figure(Figure::Fibre),
            Self::BinderOnFibre,
            Self::LiquidFlow,
            Self::LiquidWater,
            Self::Figure(Figure::WaterDose),
            Self::Figure(Figure::WaterExcess),
            Self::Figure(Figure::BlenderMoisture),
            Self::Figure(Figure::MatMoisture),
            Self::Figure(Figure::FibreMoistureForNoWater),
            Self::DryerWater,
            Self::DryerHeat,
            Self::Figure(Figure::MatWet),
            Self::Figure(Figure::LineSpeed),
            Self::Figure(Figure::PressFactor),
            Self::Figure(Figure::PressVapour),
            Self::Figure(Figure::HeatPerWater),
            Self::Figure(Figure::PressHeat),
            Self::Figure(Figure::FinishedVolume),
        ]
        .into();
        all.extend(MACHINES.map(|machine| Self::Figure(Figure::Used(machine))));
        all.extend([Self::FibreAtLimit, Self::VolumeAtLimit]);
        all.extend([Self::Figure(Figure::FibreCost), Self::Figure(Figure::Cost), Self::CostPerYear(hours)]);
        all
    }

    /// What it measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::Figure(figure) => figure.kind(),
            Self::BinderOnFibre => Kind::Dose,
            Self::LiquidFlow | Self::LiquidWater => Kind::LiquidFlow,
            Self::DryerWater => Kind::LossFlow,
            Self::DryerHeat => Kind::HeatFlow,
            Self::FibreAtLimit => Kind::FibreFlow,
            Self::VolumeAtLimit => Kind::BoardFlow,
            Self::CostPerYear(_) => Kind::YearCost,
        }
    }

    /// The stable key, on the page and in exports.
    #[must_use]
    pub fn key(self) -> String {
        match self {
            Self::Figure(figure) => return figure.key(),
            Self::BinderOnFibre => "binder_on_fibre",
            Self::LiquidFlow => "liquid_flow",
            Self::LiquidWater => "liquid_water",
            Self::DryerWater => "dryer_water",
            Self::DryerHeat => "dryer_heat",
            Self::FibreAtLimit => "fibre_at_limit",
            Self::VolumeAtLimit => "volume_at_limit",
            Self::CostPerYear(_) => "cost_per_year",
        }
        .to_owned()
    }

    /// Its letter.
    #[must_use]
    pub const fn symbol(self) -> Symbol {
        match self {
            Self::Figure(figure) => Symbol::of_figure(figure),
            Self::BinderOnFibre => symbol("x", "binder"),
            Self::LiquidFlow => symbol("L", "all"),
            Self::LiquidWater => symbol("W", "liquids"),
            Self::DryerWater => symbol("W", "dry"),
            Self::DryerHeat => symbol("Q", "dry"),
            Self::FibreAtLimit => symbol("F", "lim"),
            Self::VolumeAtLimit => symbol("V", "lim"),
            Self::CostPerYear(_) => symbol("C", "a"),
        }
    }

    /// Its value; `None` where the recipe does not give it.
    #[must_use]
    pub fn value(self, case: &Case) -> Option<Amount> {
        match self {
            Self::Figure(Figure::Cost) if !is_priced(case) => None,
            Self::Figure(figure) => case.figure(figure),
            _ => self.working(case).map(|working| working.result),
        }
    }

    /// How it is computed; `None` where the recipe does not give it.
    #[must_use]
    pub fn working(self, case: &Case) -> Option<Working<Self>> {
        let symbol = self.symbol();
        let kind = self.kind();
        let mut givens = Givens { case, all: Vec::new() };
        let formula = match self {
            // A sum that leaves something out is no cost.
            Self::Figure(Figure::Cost) | Self::CostPerYear(_) if !is_priced(case) => return None,
            Self::Figure(figure) => {
                let Working { symbol, givens, formula, result, ground, .. } = working(figure, case)?;
                return Some(Working { figure: self, symbol, givens, formula, result, ground });
            }
            Self::BinderOnFibre => {
                let binder = |id: &LiquidId| case.role(*id) == Some(Role::Binder);
                let ids: Vec<_> = case.solved.liquids.iter().map(|flow| flow.id).filter(binder).collect();
                givens.sum(&ids, LiquidFigure::SolidsOnFibre)?
            }
            Self::LiquidFlow => givens.sum(&case.ids(), LiquidFigure::Liquid)?,
            Self::LiquidWater => {
                let ids = case.ids();
                let water = givens.sum(&ids, LiquidFigure::Water)?;
                let thinned: Vec<_> = ids.into_iter().filter(|id| case.is_thinned(*id)).collect();
                if thinned.is_empty() { water } else { water + givens.sum(&thinned, LiquidFigure::Thinning)? }
            }
            Self::DryerWater => givens.dryer_water()?,
            Self::DryerHeat => {
                let heat = given::constant(&case.input, Constant::DryerHeat)?;
                givens.dryer_water()?
                    * givens.constant(Constant::DryerHeat, Amount::from_base(Kind::SpecificHeat, heat))
            }
            Self::FibreAtLimit => givens.figure(Figure::Fibre)? / givens.most_used()?,
            Self::VolumeAtLimit => givens.figure(Figure::FinishedVolume)? / givens.most_used()?,
            Self::CostPerYear(hours) => {
                let hours = Amount::new(Kind::ShiftTime, f64::from(hours), Unit::Hour);
                givens.figure(Figure::Cost)?
                    * givens.figure(Figure::FinishedVolume)?
                    * givens.constant(Constant::HoursPerYear, hours)
            }
        };
        let value = formula.value(&|at| givens.all.get(at).map_or(f64::NAN, |given| given.amount.base));
        // Water on hand and water needed may cancel.
        let value = match self {
            Self::DryerWater | Self::DryerHeat => {
                let waters = [Figure::WaterOnHand, Figure::WaterNeeded];
                let size: f64 = waters.iter().filter_map(|water| case.figure(*water)).map(|water| water.base).sum();
                let heat = if self == Self::DryerHeat {
                    given::constant(&case.input, Constant::DryerHeat).unwrap_or(1.0)
                } else {
                    1.0
                };
                without_noise(value, size * heat)
            }
            _ => value,
        };
        let result = value.is_finite().then(|| Amount::from_base(kind, value))?;
        let ground = match self {
            Self::LiquidFlow | Self::LiquidWater | Self::DryerWater => Ground::MassBalance,
            Self::DryerHeat => Ground::Published("IAPWS-95"),
            _ => Ground::Definition,
        };
        Some(Working { figure: self, symbol, givens: givens.all, formula, result, ground })
    }
}

/// Whether everything that a recipe uses has a price.
#[must_use]
pub fn is_priced(case: &Case) -> bool {
    missing(case, None).is_empty()
}

/// The machine that limits a line: the most used of those with a limit.
#[must_use]
pub fn limiting(case: &Case) -> Option<Machine> {
    case.solved.capacities.first().map(|capacity| capacity.machine)
}

impl Case {
    fn ids(&self) -> Vec<LiquidId> {
        self.solved.liquids.iter().map(|flow| flow.id).collect()
    }

    fn role(&self, id: LiquidId) -> Option<Role> {
        self.input.liquids.as_slice().iter().find(|liquid| liquid.id == id).map(|liquid| liquid.role)
    }
}

/// Collects the numbers put in.
struct Givens<'a> {
    case: &'a Case,
    all: Vec<Given>,
}

impl Givens<'_> {
    fn put(&mut self, given: Given) -> Expr {
        let at = self.all.iter().position(|other| other.origin == given.origin).unwrap_or_else(|| {
            self.all.push(given);
            self.all.len() - 1
        });
        Expr::Given(at)
    }

    fn figure(&mut self, figure: Figure) -> Option<Expr> {
        let amount = self.case.figure(figure)?;
        let place = match figure {
            Figure::Liquid(id, _) => self.case.ids().into_iter().position(|other| other == id),
            _ => None,
        };
        let symbol = Symbol::of_figure(figure);
        let symbol = place.map_or(symbol, |place| symbol.of_liquid(place + 1));
        Some(self.put(Given { origin: Origin::Figure(figure), symbol, amount }))
    }

    fn constant(&mut self, constant: Constant, amount: Amount) -> Expr {
        self.put(Given { origin: Origin::Constant(constant), symbol: Symbol::of_constant(constant), amount })
    }

    /// The same figure of several liquids; `None` for no liquids.
    fn sum(&mut self, ids: &[LiquidId], part: LiquidFigure) -> Option<Expr> {
        let mut terms = Vec::with_capacity(ids.len());
        for id in ids {
            terms.push(self.figure(Figure::Liquid(*id, part))?);
        }
        terms.into_iter().reduce(|sum, term| sum + term)
    }

    fn dryer_water(&mut self) -> Option<Expr> {
        match self.case.input.water {
            WaterPlan::ToMatMoisture(_) => Some(self.figure(Figure::WaterOnHand)? - self.figure(Figure::WaterNeeded)?),
            WaterPlan::OnFibre(_) | WaterPlan::Flow(_) | WaterPlan::None => None,
        }
    }

    /// The largest share of a limit in use.
    fn most_used(&mut self) -> Option<Expr> {
        let mut shares = Vec::new();
        for machine in MACHINES {
            shares.extend(self.figure(Figure::Used(machine)));
        }
        shares.into_iter().reduce(Expr::max)
    }
}
