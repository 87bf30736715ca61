//! How far a series has come: of each run what is weighed, pressed and tested.

use crate::domain::trial::boards::field::BoardTest;
use crate::domain::trial::series::material::RunSheet;
use crate::domain::trial::{BoardDraft, BoardId, WeighSheet};
use crate::record::content::trial::{MadeBoardRecord, MadeRunRecord, TrialContent};

/// How far a run has come.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct RunProgress {
    /// Its place in the run order, from 1.
    pub place: u16,
    /// Whether it keeps its levels: something of it is weighed or measured.
    pub is_fixed: bool,
    /// How many batches are weighed whole.
    pub weighed: u32,
    /// Of how many.
    pub batches: u32,
    /// The batch to weigh next, from 1; `None` when all are weighed.
    pub next_batch: Option<u16>,
    /// How many boards were pressed: those with a mass or a size.
    pub pressed: u32,
    /// How many boards have a test piece measured.
    pub tested: u32,
    /// How many boards are planned, or there where there are more.
    pub boards: u32,
}

impl RunProgress {
    /// Whether the run is still to be weighed: boards can also be entered without any weighing.
    #[must_use]
    pub const fn is_open(&self) -> bool {
        self.next_batch.is_some() && self.pressed < self.boards
    }
}

/// A board that was removed, with what it was made with.
#[derive(Debug, Clone)]
pub struct RemovedBoard {
    at: usize,
    board: BoardDraft,
    made_board: Option<MadeBoardRecord>,
    made_run: Option<MadeRunRecord>,
}

/// Whether a board has a test piece measured.
fn is_tested(board: &BoardDraft) -> bool {
    BoardTest::ALL.iter().any(|test| !board.begun_pieces(*test).is_empty())
}

fn count(boards: impl Iterator) -> u32 {
    u32::try_from(boards.count()).unwrap_or(u32::MAX)
}

impl TrialContent {
    /// Of each run how far it has come, in run order.
    #[must_use]
    pub fn progress(&self, runs: &[RunSheet]) -> Vec<RunProgress> {
        let one = |own: &RunSheet| {
            let place = own.run.place;
            let boards = || self.boards.iter().filter(|board| board.run == Some(place));
            let planned = own.sheet.as_ref().map_or(0, |sheet| sheet.plan.boards);
            let batches = own.sheet.as_ref().map_or(0, |sheet| sheet.batches);
            let is_weighed =
                |batch: &u16| own.sheet.as_ref().is_some_and(|sheet| self.is_weighed(sheet, place, *batch));
            let all = || (1..=u16::MAX).take(usize::try_from(batches).unwrap_or(usize::MAX));
            RunProgress {
                place,
                is_fixed: own.run.made.is_some(),
                weighed: count(all().filter(is_weighed)),
                batches,
                next_batch: all().find(|batch| !is_weighed(batch)),
                pressed: count(boards().filter(|board| board.is_measured())),
                tested: count(boards().filter(|board| is_tested(board))),
                boards: planned.max(count(boards())),
            }
        };
        runs.iter().map(one).collect()
    }

    /// Whether every line of a run's batch has a mass.
    fn is_weighed(&self, sheet: &WeighSheet, run: u16, batch: u16) -> bool {
        self.batch(Some(run), batch).is_some_and(|lines| {
            sheet.lines.iter().all(|line| lines.entry(line.id).is_some_and(|mass| !mass.is_blank()))
        })
    }

    /// Takes a board out. What it was made with goes with it, so that it comes back as it was.
    pub fn remove_board(&mut self, id: BoardId) -> Option<RemovedBoard> {
        let at = self.boards.iter().position(|board| board.id == id)?;
        let board = self.boards.remove(at);
        let made_board = self.made_boards.iter().find(|record| record.board == id).cloned();
        let made_run = board.run.and_then(|run| self.made_run(run)).cloned();
        Some(RemovedBoard { at, board, made_board, made_run })
    }

    /// Puts a board back that was taken out.
    pub fn put_back_board(&mut self, removed: &RemovedBoard) {
        let RemovedBoard { at, board, made_board, made_run } = removed;
        if self.board(board.id).is_some() {
            return;
        }
        self.boards.insert((*at).min(self.boards.len()), board.clone());
        if let Some(record) = made_board
            && !self.made_boards.iter().any(|own| own.board == record.board)
        {
            self.made_boards.push(record.clone());
        }
        if let Some(record) = made_run
            && self.made_run(record.run.place).is_none()
        {
            self.made_runs.push(record.clone());
        }
    }
}
