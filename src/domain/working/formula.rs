//! The formulas of the balance.

use super::{Constant, Expr, Given, Ground, Origin, Symbol, Working, given};
use crate::domain::balance::figure::{Figure, LiquidFigure};
use crate::domain::balance::machine::Machine;
use crate::domain::balance::outcome::Case;
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::input::{Dosing, Feed, Liquid, WaterPlan};
use crate::domain::recipe::liquid::{DoseWay, Faces, LiquidId};
use crate::quantity::{Amount, Kind};

/// How a figure is computed; `None` where the recipe does not give it.
#[must_use]
pub fn working(figure: Figure, case: &Case) -> Option<Working> {
    let result = case.figure(figure)?;
    let mut sheet = Sheet { case, givens: Vec::new(), complete: true };
    let (formula, ground) = sheet.formula(figure);
    let symbol = sheet.figure_symbol(figure);
    sheet.complete.then_some(Working { figure, symbol, givens: sheet.givens, formula, result, ground })
}

/// Collects the numbers put in while a formula is written down.
pub(super) struct Sheet<'a> {
    pub(super) case: &'a Case,
    givens: Vec<Given>,
    /// Whether every number that was asked for is there. Noted here instead of being handed up from
    /// each number, which would take three times the code.
    complete: bool,
}

/// What most formulas are: mass in equals mass out.
const BALANCE: Ground = Ground::MassBalance;
const DEFINITION: Ground = Ground::Definition;
const MOISTURE: Ground = Ground::Published("EN 322; ISO 16979; ASTM D4442");
const BOARD: Ground = Ground::Published("EN 323");
const WATER: Ground = Ground::Published("IAPWS-95");

impl Sheet<'_> {
    fn place(&self, id: LiquidId) -> Option<usize> {
        self.liquids().iter().position(|liquid| liquid.id == id)
    }

    fn liquids(&self) -> &[Liquid] {
        self.case.input.liquids.as_slice()
    }

    fn ids(&self) -> Vec<LiquidId> {
        self.liquids().iter().map(|liquid| liquid.id).collect()
    }

    /// The liquids that go into the furnish, or those on the faces.
    fn ids_of(&self, on_faces: bool) -> Vec<LiquidId> {
        let there = |liquid: &&Liquid| liquid.dosing.on_faces().is_some() == on_faces;
        self.liquids().iter().filter(there).map(|liquid| liquid.id).collect()
    }

    fn dosing(&self, id: LiquidId) -> Option<Dosing> {
        self.place(id).map(|at| self.liquids()[at].dosing)
    }

    pub(super) fn is_on_faces(&self, id: LiquidId) -> bool {
        self.dosing(id).is_some_and(|dosing| dosing.on_faces().is_some())
    }

    fn figure_symbol(&self, figure: Figure) -> Symbol {
        match figure {
            Figure::Liquid(id, _) => self.placed(Symbol::of_figure(figure), id),
            plain => Symbol::of_figure(plain),
        }
    }

    fn placed(&self, symbol: Symbol, id: LiquidId) -> Symbol {
        self.place(id).map_or(symbol, |place| symbol.of_liquid(place + 1))
    }

    /// Puts a number in, once.
    fn put(&mut self, origin: Origin, symbol: Symbol, amount: Amount) -> Expr {
        let at = self.givens.iter().position(|given| given.origin == origin).unwrap_or_else(|| {
            self.givens.push(Given { origin, symbol, amount });
            self.givens.len() - 1
        });
        Expr::Given(at)
    }

    /// A number that the recipe does not give.
    fn missing(&mut self) -> Expr {
        self.complete = false;
        Expr::ZERO
    }

    pub(super) fn fig(&mut self, figure: Figure) -> Expr {
        match self.case.figure(figure) {
            Some(amount) => self.put(Origin::Figure(figure), self.figure_symbol(figure), amount),
            None if figure.is_of_flow() && !self.case.has_flow() => self.per_fibre(figure),
            None => self.missing(),
        }
    }

    /// A figure that may be left out.
    fn if_given(&mut self, figure: Figure) -> Option<Expr> {
        self.case.figure(figure).is_some().then(|| self.fig(figure))
    }

    pub(super) fn field(&mut self, field: Field) -> Expr {
        let Some(base) = given::field(&self.case.input, field) else { return self.missing() };
        let symbol = match field {
            Field::Liquid(id, _) => self.placed(Symbol::of_field(field), id),
            // A belt reading is moist fibre and has a letter of its own.
            Field::FibreFlow if matches!(self.case.input.feed, Feed::Belt(_)) => Symbol::of_figure(Figure::FibreWet),
            plain => Symbol::of_field(plain),
        };
        let amount = Amount::from_base(self.kind(field), base);
        self.put(Origin::Field(field), symbol, amount)
    }

    /// What a field measures, read off the solved recipe.
    fn kind(&self, field: Field) -> Kind {
        match field {
            Field::Liquid(id, part) => {
                let way = match self.dosing(id) {
                    Some(Dosing::LiquidPerBoard(_)) => DoseWay::LiquidPerBoard,
                    Some(Dosing::LiquidOnFaces(_, faces)) => DoseWay::LiquidOnFaces(faces),
                    _ => DoseWay::SolidsOnFibre,
                };
                part.kind(way)
            }
            plain => plain.kind(),
        }
    }

    fn constant(&mut self, constant: Constant) -> Expr {
        let Some(base) = given::constant(&self.case.input, constant) else { return self.missing() };
        let kind = match constant {
            Constant::WaterDensity => Kind::LiquidDensity,
            Constant::SensibleHeat | Constant::LatentHeat | Constant::DryerHeat => Kind::SpecificHeat,
            Constant::HoursPerYear => Kind::ShiftTime,
        };
        self.put(Origin::Constant(constant), Symbol::of_constant(constant), Amount::from_base(kind, base))
    }

    /// The same figure of every liquid that has it.
    fn all(&mut self, part: LiquidFigure) -> Vec<Expr> {
        self.ids().into_iter().filter_map(|id| self.if_given(Figure::Liquid(id, part))).collect()
    }

    /// Water that comes with the liquids and thins them.
    fn water_with_liquids(&mut self) -> Vec<Expr> {
        let ids = self.ids_of(false);
        let mut terms: Vec<Expr> = ids.iter().map(|id| self.fig(Figure::Liquid(*id, LiquidFigure::Water))).collect();
        terms.extend(self.thinning(ids));
        terms
    }

    /// Water that thins liquids.
    fn thinning(&mut self, ids: Vec<LiquidId>) -> Vec<Expr> {
        let thinned = ids.into_iter().filter(|id| self.case.is_thinned(*id)).collect::<Vec<_>>();
        thinned.into_iter().map(|id| self.fig(Figure::Liquid(id, LiquidFigure::Thinning))).collect()
    }

    /// Area of mat per time: width and speed, or the furnish over the mat weight.
    fn mat_area(&mut self) -> Expr {
        match self.if_given(Figure::LineSpeed) {
            Some(speed) => self.field(Field::MatWidth) * speed,
            None => self.fig(Figure::NetSolids) / self.fig(Figure::MatOvenDry),
        }
    }

    /// What is sprayed per area of mat, from a dose per area of face.
    fn per_mat_area(&mut self, dose: Field, faces: Faces) -> Expr {
        let dose = self.field(dose);
        match faces.count() {
            1 => dose,
            count => Expr::Number(f64::from(count)) * dose,
        }
    }

    /// What a liquid on the faces brings to the press water, less what its solids leave with.
    fn spray_vapour(&mut self, id: LiquidId) -> Expr {
        let own = |part| Figure::Liquid(id, part);
        let water = self.fig(own(LiquidFigure::Water));
        let water = Expr::sum(std::iter::once(water).chain(self.thinning(vec![id])));
        water - self.fig(own(LiquidFigure::Solids)) * self.field(Field::ExitMoisture)
    }

    /// 1 + a moisture.
    fn wet(&mut self, moisture: Figure) -> Expr {
        Expr::ONE + self.fig(moisture)
    }

    fn sanded(&mut self) -> Expr {
        self.field(Field::SandTop) + self.field(Field::SandBottom)
    }

    fn entered(&mut self, field: Field) -> (Expr, Ground) {
        (self.field(field), Ground::Entered)
    }

    #[allow(clippy::too_many_lines, reason = "one formula an arm, in the material's order")]
    pub(super) fn formula(&mut self, figure: Figure) -> (Expr, Ground) {
        use Field as In;
        use Figure as Fig;
        let formula = match figure {
            Fig::Fibre => match self.case.input.feed {
                Feed::OvenDry(_) => return self.entered(In::FibreFlow),
                Feed::Belt(_) => {
                    let wet = Expr::ONE + self.field(In::FibreMoisture);
                    return (self.field(In::FibreFlow) / wet, MOISTURE);
                }
                // Without one nothing of a flow is given.
                Feed::None => return (self.missing(), BALANCE),
                Feed::LineSpeed(..) | Feed::PressFactor(..) => {
                    self.fig(Fig::NetSolids) / ((Expr::ONE - self.field(In::Reject)) * self.fig(Fig::FurnishPerFibre))
                }
            },
            Fig::FibreWet => match self.case.input.feed {
                Feed::Belt(_) => return self.entered(In::FibreFlow),
                _ => {
                    let wet = Expr::ONE + self.field(In::FibreMoisture);
                    return (self.fig(Fig::Fibre) * wet, MOISTURE);
                }
            },
            Fig::FibreWater => return (self.fig(Fig::Fibre) * self.field(In::FibreMoisture), MOISTURE),
            Fig::Liquid(id, part) => return self.liquid(id, part),
            Fig::Solids => self.solids(),
            Fig::FurnishPerFibre => Expr::ONE + Expr::sum(self.all(LiquidFigure::SolidsOnFibre)),
            Fig::WaterNeeded => (self.field(In::MatMoisture) + self.field(In::DryingLoss)) * self.fig(Fig::Solids),
            Fig::WaterOnHand => {
                let fibre = self.fig(Fig::FibreWater);
                Expr::sum(std::iter::once(fibre).chain(self.water_with_liquids()))
            }
            Fig::WaterDose => match self.case.input.water {
                WaterPlan::ToMatMoisture(_) => Expr::ZERO.max(self.fig(Fig::WaterNeeded) - self.fig(Fig::WaterOnHand)),
                WaterPlan::OnFibre(_) => self.field(In::WaterOnFibre) * self.fig(Fig::Fibre),
                WaterPlan::Flow(_) => return self.entered(In::WaterFlow),
                WaterPlan::None => return (Expr::ZERO, Ground::Entered),
            },
            Fig::WaterDoseVolume => {
                return (self.fig(Fig::WaterDose) / self.constant(Constant::WaterDensity), WATER);
            }
            Fig::WaterDoseOnFibre if self.case.has_flow() => self.fig(Fig::WaterDose) / self.fig(Fig::Fibre),
            Fig::WaterDoseOnFibre => match self.case.input.water {
                WaterPlan::OnFibre(_) => return self.entered(In::WaterOnFibre),
                WaterPlan::None => return (Expr::ZERO, Ground::Entered),
                _ => return self.formula(Fig::WaterDose),
            },
            Fig::WaterExcess => Expr::ZERO.max(self.fig(Fig::WaterOnHand) - self.fig(Fig::WaterNeeded)),
            Fig::FibreMoistureForNoWater => {
                let needed = self.fig(Fig::WaterNeeded);
                let with_liquids = Expr::sum(self.water_with_liquids());
                let left = needed - with_liquids;
                if self.case.has_flow() { left / self.fig(Fig::Fibre) } else { left }
            }
            Fig::BlenderMoisture => (self.fig(Fig::WaterOnHand) + self.fig(Fig::WaterDose)) / self.fig(Fig::Solids),
            Fig::MatMoisture => self.fig(Fig::BlenderMoisture) - self.field(In::DryingLoss),
            Fig::FurnishWet => self.fig(Fig::Solids) * self.wet(Fig::BlenderMoisture),
            Fig::Reject => self.field(In::Reject) * self.fig(Fig::Solids),
            Fig::NetSolids => match self.case.input.feed {
                // Backwards from the line speed.
                Feed::LineSpeed(..) | Feed::PressFactor(..) => {
                    self.fig(Fig::LineSpeed) * self.field(In::MatWidth) * self.fig(Fig::MatOvenDry)
                }
                _ => self.fig(Fig::Solids) * (Expr::ONE - self.field(In::Reject)),
            },
            Fig::TransportVapour => self.fig(Fig::NetSolids) * self.field(In::DryingLoss),
            Fig::MatWet => return (self.fig(Fig::MatOvenDry) * self.wet(Fig::MatMoisture), MOISTURE),
            Fig::MatOvenDry => {
                let wet = Expr::ONE + self.field(In::BoardMoisture);
                let mut laid = self.fig(Fig::RawBoard) / wet;
                for id in self.ids_of(true) {
                    if let Some(Dosing::LiquidOnFaces(_, faces)) = self.dosing(id) {
                        let sprayed = self.per_mat_area(In::Liquid(id, LiquidField::Dose), faces);
                        laid = laid - sprayed * self.field(In::Liquid(id, LiquidField::Solids));
                    }
                }
                return (laid, MOISTURE);
            }
            Fig::MatFibre => self.fig(Fig::MatOvenDry) * self.fig(Fig::Fibre) / self.fig(Fig::Solids),
            Fig::MatWater => self.fig(Fig::MatOvenDry) * self.fig(Fig::MatMoisture),
            Fig::MatRunning => self.fig(Fig::MatWet) * self.field(In::MatWidth),
            Fig::MatHeight => return (self.fig(Fig::MatWet) / self.field(In::MatBulkDensity), DEFINITION),
            Fig::Compaction => return (self.fig(Fig::MatHeight) / self.fig(Fig::PressedThickness), DEFINITION),
            Fig::Trim => {
                let spread = self.field(In::SpreadWidth) - self.field(In::MatWidth);
                self.fig(Fig::NetSolids) * spread / self.field(In::MatWidth)
            }
            Fig::LineSpeed => match self.case.input.feed {
                Feed::LineSpeed(..) => return self.entered(In::WantedLineSpeed),
                Feed::PressFactor(..) => {
                    let pressing = self.field(In::WantedPressFactor) * self.fig(Fig::PressedThickness);
                    return (self.field(In::PressLength) / pressing, DEFINITION);
                }
                _ => self.fig(Fig::NetSolids) / (self.fig(Fig::MatOvenDry) * self.field(In::MatWidth)),
            },
            Fig::PressedThickness => return (self.field(In::Thickness) + self.sanded(), DEFINITION),
            Fig::PressTime => return (self.field(In::PressLength) / self.fig(Fig::LineSpeed), DEFINITION),
            Fig::PressFactor => match self.case.input.feed {
                Feed::PressFactor(..) => return self.entered(In::WantedPressFactor),
                _ => return (self.fig(Fig::PressTime) / self.fig(Fig::PressedThickness), DEFINITION),
            },
            Fig::SurfaceSpray => {
                let sprayed = self.per_mat_area(In::SurfaceSpray, self.case.input.line.sprayed_faces);
                sprayed * self.mat_area()
            }
            Fig::SurfaceSprayVolume => {
                return (self.fig(Fig::SurfaceSpray) / self.constant(Constant::WaterDensity), WATER);
            }
            Fig::PressVapour => {
                let dried = self.fig(Fig::MatMoisture) - self.field(In::ExitMoisture);
                let mut vapour = self.fig(Fig::NetSolids) * dried + self.fig(Fig::SurfaceSpray);
                for id in self.ids_of(true) {
                    vapour = vapour + self.spray_vapour(id);
                }
                vapour
            }
            Fig::HeatPerWater => {
                return (self.constant(Constant::SensibleHeat) + self.constant(Constant::LatentHeat), WATER);
            }
            Fig::PressHeat => self.fig(Fig::PressVapour) * self.fig(Fig::HeatPerWater),
            Fig::RawBoard => {
                let thickness = self.field(In::Thickness);
                let skins = self.field(In::SurfaceRatio) * self.sanded();
                return (self.field(In::BoardDensity) * (thickness + skins), BOARD);
            }
            Fig::FinishedArea => self.fig(Fig::NetSolids) / self.fig(Fig::MatOvenDry) * self.field(In::AreaYield),
            Fig::FinishedVolume => self.fig(Fig::FinishedArea) * self.field(In::Thickness),
            Fig::FinishedMass => {
                return (self.fig(Fig::FinishedVolume) * self.field(In::BoardDensity), BOARD);
            }
            Fig::SanderDust => {
                let skins = self.field(In::SurfaceRatio) * self.sanded();
                let od = self.field(In::BoardDensity) / (Expr::ONE + self.field(In::BoardMoisture));
                od * skins * (self.fig(Fig::NetSolids) / self.fig(Fig::MatOvenDry))
            }
            Fig::Offcuts => {
                let od = self.field(In::BoardDensity) / (Expr::ONE + self.field(In::BoardMoisture));
                let board = od * self.field(In::Thickness);
                let pressed = self.fig(Fig::NetSolids) / self.fig(Fig::MatOvenDry);
                board * pressed * (Expr::ONE - self.field(In::AreaYield))
            }
            Fig::FibrePerVolume => self.fig(Fig::Fibre) / self.fig(Fig::FinishedVolume),
            Fig::FibrePerArea => self.fig(Fig::Fibre) / self.fig(Fig::FinishedArea),
            Fig::FibrePerBoardMass => self.fig(Fig::Fibre) / self.fig(Fig::FinishedMass),
            Fig::FibrePerShift => self.fig(Fig::Fibre) * self.field(In::ShiftHours),
            Fig::WaterPerVolume => {
                let dose = self.fig(Fig::WaterDose);
                let thinning = self.thinning(self.ids());
                Expr::sum(std::iter::once(dose).chain(thinning)) / self.fig(Fig::FinishedVolume)
            }
            Fig::FibreCost => return (self.field(In::FibrePrice) * self.fig(Fig::FibrePerVolume), DEFINITION),
            Fig::Cost => {
                let fibre = self.if_given(Fig::FibreCost);
                let liquids = self.all(LiquidFigure::Cost);
                return (Expr::sum(fibre.into_iter().chain(liquids)), DEFINITION);
            }
            Fig::Used(machine) => return (self.used(machine), DEFINITION),
            Fig::FibreAtLimit(machine) => self.fig(Fig::Fibre) / self.fig(Fig::Used(machine)),
        };
        (formula, BALANCE)
    }

    fn used(&mut self, machine: Machine) -> Expr {
        match machine {
            Machine::FibreSupply => self.fig(Figure::Fibre) / self.field(Field::FibreSupply),
            Machine::Blender => self.fig(Figure::Solids) / self.field(Field::BlenderCapacity),
            Machine::Press => self.field(Field::LeastPressFactor) / self.fig(Figure::PressFactor),
            Machine::LineSpeed => self.fig(Figure::LineSpeed) / self.field(Field::TopLineSpeed),
        }
    }

    /// Whether a dose comes, perhaps by way of other liquids, from a dose per volume of board.
    fn hangs_on_board(&self, id: LiquidId) -> bool {
        let mut at = self.place(id);
        // The tree of bases is no deeper than it has liquids.
        for _ in 0..self.liquids().len() {
            match at.map(|at| self.liquids()[at].dosing) {
                Some(Dosing::LiquidPerBoard(_)) => return true,
                Some(Dosing::SolidsOnLiquid(_, base)) => at = Some(base),
                _ => return false,
            }
        }
        false
    }

    /// S = F + Σm; with doses per volume of board, which themselves grow with S, S = (F + Σm)/(1 − Σg).
    fn solids(&mut self) -> Expr {
        if matches!(self.case.input.feed, Feed::LineSpeed(..) | Feed::PressFactor(..)) {
            return self.fig(Figure::NetSolids) / (Expr::ONE - self.field(Field::Reject));
        }
        let fibre = self.fig(Figure::Fibre);
        let furnish = self.ids_of(false);
        let (on_board, on_fibre): (Vec<_>, Vec<_>) = furnish.into_iter().partition(|id| self.hangs_on_board(*id));
        let mut terms = vec![fibre];
        for id in on_fibre {
            terms.push(self.fig(Figure::Liquid(id, LiquidFigure::Solids)));
        }
        let sum = Expr::sum(terms);
        if on_board.is_empty() {
            return sum;
        }
        let mut shares = Vec::new();
        for id in on_board {
            shares.push(self.fig(Figure::Liquid(id, LiquidFigure::Share)));
        }
        sum / (Expr::ONE - Expr::sum(shares))
    }

    pub(super) fn liquid(&mut self, id: LiquidId, part: LiquidFigure) -> (Expr, Ground) {
        let Some(dosing) = self.dosing(id) else {
            return (self.missing(), BALANCE);
        };
        let own = |part| Figure::Liquid(id, part);
        let field = |part| Field::Liquid(id, part);
        let base_id = match dosing {
            Dosing::SolidsOnLiquid(_, base) => self.liquids().get(base).map(|base| base.id),
            _ => None,
        };
        // Only asked for where there is a base.
        let of_base = |part| Figure::Liquid(base_id.unwrap_or(id), part);
        let formula = match part {
            LiquidFigure::Solids => match dosing {
                _ if self.hangs_on_board(id) => self.fig(own(LiquidFigure::Share)) * self.fig(Figure::Solids),
                Dosing::SolidsOnLiquid(..) => {
                    self.field(field(LiquidField::Dose)) * self.fig(of_base(LiquidFigure::Solids))
                }
                Dosing::LiquidOnFibre(_) => {
                    let liquid = self.field(field(LiquidField::Dose)) * self.fig(Figure::Fibre);
                    liquid * self.field(field(LiquidField::Solids))
                }
                Dosing::LiquidOnFaces(..) => {
                    self.fig(own(LiquidFigure::Liquid)) * self.field(field(LiquidField::Solids))
                }
                _ => self.field(field(LiquidField::Dose)) * self.fig(Figure::Fibre),
            },
            LiquidFigure::Liquid if self.is_on_faces(id) => {
                let faces = if let Dosing::LiquidOnFaces(_, faces) = dosing { faces } else { Faces::default() };
                self.per_mat_area(field(LiquidField::Dose), faces) * self.mat_area()
            }
            LiquidFigure::Liquid => self.fig(own(LiquidFigure::Solids)) / self.field(field(LiquidField::Solids)),
            LiquidFigure::Volume => self.fig(own(LiquidFigure::Liquid)) / self.field(field(LiquidField::Density)),
            LiquidFigure::Water => self.fig(own(LiquidFigure::Liquid)) - self.fig(own(LiquidFigure::Solids)),
            LiquidFigure::Thinning => {
                let spray = self.fig(own(LiquidFigure::Solids)) / self.field(field(LiquidField::SpraySolids));
                spray - self.fig(own(LiquidFigure::Liquid))
            }
            LiquidFigure::Spray => self.fig(own(LiquidFigure::Liquid)) + self.fig(own(LiquidFigure::Thinning)),
            LiquidFigure::Share => match dosing {
                Dosing::LiquidPerBoard(_) => {
                    let dose = self.field(field(LiquidField::Dose)) * self.field(field(LiquidField::Solids));
                    let net = (Expr::ONE - self.field(Field::Reject)) * self.field(Field::AreaYield);
                    dose * net * self.field(Field::Thickness) / self.fig(Figure::MatOvenDry)
                }
                Dosing::SolidsOnLiquid(..) if self.hangs_on_board(id) => {
                    self.field(field(LiquidField::Dose)) * self.fig(of_base(LiquidFigure::Share))
                }
                _ => self.fig(own(LiquidFigure::Solids)) / self.fig(Figure::Solids),
            },
            LiquidFigure::SolidsOnFibre => match dosing {
                _ if self.hangs_on_board(id) => {
                    let rest = Expr::sum(self.shares_of_board());
                    let on_fibre = Expr::sum(self.on_fibre());
                    self.fig(own(LiquidFigure::Share)) * (Expr::ONE + on_fibre) / (Expr::ONE - rest)
                }
                Dosing::SolidsOnFibre(_) => return self.entered(field(LiquidField::Dose)),
                Dosing::LiquidOnFibre(_) => {
                    self.field(field(LiquidField::Dose)) * self.field(field(LiquidField::Solids))
                }
                Dosing::SolidsOnLiquid(..) | Dosing::LiquidPerBoard(_) | Dosing::LiquidOnFaces(..) => {
                    self.field(field(LiquidField::Dose)) * self.fig(of_base(LiquidFigure::SolidsOnFibre))
                }
            },
            LiquidFigure::LiquidOnFibre | LiquidFigure::ThinningOnFibre if !self.case.has_flow() => {
                return self.on_fibre_without_flow(id, part);
            }
            LiquidFigure::ThinningOnFibre => self.fig(own(LiquidFigure::Thinning)) / self.fig(Figure::Fibre),
            LiquidFigure::LiquidOnFibre => self.fig(own(LiquidFigure::Liquid)) / self.fig(Figure::Fibre),
            LiquidFigure::InMat => self.fig(Figure::MatOvenDry) * self.fig(own(LiquidFigure::Share)),
            LiquidFigure::PerVolume => self.fig(own(LiquidFigure::Liquid)) / self.fig(Figure::FinishedVolume),
            LiquidFigure::PerArea => self.fig(own(LiquidFigure::Liquid)) / self.fig(Figure::FinishedArea),
            LiquidFigure::PerBoardMass => self.fig(own(LiquidFigure::Liquid)) / self.fig(Figure::FinishedMass),
            LiquidFigure::PerShift => self.fig(own(LiquidFigure::Liquid)) * self.field(Field::ShiftHours),
            LiquidFigure::VolumePerShift => self.fig(own(LiquidFigure::Volume)) * self.field(Field::ShiftHours),
            LiquidFigure::Cost => {
                let cost = self.field(field(LiquidField::Price)) * self.fig(own(LiquidFigure::PerVolume));
                return (cost, DEFINITION);
            }
        };
        (formula, BALANCE)
    }

    fn shares_of_board(&mut self) -> Vec<Expr> {
        let ids: Vec<_> = self.ids().into_iter().filter(|id| self.hangs_on_board(*id)).collect();
        ids.into_iter().map(|id| self.fig(Figure::Liquid(id, LiquidFigure::Share))).collect()
    }

    fn on_fibre(&mut self) -> Vec<Expr> {
        let ids: Vec<_> = self.ids_of(false).into_iter().filter(|id| !self.hangs_on_board(*id)).collect();
        ids.into_iter().map(|id| self.fig(Figure::Liquid(id, LiquidFigure::SolidsOnFibre))).collect()
    }
}
