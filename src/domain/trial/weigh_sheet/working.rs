//! How each figure of the weigh sheet was computed.

use crate::domain::balance::figure::{Figure as RecipeFigure, LiquidFigure};
use crate::domain::recipe::field::{Field as RecipeField, LiquidField};
use crate::domain::recipe::liquid::LiquidId;
use crate::domain::trial::weigh_sheet::draft::{OverageOf, OverageOn, SprayWay};
use crate::domain::trial::weigh_sheet::field::WeighField;
use crate::domain::trial::weigh_sheet::figure::{WeighFigure, WeighLineFigure};
use crate::domain::trial::weigh_sheet::line_id::LineId;
use crate::domain::trial::weigh_sheet::masses::water_at_20c;
use crate::domain::trial::weigh_sheet::plan::Spray;
use crate::domain::trial::weigh_sheet::sheet::WeighSheet;
use crate::domain::working::symbol::symbol;
use crate::domain::working::{Constant, Expr, Given, Ground, Symbol, Working, given};
use crate::quantity::{Amount, Kind};

/// Where a number put in comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum WeighOrigin {
    /// Typed on the sheet.
    Field(WeighField),
    /// Another figure of the sheet, with a working of its own.
    Figure(WeighFigure),
    /// Entered in the recipe, or typed on the sheet in its place.
    RecipeField(RecipeField),
    /// A figure of the recipe as it is made on the bench.
    RecipeFigure(RecipeFigure),
    /// How many batches the blender's capacity makes.
    Batches,
    /// A table.
    Constant(Constant),
}

/// How a figure of the weigh sheet was computed.
pub type SheetWorking = Working<WeighFigure, WeighOrigin>;

/// The letter of a figure. A line's is without its place.
#[must_use]
pub const fn letter(figure: WeighFigure) -> Symbol {
    match figure {
        WeighFigure::MatArea => symbol("A", ""),
        WeighFigure::MatOvenDry => symbol("m", "mat,od"),
        WeighFigure::MatMoist => symbol("m", "mat"),
        WeighFigure::RawBoard => symbol("m", "raw"),
        WeighFigure::FinishedBoard => symbol("m", "board"),
        WeighFigure::FibreFactor => symbol("k", "fibre"),
        WeighFigure::LiquidFactor => symbol("k", "liquid"),
        WeighFigure::Batch => symbol("m", "batch"),
        WeighFigure::Stops => symbol("t", "p"),
        WeighFigure::PressTime => symbol("τ", ""),
        WeighFigure::SprayTime => symbol("τ", "spray"),
        WeighFigure::ActualMoisture => symbol("ω", "actual"),
        WeighFigure::Line(_, part) => match part {
            WeighLineFigure::Mass => symbol("m", ""),
            WeighLineFigure::Rounded => symbol("r", ""),
            WeighLineFigure::Volume => symbol("V", ""),
            WeighLineFigure::SprayTime => symbol("τ", ""),
            WeighLineFigure::Target => symbol("x", ""),
            WeighLineFigure::Actual => symbol("x", "actual"),
            WeighLineFigure::Deviation => symbol("Δ", ""),
        },
    }
}

/// The letter of a box.
const fn letter_of(field: WeighField) -> Symbol {
    match field {
        WeighField::MatLength => symbol("l", ""),
        WeighField::MatWidth => symbol("b", ""),
        WeighField::Boards => symbol("N", ""),
        WeighField::Overage => symbol("e", ""),
        WeighField::WallLoss => symbol("λ", ""),
        WeighField::PressFactor => symbol("φ", ""),
        WeighField::SprayVolume => symbol("q", "V"),
        WeighField::SprayMass => symbol("q", "m"),
        WeighField::Capacity => symbol("c", ""),
        WeighField::FibreStep | WeighField::FibreMinimum => symbol("s", "fibre"),
        WeighField::LiquidStep | WeighField::LiquidMinimum => symbol("s", "liquid"),
        WeighField::Tolerance => symbol("s", "tol"),
        WeighField::Thickness => symbol("t", ""),
        WeighField::BoardDensity => symbol("ρ", "b"),
        WeighField::BoardMoisture => symbol("ω", "b"),
        WeighField::FibreMoisture => symbol("ω", "f"),
        WeighField::MatMoisture => symbol("ω", "t"),
        WeighField::DryingLoss => symbol("δ", ""),
    }
}

/// How a figure was computed; `None` where the sheet does not have it, and for what is only rounded.
#[must_use]
pub fn working(figure: WeighFigure, sheet: &WeighSheet) -> Option<SheetWorking> {
    let result = sheet.figure(figure)?;
    let mut pad = Pad { sheet, givens: Vec::new() };
    let (formula, ground) = pad.formula(figure)?;
    Some(Working { figure, symbol: pad.symbol(figure), givens: pad.givens, formula, result, ground })
}

struct Pad<'a> {
    sheet: &'a WeighSheet,
    givens: Vec<Given<WeighOrigin>>,
}

const BALANCE: Ground = Ground::MassBalance;
const DEFINITION: Ground = Ground::Definition;

impl Pad<'_> {
    /// A line's letters carry the place of its liquid in the recipe; fibre and water their own index.
    fn symbol(&self, figure: WeighFigure) -> Symbol {
        let plain = letter(figure);
        let WeighFigure::Line(id, _) = figure else { return plain };
        match id {
            LineId::Fibre => Symbol { index: "f", ..plain },
            LineId::Water => Symbol { index: "w", ..plain },
            LineId::Liquid(liquid) => self.placed(plain, liquid),
            LineId::Thinning(liquid) => self.placed(Symbol { index: "thin", ..plain }, liquid),
        }
    }

    fn placed(&self, symbol: Symbol, id: LiquidId) -> Symbol {
        let liquids = self.sheet.plan.case.input.liquids.as_slice();
        liquids.iter().position(|liquid| liquid.id == id).map_or(symbol, |place| symbol.of_liquid(place + 1))
    }

    fn put(&mut self, origin: WeighOrigin, symbol: Symbol, amount: Amount) -> Expr {
        let at = self.givens.iter().position(|given| given.origin == origin).unwrap_or_else(|| {
            self.givens.push(Given { origin, symbol, amount });
            self.givens.len() - 1
        });
        Expr::Given(at)
    }

    fn fig(&mut self, figure: WeighFigure) -> Option<Expr> {
        let amount = self.sheet.figure(figure)?;
        Some(self.put(WeighOrigin::Figure(figure), self.symbol(figure), amount))
    }

    fn line(&mut self, id: LineId, part: WeighLineFigure) -> Option<Expr> {
        self.fig(WeighFigure::Line(id, part))
    }

    fn field(&mut self, field: WeighField) -> Option<Expr> {
        let plan = &self.sheet.plan;
        let base = match field {
            WeighField::MatLength => plan.length.value,
            WeighField::MatWidth => plan.width.value,
            WeighField::Boards => f64::from(plan.boards),
            WeighField::Overage => plan.overage.value,
            WeighField::WallLoss => plan.wall_loss.value,
            WeighField::PressFactor => plan.press_factor?.value,
            WeighField::SprayVolume | WeighField::SprayMass => match plan.spray? {
                Spray::Volume(flow) => flow.value,
                Spray::Mass(flow) => flow.value,
            },
            // The others enter by way of the recipe's fields, or no formula.
            _ => return None,
        };
        Some(self.put(WeighOrigin::Field(field), letter_of(field), Amount::from_base(field.kind(), base)))
    }

    fn recipe_field(&mut self, field: RecipeField) -> Option<Expr> {
        let base = given::field(&self.sheet.plan.case.input, field)?;
        let plain = Symbol::of_field(field);
        let symbol = match field {
            RecipeField::Liquid(id, _) => self.placed(plain, id),
            _ => plain,
        };
        Some(self.put(WeighOrigin::RecipeField(field), symbol, Amount::from_base(field.kind(), base)))
    }

    fn recipe(&mut self, figure: RecipeFigure) -> Option<Expr> {
        let amount = self.sheet.plan.case.figure(figure)?;
        let plain = Symbol::of_figure(figure);
        let symbol = match figure {
            RecipeFigure::Liquid(id, _) => self.placed(plain, id),
            _ => plain,
        };
        Some(self.put(WeighOrigin::RecipeFigure(figure), symbol, amount))
    }

    fn batches(&mut self) -> Expr {
        let batches = Amount::from_base(Kind::Count, f64::from(self.sheet.batches));
        self.put(WeighOrigin::Batches, symbol("n", ""), batches)
    }

    /// Oven-dry mass of all mats of a batch, N·m_mat,od/n.
    fn mats(&mut self) -> Option<Expr> {
        let boards = self.field(WeighField::Boards)?;
        Some(boards * self.fig(WeighFigure::MatOvenDry)? / self.batches())
    }

    /// By how much a sprayed line grows, k/(1 − λ).
    fn sprayed(&mut self) -> Option<Expr> {
        Some(self.fig(WeighFigure::LiquidFactor)? / (Expr::ONE - self.field(WeighField::WallLoss)?))
    }

    fn formula(&mut self, figure: WeighFigure) -> Option<(Expr, Ground)> {
        let formula = match figure {
            WeighFigure::MatArea => {
                return Some((self.field(WeighField::MatLength)? * self.field(WeighField::MatWidth)?, DEFINITION));
            }
            WeighFigure::MatOvenDry => self.recipe(RecipeFigure::MatOvenDry)? * self.fig(WeighFigure::MatArea)?,
            WeighFigure::MatMoist => self.recipe(RecipeFigure::MatWet)? * self.fig(WeighFigure::MatArea)?,
            WeighFigure::RawBoard => self.recipe(RecipeFigure::RawBoard)? * self.fig(WeighFigure::MatArea)?,
            WeighFigure::FinishedBoard => {
                let volume = self.recipe_field(RecipeField::Thickness)? * self.fig(WeighFigure::MatArea)?;
                let board = self.recipe_field(RecipeField::BoardDensity)? * volume;
                return Some((board, Ground::Published("EN 323")));
            }
            WeighFigure::FibreFactor => return Some((self.factor(true)?, DEFINITION)),
            WeighFigure::LiquidFactor => return Some((self.factor(false)?, DEFINITION)),
            WeighFigure::Batch => {
                let ids: Vec<LineId> = self.sheet.lines.iter().map(|line| line.id).collect();
                Expr::sum(ids.into_iter().filter_map(|id| self.line(id, WeighLineFigure::Mass)))
            }
            WeighFigure::Stops => return Some((self.recipe(RecipeFigure::PressedThickness)?, DEFINITION)),
            WeighFigure::PressTime => {
                return Some((self.field(WeighField::PressFactor)? * self.fig(WeighFigure::Stops)?, DEFINITION));
            }
            WeighFigure::SprayTime => {
                self.sheet.spray_time?;
                let ids: Vec<LineId> = self.sheet.lines.iter().map(|line| line.id).collect();
                Expr::sum(ids.into_iter().filter_map(|id| self.line(id, WeighLineFigure::SprayTime)))
            }
            WeighFigure::ActualMoisture => self.moisture()?,
            WeighFigure::Line(id, part) => return self.line_formula(id, part),
        };
        Some((formula, BALANCE))
    }

    fn factor(&mut self, fibre: bool) -> Option<Expr> {
        let (of, on) = (self.sheet.plan.overage_of, self.sheet.plan.overage_on);
        if on == OverageOn::Fibre && !fibre {
            return Some(Expr::ONE);
        }
        let overage = self.field(WeighField::Overage)?;
        Some(match (of, on) {
            (OverageOf::Moist, _) => Expr::ONE + overage,
            (OverageOf::OvenDry, OverageOn::Furnish) => {
                Expr::ONE + overage / (Expr::ONE + self.recipe(RecipeFigure::BlenderMoisture)?)
            }
            (OverageOf::OvenDry, OverageOn::Fibre) => {
                Expr::ONE + overage / (Expr::ONE + self.recipe_field(RecipeField::FibreMoisture)?)
            }
        })
    }

    fn line_formula(&mut self, id: LineId, part: WeighLineFigure) -> Option<(Expr, Ground)> {
        let formula = match part {
            WeighLineFigure::Mass => self.mass(id)?,
            // Rounding is no formula.
            WeighLineFigure::Rounded => return None,
            WeighLineFigure::Volume => {
                let mass = self.line(id, WeighLineFigure::Rounded)?;
                let density = match id {
                    LineId::Liquid(liquid) => self.recipe_field(RecipeField::Liquid(liquid, LiquidField::Density))?,
                    LineId::Fibre => return None,
                    LineId::Thinning(_) | LineId::Water => self.water_density()?,
                };
                return Some((mass / density, DEFINITION));
            }
            WeighLineFigure::SprayTime => return Some((self.spray_time(id)?, DEFINITION)),
            WeighLineFigure::Target => {
                let LineId::Liquid(liquid) = id else { return None };
                self.recipe(RecipeFigure::Liquid(liquid, LiquidFigure::SolidsOnFibre))?
            }
            WeighLineFigure::Actual => {
                let LineId::Liquid(liquid) = id else { return None };
                self.solids(liquid)? / self.fibre()?
            }
            WeighLineFigure::Deviation => {
                let target = self.line(id, WeighLineFigure::Target)?;
                return Some((self.line(id, WeighLineFigure::Actual)? / target - Expr::ONE, DEFINITION));
            }
        };
        Some((formula, BALANCE))
    }

    fn mass(&mut self, id: LineId) -> Option<Expr> {
        Some(match id {
            LineId::Fibre => {
                let fibre = self.recipe(RecipeFigure::FibreWet)? / self.recipe(RecipeFigure::Solids)?;
                self.mats()? * fibre * self.fig(WeighFigure::FibreFactor)?
            }
            LineId::Liquid(liquid) => {
                let own = RecipeFigure::Liquid(liquid, LiquidFigure::Liquid);
                let share = self.recipe(own)? / self.recipe(RecipeFigure::Solids)?;
                self.mats()? * share * self.sprayed()?
            }
            LineId::Thinning(liquid) => {
                let own = RecipeFigure::Liquid(liquid, LiquidFigure::Thinning);
                let share = self.recipe(own)? / self.recipe(RecipeFigure::Solids)?;
                self.mats()? * share * self.sprayed()?
            }
            LineId::Water => {
                let share = self.recipe(RecipeFigure::WaterDose)? / self.recipe(RecipeFigure::Solids)?;
                self.mats()? * share * self.sprayed()?
            }
        })
    }

    fn water_density(&mut self) -> Option<Expr> {
        let density = Amount::from_base(Kind::LiquidDensity, water_at_20c()?.value);
        let constant = Constant::WaterDensity;
        Some(self.put(WeighOrigin::Constant(constant), Symbol::of_constant(constant), density))
    }

    fn spray_time(&mut self, id: LineId) -> Option<Expr> {
        let (part, flow) = match self.sheet.plan.spray? {
            Spray::Volume(_) => (WeighLineFigure::Volume, SprayWay::Volume),
            Spray::Mass(_) => (WeighLineFigure::Rounded, SprayWay::Mass),
        };
        let mut through = vec![self.line(id, part)?];
        if let LineId::Liquid(liquid) = id {
            through.extend(self.line(LineId::Thinning(liquid), part));
        }
        let flow = match flow {
            SprayWay::Volume => self.field(WeighField::SprayVolume)?,
            SprayWay::Mass => self.field(WeighField::SprayMass)?,
        };
        Some(Expr::sum(through) / flow)
    }

    /// 1 − λ.
    fn kept(&mut self) -> Option<Expr> {
        Some(Expr::ONE - self.field(WeighField::WallLoss)?)
    }

    /// Solids of a liquid that reach the fibre, r·s·(1 − λ).
    fn solids(&mut self, id: LiquidId) -> Option<Expr> {
        let rounded = self.line(LineId::Liquid(id), WeighLineFigure::Rounded)?;
        let solids = self.recipe_field(RecipeField::Liquid(id, LiquidField::Solids))?;
        Some(rounded * solids * self.kept()?)
    }

    /// Oven-dry fibre that meets the liquids, r_f/(1 + ω_f), less what was spilled before.
    fn fibre(&mut self) -> Option<Expr> {
        let wet = Expr::ONE + self.recipe_field(RecipeField::FibreMoisture)?;
        let fibre = self.line(LineId::Fibre, WeighLineFigure::Rounded)? / wet;
        Some(match self.sheet.plan.overage_on {
            OverageOn::Furnish => fibre,
            OverageOn::Fibre => fibre / self.fig(WeighFigure::FibreFactor)?,
        })
    }

    /// Water per solids, less the drying loss.
    fn moisture(&mut self) -> Option<Expr> {
        let lines: Vec<LineId> = self.sheet.lines.iter().map(|line| line.id).collect();
        let mut sprayed = Vec::new();
        let mut solids = vec![self.fibre()?];
        for id in lines {
            if id.is_sprayed() {
                sprayed.push(self.line(id, WeighLineFigure::Rounded)?);
            }
            if let LineId::Liquid(liquid) = id {
                solids.push(self.solids(liquid)?);
            }
        }
        let own = solids.iter().skip(1).cloned().collect::<Vec<_>>();
        let fibre_water = self.fibre()? * self.recipe_field(RecipeField::FibreMoisture)?;
        let water = fibre_water + Expr::sum(sprayed) * self.kept()? - Expr::sum(own);
        Some(water / Expr::sum(solids) - self.recipe_field(RecipeField::DryingLoss)?)
    }
}
