//! What a number of a recipe is known by when systems are compared: the same number in two systems has one key.

use crate::domain::balance::outcome::Case;
use crate::domain::compare::variable;
use crate::domain::recipe::draft::Draft;
use crate::domain::recipe::field::Field;
use crate::domain::recipe::liquid::Substance;

/// The key of a liquid: the same liquid in two systems has the same price and the same instruments. Its name, or its
/// substance while it has no name.
#[must_use]
pub fn liquid_key(name: &str, substance: Substance) -> String {
    let name = name.trim();
    let place = || Substance::ALL.iter().position(|other| *other == substance).unwrap_or(0);
    if name.is_empty() { format!("#{}", place()) } else { name.to_owned() }
}

/// The key of a number: a liquid's by the liquid and not by its place in the recipe.
#[must_use]
pub fn number_key(draft: &Draft, field: Field) -> String {
    match field {
        Field::Liquid(id, part) => {
            let liquid = draft.liquid(id).map(|liquid| liquid_key(&liquid.name, liquid.substance));
            format!("{}: {}", part.key(), liquid.unwrap_or_default())
        }
        plain => plain.key(),
    }
}

/// The number of that key in a recipe, among those that it uses.
#[must_use]
pub fn number_of(draft: &Draft, case: &Case, key: &str) -> Option<Field> {
    variable::used(&case.input).find(|field| number_key(draft, *field) == key)
}
