//! What came out of the blender: the true blending loss, and the mass to lay at the moisture measured.

use super::boxes::SheetBox;
use super::context::WeighContext;
use super::sheet_box::{BenchBox, BoxMessages};
use super::text::shown;
use crate::domain::trial::TrialFinding;
use crate::domain::trial::weigh_sheet::recovery::{Recovery, recovery};
use crate::domain::trial::weigh_sheet::recovery_draft::RecoveryField;
use crate::quantity::Kind;
use crate::t;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// What the furnish recovered comes to, with what there is to say.
pub fn recovered(sheet: WeighContext) -> (Option<Recovery>, Vec<TrialFinding>) {
    let bench = sheet.desk.state.bench;
    let (run, batch) = bench.place();
    let mut said = Vec::new();
    let own = sheet.desk.made.with(|made| {
        sheet.desk.weighing.with(|weighing| {
            let (own, weighing) = (made.sheet.as_ref()?, weighing.as_ref()?);
            bench.open.with(|open| recovery(own, weighing, open.trial.recovered(run, batch)?, &mut said))
        })
    });
    (own, said)
}

/// Boxes and results.
#[component]
pub fn Recovered() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<WeighContext>();
    let own = Memo::new(move |_| {
        let recovery = recovered(sheet).0?;
        Some((shown(state, Kind::Share, recovery.loss.value), shown(state, Kind::BenchMass, recovery.mat_mass.value)))
    });
    let number = |field: RecoveryField| {
        let label = words::bench::recovery_field(field).label;
        view! { <BenchBox which=SheetBox::Recovered(field) label=label.to_owned() name=label.to_owned() aside=t!("common-optional")/> }
    };
    let fig = move |key: &'static str, label: String, value: String| {
        view! { <div class="fig"><span class="label">{label}</span><b data-figure=key>{value}</b></div> }
    };
    let boxes = RecoveryField::ALL.iter().map(|field| SheetBox::Recovered(*field)).collect::<Vec<_>>();
    view! {
        <div class="lab">
            <div class="row">{RecoveryField::ALL.iter().map(|field| number(*field)).collect_view()}</div>
            <div class="row">
                {move || own.get().map(|(loss, mass)| view! {
                    {fig("blending_loss", t!("bench-blending-loss"), loss)}
                    {fig("mass_to_lay", t!("bench-mass-to-lay"), mass)}
                })}
            </div>
            <BoxMessages boxes=boxes/>
        </div>
    }
}
