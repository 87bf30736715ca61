//! Molar masses, isocyanate groups and the formaldehyde ratio.

use haulm::domain::chemistry::formaldehyde_ratio::{FormaldehydeRatioError, after_extra_urea, of_charge};
use haulm::domain::chemistry::isocyanate::{IsocyanateError, equivalent_weight, reaction_with_water};
use haulm::domain::chemistry::molar_mass::Species;
use proptest::prelude::*;
use uom::si::f64::{Mass, Ratio};
use uom::si::mass::{gram, kilogram};
use uom::si::molar_mass::gram_per_mole;
use uom::si::ratio::{percent, ratio};

fn pct(value: f64) -> Ratio {
    Ratio::new::<percent>(value)
}

fn g(value: f64) -> Mass {
    Mass::new::<gram>(value)
}

fn check(what: &str, got: f64, expected: f64, tolerance: f64) {
    assert!((got - expected).abs() <= tolerance, "{what}: {got}, expected {expected} ± {tolerance}");
}

/// Source: IUPAC abridged standard atomic weights, `values/molar_mass_iupac.csv`.
#[test]
fn molar_masses() {
    let table = include_str!("../values/molar_mass_iupac.csv");
    for (substance, name) in [
        (Species::Water, "water"),
        (Species::Formaldehyde, "formaldehyde"),
        (Species::Urea, "urea"),
        (Species::IsocyanateGroup, "isocyanate group NCO"),
        (Species::CarbonDioxide, "carbon dioxide"),
    ] {
        let line = table.lines().find(|line| line.split(',').next() == Some(name)).unwrap();
        let expected: f64 = line.rsplit(',').next().unwrap().parse().unwrap();
        check(name, substance.molar_mass().get::<gram_per_mole>(), expected, 1e-9);
    }
}

/// Source: definition with M(NCO) 42.017: 4201.7/31.0 = 135.539. Differs from the trade's rounded
/// 4202/31.0 = 135.548 by 0.007 %, because 4202 rounds the molar mass.
#[test]
fn equivalent_weight_at_31_percent() {
    let got = equivalent_weight(pct(31.0)).unwrap().get::<gram_per_mole>();
    check("equivalent weight", got, 135.539, 5e-4);
    check("equivalent weight, trade form", got, 135.548, 1e-4 * 135.548);
}

/// Source: stoichiometry, 2 R–NCO + H₂O → urea + CO₂, at 31.0 % NCO.
#[test]
fn water_used_and_carbon_dioxide_released() {
    let got = reaction_with_water(pct(31.0)).unwrap();
    check("water, g/kg", 1000.0 * got.water.get::<ratio>(), 66.457, 5e-4);
    check("carbon dioxide, g/kg", 1000.0 * got.carbon_dioxide.get::<ratio>(), 162.348, 5e-4);
}

#[test]
fn nco_out_of_range_is_refused() {
    for wrong in [0.0, -31.0, 100.1, 3100.0, f64::INFINITY] {
        let refused = IsocyanateError::NcoOutOfRange { given: pct(wrong) };
        assert_eq!(equivalent_weight(pct(wrong)), Err(refused));
        assert_eq!(reaction_with_water(pct(wrong)), Err(refused));
    }
    assert!(equivalent_weight(pct(f64::NAN)).is_err());
}

/// Source: computed from the molar masses: 1000 g of 37 % formalin and 500 g of urea, then 100 g more.
#[test]
fn formaldehyde_ratio_of_a_charge() {
    for (urea, expected) in [(500.0, 1.480_099), (600.0, 1.233_415)] {
        let got = of_charge(g(1000.0), pct(37.0), g(urea)).unwrap().get::<ratio>();
        check("F/U", got, expected, 1e-6);
    }
}

/// The two ends worked by hand: a kilogram of solids at F/U 1.2 holds 60.056/(60.056 + 1.2·30.026) =
/// 0.625 015 kg of urea if all methylol, 60.056/(60.056 + 1.2·12.011) = 0.806 452 kg if all methylene.
#[test]
fn extra_urea_lowers_the_ratio_between_two_ends() {
    let got = after_extra_urea(Ratio::new::<ratio>(1.2), pct(5.0)).unwrap();
    check("all methylol", got.all_methylol.value, 1.2 * 0.625_015 / 0.675_015, 1e-5);
    check("all methylene", got.all_methylene.value, 1.2 * 0.806_452 / 0.856_452, 1e-5);
    let none = after_extra_urea(Ratio::new::<ratio>(1.2), pct(0.0)).unwrap();
    check("no urea added", none.all_methylol.value, 1.2, 1e-15);
    check("no urea added", none.all_methylene.value, 1.2, 1e-15);
}

#[test]
fn charges_out_of_range_are_refused() {
    use FormaldehydeRatioError as E;
    for wrong in [-1.0, f64::NAN, f64::INFINITY] {
        let refused = of_charge(g(wrong), pct(37.0), g(500.0));
        assert!(matches!(refused, Err(E::FormalinOutOfRange { .. })), "{wrong}");
        let refused = of_charge(g(1000.0), pct(37.0), g(wrong));
        assert!(matches!(refused, Err(E::UreaOutOfRange { .. })), "{wrong}");
        let refused = after_extra_urea(pct(120.0), pct(wrong));
        assert!(matches!(refused, Err(E::ExtraOutOfRange { .. })), "{wrong}");
    }
    assert_eq!(of_charge(g(1000.0), pct(37.0), g(0.0)), Err(E::UreaOutOfRange { given: g(0.0) }));
    for wrong in [-1.0, 100.1, f64::NAN] {
        let refused = of_charge(g(1000.0), pct(wrong), g(500.0));
        assert!(matches!(refused, Err(E::StrengthOutOfRange { .. })), "{wrong}");
    }
    for wrong in [0.0, -1.0, 100.1, f64::NAN] {
        let refused = after_extra_urea(Ratio::new::<ratio>(wrong), pct(5.0));
        assert!(matches!(refused, Err(E::RatioOutOfRange { .. })), "{wrong}");
    }
}

proptest! {
    #[test]
    fn more_urea_never_raises_the_ratio(r in 0.1..3.0f64, a in 0.0..1.0f64, b in 0.0..1.0f64) {
        let at = |x| after_extra_urea(Ratio::new::<ratio>(r), Ratio::new::<ratio>(x)).unwrap();
        let (less, more) = (at(a.min(b)), at(a.max(b)));
        prop_assert!(more.all_methylol <= less.all_methylol);
        prop_assert!(more.all_methylene <= less.all_methylene);
        prop_assert!(less.all_methylol <= less.all_methylene);
    }

    #[test]
    fn any_numbers_give_finite_figures_or_an_error(bits in any::<[u64; 3]>(), w in 0.0..1.0f64) {
        let [a, b, c] = bits.map(f64::from_bits);
        for strength in [w, c] {
            let charge =
                of_charge(Mass::new::<kilogram>(a), Ratio::new::<ratio>(strength), Mass::new::<kilogram>(b));
            prop_assert!(charge.is_err() || charge.is_ok_and(|r| r.is_finite() && r.value >= 0.0));
            let weight = equivalent_weight(Ratio::new::<ratio>(strength));
            prop_assert!(weight.is_err() || weight.is_ok_and(|m| m.is_finite() && m.value > 0.0));
            let after = after_extra_urea(Ratio::new::<ratio>(100.0 * strength), Ratio::new::<ratio>(a));
            if let Ok(after) = after {
                prop_assert!(after.all_methylol.is_finite() && after.all_methylene.is_finite());
            }
            if let Ok(reaction) = reaction_with_water(Ratio::new::<ratio>(strength)) {
                prop_assert!(reaction.water.is_finite() && reaction.carbon_dioxide.is_finite());
            }
        }
    }
}
