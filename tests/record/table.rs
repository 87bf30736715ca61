//! Tables to take away, read back by programs that are not ours.

use calamine::{Data, Reader, Xlsx};
use haulm::quantity::format::DecimalMark;
use haulm::record::table::{Cell, Table, cell_name, to_csv, to_xlsx};
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
fn separated_values() {
    insta::assert_snapshot!(to_csv(&table(), DecimalMark::Point).replace('\u{feff}', "BOM ").replace("\r\n", " ⏎\n"), @r#"
    BOM ,"pMDI, ""neat""","UF & <MUF>" ⏎
    "Water dose, kg/h",1234.5,-0.25 ⏎
    "'=HYPERLINK(""x"")",,-1234.75 ⏎
    "not a number",, ⏎
    "two
    lines; semicolon" ⏎
    "#);
    let semicolons = to_csv(&table(), DecimalMark::Comma);
    assert!(semicolons.contains("\"Water dose, kg/h\";1234,5;-0,25\r\n"), "{semicolons}");
    assert!(semicolons.contains("\"two\nlines; semicolon\""));
}

/// The cells of a table of one row, as the csv crate reads them.
fn read_back(row: Vec<Cell>, mark: DecimalMark, separator: u8) -> Vec<String> {
    let text = to_csv(&Table { rows: vec![row], ..Table::default() }, mark);
    let text = text.strip_prefix('\u{feff}').expect("a byte-order mark");
    let mut reader = csv::ReaderBuilder::new().has_headers(false).delimiter(separator).from_reader(text.as_bytes());
    let rows: Vec<Vec<String>> = reader.deserialize().map(Result::unwrap).collect();
    assert_eq!(rows.len(), 1, "{text}");
    rows[0].clone()
}

#[test]
fn no_text_becomes_a_formula() {
    let formulas = [
        "=1+1",
        " =1",
        "\u{a0}=1",
        "\u{feff}=1",
        "\u{200b}\u{feff} =1",
        "\n=1",
        "＝1",
        " ＝1",
        "+",
        "＋1",
        "-x",
        "-3",
        "－x",
        "@",
        "＠SUM(A1)",
        "\t",
        "\tx",
        "\rx",
        "=HYPERLINK(\"a\";\"b\")",
    ];
    let texts = ["", "x", "a=1", "12", "1e5", "inf", "½", "a\"b", "a;b,c", "\u{2212}3", "'", "a\r\nb", " a "];
    for (mark, separator) in [(DecimalMark::Point, b','), (DecimalMark::Comma, b';')] {
        let cells = |texts: &[&str]| texts.iter().map(|text| Cell::text(*text)).collect::<Vec<_>>();
        let guarded: Vec<String> = formulas.iter().map(|text| format!("'{text}")).collect();
        assert_eq!(read_back(cells(&formulas), mark, separator), guarded);
        assert_eq!(read_back(cells(&texts), mark, separator), texts);
        // Each text in quotation marks, those too that look like numbers.
        let text = to_csv(&Table { rows: texts.map(|text| cells(&[text])).into(), ..Table::default() }, mark);
        assert!(text.contains("\r\n\"12\"\r\n\"1e5\"\r\n\"inf\"\r\n"), "{text}");
    }
}

#[test]
fn negative_numbers_stay_numbers() {
    let row = || vec![number(-0.25), number(-12_000.0), number(1e-7)];
    assert_eq!(read_back(row(), DecimalMark::Point, b','), ["-0.25", "-12000", "0.0000001"]);
    assert_eq!(read_back(row(), DecimalMark::Comma, b';'), ["-0,25", "-12000", "0,0000001"]);
    let text = to_csv(&Table { rows: vec![row()], ..Table::default() }, DecimalMark::Comma);
    assert_eq!(text, "\u{feff}-0,25;-12000;0,0000001\r\n");
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
