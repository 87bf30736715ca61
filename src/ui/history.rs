//! Steps that can be taken back.

/// How many steps are kept. A step is a few kilobytes.
const MOST: usize = 200;

/// What was, before each step, and what was taken back.
///
/// Steps of one session (as the keys typed into one box until it is left) count as one.
#[derive(Debug, Clone)]
pub struct History<T, S> {
    past: Vec<T>,
    future: Vec<T>,
    session: Option<S>,
}

impl<T, S> Default for History<T, S> {
    fn default() -> Self {
        Self { past: Vec::new(), future: Vec::new(), session: None }
    }
}

impl<T, S: PartialEq> History<T, S> {
    /// Puts down what is there before a step, unless the step goes on with the session before it.
    /// A step without a session is a step of its own.
    pub fn before(&mut self, session: Option<S>, now: impl FnOnce() -> T) {
        if session.is_some() && session == self.session {
            return;
        }
        self.session = session;
        self.past.push(now());
        if self.past.len() > MOST {
            self.past.remove(0);
        }
        self.future.clear();
    }

    /// The session is over: the next step is a new one.
    pub fn close(&mut self) {
        self.session = None;
    }

    /// Takes the last step back: what was before it. `now` is kept to go forward to again.
    pub fn undo(&mut self, now: impl FnOnce() -> T) -> Option<T> {
        let before = self.past.pop()?;
        self.future.push(now());
        self.session = None;
        Some(before)
    }

    /// Goes forward again.
    pub fn redo(&mut self, now: impl FnOnce() -> T) -> Option<T> {
        let after = self.future.pop()?;
        self.past.push(now());
        self.session = None;
        Some(after)
    }

    /// Forgets all steps, as when another recipe is opened.
    pub fn clear(&mut self) {
        *self = Self::default();
    }

    /// Whether there is a step to take back.
    #[must_use]
    pub fn can_undo(&self) -> bool {
        !self.past.is_empty()
    }

    /// Whether there is a step to go forward to.
    #[must_use]
    pub fn can_redo(&self) -> bool {
        !self.future.is_empty()
    }
}

#[cfg(test)]
mod tests {
    use super::{History, MOST};

    #[test]
    fn steps_of_one_session_are_taken_back_together() {
        let mut history = History::default();
        for (session, now) in [(Some('a'), 0), (Some('a'), 1), (Some('b'), 2), (None, 3), (None, 4), (Some('b'), 5)] {
            history.before(session, || now);
        }
        let mut seen = Vec::new();
        let mut now = 6;
        while let Some(before) = history.undo(|| now) {
            seen.push(before);
            now = before;
        }
        assert_eq!(seen, [5, 4, 3, 2, 0]);
        while let Some(after) = history.redo(|| now) {
            now = after;
        }
        assert_eq!(now, 6);
    }

    #[test]
    fn a_closed_session_begins_a_new_step_and_a_new_step_ends_the_way_forward() {
        let mut history = History::default();
        history.before(Some('a'), || 0);
        history.close();
        history.before(Some('a'), || 1);
        assert_eq!(history.undo(|| 2), Some(1));
        assert!(history.can_redo());
        history.before(None, || 1);
        assert!(!history.can_redo());
        assert_eq!(history.undo(|| 9), Some(1));
        assert_eq!(history.undo(|| 1), Some(0));
        assert!(!history.can_undo());
    }

    #[test]
    fn the_oldest_steps_are_dropped() {
        let mut history = History::<usize, ()>::default();
        for step in 0..MOST + 10 {
            history.before(None, || step);
        }
        let mut least = usize::MAX;
        while let Some(before) = history.undo(|| 0) {
            least = before;
        }
        assert_eq!(least, 10);
    }
}
