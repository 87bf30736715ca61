//! The binder systems of the starting library.

use crate::domain::recipe::binder_system::SystemKey;
use crate::ui::text::SystemWords;

const fn words(name: &'static str, note: &'static str) -> SystemWords {
    SystemWords { name, note }
}

pub(super) fn binder_system(key: SystemKey) -> SystemWords {
    match key {
        SystemKey::Uf => words("UF", "Urea-formaldehyde resin with hardener, urea as scavenger, and wax."),
        SystemKey::Muf => words("MUF", "Melamine-urea-formaldehyde resin with hardener and wax."),
        SystemKey::Pf => words(
            "PF",
            "Phenol-formaldehyde resin and wax. It cures by heat and brings much water: dry the fibre well.",
        ),
        SystemKey::Pmdi => words("pMDI, neat", "pMDI as delivered, and wax. It brings no water."),
        SystemKey::PmdiEmulsified => {
            words("pMDI, emulsified at the nozzle", "pMDI thinned with water just before it is sprayed, and wax.")
        }
        SystemKey::Soy => words("Soy-based", "Soy adhesive and wax. It brings much water: dry the fibre well."),
        SystemKey::Tannin => {
            words("Tannin-based", "Tannin adhesive, hexamine as hardener, and wax. It brings much water.")
        }
        SystemKey::UfPmdi => words("Hybrid, UF and pMDI", "UF resin with hardener, some pMDI beside it, and wax."),
    }
}
