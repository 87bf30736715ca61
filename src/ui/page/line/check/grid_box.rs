//! A box of a table of the line: its column's head or the column beside it says what it is and in which unit.

use crate::domain::line::LineField;
use crate::quantity::Unit;
use crate::ui::components::{NumberBox, UnitChoice};
use crate::ui::page::line::context::with_context;
use crate::ui::page::line::settings::line_box::{box_state, said_at_rest, short};
use crate::ui::state::State;
use leptos::prelude::*;

/// The box of a field of the line, without a label in sight.
#[component]
pub fn LineGridBox(
    /// The field.
    field: LineField,
    /// The grid column it is in.
    column: &'static str,
    /// Whether its unit is in the box, because no column has it.
    #[prop(optional)]
    has_unit: bool,
    /// What holds while it is blank.
    #[prop(optional, into)]
    placeholder: Signal<String>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let kind = Memo::new(move |_| state.line.book(|book| book.kind(field)));
    let unit = Memo::new(move |_| state.line_units_at(field, kind.get()).unit(kind.get()));
    let said = said_at_rest(state, field);
    let shown = Memo::new(move |_| box_state(state, field, said.get(), String::new()));
    let name = Memo::new(move |_| with_context(state, |context| (state.words.line.field_name)(field, context)));
    let symbol = Callback::new(move |unit: Unit| short(unit, &state.currency.get()));
    let choose = Callback::new(move |unit: Unit| state.choose_line_unit(field, unit));
    let on_input = Callback::new(move |text: String| state.type_into_line(field, &text, unit.get_untracked()));
    view! {
        <NumberBox
            key=field.key()
            label=None
            name=name
            state=shown
            column=Some(column)
            class=if has_unit { "with-unit" } else { "" }
            placeholder=placeholder
            on_input=on_input
            on_leave=Callback::new(move |()| state.leave_line())
        >
            {has_unit.then(|| view! { <UnitChoice kind=kind unit=unit symbol=symbol name=name on_choose=choose/> })}
        </NumberBox>
    }
}
