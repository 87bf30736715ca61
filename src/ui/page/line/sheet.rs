//! The setting sheet: what every pump has to be set to, to be read from two metres.

use super::bar;
use super::context::{solved, with_context};
use super::parts::{figure, findings, off_line, setting, shown};
use crate::browser::element::{Part, View, button, el, many};
use crate::domain::line::working::{drift_working, line_working, pump_working};
use crate::domain::line::{
    CheckedLine, LineBook, LineFigure, LineFinding, LinePlace, PumpRow, PumpSettings, RSquared, RangeStatus,
    try_pump_settings,
};
use crate::domain::{Case, Draft, Grade};
use crate::quantity::{Amount, Kind};
use crate::ui::part::amount::with_unit;
use crate::ui::part::finding::mark;
use crate::ui::part::save::when;
use crate::ui::state::State;
use crate::ui::state::line::LineSection;
use crate::ui::text::trimmed_to;

/// The section.
pub fn sheet(state: State) -> View {
    (move || match solved(state, |draft, case, line, book| laid(state, draft, case, line, book)) {
        Some(view) => view,
        None => off_line(state),
    })
    .view()
}

fn laid(state: State, draft: &Draft, case: &Case, line: &CheckedLine, book: &LineBook) -> View {
    let page = &state.words.line_page;
    let sheet = match try_pump_settings(draft, Some(case), line) {
        Ok(sheet) => sheet,
        Err(none) => {
            let go = move || state.line.show(LineSection::Pumps);
            return many([
                findings(state, [&none]),
                el("p").child(button().class("primary").on_click(go).child(page.to_pumps)).view(),
            ]);
        }
    };
    let with_unit = |kind, base| with_unit(state, Amount::from_base(kind, base), None);
    let of_pump = |id| {
        let said = line.findings.iter().chain(&sheet.findings).filter(move |finding| finding.pump() == Some(id));
        findings(state, said)
    };
    let loose = sheet.findings.iter().filter(|finding| finding.pump().is_none());
    let unserved =
        |finding: &&LineFinding| finding.pump().is_some_and(|pump| !sheet.rows.iter().any(|row| row.pump == pump));
    let others = sheet.findings.iter().filter(unserved);
    many([
        el("p")
            .class("at")
            .child(page.at_belt)
            .text(" ")
            .child(
                el("strong").set("data-figure", "line.belt").child(with_unit(Kind::FibreFlow, sheet.fibre_wet.value)),
            )
            .text(" · ")
            .child(page.oven_dry)
            .text(" ")
            .child(el("strong").child(with_unit(Kind::FibreFlow, sheet.fibre.value)))
            .text(" · ")
            .child(page.fibre_moisture)
            .text(" ")
            .child(el("strong").child(with_unit(Kind::Moisture, case.input.fibre_moisture.dry_basis().value)))
            .view(),
        findings(state, loose),
        el("div")
            .class("pump-sheets")
            .child(
                sheet
                    .rows
                    .iter()
                    .map(|row| {
                        let limits = line.pump(row.pump).map_or((None, None), |pump| (pump.least, pump.most));
                        let name = book.pump(row.pump).map(|pump| (state.words.line.pump)(pump).into_owned());
                        let fed = (state.words.line.fed)(row.fed, draft);
                        pump_sheet(state, row, case, (name.unwrap_or_default(), fed), limits, of_pump(row.pump))
                    })
                    .collect::<View>(),
            )
            .view(),
        findings(state, others),
    ])
}

/// The setting of one pump in words: the number, "off", or that there is none.
pub fn setting_text(state: State, row: &PumpRow) -> String {
    let page = &state.words.line_page;
    match row.set_to {
        Some(found) => setting(state, found, row.unit),
        None if row.mass.value <= 0.0 => page.off.to_owned(),
        None if row.setting.is_some() => page.cannot.to_owned(),
        None => page.no_setting.to_owned(),
    }
}

/// From where to where one catch may well lie.
pub fn interval_text(state: State, row: &PumpRow) -> Option<String> {
    let interval = row.setting?.interval?;
    let page = &state.words.line_page;
    let (low, high) = (setting(state, interval.low, row.unit), setting(state, interval.high, row.unit));
    Some(format!("{} {low} {} {high}", page.interval, page.to))
}

type Limits = (Option<crate::domain::line::Setting>, Option<crate::domain::line::Setting>);

fn pump_sheet(
    state: State,
    row: &PumpRow,
    case: &Case,
    (name, fed): (String, String),
    limits: Limits,
    said: View,
) -> View {
    use LineFigure as Fig;
    let page = &state.words.line_page;
    let scope = format!("pump.{}", row.pump.0);
    let id = format!("sheet-{}", row.pump.0);
    let fig = |of: Fig, base: f64| figure(state, &scope, of, shown(state, of, base), pump_working(of, row, case));
    let outside = row.range_status != RangeStatus::Within;
    let place = row.setting.is_some().then(|| {
        el("p")
            .class("range-words")
            .class_if("unusual", outside)
            .child(outside.then(|| mark(Grade::Unusual)))
            .text(" ")
            .child((state.words.line.range_status)(row.range_status))
    });
    let prediction = row.curve.zip(row.setting).and_then(|(curve, found)| {
        let working = line_working(Fig::Prediction, &curve, row.unit, found.setting)?;
        let value = format!("± {}", with_unit(state, working.result, None));
        Some(figure(state, &scope, Fig::Prediction, value, Some(working)))
    });
    let drift = row.drift.map(|drift| {
        let value = match drift.change {
            Some(change) => signed(state, change.value),
            None => page.no_flow_then.to_owned(),
        };
        figure(state, &scope, Fig::Drift, value, drift_working(&drift))
    });
    let since = row.drift.map(|drift| {
        let certain = match drift.certain {
            Some(true) => page.drift_certain,
            Some(false) => page.drift_uncertain,
            None => page.drift_unknown,
        };
        let words = format!("{}, {} {}: {certain}.", page.drifted, page.since, when(drift.at));
        el("p").class("note").child(words)
    });
    let nozzles = row.nozzles.map(|opened| {
        many([
            figure(state, &scope, Fig::OpenNozzles, opened.open.to_string(), None),
            fig(Fig::NozzleFlow, opened.each.value),
        ])
    });
    let thinned = row.spray.value > row.volume.value * (1.0 + 1e-9);
    el("article")
        .class("pump-sheet")
        .set("aria-labelledby", id.clone())
        .child(el("h3").set("id", id).child(name).text(" ").child(el("span").class("note").child(fed)))
        .child(el("dl").class("dial").child(figure(
            state,
            &scope,
            Fig::Setting(row.unit),
            setting_text(state, row),
            pump_working(Fig::Setting(row.unit), row, case),
        )))
        .child(interval_text(state, row).map(|words| el("p").class("interval").child(words)))
        .child(bar::bar(state, row, limits))
        .child(place)
        .child(said)
        .child(
            el("dl")
                .class("figures wanted")
                .child(fig(Fig::Wanted, row.mass.value))
                .child(fig(Fig::WantedVolume, row.volume.value))
                .child(nozzles),
        )
        .child(
            el("dl")
                .class("figures")
                .child(fig(Fig::PerFibre, row.per_fibre.value))
                .child(fig(Fig::VolumePerFibre, row.volume_per_fibre.value))
                .child(thinned.then(|| fig(Fig::Spray, row.spray.value)))
                .child(row.reach.map(|reach| {
                    many([fig(Fig::LeastFibre, reach.least.value), fig(Fig::MostFibre, reach.most.value)])
                }))
                .child(prediction)
                .child(drift),
        )
        .child(since)
        .view()
}

/// A relative change with its sign.
pub fn signed(state: State, fraction: f64) -> String {
    let percent = (fraction * 10_000.0).round() / 100.0;
    let sign = if percent > 0.0 { "+" } else { "" };
    let number = trimmed_to(percent, 3, state.units.with(|units| units.mark));
    format!("{sign}{number}\u{a0}%")
}

/// R² to as many digits as tell good lines apart.
pub fn share_explained(state: State, r_squared: RSquared) -> String {
    trimmed_to(r_squared.value(), 5, state.units.with(|units| units.mark))
}

/// The sheet of the recipe as it stands; `None` while there is none.
pub fn now(state: State) -> Option<PumpSettings> {
    solved(state, |draft, case, line, _| try_pump_settings(draft, Some(case), line).ok()).flatten()
}

/// A pump by its name.
pub fn pump_name(state: State, id: crate::domain::line::PumpId) -> String {
    with_context(state, |context| (state.words.line.place)(LinePlace::Pump(id), context))
}
