//! Customary and composite units that uom lacks or holds to seven digits only, built from the
//! definitions in [`exact`](super::exact).

/// Mass.
pub mod mass {
    unit! {
        system: uom::si;
        quantity: uom::si::mass;
        @pound: crate::quantity::exact::POUND; "lb", "pound", "pounds";
        @short_ton: 2_000.0 * crate::quantity::exact::POUND; "short ton", "short ton", "short tons";
    }
}

/// Mass flow.
pub mod mass_rate {
    unit! {
        system: uom::si;
        quantity: uom::si::mass_rate;
        @kilogram_per_hour: 1.0 / crate::quantity::exact::HOUR; "kg/h", "kilogram per hour", "kilograms per hour";
        @tonne_per_hour: 1_000.0 / crate::quantity::exact::HOUR; "t/h", "tonne per hour", "tonnes per hour";
        @kilogram_per_minute: 1.0 / 60.0; "kg/min", "kilogram per minute", "kilograms per minute";
        @gram_per_minute: 1.0e-3 / 60.0; "g/min", "gram per minute", "grams per minute";
        @pound_per_hour: crate::quantity::exact::POUND / crate::quantity::exact::HOUR; "lb/h", "pound per hour", "pounds per hour";
        @pound_per_minute: crate::quantity::exact::POUND / 60.0; "lb/min", "pound per minute", "pounds per minute";
        @short_ton_per_hour: 2_000.0 * crate::quantity::exact::POUND / crate::quantity::exact::HOUR; "short ton/h", "short ton per hour", "short tons per hour";
    }
}

/// Volume.
pub mod volume {
    unit! {
        system: uom::si;
        quantity: uom::si::volume;
        @gallon: crate::quantity::exact::GALLON; "US gal", "US gallon", "US gallons";
        @cubic_foot: crate::quantity::exact::CUBIC_FOOT; "ft³", "cubic foot", "cubic feet";
    }
}

/// Volume flow.
pub mod volume_rate {
    unit! {
        system: uom::si;
        quantity: uom::si::volume_rate;
        @litre_per_hour: 1.0e-3 / crate::quantity::exact::HOUR; "L/h", "litre per hour", "litres per hour";
        @litre_per_minute: 1.0e-3 / 60.0; "L/min", "litre per minute", "litres per minute";
        @cubic_metre_per_hour: 1.0 / crate::quantity::exact::HOUR; "m³/h", "cubic metre per hour", "cubic metres per hour";
        @gallon_per_minute: crate::quantity::exact::GALLON / 60.0; "US gal/min", "US gallon per minute", "US gallons per minute";
        @gallon_per_hour: crate::quantity::exact::GALLON / crate::quantity::exact::HOUR; "US gal/h", "US gallon per hour", "US gallons per hour";
        @cubic_foot_per_hour: crate::quantity::exact::CUBIC_FOOT / crate::quantity::exact::HOUR; "ft³/h", "cubic foot per hour", "cubic feet per hour";
    }
}

/// Mass per volume.
pub mod mass_density {
    unit! {
        system: uom::si;
        quantity: uom::si::mass_density;
        @kilogram_per_litre: 1_000.0; "kg/L", "kilogram per litre", "kilograms per litre";
        @pound_per_cubic_foot: crate::quantity::exact::POUND / crate::quantity::exact::CUBIC_FOOT; "lb/ft³", "pound per cubic foot", "pounds per cubic foot";
        @pound_per_gallon: crate::quantity::exact::POUND / crate::quantity::exact::GALLON; "lb/US gal", "pound per US gallon", "pounds per US gallon";
    }
}

/// Mass per area.
pub mod areal_mass_density {
    unit! {
        system: uom::si;
        quantity: uom::si::areal_mass_density;
        @kilogram_per_square_metre: 1.0; "kg/m²", "kilogram per square metre", "kilograms per square metre";
        @gram_per_square_metre: 1.0e-3; "g/m²", "gram per square metre", "grams per square metre";
        @pound_per_square_foot: crate::quantity::exact::POUND / (crate::quantity::exact::FOOT * crate::quantity::exact::FOOT); "lb/ft²", "pound per square foot", "pounds per square foot";
        @pound_per_thousand_square_feet: crate::quantity::exact::POUND / (crate::quantity::exact::FOOT * crate::quantity::exact::FOOT) / 1_000.0; "lb/1000 ft²",
            "pound per thousand square feet", "pounds per thousand square feet";
    }
}

/// Mass per length.
pub mod linear_mass_density {
    unit! {
        system: uom::si;
        quantity: uom::si::linear_mass_density;
        @pound_per_foot: crate::quantity::exact::POUND / crate::quantity::exact::FOOT; "lb/ft", "pound per foot", "pounds per foot";
    }
}

/// Speed.
pub mod velocity {
    unit! {
        system: uom::si;
        quantity: uom::si::velocity;
        @metre_per_minute: 1.0 / 60.0; "m/min", "metre per minute", "metres per minute";
        @metre_per_hour: 1.0 / crate::quantity::exact::HOUR; "m/h", "metre per hour", "metres per hour";
        @millimetre_per_second: 1.0e-3; "mm/s", "millimetre per second", "millimetres per second";
        @foot_per_minute: crate::quantity::exact::FOOT / 60.0; "ft/min", "foot per minute", "feet per minute";
        @foot_per_hour: crate::quantity::exact::FOOT / crate::quantity::exact::HOUR; "ft/h", "foot per hour", "feet per hour";
    }
}

/// Energy per mass.
pub mod available_energy {
    unit! {
        system: uom::si;
        quantity: uom::si::available_energy;
        @btu_per_pound: crate::quantity::exact::BTU / crate::quantity::exact::POUND; "Btu/lb", "British thermal unit per pound", "British thermal units per pound";
    }
}

/// Heat flow.
pub mod power {
    unit! {
        system: uom::si;
        quantity: uom::si::power;
        @kilojoule_per_hour: 1_000.0 / crate::quantity::exact::HOUR; "kJ/h", "kilojoule per hour", "kilojoules per hour";
        @btu_per_hour: crate::quantity::exact::BTU / crate::quantity::exact::HOUR; "Btu/h", "British thermal unit per hour", "British thermal units per hour";
    }
}
