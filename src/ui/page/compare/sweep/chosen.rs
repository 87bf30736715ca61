//! Where the choices of the tab are kept, and what is chosen at first.

use crate::ui::page::compare::choices::KeySlot;
use crate::ui::page::compare::ranges::RangeSlot;

/// The input.
pub const INPUT: KeySlot =
    KeySlot { id: "sweep.input", get: |typed| typed.sweep.input.clone(), set: |typed, key| typed.sweep.input = key };
/// The figure.
pub const OUTPUT: KeySlot =
    KeySlot { id: "sweep.output", get: |typed| typed.sweep.output.clone(), set: |typed, key| typed.sweep.output = key };
/// The ranges.
pub const RANGES: RangeSlot = RangeSlot { get: |typed| &typed.sweep.ranges, get_mut: |typed| &mut typed.sweep.ranges };
/// The input at first.
pub const FIRST_INPUT: &str = "fibre_moisture";
/// The figure at first.
pub const FIRST_OUTPUT: &str = "water_dose";
