//! The study that is timed: a recipe of four liquids, 14 uncertain inputs, 7 figures.
#![allow(dead_code, clippy::unwrap_used, missing_docs)]

use haulm::domain::balance::outcome::Case;
use haulm::domain::compare::uncertainty::input_uncertainty::{Form, InputUncertainty, Size};
use haulm::domain::compare::uncertainty::monte_carlo::{MonteCarloRun, USUAL_DRAWS};
use haulm::domain::compare::uncertainty::study::{RequestedFigure, Study, UncertainInput};
use haulm::domain::compare::{Output, variable};
use haulm::domain::recipe::binder_system::SystemKey;
use haulm::domain::{Field, Figure, LiquidField, LiquidId, example, work_out};

/// The example mill with a UF resin, hardener, urea and wax.
pub fn case() -> Case {
    let mut draft = example();
    draft.liquids = SystemKey::Uf.system().liquids;
    for liquid in &mut draft.liquids {
        liquid.price = haulm::domain::Entry::typed("600", haulm::quantity::Unit::PerTonne);
    }
    let entry = draft.entry_mut(Field::FibreMoisture).unwrap();
    *entry = haulm::domain::Entry::typed("2", haulm::quantity::Unit::PercentDryBasis);
    work_out(&draft).case.unwrap()
}

/// A field, what its ± means, and its size as a share.
pub const INPUTS: [(Field, Form, f64); 14] = [
    (Field::FibreFlow, Form::Standard, 0.005),
    (Field::FibreMoisture, Form::Standard, 0.1),
    (Field::Liquid(LiquidId(1), LiquidField::Dose), Form::HalfWidth, 0.01),
    (Field::Liquid(LiquidId(1), LiquidField::Solids), Form::HalfWidth, 0.015),
    (Field::Liquid(LiquidId(1), LiquidField::Density), Form::Standard, 0.002),
    (Field::Liquid(LiquidId(2), LiquidField::Dose), Form::HalfWidth, 0.02),
    (Field::Liquid(LiquidId(3), LiquidField::Dose), Form::HalfWidth, 0.02),
    (Field::Liquid(LiquidId(4), LiquidField::Dose), Form::HalfWidth, 0.02),
    (Field::Liquid(LiquidId(4), LiquidField::Solids), Form::HalfWidth, 0.02),
    (Field::BoardDensity, Form::Standard, 0.01),
    (Field::BoardMoisture, Form::Standard, 0.05),
    (Field::Thickness, Form::Standard, 0.005),
    (Field::Reject, Form::Standard, 0.1),
    (Field::DryingLoss, Form::Standard, 0.1),
];

pub const OUTPUTS: [Output; 7] = [
    Output::Figure(Figure::WaterDose),
    Output::Figure(Figure::BlenderMoisture),
    Output::Figure(Figure::MatWet),
    Output::Figure(Figure::LineSpeed),
    Output::Figure(Figure::PressHeat),
    Output::Figure(Figure::FinishedVolume),
    Output::Figure(Figure::Cost),
];

/// The same inputs and figures for each of several systems, which share their instruments for the fibre
/// and the board.
pub fn large(systems: usize) -> Study {
    let cases: Vec<Case> = (0..systems).map(|_| case()).collect();
    let mut uncertain = Vec::new();
    for (field, form, share) in INPUTS {
        let spread = InputUncertainty::new(form, Size::Relative(share), None).unwrap();
        let all = (0..systems).map(|system| (system, field));
        match field {
            Field::Liquid(..) => uncertain.extend(all.map(|target| UncertainInput { targets: vec![target], spread })),
            _ => uncertain.push(UncertainInput { targets: all.collect(), spread }),
        }
    }
    let asked: Vec<RequestedFigure> =
        (0..systems).flat_map(|system| OUTPUTS.map(|output| RequestedFigure::Of { system, output })).collect();
    Study::new(&cases, &uncertain, &asked).unwrap()
}

/// What the page asks for at first: three systems of the library at the example mill, the sources that they start
/// with, and every figure of each with every difference against the first.
pub fn page() -> Study {
    let drafts = [SystemKey::Pmdi, SystemKey::Uf, SystemKey::UfPmdi]
        .map(|key| haulm::domain::compare::side::with_liquids(&example(), &key.system().liquids));
    let cases: Vec<Case> = drafts.iter().map(|draft| work_out(draft).case.unwrap()).collect();
    let pairs: Vec<_> = drafts.iter().zip(&cases).collect();
    let uncertain = haulm::domain::compare::uncertainty::instrument::sources(&pairs);
    Study::new(&cases, &uncertain, &RequestedFigure::all(&cases, 0, &Output::side_by_side(1))).unwrap()
}

/// Everything that another program needs to make the same draws, what came of them here, and how long they
/// took: one line of JSON for `tests/tool/numpy_compare.py`.
pub fn json(milliseconds: f64) -> String {
    let case = case();
    let recipe: serde_json::Map<_, _> =
        variable::used(&case.input).map(|field| (field.key(), variable::get(&case.input, field).into())).collect();
    let inputs: Vec<_> = INPUTS
        .iter()
        .map(|(field, form, share)| {
            let at = variable::get(&case.input, *field).unwrap();
            let rectangular = *form == Form::HalfWidth;
            serde_json::json!({ "field": field.key(), "width": share * at, "rectangular": rectangular })
        })
        .collect();
    let mut run = MonteCarloRun::new(large(1), 1, USUAL_DRAWS);
    run.step(USUAL_DRAWS);
    let figures: Vec<_> = (0..OUTPUTS.len())
        .map(|asked| {
            let found = run.summary(asked).unwrap();
            let budget = run.study().budget(asked).unwrap();
            serde_json::json!({
                "figure": OUTPUTS[asked].key(), "value": budget.value, "first_order": budget.standard,
                "mean": found.mean, "standard": found.standard, "low": found.low, "high": found.high,
            })
        })
        .collect();
    let heat = case.figure(Figure::HeatPerWater).unwrap().base;
    serde_json::json!({
        "draws": USUAL_DRAWS, "ms": milliseconds, "recipe": recipe, "heat_per_water": heat,
        "inputs": inputs, "figures": figures,
    })
    .to_string()
}
