//! A store that fails when told to, in the ways in which browsers' stores do.

use haulm::record::store::{MemoryStore, Store, StoreError};
use std::cell::RefCell;
use std::rc::Rc;

/// What goes wrong with a write.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fault {
    /// No room: an error, and the old text stays.
    Full,
    /// The browser locked the store.
    Blocked,
    /// Half of the text arrives, and an error is given.
    TornError,
    /// Half of the text arrives, and no error is given.
    TornSilent,
    /// Nothing arrives, and no error is given.
    Dropped,
    /// All of it arrives, and an error is given.
    WrittenError,
    /// Another text of the same length arrives, and no error is given.
    Lies,
}

impl Fault {
    pub const ALL: &'static [Fault] =
        &[Self::Full, Self::Blocked, Self::TornError, Self::TornSilent, Self::Dropped, Self::WrittenError, Self::Lies];
}

/// Clones share texts and faults, as two tabs do.
#[derive(Debug, Clone, Default)]
pub struct FaultyStore {
    pub inner: MemoryStore,
    state: Rc<RefCell<State>>,
}

#[derive(Debug, Default)]
struct State {
    /// Comes with the write that is so many away, 0 being the next.
    fault: Option<(usize, Fault)>,
    /// Bytes of keys and texts that fit.
    room: Option<usize>,
    /// Reads fail, too.
    blocked: bool,
    /// The list of keys fails, and nothing else.
    unlisted: bool,
    /// Every key removed or written, in order.
    log: Vec<String>,
    /// Keys of records that never change and that were asked to be written over with another text.
    overwritten: Vec<String>,
}

impl FaultyStore {
    /// The same texts with no faults and no log.
    pub fn over(inner: MemoryStore) -> Self {
        Self { inner, ..Self::default() }
    }

    pub fn fail_write(&self, away: usize, fault: Fault) {
        self.state.borrow_mut().fault = Some((away, fault));
    }

    pub fn repair(&self) {
        let mut state = self.state.borrow_mut();
        (state.fault, state.room, state.blocked, state.unlisted) = (None, None, false, false);
    }

    pub fn set_room(&self, bytes: usize) {
        self.state.borrow_mut().room = Some(bytes);
    }

    pub fn block(&self) {
        self.state.borrow_mut().blocked = true;
    }

    pub fn hide_list(&self) {
        self.state.borrow_mut().unlisted = true;
    }

    /// Whether any record that never changes was asked to be written over with another text.
    pub fn overwritten(&self) -> bool {
        !self.state.borrow().overwritten.is_empty()
    }

    /// Someone clears the site's data.
    pub fn clear(&self) {
        for key in self.inner.keys().unwrap() {
            self.inner.remove(&key).unwrap();
        }
    }

    pub fn used(&self) -> usize {
        let keys = self.inner.keys().unwrap();
        keys.iter().map(|key| key.len() + self.inner.read(key).unwrap().unwrap().len()).sum()
    }

    pub fn touched(&self, key: &str) -> bool {
        self.state.borrow().log.iter().any(|logged| logged == key)
    }

    fn half(text: &str) -> &str {
        let mut end = text.len() / 2;
        while !text.is_char_boundary(end) {
            end -= 1;
        }
        &text[..end]
    }

    fn open(&self) -> Result<(), StoreError> {
        if self.state.borrow().blocked { Err(StoreError::Blocked) } else { Ok(()) }
    }
}

impl Store for FaultyStore {
    fn keys(&self) -> Result<Vec<String>, StoreError> {
        self.open()?;
        if self.state.borrow().unlisted { Err(StoreError::Other("no list".to_owned())) } else { self.inner.keys() }
    }

    fn read(&self, key: &str) -> Result<Option<String>, StoreError> {
        self.open()?;
        self.inner.read(key)
    }

    fn write(&self, key: &str, text: &str) -> Result<(), StoreError> {
        self.open()?;
        let mut state = self.state.borrow_mut();
        state.log.push(key.to_owned());
        // All of ours that are in a folder never change; the draft and the settings do.
        let sealed = key.trim_start_matches("haulm/").contains('/');
        if sealed && self.inner.read(key)?.is_some_and(|there| there != text) {
            state.overwritten.push(key.to_owned());
        }
        if let Some(room) = state.room {
            let old = self.inner.read(key)?.map_or(0, |old| key.len() + old.len());
            if self.used() - old + key.len() + text.len() > room {
                return Err(StoreError::Full);
            }
        }
        match state.fault.take() {
            Some((0, fault)) => match fault {
                Fault::Full => Err(StoreError::Full),
                Fault::Blocked => Err(StoreError::Blocked),
                Fault::TornError => {
                    self.inner.write(key, Self::half(text))?;
                    Err(StoreError::Other("broke off".to_owned()))
                }
                Fault::TornSilent => self.inner.write(key, Self::half(text)),
                Fault::Dropped => Ok(()),
                Fault::Lies => self.inner.write(key, &text.chars().rev().collect::<String>()),
                Fault::WrittenError => {
                    self.inner.write(key, text)?;
                    Err(StoreError::Other("late".to_owned()))
                }
            },
            later => {
                state.fault = later.map(|(away, fault)| (away - 1, fault));
                self.inner.write(key, text)
            }
        }
    }

    fn remove(&self, key: &str) -> Result<(), StoreError> {
        self.open()?;
        self.state.borrow_mut().log.push(key.to_owned());
        self.inner.remove(key)
    }
}
