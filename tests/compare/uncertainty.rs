//! Both methods against published examples, closed forms and each other.

use crate::study;
use crate::support;
use haulm::domain::balance::outcome::Case;
use haulm::domain::compare::uncertainty::agreement::{self, DisagreementCause};
use haulm::domain::compare::uncertainty::input_uncertainty::{
    Form, InputUncertainty, Shape, Size, width_from, width_in,
};
use haulm::domain::compare::uncertainty::monte_carlo::{MonteCarloRun, USUAL_DRAWS};
use haulm::domain::compare::uncertainty::study::{RequestedFigure, Study, StudyError, UncertainInput};
use haulm::domain::compare::{Output, variable};
use haulm::domain::{Entry, Field, Figure, LiquidField, LiquidId, work_out};
use haulm::quantity::Unit;
use haulm::statistics::coverage::{Combined, Contribution, combine, factor};

#[track_caller]
fn check(what: &str, found: f64, expected: f64, tolerance: f64) {
    assert!((found - expected).abs() <= tolerance, "{what}: {found} for {expected} ± {tolerance}");
}

fn certain(part: f64) -> Contribution {
    Contribution { part, freedom: None }
}

/// Source: JCGM 100:2008, annex H.1 (end gauge), table H.1 and H.1.6: c·u of the standard, the
/// comparator, the difference of expansion and the difference of temperature, in nm, and their degrees
/// of freedom. u_c = 32 nm, ν_eff = 16, U₉₉ = 93 nm.
#[test]
fn gum_h1() {
    let parts = [(25.0, 18.0), (9.7, 25.6), (2.9, 50.0), (575.0 * 0.029, 2.0)]
        .map(|(part, freedom)| Contribution { part, freedom: Some(freedom) });
    let Combined { standard, freedom } = combine(&parts);
    check("u_c", standard, 31.71, 0.005);
    check("degrees of freedom", freedom.unwrap(), 16.66, 0.02);
    check("U99", factor(0.99, freedom) * standard, 93.0, 0.5);
    assert_eq!(format!("{standard:.0}"), "32");
}

#[test]
fn inputs_known_exactly_leave_no_degrees_of_freedom() {
    let combined = combine(&[certain(3.0), certain(-4.0)]);
    assert_eq!((combined.standard, combined.freedom), (5.0, None));
    assert_eq!(combine(&[certain(0.0)]).standard, 0.0);
    check("k", factor(0.95, None), 1.959_963_984_540_054, 1e-12);
    // Abramowitz and Stegun (1964), table 26.10: t₀.₉₇₅ with 1, 5 and 30 degrees of freedom.
    for (freedom, expected) in [(1.0, 12.706), (5.0, 2.571), (30.9, 2.042)] {
        check("t", factor(0.95, Some(freedom)), expected, 5e-4);
    }
}

/// A board whose cost is the sum of four prices: each liquid is dosed by volume of board, 1 kg/m³, so that
/// cost = p₁ + p₂ + p₃ + p₄ per m³. The additive model of JCGM 101, 9.2.
fn additive() -> Case {
    let mut draft = support::plain_recipe();
    draft.liquids = (1..=4)
        .map(|id| {
            let mut liquid = support::liquid(id, "1", "50", "1000");
            liquid.dose_way = haulm::domain::DoseWay::LiquidPerBoard;
            liquid.dose = Entry::typed("1", Unit::KilogramPerCubicMetre);
            liquid.price = Entry::typed("100", Unit::PerKilogram);
            liquid
        })
        .collect();
    // The fibre costs nothing: without its price there would be no cost.
    draft.plain.fibre_price = Entry::typed("0", Unit::PerTonne);
    work_out(&draft).case.unwrap()
}

fn price(id: u16) -> Field {
    Field::Liquid(LiquidId(id), LiquidField::Price)
}

fn one(output: Output) -> Vec<RequestedFigure> {
    vec![RequestedFigure::Of { system: 0, output }]
}

fn additive_study(spreads: [InputUncertainty; 4]) -> Study {
    let uncertain: Vec<_> =
        (1..).zip(spreads).map(|(id, spread)| UncertainInput { targets: vec![(0, price(id))], spread }).collect();
    Study::new(&[additive()], &uncertain, &one(Output::Figure(Figure::Cost))).unwrap()
}

fn spread(form: Form, width: f64) -> InputUncertainty {
    InputUncertainty::new(form, Size::Absolute(width), None).unwrap()
}

fn run(study: &Study, seed: u64, draws: usize) -> MonteCarloRun {
    let mut run = MonteCarloRun::new(study.clone(), seed, draws);
    run.step(draws);
    run
}

/// Source: JCGM 101:2008, 9.2.2: four inputs N(0, 1), 95 % interval ±3.92, which is also what the
/// first-order method gives.
#[test]
fn jcgm_101_9_2_normal() {
    let study = additive_study([spread(Form::Standard, 1.0); 4]);
    let budget = study.budget(0).unwrap();
    check("y", budget.value, 400.0, 1e-9);
    check("u_c", budget.standard, 2.0, 1e-12);
    check("U", budget.expanded, 3.92, 0.005);
    let mut run = run(&study, 1, 1_000_000);
    let summary = run.summary(0).unwrap();
    check("low", summary.low, 400.0 - 3.92, 0.02);
    check("high", summary.high, 400.0 + 3.92, 0.02);
    assert!(agreement::compare(&study, &budget, &summary, 1).agree);
}

/// Source: JCGM 101:2008, 9.2.3: four rectangular inputs of mean 0 and standard deviation 1. Exact 95 %
/// interval ±3.8794 (published as ±3.88); the first-order method still says ±3.92.
#[test]
fn jcgm_101_9_2_rectangular() {
    let study = additive_study([spread(Form::HalfWidth, 3.0_f64.sqrt()); 4]);
    let budget = study.budget(0).unwrap();
    check("u_c", budget.standard, 2.0, 1e-12);
    check("U", budget.expanded, 3.92, 0.005);
    let mut run = run(&study, 1, 1_000_000);
    let summary = run.summary(0).unwrap();
    check("low", summary.low, 400.0 - 3.8794, 0.015);
    check("high", summary.high, 400.0 + 3.8794, 0.015);
    let two = agreement::compare(&study, &budget, &summary, 2);
    check("δ of 2.0", two.tolerance, 0.05, 1e-12);
    assert!(two.agree, "3.92 − 3.88 is within 0.05: {two:?}");
}

/// The upper 2.5 % of a sum of rectangular inputs with these half-widths, by bisection of the sum's exact
/// distribution: Σ over all signs of ±(x + Σ±a)₊ⁿ/(n!·2ⁿ·Πa).
fn rectangular_sum(widths: &[f64]) -> f64 {
    let count = widths.len();
    let scale: f64 =
        widths.iter().product::<f64>() * (1..=count).product::<usize>() as f64 * 2.0_f64.powi(count as i32);
    let below = |x: f64| {
        let mut sum = 0.0;
        for signs in 0..1_u32 << count {
            let shift: f64 = widths.iter().enumerate().map(|(at, a)| if signs >> at & 1 == 1 { -a } else { *a }).sum();
            let sign = if signs.count_ones() % 2 == 0 { 1.0 } else { -1.0 };
            sum += sign * (x + shift).max(0.0).powi(count as i32);
        }
        sum / scale
    };
    let (mut low, mut high) = (0.0, widths.iter().sum());
    for _ in 0..100 {
        let middle = f64::midpoint(low, high);
        if below(middle) < 0.975 { low = middle } else { high = middle }
    }
    low
}

/// Source: JCGM 101:2008, 9.2.4: one input ten times as uncertain as the other three: Monte Carlo ±17.0,
/// first order ±19.9. The two disagree, and it is said why.
#[test]
fn jcgm_101_9_2_one_rectangular_outweighs() {
    let exact = rectangular_sum(&[1.0, 1.0, 1.0, 10.0].map(|times| times * 3.0_f64.sqrt()));
    check("exact", exact, 17.0, 0.05);
    check("exact, all alike", rectangular_sum(&[3.0_f64.sqrt(); 4]), 3.8794, 5e-5);
    let width = |times: f64| spread(Form::HalfWidth, times * 3.0_f64.sqrt());
    let study = additive_study([width(1.0), width(1.0), width(1.0), width(10.0)]);
    let budget = study.budget(0).unwrap();
    check("U", budget.expanded, 19.9, 0.05);
    let summary = run(&study, 3, 1_000_000).summary(0).unwrap();
    check("low", summary.low, 400.0 - exact, 0.05);
    check("high", summary.high, 400.0 + exact, 0.05);
    let compared = agreement::compare(&study, &budget, &summary, 2);
    assert!(!compared.agree && !compared.noisy);
    assert_eq!(compared.why, [DisagreementCause::Rectangular]);
    assert_eq!(budget.shares[0].source, 3);
    check("share", budget.shares[0].share, 100.0 / 103.0, 1e-12);
    let better = budget.improve_first().unwrap();
    check("halved", better.halved, 28.0_f64.sqrt(), 1e-9);
    check("exact", better.exact, 3.0_f64.sqrt(), 1e-9);
}

/// A ratio: L = F·d/s. Relative variances add, to first order.
#[test]
fn a_product_has_its_closed_form() {
    let case = study::case();
    let resin = |part| Field::Liquid(LiquidId(1), part);
    let relative = |share| InputUncertainty::new(Form::Standard, Size::Relative(share), None).unwrap();
    let parts = [(Field::FibreFlow, 0.01), (resin(LiquidField::Dose), 0.02), (resin(LiquidField::Solids), 0.015)];
    let uncertain: Vec<_> = parts
        .iter()
        .map(|(field, share)| UncertainInput { targets: vec![(0, *field)], spread: relative(*share) })
        .collect();
    let output = Output::Figure(Figure::Liquid(LiquidId(1), haulm::domain::LiquidFigure::Liquid));
    let study = Study::new(std::slice::from_ref(&case), &uncertain, &one(output)).unwrap();
    let budget = study.budget(0).unwrap();
    let expected = (0.01_f64.powi(2) + 0.02_f64.powi(2) + 0.015_f64.powi(2)).sqrt();
    check("relative u_c", budget.standard / budget.value, expected, 1e-12);
    check("value", budget.value, output.value(&case).unwrap().base, 1e-12);
    assert_eq!(budget.shares.iter().map(|share| share.source).collect::<Vec<_>>(), [1, 2, 0]);
    check("shares", budget.shares.iter().map(|share| share.share).sum(), 1.0, 1e-12);
    let mut run = run(&study, 5, USUAL_DRAWS);
    let summary = run.summary(0).unwrap();
    check("relative SD", summary.standard / budget.value, expected, 3e-4);
    let compared = agreement::compare(&study, &budget, &summary, 1);
    assert!(compared.agree, "{compared:?}");
}

/// In the linear regime both methods agree for every figure of a whole recipe.
#[test]
fn monte_carlo_agrees_with_first_order() {
    let study = study::large(1);
    let mut run = run(&study, 42, USUAL_DRAWS);
    for (at, asked) in study.asked().iter().enumerate() {
        let (budget, summary) = (study.budget(at).unwrap(), run.summary(at).unwrap());
        let u = budget.standard;
        check(&format!("mean of {asked:?}"), summary.mean, budget.value, 0.02 * u);
        check(&format!("SD of {asked:?}"), summary.standard, u, 0.015 * u);
        check(&format!("low of {asked:?}"), summary.low, budget.value - budget.expanded, 0.06 * u);
        check(&format!("high of {asked:?}"), summary.high, budget.value + budget.expanded, 0.06 * u);
        assert!(summary.low_error > 0.0 && summary.low_error < 0.02 * u, "{}", summary.low_error / u);
        assert_eq!((summary.left_out, summary.held), (0, 0.0));
    }
}

/// Two systems with the same belt scale: of the difference of their fibre flows nothing is left to be
/// unsure of; with a scale each, the variances add.
#[test]
fn what_both_have_in_common_cancels() {
    let cases = [study::case(), study::case()];
    let spread = InputUncertainty::new(Form::Standard, Size::Relative(0.01), None).unwrap();
    let output = Output::Figure(Figure::Cost);
    let ask = [
        RequestedFigure::Of { system: 0, output: Output::Figure(Figure::Fibre) },
        RequestedFigure::Difference { system: 1, reference: 0, output: Output::Figure(Figure::Fibre) },
        RequestedFigure::Difference { system: 1, reference: 0, output },
    ];
    let common = [UncertainInput { targets: vec![(0, Field::FibreFlow), (1, Field::FibreFlow)], spread }];
    let study_common = Study::new(&cases, &common, &ask).unwrap();
    assert!(study_common.budget(0).unwrap().standard > 0.0);
    assert_eq!(study_common.budget(1).unwrap().standard, 0.0);
    let summary = run(&study_common, 1, 10_000).summary(1).unwrap();
    assert_eq!((summary.mean, summary.standard), (0.0, 0.0));

    let own = [0, 1].map(|system| UncertainInput { targets: vec![(system, Field::FibreFlow)], spread });
    let study_own = Study::new(&cases, &own, &ask).unwrap();
    let single = study_own.budget(0).unwrap().standard;
    check("u of the difference", study_own.budget(1).unwrap().standard, single * 2.0_f64.sqrt(), 1e-12 * single);
    let summary = run(&study_own, 1, USUAL_DRAWS).summary(1).unwrap();
    check("SD of the difference", summary.standard, single * 2.0_f64.sqrt(), 0.01 * single);
}

/// A difference in its closed form: Δcost = p·(use₁ − use₂) with a price in common, to which every price
/// of its own adds.
#[test]
fn a_correlated_difference_has_its_closed_form() {
    let cheap = study::case();
    let mut draft = haulm::domain::example();
    draft.liquids = haulm::domain::recipe::binder_system::SystemKey::Muf.system().liquids;
    for liquid in &mut draft.liquids {
        liquid.price = Entry::typed("900", Unit::PerTonne);
    }
    let dear = work_out(&draft).case.unwrap();
    let resin = Field::Liquid(LiquidId(1), LiquidField::Price);
    let absolute = |width| InputUncertainty::new(Form::Standard, Size::Absolute(width), None).unwrap();
    let uncertain = [
        UncertainInput { targets: vec![(0, Field::FibrePrice), (1, Field::FibrePrice)], spread: absolute(0.01) },
        UncertainInput { targets: vec![(0, resin)], spread: absolute(0.02) },
        UncertainInput { targets: vec![(1, resin)], spread: absolute(0.03) },
    ];
    let ask = [RequestedFigure::Difference { system: 1, reference: 0, output: Output::Figure(Figure::Cost) }];
    let used = |case: &Case, figure| case.figure(figure).unwrap().base;
    let resin_used = |case: &Case| used(case, Figure::Liquid(LiquidId(1), haulm::domain::LiquidFigure::PerVolume));
    let fibre = used(&dear, Figure::FibrePerVolume) - used(&cheap, Figure::FibrePerVolume);
    let expected =
        ((0.01 * fibre).powi(2) + (0.02 * resin_used(&cheap)).powi(2) + (0.03 * resin_used(&dear)).powi(2)).sqrt();
    let study = Study::new(&[cheap, dear], &uncertain, &ask).unwrap();
    check("u", study.budget(0).unwrap().standard, expected, 1e-9 * expected);
    check("SD", run(&study, 9, USUAL_DRAWS).summary(0).unwrap().standard, expected, 0.01 * expected);
}

/// The same seed gives the same draws, whatever the slices; another seed gives others.
#[test]
fn slices_do_not_matter() {
    let study = study::large(1);
    let mut whole = run(&study, 7, 10_000);
    let mut slices = MonteCarloRun::new(study.clone(), 7, 10_000);
    let mut size = 1;
    while !slices.step(size).is_done() {
        size = size * 3 % 1_000 + 1;
    }
    assert_eq!(slices.progress(), whole.progress());
    assert_eq!(slices.progress().drawn, 10_000);
    for asked in 0..study.asked().len() {
        let found = whole.summary(asked).unwrap();
        assert_eq!(slices.summary(asked).unwrap(), found);
        assert_eq!(found.draws, 10_000);
    }
    assert_ne!(run(&study, 8, 10_000).summary(0), whole.summary(0));
}

/// A water dose whose mean is near zero: half of the draws are held at zero, and it is said so.
#[test]
fn a_dose_held_at_zero_is_said() {
    let mut draft = haulm::domain::example();
    let needed = work_out(&draft).case.unwrap().figure(Figure::FibreMoistureForNoWater).unwrap();
    *draft.entry_mut(Field::FibreMoisture).unwrap() =
        Entry::typed(format!("{}", needed.base * 99.5), Unit::PercentDryBasis);
    let case = work_out(&draft).case.unwrap();
    let spread = InputUncertainty::new(Form::Standard, Size::Absolute(0.005), None).unwrap();
    let uncertain = [UncertainInput { targets: vec![(0, Field::FibreMoisture)], spread }];
    let study = Study::new(&[case], &uncertain, &one(Output::Figure(Figure::WaterDose))).unwrap();
    let (budget, summary) = (study.budget(0).unwrap(), run(&study, 2, USUAL_DRAWS).summary(0).unwrap());
    assert_eq!(summary.low, 0.0);
    assert!((0.4..0.6).contains(&summary.held), "{}", summary.held);
    let compared = agreement::compare(&study, &budget, &summary, 1);
    assert!(!compared.agree);
    assert!(
        matches!(compared.why.as_slice(), [DisagreementCause::AtBound(share), DisagreementCause::Curved] if *share == summary.held),
        "{:?}",
        compared.why
    );
}

/// A moisture of 0.5 ± 0.5 points: a sixth of the draws would be below zero and is left out, and counted.
#[test]
fn impossible_draws_are_left_out_and_counted() {
    let mut draft = support::plain_recipe();
    *draft.entry_mut(Field::FibreMoisture).unwrap() = Entry::typed("0.5", Unit::PercentDryBasis);
    let case = work_out(&draft).case.unwrap();
    let spread = InputUncertainty::new(Form::Standard, Size::Absolute(0.005), None).unwrap();
    let uncertain = [UncertainInput { targets: vec![(0, Field::FibreMoisture)], spread }];
    let study = Study::new(&[case], &uncertain, &one(Output::Figure(Figure::WaterOnHand))).unwrap();
    let mut run = run(&study, 2, USUAL_DRAWS);
    let summary = run.summary(0).unwrap();
    check("left out", summary.left_out as f64 / USUAL_DRAWS as f64, 0.1587, 0.004);
    assert_eq!(summary.draws + summary.left_out, USUAL_DRAWS);
    assert!(summary.low >= 0.0);
    let compared = agreement::compare(&study, &study.budget(0).unwrap(), &summary, 1);
    assert!(compared.why.contains(&DisagreementCause::LeftOut(summary.left_out)), "{compared:?}");
}

/// Student's distribution: SD of the draws √(ν/(ν−2)) times the scale, and the interval that of its table.
#[test]
fn few_degrees_of_freedom_widen_both() {
    let few = InputUncertainty::new(Form::Standard, Size::Absolute(1.0), Some(6.0)).unwrap();
    assert_eq!(few.shape(), Shape::Student(6.0));
    let uncertain = [UncertainInput { targets: vec![(0, price(1))], spread: few }];
    let study = Study::new(&[additive()], &uncertain, &one(Output::Figure(Figure::Cost))).unwrap();
    let budget = study.budget(0).unwrap();
    check("degrees of freedom", budget.freedom.unwrap(), 6.0, 1e-9);
    // Abramowitz and Stegun (1964), table 26.10: t₀.₉₇₅(6) = 2.447.
    check("U", budget.expanded, 2.447, 5e-4);
    let summary = run(&study, 4, 400_000).summary(0).unwrap();
    check("SD", summary.standard, 1.5_f64.sqrt(), 0.01);
    check("high", summary.high - 400.0, 2.447, 0.03);
    check("low", summary.low - 400.0, -2.447, 0.03);
}

#[test]
fn a_stated_width_becomes_a_standard_uncertainty() {
    let new = |form, size, freedom| InputUncertainty::new(form, size, freedom);
    check("u", new(Form::Standard, Size::Absolute(2.0), None).unwrap().standard(9.0), 2.0, 0.0);
    check(
        "a/√3",
        new(Form::HalfWidth, Size::Relative(0.03), None).unwrap().standard(10.0),
        0.3 / 3.0_f64.sqrt(),
        1e-15,
    );
    check("U/1.96", new(Form::Interval95, Size::Absolute(1.96), None).unwrap().standard(0.0), 1.0, 2e-5);
    check("U/t", new(Form::Interval95, Size::Absolute(2.571), Some(5.0)).unwrap().standard(0.0), 1.0, 2e-4);
    for (width, freedom) in
        [(0.0, None), (-1.0, None), (f64::NAN, None), (f64::INFINITY, None), (1.0, Some(0.5)), (1.0, Some(f64::NAN))]
    {
        assert_eq!(new(Form::Standard, Size::Absolute(width), freedom), None, "{width} {freedom:?}");
    }
    // ± 1 point of wet-basis moisture around 20 % wet basis (25 % dry): du/dω = 1/(1+ω)², so 1.5625 points.
    let width = width_from(Unit::PercentWetBasis, 1.0, 0.25);
    check("wet basis", width, 0.015_625, 5e-6);
    check("and back", width_in(Unit::PercentWetBasis, width, 0.25), 1.0, 5e-4);
    check("plain", width_from(Unit::TonnePerHour, 3.6, 5.0), 1.0, 1e-12);
}

#[test]
fn what_is_not_there_is_named() {
    let case = study::case();
    let spread = InputUncertainty::new(Form::Standard, Size::Relative(0.01), None).unwrap();
    let at = |system, field| [UncertainInput { targets: vec![(system, field)], spread }];
    let ask = one(Output::Figure(Figure::Cost));
    let cases = [case];
    let new = |uncertain: &[UncertainInput], ask: &[RequestedFigure]| Study::new(&cases, uncertain, ask).unwrap_err();
    assert_eq!(new(&[], &ask), StudyError::Empty);
    assert_eq!(new(&at(0, Field::FibreFlow), &[]), StudyError::Empty);
    assert_eq!(new(&at(1, Field::FibreFlow), &ask), StudyError::NoSystem(1));
    assert_eq!(new(&at(0, Field::WaterFlow), &ask), StudyError::NotUsed(0, Field::WaterFlow));
    let spray = Output::Figure(Figure::Liquid(LiquidId(1), haulm::domain::LiquidFigure::Spray));
    assert_eq!(new(&at(0, Field::FibreFlow), &one(spray)), StudyError::NotGiven(0, spray));
}

/// Source: JCGM 101:2008, 7.9.2: u = 0.35 g with two digits is 35·10⁻², δ = 0.005; 9.95 carries to 10.
#[test]
fn the_tolerance_follows_the_digits() {
    for (standard, digits, expected) in [
        (0.35, 2, 0.005),
        (0.35, 1, 0.05),
        (2.0, 2, 0.05),
        (32.0, 2, 0.5),
        (9.97, 2, 0.5),
        (0.096, 1, 0.05),
        (0.0, 2, 0.0),
    ] {
        check(&format!("δ of {standard}, {digits} digits"), agreement::tolerance(standard, digits), expected, 1e-12);
    }
}

/// Starting values: every one is a ± that a study takes, and common instruments are common.
#[test]
fn starting_values_make_a_study() {
    use haulm::domain::compare::uncertainty::instrument::{Instrument, sources, start};
    let draft = haulm::domain::example();
    let mut other = draft.clone();
    other.liquids[0].dose = Entry::typed("3", Unit::Percent);
    let cases = [&draft, &other].map(|draft| work_out(draft).case.unwrap());
    let uncertain = sources(&[(&draft, &cases[0]), (&other, &cases[1])]);
    for source in &uncertain {
        assert_eq!(source.targets.len(), 2, "{source:?}");
        assert_eq!(source.targets[0].1, source.targets[1].1);
    }
    assert!(uncertain.len() >= 8, "{}", uncertain.len());
    let resin = Field::Liquid(draft.liquids[0].id, LiquidField::Solids);
    assert_eq!(start(&cases[0], resin), None, "nothing to test in a liquid without water");
    assert_eq!(Instrument::of(Field::FibreFlow), Instrument::BeltScale);
    let ask = [RequestedFigure::Difference { system: 1, reference: 0, output: Output::Figure(Figure::Cost) }];
    let study = Study::new(&cases, &uncertain, &ask).unwrap();
    let budget = study.budget(0).unwrap();
    assert!(budget.standard > 0.0 && budget.value < 0.0);
    assert!(variable::used(&cases[0].input).count() > 25);
}

/// Everything at once: each figure of each system, and each difference, as the figure asked for alone.
#[test]
fn all_figures_at_once_are_each_figure_alone() {
    let drafts =
        [haulm::domain::recipe::binder_system::SystemKey::Uf, haulm::domain::recipe::binder_system::SystemKey::Pmdi]
            .map(|key| haulm::domain::compare::side::with_liquids(&haulm::domain::example(), &key.system().liquids));
    let cases = drafts.each_ref().map(|draft| work_out(draft).case.unwrap());
    let pairs: Vec<_> = drafts.iter().zip(&cases).collect();
    let uncertain = haulm::domain::compare::uncertainty::instrument::sources(&pairs);
    let outputs = Output::side_by_side(1);
    let asked = RequestedFigure::all(&cases, 1, &outputs);
    let given = |at: usize| outputs.iter().filter(|output| output.value(&cases[at]).is_some()).count();
    let differences =
        asked.iter().filter(|asked| matches!(asked, RequestedFigure::Difference { system: 0, reference: 1, .. }));
    assert!(given(0) > 20, "{}", given(0));
    assert_eq!(asked.len(), given(0) + given(1) + differences.count());
    let study = Study::new(&cases, &uncertain, &asked).unwrap();
    let mut all = run(&study, 6, 8_000);
    for (at, one) in asked.iter().enumerate() {
        let alone = Study::new(&cases, &uncertain, &[*one]).unwrap();
        let (budget, other) = (study.budget(at).unwrap(), alone.budget(0).unwrap());
        let scale = 1e-12 * (other.value.abs() + other.standard);
        check(&format!("{one:?}"), budget.value, other.value, scale);
        check(&format!("u of {one:?}"), budget.standard, other.standard, scale);
        let (summary, other) = (all.summary(at).unwrap(), run(&alone, 6, 8_000).summary(0).unwrap());
        check(&format!("low of {one:?}"), summary.low, other.low, scale);
        check(&format!("high of {one:?}"), summary.high, other.high, scale);
    }
}

/// Degrees of freedom typed for two sources reach the result: Welch-Satterthwaite in its closed form,
/// ν = (a² + b²)²/(a⁴/4 + b⁴/9) with a = c·u of the belt scale and b = c·u of the moisture meter.
#[test]
fn typed_degrees_of_freedom_are_carried_to_the_figure() {
    use haulm::domain::compare::draft::UncertaintyDraft;
    use haulm::domain::compare::side::ComparedSystem;
    use haulm::domain::compare::uncertainty::source::all;
    let systems = [ComparedSystem::new("A", haulm::domain::example())];
    let mut typed = UncertaintyDraft::default();
    let budget = |typed: &UncertaintyDraft| {
        let sources = all(typed, &systems);
        let uncertain: Vec<_> = sources.iter().filter_map(|source| source.uncertain(typed)).collect();
        let study = Study::new(&[systems[0].case().unwrap().clone()], &uncertain, &one(Output::LiquidWater));
        let keys: Vec<String> = sources.into_iter().map(|source| source.key).collect();
        (study.unwrap().budget(0).unwrap(), keys)
    };
    let (free, keys) = budget(&typed);
    assert_eq!(free.freedom, None);
    let place = |key: &str| keys.iter().position(|other| other == key).unwrap();
    let squared = |key: &str| free.shares.iter().find(|share| share.source == place(key)).unwrap().share;
    let belt = squared("fibre_flow");
    typed.source_mut("fibre_flow").freedom = Some(Entry::typed("4", Unit::One));
    check("one source", budget(&typed).0.freedom.unwrap(), 4.0 / belt.powi(2), 1e-9);
    let other = &keys[free.shares.iter().find(|share| share.source != place("fibre_flow")).unwrap().source];
    typed.source_mut(other).freedom = Some(Entry::typed("9,5", Unit::One));
    let expected = 1.0 / (belt.powi(2) / 4.0 + squared(other).powi(2) / 9.5);
    let (few, _) = budget(&typed);
    check("two sources", few.freedom.unwrap(), expected, 1e-9 * expected);
    check("k", few.factor, factor(0.95, Some(expected)), 1e-12);
    assert!(few.expanded > free.expanded);
    // What is no number of degrees counts as none; the box says what is wrong.
    for text in ["", "0.5", "-1", "many", "1e9"] {
        typed.source_mut("fibre_flow").freedom = Some(Entry::typed(text, Unit::One));
        typed.source_mut(other).freedom = Some(Entry::typed(text, Unit::One));
        assert_eq!(budget(&typed).0.freedom, None, "{text}");
    }
}
