//! One table of what a field may hold and what is usual, with where that comes from. Validation,
//! hint and message all read it.

use crate::domain::recipe::draft::LiquidDraft;
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::liquid::{DoseWay, Role, Substance};
use crate::quantity::Unit;

/// Where a usual window comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Source {
    /// A published source.
    Published(&'static str),
    /// Known in the trade; nobody here had a document open.
    FromMemory,
    /// Common practice, no source.
    CommonPractice,
}

/// What is usual; both ends belong to it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Window {
    /// Lower end, in the limit's unit.
    pub low: f64,
    /// Upper end, in the limit's unit.
    pub high: f64,
    /// Where it comes from.
    pub source: Source,
}

/// What a field may hold.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limit {
    /// The unit of the numbers here.
    pub unit: Unit,
    /// Least value.
    pub least: f64,
    /// Whether `least` itself is refused.
    pub above_least: bool,
    /// Greatest value.
    pub most: f64,
    /// Whether `most` itself is refused.
    pub below_most: bool,
    /// What is usual, if anything is.
    pub usual: Option<Window>,
    /// Whether the field may stay blank.
    pub optional: bool,
}

impl Limit {
    pub(in crate::domain) const fn from_to(unit: Unit, least: f64, most: f64) -> Self {
        Self { unit, least, above_least: false, most, below_most: false, usual: None, optional: false }
    }

    pub(in crate::domain) const fn above_to(unit: Unit, least: f64, most: f64) -> Self {
        Self { above_least: true, ..Self::from_to(unit, least, most) }
    }

    pub(in crate::domain) const fn below_most(self) -> Self {
        Self { below_most: true, ..self }
    }

    pub(in crate::domain) const fn usually(self, low: f64, high: f64, source: Source) -> Self {
        Self { usual: Some(Window { low, high, source }), ..self }
    }

    pub(in crate::domain) const fn optional(self) -> Self {
        Self { optional: true, ..self }
    }

    /// Whether a value in the base unit is allowed.
    #[must_use]
    pub fn allows(&self, base: f64) -> bool {
        let (least, most) = (self.unit.to_base(self.least), self.unit.to_base(self.most));
        let above = if self.above_least { base > least } else { base >= least };
        let below = if self.below_most { base < most } else { base <= most };
        above && below
    }

    /// The usual window, when a value in the base unit lies outside it. A rounding error does not
    /// count as outside.
    #[must_use]
    pub fn outside_usual(&self, base: f64) -> Option<Window> {
        let slack = 1e-9 * base.abs();
        self.usual.filter(|window| {
            base < self.unit.to_base(window.low) - slack || base > self.unit.to_base(window.high) + slack
        })
    }
}

use Source::{CommonPractice, FromMemory, Published};
use Unit as U;

/// The usual press factor, s/mm.
pub const PRESS_FACTOR: Window = Window { low: 5.6, high: 14.0, source: Published("Garay (2012) and others") };

/// The limit of a field outside the liquids.
#[must_use]
pub const fn plain(field: Field) -> Limit {
    match field {
        Field::FibreFlow => Limit::above_to(U::KilogramPerHour, 0.0, 1e6).usually(500.0, 60_000.0, CommonPractice),
        Field::WantedLineSpeed => Limit::above_to(U::MetrePerMinute, 0.0, 300.0).usually(1.0, 120.0, CommonPractice),
        Field::WantedPressFactor => Limit::above_to(U::SecondPerMillimetre, 0.0, 1_000.0).usually(
            PRESS_FACTOR.low,
            PRESS_FACTOR.high,
            PRESS_FACTOR.source,
        ),
        Field::FibreMoisture => Limit::from_to(U::PercentDryBasis, 0.0, 200.0).usually(1.0, 12.0, CommonPractice),
        Field::FibrePrice => Limit::from_to(U::PerTonne, 0.0, 1e6).optional(),
        Field::MatMoisture => {
            Limit::from_to(U::PercentDryBasis, 0.0, 100.0).usually(8.0, 12.0, Published("Gruver et al.; Garay (2012)"))
        }
        Field::DryingLoss => Limit::from_to(U::Percent, 0.0, 50.0).usually(0.0, 3.0, CommonPractice),
        Field::WaterOnFibre => Limit::from_to(U::Percent, 0.0, 100.0).usually(0.0, 15.0, CommonPractice),
        Field::WaterFlow => Limit::from_to(U::KilogramPerHour, 0.0, 1e6),
        Field::BoardDensity => {
            Limit::above_to(U::KilogramPerCubicMetre, 0.0, 2_000.0).usually(400.0, 1_000.0, CommonPractice)
        }
        Field::BoardMoisture => Limit::from_to(U::PercentDryBasis, 0.0, 50.0).usually(4.0, 11.0, FromMemory),
        Field::Thickness => Limit::above_to(U::Millimetre, 0.0, 300.0).usually(2.0, 40.0, CommonPractice),
        Field::SandTop | Field::SandBottom => Limit::from_to(U::Millimetre, 0.0, 20.0).usually(0.0, 0.75, FromMemory),
        Field::SurfaceRatio => Limit::above_to(U::One, 0.0, 3.0).usually(0.9, 1.5, CommonPractice),
        Field::MatWidth | Field::SpreadWidth => {
            Limit::above_to(U::Metre, 0.0, 20.0).usually(0.3, 4.5, CommonPractice).optional()
        }
        Field::PressLength => Limit::above_to(U::Metre, 0.0, 200.0).usually(1.0, 90.0, CommonPractice).optional(),
        Field::Reject => Limit::from_to(U::Percent, 0.0, 100.0).below_most().usually(0.0, 2.0, FromMemory),
        Field::AreaYield => Limit::above_to(U::Percent, 0.0, 100.0).usually(80.0, 100.0, CommonPractice),
        Field::ExitMoisture => {
            Limit::from_to(U::PercentDryBasis, 0.0, 50.0).usually(2.0, 10.0, CommonPractice).optional()
        }
        Field::MatBulkDensity => {
            Limit::above_to(U::KilogramPerCubicMetre, 0.0, 1_000.0).usually(15.0, 60.0, FromMemory).optional()
        }
        Field::MatTemperature => Limit::from_to(U::Celsius, 1.0, 99.0).usually(15.0, 60.0, CommonPractice),
        Field::SurfaceSpray => Limit::from_to(U::GramPerSquareMetre, 0.0, 2_000.0).usually(0.0, 60.0, CommonPractice),
        Field::ShiftHours => Limit::above_to(U::Hour, 0.0, 24.0).usually(6.0, 12.0, CommonPractice),
        Field::FibreSupply | Field::BlenderCapacity => Limit::above_to(U::KilogramPerHour, 0.0, 1e6).optional(),
        Field::LeastPressFactor => Limit::above_to(U::SecondPerMillimetre, 0.0, 1_000.0).optional(),
        Field::TopLineSpeed => Limit::above_to(U::MetrePerMinute, 0.0, 300.0).optional(),
        // A liquid's limits depend on what it is: see `liquid`.
        Field::Liquid(..) => Limit::from_to(U::One, 0.0, 0.0),
    }
}

/// The limit of a liquid's field. Beside another binder a smaller dose is usual.
#[must_use]
pub fn liquid(liquid: &LiquidDraft, field: LiquidField, beside_another: bool) -> Limit {
    let substance = liquid.substance;
    match field {
        LiquidField::Dose => dose(liquid, beside_another),
        LiquidField::Solids => with(Limit::above_to(U::Percent, 0.0, 100.0), usual_solids(substance)),
        LiquidField::Density => with(
            Limit::above_to(U::KilogramPerCubicMetre, 0.0, 3_000.0),
            usual_density(substance).or(Some((700.0, 1_500.0, CommonPractice))),
        ),
        LiquidField::SpraySolids => Limit::above_to(U::Percent, 0.0, 100.0).optional(),
        LiquidField::Price => Limit::from_to(U::PerTonne, 0.0, 1e6).optional(),
    }
}

fn with(limit: Limit, usual: Option<(f64, f64, Source)>) -> Limit {
    match usual {
        Some((low, high, source)) => limit.usually(low, high, source),
        None => limit,
    }
}

fn dose(liquid: &LiquidDraft, beside_another: bool) -> Limit {
    match liquid.dose_way {
        DoseWay::SolidsOnFibre => {
            with(Limit::from_to(U::Percent, 0.0, 100.0), usual_dose_on_fibre(liquid.substance, beside_another))
        }
        DoseWay::SolidsOnLiquid(_) if liquid.role == Role::Hardener && liquid.substance.is_hardener_salt() => {
            Limit::from_to(U::Percent, 0.0, 100.0).usually(0.85, 3.0, Published("Čuk et al. (2011) and others"))
        }
        DoseWay::SolidsOnLiquid(_) if liquid.role == Role::Hardener => Limit::from_to(U::Percent, 0.0, 100.0),
        DoseWay::SolidsOnLiquid(_) => Limit::from_to(U::Percent, 0.0, 1_000.0),
        DoseWay::LiquidOnFibre => Limit::from_to(U::Percent, 0.0, 200.0),
        DoseWay::LiquidPerBoard => Limit::from_to(U::KilogramPerCubicMetre, 0.0, 1_000.0),
    }
}

/// Solids on oven-dry fibre, %.
fn usual_dose_on_fibre(substance: Substance, beside_another: bool) -> Option<(f64, f64, Source)> {
    match substance {
        Substance::Uf | Substance::Muf if beside_another => Some((4.0, 17.0, FromMemory)),
        Substance::Uf | Substance::Muf => {
            Some((9.0, 17.0, Published("Yousefi (2009); Halvarsson et al. (2008), wheat straw")))
        }
        Substance::Pmdi if beside_another => Some((0.5, 5.0, FromMemory)),
        Substance::Pmdi => Some((3.0, 5.0, Published("Halvarsson et al. (2010), rice straw"))),
        Substance::Pf => Some((4.0, 12.0, FromMemory)),
        Substance::Soy => Some((5.0, 12.0, FromMemory)),
        Substance::Tannin => Some((6.0, 14.0, FromMemory)),
        Substance::WaxEmulsion => Some((0.5, 1.0, Published("Wood Handbook (2010), chapter 11"))),
        Substance::AmmoniumSulfate
        | Substance::AmmoniumChloride
        | Substance::AmmoniumNitrate
        | Substance::Urea
        | Substance::Other => None,
    }
}

/// Solids as delivered, %. The salts end where they no longer dissolve at 20 °C.
fn usual_solids(substance: Substance) -> Option<(f64, f64, Source)> {
    match substance {
        Substance::Uf => {
            Some((60.0, 70.0, Published("around the 66 ± 1 % of Dunky (1998) and Cosereanu and Cerbu (2019)")))
        }
        Substance::Muf => Some((60.0, 65.0, FromMemory)),
        Substance::Pf => Some((40.0, 50.0, FromMemory)),
        Substance::Pmdi => Some((100.0, 100.0, FromMemory)),
        Substance::Soy => Some((25.0, 50.0, FromMemory)),
        Substance::Tannin => Some((35.0, 55.0, FromMemory)),
        Substance::WaxEmulsion => Some((30.0, 60.0, FromMemory)),
        Substance::AmmoniumSulfate => Some((10.0, 42.0, FromMemory)),
        Substance::AmmoniumChloride => Some((10.0, 27.0, FromMemory)),
        Substance::AmmoniumNitrate => Some((10.0, 65.0, FromMemory)),
        Substance::Urea => Some((10.0, 51.0, FromMemory)),
        Substance::Other => None,
    }
}

/// Density as delivered, kg/m³. The solutions' reach from water to the end of the table at 20 °C.
fn usual_density(substance: Substance) -> Option<(f64, f64, Source)> {
    match substance {
        Substance::Uf => Some((1_260.0, 1_300.0, FromMemory)),
        Substance::Muf => Some((1_240.0, 1_300.0, FromMemory)),
        Substance::Pf => Some((1_180.0, 1_220.0, FromMemory)),
        Substance::Pmdi => Some((1_210.0, 1_250.0, FromMemory)),
        Substance::Soy => Some((1_050.0, 1_200.0, FromMemory)),
        Substance::Tannin => Some((1_150.0, 1_260.0, FromMemory)),
        Substance::WaxEmulsion => Some((930.0, 970.0, FromMemory)),
        Substance::AmmoniumSulfate => {
            Some((998.0, 1_228.0, Published("CRC Handbook of Chemistry and Physics, 102nd ed., up to 40 %")))
        }
        Substance::AmmoniumChloride => {
            Some((998.0, 1_068.0, Published("CRC Handbook of Chemistry and Physics, 102nd ed., up to 24 %")))
        }
        Substance::Urea => {
            Some((998.0, 1_132.0, Published("CRC Handbook of Chemistry and Physics, 102nd ed., up to 46 %")))
        }
        Substance::AmmoniumNitrate | Substance::Other => None,
    }
}
