//! The log and the library's recipes as tables: one row a figure, and one a recipe.
//!
//! Times are UTC (RFC 3339); each row names its units.

use crate::quantity::format::DecimalMark;
use crate::record::content::check_log::{CheckRecord, LoggedFigure};
use crate::record::content::lineage::Listed;
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
pub const RECIPE_COLUMNS: [&str; 18] = [
    "name",
    "tags",
    "note",
    "liquids",
    "board_density",
    "density_unit",
    "board_thickness",
    "thickness_unit",
    "revision",
    "saved_utc",
    "author",
    "remark",
    "released_revision",
    "released_by",
    "released_utc",
    "versions_side_by_side",
    "revision_id",
    "recipe_id",
];

/// The recipes in the order given, each by its latest head. Density and thickness are as typed.
#[must_use]
pub fn library_csv(recipes: &[Listed<'_>], mark: DecimalMark) -> String {
    let mut csv = Csv::new(mark);
    csv.row(RECIPE_COLUMNS.map(Cell::text));
    for listed in recipes {
        let head = listed.head.summary;
        let released =
            listed.released.as_ref().and_then(|version| Some((version.number, &version.released.as_ref()?.by)));
        csv.row([
            Cell::text(&head.name),
            Cell::text(head.tags.join("; ")),
            Cell::text(&head.note),
            Cell::text(head.liquids.join("; ")),
            Cell::number(&head.density.text),
            Cell::text(head.density.unit.symbol()),
            Cell::number(&head.thickness.text),
            Cell::text(head.thickness.unit.symbol()),
            Cell::Number(listed.head.number.to_string()),
            Cell::text(utc(head.saved_at)),
            Cell::text(&head.author),
            Cell::text(&head.remark),
            released.map_or(Cell::Blank, |(number, _)| Cell::Number(number.to_string())),
            released.map_or(Cell::Blank, |(_, by)| Cell::text(&by.author)),
            released.map_or(Cell::Blank, |(_, by)| Cell::text(utc(by.at))),
            Cell::Number((listed.others.len() + 1).to_string()),
            Cell::text(head.id.to_string()),
            Cell::text(listed.recipe.to_string()),
        ]);
    }
    csv.finish()
}
