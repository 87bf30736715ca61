//! A box for a number: text with a decimal keypad, read as it is typed, raw text kept.

use crate::browser::page;
use crate::domain::Grade;
use crate::record::limits::LONGEST_TEXT;
use leptos::ev::ClipboardEvent;
use leptos::prelude::*;

/// All that a box shows but for its unit.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct BoxState {
    /// The text in the box.
    pub text: String,
    /// Whether the app filled it in.
    pub typical: bool,
    /// What is beside the number: what it was read as, the other basis, whether it is required.
    pub aside: String,
    /// What there is to say about it.
    pub message: Option<BoxMessage>,
}

/// What there is to say about a number.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BoxMessage {
    /// How grave.
    pub grade: Grade,
    /// In words.
    pub words: String,
}

impl BoxState {
    fn grade(&self) -> Option<Grade> {
        self.message.as_ref().map(|message| message.grade)
    }
}

/// The box, its unit beside the number, and one line below it whose height is always kept. What there is to say is read
/// out with the box; where it is shown is the page's matter.
#[component]
pub fn NumberBox(
    /// `data-field` on the page and the end of its id.
    key: String,
    /// Its label in sight; none in a grid, whose head says it.
    #[prop(optional_no_strip)]
    label: Option<Signal<String>>,
    /// What it is in full.
    #[prop(into)]
    name: Signal<String>,
    /// What it shows.
    #[prop(into)]
    state: Signal<BoxState>,
    /// The grid column it is in.
    #[prop(optional_no_strip)]
    column: Option<&'static str>,
    /// A width of its own.
    #[prop(optional)]
    class: &'static str,
    /// What holds while it is blank.
    #[prop(optional, into)]
    placeholder: Signal<String>,
    /// Whether nothing can be typed, as where something else says the number.
    #[prop(optional, into)]
    readonly: Signal<bool>,
    /// Hears of each change of the text.
    on_input: Callback<String>,
    /// Hears when it is left.
    on_leave: Callback<()>,
    /// The unit.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    let id = format!("field-{key}");
    let (aside_id, says_id) = (format!("{id}-aside"), format!("{id}-says"));
    let described = format!("{aside_id} {says_id}");
    let label_for = id.clone();
    let grade = Memo::new(move |_| state.with(BoxState::grade));
    let is_typical = Memo::new(move |_| state.with(|state| state.typical));
    let pasted = move |event: ClipboardEvent| {
        if let Some(text) = page::pasted(&event).filter(|text| text.trim().contains(['\n', '\t', '\r'])) {
            // The browser would join the numbers of two cells to one.
            event.prevent_default();
            let cells: Vec<&str> =
                text.split(['\n', '\t', '\r']).map(str::trim).filter(|cell| !cell.is_empty()).collect();
            on_input.run(cells.join("; "));
        }
    };
    // The browser also says that a box is left while it takes away the page that the box was on, and its callback is gone by then.
    let left = move || _ = on_leave.try_run(());
    view! {
        <div class=format!("number {class}")>
            {label.map(|label| view! { <label for=label_for>{move || label.get()}</label> })}
            <span
                class="entry-box"
                class:typical=move || is_typical.get()
                class:warn=move || grade.get() == Some(Grade::Unusual)
                class:stop=move || grade.get() == Some(Grade::Stop)
            >
                <input
                    id=id
                    type="text"
                    inputmode="decimal"
                    autocomplete="off"
                    autocapitalize="off"
                    spellcheck="false"
                    maxlength=LONGEST_TEXT.to_string()
                    data-field=key
                    data-column=column
                    placeholder=move || placeholder.get()
                    readonly=move || readonly.get()
                    aria-label=move || name.get()
                    aria-describedby=described
                    aria-invalid=move || (grade.get() == Some(Grade::Stop)).then_some("true")
                    prop:value=move || state.with(|state| state.text.clone())
                    on:input=move |event| on_input.run(event_target_value(&event))
                    on:change=move |_| left()
                    on:blur=move |_| left()
                    on:paste=pasted
                />
                {children.map(|children| children())}
            </span>
            <span class="also" id=aside_id>{move || state.with(|state| state.aside.clone())}</span>
            <span class="out-of-sight" id=says_id>
                {move || state.with(|state| state.message.as_ref().map(|message| message.words.clone()))}
            </span>
        </div>
    }
}
