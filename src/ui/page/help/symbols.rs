//! The letters of the formulas.

use crate::domain::working::Symbol;
use crate::domain::{Draft, Field, Figure, LiquidDraft, LiquidField, LiquidFigure, LiquidId, Role};
use crate::ui::math;
use crate::ui::state::State;
use leptos::prelude::*;

/// What is typed and what is worked out, each with its letter.
pub fn symbols(state: State) -> AnyView {
    let page = &state.words.help_page;
    let id = LiquidId(1);
    let draft = Draft { liquids: vec![LiquidDraft::blank(id, Role::Other)], ..Draft::default() };
    let of_liquid = |label: &str| format!("{label}, {}", page.per_liquid);
    let fields = Field::PLAIN
        .iter()
        .map(|field| (Symbol::of_field(*field), (state.words.field)(*field, &draft).label.to_owned()));
    let liquid_fields = LiquidField::ALL.iter().map(|part| {
        let field = Field::Liquid(id, *part);
        (Symbol::of_field(field), of_liquid((state.words.field)(field, &draft).label))
    });
    let figures =
        Figure::PLAIN.iter().map(|figure| (Symbol::of_figure(*figure), (state.words.figure)(*figure).label.to_owned()));
    let liquid_figures = LiquidFigure::ALL.iter().map(|part| {
        let figure = Figure::Liquid(id, *part);
        (Symbol::of_figure(figure), of_liquid((state.words.figure)(figure).label))
    });
    view! {
        <p>{page.symbols_text}</p>
        <h3>{page.of_fields}</h3>
        {list(fields.chain(liquid_fields))}
        <h3>{page.of_figures}</h3>
        {list(figures.chain(liquid_figures))}
    }
    .into_any()
}

fn list(symbols: impl Iterator<Item = (Symbol, String)>) -> AnyView {
    let line = |(symbol, label): (Symbol, String)| {
        view! { <div><dt inner_html=math::symbol(symbol)></dt><dd>{label}</dd></div> }
    };
    view! { <dl class="symbols">{symbols.map(line).collect_view()}</dl> }.into_any()
}
