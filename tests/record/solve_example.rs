//! The `solve` example as a script runs it.

use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

const RECIPE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/example/recipe.json");

fn solve(path: &Path) -> Output {
    let mut cargo = Command::new(env!("CARGO"));
    cargo.args(["run", "--quiet", "--manifest-path", concat!(env!("CARGO_MANIFEST_DIR"), "/Cargo.toml")]);
    cargo.args(["--example", "solve", "--"]).arg(path).output().unwrap()
}

/// The recipe with some text in it replaced, as a file of its own.
fn spoilt(name: &str, spoil: impl FnOnce(String) -> String) -> PathBuf {
    let path = std::env::temp_dir().join(format!("haulm-{}-{name}.json", std::process::id()));
    fs::write(&path, spoil(fs::read_to_string(RECIPE).unwrap())).unwrap();
    path
}

#[track_caller]
fn check_refused(name: &str, expected: &[&str], spoil: impl FnOnce(String) -> String) {
    let path = spoilt(name, spoil);
    let output = solve(&path);
    fs::remove_file(&path).unwrap();
    let message = String::from_utf8(output.stderr).unwrap();
    assert_eq!(output.status.code(), Some(1), "{message}");
    assert!(output.stdout.is_empty());
    for part in expected {
        assert!(message.contains(part), "{part:?} in {message:?}");
    }
}

/// Worked by hand: 12 t/h of fibre take 3.5 % of neat binder, so 420 kg/h, at 1230 kg/m³ 341.46 L/h;
/// furnish solids are 12 000·1.043 kg/h; the board weighs 680·16.8 mm per area, oven-dry 1/1.07 of it.
#[test]
fn prints_the_balance_with_unit_and_basis_in_every_key() {
    let output = solve(Path::new(RECIPE));
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let solved: Value = serde_json::from_slice(&output.stdout).unwrap();
    let near = |found: &Value, expected: f64| {
        let found = found.as_f64().unwrap();
        assert!((found - expected).abs() < 1e-9 * expected.abs(), "{found} for {expected}");
    };
    near(&solved["fibre_oven_dry_kg_per_h"], 12_000.0);
    near(&solved["solids_oven_dry_kg_per_h"], 12_516.0);
    near(&solved["mat_moisture_dry_basis_fraction"], 0.09);
    near(&solved["mat_oven_dry_kg_per_m2"], 0.68 * 16.8 / 1.07);
    near(&solved["liquids"][0]["liquid_as_delivered_kg_per_h"], 420.0);
    near(&solved["liquids"][0]["volume_as_delivered_l_per_h"], 420_000.0 / 1_230.0);
    near(&solved["machines"]["fibre_supply"]["used_fraction"], 12.0 / 14.0);
    assert_eq!(
        (&solved["liquids"][0]["name"], &solved["name"]),
        (&"Isocyanate, neat".into(), &"Wheat straw, 16 mm".into())
    );
    let units = ["kg", "l", "m3", "m2", "h", "mm", "m", "s", "min", "kw", "fraction", "ratio"];
    for (key, value) in solved.as_object().unwrap() {
        let unit = key.rsplit('_').next().unwrap();
        assert!(!value.is_number() || units.contains(&unit), "{key} names its unit");
    }
}

/// A recipe of a laboratory prints doses on fibre and the mat weight, and no key of a flow.
#[test]
fn a_recipe_without_a_fibre_flow_has_doses_and_a_mat() {
    let path = spoilt("laboratory", |recipe| recipe.replace("\"feed_way\": \"oven_dry\"", "\"feed_way\": \"none\""));
    let output = solve(&path);
    fs::remove_file(&path).unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let solved: Value = serde_json::from_slice(&output.stdout).unwrap();
    let near = |found: &Value, expected: f64| {
        let found = found.as_f64().unwrap();
        assert!((found - expected).abs() < 1e-9 * expected.abs(), "{found} for {expected}");
    };
    near(&solved["mat_oven_dry_kg_per_m2"], 0.68 * 16.8 / 1.07);
    near(&solved["furnish_per_fibre_oven_dry_ratio"], 1.043);
    near(&solved["liquids"][0]["solids_on_fibre_oven_dry_fraction"], 0.035);
    near(&solved["liquids"][1]["liquid_on_fibre_as_delivered_on_oven_dry_fraction"], 0.008 / 0.55);
    assert!(solved["water_dose_on_fibre_oven_dry_fraction"].is_number());
    assert_eq!(solved["machines"], serde_json::json!({}));
    let flows = |map: &serde_json::Map<String, Value>| {
        map.keys().filter(|key| key.ends_with("_per_h") || key.ends_with("_per_min")).cloned().collect::<Vec<_>>()
    };
    assert_eq!(flows(solved.as_object().unwrap()), Vec::<String>::new());
    for liquid in solved["liquids"].as_array().unwrap() {
        assert_eq!(flows(liquid.as_object().unwrap()), Vec::<String>::new());
    }
}

#[test]
fn a_faulty_field_is_named() {
    check_refused("fields", &["board_density: \"six\"", "thickness: \"-3\"", "mat_moisture: \"1,234\""], |recipe| {
        recipe.replace("\"680\"", "\"six\"").replace("\"16\"", "\"-3\"").replace("\"9\"", "\"1,234\"")
    });
    check_refused("missing", &["dose.1: a number is missing"], |recipe| recipe.replace("\"3.5\"", "\"\""));
}

#[test]
fn a_file_that_is_none_is_refused_with_the_place() {
    check_refused("cut", &["line 22", "breaks off"], |recipe| recipe[..500].to_owned());
    check_refused("newer", &["version 9"], |recipe| recipe.replace("\"version\": 1", "\"version\": 9"));
    check_refused("foreign", &["no file of Haulm's"], |_| "{}".to_owned());
    check_refused("damaged", &["line ", "unknown variant `ell`"], |recipe| recipe.replace("\"mm\"", "\"ell\""));
    let none = solve(Path::new("/nowhere/recipe.json"));
    assert_eq!(none.status.code(), Some(1));
}
