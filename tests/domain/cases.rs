//! The balance against cases worked out by a second implementation of the model, written for this project.

use approx::relative_eq;
use arrayvec::ArrayVec;
use haulm::domain::balance::cost::Price;
use haulm::domain::balance::solved::Solved;
use haulm::domain::recipe::input::{Board, Dosing, Feed, Input, Line, Liquid, Liquids, MachineLimits, WaterPlan};
use haulm::domain::{LiquidId, Role, Substance, solve};
use haulm::quantity::{Dose, Moisture, Solids, Unit};
use serde_json::Value;
use uom::si::f64::{ArealMassDensity, Length, MassDensity, MassRate, Ratio, ThermodynamicTemperature, Time};
use uom::si::length::{meter, millimeter};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::mass_rate::kilogram_per_second;
use uom::si::ratio::ratio;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::time::hour;

fn number(of: &Value, key: &str) -> f64 {
    of[key].as_f64().unwrap_or_else(|| panic!("no number `{key}`"))
}

fn moisture(of: &Value, key: &str) -> Moisture {
    Moisture::from_dry_basis(number(of, key)).unwrap()
}

fn flow(kg_h: f64) -> MassRate {
    MassRate::new::<kilogram_per_second>(Unit::KilogramPerHour.to_base(kg_h))
}

fn price(of: &Value, key: &str) -> Option<Price> {
    of[key].as_f64().and_then(|per_tonne| Price::per_kilogram(per_tonne / 1000.0))
}

fn input(case: &Value) -> Input {
    let components = case["components"].as_array().unwrap();
    let place = |id: &str| components.iter().position(|c| c["id"] == id).unwrap();
    let liquids: ArrayVec<Liquid, 12> = components
        .iter()
        .enumerate()
        .map(|(at, c)| {
            let dose = Dose::new(number(c, "load")).unwrap();
            Liquid {
                id: LiquidId(at as u16),
                role: Role::Other,
                substance: Substance::Other,
                dosing: match c["on"].as_str().unwrap() {
                    "fibre" => Dosing::SolidsOnFibre(dose),
                    base => Dosing::SolidsOnLiquid(dose, place(base)),
                },
                solids: Solids::new(number(c, "solids")).unwrap(),
                density: MassDensity::new::<kilogram_per_cubic_meter>(number(c, "density")),
                spray_solids: c["dilute_to"].as_f64().and_then(Solids::new),
                price: price(c, "price_t"),
            }
        })
        .collect();
    let board = &case["board"];
    let line = &case["line"];
    let mm = |key: &str| Length::new::<millimeter>(number(board, key));
    let board_moisture = moisture(board, "mc");
    Input {
        product: haulm::domain::Product::default(),
        feed: Feed::OvenDry(flow(number(case, "fibre_od_kg_h"))),
        fibre_moisture: moisture(case, "fibre_mc"),
        fibre_price: price(case, "fibre_price_od_t"),
        liquids: Liquids::new(liquids).unwrap(),
        water: WaterPlan::ToMatMoisture(moisture(case, "mat_mc_target")),
        drying_loss: Ratio::new::<ratio>(number(case, "transport_drying")),
        board: Board {
            density: MassDensity::new::<kilogram_per_cubic_meter>(number(board, "density")),
            moisture: board_moisture,
            thickness: mm("thickness_mm"),
            sand_top: mm("sand_top_mm"),
            sand_bottom: mm("sand_bottom_mm"),
            surface_ratio: Ratio::new::<ratio>(board["surface_ratio"].as_f64().unwrap_or(1.0)),
        },
        line: Line {
            width: Some(Length::new::<meter>(number(line, "width_m"))),
            spread_width: None,
            press_length: Some(Length::new::<meter>(number(line, "press_length_m"))),
            reject: Ratio::new::<ratio>(number(line, "reject")),
            area_yield: Ratio::new::<ratio>(number(line, "area_yield")),
            exit_moisture: line["exit_mc"].as_f64().and_then(Moisture::from_dry_basis),
            bulk_density: None,
            mat_temperature: ThermodynamicTemperature::new::<degree_celsius>(30.0),
            surface_spray: ArealMassDensity::default(),
            sprayed_faces: haulm::domain::Faces::Both,
            shift: Time::new::<hour>(8.0),
        },
        limits: MachineLimits::default(),
    }
}

/// The figures under the names of the cases.
fn figures(solved: &Solved) -> Vec<(&'static str, f64)> {
    let kg_h = |flow: MassRate| Unit::KilogramPerHour.from_base(flow.value);
    let Solved { water, mat, line, .. } = solved;
    vec![
        ("solids_total_kg_h", kg_h(solved.solids)),
        ("water_in_kg_h", kg_h(water.on_hand)),
        ("fibre_mc_for_no_water", water.fibre_moisture_for_none.unwrap().value),
        ("water_add_kg_h", kg_h(water.dose)),
        ("water_excess_kg_h", kg_h(water.excess)),
        ("mc_blender_out", water.blender_out.dry_basis().value),
        ("mc_mat", water.mat.dry_basis().value),
        ("pressed_thickness_mm", mat.pressed_thickness.get::<millimeter>()),
        ("raw_board_kg_m2", mat.raw_board.value),
        ("mat_od_kg_m2", mat.od.value),
        ("mat_wet_kg_m2", mat.wet.value),
        ("mat_fibre_od_kg_m2", mat.fibre.value),
        ("net_solids_kg_h", kg_h(line.net_solids)),
        ("line_speed_m_min", line.speed.unwrap().value * 60.0),
        ("press_time_s", line.press_time.unwrap().value),
        ("press_factor_s_mm", line.press_factor.unwrap().value / 1000.0),
        ("finished_m2_h", line.finished_area.value * 3600.0),
        ("finished_m3_h", line.finished_volume.value * 3600.0),
        ("mat_wet_kg_m", mat.running.unwrap().value),
        ("press_water_kg_h", kg_h(solved.losses.press_vapour)),
        ("fibre_od_per_m3", solved.usage.fibre_per_volume.value),
        ("cost_per_m3", solved.usage.cost.per_cubic_metre()),
    ]
}

fn agrees(name: &str, ours: f64, theirs: f64, scale: f64) {
    // A figure that is a small difference of large ones is as exact as those.
    assert!(
        relative_eq!(ours, theirs, max_relative = 1e-9, epsilon = 1e-9 * scale * 1e-3),
        "{name}: {ours} is not {theirs}"
    );
}

/// Source: a second implementation of the same model, written for this project; see tests/cases/README.md.
fn check(file: &str) {
    let text = std::fs::read_to_string(format!("{}/tests/cases/{file}", env!("CARGO_MANIFEST_DIR"))).unwrap();
    let case: Value = serde_json::from_str(&text).unwrap();
    let solved = solve(&input(&case["input"])).unwrap();
    let expected = case["expected"].as_object().unwrap();

    let mut compared = 0;
    for (name, ours) in figures(&solved) {
        agrees(name, ours, number(&case["expected"], name), ours.abs());
        compared += 1;
    }
    // Everything that the case expects was compared: the figures, the components, the uses.
    assert_eq!(compared + 2, expected.len(), "a figure of the case is not compared");

    for (flow, component) in solved.liquids.iter().zip(case["input"]["components"].as_array().unwrap()) {
        let id = component["id"].as_str().unwrap();
        let theirs = &expected["components"][id];
        let kg_h = |flow: MassRate| Unit::KilogramPerHour.from_base(flow.value);
        let scale = kg_h(flow.liquid);
        agrees("solids", kg_h(flow.solids), number(theirs, "solids_kg_h"), scale);
        agrees("liquid", kg_h(flow.liquid), number(theirs, "liquid_kg_h"), scale);
        agrees("volume", Unit::LitrePerHour.from_base(flow.volume.value), number(theirs, "liquid_l_h"), scale);
        agrees("water", kg_h(flow.water), number(theirs, "water_kg_h"), scale);
        agrees("thinning", kg_h(flow.thinning), number(theirs, "dilution_water_kg_h"), scale);
        agrees("per m³", flow.per_volume.value, number(&expected["per_m3"], id), scale);
    }
}

#[test]
fn hybrid_of_pmdi_and_uf() {
    check("hybrid-pmdi-uf-9mm.json");
}

#[test]
fn pmdi_on_wheat_straw() {
    check("pmdi-wheat-straw-16mm.json");
}

#[test]
fn uf_with_hardener_and_scavenger_thinned() {
    check("uf-hardener-scavenger-12mm.json");
}

#[test]
fn uf_that_comes_out_too_wet() {
    check("uf-too-wet.json");
}
