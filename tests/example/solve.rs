//! Reads a recipe file as the app exports it and prints the solved balance as JSON.
//!
//! ```text
//! cargo run --example solve -- RECIPE.json
//! ```
//!
//! Each key names the unit of its number and, where it has one, its basis. What the recipe does not
//! give, such as a line speed without a mat width, is left out. A file that cannot be read or solved
//! gets a message on standard error, one line a fault, each with its place or its field, and an exit
//! code other than 0.
#![allow(clippy::print_stdout, clippy::print_stderr, reason = "printing is what it does")]

use haulm::domain::balance::outcome::{Case, work_out};
use haulm::domain::recipe::finding::{Finding, Grade, Place, What};
use haulm::domain::{Draft, Figure, LiquidFigure};
use haulm::quantity::number::ReadError;
use haulm::quantity::{Amount, Dimension, Kind, Unit};
use haulm::record::Refusal;
use haulm::record::file::recipe::{LARGEST, RecipeFile};
use serde_json::{Map, Value, json};
use std::process::ExitCode;

fn main() -> ExitCode {
    let mut args = std::env::args_os().skip(1);
    let (Some(path), None) = (args.next(), args.next()) else {
        eprintln!("usage: cargo run --example solve -- RECIPE.json");
        return ExitCode::from(2);
    };
    match run(std::path::Path::new(&path)) {
        Ok(solved) => {
            println!("{solved:#}");
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

fn run(path: &std::path::Path) -> Result<Value, Vec<String>> {
    let size = std::fs::metadata(path).map_err(|error| vec![error.to_string()])?.len();
    if size > LARGEST as u64 {
        return Err(vec![format!("{size} bytes; a recipe has at most {LARGEST}")]);
    }
    let bytes = std::fs::read(path).map_err(|error| vec![error.to_string()])?;
    let text = String::from_utf8(bytes).map_err(|_| vec!["this is no text in UTF-8".to_owned()])?;
    let file = RecipeFile::read(&text).map_err(|refusal| vec![refused(&refusal)])?;
    let outcome = work_out(&file.draft);
    let Some(case) = outcome.case else {
        let stops = outcome.findings.iter().filter(|finding| finding.grade == Grade::Stop);
        return Err(stops.map(|finding| format!("{}: {}", place(finding), said(&file.draft, finding))).collect());
    };
    let findings = outcome.findings.iter().map(|finding| {
        let grade = if finding.grade == Grade::Note { "note" } else { "unusual" };
        json!({ "grade": grade, "place": place(finding), "what": said(&file.draft, finding) })
    });
    let mut solved = Map::new();
    solved.insert("haulm".to_owned(), "solved recipe".into());
    solved.insert("app".to_owned(), env!("CARGO_PKG_VERSION").into());
    solved.insert("name".to_owned(), file.name.clone().into());
    solved.extend(balance(&case, &file.draft));
    solved.insert("findings".to_owned(), findings.collect());
    Ok(solved.into())
}

/// The balance: plain figures, then the liquids and the machines.
fn balance(case: &Case, draft: &Draft) -> Map<String, Value> {
    let mut balance = Map::new();
    let mut machines: Map<String, Value> = Map::new();
    for (figure, amount) in case.figures() {
        let entry = |name: &str| (format!("{name}{}_{}", basis(figure), unit_key(amount)), number(amount));
        match figure {
            Figure::Liquid(..) => {}
            Figure::Used(machine) | Figure::FibreAtLimit(machine) => {
                let name = if matches!(figure, Figure::Used(_)) { "used" } else { "fibre_at_limit" };
                let of_machine = machines.entry(machine.key()).or_insert_with(|| json!({}));
                of_machine.as_object_mut().into_iter().for_each(|map| map.extend([entry(name)]));
            }
            plain => balance.extend([entry(&plain.key())]),
        }
    }
    let liquids = draft.liquids.iter().map(|liquid| {
        let figures = LiquidFigure::ALL.iter().filter_map(|part| {
            let figure = Figure::Liquid(liquid.id, *part);
            let amount = case.figure(figure)?;
            Some((format!("{}{}_{}", part.key(), basis(figure), unit_key(amount)), number(amount)))
        });
        let mut about = Map::new();
        about.insert("id".to_owned(), liquid.id.0.into());
        about.insert("name".to_owned(), liquid.name.clone().into());
        about.insert("role".to_owned(), json!(liquid.role));
        about.insert("substance".to_owned(), json!(liquid.substance));
        about.extend(figures);
        Value::from(about)
    });
    balance.insert("liquids".to_owned(), liquids.collect());
    balance.insert("machines".to_owned(), machines.into());
    balance
}

/// What a mass or a fraction is of, where its key does not say so itself.
fn basis(figure: Figure) -> &'static str {
    match figure {
        Figure::Fibre
        | Figure::Solids
        | Figure::FurnishPerFibre
        | Figure::MatFibre
        | Figure::Reject
        | Figure::NetSolids
        | Figure::Trim
        | Figure::SanderDust
        | Figure::Offcuts
        | Figure::FibrePerVolume
        | Figure::FibrePerArea
        | Figure::FibrePerShift
        | Figure::FibreAtLimit(_) => "_oven_dry",
        Figure::FibrePerBoardMass => "_oven_dry_per_board_at_board_moisture",
        Figure::FibreMoistureForNoWater | Figure::BlenderMoisture | Figure::MatMoisture => "_dry_basis",
        Figure::RawBoard | Figure::FinishedMass => "_at_board_moisture",
        Figure::MatRunning => "_wet",
        Figure::WaterDoseVolume | Figure::SurfaceSprayVolume => "_at_20_celsius",
        Figure::WaterDoseOnFibre => "_oven_dry",
        Figure::Liquid(_, part) => match part {
            LiquidFigure::Liquid
            | LiquidFigure::Volume
            | LiquidFigure::PerVolume
            | LiquidFigure::PerArea
            | LiquidFigure::PerShift
            | LiquidFigure::VolumePerShift => "_as_delivered",
            LiquidFigure::Share => "_of_furnish_solids",
            LiquidFigure::SolidsOnFibre | LiquidFigure::ThinningOnFibre => "_oven_dry",
            LiquidFigure::LiquidOnFibre => "_as_delivered_on_oven_dry",
            LiquidFigure::InMat => "_oven_dry",
            LiquidFigure::PerBoardMass => "_as_delivered_per_board_at_board_moisture",
            LiquidFigure::Solids
            | LiquidFigure::Water
            | LiquidFigure::Thinning
            | LiquidFigure::Spray
            | LiquidFigure::Cost => "",
        },
        Figure::FibreWet
        | Figure::FibreWater
        | Figure::WaterNeeded
        | Figure::WaterOnHand
        | Figure::WaterDose
        | Figure::WaterExcess
        | Figure::FurnishWet
        | Figure::MatWet
        | Figure::MatOvenDry
        | Figure::MatWater
        | Figure::MatHeight
        | Figure::Compaction
        | Figure::TransportVapour
        | Figure::LineSpeed
        | Figure::PressedThickness
        | Figure::PressTime
        | Figure::PressFactor
        | Figure::SurfaceSpray
        | Figure::PressVapour
        | Figure::HeatPerWater
        | Figure::PressHeat
        | Figure::FinishedArea
        | Figure::FinishedVolume
        | Figure::WaterPerVolume
        | Figure::FibreCost
        | Figure::Cost
        | Figure::Used(_) => "",
    }
}

/// The unit that a kind is printed in, and how a key spells it: fractions rather than percent.
const fn unit(kind: Kind) -> (Unit, &'static str) {
    match kind.dimension() {
        Dimension::Mass => (Unit::Kilogram, "kg"),
        Dimension::MassFlow => (Unit::KilogramPerHour, "kg_per_h"),
        Dimension::Volume => (Unit::Litre, "l"),
        Dimension::VolumeFlow => match kind {
            Kind::BoardFlow => (Unit::CubicMetrePerHour, "m3_per_h"),
            _ => (Unit::LitrePerHour, "l_per_h"),
        },
        Dimension::Density => (Unit::KilogramPerCubicMetre, "kg_per_m3"),
        Dimension::ArealMass => (Unit::KilogramPerSquareMetre, "kg_per_m2"),
        Dimension::LinearMass => (Unit::KilogramPerMetre, "kg_per_m"),
        Dimension::Length => (Unit::Millimetre, "mm"),
        Dimension::Area => (Unit::SquareMetre, "m2"),
        Dimension::AreaFlow => (Unit::SquareMetrePerHour, "m2_per_h"),
        Dimension::Speed => (Unit::MetrePerMinute, "m_per_min"),
        Dimension::Time => (Unit::Second, "s"),
        Dimension::Slowness => (Unit::SecondPerMillimetre, "s_per_mm"),
        Dimension::Temperature => (Unit::Celsius, "celsius"),
        Dimension::SpecificEnergy => (Unit::KilojoulePerKilogram, "kj_per_kg"),
        Dimension::HeatFlow => (Unit::Kilowatt, "kw"),
        Dimension::Fraction => (Unit::PerUnit, "fraction"),
        // In percent, and divided by 100 where it is printed: there is no fraction among its units.
        Dimension::Moisture => (Unit::PercentDryBasis, "fraction"),
        // Of the bench and the line; the balance has none of them.
        Dimension::Force => (Unit::Newton, "n"),
        Dimension::Stress => (Unit::NewtonPerSquareMillimetre, "n_per_mm2"),
        Dimension::Stiffness => (Unit::NewtonPerMillimetre, "n_per_mm"),
        Dimension::Frequency => (Unit::Hertz, "hz"),
        Dimension::Rotation => (Unit::TurnPerMinute, "rpm"),
        Dimension::FlowPerFrequency => (Unit::KilogramPerHourPerHertz, "kg_per_h_per_hz"),
        Dimension::FlowPerRotation => (Unit::KilogramPerHourPerTurn, "kg_per_h_per_rpm"),
        Dimension::SpecificVolume => (Unit::LitrePerTonne, "l_per_t"),
        Dimension::Expansion => (Unit::PerKelvin, "per_k"),
        Dimension::Price => (Unit::PerTonne, "currency_per_t"),
        Dimension::Cost => (Unit::PerCubicMetre, "currency_per_m3"),
        Dimension::YearCost => (Unit::PerYear, "currency_per_year"),
        Dimension::Number => (Unit::One, "ratio"),
    }
}

fn unit_key(amount: Amount) -> &'static str {
    unit(amount.kind).1
}

fn number(amount: Amount) -> Value {
    // The base of a moisture is the fraction itself.
    if amount.kind.dimension() == Dimension::Moisture {
        return amount.base.into();
    }
    amount.get(unit(amount.kind).0).into()
}

/// The field, the liquid or the station that a finding belongs to, by its key.
fn place(finding: &Finding) -> String {
    match finding.place {
        Place::Field(field) => field.key(),
        Place::Liquid(id) => format!("liquid.{}", id.0),
        Place::Station(station) => station.key().to_owned(),
    }
}

/// A finding in short words for a terminal. The app's own words are longer.
fn said(draft: &Draft, finding: &Finding) -> String {
    let entry = match finding.place {
        Place::Field(field) => draft.entry(field),
        _ => None,
    };
    let typed = entry.map(|entry| entry.text.as_str()).unwrap_or_default();
    match finding.what {
        What::Missing => "a number is missing".to_owned(),
        What::Unreadable(error) => match error {
            ReadError::Ambiguous { decimal, grouped } => format!("\"{typed}\" can be {decimal} or {grouped}"),
            ReadError::OtherUnit { unit } => {
                format!("\"{typed}\" is in {}, which measures something else", unit.symbol())
            }
            ReadError::UnknownUnit => format!("\"{typed}\" has an unknown unit"),
            ReadError::TooLarge => format!("\"{typed}\" is too large"),
            ReadError::Empty | ReadError::NotANumber | ReadError::SecondDecimalMark => {
                format!("\"{typed}\" is not a number")
            }
        },
        What::NotAllowed { limit, .. } => {
            let (unit, least, most) = (limit.unit.symbol(), limit.least, limit.most);
            let (above, below) = if limit.above_least { ("above", "up") } else { ("from", "up") };
            let end = if limit.below_most { "and below" } else { "to" };
            if most.is_finite() {
                format!("\"{typed}\" is not {above} {least} {end} {most} {unit}")
            } else {
                format!("\"{typed}\" is not {above} {least} {unit} {below}")
            }
        }
        What::LikelyFraction { .. } => format!("\"{typed}\" is very low; a hundred times as much may be meant"),
        What::NotUsual { value, window, unit } => {
            format!("{} {} is outside the usual {} to {}", value.get(unit), unit.symbol(), window.low, window.high)
        }
        other => format!("{other:?}"),
    }
}

/// Why a file was refused, in short words for a terminal.
fn refused(refusal: &Refusal) -> String {
    match refusal {
        Refusal::TooLarge { bytes, limit } => format!("{bytes} bytes; a recipe has at most {limit}"),
        Refusal::TooDeep { at } => format!("line {}, column {}: brackets nest too deep", at.line, at.column),
        Refusal::TooMany { key, count, limit } => format!("{count} {key}; at most {limit} are read"),
        Refusal::TooLong { key, length, limit } => {
            format!("a text of {length} characters under \"{key}\"; at most {limit} are read")
        }
        Refusal::Empty => "this is empty".to_owned(),
        Refusal::DuplicateKey { key } => format!("the key \"{key}\" is there twice"),
        Refusal::NotJson { at, cut_short: true } => {
            format!("line {}, column {}: the file breaks off", at.line, at.column)
        }
        Refusal::NotJson { at, .. } => format!("line {}, column {}: this is not JSON", at.line, at.column),
        Refusal::Foreign => "this is no file of Haulm's".to_owned(),
        Refusal::OtherKind { kind } => format!("this is a file of Haulm's, but a \"{kind}\" and no recipe"),
        Refusal::Newer { version, known } => {
            format!("this has format version {version}; up to {known} are known here: a newer Haulm reads it")
        }
        Refusal::NoVersion => "this has no format version".to_owned(),
        Refusal::Damaged { at, what, .. } => format!("line {}, column {}: {what}", at.line, at.column),
        Refusal::Altered { .. } => "this was changed after it was saved".to_owned(),
    }
}
