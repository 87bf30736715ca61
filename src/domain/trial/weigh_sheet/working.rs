//! How each figure of the weigh-out sheet came about.

use crate::domain::balance::figure::{Figure as RecipeFigure, LiquidFigure};
use crate::domain::recipe::field::{Field as RecipeField, LiquidField};
use crate::domain::recipe::liquid::LiquidId;
use crate::domain::trial::weigh_sheet::draft::{OverageOf, OverageOn, SprayWay};
use crate::domain::trial::weigh_sheet::field::Field;
use crate::domain::trial::weigh_sheet::figure::{Figure, LineFigure};
use crate::domain::trial::weigh_sheet::line_id::LineId;
use crate::domain::trial::weigh_sheet::plan::Spray;
use crate::domain::trial::weigh_sheet::sheet::{Sheet, water_at_20c};
use crate::domain::working::symbol::symbol;
use crate::domain::working::{Constant, Expr, Given, Ground, Symbol, Working, given};
use crate::quantity::{Amount, Kind};

/// Where a number put in comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Origin {
    /// Typed on the sheet.
    Field(Field),
    /// Another figure of the sheet, with a working of its own.
    Figure(Figure),
    /// Entered in the recipe, or typed on the sheet in its place.
    RecipeField(RecipeField),
    /// A figure of the recipe as it is made on the bench.
    RecipeFigure(RecipeFigure),
    /// How many batches the blender's capacity makes.
    Batches,
    /// A table.
    Constant(Constant),
}

/// How a figure of the weigh-out sheet came about.
pub type SheetWorking = Working<Figure, Origin>;

/// The letter of a figure. A line's is without its place.
#[must_use]
pub const fn letter(figure: Figure) -> Symbol {
    match figure {
        Figure::MatArea => symbol("A", ""),
        Figure::MatOvenDry => symbol("m", "mat,od"),
        Figure::MatMoist => symbol("m", "mat"),
        Figure::RawBoard => symbol("m", "raw"),
        Figure::FinishedBoard => symbol("m", "board"),
        Figure::FibreFactor => symbol("k", "fibre"),
        Figure::LiquidFactor => symbol("k", "liquid"),
        Figure::Batch => symbol("m", "batch"),
        Figure::Stops => symbol("t", "p"),
        Figure::PressTime => symbol("τ", ""),
        Figure::SprayTime => symbol("τ", "spray"),
        Figure::GivenMoisture => symbol("ω", "given"),
        Figure::Line(_, part) => match part {
            LineFigure::Mass => symbol("m", ""),
            LineFigure::Rounded => symbol("r", ""),
            LineFigure::Volume => symbol("V", ""),
            LineFigure::SprayTime => symbol("τ", ""),
            LineFigure::Wanted => symbol("x", ""),
            LineFigure::Given => symbol("x", "given"),
            LineFigure::Deviation => symbol("Δ", ""),
        },
    }
}

/// The letter of a box.
const fn letter_of(field: Field) -> Symbol {
    match field {
        Field::MatLength => symbol("l", ""),
        Field::MatWidth => symbol("b", ""),
        Field::Boards => symbol("N", ""),
        Field::Overage => symbol("e", ""),
        Field::WallLoss => symbol("λ", ""),
        Field::PressFactor => symbol("φ", ""),
        Field::SprayVolume => symbol("q", "V"),
        Field::SprayMass => symbol("q", "m"),
        Field::Capacity => symbol("c", ""),
        Field::FibreStep | Field::FibreLeast => symbol("s", "fibre"),
        Field::LiquidStep | Field::LiquidLeast => symbol("s", "liquid"),
        Field::Thickness => symbol("t", ""),
        Field::BoardDensity => symbol("ρ", "b"),
        Field::BoardMoisture => symbol("ω", "b"),
        Field::FibreMoisture => symbol("ω", "f"),
        Field::MatMoisture => symbol("ω", "t"),
        Field::DryingLoss => symbol("δ", ""),
    }
}

/// How a figure came about; `None` where the sheet does not have it, and for what is only rounded.
#[must_use]
pub fn working(figure: Figure, sheet: &Sheet) -> Option<SheetWorking> {
    let result = sheet.figure(figure)?;
    let mut pad = Pad { sheet, givens: Vec::new() };
    let (formula, ground) = pad.formula(figure)?;
    Some(Working { figure, symbol: pad.symbol(figure), givens: pad.givens, formula, result, ground })
}

struct Pad<'a> {
    sheet: &'a Sheet,
    givens: Vec<Given<Origin>>,
}

const BALANCE: Ground = Ground::MassBalance;
const DEFINITION: Ground = Ground::Definition;

impl Pad<'_> {
    /// A line's letters carry the place of its liquid in the recipe; fibre and water their own index.
    fn symbol(&self, figure: Figure) -> Symbol {
        let plain = letter(figure);
        let Figure::Line(id, _) = figure else { return plain };
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

    fn put(&mut self, origin: Origin, symbol: Symbol, amount: Amount) -> Expr {
        let at = self.givens.iter().position(|given| given.origin == origin).unwrap_or_else(|| {
            self.givens.push(Given { origin, symbol, amount });
            self.givens.len() - 1
        });
        Expr::Given(at)
    }

    fn fig(&mut self, figure: Figure) -> Option<Expr> {
        let amount = self.sheet.figure(figure)?;
        Some(self.put(Origin::Figure(figure), self.symbol(figure), amount))
    }

    fn line(&mut self, id: LineId, part: LineFigure) -> Option<Expr> {
        self.fig(Figure::Line(id, part))
    }

    fn field(&mut self, field: Field) -> Option<Expr> {
        let plan = &self.sheet.plan;
        let base = match field {
            Field::MatLength => plan.length.value,
            Field::MatWidth => plan.width.value,
            Field::Boards => f64::from(plan.boards),
            Field::Overage => plan.overage.value,
            Field::WallLoss => plan.wall_loss.value,
            Field::PressFactor => plan.press_factor?.value,
            Field::SprayVolume | Field::SprayMass => match plan.spray? {
                Spray::Volume(flow) => flow.value,
                Spray::Mass(flow) => flow.value,
            },
            // The others enter by way of the recipe's fields, or no formula.
            _ => return None,
        };
        Some(self.put(Origin::Field(field), letter_of(field), Amount::from_base(field.kind(), base)))
    }

    fn recipe_field(&mut self, field: RecipeField) -> Option<Expr> {
        let base = given::field(&self.sheet.plan.case.input, field)?;
        let plain = Symbol::of_field(field);
        let symbol = match field {
            RecipeField::Liquid(id, _) => self.placed(plain, id),
            _ => plain,
        };
        Some(self.put(Origin::RecipeField(field), symbol, Amount::from_base(field.kind(), base)))
    }

    fn recipe(&mut self, figure: RecipeFigure) -> Option<Expr> {
        let amount = self.sheet.plan.case.figure(figure)?;
        let plain = Symbol::of_figure(figure);
        let symbol = match figure {
            RecipeFigure::Liquid(id, _) => self.placed(plain, id),
            _ => plain,
        };
        Some(self.put(Origin::RecipeFigure(figure), symbol, amount))
    }

    fn batches(&mut self) -> Expr {
        let batches = Amount::from_base(Kind::Count, f64::from(self.sheet.batches));
        self.put(Origin::Batches, symbol("n", ""), batches)
    }

    /// Oven-dry mass of all mats of a batch, N·m_mat,od/n.
    fn mats(&mut self) -> Option<Expr> {
        let boards = self.field(Field::Boards)?;
        Some(boards * self.fig(Figure::MatOvenDry)? / self.batches())
    }

    /// By how much a sprayed line grows, k/(1 − λ).
    fn sprayed(&mut self) -> Option<Expr> {
        Some(self.fig(Figure::LiquidFactor)? / (Expr::ONE - self.field(Field::WallLoss)?))
    }

    fn formula(&mut self, figure: Figure) -> Option<(Expr, Ground)> {
        let formula = match figure {
            Figure::MatArea => return Some((self.field(Field::MatLength)? * self.field(Field::MatWidth)?, DEFINITION)),
            Figure::MatOvenDry => self.recipe(RecipeFigure::MatOvenDry)? * self.fig(Figure::MatArea)?,
            Figure::MatMoist => self.recipe(RecipeFigure::MatWet)? * self.fig(Figure::MatArea)?,
            Figure::RawBoard => self.recipe(RecipeFigure::RawBoard)? * self.fig(Figure::MatArea)?,
            Figure::FinishedBoard => {
                let volume = self.recipe_field(RecipeField::Thickness)? * self.fig(Figure::MatArea)?;
                let board = self.recipe_field(RecipeField::BoardDensity)? * volume;
                return Some((board, Ground::Published("EN 323")));
            }
            Figure::FibreFactor => return Some((self.factor(true)?, DEFINITION)),
            Figure::LiquidFactor => return Some((self.factor(false)?, DEFINITION)),
            Figure::Batch => {
                let ids: Vec<LineId> = self.sheet.lines.iter().map(|line| line.id).collect();
                Expr::sum(ids.into_iter().filter_map(|id| self.line(id, LineFigure::Mass)))
            }
            Figure::Stops => return Some((self.recipe(RecipeFigure::PressedThickness)?, DEFINITION)),
            Figure::PressTime => {
                return Some((self.field(Field::PressFactor)? * self.fig(Figure::Stops)?, DEFINITION));
            }
            Figure::SprayTime => {
                self.sheet.spray_time?;
                let ids: Vec<LineId> = self.sheet.lines.iter().map(|line| line.id).collect();
                Expr::sum(ids.into_iter().filter_map(|id| self.line(id, LineFigure::SprayTime)))
            }
            Figure::GivenMoisture => self.moisture()?,
            Figure::Line(id, part) => return self.line_formula(id, part),
        };
        Some((formula, BALANCE))
    }

    fn factor(&mut self, fibre: bool) -> Option<Expr> {
        let (of, on) = (self.sheet.plan.overage_of, self.sheet.plan.overage_on);
        if on == OverageOn::Fibre && !fibre {
            return Some(Expr::ONE);
        }
        let overage = self.field(Field::Overage)?;
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

    fn line_formula(&mut self, id: LineId, part: LineFigure) -> Option<(Expr, Ground)> {
        let formula = match part {
            LineFigure::Mass => self.mass(id)?,
            // Rounding is no formula.
            LineFigure::Rounded => return None,
            LineFigure::Volume => {
                let mass = self.line(id, LineFigure::Rounded)?;
                let density = match id {
                    LineId::Liquid(liquid) => self.recipe_field(RecipeField::Liquid(liquid, LiquidField::Density))?,
                    LineId::Fibre => return None,
                    LineId::Thinning(_) | LineId::Water => self.water_density()?,
                };
                return Some((mass / density, DEFINITION));
            }
            LineFigure::SprayTime => return Some((self.spray_time(id)?, DEFINITION)),
            LineFigure::Wanted => {
                let LineId::Liquid(liquid) = id else { return None };
                self.recipe(RecipeFigure::Liquid(liquid, LiquidFigure::SolidsOnFibre))?
            }
            LineFigure::Given => {
                let LineId::Liquid(liquid) = id else { return None };
                self.solids(liquid)? / self.fibre()?
            }
            LineFigure::Deviation => {
                let wanted = self.line(id, LineFigure::Wanted)?;
                return Some((self.line(id, LineFigure::Given)? / wanted - Expr::ONE, DEFINITION));
            }
        };
        Some((formula, BALANCE))
    }

    fn mass(&mut self, id: LineId) -> Option<Expr> {
        Some(match id {
            LineId::Fibre => {
                let fibre = self.recipe(RecipeFigure::FibreWet)? / self.recipe(RecipeFigure::Solids)?;
                self.mats()? * fibre * self.fig(Figure::FibreFactor)?
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
        Some(self.put(Origin::Constant(constant), Symbol::of_constant(constant), density))
    }

    fn spray_time(&mut self, id: LineId) -> Option<Expr> {
        let (part, flow) = match self.sheet.plan.spray? {
            Spray::Volume(_) => (LineFigure::Volume, SprayWay::Volume),
            Spray::Mass(_) => (LineFigure::Rounded, SprayWay::Mass),
        };
        let mut through = vec![self.line(id, part)?];
        if let LineId::Liquid(liquid) = id {
            through.extend(self.line(LineId::Thinning(liquid), part));
        }
        let flow = match flow {
            SprayWay::Volume => self.field(Field::SprayVolume)?,
            SprayWay::Mass => self.field(Field::SprayMass)?,
        };
        Some(Expr::sum(through) / flow)
    }

    /// 1 − λ.
    fn kept(&mut self) -> Option<Expr> {
        Some(Expr::ONE - self.field(Field::WallLoss)?)
    }

    /// Solids of a liquid that reach the fibre, r·s·(1 − λ).
    fn solids(&mut self, id: LiquidId) -> Option<Expr> {
        let rounded = self.line(LineId::Liquid(id), LineFigure::Rounded)?;
        let solids = self.recipe_field(RecipeField::Liquid(id, LiquidField::Solids))?;
        Some(rounded * solids * self.kept()?)
    }

    /// Oven-dry fibre that meets the liquids, r_f/(1 + ω_f), less what was spilled before.
    fn fibre(&mut self) -> Option<Expr> {
        let wet = Expr::ONE + self.recipe_field(RecipeField::FibreMoisture)?;
        let fibre = self.line(LineId::Fibre, LineFigure::Rounded)? / wet;
        Some(match self.sheet.plan.overage_on {
            OverageOn::Furnish => fibre,
            OverageOn::Fibre => fibre / self.fig(Figure::FibreFactor)?,
        })
    }

    /// Water per solids, less the drying loss.
    fn moisture(&mut self) -> Option<Expr> {
        let lines: Vec<LineId> = self.sheet.lines.iter().map(|line| line.id).collect();
        let mut sprayed = Vec::new();
        let mut solids = vec![self.fibre()?];
        for id in lines {
            if id.is_sprayed() {
                sprayed.push(self.line(id, LineFigure::Rounded)?);
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
