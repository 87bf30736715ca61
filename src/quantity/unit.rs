//! Every unit that a number can be typed or shown in.

use super::{customary as cu, exact};
use serde::{Deserialize, Serialize};
use std::marker::PhantomData;
use uom::si::f64 as q;
use uom::si::{
    available_energy, frequency, length, linear_mass_density, mass, mass_density, power, thermodynamic_temperature,
    time, velocity, volume,
};

/// What a unit measures. Two units convert into each other exactly when they share a dimension.
///
/// Moisture stands apart from [`Fraction`](Self::Fraction): its two units are the dry and the wet
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

/// Declares the units: the name, its dimension, its symbol, the other spellings that are understood
/// when typed, and how its numbers turn into the base unit and back.
macro_rules! units {
    ($( $(#[$doc:meta])* $name:ident: $dimension:ident, $symbol:literal, [$($alias:literal),*], $into:expr, $from:expr; )*) => {
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

            /// The number in the base unit (SI without prefix; moisture as a fraction on the dry
            /// basis; money per kg or per m³) for `value` in this unit.
            #[must_use]
            pub fn to_base(self, value: f64) -> f64 {
                match self { $( Self::$name => ($into)(value), )* }
            }

            /// The number in this unit for `base` in the base unit. The inverse of
            /// [`to_base`](Self::to_base).
            #[must_use]
            pub fn from_base(self, base: f64) -> f64 {
                match self { $( Self::$name => ($from)(base), )* }
            }
        }
    };
}

/// Both directions for a unit that uom knows: the typed constructor, then the typed reading.
macro_rules! uom_into {
    ($quantity:ident, $unit:path) => {
        |x: f64| q::$quantity::new::<$unit>(x).value
    };
}
macro_rules! uom_from {
    ($quantity:ident, $unit:path) => {
        |base: f64| q::$quantity { dimension: PhantomData, units: PhantomData, value: base }.get::<$unit>()
    };
}

/// Zero for what is left of a zero after 273.15 was added and taken away again: the spacing of
/// doubles there is 6·10⁻¹⁴, and 32 °F must not be shown as 5.7·10⁻¹⁴ °C.
fn settled(degrees: f64) -> f64 {
    if degrees.abs() < 1.0e-12 { 0.0 } else { degrees }
}

units! {
    Gram: Mass, "g", ["gram", "grams"], uom_into!(Mass, mass::gram), uom_from!(Mass, mass::gram);
    Kilogram: Mass, "kg", ["kilogram", "kilograms"], uom_into!(Mass, mass::kilogram), uom_from!(Mass, mass::kilogram);
    Tonne: Mass, "t", ["tonne", "tonnes"], uom_into!(Mass, mass::megagram), uom_from!(Mass, mass::megagram);
    Pound: Mass, "lb", ["lbs", "pound", "pounds"], uom_into!(Mass, cu::mass::pound), uom_from!(Mass, cu::mass::pound);
    ShortTon: Mass, "short ton", ["short tons", "us ton"], uom_into!(Mass, cu::mass::short_ton), uom_from!(Mass, cu::mass::short_ton);

    KilogramPerHour: MassFlow, "kg/h", ["kg/hr", "kgh", "kg per hour"], uom_into!(MassRate, cu::mass_rate::kilogram_per_hour), uom_from!(MassRate, cu::mass_rate::kilogram_per_hour);
    TonnePerHour: MassFlow, "t/h", ["t/hr", "tph", "tonnes per hour"], uom_into!(MassRate, cu::mass_rate::tonne_per_hour), uom_from!(MassRate, cu::mass_rate::tonne_per_hour);
    KilogramPerMinute: MassFlow, "kg/min", ["kg per minute"], uom_into!(MassRate, cu::mass_rate::kilogram_per_minute), uom_from!(MassRate, cu::mass_rate::kilogram_per_minute);
    GramPerMinute: MassFlow, "g/min", ["g per minute"], uom_into!(MassRate, cu::mass_rate::gram_per_minute), uom_from!(MassRate, cu::mass_rate::gram_per_minute);
    PoundPerHour: MassFlow, "lb/h", ["lb/hr", "lbs/h", "lbs/hr", "pph"], uom_into!(MassRate, cu::mass_rate::pound_per_hour), uom_from!(MassRate, cu::mass_rate::pound_per_hour);
    PoundPerMinute: MassFlow, "lb/min", ["lbs/min"], uom_into!(MassRate, cu::mass_rate::pound_per_minute), uom_from!(MassRate, cu::mass_rate::pound_per_minute);
    ShortTonPerHour: MassFlow, "short ton/h", ["short tons/h", "st/h"], uom_into!(MassRate, cu::mass_rate::short_ton_per_hour), uom_from!(MassRate, cu::mass_rate::short_ton_per_hour);

    Millilitre: Volume, "mL", ["ml"], uom_into!(Volume, volume::milliliter), uom_from!(Volume, volume::milliliter);
    Litre: Volume, "L", ["l", "litre", "litres", "liter", "liters"], uom_into!(Volume, volume::liter), uom_from!(Volume, volume::liter);
    CubicMetre: Volume, "m³", ["m3", "cubic metres"], uom_into!(Volume, volume::cubic_meter), uom_from!(Volume, volume::cubic_meter);
    Gallon: Volume, "US gal", ["gal", "gallon", "gallons"], uom_into!(Volume, cu::volume::gallon), uom_from!(Volume, cu::volume::gallon);
    CubicFoot: Volume, "ft³", ["ft3", "cu ft"], uom_into!(Volume, cu::volume::cubic_foot), uom_from!(Volume, cu::volume::cubic_foot);

    MillilitrePerMinute: VolumeFlow, "mL/min", ["ml/min"], |x: f64| x * 1.0e-6 / 60.0, |x: f64| x * 60.0 / 1.0e-6;
    LitrePerHour: VolumeFlow, "L/h", ["l/h", "l/hr", "lph"], uom_into!(VolumeRate, cu::volume_rate::litre_per_hour), uom_from!(VolumeRate, cu::volume_rate::litre_per_hour);
    LitrePerMinute: VolumeFlow, "L/min", ["l/min", "lpm"], uom_into!(VolumeRate, cu::volume_rate::litre_per_minute), uom_from!(VolumeRate, cu::volume_rate::litre_per_minute);
    CubicMetrePerHour: VolumeFlow, "m³/h", ["m3/h", "m3/hr"], uom_into!(VolumeRate, cu::volume_rate::cubic_metre_per_hour), uom_from!(VolumeRate, cu::volume_rate::cubic_metre_per_hour);
    GallonPerMinute: VolumeFlow, "US gal/min", ["gal/min", "gpm"], uom_into!(VolumeRate, cu::volume_rate::gallon_per_minute), uom_from!(VolumeRate, cu::volume_rate::gallon_per_minute);
    GallonPerHour: VolumeFlow, "US gal/h", ["gal/h", "gal/hr", "gph"], uom_into!(VolumeRate, cu::volume_rate::gallon_per_hour), uom_from!(VolumeRate, cu::volume_rate::gallon_per_hour);
    CubicFootPerHour: VolumeFlow, "ft³/h", ["ft3/h"], uom_into!(VolumeRate, cu::volume_rate::cubic_foot_per_hour), uom_from!(VolumeRate, cu::volume_rate::cubic_foot_per_hour);

    KilogramPerCubicMetre: Density, "kg/m³", ["kg/m3"], uom_into!(MassDensity, mass_density::kilogram_per_cubic_meter), uom_from!(MassDensity, mass_density::kilogram_per_cubic_meter);
    KilogramPerLitre: Density, "kg/L", ["kg/l", "g/cm³", "g/cm3", "g/ml"], uom_into!(MassDensity, cu::mass_density::kilogram_per_litre), uom_from!(MassDensity, cu::mass_density::kilogram_per_litre);
    PoundPerCubicFoot: Density, "lb/ft³", ["lb/ft3", "lbs/ft3", "pcf"], uom_into!(MassDensity, cu::mass_density::pound_per_cubic_foot), uom_from!(MassDensity, cu::mass_density::pound_per_cubic_foot);
    PoundPerGallon: Density, "lb/US gal", ["lb/gal", "lbs/gal", "ppg"], uom_into!(MassDensity, cu::mass_density::pound_per_gallon), uom_from!(MassDensity, cu::mass_density::pound_per_gallon);

    KilogramPerSquareMetre: ArealMass, "kg/m²", ["kg/m2"], uom_into!(ArealMassDensity, cu::areal_mass_density::kilogram_per_square_metre), uom_from!(ArealMassDensity, cu::areal_mass_density::kilogram_per_square_metre);
    GramPerSquareMetre: ArealMass, "g/m²", ["g/m2"], uom_into!(ArealMassDensity, cu::areal_mass_density::gram_per_square_metre), uom_from!(ArealMassDensity, cu::areal_mass_density::gram_per_square_metre);
    PoundPerSquareFoot: ArealMass, "lb/ft²", ["lb/ft2", "psf"], uom_into!(ArealMassDensity, cu::areal_mass_density::pound_per_square_foot), uom_from!(ArealMassDensity, cu::areal_mass_density::pound_per_square_foot);
    PoundPerThousandSquareFeet: ArealMass, "lb/1000 ft²", ["lb/1000 ft2", "lb/1000ft2", "lb/1000ft²", "lb/1000 sq ft", "lb/msf"], uom_into!(ArealMassDensity, cu::areal_mass_density::pound_per_thousand_square_feet), uom_from!(ArealMassDensity, cu::areal_mass_density::pound_per_thousand_square_feet);

    KilogramPerMetre: LinearMass, "kg/m", [], uom_into!(LinearMassDensity, linear_mass_density::kilogram_per_meter), uom_from!(LinearMassDensity, linear_mass_density::kilogram_per_meter);
    PoundPerFoot: LinearMass, "lb/ft", ["lbs/ft"], uom_into!(LinearMassDensity, cu::linear_mass_density::pound_per_foot), uom_from!(LinearMassDensity, cu::linear_mass_density::pound_per_foot);

    Millimetre: Length, "mm", [], uom_into!(Length, length::millimeter), uom_from!(Length, length::millimeter);
    Centimetre: Length, "cm", [], uom_into!(Length, length::centimeter), uom_from!(Length, length::centimeter);
    Metre: Length, "m", ["metre", "metres", "meter", "meters"], uom_into!(Length, length::meter), uom_from!(Length, length::meter);
    Inch: Length, "in", ["inch", "inches", "\""], uom_into!(Length, length::inch), uom_from!(Length, length::inch);
    Foot: Length, "ft", ["foot", "feet", "'"], uom_into!(Length, length::foot), uom_from!(Length, length::foot);

    SquareCentimetre: Area, "cm²", ["cm2"], |x: f64| x * 1.0e-4, |x: f64| x / 1.0e-4;
    SquareMetre: Area, "m²", ["m2"], |x: f64| x, |x: f64| x;
    SquareFoot: Area, "ft²", ["ft2", "sq ft"], |x: f64| x * (exact::FOOT * exact::FOOT), |x: f64| x / (exact::FOOT * exact::FOOT);
    SquareMetrePerHour: AreaFlow, "m²/h", ["m2/h"], |x: f64| x / exact::HOUR, |x: f64| x * exact::HOUR;
    SquareFootPerHour: AreaFlow, "ft²/h", ["ft2/h"], |x: f64| x * (exact::FOOT * exact::FOOT) / exact::HOUR, |x: f64| x * exact::HOUR / (exact::FOOT * exact::FOOT);

    MetrePerMinute: Speed, "m/min", [], uom_into!(Velocity, cu::velocity::metre_per_minute), uom_from!(Velocity, cu::velocity::metre_per_minute);
    MetrePerSecond: Speed, "m/s", [], uom_into!(Velocity, velocity::meter_per_second), uom_from!(Velocity, velocity::meter_per_second);
    MetrePerHour: Speed, "m/h", [], uom_into!(Velocity, cu::velocity::metre_per_hour), uom_from!(Velocity, cu::velocity::metre_per_hour);
    MillimetrePerSecond: Speed, "mm/s", [], uom_into!(Velocity, cu::velocity::millimetre_per_second), uom_from!(Velocity, cu::velocity::millimetre_per_second);
    FootPerMinute: Speed, "ft/min", ["fpm"], uom_into!(Velocity, cu::velocity::foot_per_minute), uom_from!(Velocity, cu::velocity::foot_per_minute);
    FootPerHour: Speed, "ft/h", [], uom_into!(Velocity, cu::velocity::foot_per_hour), uom_from!(Velocity, cu::velocity::foot_per_hour);

    Second: Time, "s", ["sec", "seconds"], uom_into!(Time, time::second), uom_from!(Time, time::second);
    Minute: Time, "min", ["minutes"], uom_into!(Time, time::minute), uom_from!(Time, time::minute);
    Hour: Time, "h", ["hr", "hours"], uom_into!(Time, time::hour), uom_from!(Time, time::hour);

    SecondPerMillimetre: Slowness, "s/mm", [], |x: f64| x * 1_000.0, |x: f64| x / 1_000.0;
    SecondPerInch: Slowness, "s/in", [], |x: f64| x / 0.0254, |x: f64| x * 0.0254;
    HourPerMetre: Slowness, "h/m", [], |x: f64| x * exact::HOUR, |x: f64| x / exact::HOUR;
    HourPerFoot: Slowness, "h/ft", [], |x: f64| x * exact::HOUR / exact::FOOT, |x: f64| x * exact::FOOT / exact::HOUR;

    Celsius: Temperature, "°C", ["c", "degc", "deg c"], uom_into!(ThermodynamicTemperature, thermodynamic_temperature::degree_celsius), |base: f64| settled(uom_from!(ThermodynamicTemperature, thermodynamic_temperature::degree_celsius)(base));
    Fahrenheit: Temperature, "°F", ["f", "degf", "deg f"], uom_into!(ThermodynamicTemperature, thermodynamic_temperature::degree_fahrenheit), |base: f64| settled(uom_from!(ThermodynamicTemperature, thermodynamic_temperature::degree_fahrenheit)(base));

    KilojoulePerKilogram: SpecificEnergy, "kJ/kg", ["kj/kg"], uom_into!(AvailableEnergy, available_energy::kilojoule_per_kilogram), uom_from!(AvailableEnergy, available_energy::kilojoule_per_kilogram);
    BtuPerPound: SpecificEnergy, "Btu/lb", ["btu/lb"], uom_into!(AvailableEnergy, cu::available_energy::btu_per_pound), uom_from!(AvailableEnergy, cu::available_energy::btu_per_pound);

    Kilowatt: HeatFlow, "kW", ["kw"], uom_into!(Power, power::kilowatt), uom_from!(Power, power::kilowatt);
    KilojoulePerHour: HeatFlow, "kJ/h", ["kj/h"], uom_into!(Power, cu::power::kilojoule_per_hour), uom_from!(Power, cu::power::kilojoule_per_hour);
    BtuPerHour: HeatFlow, "Btu/h", ["btu/h"], uom_into!(Power, cu::power::btu_per_hour), uom_from!(Power, cu::power::btu_per_hour);

    Newton: Force, "N", ["n", "newton", "newtons"], |x: f64| x, |x: f64| x;
    Kilonewton: Force, "kN", ["kn"], |x: f64| x * 1_000.0, |x: f64| x / 1_000.0;
    PoundForce: Force, "lbf", ["pound-force"], |x: f64| x * exact::POUND_FORCE, |x: f64| x / exact::POUND_FORCE;

    NewtonPerSquareMillimetre: Stress, "N/mm²", ["n/mm2", "mpa"], |x: f64| x * 1.0e6, |x: f64| x / 1.0e6;
    Pascal: Stress, "Pa", ["pa", "n/m2"], |x: f64| x, |x: f64| x;
    PoundForcePerSquareInch: Stress, "psi", ["lbf/in2", "lb/in2"], |x: f64| x * (exact::POUND_FORCE / (exact::INCH * exact::INCH)), |x: f64| x / (exact::POUND_FORCE / (exact::INCH * exact::INCH));
    PoundForcePerSquareFoot: Stress, "lbf/ft²", ["lbf/ft2"], |x: f64| x * (exact::POUND_FORCE / (exact::FOOT * exact::FOOT)), |x: f64| x / (exact::POUND_FORCE / (exact::FOOT * exact::FOOT));

    NewtonPerMillimetre: Stiffness, "N/mm", ["n/mm"], |x: f64| x * 1_000.0, |x: f64| x / 1_000.0;
    NewtonPerMetre: Stiffness, "N/m", ["n/m"], |x: f64| x, |x: f64| x;
    PoundForcePerInch: Stiffness, "lbf/in", ["lb/in"], |x: f64| x * (exact::POUND_FORCE / exact::INCH), |x: f64| x / (exact::POUND_FORCE / exact::INCH);
    PoundForcePerFoot: Stiffness, "lbf/ft", [], |x: f64| x * (exact::POUND_FORCE / exact::FOOT), |x: f64| x / (exact::POUND_FORCE / exact::FOOT);

    Percent: Fraction, "%", ["percent", "pct"], |x: f64| x / 100.0, |x: f64| x * 100.0;
    /// A plain fraction, kg/kg.
    PerUnit: Fraction, "kg/kg", ["fraction"], |x: f64| x, |x: f64| x;
    KilogramPerTonne: Fraction, "kg/t", [], |x: f64| x / 1_000.0, |x: f64| x * 1_000.0;
    PoundPerShortTon: Fraction, "lb/short ton", ["lbs/short ton"], |x: f64| x / 2_000.0, |x: f64| x * 2_000.0;

    LitrePerTonne: SpecificVolume, "L/t", ["l/t"], |x: f64| x / 1.0e6, |x: f64| x * 1.0e6;
    GallonPerShortTon: SpecificVolume, "US gal/short ton", ["gal/short ton"], |x: f64| x * (exact::GALLON / (2_000.0 * exact::POUND)), |x: f64| x / (exact::GALLON / (2_000.0 * exact::POUND));
    CubicMetrePerKilogram: SpecificVolume, "m³/kg", ["m3/kg"], |x: f64| x, |x: f64| x;
    CubicFootPerPound: SpecificVolume, "ft³/lb", ["ft3/lb"], |x: f64| x * (exact::CUBIC_FOOT / exact::POUND), |x: f64| x / (exact::CUBIC_FOOT / exact::POUND);

    Hertz: Frequency, "Hz", ["hertz"], uom_into!(Frequency, frequency::hertz), uom_from!(Frequency, frequency::hertz);
    /// The base of a rotation is the number of turns a minute itself: it is read off a drive, and never
    /// treated as a frequency.
    TurnPerMinute: Rotation, "rpm", ["r/min", "rev/min"], |x: f64| x, |x: f64| x;
    KilogramPerHourPerHertz: FlowPerFrequency, "kg/h per Hz", [], |x: f64| x / exact::HOUR, |x: f64| x * exact::HOUR;
    PoundPerHourPerHertz: FlowPerFrequency, "lb/h per Hz", [], |x: f64| x * (exact::POUND / exact::HOUR), |x: f64| x / (exact::POUND / exact::HOUR);
    KilogramPerHourPerTurn: FlowPerRotation, "kg/h per rpm", [], |x: f64| x / exact::HOUR, |x: f64| x * exact::HOUR;
    PoundPerHourPerTurn: FlowPerRotation, "lb/h per rpm", [], |x: f64| x * (exact::POUND / exact::HOUR), |x: f64| x / (exact::POUND / exact::HOUR);

    PercentPerKelvin: Expansion, "%/K", ["%/°c"], |x: f64| x / 100.0, |x: f64| x * 100.0;
    PercentPerFahrenheit: Expansion, "%/°F", [], |x: f64| x * 0.018, |x: f64| x / 0.018;
    PerKelvin: Expansion, "/K", ["/°c"], |x: f64| x, |x: f64| x;
    PerFahrenheit: Expansion, "/°F", [], |x: f64| x * 1.8, |x: f64| x / 1.8;

    /// Water per oven-dry mass (EN 322).
    PercentDryBasis: Moisture, "% dry basis", ["% dry", "% db", "% d.b.", "dry basis", "db"], |x: f64| x / 100.0, |x: f64| x * 100.0;
    /// Water per total mass: ω = u/(1−u). Infinite from 100 % up, where nothing is left to relate to
    /// (the formula itself would come back from there with a negative moisture).
    PercentWetBasis: Moisture, "% wet basis", ["% wet", "% wb", "% w.b.", "wet basis", "wb"], |u: f64| if u < 100.0 { (u / 100.0) / (1.0 - u / 100.0) } else { f64::INFINITY }, |w: f64| 100.0 * w / (1.0 + w);

    PerTonne: Price, "/t", ["per tonne"], |x: f64| x / 1_000.0, |x: f64| x * 1_000.0;
    PerKilogram: Price, "/kg", ["per kg"], |x: f64| x, |x: f64| x;
    PerPound: Price, "/lb", ["per lb"], |x: f64| x / exact::POUND, |x: f64| x * exact::POUND;
    PerShortTon: Price, "/short ton", ["per short ton"], |x: f64| x / (2_000.0 * exact::POUND), |x: f64| x * (2_000.0 * exact::POUND);

    PerCubicMetre: Cost, "/m³", ["/m3"], |x: f64| x, |x: f64| x;
    PerCubicFoot: Cost, "/ft³", ["/ft3"], |x: f64| x / exact::CUBIC_FOOT, |x: f64| x * exact::CUBIC_FOOT;
    /// A thousand square feet, three quarters of an inch thick: 1.769 802 912 m³.
    PerThousandSquareFeetThreeQuarter: Cost, "/1000 ft² of ¾ in", ["/msf 3/4"], |x: f64| x / (exact::CUBIC_FOOT * 62.5), |x: f64| x * (exact::CUBIC_FOOT * 62.5);

    PerYear: YearCost, "/year", ["per year"], |x: f64| x, |x: f64| x;

    One: Number, "", [], |x: f64| x, |x: f64| x;
}

impl Unit {
    /// The unit of a stored symbol, exactly as [`symbol`](Self::symbol) gives it.
    #[must_use]
    pub fn from_symbol(symbol: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|unit| unit.symbol() == symbol)
    }
}
