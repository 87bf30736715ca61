//! What all parts of the page share. Everything shown follows from these signals.

use super::history::History;
use super::route::Page;
use super::text::{Context, ENGLISH, Words};
use crate::domain::{Case, Draft, Entry, Field, Finding, LiquidId, Outcome, work_out};
use crate::quantity::{Kind, Unit, Units};
use crate::record::Settings;
use crate::record::revision::Title;
use leptos::prelude::*;

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
    /// Takes back what it tells of.
    pub undo: Option<Callback<()>>,
    /// Whether it stays until it is closed or another one comes.
    pub stays: bool,
}

/// What a step can change, and what taking it back restores.
struct Before {
    draft: Draft,
    title: Title,
    example: bool,
    opened: u32,
}

/// The last result that could be computed, and whether it is that of the entries as they are now.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Shown {
    /// The result. `None` until there is a first one.
    pub case: Option<Case>,
    /// Whether something now stands in the way, so that the result is an older one.
    pub old: bool,
    /// Counts the recipes opened: an old result never outlives its recipe.
    opened: u32,
}

/// The app's state, handed to every part.
#[derive(Clone, Copy)]
pub struct State {
    /// The words of the language chosen.
    pub words: &'static Words,
    /// The page shown.
    pub page: RwSignal<Page>,
    /// Everything typed on the recipe page.
    pub draft: RwSignal<Draft>,
    /// The recipe's name, note and tags.
    pub title: RwSignal<Title>,
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
    /// What stands for money, out of the settings.
    pub currency: Memo<String>,
    /// What is told for a while, such as what was removed.
    pub notice: RwSignal<Option<Notice>>,
    /// Names what stands on the page from one opening to the next. Taking an opening back goes back
    /// to the name before.
    pub opened: RwSignal<u32>,
    openings: StoredValue<u32>,
    history: RwSignal<History<Before, Session>>,
}

impl State {
    /// The state of an app that has just started.
    #[must_use]
    pub fn new(settings: Settings, draft: Draft, title: Title, example: bool) -> Self {
        let settings = RwSignal::new(settings);
        let draft = RwSignal::new(draft);
        let opened = RwSignal::new(0);
        let outcome = Memo::new(move |_| draft.with(work_out));
        let shown = Memo::new(move |before: Option<&Shown>| {
            let opened = opened.get();
            outcome.with(|outcome| match (&outcome.case, before) {
                (None, Some(before)) if before.opened == opened => {
                    Shown { case: before.case.clone(), old: before.case.is_some(), opened }
                }
                (case, _) => Shown { case: case.clone(), old: false, opened },
            })
        });
        Self {
            words: &ENGLISH,
            page: RwSignal::new(Page::Recipe),
            draft,
            title: RwSignal::new(title),
            example: RwSignal::new(example),
            outcome,
            shown,
            settings,
            units: Memo::new(move |_| settings.with(|settings| settings.units)),
            currency: Memo::new(move |_| settings.with(|settings| settings.currency.clone())),
            notice: RwSignal::new(None),
            opened,
            openings: StoredValue::new(0),
            history: RwSignal::new(History::default()),
        }
    }

    // --- changing the recipe -------------------------------------------------------------------

    fn before(&self) -> Before {
        Before {
            draft: self.draft.get_untracked(),
            title: self.title.get_untracked(),
            example: self.example.get_untracked(),
            opened: self.opened.get_untracked(),
        }
    }

    /// Changes the draft as a step that can be taken back. Steps of one session are one step.
    pub fn edit(&self, session: Option<Session>, change: &mut dyn FnMut(&mut Draft)) {
        self.history.update(|history| history.before(session, || self.before()));
        self.draft.update(|draft| change(draft));
    }

    /// Changes name, note or tags as a step that can be taken back.
    pub fn edit_title(&self, session: Session, change: &mut dyn FnMut(&mut Title)) {
        self.history.update(|history| history.before(Some(session), || self.before()));
        self.title.update(|title| change(title));
    }

    /// A box was left: what is typed into it next is a step of its own.
    pub fn leave(&self) {
        self.history.update_untracked(History::close);
    }

    /// Puts an entry into a field.
    pub fn enter(&self, session: Option<Session>, field: Field, text: &str, unit: Unit) {
        self.edit(session, &mut |draft| {
            if let Some(entry) = draft.entry_mut(field) {
                *entry = Entry::typed(text, unit);
            }
        });
    }

    /// Takes the last step back.
    pub fn undo(&self) {
        self.step(|history, now| history.undo(now));
    }

    /// Goes a step forward again.
    pub fn redo(&self) {
        self.step(|history, now| history.redo(now));
    }

    fn step(&self, way: fn(&mut History<Before, Session>, &mut dyn FnMut() -> Before) -> Option<Before>) {
        let restored = self.history.try_update(|history| way(history, &mut || self.before())).flatten();
        if let Some(before) = restored {
            self.opened.set(before.opened);
            self.draft.set(before.draft);
            self.title.set(before.title);
            self.example.set(before.example);
        }
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

    /// Puts another recipe on the page. Nothing of the one before is left, but that it can be taken
    /// back.
    pub fn open(&self, draft: Draft, title: Title, example: bool) {
        self.history.update(|history| history.before(None, || self.before()));
        self.openings.update_value(|openings| *openings += 1);
        self.opened.set(self.openings.get_value());
        self.draft.set(draft);
        self.title.set(title);
        self.example.set(example);
    }

    /// Tells something for a while.
    pub fn tell(&self, words: impl Into<String>) {
        self.notice.set(Some(Notice { words: words.into(), undo: None, stays: false }));
    }

    /// Tells of a step just made, which can be taken back from there.
    pub fn tell_step(&self, words: impl Into<String>) {
        let state = *self;
        let undo = Some(Callback::new(move |()| state.undo()));
        self.notice.set(Some(Notice { words: words.into(), undo, stays: false }));
    }

    /// Tells of something done that `undo` takes back, whatever is done in between: it can wait.
    pub fn tell_undo(&self, words: impl Into<String>, undo: Callback<()>) {
        self.notice.set(Some(Notice { words: words.into(), undo: Some(undo), stays: true }));
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

    /// The findings that `belongs` picks.
    pub fn findings(&self, belongs: impl Fn(&Finding) -> bool) -> Vec<Finding> {
        self.outcome.with(|outcome| outcome.findings.iter().filter(|finding| belongs(finding)).copied().collect())
    }
}

/// The state that [`provide`] put there.
#[must_use]
pub fn state() -> State {
    expect_context::<State>()
}

/// Hands the state to all parts below.
pub fn provide(state: State) {
    provide_context(state);
}
