//! A box of the line in a grid, the unit of a column, and what there is to say about boxes below their table.

use super::settings::line_box::{LineMessage, Remark, below, box_state, entry, said_at_rest};
use crate::domain::line::LineField;
use crate::domain::recipe::finding::What;
use crate::quantity::{Kind, Unit};
use crate::t;
use crate::ui::components::{NumberBox, UnitChoice};
use crate::ui::field::number_text::entry_read_as;
use crate::ui::page::line::context::with_context;
use crate::ui::part::amount::with_unit;
use crate::ui::state::State;
use crate::ui::text::{unit_short, words};
use leptos::prelude::*;

/// The box of a field in a column. A blank one is no error: what it keeps from being computed says so.
#[component]
pub fn LineGridBox(
    /// The field.
    field: LineField,
    /// Its column, down which Enter goes.
    #[prop(optional_no_strip)]
    column: Option<&'static str>,
    /// Whether the unit is beside the number, where the column has none of its own.
    #[prop(optional)]
    unit_in_box: bool,
    /// What holds while it is blank.
    #[prop(optional, into)]
    placeholder: Signal<String>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let kind = Memo::new(move |_| state.line.book(|book| book.kind(field)));
    let unit = Memo::new(move |_| state.line_units_at(field, kind.get()).unit(kind.get()));
    let said = said_of_filled(state, field);
    let shown = Memo::new(move |_| {
        let (message, entry) = (said.get(), entry(state, field));
        let grade = message.as_ref().map(|(grade, ..)| *grade);
        let aside = below(state, &entry, field, grade).unwrap_or_default();
        box_state(state, field, &entry, aside, message.map(|(grade, _, message)| (grade, message)))
    });
    let name = Memo::new(move |_| with_context(state, |context| words::line::field_name(field, context)));
    let symbol = Callback::new(move |unit: Unit| unit_short(unit, &state.currency.get()));
    let on_input = Callback::new(move |text: String| state.type_into_line(field, &text, unit.get_untracked()));
    let choose = Callback::new(move |unit: Unit| state.choose_line_unit(field, unit));
    let unit_choice = unit_in_box.then(|| {
        view! { <UnitChoice kind=kind unit=unit symbol=symbol name=name on_choose=choose/> }
    });
    view! {
        <NumberBox
            key=field.key()
            label=None
            name=name
            state=shown
            column=column
            placeholder=placeholder
            on_input=on_input
            on_leave=Callback::new(move |()| state.leave_line())
        >
            {unit_choice}
        </NumberBox>
    }
}

/// What is said about a box that is not blank.
fn said_of_filled(state: State, field: LineField) -> Memo<Option<Remark>> {
    let said = said_at_rest(state, field);
    Memo::new(move |_| said.get().filter(|(_, what, _)| *what != What::Missing))
}

/// Errors, questions and readings of boxes, below their table, where they move nothing that is typed in.
#[component]
pub fn LineRemarks(
    /// The boxes.
    #[prop(into)]
    fields: Signal<Vec<LineField>>,
) -> impl IntoView {
    view! {
        <div class="box-messages">
            <For each=move || fields.get() key=|field| field.key() let:field><LineRemark field=field/></For>
        </div>
    }
}

#[component]
fn LineRemark(
    /// The box.
    field: LineField,
) -> impl IntoView {
    let state = expect_context::<State>();
    let read_as = Memo::new(move |_| {
        let kind = state.line.book(|book| book.kind(field));
        let amount = entry_read_as(&entry(state, field), kind, &state.line_units_at(field, kind))?;
        let name = with_context(state, |context| words::line::field_name(field, context));
        Some(format!("{name}: {}", t!("common-read-as", amount = with_unit(state, amount, None))))
    });
    view! {
        <LineMessage field=field said=said_of_filled(state, field)/>
        {move || read_as.get().map(|words| view! { <p class="note">{words}</p> })}
    }
}

/// The name of a column and its unit, to choose where `choose` is set.
#[component]
pub fn ColumnHead(
    /// What the column has.
    #[prop(into)]
    name: String,
    /// What it measures.
    kind: Kind,
    /// Whether the unit is chosen here.
    #[prop(optional)]
    choose: bool,
) -> impl IntoView {
    let state = expect_context::<State>();
    let unit = Memo::new(move |_| state.unit(kind));
    let symbol = Callback::new(move |unit: Unit| unit_short(unit, &state.currency.get()));
    let on_choose = Callback::new(move |unit: Unit| state.choose_unit(kind, unit));
    let of = name.clone();
    if choose {
        view! { {name} " " <UnitChoice kind=kind unit=unit symbol=symbol name=of on_choose=on_choose/> }.into_any()
    } else {
        view! { {name} ", " {move || symbol.run(unit.get())} }.into_any()
    }
}

/// The name of a column with its unit, for a row that is folded.
pub fn with_column_unit(state: State, name: &str, kind: Kind) -> String {
    format!("{name}, {}", unit_short(state.unit(kind), &state.currency.get()))
}
