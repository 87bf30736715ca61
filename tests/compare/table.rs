//! What is taken away is what was worked out.

use calamine::{Data, Reader, Xlsx};
use haulm::domain::balance::machine::Machine;
use haulm::domain::compare::Output;
use haulm::domain::compare::feasibility::Obstacle;
use haulm::domain::compare::side::{ComparedSystem, side_by_side, with_liquids};
use haulm::domain::compare::sweep::{Axis, EDGE, sweep};
use haulm::domain::compare::uncertainty::instrument::sources;
use haulm::domain::compare::uncertainty::monte_carlo::MonteCarloRun;
use haulm::domain::compare::uncertainty::study::{RequestedFigure, Study};
use haulm::domain::recipe::binder_system::SystemKey;
use haulm::domain::{Entry, Field, Figure, example};
use haulm::quantity::format::DecimalMark;
use haulm::quantity::kind::UnitSystem;
use haulm::quantity::{Unit, Units};
use haulm::record::table::{Cell, to_csv, to_xlsx};
use haulm::ui::table::{
    FigureUncertainty, SweepHead, assumptions, sensitivity, shares, side_by_side as table, stacked, uncertainty,
};
use haulm::ui::text::{Context, words};
use std::io::Cursor;

fn systems() -> Vec<ComparedSystem> {
    [SystemKey::Pmdi, SystemKey::Uf]
        .map(|key| ComparedSystem::new(key.key(), with_liquids(&example(), &key.system().liquids)))
        .into()
}

#[test]
fn the_spreadsheet_holds_every_value_in_its_unit() {
    let systems = systems();
    for units in [UnitSystem::Metric, UnitSystem::Us] {
        let mut chosen = Units::default();
        chosen.set_system(units);
        let context = Context { units: &chosen, draft: &systems[0].draft, currency: "€" };
        let side = side_by_side(&systems, 1, Some(6000)).unwrap();
        let bytes = to_xlsx(&[table(&systems, &side, &context), assumptions(&systems, &context)]);
        let mut book: Xlsx<_> = Xlsx::new(Cursor::new(bytes)).unwrap();
        let sheet = book.worksheet_range("Side by side").unwrap();
        let formulas = book.worksheet_formula("Side by side").unwrap();
        assert_eq!(sheet.height(), side.rows.len() + 1);
        for (at, row) in side.rows.iter().enumerate() {
            let line = at as u32 + 1;
            let unit = chosen.unit(row.output.kind());
            let number = |column| match sheet.get_value((line, column)) {
                Some(Data::Float(value)) => Some(*value),
                _ => None,
            };
            for system in 0..2 {
                assert_eq!(
                    number(system as u32 + 2),
                    row.values[system].map(|amount| amount.get(unit)),
                    "{:?}",
                    row.output
                );
            }
            // The formula is the difference that stands beside it.
            let more = number(4);
            assert_eq!(more, row.difference(0, 1, unit));
            if more.is_some() {
                assert_eq!(formulas.get_value((line, 4)), Some(&format!("C{0}-D{0}", line + 1)));
            }
        }
        let assumed = book.worksheet_range("Assumptions").unwrap();
        assert!(assumed.height() > 40, "{}", assumed.height());
    }
}

/// Limits go out beside the values that they hold for, and where they begin, narrowed down; read back by a library.
#[test]
fn a_sweep_goes_out_with_its_limits() {
    let mut draft = example();
    for (field, text, unit) in
        [(Field::FibreSupply, "11.5", Unit::TonnePerHour), (Field::FibreFlow, "8", Unit::TonnePerHour)]
    {
        *draft.entry_mut(field).unwrap() = Entry::typed(text, unit);
    }
    let system = ComparedSystem::new("=pMDI", draft);
    let case = system.case().unwrap();
    let base = |tonnes: f64| Unit::TonnePerHour.to_base(tonnes);
    let axis = Axis { field: Field::FibreFlow, from: base(6.0), to: base(16.0), points: 11 };
    let output = Output::Figure(Figure::FinishedVolume);
    let swept = sweep(case, &axis, &[output]);
    let units = Units::default();
    let context = Context { units: &units, draft: &system.draft, currency: "€" };
    let head = SweepHead { input: ("Fibre flow", Field::FibreFlow.kind()), output: ("Volume", output.kind()) };
    let level = Some(3.0);
    let systems = [(system.name.as_str(), Ok(&swept)), ("level", Err(level))];
    let made = sensitivity(head, &swept.inputs, &systems, &context);
    let mut book: Xlsx<_> = Xlsx::new(Cursor::new(to_xlsx(std::slice::from_ref(&made)))).unwrap();
    let sheet = book.worksheet_range("Sensitivity").unwrap();
    let text = |row: u32, column: u32| sheet.get_value((row, column)).map(ToString::to_string).unwrap_or_default();
    let limit = words::compare::obstacle(Obstacle::OverLimit(Machine::FibreSupply));
    for row in 1..=11_u32 {
        let tonnes = f64::from(row) + 5.0;
        assert_eq!(text(row, 2).contains(limit), tonnes > 11.5, "{tonnes} t/h: {}", text(row, 2));
        let Some(Data::Float(value)) = sheet.get_value((row, 1)) else { panic!("row {row} has a value") };
        let unit = units.unit(output.kind());
        assert_eq!(*value, unit.from_base(swept.outputs[0][row as usize - 1].unwrap()));
        assert_eq!(text(row, 4), "");
    }
    let edge = (12..20).find(|row| text(*row, 0).ends_with(limit)).unwrap();
    let Some(Data::Float(from)) = sheet.get_value((edge, 1)) else { panic!("where it begins") };
    let unit = units.unit(Field::FibreFlow.kind());
    assert!((unit.to_base(*from) - base(11.5)).abs() <= EDGE * (axis.to - axis.from), "{from}");
    // No name runs as a formula.
    assert!(book.worksheet_formula("Sensitivity").unwrap().is_empty());
    assert!(to_csv(&made, DecimalMark::Point).contains("\"'=pMDI: "));
}

#[test]
fn the_uncertainty_sheet() {
    let systems = systems();
    let cases: Vec<_> = systems.iter().map(|system| system.case().unwrap().clone()).collect();
    let pairs: Vec<_> = systems.iter().zip(&cases).map(|(system, case)| (&system.draft, case)).collect();
    let uncertain = sources(&pairs);
    let output = Output::Figure(Figure::BlenderMoisture);
    let asked = [
        RequestedFigure::Of { system: 1, output },
        RequestedFigure::Difference { system: 1, reference: 0, output: Output::DryerWater },
    ];
    let study = Study::new(&cases, &uncertain, &asked).unwrap();
    let mut run = MonteCarloRun::new(study, 11, 20_000);
    run.step(20_000);
    let budgets: Vec<_> = (0..2).map(|at| run.study().budget(at).unwrap()).collect();
    let summaries: Vec<_> = (0..2).map(|at| run.summary(at).unwrap()).collect();
    let units = Units::default();
    let context = Context { units: &units, draft: &systems[0].draft, currency: "€" };
    let around = Output::DryerWater.value(&cases[0]).map(|amount| amount.base);
    let figures = [
        FigureUncertainty { budget: &budgets[0], summary: Some(&summaries[0]), around: None },
        FigureUncertainty { budget: &budgets[1], summary: None, around },
    ];
    let study = run.study().clone();
    let sheet = uncertainty(&figures, &study, &systems, 11, &context);
    let text = to_csv(&sheet, DecimalMark::Point);
    let lines: Vec<_> = text.lines().collect();
    assert!(lines[1].starts_with("\"Furnish moisture after the blender: uf\",\"% dry basis\","), "{}", lines[1]);
    assert!(lines[1].ends_with(",\"differ: not in proportion to its inputs\",20000,\"11\""), "{}", lines[1]);
    assert!(lines[1].contains(",\"∞\",1.95996"), "{}", lines[1]);
    assert!(lines[2].starts_with("\"Extra water for the dryer: uf − pmdi\",\"kg/h\","), "{}", lines[2]);
    assert_eq!(lines.len(), 3);
    let value = format!("{}", budgets[0].value * 100.0);
    assert!(lines[1].contains(&value), "{value} in {}", lines[1]);
    // The standard deviation of the draws is before both ends of their interval.
    let standard: f64 = lines[1].rsplit(',').nth(5).unwrap().parse().unwrap();
    assert!((standard - summaries[0].standard * 100.0).abs() < 1e-12, "{standard} in {}", lines[1]);

    let of = shares(&figures, &uncertain, &systems);
    assert_eq!(of.rows.len(), 3);
    for row in &of.rows[1..] {
        assert_eq!(row.len(), 1 + uncertain.len());
        let number = |cell: &Cell| match cell {
            Cell::Number { value, .. } => *value,
            _ => panic!("{cell:?}"),
        };
        assert!((row[1..].iter().map(number).sum::<f64>() - 100.0).abs() < 1e-9);
    }
    let both = stacked(vec![sheet.clone(), of]);
    assert_eq!(both.rows[..3], sheet.rows);
    assert_eq!(both.rows[3..5], [vec![], vec![Cell::heading("Shares of the variance")]]);
    assert_eq!(both.rows.len(), 3 + 2 + 3);
}
