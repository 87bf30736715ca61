//! The starting library: one typical binder system a family, to take into a recipe and change.
//!
//! Every value is typical, not a supplier's: each entry is marked as preset, and each liquid says
//! where its values come from. The supplier's certificate wins over all of them. Names and sources
//! are data of the recipe, as a mill's own would be, and not words of the page.

use crate::domain::recipe::draft::{Draft, Entry, LiquidDraft};
use crate::domain::recipe::limit::PMDI_DOSE_SOURCE;
use crate::domain::recipe::liquid::{DoseWay, LiquidId, Role, Substance};
use crate::quantity::Unit;

/// Names a system of the library.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum SystemKey {
    /// Urea-formaldehyde resin.
    Uf,
    /// Melamine-urea-formaldehyde resin.
    Muf,
    /// Phenol-formaldehyde resin.
    Pf,
    /// pMDI as delivered.
    Pmdi,
    /// pMDI emulsified with water at the nozzle.
    PmdiEmulsified,
    /// Soy-based adhesive.
    Soy,
    /// Tannin-based adhesive.
    Tannin,
    /// Urea-formaldehyde resin with pMDI.
    UfPmdi,
}

/// A binder system: liquids in order of addition, their numbers and bases those within the system.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BinderSystem {
    /// Its name within the library.
    pub key: SystemKey,
    /// Its liquids.
    pub liquids: Vec<LiquidDraft>,
}

impl SystemKey {
    /// All of them, in the order in which they are offered.
    pub const ALL: &'static [SystemKey] =
        &[Self::Pmdi, Self::PmdiEmulsified, Self::Uf, Self::Muf, Self::Pf, Self::UfPmdi, Self::Soy, Self::Tannin];

    /// The stable key, on the page.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Uf => "uf",
            Self::Muf => "muf",
            Self::Pf => "pf",
            Self::Pmdi => "pmdi",
            Self::PmdiEmulsified => "pmdi_emulsified",
            Self::Soy => "soy",
            Self::Tannin => "tannin",
            Self::UfPmdi => "uf_pmdi",
        }
    }

    /// The system itself.
    #[must_use]
    pub fn system(self) -> BinderSystem {
        let liquids = match self {
            Self::Uf => vec![uf("12"), ammonium_sulfate("2"), urea(), wax()],
            Self::Muf => vec![muf(), ammonium_sulfate("1.5"), wax()],
            Self::Pf => vec![pf(), wax()],
            Self::Pmdi => vec![pmdi("4", &pmdi_dose_source()), wax()],
            Self::PmdiEmulsified => vec![emulsified(pmdi("4", &pmdi_dose_source())), wax()],
            Self::Soy => vec![soy(), wax()],
            Self::Tannin => vec![tannin(), hexamine(), wax()],
            Self::UfPmdi => vec![uf("8"), ammonium_sulfate("2"), pmdi("1.5", HYBRID_DOSE), wax()],
        };
        let numbered = (1..).zip(liquids).map(|(number, liquid)| LiquidDraft { id: LiquidId(number), ..liquid });
        BinderSystem { key: self, liquids: numbered.collect() }
    }
}

/// What is typical of a liquid made of a substance, as the library has it. The salts that no system holds share what is known of the
/// one that is there, without its density.
#[must_use]
pub fn typical(substance: Substance) -> Option<LiquidDraft> {
    let of = |substance| {
        let mut library = SystemKey::ALL.iter().flat_map(|system| system.system().liquids);
        library.find(|typical| typical.substance == substance)
    };
    match substance {
        Substance::AmmoniumChloride | Substance::AmmoniumNitrate => {
            of(Substance::AmmoniumSulfate).map(|salt| LiquidDraft {
                name: String::new(),
                substance,
                density: Entry::empty(Unit::KilogramPerCubicMetre),
                source: "Typical. Dose and concentration: unverified.".to_owned(),
                ..salt
            })
        }
        Substance::Other => None,
        other => of(other),
    }
}

/// Puts `liquids` behind those of a recipe, with numbers that are free there. A base within `liquids`
/// stays that liquid; one outside them is kept as it is and reported by the check.
pub fn add_liquids(draft: &mut Draft, liquids: &[LiquidDraft]) {
    let mut numbers = Vec::with_capacity(liquids.len());
    let first = draft.liquids.len();
    for liquid in liquids {
        let id = draft.free_id();
        numbers.push((liquid.id, id));
        draft.liquids.push(LiquidDraft { id, ..liquid.clone() });
    }
    for liquid in draft.liquids.iter_mut().skip(first) {
        if let DoseWay::SolidsOnLiquid(base) = liquid.dose_way
            && let Some((_, new)) = numbers.iter().find(|(old, _)| *old == base)
        {
            liquid.dose_way = DoseWay::SolidsOnLiquid(*new);
        }
    }
}

/// Where it comes from beside another binder.
const HYBRID_DOSE: &str = "Dose beside another binder: unverified.";

/// What one liquid of the library is, all numbers typical.
struct Typical {
    name: &'static str,
    role: Role,
    substance: Substance,
    dose_way: DoseWay,
    /// %, on the base of `dose_way`.
    dose: &'static str,
    /// %, by mass.
    solids: &'static str,
    /// kg/m³.
    density: &'static str,
    source: String,
}

impl From<Typical> for LiquidDraft {
    fn from(typical: Typical) -> Self {
        Self {
            name: typical.name.to_owned(),
            substance: typical.substance,
            dose_way: typical.dose_way,
            dose: Entry::preset(typical.dose, Unit::Percent),
            solids: Entry::preset(typical.solids, Unit::Percent),
            density: Entry::preset(typical.density, Unit::KilogramPerCubicMetre),
            source: typical.source,
            // The number is given where the system is put together.
            ..Self::blank(LiquidId(0), typical.role)
        }
    }
}

/// The first liquid of a system, which is its resin.
const FIRST: LiquidId = LiquidId(1);

fn uf(dose: &'static str) -> LiquidDraft {
    let dose_source = match dose {
        "12" => "Dose: Yousefi (2009), 9 to 12 %; Halvarsson et al. (2008), more on wheat straw.",
        _ => HYBRID_DOSE,
    };
    Typical {
        name: "UF resin",
        role: Role::Binder,
        substance: Substance::Uf,
        dose_way: DoseWay::SolidsOnFibre,
        dose,
        solids: "66",
        density: "1280",
        source: format!(
            "Typical. {dose_source} Solids: Dunky (1998); Cosereanu and Cerbu (2019). Density: unverified."
        ),
    }
    .into()
}

fn muf() -> LiquidDraft {
    Typical {
        name: "MUF resin",
        role: Role::Binder,
        substance: Substance::Muf,
        dose_way: DoseWay::SolidsOnFibre,
        dose: "14",
        solids: "64",
        density: "1270",
        source: "Typical. Dose: Halvarsson et al. (2008), wheat straw, melamine-modified UF, 14 to 17 %. Solids and \
                 density: unverified."
            .to_owned(),
    }
    .into()
}

fn pf() -> LiquidDraft {
    Typical {
        name: "PF resin",
        role: Role::Binder,
        substance: Substance::Pf,
        dose_way: DoseWay::SolidsOnFibre,
        dose: "7",
        solids: "45",
        density: "1200",
        source: "Typical. Dose, solids and density: unverified.".to_owned(),
    }
    .into()
}

/// Where the dose of a pMDI comes from when it is the only binder: that of its typical range.
fn pmdi_dose_source() -> String {
    format!("Dose: {PMDI_DOSE_SOURCE}.")
}

fn pmdi(dose: &'static str, dose_source: &str) -> LiquidDraft {
    Typical {
        name: "pMDI",
        role: Role::Binder,
        substance: Substance::Pmdi,
        dose_way: DoseWay::SolidsOnFibre,
        dose,
        solids: "100",
        density: "1230",
        source: format!("Typical. {dose_source} Solids and density: unverified."),
    }
    .into()
}

/// Half water at the nozzle: from memory.
fn emulsified(neat: LiquidDraft) -> LiquidDraft {
    LiquidDraft {
        spray_solids: Entry::preset("50", Unit::Percent),
        source: format!("{} Spray solids: unverified.", neat.source),
        ..neat
    }
}

fn soy() -> LiquidDraft {
    Typical {
        name: "Soy adhesive",
        role: Role::Binder,
        substance: Substance::Soy,
        dose_way: DoseWay::SolidsOnFibre,
        dose: "6",
        solids: "40",
        density: "1120",
        source: "Typical. Dose, solids and density: unverified.".to_owned(),
    }
    .into()
}

fn tannin() -> LiquidDraft {
    Typical {
        name: "Tannin adhesive",
        role: Role::Binder,
        substance: Substance::Tannin,
        dose_way: DoseWay::SolidsOnFibre,
        dose: "9",
        solids: "50",
        density: "1220",
        source: "Typical. Dose, solids and density: unverified.".to_owned(),
    }
    .into()
}

fn hexamine() -> LiquidDraft {
    Typical {
        name: "Hexamine solution",
        role: Role::Hardener,
        substance: Substance::Other,
        dose_way: DoseWay::SolidsOnLiquid(FIRST),
        dose: "6",
        solids: "35",
        density: "1080",
        source:
            "Typical. Dose, solids and density: unverified. Hexamine gives off formaldehyde and ammonia when heated."
                .to_owned(),
    }
    .into()
}

fn ammonium_sulfate(dose: &'static str) -> LiquidDraft {
    Typical {
        name: "Ammonium sulfate solution",
        role: Role::Hardener,
        substance: Substance::AmmoniumSulfate,
        dose_way: DoseWay::SolidsOnLiquid(FIRST),
        dose,
        solids: "20",
        density: "1115.4",
        source: "Typical. Dose: Čuk et al. (2011), 0.85 to 3 %. Density at 20 °C: CRC Handbook of Chemistry \
                 and Physics, 102nd ed. Concentration: unverified."
            .to_owned(),
    }
    .into()
}

fn urea() -> LiquidDraft {
    Typical {
        name: "Urea solution",
        role: Role::Scavenger,
        substance: Substance::Urea,
        dose_way: DoseWay::SolidsOnLiquid(FIRST),
        dose: "3",
        solids: "40",
        density: "1110.6",
        source: "Typical. Density at 20 °C: CRC Handbook of Chemistry and Physics, 102nd ed. Dose and concentration: \
                 unverified."
            .to_owned(),
    }
    .into()
}

fn wax() -> LiquidDraft {
    Typical {
        name: "Wax emulsion",
        role: Role::Wax,
        substance: Substance::WaxEmulsion,
        dose_way: DoseWay::SolidsOnFibre,
        dose: "0.8",
        solids: "55",
        density: "950",
        source: "Typical. Dose: Wood Handbook (2010), chapter 11, 0.5 to 1 %. Solids and density: unverified."
            .to_owned(),
    }
    .into()
}
