//! Trials as they are kept: out and in again, saved over and over, and as tables.

use crate::boards::tested;
use crate::json::{json_value, with_part_replaced};
use crate::sample::{bare_sheet, recipe, type_in};
use crate::series::dose_and_density;
use haulm::domain::trial::boards::requirement_set::RequirementSet;
use haulm::domain::trial::boards::target::RequirementDraft;
use haulm::domain::trial::{BoardId, LineId, Property, WeighField};
use haulm::domain::{Entry, LiquidId};
use haulm::quantity::Unit;
use haulm::quantity::format::DecimalMark;
use haulm::record::content::revision::{Revision, Stamp, Standing, Title};
use haulm::record::content::trial::{LARGEST, TRIAL_ON_PAGE};
use haulm::record::file::trial_csv::{boards_csv, readings_csv, sheets_csv};
use haulm::record::file::trial_results::results_csv;
use haulm::record::store::library::{Library, Unread};
use haulm::record::store::{MemoryStore, Store};
use haulm::record::{OpenTrial, Refusal, Stored, Trial, TrialContent};
use haulm::ui::text::words;
use proptest::prelude::*;
use serde_json::{Value, json};

fn stamp(at: u64) -> Stamp {
    Stamp { at, author: "AB".to_owned(), remark: String::new() }
}

fn sample() -> TrialContent {
    let title = Title { name: "Straw 16".to_owned(), ..Title::default() };
    let revision = Revision::first(title, recipe(), stamp(1)).unwrap();
    let of = (revision.recipe(), revision.revision());
    let mut trial = TrialContent::of("Straw 16".to_owned(), recipe(), Some(of));
    trial.name = "Dose, \"first\" round".to_owned();
    trial.sheet = bare_sheet();
    type_in(&mut trial.sheet, WeighField::Boards, "2");
    type_in(&mut trial.sheet, WeighField::Capacity, "4 kg");
    trial.series = Some(dose_and_density());
    let mut board = tested();
    board.run = Some(3);
    board.name = "=B1".to_owned();
    let mut other = tested();
    (other.id, other.run) = (BoardId(2), None);
    other.note = "corner, torn".to_owned();
    trial.boards = vec![board, other];
    trial.batch_mut(Some(1), 2).unwrap().entry_mut(LineId::Fibre).unwrap().text = " 1,75 kg ".to_owned();
    trial.requirements = vec![RequirementDraft {
        property: Property::InternalBond,
        value: Entry::typed("0.55", Unit::NewtonPerSquareMillimetre),
    }];
    trial
}

#[test]
fn a_trial_goes_out_and_comes_in_again() {
    let trial = sample();
    let text = trial.file().unwrap();
    assert_eq!(TrialContent::read_file(&text), Ok(trial.clone()));
    let sealed = trial.clone().seal(None, stamp(2)).unwrap();
    let mut read = TrialContent::read_file(sealed.text()).unwrap();
    assert_eq!((read.saved_at, read.author.as_str()), (2, "AB"));
    (read.saved_at, read.author) = (trial.saved_at, trial.author.clone());
    assert_eq!(read, trial);
}

#[test]
fn a_trial_is_saved_found_replaced_and_removed() {
    let store = MemoryStore::default();
    let library = Library::open(store.clone()).unwrap();
    assert!(library.trials().unwrap().trials.is_empty());
    let first = sample().seal(None, stamp(2)).unwrap();
    let id = library.save_trial(&first).unwrap();
    assert_eq!(library.trial(id), Ok(Some(first.clone())));
    let mut changed = sample();
    changed.note = "second press".to_owned();
    let second = changed.seal(Some(&first), stamp(3)).unwrap();
    library.save_trial(&second).unwrap();
    let trials = Library::open(store).unwrap().trials().unwrap();
    assert_eq!(trials.trials.as_slice(), std::slice::from_ref(&second));
    assert_eq!(trials.of(sample().recipe.unwrap()).count(), 1);
    library.save_trial(&second.with_standing(Standing::Removed, stamp(4)).unwrap()).unwrap();
    let trials = library.trials().unwrap();
    assert_eq!((trials.kept().count(), trials.trials.len()), (0, 1));
    library.save_trial(&trials.trials[0].with_standing(Standing::Kept, stamp(5)).unwrap()).unwrap();
    assert_eq!(library.trials().unwrap().kept().count(), 1);
    assert_eq!(library.trial(id), Ok(Some(first)), "nothing is ever overwritten");
}

#[test]
fn what_another_version_knows_lives_on() {
    let trial = sample().seal(None, stamp(2)).unwrap();
    let mut value: Value = serde_json::from_str(trial.text()).unwrap();
    value["later"] = json!({"kept": [1, 2]});
    let text = value.to_string();
    let id = haulm::record::id::Id::of(&text);
    let read = Trial::read(id, &text).unwrap();
    assert_eq!(read.extra()["later"], json!({"kept": [1, 2]}));
    let next = read.content().clone().seal(Some(&read), stamp(3)).unwrap();
    assert_eq!(next.extra()["later"], json!({"kept": [1, 2]}));
}

#[test]
fn a_damaged_trial_is_named_and_left() {
    let store = MemoryStore::default();
    let library = Library::open(store.clone()).unwrap();
    let trial = sample().seal(None, stamp(2)).unwrap();
    library.save_trial(&trial).unwrap();
    let key = format!("haulm/trial/{}", trial.id());
    store.write(&key, &trial.text().replace("16.1", "16.7")).unwrap();
    store.write("haulm/trial/no-id", "{}").unwrap();
    let trials = library.trials().unwrap();
    assert!(trials.trials.is_empty());
    assert!(matches!(trials.unreadable[0].1, Unread::Refused(Refusal::Altered { .. })));
    assert_eq!(trials.unreadable[1], ("haulm/trial/no-id".to_owned(), Unread::BadKey));
    assert!(library.trial(trial.trial()).is_err());
}

#[test]
fn the_open_trial_survives_a_reload() {
    let store = MemoryStore::default();
    let library = Library::open(store.clone()).unwrap();
    assert_eq!(library.document(&TRIAL_ON_PAGE), Ok(None));
    let open = Stored::new(OpenTrial { from: None, trial: sample() });
    library.keep(&TRIAL_ON_PAGE, &open).unwrap();
    assert_eq!(Library::open(store.clone()).unwrap().document(&TRIAL_ON_PAGE), Ok(Some(open.clone())));
    store.write(TRIAL_ON_PAGE.key, "{broken").unwrap();
    assert!(library.document(&TRIAL_ON_PAGE).is_err());
    library.keep(&TRIAL_ON_PAGE, &open).unwrap();
    assert_eq!(library.aside().unwrap().len(), 1, "what could not be read is set aside");
}

#[test]
fn what_is_refused() {
    let with = |edit: fn(&mut Value)| {
        let mut value: Value = serde_json::from_str(&sample().file().unwrap()).unwrap();
        edit(&mut value);
        TrialContent::read_file(&value.to_string())
    };
    assert!(matches!(with(|value| value["haulm"] = json!("recipe")), Err(Refusal::OtherKind { .. })));
    assert!(matches!(with(|value| value["version"] = json!(2)), Err(Refusal::Newer { version: 2, known: 1 })));
    assert!(matches!(with(|value| value["sheet"] = json!(5)), Err(Refusal::Damaged { .. })));
    assert!(matches!(with(|value| value["boards"][0]["mass"]["unit"] = json!("stone")), Err(Refusal::Damaged { .. })));
    assert!(matches!(TrialContent::read_file(&" ".repeat(LARGEST + 1)), Err(Refusal::TooLarge { .. })));
}

/// A full series with every test on every board stays below what is read back.
#[test]
fn the_largest_series_can_be_read_again() {
    let mut trial = sample();
    let mut board = tested();
    board.pieces = vec![board.pieces[0].clone(); 10];
    board.bending = vec![board.bending[0].clone(); 6];
    board.bond = vec![board.bond[0].clone(); 10];
    board.swelling = vec![board.swelling[0].clone(); 10];
    trial.boards = (1..=256).map(|id| haulm::domain::trial::BoardDraft { id: BoardId(id), ..board.clone() }).collect();
    let text = trial.file().unwrap();
    assert!(text.len() < LARGEST, "{}", text.len());
    assert!(trial.seal(None, stamp(1)).unwrap().text().len() < LARGEST / 2);
}

#[test]
fn tables() {
    let trial = sample();
    let name = |id: LineId, recipe: &haulm::domain::Draft| words::bench::line(id, recipe);
    let sheets = sheets_csv(&trial, DecimalMark::Point, name);
    let head: Vec<&str> = sheets.lines().take(12).collect();
    let readings = readings_csv(&trial, DecimalMark::Point);
    let text = format!(
        "{}\n{}\n{}",
        boards_csv(&trial, DecimalMark::Point),
        readings.lines().take(16).collect::<Vec<_>>().join("\n"),
        head.join("\n")
    );
    snapshot!("bench", "tables", text);
    for table in [boards_csv(&trial, DecimalMark::Point), readings, sheets] {
        assert!(table.ends_with("\r\n"));
        let text = table.strip_prefix('\u{feff}').expect("a byte-order mark");
        // The reader refuses a row that is longer or shorter than the first.
        let rows: Vec<csv::StringRecord> =
            csv::Reader::from_reader(text.as_bytes()).records().map(Result::unwrap).collect();
        assert!(!rows.is_empty());
    }
}

#[test]
fn tables_with_a_decimal_comma() {
    let rows = |text: String, separator| -> Vec<Vec<String>> {
        let text = text.strip_prefix('\u{feff}').expect("a byte-order mark").to_owned();
        let mut reader = csv::ReaderBuilder::new().has_headers(false).delimiter(separator).from_reader(text.as_bytes());
        reader.deserialize().map(Result::unwrap).collect()
    };
    let points = rows(boards_csv(&sample(), DecimalMark::Point), b',');
    let commas = rows(boards_csv(&sample(), DecimalMark::Comma), b';');
    let mut decimals = 0;
    for (point, comma) in points.concat().iter().zip(commas.concat()) {
        if point.contains('.') && point.parse::<f64>().is_ok() {
            decimals += 1;
            assert_eq!(point.replace('.', ","), comma);
        } else {
            assert_eq!(*point, comma);
        }
    }
    assert!(decimals > 3, "{points:?}");
}

#[test]
fn a_trial_without_a_series_has_one_sheet() {
    let mut trial = sample();
    trial.series = None;
    trial.batch_mut(None, 1).unwrap().entry_mut(LineId::Liquid(LiquidId(1))).unwrap().text = "310".to_owned();
    let sheets = sheets_csv(&trial, DecimalMark::Point, |id, _| id.key());
    assert!(sheets.contains(",\"liquid.1\",\"liquid.1\",") && sheets.lines().any(|line| line.ends_with(",310")));
    assert!(!boards_csv(&trial, DecimalMark::Point).contains("dose.1"));
}

/// Date, trial and recipe are in each row, each board names the revision it was made with, and the base sheet's weighings
/// go out beside those of the runs; read back by a library.
#[test]
fn tables_say_what_they_are_of() {
    let mut trial = sample();
    trial.saved_at = 1_764_288_000_000;
    trial.keep_made();
    let made_with = trial.revision.unwrap().to_string();
    trial.revision = None;
    trial.recipe_name = "Another".to_owned();
    trial.batch_mut(None, 1).unwrap().entry_mut(LineId::Fibre).unwrap().text = "961+21".to_owned();
    let rows = |text: String| -> Vec<std::collections::HashMap<String, String>> {
        let text = text.strip_prefix('\u{feff}').unwrap().to_owned();
        csv::Reader::from_reader(text.as_bytes()).deserialize().map(Result::unwrap).collect()
    };
    let boards = rows(boards_csv(&trial, DecimalMark::Point));
    for row in &boards {
        assert!(row["saved"].starts_with("2025-11-28"), "{row:?}");
        assert_eq!((row["recipe"].as_str(), row["revision"].as_str()), ("Straw 16", made_with.as_str()));
    }
    let sheets = rows(sheets_csv(&trial, DecimalMark::Point, |id, _| id.key()));
    let weighed = |run: &str, batch: &str| {
        let own = sheets.iter().find(|row| row["run"] == run && row["batch"] == batch && row["line"] == "fibre");
        own.unwrap()["weighed [g]"].clone()
    };
    assert_eq!((weighed("", "1").as_str(), weighed("1", "2").as_str()), ("982", "1750"));
    assert!(sheets.iter().all(|row| row["trial"] == trial.name && row["saved"].starts_with("2025-11-28")));
    assert!(!rows(readings_csv(&trial, DecimalMark::Point)).is_empty());
    trial.revision_number = Some(7);
    let numbered = rows(sheets_csv(&trial, DecimalMark::Point, |id, _| id.key()));
    let number = |run: &str| numbered.iter().find(|row| row["run"] == run).unwrap()["revision_number"].clone();
    assert_eq!((number("").as_str(), number("2").as_str()), ("7", "7"), "what is not made yet is of the open revision");
    assert_eq!(number("1"), "", "what was made keeps its own, which had no number");
    let json: Value = serde_json::from_str(&trial.file().unwrap()).unwrap();
    assert!(json["saved"].as_str().unwrap().starts_with("2025-11-28"));
    assert_eq!((&json["revision_number"], &json["name"]), (&json!(7), &json!(trial.name)));
    let count = words::bench::board_count;
    assert_eq!((count(0).as_str(), count(1).as_str(), count(2).as_str()), ("0 boards", "1 board", "2 boards"));
}

/// A slip in the plan, or no plan any more: what was weighed goes out as it was planned then.
#[test]
fn weighings_go_out_whatever_becomes_of_the_plan() {
    let mut trial = sample();
    trial.keep_made();
    let weighed = |trial: &TrialContent| {
        let text = sheets_csv(trial, DecimalMark::Point, |id, _| id.key());
        let text = text.strip_prefix('\u{feff}').unwrap().to_owned();
        let rows: Vec<std::collections::HashMap<String, String>> =
            csv::Reader::from_reader(text.as_bytes()).deserialize().map(Result::unwrap).collect();
        let own = rows.into_iter().find(|row| row["run"] == "1" && row["batch"] == "2" && row["line"] == "fibre");
        own.map(|row| (row["weighed [g]"].clone(), row["exact [g]"].clone()))
    };
    let before = weighed(&trial).unwrap();
    assert_eq!(before.0, "1750");
    trial.series.as_mut().unwrap().factors[0].levels[0].value.text = "ten".to_owned();
    trial.keep_made();
    assert_eq!(weighed(&trial), Some(before.clone()));
    trial.series = None;
    trial.keep_made();
    assert_eq!(weighed(&trial), Some(before));
}

/// Mean, SD and the quantile on its side, by combination and by run, with what was required and by whom.
#[test]
fn results_by_combination_and_run() {
    let mut trial = sample();
    trial.name = "Lots".to_owned();
    trial.saved_at = 1_764_288_000_000;
    trial.revision_number = Some(4);
    let mut series = crate::series::own_factors();
    series.replicates.text = "2".to_owned();
    trial.series = Some(series);
    let planned = trial.planned().unwrap();
    let first = planned.run(1).unwrap().levels.clone();
    let pair: Vec<u16> = planned.runs.iter().filter(|run| run.levels == first).map(|run| run.place).collect();
    assert_eq!(pair.len(), 2);
    let board = |id: u16, place: u16, load: &str, after: &str| {
        let mut board = haulm::domain::trial::BoardDraft { id: BoardId(id), run: Some(place), ..tested() };
        board.bond[0].load.text = load.to_owned();
        board.swelling[0].after.text = after.to_owned();
        board
    };
    trial.boards = vec![board(1, pair[0], "1375", "17.92"), board(2, pair[1], "1400", "18.08")];
    trial.weighed.clear();
    trial.requirements = RequirementSet::FibreboardDry.requirements();
    trial.required_by = "EN 622-5".to_owned();
    trial.keep_made();
    for mark in [DecimalMark::Point, DecimalMark::Comma] {
        let text = results_csv(&trial, mark);
        let text = text.strip_prefix('\u{feff}').unwrap();
        let separator = if mark == DecimalMark::Comma { b';' } else { b',' };
        let rows: Vec<std::collections::HashMap<String, String>> = csv::ReaderBuilder::new()
            .delimiter(separator)
            .from_reader(text.as_bytes())
            .deserialize()
            .map(Result::unwrap)
            .collect();
        let find = |by: &str, property: &str| -> Vec<&std::collections::HashMap<String, String>> {
            rows.iter().filter(|row| row["grouped_by"] == by && row["property"] == property).collect()
        };
        let number = |cell: &str| cell.replace(',', ".").parse::<f64>().unwrap();
        let [bond] = find("combination", "internal_bond")[..] else { panic!("{text}") };
        // By hand: 1375 N and 1400 N over 50 mm · 50 mm; SD 0.01/√2; t(0.95; 1) = 6.313752.
        let (mean, sd) = (0.555, 0.01 / 2.0_f64.sqrt());
        assert!((number(&bond["mean"]) - mean).abs() < 1e-9 && (number(&bond["sd_between_boards"]) - sd).abs() < 1e-9);
        assert!((number(&bond["quantile_95"]) - (mean - 6.313_752 * sd)).abs() < 1e-6);
        assert_eq!((bond["tail"].as_str(), bond["boards"].as_str(), bond["unit"].as_str()), ("lower", "2", "N/mm²"));
        assert_eq!((bond["required_by"].as_str(), bond["required_value"].as_str()), ("EN 622-5", "unverified"));
        assert_eq!((number(&bond["required"]), bond["met"].as_str()), (0.55, "no"));
        let [swelling] = find("combination", "swelling")[..] else { panic!("{text}") };
        assert_eq!(swelling["tail"], "upper");
        assert!(number(&swelling["quantile_95"]) > number(&swelling["mean"]));
        let [density] = find("combination", "density")[..] else { panic!("{text}") };
        assert_eq!((density["tail"].as_str(), density["quantile_95"].as_str()), ("", ""));
        assert!(!density["target"].is_empty());
        let heat = if first[1] == 0 { "180" } else { "200" };
        let lot = if first[2] == 0 { "A" } else { "B" };
        assert_eq!((bond["B Press temperature [°C]"].as_str(), bond["C Fibre lot"].as_str()), (heat, lot));
        let runs = find("run", "internal_bond");
        assert_eq!(runs.iter().map(|row| number(&row["run"]) as u16).collect::<Vec<_>>(), pair);
        assert!(runs.iter().all(|row| row["quantile_95"].is_empty() && row["revision_numbers"] == "4"));
        assert!(rows.iter().all(|row| row["trial"] == "Lots" && row["saved"].starts_with("2025-11-28")));
    }
    // A value that is typed is no longer unverified.
    trial.requirements[2].value = Entry::typed("0.5", Unit::NewtonPerSquareMillimetre);
    let text = results_csv(&trial, DecimalMark::Point);
    assert!(text.contains("\"EN 622-5\",\"typed\",\"yes\""), "{text}");
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, failure_persistence: None, ..ProptestConfig::default() })]

    /// A file with one part replaced is refused or taken, and what is taken brings nothing down: not the tables,
    /// not the sheets.
    #[test]
    fn a_file_with_one_part_replaced(pick in any::<usize>(), part in json_value()) {
        let value: Value = serde_json::from_str(&sample().file().unwrap()).unwrap();
        let value = with_part_replaced(value, pick, part);
        if let Ok(trial) = TrialContent::read_file(&value.to_string()) {
            let again = TrialContent::read_file(&trial.file().unwrap());
            prop_assert_eq!(again.as_ref(), Ok(&trial));
            for table in [boards_csv(&trial, DecimalMark::Point), readings_csv(&trial, DecimalMark::Point), results_csv(&trial, DecimalMark::Point), sheets_csv(&trial, DecimalMark::Point, |id, _| id.key())] {
                prop_assert!(!table.contains("NaN") && !table.contains("inf,"));
            }
        }
    }
}

/// README says what a record takes of the browser's room.
#[test]
fn a_trial_of_two_boards_takes_about_eight_kilobytes() {
    let size = sample().seal(None, stamp(2)).unwrap().text().len();
    assert!((7_200..8_800).contains(&size), "{size}");
}
