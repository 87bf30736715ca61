//! The pump settings: one page at the pumps, read from two metres.

use super::context::{amount, line_words, moistures, symbol};
use super::end::End;
use super::not_valid::{LineNotValid, line_lines};
use super::pump::{PumpOnPaper, help_of};
use super::sheet::{Sheet, line_kind, recipe_line};
use super::warnings::{PaperLine, Warnings};
use crate::browser::clock;
use crate::domain::line::{LineFindingKind, PumpSettings};
use crate::domain::{Case, Grade, Work, cautions_at};
use crate::quantity::{Amount, Kind, format};
use crate::t;
use crate::ui::page::line::lines::common_lines;
use crate::ui::page::line::settings_now::{SettingsNow, settings_now};
use crate::ui::page::line::settings_text::{pump_name, signed};
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// More pumps than these are set in smaller letters.
const ROOMY_PUMPS: usize = 4;

/// The document.
#[component]
pub fn PumpSettingsPaper() -> impl IntoView {
    let state = expect_context::<State>();
    let now = settings_now(state);
    match (now.case.clone(), now.settings.clone()) {
        (Some(case), Some(settings)) if !now.old => {
            view! { <Settings now=now case=case settings=settings/> }.into_any()
        }
        _ => {
            let lines = line_lines(state, &now.findings);
            view! { <LineNotValid title=t!("line-tab-settings") lines=lines/> }.into_any()
        }
    }
}

#[component]
fn Settings(
    /// The settings with what there is to say.
    now: SettingsNow,
    /// The recipe at what was entered.
    case: Case,
    /// The settings.
    settings: PumpSettings,
) -> impl IntoView {
    let state = expect_context::<State>();
    let lines = settings_warnings(state, &now);
    let cautions = state.draft.with(|draft| cautions_at(Work::PumpSettings, draft, Some(case.solved.water.mat)));
    let is_dense = settings.rows.len() > ROOMY_PUMPS;
    let units = state.units.get();
    let big = |kind: Kind, base: f64| {
        let of = Amount::from_base(kind, base);
        let unit = units.unit(kind);
        view! { <b>{format::amount(of, unit, units.mark)} " " <span class="u">{symbol(state, unit)}</span></b> }
    };
    let [own, other] = moistures(state, case.input.fibre_moisture.dry_basis().value);
    let pumps = settings.rows.iter().map(|row| {
        let help = help_of(state, &now, row);
        view! { <PumpOnPaper row=row.clone() help=help/> }
    });
    let pumps = pumps.collect_view();
    let (belt, wetness) =
        (big(Kind::FibreFlow, settings.fibre_wet.value), view! { <b>{own.0} " " <span class="u">{own.1}</span></b> });
    let oven_dry = amount(state, Kind::FibreFlow, settings.fibre.value);
    view! {
        <Sheet title=t!("line-tab-settings") about=recipe_line(state) kind=line_kind(state)>
            <Warnings lines=lines/>
            <section class="print-conditions">
                <div>
                    <span>{t!("paper-only-at-belt")}</span>
                    {belt}
                    <span>{t!("line-fibre-oven-dry")} " " {oven_dry}</span>
                </div>
                <div>
                    <span>{t!("paper-and-moisture")}</span>
                    {wetness}
                    <span>{joined(&other.0, &other.1)}</span>
                </div>
            </section>
            <div class="print-pumps" class:dense=is_dense>{pumps}</div>
            <p class="print-small">{t!("paper-bar-key")}</p>
            <End cautions=cautions signature=[t!("paper-set-by"), t!("paper-checked-by"), t!("paper-date-time")]/>
        </Sheet>
    }
}

/// What there is to say about the settings. What helps a pump is in its row.
pub fn settings_warnings(state: State, now: &SettingsNow) -> Vec<PaperLine> {
    let mut lines: Vec<PaperLine> = common_lines(state).into_iter().map(PaperLine::from).collect();
    lines.extend(now.recipe.iter().map(|found| {
        let message = state.with_context(|context| words::finding(found, context));
        PaperLine { grade: found.grade, words: format!("{} {}", message.what, message.fix) }
    }));
    lines.extend(now.findings.iter().map(|found| {
        let message = line_words(state, |context| words::line::finding(found, context));
        let words = match found.what {
            LineFindingKind::OutOfReach { .. } => message.what,
            _ => format!("{} {}", message.what, message.fix),
        };
        PaperLine { grade: found.grade, words }
    }));
    let rows = now.settings.iter().flat_map(|settings| &settings.rows);
    lines.extend(rows.filter_map(|row| {
        let drift = row.drift.filter(|drift| drift.certain == Some(true))?;
        let change = signed(state, drift.change?.value);
        let pump = pump_name(state, row.pump);
        let words = t!("line-drifted", pump = pump, change = change, date = clock::date(drift.at));
        Some(PaperLine { grade: Grade::Unusual, words })
    }));
    lines
}
