//! What the parts of the tab share beside the app's state.

use crate::browser::clock;
use crate::domain::line::working::tank_working;
use crate::domain::line::{
    Delivered, LineFigure, LineFinding, LineWorking, Stock, Tank, TankDraft, TankId, TankState, TankWay, deliver,
};
use crate::domain::{Draft, LiquidId};
use crate::quantity::{Amount, Kind, format};
use crate::t;
use crate::ui::page::line::context::solved;
use crate::ui::page::line::parts::ties;
use crate::ui::page::line::settings::context::parts;
use crate::ui::part::amount::with_unit;
use crate::ui::state::State;
use crate::ui::text::{symbol_shown, words};
use leptos::prelude::*;
use uom::ConstZero;
use uom::si::f64::{Mass, Volume};

/// What the parts of the tab share.
#[derive(Clone, Copy)]
pub struct TankSheet {
    /// The tanks.
    pub tanks: Memo<Vec<TankNow>>,
    /// The delivery.
    pub delivery: Memo<DeliveryNow>,
    /// The time, to the minute.
    pub now: Memo<u64>,
    /// The tank whose details are open.
    pub open_tank: RwSignal<Option<TankId>>,
}

/// A tank as it is now.
#[derive(Debug, Clone, PartialEq)]
pub struct TankNow {
    /// Which.
    pub id: TankId,
    /// By its name.
    pub name: String,
    /// What it holds, in words.
    pub holds: String,
    /// How its content is read.
    pub way: TankWay,
    /// When its content was read.
    pub read_at: Option<u64>,
    /// When its next delivery was ordered.
    pub ordered_at: Option<u64>,
    /// As checked; `None` where a number is missing or wrong.
    pub tank: Option<Tank>,
    /// When it runs empty, and what still fits; `None` where its content or its use is not known.
    pub state: Option<TankState>,
    /// What there is to say about it.
    pub findings: Vec<LineFinding>,
}

/// All tanks, in the order of the page.
pub fn tanks_now(state: State, now: u64) -> Vec<TankNow> {
    let drafts = state.line.book(|book| book.tanks.clone());
    let one = |draft: &TankDraft| {
        let tank = state.line.checked.with(|line| line.tank(draft.id).cloned());
        let found =
            solved(state, |recipe, case, line, _| tank.as_ref()?.state_among(&line.tanks, recipe, case)).flatten();
        let offered = ties(state, Some(draft.feeds.clone()));
        let holds = offered.into_iter().find(|(feeds, _)| feeds.same(&draft.feeds)).map(|(_, name)| name);
        let findings = tank.as_ref().zip(found).map(|(tank, found)| found.findings(tank, now)).unwrap_or_default();
        TankNow {
            id: draft.id,
            name: words::line::tank(draft).into_owned(),
            holds: holds.unwrap_or_default(),
            way: draft.way,
            read_at: draft.read_at,
            ordered_at: draft.ordered_at,
            tank,
            state: found,
            findings,
        }
    };
    drafts.iter().map(one).collect()
}

/// The delivery as it is now.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct DeliveryNow {
    /// Which liquid of the recipe; `None` before one is chosen.
    pub liquid: Option<LiquidId>,
    /// Into which tank.
    pub tank: Option<TankId>,
    /// What is in that tank; its mass is zero where that is not known.
    pub stock: Option<Stock>,
    /// What still fits into it.
    pub fits: Option<Volume>,
    /// What the certificate changes; `None` where an entry cannot be used, or without a result.
    pub result: Option<Delivered>,
    /// What there is to say.
    pub findings: Vec<LineFinding>,
    /// Whether the recipe has an error, so that nothing can be accepted.
    pub old: bool,
}

impl DeliveryNow {
    /// Whether there is something to accept. `recipes` says whether any saved recipe is selected.
    pub fn can_accept(&self, own: &Draft, recipes: bool) -> bool {
        self.result.as_ref().is_some_and(|delivered| {
            let enters = delivered.draft != *own || delivered.blend.is_some();
            !self.old && delivered.after.is_some() && (enters || (delivered.says_something() && recipes))
        })
    }
}

/// What the certificate changes. Follows the recipe, the line and the entries.
pub fn deliver_now(state: State) -> DeliveryNow {
    let old = state.shown.with(|shown| shown.old);
    let found = solved(state, |draft, case, line, book| {
        let liquid = book.delivered.filter(|id| draft.liquid(*id).is_some())?;
        let tank = book.tank_delivered_into(draft);
        let own = case.input.liquids.as_slice().iter().find(|own| own.id == liquid)?;
        let level = tank.and_then(|id| line.tank(id)).and_then(|tank| tank.state(draft, case));
        let mass = level.map_or(Mass::ZERO, |level| level.content * own.density);
        let stock = Stock { mass, solids: own.solids, density: own.density };
        let (result, findings) = deliver(draft, case, line, book);
        let fits = level.map(|level| level.fits);
        Some(DeliveryNow { liquid: Some(liquid), tank, stock: Some(stock), fits, result, findings, old })
    });
    found.flatten().unwrap_or_else(|| {
        let chosen = state.line.book(|book| book.delivered);
        let liquid = chosen.filter(|id| state.draft.with(|draft| draft.liquid(*id).is_some()));
        DeliveryNow { liquid, old, ..DeliveryNow::default() }
    })
}

/// The key of a figure of a tank.
pub fn tank_key(id: TankId, figure: LineFigure) -> String {
    format!("tank.{}.{}", id.0, figure.key())
}

/// The figures of a tank that have a working.
pub const WORKED: [LineFigure; 6] = [
    LineFigure::Lasts,
    LineFigure::PerShift,
    LineFigure::Fits,
    LineFigure::Content,
    LineFigure::Usable,
    LineFigure::UsableMass,
];

/// Name and working of a tank's figure by its key.
pub fn working_of(state: State, sheet: TankSheet, key: &str) -> Option<(String, LineWorking)> {
    if !key.starts_with("tank.") {
        return None;
    }
    sheet.tanks.with(|tanks| {
        let figures = tanks.iter().flat_map(|tank| WORKED.map(|figure| (tank, figure)));
        let (now, figure) = figures.into_iter().find(|(tank, figure)| tank_key(tank.id, *figure) == key)?;
        let (tank, found) = now.tank.as_ref().zip(now.state)?;
        let working = solved(state, |_, case, _, _| tank_working(figure, tank, &found, case)).flatten()?;
        Some((figure_name(&now.name, figure), working))
    })
}

/// A figure with the name of its tank.
pub fn figure_name(tank: &str, figure: LineFigure) -> String {
    let words = words::line::figure(figure);
    if words.note.is_empty() {
        format!("{tank}: {}", words.label)
    } else {
        format!("{tank}: {}, {}", words.label, words.note)
    }
}

/// Number and unit of a figure of a tank; both blank where there is none.
pub fn figure_text(state: State, found: Option<TankState>, figure: LineFigure) -> (String, String) {
    if figure == LineFigure::Lasts {
        let lasts = found.and_then(|found| found.lasts);
        return lasts.map_or_else(Default::default, |lasts| hours(state, lasts.value));
    }
    let base = found.and_then(|found| match figure {
        LineFigure::PerShift => Some(found.per_shift.value),
        LineFigure::Fits => Some(found.fits.value),
        LineFigure::Content => Some(found.content.value),
        LineFigure::Usable => Some(found.usable.value),
        LineFigure::UsableMass => Some(found.usable_mass.value),
        LineFigure::Rate => Some(found.rate.value),
        _ => None,
    });
    base.map_or_else(Default::default, |base| parts(state, Amount::from_base(figure.kind(), base)))
}

/// A moment in words, as seen from `now`: the time alone where it is today.
pub fn moment(at: u64, now: u64) -> String {
    const DAY: u64 = 86_400_000;
    let day = clock::date(at);
    if day == clock::date(now) {
        t!("tank-today", time = clock::time(at))
    } else if day == clock::date(now + DAY) {
        t!("tank-tomorrow", time = clock::time(at))
    } else if day == clock::date(now.saturating_sub(DAY)) {
        t!("tank-yesterday", time = clock::time(at))
    } else {
        clock::date_time(at)
    }
}

/// Hours as number and unit, to three digits: nobody knows a tank better.
pub fn hours(state: State, seconds: f64) -> (String, String) {
    let units = state.units.get();
    let unit = units.unit(Kind::ShiftTime);
    (format::significant(unit.from_base(seconds), 3, units.mark), symbol_shown(unit).to_owned())
}

/// An amount of a kind as number and unit in one text.
pub fn amount(state: State, kind: Kind, base: f64) -> String {
    with_unit(state, Amount::from_base(kind, base), None)
}

/// The number alone.
pub fn number(state: State, kind: Kind, base: f64) -> String {
    parts(state, Amount::from_base(kind, base)).0
}
