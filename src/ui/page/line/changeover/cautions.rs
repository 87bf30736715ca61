//! What to beware of with the recipe that is changed to.

use super::context::ChangeSheet;
use crate::t;
use crate::ui::components::{Cautions, Fold};
use crate::ui::text::words;
use leptos::prelude::*;

/// The cautions, folded, with their titles in sight.
#[component]
pub fn NewCautions() -> impl IntoView {
    let sheet = expect_context::<ChangeSheet>();
    let all = Memo::new(move |_| {
        sheet.plan.with(|plan| {
            plan.as_ref()
                .and_then(|plan| plan.solved.as_ref())
                .map(|solved| solved.cautions.clone())
                .unwrap_or_default()
        })
    });
    let titles = Signal::derive(move || {
        all.with(|all| all.iter().map(|caution| words::caution_title(*caution)).collect::<Vec<_>>().join(" · "))
    });
    let some = Memo::new(move |_| all.with(|all| !all.is_empty()));
    view! {
        <Show when=move || some.get()>
            <Fold id="change-cautions" title=t!("change-cautions") note=titles>
                <Cautions all=all/>
            </Fold>
        </Show>
    }
}
