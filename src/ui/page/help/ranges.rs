//! Every typical range with its source, out of the tables that the checks read: one table, to be searched.

use crate::domain::recipe::limit::{Limit, Window, liquid, plain};
use crate::domain::{DoseWay, Draft, Faces, Field, LiquidDraft, LiquidField, LiquidId, Product, Role, Substance};
use crate::quantity::{Amount, Kind, Unit};
use crate::t;
use crate::ui::state::State;
use crate::ui::text::{trimmed, unit_shown, words};
use leptos::prelude::*;

/// One range.
#[derive(Debug, Clone, PartialEq)]
struct TypicalRange {
    /// Of what: the line and board, or a liquid by its substance.
    of: String,
    /// The quantity.
    quantity: String,
    /// The range, in `unit`.
    window: Window,
    /// The unit of its ends.
    unit: Unit,
    /// What it measures.
    kind: Kind,
    /// Where it comes from.
    source: String,
}

impl TypicalRange {
    /// Whether every word occurs, in lower case.
    fn holds(&self, words: &[String]) -> bool {
        let text = format!("{} {} {}", self.of, self.quantity, self.source).to_lowercase().replace('\u{ad}', "");
        words.iter().all(|word| text.contains(word))
    }
}

/// The table under a search box.
#[component]
pub fn TypicalRanges() -> impl IntoView {
    let state = expect_context::<State>();
    let query = RwSignal::new(String::new());
    let all = StoredValue::new(ranges());
    let found = Memo::new(move |_| {
        let words: Vec<String> = query.get().to_lowercase().split_whitespace().map(str::to_owned).collect();
        all.with_value(|all| all.iter().filter(|range| range.holds(&words)).cloned().collect::<Vec<_>>())
    });
    let count = move || {
        let (found, all) = (found.with(Vec::len), all.with_value(Vec::len));
        t!("help-ranges-found", found = found, all = all)
    };
    let row = move |range: TypicalRange| {
        let TypicalRange { of, quantity, window, unit, kind, source } = range;
        view! {
            <tr>
                <th scope="row" class="l">{quantity}</th>
                <td class="l">{of}</td>
                <td>{move || shown(state, window, unit, kind)}</td>
                <td class="l note">{source}</td>
            </tr>
        }
    };
    view! {
        <p>{t!("help-ranges-text")}</p>
        <div class="search-row">
            <span class="entry-box">
                <input
                    id="help-search"
                    class="words"
                    type="search"
                    autocomplete="off"
                    spellcheck="false"
                    placeholder=t!("help-ranges-search")
                    aria-label=t!("help-ranges-search")
                    prop:value=move || query.get()
                    on:input=move |event| query.set(event_target_value(&event))
                />
            </span>
            <span class="note" role="status">{count}</span>
        </div>
        <div class="scroll" tabindex="0" role="region" aria-label=t!("help-ranges")>
            <table class="grid ranges" aria-label=t!("help-ranges")>
                <thead>
                    <tr>
                        <th scope="col" class="l">{t!("help-quantity")}</th>
                        <th scope="col" class="l">{t!("help-of")}</th>
                        <th scope="col">{t!("help-typical-range")}</th>
                        <th scope="col" class="l">{t!("common-source")}</th>
                    </tr>
                </thead>
                <tbody>{move || found.get().into_iter().map(row).collect_view()}</tbody>
            </table>
        </div>
    }
}

/// The ends in the units chosen.
fn shown(state: State, window: Window, unit: Unit, kind: Kind) -> String {
    state.with_context(|context| {
        let bound = |value: f64| trimmed(Amount::from_base(kind, unit.to_base(value)), context);
        let (low, high) = (bound(window.low), bound(window.high));
        let symbol = unit_shown(context.units.unit(kind), context.currency);
        let range = if low == high { low } else { format!("{low} – {high}") };
        format!("{range}\u{a0}{symbol}")
    })
}

/// All ranges: of the line and the board, then of each substance, then of a release agent.
fn ranges() -> Vec<TypicalRange> {
    let draft = Draft::default();
    let fields = Field::PLAIN.iter().filter_map(|field| {
        let quantity = words::field(*field, &draft).label.to_owned();
        range(t!("help-line-and-board"), quantity, &plain(*field), field.kind())
    });
    let liquids = Substance::ALL.iter().flat_map(|substance| of_substance(*substance));
    fields.chain(liquids).chain(release_agent()).collect()
}

fn range(of: String, quantity: String, limit: &Limit, kind: Kind) -> Option<TypicalRange> {
    let window = limit.usual?;
    let source = words::source(window.source).into_owned();
    Some(TypicalRange { of, quantity, window, unit: limit.unit, kind, source })
}

/// What is typical of a liquid made of that substance.
fn of_substance(substance: Substance) -> Vec<TypicalRange> {
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
    let name = words::substance(substance);
    let line = |part: LiquidField, beside: bool, more: Option<String>| {
        let limit = liquid(&made, part, beside, Product::default());
        let label = words::field(Field::Liquid(made.id, part), &draft).label.to_owned();
        let quantity = more.map_or(label.clone(), |more| format!("{label}, {more}"));
        range(name.to_owned(), quantity, &limit, part.kind(made.dose_way))
    };
    let dose = |beside| liquid(&made, LiquidField::Dose, beside, Product::default()).usual;
    let doses = if dose(false) == dose(true) {
        vec![line(LiquidField::Dose, false, None)]
    } else {
        vec![
            line(LiquidField::Dose, false, Some(t!("help-only-binder"))),
            line(LiquidField::Dose, true, Some(t!("help-beside-binder"))),
        ]
    };
    // What holds for anything is said once, at what is nothing in particular.
    let density =
        (substance == Substance::Other || !is_general(&made)).then(|| line(LiquidField::Density, false, None));
    doses.into_iter().chain([line(LiquidField::Solids, false, None)]).chain(density).flatten().collect()
}

/// What is typical of a release agent on the faces.
fn release_agent() -> Option<TypicalRange> {
    let way = DoseWay::LiquidOnFaces(Faces::Both);
    let agent = LiquidDraft { dose_way: way, ..LiquidDraft::blank(LiquidId(1), Role::ReleaseAgent) };
    let draft = Draft { liquids: vec![agent.clone()], ..Draft::default() };
    let limit = liquid(&agent, LiquidField::Dose, false, Product::default());
    let label = words::field(Field::Liquid(agent.id, LiquidField::Dose), &draft).label.to_owned();
    range(words::role(Role::ReleaseAgent).to_owned(), label, &limit, LiquidField::Dose.kind(way))
}

/// Whether the density range is the one for any liquid.
fn is_general(made: &LiquidDraft) -> bool {
    let other = LiquidDraft { substance: Substance::Other, ..made.clone() };
    liquid(made, LiquidField::Density, false, Product::default()).usual
        == liquid(&other, LiquidField::Density, false, Product::default()).usual
}
