//! How a figure was computed: formula, numbers, result with more digits, source.

use crate::browser::page;
use crate::domain::working::{Given, Origin, Working};
use crate::domain::{self, Draft, Figure};
use crate::quantity::Coherent;
use crate::t;
use crate::ui::math::{Style, letters, numbers, symbol};
use crate::ui::part::amount::with_unit;
use crate::ui::part::working::{in_full, name_in};
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

/// The working of the figure that is open, if one is.
#[component]
pub fn WorkingPanel(
    /// The figure whose working is open.
    open: RwSignal<Option<Figure>>,
    /// What its id begins with.
    scope: &'static str,
) -> impl IntoView {
    let state = expect_context::<State>();
    let name = move |figure: Figure| state.draft.with(|draft| name_in(figure, draft));
    let told = move |figure: Figure| {
        move || {
            let working = state.shown.with(|shown| domain::working(figure, shown.case.as_ref()?));
            working.map(|working| view! { <Told working=working/> })
        }
    };
    move || {
        open.get().map(|figure| {
            view! {
                <WorkingFrame
                    id=format!("{scope}working-{}", figure.key())
                    name=name(figure)
                    on_close=Callback::new(move |()| open.set(None))
                >
                    {told(figure)}
                </WorkingFrame>
            }
        })
    }
}

/// The frame of a working that is open: a heading and a way out. Esc closes it too, and the focus goes back to the figure.
#[component]
pub fn WorkingFrame(
    /// What the figure's button controls.
    id: String,
    /// Whose figure, and which.
    name: String,
    /// Forgets that it is open.
    on_close: Callback<()>,
    /// How the figure was computed.
    children: Children,
) -> impl IntoView {
    let (figure, label) = (id.clone(), name.clone());
    let close = Callback::new(move |()| {
        on_close.run(());
        page::focus_opener(&figure);
    });
    let escape = move |event: KeyboardEvent| {
        if event.key() == "Escape" {
            close.run(());
        }
    };
    view! {
        <section class="working-panel" id=id aria-label=label on:keydown=escape>
            <h3>{name}</h3>
            <button type="button" class="bare" on:click=move |_| close.run(())>{t!("common-close")}</button>
            {children()}
        </section>
    }
}

/// Hears of a press on a figure: opens its working, or closes it where it is open.
pub fn opens<T: PartialEq + Copy + Send + Sync + 'static>(open: RwSignal<Option<T>>, figure: T) -> Callback<()> {
    Callback::new(move |()| open.update(|open| *open = if *open == Some(figure) { None } else { Some(figure) }))
}

/// A working of the recipe.
#[component]
fn Told(
    /// The working.
    working: Working<Figure, Origin>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let name = move |origin: &Origin| {
        state.draft.with(|draft: &Draft| match *origin {
            Origin::Field(field) => {
                let go = move |_| page::focus_field(&field.key());
                let name = words::field_name(field, draft);
                view! { <button type="button" class="link" on:click=go>{name}</button> }.into_any()
            }
            Origin::Figure(figure) => name_in(figure, draft).into_any(),
            Origin::Constant(constant) => words::constant(constant).into_any(),
        })
    };
    working_text(state, &working, name)
}

/// A working in full: formula, numbers, and each number put in with what it is, which `name` says.
pub fn working_text<F, O>(state: State, working: &Working<F, O>, name: impl Fn(&O) -> AnyView) -> AnyView {
    let units = state.units.get();
    let currency = state.currency.get();
    let style = Style { set: Coherent::from(units.system), mark: units.mark, currency: &currency };
    let (letters, numbers) = (letters(working), numbers(working, style));
    let put_in = |Given { symbol: letter, amount, origin }: &Given<O>| {
        view! {
            <li>
                <span class="math" inner_html=symbol(*letter)></span>
                " = "
                {with_unit(state, *amount, None)}
                " "
                {name(origin)}
            </li>
        }
    };
    let givens = working.givens.iter().map(put_in).collect_view();
    view! {
        <dl class="told">
            <dt>{t!("common-in-full")}</dt>
            <dd>{in_full(state, working.result)}</dd>
            <dt>{t!("common-formula")}</dt>
            <dd class="math" inner_html=letters></dd>
            <dt>{t!("common-numbers")}</dt>
            <dd class="math" inner_html=numbers></dd>
            <dd><ul class="givens">{givens}</ul></dd>
            <dt>{t!("common-source")}</dt>
            <dd>{words::ground(working.ground)}</dd>
        </dl>
    }
    .into_any()
}
