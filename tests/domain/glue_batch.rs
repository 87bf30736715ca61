//! Premixed glues: worked examples, conservation, and what is refused.

use haulm::domain::mixing::glue_batch::{GlueComponent, GlueError, MAX_PARTS, batch, mix};
use haulm::domain::mixing::target_amount::Wanted;
use proptest::prelude::*;
use uom::si::f64::{Mass, MassDensity, MassRate, Ratio, Volume};
use uom::si::mass::kilogram;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::mass_rate::kilogram_per_hour;
use uom::si::ratio::{percent, ratio};
use uom::si::volume::{cubic_meter, liter};

fn part(share: f64, solids_pct: f64, density: f64) -> GlueComponent {
    GlueComponent {
        share: Ratio::new::<ratio>(share),
        solids: Ratio::new::<percent>(solids_pct),
        density: MassDensity::new::<kilogram_per_cubic_meter>(density),
    }
}

fn kg(value: f64) -> Wanted {
    Wanted::Mass(Mass::new::<kilogram>(value))
}

/// A binder, a hardener solution and water, as a recipe might have them (invented).
fn glue() -> [GlueComponent; 3] {
    [part(100.0, 66.0, 1280.0), part(6.0, 20.0, 1115.4), part(10.0, 0.0, 998.2)]
}

fn check_solids(total: f64, resin_solids: f64, expected: f64) {
    let parts = [part(100.0, resin_solids, 1200.0), part(total - 100.0, 0.0, 1000.0)];
    let got = mix(&parts).unwrap().solids.get::<percent>();
    assert!((got - expected).abs() <= 0.005, "{resin_solids} % in {total} parts: {got}, expected {expected}");
}

/// Worked by hand: 100 · 40/130.1 = 30.75.
#[test]
fn solids_of_phenolic_glue_mixes() {
    check_solids(130.1, 40.0, 30.75);
    check_solids(130.1, 45.0, 34.59);
    check_solids(119.1, 40.0, 33.59);
    check_solids(119.1, 45.0, 37.78);
    check_solids(110.1, 40.0, 36.33);
    check_solids(110.1, 45.0, 40.87);
}

#[test]
fn a_batch_by_mass() {
    let made = batch(&glue(), kg(116.0)).unwrap();
    let masses: Vec<f64> = made.parts.iter().map(|p| p.mass.get::<kilogram>()).collect();
    for (got, expected) in masses.iter().zip([100.0, 6.0, 10.0]) {
        assert!((got - expected).abs() < 1e-12, "{got} for {expected}");
    }
    // Ideal mixing: the litres of the parts add up.
    let litres = 100.0 / 1.28 + 6.0 / 1.1154 + 10.0 / 0.9982;
    assert!((made.volume.get::<liter>() - litres).abs() < 1e-9);
    assert!((made.mix.density.get::<kilogram_per_cubic_meter>() - 116e3 / litres).abs() < 1e-9);
    // 66 kg from the binder, 1.2 kg from the hardener.
    assert!((made.solids.get::<kilogram>() - 67.2).abs() < 1e-12);
    assert!((made.water.get::<kilogram>() - 48.8).abs() < 1e-12);
}

#[test]
fn only_the_proportion_of_the_parts_counts() {
    let by_flow = glue().map(|p| {
        GlueComponent::from_flow(MassRate::new::<kilogram_per_hour>(7.5 * p.share.value), p.solids, p.density)
    });
    let (one, other) = (mix(&glue()).unwrap(), mix(&by_flow).unwrap());
    assert!((one.solids.value - other.solids.value).abs() < 1e-14);
    assert!((one.density.value - other.density.value).abs() < 1e-9);
}

#[test]
fn a_part_that_is_not_used_stays_in_its_place() {
    let parts = [part(100.0, 66.0, 1280.0), part(0.0, 20.0, 1115.4), part(10.0, 0.0, 998.2)];
    let made = batch(&parts, kg(110.0)).unwrap();
    assert_eq!(made.parts.len(), 3);
    assert_eq!(made.parts[1].mass, Mass::new::<kilogram>(0.0));
}

#[test]
fn parts_that_cannot_be_mixed_are_named() {
    let with = |wrong: GlueComponent| mix(&[part(1.0, 50.0, 1000.0), wrong]);
    assert_eq!(mix(&[]), Err(GlueError::NothingToMix));
    assert_eq!(mix(&[part(0.0, 50.0, 1000.0)]), Err(GlueError::NothingToMix));
    let many = [part(1.0, 50.0, 1000.0); MAX_PARTS + 1];
    assert_eq!(mix(&many), Err(GlueError::TooManyParts { given: MAX_PARTS + 1 }));
    assert!(mix(&many[..MAX_PARTS]).is_ok());
    for share in [-1.0, f64::NAN, f64::INFINITY] {
        let refused = with(part(share, 50.0, 1000.0));
        assert!(matches!(refused, Err(GlueError::ShareOutOfRange { part: 1, .. })), "{share}");
    }
    for solids in [-0.1, 100.1, f64::NAN] {
        let refused = with(part(1.0, solids, 1000.0));
        assert!(matches!(refused, Err(GlueError::SolidsOutOfRange { part: 1, .. })), "{solids}");
    }
    for density in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        let refused = with(part(1.0, 50.0, density));
        assert!(matches!(refused, Err(GlueError::DensityOutOfRange { part: 1, .. })), "{density}");
    }
    let huge = part(f64::MAX, 50.0, 1000.0);
    assert_eq!(mix(&[huge, huge]), Err(GlueError::NotFinite));
}

#[test]
fn amounts_out_of_range_are_refused() {
    for wrong in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        let refused = batch(&glue(), kg(wrong));
        assert!(matches!(refused, Err(GlueError::AmountOutOfRange { .. })), "{wrong}");
    }
    let wanted = Wanted::Volume(Volume::new::<cubic_meter>(f64::MAX));
    assert_eq!(batch(&glue(), wanted), Err(GlueError::AmountOutOfRange { given: wanted }));
}

fn some_parts() -> impl Strategy<Value = Vec<GlueComponent>> {
    prop::collection::vec((0.001..1000.0f64, 0.0..100.0f64, 300.0..2500.0f64), 1..=MAX_PARTS)
        .prop_map(|rows| rows.into_iter().map(|(s, w, d)| part(s, w, d)).collect())
}

proptest! {
    #[test]
    fn mass_volume_and_solids_are_conserved(parts in some_parts(), mass in 1e-3..1e5f64) {
        let made = batch(&parts, kg(mass)).unwrap();
        let sum = |get: fn(&haulm::domain::mixing::glue_batch::BatchPart) -> f64| -> f64 {
            made.parts.iter().map(get).sum()
        };
        let close = |a: f64, b: f64, scale: f64| (a - b).abs() <= 1e-12 * scale;
        prop_assert!(close(sum(|p| p.mass.value), mass, mass));
        prop_assert!(close(sum(|p| p.volume.value), made.volume.value, made.volume.value));
        prop_assert!(close(sum(|p| p.solids.value), made.solids.value, mass));
        prop_assert!(close(sum(|p| p.water.value), made.water.value, mass));
        let lightest = parts.iter().map(|p| p.density.value).fold(f64::MAX, f64::min);
        let heaviest = parts.iter().map(|p| p.density.value).fold(0.0, f64::max);
        let rho = made.mix.density.value;
        prop_assert!(rho >= lightest * (1.0 - 1e-12) && rho <= heaviest * (1.0 + 1e-12));
    }

    #[test]
    fn volume_and_mass_round_trip(parts in some_parts(), volume in 1e-6..1e3f64) {
        let wanted = Wanted::Volume(Volume::new::<cubic_meter>(volume));
        let by_volume = batch(&parts, wanted).unwrap();
        let by_mass = batch(&parts, Wanted::Mass(by_volume.mass)).unwrap();
        prop_assert!((by_mass.volume.value - volume).abs() <= 1e-12 * volume);
    }

    #[test]
    fn any_numbers_give_finite_figures_or_an_error(
        rows in prop::collection::vec((any::<u64>(), any::<u64>(), 0.0..100.0f64), 0..4),
        amount in any::<u64>(), by_mass in any::<bool>(),
    ) {
        // Positive more often than not: the sign bit off in three of four numbers.
        let number = |bits: u64| f64::from_bits(if bits.is_multiple_of(4) { bits } else { bits & !(1 << 63) });
        let parts: Vec<GlueComponent> =
            rows.into_iter().map(|(s, d, w)| part(number(s), w, number(d))).collect();
        let wanted = if by_mass {
            kg(number(amount))
        } else {
            Wanted::Volume(Volume::new::<cubic_meter>(number(amount)))
        };
        if let Ok(made) = batch(&parts, wanted) {
            let mut values = vec![
                made.mass.value, made.volume.value, made.solids.value, made.water.value,
                made.mix.solids.value, made.mix.density.value,
            ];
            for p in &made.parts {
                values.extend([p.mass.value, p.volume.value, p.solids.value, p.water.value]);
            }
            prop_assert!(values.iter().all(|v| v.is_finite() && *v >= 0.0), "{values:?}");
        }
    }
}
