//! English.

mod balance;
mod bench;
mod caution;
mod compare;
mod field;
mod figure;
mod finding;
pub mod library;
mod line;
mod make_up;
mod name;
mod record;
mod system;
pub mod versions;

use super::Words;

/// English, spelled the British way, units as their symbols.
pub static WORDS: Words = Words {
    field: field::field,
    field_name: field::field_name,
    figure: figure::figure,
    liquid: name::liquid,
    finding: finding::finding,
    loose_entry: finding::loose_entry,
    grade: name::grade,
    caution: caution::caution,
    source: name::source,
    station: name::station,
    role: name::role,
    substance: name::substance,
    machine: name::machine,
    furnish: name::furnish,
    board_kind: name::board_kind,
    feed_way: name::feed_way,
    faces: name::faces,
    water_way: name::water_way,
    dose_way: name::dose_way,
    binder_system: system::binder_system,
    system: name::system,
    solute: name::solute,
    make_up: make_up::make_up,
    glue: make_up::glue,
    constant: balance::constant,
    ground: balance::ground,
    refusal: record::refusal,
    unread: record::unread,
    store: record::store,
    unsaved: record::unsaved,
    bench: bench::BENCH,
    compare: compare::COMPARE,
    line: line::LINE,
};
