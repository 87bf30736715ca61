//! The trial on the bench: kept through a reload, saved in the library, opened again, given out as files.

use super::documents;
use super::trouble;
use crate::browser::file;
use crate::domain::trial::weigh_sheet::example::example_sheet;
use crate::record::content::revision::Standing;
use crate::record::content::trial::{OpenTrial, TRIAL_ON_PAGE, Trial, TrialContent};
use crate::record::file::trial_csv::{boards_csv, readings_csv, sheets_csv};
use crate::record::file::trial_results::results_csv;
use crate::record::store::library::{SaveError, Unread};
use crate::record::{Refusal, TrialId};
use crate::ui::state::State;
use crate::ui::text::words;
use crate::{label, t};
use leptos::prelude::*;

/// A table of a trial.
#[derive(Clone, Copy)]
pub enum TrialTable {
    /// One row a board.
    Boards,
    /// One row a reading.
    Readings,
    /// One row a line of a sheet.
    Sheets,
    /// One row a property of each combination and run.
    Results,
}

impl State {
    /// Brings the trial that was left open, or begins one with the recipe on the recipe page.
    pub fn begin_bench(&self) {
        if !self.bench.begun.get_untracked() {
            self.bench.begun.set(true);
            let state = *self;
            let mut unread = |why: &Unread| trouble::tell_unread(state, why, label!("bench-open-unread"));
            let first = || {
                let mut open = state.bench.open.get_untracked();
                open.trial.sheet = example_sheet();
                open
            };
            let mut open = None;
            self.documents.update_value(|documents| {
                let begun = state
                    .library
                    .with_untracked(|library| documents::begin(library, documents, &TRIAL_ON_PAGE, first, &mut unread));
                open = Some(begun);
            });
            if let Some(open) = open {
                self.bench.open.set(open);
            }
        }
        if !self.bench.open.with_untracked(has_begun) {
            self.take_recipe();
        }
    }

    /// Puts the recipe as it is on the recipe page under the trial.
    pub fn take_recipe(&self) {
        let draft = self.draft.get_untracked();
        let base = self.from.get_untracked().and_then(|id| self.library.with_untracked(|library| library.revision(id)));
        let recipe = base.as_ref().map(|base| base.recipe());
        let same = base.filter(|base| base.content().draft == draft);
        let name = self.title.with_untracked(|title| title.name.trim().to_owned());
        let revision = same.map(|same| same.revision());
        // Two heads may have one number; the id beside it tells which one this is.
        let number = revision
            .and_then(|id| self.library.with_untracked(|library| library.version(id).map(|version| version.number)));
        let is_up_to_date = self.bench.open.with_untracked(|open| {
            let trial = &open.trial;
            (trial.recipe, trial.revision, trial.revision_number) == (recipe, revision, number)
                && trial.draft == draft
                && trial.recipe_name == name
        });
        if is_up_to_date {
            return;
        }
        self.bench.edit(|trial| {
            (trial.recipe, trial.revision, trial.revision_number) = (recipe, revision, number);
            (trial.draft, trial.recipe_name) = (draft, name);
        });
    }

    /// What is on the bench and not saved goes into the library before something else takes its place.
    fn set_aside_unsaved_trial(&self) {
        let open = self.bench.open.get_untracked();
        if self.library.with_untracked(|library| library.is_unsaved(&open)) {
            let name = if open.trial.name.trim().is_empty() { &open.trial.recipe_name } else { &open.trial.name };
            let (name, stamp) = (self.unsaved_work(name), self.stamp());
            let content = TrialContent { name, standing: Standing::Kept, ..open.trial };
            _ = self.change_library(|library| library.save_trial(&content.seal(None, stamp)?));
        }
    }

    /// Puts a trial on the page; the one before can be brought back.
    fn lay_trial(&self, open: OpenTrial, words: String) {
        self.set_aside_unsaved_trial();
        let before = self.bench.open.get_untracked();
        self.bench.load(open);
        let bench = self.bench;
        self.tell_undo(words, move || bench.load(before.clone()));
    }

    /// Begins a new trial with the recipe at hand. Mats stay as they are, and the laboratory is the one entered last.
    pub fn new_trial(&self) {
        let lab = self.settings.with_untracked(|settings| settings.lab.clone());
        let sheet = self.bench.open.with_untracked(|open| {
            let sheet = &open.trial.sheet;
            sheet.of_next_trial(lab.as_ref().unwrap_or(sheet))
        });
        let mut trial = TrialContent::of(String::new(), self.draft.get_untracked(), None);
        trial.sheet = sheet;
        self.lay_trial(OpenTrial { from: None, trial }, t!("bench-new-begun"));
        self.take_recipe();
    }

    /// Saves the trial on the page as the next save of the one it came from.
    pub fn save_trial(&self) {
        let OpenTrial { from, trial: mut content } = self.bench.open.get_untracked();
        let before = from.and_then(|id| self.library.with_untracked(|library| library.trial(id)).ok().flatten());
        if content.name.trim().is_empty() {
            content.name = self.name_or_none(&content.recipe_name);
        }
        content.standing = Standing::Kept;
        let name = content.name.clone();
        let stamp = self.stamp();
        let saved = self.change_library(|library| library.save_trial(&content.seal(before.as_ref(), stamp)?));
        if let Some(id) = saved {
            self.bench.edit(|trial| trial.name = name);
            self.bench.open.update(|open| open.from = Some(id));
            self.tell(label!("bench-trial-saved"));
        }
    }

    fn kept_trial(&self, id: TrialId) -> Option<Trial> {
        self.library.with_untracked(|library| library.trial(id)).ok().flatten()
    }

    /// Opens a trial of the library.
    pub fn open_trial(&self, id: TrialId) {
        if let Some(trial) = self.kept_trial(id) {
            let words = t!("bench-trial-opened", name = trial.content().name.as_str());
            self.lay_trial(OpenTrial { from: Some(id), trial: trial.content().clone() }, words);
        }
    }

    /// Takes a trial out of the library.
    pub fn remove_trial(&self, id: TrialId) {
        if let Some(removed) = self.stand_trial(id, Standing::Removed) {
            let state = *self;
            let words = label!("bench-trial-deleted");
            self.tell_undo(words, move || {
                if state.stand_trial(removed, Standing::Kept).is_some() {
                    state.tell(label!("bench-trial-restored"));
                }
            });
        }
    }

    fn stand_trial(&self, id: TrialId, standing: Standing) -> Option<TrialId> {
        let trial = self.kept_trial(id)?;
        let stamp = self.stamp();
        self.change_library(|library| library.save_trial(&trial.with_standing(standing, stamp)?))
    }

    /// Saves the trial on the page to a file of our own.
    pub fn give_out_trial(&self) {
        let text = self.bench.open.with_untracked(|open| open.trial.file());
        match text {
            Ok(text) => self.give_out_named("trial.haulm.json", "application/json", &text),
            Err(error) => trouble::tell_not_exported(*self, &SaveError::from(error)),
        }
    }

    /// Saves a table of the trial on the page to a file.
    pub fn give_out_trial_table(&self, table: TrialTable) {
        let mark = self.units.get_untracked().mark;
        let (ending, text) = self.bench.open.with_untracked(|open| match table {
            TrialTable::Boards => ("boards.csv", boards_csv(&open.trial, mark)),
            TrialTable::Readings => ("readings.csv", readings_csv(&open.trial, mark)),
            TrialTable::Results => ("results.csv", results_csv(&open.trial, mark)),
            TrialTable::Sheets => ("sheets.csv", sheets_csv(&open.trial, mark, words::bench::line)),
        });
        self.give_out_named(ending, "text/csv", &text);
    }

    fn give_out_named(&self, ending: &'static str, media: &str, text: &str) {
        let name = self.bench.open.with_untracked(|open| match open.trial.name.trim() {
            "" => self.called(&open.trial.recipe_name),
            name => name.to_owned(),
        });
        self.hand_out(&file::file_name(&name, ending), media, text);
    }

    /// Puts the trial of a file on the page.
    ///
    /// # Errors
    /// When it is none that can be read.
    pub fn take_in_trial(&self, text: &str) -> Result<(), Refusal> {
        let trial = TrialContent::read_file(text)?;
        // What was open on the bench when the app was left is on no page before that.
        self.begin_bench();
        let words = t!("bench-trial-opened", name = trial.name.as_str());
        self.lay_trial(OpenTrial { from: None, trial }, words);
        Ok(())
    }
}

/// Whether the trial has begun with its recipe, so that it stays with it.
pub fn has_begun(open: &OpenTrial) -> bool {
    let weighed = open.trial.weighed.iter().flat_map(|batch| &batch.lines.lines).any(|line| !line.mass.is_blank());
    open.from.is_some() || weighed || !open.trial.boards.is_empty()
}
