//! Grids of boards and test pieces: what is carried down a column, a pasted column with one Undo, boards taken out and put
//! back, and how far the runs of a series have come.

use crate::sample::{bare_sheet, recipe};
use crate::series::dose_and_density;
use haulm::domain::Entry;
use haulm::domain::trial::boards::field::{BoardField, BoardTest, BondField, SwellingField};
use haulm::domain::trial::boards::measured::measure;
use haulm::domain::trial::weigh_sheet::weighing::WeighedDraft;
use haulm::domain::trial::{BoardDraft, BoardId};
use haulm::quantity::Unit;
use haulm::record::TrialContent;
use haulm::record::content::trial::field::TrialField;

const ID: BoardId = BoardId(1);

fn bond(at: u8, field: BondField) -> BoardField {
    BoardField::Bond(at, field)
}

fn of_board(field: BoardField) -> TrialField {
    TrialField::Board(ID, field)
}

fn millimetres(text: &str) -> Entry {
    Entry::typed(text, Unit::Millimetre)
}

fn newtons(text: &str) -> Entry {
    Entry::typed(text, Unit::Newton)
}

fn trial() -> TrialContent {
    let mut trial = TrialContent::of("Straw 16".to_owned(), recipe(), None);
    trial.sheet = bare_sheet();
    trial.boards.push(BoardDraft::blank(ID));
    trial
}

fn board(trial: &TrialContent) -> &BoardDraft {
    trial.board(ID).unwrap()
}

#[test]
fn the_row_below_the_last_piece_makes_the_next_one() {
    let mut trial = trial();
    trial.enter(of_board(bond(0, BondField::Length)), millimetres("50"));
    trial.enter(of_board(bond(0, BondField::Width)), millimetres("50"));
    trial.enter(of_board(bond(0, BondField::Load)), newtons("1042"));
    assert_eq!(board(&trial).count(BoardTest::Bond), 1);
    // The row for the second piece shows what it will begin with, but is none yet.
    assert_eq!(board(&trial).entry_shown(bond(1, BondField::Length)), Entry::preset("50", Unit::Millimetre));
    assert!(board(&trial).entry_shown(bond(1, BondField::Load)).is_blank());
    trial.enter(of_board(bond(1, BondField::Load)), newtons("1135"));
    assert_eq!(board(&trial).count(BoardTest::Bond), 2);
    let pieces = measure(board(&trial)).board.bond;
    assert_eq!(pieces.len(), 2);
    assert!((pieces[1].1.strength().value - 1135.0 / 0.0025).abs() < 1e-6);
    // Two rows further down there is nothing to type into.
    trial.enter(of_board(bond(4, BondField::Load)), newtons("1"));
    assert_eq!(board(&trial).count(BoardTest::Bond), 2);
}

#[test]
fn a_length_is_carried_down_until_one_is_typed() {
    let mut trial = trial();
    for at in 0..4 {
        trial.enter(of_board(bond(at, BondField::Load)), newtons("1000"));
    }
    trial.enter(of_board(bond(2, BondField::Length)), millimetres("49"));
    trial.enter(of_board(bond(0, BondField::Length)), millimetres("50"));
    let lengths: Vec<(String, bool)> = (0..4)
        .map(|at| {
            let entry = board(&trial).entry_shown(bond(at, BondField::Length));
            (entry.text, entry.preset)
        })
        .collect();
    let expected = [("50", false), ("50", true), ("49", false), ("49", true)];
    assert_eq!(lengths, expected.map(|(text, preset)| (text.to_owned(), preset)));
    // What is cleared above is cleared below, and what is typed stays.
    trial.enter(of_board(bond(0, BondField::Length)), millimetres(""));
    assert!(board(&trial).entry_shown(bond(1, BondField::Length)).is_blank());
    assert_eq!(board(&trial).entry_shown(bond(2, BondField::Length)).text, "49");
    // A load is each piece's own.
    assert!(board(&trial).entry_shown(bond(4, BondField::Load)).is_blank());
}

#[test]
fn what_was_only_carried_down_is_no_reading() {
    let mut board = BoardDraft::blank(ID);
    board.enter(bond(0, BondField::Length), millimetres("50"));
    board.add_piece(BoardTest::Bond);
    assert_eq!(board.begun_pieces(BoardTest::Bond), [0]);
    board.enter(bond(0, BondField::Length), millimetres(""));
    assert!(!board.has_readings());
    assert_eq!(measure(&board).findings, []);
}

#[test]
fn a_pasted_column_makes_its_pieces_and_is_taken_back_as_one() {
    let mut trial = trial();
    trial.enter(of_board(bond(0, BondField::Length)), millimetres("50"));
    trial.enter(of_board(bond(0, BondField::Width)), millimetres("50"));
    trial.enter(of_board(bond(0, BondField::Load)), newtons("999"));
    let before = trial.clone();
    let loads = ["1042", "1135", "986", "1078", "1121", "949", "1063", "1010"];
    let cells = (0_u8..).zip(loads).map(|(at, load)| (of_board(bond(at, BondField::Load)), newtons(load)));
    let column = trial.enter_column(cells.collect());
    assert_eq!(board(&trial).count(BoardTest::Bond), 8);
    let strengths: Vec<f64> =
        measure(board(&trial)).board.bond.iter().map(|(_, piece)| piece.strength().value).collect();
    // Figures of the sketch: 1042 N over 50 mm by 50 mm is 0.417 N/mm²; the mean of the eight is 0.419.
    assert!((strengths[0] / 1e6 - 0.4168).abs() < 1e-9);
    assert!((strengths.iter().sum::<f64>() / 8e6 - 0.4192).abs() < 5e-5);
    trial.take_back_column(&column);
    assert_eq!(trial, before);
    // What was typed into a pasted piece meanwhile stays.
    let cells = (0_u8..).zip(loads).map(|(at, load)| (of_board(bond(at, BondField::Load)), newtons(load)));
    let column = trial.enter_column(cells.collect());
    trial.enter(of_board(bond(3, BondField::Width)), millimetres("48"));
    trial.take_back_column(&column);
    assert_eq!(board(&trial).count(BoardTest::Bond), 4);
    assert_eq!(board(&trial).entry_shown(bond(3, BondField::Width)).text, "48");
    assert_eq!(board(&trial).entry_shown(bond(0, BondField::Load)).text, "999");
}

#[test]
fn the_last_piece_comes_back_as_it_was() {
    let mut board = BoardDraft::blank(ID);
    board.enter(BoardField::Swelling(0, SwellingField::Before), millimetres("12.35"));
    let before = board.clone();
    board.remove_piece(BoardTest::Swelling);
    assert_eq!(board.count(BoardTest::Swelling), 0);
    board.put_back_last_piece(BoardTest::Swelling, &before);
    assert_eq!(board, before);
    board.put_back_last_piece(BoardTest::Swelling, &before);
    assert_eq!(board, before, "it comes back once");
}

fn series() -> TrialContent {
    let mut trial = TrialContent::of("Straw 16".to_owned(), recipe(), None);
    trial.sheet = bare_sheet();
    trial.series = Some(dose_and_density());
    trial
}

#[test]
fn a_board_comes_back_with_what_it_was_made_with() {
    let mut trial = series();
    trial.boards.push(BoardDraft { run: Some(2), ..BoardDraft::blank(ID) });
    trial.enter(of_board(BoardField::Mass), Entry::typed("2000", Unit::Gram));
    trial.keep_made();
    let levels = trial.made_runs.clone();
    assert_eq!(levels.len(), 1);
    let removed = trial.remove_board(ID).unwrap();
    trial.keep_made();
    assert!(trial.made_runs.is_empty());
    // Meanwhile the plan changes, which would give the run other levels.
    trial.series.as_mut().unwrap().seed = Entry::typed("77", Unit::One);
    trial.keep_made();
    trial.put_back_board(&removed);
    trial.keep_made();
    assert_eq!(trial.made_runs, levels);
    trial.put_back_board(&removed);
    assert_eq!(trial.boards.len(), 1, "it comes back once");
}

#[test]
fn the_progress_of_a_run_counts_batches_and_boards() {
    let mut trial = series();
    let planned = trial.basis().plan();
    let lines: Vec<_> = planned.sheets[0].sheet.as_ref().unwrap().lines.iter().map(|line| line.id).collect();
    assert!(lines.len() > 1);
    let progress = |trial: &TrialContent| trial.progress(&trial.basis().plan().sheets);
    let fresh = progress(&trial);
    assert_eq!(fresh.len(), 4);
    assert!(fresh.iter().all(|run| run.is_open() && !run.is_fixed && run.weighed == 0 && run.next_batch == Some(1)));
    // One line weighed of the first run: begun, and not weighed yet.
    let weigh = |trial: &mut TrialContent, line| {
        let mass = Entry::typed("10", Unit::Gram);
        trial.batch_mut(Some(1), 1).unwrap().lines.push(WeighedDraft { line, mass, answer: Default::default() });
        trial.keep_made();
    };
    weigh(&mut trial, lines[0]);
    assert_eq!((progress(&trial)[0].weighed, progress(&trial)[0].is_fixed), (0, true));
    for line in &lines[1..] {
        weigh(&mut trial, *line);
    }
    let weighed = progress(&trial)[0];
    assert_eq!((weighed.weighed, weighed.next_batch, weighed.is_open()), (1, None, false));
    trial.boards.push(BoardDraft { run: Some(2), ..BoardDraft::blank(ID) });
    assert_eq!((progress(&trial)[1].pressed, progress(&trial)[1].tested), (0, 0));
    trial.enter(of_board(BoardField::Mass), Entry::typed("2000", Unit::Gram));
    trial.enter(of_board(bond(0, BondField::Load)), newtons("900"));
    let second = progress(&trial)[1];
    assert_eq!((second.pressed, second.tested, second.boards), (1, 1, 1));
    assert!(!second.is_open(), "its board is there, weighed or not");
}
