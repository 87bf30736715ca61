//! The rate card: every cell is the recipe solved there.

use super::mill::Mill;
use approx::assert_relative_eq;
use haulm::domain::line::{
    LineField, LineFindingKind, LinePlace, RangeStatus, SettingsTable, TableField, TableRows, pump_settings,
    settings_table,
};
use haulm::domain::recipe::draft::{Entry, FeedWay};
use haulm::domain::{Field, work_out};
use haulm::quantity::Unit;

fn card(mill: &Mill) -> SettingsTable {
    let (card, findings) = settings_table(&mill.draft, &mill.case, &mill.line(), &mill.book);
    assert_eq!(findings, vec![]);
    card.unwrap()
}

#[test]
fn a_cell_is_the_recipe_solved_there() {
    for (rows, way) in [(TableRows::Belt, FeedWay::Belt), (TableRows::OvenDry, FeedWay::OvenDry)] {
        let mut mill = Mill::new();
        mill.book.table_rows = rows;
        let card = card(&mill);
        // 9 and 5 as asked for, and the present ones between them: 8882.5 kg/h (8500 oven-dry is a row already) and 4.5 %.
        let flows = if rows == TableRows::Belt { 10 } else { 9 };
        assert_eq!((card.flows.len(), card.moistures.len(), card.pumps.len()), (flows, 6, 3));
        for (flow, cells) in card.flows.iter().zip(&card.cells) {
            for (moisture, cell) in card.moistures.iter().zip(cells) {
                let mut draft = mill.draft.clone();
                draft.feed_way = way;
                let mut put = |field, value: f64, unit: Unit| {
                    *draft.entry_mut(field).unwrap() = Entry::typed(format!("{:e}", unit.from_base(value)), unit);
                };
                put(Field::FibreFlow, flow.value, Unit::KilogramPerHour);
                put(Field::FibreMoisture, moisture.dry_basis().value, Unit::PercentDryBasis);
                let case = work_out(&draft).case.unwrap();
                let single = pump_settings(&draft, &case, &mill.line());
                let cell = cell.as_ref().unwrap();
                for (there, row) in cell.pumps.iter().zip(&single.rows) {
                    assert_relative_eq!(there.mass.value, row.mass.value, max_relative = 1e-12);
                    assert_eq!(there.setting.is_some(), row.set_to.is_some());
                    if let Some((there, row)) = there.setting.zip(row.set_to) {
                        assert_relative_eq!(there.0, row.0, max_relative = 1e-12);
                    }
                    assert_eq!(there.range_status, row.range_status);
                }
            }
        }
    }
}

#[test]
fn cells_out_of_range_are_marked() {
    let mut mill = Mill::new();
    mill.put(LineField::Table(TableField::FlowTo), "20000", Unit::KilogramPerHour);
    let card = card(&mill);
    let marks = |at: usize| {
        let cells = &card.cells[at];
        cells
            .iter()
            .flatten()
            .flat_map(|cell| &cell.pumps)
            .filter(|pump| pump.range_status != RangeStatus::Within)
            .count()
    };
    assert_eq!(marks(2), 0);
    assert!(marks(card.flows.len() - 1) > 0);
}

#[test]
fn steps_that_cannot_be_are_said() {
    let cases = [
        (TableField::FlowTo, "5000", TableField::FlowTo, LineFindingKind::RangeCrossed),
        (TableField::FlowStep, "10", TableField::FlowStep, LineFindingKind::TooManySteps { most: 60 }),
        (TableField::MoistureStep, "0.1", TableField::MoistureStep, LineFindingKind::TooManySteps { most: 30 }),
    ];
    for (field, text, place, what) in cases {
        let mut mill = Mill::new();
        mill.book.entry_mut(LineField::Table(field)).unwrap().text = text.to_owned();
        let (card, findings) = settings_table(&mill.draft, &mill.case, &mill.line(), &mill.book);
        assert!(card.is_none());
        assert_eq!(findings.len(), 1, "{findings:?}");
        assert_eq!((findings[0].place, &findings[0].what), (LinePlace::Field(LineField::Table(place)), &what));
    }
}

/// 6000 to 10 000 in steps of 1500: the last row is the one that was asked for.
#[test]
fn the_last_row_and_column_are_reached() {
    let mut mill = Mill::new();
    mill.put(LineField::Table(TableField::FlowStep), "1500", Unit::KilogramPerHour);
    mill.put(LineField::Table(TableField::MoistureStep), "1.5", Unit::Percent);
    let table = card(&mill);
    let flows: Vec<_> = table.flows.iter().map(|flow| Unit::KilogramPerHour.from_base(flow.value)).collect();
    // The present 8882.5 kg/h is among them.
    assert_eq!(flows.len(), 5);
    for (flow, expected) in flows.iter().zip([6000.0, 7500.0, 8882.5, 9000.0, 10_000.0]) {
        assert_relative_eq!(*flow, expected, max_relative = 1e-12);
    }
    let moistures: Vec<_> = table.moistures.iter().map(|moisture| 100.0 * moisture.dry_basis().value).collect();
    assert_eq!(moistures.len(), 4);
    for (moisture, expected) in moistures.iter().zip([3.0, 4.5, 6.0, 7.0]) {
        assert_relative_eq!(*moisture, expected, max_relative = 1e-12);
    }
}

/// From 10 to 20 % wet basis in steps of 5: 10, 15 and 20 % of what is weighed, 11.1, 17.6 and 25 % dry basis.
#[test]
fn moistures_step_in_the_basis_chosen() {
    let mut mill = Mill::new();
    mill.put(LineField::Table(TableField::MoistureFrom), "10", Unit::PercentWetBasis);
    mill.put(LineField::Table(TableField::MoistureTo), "20", Unit::PercentWetBasis);
    mill.put(LineField::Table(TableField::MoistureStep), "5", Unit::Percent);
    let table = card(&mill);
    let wet: Vec<_> = table.moistures.iter().map(|m| Unit::PercentWetBasis.from_base(m.dry_basis().value)).collect();
    assert_eq!(wet.len(), 3);
    for (moisture, expected) in wet.iter().zip([10.0, 15.0, 20.0]) {
        assert_relative_eq!(*moisture, expected, max_relative = 1e-9);
    }
}

/// The example runs 8500 kg/h at 4.5 %, 8882.5 kg/h on the belt scale: a row and a column of their own.
#[test]
fn the_present_point_is_marked() {
    let mut mill = Mill::new();
    let table = card(&mill);
    let (row, column) = table.present.unwrap();
    assert_relative_eq!(Unit::KilogramPerHour.from_base(table.flows[row].value), 8882.5, max_relative = 1e-12);
    assert_relative_eq!(table.moistures[column].dry_basis().value, 0.045, max_relative = 1e-12);
    let cell = table.cells[row][column].as_ref().unwrap();
    let settings = mill.sheet();
    for (there, own) in cell.pumps.iter().zip(&settings.rows) {
        assert_relative_eq!(there.setting.unwrap().0, own.set_to.unwrap().0, max_relative = 1e-12);
    }
    mill.put(LineField::Table(TableField::FlowTo), "8000", Unit::KilogramPerHour);
    let outside = card(&mill);
    assert_eq!(outside.present, None, "it runs outside the table");
    assert_eq!((outside.flows.len(), outside.moistures.len()), (5, 5));
}

/// What is printed never runs off a page, and nothing is left out or comes twice.
#[test]
fn the_table_is_cut_into_pages() {
    let card = card(&Mill::new());
    assert_eq!((card.flows.len(), card.moistures.len(), card.pumps.len()), (10, 6, 3));
    for (columns, rows, parts) in [(24, 14, 1), (12, 14, 2), (6, 14, 3), (4, 14, 6), (24, 4, 3), (1, 1, 180)] {
        let cut = card.parts(columns, rows);
        assert_eq!(cut.len(), parts, "{columns} columns and {rows} rows");
        let mut seen = std::collections::BTreeSet::new();
        for part in &cut {
            assert!(part.rows.len() <= rows);
            assert!(part.pumps.iter().map(|(_, columns)| columns.len()).sum::<usize>() <= columns);
            for (pump, columns) in &part.pumps {
                for cell in part.rows.clone().flat_map(|row| columns.clone().map(move |column| (row, *pump, column))) {
                    assert!(seen.insert(cell), "{cell:?} comes twice");
                }
            }
        }
        assert_eq!(seen.len(), 10 * 6 * 3);
    }
}
