//! The economy of a change of system, by hand, and as tables that other programs read.

use calamine::{Data, Reader, Xlsx};
use haulm::domain::balance::outcome::Case;
use haulm::domain::compare::Output;
use haulm::domain::compare::draft::CompareDraft;
use haulm::domain::compare::economy::costs::{Economy, EnergyPrice, SystemEconomy, release_agent};
use haulm::domain::compare::economy::field::{EconomyField, SystemEconomyEntries};
use haulm::domain::compare::side::{ComparedSystem, side_by_side, with_liquids};
use haulm::domain::compare::system_choice::SystemChoice;
use haulm::domain::recipe::binder_system::SystemKey;
use haulm::domain::{Entry, Field, Figure, example};
use haulm::quantity::format::DecimalMark;
use haulm::quantity::{Unit, Units};
use haulm::record::table::{Cell, Table, to_csv, to_xlsx};
use haulm::ui::table::{answers, economy as sheet, limits, side_by_side as table, stacked};
use haulm::ui::text::{Context, Message};
use std::io::Cursor;

#[track_caller]
fn near(found: Option<f64>, expected: f64) {
    let found = found.unwrap();
    assert!((found - expected).abs() <= 1e-9 * expected.abs(), "{found} for {expected}");
}

fn uf(name: &str) -> ComparedSystem {
    let mut draft = with_liquids(&example(), &SystemKey::Uf.system().liquids);
    for liquid in &mut draft.liquids {
        liquid.price = Entry::typed("450", Unit::PerTonne);
    }
    ComparedSystem::new(name, draft)
}

fn of(case: &Case, output: Output) -> f64 {
    output.value(case).unwrap().base
}

fn figure(case: &Case, figure: Figure) -> f64 {
    case.figure(figure).unwrap().base
}

fn typed() -> CompareDraft {
    let mut typed = CompareDraft { hours: Entry::typed("6000", Unit::Hour), ..CompareDraft::default() };
    for (field, text) in [
        (EconomyField::DryerEnergyPrice, "36"),
        (EconomyField::DryerEfficiency, "80"),
        (EconomyField::PressEnergyPrice, "72"),
        (EconomyField::PressEfficiency, "50"),
        (EconomyField::Freight, "40"),
        (EconomyField::ChangeoverScrap, "12"),
        (EconomyField::Changeovers, "25"),
        (EconomyField::SellingPrice, "400"),
    ] {
        typed.economy.entry_mut(field).text = text.to_owned();
    }
    let agent = SystemEconomyEntries { release_agent: Entry::typed("0,15", Unit::One) };
    typed.system_economy.insert(SystemChoice::OpenRecipe, agent);
    typed
}

#[test]
fn each_part_by_hand() {
    let typed = typed();
    let economy = Economy::of(&typed);
    // 36 money/MWh is 10⁻⁸ money/J.
    assert_eq!(economy.dryer, Some(EnergyPrice { price: 1e-8, efficiency: 0.8 }));
    let system = uf("UF");
    let case = system.case().unwrap();
    let agent = release_agent(&typed, &SystemChoice::OpenRecipe);
    assert_eq!(agent, Some(0.15));
    let found = economy.of_system(case, agent);
    let flow = figure(case, Figure::FinishedVolume);
    near(found.dryer_energy, of(case, Output::DryerHeat) / 0.8 * 1e-8 / flow);
    near(found.press_energy, figure(case, Figure::PressHeat) / 0.5 * 2e-8 / flow);
    // Money per m² over the thickness of 15 mm.
    near(found.release_agent, 0.15 / 0.015);
    near(found.freight, of(case, Output::LiquidFlow) * 0.04 / flow);
    let parts = [found.dryer_energy, found.press_energy, found.release_agent, found.freight];
    near(found.total, figure(case, Figure::Cost) + parts.iter().flatten().sum::<f64>());
    near(found.volume_per_year, flow * 3600.0 * 6000.0);
    near(found.capacity_per_year, of(case, Output::VolumeAtLimit) * 3600.0 * 6000.0);
    near(found.margin, 400.0 - found.total.unwrap());
    near(found.margin_per_press_hour, found.margin.unwrap() * of(case, Output::VolumeAtLimit) * 3600.0);
    // UF resin is delivered at 65 to 66 % solids: 40 money/t of resin over its solids.
    let per_solids = found.freight_per_solids.unwrap();
    assert!((0.04 / 0.67..0.04 / 0.6).contains(&per_solids), "{per_solids}");
}

#[test]
fn what_a_change_brings() {
    let economy = Economy::of(&typed());
    let from = SystemEconomy {
        total: Some(300.0),
        margin: Some(100.0),
        capacity_per_year: Some(90_000.0),
        ..SystemEconomy::default()
    };
    let to = SystemEconomy { total: Some(290.0), margin: Some(110.0), capacity_per_year: Some(80_000.0), ..from };
    let found = economy.switch(&from, &to);
    near(found.per_volume, -10.0);
    near(found.scrap_per_year, 300.0);
    near(found.scrap_cost, 300.0 * 290.0);
    near(found.capacity, -10_000.0);
    near(found.margin_per_year, 110.0 * 80_000.0 - 100.0 * 90_000.0 - 300.0 * 400.0);
    // Without a selling price there is no margin; without a total no cost.
    let unpriced = SystemEconomy { total: None, margin: None, ..to };
    let found = economy.switch(&from, &unpriced);
    assert_eq!((found.per_volume, found.scrap_cost, found.margin_per_year), (None, None, None));
}

#[test]
fn what_is_not_known_is_no_zero() {
    let mut typed = typed();
    typed.economy.dryer_efficiency = Entry::typed("0", Unit::Percent);
    typed.economy.selling_price = Entry::typed("much", Unit::PerCubicMetre);
    typed.hours = Entry::typed("", Unit::Hour);
    let economy = Economy::of(&typed);
    assert_eq!((economy.dryer, economy.selling_price, economy.hours), (None, None, None));
    let priced = uf("UF");
    let found = economy.of_system(priced.case().unwrap(), None);
    assert_eq!(
        (found.dryer_energy, found.margin, found.volume_per_year, found.release_agent),
        (None, None, None, None)
    );
    assert!(found.total.is_some());
    // A liquid without a price: no materials, no total.
    let bare = ComparedSystem::new("UF", with_liquids(&example(), &SystemKey::Uf.system().liquids));
    let found = economy.of_system(bare.case().unwrap(), None);
    assert_eq!((found.materials, found.total), (None, None));
    // A dryer price and a recipe that does not say how dry its fibre has to be: no total either.
    let mut draft = priced.draft.clone();
    draft.water_way = haulm::domain::recipe::draft::WaterWay::None;
    let open = ComparedSystem::new("no target", draft);
    let found = Economy::of(&self::typed()).of_system(open.case().unwrap(), None);
    assert_eq!((found.dryer_energy, found.total), (None, None));
}

/// A name that a spreadsheet would compute, with what XML and CSV set apart.
const NAME: &str = "=1+1;\"<A&B>\",\r\nx";

fn all(systems: &[ComparedSystem], units: &Units) -> Vec<Table> {
    let context = Context { units, draft: &systems[0].draft, currency: "€" };
    let economy = Economy::of(&typed());
    let economies: Vec<_> = systems
        .iter()
        .map(|system| system.case().map(|case| economy.of_system(case, None)).unwrap_or_default())
        .collect();
    let side = side_by_side(systems, 0, Some(6000)).unwrap();
    let said = Message { what: "=cmd answers".to_owned(), fix: "Enter it.".to_owned() };
    vec![
        table(systems, &side, &context),
        sheet(systems, &economies, (&economy, 0), &context),
        limits(systems, &context),
        answers(&[("Hours a year".to_owned(), said)]),
    ]
}

fn systems() -> Vec<ComparedSystem> {
    let mut draft = example();
    *draft.entry_mut(Field::FibreFlow).unwrap() = Entry::typed("30", Unit::TonnePerHour);
    let bare = with_liquids(&example(), &SystemKey::Uf.system().liquids);
    vec![
        ComparedSystem::new(NAME, example()),
        ComparedSystem::new("beyond", draft),
        ComparedSystem::new("bare", bare),
        uf("UF"),
    ]
}

#[test]
fn limits_and_missing_prices_stand_in_their_table() {
    let tables = all(&systems(), &Units::default());
    let text = to_csv(&tables[2], DecimalMark::Point);
    for expected in
        ["\"beyond\",\"Fibre supply\",30000,10000,\"kg/h\"", "\"bare\",\"missing price: Price of UF resin\""]
    {
        assert!(text.contains(expected), "{expected} in {text}");
    }
    assert!(!text.contains("UF\",\"Fibre"), "{text}");
}

/// Read back by a CSV library: every cell as it was given, and no formula from a name.
#[test]
fn the_text_file_is_read_back() {
    let tables = all(&systems(), &Units::default());
    let together = stacked(tables);
    for (mark, separator) in [(DecimalMark::Point, b','), (DecimalMark::Comma, b';')] {
        let text = to_csv(&together, mark);
        let mut reader = csv::ReaderBuilder::new()
            .delimiter(separator)
            .has_headers(false)
            .flexible(true)
            .from_reader(text.trim_start_matches('\u{feff}').as_bytes());
        let read: Vec<csv::StringRecord> = reader.records().map(Result::unwrap).collect();
        let rows = &together.rows;
        assert_eq!(read.len(), rows.len());
        let mut formulas = 0;
        for (row, record) in rows.iter().zip(&read) {
            // A blank row is read as one blank cell.
            assert_eq!(row.len().max(1), record.len());
            for (cell, field) in row.iter().zip(record) {
                match cell {
                    Cell::Empty => assert_eq!(field, ""),
                    Cell::Text(words) | Cell::Heading(words) => {
                        let guarded = words.starts_with(['=', '-']);
                        assert_eq!(field, if guarded { format!("'{words}") } else { words.clone() });
                        formulas += usize::from(guarded);
                    }
                    Cell::Number { value, .. } | Cell::Formula { value, .. } => {
                        assert_eq!(field.replace(',', ".").parse::<f64>().unwrap(), *value);
                    }
                }
            }
        }
        assert!(formulas >= 3, "{formulas}");
    }
}

/// Read back by a spreadsheet library: formulas kept, no live formula from a name or an answer.
#[test]
fn the_spreadsheet_is_read_back() {
    let systems = systems();
    let tables = all(&systems, &Units::default());
    let mut book: Xlsx<_> = Xlsx::new(Cursor::new(to_xlsx(&tables))).unwrap();
    assert_eq!(book.sheet_names(), ["Side by side", "Economy", "Limits", "Answers"]);
    let mut kept = 0;
    for table in &tables {
        let (values, formulas) =
            (book.worksheet_range(&table.name).unwrap(), book.worksheet_formula(&table.name).unwrap());
        for (row, cells) in (0..).zip(&table.rows) {
            for (column, cell) in (0..).zip(cells) {
                let formula = formulas.get_value((row, column)).map_or("", String::as_str);
                let value = values.get_value((row, column));
                match cell {
                    Cell::Formula { formula: given, value: number, .. } => {
                        assert_eq!((formula, value), (given.as_str(), Some(&Data::Float(*number))));
                        kept += 1;
                    }
                    Cell::Text(words) | Cell::Heading(words) => {
                        assert_eq!(formula, "", "{words}");
                        // XML knows one kind of line end.
                        let read = value.map(|value| value.to_string().replace("\r\n", "\n")).unwrap_or_default();
                        assert_eq!(read, words.replace("\r\n", "\n"));
                    }
                    Cell::Number { value: number, .. } => assert_eq!(value, Some(&Data::Float(*number))),
                    Cell::Empty => assert_eq!(formula, ""),
                }
            }
        }
    }
    assert!(kept > 40, "{kept}");
}
