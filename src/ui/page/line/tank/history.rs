//! The deliveries that were accepted.

use crate::browser::clock;
use crate::domain::line::DeliveryField;
use crate::domain::recipe::check::read_entry;
use crate::quantity::Amount;
use crate::record::content::line::AcceptedDelivery;
use crate::t;
use crate::ui::components::Fold;
use crate::ui::part::amount::with_unit;
use crate::ui::state::State;
use leptos::prelude::*;

/// So many are named beside the heading.
const IN_NOTE: usize = 2;

/// The list, the newest first.
#[component]
pub fn EarlierDeliveries() -> impl IntoView {
    let state = expect_context::<State>();
    let all = Memo::new(move |_| {
        state.line.record.with(|record| record.deliveries.iter().rev().cloned().collect::<Vec<_>>())
    });
    let note = Signal::derive(move || {
        let of = |delivery: &AcceptedDelivery| {
            let place = if delivery.tank_name.is_empty() { &delivery.liquid } else { &delivery.tank_name };
            format!("{place} {} {}", clock::date(delivery.at), entry(state, delivery, DeliveryField::Amount))
                .trim_end()
                .to_owned()
        };
        all.with(|all| {
            if all.is_empty() {
                t!("delivery-no-earlier")
            } else {
                all.iter().take(IN_NOTE).map(of).collect::<Vec<_>>().join(" · ")
            }
        })
    });
    let row = move |delivery: AcceptedDelivery| {
        let shown = |part| entry(state, &delivery, part);
        view! {
            <tr>
                <th scope="row" class="l">{clock::date_time(delivery.at)}</th>
                <td class="l">{delivery.liquid.clone()}</td>
                <td class="l">{delivery.tank_name.clone()}</td>
                <td>{shown(DeliveryField::Amount)}</td>
                <td>{shown(DeliveryField::Solids)}</td>
                <td>{shown(DeliveryField::Density)}</td>
                <td class="l">{delivery.batch.clone()}</td>
            </tr>
        }
    };
    let table = move || {
        if all.with(Vec::is_empty) {
            return view! { <p>{t!("delivery-no-earlier")}</p> }.into_any();
        }
        view! {
            <div class="scroll" tabindex="0" role="region" aria-label=t!("delivery-earlier")>
                <table class="results earlier" aria-label=t!("delivery-earlier")>
                    <thead><tr>
                        <th scope="col" class="l">{t!("delivery-accepted-at")}</th>
                        <th scope="col" class="l">{t!("delivery-liquid")}</th>
                        <th scope="col" class="l">{t!("delivery-tank-head")}</th>
                        <th scope="col">{t!("delivery-mass")}</th>
                        <th scope="col">{t!("delivery-solids")}</th>
                        <th scope="col">{t!("delivery-density")}</th>
                        <th scope="col" class="l">{t!("delivery-batch")}</th>
                    </tr></thead>
                    <tbody>{all.get().into_iter().map(row).collect_view()}</tbody>
                </table>
            </div>
        }
        .into_any()
    };
    view! { <section class="panel folds"><Fold id="earlier-deliveries" title=t!("delivery-earlier") note=note>{table}</Fold></section> }
}

/// A number of a certificate with its unit; blank where it said nothing.
fn entry(state: State, delivery: &AcceptedDelivery, part: DeliveryField) -> String {
    let read = read_entry(delivery.certificate.entry(part), part.kind(), &part.limit()).ok().flatten();
    read.map_or_else(String::new, |base| with_unit(state, Amount::from_base(part.kind(), base), None))
}
