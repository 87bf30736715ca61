//! The line.

mod field;
mod figure;
mod finding;
mod name;
mod period;
mod place;
mod reason;
mod verdict;

use crate::ui::text::LineWords;

pub(super) const LINE: LineWords = LineWords {
    field: field::field,
    field_name: place::field_name,
    figure: figure::figure,
    run_figure: figure::run_figure,
    deviation: figure::deviation,
    place: place::place,
    pump: name::pump,
    tank: name::tank,
    fed: name::fed,
    finding: finding::finding,
    action: reason::action,
    verdict: verdict::verdict,
    quantity: verdict::quantity,
    split: verdict::split,
    period: period::verdict,
    period_liquid: name::period_liquid,
    why: reason::why,
    change: reason::change,
    downstream: reason::downstream,
    pipe: reason::pipe,
    stop: name::stop,
    range_status: name::range_status,
    source: name::source,
    setting_unit: name::setting_unit,
    metering: name::metering,
    model: name::model,
    r_squared: name::r_squared,
    tank_way: name::tank_way,
    table_rows: name::table_rows,
};
