//! A spreadsheet file of one or more sheets, with live formulas.
//!
//! Own code: a ready-made writer adds 237 kB (brotli) to a page of 150, and there is only one wasm module
//! to load. What a table takes is five small XML files.
//!
//! Source: ECMA-376-1:2016, Office Open XML file formats, clause 18 (SpreadsheetML).

use super::{Cell, Table, cell_name, zip};
use html_escape::encode_double_quoted_attribute as escape;
use std::fmt::Write as _;

const HEAD: &str = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
// Namespaces are names that look like addresses; nothing is fetched from there.
const MAIN: &str = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATED: &str = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE: &str = "http://schemas.openxmlformats.org/package/2006";
const TYPE: &str = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/// Most decimals that a cell is shown with.
const MOST_DECIMALS: u8 = 9;
/// Place of the heading's style; that of a number with no decimals follows it.
const HEADING: u8 = 1;

/// The tables as the bytes of one file, a sheet each.
#[must_use]
pub fn to_xlsx(tables: &[Table]) -> Vec<u8> {
    let sheets: Vec<(String, String)> =
        (1..).zip(tables).map(|(at, table)| (format!("xl/worksheets/sheet{at}.xml"), sheet(table))).collect();
    let fixed = [
        ("[Content_Types].xml", types(tables.len())),
        ("_rels/.rels", relations(&[(format!("{}/officeDocument", RELATED), "xl/workbook.xml".to_owned())])),
        ("xl/workbook.xml", workbook(tables)),
        ("xl/_rels/workbook.xml.rels", workbook_relations(tables.len())),
        ("xl/styles.xml", styles()),
    ];
    let mut files: Vec<(&str, &[u8])> = fixed.iter().map(|(name, text)| (*name, text.as_bytes())).collect();
    files.extend(sheets.iter().map(|(name, text)| (name.as_str(), text.as_bytes())));
    zip::store(&files)
}

fn types(sheets: usize) -> String {
    let mut text = format!(
        "{HEAD}<Types xmlns=\"{}/content-types\"><Default Extension=\"rels\" \
         ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" \
         ContentType=\"application/xml\"/><Override PartName=\"/xl/workbook.xml\" \
         ContentType=\"{TYPE}.sheet.main+xml\"/><Override PartName=\"/xl/styles.xml\" \
         ContentType=\"{TYPE}.styles+xml\"/>",
        PACKAGE
    );
    for at in 1..=sheets {
        let _ =
            write!(text, "<Override PartName=\"/xl/worksheets/sheet{at}.xml\" ContentType=\"{TYPE}.worksheet+xml\"/>");
    }
    text + "</Types>"
}

fn relations(targets: &[(String, String)]) -> String {
    let mut text = format!("{HEAD}<Relationships xmlns=\"{}/relationships\">", PACKAGE);
    for (at, (kind, target)) in (1..).zip(targets) {
        let _ = write!(text, "<Relationship Id=\"rId{at}\" Type=\"{kind}\" Target=\"{target}\"/>");
    }
    text + "</Relationships>"
}

fn workbook_relations(sheets: usize) -> String {
    let kind = |what: &str| format!("{}/{what}", RELATED);
    let mut targets: Vec<_> = (1..=sheets).map(|at| (kind("worksheet"), format!("worksheets/sheet{at}.xml"))).collect();
    targets.push((kind("styles"), "styles.xml".to_owned()));
    relations(&targets)
}

fn workbook(tables: &[Table]) -> String {
    let mut text = format!("{HEAD}<workbook xmlns=\"{}\" xmlns:r=\"{}\"><sheets>", MAIN, RELATED);
    let mut taken: Vec<String> = Vec::new();
    for (at, table) in (1..).zip(tables) {
        let name = tab(&table.name, at, &taken);
        let _ = write!(text, "<sheet name=\"{}\" sheetId=\"{at}\" r:id=\"rId{at}\"/>", escaped(&name));
        taken.push(name.to_lowercase());
    }
    // Formulas are worked out when the file is opened, whatever is kept beside them.
    text + "</sheets><calcPr fullCalcOnLoad=\"1\"/></workbook>"
}

/// A name that a tab may have: 1 to 31 characters, none of `[]:*?/\`, no apostrophe at an end, none twice.
fn tab(name: &str, at: usize, taken: &[String]) -> String {
    let clean: String = name.chars().filter(|c| !"[]:*?/\\".contains(*c) && !c.is_control()).take(31).collect();
    let clean = clean.trim_matches(['\'', ' ']);
    if clean.is_empty() || taken.contains(&clean.to_lowercase()) {
        let short: String = clean.chars().take(26).collect();
        return format!("{short} {at}").trim_start().to_owned();
    }
    clean.to_owned()
}

/// Styles: plain, heading, then numbers with 0 to 9 decimals.
fn styles() -> String {
    let mut text = format!("{HEAD}<styleSheet xmlns=\"{}\"><numFmts count=\"{}\">", MAIN, MOST_DECIMALS + 1);
    for decimals in 0..=MOST_DECIMALS {
        let point = if decimals == 0 { "" } else { "." };
        let zeros = "0".repeat(decimals.into());
        let _ = write!(text, "<numFmt numFmtId=\"{}\" formatCode=\"0{point}{zeros}\"/>", 164 + u32::from(decimals));
    }
    let _ = write!(
        text,
        "</numFmts><fonts count=\"2\"><font/><font><b/></font></fonts><fills count=\"2\"><fill><patternFill \
         patternType=\"none\"/></fill><fill><patternFill patternType=\"gray125\"/></fill></fills><borders \
         count=\"1\"><border/></borders><cellStyleXfs count=\"1\"><xf/></cellStyleXfs><cellXfs count=\"{}\"><xf/><xf \
         fontId=\"1\" applyFont=\"1\" applyAlignment=\"1\"><alignment vertical=\"top\" wrapText=\"1\"/></xf>",
        MOST_DECIMALS + 3
    );
    for decimals in 0..=MOST_DECIMALS {
        let _ = write!(text, "<xf numFmtId=\"{}\" applyNumberFormat=\"1\"/>", 164 + u32::from(decimals));
    }
    text + "</cellXfs></styleSheet>"
}

fn sheet(table: &Table) -> String {
    let mut text = format!("{HEAD}<worksheet xmlns=\"{}\"><sheetViews><sheetView workbookViewId=\"0\">", MAIN);
    if table.frozen > 0 {
        let _ = write!(
            text,
            "<pane ySplit=\"{}\" topLeftCell=\"{}\" activePane=\"bottomLeft\" state=\"frozen\"/>",
            table.frozen,
            cell_name(0, table.frozen)
        );
    }
    text.push_str("</sheetView></sheetViews><cols><col min=\"1\" max=\"1\" width=\"42\" customWidth=\"1\"/>");
    text.push_str("<col min=\"2\" max=\"40\" width=\"18\" customWidth=\"1\"/></cols><sheetData>");
    for (row, cells) in table.rows.iter().enumerate() {
        let _ = write!(text, "<row r=\"{}\">", row + 1);
        for (column, cell) in cells.iter().enumerate() {
            put(&mut text, &cell_name(column, row), cell);
        }
        text.push_str("</row>");
    }
    text + "</sheetData></worksheet>"
}

fn put(text: &mut String, name: &str, cell: &Cell) {
    let style = |decimals: u8| HEADING + 1 + decimals.min(MOST_DECIMALS);
    match cell {
        Cell::Text(words) | Cell::Heading(words) => {
            let style = if matches!(cell, Cell::Heading(_)) { HEADING } else { 0 };
            let words = escaped(words);
            let _ = write!(
                text,
                "<c r=\"{name}\" s=\"{style}\" t=\"inlineStr\"><is><t xml:space=\"preserve\">{words}</t></is></c>"
            );
        }
        Cell::Number { value, decimals } if value.is_finite() => {
            let _ = write!(text, "<c r=\"{name}\" s=\"{}\"><v>{value}</v></c>", style(*decimals));
        }
        Cell::Formula { formula, value, decimals } if value.is_finite() => {
            let formula = escaped(formula);
            let _ = write!(text, "<c r=\"{name}\" s=\"{}\"><f>{formula}</f><v>{value}</v></c>", style(*decimals));
        }
        Cell::Empty | Cell::Number { .. } | Cell::Formula { .. } => {}
    }
}

/// With the characters replaced that mean something in XML, and without those that it does not allow (XML 1.0, 2.2).
fn escaped(text: &str) -> String {
    let allowed =
        |c: &char| matches!(c, '\t' | '\n' | '\r') || !(c.is_control() || matches!(c, '\u{fffe}' | '\u{ffff}'));
    escape(&text.chars().filter(allowed).collect::<String>()).into_owned()
}
