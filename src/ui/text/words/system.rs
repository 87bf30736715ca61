//! The binder systems of the starting library.

use crate::domain::recipe::binder_system::SystemKey;
use crate::figure;
use crate::ui::text::SystemWords;

/// A binder system of the starting library.
#[must_use]
pub fn binder_system(key: SystemKey) -> SystemWords {
    let words = match key {
        SystemKey::Uf => figure!("name-binder-system-uf"),
        SystemKey::Muf => figure!("name-binder-system-muf"),
        SystemKey::Pf => figure!("name-binder-system-pf"),
        SystemKey::Pmdi => figure!("name-binder-system-pmdi"),
        SystemKey::PmdiEmulsified => figure!("name-binder-system-pmdi-emulsified"),
        SystemKey::Soy => figure!("name-binder-system-soy"),
        SystemKey::Tannin => figure!("name-binder-system-tannin"),
        SystemKey::UfPmdi => figure!("name-binder-system-uf-pmdi"),
    };
    SystemWords { name: words.label, note: words.note }
}
