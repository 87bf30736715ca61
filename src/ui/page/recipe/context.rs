//! What the parts of the page share.

use crate::browser::page;
use crate::domain::recipe::draft::FeedWay;
use crate::domain::{Figure, Grade, LiquidId, Place};
use crate::quantity::{Kind, Unit};
use crate::t;
use crate::ui::components::SlotLine;
use crate::ui::state::{Said, State};
use leptos::prelude::*;

/// What the parts of the page share beside the app's state.
#[derive(Clone, Copy)]
pub struct SheetContext {
    /// What is said about the recipe: as it was at the last pause, so that nothing comes and goes between two keys.
    pub said: RwSignal<Vec<Said>>,
    /// Counts the changes of all that boxes and figures are read from.
    changes: Memo<usize>,
    /// The liquid whose details are open.
    pub open_liquid: RwSignal<Option<LiquidId>>,
}

/// The working that is open in a section.
#[derive(Clone, Copy)]
pub struct OpenWorking {
    /// The figure.
    pub figure: RwSignal<Option<Figure>>,
    /// What the id of the working begins with, as the same figure may be shown in several sections.
    pub scope: &'static str,
}

impl OpenWorking {
    /// None yet.
    pub fn new(scope: &'static str) -> Self {
        Self { figure: RwSignal::new(None), scope }
    }
}

impl SheetContext {
    /// Follows the recipe, but not while a number is being typed.
    pub fn new(state: State) -> Self {
        let said = RwSignal::new(Vec::new());
        Effect::new(move |_| {
            if state.typing.get() {
                return;
            }
            let now = state.said(|_| true);
            if said.with_untracked(|before| *before != now) {
                said.set(now);
            }
        });
        let changes = Memo::new(move |before: Option<&usize>| {
            state.draft.track();
            // Following a memo without reading it would not bring it up to date.
            state.shown.with(|_| ());
            state.settings.track();
            said.track();
            before.map_or(0, |before| before + 1)
        });
        Self { said, changes, open_liquid: RwSignal::new(None) }
    }

    /// What `read` makes of the recipe, its result, the settings and what is said. A page of some hundred boxes and
    /// figures that each follow all four by themselves spends most of a key press on following.
    pub fn memo<T: PartialEq + Send + Sync + 'static>(self, read: impl Fn() -> T + Send + Sync + 'static) -> Memo<T> {
        Memo::new(move |_| {
            self.changes.get();
            untrack(&read)
        })
    }

    /// What is said about a place.
    pub fn said_at(self, place: Place) -> Option<Said> {
        self.said.with(|said| {
            said.iter().filter(|said| said.finding.place == place).min_by_key(|said| said.finding.grade).cloned()
        })
    }

    /// The lines of the warning slot, the gravest first.
    pub fn lines(self) -> Vec<SlotLine> {
        let mut said = self.said.get();
        said.sort_by_key(|said| said.finding.weight());
        let line = |said: Said| SlotLine {
            grade: said.finding.grade,
            word: word(said.finding.grade),
            words: format!("{} {}", said.message.what, said.message.fix),
            show: Some(Callback::new(move |()| self.go(said.finding.place))),
        };
        said.into_iter().map(line).collect()
    }

    /// Goes to where something is entered.
    fn go(self, place: Place) {
        match place {
            Place::Field(field) => page::focus_field(&field.key()),
            Place::Liquid(id) => {
                self.open_liquid.set(Some(id));
                request_animation_frame(move || page::focus(&substance_id(id)));
            }
            Place::Station(station) => page::show(&format!("[data-station={}]", station.key())),
        }
    }
}

/// A grade in a word.
pub fn word(grade: Grade) -> String {
    match grade {
        Grade::Stop => t!("common-error"),
        Grade::Unusual => t!("common-warning"),
        Grade::Note => t!("common-note"),
    }
}

/// The id of the select for what a liquid is made of.
pub fn substance_id(id: LiquidId) -> String {
    format!("liquid-substance-{}", id.0)
}

/// The id of the button that opens a liquid's details.
pub fn details_button(id: LiquidId) -> String {
    format!("liquid-more-{}", id.0)
}

/// The unit of a pump's flow by the minute where it is shown by the hour, and the other way round.
pub fn other_time(state: State) -> Unit {
    match state.unit(Kind::PumpFlow) {
        Unit::LitrePerMinute => Unit::LitrePerHour,
        Unit::GallonPerMinute => Unit::GallonPerHour,
        Unit::GallonPerHour => Unit::GallonPerMinute,
        _ => Unit::LitrePerMinute,
    }
}

/// Whether the recipe is for the laboratory: without a fibre flow.
pub fn is_laboratory(state: State) -> bool {
    state.draft.with(|draft| draft.feed_way == FeedWay::None)
}
