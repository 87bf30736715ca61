//! Rounding is zero, what was typed goes out as typed, and "exact" is said only of what is.

use haulm::domain::compare::Output;
use haulm::domain::compare::side::{ComparedSystem, Row, side_by_side, with_liquids};
use haulm::domain::compare::uncertainty::agreement::{self, DisagreementCause, is_at_bound, is_exact};
use haulm::domain::compare::uncertainty::input_uncertainty::{Form, InputUncertainty, Size};
use haulm::domain::compare::uncertainty::monte_carlo::MonteCarloRun;
use haulm::domain::compare::uncertainty::study::{RequestedFigure, Study, UncertainInput};
use haulm::domain::recipe::binder_system::SystemKey;
use haulm::domain::{Entry, Field, Figure, example};
use haulm::quantity::format::DecimalMark;
use haulm::quantity::{Amount, Kind, Unit, Units};
use haulm::record::table::{Cell, to_csv};
use haulm::ui::table::{assumptions, side_by_side as table};
use haulm::ui::text::Context;

const DOSE: Output = Output::Figure(Figure::WaterDose);

/// The example with fibre so wet that no water is dosed, by about one standard uncertainty.
fn at_the_bound() -> ComparedSystem {
    let mut draft = example();
    let dry = ComparedSystem::new("", draft.clone());
    let none = dry.case().unwrap().figure(Figure::FibreMoistureForNoWater).unwrap().base;
    let text = format!("{}", (none + 0.002) * 100.0);
    *draft.entry_mut(Field::FibreMoisture).unwrap() = Entry::typed(text, Unit::PercentDryBasis);
    ComparedSystem::new("wet", draft)
}

fn moisture(targets: Vec<(usize, Field)>) -> UncertainInput {
    let spread = InputUncertainty::new(Form::Standard, Size::Absolute(0.003), None).unwrap();
    UncertainInput { targets, spread }
}

#[test]
fn a_figure_at_a_bound_is_not_exact_and_its_shares_come_from_draws() {
    let system = at_the_bound();
    let cases = [system.case().unwrap().clone()];
    let flow = InputUncertainty::new(Form::HalfWidth, Size::Relative(0.01), None).unwrap();
    let sources = [
        moisture(vec![(0, Field::FibreMoisture)]),
        UncertainInput { targets: vec![(0, Field::FibreFlow)], spread: flow },
    ];
    let study = Study::new(&cases, &sources, &[RequestedFigure::Of { system: 0, output: DOSE }]).unwrap();
    let budget = study.budget(0).unwrap();
    assert_eq!((budget.value, budget.standard), (0.0, 0.0));
    let mut run = MonteCarloRun::new(study.clone(), 3, 20_000);
    run.step(20_000);
    let summary = run.summary(0).unwrap();
    assert!(summary.standard > 1e-4 && is_at_bound(&summary), "{summary:?}");
    assert!(!is_exact(&budget, Some(&summary), budget.value));
    let compared = agreement::compare(&study, &budget, &summary, 1);
    assert!(
        !compared.agree && matches!(compared.why.first(), Some(DisagreementCause::AtBound(share)) if *share > 0.5),
        "{compared:?}"
    );
    // The moisture makes up nearly all of it; the belt scale next to nothing at a dose of zero.
    let shares = MonteCarloRun::shares(&study, 0, 3);
    assert_eq!((shares[0].source, shares[0].sign), (0, -1.0));
    assert!(shares[0].share > 0.95, "{shares:?}");
    let drawn = budget.with_drawn_shares(&shares, summary.standard);
    assert!((drawn.shares.iter().map(|share| share.share).sum::<f64>() - 1.0).abs() < 1e-12);
    assert!(drawn.improve_first().unwrap().halved < summary.standard);
}

/// Where a figure is linear in its inputs, the shares of the draws are those of JCGM 100.
#[test]
fn drawn_shares_are_those_of_first_order_where_a_figure_is_linear() {
    let system = ComparedSystem::new("dry", example());
    let loss = InputUncertainty::new(Form::Standard, Size::Absolute(0.004), None).unwrap();
    let sources = [
        moisture(vec![(0, Field::FibreMoisture)]),
        UncertainInput { targets: vec![(0, Field::MatMoisture)], spread: loss },
    ];
    let asked = [RequestedFigure::Of { system: 0, output: DOSE }];
    let study = Study::new(&[system.case().unwrap().clone()], &sources, &asked).unwrap();
    let budget = study.budget(0).unwrap();
    for drawn in MonteCarloRun::shares(&study, 0, 5) {
        let first = budget.shares.iter().find(|share| share.source == drawn.source).unwrap();
        assert!((first.share - drawn.share).abs() < 0.02, "{first:?} for {drawn:?}");
        assert_eq!(first.part.signum(), drawn.sign);
    }
}

#[test]
fn what_nothing_uncertain_acts_on_is_exact() {
    let system = ComparedSystem::new("dry", example());
    let asked = [RequestedFigure::Of { system: 0, output: Output::Figure(Figure::MatOvenDry) }];
    let sources = [moisture(vec![(0, Field::FibreMoisture)])];
    let study = Study::new(&[system.case().unwrap().clone()], &sources, &asked).unwrap();
    let budget = study.budget(0).unwrap();
    let mut run = MonteCarloRun::new(study, 3, 2_000);
    run.step(2_000);
    assert!(is_exact(&budget, run.summary(0).as_ref(), budget.value));
}

/// The same recipe twice, once in other units: no difference, no uncertainty of it, and no digit of rounding.
#[test]
fn rounding_is_zero_on_screen_and_in_files() {
    let first = ComparedSystem::new("metric", example());
    let mut draft = example();
    *draft.entry_mut(Field::FibreMoisture).unwrap() = Entry::typed("4.306220095693779", Unit::PercentWetBasis);
    let thickness = Unit::Inch.from_base(Unit::Millimetre.to_base(15.0));
    *draft.entry_mut(Field::Thickness).unwrap() = Entry::typed(format!("{thickness}"), Unit::Inch);
    let second = ComparedSystem::new("other units", draft);
    let systems = [first, second];
    let side = side_by_side(&systems, 0, Some(6000)).unwrap();
    for row in &side.rows {
        let unit = Units::default().unit(row.output.kind());
        assert_eq!(row.difference(1, 0, unit), Some(0.0), "{:?}", row.output);
        assert!(matches!(row.relative(1, 0), None | Some(0.0)), "{:?}", row.output);
    }
    let units = Units::default();
    let context = Context { units: &units, draft: &systems[0].draft, currency: "€" };
    let text = to_csv(&table(&systems, &side, &context), DecimalMark::Point);
    assert!(!text.contains("e-"), "{text}");
    let tiny = |cell: &str| cell.parse::<f64>().is_ok_and(|number| number != 0.0 && number.abs() < 1e-9);
    assert!(!text.split([',', '\r', '\n']).any(tiny), "{text}");
    let cases: Vec<_> = systems.iter().map(|system| system.case().unwrap().clone()).collect();
    let sources = [moisture(vec![(0, Field::FibreMoisture), (1, Field::FibreMoisture)])];
    let asked = [RequestedFigure::Difference { system: 1, reference: 0, output: DOSE }];
    let study = Study::new(&cases, &sources, &asked).unwrap();
    let budget = study.budget(0).unwrap();
    assert_eq!((budget.value, budget.standard, budget.expanded), (0.0, 0.0, 0.0));
    let mut run = MonteCarloRun::new(study, 3, 2_000);
    run.step(2_000);
    let summary = run.summary(0).unwrap();
    assert_eq!((summary.mean, summary.standard, summary.low), (0.0, 0.0, 0.0));
}

/// At the fibre moisture that needs no water exactly, the water for the dryer is zero and not 10⁻¹⁴.
#[test]
fn waters_that_cancel_leave_nothing() {
    let mut draft = example();
    let none =
        ComparedSystem::new("", draft.clone()).case().unwrap().figure(Figure::FibreMoistureForNoWater).unwrap().base;
    *draft.entry_mut(Field::FibreMoisture).unwrap() = Entry::typed(format!("{}", none * 100.0), Unit::PercentDryBasis);
    let system = ComparedSystem::new("even", draft);
    for output in [Output::DryerWater, Output::DryerHeat] {
        assert_eq!(output.value(system.case().unwrap()).unwrap().base, 0.0, "{output:?}");
    }
}

#[test]
fn what_was_typed_goes_out_as_typed() {
    let mut draft = example();
    // In base units 0.045 / 1.045 and 0.7 % come to other numbers than were typed.
    *draft.entry_mut(Field::FibreMoisture).unwrap() = Entry::typed("4,3", Unit::PercentDryBasis);
    *draft.entry_mut(Field::Reject).unwrap() = Entry::typed("0.7", Unit::Percent);
    *draft.entry_mut(Field::Thickness).unwrap() = Entry::typed("0.3", Unit::Inch);
    let systems = [
        ComparedSystem::new("A", draft),
        ComparedSystem::new("B", with_liquids(&example(), &SystemKey::Uf.system().liquids)),
    ];
    let units = Units::default();
    let context = Context { units: &units, draft: &systems[0].draft, currency: "€" };
    let sheet = assumptions(&systems, &context);
    let first = |label: &str| {
        let row = sheet.rows.iter().find(|row| matches!(&row[0], Cell::Text(text) if text.starts_with(label))).unwrap();
        let Cell::Number { value, .. } = row[2] else { panic!("{row:?}") };
        value
    };
    assert_eq!(first("Fibre moisture").to_string(), "4.3");
    assert_eq!(first("Sifter reject").to_string(), "0.7");
    assert_eq!(first("Finished thickness").to_string(), "7.62");
}

#[test]
fn no_percentage_of_zero_or_across_it() {
    let row = |one: f64, other: f64| Row {
        output: Output::DryerWater,
        values: [one, other].map(|base| Some(Amount::from_base(Kind::LossFlow, base))).into(),
    };
    for (one, other) in [(0.0, 1.0), (-1.0, 1.0), (2.0, -1.0)] {
        assert_eq!(row(one, other).relative(1, 0), None, "{one} to {other}");
    }
    assert_eq!(row(2.0, 3.0).relative(1, 0), Some(0.5));
    assert_eq!(row(-2.0, -3.0).relative(1, 0), Some(-0.5));
    assert_eq!(row(2.0, 0.0).relative(1, 0), Some(-1.0));
}
