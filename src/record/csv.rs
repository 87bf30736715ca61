//! The log and the shelf as tables of comma-separated values (RFC 4180), for any spreadsheet or script: one row a figure, and one a
//! recipe.
//!
//! Numbers of ours have a decimal point whatever the app shows; times are UTC (RFC 3339); each row names its units.

use super::check_log::{CheckRecord, LoggedFigure};
use super::summary::Listed;
use crate::quantity::number::plain;
use std::fmt::Write as _;

/// The names of the columns.
pub const COLUMNS: [&str; 13] = [
    "time_utc",
    "recipe",
    "revision",
    "author",
    "figure",
    "liquid",
    "unit",
    "actual",
    "wanted",
    "deviation",
    "deviation_in",
    "tolerance",
    "remark",
];

/// The log as text, in the order of the records given. Lines end in CR LF.
#[must_use]
pub fn log_csv(log: &[CheckRecord]) -> String {
    let mut csv = COLUMNS.join(",") + "\r\n";
    for check in log.iter().map(CheckRecord::content) {
        for figure in &check.figures {
            let LoggedFigure { figure, liquid, unit, actual, wanted, deviation, points, tolerance } = figure;
            let cells = [
                utc(check.at),
                text(&check.recipe),
                check.revision.map(|revision| revision.to_string()).unwrap_or_default(),
                text(&check.author),
                text(figure),
                text(liquid.as_deref().unwrap_or_default()),
                text(unit.symbol()),
                number(actual),
                number(wanted),
                number(deviation),
                (if *points { "points" } else { "%" }).to_owned(),
                number(tolerance),
                text(&check.remark),
            ];
            let _ = write!(csv, "{}\r\n", cells.join(","));
        }
    }
    csv
}

/// The recipes as text, in the order given, each by its newest head. Density and thickness are as typed. Lines end in CR LF.
#[must_use]
pub fn shelf_csv(recipes: &[Listed<'_>]) -> String {
    let mut csv =
        "name,tags,note,liquids,board_density,density_unit,board_thickness,thickness_unit,saved_utc,author,remark,released,\
                   versions_side_by_side,revision,recipe\r\n"
            .to_owned();
    for listed in recipes {
        let head = listed.head;
        let cells = [
            text(&head.name),
            text(&head.tags.join("; ")),
            text(&head.note),
            text(&head.liquids.join("; ")),
            number(&head.density.text),
            text(head.density.unit.symbol()),
            number(&head.thickness.text),
            text(head.thickness.unit.symbol()),
            utc(head.saved_at),
            text(&head.author),
            text(&head.remark),
            (if head.released { "yes" } else { "no" }).to_owned(),
            (listed.others.len() + 1).to_string(),
            head.id.to_string(),
            listed.recipe.to_string(),
        ];
        let _ = write!(csv, "{}\r\n", cells.join(","));
    }
    csv
}

/// A text that anyone may have typed. A spreadsheet takes one that begins as a formula for one: an apostrophe
/// in front keeps it text.
pub(super) fn text(text: &str) -> String {
    let formula = text.starts_with(['=', '+', '-', '@', '\t', '\r']);
    let safe = if formula { format!("'{text}") } else { text.to_owned() };
    if safe.contains([',', '"', '\r', '\n']) { format!("\"{}\"", safe.replace('"', "\"\"")) } else { safe }
}

/// A number that we wrote; anything else that a record holds there is text.
pub(super) fn number(written: &str) -> String {
    if plain(written).is_some() { written.to_owned() } else { text(written) }
}

/// Milliseconds since 1970-01-01 00:00 UTC as RFC 3339: "2026-03-02T06:00:00Z". The milliseconds are cut.
///
/// Days to a date after Hinnant, "chrono-compatible low-level date algorithms" (2013): exact for every u64 of
/// milliseconds.
#[must_use]
pub fn utc(at: u64) -> String {
    let seconds = at / 1_000;
    let (days, rest) = (seconds / 86_400, seconds % 86_400);
    // Eras of 400 years begin on 1 March of year 0.
    let shifted = days + 719_468;
    let (era, day_of_era) = (shifted / 146_097, shifted % 146_097);
    let year_of_era = (day_of_era - day_of_era / 1_460 + day_of_era / 36_524 - day_of_era / 146_096) / 365;
    let day_of_year = day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
    let month_from_march = (5 * day_of_year + 2) / 153;
    let day = day_of_year - (153 * month_from_march + 2) / 5 + 1;
    let month = if month_from_march < 10 { month_from_march + 3 } else { month_from_march - 9 };
    let year = year_of_era + era * 400 + u64::from(month <= 2);
    let (hour, minute, second) = (rest / 3_600, rest / 60 % 60, rest % 60);
    format!("{year:04}-{month:02}-{day:02}T{hour:02}:{minute:02}:{second:02}Z")
}
