//! Tables to take away, read back by programs that are not ours.

use calamine::{Data, Reader, Xlsx};
use haulm::record::table::{Cell, Separator, Table, cell_name, to_csv, to_xlsx};
use std::io::Cursor;

fn number(value: f64) -> Cell {
    Cell::Number { value, decimals: 2 }
}

fn table() -> Table {
    Table {
        name: "Side by side".to_owned(),
        rows: vec![
            vec![Cell::Empty, Cell::heading("pMDI, \"neat\""), Cell::heading("UF & <MUF>")],
            vec![Cell::text("Water dose, kg/h"), number(1234.5), number(-0.25)],
            vec![
                Cell::text("=HYPERLINK(\"x\")"),
                Cell::Empty,
                Cell::Formula { formula: "C2-$B2".to_owned(), value: -1234.75, decimals: 1 },
            ],
            vec![Cell::text("not a number"), number(f64::NAN), number(f64::INFINITY)],
            vec![Cell::text("two\nlines; semicolon")],
        ],
        frozen: 1,
    }
}

#[test]
fn comma_separated_text() {
    insta::assert_snapshot!(to_csv(&table(), Separator::Comma).replace('\u{feff}', "BOM ").replace("\r\n", " ⏎\n"), @r#"
    BOM ,"pMDI, ""neat""",UF & <MUF> ⏎
    "Water dose, kg/h",1234.5,-0.25 ⏎
    "'=HYPERLINK(""x"")",,-1234.75 ⏎
    not a number,, ⏎
    "two
    lines; semicolon" ⏎
    "#);
    let semicolons = to_csv(&table(), Separator::Semicolon);
    assert!(semicolons.contains("Water dose, kg/h;1234,5;-0,25\r\n"), "{semicolons}");
    assert!(semicolons.contains("\"two\nlines; semicolon\""));
}

#[test]
fn a_spreadsheet_reader_reads_the_file() {
    let second = Table { name: "side by side".to_owned(), rows: vec![vec![number(1.0)]], frozen: 0 };
    let third = Table { name: "a/b[c]:*?\\ of a name that is far too long for a tab".to_owned(), ..second.clone() };
    let bytes = to_xlsx(&[table(), second, third, Table::default()]);
    let mut book: Xlsx<_> = Xlsx::new(Cursor::new(bytes)).unwrap();
    let names = book.sheet_names().to_vec();
    assert_eq!(names, ["Side by side", "side by side 2", "abc of a name that is far too l", "4"]);
    let sheet = book.worksheet_range("Side by side").unwrap();
    let at = |row, column| sheet.get_value((row, column)).cloned().unwrap_or(Data::Empty);
    assert_eq!(at(0, 1), Data::String("pMDI, \"neat\"".to_owned()));
    assert_eq!(at(0, 2), Data::String("UF & <MUF>".to_owned()));
    assert_eq!(at(1, 1), Data::Float(1234.5));
    assert_eq!(at(1, 2), Data::Float(-0.25));
    // A text stays a text, though it looks like a formula.
    assert_eq!(at(2, 0), Data::String("=HYPERLINK(\"x\")".to_owned()));
    assert_eq!(at(2, 2), Data::Float(-1234.75));
    assert_eq!((at(3, 1), at(3, 2)), (Data::Empty, Data::Empty));
    assert_eq!(at(4, 0), Data::String("two\nlines; semicolon".to_owned()));
    let formulas = book.worksheet_formula("Side by side").unwrap();
    let formula: Vec<_> = formulas.cells().filter(|(_, _, text)| !text.is_empty()).collect();
    assert_eq!(formula.len(), 1);
    assert_eq!(formula[0].2, "C2-$B2");
}

#[test]
fn the_same_table_gives_the_same_bytes() {
    assert_eq!(to_xlsx(&[table()]), to_xlsx(&[table()]));
}

#[test]
fn cells_are_named_as_spreadsheets_do() {
    for (column, row, name) in
        [(0, 0, "A1"), (25, 9, "Z10"), (26, 0, "AA1"), (51, 1, "AZ2"), (52, 1, "BA2"), (702, 2, "AAA3")]
    {
        assert_eq!(cell_name(column, row), name);
    }
}
