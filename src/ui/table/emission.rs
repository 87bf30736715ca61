//! The emission sheet as a table: figures with their sources, then the limits by market.

use super::without_conversion;
use crate::domain::chemistry::emission::{EmissionError, LIMITS, StatedLimit};
use crate::domain::compare::emission::EmissionSheet;
use crate::record::table::{Cell, Table};
use crate::ui::text::Words;
use uom::si::mass::kilogram;
use uom::si::mass_density::milligram_per_cubic_meter;
use uom::si::ratio::{part_per_million, ratio};

/// The emission sheet: figures that were asked for, then the limits, and that a test decides.
#[must_use]
pub fn emission(sheet: &EmissionSheet, words: &Words) -> Table {
    let names = &words.compare.emission;
    let head = [words.compare.sheet.figure, words.compare.sheet.unit, names.from, names.to, names.source];
    let mut rows = vec![head.map(Cell::heading).to_vec()];
    let number = |value: f64| Cell::Number { value: without_conversion(value), decimals: 3 };
    let mut row = |label: &str, unit: &str, found: Option<Result<[f64; 2], EmissionError>>, source: &str| {
        let Some(found) = found else { return };
        let mut cells = vec![Cell::text(label), Cell::text(unit)];
        match found {
            Ok([one, other]) => {
                cells.extend([number(one.min(other)), number(one.max(other)), Cell::text(source)]);
            }
            Err(error) => {
                let message = (names.error)(error);
                let said = format!("{} {}", message.what, message.fix);
                cells.extend([Cell::Empty, Cell::Empty, Cell::text(said)]);
            }
        }
        rows.push(cells);
    };
    let ratios = sheet.ratios;
    row(
        names.ratio,
        "mol/mol",
        ratios.map(|found| found.map(|of| of.formaldehyde_per_urea.map(|r| r.get::<ratio>()))),
        names.structure,
    );
    row(
        names.amino_ratio,
        "mol/mol",
        ratios.map(|found| found.map(|of| of.formaldehyde_per_amino.map(|r| r.get::<ratio>()))),
        names.structure,
    );
    row(
        names.urea,
        "kg",
        sheet.urea.map(|found| found.map(|urea| urea.map(|mass| mass.get::<kilogram>()))),
        names.structure,
    );
    let concentration = sheet.concentration.map(|found| found.map(|of| [of.get::<milligram_per_cubic_meter>(); 2]));
    row(names.concentration, "mg/m³", concentration, "CODATA 2018");
    let share = sheet.share.map(|found| found.map(|of| [of.get::<part_per_million>(); 2]));
    row(names.concentration, "ppm", share, "CODATA 2018");
    row(names.perforator, "mg/100 g", sheet.perforator.map(|found| found.map(|of| [of; 2])), names.perforator_source);
    for limit in LIMITS {
        let label = format!("{}: {}, {}", names.limits, (names.market)(limit.market), (names.article)(limit.article));
        let source = match limit.from {
            "" => limit.regulation.to_owned(),
            from => format!("{}, {} {from}", limit.regulation, names.valid_from),
        };
        let stated: &[(f64, &str)] = match limit.limit {
            StatedLimit::MilligramPerCubicMetre(value) => &[(value, "mg/m³")],
            StatedLimit::PartPerMillion(value) => &[(value, "ppm")],
            StatedLimit::Both(ppm, milligram) => &[(ppm, "ppm"), (milligram, "mg/m³")],
        };
        for (value, unit) in stated {
            let value = Cell::Number { value: *value, decimals: 3 };
            rows.push(vec![Cell::text(&label), Cell::text(*unit), Cell::Empty, value, Cell::text(&source)]);
        }
    }
    rows.push(vec![Cell::text(names.caution)]);
    Table { name: names.title.to_owned(), rows, frozen: 1 }
}
