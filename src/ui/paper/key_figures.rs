//! Mat, line and belt scale, below the doses.

use super::context::{moisture, number};
use crate::domain::Figure;
use crate::t;
use crate::ui::part::figure::text;
use crate::ui::part::working::figure_name;
use crate::ui::state::State;
use leptos::prelude::*;

/// The figures in a row; those that the recipe does not give are left out.
#[component]
pub fn KeyFigures() -> impl IntoView {
    let state = expect_context::<State>();
    let beside = |figure: Figure, words: fn() -> String| text(state, figure).map(|text| format!("{} {text}", words()));
    let joined = |parts: [Option<String>; 2]| parts.into_iter().flatten().collect::<Vec<_>>().join(" · ");
    let fibre = state.outcome.with(|outcome| Some(outcome.case.as_ref()?.input.fibre_moisture.dry_basis().value));
    let all = [
        (
            t!("recipe-mat-weight"),
            Figure::MatWet,
            joined([beside(Figure::MatOvenDry, || t!("recipe-oven-dry")), text(state, Figure::MatRunning)]),
        ),
        (
            t!("recipe-line-speed"),
            Figure::LineSpeed,
            joined([beside(Figure::PressTime, || t!("recipe-press-time")), None]),
        ),
        (
            t!("paper-press-factor"),
            Figure::PressFactor,
            joined([beside(Figure::FinishedVolume, || t!("paper-output")), None]),
        ),
        (
            t!("recipe-belt-scale"),
            Figure::FibreWet,
            joined([fibre.map(|fibre| t!("paper-at-moisture", moisture = moisture(state, fibre))), None]),
        ),
    ];
    let one = |(label, figure, below): (String, Figure, String)| {
        let (number, unit) = number(state, figure);
        (!number.is_empty()).then(|| {
            view! { <div><span>{label}</span><b>{number} " " <span class="u">{unit}</span></b><span>{below}</span></div> }
        })
    };
    view! { <section class="print-figures">{all.into_iter().filter_map(one).collect_view()}</section> }
}

/// The other figures of the recipe, for who has to report them.
const OTHERS: [Figure; 15] = [
    Figure::Fibre,
    Figure::Solids,
    Figure::BlenderMoisture,
    Figure::MatMoisture,
    Figure::MatHeight,
    Figure::SurfaceSpray,
    Figure::Reject,
    Figure::PressedThickness,
    Figure::PressVapour,
    Figure::FinishedArea,
    Figure::FinishedMass,
    Figure::FinishedVolume,
    Figure::SanderDust,
    Figure::Offcuts,
    Figure::Cost,
];

/// What else comes of the recipe, in a running line.
#[component]
pub fn OtherFigures() -> impl IntoView {
    let state = expect_context::<State>();
    let one = |figure: Figure| {
        let amount = state.outcome.with(|outcome| outcome.case.as_ref()?.figure(figure))?;
        let shown = match figure {
            Figure::BlenderMoisture | Figure::MatMoisture => moisture(state, amount.base),
            _ => text(state, figure)?,
        };
        Some(format!("{}\u{a0}{shown}", figure_name(state, figure)))
    };
    let all = OTHERS.into_iter().filter_map(one).collect::<Vec<_>>();
    view! { <p class="print-small"><b>{t!("paper-results")}</b> " " {all.join("; ")} "."</p> }
}
