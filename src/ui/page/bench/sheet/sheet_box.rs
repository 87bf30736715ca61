//! A box of the weigh sheet on the page, and what is said below some of them.

use super::boxes::{SheetBox, units_at};
use super::context::WeighContext;
use crate::browser::page;
use crate::domain::recipe::finding::What;
use crate::domain::trial::weigh_sheet::weighing::read_mass;
use crate::domain::trial::{TrialFinding, TrialProblem};
use crate::domain::{Entry, Grade};
use crate::quantity::{Kind, Unit, Units, format};
use crate::t;
use crate::ui::components::{BoxMessage, BoxState, Mark, NumberBox, UnitChoice};
use crate::ui::field::number_text::{Suggestion, entry_offers, entry_other_basis, entry_read_as, in_box};
use crate::ui::state::State;
use crate::ui::text::{Message, symbol_shown, unit_short};
use leptos::prelude::*;

/// The text in a box. A sum of weighings keeps what was typed as long as its unit is the one shown.
fn text_in(which: SheetBox, entry: &Entry, units: &Units) -> String {
    let unit = units.unit(which.kind());
    match (which, read_mass(entry)) {
        (SheetBox::Weighed(_), Ok(Some(base))) if entry.unit != unit && entry.text.contains('+') => {
            format::editable(unit.from_base(base), units.mark)
        }
        _ => in_box(entry, which.kind(), units),
    }
}

/// The box, with its unit unless the head of its column has it.
#[component]
pub fn BenchBox(
    /// Which.
    which: SheetBox,
    /// Its label in sight; none in the table.
    #[prop(optional, into)]
    label: Option<Signal<String>>,
    /// What it is in full.
    #[prop(into)]
    name: Signal<String>,
    /// What holds while it is blank.
    #[prop(optional, into)]
    placeholder: Signal<String>,
    /// What is below the number while nothing else is to be said there.
    #[prop(optional, into)]
    aside: Signal<String>,
    /// The column that it is in.
    #[prop(optional)]
    column: Option<&'static str>,
    /// Whether the head of the column has its unit.
    #[prop(optional)]
    unit_in_head: bool,
    /// What it holds where a run of a series says so, and nothing can be typed.
    #[prop(optional, into)]
    fixed: Signal<Option<Entry>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<WeighContext>();
    let kind = which.kind();
    let unit = Memo::new(move |_| units_at(state, which).unit(kind));
    let said = said_at_rest(sheet, which);
    let shown = Memo::new(move |_| {
        let units = units_at(state, which);
        let fixed = fixed.get();
        let said = if fixed.is_some() { None } else { said.get() };
        let entry = fixed.unwrap_or_else(|| which.entry(state));
        let below = [aside.get(), below(&entry, kind, &units, said.as_ref().map(|said| said.0))];
        BoxState {
            text: text_in(which, &entry, &units),
            typical: entry.preset && !entry.is_blank(),
            aside: below.into_iter().filter(|line| !line.is_empty()).collect::<Vec<_>>().join("\n"),
            message: said
                .map(|(grade, _, message)| BoxMessage { grade, words: format!("{} {}", message.what, message.fix) }),
        }
    });
    let symbol = Callback::new(move |unit: Unit| unit_short(unit, &state.currency.get()));
    let on_input = Callback::new(move |text: String| sheet.type_into(which, &text, unit.get_untracked()));
    let choose = Callback::new(move |unit: Unit| sheet.choose_unit(Some(which), kind, unit));
    view! {
        <NumberBox
            key=which.key()
            label=label
            name=name
            state=shown
            column=column
            placeholder=placeholder
            readonly=Signal::derive(move || fixed.with(Option::is_some))
            on_input=on_input
            on_leave=Callback::new(move |()| sheet.leave())
        >
            <Show when=move || !unit_in_head>
                <UnitChoice kind=kind unit=unit symbol=symbol name=name on_choose=choose/>
            </Show>
        </NumberBox>
    }
}

/// What is wrong or unusual about an entry.
type Remark = (Grade, What, Message);

/// What is said about a box: as it was at the last pause, so that nothing comes and goes between two keys.
fn said_at_rest(sheet: WeighContext, which: SheetBox) -> Memo<Option<Remark>> {
    let state = sheet.desk.state;
    Memo::new(move |before: Option<&Option<Remark>>| {
        if sheet.typing.get() == Some(which)
            && let Some(before) = before
        {
            return before.clone();
        }
        let (grade, what) = which.judge(state)?;
        let finding = TrialFinding { grade, place: which.place(), what: TrialProblem::Entry(what) };
        let message = sheet.desk.made.with(|made| {
            let typed = state.bench.open.with(|open| open.trial.sheet.clone());
            sheet.desk.message(&finding, &made.recipe, &typed)
        });
        Some((grade, what, message))
    })
}

/// The line below the box: what was read, the other basis, how grave it is.
fn below(entry: &Entry, kind: Kind, units: &Units, grade: Option<Grade>) -> String {
    let show =
        |amount, unit: Unit| format!("{}\u{a0}{}", format::amount(amount, unit, units.mark), unit_short(unit, ""));
    let mark = match grade {
        Some(Grade::Stop) => return t!("common-error"),
        Some(Grade::Unusual) => format!("⚠ {} ", t!("common-warning")),
        _ => String::new(),
    };
    if let Some(amount) = entry_read_as(entry, kind, units) {
        return t!("common-read-as", amount = show(amount, units.unit(kind)));
    }
    match entry_other_basis(entry, kind, units) {
        Some((amount, unit)) => format!("{mark}{}", show(amount, unit)),
        None => mark,
    }
}

/// The errors and questions of some boxes, below them.
#[component]
pub fn BoxMessages(
    /// The boxes.
    #[prop(into)]
    boxes: Signal<Vec<SheetBox>>,
) -> impl IntoView {
    view! {
        <div class="box-messages">
            <For each=move || boxes.get() key=|which| *which let:which><BoxRemark which=which/></For>
        </div>
    }
}

#[component]
fn BoxRemark(
    /// The box.
    which: SheetBox,
) -> impl IntoView {
    let sheet = expect_context::<WeighContext>();
    let state = sheet.desk.state;
    let said = said_at_rest(sheet, which);
    move || {
        let (grade, what, message) = said.get()?;
        let offers = entry_offers(&which.entry(state), &what, &units_at(state, which));
        let shown = grade == Grade::Stop || !offers.is_empty();
        shown.then(|| {
            let offers = offers.into_iter().map(|offer| view! { <Offer which=which offer=offer/> }).collect_view();
            view! { <p><Mark grade=grade/> " " {message.what} " " {message.fix} " " {offers}</p> }
        })
    }
}

/// One of the numbers that may have been meant.
#[component]
fn Offer(
    /// The box.
    which: SheetBox,
    /// What is put in.
    offer: Suggestion,
) -> impl IntoView {
    let state = expect_context::<State>();
    let unit = if offer.has_unit { String::new() } else { format!("\u{a0}{}", symbol_shown(offer.unit)) };
    let words = t!("common-use", entry = format!("{}{unit}", offer.text));
    let put = move |_| {
        which.put(state, Entry::typed(offer.text.clone(), offer.unit));
        page::focus_field(&which.key());
    };
    view! { <button type="button" class="offer" on:click=put>{words}</button> }
}
