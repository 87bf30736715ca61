//! Cautions: general wording. Local codes, the safety data sheet and licensed practice decide, which
//! the page says once below them.

use crate::domain::recipe::caution::Caution;
use crate::domain::recipe::safety_limit::{
    AirUnit, Asks, Day, Holds, Measure, Region, SafetyLimit, Subject, Value, safety_limits,
};
use crate::ui::text::CautionWords;

pub(super) fn caution(caution: Caution) -> CautionWords {
    let (title, text) = words(caution);
    CautionWords { title, text, limits: safety_limits(caution).map(limit).collect() }
}

const fn words(caution: Caution) -> (&'static str, &'static str) {
    match caution {
        Caution::Steam => (
            "Steam pressure",
            "The mat is wetter than its typical range. Steam that cannot leave can burst the board as it leaves the \
             press. Stand clear of the outfeed, and dry the fibre or lower the water before you run.",
        ),
        Caution::Isocyanate => (
            "Isocyanate",
            "pMDI and other isocyanates can sensitise airways and skin, for life. Keep vapour, mist and splashes away \
             from people. Keep water out of feed lines and drums. Never seal a container that water got into: it makes \
             carbon dioxide, and the pressure can burst it.",
        ),
        Caution::IsocyanateTank => (
            "Isocyanate tanks",
            "Keep pMDI tanks under dry air or nitrogen. Moist air makes crust and carbon dioxide in the tank, and the \
             crust blocks filters and nozzles.",
        ),
        Caution::Emulsion => (
            "Emulsified isocyanate",
            "pMDI emulsified with water is short-lived: it reacts in the pipe, gives off carbon dioxide and sets. \
             Emulsify at the nozzle only, and flush mixer and nozzles at every stop.",
        ),
        Caution::IsocyanateCatch => (
            "Catch test of an isocyanate",
            "Catch into a dry, open vessel. Wear a respirator, eye protection and gloves, and have the neutraliser at \
             hand. Neutralise what you caught in the open; never seal it in.",
        ),
        Caution::ReleaseAgent => (
            "Release agent",
            "Isocyanates stick to hot metal. Faces, belts and platens need a release agent, or the mat bonds to them; \
             this recipe names none.",
        ),
        Caution::Formaldehyde => (
            "Formaldehyde",
            "The resin gives off formaldehyde when it is stored, sprayed and pressed, and so does the board. Extract \
             it at its source. An emission class is proved by testing, not by this tool.",
        ),
        Caution::PressVapour => (
            "Hot-press vapour",
            "A hot press gives off steam with formaldehyde, isocyanate or other vapours of the binder. Press under \
             extraction, and stay out of the plume when the press opens. For vapours without a limit here see the \
             local limit.",
        ),
        Caution::BenchSpray => (
            "Spraying at the bench",
            "A spray is breathed in more easily than a liquid. Spray in a closed blender or under extraction, wear a \
             respirator for isocyanates, and let the mist settle before you open.",
        ),
        Caution::Alkaline => (
            "Strongly alkaline",
            "PF resin is strongly alkaline and burns skin and eyes. Wear eye and hand protection, and keep an eye wash \
             within reach.",
        ),
        Caution::Ammonia => (
            "Ammonia",
            "An ammonium salt with alkaline PF resin gives off ammonia, which burns eyes and airways. Never mix the \
             two in a tank, drain or blender that is not extracted. For ammonia see the local limit.",
        ),
        Caution::AcidCure => (
            "Acid cure",
            "A hardener salt makes resin cure. A mixed batch has a pot life, shorter the warmer it is, and gives off \
             heat as it sets. Mix only what is sprayed within it, and never pour hardener back into a resin tank.",
        ),
        Caution::Oxidiser => (
            "Oxidiser",
            "Ammonium nitrate is an oxidiser. Keep crystals and spills away from straw, dust, wax and other fuel, and \
             let no solution dry up on them.",
        ),
        Caution::Corrosion => (
            "Corrosion",
            "Ammonium chloride corrodes steel, stainless steel included, and copper alloys. Check tanks, pumps and \
             press for attack.",
        ),
        Caution::Cooling => (
            "Cooling as it dissolves",
            "Urea, ammonium chloride and ammonium nitrate cool the water strongly as they dissolve. Salt may drop out \
             again and block the pipe. Use warm water, stir, and check that all is dissolved at the coldest \
             temperature.",
        ),
        Caution::Dust => (
            "Straw and wood dust",
            "Dust of straw and wood can explode. Straw dust also carries mould and silica that harm the lungs. Extract \
             it, wear a respirator where it flies, and never sweep or blow it up. Spraying and conveying systems are \
             under the mill's explosion-protection rules. For dust see the local limit.",
        ),
        Caution::DampBales => (
            "Damp bales",
            "Damp straw bales heat up by themselves and can catch fire days later. Measure moisture and temperature on \
             delivery, and store damp bales apart.",
        ),
        Caution::HighPressure => (
            "High-pressure spray",
            "A spray under high pressure goes through skin and injects the liquid. Never point a nozzle at anyone or \
             feel for a leak by hand. An injection wound needs a hospital at once, even if it looks small.",
        ),
        Caution::Press => (
            "Hot press",
            "The press crushes and burns. Keep hands out of the gap, use the guards and the stop, and let no one work \
             in it before it is locked out and cold.",
        ),
        Caution::CatchTest => (
            "Catch test",
            "Isolate and depressurise the line before you open it. Fit the sampling hose, secure it in a vented \
             vessel, and only then let the pump run. Isolate and depressurise again before you take it off. Wear eye \
             and hand protection.",
        ),
        Caution::Advice => {
            ("Advice only", "Haulm advises. It does not control: interlocks and the line's own limits stay in charge.")
        }
    }
}

/// "Diisocyanates in air, EU (Directive (EU) 2024/869): … Check the current local limit."
fn limit(limit: &SafetyLimit) -> String {
    let region = match limit.region {
        Region::Eu => "EU",
        Region::Us => "US",
    };
    let subject = match limit.subject {
        Subject::Diisocyanates => "Diisocyanates in air, as NCO",
        Subject::Mdi => "MDI in air",
        Subject::FormaldehydeAtWork => "Formaldehyde in air",
        Subject::FormaldehydeReleased => "Formaldehyde released by board",
    };
    let (subject, asks) = match limit.asks {
        Asks::Training => ("Use of diisocyanates", "all users must be trained before they use them".to_owned()),
        Asks::Values(values) => (subject, values.iter().map(value).collect::<Vec<_>>().join("; ")),
    };
    format!("{subject}, {region} ({}): {asks}. Check the current local limit.", limit.regulation)
}

fn value(value: &Value) -> String {
    let measure = match value.measure {
        Measure::Shift => "8 h mean",
        Measure::ShortTerm => "short-term",
        Measure::Ceiling => "ceiling",
        Measure::Articles => "wood-based articles and furniture",
        Measure::Particleboard => "particleboard",
        Measure::Mdf => "MDF",
        Measure::ThinMdf => "thin MDF",
        Measure::HardwoodPlywood => "hardwood plywood",
    };
    let also = value.also.map(|also| format!(" ({})", number(also))).unwrap_or_default();
    let holds = match value.holds {
        Holds::Now => String::new(),
        Holds::From(from) => format!(" from {}", day(from)),
        Holds::Until(until) => format!(" until {}", day(until)),
        Holds::After(after) => format!(" after {}", day(after)),
    };
    format!("{measure} {}{also}{holds}", number(value.limit))
}

fn number((number, unit): (f64, AirUnit)) -> String {
    let unit = match unit {
        AirUnit::MicrogramNco => "µg NCO/m³",
        AirUnit::Milligram => "mg/m³",
        AirUnit::Ppm => "ppm",
    };
    format!("{number}\u{a0}{unit}")
}

fn day(day: Day) -> String {
    const MONTHS: [&str; 12] = [
        "January",
        "February",
        "March",
        "April",
        "May",
        "June",
        "July",
        "August",
        "September",
        "October",
        "November",
        "December",
    ];
    let month = MONTHS.get(usize::from(day.month).wrapping_sub(1)).copied().unwrap_or_default();
    format!("{} {month} {}", day.day, day.year)
}
