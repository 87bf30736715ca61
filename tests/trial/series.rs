//! A series from its entries: what is refused, what is drawn, and what it takes.

use crate::sample::{bare_sheet, recipe, type_in};
use crate::support::liquid;
use approx::assert_relative_eq;
use haulm::domain::trial::series::draft::{BlockWay, DesignWay, FactorDraft, LevelDraft};
use haulm::domain::trial::series::factor::{Level, OwnFactor};
use haulm::domain::trial::series::field::{FactorId, Of, SeriesField};
use haulm::domain::trial::series::material::{Material, needed, sheets, unsolved};
use haulm::domain::trial::series::runs::{Series, of_run, series};
use haulm::domain::trial::{LineId, SeriesDraft, TrialProblem, WeighField};
use haulm::domain::{Draft, Entry, LiquidId};
use haulm::quantity::Unit;
use proptest::prelude::*;

pub fn factor(id: u8, of: Of, unit: Unit, levels: &[&str]) -> FactorDraft {
    let levels =
        levels.iter().map(|text| LevelDraft { value: Entry::typed(*text, unit), ..LevelDraft::blank(unit) }).collect();
    FactorDraft { id: FactorId(id), of, own: OwnFactor::default(), levels }
}

pub fn dose_and_density() -> SeriesDraft {
    SeriesDraft {
        factors: vec![
            factor(1, Of::Dose(LiquidId(1)), Unit::Percent, &["10", "14"]),
            factor(2, Of::BoardDensity, Unit::KilogramPerCubicMetre, &["650", "750"]),
        ],
        ..SeriesDraft::default()
    }
}

fn drawn(draft: &SeriesDraft) -> Series {
    let outcome = series(&recipe(), draft, &[]);
    outcome.series.unwrap_or_else(|| panic!("{:?}", outcome.findings))
}

fn said(draft: &SeriesDraft) -> Vec<TrialProblem> {
    said_of(&recipe(), draft)
}

fn said_of(recipe: &Draft, draft: &SeriesDraft) -> Vec<TrialProblem> {
    series(recipe, draft, &[]).findings.into_iter().map(|finding| finding.what).collect()
}

#[test]
fn levels_go_into_recipe_and_sheet() {
    let mut draft = dose_and_density();
    draft.factors.push(factor(3, Of::PressFactor, Unit::SecondPerMillimetre, &["9", "13"]));
    draft.factors.push(factor(4, Of::MatMoisture, Unit::PercentDryBasis, &["10", "13"]));
    let series = drawn(&draft);
    assert_eq!(series.runs.len(), 16);
    let mut sheet = bare_sheet();
    type_in(&mut sheet, WeighField::BoardDensity, "500");
    for run in &series.runs {
        let (recipe, sheet) = of_run(&recipe(), &sheet, &draft, run);
        let text = |factor: usize| draft.factors[factor].levels[usize::from(run.levels[factor])].value.text.as_str();
        assert_eq!(recipe.liquids[0].dose.text, text(0));
        assert_eq!(recipe.plain.board_density.text, text(1));
        assert!(sheet.entry(WeighField::BoardDensity).is_blank(), "the sheet must not hide the factor");
        assert_eq!(sheet.entry(WeighField::PressFactor).text, text(2));
        assert_eq!(recipe.plain.mat_moisture.text, text(3));
    }
}

#[test]
fn binder_systems_as_a_factor() {
    let mut system = factor(1, Of::System, Unit::One, &["", ""]);
    system.levels[0].name = "UF".to_owned();
    system.levels[0].liquids = recipe().liquids;
    system.levels[1].name = "pMDI".to_owned();
    system.levels[1].liquids = vec![liquid(1, "4", "100", "1230")];
    let draft = SeriesDraft { factors: vec![system], ..SeriesDraft::default() };
    let series = drawn(&draft);
    let sheets = sheets(&recipe(), &bare_sheet(), &draft, &series);
    assert!(unsolved(&sheets).is_empty());
    let needed = needed(&series, &sheets);
    let materials: Vec<Material> = needed.iter().map(|needed| needed.material).collect();
    let id = LiquidId;
    assert_eq!(
        materials,
        [
            Material::Fibre,
            Material::Liquid(Some(0), id(1)),
            Material::Liquid(Some(0), id(2)),
            Material::Liquid(Some(0), id(3)),
            Material::Liquid(Some(1), id(1)),
            Material::Water
        ]
    );
    let mut beside = draft.clone();
    beside.factors.push(factor(2, Of::Dose(id(1)), Unit::Percent, &["10", "14"]));
    assert!(said(&beside).contains(&TrialProblem::DoseBesideSystem));
}

#[test]
fn material_is_the_sum_of_the_sheets_and_the_margin() {
    let mut draft = dose_and_density();
    draft.replicates.text = "3".to_owned();
    draft.margin.text = "20".to_owned();
    let series = drawn(&draft);
    let mut sheet = bare_sheet();
    type_in(&mut sheet, WeighField::Capacity, "2 kg");
    let sheets = sheets(&recipe(), &sheet, &draft, &series);
    let of = |id: LineId| -> f64 {
        let one = |run: &haulm::domain::trial::series::material::RunSheet| {
            let sheet = run.sheet.as_ref().unwrap();
            assert!(sheet.batches > 1);
            f64::from(sheet.batches) * sheet.line(id).map_or(0.0, |line| line.rounded.value)
        };
        1.2 * sheets.iter().map(one).sum::<f64>()
    };
    let needed = needed(&series, &sheets);
    let mass = |material| needed.iter().find(|needed| needed.material == material).unwrap().mass.value;
    assert_relative_eq!(mass(Material::Fibre), of(LineId::Fibre), max_relative = 1e-12);
    for id in [1, 2, 3].map(LiquidId) {
        assert_relative_eq!(mass(Material::Liquid(None, id)), of(LineId::Liquid(id)), max_relative = 1e-12);
    }
    assert_relative_eq!(mass(Material::Water), of(LineId::Water), max_relative = 1e-12);
}

#[test]
fn blocks_hold_their_runs() {
    let mut draft = dose_and_density();
    draft.replicates.text = "2".to_owned();
    draft.blocks = BlockWay::Replicate;
    let series = drawn(&draft);
    assert_eq!(series.blocks, 2);
    assert!(series.runs[..4].iter().all(|run| (run.block, run.replicate) == (1, 1)));

    draft.factors.push(factor(3, Of::PressFactor, Unit::SecondPerMillimetre, &["9", "13"]));
    draft.blocks = BlockWay::Halves;
    let series = drawn(&draft);
    assert_eq!((series.blocks, series.runs.len()), (4, 16));
    for block in 1..=4 {
        assert_eq!(series.runs.iter().filter(|run| run.block == block).count(), 4);
    }
    // The runs of a half share the sign of ABC.
    let word = series.block_words[0];
    assert_eq!(word.to_text(), "ABC");
    for run in &series.runs {
        let first = series.runs.iter().find(|other| other.block == run.block).unwrap();
        assert_eq!(word.sign(&run.levels), word.sign(&first.levels));
    }
}

/// Press temperature in °C and the fibre lot in words, beside a computed dose.
pub fn own_factors() -> SeriesDraft {
    let own = |id: u8, name: &str, unit: &str, levels: &[&str]| FactorDraft {
        own: OwnFactor { name: name.to_owned(), unit: unit.to_owned() },
        ..factor(id, Of::Own(FactorId(id)), Unit::One, levels)
    };
    SeriesDraft {
        factors: vec![
            factor(1, Of::Dose(LiquidId(1)), Unit::Percent, &["10", "14"]),
            own(2, "Press temperature", "°C", &["180", " 200,0 °C "]),
            own(3, "Fibre lot", "", &["A", "B"]),
        ],
        ..SeriesDraft::default()
    }
}

/// A half fraction in two blocks, as of computed factors: C = AB, and the levels of what is computed go into the recipe.
#[test]
fn factors_of_any_name_and_unit() {
    let mut draft = own_factors();
    let celsius = |value: f64| Level::Number { value, unit: "°C".to_owned() };
    let text = |text: &str| Level::Text(text.to_owned());
    let full = drawn(&draft);
    assert_eq!(full.factors[1].levels, [celsius(180.0), celsius(200.0)]);
    assert_eq!(full.factors[2].levels, [text("A"), text("B")]);
    assert_eq!(full.runs.len(), 8);
    draft.design = DesignWay::Fraction(1);
    draft.replicates.text = "2".to_owned();
    draft.blocks = BlockWay::Replicate;
    let half = drawn(&draft);
    assert_eq!((half.runs.len(), half.blocks, half.design.notation()), (8, 2, "2^(3\u{2212}1) III".to_owned()));
    assert_eq!(half.design.generators_in_letters(), ["C = AB"]);
    for run in &half.runs {
        let (made, sheet) = of_run(&recipe(), &bare_sheet(), &draft, run);
        assert_eq!(made.liquids[0].dose.text, ["10", "14"][usize::from(run.levels[0])]);
        let mut plain = recipe();
        plain.liquids[0].dose.clone_from(&made.liquids[0].dose);
        assert_eq!((made, sheet), (plain, bare_sheet()), "nothing else changes");
    }
}

#[test]
fn what_is_wrong_with_factors_of_any_name() {
    let spoilt = |spoil: fn(&mut SeriesDraft)| {
        let mut draft = own_factors();
        spoil(&mut draft);
        let outcome = series(&recipe(), &draft, &[]);
        (outcome.series.is_none(), outcome.findings.into_iter().map(|finding| finding.what).collect::<Vec<_>>())
    };
    type Spoilt = (fn(&mut SeriesDraft), TrialProblem);
    let cases: [Spoilt; 5] = [
        (|draft| draft.factors[1].own.name = "  ".to_owned(), TrialProblem::FactorUnnamed),
        (|draft| draft.factors[1].levels[0].value.text = "hot".to_owned(), TrialProblem::LevelNotANumber),
        (|draft| draft.factors[2].levels[1].value.text = " ".to_owned(), TrialProblem::LevelBlank),
        (|draft| draft.factors[1].levels[1].value.text = "180.0".to_owned(), TrialProblem::LevelsAlike),
        (|draft| draft.factors[2].own.name = "press Temperature ".to_owned(), TrialProblem::SameFactor),
    ];
    for (spoil, expected) in cases {
        assert_eq!(spoilt(spoil), (true, vec![expected]));
    }
    // Without a unit, numbers are words too, and no two of them alike as they are written.
    assert!(!spoilt(|draft| draft.factors[1].own.unit.clear()).0);
}

#[test]
fn the_number_of_a_factor_that_boards_were_made_with_is_not_given_again() {
    let draft = own_factors();
    assert_eq!(draft.free_id(&[]), FactorId(4));
    assert_eq!(draft.free_id(&[FactorId(4), FactorId(6)]), FactorId(5));
}

type Case = (fn(&mut SeriesDraft), fn(&TrialProblem) -> bool);

/// What is wrong with a series, and what is said of it.
#[test]
fn what_is_refused() {
    let cases: &[Case] = &[
        (|draft| draft.factors.clear(), |what| *what == TrialProblem::NoFactors),
        (|draft| draft.factors[1].of = draft.factors[0].of, |what| *what == TrialProblem::SameFactor),
        (|draft| draft.factors[0].of = Of::Dose(LiquidId(9)), |what| *what == TrialProblem::FactorMissing),
        (|draft| draft.factors[0].levels[1].value.text = "10.0".to_owned(), |what| *what == TrialProblem::LevelsAlike),
        (|draft| draft.factors[0].levels.truncate(1), |what| *what == TrialProblem::LevelsAlike),
        (
            |draft| draft.factors[0].levels[1].value.text = "ten".to_owned(),
            |what| matches!(what, TrialProblem::Entry(_)),
        ),
        (|draft| draft.replicates.text = "1.5".to_owned(), |what| *what == TrialProblem::NotWhole),
        (|draft| draft.replicates.text = "0".to_owned(), |what| matches!(what, TrialProblem::Entry(_))),
        (|draft| draft.seed.text = "-3".to_owned(), |what| matches!(what, TrialProblem::Entry(_))),
        (|draft| draft.design = DesignWay::Fraction(1), |what| *what == TrialProblem::NoSuchFraction { factors: 2 }),
        (
            |draft| {
                draft.design = DesignWay::Fraction(1);
                draft.factors[0]
                    .levels
                    .push(LevelDraft { value: Entry::typed("12", Unit::Percent), ..LevelDraft::blank(Unit::Percent) });
            },
            |what| *what == TrialProblem::FractionNeedsTwoLevels,
        ),
        (|draft| draft.blocks = BlockWay::Quarters, |what| *what == TrialProblem::BlocksDoNotFit),
        (
            |draft| {
                draft.factors =
                    (1..=9).map(|id| factor(id, Of::Dose(LiquidId(1)), Unit::Percent, &["1", "2"])).collect();
            },
            |what| matches!(what, TrialProblem::TooManyFactors { most: 8 }),
        ),
    ];
    for (spoil, expected) in cases {
        let mut draft = dose_and_density();
        spoil(&mut draft);
        let outcome = series(&recipe(), &draft, &[]);
        assert!(outcome.series.is_none());
        assert!(outcome.findings.iter().any(|finding| expected(&finding.what)), "{:?}", outcome.findings);
    }
}

#[test]
fn too_many_runs_are_counted_before_they_are_made() {
    let mut many = recipe();
    many.liquids = (1..=8).map(|id| liquid(id, "2", "60", "1200")).collect();
    let six = &["1", "2", "3", "4", "5", "6"];
    let draft = SeriesDraft {
        factors: (1..=8).map(|id| factor(id, Of::Dose(LiquidId(id.into())), Unit::Percent, six)).collect(),
        ..SeriesDraft::default()
    };
    assert!(said_of(&many, &draft).contains(&TrialProblem::TooManyRuns { runs: 6_usize.pow(8), most: 256 }));
}

#[test]
fn a_low_resolution_is_said() {
    let mut draft = dose_and_density();
    draft.factors.push(factor(3, Of::PressFactor, Unit::SecondPerMillimetre, &["9", "13"]));
    draft.design = DesignWay::Fraction(1);
    assert!(said(&draft).contains(&TrialProblem::ResolutionThree));
    draft.factors.push(factor(4, Of::MatMoisture, Unit::PercentDryBasis, &["10", "13"]));
    assert!(said(&draft).contains(&TrialProblem::ResolutionFour));
}

#[test]
fn a_run_that_cannot_be_made_out_is_named() {
    let mut sheet = bare_sheet();
    type_in(&mut sheet, WeighField::MatLength, "");
    let draft = dose_and_density();
    let series = drawn(&draft);
    let findings = unsolved(&sheets(&recipe(), &sheet, &draft, &series));
    assert_eq!(findings.len(), 4);
    assert_eq!(findings[2].what, TrialProblem::RunUnsolved { place: 3 });
}

proptest! {
    #[test]
    fn the_order_is_that_of_the_seed_and_holds_every_run_once(seed in 0..1_000_000_u32, replicates in 1..5_u16, blocks in 0..2_usize) {
        let mut draft = dose_and_density();
        draft.seed.text = seed.to_string();
        draft.replicates.text = replicates.to_string();
        draft.blocks = BlockWay::ALL[blocks];
        let series = drawn(&draft);
        prop_assert_eq!(&series, &drawn(&draft));
        let mut seen: Vec<(u16, u16)> = series.runs.iter().map(|run| (run.replicate, run.standard)).collect();
        seen.sort_unstable();
        let all: Vec<(u16, u16)> = (1..=replicates).flat_map(|r| (1..=4).map(move |s| (r, s))).collect();
        prop_assert_eq!(seen, all);
        let places: Vec<u16> = series.runs.iter().map(|run| run.place).collect();
        prop_assert_eq!(places, (1..=4 * replicates).collect::<Vec<_>>());
        for run in &series.runs {
            prop_assert_eq!(&series.design.runs[usize::from(run.standard) - 1], &run.levels);
        }
    }

    #[test]
    fn keys_are_unique(factors in 1..9_u8) {
        let mut keys: Vec<String> = [SeriesField::Replicates, SeriesField::Seed, SeriesField::Margin].map(SeriesField::key).into();
        for factor in 0..factors {
            keys.push(SeriesField::Factor(FactorId(factor)).key());
            keys.extend((0..6).map(|level| SeriesField::Level(FactorId(factor), level).key()));
        }
        let count = keys.len();
        keys.sort_unstable();
        keys.dedup();
        prop_assert_eq!(keys.len(), count);
    }
}
