//! Boards made, as entered.

use crate::domain::recipe::draft::Entry;
use crate::domain::trial::boards::field::{BendingDraft, BoardField, BoardTest, BondDraft, PieceDraft, SwellingDraft};
use crate::quantity::Unit;
use serde::{Deserialize, Serialize};

/// Maximum number of pieces of one kind, and thickness points, that a board has.
pub const MAX_PIECES: usize = 60;

/// Names a board within a trial. Stays the same when boards are added or removed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(transparent)]
pub struct BoardId(pub u16);

/// A board made, as entered. What was not tested is left blank.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct BoardDraft {
    /// Its number within the trial.
    pub id: BoardId,
    /// What is written on it.
    #[serde(default)]
    pub name: String,
    /// The place in the run order of the run that it comes from, from 1; none outside a series.
    #[serde(default)]
    pub run: Option<u16>,
    /// Whether it was sanded before it was measured.
    #[serde(default)]
    pub sanded: bool,
    /// Furnish really laid for its mat; blank for what the sheet says.
    #[serde(default = "grams")]
    pub laid: Entry,
    /// Mass of the whole board.
    pub mass: Entry,
    /// Length of the whole board.
    pub length: Entry,
    /// Width of the whole board.
    pub width: Entry,
    /// Thickness of the whole board at several points.
    pub thickness: Vec<Entry>,
    /// Moisture, where no piece was dried.
    pub moisture: Entry,
    /// Pieces for density and moisture.
    #[serde(default)]
    pub pieces: Vec<PieceDraft>,
    /// Bending pieces.
    #[serde(default)]
    pub bending: Vec<BendingDraft>,
    /// Pieces for internal bond.
    #[serde(default)]
    pub bond: Vec<BondDraft>,
    /// Pieces for thickness swelling.
    #[serde(default)]
    pub swelling: Vec<SwellingDraft>,
    /// Note, any text.
    #[serde(default)]
    pub note: String,
}

fn grams() -> Entry {
    Entry::empty(Unit::Gram)
}

impl BoardDraft {
    /// A board with nothing typed, and four thickness points.
    #[must_use]
    pub fn blank(id: BoardId) -> Self {
        Self {
            id,
            name: String::new(),
            run: None,
            sanded: false,
            laid: grams(),
            mass: Entry::empty(Unit::Gram),
            length: Entry::empty(Unit::Millimetre),
            width: Entry::empty(Unit::Millimetre),
            thickness: vec![Entry::empty(Unit::Millimetre); 4],
            moisture: Entry::empty(Unit::PercentDryBasis),
            pieces: Vec::new(),
            bending: Vec::new(),
            bond: Vec::new(),
            swelling: Vec::new(),
            note: String::new(),
        }
    }

    /// The entry of a box; `None` for a piece or a point that is not there.
    #[must_use]
    pub fn entry(&self, field: BoardField) -> Option<&Entry> {
        match field {
            BoardField::Laid => Some(&self.laid),
            BoardField::Mass => Some(&self.mass),
            BoardField::Length => Some(&self.length),
            BoardField::Width => Some(&self.width),
            BoardField::Thickness(point) => self.thickness.get(usize::from(point)),
            BoardField::Moisture => Some(&self.moisture),
            BoardField::Piece(at, field) => self.pieces.get(usize::from(at)).map(|piece| piece.entry(field)),
            BoardField::Bending(at, field) => self.bending.get(usize::from(at)).map(|piece| piece.entry(field)),
            BoardField::Bond(at, field) => self.bond.get(usize::from(at)).map(|piece| piece.entry(field)),
            BoardField::Swelling(at, field) => self.swelling.get(usize::from(at)).map(|piece| piece.entry(field)),
        }
    }

    /// The entry of a box, to type into.
    pub fn entry_mut(&mut self, field: BoardField) -> Option<&mut Entry> {
        match field {
            BoardField::Laid => Some(&mut self.laid),
            BoardField::Mass => Some(&mut self.mass),
            BoardField::Length => Some(&mut self.length),
            BoardField::Width => Some(&mut self.width),
            BoardField::Thickness(point) => self.thickness.get_mut(usize::from(point)),
            BoardField::Moisture => Some(&mut self.moisture),
            BoardField::Piece(at, field) => self.pieces.get_mut(usize::from(at)).map(|piece| piece.entry_mut(field)),
            BoardField::Bending(at, field) => self.bending.get_mut(usize::from(at)).map(|piece| piece.entry_mut(field)),
            BoardField::Bond(at, field) => self.bond.get_mut(usize::from(at)).map(|piece| piece.entry_mut(field)),
            BoardField::Swelling(at, field) => {
                self.swelling.get_mut(usize::from(at)).map(|piece| piece.entry_mut(field))
            }
        }
    }

    /// How many pieces of a test there are.
    #[must_use]
    pub fn count(&self, test: BoardTest) -> usize {
        match test {
            BoardTest::Density => self.pieces.len(),
            BoardTest::Bending => self.bending.len(),
            BoardTest::Bond => self.bond.len(),
            BoardTest::Swelling => self.swelling.len(),
        }
    }

    /// The places of the pieces that somebody typed into. What was only carried down to a piece is no reading of it.
    #[must_use]
    pub fn begun_pieces(&self, test: BoardTest) -> Vec<u8> {
        let is_typed = |field: BoardField| {
            let entry = self.entry(field).filter(|entry| !entry.is_blank());
            entry.is_some_and(|entry| !(entry.preset && field.is_carried_down()))
        };
        let places = (0..=u8::MAX).take(self.count(test).min(MAX_PIECES));
        places.filter(|at| test.fields(*at).into_iter().any(is_typed)).collect()
    }

    /// Adds a piece of a test, up to [`MAX_PIECES`]. It begins with what the piece above carries down.
    pub fn add_piece(&mut self, test: BoardTest) {
        let count = self.count(test);
        if count >= MAX_PIECES {
            return;
        }
        match test {
            BoardTest::Density => self.pieces.push(PieceDraft::default()),
            BoardTest::Bending => self.bending.push(BendingDraft::default()),
            BoardTest::Bond => self.bond.push(BondDraft::default()),
            BoardTest::Swelling => self.swelling.push(SwellingDraft::default()),
        }
        let above = count.checked_sub(1).and_then(|at| u8::try_from(at).ok());
        for field in above.map_or_else(Vec::new, |at| test.fields(at)) {
            self.carry_down(field);
        }
    }

    /// What a box shows: its entry, and in the row below the last piece what the next one will begin with.
    #[must_use]
    pub fn entry_shown(&self, field: BoardField) -> Entry {
        if let Some(entry) = self.entry(field) {
            return entry.clone();
        }
        let above = field.above().filter(|above| above.is_carried_down()).and_then(|above| self.entry(above));
        above.map_or_else(|| Entry::empty(field.limit().unit), carried)
    }

    /// Puts an entry into a box. In the row below the last piece it makes the next one; a length that pieces share is carried
    /// down to those below that have none of their own.
    pub fn enter(&mut self, field: BoardField, entry: Entry) {
        if let (Some(test), Some(at)) = (field.test(), field.piece())
            && usize::from(at) == self.count(test)
        {
            self.add_piece(test);
        }
        if let Some(place) = self.entry_mut(field) {
            *place = entry;
            self.carry_down(field);
        }
    }

    fn carry_down(&mut self, from: BoardField) {
        if !from.is_carried_down() {
            return;
        }
        let Some(own) = self.entry(from).map(carried) else { return };
        let mut next = from.below();
        while let Some(field) = next
            && let Some(entry) = self.entry_mut(field)
            && (entry.preset || entry.is_blank())
        {
            entry.clone_from(&own);
            next = field.below();
        }
    }

    /// Removes the last piece of a test.
    pub fn remove_piece(&mut self, test: BoardTest) {
        match test {
            BoardTest::Density => drop(self.pieces.pop()),
            BoardTest::Bending => drop(self.bending.pop()),
            BoardTest::Bond => drop(self.bond.pop()),
            BoardTest::Swelling => drop(self.swelling.pop()),
        }
    }

    /// Puts back the last piece of a test that this board had before, unless it has as many again.
    pub fn put_back_last_piece(&mut self, test: BoardTest, before: &Self) {
        if self.count(test) + 1 != before.count(test) {
            return;
        }
        match test {
            BoardTest::Density => self.pieces.extend(before.pieces.last().cloned()),
            BoardTest::Bending => self.bending.extend(before.bending.last().cloned()),
            BoardTest::Bond => self.bond.extend(before.bond.last().cloned()),
            BoardTest::Swelling => self.swelling.extend(before.swelling.last().cloned()),
        }
    }

    /// Every box, in the order of the page.
    #[must_use]
    pub fn fields(&self) -> Vec<BoardField> {
        let places = |count: usize| (0..=u8::MAX).take(count);
        let mut all = vec![BoardField::Laid, BoardField::Mass, BoardField::Length, BoardField::Width];
        all.extend(places(self.thickness.len()).map(BoardField::Thickness));
        all.push(BoardField::Moisture);
        for test in BoardTest::ALL {
            all.extend(places(self.count(*test)).flat_map(|at| test.fields(at)));
        }
        all
    }

    /// Whether anything was measured: of the whole board, its moisture, or a piece.
    #[must_use]
    pub fn has_readings(&self) -> bool {
        self.is_measured()
            || !self.moisture.is_blank()
            || !self.laid.is_blank()
            || BoardTest::ALL.iter().any(|test| !self.begun_pieces(*test).is_empty())
    }

    /// Whether anything of the whole board was typed.
    #[must_use]
    pub fn is_measured(&self) -> bool {
        let plain = [&self.mass, &self.length, &self.width];
        plain.into_iter().chain(&self.thickness).any(|entry| !entry.is_blank())
    }
}

/// As it is shown further down, until something else is typed there.
fn carried(entry: &Entry) -> Entry {
    Entry::preset(entry.text.clone(), entry.unit)
}

/// A number that none of these boards has.
#[must_use]
pub fn free_id(boards: &[BoardDraft]) -> BoardId {
    let taken = |id: &u16| boards.iter().any(|board| board.id.0 == *id);
    BoardId((1..=u16::MAX).find(|id| !taken(id)).unwrap_or(u16::MAX))
}
