//! Random recipes for the property tests.
#![allow(dead_code, clippy::unwrap_used, clippy::expect_used, missing_docs)]

use haulm::domain::balance::outcome::{Case, work_out};
use haulm::domain::recipe::draft::{Draft, Entry, FeedWay, LiquidDraft, WaterWay};
use haulm::domain::{DoseWay, Faces, Field, LiquidField, LiquidId, Role, Substance};
use haulm::quantity::Unit;
use proptest::prelude::*;
use proptest::test_runner::TestCaseError;

/// What a property is checked on. A case without it counts as rejected, not as passed: proptest draws another one, and fails the
/// test when more than `max_global_rejects` were rejected. So a property holds for as many cases as it says.
pub fn something<T>(there: Option<T>) -> Result<T, TestCaseError> {
    there.ok_or_else(|| TestCaseError::reject("nothing to check"))
}

/// A blank recipe with the fields filled in that every recipe needs.
pub fn plain_recipe() -> Draft {
    let mut draft = Draft::default();
    set(&mut draft, Field::FibreFlow, "10000", Unit::KilogramPerHour);
    set(&mut draft, Field::FibreMoisture, "4", Unit::PercentDryBasis);
    set(&mut draft, Field::MatMoisture, "10", Unit::PercentDryBasis);
    set(&mut draft, Field::BoardDensity, "700", Unit::KilogramPerCubicMetre);
    set(&mut draft, Field::Thickness, "16", Unit::Millimetre);
    set(&mut draft, Field::MatWidth, "2.5", Unit::Metre);
    set(&mut draft, Field::PressLength, "30", Unit::Metre);
    draft
}

pub fn set(draft: &mut Draft, field: Field, text: &str, unit: Unit) {
    *draft.entry_mut(field).expect("the field is there") = Entry::typed(text, unit);
}

/// A liquid dosed as solids on fibre.
pub fn liquid(id: u16, dose: &str, solids: &str, density: &str) -> LiquidDraft {
    let mut liquid = LiquidDraft::blank(LiquidId(id), Role::Binder);
    liquid.name = format!("liquid {id}");
    liquid.dose = Entry::typed(dose, Unit::Percent);
    liquid.solids = Entry::typed(solids, Unit::Percent);
    liquid.density = Entry::typed(density, Unit::KilogramPerCubicMetre);
    liquid
}

fn number(range: std::ops::Range<f64>) -> impl Strategy<Value = String> {
    range.prop_map(|x| format!("{x:.4}"))
}

/// Now and then exactly the low end, where things change.
fn number_or_least(range: std::ops::Range<f64>) -> impl Strategy<Value = String> {
    let least = range.start;
    prop_oneof![4 => number(range), 1 => Just(format!("{least}"))]
}

fn one_liquid(id: u16) -> impl Strategy<Value = LiquidDraft> {
    let way = prop_oneof![
        3 => Just(DoseWay::SolidsOnFibre),
        2 => (1..id.max(2)).prop_map(|base| DoseWay::SolidsOnLiquid(LiquidId(base))),
        1 => Just(DoseWay::LiquidOnFibre),
        1 => Just(DoseWay::LiquidPerBoard),
        1 => prop::sample::select(Faces::ALL).prop_map(DoseWay::LiquidOnFaces),
    ];
    (
        way,
        number_or_least(0.0..15.0),
        20.0..100.0_f64,
        number(800.0..1400.0),
        prop::option::of(0.3..1.0_f64),
        prop::option::of(number_or_least(0.0..3000.0)),
    )
        .prop_map(move |(way, dose, solids, density, thinned, price)| {
            let mut liquid = liquid(id, &dose, &format!("{solids:.3}"), &density);
            liquid.dose_way = match way {
                DoseWay::SolidsOnLiquid(base) if base.0 >= id => DoseWay::SolidsOnFibre,
                other => other,
            };
            if liquid.dose_way == DoseWay::LiquidPerBoard {
                liquid.dose.unit = Unit::KilogramPerCubicMetre;
            } else if liquid.dose_way.is_on_faces() {
                liquid.dose.unit = Unit::GramPerSquareMetre;
            }
            liquid.substance = Substance::ALL[id as usize % Substance::ALL.len()];
            let solids = if liquid.substance.is_isocyanate() { 100.0 } else { solids };
            liquid.solids.text = format!("{solids:.3}");
            if let Some(part) = thinned {
                liquid.spray_solids = Entry::typed(format!("{:.3}", (solids * part).min(solids - 0.01)), Unit::Percent);
            }
            if let Some(price) = price {
                liquid.price = Entry::typed(price, Unit::PerTonne);
            }
            liquid
        })
}

fn liquids() -> impl Strategy<Value = Vec<LiquidDraft>> {
    (0..7_u16).prop_flat_map(|count| (1..=count).map(one_liquid).collect::<Vec<_>>()).prop_map(|mut liquids| {
        // A base is a liquid of the furnish.
        let sprayed: Vec<_> = liquids.iter().filter(|own| own.dose_way.is_on_faces()).map(|own| own.id).collect();
        for liquid in &mut liquids {
            if matches!(liquid.dose_way, DoseWay::SolidsOnLiquid(base) if sprayed.contains(&base)) {
                liquid.dose_way = DoseWay::SolidsOnFibre;
            }
        }
        liquids
    })
}

/// Numbers of the fields outside the liquids, within what physics allows.
fn plain() -> impl Strategy<Value = Vec<(Field, String, Unit)>> {
    let board = (
        number(100.0..1500.0),
        number_or_least(0.0..15.0),
        number(1.0..80.0),
        number_or_least(0.0..1.5),
        number_or_least(0.0..1.5),
        number(0.5..1.8),
    );
    let line = (
        number(0.3..4.0),
        0.0..0.4_f64,
        number(1.0..80.0),
        number_or_least(0.0..20.0),
        number(20.0..100.0),
        number_or_least(0.0..12.0),
        number(10.0..200.0),
        number(5.0..95.0),
    );
    let feed = (
        number(50.0..60_000.0),
        number(0.5..100.0),
        number(2.0..60.0),
        number_or_least(0.0..30.0),
        number_or_least(0.0..25.0),
        number_or_least(0.0..4.0),
    );
    let more = (
        number_or_least(0.0..10.0),
        number_or_least(0.0..3_000.0),
        number_or_least(0.0..80.0),
        number(1.0..24.0),
        number(50.0..60_000.0),
        number(1.0..30.0),
    );
    (board, line, feed, more).prop_map(|(board, line, feed, more)| {
        use Field as F;
        use Unit as U;
        let spread = format!("{:.4}", line.0.parse::<f64>().unwrap() + line.1);
        vec![
            (F::BoardDensity, board.0, U::KilogramPerCubicMetre),
            (F::BoardMoisture, board.1, U::PercentDryBasis),
            (F::Thickness, board.2, U::Millimetre),
            (F::SandTop, board.3, U::Millimetre),
            (F::SandBottom, board.4, U::Millimetre),
            (F::SurfaceRatio, board.5, U::One),
            (F::MatWidth, line.0, U::Metre),
            (F::SpreadWidth, spread, U::Metre),
            (F::PressLength, line.2, U::Metre),
            (F::Reject, line.3, U::Percent),
            (F::AreaYield, line.4, U::Percent),
            (F::ExitMoisture, line.5, U::PercentDryBasis),
            (F::MatBulkDensity, line.6, U::KilogramPerCubicMetre),
            (F::MatTemperature, line.7, U::Celsius),
            (F::FibreFlow, feed.0, U::KilogramPerHour),
            (F::WantedLineSpeed, feed.1, U::MetrePerMinute),
            (F::WantedPressFactor, feed.2, U::SecondPerMillimetre),
            (F::FibreMoisture, feed.3, U::PercentDryBasis),
            (F::MatMoisture, feed.4, U::PercentDryBasis),
            (F::DryingLoss, feed.5, U::Percent),
            (F::WaterOnFibre, more.0, U::Percent),
            (F::WaterFlow, more.1, U::KilogramPerHour),
            (F::SurfaceSpray, more.2, U::GramPerSquareMetre),
            (F::ShiftHours, more.3, U::Hour),
            (F::FibreSupply, more.4.clone(), U::KilogramPerHour),
            (F::BlenderCapacity, more.4, U::KilogramPerHour),
            (F::LeastPressFactor, more.5.clone(), U::SecondPerMillimetre),
            (F::TopLineSpeed, more.5, U::MetrePerMinute),
            (F::FibrePrice, "92".to_owned(), U::PerTonne),
        ]
    })
}

/// Recipes of every shape with a fibre flow, within what physics allows. Most have a balance.
pub fn recipe() -> impl Strategy<Value = Draft> {
    let feed = prop::sample::select(vec![FeedWay::OvenDry, FeedWay::Belt, FeedWay::LineSpeed, FeedWay::PressFactor]);
    let water = prop::sample::select(WaterWay::ALL);
    let faces = prop::sample::select(Faces::ALL);
    (feed, water, faces, liquids(), plain()).prop_map(|(feed_way, water_way, sprayed_faces, liquids, plain)| {
        let mut draft = Draft { feed_way, water_way, sprayed_faces, liquids, ..Draft::default() };
        for (field, text, unit) in plain {
            set(&mut draft, field, &text, unit);
        }
        draft
    })
}

/// Recipes of a laboratory, with the same at a fibre flow, both solved.
pub fn of_laboratory() -> impl Strategy<Value = (Case, Case)> {
    recipe().prop_filter_map("has a balance", |mut draft| {
        if draft.water_way == WaterWay::Flow {
            draft.water_way = WaterWay::OnFibre;
        }
        let flowing = work_out(&draft).case?;
        draft.feed_way = FeedWay::None;
        work_out(&draft).case.map(|laboratory| (laboratory, flowing))
    })
}

/// Recipes that have a balance, solved.
pub fn solved() -> impl Strategy<Value = (Draft, Case)> {
    recipe().prop_filter_map("has a balance", |draft| work_out(&draft).case.map(|case| (draft, case)))
}

/// Anything a person or a broken file may put into the boxes.
pub fn anything() -> impl Strategy<Value = Draft> {
    let text = prop_oneof![
        2 => any::<String>(),
        2 => "[0-9., ]{0,9}( ?(kg/h|t/h|%|mm|in|gal/min|% wb|lb/ft3))?",
        2 => any::<f64>().prop_map(|x| x.to_string()),
        1 => prop::sample::select(vec!["0", "-1", "1e308", "-1e308", "1e-308", "NaN", "inf", "100", "", "1e12", "0.0000001"]).prop_map(str::to_owned),
    ];
    let unit = prop::sample::select(Unit::ALL);
    let edits = prop::collection::vec((0..Field::PLAIN.len() + 20, text, unit), 0..12);
    let base = prop::option::of(0..9_u16);
    (recipe(), edits, base).prop_map(|(mut draft, edits, base)| {
        for (at, text, unit) in edits {
            let field = match Field::PLAIN.get(at) {
                Some(field) => *field,
                None => {
                    let over = at - Field::PLAIN.len();
                    let part = LiquidField::ALL[over % LiquidField::ALL.len()];
                    Field::Liquid(LiquidId((over / LiquidField::ALL.len() + 1) as u16), part)
                }
            };
            if let Some(entry) = draft.entry_mut(field) {
                *entry = Entry::typed(text, unit);
            }
        }
        // A base that may be missing or close a loop.
        if let (Some(base), Some(first)) = (base, draft.liquids.first_mut()) {
            first.dose_way = DoseWay::SolidsOnLiquid(LiquidId(base));
        }
        draft
    })
}
