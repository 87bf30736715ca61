//! The water's row: how its dose is fixed, and what comes of it.

use super::context::{SheetContext, is_laboratory, other_time};
use super::enum_choice::EnumChoice;
use super::field_box::FieldBox;
use super::figure_of::FigureOf;
use crate::domain::recipe::draft::WaterWay;
use crate::domain::recipe::finding::What;
use crate::domain::{Field, Figure, Grade};
use crate::t;
use crate::ui::components::{Mark, Rank};
use crate::ui::state::State;
use leptos::prelude::*;

/// The row.
#[component]
pub fn WaterRow() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SheetContext>();
    let way = Memo::new(move |_| state.draft.with(|draft| draft.water_way));
    let too_wet = Memo::new(move |_| {
        sheet.said.with(|said| said.iter().any(|said| matches!(said.finding.what, What::TooWet { .. })))
    });
    let all = WaterWay::ALL.iter().map(|way| (*way, way_words(*way))).collect::<Vec<_>>();
    let choose = Callback::new(move |way: WaterWay| state.edit(None, |draft| draft.water_way = way));
    let dose = move || match way.get() {
        WaterWay::OnFibre => Some(view! { <FieldBox field=Field::WaterOnFibre column="dose"/> }),
        WaterWay::Flow => Some(view! { <FieldBox field=Field::WaterFlow column="dose"/> }),
        WaterWay::ToMatMoisture | WaterWay::None => None,
    };
    let on_fibre = Memo::new(move |_| is_laboratory(state));
    let result = move || {
        if on_fibre.get() {
            view! { <FigureOf figure=Figure::WaterDoseOnFibre rank=Rank::Act/> }
        } else {
            view! { <FigureOf figure=Figure::WaterDose rank=Rank::Act unit_in_head=true/> }
        }
    };
    view! {
        <tr class="liquid water" class:warn=move || too_wet.get()>
            <th scope="row" class="l name">
                <b>{t!("recipe-water")}</b>
                <Show when=move || too_wet.get()>
                    <span class="flag"><Mark grade=Grade::Unusual/> " " {t!("recipe-none-too-wet")}</span>
                </Show>
            </th>
            <td class="dose">{dose}</td>
            <td class="l basis">
                <EnumChoice
                    id="water-way"
                    name=t!("recipe-water-way")
                    all=all
                    value=Signal::derive(move || Some(way.get()))
                    on_choose=choose
                />
            </td>
            <td class="extra"></td>
            <td class="extra"></td>
            <td class="edge result">{result}</td>
            <td class="extra"><FigureOf figure=Figure::WaterDoseVolume unit_in_head=true/></td>
            <td class="extra second"><FigureOf figure=Figure::WaterDoseVolume unit=other_time unit_in_head=true/></td>
            <td class="extra roomy"><FigureOf figure=Figure::WaterPerVolume unit_in_head=true/></td>
            <td class="extra roomy"></td>
            <td class="more"></td>
        </tr>
    }
}

/// What sets the water dose.
pub fn way_words(way: WaterWay) -> String {
    match way {
        WaterWay::ToMatMoisture => t!("recipe-water-to-mat-moisture"),
        WaterWay::OnFibre => t!("recipe-water-on-fibre"),
        WaterWay::Flow => t!("recipe-water-flow"),
        WaterWay::None => t!("recipe-water-none"),
    }
}
