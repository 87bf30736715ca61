//! The log and the library's recipes as tables: one row a figure, and one a recipe.
//!
//! Times are UTC (RFC 3339); each row names its units.

use crate::quantity::format::DecimalMark;
use crate::record::content::check_log::{CheckRecord, LoggedFigure};
use crate::record::content::lineage::Listed;
use crate::record::id::RevisionId;
use crate::record::table::csv::{Csv, CsvCell};
use crate::record::time::utc;

/// The names of the columns of [`log_csv`].
pub const COLUMNS: [&str; 14] = [
    "time_utc",
    "recipe",
    "revision",
    "author",
    "figure",
    "of",
    "unit",
    "actual",
    "target",
    "deviation",
    "deviation_in",
    "tolerance",
    "remark",
    "revision_id",
];

/// The log in the order of the records given. `number` is the number of a revision within its recipe; `None` of one that is not in
/// the library.
#[must_use]
pub fn log_csv(log: &[CheckRecord], mark: DecimalMark, number: impl Fn(RevisionId) -> Option<u32>) -> String {
    let mut csv = Csv::new(mark);
    csv.row(COLUMNS.map(CsvCell::text));
    for check in log.iter().map(CheckRecord::content) {
        for figure in &check.figures {
            let LoggedFigure { figure, of, unit, actual, target, deviation, points, tolerance } = figure;
            csv.row([
                CsvCell::text(utc(check.at)),
                CsvCell::text(&check.recipe),
                check.revision.and_then(&number).map_or(CsvCell::Blank, |number| CsvCell::Number(number.to_string())),
                CsvCell::text(&check.author),
                CsvCell::text(figure),
                CsvCell::text(of.as_deref().unwrap_or_default()),
                CsvCell::text(unit.symbol()),
                CsvCell::number(actual),
                CsvCell::number(target),
                CsvCell::number(deviation),
                CsvCell::text(if *points { "points" } else { "%" }),
                CsvCell::number(tolerance),
                CsvCell::text(&check.remark),
                check.revision.map_or(CsvCell::Blank, |revision| CsvCell::text(revision.to_string())),
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
    csv.row(RECIPE_COLUMNS.map(CsvCell::text));
    for listed in recipes {
        let head = listed.head.summary;
        let released =
            listed.released.as_ref().and_then(|version| Some((version.number, &version.released.as_ref()?.by)));
        csv.row([
            CsvCell::text(&head.name),
            CsvCell::text(head.tags.join("; ")),
            CsvCell::text(&head.note),
            CsvCell::text(head.liquids.join("; ")),
            CsvCell::number(&head.density.text),
            CsvCell::text(head.density.unit.symbol()),
            CsvCell::number(&head.thickness.text),
            CsvCell::text(head.thickness.unit.symbol()),
            CsvCell::Number(listed.head.number.to_string()),
            CsvCell::text(utc(head.saved_at)),
            CsvCell::text(&head.author),
            CsvCell::text(&head.remark),
            released.map_or(CsvCell::Blank, |(number, _)| CsvCell::Number(number.to_string())),
            released.map_or(CsvCell::Blank, |(_, by)| CsvCell::text(&by.author)),
            released.map_or(CsvCell::Blank, |(_, by)| CsvCell::text(utc(by.at))),
            CsvCell::Number((listed.others.len() + 1).to_string()),
            CsvCell::text(head.id.to_string()),
            CsvCell::text(listed.recipe.to_string()),
        ]);
    }
    csv.finish()
}
