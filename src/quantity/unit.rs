//! Every unit that a number can be typed or shown in.

use super::exact::{BTU, CUBIC_FOOT, FOOT, GALLON, HOUR, INCH, MINUTE, POUND, POUND_FORCE, SHORT_TON, SQUARE_FOOT};
use serde::{Deserialize, Serialize};

/// What a unit measures. Two units convert into each other exactly when they share a dimension.
///
/// Moisture is kept apart from [`Fraction`](Self::Fraction): its two units are the dry and the wet
/// basis, and going from one to the other is not a multiplication.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[allow(missing_docs, reason = "the names say it")]
pub enum Dimension {
    Mass,
    MassFlow,
    Volume,
    VolumeFlow,
    Density,
    ArealMass,
    LinearMass,
    Length,
    Area,
    AreaFlow,
    Speed,
    Time,
    /// Time per length, as a press factor.
    Slowness,
    Temperature,
    SpecificEnergy,
    HeatFlow,
    Fraction,
    Moisture,
    Force,
    /// Force per area.
    Stress,
    /// Force per length, as the slope of a load over a deflection.
    Stiffness,
    /// A drive's frequency, as its inverter shows it.
    Frequency,
    /// Turns of a shaft per time.
    Rotation,
    /// Mass flow per frequency of the drive.
    FlowPerFrequency,
    /// Mass flow per turns per time.
    FlowPerRotation,
    /// Volume per mass of something else.
    SpecificVolume,
    /// Relative change of volume per change of temperature.
    Expansion,
    /// Money per mass.
    Price,
    /// Money per volume of board.
    Cost,
    /// Money per year of given hours.
    YearCost,
    /// A bare number.
    Number,
}

/// Declares the units, one a line: the name, its dimension, its symbol, the other spellings that are understood when typed, and the
/// factor: how many base units one of it is, as a number or a fraction of two (numbers divided by a whole stay as exact as can be).
/// A scale whose zero is not the base unit's says where that zero is on it; a moisture on the wet basis says so.
macro_rules! units {
    ($(
        $(#[$doc:meta])*
        $name:ident: $dimension:ident, $symbol:literal, [$($alias:literal),*],
        $factor:tt $(/ $divisor:tt)? $(, zero at $zero:literal)? $(, basis $basis:ident)?;
    )*) => {
        /// A unit of measurement. It is stored as its symbol, so that a file says in plain text what its numbers mean.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
        #[allow(missing_docs, reason = "the names say it")]
        pub enum Unit { $( $(#[$doc])* #[serde(rename = $symbol)] $name, )* }

        impl Unit {
            /// All units.
            pub const ALL: &'static [Unit] = &[ $( Unit::$name, )* ];

            /// What the unit measures.
            #[must_use]
            pub const fn dimension(self) -> Dimension {
                match self { $( Self::$name => Dimension::$dimension, )* }
            }

            /// The symbol as shown, and as stored in files. Money is without its currency.
            #[must_use]
            pub const fn symbol(self) -> &'static str {
                match self { $( Self::$name => $symbol, )* }
            }

            /// Other spellings understood behind a typed number, in lower case.
            #[must_use]
            pub const fn aliases(self) -> &'static [&'static str] {
                match self { $( Self::$name => &[$($alias),*], )* }
            }

            /// How numbers in this unit become numbers in the base unit.
            const fn conversion(self) -> Conversion {
                match self { $(
                    Self::$name => Conversion {
                        factor: $factor,
                        $( divisor: $divisor, )?
                        $( zero: Some($zero), )?
                        $( basis: Basis::$basis, )?
                        ..Conversion::NONE
                    },
                )* }
            }
        }
    };
}

/// Numbers of a unit to the base unit: (value − zero) · factor / divisor.
struct Conversion {
    factor: f64,
    divisor: f64,
    /// Where the base unit's zero is on this unit's scale, if not at its own zero.
    zero: Option<f64>,
    basis: Basis,
}

/// What a fraction is related to.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Basis {
    /// What the base unit is related to.
    Base,
    /// The mass with its water, while the base unit is related to the oven-dry mass.
    Wet,
}

impl Conversion {
    const NONE: Self = Self { factor: 1.0, divisor: 1.0, zero: None, basis: Basis::Base };

    fn base_of(&self, value: f64) -> f64 {
        let scaled = (value - self.zero.unwrap_or(0.0)) * self.factor / self.divisor;
        match self.basis {
            Basis::Base => scaled,
            Basis::Wet => dry_basis(scaled),
        }
    }

    fn value_of(&self, base: f64) -> f64 {
        let scaled = match self.basis {
            Basis::Base => base,
            Basis::Wet => base / (1.0 + base),
        };
        let value = scaled * self.divisor / self.factor;
        self.zero.map_or(value, |zero| settled(value + zero))
    }
}

/// ω = u/(1−u). Infinite from u = 1 up, where nothing is left to relate to (the formula itself would come back from there with a
/// negative moisture).
fn dry_basis(wet_basis: f64) -> f64 {
    if wet_basis < 1.0 { wet_basis / (1.0 - wet_basis) } else { f64::INFINITY }
}

/// Zero for what is left of a zero after 273.15 was added and subtracted again: the spacing of
/// doubles there is 6·10⁻¹⁴, and 32 °F must not be shown as 5.7·10⁻¹⁴ °C.
fn settled(degrees: f64) -> f64 {
    if degrees.abs() < 1.0e-12 { 0.0 } else { degrees }
}

units! {
    Gram: Mass, "g", ["gram", "grams"], 1.0 / 1_000.0;
    Kilogram: Mass, "kg", ["kilogram", "kilograms"], 1.0;
    Tonne: Mass, "t", ["tonne", "tonnes"], 1_000.0;
    Pound: Mass, "lb", ["lbs", "pound", "pounds"], POUND;
    ShortTon: Mass, "short ton", ["short tons", "us ton"], SHORT_TON;

    KilogramPerHour: MassFlow, "kg/h", ["kg/hr", "kgh", "kg per hour"], 1.0 / HOUR;
    TonnePerHour: MassFlow, "t/h", ["t/hr", "tph", "tonnes per hour"], 1_000.0 / HOUR;
    KilogramPerMinute: MassFlow, "kg/min", ["kg per minute"], 1.0 / MINUTE;
    GramPerMinute: MassFlow, "g/min", ["g per minute"], 1.0 / (1_000.0 * MINUTE);
    PoundPerHour: MassFlow, "lb/h", ["lb/hr", "lbs/h", "lbs/hr", "pph"], POUND / HOUR;
    PoundPerMinute: MassFlow, "lb/min", ["lbs/min"], POUND / MINUTE;
    ShortTonPerHour: MassFlow, "short ton/h", ["short tons/h", "st/h"], SHORT_TON / HOUR;

    Millilitre: Volume, "mL", ["ml"], 1.0 / 1.0e6;
    Litre: Volume, "L", ["l", "litre", "litres", "liter", "liters"], 1.0 / 1_000.0;
    CubicMetre: Volume, "m³", ["m3", "cubic metres"], 1.0;
    Gallon: Volume, "US gal", ["gal", "gallon", "gallons"], GALLON;
    CubicFoot: Volume, "ft³", ["ft3", "cu ft"], CUBIC_FOOT;

    MillilitrePerMinute: VolumeFlow, "mL/min", ["ml/min"], 1.0 / (1.0e6 * MINUTE);
    LitrePerHour: VolumeFlow, "L/h", ["l/h", "l/hr", "lph"], 1.0 / (1_000.0 * HOUR);
    LitrePerMinute: VolumeFlow, "L/min", ["l/min", "lpm"], 1.0 / (1_000.0 * MINUTE);
    CubicMetrePerHour: VolumeFlow, "m³/h", ["m3/h", "m3/hr"], 1.0 / HOUR;
    GallonPerMinute: VolumeFlow, "US gal/min", ["gal/min", "gpm"], GALLON / MINUTE;
    GallonPerHour: VolumeFlow, "US gal/h", ["gal/h", "gal/hr", "gph"], GALLON / HOUR;
    CubicFootPerHour: VolumeFlow, "ft³/h", ["ft3/h"], CUBIC_FOOT / HOUR;

    KilogramPerCubicMetre: Density, "kg/m³", ["kg/m3"], 1.0;
    KilogramPerLitre: Density, "kg/L", ["kg/l", "g/cm³", "g/cm3", "g/ml"], 1_000.0;
    PoundPerCubicFoot: Density, "lb/ft³", ["lb/ft3", "lbs/ft3", "pcf"], POUND / CUBIC_FOOT;
    PoundPerGallon: Density, "lb/US gal", ["lb/gal", "lbs/gal", "ppg"], POUND / GALLON;

    KilogramPerSquareMetre: ArealMass, "kg/m²", ["kg/m2"], 1.0;
    GramPerSquareMetre: ArealMass, "g/m²", ["g/m2"], 1.0 / 1_000.0;
    PoundPerSquareFoot: ArealMass, "lb/ft²", ["lb/ft2", "psf"], POUND / SQUARE_FOOT;
    PoundPerThousandSquareFeet: ArealMass, "lb/1000 ft²", ["lb/1000 ft2", "lb/1000ft2", "lb/1000ft²", "lb/1000 sq ft", "lb/msf"], POUND / (1_000.0 * SQUARE_FOOT);

    KilogramPerMetre: LinearMass, "kg/m", [], 1.0;
    PoundPerFoot: LinearMass, "lb/ft", ["lbs/ft"], POUND / FOOT;

    Millimetre: Length, "mm", [], 1.0 / 1_000.0;
    Centimetre: Length, "cm", [], 1.0 / 100.0;
    Metre: Length, "m", ["metre", "metres", "meter", "meters"], 1.0;
    Inch: Length, "in", ["inch", "inches", "\""], INCH;
    Foot: Length, "ft", ["foot", "feet", "'"], FOOT;

    SquareCentimetre: Area, "cm²", ["cm2"], 1.0 / 1.0e4;
    SquareMetre: Area, "m²", ["m2"], 1.0;
    SquareFoot: Area, "ft²", ["ft2", "sq ft"], SQUARE_FOOT;
    SquareMetrePerHour: AreaFlow, "m²/h", ["m2/h"], 1.0 / HOUR;
    SquareFootPerHour: AreaFlow, "ft²/h", ["ft2/h"], SQUARE_FOOT / HOUR;

    MetrePerMinute: Speed, "m/min", [], 1.0 / MINUTE;
    MetrePerSecond: Speed, "m/s", [], 1.0;
    MetrePerHour: Speed, "m/h", [], 1.0 / HOUR;
    MillimetrePerSecond: Speed, "mm/s", [], 1.0 / 1_000.0;
    FootPerMinute: Speed, "ft/min", ["fpm"], FOOT / MINUTE;
    FootPerHour: Speed, "ft/h", [], FOOT / HOUR;

    Second: Time, "s", ["sec", "seconds"], 1.0;
    Minute: Time, "min", ["minutes"], MINUTE;
    Hour: Time, "h", ["hr", "hours"], HOUR;

    SecondPerMillimetre: Slowness, "s/mm", [], 1_000.0;
    SecondPerInch: Slowness, "s/in", [], 1.0 / INCH;
    HourPerMetre: Slowness, "h/m", [], HOUR;
    HourPerFoot: Slowness, "h/ft", [], HOUR / FOOT;

    Celsius: Temperature, "°C", ["c", "degc", "deg c"], 1.0, zero at -273.15;
    Fahrenheit: Temperature, "°F", ["f", "degf", "deg f"], 1.0 / 1.8, zero at -459.67;

    KilojoulePerKilogram: SpecificEnergy, "kJ/kg", ["kj/kg"], 1_000.0;
    BtuPerPound: SpecificEnergy, "Btu/lb", ["btu/lb"], BTU / POUND;

    Kilowatt: HeatFlow, "kW", ["kw"], 1_000.0;
    KilojoulePerHour: HeatFlow, "kJ/h", ["kj/h"], 1_000.0 / HOUR;
    BtuPerHour: HeatFlow, "Btu/h", ["btu/h"], BTU / HOUR;

    Newton: Force, "N", ["n", "newton", "newtons"], 1.0;
    Kilonewton: Force, "kN", ["kn"], 1_000.0;
    PoundForce: Force, "lbf", ["pound-force"], POUND_FORCE;

    NewtonPerSquareMillimetre: Stress, "N/mm²", ["n/mm2", "mpa"], 1.0e6;
    Pascal: Stress, "Pa", ["pa", "n/m2"], 1.0;
    PoundForcePerSquareInch: Stress, "psi", ["lbf/in2", "lb/in2"], POUND_FORCE / (INCH * INCH);
    PoundForcePerSquareFoot: Stress, "lbf/ft²", ["lbf/ft2"], POUND_FORCE / SQUARE_FOOT;

    NewtonPerMillimetre: Stiffness, "N/mm", ["n/mm"], 1_000.0;
    NewtonPerMetre: Stiffness, "N/m", ["n/m"], 1.0;
    PoundForcePerInch: Stiffness, "lbf/in", ["lb/in"], POUND_FORCE / INCH;
    PoundForcePerFoot: Stiffness, "lbf/ft", [], POUND_FORCE / FOOT;

    Percent: Fraction, "%", ["percent", "pct"], 1.0 / 100.0;
    /// A plain fraction, kg/kg.
    PerUnit: Fraction, "kg/kg", ["fraction"], 1.0;
    KilogramPerTonne: Fraction, "kg/t", [], 1.0 / 1_000.0;
    PoundPerShortTon: Fraction, "lb/short ton", ["lbs/short ton"], 1.0 / 2_000.0;

    LitrePerTonne: SpecificVolume, "L/t", ["l/t"], 1.0 / 1.0e6;
    GallonPerShortTon: SpecificVolume, "US gal/short ton", ["gal/short ton"], GALLON / SHORT_TON;
    CubicMetrePerKilogram: SpecificVolume, "m³/kg", ["m3/kg"], 1.0;
    CubicFootPerPound: SpecificVolume, "ft³/lb", ["ft3/lb"], CUBIC_FOOT / POUND;

    Hertz: Frequency, "Hz", ["hertz"], 1.0;
    /// The base of a rotation is the number of turns a minute itself: it is read off a drive, and never
    /// treated as a frequency.
    TurnPerMinute: Rotation, "rpm", ["r/min", "rev/min", "u/min"], 1.0;
    KilogramPerHourPerHertz: FlowPerFrequency, "kg/h per Hz", [], 1.0 / HOUR;
    PoundPerHourPerHertz: FlowPerFrequency, "lb/h per Hz", [], POUND / HOUR;
    KilogramPerHourPerTurn: FlowPerRotation, "kg/h per rpm", [], 1.0 / HOUR;
    PoundPerHourPerTurn: FlowPerRotation, "lb/h per rpm", [], POUND / HOUR;

    PercentPerKelvin: Expansion, "%/K", ["%/°c"], 1.0 / 100.0;
    PercentPerFahrenheit: Expansion, "%/°F", [], 1.8 / 100.0;
    PerKelvin: Expansion, "/K", ["/°c"], 1.0;
    PerFahrenheit: Expansion, "/°F", [], 1.8;

    /// Water per oven-dry mass (EN 322).
    PercentDryBasis: Moisture, "% dry basis", ["% dry", "% db", "% d.b.", "dry basis", "db", "% atro", "atro"], 1.0 / 100.0;
    /// Water per total mass, u = ω/(1+ω).
    PercentWetBasis: Moisture, "% wet basis", ["% wet", "% wb", "% w.b.", "wet basis", "wb", "% feucht", "feucht"], 1.0 / 100.0, basis Wet;

    PerTonne: Price, "/t", ["per tonne"], 1.0 / 1_000.0;
    PerKilogram: Price, "/kg", ["per kg"], 1.0;
    PerPound: Price, "/lb", ["per lb"], 1.0 / POUND;
    PerShortTon: Price, "/short ton", ["per short ton"], 1.0 / SHORT_TON;

    PerCubicMetre: Cost, "/m³", ["/m3"], 1.0;
    PerCubicFoot: Cost, "/ft³", ["/ft3"], 1.0 / CUBIC_FOOT;
    /// A thousand square feet, three quarters of an inch thick: 1.769 802 912 m³.
    PerThousandSquareFeetThreeQuarter: Cost, "/1000 ft² of ¾ in", ["/msf 3/4"], 1.0 / (62.5 * CUBIC_FOOT);

    PerYear: YearCost, "/year", ["per year"], 1.0;

    One: Number, "", [], 1.0;
}

impl Unit {
    /// The number in the base unit (SI without prefix; moisture as a fraction on the dry
    /// basis; money per kg or per m³) for `value` in this unit.
    #[must_use]
    pub fn to_base(self, value: f64) -> f64 {
        self.conversion().base_of(value)
    }

    /// The number in this unit for `base` in the base unit. The inverse of
    /// [`to_base`](Self::to_base).
    #[must_use]
    pub fn from_base(self, base: f64) -> f64 {
        self.conversion().value_of(base)
    }

    /// The unit of a stored symbol, exactly as [`symbol`](Self::symbol) gives it.
    #[must_use]
    pub fn from_symbol(symbol: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|unit| unit.symbol() == symbol)
    }
}
