//! Effects and the analysis of variance, against certified and published values, and known coefficients.

use crate::support::something;
use approx::assert_relative_eq;
use haulm::domain::trial::series::design::Design;
use haulm::domain::trial::series::effects::{Effects, EffectsOutcome, ModelWay, RunResult, Term, effects};
use haulm::domain::trial::series::factor::{Factor, Level, OwnFactor};
use haulm::domain::trial::series::field::{FactorId, Of};
use haulm::domain::trial::series::run::Run;
use haulm::domain::trial::series::runs::Series;
use haulm::domain::trial::{Property, TrialProblem};
use haulm::quantity::{Amount, Kind};
use proptest::prelude::*;
use uom::si::f64::Ratio;

/// A series of that design, its runs in standard order.
fn series(design: Design, replicates: u16) -> Series {
    let factors = design
        .levels
        .iter()
        .zip(1..)
        .map(|(levels, id)| Factor {
            id: FactorId(id),
            of: Of::PressFactor,
            own: OwnFactor::default(),
            levels: (0..*levels).map(|at| Level::Value(Amount::from_base(Kind::Ratio, f64::from(at)))).collect(),
        })
        .collect();
    let mut runs = Vec::new();
    for replicate in 1..=replicates {
        for (levels, standard) in design.runs.iter().zip(1..) {
            let place = runs.len() as u16 + 1;
            runs.push(Run { place, standard, replicate, block: 1, levels: levels.clone(), made: None });
        }
    }
    Series { factors, design, block_words: Vec::new(), replicates, blocks: 1, seed: 0, margin: Ratio::default(), runs }
}

fn of(series: &Series, outcomes: &[RunResult], way: ModelWay) -> Effects {
    let outcome = effects(Property::BendingStrength, series, outcomes, way);
    outcome.effects.unwrap_or_else(|| panic!("{:?}", outcome.findings))
}

fn signs(run: &Run) -> Vec<f64> {
    run.levels.iter().map(|level| if *level == 0 { -1.0 } else { 1.0 }).collect()
}

/// One factor, the instrument; each value in the run of its instrument.
fn one_way(table: &str, levels: u8) -> Effects {
    let rows: Vec<(u8, f64)> = table
        .lines()
        .skip(1)
        .map(|line| {
            let (instrument, value) = line.split_once(',').unwrap();
            (instrument.parse().unwrap(), value.parse().unwrap())
        })
        .collect();
    let replicates = rows.len() / usize::from(levels);
    let series = series(Design::full(&[levels]), replicates as u16);
    let mut seen = vec![0_u16; usize::from(levels)];
    let outcomes: Vec<RunResult> = rows
        .iter()
        .map(|(instrument, value)| {
            let at = usize::from(*instrument) - 1;
            seen[at] += 1;
            (u16::from(levels) * (seen[at] - 1) + u16::from(*instrument), *value)
        })
        .collect();
    of(&series, &outcomes, ModelWay::Pairs)
}

struct Certified {
    between: f64,
    within: f64,
    f: f64,
    r_squared: f64,
    deviation: f64,
    freedom: (u32, u32),
    digits: f64,
}

fn check(effects: &Effects, certified: &Certified) {
    let term = effects.term(Term::Main(0)).unwrap();
    let near = |ours: f64, theirs: f64| assert_relative_eq!(ours, theirs, max_relative = certified.digits);
    assert_eq!((term.freedom, effects.residual_freedom), certified.freedom);
    near(term.squares, certified.between);
    near(effects.residual_squares, certified.within);
    near(term.f.unwrap(), certified.f);
    near(effects.explained(), certified.r_squared);
    near(effects.residual_deviation().unwrap(), certified.deviation);
}

/// Source: NIST Statistical Reference Datasets, analysis of variance, SiRstv (lower difficulty).
#[test]
fn resistance_of_silicon() {
    let effects = one_way(include_str!("../values/nist_strd_sirstv.csv"), 5);
    check(
        &effects,
        &Certified {
            between: 5.114_626_16e-2,
            within: 2.166_365_6e-1,
            f: 1.180_462_374_402_55,
            r_squared: 1.909_990_390_511_29e-1,
            deviation: 1.040_760_683_346_56e-1,
            freedom: (4, 20),
            digits: 1e-11,
        },
    );
    // The levels lie about their mean.
    let sum: f64 = effects.levels.iter().map(|level| level.above.value).sum();
    assert!(sum.abs() < 1e-12 && effects.levels.len() == 5);
}

/// Source: NIST Statistical Reference Datasets, analysis of variance, AtmWtAg (average difficulty: seven
/// constant leading digits, of which double precision leaves nine).
#[test]
fn atomic_weight_of_silver() {
    check(
        &one_way(include_str!("../values/nist_strd_atmwtag.csv"), 2),
        &Certified {
            between: 3.638_341_875e-9,
            within: 1.049_517_291_666_67e-8,
            f: 1.594_673_356_779_30e1,
            r_squared: 2.574_265_445_383_21e-1,
            deviation: 1.510_483_144_464_10e-5,
            freedom: (1, 46),
            digits: 1e-8,
        },
    );
}

/// Source: NIST/SEMATECH e-Handbook of Statistical Methods, section 5.4.7.1 (strength of ceramics, 2^5): mean
/// 546.8959; sums of squares of all main effects and two-factor interactions, published whole. Speed is A,
/// rate B, grit C, direction D, batch E. The handbook's model has third-order terms as well; sums of squares
/// of an orthogonal design do not depend on that.
#[test]
fn strength_of_ceramics() {
    let rows: Vec<Vec<f64>> = include_str!("../values/nist_handbook_ceramic.csv")
        .lines()
        .skip(1)
        .map(|line| line.split(',').map(|cell| cell.parse().unwrap()).collect())
        .collect();
    let series = series(Design::full(&[2; 5]), 1);
    let outcomes: Vec<RunResult> = series
        .runs
        .iter()
        .map(|run| {
            let signs = signs(run);
            (run.place, rows.iter().find(|row| row[..5] == signs[..]).unwrap()[5])
        })
        .collect();
    let effects = of(&series, &outcomes, ModelWay::Pairs);
    assert_relative_eq!(effects.mean, 546.8959, epsilon = 5e-5);
    let published = [
        (Term::Main(0), 894.0),
        (Term::Main(1), 3_497.0),
        (Term::Main(2), 12_664.0),
        (Term::Main(3), 315_133.0),
        (Term::Main(4), 33_654.0),
        (Term::Pair(0, 1), 4_873.0),
        (Term::Pair(0, 2), 1_839.0),
        (Term::Pair(0, 3), 1_637.0),
        (Term::Pair(0, 4), 465.0),
        (Term::Pair(1, 2), 307.0),
        (Term::Pair(1, 3), 1_973.0),
        (Term::Pair(1, 4), 199.0),
        (Term::Pair(2, 3), 3_158.0),
        (Term::Pair(2, 4), 29.0),
        (Term::Pair(3, 4), 1_329.0),
    ];
    for (term, squares) in published {
        let ours = effects.term(term).unwrap();
        assert!((ours.squares - squares).abs() <= 0.5, "{term:?}: {}", ours.squares);
        // Sum of squares of a contrast of ±1: n·(effect/2)².
        let effect = ours.effect.unwrap().value;
        assert_relative_eq!(32.0 * (effect / 2.0).powi(2), ours.squares, max_relative = 1e-9);
    }
    let ranking: Vec<Term> = effects.ranking().iter().take(3).map(|result| result.term).collect();
    assert_eq!(ranking, [Term::Main(3), Term::Main(4), Term::Main(2)], "direction, then batch, then grit");
    assert_eq!(effects.residual_freedom, 16);
    let total: f64 = effects.terms.iter().map(|term| term.squares).sum::<f64>() + effects.residual_squares;
    assert_relative_eq!(total, effects.total_squares, max_relative = 1e-12);
}

#[test]
fn mains_only_leave_the_pairs_to_the_scatter() {
    let series = series(Design::full(&[2; 3]), 1);
    let outcomes: Vec<RunResult> = series
        .runs
        .iter()
        .map(|run| (run.place, signs(run).iter().product::<f64>() + f64::from(run.levels[0])))
        .collect();
    let pairs = of(&series, &outcomes, ModelWay::Pairs);
    let mains = of(&series, &outcomes, ModelWay::Mains);
    assert_eq!((pairs.residual_freedom, mains.residual_freedom), (1, 4));
    assert_eq!(mains.terms.len(), 3);
}

#[test]
fn a_saturated_fraction_has_no_scatter_left() {
    let series = series(Design::fraction(5, 1).unwrap(), 1);
    let outcomes: Vec<RunResult> =
        series.runs.iter().map(|run| (run.place, f64::from(run.place * run.place))).collect();
    let EffectsOutcome { effects, findings } = effects(Property::Density, &series, &outcomes, ModelWay::Pairs);
    let effects = effects.unwrap();
    assert_eq!(effects.residual_freedom, 0);
    assert!(findings.iter().any(|finding| finding.what == TrialProblem::NoFreedom));
    assert!(effects.terms.iter().all(|term| term.f.is_none() && term.effect.is_some_and(|e| e.half_width.is_none())));
    assert!(effects.residual_deviation().is_none());
    assert_eq!(effects.terms[0].aliases.len(), 0, "beyond third order");
    assert_eq!(effects.term(Term::Pair(0, 1)).unwrap().aliases.len(), 1, "AB = CDE");
}

/// In 2^(4−1) IV, CD has the column of AB: the first is told, the second is not.
#[test]
fn an_alias_is_not_told_twice() {
    let series = series(Design::fraction(4, 1).unwrap(), 2);
    let outcomes: Vec<RunResult> = series
        .runs
        .iter()
        .map(|run| (run.place, signs(run)[0] * signs(run)[1] + 0.01 * f64::from(run.place % 3)))
        .collect();
    let effects = of(&series, &outcomes, ModelWay::Pairs);
    let (first, second) = (effects.term(Term::Pair(0, 1)).unwrap(), effects.term(Term::Pair(2, 3)).unwrap());
    assert_eq!((first.freedom, second.freedom), (1, 0));
    assert!(second.effect.is_none() && second.f.is_none() && second.squares == 0.0);
    assert!(first.aliases.iter().any(|word| word.to_text() == "CD"));
    assert!(effects.ranking().iter().all(|result| result.freedom > 0));
}

#[test]
fn blocks_take_their_share() {
    let mut series = series(Design::full(&[2, 2]), 3);
    series.blocks = 3;
    for run in &mut series.runs {
        run.block = run.replicate;
    }
    let wobble = [0.1, -0.2, 0.05, 0.02, -0.1];
    let outcomes: Vec<RunResult> = series
        .runs
        .iter()
        .map(|run| (run.place, 10.0 * f64::from(run.block) + signs(run)[0] + wobble[usize::from(run.place) % 5]))
        .collect();
    let effects = of(&series, &outcomes, ModelWay::Pairs);
    let blocks = effects.term(Term::Blocks).unwrap();
    assert_eq!((blocks.freedom, blocks.effect), (2, None));
    assert!(blocks.share > 0.9);
    assert_relative_eq!(effects.term(Term::Main(0)).unwrap().effect.unwrap().value, 2.0, epsilon = 0.2);
    assert_eq!(effects.ranking()[0].term, Term::Main(0));
    assert_eq!(effects.ranking()[0].is_significant(), Some(true));
}

#[test]
fn what_is_said_of_the_results() {
    let series = series(Design::full(&[2, 2]), 2);
    let outcomes: Vec<RunResult> = series.runs.iter().map(|run| (run.place, f64::from(run.place))).collect();
    let said = |outcomes: &[RunResult]| -> Vec<TrialProblem> {
        let outcome = effects(Property::Density, &series, outcomes, ModelWay::Pairs);
        outcome.findings.iter().map(|finding| finding.what).collect()
    };
    assert!(said(&outcomes).is_empty());
    assert_eq!(said(&outcomes[1..]), [TrialProblem::RunsMissing { count: 1 }]);
    assert_eq!(said(&[outcomes.as_slice(), &[(99, 1.0)]].concat()), [TrialProblem::BoardsWithoutRun { count: 1 }]);
    assert!(said(&outcomes[..2]).contains(&TrialProblem::TooFewResults));
    let same: Vec<RunResult> = outcomes.iter().map(|(run, _)| (*run, 7.0)).collect();
    assert!(said(&same).contains(&TrialProblem::NoVariation));
    assert!(said(&[]).contains(&TrialProblem::TooFewResults));
    // Two boards of one run count as their mean.
    let mut doubled = outcomes.clone();
    doubled[0].1 -= 0.5;
    doubled.push((1, outcomes[0].1 + 0.5));
    let one = of(&series, &outcomes, ModelWay::Pairs);
    let other = of(&series, &doubled, ModelWay::Pairs);
    assert_relative_eq!(one.total_squares, other.total_squares, max_relative = 1e-12);
    assert_eq!(one.runs, other.runs);
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 100, failure_persistence: None, ..ProptestConfig::default() })]

    /// Results made of known effects give them back.
    #[test]
    fn known_effects_are_recovered(
        mains in prop::collection::vec(-50.0..50.0_f64, 4), pair in -20.0..20.0_f64, mean in -1e4..1e4_f64,
    ) {
        prop_assume!(mains.iter().any(|effect| effect.abs() > 1.0));
        let series = series(Design::full(&[2; 4]), 2);
        let outcomes: Vec<RunResult> = series
            .runs
            .iter()
            .map(|run| {
                let signs = signs(run);
                let sum: f64 = mains.iter().zip(&signs).map(|(effect, sign)| effect / 2.0 * sign).sum();
                (run.place, mean + sum + pair / 2.0 * signs[1] * signs[3])
            })
            .collect();
        let effects = of(&series, &outcomes, ModelWay::Pairs);
        assert_relative_eq!(effects.mean, mean, max_relative = 1e-9, epsilon = 1e-9);
        for (factor, expected) in mains.iter().enumerate() {
            let ours = effects.term(Term::Main(factor)).unwrap().effect.unwrap();
            assert_relative_eq!(ours.value, *expected, max_relative = 1e-8, epsilon = 1e-8);
            let levels: Vec<_> = effects.levels.iter().filter(|level| level.factor == factor).collect();
            assert_relative_eq!(levels[1].above.value - levels[0].above.value, ours.value, epsilon = 1e-8);
            assert_relative_eq!(levels[1].mean - levels[0].mean, ours.value, epsilon = 1e-8);
        }
        let ours = effects.term(Term::Pair(1, 3)).unwrap().effect.unwrap();
        assert_relative_eq!(ours.value, pair, max_relative = 1e-8, epsilon = 1e-8);
    }

    /// Of three levels and two, with some runs missing: the sum of squares of each term is what leaving it
    /// out adds to the residual, and every figure is a number.
    #[test]
    fn unbalanced_results(values in prop::collection::vec(100.0..200.0_f64, 18), gone in prop::collection::vec(0..18_usize, 0..5)) {
        let series = series(Design::full(&[3, 2]), 3);
        let outcomes: Vec<RunResult> = series
            .runs
            .iter()
            .zip(&values)
            .enumerate()
            .filter(|(at, _)| !gone.contains(at))
            .map(|(_, (run, value))| (run.place, *value))
            .collect();
        let outcome = effects(Property::Density, &series, &outcomes, ModelWay::Pairs);
        let effects = something(outcome.effects)?;
        for term in &effects.terms {
            prop_assert!(term.squares.is_finite() && term.squares >= 0.0);
            prop_assert!(term.p.is_none_or(|p| (0.0..=1.0).contains(&p)));
        }
        prop_assert!(effects.explained() <= 1.0 + 1e-12);
        let above: f64 = effects.levels.iter().filter(|level| level.factor == 0).map(|level| level.above.value).sum();
        prop_assert!(above.abs() < 1e-6);
    }
}

/// A full factorial in standard order, as textbooks list it.
fn textbook(factors: usize, values: &[f64]) -> Effects {
    let series = series(Design::full(&vec![2; factors]), 1);
    let outcomes: Vec<RunResult> = series.runs.iter().zip(values).map(|(run, value)| (run.place, *value)).collect();
    of(&series, &outcomes, ModelWay::Pairs)
}

fn effect_of(effects: &Effects, term: Term) -> f64 {
    effects.term(term).unwrap().effect.unwrap().value
}

/// Source: Box, Hunter and Hunter (2005), the 2³ pilot plant (temperature, concentration, catalyst):
/// 23, −5, 1.5; interactions 1.5, 10, 0.
#[test]
fn the_pilot_plant() {
    let effects = textbook(3, &[60.0, 72.0, 54.0, 68.0, 52.0, 83.0, 45.0, 80.0]);
    for (term, published) in [
        (Term::Main(0), 23.0),
        (Term::Main(1), -5.0),
        (Term::Main(2), 1.5),
        (Term::Pair(0, 1), 1.5),
        (Term::Pair(0, 2), 10.0),
        (Term::Pair(1, 2), 0.0),
    ] {
        assert_relative_eq!(effect_of(&effects, term), published, epsilon = 1e-9);
    }
    // The three-factor interaction, 0.5, is all that is left: 8·(0.5/2)².
    assert_relative_eq!(effects.residual_squares, 0.5, epsilon = 1e-9);
}

/// Source: Montgomery (2013), filtration rate, 2⁴: A 21.625, B 3.125, C 9.875, D 14.625,
/// AC −18.125, AD 16.625.
#[test]
fn the_filtration_rate() {
    let rates = [45.0, 71.0, 48.0, 65.0, 68.0, 60.0, 80.0, 65.0, 43.0, 100.0, 45.0, 104.0, 75.0, 86.0, 70.0, 96.0];
    let effects = textbook(4, &rates);
    for (term, published) in [
        (Term::Main(0), 21.625),
        (Term::Main(1), 3.125),
        (Term::Main(2), 9.875),
        (Term::Main(3), 14.625),
        (Term::Pair(0, 2), -18.125),
        (Term::Pair(0, 3), 16.625),
    ] {
        assert_relative_eq!(effect_of(&effects, term), published, epsilon = 1e-9);
    }
}
