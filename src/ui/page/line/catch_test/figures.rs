//! What follows from a catch test: the setting for the flow wanted, the slope of the line, and the scatter about it.

use super::context::{CatchFigure, CatchSheet, OpenTest, flow_step, in_column, scatter};
use super::figure::{CatchValue, CatchWorking};
use crate::browser::clock;
use crate::domain::line::{LineFigure, Setting};
use crate::quantity::{Amount, Kind, format};
use crate::t;
use crate::ui::components::Rank;
use crate::ui::page::line::parts::shown;
use crate::ui::page::line::settings::context::{interval, setting_parts};
use crate::ui::page::line::settings_text::{no_setting, share_explained};
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use crate::ui::text::{symbol_shown, words};
use leptos::prelude::*;

/// The three figures, and the working of the one that is open.
#[component]
pub fn LineFigures() -> impl IntoView {
    let state = expect_context::<State>();
    let open = expect_context::<OpenTest>();
    let fit = Memo::new(move |_| open.examined.with(|examined| examined.as_ref().and_then(|examined| examined.fit)));
    let has_fit = Memo::new(move |_| fit.with(Option::is_some));
    let step = Memo::new(move |_| flow_step(state, &fit.get()?));
    let slope = Memo::new(move |_| {
        let per_unit = fit.get()?.slope * open.unit.unit().to_base(1.0);
        let number = format::significant(state.unit(Kind::LiquidFlow).from_base(per_unit), 3, state.units.get().mark);
        Some(number)
    });
    let slope_unit = move || {
        t!(
            "catch-per-setting",
            flow = symbol_shown(state.unit(Kind::LiquidFlow)),
            setting = symbol_shown(open.unit.unit())
        )
    };
    let intercept = Memo::new(move |_| match fit.get() {
        Some(fit) => {
            let amount = Amount::from_base(Kind::LiquidFlow, fit.intercept);
            let unit = symbol_shown(state.unit(Kind::LiquidFlow)).to_owned();
            (in_column(state, amount, step.get()), unit)
        }
        None => Default::default(),
    });
    let told_scatter = Memo::new(move |_| {
        let fit = fit.get()?;
        let sd = Amount::from_base(Kind::LiquidFlow, scatter(&fit).or(fit.residual_sd.map(|_| 0.0))?);
        let unit = state.unit(Kind::LiquidFlow);
        Some((format::significant(sd.get(unit), 3, state.units.get().mark), symbol_shown(unit).to_owned()))
    });
    let r_squared = Memo::new(move |_| {
        let r_squared = fit.get()?.r_squared?;
        Some((words::line::r_squared(r_squared), share_explained(state, r_squared)))
    });
    let figure = move |key: &str| format!("test.{}.{key}", open.pump.0);
    let (slope_key, scatter_key, r_key) = (figure("slope"), figure("residual_sd"), figure("r_squared"));
    view! {
        <div class="figs">
            <SetTo/>
            <Show when=move || has_fit.get() fallback=|| view! { <p class="fig note">{t!("catch-no-line")}</p> }>
                <div class="fig">
                    <span class="label">{t!("catch-slope")}</span>
                    <span class="lead" data-figure=slope_key.clone()>{move || slope.get()} " " <span class="u">{slope_unit}</span></span>
                    <span class="note">
                        {t!("catch-intercept")} " " <CatchValue figure=CatchFigure::Line(LineFigure::Intercept) text=intercept/>
                    </span>
                </div>
                <div class="fig">
                    <span class="label">{t!("catch-scatter")}</span>
                    <span class="lead" data-figure=scatter_key.clone()>
                        {move || told_scatter.get().map_or_else(|| "–".to_owned(), |(number, _)| number)}
                        " "
                        <span class="u">{move || told_scatter.get().map(|(_, unit)| unit)}</span>
                    </span>
                    <span class="note">
                        {move || r_squared.get().map(|(label, _)| label)}
                        " "
                        <span data-figure=r_key.clone()>{move || r_squared.get().map(|(_, number)| number)}</span>
                    </span>
                </div>
            </Show>
        </div>
        <CatchWorking belongs=|figure| matches!(figure, CatchFigure::SetTo | CatchFigure::Line(_))/>
    }
}

/// What the pump is set to, by its last valid test.
#[component]
fn SetTo() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<CatchSheet>();
    let open = expect_context::<OpenTest>();
    let row = Memo::new(move |_| sheet.row(open.pump));
    let label = move || match row.get() {
        Some(row) => t!("catch-set-to-for", flow = shown(state, LineFigure::Wanted, row.mass.value)),
        None => t!("catch-set-to"),
    };
    let text = Memo::new(move |_| match row.get() {
        Some(row) => match row.set_to {
            Some(found) => setting_parts(state, row.pump, found, row.unit),
            None => (no_setting(&row).to_owned(), String::new()),
        },
        None => (t!("catch-no-setting"), String::new()),
    });
    let rank = Memo::new(move |_| row.with(|row| row.as_ref().is_some_and(|row| row.set_to.is_some())));
    let interval = move || {
        let words = row.with(|row| row.as_ref().map(|row| interval(state, row))).filter(|words| !words.is_empty());
        words.map(|range| t!("catch-interval", range = range))
    };
    // A test that is not valid yet leaves the setting to the one before it.
    let by_older = move || {
        let last = state
            .line
            .checked
            .with(|line| line.pump(open.pump).and_then(|pump| pump.last().map(|test| (test.id, test.at))));
        last.filter(|(id, _)| *id != open.test).map(|(_, at)| t!("catch-by-test-of", date = clock::date(at)))
    };
    let one_catch = Memo::new(move |_| {
        let setting = row.with(|row| row.as_ref().and_then(|row| row.setting))?.setting;
        let curve = open.curve()?;
        let flows = curve.prediction(setting)?;
        let half = Amount::from_base(Kind::LiquidFlow, (flows.high - flows.low).value / 2.0);
        let number = in_column(state, half, flow_step(state, &curve.fit));
        Some((format!("± {number}"), symbol_shown(state.unit(Kind::LiquidFlow)).to_owned()))
    });
    let half = Memo::new(move |_| one_catch.get().unwrap_or_default());
    let of_one = move || one_catch.get().map(|_| t!("catch-one"));
    view! {
        <div class="fig set-to">
            <span class="label">{label}</span>
            {move || {
                let rank = if rank.get() { Rank::Act } else { Rank::Lead };
                view! { <CatchValue figure=CatchFigure::SetTo text=text rank=rank/> }
            }}
            <span class="note">{by_older}</span>
            <span class="note">{interval}</span>
            <span class="note"><CatchValue figure=CatchFigure::Line(LineFigure::Prediction) text=half/> " " {of_one}</span>
        </div>
    }
}

/// A setting as the drive takes it, with its unit.
pub fn setting_words(state: State, open: OpenTest, at: Setting) -> String {
    let (number, unit) = setting_parts(state, open.pump, at, open.unit);
    joined(&number, &unit)
}
