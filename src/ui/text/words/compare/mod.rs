//! The comparison: names, answers, uncertainty.

mod answer;
mod economy;
mod emission;
mod name;
mod side;
mod uncertainty;

use crate::ui::text::compare::CompareWords;

pub(super) const COMPARE: CompareWords = CompareWords {
    output: name::output,
    obstacle: name::obstacle,
    difference: side::difference,
    economy_field: economy::field,
    system_economy_field: economy::system_field,
    emission_field: emission::field,
    emission_error: emission::error,
    market: emission::market,
    article: emission::article,
    not_side_by_side: side::not_side_by_side,
    unpriced: side::unpriced,
    answer: answer::answer,
    no_answer: answer::no_answer,
    break_even: answer::break_even,
    no_price: answer::no_price,
    no_range: answer::no_range,
    limited: answer::limited,
    form: name::form,
    instrument: name::instrument,
    uncertain: uncertainty::uncertain,
    no_study: uncertainty::no_study,
    agreement_note: uncertainty::agreement_note,
    why: uncertainty::why,
};
