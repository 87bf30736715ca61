//! A choice among the values of a type.

use crate::ui::components::{Choice, ChoiceOption};
use leptos::prelude::*;

/// A select over `all`, each by its place in the list.
#[component]
pub fn EnumChoice<T>(
    /// Its id.
    #[prop(into)]
    id: String,
    /// Its name.
    #[prop(into)]
    name: Signal<String>,
    /// Whether its name is above it.
    #[prop(optional)]
    labelled: bool,
    /// What is offered, with its words.
    #[prop(into)]
    all: Signal<Vec<(T, String)>>,
    /// What is chosen.
    #[prop(into)]
    value: Signal<Option<T>>,
    /// Hears of another choice.
    on_choose: Callback<T>,
) -> impl IntoView
where
    T: Copy + PartialEq + Send + Sync + 'static,
{
    let options = Memo::new(move |_| {
        let option = |(at, (_, words)): (usize, (T, String))| ChoiceOption::new(at.to_string(), words);
        all.get().into_iter().enumerate().map(option).collect::<Vec<_>>()
    });
    let at = Memo::new(move |_| {
        let now = value.get();
        let place = all.with(|all| all.iter().position(|(each, _)| Some(*each) == now));
        place.map(|at| at.to_string()).unwrap_or_default()
    });
    let choose = Callback::new(move |at: String| {
        let chosen = at.parse().ok().and_then(|at: usize| all.with_untracked(|all| all.get(at).map(|(each, _)| *each)));
        if let Some(each) = chosen {
            on_choose.run(each);
        }
    });
    view! { <Choice id=id name=name labelled=labelled options=options value=at on_choose=choose/> }
}
