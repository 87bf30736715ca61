//! The comparison on paper: assumptions, table, drawings, uncertainty, findings, sources.

use super::comparison::Comparison;
use super::map::{Mapped, map_of};
use super::sweep::{Swept, swept_of};
use super::systems::Compared;
use super::uncertainty::study::PageStudy;
use super::uncertainty::{results, shares, sources as inputs};
use super::{side, table, uncertainty};
use crate::browser::element::{Part, View, button, el};
use crate::browser::graph::*;
use crate::browser::{clock, print};
use crate::domain::compare::range::RangeError;
use crate::ui::signal::{Memo, RwSignal};
use crate::ui::state::State;
use crate::ui::table::answers;

/// What the report is made of.
#[derive(Clone, Copy)]
pub struct ReportParts {
    /// The systems.
    pub comparison: Comparison,
    /// The sweep.
    pub swept: Memo<Option<Result<Swept, RangeError>>>,
    /// The map.
    pub mapped: Memo<Option<Result<Mapped, RangeError>>>,
    /// The uncertainty.
    pub study: Memo<Option<PageStudy>>,
}

/// The section with the button that prints, and the report once it is asked for.
pub fn section(sheet: ReportParts) -> View {
    let state = sheet.comparison.state;
    let page = &state.words.compare.page;
    let open = RwSignal::new(false);
    // Printed from the browser's own menu, it is the report as well.
    let handle = on_window("beforeprint", move |_| open.set(true));
    on_cleanup(move || handle.remove());
    let print = move || {
        open.set(true);
        request_animation_frame(|| _ = print::print());
    };
    el("section")
        .class("report-section")
        .set("aria-labelledby", "report")
        .child(el("h2").set("id", "report").set("tabindex", "-1").child(page.report))
        .child(el("p").class("not-printed").child(page.report_hint))
        .child(
            el("div")
                .class("actions not-printed")
                .child(
                    button()
                        .set("aria-expanded", move || if open.get() { "true" } else { "false" })
                        .on_click(move || open.update(|open| *open = !*open))
                        .child(page.show_report),
                )
                .child(button().on_click(print).child(state.words.tools.print)),
        )
        .child(move || open.get().then(|| paper(sheet)))
        .view()
}

fn paper(sheet: ReportParts) -> View {
    let ReportParts { comparison, swept, mapped, study } = sheet;
    let Comparison { state, shown, .. } = comparison;
    let (page, words) = (&state.words.compare.page, &state.words.compare.economy);
    let part = |title: &'static str, inside: View| el("section").child(el("h3").child(title)).child(inside).view();
    (move || {
        shown.with(|shown| {
            let Ok(beside) = &shown.side else { return View::Nothing };
            let drawing = swept.with(|swept| swept_of(swept).and_then(|swept| swept.picture.clone()));
            let map = mapped.with(|mapped| map_of(mapped).and_then(|mapped| mapped.picture.clone()));
            let drawings = [drawing, map]
                .into_iter()
                .flatten()
                .map(|drawing| el("div").class("drawing").markup(&drawing.inline()));
            let inputs =
                study.with(|known| known.as_ref().map(|known| table::shown(state, &inputs::assumed(state, known))));
            el("article")
                .class("report")
                .child(el("p").class("title").child(page.report_title).text(": ").child(names(shown)))
                .child(el("p").class("note").child(made(state)))
                .child(part(page.table, table::table(comparison, shown, beside, None)))
                .child(part(page.drawings, side::multiples(state, shown, 300.0)))
                .child(drawings.collect::<View>())
                .child(part(
                    state.words.compare.sheet.uncertainty,
                    [
                        inputs.view(),
                        results::results(comparison, study, true),
                        shares::shares(comparison, study, uncertainty::chosen(comparison, study), false),
                    ]
                    .view(),
                ))
                .child(part(page.findings, side::findings(state, shown)))
                .child(part(words.answers, table::shown(state, &answers(&table::asked(comparison), state.words))))
                .child(part(words.limits, table::limited(state, shown)))
                .child(part(words.title, table::economy(state, shown).view()))
                .child(part(state.words.compare.emission.title, table::shown(state, &table::emission_sheet(state))))
                .child(part(page.differences, [side::differing(state, shown), side::unpriced(state, shown)].view()))
                .child(part(state.words.compare.sheet.assumptions, table::assumed(state, shown)))
                .child(part(page.sources_of_values, sources(state, shown)))
                .view()
        })
    })
    .view()
}

fn names(shown: &Compared) -> String {
    (0..shown.systems.len()).map(|at| shown.name(at)).collect::<Vec<_>>().join(", ")
}

/// When it was made, and by which version.
fn made(state: State) -> String {
    let words = &state.words.recipe_page;
    let version = env!("CARGO_PKG_VERSION");
    format!("{} {} · {} {version}", words.printed, clock::date_time(clock::now()), words.app_version)
}

/// Where the liquids' values and the methods come from.
fn sources(state: State, shown: &Compared) -> View {
    let mut said: Vec<String> = Vec::new();
    for liquid in shown.systems.iter().flat_map(|system| &system.draft.liquids) {
        let source = liquid.source.trim();
        let source = if source.is_empty() { state.words.systems_page.no_source } else { source };
        let line = format!("{}: {source}", (state.words.liquid)(liquid));
        if !said.contains(&line) {
            said.push(line);
        }
    }
    let methods = state.words.compare.page.methods.iter().map(|line| (*line).to_owned());
    el("ul").child(said.into_iter().chain(methods).map(|line| el("li").child(line)).collect::<View>()).view()
}
