//! The definitions that customary units are built from.
//!
//! Source: NIST SP 811 (2008), appendix B.

/// Kilograms in a pound, exact.
pub const POUND: f64 = 0.453_592_37;
/// Metres in a foot, exact.
pub const FOOT: f64 = 0.3048;
/// Metres in an inch, exact.
pub const INCH: f64 = 0.0254;
/// Newtons in a pound-force: the pound times the standard acceleration of free fall, exact.
pub const POUND_FORCE: f64 = POUND * 9.806_65;
/// Cubic metres in a US gallon, exact.
pub const GALLON: f64 = 3.785_411_784e-3;
/// Joules in a British thermal unit (International Table).
pub const BTU: f64 = 1_055.055_852_62;
/// Kilograms in a short ton of 2000 pounds, exact.
pub const SHORT_TON: f64 = 2_000.0 * POUND;
/// Square metres in a square foot, exact.
pub const SQUARE_FOOT: f64 = FOOT * FOOT;
/// Cubic metres in a cubic foot, exact.
pub const CUBIC_FOOT: f64 = FOOT * FOOT * FOOT;
/// Seconds in a minute.
pub const MINUTE: f64 = 60.0;
/// Seconds in an hour.
pub const HOUR: f64 = 3_600.0;
