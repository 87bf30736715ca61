//! What is made up beside the line: a solution from crystals and a premixed glue, with the masses to weigh; below, folded, two
//! sums of their chemistry and the cautions.

mod amount_box;
mod chemistry;
mod context;
mod entry_box;
mod glue;
mod glue_row;
mod offers;
mod solution;
mod title;
mod value;
mod working;

use crate::browser::page;
use crate::domain::{Caution, Grade};
use crate::t;
use crate::ui::components::{Cautions, Fold, Mark, SlotLine, WarningSlot};
use crate::ui::state::State;
use crate::ui::text::words;
use chemistry::{IsocyanateFold, RatioFold};
pub use context::{MixingContext, part_name, shown, shown_parts};
use glue::Glue;
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;
use solution::Solution;
use title::MixingTitle;

/// The page.
#[component]
pub fn MixingSheet() -> impl IntoView {
    let state = expect_context::<State>();
    // What the weigh sheet asks for is known once the trial that was left open is there.
    state.begin_bench();
    let sheet = MixingContext::new(state);
    provide_context(sheet);
    // As they were at the last pause, so that nothing comes and goes between two keys.
    let lines = RwSignal::new(Vec::<SlotLine>::new());
    Effect::new(move |_| {
        if sheet.typing.get() {
            return;
        }
        let all = sheet.lines(state);
        if lines.with_untracked(|before| *before != all) {
            lines.set(all);
        }
    });
    let enter = move |event: KeyboardEvent| {
        if event.key() == "Enter"
            && let Some(key) = page::focused_field()
        {
            page::focus_after(&key);
        }
    };
    view! {
        <div class="work-sheet mixing-sheet" on:keydown=enter>
            <MixingTitle/>
            <WarningSlot lines=lines/>
            <Solution/>
            <Glue/>
            <section class="panel folds" aria-label=t!("mixing-chemistry")>
                <IsocyanateFold/>
                <RatioFold/>
                <MixingCautions/>
            </section>
            <MixingFoot lines=lines/>
        </div>
    }
}

/// What to take care of with the salt chosen, what is in the tank, and the resins of the folds.
#[component]
fn MixingCautions() -> impl IntoView {
    let sheet = expect_context::<MixingContext>();
    let applying = Memo::new(move |_| {
        let of_sheet = sheet.cautions();
        let of_folds = [Caution::Isocyanate, Caution::Formaldehyde];
        let all = Caution::ALL.iter().copied();
        all.filter(|each| of_sheet.contains(each) || of_folds.contains(each)).collect::<Vec<_>>()
    });
    let titles = Memo::new(move |_| {
        let title = |caution: &Caution| words::caution_title(*caution);
        applying.with(|all| all.iter().map(title).collect::<Vec<_>>().join(" · "))
    });
    view! {
        <Fold id="cautions" title=t!("mixing-cautions") note=titles>
            <Cautions all=applying/>
        </Fold>
    }
}

/// The masses of the solution at the foot of a phone's screen.
#[component]
fn MixingFoot(
    /// The lines of the warning slot.
    lines: RwSignal<Vec<SlotLine>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<MixingContext>();
    let mass = move |of: fn(&crate::domain::mixing::MadeUp) -> f64| {
        Memo::new(move |_| {
            let mass = sheet.solution.with(|solution| solution.as_ref().ok().map(of));
            mass.map_or_else(|| "–".to_owned(), |mass| shown(state, crate::quantity::Kind::BatchMass, mass))
        })
    };
    let (water, salt) = (mass(|made| made.make_up.water.value), mass(|made| made.make_up.salt.value));
    let warnings = Memo::new(move |_| lines.with(Vec::len));
    view! {
        // The same figures are above: a screen reader needs them once.
        <div class="phone-foot" aria-hidden="true">
            <span>{t!("mixing-water")} " " <b>{move || water.get()}</b></span>
            <span>{t!("mixing-salt")} " " <b>{move || salt.get()}</b></span>
            <Show when=move || { warnings.get() > 0 }>
                <span class="flag"><Mark grade=Grade::Unusual/> " " {move || warnings.get()}</span>
            </Show>
        </div>
    }
}
