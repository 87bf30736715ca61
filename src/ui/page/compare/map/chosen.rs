//! Where the choices of the tab are kept, and what is chosen at first.

use crate::ui::page::compare::choices::{KeySlot, SystemSlot};
use crate::ui::page::compare::ranges::RangeSlot;

/// The system.
pub const SYSTEM: SystemSlot = SystemSlot {
    id: "map.system",
    get: |typed| typed.map.system.as_ref(),
    set: |typed, choice| typed.map.system = choice,
};
/// The input across.
pub const ACROSS: KeySlot =
    KeySlot { id: "map.across", get: |typed| typed.map.across.clone(), set: |typed, key| typed.map.across = key };
/// The input upward.
pub const UP: KeySlot =
    KeySlot { id: "map.up", get: |typed| typed.map.up.clone(), set: |typed, key| typed.map.up = key };
/// The figure.
pub const OUTPUT: KeySlot =
    KeySlot { id: "map.output", get: |typed| typed.map.output.clone(), set: |typed, key| typed.map.output = key };
/// The ranges.
pub const RANGES: RangeSlot = RangeSlot { get: |typed| &typed.map.ranges, get_mut: |typed| &mut typed.map.ranges };
/// The input across at first.
pub const FIRST_ACROSS: &str = "fibre_moisture";
/// The input upward at first.
pub const FIRST_UP: &str = "fibre_flow";
/// The figure at first.
pub const FIRST_OUTPUT: &str = "water_dose";
