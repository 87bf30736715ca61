//! Boards made: raw readings, and what the standards' formulas make of each.

use super::desk::Desk;
use super::parts::{act, board_label, board_told, cell, choose, group, numbered, shown, text_box};
use super::tested;
use crate::browser::element::{Part, View, each, el, many};
use crate::browser::graph::*;
use crate::domain::Entry;
use crate::domain::trial::boards::board::{MAX_PIECES, free_id};
use crate::domain::trial::boards::field::{BoardField, BoardTest};
use crate::domain::trial::boards::measured::MeasuredBoard;
use crate::domain::trial::boards::working::{BoardFigure, board_working};
use crate::domain::trial::{BoardDraft, BoardId};
use crate::quantity::Unit;
use crate::record::content::trial::TrialContent;
use crate::ui::field::loose::{self, LooseBox};
use crate::ui::signal::{RwSignal, Signal, memo};
use crate::ui::state::State;
use crate::ui::text::FieldWords;

/// The figures of one piece, by its place from 0.
fn piece_figures(test: BoardTest, at: u8) -> Vec<BoardFigure> {
    match test {
        BoardTest::Density => {
            vec![BoardFigure::Density(at), BoardFigure::Moisture(at), BoardFigure::OvenDryDensity(at)]
        }
        BoardTest::Bending => vec![BoardFigure::BendingStrength(at), BoardFigure::BendingModulus(at)],
        BoardTest::Bond => vec![BoardFigure::InternalBond(at)],
        BoardTest::Swelling => vec![BoardFigure::Swelling(at)],
    }
}

const fn test_title(test: BoardTest, state: State) -> &'static str {
    let page = &state.words.bench_page;
    match test {
        BoardTest::Density => page.density_pieces,
        BoardTest::Bending => page.bending_pieces,
        BoardTest::Bond => page.bond_pieces,
        BoardTest::Swelling => page.swelling_pieces,
    }
}

fn find(trial: &TrialContent, id: BoardId) -> Option<&BoardDraft> {
    trial.boards.iter().find(|board| board.id == id)
}

fn change(state: State, id: BoardId, change: impl FnOnce(&mut BoardDraft)) {
    state.bench.edit(|trial| {
        if let Some(board) = trial.boards.iter_mut().find(|board| board.id == id) {
            change(board);
        }
    });
}

/// What a board is called.
pub fn name(state: State, board: &BoardDraft) -> String {
    let page = &state.words.bench_page;
    let name = match board.name.trim() {
        "" => board.id.0.to_string(),
        name => name.to_owned(),
    };
    match board.run {
        Some(run) => format!("{} {name}, {} {run}", page.board, page.run.to_lowercase()),
        None => format!("{} {name}", page.board),
    }
}

/// The section.
pub fn boards(desk: Desk) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let bench = state.bench;
    let ids =
        memo(move || bench.open.with(|open| open.trial.boards.iter().map(|board| board.id.0).collect::<Vec<u16>>()));
    let none = move || ids.with(Vec::is_empty);
    let fresh = RwSignal::new(false);
    let add = move || {
        fresh.set(true);
        let (run, _) = untrack(|| bench.place());
        bench.edit(|trial| {
            let id = free_id(&trial.boards);
            trial.boards.push(BoardDraft { run, ..BoardDraft::blank(id) });
        });
    };
    let add_all = move || {
        fresh.set(false);
        let runs = desk.planned.with_untracked(|planned| planned.sheets.len());
        bench.edit(|trial| {
            for run in (1..=u16::MAX).take(runs) {
                if !trial.boards.iter().any(|board| board.run == Some(run)) {
                    let id = free_id(&trial.boards);
                    trial.boards.push(BoardDraft { run: Some(run), ..BoardDraft::blank(id) });
                }
            }
        });
    };
    let in_series = memo(move || desk.planned.with(|planned| !planned.sheets.is_empty()));
    // The only board stands open, as does one just added; of many each is opened when it is wanted.
    let rows = each(
        move || ids.get(),
        u16::to_string,
        move |id| board(desk, BoardId(id), fresh.get_untracked() || ids.with_untracked(Vec::len) == 1),
    );
    el("div")
        .class("boards")
        .child(el("p").child(page.boards_hint))
        .child(el("p").class("empty").set("hidden", move || !none()).child(page.no_boards))
        .child(rows)
        .child(
            el("div")
                .class("actions")
                .child(act(page.add_board, add))
                .child(move || in_series.get().then(|| act(page.a_board_a_run, add_all))),
        )
        .child(move || desk.tested.with(|all| (!all.results.is_empty()).then(|| tested::results(desk, all))))
        .child(tested::requirements(state))
        .child(move || desk.tested.with(|all| tested::said(desk, all)))
        .view()
}

fn board(desk: Desk, id: BoardId, open: bool) -> View {
    let state = desk.state;
    let made = RwSignal::new(open);
    let title = memo(move || {
        state.bench.open.with(|open| find(&open.trial, id).map_or_else(String::new, |board| name(state, board)))
    });
    el("details")
        .class("board")
        .set("open", open)
        .on("toggle", move |_| {
            if !made.get_untracked() {
                made.set(true);
            }
        })
        .child(el("summary").child(move || title.get()))
        .child(move || made.get().then(|| untrack(|| inside(desk, id))))
        .view()
}

fn inside(desk: Desk, id: BoardId) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let bench = state.bench;
    let number = id.0;
    let remove = move || {
        let before = bench.open.get_untracked();
        bench.edit(|trial| trial.boards.retain(|board| board.id != id));
        state.tell_undo(page.board_removed, move || bench.load(before.clone()));
    };
    let runs = memo(move || {
        let runs = desk.planned.with(|planned| planned.sheets.len());
        let runs = (1..=runs).map(|at| format!("{} {at}", page.run));
        numbered(std::iter::once(page.no_series_run.to_owned()).chain(runs))
    });
    let finishes = Signal::stored(numbered([page.unsanded, page.sanded].map(str::to_owned)));
    let points = memo(move || bench.open.with(|open| find(&open.trial, id).map_or(0, |board| board.thickness.len())));
    let point = move |at: usize| {
        let at = u8::try_from(at).unwrap_or(u8::MAX);
        let words = (state.words.bench.board_field)(BoardField::Thickness(at));
        number_box(state, id, BoardField::Thickness(at), Some(format!("{}, {} {}", words.label, page.point, at + 1)))
    };
    let add_point = move || {
        change(state, id, |board| {
            if board.thickness.len() < MAX_PIECES {
                board.thickness.push(Entry::empty(Unit::Millimetre));
            }
        });
    };
    let thickness = (state.words.bench.board_field)(BoardField::Thickness(0));
    many([
        el("div")
            .class("fields")
            .child(text_box(
                state,
                format!("board-name-{number}"),
                page.board_name,
                move |trial| find(trial, id).map(|board| board.name.clone()).unwrap_or_default(),
                move |trial, name| {
                    if let Some(board) = trial.boards.iter_mut().find(|board| board.id == id) {
                        board.name = name;
                    }
                },
            ))
            .child(choose(
                state,
                &format!("board-run-{number}"),
                page.run,
                runs,
                move |trial| find(trial, id)?.run.map(usize::from),
                move |trial, at| {
                    if let Some(board) = trial.boards.iter_mut().find(|board| board.id == id) {
                        board.run = u16::try_from(at).ok().filter(|run| *run > 0);
                    }
                },
            ))
            .child(choose(
                state,
                &format!("board-sanded-{number}"),
                page.finish,
                finishes,
                move |trial| find(trial, id).map(|board| usize::from(board.sanded)),
                move |trial, at| {
                    if let Some(board) = trial.boards.iter_mut().find(|board| board.id == id) {
                        board.sanded = at == 1;
                    }
                },
            ))
            .child(text_box(
                state,
                format!("board-note-{number}"),
                page.note,
                move |trial| find(trial, id).map(|board| board.note.clone()).unwrap_or_default(),
                move |trial, note| {
                    if let Some(board) = trial.boards.iter_mut().find(|board| board.id == id) {
                        board.note = note;
                    }
                },
            ))
            .view(),
        group(
            page.whole,
            many([
                el("div")
                    .class("fields")
                    .child(
                        [
                            BoardField::Laid,
                            BoardField::Mass,
                            BoardField::Length,
                            BoardField::Width,
                            BoardField::Moisture,
                        ]
                        .map(|field| number_box(state, id, field, None)),
                    )
                    .view(),
                el("p").class("note").child(thickness.label).text(". ").child(thickness.hint).view(),
                el("div")
                    .class("readings-of-piece")
                    .child(each(move || (0..points.get()).collect(), usize::to_string, point))
                    .view(),
                el("div").class("actions").child(act(page.add_point, add_point)).view(),
                (move || figures(desk, id, &[BoardFigure::WholeDensity])).view(),
            ]),
        ),
        BoardTest::ALL.iter().map(|test| pieces(desk, id, *test)).collect::<View>(),
        (move || desk.tested.with(|all| all.boards.iter().find(|b| b.id == id).map(|b| tested::profile(desk, b))))
            .view(),
        el("div").class("actions").child(act(page.remove_board, remove)).view(),
    ])
}

fn pieces(desk: Desk, id: BoardId, test: BoardTest) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let count = memo(move || state.bench.open.with(|open| find(&open.trial, id).map_or(0, |board| board.count(test))));
    let piece = move |at: usize| {
        let number = at + 1;
        let at = u8::try_from(at).unwrap_or(u8::MAX);
        let fields = test.fields(at).into_iter().map(|field| number_box(state, id, field, None)).collect::<View>();
        el("fieldset")
            .class("piece")
            .child(el("legend").child(format!("{} {number}", page.piece)))
            .child(el("div").class("readings-of-piece").child(fields))
            .child(move || figures(desk, id, &piece_figures(test, at)))
    };
    group(
        test_title(test, state),
        many([
            each(move || (0..count.get()).collect(), usize::to_string, piece),
            el("div")
                .class("actions")
                .child(act(page.add_piece, move || change(state, id, |board| board.add_piece(test))))
                .child(move || {
                    (count.get() > 0)
                        .then(|| act(page.remove_piece, move || change(state, id, |board| board.remove_piece(test))))
                })
                .view(),
        ]),
    )
}

/// A box of a board.
fn number_box(state: State, id: BoardId, field: BoardField, named: Option<String>) -> View {
    let words = (state.words.bench.board_field)(field);
    // What several boxes have in common stands above them.
    let words = FieldWords { hint: if named.is_some() { "" } else { words.hint }, ..words };
    loose::number(LooseBox {
        key: format!("{}.{}", field.key(), id.0),
        words,
        named,
        kind: field.kind(),
        limit: field.limit(),
        entry: memo(move || {
            let typed =
                state.bench.open.with(|open| find(&open.trial, id).and_then(|board| board.entry(field)).cloned());
            typed.unwrap_or_else(|| Entry::empty(Unit::Millimetre))
        }),
        put: Callback::new(move |entry| {
            change(state, id, |board| {
                if let Some(place) = board.entry_mut(field) {
                    *place = entry;
                }
            });
        }),
    })
}

/// Figures of a board that it gives.
fn figures(desk: Desk, id: BoardId, target: &[BoardFigure]) -> Option<View> {
    desk.tested.with(|all| {
        let board = all.boards.iter().find(|board| board.id == id)?;
        let cells: Vec<View> = target.iter().filter_map(|figure| figure_cell(desk, board, *figure)).collect();
        (!cells.is_empty()).then(|| el("dl").class("figures").child(cells).view())
    })
}

fn figure_cell(desk: Desk, board: &MeasuredBoard, figure: BoardFigure) -> Option<View> {
    let state = desk.state;
    let working = board_working(figure, board)?;
    let finite = working.result.base.is_finite();
    let note = (state.words.bench.board_figure)(figure).note;
    let value = shown(state, figure.kind(), working.result.base);
    let key = format!("board.{}.{}", board.id.0, figure_key(figure));
    let worked = Box::new(move || Some(board_told(state, &working)));
    finite.then(|| cell(state, &key, (board_label(state, figure), note), value, false, Some(worked)))
}

fn figure_key(figure: BoardFigure) -> String {
    match figure {
        BoardFigure::WholeDensity => "whole".to_owned(),
        BoardFigure::Density(at) => format!("density.{at}"),
        BoardFigure::Moisture(at) => format!("moisture.{at}"),
        BoardFigure::OvenDryDensity(at) => format!("dry.{at}"),
        BoardFigure::BendingStrength(at) => format!("mor.{at}"),
        BoardFigure::BendingModulus(at) => format!("moe.{at}"),
        BoardFigure::InternalBond(at) => format!("bond.{at}"),
        BoardFigure::Swelling(at) => format!("swelling.{at}"),
        _ => String::new(),
    }
}
