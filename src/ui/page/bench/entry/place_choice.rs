//! A choice among a few, each by its place among what is offered.

use crate::ui::components::{Choice, ChoiceOption};
use leptos::prelude::*;

/// A select.
#[component]
pub fn PlaceChoice(
    /// Its id.
    #[prop(into)]
    id: String,
    /// Its name.
    #[prop(into)]
    name: Signal<String>,
    /// Whether its name is above it.
    #[prop(optional)]
    labelled: bool,
    /// The words of what is offered.
    #[prop(into)]
    offered: Signal<Vec<String>>,
    /// The place of what is chosen.
    #[prop(into)]
    chosen: Signal<usize>,
    /// Hears of another choice.
    on_choose: Callback<usize>,
) -> impl IntoView {
    let options = Memo::new(move |_| {
        let option = |(at, words): (usize, String)| ChoiceOption::new(at.to_string(), words);
        offered.get().into_iter().enumerate().map(option).collect::<Vec<_>>()
    });
    let value = Memo::new(move |_| chosen.get().to_string());
    let choose = Callback::new(move |at: String| {
        if let Ok(at) = at.parse() {
            on_choose.run(at);
        }
    });
    view! { <Choice id=id name=name labelled=labelled options=options value=value on_choose=choose/> }
}
