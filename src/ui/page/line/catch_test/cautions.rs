//! What can harm during a catch test.

use crate::domain::{Caution, Work, cautions_at};
use crate::t;
use crate::ui::components::Fold;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// The cautions that apply to the recipe's liquids, folded under their titles.
#[component]
pub fn CatchCautions() -> impl IntoView {
    let state = expect_context::<State>();
    let applying = Memo::new(move |_| state.draft.with(|draft| cautions_at(Work::CatchTest, draft, None)));
    let titles = Memo::new(move |_| {
        let title = |caution: &Caution| words::caution(*caution).title;
        applying.with(|all| all.iter().map(title).collect::<Vec<_>>().join(" · "))
    });
    let told = move |caution: Caution| {
        let words = words::caution(caution);
        let limits = words.limits.into_iter().map(|limit| view! { <p class="note">{limit}</p> }).collect_view();
        view! { <li><h3>{words.title}</h3><p>{words.text}</p>{limits}</li> }
    };
    view! {
        <Fold id="catch-cautions" title=t!("catch-cautions") note=titles>
            <div class="cautions">
                <ul>{move || applying.get().into_iter().map(told).collect_view()}</ul>
                <p class="note">{t!("frame-caution-rule")}</p>
            </div>
        </Fold>
    }
}
