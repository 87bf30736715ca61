//! The eight key figures, the cheapest that can run, and what is swept for the charts.

use haulm::domain::compare::Output;
use haulm::domain::compare::draft::UncertaintyDraft;
use haulm::domain::compare::feasibility::Obstacle;
use haulm::domain::compare::overview::key_figures::{KeyFigure, KeyMark, KeyRow, key_rows, needs_release_agent};
use haulm::domain::compare::overview::verdict::{can_run, verdict};
use haulm::domain::compare::side::{ComparedSystem, equal_inputs, with_liquids};
use haulm::domain::compare::sweep::{Axis, feasible_stretches, ranked_effects, slope, sweep};
use haulm::domain::recipe::binder_system::SystemKey;
use haulm::domain::{Entry, Field, Figure, example};
use haulm::quantity::Unit;
use haulm::quantity::format::{DecimalMark, column_decimals, fixed};

fn system(key: SystemKey, price: &str) -> ComparedSystem {
    let mut draft = with_liquids(&example(), &key.system().liquids);
    for liquid in &mut draft.liquids {
        liquid.price = Entry::typed(price, Unit::PerTonne);
    }
    ComparedSystem::new(key.key(), draft)
}

fn three() -> [ComparedSystem; 3] {
    [system(SystemKey::Pmdi, "3000"), system(SystemKey::Uf, "250"), system(SystemKey::UfPmdi, "600")]
}

fn row(rows: &[KeyRow], figure: KeyFigure) -> &KeyRow {
    rows.iter().find(|row| row.figure == figure).unwrap()
}

#[test]
fn the_cheapest_is_one_that_can_run_and_the_others_are_beside_it() {
    let systems = three();
    // UF brings so much water that the example's fibre is too wet for it.
    assert_eq!(systems.each_ref().map(can_run), [true, false, true]);
    let rows = key_rows(&systems, &[Some(0.1), None, Some(0.1)], 0);
    let costs = row(&rows, KeyFigure::Cost);
    let cost = |at: usize| costs.values[at].unwrap().base;
    assert!(cost(1) < cost(2) && cost(2) < cost(0), "UF would be the cheapest");
    let found = verdict(&systems, costs);
    assert_eq!((found.cheapest, found.can_run, found.unpriced), (Some(2), vec![0, 2], vec![]));
    let uf = found.others.iter().find(|other| other.at == 1).unwrap();
    assert!(!uf.can_run && (uf.cost.unwrap() - (cost(1) - cost(2))).abs() < 1e-12);
    assert_eq!(uf.way_out, systems[1].case().unwrap().figure(Figure::FibreMoistureForNoWater));
    let pmdi = found.others.iter().find(|other| other.at == 0).unwrap();
    assert!(pmdi.can_run && pmdi.way_out.is_none() && pmdi.cost.unwrap() > 0.0);
}

#[test]
fn without_a_price_there_is_no_cost_and_no_verdict_on_it() {
    let mut systems = three();
    let mut draft = systems[2].draft.clone();
    draft.liquids[0].price = Entry::empty(Unit::PerTonne);
    systems[2] = ComparedSystem::new("hybrid", draft);
    let rows = key_rows(&systems, &[None; 3], 0);
    let found = verdict(&systems, row(&rows, KeyFigure::Cost));
    assert_eq!((found.cheapest, found.unpriced), (Some(0), vec![2]));
    let hybrid = found.others.iter().find(|other| other.at == 2).unwrap();
    assert_eq!(hybrid.cost, None);
}

#[test]
fn the_release_agent_is_asked_of_systems_with_an_isocyanate_alone() {
    let systems = three();
    assert_eq!(systems.each_ref().map(|system| needs_release_agent(&system.draft)), [true, false, true]);
    let without = key_rows(&systems, &[None; 3], 0);
    let (plain, with) = (row(&without, KeyFigure::Cost), row(&without, KeyFigure::CostWithAgent));
    assert_eq!((with.values[0], with.values[1], with.values[2]), (None, plain.values[1], None));
    let all = key_rows(&systems, &[Some(0.15), None, None], 0);
    let more = row(&all, KeyFigure::CostWithAgent).values[0].unwrap().base - plain.values[0].unwrap().base;
    // Money per m² over the thickness of 15 mm.
    assert!((more - 0.15 / 0.015).abs() < 1e-9, "{more}");
}

#[test]
fn a_system_that_is_out_of_line_is_marked_in_its_row() {
    let rows = key_rows(&three(), &[None; 3], 0);
    assert_eq!(row(&rows, KeyFigure::WaterExcess).marks, [None, Some(KeyMark::TooWet), None]);
    assert_eq!(row(&rows, KeyFigure::WaterDose).marks, [None; 3]);
    let now = row(&rows, KeyFigure::FibreMoisture).now.unwrap();
    assert!((Unit::PercentDryBasis.from_base(now.base) - 4.5).abs() < 1e-9);
}

#[test]
fn what_all_have_in_common() {
    let systems = three();
    let equal = equal_inputs(&systems);
    assert!(equal.iter().any(|(field, _)| *field == Field::FibreMoisture));
    let mut other = systems.to_vec();
    *other[1].draft.entry_mut(Field::FibreMoisture).unwrap() = Entry::typed("9", Unit::PercentDryBasis);
    assert!(!equal_inputs(&other).iter().any(|(field, _)| *field == Field::FibreMoisture));
}

#[test]
fn the_slope_of_the_water_dose_is_the_fibre_flow_by_moisture() {
    let system = system(SystemKey::Pmdi, "1500");
    let case = system.case().unwrap();
    let axis = Axis { field: Field::FibreMoisture, from: 0.02, to: 0.08, points: 61 };
    let swept = sweep(case, &axis, &[Output::Figure(Figure::WaterDose)]);
    let found = slope(&swept.inputs, &swept.outputs[0], 0.045).unwrap();
    // By hand: every kilogram of dry fibre brings that much more water, F = 8500 kg/h.
    let flow = case.figure(Figure::Fibre).unwrap().base;
    assert!((found + flow).abs() < 1e-6 * flow, "{found} for {flow}");
    assert_eq!(slope(&[], &[], 1.0), None);
    assert_eq!(slope(&[0.0, 1.0], &[None, Some(1.0)], 0.5), None);
}

#[test]
fn stretches_end_where_a_limit_begins() {
    let system = system(SystemKey::Uf, "450");
    let case = system.case().unwrap();
    let axis = Axis { field: Field::FibreMoisture, from: 0.01, to: 0.1, points: 41 };
    let dry = case.figure(Figure::FibreMoistureForNoWater).unwrap().base;
    let swept = sweep(case, &axis, &[]);
    assert!(swept.limits.iter().any(|span| span.obstacle == Obstacle::TooWet));
    let found = feasible_stretches(case, &axis);
    let [(from, to)] = found[..] else { panic!("{found:?}") };
    assert!((from - 0.01).abs() < 1e-12 && (to - dry).abs() < 2e-4, "{found:?} for {dry}");
}

#[test]
fn inputs_are_ranked_by_what_one_percent_of_them_changes() {
    let system = system(SystemKey::Pmdi, "1500");
    let found = ranked_effects(system.case().unwrap(), Output::Figure(Figure::MatWet));
    let sizes: Vec<f64> = found.iter().map(|(_, effect)| effect.abs()).collect();
    assert!(sizes.windows(2).all(|pair| pair[0] >= pair[1]), "{sizes:?}");
    // The mat weighs 1 % more for 1 % more density.
    let wet = system.case().unwrap().figure(Figure::MatWet).unwrap().base;
    let density = found.iter().find(|(field, _)| *field == Field::BoardDensity).unwrap().1;
    assert!((density / wet - 0.01).abs() < 1e-6, "{density} of {wet}");
    assert!(!found.iter().any(|(field, _)| *field == Field::FibrePrice), "no effect at all");
}

#[test]
fn figures_are_chosen_one_by_one_and_never_none() {
    let mut typed = UncertaintyDraft::default();
    assert!(typed.is_chosen("water_dose") && typed.is_chosen("cost") && !typed.is_chosen("mat_wet"));
    typed.choose("mat_wet", true);
    assert_eq!(typed.figures, ["water_dose", "cost", "mat_wet"]);
    for key in ["water_dose", "cost", "mat_wet"] {
        typed.choose(key, false);
    }
    assert_eq!(typed.figures, ["mat_wet"]);
}

#[test]
fn a_column_shares_its_decimals() {
    let mark = DecimalMark::Point;
    let decimals = column_decimals(4, [0.0, 639.7, 228.71].into_iter());
    assert_eq!(decimals, 1);
    assert_eq!([0.0, 639.7, 228.71].map(|value| fixed(value, decimals, mark)), ["0", "639.7", "228.7"]);
    // Rounding may carry, and hide what is too small.
    assert_eq!(
        (fixed(99.96, 1, mark), fixed(0.04, 1, mark), fixed(-0.26, 1, mark)),
        ("100.0".into(), "0".into(), "−0.3".into())
    );
    assert_eq!(fixed(f64::NAN, 1, mark), "–");
    assert_eq!(column_decimals(2, [72.0, 63.4].into_iter()), 0);
    assert_eq!(column_decimals(2, [1.4, 0.5].into_iter()), 1);
}
