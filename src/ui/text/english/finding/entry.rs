//! What is wrong or unusual with one entry.

use super::range::{allowed, beside, example, example_number, usual};
use crate::domain::check::limit_of;
use crate::domain::limit::{Limit, Window};
use crate::domain::{Field, Place};
use crate::quantity::number::ReadError;
use crate::quantity::{Amount, Dimension, Unit, format};
use crate::ui::text::english::name;
use crate::ui::text::{Context, shown, unit_shown};

/// The field of a place. What is said about an entry always has one; a place without is spoken of
/// without numbers.
const fn field_of(place: Place) -> Option<Field> {
    match place {
        Place::Field(field) => Some(field),
        Place::Liquid(_) | Place::Station(_) => None,
    }
}

pub(super) fn missing(place: Place, context: &Context<'_>) -> (String, String) {
    let mend = match field_of(place) {
        Some(field) => format!("Type a number, such as {}.", example(field, context)),
        None => "Type a number.".to_owned(),
    };
    ("still empty.".to_owned(), mend)
}

pub(super) fn unreadable(place: Place, error: ReadError, context: &Context<'_>) -> (String, String) {
    let Some(field) = field_of(place) else {
        return ("what was typed is not a number.".to_owned(), "Type digits only.".to_owned());
    };
    let raw = raw(field, context);
    match error {
        ReadError::Empty => missing(place, context),
        ReadError::NotANumber => (
            format!("{raw} is not a number."),
            format!(
                "Type digits with one decimal mark, such as {}. A unit may follow, such as {}.",
                example_number(field, context),
                example(field, context)
            ),
        ),
        ReadError::SecondDecimalMark => (
            format!("{raw} has two decimal marks."),
            format!("Type it with one, such as {}. Spaces group digits.", example_number(field, context)),
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
            (format!("{raw} ends in something that is no unit known here."), in_a_unit(field, context))
        }
        ReadError::OtherUnit { unit } => (
            format!(
                "{raw} is in {}, which measures {}. This box holds {}.",
                unit_shown(unit, context.currency),
                name::dimension(unit.dimension()),
                name::dimension(context.draft.kind(field).dimension())
            ),
            in_a_unit(field, context),
        ),
        ReadError::TooLarge => {
            let limit = limit_of(context.draft, field);
            (
                format!("{raw} is larger than anything that is reckoned with here."),
                format!("Type a value {}.", allowed(&limit, context.draft.kind(field), context)),
            )
        }
    }
}

/// What was typed, in quotation marks; a long text is cut.
fn raw(field: Field, context: &Context<'_>) -> String {
    const MOST: usize = 24;
    let text = context.draft.entry(field).map_or("", |entry| entry.text.trim());
    let short: String = text.chars().filter(|c| !c.is_control()).take(MOST).collect();
    let more = if text.chars().count() > MOST { "…" } else { "" };
    format!("«{short}{more}»")
}

/// Which units a box takes.
fn in_a_unit(field: Field, context: &Context<'_>) -> String {
    let kind = context.draft.kind(field);
    let units: Vec<_> = kind
        .units()
        .map(|unit| unit_shown(unit, context.currency).into_owned())
        .filter(|symbol| !symbol.is_empty())
        .collect();
    if kind.dimension() == Dimension::Number || units.is_empty() {
        return format!("Type the number alone, such as {}.", example_number(field, context));
    }
    format!("Type the number alone, or with one of these behind it: {}.", units.join(", "))
}

pub(super) fn not_allowed(
    place: Place,
    value: Amount,
    limit: &Limit,
    meant: Option<Amount>,
    context: &Context<'_>,
) -> (String, String) {
    let range = allowed(limit, value.kind, context);
    let value = beside(value, &[limit.least, limit.most], limit.unit, context);
    let what = match field_of(place).map(|field| raw(field, context)) {
        Some(raw) => format!("{raw} is {value}, which cannot be."),
        None => format!("{value} cannot be."),
    };
    let mend = match meant {
        Some(meant) => format!("Did you mean {}? Type a value {range}.", shown(meant, context)),
        None => format!("Type a value {range}."),
    };
    (what, mend)
}

pub(super) fn likely_fraction(value: Amount, meant: Amount, context: &Context<'_>) -> (String, String) {
    (
        format!("{} is very low; did you mean {}?", shown(value, context), shown(meant, context)),
        format!("Type {}, or leave it if {} is right.", shown(meant, context), shown(value, context)),
    )
}

pub(super) fn not_usual(
    place: Place,
    value: Amount,
    window: Window,
    unit: Unit,
    context: &Context<'_>,
) -> (String, String) {
    let side = if unit.from_base(value.base) > window.high { "above" } else { "below" };
    let range = usual(window, value.kind, unit, context);
    let source = name::source(window.source);
    let value = beside(value, &[window.low, window.high], unit, context);
    match place {
        Place::Field(_) => (
            format!("{value} is {side} the usual {range} ({source})."),
            "Check the entry. If it is right for this mill, leave it: you know the mill.".to_owned(),
        ),
        Place::Liquid(_) | Place::Station(_) => (
            format!("the press factor comes to {value}, {side} the usual {range} ({source})."),
            if side == "above" {
                "The line could run faster, or the board is pressed longer than is usual. If it is meant so, leave it."
            } else {
                "The board may not cure in that time. Check fibre flow, mat width and press length, and try it out \
                 with care."
            }
            .to_owned(),
        ),
    }
}
