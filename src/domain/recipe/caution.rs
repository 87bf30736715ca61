//! Which cautions apply to a recipe: what can hurt someone, as data. The words are in `ui::text`.

use crate::domain::balance::outcome::Outcome;
use crate::domain::recipe::draft::Draft;
use crate::domain::recipe::field::Field;
use crate::domain::recipe::limit::plain;
use crate::domain::recipe::liquid::{LiquidId, Role, Substance};
use crate::quantity::Unit;

/// Something that can hurt someone, or that a reader may take for more than it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Caution {
    /// pMDI and other isocyanates: sensitisers, and they make gas with water.
    Isocyanate,
    /// Isocyanates stick to hot metal faces.
    ReleaseAgent,
    /// Resins that give off formaldehyde.
    Formaldehyde,
    /// Phenol-formaldehyde resins are strongly alkaline.
    Alkaline,
    /// Acid cure: pot life, and heat in a mixed batch.
    AcidCure,
    /// Ammonium nitrate is an oxidiser.
    Oxidiser,
    /// A mat so wet that steam can burst the board.
    Steam,
    /// Dust of straw or wood is combustible.
    Dust,
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
        Self::ReleaseAgent,
        Self::Formaldehyde,
        Self::Alkaline,
        Self::AcidCure,
        Self::Oxidiser,
        Self::Dust,
        Self::CatchTest,
        Self::Advice,
    ];

    /// The stable key of the caution, on the page and in exports.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Isocyanate => "isocyanate",
            Self::ReleaseAgent => "release_agent",
            Self::Formaldehyde => "formaldehyde",
            Self::Alkaline => "alkaline",
            Self::AcidCure => "acid_cure",
            Self::Oxidiser => "oxidiser",
            Self::Steam => "steam",
            Self::Dust => "dust",
            Self::CatchTest => "catch_test",
            Self::Advice => "advice",
        }
    }
}

/// The cautions that apply to a recipe, in the order of [`Caution::ALL`]. What the liquids are is
/// taken from the draft, so that they stand while the recipe cannot be solved; whether the mat is
/// too wet from its solved moisture. [`Caution::CatchTest`] belongs to the pumps and never to a
/// recipe.
#[must_use]
pub fn cautions(draft: &Draft, outcome: &Outcome) -> Vec<Caution> {
    let applies = |caution: &Caution| match caution {
        Caution::Steam => too_wet_to_press(outcome),
        Caution::Isocyanate => has(draft, Substance::is_isocyanate),
        Caution::ReleaseAgent => {
            has(draft, Substance::is_isocyanate)
                && !draft.liquids.iter().any(|liquid| liquid.role == Role::ReleaseAgent)
        }
        Caution::Formaldehyde => has(draft, Substance::has_formaldehyde) || hardened_tannin(draft),
        Caution::Alkaline => has(draft, |substance| substance == Substance::Pf),
        Caution::AcidCure => has(draft, Substance::is_hardener_salt) || hardened_amino(draft),
        Caution::Oxidiser => has(draft, |substance| substance == Substance::AmmoniumNitrate),
        Caution::Dust | Caution::Advice => true,
        Caution::CatchTest => false,
    };
    Caution::ALL.iter().copied().filter(applies).collect()
}

fn has(draft: &Draft, what: impl Fn(Substance) -> bool) -> bool {
    draft.liquids.iter().any(|liquid| what(liquid.substance))
}

fn has_hardener(draft: &Draft) -> bool {
    draft.liquids.iter().any(|liquid| liquid.role == Role::Hardener)
}

/// A hardener of any kind beside a resin that an acid cures.
fn hardened_amino(draft: &Draft) -> bool {
    has(draft, |substance| matches!(substance, Substance::Uf | Substance::Muf)) && has_hardener(draft)
}

/// Tannin is hardened with what gives off formaldehyde, such as hexamine.
fn hardened_tannin(draft: &Draft) -> bool {
    has(draft, |substance| substance == Substance::Tannin) && has_hardener(draft)
}

/// The solved mat is moister than what is usual, however its water came about.
fn too_wet_to_press(outcome: &Outcome) -> bool {
    let usual = plain(Field::MatMoisture).usual;
    outcome.case.as_ref().zip(usual).is_some_and(|(case, window)| {
        let slack = 1e-9;
        Unit::PercentDryBasis.from_base(case.solved.water.mat.dry_basis().value) > window.high + slack
    })
}

/// The liquids for the sake of which a caution stands, to name them beside it.
pub fn liquids_behind(draft: &Draft, caution: Caution) -> impl Iterator<Item = LiquidId> {
    let behind = move |substance: Substance, role: Role| match caution {
        Caution::Isocyanate | Caution::ReleaseAgent => substance.is_isocyanate(),
        Caution::Formaldehyde => substance.has_formaldehyde() || substance == Substance::Tannin,
        Caution::Alkaline => substance == Substance::Pf,
        Caution::AcidCure => substance.is_hardener_salt() || role == Role::Hardener,
        Caution::Oxidiser => substance == Substance::AmmoniumNitrate,
        Caution::Steam | Caution::Dust | Caution::CatchTest | Caution::Advice => false,
    };
    draft.liquids.iter().filter(move |liquid| behind(liquid.substance, liquid.role)).map(|liquid| liquid.id)
}
