//! The boxes of a trial: which each is, what it holds, and typing into it.

use crate::domain::Entry;
use crate::domain::recipe::limit::Limit;
use crate::domain::trial::boards::field::BoardField;
use crate::domain::trial::boards::requirement_set::requirement_unit;
use crate::domain::trial::boards::target::{RequirementDraft, requirement_limit};
use crate::domain::trial::series::field::SeriesField;
use crate::domain::trial::{BoardDraft, BoardId, Property, TrialPlace, WeighField};
use crate::quantity::{Kind, Unit};
use crate::record::content::trial::TrialContent;

/// A box of a trial.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum TrialField {
    /// Of the weigh sheet.
    Sheet(WeighField),
    /// Of the series.
    Series(SeriesField),
    /// Of a board.
    Board(BoardId, BoardField),
    /// What is required of a property.
    Required(Property),
}

impl TrialField {
    /// The stable key of the box, as `data-field` on the page.
    #[must_use]
    pub fn key(self) -> String {
        match self {
            Self::Sheet(field) => field.box_key(),
            Self::Series(field) => field.key(),
            Self::Board(id, field) => format!("{}.{}", field.key(), id.0),
            Self::Required(property) => format!("required.{}", property.key()),
        }
    }
}

impl TrialField {
    /// Where what is found about it belongs.
    #[must_use]
    pub const fn place(self) -> TrialPlace {
        match self {
            Self::Sheet(field) => TrialPlace::Field(field),
            Self::Series(field) => TrialPlace::Series(field),
            Self::Board(id, field) => TrialPlace::Board(id, field),
            Self::Required(property) => TrialPlace::Property(property),
        }
    }
}

/// What boxes held before a column was entered into them; a test piece that was not there held nothing.
#[derive(Debug, Clone)]
pub struct ColumnBefore(Vec<(TrialField, Option<Entry>)>);

impl TrialContent {
    /// The board with that number.
    #[must_use]
    pub fn board(&self, id: BoardId) -> Option<&BoardDraft> {
        self.boards.iter().find(|board| board.id == id)
    }

    /// The board with that number, to change.
    pub fn board_mut(&mut self, id: BoardId) -> Option<&mut BoardDraft> {
        self.boards.iter_mut().find(|board| board.id == id)
    }

    /// What a box measures.
    #[must_use]
    pub fn kind(&self, field: TrialField) -> Kind {
        match field {
            TrialField::Sheet(field) => field.kind(),
            TrialField::Series(field) => {
                self.series.as_ref().map_or(Kind::Ratio, |series| series.kind(field, &self.draft))
            }
            TrialField::Board(_, field) => field.kind(),
            TrialField::Required(property) => property.kind(),
        }
    }

    /// What a box may hold.
    #[must_use]
    pub fn limit(&self, field: TrialField) -> Option<Limit> {
        match field {
            TrialField::Sheet(field) => Some(self.sheet.limit(field)),
            TrialField::Series(field) => self.series.as_ref().map(|series| series.limit(field, &self.draft)),
            TrialField::Board(_, field) => Some(field.limit()),
            TrialField::Required(property) => Some(requirement_limit(property)),
        }
    }

    /// What a box shows.
    #[must_use]
    pub fn entry(&self, field: TrialField) -> Entry {
        match field {
            TrialField::Sheet(field) => self.sheet.entry(field).clone(),
            TrialField::Series(field) => {
                let typed = self.series.as_ref().and_then(|series| series.entry(field)).cloned();
                typed.unwrap_or_else(|| Entry::empty(Unit::One))
            }
            TrialField::Board(id, field) => {
                self.board(id).map_or_else(|| Entry::empty(field.limit().unit), |board| board.entry_shown(field))
            }
            TrialField::Required(property) => {
                let own = self.requirements.iter().find(|own| own.property == property);
                own.map_or_else(|| Entry::empty(requirement_unit(property)), |own| own.value.clone())
            }
        }
    }

    /// Puts an entry into a box. In the row below a board's last test piece it makes the next one.
    pub fn enter(&mut self, field: TrialField, entry: Entry) {
        match field {
            TrialField::Sheet(field) => *self.sheet.entry_mut(field) = entry,
            TrialField::Series(field) => {
                if let Some(place) = self.series.as_mut().and_then(|series| series.entry_mut(field)) {
                    *place = entry;
                }
            }
            TrialField::Board(id, field) => {
                if let Some(board) = self.board_mut(id) {
                    board.enter(field, entry);
                }
            }
            TrialField::Required(property) => match self.requirements.iter_mut().find(|own| own.property == property) {
                Some(own) => own.value = entry,
                None => self.requirements.push(RequirementDraft { property, value: entry }),
            },
        }
    }

    /// Enters a column, from a spreadsheet. What it took the place of can be put back.
    pub fn enter_column(&mut self, cells: Vec<(TrialField, Entry)>) -> ColumnBefore {
        let before = cells.iter().map(|(field, _)| {
            let is_there = match *field {
                TrialField::Board(id, own) => self.board(id).is_some_and(|board| board.entry(own).is_some()),
                _ => true,
            };
            (*field, is_there.then(|| self.entry(*field)))
        });
        let before = ColumnBefore(before.collect());
        for (field, entry) in cells {
            self.enter(field, entry);
        }
        before
    }

    /// Puts back what a column took the place of. A test piece that came with it goes, unless something else was typed there.
    pub fn take_back_column(&mut self, ColumnBefore(cells): &ColumnBefore) {
        for (field, entry) in cells {
            let blank = || Entry::empty(self.entry(*field).unit);
            let entry = entry.clone().unwrap_or_else(blank);
            self.enter(*field, entry);
        }
        for (field, _) in cells.iter().rev().filter(|(_, entry)| entry.is_none()) {
            if let TrialField::Board(id, own) = *field
                && let (Some(test), Some(board)) = (own.test(), self.board_mut(id))
                && board.begun_pieces(test).into_iter().all(|at| Some(at) < own.piece())
            {
                board.remove_piece(test);
            }
        }
    }
}
