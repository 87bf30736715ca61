//! The laboratory: balances, blender, spray, overage. It is the same from one trial to the next.

use super::boxes::SheetBox;
use super::pick::Pick;
use super::sheet_box::{BenchBox, BoxMessages};
use crate::domain::trial::WeighField;
use crate::domain::trial::weigh_sheet::draft::{OverageOf, OverageOn, SheetDraft, SprayWay, WaterPlace};
use crate::domain::trial::weigh_sheet::plan::read_field;
use crate::t;
use crate::ui::field::number_text::in_box;
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use crate::ui::text::{unit_short, words};
use leptos::prelude::*;

const FIELDS: &[WeighField] = &[
    WeighField::Overage,
    WeighField::WallLoss,
    WeighField::Capacity,
    WeighField::SprayVolume,
    WeighField::SprayMass,
    WeighField::DryingLoss,
    WeighField::FibreStep,
    WeighField::LiquidStep,
    WeighField::FibreMinimum,
    WeighField::LiquidMinimum,
    WeighField::Tolerance,
];

/// The setup in a line: "balances 1 g and 0.01 g · blender 1500 g · …".
pub fn lab_note(state: State) -> String {
    state.bench.open.with(|open| {
        let sheet = &open.trial.sheet;
        let shown = |field: WeighField| {
            let entry = sheet.entry(field);
            let known = matches!(read_field(sheet, field), Ok(Some(_)));
            known.then(|| {
                let units = state.units.get();
                let kind = field.kind();
                joined(&in_box(entry, kind, &units), &unit_short(units.unit(kind), ""))
            })
        };
        let balances = match (shown(WeighField::FibreStep), shown(WeighField::LiquidStep)) {
            (Some(fibre), Some(liquids)) => Some(t!("bench-note-balances", fibre = fibre, liquids = liquids)),
            _ => None,
        };
        let spray = match sheet.spray_way {
            SprayWay::Volume => WeighField::SprayVolume,
            SprayWay::Mass => WeighField::SprayMass,
        };
        let parts = [
            balances,
            shown(WeighField::Capacity).map(|mass| t!("bench-note-blender", mass = mass)),
            shown(WeighField::Overage).map(|share| t!("bench-note-overage", share = share)),
            shown(WeighField::WallLoss).map(|share| t!("bench-note-wall-loss", share = share)),
            shown(spray).map(|flow| t!("bench-note-spray", flow = flow)),
            Some(t!("bench-note-all-trials")),
        ];
        parts.into_iter().flatten().collect::<Vec<_>>().join(" · ")
    })
}

/// The boxes.
#[component]
pub fn LabSetup() -> impl IntoView {
    let state = expect_context::<State>();
    let boxes = FIELDS.iter().map(|field| SheetBox::Field(*field)).collect::<Vec<_>>();
    let by_mass = Memo::new(move |_| state.bench.open.with(|open| open.trial.sheet.spray_way == SprayWay::Mass));
    view! {
        <div class="lab">
            <fieldset>
                <legend>{t!("bench-blender")}</legend>
                <div class="row">
                    <LabBox field=WeighField::Capacity label=t!("bench-capacity") blank=t!("bench-no-limit")/>
                    <LabBox field=WeighField::Overage label=t!("bench-overage")/>
                    <Pick
                        id="bench-overage-of" label=t!("bench-overage-of") all=OverageOf::ALL words=words::bench::overage_of of_lab=true
                        now=|sheet: &SheetDraft| sheet.overage_of put=|sheet: &mut SheetDraft, of| sheet.overage_of = of
                    />
                    <Pick
                        id="bench-overage-on" label=t!("bench-overage-on") all=OverageOn::ALL words=words::bench::overage_on of_lab=true
                        now=|sheet: &SheetDraft| sheet.overage_on put=|sheet: &mut SheetDraft, on| sheet.overage_on = on
                    />
                    <LabBox field=WeighField::WallLoss label=t!("bench-wall-loss")/>
                    <LabBox field=WeighField::DryingLoss label=t!("bench-drying-loss") blank=t!("bench-no-loss")/>
                </div>
            </fieldset>
            <fieldset>
                <legend>{t!("bench-spray")}</legend>
                <div class="row">
                    <Pick
                        id="bench-spray-way" label=t!("bench-spray-way") all=SprayWay::ALL words=words::bench::spray_way of_lab=true
                        now=|sheet: &SheetDraft| sheet.spray_way put=|sheet: &mut SheetDraft, way| sheet.spray_way = way
                    />
                    {move || if by_mass.get() {
                        view! { <LabBox field=WeighField::SprayMass label=t!("bench-spray-flow") blank=t!("bench-no-spray-time")/> }
                    } else {
                        view! { <LabBox field=WeighField::SprayVolume label=t!("bench-spray-flow") blank=t!("bench-no-spray-time")/> }
                    }}
                    <Pick
                        id="bench-water-place" label=t!("bench-water-place") all=WaterPlace::ALL words=words::bench::water_place of_lab=true
                        now=|sheet: &SheetDraft| sheet.water_place put=|sheet: &mut SheetDraft, place| sheet.water_place = place
                    />
                </div>
            </fieldset>
            <fieldset>
                <legend>{t!("bench-balances")}</legend>
                <div class="row">
                    <LabBox field=WeighField::FibreStep label=t!("bench-fibre-step") blank=t!("bench-no-rounding")/>
                    <LabBox field=WeighField::LiquidStep label=t!("bench-liquid-step") blank=t!("bench-no-rounding")/>
                    <LabBox field=WeighField::FibreMinimum label=t!("bench-fibre-minimum") blank=t!("bench-no-limit")/>
                    <LabBox field=WeighField::LiquidMinimum label=t!("bench-liquid-minimum") blank=t!("bench-no-limit")/>
                    <LabBox field=WeighField::Tolerance label=t!("bench-tolerance") blank=t!("bench-one-step")/>
                </div>
            </fieldset>
            <BoxMessages boxes=boxes/>
        </div>
    }
}

/// A box, with what blank means below it.
#[component]
fn LabBox(
    /// The field.
    field: WeighField,
    /// Its label in sight.
    #[prop(into)]
    label: Signal<String>,
    /// What blank means; without it something is required.
    #[prop(optional, into)]
    blank: String,
) -> impl IntoView {
    let state = expect_context::<State>();
    let which = SheetBox::Field(field);
    let name = Memo::new(move |_| {
        state.bench.open.with(|open| words::bench::field(field, &open.trial.sheet).label.to_owned())
    });
    let aside = Memo::new(move |_| {
        let entry = which.entry(state);
        match (entry.is_blank(), entry.preset) {
            (true, _) if blank.is_empty() => t!("common-required"),
            (true, _) => blank.clone(),
            (false, true) => t!("common-typical"),
            (false, false) => String::new(),
        }
    });
    view! { <BenchBox which=which label=label name=name aside=aside/> }
}
