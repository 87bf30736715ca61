//! One table of what a field may hold and what is usual, with where that comes from. Validation,
//! hint and message all read it.

use crate::domain::recipe::draft::LiquidDraft;
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::liquid::{DoseWay, Role, Substance};
use crate::domain::recipe::product::{BoardKind, Furnish, Product};
use crate::quantity::Unit;

pub use crate::domain::limit::{Limit, Source, Window};
pub use crate::domain::recipe::field::PRESS_FACTOR;

use Source::{CommonPractice, FromMemory, Published, Unverified};
use Unit as U;

/// The same in a laboratory press, s/mm: it closes more slowly, and its platens lose heat at the edges.
pub const LABORATORY_PRESS_FACTOR: Window =
    Window { low: 8.0, high: 30.0, source: Unverified("laboratory press, boards of 10 to 20 mm") };

/// The typical press factor of a production line by its binders, s/mm; of several binders from the lowest to the highest.
#[must_use]
pub fn press_factor(binders: impl Iterator<Item = Substance>) -> Window {
    let of = |binder| match binder {
        Substance::Uf | Substance::Muf => Some((4.0, 14.0)),
        Substance::Pmdi => Some((5.0, 14.0)),
        Substance::Pf => Some((7.0, 18.0)),
        Substance::Soy | Substance::Tannin => Some((7.0, 20.0)),
        _ => None,
    };
    let source = Unverified("production line, boards of 12 to 20 mm");
    binders
        .filter_map(of)
        .fold(None, |found: Option<Window>, (low, high)| {
            Some(found.map_or(Window { low, high, source }, |window| Window {
                low: window.low.min(low),
                high: window.high.max(high),
                source,
            }))
        })
        .unwrap_or(PRESS_FACTOR)
}

/// The typical mat moisture for a board density in kg/m³, % dry basis. Dense boards let less steam out, so the upper end falls from
/// 673 kg/m³ on; how far at 833 kg/m³ is not verified.
#[must_use]
pub fn mat_moisture(density: f64) -> Window {
    const BEST: (f64, f64) = (673.0, 15.3);
    const DENSE: (f64, f64) = (833.0, 12.0);
    let share = ((density - BEST.0) / (DENSE.0 - BEST.0)).clamp(0.0, 1.0);
    let high = BEST.1 + share * (DENSE.1 - BEST.1);
    let source = if share > 0.0 {
        Published(
            "Cai, Muehl, Winandy (2006): best 12.1 to 15.3 % at 673 kg/m³, lower and narrower above; upper end here unverified",
        )
    } else {
        Published("Cai, Muehl, Winandy (2006): best 12.1 to 15.3 % at 673 kg/m³")
    };
    Window { low: 8.0, high, source }
}

/// The limit of a field outside the liquids, whatever else the recipe says. A liquid's limits depend on what it is: see [`liquid`].
#[must_use]
pub const fn plain(field: Field) -> Limit {
    field.limit()
}

/// The limit of a liquid's field. Beside another binder a smaller dose is usual.
#[must_use]
pub fn liquid(liquid: &LiquidDraft, field: LiquidField, beside_another: bool, product: Product) -> Limit {
    let substance = liquid.substance;
    match field {
        LiquidField::Dose => dose(liquid, beside_another, product),
        // What else it held would be water, which it must not meet before the nozzle.
        LiquidField::Solids if substance.is_isocyanate() => Limit::from_to(U::Percent, 100.0, 100.0),
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

fn dose(liquid: &LiquidDraft, beside_another: bool, product: Product) -> Limit {
    match liquid.dose_way {
        DoseWay::SolidsOnFibre => {
            with(Limit::from_to(U::Percent, 0.0, 100.0), usual_dose_on_fibre(liquid.substance, beside_another, product))
        }
        DoseWay::SolidsOnLiquid(_) if liquid.role == Role::Hardener && liquid.substance.is_hardener_salt() => {
            Limit::from_to(U::Percent, 0.0, 100.0).usually(
                0.4,
                4.0,
                Published("Čuk et al. (2011), 0.85 to 3 %; from 0.4 to 4 % unverified"),
            )
        }
        DoseWay::SolidsOnLiquid(_) if liquid.role == Role::Hardener => Limit::from_to(U::Percent, 0.0, 100.0),
        DoseWay::SolidsOnLiquid(_) => Limit::from_to(U::Percent, 0.0, 1_000.0),
        DoseWay::LiquidOnFibre => Limit::from_to(U::Percent, 0.0, 200.0),
        DoseWay::LiquidPerBoard => Limit::from_to(U::KilogramPerCubicMetre, 0.0, 1_000.0),
        DoseWay::LiquidOnFaces(_) => {
            Limit::from_to(U::GramPerSquareMetre, 0.0, 1_000.0).usually(2.0, 40.0, CommonPractice)
        }
    }
}

/// Where the typical dose of a pMDI that is the only binder comes from.
pub const PMDI_DOSE_SOURCE: &str = "Cheng, Han, Fang (2013), about 3 % on split wheat straw at 640 kg/m³; Halvarsson, Edlund, Norgren (2010), 3 to 5 % on rice \
     straw; from 2 to 6 % unverified";

/// Solids on oven-dry fibre, %.
fn usual_dose_on_fibre(substance: Substance, beside_another: bool, product: Product) -> Option<(f64, f64, Source)> {
    match substance {
        Substance::Uf | Substance::Muf if beside_another => Some((4.0, 17.0, FromMemory)),
        Substance::Uf | Substance::Muf => Some(match (product.furnish, product.board) {
            (Furnish::Straw, BoardKind::Fibreboard) => (
                12.5,
                17.0,
                Published("Halvarsson, Edlund, Norgren (2008), 14 to 17 %, and (2010), 12.5 to 14 %, wheat-straw MDF"),
            ),
            (Furnish::Straw, BoardKind::Particleboard | BoardKind::Other) => {
                (9.0, 17.0, Published("Yousefi (2009); Halvarsson, Edlund, Norgren (2008), wheat straw"))
            }
            (Furnish::Wood, _) => (7.0, 13.0, Unverified("wood, core and face")),
            (Furnish::Mixed, _) => (7.0, 17.0, Unverified("from wood to straw")),
        }),
        Substance::Pmdi if beside_another => Some((0.5, 5.0, FromMemory)),
        Substance::Pmdi => Some((2.0, 6.0, Published(PMDI_DOSE_SOURCE))),
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
        Substance::Soy => Some((25.0, 50.0, FromMemory)),
        Substance::Tannin => Some((35.0, 55.0, FromMemory)),
        Substance::WaxEmulsion => Some((30.0, 60.0, FromMemory)),
        Substance::AmmoniumSulfate => Some((10.0, 42.0, FromMemory)),
        Substance::AmmoniumChloride => Some((10.0, 27.0, FromMemory)),
        Substance::AmmoniumNitrate => Some((10.0, 65.0, FromMemory)),
        Substance::Urea => Some((10.0, 51.0, FromMemory)),
        // Holds nothing but solids: see `liquid`.
        Substance::Pmdi | Substance::Other => None,
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
