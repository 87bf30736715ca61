//! Which sheet is shown: the base sheet, or a run with its levels.

use super::desk::Desk;
use crate::domain::trial::series::word::letter;
use crate::t;
use crate::ui::text::words;
use leptos::prelude::*;

/// "Base sheet", or "Run 3 · A Press temperature 180 °C".
pub fn sheet_name(desk: Desk, run: u32) -> String {
    match run {
        0 => t!("bench-base-sheet"),
        run => [t!("trial-run-n", number = run), levels(desk, run)]
            .into_iter()
            .filter(|part| !part.is_empty())
            .collect::<Vec<_>>()
            .join(" · "),
    }
}

/// The levels of a run: "A Press temperature 180 °C · B …"; blank for the base sheet.
pub fn levels(desk: Desk, run: u32) -> String {
    let run = u16::try_from(run).unwrap_or(0);
    desk.planned.with(|planned| {
        let Some((series, run)) = planned.series.as_ref().and_then(|series| Some((series, series.run(run)?))) else {
            return String::new();
        };
        desk.with_context(|context| {
            let named = series.factors.iter().enumerate().filter_map(|(at, factor)| {
                let level = words::bench::level(series.level(run, at)?, context);
                Some(format!("{} {} {level}", letter(at), words::bench::factor(factor.of, &factor.own, context.draft)))
            });
            named.collect::<Vec<_>>().join(" · ")
        })
    })
}
