//! The line, its log and its table, as they are kept.

use super::mill::Mill;
use haulm::domain::line::{LineBook, check_readings, read_running};
use haulm::quantity::format::DecimalMark;
use haulm::record::content::check_log::{CheckContent, series};
use haulm::record::content::line::{End, LINE};
use haulm::record::file::log_csv::{COLUMNS, log_csv};
use haulm::record::store::library::{Library, Unread};
use haulm::record::store::{MemoryStore, Store};
use haulm::record::{LineRecord, LoggedFigure, PlannedChangeover, Refusal, Stored};
use haulm::statistics::control_chart::control_chart;
use proptest::prelude::*;

fn record() -> LineRecord {
    let mill = Mill::new();
    let end = |name: &str| End { name: name.to_owned(), draft: mill.draft.clone() };
    let planned = PlannedChangeover { from: end("A"), to: end("B"), started: Some(1_772_431_200_000) };
    LineRecord { book: mill.book.clone(), planned: Some(planned), example: true }
}

fn check(at: u64, remark: &str) -> CheckContent {
    let mill = Mill::new();
    let line = mill.line();
    let readings = read_running(&mill.book).0.unwrap();
    let running = check_readings(&mill.draft, &mill.case, &line, &line.tolerances.unwrap(), &readings).unwrap();
    let name = |id: haulm::domain::LiquidId| mill.draft.liquid(id).unwrap().name.clone();
    CheckContent {
        at,
        author: "AB".to_owned(),
        recipe: "Straw, 15 mm".to_owned(),
        revision: None,
        remark: remark.to_owned(),
        figures: running.checks.iter().map(|check| LoggedFigure::of(check, name).unwrap()).collect(),
        strikes: None,
    }
}

/// A check that was struck out stays in the log, and the control limits are those of the others.
#[test]
fn a_check_struck_out_is_kept_and_does_not_count() {
    let library = Library::open(MemoryStore::default()).unwrap();
    for (at, remark) in [(1_000, "first"), (2_000, "a slip"), (3_000, "third")] {
        library.log_check(check(at, remark)).unwrap();
    }
    let before = library.log().unwrap();
    let slip = before.checks.iter().find(|check| check.content().remark == "a slip").unwrap();
    library.strike_check(slip, 4_000, "CD".to_owned()).unwrap();
    let log = library.log().unwrap();
    assert_eq!(log.checks, before.checks, "nothing is lost");
    assert_eq!(log.struck.iter().collect::<Vec<_>>(), [&haulm::record::CheckId(slip.id())]);
    let remarks: Vec<_> = log.counting().iter().map(|check| check.content().remark.clone()).collect();
    assert_eq!(remarks, ["first", "third"]);
    let times: Vec<_> = series(&log.counting(), "mat_moisture", None).into_iter().map(|(at, _)| at).collect();
    assert_eq!(times, [1_000, 3_000]);
    // Struck twice is struck.
    library.strike_check(slip, 5_000, "CD".to_owned()).unwrap();
    assert_eq!(library.log().unwrap().counting().len(), 2);
}

#[test]
fn a_line_is_kept_as_it_was_typed() {
    let store = MemoryStore::default();
    let library = Library::open(store.clone()).unwrap();
    assert_eq!(library.document(&LINE), Ok(None));
    let mut kept = record();
    kept.book.pumps[0].calibrations[0].rows[0].mass.text = " 2,71 kg ".to_owned();
    let kept = Stored::new(kept);
    library.keep(&LINE, &kept).unwrap();
    assert_eq!(Library::open(store).unwrap().document(&LINE), Ok(Some(kept)));
}

#[test]
fn what_another_version_knows_is_written_back() {
    let mut text: serde_json::Value = serde_json::from_str(&LINE.text(&Stored::new(record()))).unwrap();
    text["later"] = "kept".into();
    let read = LINE.read(&text.to_string()).unwrap();
    assert_eq!(serde_json::from_str::<serde_json::Value>(&LINE.text(&read)).unwrap(), text);
}

#[test]
fn a_line_that_cannot_be_read_is_set_aside_and_never_lost() {
    for damaged in ["{", "[]", "{}", r#"{"haulm":"line","version":9}"#, r#"{"haulm":"line","version":1,"book":5}"#] {
        let store = MemoryStore::default();
        store.write(LINE.key, damaged).unwrap();
        let library = Library::open(store).unwrap();
        assert!(matches!(library.document(&LINE), Err(Unread::Refused(_))), "{damaged}");
        library.keep(&LINE, &Stored::new(record())).unwrap();
        assert_eq!(library.document(&LINE), Ok(Some(Stored::new(record()))));
        assert!(library.aside().unwrap().iter().any(|(_, text)| text == damaged));
    }
    let newer = LINE.read(r#"{"haulm":"line","version":9}"#);
    assert!(matches!(newer, Err(Refusal::Newer { version: 9, known: 1 })));
}

#[test]
fn checks_come_back_in_their_order_and_two_tabs_merge() {
    let store = MemoryStore::default();
    let (one, other) = (Library::open(store.clone()).unwrap(), Library::open(store.clone()).unwrap());
    one.log_check(check(3_000, "third")).unwrap();
    other.log_check(check(1_000, "first")).unwrap();
    one.log_check(check(2_000, "second")).unwrap();
    // The same check twice is one.
    one.log_check(check(2_000, "second")).unwrap();
    let log = one.log().unwrap();
    let remarks: Vec<_> = log.checks.iter().map(|check| check.content().remark.as_str()).collect();
    assert_eq!((remarks, log.unreadable), (vec!["first", "second", "third"], vec![]));
    assert_eq!(other.log().unwrap().checks, log.checks);
    // The library of recipes neither shows them nor stumbles over them.
    let library = Library::open(store).unwrap();
    assert_eq!((library.recipes().len(), library.unreadable().count()), (0, 0));
}

#[test]
fn a_damaged_check_is_shown_and_takes_none_with_it() {
    let store = MemoryStore::default();
    let library = Library::open(store.clone()).unwrap();
    let kept = library.log_check(check(1_000, "sound")).unwrap();
    library.log_check(check(2_000, "spoilt")).unwrap();
    for key in store.keys().unwrap() {
        if !key.ends_with(&kept.id().to_string()) {
            store.write(&key, "{").unwrap();
        }
    }
    store.write("haulm/check/nonsense", "{}").unwrap();
    let log = library.log().unwrap();
    assert_eq!((log.checks.len(), log.unreadable.len()), (1, 2));
}

#[test]
fn a_series_can_be_charted() {
    let library = Library::open(MemoryStore::default()).unwrap();
    for at in 1..=5 {
        let mut content = check(at * 1_000, "");
        let wax = &mut content.figures[1];
        wax.deviation = format!("{}", -10.0 + at as f64);
        library.log_check(content).unwrap();
    }
    let log = library.log().unwrap().checks;
    let name = log[0].content().figures[1].liquid.clone().unwrap();
    let values: Vec<f64> = series(&log, "dose", Some(&name)).into_iter().map(|(_, value)| value).collect();
    assert_eq!(values.len(), 5);
    let chart = control_chart(&values).unwrap();
    approx::assert_relative_eq!(chart.mean, -0.07, max_relative = 1e-12);
    approx::assert_relative_eq!(chart.moving_range, 0.01, max_relative = 1e-12);
    assert_eq!(series(&log, "dose", Some("no such liquid")), vec![]);
    assert_eq!(series(&log, "mat_weight", None).len(), 5);
}

#[test]
fn the_table_reads_back() {
    let library = Library::open(MemoryStore::default()).unwrap();
    library.log_check(check(1_772_431_200_000, "=HYPERLINK(\"x\"), \"quoted\"\nand a line")).unwrap();
    let table = log_csv(&library.log().unwrap().checks, DecimalMark::Point);
    insta::with_settings!(
        {snapshot_path => concat!(env!("CARGO_MANIFEST_DIR"), "/tests/snapshots"), prepend_module_to_snapshot => false, omit_expression => true},
        { insta::assert_snapshot!("line_log_csv", table.replace('\r', "␍")) }
    );
    assert!(table.lines().nth(1).unwrap().contains(",-0.2660473,"), "a negative number is one: {table}");
    let rows = parse(&table);
    assert!(rows.iter().all(|row| row.len() == COLUMNS.len()));
    assert_eq!(rows[0], COLUMNS);
    assert_eq!(rows[1][12], "'=HYPERLINK(\"x\"), \"quoted\"\nand a line");
    assert!(rows[1][9].parse::<f64>().is_ok());
}

/// As the csv crate reads it.
fn parse(text: &str) -> Vec<Vec<String>> {
    let text = text.strip_prefix('\u{feff}').expect("a byte-order mark");
    let mut reader = csv::ReaderBuilder::new().has_headers(false).from_reader(text.as_bytes());
    reader.deserialize().map(Result::unwrap).collect()
}

proptest! {
    #[test]
    fn any_text_reads_back(remark in any::<String>(), recipe in any::<String>()) {
        let library = Library::open(MemoryStore::default()).unwrap();
        let mut content = check(1_000, &remark);
        content.recipe.clone_from(&recipe);
        library.log_check(content).unwrap();
        let log = library.log().unwrap().checks;
        prop_assert_eq!(&log[0].content().remark, &remark);
        let rows = parse(&log_csv(&log, DecimalMark::Point));
        prop_assert!(rows.iter().all(|row| row.len() == COLUMNS.len()));
        let quoted = format!("'{recipe}");
        prop_assert!(rows[1][1] == recipe || rows[1][1] == quoted);
    }

    #[test]
    fn anything_in_the_store_is_read_or_refused(text in any::<String>()) {
        let store = MemoryStore::default();
        store.write(LINE.key, &text).unwrap();
        let _ = Library::open(store).unwrap().document(&LINE);
    }
}

#[test]
fn a_blank_book_is_small() {
    let blank = LineRecord { book: LineBook::default(), ..LineRecord::default() };
    assert!(LINE.text(&Stored::new(blank)).len() < 4_000);
}

/// README says what a record takes of the browser's room.
#[test]
fn a_check_takes_about_one_kilobyte() {
    let size = haulm::record::CheckRecord::new(check(1_790_000_000_000, "belt cleaned")).unwrap().text().len();
    assert!((1_000..1_300).contains(&size), "{size}");
}
