//! A solution made up from crystals: how much water and salt to weigh.

use super::amount_box::{AmountBox, SOLUTION_AMOUNT, amount_field};
use super::context::{MixingContext, shown, shown_parts};
use super::entry_box::{EntryBox, EntryField, EntryMessages};
use super::offers::SolutionOffers;
use super::value::Value;
use super::working::{ResultRow, WorkingTable, worked};
use crate::domain::chemistry::solute::Solute;
use crate::domain::mixing::target_amount::Wanted;
use crate::domain::mixing::{MadeUp, MixError, MixField};
use crate::quantity::Kind;
use crate::t;
use crate::ui::components::{Choice, ChoiceOption, Rank};
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// The section.
#[component]
pub fn Solution() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<MixingContext>();
    let way = Memo::new(move |_| sheet.draft.with(|mix| mix.solution_way));
    let amount = amount_field(state, sheet, SOLUTION_AMOUNT, way, t!("mixing-solution"));
    let field = move |field, name: String| EntryField::of(state, sheet, field, Signal::stored(name));
    let concentration = field(MixField::Concentration, t!("mixing-concentration"));
    let coldest = field(MixField::Coldest, t!("mixing-coldest"));
    let density = field(MixField::MeasuredDensity, t!("mixing-measured-density"));
    let boxes = vec![concentration.clone(), amount.clone(), coldest.clone(), density.clone()];
    let made_up = move || sheet.solution.with(|solution| solution.as_ref().ok().copied());
    let equivalent = Callback::new(move |kind: Kind| {
        let MadeUp { make_up, .. } = made_up()?;
        if kind == Kind::BatchMass { Some(make_up.total.value) } else { make_up.volume.map(|volume| volume.value) }
    });
    let dissolves = Signal::derive(move || {
        let saturation = made_up().map(|made_up| shown(state, Kind::Share, made_up.make_up.saturation.value));
        saturation.map_or_else(String::new, |most| t!("mixing-dissolves", most = most))
    });
    let follows = Signal::derive(move || {
        let mine = sheet.draft.with(|mix| mix.follows_recipe().then_some(mix.solute));
        let is_recipe = sheet.in_recipe.with(|all| all.iter().any(|solution| Some(solution.solute) == mine));
        if is_recipe { t!("mixing-as-recipe") } else { t!("mixing-by-mass") }
    });
    view! {
        <section class="panel make" aria-labelledby="solution">
            <div class="make-inputs">
                <h2 id="solution">{t!("mixing-solution-heading")}</h2>
                <div class="boxes">
                    <SaltChoice/>
                    <EntryBox field=concentration.clone() label=concentration.name aside=follows/>
                    <AmountBox field=amount place=SOLUTION_AMOUNT equivalent=equivalent/>
                    <EntryBox field=coldest.clone() label=coldest.name aside=dissolves/>
                    <EntryBox field=density.clone() label=density.name aside=t!("mixing-blank-table")/>
                </div>
                <SolutionOffers/>
                <EntryMessages fields=boxes/>
            </div>
            <div class="make-results" aria-live="polite"><ToWeigh/></div>
        </section>
    }
}

#[component]
fn SaltChoice() -> impl IntoView {
    let state = expect_context::<State>();
    let options: Vec<ChoiceOption> = Solute::ALL
        .iter()
        .enumerate()
        .map(|(at, solute)| ChoiceOption::new(at.to_string(), words::solute(*solute)))
        .collect();
    let now = Memo::new(move |_| {
        let now = state.mix.with(|mix| mix.solute);
        Solute::ALL.iter().position(|solute| *solute == now).unwrap_or_default().to_string()
    });
    let choose = Callback::new(move |at: String| {
        if let Some(solute) = at.parse().ok().and_then(|at: usize| Solute::ALL.get(at)) {
            state.edit_mix(None, |mix| mix.solute = *solute);
        }
    });
    view! { <Choice id="solute" name=t!("mixing-salt") labelled=true options=options value=now on_choose=choose/> }
}

/// Water and salt, big; nothing where the solution cannot be made up.
#[component]
fn ToWeigh() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<MixingContext>();
    let made_up = Memo::new(move |_| sheet.solution.with(|solution| solution.as_ref().ok().copied()));
    let figure = move |kind: Kind, base: fn(&MadeUp) -> Option<f64>| {
        Signal::derive(move || {
            let base = made_up.with(|made_up| made_up.as_ref().and_then(base));
            base.map_or_else(Default::default, |base| shown_parts(state, kind, base))
        })
    };
    let text = move |kind: Kind, base: fn(&MadeUp) -> Option<f64>| {
        Signal::derive(move || {
            made_up.with(|made_up| made_up.as_ref().and_then(base)).map(|base| shown(state, kind, base))
        })
    };
    let water = figure(Kind::BatchMass, |made| Some(made.make_up.water.value));
    let water_volume = figure(Kind::BatchVolume, |made| Some(made.make_up.water_volume.value));
    let salt = figure(Kind::BatchMass, |made| Some(made.make_up.salt.value));
    let volume = figure(Kind::BatchVolume, |made| Some(made.make_up.volume?.value));
    let mass = figure(Kind::BatchMass, |made| Some(made.make_up.total.value));
    let density = text(Kind::LiquidDensity, |made| Some(made.make_up.density?.value));
    let why_not = move || match sheet.solution.get() {
        Ok(_) => None,
        Err(MixError::Entry) => Some(t!("mixing-fill-in")),
        Err(MixError::Refused(_)) => {
            sheet.solution_error(state).map(|message| format!("{} {}", message.what, message.fix))
        }
    };
    view! {
        <div class="weighs">
            <div class="fig">
                <span class="label">{t!("mixing-weigh-water")}</span>
                <Value key="solution_water" parts=water rank=Rank::Act/>
                <span class="note"><Value key="solution_water_volume" parts=water_volume/> " " {t!("mixing-at-20")}</span>
            </div>
            <div class="fig">
                <span class="label">{t!("mixing-weigh-salt")}</span>
                <Value key="crystals" parts=salt rank=Rank::Act/>
                <span class="note">{t!("mixing-stir")}</span>
            </div>
            <div class="fig">
                <span class="label">{t!("mixing-solution")}</span>
                <Value key="solution_volume" parts=volume rank=Rank::Lead/>
                <span class="note">
                    <Value key="solution_mass" parts=mass/>
                    {move || density.get().map(|density| format!(" · {density}"))}
                </span>
            </div>
        </div>
        <p class="why-not">{why_not}</p>
        <Show when=move || made_up.with(|made| made.is_some_and(|made| made.make_up.density.is_none()))>
            <p class="note">{t!("mixing-no-density")}</p>
        </Show>
        <WorkingTable id="solution-working" rows=Signal::derive(move || {
            made_up.with(|made| made.as_ref().map(|made| rows(state, made))).unwrap_or_default()
        })/>
    }
}

/// How each figure of the solution comes about.
fn rows(state: State, MadeUp { order, make_up }: &MadeUp) -> Vec<ResultRow> {
    let mass = |base: f64| shown(state, Kind::BatchMass, base);
    let share = shown(state, Kind::Share, order.fraction.value);
    let density = make_up.density.map(|density| shown(state, Kind::LiquidDensity, density.value));
    let (total, salt) = (mass(make_up.total.value), mass(make_up.salt.value));
    let total_worked = match (order.wanted, &density) {
        (Wanted::Volume(volume), Some(density)) => {
            let volume = shown(state, Kind::BatchVolume, volume.value);
            worked(t!("mixing-work-total"), &format!("{volume} · {density}"))
        }
        _ => String::new(),
    };
    let volume = make_up.volume.zip(density.as_ref()).map(|(volume, density)| {
        let working = match order.wanted {
            Wanted::Mass(_) => worked(t!("mixing-work-volume"), &format!("{total} / {density}")),
            Wanted::Volume(_) => String::new(),
        };
        ResultRow::new("", t!("mixing-row-volume"), shown(state, Kind::BatchVolume, volume.value), working)
    });
    let source = if order.density.is_some() { t!("mixing-density-measured") } else { t!("mixing-density-source") };
    let saturation = shown(state, Kind::Share, make_up.saturation.value);
    let rows = [
        Some(ResultRow::new(
            "",
            t!("mixing-row-salt"),
            salt.clone(),
            worked(t!("mixing-work-salt"), &format!("{share} · {total}")),
        )),
        Some(ResultRow::new(
            "",
            t!("mixing-row-water"),
            mass(make_up.water.value),
            worked(t!("mixing-work-water"), &format!("{total} − {salt}")),
        )),
        Some(ResultRow::new("", t!("mixing-row-mass"), total.clone(), total_worked)),
        volume,
        density.clone().map(|density| ResultRow::new("solution_density", t!("mixing-row-density"), density, source)),
        Some(ResultRow::new("saturation", t!("mixing-row-saturation"), saturation, t!("mixing-saturation-source"))),
    ];
    rows.into_iter().flatten().collect()
}
