//! The board that is shown, its density and the number of warnings, at the foot of a phone's screen.

use crate::domain::Grade;
use crate::domain::trial::Property;
use crate::domain::trial::boards::density::density_target;
use crate::quantity::Kind;
use crate::t;
use crate::ui::components::{Mark, SlotLine};
use crate::ui::page::bench::entry::{TrialDesk, amount_parts, board_name};
use crate::ui::state::State;
use leptos::prelude::*;

/// The foot; nothing without a board.
#[component]
pub fn BoardsFoot(
    /// The lines of the warning slot.
    lines: Signal<Vec<SlotLine>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let density = Memo::new(move |_| {
        let id = desk.board.get()?;
        let number = |base: f64| amount_parts(state, Kind::BoardDensity, base).0;
        desk.tested.with(|tested| {
            let board = tested.board(id)?;
            let own = number(board.mean(Property::Density)?);
            let target = tested.sheet(id).and_then(|sheet| density_target(sheet, std::slice::from_ref(board)));
            Some(match target {
                Some(target) => t!("trial-density-of-target", density = own, target = number(target.target)),
                None => own,
            })
        })
    });
    let warnings =
        Memo::new(move |_| lines.with(|lines| lines.iter().filter(|line| line.grade != Grade::Note).count()));
    view! {
        <Show when=move || desk.board.get().is_some()>
            <div class="phone-foot">
                <b>{move || desk.board.get().map(|id| board_name(state, id))}</b>
                <span>{t!("trial-density")} " " {move || density.get().unwrap_or_else(|| "–".to_owned())}</span>
                <Show when=move || { warnings.get() > 0 }>
                    <span class="flag">
                        <Mark grade=Grade::Unusual/>
                        " "
                        <span class="out-of-sight">{t!("common-warnings")}</span>
                        {move || warnings.get()}
                    </span>
                </Show>
            </div>
        </Show>
    }
}
