//! Where a setting lies.

/// Where a setting lies among a pump's settings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum RangeStatus {
    /// Within the tested settings and the pump's limits.
    Within,
    /// Below the lowest tested setting.
    BelowTested,
    /// Above the highest tested setting.
    AboveTested,
    /// Below the lowest setting allowed, or below zero.
    BelowLimit,
    /// Above the highest setting allowed.
    AboveLimit,
}

impl RangeStatus {
    /// Whether the pump may run there.
    #[must_use]
    pub const fn is_allowed(self) -> bool {
        !matches!(self, Self::BelowLimit | Self::AboveLimit)
    }
}
