//! The weigh sheet: one worked by hand, and what must hold for every one.

use crate::sample::{bare_sheet, made_out, recipe, sheet, type_in};
use crate::support::{liquid, plain_recipe, recipe as any_recipe, set, something};
use approx::assert_relative_eq;
use haulm::domain::trial::weigh_sheet::draft::{OverageOf, OverageOn, SprayWay, ThicknessWay, WaterPlace};
use haulm::domain::trial::{
    LineId, SheetDraft, TrialPlace, TrialProblem, WeighField, WeighFigure, WeighLineFigure, WeighSheet,
};
use haulm::domain::{Draft, Field as RecipeField, LiquidId, Substance, work_out};
use haulm::quantity::Unit;
use proptest::prelude::*;
use uom::si::f64::Mass;
use uom::si::mass::gram;

fn grams(sheet: &WeighSheet, id: LineId) -> f64 {
    sheet.line(id).map_or(0.0, |line| line.mass.get::<gram>())
}

fn figure(sheet: &WeighSheet, figure: WeighFigure, unit: Unit) -> f64 {
    sheet.figure(figure).unwrap().get(unit)
}

/// Worked by hand: a board of 25 × 25 × 1 cm at 0.75 g/cm³ oven-dry is 468.75 g; with 8 % resin solids on oven-dry
/// particles these are 468.75/1.08 = 434.0278 g and the solids 34.7222 g; at 5 % moisture the particles are 455.7292 g,
/// and 477.4306 g with a spillage of 5 % of the oven-dry mass; the resin is weighed for what is not spilled.
#[test]
fn a_sheet_with_its_spillage() {
    // 34.7222/0.525 and 34.7222/0.48.
    for (solids, by_hand) in [("52.5", 66.137_566), ("48", 72.337_963)] {
        let mut recipe = plain_recipe();
        set(&mut recipe, RecipeField::FibreMoisture, "5", Unit::PercentDryBasis);
        set(&mut recipe, RecipeField::BoardDensity, "0.75", Unit::KilogramPerLitre);
        set(&mut recipe, RecipeField::BoardMoisture, "0", Unit::PercentDryBasis);
        set(&mut recipe, RecipeField::Thickness, "1", Unit::Centimetre);
        recipe.water_way = haulm::domain::recipe::draft::WaterWay::None;
        recipe.liquids = vec![liquid(1, "8", solids, "1280")];
        let mut draft = bare_sheet();
        type_in(&mut draft, WeighField::MatLength, "250");
        type_in(&mut draft, WeighField::MatWidth, "25 cm");
        let plain = sheet(&recipe, &draft);
        let moist = grams(&plain, LineId::Fibre);
        assert_relative_eq!(moist, 455.7292, max_relative = 1e-6);
        assert_relative_eq!(moist / 1.05, 434.0278, max_relative = 1e-6);

        (draft.overage_of, draft.overage_on) = (OverageOf::OvenDry, OverageOn::Fibre);
        type_in(&mut draft, WeighField::Overage, "5");
        let spilled = sheet(&recipe, &draft);
        assert_relative_eq!(grams(&spilled, LineId::Fibre), 477.4306, max_relative = 1e-6);
        let resin = grams(&spilled, LineId::Liquid(LiquidId(1)));
        assert_relative_eq!(resin, by_hand, max_relative = 1e-6);
        let fraction: f64 = solids.parse::<f64>().unwrap() / 100.0;
        assert_relative_eq!(resin * fraction, 34.7222, max_relative = 1e-6);
        // The dose is that of the fibre that is left.
        let dose = spilled.actual.dose(LiquidId(1)).unwrap();
        assert_relative_eq!(dose.actual.value, 0.08, max_relative = 1e-12);
    }
}

/// By definition: 31 lb/ft³ × 48·96·0.5/1728 ft³ = 41.3333 lb, and × 0.45359237 kg/lb = 18.748485 kg.
#[test]
fn a_board_in_customary_units() {
    let mut recipe = plain_recipe();
    set(&mut recipe, RecipeField::BoardDensity, "31", Unit::PoundPerCubicFoot);
    set(&mut recipe, RecipeField::Thickness, "0.5", Unit::Inch);
    let mut draft = bare_sheet();
    type_in(&mut draft, WeighField::MatLength, "96 in");
    type_in(&mut draft, WeighField::MatWidth, "48 in");
    let sheet = sheet(&recipe, &draft);
    assert_relative_eq!(figure(&sheet, WeighFigure::FinishedBoard, Unit::Pound), 41.333_333_3, max_relative = 1e-8);
    assert_relative_eq!(figure(&sheet, WeighFigure::FinishedBoard, Unit::Kilogram), 18.748_485, max_relative = 1e-7);
}

/// The whole way by hand: 450 × 450 × 16 mm at 700 kg/m³ and 7 % moisture, two boards.
#[test]
fn a_sheet_by_hand() {
    let mut draft = bare_sheet();
    type_in(&mut draft, WeighField::Boards, "2");
    type_in(&mut draft, WeighField::WallLoss, "4");
    type_in(&mut draft, WeighField::PressFactor, "12");
    type_in(&mut draft, WeighField::SprayVolume, "120");
    let sheet = sheet(&recipe(), &draft);
    let dry_mat = 0.45 * 0.45 * 0.016 * 700_000.0 / 1.07;
    let per_fibre = 1.0 + 0.12 + 0.12 * 0.02 + 0.008;
    let fibre = 2.0 * dry_mat / per_fibre;
    let solids = 2.0 * dry_mat;
    assert_relative_eq!(grams(&sheet, LineId::Fibre), fibre * 1.02, max_relative = 1e-12);
    let resin = fibre * 0.12 / 0.65;
    let hardener = fibre * 0.12 * 0.02 / 0.40;
    let wax = fibre * 0.008 / 0.55;
    for (id, liquid) in [(1, resin), (2, hardener), (3, wax)] {
        assert_relative_eq!(grams(&sheet, LineId::Liquid(LiquidId(id))), liquid / 0.96, max_relative = 1e-12);
    }
    let with = fibre * 0.02 + resin * 0.35 + hardener * 0.6 + wax * 0.45;
    let water = solids * 0.12 - with;
    assert!(water > 0.0);
    assert_relative_eq!(grams(&sheet, LineId::Water), water / 0.96, max_relative = 1e-12);
    assert_relative_eq!(figure(&sheet, WeighFigure::MatMoist, Unit::Gram), dry_mat * 1.12, max_relative = 1e-12);
    assert_relative_eq!(figure(&sheet, WeighFigure::ActualMoisture, Unit::PercentDryBasis), 12.0, max_relative = 1e-10);
    assert_relative_eq!(figure(&sheet, WeighFigure::Stops, Unit::Millimetre), 16.0, max_relative = 1e-12);
    assert_relative_eq!(figure(&sheet, WeighFigure::PressTime, Unit::Second), 192.0, max_relative = 1e-12);
    let time = figure(&sheet, WeighFigure::Line(LineId::Liquid(LiquidId(1)), WeighLineFigure::SprayTime), Unit::Second);
    assert_relative_eq!(time, resin / 0.96 / 1.28 / 2.0, max_relative = 1e-12);
}

#[test]
fn order_of_addition() {
    let mut recipe = recipe();
    recipe.liquids[2].spray_solids.text = "30".to_owned();
    let mut draft = bare_sheet();
    let order =
        |draft: &SheetDraft| -> Vec<String> { sheet(&recipe, draft).lines.iter().map(|line| line.id.key()).collect() };
    assert_eq!(order(&draft), ["fibre", "liquid.1", "liquid.2", "liquid.3", "thinning.3", "water"]);
    draft.water_place = WaterPlace::First;
    assert_eq!(order(&draft), ["fibre", "water", "liquid.1", "liquid.2", "liquid.3", "thinning.3"]);
}

/// The two ways to say an overage, on the whole furnish: the moist mass grows by e, or by e of its
/// oven-dry mass.
#[test]
fn overage_says_of_what() {
    let mut draft = bare_sheet();
    let none = sheet(&recipe(), &draft);
    type_in(&mut draft, WeighField::Overage, "10");
    let moist = sheet(&recipe(), &draft);
    assert_relative_eq!(moist.batch.value, 1.1 * none.batch.value, max_relative = 1e-12);
    draft.overage_of = OverageOf::OvenDry;
    let dry = sheet(&recipe(), &draft);
    let oven_dry = none.actual.furnish.value;
    assert_relative_eq!(dry.batch.value, none.batch.value + 0.1 * oven_dry, max_relative = 1e-12);
    for id in none.lines.iter().map(|line| line.id) {
        let (one, other) = (grams(&moist, id) / grams(&none, id), grams(&dry, id) / grams(&none, id));
        assert_relative_eq!(one, 1.1, max_relative = 1e-12);
        assert_relative_eq!(other, dry.batch.value / none.batch.value, max_relative = 1e-12);
    }
}

#[test]
fn a_pressed_thickness_is_not_sanded() {
    let mut recipe = recipe();
    set(&mut recipe, RecipeField::SandTop, "0.5", Unit::Millimetre);
    set(&mut recipe, RecipeField::SandBottom, "0.5", Unit::Millimetre);
    let mut draft = bare_sheet();
    assert_relative_eq!(sheet(&recipe, &draft).stops.value, 0.017, max_relative = 1e-12);
    draft.thickness_way = ThicknessWay::Pressed;
    type_in(&mut draft, WeighField::Thickness, "12");
    let pressed = sheet(&recipe, &draft);
    assert_relative_eq!(pressed.stops.value, 0.012, max_relative = 1e-12);
    assert_relative_eq!(pressed.mat.raw_board.value, pressed.mat.finished_board.value, max_relative = 1e-12);
    type_in(&mut draft, WeighField::Thickness, " ");
    let (none, findings) = made_out(&recipe, &draft);
    assert!(none.is_none() && findings.iter().any(|finding| finding.place == TrialPlace::Field(WeighField::Thickness)));
}

#[test]
fn what_is_typed_on_the_sheet_goes_before_the_recipe() {
    let mut draft = bare_sheet();
    let before = sheet(&recipe(), &draft);
    type_in(&mut draft, WeighField::BoardDensity, "770");
    type_in(&mut draft, WeighField::FibreMoisture, "5");
    let after = sheet(&recipe(), &draft);
    assert_relative_eq!(after.mat.oven_dry.value, 1.1 * before.mat.oven_dry.value, max_relative = 1e-12);
    let fibre = grams(&after, LineId::Fibre) / grams(&before, LineId::Fibre);
    assert_relative_eq!(fibre, 1.1 * 1.05 / 1.02, max_relative = 1e-12);
}

#[test]
fn the_line_is_not_asked_for() {
    let mut recipe = recipe();
    for field in [RecipeField::FibreFlow, RecipeField::MatWidth, RecipeField::PressLength] {
        set(&mut recipe, field, "", Unit::Metre);
    }
    assert!(work_out(&recipe).case.is_none());
    assert!(made_out(&recipe, &bare_sheet()).0.is_some());
}

/// A fixed flow of water on the line is the same dose on the fibre at the bench.
#[test]
fn a_water_flow_becomes_a_dose() {
    let mut recipe = recipe();
    recipe.water_way = haulm::domain::recipe::draft::WaterWay::Flow;
    set(&mut recipe, RecipeField::WaterFlow, "300", Unit::KilogramPerHour);
    let sheet = sheet(&recipe, &bare_sheet());
    let fibre = grams(&sheet, LineId::Fibre) / 1.02;
    assert_relative_eq!(grams(&sheet, LineId::Water) / fibre, 0.03, max_relative = 1e-12);
}

#[test]
fn the_press_factor_falls_back_on_the_line() {
    let recipe = recipe();
    let case = work_out(&recipe).case.unwrap();
    let on_line = case.figure(haulm::domain::Figure::PressTime).unwrap();
    let time = sheet(&recipe, &bare_sheet()).press_time.unwrap();
    assert_relative_eq!(time.value, on_line.base, max_relative = 1e-12);
}

#[test]
fn too_little_for_the_balance() {
    let mut draft = bare_sheet();
    type_in(&mut draft, WeighField::LiquidMinimum, "20");
    let (sheet, findings) = made_out(&recipe(), &draft);
    let sheet = sheet.unwrap();
    let at = |id| findings.iter().find(|finding| finding.place == TrialPlace::Line(LineId::Liquid(LiquidId(id))));
    // Hardener: 1.9 kg of fibre take 11 g; two boards take 22 g.
    let Some(TrialProblem::BelowMinimum { mass, minimum, boards, dilute }) = at(2).map(|finding| finding.what) else {
        panic!("{findings:?}")
    };
    assert!(mass.base < minimum.base);
    assert_relative_eq!(boards.unwrap().base, (minimum.base / mass.base).ceil(), max_relative = 1e-12);
    // There is water for it: thinned to such solids, the spray weighs 20 g.
    let water = Mass::new::<gram>(20.0 - grams(&sheet, LineId::Liquid(LiquidId(2))));
    assert!(water < sheet.line(LineId::Water).unwrap().mass);
    assert_relative_eq!(dilute.unwrap().base, 0.4 * mass.base / minimum.base, max_relative = 1e-12);
    type_in(&mut draft, WeighField::Boards, &boards.unwrap().base.to_string());
    assert!(!made_out(&recipe(), &draft).1.iter().any(|f| f.place == TrialPlace::Line(LineId::Liquid(LiquidId(2)))));
}

/// Water must not meet an isocyanate before the nozzle.
#[test]
fn an_isocyanate_is_never_to_be_thinned() {
    let mut recipe = recipe();
    recipe.liquids = vec![liquid(1, "0.3", "100", "1230")];
    let mut draft = bare_sheet();
    type_in(&mut draft, WeighField::LiquidMinimum, "10");
    let dilution = |recipe: &Draft| match made_out(recipe, &draft).1.iter().find_map(|finding| match finding.what {
        TrialProblem::BelowMinimum { dilute, .. } if finding.place == TrialPlace::Line(LineId::Liquid(LiquidId(1))) => {
            Some(dilute)
        }
        _ => None,
    }) {
        Some(dilution) => dilution,
        None => panic!("said"),
    };
    assert!(dilution(&recipe).is_some());
    recipe.liquids[0].substance = Substance::Pmdi;
    assert!(dilution(&recipe).is_none());
}

#[test]
fn a_small_blender_splits_the_batch() {
    let mut draft = bare_sheet();
    type_in(&mut draft, WeighField::Boards, "3");
    let whole = sheet(&recipe(), &draft);
    type_in(&mut draft, WeighField::Capacity, "4 kg");
    let (split, findings) = made_out(&recipe(), &draft);
    let split = split.unwrap();
    assert_eq!(split.batches, (whole.batch.value / 4.0).ceil() as u32);
    assert!(split.batches > 1 && split.batch.value <= 4.0);
    assert!(findings.iter().any(|finding| matches!(finding.what, TrialProblem::Split { .. })));
    type_in(&mut draft, WeighField::Capacity, "1 g");
    let (none, findings) = made_out(&recipe(), &draft);
    assert!(none.is_none());
    assert!(findings.iter().any(|finding| matches!(finding.what, TrialProblem::TooManyBatches { .. })));
}

#[test]
fn rounding_shifts_a_small_dose() {
    let mut draft = bare_sheet();
    type_in(&mut draft, WeighField::LiquidStep, "5");
    let (sheet, findings) = made_out(&recipe(), &draft);
    let dose = *sheet.unwrap().actual.dose(LiquidId(2)).unwrap();
    assert!(dose.deviation.value.abs() > 0.01);
    assert!(findings.iter().any(|finding| matches!(finding.what, TrialProblem::RoundingShifts { .. })));
    // On the resin's solids as both were rounded.
    let shift = dose.actual_as_entered.unwrap().base - dose.target_as_entered.unwrap().base;
    assert!(shift.abs() > 1e-6);
}

#[test]
fn spray_by_mass_takes_the_thinning_with_it() {
    let mut recipe = recipe();
    recipe.liquids[0].spray_solids.text = "50".to_owned();
    let mut draft = bare_sheet();
    draft.spray_way = SprayWay::Mass;
    type_in(&mut draft, WeighField::SprayMass, "100");
    let sheet = sheet(&recipe, &draft);
    let resin = LineId::Liquid(LiquidId(1));
    let expected = (grams(&sheet, resin) + grams(&sheet, LineId::Thinning(LiquidId(1)))) / 100.0 * 60.0;
    assert_relative_eq!(sheet.line(resin).unwrap().spray_time.unwrap().value, expected, max_relative = 1e-12);
    let total: f64 = sheet.lines.iter().filter_map(|line| line.spray_time).map(|time| time.value).sum();
    assert_relative_eq!(sheet.spray_time.unwrap().value, total, max_relative = 1e-12);
}

/// Sheets of every shape, over recipes of every shape.
pub fn any_sheet() -> impl Strategy<Value = SheetDraft> {
    let numbers = (
        50.0..2_000.0_f64,
        50.0..2_000.0_f64,
        1..13_u32,
        0.0..40.0_f64,
        0.0..30.0_f64,
        prop::option::of(500.0..60_000.0_f64),
        prop::sample::select(vec!["0.001", "0.01", "0.1", "1", "5", ""]),
        prop::sample::select(vec!["0.1", "1", "10", ""]),
        10.0..900.0_f64,
    );
    let ways = (any::<bool>(), any::<bool>(), any::<bool>(), any::<bool>());
    (numbers, ways).prop_map(|(numbers, ways)| {
        let mut draft = bare_sheet();
        type_in(&mut draft, WeighField::MatLength, &format!("{:.2}", numbers.0));
        type_in(&mut draft, WeighField::MatWidth, &format!("{:.2}", numbers.1));
        type_in(&mut draft, WeighField::Boards, &numbers.2.to_string());
        type_in(&mut draft, WeighField::Overage, &format!("{:.2}", numbers.3));
        type_in(&mut draft, WeighField::WallLoss, &format!("{:.2}", numbers.4));
        if let Some(capacity) = numbers.5 {
            type_in(&mut draft, WeighField::Capacity, &format!("{capacity:.0}"));
        }
        type_in(&mut draft, WeighField::LiquidStep, numbers.6);
        type_in(&mut draft, WeighField::FibreStep, numbers.7);
        for field in [WeighField::SprayVolume, WeighField::SprayMass] {
            type_in(&mut draft, field, &format!("{:.1}", numbers.8));
        }
        type_in(&mut draft, WeighField::PressFactor, "11");
        if ways.0 {
            draft.overage_of = OverageOf::OvenDry;
        }
        if ways.1 {
            draft.overage_on = OverageOn::Fibre;
        }
        if ways.2 {
            draft.spray_way = SprayWay::Mass;
        }
        if ways.3 {
            draft.water_place = WaterPlace::First;
        }
        draft
    })
}

pub fn any_made_out() -> impl Strategy<Value = WeighSheet> {
    (any_recipe(), any_sheet()).prop_filter_map("can be made out", |(recipe, draft)| made_out(&recipe, &draft).0)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn batches_sum_to_the_whole(sheet in any_made_out()) {
        let batches = f64::from(sheet.batches);
        for line in &sheet.lines {
            assert_relative_eq!(line.mass.value * batches, sheet.plan.whole(line.id).value, max_relative = 1e-12);
        }
        let sum: f64 = sheet.lines.iter().map(|line| line.mass.value).sum();
        assert_relative_eq!(sum, sheet.batch.value, max_relative = 1e-12);
        if let Some(capacity) = sheet.plan.capacity {
            prop_assert!(sheet.batch.value <= capacity.value * (1.0 + 1e-9));
        }
    }

    #[test]
    fn rounding_stays_within_half_a_step(sheet in any_made_out()) {
        for line in &sheet.lines {
            let step = sheet.plan.balance(line.id).step.map_or(0.0, |step| step.value);
            let off = (line.rounded.value - line.mass.value).abs();
            prop_assert!(off <= 0.5 * step * (1.0 + 1e-9), "{off} {step}");
        }
        // A dose is off by no more than what half a step of its liquid and of the fibre make.
        let share = |id: LineId| sheet.line(id).map_or(0.0, |line| {
            sheet.plan.balance(id).step.map_or(0.0, |step| 0.5 * step.value / line.mass.value)
        });
        let fibre = share(LineId::Fibre);
        for dose in &sheet.actual.doses {
            let most = (1.0 + share(LineId::Liquid(dose.id))) / (1.0 - fibre) - 1.0;
            prop_assert!(dose.deviation.value.abs() <= most * (1.0 + 1e-6) + 1e-12, "{dose:?} {most}");
        }
    }

    /// Without rounding, the masses give the target: doses, moisture, and furnish for the boards.
    #[test]
    fn exact_masses_give_what_was_wanted(recipe in any_recipe(), mut draft in any_sheet()) {
        type_in(&mut draft, WeighField::FibreStep, "");
        type_in(&mut draft, WeighField::LiquidStep, "");
        let sheet = something(made_out(&recipe, &draft).0)?;
        for dose in &sheet.actual.doses {
            assert_relative_eq!(dose.actual.value, dose.target.value, max_relative = 1e-9, epsilon = 1e-15);
            assert_relative_eq!(
                dose.actual_as_entered.map_or(0.0, |amount| amount.base),
                dose.target_as_entered.map_or(0.0, |amount| amount.base),
                max_relative = 1e-9
            );
        }
        let moisture = sheet.plan.case.solved.water.mat.dry_basis().value;
        assert_relative_eq!(sheet.actual.mat_moisture.value, moisture, max_relative = 1e-9, epsilon = 1e-12);
        let boards = f64::from(sheet.plan.boards) / f64::from(sheet.batches);
        let needed = boards * sheet.mat.oven_dry.value * sheet.plan.furnish_factor().value;
        assert_relative_eq!(sheet.actual.furnish.value, needed, max_relative = 1e-9);
    }

    #[test]
    fn nothing_typed_brings_it_down(recipe in crate::support::anything(), edits in prop::collection::vec((0..WeighField::ALL.len(), ".{0,8}|[0-9.,e-]{1,6}", 0..Unit::ALL.len()), 0..10)) {
        let mut draft = bare_sheet();
        for (at, text, unit) in edits {
            let entry = draft.entry_mut(WeighField::ALL[at]);
            entry.text = text;
            entry.unit = Unit::ALL[unit];
        }
        let (sheet, findings) = made_out(&recipe, &draft);
        match sheet {
            Some(sheet) => prop_assert!(sheet.figures().all(|(_, amount)| amount.base.is_finite())),
            None => prop_assert!(!findings.is_empty()),
        }
    }
}
