//! Targets and statistics by run and combination: never pooled, and resting on what was really laid.

use crate::sample::{bare_sheet, recipe, sheet, type_in};
use approx::assert_relative_eq;
use haulm::domain::trial::boards::density::density_target;
use haulm::domain::trial::boards::group::{BoardMade, GroupBy, GroupKey, groups};
use haulm::domain::trial::boards::measured::{MeasuredBoard, measure};
use haulm::domain::trial::boards::property::Tail;
use haulm::domain::trial::series::run::Run;
use haulm::domain::trial::{BoardDraft, BoardId, Property, WeighField, WeighSheet};

/// A board 450 × 450 mm by its mass, thickness and moisture.
fn board(id: u16, grams: f64, thickness: f64, moisture: &str, laid: &str) -> MeasuredBoard {
    let mut draft = BoardDraft::blank(BoardId(id));
    draft.mass.text = format!("{grams}");
    draft.length.text = "450".to_owned();
    draft.width.text = "450".to_owned();
    draft.thickness[0].text = format!("{thickness}");
    draft.moisture.text = moisture.to_owned();
    draft.laid.text = laid.to_owned();
    measure(&draft).board
}

/// Mass of a 450 × 450 × 16 mm board of 700 kg/m³ at 7 %: 2 268 g.
const ON_TARGET: f64 = 700.0 * 0.45 * 0.45 * 0.016 * 1e3;

/// By hand: the board has its mass but is 17 instead of 16 mm thick. Its density misses by 16/17 − 1 = −5.88 %, all of it
/// from the thickness; more furnish would only make it heavier.
#[test]
fn a_thick_board_is_not_corrected_with_furnish() {
    let sheet = sheet(&recipe(), &bare_sheet());
    let target = density_target(&sheet, &[board(1, ON_TARGET, 17.0, "7", "")]).unwrap();
    assert_relative_eq!(target.correction.value, 1.0, max_relative = 1e-12);
    assert_relative_eq!(target.next_mat.value, sheet.mat.moist.value, max_relative = 1e-12);
    assert_relative_eq!(target.deviation.value, 16.0 / 17.0 - 1.0, max_relative = 1e-12);
    assert_relative_eq!(target.split.thickness.value, 16.0 / 17.0 - 1.0, max_relative = 1e-12);
    assert!(target.split.mass.value.abs() < 1e-12 && target.split.moisture.value.abs() < 1e-12);
}

/// By hand: 5 % short in mass, 0.5 mm thick, 2 points of moisture above 7 %. The parts add up to the whole.
#[test]
fn the_deviation_is_split_into_mass_thickness_and_moisture() {
    let sheet = sheet(&recipe(), &bare_sheet());
    let grams = 0.95 * ON_TARGET / 1.07 * 1.09;
    let target = density_target(&sheet, &[board(1, grams, 16.5, "9", "")]).unwrap();
    let (mass, thickness, moisture): (f64, f64, f64) = (0.95, 16.0 / 16.5, 1.09 / 1.07);
    let whole = mass * thickness * moisture;
    let scale = (whole - 1.0) / whole.ln();
    assert_relative_eq!(target.split.total.value, whole - 1.0, max_relative = 1e-9);
    assert_relative_eq!(target.split.mass.value, scale * mass.ln(), max_relative = 1e-9);
    assert_relative_eq!(target.split.thickness.value, scale * thickness.ln(), max_relative = 1e-9);
    assert_relative_eq!(target.split.moisture.value, scale * moisture.ln(), max_relative = 1e-9);
    let sum = target.split.mass + target.split.thickness + target.split.moisture;
    assert_relative_eq!(sum.value, target.split.total.value, max_relative = 1e-9);
    assert_relative_eq!(target.correction.value, 1.0 / 0.95, max_relative = 1e-9);
}

/// 100 g too little were laid, and the board is short by as much: the next mat is the sheet's, not more than that.
#[test]
fn the_next_mat_rests_on_what_was_laid() {
    let sheet = sheet(&recipe(), &bare_sheet());
    let planned = sheet.mat.moist.value * 1e3;
    let laid = planned - 100.0;
    let short = ON_TARGET * laid / planned;
    let target = density_target(&sheet, &[board(1, short, 16.0, "7", &format!("{laid}"))]).unwrap();
    assert_relative_eq!(target.laid.unwrap().value * 1e3, laid, max_relative = 1e-12);
    assert_relative_eq!(target.next_mat.value * 1e3, planned, max_relative = 1e-9);
    let unknown = density_target(&sheet, &[board(1, short, 16.0, "7", "")]).unwrap();
    assert!(unknown.laid.is_none() && unknown.next_mat.value * 1e3 > planned + 90.0);
}

/// Sanded boards are compared with the finished thickness, others with the stops.
#[test]
fn sanded_boards_have_the_finished_thickness_as_target() {
    let mut recipe = recipe();
    recipe.plain.sand_top.text = "0.5".to_owned();
    recipe.plain.sand_bottom.text = "0.5".to_owned();
    let sheet = sheet(&recipe, &bare_sheet());
    let raw = density_target(&sheet, &[board(1, ON_TARGET / 16.0 * 17.0, 17.0, "7", "")]).unwrap();
    assert_relative_eq!(raw.correction.value, 1.0, max_relative = 1e-9);
    let sanded = MeasuredBoard { sanded: true, ..board(1, ON_TARGET, 16.0, "7", "") };
    let sanded = density_target(&sheet, &[sanded]).unwrap();
    assert_relative_eq!(sanded.correction.value, 1.0, max_relative = 1e-9);
    assert_relative_eq!(sanded.split.thickness.value, 0.0, epsilon = 1e-12);
}

fn of_density(text: &str) -> WeighSheet {
    let mut draft = bare_sheet();
    type_in(&mut draft, WeighField::BoardDensity, text);
    sheet(&recipe(), &draft)
}

fn run(place: u16, levels: &[u8], replicate: u16) -> Run {
    Run { place, standard: 1, replicate, block: 1, levels: levels.to_vec(), made: None }
}

/// Two combinations at 600 and 700 kg/m³, two replicates each. Pooled, their mean would be 650 and their SD 58: neither
/// belongs to any board.
#[test]
fn different_targets_are_never_pooled() {
    let (low, high) = (of_density("600"), of_density("700"));
    let own = |place: u16, level: u8, density: f64, replicate: u16| {
        let mut board = board(place, density / 700.0 * ON_TARGET, 16.0, "7", "");
        board.run = Some(place);
        let sheet = if level == 0 { low.clone() } else { high.clone() };
        BoardMade { board, run: Some(run(place, &[level], replicate)), sheet: Some(sheet) }
    };
    let made = [own(1, 0, 606.0, 1), own(2, 1, 693.0, 1), own(3, 1, 707.0, 2), own(4, 0, 594.0, 2)];
    let all = groups(&made, GroupBy::Combination);
    assert_eq!(all.len(), 2);
    for (group, density) in all.iter().zip([600.0, 700.0]) {
        let result = group.results.iter().find(|result| result.property == Property::Density).unwrap();
        assert_relative_eq!(result.summary.mean, density, max_relative = 1e-9);
        assert!(result.summary.deviation.unwrap() < 10.0);
        assert_relative_eq!(group.density.unwrap().target, density, max_relative = 1e-9);
        assert_relative_eq!(group.density.unwrap().correction.value, 1.0, max_relative = 1e-9);
    }
    assert_eq!(all[0].key, GroupKey::Combination(vec![0]));
    let runs = groups(&made, GroupBy::Run);
    assert_eq!(runs.iter().map(|group| group.boards.len()).collect::<Vec<_>>(), [1, 1, 1, 1]);
}

/// The same levels, but the recipe's density was changed between: two targets, two groups.
#[test]
fn the_same_levels_with_another_target_stand_apart() {
    let own = |place: u16, sheet: WeighSheet| BoardMade {
        board: MeasuredBoard { run: Some(place), ..board(place, ON_TARGET, 16.0, "7", "") },
        run: Some(run(place, &[0], place)),
        sheet: Some(sheet),
    };
    let made = [own(1, of_density("600")), own(2, of_density("700"))];
    assert_eq!(groups(&made, GroupBy::Combination).len(), 2);
    let base =
        |sheet: WeighSheet| BoardMade { run: None, sheet: Some(sheet), board: board(9, ON_TARGET, 16.0, "7", "") };
    let made = [base(of_density("600")), base(of_density("700"))];
    assert_eq!(
        groups(&made, GroupBy::Run).iter().map(|group| group.key.clone()).collect::<Vec<_>>(),
        [GroupKey::Base, GroupKey::Base]
    );
}

/// The quantile that a requirement is about: lower for strength, upper for swelling, and named so.
#[test]
fn the_quantile_of_each_property_is_on_its_side() {
    use haulm::domain::trial::boards::working::BoardFigure;
    use haulm::ui::text::words;
    for property in Property::ALL {
        let expected = match property {
            Property::BendingStrength | Property::BendingModulus | Property::InternalBond => Some(Tail::Lower),
            Property::Density | Property::OvenDryDensity | Property::Moisture | Property::Thickness => None,
            _ => Some(Tail::Upper),
        };
        assert_eq!(property.tail(), expected);
    }
    let label = |figure| words::bench::board_figure(figure).label;
    let bounds = [BoardFigure::Lower(Property::InternalBond), BoardFigure::Upper(Property::Swelling)].map(label);
    assert_eq!(bounds, ["Lower 95 % quantile", "Upper 95 % quantile"]);
}
