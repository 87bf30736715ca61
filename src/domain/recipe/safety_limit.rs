//! Limits of exposure and emission, each with its regulation and its date, as data. No value here is from memory:
//! each is as its regulation gives it. Where none is listed, the words say "see the local limit".

use crate::domain::recipe::caution::Caution;

/// Where a limit applies.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Region {
    /// European Union.
    Eu,
    /// United States.
    Us,
}

/// What a limit is of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Measure {
    /// Mean in workplace air over a shift of 8 h.
    Shift,
    /// Short-term mean in workplace air, 15 min.
    ShortTerm,
    /// In workplace air, at no time above it.
    Ceiling,
    /// Released by wood-based articles and furniture.
    Articles,
    /// Released by particleboard.
    Particleboard,
    /// Released by MDF.
    Mdf,
    /// Released by thin MDF.
    ThinMdf,
    /// Released by hardwood plywood.
    HardwoodPlywood,
}

/// The unit in which a regulation gives its value.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum AirUnit {
    /// Micrograms of NCO groups per cubic metre.
    MicrogramNco,
    /// Milligrams per cubic metre.
    Milligram,
    /// Parts per million by volume.
    Ppm,
}

/// A day.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Day {
    /// Year.
    pub year: u16,
    /// Month, from 1.
    pub month: u8,
    /// Day of the month, from 1.
    pub day: u8,
}

/// From when to when a value holds, as far as the regulation says.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Holds {
    /// No date beside the regulation's own.
    Now,
    /// From this day on.
    From(Day),
    /// Up to and with this day.
    Until(Day),
    /// After this day.
    After(Day),
}

/// One value of a regulation.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Value {
    /// What it limits.
    pub measure: Measure,
    /// The number, with the digits that the regulation gives, and its unit.
    pub limit: (f64, AirUnit),
    /// The same in a second unit, where the regulation gives both.
    pub also: Option<(f64, AirUnit)>,
    /// When it holds.
    pub holds: Holds,
}

/// What a regulation asks for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Asks {
    /// Values that must not be exceeded.
    Values(&'static [Value]),
    /// Training of all who use it.
    Training,
}

/// What a regulation is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Subject {
    /// Diisocyanates in workplace air, as NCO.
    Diisocyanates,
    /// MDI in workplace air.
    Mdi,
    /// Formaldehyde in workplace air.
    FormaldehydeAtWork,
    /// Formaldehyde that products release.
    FormaldehydeReleased,
}

/// A regulation.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SafetyLimit {
    /// Beside which caution it is shown.
    pub caution: Caution,
    /// Where it applies.
    pub region: Region,
    /// The regulation, as it is cited.
    pub regulation: &'static str,
    /// What it is about.
    pub subject: Subject,
    /// What it asks for.
    pub asks: Asks,
}

const fn value(measure: Measure, number: f64, unit: AirUnit, holds: Holds) -> Value {
    Value { measure, limit: (number, unit), also: None, holds }
}

const fn both(measure: Measure, ppm: f64, milligram: f64) -> Value {
    let also = Some((milligram, AirUnit::Milligram));
    Value { measure, limit: (ppm, AirUnit::Ppm), also, holds: Holds::Now }
}

const END_OF_2028: Day = Day { year: 2028, month: 12, day: 31 };

/// All of them, in the order in which they are shown.
pub const SAFETY_LIMITS: &[SafetyLimit] = &[
    SafetyLimit {
        caution: Caution::Isocyanate,
        region: Region::Eu,
        regulation: "Directive (EU) 2024/869",
        subject: Subject::Diisocyanates,
        asks: Asks::Values(&[
            value(Measure::Shift, 10.0, AirUnit::MicrogramNco, Holds::Until(END_OF_2028)),
            value(Measure::ShortTerm, 20.0, AirUnit::MicrogramNco, Holds::Until(END_OF_2028)),
            value(Measure::Shift, 6.0, AirUnit::MicrogramNco, Holds::After(END_OF_2028)),
            value(Measure::ShortTerm, 12.0, AirUnit::MicrogramNco, Holds::After(END_OF_2028)),
        ]),
    },
    SafetyLimit {
        caution: Caution::Isocyanate,
        region: Region::Eu,
        regulation: "Regulation (EU) 2020/1149",
        subject: Subject::Diisocyanates,
        asks: Asks::Training,
    },
    SafetyLimit {
        caution: Caution::Isocyanate,
        region: Region::Us,
        regulation: "29 CFR 1910.1000 Table Z-1",
        subject: Subject::Mdi,
        asks: Asks::Values(&[value(Measure::Ceiling, 0.02, AirUnit::Ppm, Holds::Now)]),
    },
    SafetyLimit {
        caution: Caution::Formaldehyde,
        region: Region::Eu,
        regulation: "Directive (EU) 2019/983",
        subject: Subject::FormaldehydeAtWork,
        asks: Asks::Values(&[both(Measure::Shift, 0.3, 0.37), both(Measure::ShortTerm, 0.6, 0.74)]),
    },
    SafetyLimit {
        caution: Caution::Formaldehyde,
        region: Region::Us,
        regulation: "29 CFR 1910.1048",
        subject: Subject::FormaldehydeAtWork,
        asks: Asks::Values(&[
            value(Measure::Shift, 0.75, AirUnit::Ppm, Holds::Now),
            value(Measure::ShortTerm, 2.0, AirUnit::Ppm, Holds::Now),
        ]),
    },
    SafetyLimit {
        caution: Caution::Formaldehyde,
        region: Region::Eu,
        regulation: "Regulation (EU) 2023/1464",
        subject: Subject::FormaldehydeReleased,
        asks: Asks::Values(&[value(
            Measure::Articles,
            0.062,
            AirUnit::Milligram,
            Holds::From(Day { year: 2026, month: 8, day: 6 }),
        )]),
    },
    SafetyLimit {
        caution: Caution::Formaldehyde,
        region: Region::Us,
        regulation: "TSCA Title VI (40 CFR 770)",
        subject: Subject::FormaldehydeReleased,
        asks: Asks::Values(&[
            value(Measure::Particleboard, 0.09, AirUnit::Ppm, Holds::Now),
            value(Measure::Mdf, 0.11, AirUnit::Ppm, Holds::Now),
            value(Measure::ThinMdf, 0.13, AirUnit::Ppm, Holds::Now),
            value(Measure::HardwoodPlywood, 0.05, AirUnit::Ppm, Holds::Now),
        ]),
    },
];

/// The regulations that are shown beside a caution.
pub fn safety_limits(caution: Caution) -> impl Iterator<Item = &'static SafetyLimit> {
    SAFETY_LIMITS.iter().filter(move |limit| limit.caution == caution)
}
