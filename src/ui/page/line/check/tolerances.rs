//! How far a reading may be off, and how well it is known.

use crate::domain::line::{LineField, ToleranceField, UncertaintyField};
use crate::quantity::{Unit, format};
use crate::t;
use crate::ui::components::Fold;
use crate::ui::page::line::settings::line_box::LineFieldBox;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// The fold.
#[component]
pub fn TolerancesFold() -> impl IntoView {
    let state = expect_context::<State>();
    let note = Memo::new(move |_| {
        state.line.checked.with(|line| {
            let mark = state.units.with(|units| units.mark);
            line.tolerances.map_or_else(String::new, |tolerances| {
                let of = |share: uom::si::f64::Ratio| format::editable(Unit::Percent.from_base(share.value), mark);
                t!(
                    "check-tolerances-note",
                    dose = of(tolerances.dose),
                    moisture = of(tolerances.moisture),
                    mat = of(tolerances.mat_weight),
                    speed = of(tolerances.line_speed)
                )
            })
        })
    });
    let field_box = move |field: LineField| {
        let label = state.line.record.with_untracked(|record| words::line::field(field, &record.book).label);
        view! { <LineFieldBox field=field label=label.to_owned()/> }
    };
    let tolerances =
        move || ToleranceField::ALL.iter().map(|part| field_box(LineField::Tolerance(*part))).collect_view();
    let uncertainties =
        move || UncertaintyField::ALL.iter().map(|part| field_box(LineField::Uncertainty(*part))).collect_view();
    view! {
        <Fold id="check-tolerances" title=t!("check-tolerances") note=note>
            <div class="given-boxes">{tolerances()}</div>
            <p class="note">{t!("check-uncertainties-hint")}</p>
            <div class="given-boxes">{uncertainties()}</div>
        </Fold>
    }
}
