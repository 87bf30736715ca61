//! Systems side by side: what differs, what is missing.

use crate::domain::compare::side::{Belongs, Difference, Differing, FEWEST, MOST, NotSideBySide, System};
use crate::ui::text::english::{field, name};
use crate::ui::text::{Context, Message, shown};

/// "A: 680 kg/m³; B: 700 kg/m³".
fn each<T>(systems: &[System], values: &[T], text: impl Fn(&T) -> String) -> String {
    let parts = systems.iter().zip(values).map(|(system, value)| format!("{}: {}", system.name, text(value)));
    parts.collect::<Vec<_>>().join("; ")
}

pub(super) fn difference(difference: &Difference, systems: &[System], context: &Context<'_>) -> Message {
    let (what, values) = match &difference.what {
        Differing::FeedWay(ways) => {
            ("What fixes the fibre flow".to_owned(), each(systems, ways, |way| name::feed_way(*way).to_lowercase()))
        }
        Differing::WaterWay(ways) => {
            ("What fixes the water dose".to_owned(), each(systems, ways, |way| name::water_way(*way).to_lowercase()))
        }
        Differing::Number(number, amounts) => (
            field::field_name(*number, context.draft),
            each(systems, amounts, |amount| amount.map_or_else(|| "blank".to_owned(), |amount| shown(amount, context))),
        ),
    };
    let mend = match difference.belongs {
        Belongs::Fibre => "The fibre is not the same. Take it over from the reference, or mind the difference.",
        Belongs::Board => "The board is not the same. Take it over from the reference, or mind the difference.",
        Belongs::Line => "The line is not the same. Take it over from the reference, or mind the difference.",
        Belongs::System => {
            "This belongs to the system and may differ; what it changes in the figures is not owed to the liquids."
        }
    };
    Message { what: format!("{what} differs. {values}."), mend: mend.to_owned() }
}

pub(super) fn not_side_by_side(error: NotSideBySide) -> Message {
    let (what, mend) = match error {
        NotSideBySide::TooFew => (
            format!("There are fewer than {FEWEST} systems to compare."),
            "Choose another recipe or binder system beside the first.".to_owned(),
        ),
        NotSideBySide::TooMany => (
            format!("There are more than {MOST} systems, more than fit side by side."),
            format!("Leave out all but {MOST}."),
        ),
        NotSideBySide::NoReference => (
            "The system that the others are compared with is no longer there.".to_owned(),
            "Choose another as the reference.".to_owned(),
        ),
    };
    Message { what, mend }
}

pub(super) fn unpriced(system: &System) -> Option<Message> {
    let fields = system.unpriced();
    if fields.is_empty() {
        return None;
    }
    let names: Vec<_> = fields.iter().map(|price| field::field_name(*price, &system.draft)).collect();
    Some(Message {
        what: format!("{}: the cost leaves out what has no price. Blank: {}.", system.name, names.join("; ")),
        mend: "Type the prices, or compare the costs with systems that leave out the same.".to_owned(),
    })
}
