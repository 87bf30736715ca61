//! What would help a pump to serve a flow.

use crate::domain::line::pumps::setting::{Setting, SettingUnit};
use crate::quantity::Solids;
use uom::si::f64::MassRate;

/// One way out, with the number it takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Help {
    /// Catch tests up to (or down to) this setting, so that it lies within what was tested.
    TestTo(Setting, SettingUnit),
    /// The liquid with these solids: thinner for a pump that is too large, thicker for one too small.
    Solids(Solids),
    /// A pump that delivers this flow within its settings.
    OtherPump(MassRate),
    /// This fibre flow, oven-dry, at most.
    FibreAtMost(MassRate),
    /// This fibre flow, oven-dry, at least.
    FibreAtLeast(MassRate),
}
