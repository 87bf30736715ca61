//! What is wrong or unusual with one entry.

use super::range::{beside, enter_allowed, example, example_number, usual};
use crate::domain::recipe::check::limit_of;
use crate::domain::recipe::limit::{Limit, Window};
use crate::domain::{Field, Place};
use crate::quantity::number::ReadError;
use crate::quantity::{Amount, Dimension, Kind, Unit, format};
use crate::ui::text::words::name;
use crate::ui::text::{Context, Message, shown, unit_shown};
use crate::{t, told};

/// The box that an entry is in.
#[derive(Clone, Copy)]
pub(super) struct EntryBox<'a> {
    /// What was typed.
    pub typed: &'a str,
    /// What it measures.
    pub kind: Kind,
    /// What it may hold.
    pub limit: Limit,
}

impl<'a> EntryBox<'a> {
    /// The box of a field of the recipe.
    pub(super) fn at(field: Field, context: &Context<'a>) -> Self {
        let typed = context.draft.entry(field).map_or("", |entry| entry.text.as_str());
        Self { typed, kind: context.draft.kind(field), limit: limit_of(context.draft, field) }
    }

    /// The box of a place. What is said about an entry always has one; a place without is spoken of
    /// without numbers.
    pub(super) fn of(place: Place, context: &Context<'a>) -> Option<Self> {
        match place {
            Place::Field(field) => Some(Self::at(field, context)),
            Place::Liquid(_) | Place::Station(_) => None,
        }
    }
}

pub(super) fn missing(place: &str, asked: Option<EntryBox<'_>>, context: &Context<'_>) -> Message {
    match asked {
        Some(asked) => told!("finding-missing", place = place, example = example(&asked.limit, asked.kind, context)),
        None => told!("finding-missing-anywhere", place = place),
    }
}

pub(super) fn unreadable(place: &str, asked: Option<EntryBox<'_>>, error: ReadError, context: &Context<'_>) -> Message {
    let Some(asked) = asked else { return told!("finding-unreadable-anywhere", place = place) };
    let EntryBox { typed, kind, limit } = asked;
    let typed = clipped(typed);
    let number = example_number(&limit, kind, context);
    match error {
        ReadError::Empty => missing(place, Some(asked), context),
        ReadError::NotANumber => {
            let example = example(&limit, kind, context);
            told!("finding-not-a-number", place = place, typed = typed, number = number, example = example)
        }
        ReadError::SecondDecimalMark => {
            told!("finding-two-decimal-marks", place = place, typed = typed, number = number)
        }
        ReadError::Ambiguous { decimal, grouped } => {
            let mark = context.units.mark;
            told!(
                "finding-ambiguous",
                place = place,
                typed = typed,
                decimal = format::full(decimal, mark),
                grouped = format::full(grouped, mark),
                decimal_typed = format::editable(decimal, mark),
                grouped_typed = format::editable(grouped, mark),
            )
        }
        ReadError::UnknownUnit => Message {
            what: t!("finding-unknown-unit", place = place, typed = typed),
            fix: enter_with_unit(asked, context),
        },
        ReadError::OtherUnit { unit } => Message {
            what: t!(
                "finding-other-unit",
                place = place,
                typed = typed,
                unit = unit_shown(unit, context.currency),
                measured = name::dimension(unit.dimension()),
                wanted = name::dimension(kind.dimension()),
            ),
            fix: enter_with_unit(asked, context),
        },
        ReadError::TooLarge => Message {
            what: t!("finding-too-large", place = place, typed = typed),
            fix: enter_allowed(&limit, kind, context),
        },
    }
}

/// What was typed; a long text is cut.
fn clipped(typed: &str) -> String {
    const MOST: usize = 24;
    let text = typed.trim();
    let short: String = text.chars().filter(|c| !c.is_control()).take(MOST).collect();
    let more = if text.chars().count() > MOST { "…" } else { "" };
    format!("{short}{more}")
}

/// Which units a box takes.
fn enter_with_unit(asked: EntryBox<'_>, context: &Context<'_>) -> String {
    let EntryBox { kind, limit, .. } = asked;
    let units: Vec<_> = kind
        .units()
        .map(|unit| unit_shown(unit, context.currency).into_owned())
        .filter(|symbol| !symbol.is_empty())
        .collect();
    if kind.dimension() == Dimension::Number || units.is_empty() {
        return t!("finding-enter-number-alone", number = example_number(&limit, kind, context));
    }
    t!("finding-enter-with-unit", units = units.join(", "))
}

pub(super) fn not_allowed(
    place: &str,
    asked: Option<EntryBox<'_>>,
    value: Amount,
    limit: &Limit,
    meant: Option<Amount>,
    context: &Context<'_>,
) -> Message {
    let enter = enter_allowed(limit, value.kind, context);
    let value = beside(value, &[limit.least, limit.most], limit.unit, context);
    let what = match asked {
        Some(asked) => t!("finding-not-allowed", place = place, typed = clipped(asked.typed), value = value),
        None => t!("finding-not-allowed-anywhere", place = place, value = value),
    };
    let fix = match meant {
        Some(meant) => t!("finding-did-you-mean", meant = shown(meant, context), enter = enter),
        None => enter,
    };
    Message { what, fix }
}

pub(super) fn likely_fraction(place: &str, value: Amount, meant: Amount, context: &Context<'_>) -> Message {
    told!("finding-likely-fraction", place = place, value = shown(value, context), meant = shown(meant, context))
}

pub(super) fn not_usual(place: &str, value: Amount, window: Window, unit: Unit, context: &Context<'_>) -> Message {
    let range = usual(window, value.kind, unit, context);
    let source = name::source(window.source);
    let shown = beside(value, &[window.low, window.high], unit, context);
    let side = if unit.from_base(value.base) > window.high { "above" } else { "below" };
    told!("finding-not-usual", place = place, value = shown, side = side, range = range, source = source)
}

/// A press factor that came out.
pub(super) fn press_factor(place: &str, value: Amount, window: Window, unit: Unit, context: &Context<'_>) -> Message {
    let range = usual(window, value.kind, unit, context);
    let source = name::source(window.source);
    let shown = beside(value, &[window.low, window.high], unit, context);
    if unit.from_base(value.base) > window.high {
        told!("finding-press-factor-above", place = place, value = shown, range = range, source = source)
    } else {
        told!("finding-press-factor-below", place = place, value = shown, range = range, source = source)
    }
}
