//! What a certificate says beside what is in the tank and what comes of both.

use super::context::{DeliveryNow, TankSheet, amount, number};
use super::table::paste;
use crate::domain::Grade;
use crate::domain::line::limit::limit;
use crate::domain::line::tanks::delivery::Moved;
use crate::domain::line::working::density_working;
use crate::domain::line::{Blend, DeliveryField, Fed, LineField, LineFigure, LineWorking, Stock};
use crate::domain::recipe::check::read_entry;
use crate::quantity::{Amount, Kind};
use crate::record::limits::LONGEST_TEXT;
use crate::t;
use crate::ui::components::{Grid, Mark};
use crate::ui::page::line::context::solved;
use crate::ui::page::line::grid_box::{ColumnHead, LineGridBox, LineRemarks};
use crate::ui::page::line::settings::context::parts;
use crate::ui::page::line::worked::{WorkedFigure, WorkedPanel};
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;
use std::marker::PhantomData;
use uom::si::f64::{MassDensity, ThermodynamicTemperature};

/// The key of the density at the pump.
const DENSITY: &str = "delivery.density_pumped";

/// The table.
#[component]
pub fn CertificateTable() -> impl IntoView {
    let state = expect_context::<State>();
    let fields = || DeliveryField::ALL.iter().map(|part| LineField::Delivery(*part)).collect::<Vec<_>>();
    let pasted = Callback::new(move |cells: Vec<(String, String)>| paste(state, fields(), cells));
    let head = view! {
        <th scope="col" class="l">{t!("delivery-quantity")}</th>
        <th scope="col">{t!("delivery-in-tank")}</th>
        <th scope="col">{t!("delivery-certificate")}</th>
        <th scope="col">{t!("delivery-blend")}</th>
        <th scope="col" class="l edge effect">{t!("delivery-effect")}</th>
    };
    let working = Callback::new(move |key: String| -> Option<(String, LineWorking)> {
        let name = words::line::figure(LineFigure::DensityPumped).label;
        (key == DENSITY).then(|| pumped(state)).flatten().map(|working| (name.to_owned(), working))
    });
    let row = |quantity: Quantity| view! { <CertificateRow quantity=quantity/> };
    view! {
        <div class="certificate-side">
            <Grid name=t!("delivery-certificate") class="certificate" head=head.into_any() foot=().into_any() on_paste=pasted>
                {Quantity::ALL.map(row).collect_view()}
                <BatchRow/>
            </Grid>
            <LineRemarks fields=Signal::stored(fields())/>
            <WorkedPanel working=working/>
        </div>
    }
}

/// What a row is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Quantity {
    Mass,
    Volume,
    Solids,
    Density,
    MeasuredAt,
    PumpedAt,
    Expansion,
}

impl Quantity {
    const ALL: [Self; 7] =
        [Self::Mass, Self::Volume, Self::Solids, Self::Density, Self::MeasuredAt, Self::PumpedAt, Self::Expansion];

    /// Its box; `None` where it follows from the others.
    const fn field(self) -> Option<DeliveryField> {
        Some(match self {
            Self::Mass => DeliveryField::Amount,
            Self::Volume => return None,
            Self::Solids => DeliveryField::Solids,
            Self::Density => DeliveryField::Density,
            Self::MeasuredAt => DeliveryField::MeasuredAt,
            Self::PumpedAt => DeliveryField::PumpedAt,
            Self::Expansion => DeliveryField::Expansion,
        })
    }

    const fn kind(self) -> Kind {
        match self {
            Self::Mass => Kind::BatchMass,
            Self::Volume => Kind::BatchVolume,
            Self::Solids => Kind::Solids,
            Self::Density => Kind::LiquidDensity,
            Self::MeasuredAt | Self::PumpedAt => Kind::Temperature,
            Self::Expansion => Kind::Expansion,
        }
    }

    fn label(self) -> String {
        match self {
            Self::Mass => t!("delivery-mass"),
            Self::Volume => t!("delivery-volume"),
            Self::Solids => t!("delivery-solids"),
            Self::Density => t!("delivery-density"),
            Self::MeasuredAt => t!("delivery-measured-at"),
            Self::PumpedAt => t!("delivery-pumped-at"),
            Self::Expansion => t!("delivery-expansion"),
        }
    }

    /// The number of a liquid in the tank; `None` where the row is not about it, or it is not known.
    fn of(self, stock: &Stock) -> Option<f64> {
        let is_known = stock.mass.value > 0.0;
        match self {
            Self::Mass => is_known.then_some(stock.mass.value),
            Self::Volume => is_known.then(|| stock.volume().value),
            Self::Solids => Some(stock.solids.ratio().value),
            Self::Density => Some(stock.density.value),
            Self::MeasuredAt | Self::PumpedAt | Self::Expansion => None,
        }
    }
}

#[component]
fn CertificateRow(
    /// What it is about.
    quantity: Quantity,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<TankSheet>();
    let kind = quantity.kind();
    let shown = move |stock: &Stock| quantity.of(stock).map(|base| number(state, kind, base));
    let before = Memo::new(move |_| sheet.delivery.with(|now| shown(&now.stock?)));
    let blend =
        move |pick: fn(&Blend) -> Stock| sheet.delivery.with(|now| shown(&pick(now.result.as_ref()?.blend.as_ref()?)));
    let after = Memo::new(move |_| blend(|blend| blend.after));
    let delivered = Memo::new(move |_| blend(|blend| blend.delivered));
    let certificate = match quantity.field() {
        Some(part) => {
            view! { <LineGridBox field=LineField::Delivery(part) column=Some("certificate") placeholder=placeholder(quantity)/> }
                .into_any()
        }
        None => view! { <span class="computed-cell">{move || delivered.get()}</span> }.into_any(),
    };
    let effect = move || sheet.delivery.with(|now| effect(state, quantity, now));
    view! {
        <tr>
            <th scope="row" class="l"><ColumnHead name=quantity.label() kind=kind choose=true/></th>
            <td>{move || before.get()}</td>
            <td class="cert">{certificate}</td>
            <td>{move || after.get()}</td>
            <td class="l edge effect">{effect}</td>
        </tr>
    }
}

/// What a blank box means.
fn placeholder(quantity: Quantity) -> String {
    match quantity {
        Quantity::Solids | Quantity::Density => t!("delivery-as-before"),
        _ => t!("common-optional"),
    }
}

/// What an entry does.
fn effect(state: State, quantity: Quantity, now: &DeliveryNow) -> Option<AnyView> {
    let delivered = now.result.as_ref()?;
    let own = |moved: &&Moved| Some(moved.fed) == now.liquid.map(Fed::Liquid);
    let change = |kind: Kind, before: f64, after: f64| {
        let (from, to) = (number(state, kind, before), amount(state, kind, after));
        (before > 0.0 && number(state, kind, after) != from).then(|| format!("{from} → {to}").into_any())
    };
    let flows = |of: fn(&Moved) -> (f64, f64)| {
        let pumps = delivered.moved.iter().filter(own).map(of);
        pumps.fold((0.0, 0.0), |(before, after), (own_before, own_after)| (before + own_before, after + own_after))
    };
    match quantity {
        Quantity::Mass => {
            let blend = delivered.blend.as_ref()?;
            let free = (now.fits? - blend.delivered.volume()).value;
            let volume = |base: f64| amount(state, Kind::BatchVolume, base);
            Some(if free >= 0.0 {
                t!("delivery-fits", volume = volume(free)).into_any()
            } else {
                let words = t!("delivery-too-much", volume = volume(-free));
                view! { <span class="flag"><Mark grade=Grade::Unusual/> " " {words}</span> }.into_any()
            })
        }
        Quantity::Solids => {
            let (before, after) = flows(|moved| (moved.mass_before.value, moved.mass_after.value));
            change(Kind::LiquidFlow, before, after)
        }
        Quantity::Density => {
            let (before, after) = flows(|moved| (moved.volume_before.value, moved.volume_after.value));
            change(Kind::PumpFlow, before, after)
        }
        Quantity::PumpedAt => {
            let density = delivered.density?;
            let text = parts(state, Amount::from_base(Kind::LiquidDensity, density.value));
            let name = words::line::figure(LineFigure::DensityPumped).label;
            // Without a working it is the density as entered.
            pumped(state)?;
            Some(
                view! { <WorkedFigure key=DENSITY.to_owned() name=name.to_owned() text=Signal::stored(text)/> }
                    .into_any(),
            )
        }
        Quantity::Volume | Quantity::MeasuredAt | Quantity::Expansion => None,
    }
}

/// How the density at the pump is computed, where a temperature changes it.
fn pumped(state: State) -> Option<LineWorking> {
    let working = solved(state, |_, case, _, book| {
        let read = |part: DeliveryField| {
            let field = LineField::Delivery(part);
            read_entry(book.delivery.entry(part), part.kind(), &limit(field, book)).ok().flatten()
        };
        let now = case.input.liquids.as_slice().iter().find(|own| Some(own.id) == book.delivered)?.density;
        let density = read(DeliveryField::Density).map_or(now, |value| MassDensity {
            dimension: PhantomData,
            units: PhantomData,
            value,
        });
        let temperature = |part| {
            read(part).map(|value| ThermodynamicTemperature { dimension: PhantomData, units: PhantomData, value })
        };
        Some(density_working(
            density,
            read(DeliveryField::Expansion)?,
            temperature(DeliveryField::MeasuredAt)?,
            temperature(DeliveryField::PumpedAt)?,
        ))
    });
    working.flatten()
}

/// The batch that the certificate names, beside the one that came last.
#[component]
fn BatchRow() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<TankSheet>();
    let before = move || {
        let tank = sheet.delivery.with(|now| now.tank)?;
        state.line.record.with(|record| record.last_batch(tank).map(str::to_owned))
    };
    let batch = Memo::new(move |_| state.line.book(|book| book.delivered_batch.clone()));
    let rename = move |event| {
        let text = event_target_value(&event);
        state.line.type_into("delivery-batch".to_owned(), |book| book.delivered_batch = text);
    };
    view! {
        <tr>
            <th scope="row" class="l">{t!("delivery-batch")}</th>
            <td>{before}</td>
            <td class="cert">
                <span class="number"><span class="entry-box">
                    <input
                        id="delivery-batch"
                        type="text"
                        autocomplete="off"
                        maxlength=LONGEST_TEXT.to_string()
                        aria-label=t!("delivery-batch")
                        prop:value=move || batch.get()
                        on:input=rename
                        on:change=move |_| state.leave_line()
                    />
                </span></span>
            </td>
            <td></td>
            <td class="l edge effect"></td>
        </tr>
    }
}
