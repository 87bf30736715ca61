//! Solutions made up from crystals, and glue mixes.

use crate::domain::mixing::{AmountWay, MixField, ShareWay};
use crate::ui::text::{FieldWords, MixPage};

pub(super) const MIX: MixPage = MixPage {
    title: "Make-up",
    solution: "Solution from crystals",
    solution_hint: "How much salt and how much water give the solution wanted.",
    solute: "What is dissolved",
    amount: "Amount asked for",
    by_mass: "By mass",
    by_volume: "By volume",
    crystals: "Crystals to weigh in, dry",
    water: "Water to add",
    water_volume: "Water to add, by volume at 20 °C",
    total: "Solution, by mass",
    volume: "Solution, by volume",
    density: "Density of the solution",
    density_source: "Density: CRC Handbook of Chemistry and Physics, 102nd ed., straight lines between its rows.",
    density_measured: "Density: as measured.",
    no_density: "No published density for this concentration here, so no volume. Measure the density and type it.",
    saturation: "Most that dissolves at the coldest temperature, salt per solution by mass",
    saturation_source: "Solubility: from memory, good to about one point. Near it, try in a beaker.",
    pure: "Crystals count as dry and pure.",
    work_total: "volume · density",
    work_crystals: "concentration · solution",
    work_water: "solution − crystals",
    work_volume: "mass / density",
    work_mass: "share · batch",
    work_solids: "sum of share · solids",
    work_density: "1 / sum of (share / density)",
    work_equivalent: "molar mass of NCO / NCO content",
    work_water_used: "NCO content / 2 · molar mass of water / molar mass of NCO",
    work_gas: "NCO content / 2 · molar mass of CO₂ / molar mass of NCO",
    work_ratio: "(formalin · strength / molar mass of CH₂O) / (urea / molar mass of urea)",
    glue: "Premixed glue",
    glue_hint: "Binder, hardener, water and what else goes into one tank. The liquids are those of the recipe.",
    parts: "Proportions",
    in_tank: "In the tank",
    share: "Parts by mass, as delivered",
    per_hundred: "Share of the mix, by mass",
    from_recipe: "As the recipe doses them",
    typed: "Parts typed here",
    no_recipe: "The recipe has no result yet. Fill it in first; its liquids then stand here.",
    old_recipe: "From the recipe's old result: something on the recipe page stands in the way of a new one.",
    water_dose: "Water, the recipe's dose",
    thinning: "Water that thins to the spray solids",
    mix: "The mix, by mass",
    mix_volume: "The mix, by volume",
    mix_solids: "Solids of the mix, by mass",
    mix_density: "Density of the mix",
    mix_water: "Water in the mix",
    mass: "Weigh in",
    ideal_mixing: "Density and litres by ideal mixing, as if the volumes added up. A measured density is better.",
    pot_life: "A mixed batch has a pot life: mix only what is sprayed within it.",
    isocyanate: "Isocyanate and water",
    isocyanate_hint: "What the NCO content on the certificate stands for.",
    equivalent_weight: "Equivalent weight, isocyanate per mole of NCO",
    water_used: "Water used, per mass of isocyanate",
    gas_released: "Carbon dioxide released, per mass of isocyanate",
    upper_bound: "If all of it reacts with water: the most there can be. In a board a part reacts with the fibre instead.",
    ratio: "Formaldehyde to urea",
    ratio_hint: "Molar ratio of a resin's charge, and what extra urea does to it.",
    ratio_charge: "Molar ratio F/U of the charge",
    ratio_after: "Molar ratio F/U with the extra urea",
    ratio_note: "By molar mass (IUPAC). It says nothing about the emission of a board, which is proved by testing.",
    tick: "Tick what goes into the tank to see the result.",
    fill_in: "Fill in the boxes to see the result.",
};

pub(super) fn field(field: MixField) -> FieldWords {
    let (label, hint) = match field {
        MixField::SolutionMass => ("Solution wanted", ""),
        MixField::SolutionVolume => ("Solution wanted, at 20 °C", ""),
        MixField::Concentration => ("Concentration, salt per solution by mass", ""),
        MixField::Coldest => ("Coldest temperature", "All the salt has to stay dissolved at it, in tank and pipe."),
        MixField::MeasuredDensity => ("Measured density", "Goes before the table's."),
        MixField::GlueMass | MixField::GlueVolume => ("Glue wanted", ""),
        MixField::Nco => ("NCO content, by mass", "As on the certificate."),
        MixField::Formalin => ("Formalin in the charge", ""),
        MixField::Strength => ("Formaldehyde per formalin, by mass", ""),
        MixField::Urea => ("Urea in the charge", ""),
        MixField::ExtraUrea => ("Urea added later", "Such as the scavenger."),
    };
    FieldWords { label, hint }
}

pub(super) fn amount_way(way: AmountWay) -> &'static str {
    match way {
        AmountWay::Mass => MIX.by_mass,
        AmountWay::Volume => MIX.by_volume,
    }
}

pub(super) fn share_way(way: ShareWay) -> &'static str {
    match way {
        ShareWay::Recipe => MIX.from_recipe,
        ShareWay::Typed => MIX.typed,
    }
}
