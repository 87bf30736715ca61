//! The weigh sheet that a first start shows: three boards of the invented mill's laboratory.

use crate::domain::recipe::draft::Entry;
use crate::domain::trial::weigh_sheet::draft::SheetDraft;
use crate::domain::trial::weigh_sheet::field::WeighField;
use crate::quantity::Unit;

/// What the invented laboratory has; the rest is as on every new sheet.
const FILLED: &[(WeighField, &str, Unit)] = &[
    (WeighField::MatLength, "350", Unit::Millimetre),
    (WeighField::MatWidth, "350", Unit::Millimetre),
    (WeighField::Boards, "3", Unit::One),
    (WeighField::Capacity, "1500", Unit::Gram),
    (WeighField::SprayVolume, "50", Unit::MillilitrePerMinute),
];

/// The example. All of it counts as filled in by the app, so that it is known as an example until somebody types over it.
#[must_use]
pub fn example_sheet() -> SheetDraft {
    let mut sheet = SheetDraft::default();
    for (field, text, unit) in FILLED {
        *sheet.entry_mut(*field) = Entry::preset(*text, *unit);
    }
    sheet
}
