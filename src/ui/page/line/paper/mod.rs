//! Pump settings and settings table on paper, in big figures.

mod table;

use crate::browser::element::{Part, View, el, many};
use crate::domain::line::LineFigure as Fig;
use crate::ui::page::line::parts::{findings, off_line, shown};
use crate::ui::page::line::settings_now::settings_now;
use crate::ui::page::line::settings_text::{interval_text, pump_name, setting_text};
use crate::ui::state::State;
use leptos::reactive::prelude::*;

/// What stands between head and foot of the sheet.
pub fn paper(state: State) -> View {
    let page = &state.words.line_page;
    let now = settings_now(state);
    let Some((sheet, case)) = now.settings.as_ref().zip(now.case.as_ref()).filter(|_| !now.old) else {
        return off_line(state);
    };
    let row =
        |row: &crate::domain::line::PumpRow| {
            let nozzles = row.nozzles.map_or_else(String::new, |opened| {
                format!("{} × {}", opened.open, shown(state, Fig::NozzleFlow, opened.each.value))
            });
            let status = (row.range_status != crate::domain::line::RangeStatus::Within)
                .then(|| format!(" ▲ {}", (state.words.line.range_status)(row.range_status)));
            el("tr")
                .child(el("th").set("scope", "row").child(pump_name(state, row.pump)))
                .child(
                    el("td")
                        .child(el("span").class("set-on-paper").child(setting_text(state, row)))
                        .child(interval_text(state, row).map(|words| el("span").class("note").child(words)))
                        .child(status.map(|words| el("span").class("note").child(words))),
                )
                .child(
                    el("td")
                        .child(shown(state, Fig::Wanted, row.mass.value))
                        .child(el("span").class("note").child(shown(state, Fig::WantedVolume, row.volume.value))),
                )
                .child(el("td").child(nozzles))
                .child(el("td").child(shown(state, Fig::PerFibre, row.per_fibre.value)).child(
                    el("span").class("note").child(shown(state, Fig::VolumePerFibre, row.volume_per_fibre.value)),
                ))
                .view()
        };
    let heads = [page.pump, page.setting, page.target, page.nozzles, page.per_fibre];
    let example = state.line.record.with(|record| record.example).then(|| el("p").child(page.example));
    many([
        example.view(),
        el("section")
            .child(el("h2").child(page.sheet))
            .child(
                el("p")
                    .child(page.at_belt)
                    .text(" ")
                    .child(el("strong").child(shown(state, Fig::RunFibre, sheet.fibre_wet.value)))
                    .text(" · ")
                    .child(page.oven_dry)
                    .text(" ")
                    .child(shown(state, Fig::RunFibre, sheet.fibre.value))
                    .text(" · ")
                    .child(page.fibre_moisture)
                    .text(" ")
                    .child(el("strong").child(shown(
                        state,
                        Fig::SampleMoisture,
                        case.input.fibre_moisture.dry_basis().value,
                    ))),
            )
            .child(
                el("table")
                    .class("settings-on-paper")
                    .child(el("thead").child(
                        el("tr").child(
                            heads.iter().map(|words| el("th").set("scope", "col").child(*words)).collect::<View>(),
                        ),
                    ))
                    .child(el("tbody").child(sheet.rows.iter().map(row).collect::<View>())),
            )
            .view(),
        el("section")
            .class("findings-on-paper")
            .child(findings(state, &now.findings))
            .child(el("p").child(state.words.tools.caution_rule))
            .view(),
        el("section").class("card-on-paper").child(el("h2").child(page.card)).child(table::tables(state)).view(),
    ])
}
