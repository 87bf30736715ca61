//! Which cautions apply, and to which work: what can hurt someone, as data. The words are in `ui::text`.

use crate::domain::balance::outcome::Outcome;
use crate::domain::chemistry::solute::Solute;
use crate::domain::recipe::check::limit_of;
use crate::domain::recipe::draft::Draft;
use crate::domain::recipe::field::Field;
use crate::domain::recipe::liquid::{LiquidId, Role, Substance};
use crate::quantity::{Moisture, Unit};

/// Something that can hurt someone, or that a reader may take for more than it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Caution {
    /// A mat so wet that steam can burst the board.
    Steam,
    /// pMDI and other isocyanates: sensitisers, and they make gas with water.
    Isocyanate,
    /// Tanks of an isocyanate, under dry air or nitrogen.
    IsocyanateTank,
    /// An isocyanate emulsified with water: short-lived.
    Emulsion,
    /// Catching the flow of an isocyanate.
    IsocyanateCatch,
    /// Isocyanates stick to hot metal faces.
    ReleaseAgent,
    /// Resins that give off formaldehyde.
    Formaldehyde,
    /// Vapour of the hot press.
    PressVapour,
    /// Spraying by hand or in an open blender at the bench.
    BenchSpray,
    /// Phenol-formaldehyde resins are strongly alkaline.
    Alkaline,
    /// An ammonium salt beside an alkaline resin gives off ammonia.
    Ammonia,
    /// Acid cure: pot life, and heat in a mixed batch.
    AcidCure,
    /// Ammonium nitrate is an oxidiser.
    Oxidiser,
    /// Ammonium chloride corrodes.
    Corrosion,
    /// Salts that cool the water in which they dissolve.
    Cooling,
    /// Dust of straw or wood: combustible, mouldy, with silica.
    Dust,
    /// Damp bales heat by themselves.
    DampBales,
    /// A spray under high pressure goes through skin.
    HighPressure,
    /// The press crushes and burns.
    Press,
    /// Catching a pump's flow to weigh it.
    CatchTest,
    /// The tool advises, it does not control.
    Advice,
}

impl Caution {
    /// All of them, in the order in which they are shown.
    pub const ALL: &'static [Caution] = &[
        Self::Steam,
        Self::Isocyanate,
        Self::IsocyanateTank,
        Self::Emulsion,
        Self::IsocyanateCatch,
        Self::ReleaseAgent,
        Self::Formaldehyde,
        Self::PressVapour,
        Self::BenchSpray,
        Self::Alkaline,
        Self::Ammonia,
        Self::AcidCure,
        Self::Oxidiser,
        Self::Corrosion,
        Self::Cooling,
        Self::Dust,
        Self::DampBales,
        Self::HighPressure,
        Self::Press,
        Self::CatchTest,
        Self::Advice,
    ];

    /// The stable key of the caution, on the page and in exports.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Steam => "steam",
            Self::Isocyanate => "isocyanate",
            Self::IsocyanateTank => "isocyanate_tank",
            Self::Emulsion => "emulsion",
            Self::IsocyanateCatch => "isocyanate_catch",
            Self::ReleaseAgent => "release_agent",
            Self::Formaldehyde => "formaldehyde",
            Self::PressVapour => "press_vapour",
            Self::BenchSpray => "bench_spray",
            Self::Alkaline => "alkaline",
            Self::Ammonia => "ammonia",
            Self::AcidCure => "acid_cure",
            Self::Oxidiser => "oxidiser",
            Self::Corrosion => "corrosion",
            Self::Cooling => "cooling",
            Self::Dust => "dust",
            Self::DampBales => "damp_bales",
            Self::HighPressure => "high_pressure",
            Self::Press => "press",
            Self::CatchTest => "catch_test",
            Self::Advice => "advice",
        }
    }
}

/// The work at hand.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Work {
    /// Planning a recipe.
    Recipe,
    /// Catching a pump's flow.
    CatchTest,
    /// Setting the pumps.
    PumpSettings,
    /// Checking the running line.
    LineCheck,
    /// Making boards in the laboratory.
    Bench,
}

/// The cautions that apply to a recipe, in the order of [`Caution::ALL`]. What the liquids are is
/// taken from the draft, so that they are shown while the recipe cannot be solved; whether the mat is
/// too wet from its solved moisture.
#[must_use]
pub fn cautions(draft: &Draft, outcome: &Outcome) -> Vec<Caution> {
    cautions_at(Work::Recipe, draft, outcome.case.as_ref().map(|case| case.solved.water.mat))
}

/// The cautions that apply to work with a recipe. `mat` is the mat's moisture as it was solved, or as it was measured.
#[must_use]
pub fn cautions_at(work: Work, draft: &Draft, mat: Option<Moisture>) -> Vec<Caution> {
    let isocyanate = has(draft, Substance::is_isocyanate);
    let formaldehyde = has(draft, Substance::has_formaldehyde) || hardened_tannin(draft);
    let (recipe, catch) = (work == Work::Recipe, work == Work::CatchTest);
    let (check, bench) = (work == Work::LineCheck, work == Work::Bench);
    let applies = |caution: &Caution| match caution {
        Caution::Steam => !catch && mat.is_some_and(|mat| too_wet_to_press(draft, mat)),
        Caution::Isocyanate => isocyanate && !check,
        Caution::IsocyanateTank => isocyanate && recipe,
        Caution::Emulsion => !check && emulsified(draft),
        Caution::IsocyanateCatch => isocyanate && catch,
        Caution::ReleaseAgent => isocyanate && (recipe || bench) && !has_role(draft, Role::ReleaseAgent),
        Caution::Formaldehyde => formaldehyde && (recipe || bench),
        Caution::PressVapour | Caution::BenchSpray => bench,
        Caution::Alkaline => !check && has(draft, |substance| substance == Substance::Pf),
        Caution::Ammonia => {
            (recipe || bench)
                && has(draft, |substance| substance == Substance::Pf)
                && has(draft, Substance::is_hardener_salt)
        }
        Caution::AcidCure => (recipe || bench) && (has(draft, Substance::is_hardener_salt) || hardened_amino(draft)),
        Caution::Oxidiser => !check && has(draft, |substance| substance == Substance::AmmoniumNitrate),
        Caution::Corrosion => recipe && has(draft, |substance| substance == Substance::AmmoniumChloride),
        Caution::Dust => recipe || bench,
        Caution::DampBales => recipe,
        Caution::Advice => recipe || work == Work::PumpSettings,
        Caution::HighPressure | Caution::CatchTest => catch,
        Caution::Press => check || bench,
        // Belongs to making up a solution: see `cautions_of_solution`.
        Caution::Cooling => false,
    };
    Caution::ALL.iter().copied().filter(applies).collect()
}

/// The cautions for making up a solution of a salt.
#[must_use]
pub fn cautions_of_solution(solute: Solute) -> Vec<Caution> {
    let applies = |caution: &Caution| match caution {
        Caution::Cooling => matches!(solute, Solute::Urea | Solute::AmmoniumChloride | Solute::AmmoniumNitrate),
        Caution::Oxidiser => solute == Solute::AmmoniumNitrate,
        Caution::Corrosion => solute == Solute::AmmoniumChloride,
        _ => false,
    };
    Caution::ALL.iter().copied().filter(applies).collect()
}

fn has(draft: &Draft, what: impl Fn(Substance) -> bool) -> bool {
    draft.liquids.iter().any(|liquid| what(liquid.substance))
}

fn has_role(draft: &Draft, role: Role) -> bool {
    draft.liquids.iter().any(|liquid| liquid.role == role)
}

/// An isocyanate that water is added to at the nozzle.
fn emulsified(draft: &Draft) -> bool {
    draft.liquids.iter().any(|liquid| liquid.substance.is_isocyanate() && !liquid.spray_solids.is_blank())
}

/// A hardener of any kind beside a resin that an acid cures.
fn hardened_amino(draft: &Draft) -> bool {
    has(draft, |substance| matches!(substance, Substance::Uf | Substance::Muf)) && has_role(draft, Role::Hardener)
}

/// Tannin is hardened with what gives off formaldehyde, such as hexamine.
fn hardened_tannin(draft: &Draft) -> bool {
    has(draft, |substance| substance == Substance::Tannin) && has_role(draft, Role::Hardener)
}

/// The mat is wetter than its typical range, wherever its water comes from.
fn too_wet_to_press(draft: &Draft, mat: Moisture) -> bool {
    limit_of(draft, Field::MatMoisture).usual.is_some_and(|window| {
        let slack = 1e-9;
        Unit::PercentDryBasis.from_base(mat.dry_basis().value) > window.high + slack
    })
}

/// The liquids for the sake of which a caution applies, to name them beside it.
pub fn liquids_behind(draft: &Draft, caution: Caution) -> impl Iterator<Item = LiquidId> {
    let behind = move |substance: Substance, role: Role| match caution {
        Caution::Isocyanate
        | Caution::IsocyanateTank
        | Caution::Emulsion
        | Caution::IsocyanateCatch
        | Caution::ReleaseAgent => substance.is_isocyanate(),
        Caution::Formaldehyde => substance.has_formaldehyde() || substance == Substance::Tannin,
        Caution::Alkaline => substance == Substance::Pf,
        Caution::Ammonia => substance == Substance::Pf || substance.is_hardener_salt(),
        Caution::AcidCure => substance.is_hardener_salt() || role == Role::Hardener,
        Caution::Oxidiser => substance == Substance::AmmoniumNitrate,
        Caution::Corrosion => substance == Substance::AmmoniumChloride,
        Caution::Steam
        | Caution::PressVapour
        | Caution::BenchSpray
        | Caution::Cooling
        | Caution::Dust
        | Caution::DampBales
        | Caution::HighPressure
        | Caution::Press
        | Caution::CatchTest
        | Caution::Advice => false,
    };
    draft.liquids.iter().filter(move |liquid| behind(liquid.substance, liquid.role)).map(|liquid| liquid.id)
}
