//! What is wrong or unusual with one entry.

use super::range::{allowed, beside, example, example_number, usual};
use crate::domain::recipe::check::limit_of;
use crate::domain::recipe::limit::{Limit, Window};
use crate::domain::{Field, Place};
use crate::quantity::number::ReadError;
use crate::quantity::{Amount, Dimension, Kind, Unit, format};
use crate::ui::text::words::name;
use crate::ui::text::{Context, shown, unit_shown};

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

pub(super) fn missing(asked: Option<EntryBox<'_>>, context: &Context<'_>) -> (String, String) {
    let fix = match asked {
        Some(asked) => format!("Enter a number, such as {}.", example(&asked.limit, asked.kind, context)),
        None => "Enter a number.".to_owned(),
    };
    ("still empty.".to_owned(), fix)
}

pub(super) fn unreadable(asked: Option<EntryBox<'_>>, error: ReadError, context: &Context<'_>) -> (String, String) {
    let Some(asked) = asked else {
        return ("what was typed is not a number.".to_owned(), "Type digits only.".to_owned());
    };
    let EntryBox { typed, kind, limit } = asked;
    let raw = raw(typed);
    match error {
        ReadError::Empty => missing(Some(asked), context),
        ReadError::NotANumber => (
            format!("{raw} is not a number."),
            format!(
                "Type digits with one decimal mark, such as {}. A unit may follow, such as {}.",
                example_number(&limit, kind, context),
                example(&limit, kind, context)
            ),
        ),
        ReadError::SecondDecimalMark => (
            format!("{raw} has two decimal marks."),
            format!("Enter it with one, such as {}. Spaces group digits.", example_number(&limit, kind, context)),
        ),
        ReadError::Ambiguous { decimal, grouped } => {
            let mark = context.units.mark;
            let typed = |value| format::editable(value, mark);
            (
                format!("{raw} can be read as {} or as {}.", format::full(decimal, mark), format::full(grouped, mark)),
                format!("Which of the two is meant? Type {} or {}.", typed(decimal), typed(grouped)),
            )
        }
        ReadError::UnknownUnit => {
            (format!("{raw} ends in something that is no unit known here."), in_a_unit(asked, context))
        }
        ReadError::OtherUnit { unit } => (
            format!(
                "{raw} is in {}, which measures {}. This box holds {}.",
                unit_shown(unit, context.currency),
                name::dimension(unit.dimension()),
                name::dimension(kind.dimension())
            ),
            in_a_unit(asked, context),
        ),
        ReadError::TooLarge => (
            format!("{raw} is too large to compute with."),
            format!("Enter a value {}.", allowed(&limit, kind, context)),
        ),
    }
}

/// What was typed, in quotation marks; a long text is cut.
fn raw(typed: &str) -> String {
    const MOST: usize = 24;
    let text = typed.trim();
    let short: String = text.chars().filter(|c| !c.is_control()).take(MOST).collect();
    let more = if text.chars().count() > MOST { "…" } else { "" };
    format!("“{short}{more}”")
}

/// Which units a box takes.
fn in_a_unit(asked: EntryBox<'_>, context: &Context<'_>) -> String {
    let EntryBox { kind, limit, .. } = asked;
    let units: Vec<_> = kind
        .units()
        .map(|unit| unit_shown(unit, context.currency).into_owned())
        .filter(|symbol| !symbol.is_empty())
        .collect();
    if kind.dimension() == Dimension::Number || units.is_empty() {
        return format!("Enter the number alone, such as {}.", example_number(&limit, kind, context));
    }
    format!("Enter the number alone, or with one of these behind it: {}.", units.join(", "))
}

pub(super) fn not_allowed(
    asked: Option<EntryBox<'_>>,
    value: Amount,
    limit: &Limit,
    meant: Option<Amount>,
    context: &Context<'_>,
) -> (String, String) {
    let range = allowed(limit, value.kind, context);
    let value = beside(value, &[limit.least, limit.most], limit.unit, context);
    let what = match asked.map(|asked| raw(asked.typed)) {
        Some(raw) => format!("{raw} is {value}, which cannot be."),
        None => format!("{value} cannot be."),
    };
    let fix = match meant {
        Some(meant) => format!("Did you mean {}? Enter a value {range}.", shown(meant, context)),
        None => format!("Enter a value {range}."),
    };
    (what, fix)
}

pub(super) fn likely_fraction(value: Amount, meant: Amount, context: &Context<'_>) -> (String, String) {
    (
        format!("{} is very low; did you mean {}?", shown(value, context), shown(meant, context)),
        format!("Type {}, or leave it if {} is right.", shown(meant, context), shown(value, context)),
    )
}

pub(super) fn not_usual(value: Amount, window: Window, unit: Unit, context: &Context<'_>) -> (String, String) {
    (
        format!("{}.", outside(value, window, unit, " is", context)),
        "Check the entry. If it is right for this mill, leave it: you know the mill.".to_owned(),
    )
}

/// A press factor that came out.
pub(super) fn press_factor(value: Amount, window: Window, unit: Unit, context: &Context<'_>) -> (String, String) {
    let fix = if unit.from_base(value.base) > window.high {
        "The line could run faster, or the board is pressed longer than is usual. If it is meant so, leave it."
    } else {
        "The board may not cure in that time. Check fibre flow, mat width and press length, and try it out with care."
    };
    (format!("the press factor comes to {}.", outside(value, window, unit, ",", context)), fix.to_owned())
}

/// "14 % is above the usual 9 to 12 % (source)", with another link than " is" where that reads ill.
fn outside(value: Amount, window: Window, unit: Unit, link: &str, context: &Context<'_>) -> String {
    let side = if unit.from_base(value.base) > window.high { "above" } else { "below" };
    let range = usual(window, value.kind, unit, context);
    let source = name::source(window.source);
    let value = beside(value, &[window.low, window.high], unit, context);
    format!("{value}{link} {side} the usual {range} ({source})")
}
