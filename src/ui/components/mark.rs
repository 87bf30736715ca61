//! The mark of a grade, different by shape as well as by colour.

use crate::domain::Grade;
use leptos::prelude::*;

/// The mark of a grade. A word is beside it.
#[component]
pub fn Mark(
    /// How grave.
    grade: Grade,
) -> impl IntoView {
    let (class, outline, sign) = match grade {
        Grade::Stop => ("mark stop", "M5,1H11L15,5V11L11,15H5L1,11V5Z", "M5,7H11V9H5Z"),
        Grade::Unusual => ("mark unusual", "M8,1.5L15.5,14.5H0.5Z", "M7,6H9V10H7ZM7,11.2H9V13H7Z"),
        Grade::Note => ("mark note", "M8,1A7,7 0 1 1 8,15A7,7 0 1 1 8,1Z", "M7,7H9V12H7ZM7,4H9V6H7Z"),
    };
    view! {
        <svg class=class viewBox="0 0 16 16" aria-hidden="true">
            <path class="outline" d=outline></path>
            <path class="sign" d=sign></path>
        </svg>
    }
}
