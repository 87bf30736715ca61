//! The line, its log and its table, as they are kept.

use super::mill::Mill;
use haulm::domain::line::{Feeds, LineBook, RunFigure, SettingUnit, check_readings, check_rows, read_running};
use haulm::domain::recipe::draft::Entry;
use haulm::quantity::Unit;
use haulm::quantity::format::DecimalMark;
use haulm::record::content::check_log::{CheckContent, ONE_PRESS, series};
use haulm::record::content::line::{End, LINE};
use haulm::record::document::step::DocumentStep;
use haulm::record::file::log_csv::{COLUMNS, log_csv};
use haulm::record::store::library::{Library, Unread};
use haulm::record::store::{MemoryStore, Store};
use haulm::record::{LineRecord, LoggedFigure, PlannedChangeover, Refusal, RevisionId, Stored};
use haulm::statistics::control_chart::control_chart;
use proptest::prelude::*;

const WAX: &str = "Wax emulsion";

fn record() -> LineRecord {
    let mill = Mill::new();
    let end = |name: &str| End { name: name.to_owned(), draft: mill.draft.clone() };
    let planned = PlannedChangeover {
        from: end("A"),
        to: end("B"),
        started: Some(1_772_431_200_000),
        done: [("fibre".to_owned(), 1_772_431_210_000)].into(),
    };
    LineRecord { book: mill.book.clone(), planned: Some(planned), example: true, ..LineRecord::default() }
}

fn check(at: u64, remark: &str) -> CheckContent {
    let mill = Mill::new();
    let line = mill.line();
    let readings = read_running(&mill.book).0.unwrap();
    let running = check_readings(&mill.draft, &mill.case, &line, &line.tolerances.unwrap(), &readings).unwrap();
    let name = |figure| match figure {
        RunFigure::Dose(id) => Some(mill.draft.liquid(id).unwrap().name.clone()),
        RunFigure::Flow(id) => Some(mill.book.pump(id).unwrap().name.clone()),
        _ => None,
    };
    let rows = check_rows(&mill.draft, &mill.case, &line, &mill.book, Some(&readings), Some(&running));
    let read = rows.iter().filter_map(|row| row.check.as_ref());
    let computed = running.checks.iter().filter(|check| rows.iter().all(|row| row.figure != check.figure));
    CheckContent {
        at,
        author: "AB".to_owned(),
        recipe: "Straw, 15 mm".to_owned(),
        revision: None,
        remark: remark.to_owned(),
        figures: read.chain(computed).map(|check| LoggedFigure::from_check(check, name).unwrap()).collect(),
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

/// Struck out by mistake: it counts again, and a second strike holds.
#[test]
fn a_check_restored_counts_again() {
    let library = Library::open(MemoryStore::default()).unwrap();
    let slip = library.log_check(check(1_000, "no slip")).unwrap();
    library.log_check(check(2_000, "second")).unwrap();
    let counting = || library.log().unwrap().counting().len();
    library.strike_check(&slip, 3_000, "CD".to_owned()).unwrap();
    library.strike_check(&slip, 4_000, "CD".to_owned()).unwrap();
    assert_eq!(counting(), 1);
    library.restore_check(&slip, 5_000, "CD").unwrap();
    assert_eq!(counting(), 2);
    let log = library.log().unwrap();
    assert!(log.struck.is_empty() && log.unreadable.is_empty());
    library.strike_check(&slip, 6_000, "CD".to_owned()).unwrap();
    assert_eq!(counting(), 1);
    library.restore_check(&slip, 7_000, "CD").unwrap();
    assert_eq!(counting(), 2);
    // One that counts is left as it is.
    library.restore_check(&slip, 8_000, "CD").unwrap();
    assert_eq!(counting(), 2);
}

/// Four quick presses, the remark cleared by the first one; then a later check, and one with another remark.
#[test]
fn quick_presses_make_one_entry() {
    let library = Library::open(MemoryStore::default()).unwrap();
    let first = library.log_check_once(check(1_772_431_200_000, "filter cleaned")).unwrap();
    for after in [120, 260, 410] {
        let again = library.log_check_once(check(1_772_431_200_000 + after, "")).unwrap();
        assert_eq!(again, first);
    }
    assert_eq!(library.log().unwrap().checks, std::slice::from_ref(&first));
    library.log_check_once(check(1_772_431_200_000 + 5_000, "nozzle changed")).unwrap();
    assert_eq!(library.log().unwrap().checks.len(), 2, "another remark is another entry");
    library.log_check_once(check(1_772_431_200_000 + ONE_PRESS + 5_000, "")).unwrap();
    assert_eq!(library.log().unwrap().checks.len(), 3, "a check a minute later is one of its own");
    let mut other = check(1_772_431_200_000 + 6_000, "");
    other.figures[0].actual = "4.4".to_owned();
    library.log_check_once(other).unwrap();
    assert_eq!(library.log().unwrap().checks.len(), 4, "other readings are another entry");
    // One that was struck out is no entry any more.
    library.strike_check(&first, 1_772_431_200_000 + 900, "AB".to_owned()).unwrap();
    library.log_check_once(check(1_772_431_200_000 + 1_000, "filter cleaned")).unwrap();
    assert_eq!(library.log().unwrap().checks.len(), 5);
}

/// "Clear example" is taken back after a pump and a transport time were typed: the example comes back, and both stay.
#[test]
fn taking_a_step_back_leaves_what_was_typed_after_it() {
    let example = record();
    let cleared = DocumentStep { before: example.clone(), after: LineRecord::default() };
    let mut now = cleared.after.clone();
    let own = now.book.add_pump(Feeds::Water, SettingUnit::Hertz);
    "My pump".clone_into(&mut now.book.pump_mut(own).unwrap().name);
    now.book.transport.mixing = Entry::typed("75", Unit::Second);
    now.book.remark = "mine".to_owned();
    let back = cleared.taken_back(&LINE, &now);
    let names: Vec<&str> = back.book.pumps.iter().map(|pump| pump.name.as_str()).collect();
    assert_eq!(names, ["P1 binder", "P2 wax", "P3 water", "My pump"]);
    assert_eq!((back.book.transport.mixing.text.as_str(), back.book.remark.as_str()), ("75", "mine"));
    assert_eq!(back.book.transport.blender_to_former.text, "150");
    assert!(back.example && back.planned == example.planned);
    // With nothing after it all is as before.
    assert_eq!(cleared.taken_back(&LINE, &cleared.after), example);
}

/// A pump is removed, another one renamed, and the removal is taken back.
#[test]
fn a_removed_pump_comes_back_among_what_changed_since() {
    let before = record();
    let mut after = before.clone();
    after.book.pumps.remove(1);
    let removed = DocumentStep { before: before.clone(), after };
    let mut now = removed.after.clone();
    now.book.pumps[1].name = "P3 water, new".to_owned();
    let back = removed.taken_back(&LINE, &now);
    let names: Vec<&str> = back.book.pumps.iter().map(|pump| pump.name.as_str()).collect();
    assert_eq!(names, ["P1 binder", "P2 wax", "P3 water, new"]);
    assert_eq!(back.book.pumps[1], before.book.pumps[1]);
}

#[test]
fn a_line_is_kept_as_it_was_typed() {
    let store = MemoryStore::default();
    let library = Library::open(store.clone()).unwrap();
    assert_eq!(library.document(&LINE), Ok(None));
    let mut kept = record();
    kept.book.pumps[0].calibrations[0].rows[0].entries.mass.text = " 2,71 kg ".to_owned();
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
        let wax =
            content.figures.iter_mut().find(|figure| figure.figure == "dose" && figure.of.as_deref() == Some(WAX));
        wax.unwrap().deviation = format!("{}", -10.0 + at as f64);
        library.log_check(content).unwrap();
    }
    let log = library.log().unwrap().checks;
    let values: Vec<f64> = series(&log, "dose", Some(WAX)).into_iter().map(|(_, value)| value).collect();
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
    let table = log_csv(&library.log().unwrap().checks, DecimalMark::Point, |_| None);
    snapshot!("line", "log_csv", table.replace('\r', "␍"));
    assert!(table.lines().any(|line| line.contains(",-0.2660473,")), "a negative number is one: {table}");
    let rows = parse(&table);
    assert!(rows.iter().all(|row| row.len() == COLUMNS.len()));
    assert_eq!(rows[0], COLUMNS);
    assert_eq!(rows[1][12], "'=HYPERLINK(\"x\"), \"quoted\"\nand a line");
    assert!(rows[1][9].parse::<f64>().is_ok());
}

/// The table names a revision by its number within the recipe; its id is at the end.
#[test]
fn the_table_has_the_number_of_the_revision() {
    let library = Library::open(MemoryStore::default()).unwrap();
    let id = RevisionId::parse(&"ab".repeat(16)).unwrap();
    library.log_check(CheckContent { revision: Some(id), ..check(1_000, "") }).unwrap();
    let rows = parse(&log_csv(&library.log().unwrap().checks, DecimalMark::Point, |asked| (asked == id).then_some(7)));
    assert_eq!((rows[0][2].as_str(), rows[0][13].as_str()), ("revision", "revision_id"));
    assert_eq!((rows[1][2].as_str(), rows[1][13].as_str()), ("7", id.to_string().as_str()));
}

/// One reading off is one, though the dose that follows from it is off as well.
#[test]
fn only_readings_are_counted_as_outside() {
    let content = check(1_000, "");
    let outside: Vec<_> = content.outside().map(|figure| (figure.figure.as_str(), figure.of.as_deref())).collect();
    assert_eq!(outside, [("flow", Some("P2 wax"))]);
    let dose = content.figures.iter().find(|figure| figure.figure == "dose" && figure.of.as_deref() == Some(WAX));
    assert_eq!(dose.unwrap().within(), Some(false));
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
        let rows = parse(&log_csv(&log, DecimalMark::Point, |_| None));
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
fn a_check_takes_about_two_kilobytes() {
    let size = haulm::record::CheckRecord::new(check(1_790_000_000_000, "belt cleaned")).unwrap().text().len();
    assert!((2_200..2_500).contains(&size), "{size}");
}
