//! Every usual window with its source, out of the table that the checks read.

use crate::browser::element::{Part, View, el, many};
use crate::domain::recipe::limit::{Limit, Window, liquid, plain};
use crate::domain::{DoseWay, Draft, Faces, Field, LiquidDraft, LiquidField, LiquidId, Product, Role, Substance};
use crate::quantity::{Amount, Kind};
use crate::ui::state::State;
use crate::ui::text::{trimmed, unit_shown};

/// The two tables.
pub fn windows(state: State) -> View {
    let page = &state.words.help_page;
    let draft = Draft::default();
    let fields = Field::PLAIN.iter().filter_map(|field| {
        let limit = plain(*field);
        let label = (state.words.field)(*field, &draft).label.to_owned();
        limit.usual.map(|window| row(state, label, &limit, window, field.kind()))
    });
    let liquids = Substance::ALL.iter().flat_map(|substance| of_substance(state, *substance));
    let liquids = liquids.chain(release_agent(state));
    many([
        el("p").child(page.windows_text).view(),
        el("h3").child(page.of_line).view(),
        (table(state, page.of_line, fields.collect())).view(),
        el("h3").child(page.of_liquids).view(),
        (table(state, page.of_liquids, liquids.collect())).view(),
    ])
    .view()
}

/// What is usual of a liquid made of that substance.
fn of_substance(state: State, substance: Substance) -> Vec<View> {
    let page = &state.words.help_page;
    let role = if substance.is_binder() {
        Role::Binder
    } else if substance.is_hardener_salt() {
        Role::Hardener
    } else {
        Role::Other
    };
    let mut made = LiquidDraft { substance, ..LiquidDraft::blank(LiquidId(1), role) };
    if role == Role::Hardener {
        made.dose_way = DoseWay::SolidsOnLiquid(LiquidId(2));
    }
    let draft = Draft { liquids: vec![made.clone()], ..Draft::default() };
    let name = (state.words.substance)(substance);
    let line = |part: LiquidField, beside: bool, more: &str| {
        let limit = liquid(&made, part, beside, Product::default());
        let label = (state.words.field)(Field::Liquid(made.id, part), &draft).label;
        let label = if more.is_empty() { format!("{name}: {label}") } else { format!("{name}: {label}, {more}") };
        limit.usual.map(|window| row(state, label, &limit, window, part.kind(made.dose_way)))
    };
    let dose = |beside| liquid(&made, LiquidField::Dose, beside, Product::default()).usual;
    let doses = if dose(false) == dose(true) {
        vec![line(LiquidField::Dose, false, "")]
    } else {
        vec![line(LiquidField::Dose, false, page.alone), line(LiquidField::Dose, true, page.beside_another)]
    };
    // What holds for anything is said once, at what is nothing in particular.
    let density = (substance == Substance::Other || !is_general(&made)).then(|| line(LiquidField::Density, false, ""));
    doses.into_iter().chain([line(LiquidField::Solids, false, "")]).chain(density).flatten().collect()
}

/// What is usual of a release agent on the faces.
fn release_agent(state: State) -> Option<View> {
    let way = DoseWay::LiquidOnFaces(Faces::Both);
    let agent = LiquidDraft { dose_way: way, ..LiquidDraft::blank(LiquidId(1), Role::ReleaseAgent) };
    let draft = Draft { liquids: vec![agent.clone()], ..Draft::default() };
    let limit = liquid(&agent, LiquidField::Dose, false, Product::default());
    let label = (state.words.field)(Field::Liquid(agent.id, LiquidField::Dose), &draft).label;
    let label = format!("{}: {label}", (state.words.role)(Role::ReleaseAgent));
    limit.usual.map(|window| row(state, label, &limit, window, LiquidField::Dose.kind(way)))
}

/// Whether the density window is the one for any liquid.
fn is_general(made: &LiquidDraft) -> bool {
    let other = LiquidDraft { substance: Substance::Other, ..made.clone() };
    liquid(made, LiquidField::Density, false, Product::default()).usual
        == liquid(&other, LiquidField::Density, false, Product::default()).usual
}

fn row(state: State, label: String, limit: &Limit, window: Window, kind: Kind) -> View {
    let unit = limit.unit;
    let usual = move || {
        state.with_context(|context| {
            let bound = |value: f64| trimmed(Amount::from_base(kind, unit.to_base(value)), context);
            let (low, high) = (bound(window.low), bound(window.high));
            let symbol = unit_shown(context.units.unit(kind), context.currency);
            let range = if low == high { low } else { format!("{low} – {high}") };
            format!("{range}\u{a0}{symbol}")
        })
    };
    el("tr")
        .child(el("th").set("scope", "row").child(label))
        .child(el("td").child(usual))
        .child(el("td").class("source").child((state.words.source)(window.source)))
        .view()
}

fn table(state: State, name: &'static str, rows: Vec<View>) -> View {
    let page = &state.words.help_page;
    el("div")
        .class("scroll")
        .set("tabindex", "0")
        .set("role", "region")
        .set("aria-label", name)
        .child(
            el("table")
                .class("windows")
                .child(
                    el("thead").child(
                        el("tr")
                            .child(el("th").set("scope", "col").child(page.quantity))
                            .child(el("th").set("scope", "col").child(page.usual))
                            .child(el("th").set("scope", "col").child(page.source)),
                    ),
                )
                .child(el("tbody").child(rows)),
        )
        .view()
}
