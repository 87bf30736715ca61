//! Every working of the line, evaluated by a general-purpose expression library, gives the figure.

use super::mill::Mill;
use approx::relative_eq;
use evalexpr::{ContextWithMutableFunctions, Function, HashMapContext, Value, eval_number_with_context};
use haulm::domain::line::changeover::Recipe;
use haulm::domain::line::working::{
    LineWorking, between_working, caught_working, chart_working, correction_working, density_working, dose_working,
    drift_working, former_working, line_working, pump_working, residual_working, run_working, tank_working,
};
use haulm::domain::line::{
    LineField, LineFigure, TankField, TankId, TankWay, changeover, check_readings, read_running,
};
use haulm::domain::working::Ground;
use haulm::domain::{example, work_out};
use haulm::quantity::{Amount, Coherent, Dimension, Unit};
use haulm::statistics::control_chart::control_chart;
use haulm::ui::math::{Style, letters, numbers};
use uom::si::f64::{MassDensity, ThermodynamicTemperature};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::thermodynamic_temperature::degree_celsius;

fn context() -> HashMapContext {
    let mut context = HashMapContext::new();
    let max = Function::new(|argument| {
        let pair = argument.as_tuple()?;
        let numbers: Result<Vec<f64>, _> = pair.iter().map(Value::as_number).collect();
        Ok(Value::Float(numbers?.into_iter().fold(f64::NEG_INFINITY, f64::max)))
    });
    context.set_function("max".into(), max).unwrap();
    let sqrt = Function::new(|argument| {
        let number: f64 = argument.as_number()?;
        Ok(Value::Float(number.sqrt()))
    });
    context.set_function("sqrt".into(), sqrt).unwrap();
    context
}

fn put_in(amount: Amount, set: Coherent) -> f64 {
    let value = amount.get(set.unit(amount.kind.dimension()));
    match amount.kind.dimension() {
        Dimension::Fraction | Dimension::Moisture => value / 100.0,
        _ => value,
    }
}

#[track_caller]
fn check(working: Option<LineWorking>, figure: LineFigure) {
    let working = working.unwrap_or_else(|| panic!("{figure:?} has no working"));
    assert_eq!(working.figure, figure);
    assert!(!working.givens.is_empty() && working.ground != Ground::Entered);
    for set in [Coherent::Metric, Coherent::Us] {
        let text = working.formula.to_text(&|at| format!("({:?})", put_in(working.givens[at].amount, set)));
        let text = text.replace("1 + ", "1.0 + ").replace(" - 1", " - 1.0").replace("max(0, ", "max(0.0, ");
        let evaluated: f64 = eval_number_with_context(&text, &context()).unwrap_or_else(|e| panic!("{text}: {e}"));
        let shown = put_in(working.result, set);
        let scale = working.givens.iter().map(|given| put_in(given.amount, set).abs()).fold(shown.abs(), f64::max);
        assert!(
            relative_eq!(evaluated, shown, max_relative = 1e-9, epsilon = 1e-12 * scale),
            "{figure:?}: {text} is {evaluated}, the figure {shown}"
        );
    }
    let style = Style { set: Coherent::Metric, mark: haulm::quantity::format::DecimalMark::Point, currency: "€" };
    for text in [letters(&working), numbers(&working, style)] {
        roxmltree::Document::parse(&text).unwrap_or_else(|e| panic!("{figure:?}: {e}: {text}"));
        assert!(!text.contains("NaN") && !text.contains("inf"));
    }
}

#[test]
fn catch_tests_and_their_lines() {
    let mill = Mill::new();
    for pump in &mill.line().pumps {
        let test = pump.last().unwrap();
        for row in &test.rows {
            for figure in [LineFigure::CaughtNet, LineFigure::CaughtFlow] {
                check(caught_working(figure, row, pump.id, test.id), figure);
            }
            let residual = residual_working(row, &test.curve, pump.unit, (pump.id, test.id));
            check(Some(residual), LineFigure::CaughtResidual);
            for figure in [LineFigure::Intercept, LineFigure::Prediction] {
                check(line_working(figure, &test.curve, pump.unit, row.setting), figure);
            }
        }
    }
}

#[test]
fn the_setting_sheet() {
    use LineFigure as Fig;
    let mut mill = Mill::new();
    // Binder thinned at the nozzles, so that both waters are in it.
    mill.draft.liquids[1].spray_solids = haulm::domain::Entry::typed("30", Unit::Percent);
    mill.case = work_out(&mill.draft).case.unwrap();
    let sheet = mill.sheet();
    for row in &sheet.rows {
        let figures = [
            Fig::Wanted,
            Fig::WantedVolume,
            Fig::Setting(row.unit),
            Fig::NozzleFlow,
            Fig::PerFibre,
            Fig::VolumePerFibre,
            Fig::LeastFibre,
            Fig::MostFibre,
        ];
        for figure in figures {
            check(pump_working(figure, row, &mill.case), figure);
        }
    }
    check(pump_working(Fig::Spray, &sheet.rows[1], &mill.case), Fig::Spray);
    check(drift_working(&sheet.rows[0].drift.unwrap()), Fig::Drift);
}

#[test]
fn what_runs() {
    use LineFigure as Fig;
    let mill = Mill::new();
    let line = mill.line();
    let readings = read_running(&mill.book).0.unwrap();
    let check_of = check_readings(&mill.draft, &mill.case, &line, &line.tolerances.unwrap(), &readings).unwrap();
    let running = check_of.actual.clone();
    let figures = [Fig::RunFibre, Fig::RunFurnishMoisture, Fig::RunMatMoisture, Fig::RunMat, Fig::RunDensity];
    for figure in figures {
        check(run_working(figure, &running, &readings, &mill.case), figure);
    }
    for liquid in &running.liquids {
        for figure in [Fig::RunSolids, Fig::RunDose, Fig::DoseDeviation] {
            check(dose_working(figure, liquid, &running, &mill.case), figure);
        }
    }
    for correction in &check_of.corrections {
        check(correction_working(correction), Fig::CorrectionFactor);
    }
    check(former_working(&check_of.former.unwrap(), &mill.case), Fig::FormerFactor);
}

#[test]
fn tanks() {
    use LineFigure as Fig;
    for (way, text, unit) in [
        (TankWay::Level, "42", Unit::Percent),
        (TankWay::Volume, "8400", Unit::Litre),
        (TankWay::Mass, "10332", Unit::Kilogram),
    ] {
        let mut mill = Mill::new();
        mill.book.tank_mut(TankId(1)).unwrap().set_way(way);
        mill.put(LineField::Tank(TankId(1), TankField::Content), text, unit);
        let line = mill.line();
        let tank = line.tank(TankId(1)).unwrap();
        let state = tank.state(&mill.draft, &mill.case).unwrap();
        for figure in [Fig::Content, Fig::Usable, Fig::UsableMass, Fig::Lasts, Fig::PerShift, Fig::Fits] {
            check(tank_working(figure, tank, &state, &mill.case), figure);
        }
    }
}

#[test]
fn changes() {
    let mill = Mill::new();
    let mut draft = example();
    draft.plain.mat_moisture.text = "9".to_owned();
    let case = work_out(&draft).case.unwrap();
    let old = Recipe { draft: &mill.draft, case: &mill.case };
    let plan = changeover(old, Recipe { draft: &draft, case: &case }, &mill.line(), 0);
    for figure in [LineFigure::BetweenArea, LineFigure::BetweenVolume] {
        check(between_working(figure, &plan.between.unwrap(), &case), figure);
    }
    let chart = control_chart(&[0.01, -0.02, 0.005, 0.03]).unwrap();
    for figure in [LineFigure::LowLimit, LineFigure::HighLimit] {
        check(chart_working(figure, &chart), figure);
    }
    let celsius = ThermodynamicTemperature::new::<degree_celsius>;
    let density = MassDensity::new::<kilogram_per_cubic_meter>(950.0);
    check(Some(density_working(density, 7e-4, celsius(20.0), celsius(35.0))), LineFigure::DensityPumped);
}
