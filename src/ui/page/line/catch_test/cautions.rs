//! What can harm during a catch test.

use crate::domain::{Caution, Work, cautions_at};
use crate::t;
use crate::ui::components::{Cautions, Fold};
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// The cautions that apply to the recipe's liquids, folded under their titles.
#[component]
pub fn CatchCautions() -> impl IntoView {
    let state = expect_context::<State>();
    let applying = Memo::new(move |_| state.draft.with(|draft| cautions_at(Work::CatchTest, draft, None)));
    let titles = Memo::new(move |_| {
        let title = |caution: &Caution| words::caution_title(*caution);
        applying.with(|all| all.iter().map(title).collect::<Vec<_>>().join(" · "))
    });
    view! {
        <Fold id="catch-cautions" title=t!("catch-cautions") note=titles>
            <Cautions all=applying/>
        </Fold>
    }
}
