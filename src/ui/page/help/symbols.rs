//! The letters of the formulas.

use crate::browser::element::{Part, View, el, many};
use crate::domain::working::Symbol;
use crate::domain::{Draft, Field, Figure, LiquidDraft, LiquidField, LiquidFigure, LiquidId, Role};
use crate::ui::math;
use crate::ui::state::State;

/// What is typed and what is worked out, each with its letter.
pub fn symbols(state: State) -> View {
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
    many([
        el("p").child(page.symbols_text).view(),
        el("h3").child(page.of_fields).view(),
        list(fields.chain(liquid_fields)).view(),
        el("h3").child(page.of_figures).view(),
        list(figures.chain(liquid_figures)).view(),
    ])
    .view()
}

fn list(symbols: impl Iterator<Item = (Symbol, String)>) -> View {
    let line = |(symbol, label): (Symbol, String)| {
        el("div").child(el("dt").markup(&math::symbol(symbol))).child(el("dd").child(label))
    };
    el("dl").class("symbols").child(symbols.map(line).collect::<View>()).view()
}
