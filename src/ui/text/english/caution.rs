//! Cautions: general wording. Local codes, the safety data sheet and licensed practice decide, which
//! the page says once below them.

use crate::domain::recipe::caution::Caution;
use crate::ui::text::CautionWords;

const fn words(title: &'static str, text: &'static str) -> CautionWords {
    CautionWords { title, text, limits: "" }
}

pub(super) fn caution(caution: Caution) -> CautionWords {
    match caution {
        Caution::Isocyanate => CautionWords {
            title: "Isocyanate",
            text: "pMDI and other isocyanates can sensitise airways and skin, for life. Keep vapour, mist and \
                   splashes away from people. Keep water out of feed lines and drums. Never seal a container that \
                   water got into: it makes carbon dioxide, and the pressure can burst it.",
            limits: "MDI: 0.05 mg/m³ over a shift and 0.2 mg/m³ over 10 minutes (NIOSH REL); ceiling 0.02 ppm, \
                     0.2 mg/m³ (OSHA). Check the current local limit.",
        },
        Caution::ReleaseAgent => words(
            "Release agent",
            "Isocyanates stick to hot metal. Faces, belts and platens need a release agent, or the mat bonds to them; \
             this recipe names none.",
        ),
        Caution::Formaldehyde => CautionWords {
            title: "Formaldehyde",
            text: "The resin gives off formaldehyde when it is stored, sprayed and pressed, and so does the board. \
                   Extract it where it leaves. An emission class is proved by testing, not by this tool.",
            limits: "In air: 0.75 ppm over a shift, 2 ppm over 15 minutes (OSHA, from memory). Of board: E1 at most \
                     0.124 mg/m³ (EN 717-1); MDF 0.11 ppm, thin MDF 0.13 ppm (TSCA Title VI). Check the current \
                     local limit.",
        },
        Caution::Alkaline => words(
            "Strongly alkaline",
            "PF resin is strongly alkaline and burns skin and eyes. Wear eye and hand protection, and keep an eye wash \
             within reach.",
        ),
        Caution::AcidCure => words(
            "Acid cure",
            "A hardener salt makes resin cure. A mixed batch has a pot life, shorter the warmer it is, and gives off \
             heat as it sets. Mix only what is sprayed within it, and never pour hardener back into a resin tank.",
        ),
        Caution::Oxidiser => words(
            "Oxidiser",
            "Ammonium nitrate is an oxidiser. Keep crystals and spills away from straw, dust, wax and other fuel, and \
             let no solution dry up on them.",
        ),
        Caution::Steam => words(
            "Steam pressure",
            "The mat is wetter than usual. Steam that cannot leave can burst the board as it leaves the press. Stand \
             clear of the outlet, and dry the fibre or take off water before you run.",
        ),
        Caution::Dust => words(
            "Combustible dust",
            "Dust of straw and wood is combustible. Spraying and conveying systems are under the mill's \
             explosion-protection rules (NFPA 660; 1999/92/EC).",
        ),
        Caution::CatchTest => words(
            "Catch test",
            "Isolate and depressurise the line before you open it. Catch into a vented vessel. Wear eye and hand \
             protection.",
        ),
        Caution::Advice => words(
            "Advice only",
            "Haulm advises. It does not control: interlocks and the line's own limits stay in charge.",
        ),
    }
}
