//! The comparison: names, answers, uncertainty.

mod answer;
mod name;
mod side;
mod uncertainty;

use crate::ui::text::compare::CompareWords;

pub(super) const COMPARE: CompareWords = CompareWords {
    output: name::output,
    obstacle: name::obstacle,
    belongs: name::belongs,
    difference: side::difference,
    not_side_by_side: side::not_side_by_side,
    unpriced: side::unpriced,
    answer: answer::answer,
    no_answer: answer::no_answer,
    equal_cost: answer::equal_cost,
    no_price: answer::no_price,
    form: name::form,
    instrument: name::instrument,
    uncertain: uncertainty::uncertain,
    no_study: uncertainty::no_study,
    agreement: uncertainty::agreement,
    why: uncertainty::why,
    improve: uncertainty::improve,
};
