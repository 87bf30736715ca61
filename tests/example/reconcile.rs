//! Reads a line check as the app exports it and prints what data reconciliation makes of it, as JSON.
//!
//! ```text
//! cargo run --example reconcile -- CHECK.json
//! ```
//!
//! Each key names the unit of its number and, where it has one, its basis. `all_readings` has every reading reconciled
//! with its uncertainty, adjustment, redundancy and test; `without_distrusted_readings` is there where readings are
//! distrusted, and the corrections follow from it. A file that cannot be read, solved or reconciled gets a message on
//! standard error and an exit code other than 0.
#![allow(clippy::print_stdout, clippy::print_stderr, reason = "printing is what it does")]

use haulm::domain::balance::outcome::work_out;
use haulm::domain::line::{
    FlowSource, LineBook, LineCheck, LineFinding, LineQuantity, LineReconciliation, LineVerdict, PumpAction,
    PumpCorrection, RangeStatus, SettingUnit, check_line, check_readings, read_running,
};
use haulm::domain::{Draft, Grade};
use haulm::quantity::Units;
use haulm::record::LineCheckFile;
use haulm::record::file::line_check::LARGEST;
use haulm::statistics::reconciliation::{Reconciliation, Status};
use haulm::ui::text::{Context, LineContext, Message, words};
use serde_json::{Map, Value, json};
use std::process::ExitCode;

fn main() -> ExitCode {
    let mut args = std::env::args_os().skip(1);
    let (Some(path), None) = (args.next(), args.next()) else {
        eprintln!("usage: cargo run --example reconcile -- CHECK.json");
        return ExitCode::from(2);
    };
    match run(std::path::Path::new(&path)) {
        Ok(reconciled) => {
            println!("{reconciled:#}");
            ExitCode::SUCCESS
        }
        Err(faults) => {
            for fault in faults {
                eprintln!("{}: {fault}", path.display());
            }
            ExitCode::FAILURE
        }
    }
}

/// Recipe and line, for words.
struct Mill<'a> {
    units: Units,
    draft: &'a Draft,
    book: &'a LineBook,
}

impl Mill<'_> {
    fn with<T>(&self, tell: impl FnOnce(&LineContext<'_>) -> T) -> T {
        let plain = Context { units: &self.units, draft: self.draft, currency: "" };
        tell(&LineContext { plain, book: self.book })
    }

    fn finding(&self, finding: &LineFinding) -> String {
        sentence(&self.with(|context| words::line::finding(finding, context)))
    }
}

fn sentence(message: &Message) -> String {
    format!("{} {}", message.what, message.fix)
}

fn run(path: &std::path::Path) -> Result<Value, Vec<String>> {
    let size = std::fs::metadata(path).map_err(|error| vec![error.to_string()])?.len();
    if size > LARGEST as u64 {
        return Err(vec![format!("{size} bytes; a line check has at most {LARGEST}")]);
    }
    let bytes = std::fs::read(path).map_err(|error| vec![error.to_string()])?;
    let text = String::from_utf8(bytes).map_err(|_| vec!["this is no text in UTF-8".to_owned()])?;
    let file = LineCheckFile::read(&text).map_err(|refusal| vec![format!("refused: {refusal:?}")])?;
    let mill = Mill { units: Units::default(), draft: &file.recipe, book: &file.line };
    let outcome = work_out(&file.recipe);
    let Some(case) = outcome.case else {
        let plain = Context { units: &mill.units, draft: &file.recipe, currency: "" };
        let stops = outcome.findings.iter().filter(|finding| finding.grade == Grade::Stop);
        return Err(stops.map(|finding| sentence(&words::finding(finding, &plain))).collect());
    };
    let line = check_line(&file.line);
    let (readings, said) = read_running(&file.line);
    let stops = |findings: &[LineFinding]| -> Vec<String> {
        findings.iter().filter(|finding| finding.grade == Grade::Stop).map(|finding| mill.finding(finding)).collect()
    };
    let (Some(readings), Some(tolerances)) = (readings, line.tolerances) else {
        let mut faults = stops(&said);
        faults.extend(stops(&line.findings));
        if faults.is_empty() {
            faults.push("belt scale reading and fibre moisture are missing".to_owned());
        }
        return Err(faults);
    };
    let check = check_readings(&file.recipe, &case, &line, &tolerances, &readings)
        .ok_or_else(|| vec!["the recipe has no balance at this fibre".to_owned()])?;
    let found = check.reconciliation.as_ref().ok_or_else(|| vec!["the readings could not be reconciled".to_owned()])?;
    let mut all = Map::new();
    all.insert("haulm".to_owned(), "reconciled line check".into());
    all.insert("app".to_owned(), env!("CARGO_PKG_VERSION").into());
    all.insert("name".to_owned(), file.name.clone().into());
    all.insert("verdict".to_owned(), verdict(found, &mill));
    all.insert("all_readings".to_owned(), state(found, &found.all));
    if !found.doubts().is_empty() {
        all.insert("without_distrusted_readings".to_owned(), state(found, &found.best));
    }
    let corrections = check.corrections.iter().map(|of| correction(of, &mill));
    all.insert("corrections".to_owned(), corrections.collect());
    all.extend(former(&check));
    all.extend(density(&check, &mill));
    let findings = said.iter().chain(&check.findings).map(|finding| Value::from(mill.finding(finding)));
    all.insert("findings".to_owned(), findings.collect());
    Ok(all.into())
}

/// The stable key of a quantity.
fn key(quantity: LineQuantity) -> String {
    use haulm::domain::line::Fed;
    match quantity {
        LineQuantity::BeltScale => "belt_scale".to_owned(),
        LineQuantity::FibreMoisture => "fibre_moisture".to_owned(),
        LineQuantity::Fibre => "fibre".to_owned(),
        LineQuantity::FurnishSolids => "furnish_solids".to_owned(),
        LineQuantity::DryingLoss => "drying_loss".to_owned(),
        LineQuantity::LineSpeed => "line_speed".to_owned(),
        LineQuantity::MatWidth => "mat_width".to_owned(),
        LineQuantity::MatMass => "mat_mass".to_owned(),
        LineQuantity::MatMoisture => "mat_moisture".to_owned(),
        LineQuantity::BoardMass => "raw_board_mass".to_owned(),
        LineQuantity::BoardMoisture => "raw_board_moisture".to_owned(),
        LineQuantity::Thickness => "raw_board_thickness".to_owned(),
        LineQuantity::Density => "raw_board_density".to_owned(),
        LineQuantity::Flow(Fed::Liquid(id)) => format!("liquid.{}.flow", id.0),
        LineQuantity::Flow(Fed::Thinning(id)) => format!("liquid.{}.thinning_water", id.0),
        LineQuantity::Flow(Fed::Water) => "water.flow".to_owned(),
        LineQuantity::Flow(Fed::FaceWater) => "face_water.flow".to_owned(),
        LineQuantity::Meter(pump) => format!("pump.{}.flow", pump.0),
        LineQuantity::Volume(pump) => format!("pump.{}.volume_flow", pump.0),
        LineQuantity::Setting(pump) => format!("pump.{}.flow_by_setting", pump.0),
        LineQuantity::Solids(id) => format!("liquid.{}.solids", id.0),
        LineQuantity::LiquidDensity(id) => format!("liquid.{}.density", id.0),
    }
}

/// Basis and unit of a quantity as they end a key, and the number of that unit in one SI unit.
const fn unit(quantity: LineQuantity) -> (&'static str, f64) {
    match quantity {
        LineQuantity::BeltScale => ("wet_kg_per_h", 3_600.0),
        LineQuantity::Fibre | LineQuantity::FurnishSolids => ("oven_dry_kg_per_h", 3_600.0),
        LineQuantity::FibreMoisture | LineQuantity::MatMoisture | LineQuantity::BoardMoisture => {
            ("dry_basis_fraction", 1.0)
        }
        LineQuantity::DryingLoss => ("dry_basis_points_fraction", 1.0),
        LineQuantity::LineSpeed => ("m_per_min", 60.0),
        LineQuantity::MatWidth => ("trimmed_mm", 1_000.0),
        LineQuantity::MatMass => ("wet_kg_per_m2", 1.0),
        LineQuantity::BoardMass => ("at_its_moisture_kg_per_m2", 1.0),
        LineQuantity::Thickness => ("pressed_mm", 1_000.0),
        LineQuantity::Density => ("at_its_moisture_kg_per_m3", 1.0),
        LineQuantity::Flow(_) | LineQuantity::Meter(_) | LineQuantity::Setting(_) => ("as_delivered_kg_per_h", 3_600.0),
        LineQuantity::Volume(_) => ("as_delivered_l_per_h", 3_600_000.0),
        LineQuantity::Solids(_) => ("of_liquid_fraction", 1.0),
        LineQuantity::LiquidDensity(_) => ("as_delivered_kg_per_m3", 1.0),
    }
}

fn state(found: &LineReconciliation, result: &Reconciliation) -> Value {
    let mut quantities = Map::new();
    for (quantity, reconciled) in found.model.quantities.iter().zip(&result.quantities) {
        let (ending, factor) = unit(*quantity);
        let mut about = Map::new();
        let mut put = |name: &str, value: f64| {
            about.insert(format!("{name}_{ending}"), (value * factor).into());
        };
        if let Some(reading) = &reconciled.reading {
            put("reading", reading.value);
            put("reading_standard_uncertainty", reading.uncertainty);
        }
        if let Some(estimate) = &reconciled.estimate {
            put("reconciled", estimate.value);
            put("reconciled_standard_uncertainty", estimate.uncertainty);
        }
        if let Some(reading) = &reconciled.reading {
            put("adjustment", reading.adjustment);
            about.insert("adjustment_in_standard_uncertainties".to_owned(), reading.adjustment_in_uncertainties.into());
            about.insert("detectability_ratio".to_owned(), reading.detectability.into());
            if let Some(test) = &reading.test {
                let test = json!({
                    "statistic": test.statistic,
                    "critical_sidak_95_percent": test.critical,
                    "passes": test.passes(),
                });
                about.insert("measurement_test".to_owned(), test);
            }
        }
        let status = match reconciled.status {
            Status::Checked => "checked",
            Status::Unchecked => "unchecked",
            Status::Inferred => "inferred",
            Status::NotObservable => "not_observable",
        };
        about.insert("status".to_owned(), status.into());
        quantities.insert(key(*quantity), about.into());
    }
    let global = result.global.map(|test| {
        json!({
            "chi_squared": test.chi_squared,
            "degrees_of_freedom": test.degrees_of_freedom,
            "critical_95_percent": test.critical,
            "p_value": test.p_value,
            "passes": test.passes(),
        })
    });
    json!({ "quantities": quantities, "global_test": global, "iterations": result.iterations })
}

fn verdict(found: &LineReconciliation, mill: &Mill<'_>) -> Value {
    let key_of = match found.verdict {
        LineVerdict::NothingChecked => "nothing_checked",
        LineVerdict::Consistent => "consistent",
        LineVerdict::Distrust(_) => "distrust",
        LineVerdict::Unexplained => "unexplained",
    };
    let message = mill.with(|context| words::line::verdict(found, context));
    let doubts = found.doubts().iter().map(|doubt| {
        let readings = doubt.readings.iter().map(|reading| {
            let (ending, factor) = unit(reading.quantity);
            let mut about = Map::new();
            about.insert("quantity".to_owned(), key(reading.quantity).into());
            about.insert(format!("reading_{ending}"), (reading.read * factor).into());
            about.insert(format!("by_the_others_{ending}"), (reading.estimate * factor).into());
            let error = if reading.quantity.in_points() { "error_points_fraction" } else { "error_relative_fraction" };
            about.insert(error.to_owned(), reading.error().into());
            about.insert("error_in_standard_uncertainties".to_owned(), reading.error_in_uncertainties.into());
            Value::from(about)
        });
        json!({
            "one_of": readings.collect::<Vec<_>>(),
            "extra_reading_that_decides": doubt.extra_reading.map(key),
        })
    });
    json!({
        "verdict": key_of,
        "message": message.what,
        "next": message.fix,
        "distrust": doubts.collect::<Vec<_>>(),
        "unchecked": found.unchecked().map(key).collect::<Vec<_>>(),
    })
}

const fn setting_unit(unit: SettingUnit) -> (&'static str, f64) {
    match unit {
        SettingUnit::Percent => ("percent", 100.0),
        SettingUnit::Hertz => ("hz", 1.0),
        SettingUnit::Rpm => ("rpm", 1.0),
    }
}

const fn status(status: RangeStatus) -> &'static str {
    match status {
        RangeStatus::Within => "within",
        RangeStatus::BelowTested => "below_tested",
        RangeStatus::AboveTested => "above_tested",
        RangeStatus::BelowLimit => "below_allowed",
        RangeStatus::AboveLimit => "above_allowed",
    }
}

fn correction(of: &PumpCorrection, mill: &Mill<'_>) -> Value {
    let (unit, factor) = setting_unit(of.unit);
    let mut about = Map::new();
    about.insert("pump".to_owned(), of.pump.0.into());
    about.insert("name".to_owned(), mill.book.pump(of.pump).map(|pump| pump.name.clone()).into());
    let source = match of.source {
        FlowSource::Read => "read",
        FlowSource::Inferred => "inferred_from_setting",
        FlowSource::Assumed => "assumed",
    };
    about.insert("flow_source".to_owned(), source.into());
    about.insert("flow_now_as_delivered_kg_per_h".to_owned(), (of.now.value * 3_600.0).into());
    about.insert("flow_target_as_delivered_kg_per_h".to_owned(), (of.target.value * 3_600.0).into());
    if let Some(now) = of.setting_now {
        about.insert(format!("setting_now_{unit}"), (now.0 * factor).into());
    }
    let action = match of.action {
        PumpAction::Set { setting, status: range } => {
            about.insert(format!("setting_new_{unit}"), (setting.0 * factor).into());
            about.insert("range".to_owned(), status(range).into());
            "set"
        }
        PumpAction::Keep => "keep",
        PumpAction::Stop => "stop",
        PumpAction::CatchTestFirst { metered, by_line } => {
            about.insert("meter_as_delivered_kg_per_h".to_owned(), (metered.value * 3_600.0).into());
            about.insert("catch_test_line_as_delivered_kg_per_h".to_owned(), (by_line.value * 3_600.0).into());
            "catch_test_first"
        }
        PumpAction::NoCatchTest => "catch_test_first",
        PumpAction::Cannot { status: range } => {
            about.insert("range".to_owned(), status(range).into());
            "cannot"
        }
        PumpAction::EnterSetting => "enter_setting",
        PumpAction::NotRead => "not_read",
        PumpAction::Distrusted => "catch_test_first",
        PumpAction::Unsettled => "settle_doubt_first",
    };
    about.insert("action".to_owned(), action.into());
    about.insert("message".to_owned(), mill.with(|context| words::line::action(of, context)).into());
    about.into()
}

fn former(check: &LineCheck) -> Option<(String, Value)> {
    let former = check.former?;
    let speed = |speed: Option<uom::si::f64::Velocity>| speed.map(|speed| speed.value * 60.0);
    let about = json!({
        "mat_weight_now_oven_dry_kg_per_m2": former.mat_od.value,
        "mat_weight_factor_ratio": former.factor.value,
        "line_speed_now_m_per_min": speed(former.line_speed_now),
        "line_speed_new_m_per_min": speed(former.line_speed),
    });
    Some(("former".to_owned(), about))
}

fn density(check: &LineCheck, mill: &Mill<'_>) -> Option<(String, Value)> {
    let split = check.density_split?;
    let message = mill.with(|context| words::line::split(&split, context));
    let about = json!({
        "deviation_relative_fraction": split.deviation,
        "mass_per_area_oven_dry_ln_ratio": split.mass,
        "thickness_ln_ratio": split.thickness,
        "moisture_ln_ratio": split.moisture,
        "message": sentence(&message),
    });
    Some(("density".to_owned(), about))
}
