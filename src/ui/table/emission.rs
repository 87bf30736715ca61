//! The emission sheet as a table: figures with their sources, then the limits by market.

use super::without_conversion;
use crate::domain::chemistry::emission::{EmissionError, LIMITS, StatedLimit};
use crate::domain::compare::emission::EmissionSheet;
use crate::record::table::{Cell, Table};
use crate::ui::text::{source_text, words};
use crate::{label, t};
use uom::si::mass::kilogram;
use uom::si::mass_density::milligram_per_cubic_meter;
use uom::si::ratio::{part_per_million, ratio};

/// The emission sheet: figures that were asked for, then the limits, and that a test decides.
#[must_use]
pub fn emission(sheet: &EmissionSheet) -> Table {
    let head = [
        label!("comparison-head-figure"),
        label!("comparison-head-unit"),
        label!("comparison-head-from"),
        label!("comparison-head-to"),
        label!("comparison-head-origin"),
    ];
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
                let message = words::compare::emission_error(error);
                let said = format!("{} {}", message.what, message.fix);
                cells.extend([Cell::Empty, Cell::Empty, Cell::text(said)]);
            }
        }
        rows.push(cells);
    };
    let ratios = sheet.ratios;
    row(
        label!("comparison-emission-ratio"),
        "mol/mol",
        ratios.map(|found| found.map(|of| of.formaldehyde_per_urea.map(|r| r.get::<ratio>()))),
        label!("comparison-emission-structure"),
    );
    row(
        label!("comparison-emission-amino-ratio"),
        "mol/mol",
        ratios.map(|found| found.map(|of| of.formaldehyde_per_amino.map(|r| r.get::<ratio>()))),
        label!("comparison-emission-structure"),
    );
    row(
        label!("comparison-emission-urea"),
        "kg",
        sheet.urea.map(|found| found.map(|urea| urea.map(|mass| mass.get::<kilogram>()))),
        label!("comparison-emission-structure"),
    );
    let concentration = sheet.concentration.map(|found| found.map(|of| [of.get::<milligram_per_cubic_meter>(); 2]));
    row(label!("comparison-emission-concentration"), "mg/m³", concentration, "CODATA 2018");
    let share = sheet.share.map(|found| found.map(|of| [of.get::<part_per_million>(); 2]));
    row(label!("comparison-emission-concentration"), "ppm", share, "CODATA 2018");
    row(
        label!("comparison-emission-perforator-at-reference"),
        "mg/100 g",
        sheet.perforator.map(|found| found.map(|of| [of; 2])),
        label!("comparison-emission-perforator-source"),
    );
    for limit in LIMITS {
        let label = t!(
            "comparison-emission-limit",
            market = words::compare::market(limit.market),
            article = words::compare::article(limit.article)
        );
        let source = match limit.from {
            "" => source_text(limit.regulation),
            from => t!("comparison-emission-valid-from", regulation = source_text(limit.regulation), date = from),
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
    rows.push(vec![Cell::text(label!("comparison-emission-caution"))]);
    Table { name: t!("comparison-sheet-emission"), rows, frozen: 1 }
}
