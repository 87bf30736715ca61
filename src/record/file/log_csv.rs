//! The log and the library's recipes as tables: one row a figure, and one a recipe.
//!
//! Times are UTC (RFC 3339); each row names its units.

use crate::quantity::format::DecimalMark;
use crate::record::content::check_log::{CheckRecord, LoggedFigure};
use crate::record::content::summary::Listed;
use crate::record::table::csv::{Cell, Csv};
use crate::record::time::utc;

/// The names of the columns of [`log_csv`].
pub const COLUMNS: [&str; 13] = [
    "time_utc",
    "recipe",
    "revision",
    "author",
    "figure",
    "liquid",
    "unit",
    "actual",
    "target",
    "deviation",
    "deviation_in",
    "tolerance",
    "remark",
];

/// The log in the order of the records given.
#[must_use]
pub fn log_csv(log: &[CheckRecord], mark: DecimalMark) -> String {
    let mut csv = Csv::new(mark);
    csv.row(COLUMNS.map(Cell::text));
    for check in log.iter().map(CheckRecord::content) {
        for figure in &check.figures {
            let LoggedFigure { figure, liquid, unit, actual, target, deviation, points, tolerance } = figure;
            csv.row([
                Cell::text(utc(check.at)),
                Cell::text(&check.recipe),
                check.revision.map_or(Cell::Blank, |revision| Cell::text(revision.to_string())),
                Cell::text(&check.author),
                Cell::text(figure),
                Cell::text(liquid.as_deref().unwrap_or_default()),
                Cell::text(unit.symbol()),
                Cell::number(actual),
                Cell::number(target),
                Cell::number(deviation),
                Cell::text(if *points { "points" } else { "%" }),
                Cell::number(tolerance),
                Cell::text(&check.remark),
            ]);
        }
    }
    csv.finish()
}

/// The names of the columns of [`library_csv`].
pub const RECIPE_COLUMNS: [&str; 15] = [
    "name",
    "tags",
    "note",
    "liquids",
    "board_density",
    "density_unit",
    "board_thickness",
    "thickness_unit",
    "saved_utc",
    "author",
    "remark",
    "released",
    "versions_side_by_side",
    "revision",
    "recipe",
];

/// The recipes in the order given, each by its newest head. Density and thickness are as typed.
#[must_use]
pub fn library_csv(recipes: &[Listed<'_>], mark: DecimalMark) -> String {
    let mut csv = Csv::new(mark);
    csv.row(RECIPE_COLUMNS.map(Cell::text));
    for listed in recipes {
        let head = listed.head;
        csv.row([
            Cell::text(&head.name),
            Cell::text(head.tags.join("; ")),
            Cell::text(&head.note),
            Cell::text(head.liquids.join("; ")),
            Cell::number(&head.density.text),
            Cell::text(head.density.unit.symbol()),
            Cell::number(&head.thickness.text),
            Cell::text(head.thickness.unit.symbol()),
            Cell::text(utc(head.saved_at)),
            Cell::text(&head.author),
            Cell::text(&head.remark),
            Cell::text(if head.released { "yes" } else { "no" }),
            Cell::Number((listed.others.len() + 1).to_string()),
            Cell::text(head.id.to_string()),
            Cell::text(listed.recipe.to_string()),
        ]);
    }
    csv.finish()
}
