//! English.

mod balance;
#[cfg(not(target_arch = "wasm32"))]
mod bench;
mod caution;
#[cfg(not(target_arch = "wasm32"))]
mod compare;
mod field;
mod figure;
mod finding;
mod help;
#[cfg(not(target_arch = "wasm32"))]
mod line;
mod make_up;
mod mix;
mod name;
mod page;
mod record;
mod shelf;
mod system;
mod systems;

use super::Words;

/// English, spelled the British way, units as their symbols.
pub static ENGLISH: Words = Words {
    code: "en",
    language: "English",
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
    feed_way: name::feed_way,
    water_way: name::water_way,
    dose_way: name::dose_way,
    binder_system: system::binder_system,
    kind: name::kind,
    dimension: name::dimension,
    system: name::system,
    solute: name::solute,
    mix_field: mix::field,
    amount_way: mix::amount_way,
    share_way: mix::share_way,
    make_up: make_up::make_up,
    glue: make_up::glue,
    node: balance::node,
    stream: balance::stream,
    constant: balance::constant,
    ground: balance::ground,
    refusal: record::refusal,
    unread: record::unread,
    store: record::store,
    unsaved: record::unsaved,
    #[cfg(not(target_arch = "wasm32"))]
    bench: bench::BENCH,
    #[cfg(not(target_arch = "wasm32"))]
    compare: compare::COMPARE,
    #[cfg(not(target_arch = "wasm32"))]
    line: line::LINE,
    tools: page::TOOLS,
    recipe_page: page::RECIPE,
    shelf_page: shelf::SHELF,
    systems_page: systems::SYSTEMS,
    mix_page: mix::MIX,
    help_page: help::HELP,
};
