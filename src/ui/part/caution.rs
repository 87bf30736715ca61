//! A caution in words.

use crate::browser::element::{Part, View, el};
use crate::domain::Caution;
use crate::ui::state::state;

/// Cautions with what they are about, what can happen and what to do, and the rule that applies to
/// all of them. Nothing where there are none.
pub fn list(cautions: Vec<Caution>) -> Option<View> {
    let state = state();
    let told = move |caution: Caution| {
        let words = (state.words.caution)(caution);
        el("li")
            .child(el("h3").child(words.title))
            .child(el("p").child(words.text))
            .child(words.limits.into_iter().map(|limit| el("p").class("note").child(limit).view()).collect::<View>())
    };
    (!cautions.is_empty()).then(|| {
        el("div")
            .class("cautions")
            .child(el("ul").child(cautions.into_iter().map(told).collect::<View>()))
            .child(el("p").class("note").child(state.words.tools.caution_rule))
            .view()
    })
}
