//! The letters of the formulas.

use crate::domain::working::Symbol;
use crate::domain::{Draft, Field, Figure, LiquidDraft, LiquidField, LiquidFigure, LiquidId, Role};
use crate::t;
use crate::ui::math;
use crate::ui::text::words;
use leptos::prelude::*;

/// Inputs and results, each with its letter.
#[component]
pub fn Symbols() -> impl IntoView {
    let id = LiquidId(1);
    let draft = Draft { liquids: vec![LiquidDraft::blank(id, Role::Other)], ..Draft::default() };
    let field = |field: Field| words::field(field, &draft).label.to_owned();
    let figure = |figure: Figure| words::figure(figure).label.to_owned();
    let of_liquid = |label: String| t!("help-of-liquid", name = label);
    let fields = Field::PLAIN.iter().map(|each| (Symbol::of_field(*each), field(*each)));
    let liquid_fields = LiquidField::ALL.iter().map(|part| {
        let each = Field::Liquid(id, *part);
        (Symbol::of_field(each), of_liquid(field(each)))
    });
    let figures = Figure::PLAIN.iter().map(|each| (Symbol::of_figure(*each), figure(*each)));
    let liquid_figures = LiquidFigure::ALL.iter().map(|part| {
        let each = Figure::Liquid(id, *part);
        (Symbol::of_figure(each), of_liquid(figure(each)))
    });
    let line = |(symbol, label): (Symbol, String)| {
        view! { <div><dt inner_html=math::symbol(symbol)></dt><dd>{label}</dd></div> }
    };
    view! {
        <p>{t!("help-symbols-text")}</p>
        <h3>{t!("help-inputs")}</h3>
        <dl class="symbols">{fields.chain(liquid_fields).map(line).collect_view()}</dl>
        <h3>{t!("help-results")}</h3>
        <dl class="symbols">{figures.chain(liquid_figures).map(line).collect_view()}</dl>
    }
}
