//! Systems side by side: what differs, what is missing.

use crate::domain::compare::side::{
    Belongs, ComparedSystem, Differing, FEWEST, MOST, SideBySideError, SystemDifference,
};
use crate::ui::text::words::{field, name};
use crate::ui::text::{Context, Message, shown};

/// "A: 680 kg/m³; B: 700 kg/m³".
fn each<T>(systems: &[ComparedSystem], values: &[T], text: impl Fn(&T) -> String) -> String {
    let parts = systems.iter().zip(values).map(|(system, value)| format!("{}: {}", system.name, text(value)));
    parts.collect::<Vec<_>>().join("; ")
}

pub(super) fn difference(difference: &SystemDifference, systems: &[ComparedSystem], context: &Context<'_>) -> Message {
    let (what, values) = match &difference.what {
        Differing::FeedWay(ways) => {
            ("Fibre flow set by".to_owned(), each(systems, ways, |way| name::feed_way(*way).to_lowercase()))
        }
        Differing::WaterWay(ways) => {
            ("Water dose set by".to_owned(), each(systems, ways, |way| name::water_way(*way).to_lowercase()))
        }
        Differing::SprayedFaces(faces) => {
            ("Face water on".to_owned(), each(systems, faces, |faces| name::faces(*faces).to_lowercase()))
        }
        Differing::Number(number, amounts) => (
            field::field_name(*number, context.draft),
            each(systems, amounts, |amount| amount.map_or_else(|| "blank".to_owned(), |amount| shown(amount, context))),
        ),
    };
    let fix = match difference.belongs {
        Belongs::Fibre => "The fibre is not the same. Use the reference's fibre for a fair comparison.",
        Belongs::Board => "The board is not the same. Use the reference's board for a fair comparison.",
        Belongs::Line => "The line is not the same. Use the reference's line for a fair comparison.",
        Belongs::System => {
            "It belongs to the system and may differ; its effect on the figures is not due to the liquids."
        }
    };
    Message { what: format!("{what} differs. {values}."), fix: fix.to_owned() }
}

pub(super) fn not_side_by_side(error: SideBySideError) -> Message {
    let (what, fix) = match error {
        SideBySideError::TooFew => {
            (format!("Fewer than {FEWEST} systems are selected."), "Add a recipe or a binder system.".to_owned())
        }
        SideBySideError::TooMany => {
            (format!("More than {MOST} systems are selected."), format!("Remove all but {MOST}."))
        }
        SideBySideError::NoReference => {
            ("The reference was deleted.".to_owned(), "Select another reference.".to_owned())
        }
    };
    Message { what, fix }
}

pub(super) fn unpriced(system: &ComparedSystem) -> Option<Message> {
    let fields = system.unpriced();
    if fields.is_empty() {
        return None;
    }
    let names: Vec<_> = fields.iter().map(|price| field::field_name(*price, &system.draft)).collect();
    Some(Message {
        what: format!("{}: no cost, because prices are missing: {}.", system.name, names.join("; ")),
        fix: "Enter these prices under “Prices of liquids”, or in the recipe.".to_owned(),
    })
}
