//! What all parts of the page share. Everything shown follows from these signals.

pub mod compare;
pub mod documents;
pub mod line;
mod line_entry;
mod mixing;
mod notice;
pub mod recipe_link;
pub mod settled;
pub mod shared_file;
pub mod trial;
mod typing;
pub mod writing;

use super::history::History;
use super::route::Page;
use super::text::{Context, Message, words};
use crate::browser::LocalStore;
use crate::domain::compare::draft::CompareDraft;
use crate::domain::mixing::MixDraft;
use crate::domain::recipe::finding::What;
use crate::domain::recipe::input::MOST_LIQUIDS;
use crate::domain::recipe::typical_density::follow_solids;
use crate::domain::{Case, Draft, Entry, Field, Finding, LiquidField, LiquidId, Outcome, Place, work_out};
use crate::quantity::{Kind, Unit, Units};
use crate::record::content::binder_system::SystemDraft;
use crate::record::content::revision::Title;
use crate::record::document::open_draft::OpenDraft;
use crate::record::store::library::save::SaveQuestion;
use crate::record::{Cache, Library, LineRecord, RevisionId, Settings};
use crate::t;
use compare::CompareState;
use documents::Documents;
use leptos::prelude::*;
use line::LineState;
use recipe_link::RecipeLink;
use shared_file::SharedFile;
use std::sync::Arc;
use trial::Bench;
use writing::Writing;

/// What is typed into without a break, so that it is one step to take back.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Session {
    /// A number.
    Field(Field),
    /// A liquid's name.
    LiquidName(LiquidId),
    /// Where a liquid's values come from.
    LiquidSource(LiquidId),
    /// The recipe's name.
    Name,
    /// The recipe's note.
    Note,
    /// The recipe's tags.
    Tags,
}

/// A short sentence that is shown for a while and read out.
#[derive(Clone)]
pub struct Notice {
    /// The sentence.
    pub words: String,
    /// Takes back what it tells of. It outlives the part of the page that told it.
    pub undo: Option<Arc<dyn Fn() + Send + Sync>>,
    /// Whether it stays until it is closed or another one comes.
    pub stays: bool,
    /// Whether `undo` takes back the last step, so that it goes with the next one.
    pub of_step: bool,
}

/// A finding in words.
#[derive(Debug, Clone, PartialEq)]
pub struct Said {
    /// The finding.
    pub finding: Finding,
    /// What happened, and how to fix it.
    pub message: Message,
}

/// What went wrong with keeping things.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct StorageProblem {
    /// In words.
    pub message: Message,
    /// What helps, as a button.
    pub way_out: Option<WayOut>,
    /// What it is about, by which it is known when it is no longer true.
    pub about: About,
}

/// What a trouble is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum About {
    /// The browser's stores, until they are in order again.
    Stores,
    /// Something stored that could not be read at the start; it stays until it is closed.
    Start,
    /// A step that was not saved, until one is.
    Save,
    /// A file or a link that was refused, until one is opened.
    Import,
    /// A file that was not written, until one is.
    Export,
}

/// What helps against trouble with keeping things.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WayOut {
    /// The recipe on the page goes to a file.
    ToFile,
    /// Everything goes to a file.
    AllToFile,
    /// What the store has lost is written back.
    WriteBack,
}

/// What a step can change, with the name of the opening that it was made in.
type Before = (u32, OpenDraft);

/// Everything that is kept, wherever this browser lets it be kept.
pub type BrowserLibrary = Library<Cache<LocalStore>>;

/// The last result that could be computed, and whether it is that of the entries as they are now.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Shown {
    /// The result. `None` until there is a first one.
    pub case: Option<Case>,
    /// Whether something now prevents a result, so that the result is an older one.
    pub old: bool,
    /// Counts the recipes opened: an old result never outlives its recipe.
    opened: u32,
}

/// The documents that were open when the app was left.
pub struct OpenDocuments {
    /// The recipe.
    pub recipe: OpenDraft,
    /// The line.
    pub line: LineRecord,
    /// Solution and glue.
    pub mix: MixDraft,
    /// The comparison.
    pub compare: CompareDraft,
    /// The binder system to be saved.
    pub system: SystemDraft,
}

/// The app's state, handed to every part.
#[derive(Clone, Copy)]
pub struct State {
    /// The page shown.
    pub page: RwSignal<Page>,
    /// Everything typed on the recipe page.
    pub draft: RwSignal<Draft>,
    /// The recipe's name, note and tags.
    pub title: RwSignal<Title>,
    /// What will be remarked on the next save.
    pub remark: RwSignal<String>,
    /// The revision that the recipe was opened from or last saved as.
    pub from: RwSignal<Option<RevisionId>>,
    /// Whether it is the example that a first start shows.
    pub example: RwSignal<bool>,
    /// What comes of the draft.
    pub outcome: Memo<Outcome>,
    /// The result to show.
    pub shown: Memo<Shown>,
    /// What was chosen for the app as a whole.
    pub settings: RwSignal<Settings>,
    /// The units chosen, out of the settings.
    pub units: Memo<Units>,
    /// The symbol of money, out of the settings.
    pub currency: Memo<String>,
    /// What is told for a while, such as what was removed.
    pub notice: RwSignal<Option<Notice>>,
    /// Everything that is kept.
    pub library: RwSignal<BrowserLibrary>,
    /// Whether all records of the database are in the library, or it has failed to give them.
    pub all_read: RwSignal<bool>,
    /// How many records are not on the disk yet.
    pub unwritten: RwSignal<usize>,
    /// What of memory is in the database.
    pub writing: StoredValue<Writing>,
    /// What is known of the open documents' texts.
    pub documents: StoredValue<Documents>,
    /// Told while records were being written: shown once they are on the disk.
    pub held: StoredValue<Option<Notice>>,
    /// What went wrong with keeping things, until it goes right again.
    pub trouble: RwSignal<Option<StorageProblem>>,
    /// Why the file that was chosen last in the library is not there.
    pub refused: RwSignal<Option<Message>>,
    /// The recipe as a link; `None` where the browser cannot make one.
    pub link: RwSignal<Option<RecipeLink>>,
    /// The library file on a shared drive.
    pub shared: RwSignal<SharedFile>,
    /// Whether a newer version of the app is here and waits.
    pub newer: RwSignal<bool>,
    /// Whether a save waits for the recipe's name.
    pub naming: RwSignal<bool>,
    /// Whether a number is being typed, so that nothing is said about it yet.
    pub typing: RwSignal<bool>,
    /// The box that was typed into last, while its unit may still be to come.
    typed_last: StoredValue<Option<Field>>,
    /// What a save waits to have confirmed.
    pub question: RwSignal<Option<SaveQuestion>>,
    /// What is typed where solutions and glues are made up.
    pub mix: RwSignal<MixDraft>,
    mix_history: RwSignal<History<MixDraft, String>>,
    /// Name and note of a binder system that is not saved yet.
    pub new_system: RwSignal<SystemDraft>,
    /// The trial on the bench.
    pub bench: Bench,
    /// Where systems are compared.
    pub compare: CompareState,
    /// What the page of the line holds.
    pub line: LineState,
    /// Names what is on the page from one opening to the next.
    opened: RwSignal<u32>,
    openings: StoredValue<u32>,
    /// The result before the step being made: what is shown as the old one. A number on its way
    /// ("8" of "8,500") gives results that nobody meant.
    settled: RwSignal<Option<Case>>,
    history: RwSignal<History<Before, Session>>,
}

impl State {
    /// The state of an app that has just started.
    #[must_use]
    pub fn new(
        library: BrowserLibrary,
        settings: Settings,
        open: OpenDocuments,
        documents: Documents,
        trouble: Option<StorageProblem>,
    ) -> Self {
        let OpenDocuments { recipe: open, line, mix, compare, system } = open;
        let (mix, compare, line) = (RwSignal::new(mix), CompareState::new(compare), LineState::new(line));
        let settings = RwSignal::new(settings);
        let draft = RwSignal::new(open.draft);
        let opened = RwSignal::new(0);
        let outcome = Memo::new(move |_| draft.with(work_out));
        let settled = RwSignal::new(None::<Case>);
        let shown = Memo::new(move |before: Option<&Shown>| {
            let opened = opened.get();
            outcome.with(|outcome| match (&outcome.case, before) {
                (None, Some(before)) if before.opened == opened => {
                    let case = settled.get_untracked().or_else(|| before.case.clone());
                    Shown { old: case.is_some(), case, opened }
                }
                (case, _) => Shown { case: case.clone(), old: false, opened },
            })
        });
        let title = RwSignal::new(open.title);
        let from = RwSignal::new(open.from);
        let library = RwSignal::new(library);
        let units = Memo::new(move |_| settings.with(|settings| settings.units));
        let currency = Memo::new(move |_| settings.with(|settings| settings.currency.clone()));
        let unwritten = RwSignal::new(0);
        Self {
            page: RwSignal::new(Page::Recipe),
            draft,
            title,
            remark: RwSignal::new(open.remark),
            from,
            example: RwSignal::new(open.example),
            outcome,
            shown,
            settings,
            units,
            currency,
            notice: RwSignal::new(None),
            library,
            all_read: RwSignal::new(false),
            unwritten,
            writing: StoredValue::new(Writing::default()),
            documents: StoredValue::new(documents),
            held: StoredValue::new(None),
            trouble: RwSignal::new(trouble),
            refused: RwSignal::new(None),
            link: RwSignal::new(None),
            shared: RwSignal::new(SharedFile::default()),
            newer: RwSignal::new(false),
            naming: RwSignal::new(false),
            typing: RwSignal::new(false),
            typed_last: StoredValue::new(None),
            question: RwSignal::new(None),
            mix,
            mix_history: RwSignal::new(History::default()),
            new_system: RwSignal::new(system),
            bench: Bench::default(),
            compare,
            line,
            opened,
            openings: StoredValue::new(0),
            settled,
            history: RwSignal::new(History::default()),
        }
    }

    // --- changing the recipe -------------------------------------------------------------------

    /// The recipe as it is on the page. Follows no change.
    #[must_use]
    pub fn current_recipe(&self) -> OpenDraft {
        OpenDraft {
            from: self.from.get_untracked(),
            title: self.title.get_untracked(),
            draft: self.draft.get_untracked(),
            remark: self.remark.get_untracked(),
            example: self.example.get_untracked(),
        }
    }

    fn before(&self) -> Before {
        (self.opened.get_untracked(), self.current_recipe())
    }

    /// Keeps the result as it is before a step, if there is one.
    fn settle(&self) {
        let case = self.outcome.with_untracked(|outcome| outcome.case.clone());
        if case.is_some() {
            self.settled.set(case);
        }
    }

    /// What is on the page is of another opening from here on: an old result never outlives its recipe.
    fn switch_document(&self, opened: u32) {
        if self.opened.get_untracked() != opened {
            self.settled.set(None);
            self.opened.set(opened);
        }
    }

    fn load(&self, recipe: OpenDraft) {
        if self.from.get_untracked() != recipe.from {
            self.question.set(None);
        }
        self.from.set(recipe.from);
        self.example.set(recipe.example);
        self.title.set(recipe.title);
        self.draft.set(recipe.draft);
    }

    /// What another tab has typed into the recipe.
    pub fn follow_tab(&self, recipe: OpenDraft) {
        self.remark.set(recipe.remark.clone());
        self.load(recipe);
    }

    /// Changes the draft as a step that can be taken back. Steps of one session are one step.
    pub fn edit(&self, session: Option<Session>, change: impl FnOnce(&mut Draft)) {
        self.drop_step_notice();
        if !matches!(session, Some(Session::Field(_))) {
            self.typed_last.set_value(None);
        }
        self.history.update(|history| {
            history.before(session, || {
                self.settle();
                self.before()
            });
        });
        self.draft.update(change);
    }

    /// Changes name, note or tags as a step that can be taken back.
    pub fn edit_title(&self, session: Session, change: impl FnOnce(&mut Title)) {
        self.drop_step_notice();
        self.history.update(|history| history.before(Some(session), || self.before()));
        self.title.update(change);
    }

    /// A box was left: what is typed into it next is a step of its own.
    pub fn leave(&self) {
        self.history.update_untracked(History::close);
        self.stop_typing();
    }

    /// Whether the recipe takes so many liquids more; tells if it does not.
    #[must_use]
    pub fn has_room_for(&self, more: usize) -> bool {
        let room = self.draft.with_untracked(|draft| draft.liquids.len() + more <= MOST_LIQUIDS);
        if !room {
            self.tell(t!("frame-most-liquids", most = MOST_LIQUIDS));
        }
        room
    }

    /// Puts an entry into a field.
    pub fn enter(&self, session: Option<Session>, field: Field, text: &str, unit: Unit) {
        if session.is_some() {
            self.start_typing(field);
        }
        self.edit(session, |draft| {
            if let Some(entry) = draft.entry_mut(field) {
                *entry = Entry::typed(text, unit);
            }
            if let Field::Liquid(id, LiquidField::Solids) = field
                && let Some(liquid) = draft.liquid_mut(id)
            {
                follow_solids(liquid);
            }
        });
    }

    /// Takes the last step back.
    pub fn undo(&self) {
        self.step(|history| history.undo(|| self.before()));
    }

    /// Goes a step forward again.
    pub fn redo(&self) {
        self.step(|history| history.redo(|| self.before()));
    }

    /// Takes back the last step of the page that is open: never that of another one.
    pub fn undo_on_page(&self) {
        match self.page.get_untracked() {
            Page::Recipe => self.undo(),
            Page::Line => self.line.undo(),
            Page::Bench => self.bench.undo(),
            Page::Compare => self.compare.undo(),
            Page::Mixing => self.undo_mix(),
            _ => {}
        }
    }

    /// Goes forward again on the page that is open.
    pub fn redo_on_page(&self) {
        match self.page.get_untracked() {
            Page::Recipe => self.redo(),
            Page::Line => self.line.redo(),
            Page::Bench => self.bench.redo(),
            Page::Compare => self.compare.redo(),
            Page::Mixing => self.redo_mix(),
            _ => {}
        }
    }

    fn step(&self, way: impl FnOnce(&mut History<Before, Session>) -> Option<Before>) {
        self.drop_step_notice();
        self.typed_last.set_value(None);
        let restored = self.history.try_update(way).flatten();
        let Some((opened, mut recipe)) = restored else { return };
        if opened == self.opened.get_untracked() {
            // What is typed is taken back, and not that it was saved meanwhile.
            (recipe.from, recipe.example) = (self.from.get_untracked(), self.example.get_untracked());
        }
        self.switch_document(opened);
        self.load(recipe);
    }

    /// Whether there is a step to take back.
    #[must_use]
    pub fn can_undo(&self) -> bool {
        self.history.with(History::can_undo)
    }

    /// Whether there is a step to go forward to.
    #[must_use]
    pub fn can_redo(&self) -> bool {
        self.history.with(History::can_redo)
    }

    /// Puts another recipe on the page. What was there can be taken back.
    pub fn open(&self, recipe: OpenDraft) {
        self.set_aside_unsaved();
        self.history.update(|history| history.before(None, || self.before()));
        self.openings.update_value(|openings| *openings += 1);
        self.switch_document(self.openings.get_value());
        self.naming.set(false);
        self.remark.set(recipe.remark.clone());
        self.load(recipe);
    }

    /// Goes on to a later revision of the recipe on the page. Other numbers that it brings can be taken back.
    pub fn advance(&self, recipe: OpenDraft) {
        if self.draft.with_untracked(|draft| *draft != recipe.draft) {
            self.history.update(|history| history.before(None, || self.before()));
            self.openings.update_value(|openings| *openings += 1);
            self.switch_document(self.openings.get_value());
        }
        self.load(recipe);
    }

    // --- reading -------------------------------------------------------------------------------

    /// What words need to name things and to show numbers; follows every change.
    pub fn with_context<T>(&self, act: impl FnOnce(&Context<'_>) -> T) -> T {
        let units = self.units.get();
        self.currency.with(|currency| self.draft.with(|draft| act(&Context { units: &units, draft, currency })))
    }

    /// The unit shown for a kind.
    #[must_use]
    pub fn unit(&self, kind: Kind) -> Unit {
        self.units.with(|units| units.unit(kind))
    }

    /// The findings that `belongs` picks. Boxes that are still to be filled in and were never touched
    /// are no findings to anybody: they are marked in their place.
    pub fn findings(&self, belongs: impl Fn(&Finding) -> bool) -> Vec<Finding> {
        self.draft.with(|draft| {
            let all = |outcome: &Outcome| {
                outcome
                    .findings
                    .iter()
                    .filter(|finding| belongs(finding) && !is_to_fill_in(draft, finding))
                    .copied()
                    .collect()
            };
            self.outcome.with(all)
        })
    }

    /// The findings that `belongs` picks, in words.
    pub fn said(&self, belongs: impl Fn(&Finding) -> bool) -> Vec<Said> {
        let say = |finding: Finding| {
            let message = self.with_context(|context| words::finding(&finding, context));
            Said { finding, message }
        };
        self.findings(belongs).into_iter().map(say).collect()
    }

    /// What a liquid is called; blank when it is not there.
    #[must_use]
    pub fn liquid_name(&self, id: LiquidId) -> String {
        self.draft.with(|draft| draft.liquid(id).map(|liquid| words::liquid(liquid).into_owned())).unwrap_or_default()
    }

    /// The liquids of the result shown, in order of addition.
    #[must_use]
    pub fn liquids_shown(&self) -> Vec<LiquidId> {
        self.shown.with(|shown| match &shown.case {
            Some(case) => case.solved.liquids.iter().map(|flow| flow.id).collect(),
            None => Vec::new(),
        })
    }
}

/// Whether a finding only says that a box that nobody has touched is blank.
fn is_to_fill_in(draft: &Draft, finding: &Finding) -> bool {
    let Place::Field(field) = finding.place else { return false };
    finding.what == What::Missing && draft.entry(field).is_none_or(|entry| entry.preset)
}

/// Hands the state to all parts below.
pub fn provide(state: State) {
    provide_context(state);
}
