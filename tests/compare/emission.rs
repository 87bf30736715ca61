//! Formaldehyde emission: ratios, concentrations, the perforator value and the limits.

use haulm::domain::chemistry::emission::{
    AminoResin, EmissionError, LIMITS, LimitedArticle, Market, StatedLimit, mass_concentration, of_mix,
    perforator_at_reference, urea_for, volume_share,
};
use haulm::domain::chemistry::formaldehyde_ratio::after_extra_urea;
use haulm::domain::compare::emission::{EmissionEntries, EmissionField, sheet};
use haulm::quantity::format::DecimalMark;
use haulm::record::table::to_csv;
use haulm::ui::table::emission;
use uom::si::f64::{Mass, MassDensity, Ratio, ThermodynamicTemperature};
use uom::si::mass::kilogram;
use uom::si::mass_density::milligram_per_cubic_meter;
use uom::si::ratio::{part_per_million, percent, ratio};
use uom::si::thermodynamic_temperature::degree_celsius;

fn r(value: f64) -> Ratio {
    Ratio::new::<ratio>(value)
}

fn kg(value: f64) -> Mass {
    Mass::new::<kilogram>(value)
}

fn resin(f: f64, m: f64) -> AminoResin {
    AminoResin { formaldehyde_per_urea: r(f), melamine_per_urea: r(m) }
}

#[track_caller]
fn near(found: f64, expected: f64, tolerance: f64) {
    assert!((found - expected).abs() <= tolerance, "{found} for {expected}");
}

#[test]
fn a_urea_resin_alone_has_its_own_ratio_and_urea_lowers_it() {
    let own = of_mix(&[(resin(1.1, 0.0), kg(100.0))], kg(0.0)).unwrap();
    for end in own.formaldehyde_per_urea.into_iter().chain(own.formaldehyde_per_amino) {
        near(end.get::<ratio>(), 1.1, 1e-12);
    }
    // The same as the formaldehyde ratio of one resin.
    let with = of_mix(&[(resin(1.1, 0.0), kg(100.0))], kg(10.0)).unwrap();
    let other = after_extra_urea(r(1.1), r(0.1)).unwrap();
    near(with.formaldehyde_per_urea[0].get::<ratio>(), other.all_methylol.get::<ratio>(), 1e-12);
    near(with.formaldehyde_per_urea[1].get::<ratio>(), other.all_methylene.get::<ratio>(), 1e-12);
}

/// Source: by hand. Melamine has three NH₂, so F/(NH₂)₂ = 1.6/(1 + 1.5 · 0.2) = 1.2308.
#[test]
fn melamine_counts_one_and_a_half() {
    let found = of_mix(&[(resin(1.6, 0.2), kg(1.0))], kg(0.0)).unwrap();
    near(found.formaldehyde_per_urea[0].get::<ratio>(), 1.6, 1e-12);
    near(found.formaldehyde_per_amino[1].get::<ratio>(), 1.230_769_230_8, 1e-9);
}

#[test]
fn the_urea_for_a_wanted_ratio_gives_that_ratio() {
    let mix = [(resin(1.2, 0.0), kg(60.0)), (resin(1.5, 0.3), kg(40.0))];
    let urea = urea_for(&mix, r(0.9)).unwrap();
    assert!(urea[0].value > 0.0 && urea[1].value > urea[0].value, "{urea:?}");
    for (at, urea) in urea.into_iter().enumerate() {
        near(of_mix(&mix, urea).unwrap().formaldehyde_per_amino[at].get::<ratio>(), 0.9, 1e-12);
    }
    assert_eq!(urea_for(&mix, r(1.4)), Err(EmissionError::NotReachable(r(1.4))));
    assert_eq!(urea_for(&mix, r(0.0)), Err(EmissionError::NotReachable(r(0.0))));
    assert_eq!(of_mix(&[], kg(1.0)), Err(EmissionError::MassOutOfRange));
    assert_eq!(of_mix(&[(resin(0.0, 0.0), kg(1.0))], kg(0.0)), Err(EmissionError::RatioOutOfRange(r(0.0))));
}

/// Source: ideal gas by hand, 30.026 g/mol · 101 325 Pa/(8.314 463 J/(mol·K) · 296.15 K) = 1.2356 mg/m³ per ppm at 23 °C;
/// Directive (EU) 2019/983 states 0.3 ppm as 0.37 mg/m³, which is 20 to 25 °C.
#[test]
fn concentrations_follow_the_temperature() {
    let at = ThermodynamicTemperature::new::<degree_celsius>;
    let ppm = |value: f64| Ratio::new::<part_per_million>(value);
    let found =
        |value, celsius| mass_concentration(ppm(value), at(celsius)).unwrap().get::<milligram_per_cubic_meter>();
    near(found(1.0, 23.0), 1.2356, 5e-5);
    near(found(0.05, 23.0), 0.062, 5e-4);
    near(found(0.3, 20.0), 0.37, 0.005);
    assert!(found(1.0, 0.0) > found(1.0, 23.0));
    let back = volume_share(MassDensity::new::<milligram_per_cubic_meter>(0.124), at(20.0)).unwrap();
    near(found(back.get::<part_per_million>(), 20.0), 0.124, 1e-12);
    assert!(matches!(mass_concentration(ppm(1.0), at(200.0)), Err(EmissionError::TemperatureOutOfRange(_))));
    assert!(matches!(mass_concentration(ppm(-1.0), at(20.0)), Err(EmissionError::ValueOutOfRange(_))));
}

/// Source: Jann and Deppe (1990), F = −0.133·u + 1.86: by hand 0.9955 at 6.5 %, 1.328 at 4 %.
#[test]
fn perforator_values_are_brought_to_the_reference_moisture() {
    let found = |value, moisture| perforator_at_reference(value, Ratio::new::<percent>(moisture)).unwrap();
    near(found(8.0, 6.5), 7.964, 1e-9);
    near(found(5.0, 4.0), 6.64, 1e-9);
    near(found(5.0, 9.0), 3.315, 1e-9);
    for moisture in [2.9, 9.1] {
        let found = perforator_at_reference(5.0, Ratio::new::<percent>(moisture));
        assert!(matches!(found, Err(EmissionError::MoistureOutOfRange(_))), "{moisture}");
    }
    assert_eq!(perforator_at_reference(-1.0, Ratio::new::<percent>(6.5)), Err(EmissionError::ValueOutOfRange(-1.0)));
}

/// Source: Regulation (EU) 2023/1464; Directive (EU) 2019/983; 40 CFR 770; 29 CFR 1910.1048.
#[test]
fn limits_carry_their_regulation() {
    let find = |market, article| {
        LIMITS.iter().find(|limit| limit.market == market && limit.article == article).map(|limit| limit.limit)
    };
    use LimitedArticle::{HardwoodPlywood, Mdf, Particleboard, ThinMdf, WoodBased, WorkplaceShift};
    for (article, ppm) in [(Particleboard, 0.09), (Mdf, 0.11), (ThinMdf, 0.13), (HardwoodPlywood, 0.05)] {
        assert_eq!(find(Market::UnitedStates, article), Some(StatedLimit::PartPerMillion(ppm)));
    }
    assert_eq!(find(Market::EuropeanUnion, WoodBased), Some(StatedLimit::MilligramPerCubicMetre(0.062)));
    assert_eq!(find(Market::EuropeanUnion, WorkplaceShift), Some(StatedLimit::Both(0.3, 0.37)));
    assert!(LIMITS.iter().all(|limit| limit.regulation.contains(|c: char| c.is_ascii_digit())));
    let eu = LIMITS.iter().find(|limit| limit.article == WoodBased).unwrap();
    assert_eq!(eu.from, "2026-08-06");
}

/// Source: the molar volume of an ideal gas at 23 °C and 101.325 kPa, 24.301 L/mol (CODATA R), and 30.026 g/mol: 0.1 mg/m³ is 0.0809 ppm;
/// the other way gives back what was entered, at any temperature.
#[test]
fn ppm_and_milligrams_convert_in_both_directions() {
    use EmissionField::{AirTemperature, Concentration, MassConcentration};
    let ppm = |milligram: &str, celsius: &str| {
        let found = sheet(&entries(&[(MassConcentration, milligram), (AirTemperature, celsius)]));
        found.share.unwrap().unwrap().get::<part_per_million>()
    };
    near(ppm("0.1", "23"), 0.0809, 5e-5);
    for celsius in ["-10", "23", "40"] {
        let text = format!("{}", ppm("0.124", celsius));
        let back = sheet(&entries(&[(Concentration, &text), (AirTemperature, celsius)]));
        near(back.concentration.unwrap().unwrap().get::<milligram_per_cubic_meter>(), 0.124, 1e-9);
    }
    assert_eq!(sheet(&entries(&[(Concentration, "0.1")])).share, None);
    assert_eq!(sheet(&entries(&[(MassConcentration, "much")])).share, None);
}

fn entries(typed: &[(EmissionField, &str)]) -> EmissionEntries {
    let mut entries = EmissionEntries::default();
    for (field, text) in typed {
        entries.entry_mut(*field).text = (*text).to_owned();
    }
    entries
}

#[test]
fn the_sheet_answers_what_is_entered_and_nothing_else() {
    use EmissionField::{AddedUrea, BoardMoisture, Concentration, FormaldehydePerUrea, Perforator, TargetRatio};
    let empty = sheet(&EmissionEntries::default());
    assert_eq!((empty.ratios, empty.urea, empty.concentration, empty.perforator), (None, None, None, None));
    let all = [
        (FormaldehydePerUrea, "1.1"),
        (AddedUrea, "10"),
        (TargetRatio, "0,9"),
        (Concentration, "0.05"),
        (Perforator, "8"),
        (BoardMoisture, "6.5"),
    ];
    let found = sheet(&entries(&all));
    let by_hand = of_mix(&[(resin(1.1, 0.0), kg(100.0))], kg(10.0));
    assert_eq!(found.ratios, Some(by_hand));
    near(found.perforator.unwrap().unwrap(), 7.964, 1e-9);
    near(found.concentration.unwrap().unwrap().get::<milligram_per_cubic_meter>(), 0.0618, 5e-5);
    assert!(found.urea.unwrap().is_ok());
    // An entry that is none leaves no answer.
    for (field, text) in [(FormaldehydePerUrea, "x"), (AddedUrea, "-1"), (EmissionField::MelaminePerUrea, "many")] {
        let mut wrong = entries(&all);
        wrong.entry_mut(field).text = text.to_owned();
        assert_eq!(sheet(&wrong).ratios, None, "{field:?}");
    }
    let text = to_csv(&emission(&found), DecimalMark::Point);
    for expected in [
        "\"Limit: European Union, wood-based articles and furniture\",\"mg/m³\",,0.062,\"Regulation (EU) 2023/1464, from 2026-08-06\"",
        "\"Limit: United States, particleboard\",\"ppm\",,0.09,\"TSCA Title VI, 40 CFR 770\"",
        "\"A test decides: no figure here predicts an emission. Check the current local limit.\"",
        "\"F/U of the mix\",\"mol/mol\",",
    ] {
        assert!(text.contains(expected), "{expected} in {text}");
    }
}
