//! Every message of the bench in words: a snapshot of each, and what holds for all of them.

use crate::boards::{piece, tested};
use crate::sample::{bare_sheet, made_out, recipe, type_in};
use crate::series::{dose_and_density, factor};
use crate::support::liquid;
use crate::words::{sound, written};
use haulm::domain::trial::boards::at_density::AtDensity;
use haulm::domain::trial::boards::field::{BendingField, BoardField, BondField, PieceField, SwellingField};
use haulm::domain::trial::boards::group::GroupKey;
use haulm::domain::trial::boards::measured::measure;
use haulm::domain::trial::boards::requirement_set::RequirementSet;
use haulm::domain::trial::boards::target::{Judged, RequirementDraft};
use haulm::domain::trial::boards::working::BoardFigure;
use haulm::domain::trial::series::draft::{BlockWay, DesignWay};
use haulm::domain::trial::series::effects::{ModelWay, RunResult, Term, effects};
use haulm::domain::trial::series::factor::{Level, OwnFactor};
use haulm::domain::trial::series::field::{FactorId, Of, SeriesField};
use haulm::domain::trial::series::material::Material;
use haulm::domain::trial::series::runs::series;
use haulm::domain::trial::weigh_sheet::draft::{OverageOf, OverageOn, SprayWay, ThicknessWay, WaterPlace};
use haulm::domain::trial::weigh_sheet::recovery_draft::RecoveryField;
use haulm::domain::trial::weigh_sheet::slip::Slip;
use haulm::domain::trial::weigh_sheet::weighing::{BatchDraft, weigh};
use haulm::domain::trial::weigh_sheet::working::WeighOrigin;
use haulm::domain::trial::{
    BoardDraft, BoardId, LineId, Property, SeriesDraft, SheetDraft, TrialFinding, TrialPlace, TrialProblem, WeighField,
    WeighFigure, WeighLineFigure,
};
use haulm::domain::working::Constant;
use haulm::domain::{Draft, Entry, Grade, LiquidId, What as EntryWhat};
use haulm::quantity::format::DecimalMark;
use haulm::quantity::kind::UnitSystem;
use haulm::quantity::{Amount, Kind, Unit, Units};
use haulm::ui::text::{BenchContext, Context, FieldWords, FigureWords, words};
use std::collections::BTreeSet;
use std::fmt::Write;

/// Everything that may be typed at the bench.
struct Bench {
    recipe: Draft,
    sheet: SheetDraft,
    batch: BatchDraft,
    series: SeriesDraft,
    boards: Vec<BoardDraft>,
    requirements: Vec<RequirementDraft>,
    units: Units,
}

impl Bench {
    fn new() -> Self {
        let mut second = tested();
        second.id = BoardId(2);
        second.name = "B-7".to_owned();
        Self {
            recipe: recipe(),
            sheet: bare_sheet(),
            batch: BatchDraft::default(),
            series: dose_and_density(),
            boards: vec![tested(), second],
            requirements: Vec::new(),
            units: Units::default(),
        }
    }

    fn context(&self) -> BenchContext<'_> {
        BenchContext {
            plain: Context { units: &self.units, draft: &self.recipe, currency: "€" },
            sheet: &self.sheet,
            batch: Some(&self.batch),
            recovered: None,
            series: &self.series,
            boards: &self.boards,
            requirements: &self.requirements,
        }
    }

    fn say(&self, findings: &[TrialFinding]) -> String {
        let mut text = String::new();
        for finding in findings {
            let message = words::bench::finding(finding, &self.context());
            write!(text, "  [{}]\n{}", words::grade(finding.grade), written(&message)).unwrap();
        }
        text
    }
}

fn amount(kind: Kind, value: f64, unit: Unit) -> Amount {
    Amount::new(kind, value, unit)
}

fn grams(value: f64) -> Amount {
    amount(Kind::BenchMass, value, Unit::Gram)
}

/// One of each finding.
fn every() -> Vec<TrialFinding> {
    let hardener = TrialPlace::Line(LineId::Liquid(LiquidId(2)));
    let factor = TrialPlace::Series(SeriesField::Factor(FactorId(1)));
    let bond = TrialPlace::Property(Property::InternalBond);
    let strength = |value| amount(Kind::Strength, value, Unit::NewtonPerSquareMillimetre);
    let density = |value| amount(Kind::BoardDensity, value, Unit::KilogramPerCubicMetre);
    let dose = |value| amount(Kind::Dose, value, Unit::Percent);
    let count = |value| Amount::from_base(Kind::Count, value);
    let dry = TrialPlace::Board(BoardId(2), BoardField::Piece(0, PieceField::Dry));
    let board = |field| TrialPlace::Board(BoardId(2), field);
    let slip = |slip| TrialProblem::LikelySlip { planned: grams(7.28), entered: grams(72.8), slip };
    let newton = amount(Kind::Force, 1_375.0, Unit::Newton);
    let extent = amount(Kind::BenchExtent, 320.0, Unit::Millimetre);
    let below = |boards: Option<f64>, dilute: Option<f64>| TrialProblem::BelowMinimum {
        mass: grams(0.431),
        minimum: grams(2.0),
        boards: boards.map(count),
        dilute: dilute.map(|solids| amount(Kind::Solids, solids, Unit::Percent)),
    };
    let too_wet = |way_out: Option<f64>| TrialProblem::TooWet {
        excess: grams(42.0),
        mat: amount(Kind::Moisture, 14.2, Unit::PercentDryBasis),
        way_out: way_out.map(|value| amount(Kind::Moisture, value, Unit::PercentDryBasis)),
    };
    let list = [
        (TrialPlace::Field(WeighField::Capacity), TrialProblem::Entry(EntryWhat::Missing)),
        (TrialPlace::Field(WeighField::Boards), TrialProblem::NotWhole),
        (TrialPlace::Sheet, TrialProblem::RecipeUnsolved),
        (TrialPlace::Sheet, TrialProblem::OutOfRange),
        (TrialPlace::Sheet, too_wet(Some(1.5))),
        (TrialPlace::Sheet, too_wet(None)),
        (TrialPlace::Sheet, TrialProblem::Split { batches: 2, boards: Amount::from_base(Kind::Ratio, 2.0) }),
        (TrialPlace::Sheet, TrialProblem::Split { batches: 2, boards: Amount::from_base(Kind::Ratio, 1.5) }),
        (TrialPlace::Field(WeighField::Capacity), TrialProblem::TooManyBatches { whole: grams(7_300.0) }),
        (hardener, below(Some(5.0), Some(8.6))),
        (hardener, below(Some(5.0), None)),
        (hardener, below(None, Some(8.6))),
        (hardener, below(None, None)),
        (TrialPlace::Line(LineId::Fibre), below(None, None)),
        (hardener, TrialProblem::RoundingShifts { target: dose(0.24), actual: dose(0.2) }),
        (
            hardener,
            TrialProblem::WeighedOver { scale: Amount::from_base(Kind::Ratio, 1.083), accepted: Some(dose(0.26)) },
        ),
        (TrialPlace::Sheet, TrialProblem::OverCapacity { mass: grams(5_230.0), capacity: grams(5_000.0) }),
        (
            TrialPlace::Line(LineId::Water),
            TrialProblem::WeighedOver { scale: Amount::from_base(Kind::Ratio, 1.02), accepted: None },
        ),
        (hardener, slip(Slip::Factor { meant: grams(7.28) })),
        (hardener, slip(Slip::Swapped { with: LineId::Liquid(LiquidId(3)) })),
        (hardener, slip(Slip::FarOff)),
        (board(BoardField::Mass), TrialProblem::UnlikelyDensity { value: density(69.0) }),
        (board(BoardField::Bond(0, BondField::Load)), TrialProblem::LoadInKilonewton { meant: newton }),
        (board(BoardField::Bending(0, BendingField::Span)), TrialProblem::SpanInCentimetre { meant: extent }),
        (board(BoardField::Swelling(0, SwellingField::After)), TrialProblem::NegativeSwelling),
        (board(BoardField::Bending(0, BendingField::Span)), TrialProblem::SpanOffStandard { required: extent }),
        (
            TrialPlace::Recovery(RecoveryField::Mass),
            TrialProblem::RecoveredTooMuch { put_in: grams(2_015.0), recovered: grams(2_140.0) },
        ),
        (factor, TrialProblem::SameFactor),
        (factor, TrialProblem::LevelsAlike),
        (factor, TrialProblem::FactorMissing),
        (factor, TrialProblem::DoseBesideSystem),
        (factor, TrialProblem::FactorUnnamed),
        (TrialPlace::Series(SeriesField::Level(FactorId(1), 0)), TrialProblem::LevelBlank),
        (TrialPlace::Series(SeriesField::Level(FactorId(1), 0)), TrialProblem::LevelNotANumber),
        (TrialPlace::Design, TrialProblem::NoFactors),
        (TrialPlace::Design, TrialProblem::TooManyFactors { most: 8 }),
        (TrialPlace::Design, TrialProblem::TooManyRuns { runs: 729, most: 256 }),
        (TrialPlace::Design, TrialProblem::FractionNeedsTwoLevels),
        (TrialPlace::Design, TrialProblem::NoSuchFraction { factors: 2 }),
        (TrialPlace::Design, TrialProblem::BlocksDoNotFit),
        (TrialPlace::Design, TrialProblem::ResolutionThree),
        (TrialPlace::Design, TrialProblem::ResolutionFour),
        (TrialPlace::Design, TrialProblem::BlockHidesInteraction),
        (TrialPlace::Design, TrialProblem::RunUnsolved { place: 3 }),
        (TrialPlace::Design, TrialProblem::MadeRunsStay { made: 3, open: 5 }),
        (TrialPlace::Design, TrialProblem::MadeRunsStay { made: 1, open: 1 }),
        (TrialPlace::Design, TrialProblem::RunsOutsideDesign { count: 1 }),
        (TrialPlace::Design, TrialProblem::RunsOutsideDesign { count: 2 }),
        (dry, TrialProblem::DryAboveMoist),
        (bond, TrialProblem::TooFewBoards),
        (bond, TrialProblem::MissesRequirement { value: strength(0.41), required: strength(0.55) }),
        (
            TrialPlace::Property(Property::Density),
            TrialProblem::OffTarget { value: density(652.0), target: density(700.0) },
        ),
        (
            TrialPlace::Board(BoardId(1), BoardField::Piece(2, PieceField::Position)),
            TrialProblem::UnevenProfile {
                deviation: amount(Kind::Share, -8.4, Unit::Percent),
                kind: haulm::domain::BoardKind::Fibreboard,
            },
        ),
        (
            TrialPlace::Board(BoardId(1), BoardField::Piece(2, PieceField::Position)),
            TrialProblem::UnevenProfile {
                deviation: amount(Kind::Share, 11.2, Unit::Percent),
                kind: haulm::domain::BoardKind::Particleboard,
            },
        ),
        (bond, TrialProblem::RunsMissing { count: 1 }),
        (bond, TrialProblem::RunsMissing { count: 3 }),
        (bond, TrialProblem::BoardsWithoutRun { count: 1 }),
        (bond, TrialProblem::BoardsWithoutRun { count: 2 }),
        (bond, TrialProblem::TooFewResults),
        (bond, TrialProblem::NoVariation),
        (bond, TrialProblem::NoFreedom),
    ];
    list.into_iter().map(|(place, what)| TrialFinding { grade: Grade::Unusual, place, what }).collect()
}

/// The variant's number. A new one does not compile until it is listed here, and the test below fails until it
/// is in [`every`].
const fn number(what: &TrialProblem) -> usize {
    match what {
        TrialProblem::Entry(_) => 0,
        TrialProblem::NotWhole => 1,
        TrialProblem::RecipeUnsolved => 2,
        TrialProblem::OutOfRange => 3,
        TrialProblem::Split { .. } => 4,
        TrialProblem::TooManyBatches { .. } => 5,
        TrialProblem::BelowMinimum { .. } => 6,
        TrialProblem::RoundingShifts { .. } => 7,
        TrialProblem::WeighedOver { .. } => 8,
        TrialProblem::OverCapacity { .. } => 9,
        TrialProblem::SameFactor => 10,
        TrialProblem::LevelsAlike => 11,
        TrialProblem::FactorMissing => 12,
        TrialProblem::DoseBesideSystem => 13,
        TrialProblem::NoFactors => 14,
        TrialProblem::TooManyFactors { .. } => 15,
        TrialProblem::TooManyRuns { .. } => 16,
        TrialProblem::FractionNeedsTwoLevels => 17,
        TrialProblem::NoSuchFraction { .. } => 18,
        TrialProblem::BlocksDoNotFit => 19,
        TrialProblem::ResolutionThree => 20,
        TrialProblem::ResolutionFour => 21,
        TrialProblem::BlockHidesInteraction => 22,
        TrialProblem::RunUnsolved { .. } => 23,
        TrialProblem::DryAboveMoist => 24,
        TrialProblem::TooFewBoards => 25,
        TrialProblem::MissesRequirement { .. } => 26,
        TrialProblem::OffTarget { .. } => 27,
        TrialProblem::UnevenProfile { .. } => 28,
        TrialProblem::RunsMissing { .. } => 29,
        TrialProblem::BoardsWithoutRun { .. } => 30,
        TrialProblem::TooFewResults => 31,
        TrialProblem::NoVariation => 32,
        TrialProblem::NoFreedom => 33,
        TrialProblem::TooWet { .. } => 34,
        TrialProblem::MadeRunsStay { .. } => 35,
        TrialProblem::RunsOutsideDesign { .. } => 36,
        TrialProblem::LikelySlip { .. } => 37,
        TrialProblem::UnlikelyDensity { .. } => 38,
        TrialProblem::LoadInKilonewton { .. } => 39,
        TrialProblem::SpanInCentimetre { .. } => 40,
        TrialProblem::NegativeSwelling => 41,
        TrialProblem::SpanOffStandard { .. } => 42,
        TrialProblem::RecoveredTooMuch { .. } => 43,
        TrialProblem::FactorUnnamed => 44,
        TrialProblem::LevelBlank => 45,
        TrialProblem::LevelNotANumber => 46,
    }
}

#[test]
fn every_finding_has_words() {
    let findings = every();
    let seen: BTreeSet<usize> = findings.iter().map(|finding| number(&finding.what)).collect();
    assert_eq!(seen, (0..=46).collect());
    let told = Bench::new().say(&findings);
    assert!(!told.contains("something to look at"), "{told}");
    snapshot!("bench", "findings", told);
}

/// The same in customary units, with a comma.
#[test]
fn findings_in_customary_units() {
    let mut bench = Bench::new();
    bench.units.set_system(UnitSystem::Us);
    bench.units.mark = DecimalMark::Comma;
    let numbers: Vec<TrialFinding> =
        every().into_iter().filter(|finding| matches!(number(&finding.what), 5 | 6 | 9 | 26 | 27)).collect();
    snapshot!("bench", "findings_us", bench.say(&numbers));
}

/// What is typed wrong, box by box, from the text to the message.
#[test]
fn entries_in_words() {
    let mut bench = Bench::new();
    let mut text = String::new();
    for (field, typed) in [
        (WeighField::MatLength, ""),
        (WeighField::MatWidth, "45O"),
        (WeighField::Boards, "2.5"),
        (WeighField::Boards, "1,234"),
        (WeighField::Overage, "150"),
        (WeighField::Overage, "25"),
        (WeighField::WallLoss, "100"),
        (WeighField::Capacity, "5 L"),
        (WeighField::LiquidStep, "0"),
        (WeighField::PressFactor, "45"),
        (WeighField::SprayVolume, "5000"),
        (WeighField::FibreMoisture, "-1"),
        (WeighField::BoardDensity, "0.7"),
    ] {
        bench.sheet = bare_sheet();
        type_in(&mut bench.sheet, field, typed);
        let findings = made_out(&bench.recipe, &bench.sheet).1;
        writeln!(text, "{}: “{typed}”\n{}", field.box_key(), bench.say(&findings)).unwrap();
    }
    bench.sheet = bare_sheet();
    bench.recipe.liquids[1].solids.text = "140".to_owned();
    writeln!(text, "a recipe that is wrong\n{}", bench.say(&made_out(&bench.recipe, &bench.sheet).1)).unwrap();
    bench.recipe = recipe();
    bench.recipe.plain.fibre_moisture.text = "14".to_owned();
    writeln!(text, "a recipe too wet\n{}", bench.say(&made_out(&bench.recipe, &bench.sheet).1)).unwrap();

    bench.recipe = recipe();
    let sheet = made_out(&bench.recipe, &bench.sheet).0.unwrap();
    bench.batch.entry_mut(LineId::Fibre).unwrap().text = "1.9 kgg".to_owned();
    writeln!(text, "weighed\n{}", bench.say(&weigh(&sheet, &bench.batch).findings)).unwrap();

    bench.series.factors[0].levels[1].value.text = "1O".to_owned();
    bench.series.seed.text = "-1".to_owned();
    bench.series.replicates.text = "7".to_owned();
    writeln!(text, "series\n{}", bench.say(&series(&bench.recipe, &bench.series, &[]).findings)).unwrap();

    bench.boards[1].pieces = vec![piece("28", "sixteen", "")];
    bench.boards[1].bending[0].width.text = "40".to_owned();
    bench.boards[1].thickness[2].text = "0".to_owned();
    writeln!(text, "board\n{}", bench.say(&measure(&bench.boards[1]).findings)).unwrap();

    bench.requirements =
        vec![RequirementDraft { property: Property::Swelling, value: Entry::typed("12 mm", Unit::Percent) }];
    let boards = [measure(&bench.boards[0]).board];
    let results = haulm::domain::trial::boards::group::results(&boards);
    let findings = haulm::domain::trial::boards::target::judge(&results, &bench.requirements).1;
    writeln!(text, "requirement\n{}", bench.say(&findings)).unwrap();
    snapshot!("bench", "entries", text);
}

#[test]
fn words_of_boxes_and_figures() {
    let mut text = String::new();
    let mut add = |key: &str, (label, note): (&str, &str)| {
        sound(label);
        sound(note);
        assert!(!label.is_empty() && !label.ends_with('.'), "{key}: {label}");
        writeln!(text, "{key}: {label} | {note}").unwrap();
    };
    let box_words = |words: FieldWords| (words.label, words.hint);
    let figure_words = |words: FigureWords| (words.label, words.note);
    let mut sheet = bare_sheet();
    for field in WeighField::ALL {
        add(&field.box_key(), box_words(words::bench::field(*field, &sheet)));
    }
    (sheet.thickness_way, sheet.overage_of) = (ThicknessWay::Pressed, OverageOf::OvenDry);
    for field in [WeighField::Thickness, WeighField::Overage] {
        add(&field.box_key(), box_words(words::bench::field(field, &sheet)));
    }
    let series_fields = [
        SeriesField::Replicates,
        SeriesField::Seed,
        SeriesField::Margin,
        SeriesField::Factor(FactorId(1)),
        SeriesField::Level(FactorId(1), 0),
    ];
    for field in series_fields {
        let label = words::bench::place(TrialPlace::Series(field), &Bench::new().context());
        add(&field.key(), (&label, ""));
    }
    let board_fields = [
        BoardField::Laid,
        BoardField::Mass,
        BoardField::Length,
        BoardField::Width,
        BoardField::Thickness(0),
        BoardField::Moisture,
    ]
    .into_iter()
    .chain(PieceField::ALL.iter().map(|field| BoardField::Piece(0, *field)))
    .chain(BendingField::ALL.iter().map(|field| BoardField::Bending(0, *field)))
    .chain(BondField::ALL.iter().map(|field| BoardField::Bond(0, *field)))
    .chain(SwellingField::ALL.iter().map(|field| BoardField::Swelling(0, *field)));
    for field in board_fields {
        add(&field.key(), box_words(words::bench::board_field(field)));
    }
    let lines = WeighLineFigure::ALL.iter().map(|part| WeighFigure::Line(LineId::Fibre, *part));
    for figure in WeighFigure::PLAIN.iter().copied().chain(lines) {
        add(&figure.key(), figure_words(words::bench::figure(figure)));
    }
    let density = Property::Density;
    for figure in [
        BoardFigure::WholeDensity,
        BoardFigure::Density(0),
        BoardFigure::Moisture(0),
        BoardFigure::OvenDryDensity(0),
        BoardFigure::BendingStrength(0),
        BoardFigure::BendingModulus(0),
        BoardFigure::InternalBond(0),
        BoardFigure::Swelling(0),
        BoardFigure::HalfWidth(density),
        BoardFigure::Lower(density),
        BoardFigure::Upper(density),
        BoardFigure::Correction,
    ] {
        add(&format!("{figure:?}"), figure_words(words::bench::board_figure(figure)));
    }
    for property in Property::ALL {
        add(property.key(), figure_words(words::bench::property(*property)));
    }
    snapshot!("bench", "words", text);
}

#[test]
fn names_of_things() {
    let mut recipe = recipe();
    recipe.liquids[1].name = String::new();
    let mut text = String::new();
    let mut add = |name: String| {
        sound(&name);
        writeln!(text, "{name}").unwrap();
    };
    for id in [LineId::Fibre, LineId::Liquid(LiquidId(2)), LineId::Thinning(LiquidId(1)), LineId::Water] {
        add(words::bench::line(id, &recipe));
    }
    for of in
        [Of::Dose(LiquidId(2)), Of::Dose(LiquidId(9)), Of::BoardDensity, Of::MatMoisture, Of::PressFactor, Of::System]
    {
        add(words::bench::factor(of, &OwnFactor::default(), &recipe));
    }
    let lot = OwnFactor { name: "Fibre lot".to_owned(), unit: String::new() };
    add(words::bench::factor(Of::Own(FactorId(1)), &lot, &recipe));
    add(words::bench::factor(Of::Own(FactorId(1)), &OwnFactor::default(), &recipe));
    let mut system = factor(1, Of::System, Unit::One, &["", ""]);
    system.levels[1].name = "pMDI 4 %".to_owned();
    system.levels[1].liquids = vec![liquid(1, "4", "100", "1230")];
    let series = SeriesDraft { factors: vec![system], ..SeriesDraft::default() };
    for material in [
        Material::Fibre,
        Material::Liquid(None, LiquidId(1)),
        Material::Liquid(Some(1), LiquidId(1)),
        Material::Liquid(Some(0), LiquidId(4)),
        Material::Water,
    ] {
        add(words::bench::material(material, &series, &recipe));
    }
    ThicknessWay::ALL.iter().for_each(|way| add(words::bench::thickness_way(*way).to_owned()));
    OverageOf::ALL.iter().for_each(|way| add(words::bench::overage_of(*way).to_owned()));
    OverageOn::ALL.iter().for_each(|way| add(words::bench::overage_on(*way).to_owned()));
    WaterPlace::ALL.iter().for_each(|way| add(words::bench::water_place(*way).to_owned()));
    SprayWay::ALL.iter().for_each(|way| add(words::bench::spray_way(*way).to_owned()));
    BlockWay::ALL.iter().for_each(|way| add(words::bench::block_way(*way).to_owned()));
    ModelWay::ALL.iter().for_each(|way| add(words::bench::model_way(*way).to_owned()));
    RequirementSet::ALL.iter().for_each(|set| add(words::bench::requirement_set(*set)));
    for (way, factors) in
        [(DesignWay::Full, 3), (DesignWay::Fraction(1), 5), (DesignWay::Fraction(3), 7), (DesignWay::Fraction(4), 3)]
    {
        add(words::bench::design_way(way, factors));
    }
    for origin in [
        WeighOrigin::Field(WeighField::Boards),
        WeighOrigin::Figure(WeighFigure::Batch),
        WeighOrigin::RecipeField(haulm::domain::Field::Thickness),
        WeighOrigin::RecipeFigure(haulm::domain::Figure::Solids),
        WeighOrigin::Batches,
        WeighOrigin::Constant(Constant::WaterDensity),
    ] {
        add(words::bench::origin(origin).to_owned());
    }
    let bench = Bench::new();
    for place in [
        TrialPlace::Recipe(haulm::domain::Place::Liquid(LiquidId(1))),
        TrialPlace::Recipe(haulm::domain::Place::Station(haulm::domain::Station::Mat)),
        TrialPlace::Series(SeriesField::Level(FactorId(2), 1)),
        TrialPlace::Series(SeriesField::Factor(FactorId(7))),
        TrialPlace::Board(BoardId(2), BoardField::Bending(3, BendingField::Load)),
        TrialPlace::Board(BoardId(1), BoardField::Thickness(2)),
    ] {
        add(words::bench::finding(&TrialFinding::stop(place, TrialProblem::NotWhole), &bench.context()).what);
    }
    snapshot!("bench", "names", text);
}

/// Dose explains most, density less, their pair hardly anything.
#[test]
fn what_the_effects_tell() {
    let mut bench = Bench::new();
    bench.series.replicates.text = "2".to_owned();
    let series = series(&bench.recipe, &bench.series, &[]).series.unwrap();
    let wobble = [0.004, -0.006, 0.003, -0.001, 0.005, -0.002, 0.001, -0.004];
    let outcomes = |dose: f64, density: f64| -> Vec<RunResult> {
        let value = |run: &haulm::domain::trial::series::run::Run| {
            let sign = |factor: usize| if run.levels[factor] == 0 { -1.0 } else { 1.0 };
            0.55 + dose * sign(0) + density * sign(1) + wobble[usize::from(run.place) % 8]
        };
        series.runs.iter().map(|run| (run.place, 1e6 * value(run))).collect()
    };
    let mut text = String::new();
    for (name, outcomes) in [
        ("dose before density", outcomes(0.06, 0.02)),
        ("density down", outcomes(0.001, -0.05)),
        ("nothing but scatter", outcomes(0.0, 0.0)),
    ] {
        let effects = effects(Property::InternalBond, &series, &outcomes, ModelWay::Pairs).effects.unwrap();
        writeln!(text, "{name}").unwrap();
        for saying in words::bench::sayings(&effects, &series, &bench.context().plain) {
            sound(&saying);
            assert!(saying.ends_with('.'));
            writeln!(text, "  {saying}").unwrap();
        }
    }
    // Dose and density work only together; in a share, differences are points.
    let together: Vec<RunResult> = series
        .runs
        .iter()
        .map(|run| {
            let sign = if run.levels[0] == run.levels[1] { 1.0 } else { -1.0 };
            (run.place, 0.12 + 0.02 * sign + 0.1 * wobble[usize::from(run.place) % 8])
        })
        .collect();
    let both = effects(Property::Swelling, &series, &together, ModelWay::Pairs).effects.unwrap();
    let sayings = words::bench::sayings(&both, &series, &bench.context().plain);
    assert!(sayings.iter().any(|saying| saying.starts_with("Significant interaction") && saying.contains("points")));
    writeln!(text, "together\n  {}", sayings.join("\n  ")).unwrap();
    // Factors of any name and unit are named as they are, with their levels.
    let own = crate::series::own_factors();
    let own_series = haulm::domain::trial::series::runs::series(&bench.recipe, &own, &[]).series.unwrap();
    let by_own: Vec<RunResult> = own_series
        .runs
        .iter()
        .map(|run| {
            let sign = |factor: usize| if run.levels[factor] == 0 { -1.0 } else { 1.0 };
            (
                run.place,
                1e6 * (0.5
                    + 0.05 * sign(1)
                    + 0.03 * sign(2)
                    + 0.02 * sign(1) * sign(2)
                    + 0.1 * wobble[usize::from(run.place) % 8]),
            )
        })
        .collect();
    let named = effects(Property::InternalBond, &own_series, &by_own, ModelWay::Pairs).effects.unwrap();
    let sayings = words::bench::sayings(&named, &own_series, &bench.context().plain);
    assert!(sayings.iter().any(|saying| saying.starts_with("Press temperature, from 180\u{a0}°C to 200\u{a0}°C: ")));
    assert!(sayings.iter().any(|saying| saying.starts_with("Fibre lot, from A to B: ")));
    assert!(
        sayings.iter().any(|saying| saying.contains("higher at press temperature 200\u{a0}°C than at 180\u{a0}°C"))
    );
    writeln!(text, "factors of any name\n  {}", sayings.join("\n  ")).unwrap();
    let strength = AtDensity {
        property: Property::InternalBond,
        value: 0.52e6,
        half_width: 0.04e6,
        slope: 880.0,
        pieces: 8,
        outside: true,
        groups: 1,
    };
    writeln!(text, "{}", words::bench::at_density(&strength, &bench.context().plain)).unwrap();
    let shared = AtDensity { outside: false, groups: 4, pieces: 1, ..strength };
    writeln!(text, "{}", words::bench::at_density(&shared, &bench.context().plain)).unwrap();
    let key = GroupKey::Combination(vec![1, 0]);
    writeln!(text, "{}", words::bench::group(&key, Some(&series), &bench.context().plain)).unwrap();
    writeln!(text, "{}\n{}", words::bench::redraw(1, 7), words::bench::redraw(3, 1)).unwrap();
    let mut saturated = series.clone();
    saturated.runs.retain(|run| run.replicate == 1);
    let effects = effects(Property::InternalBond, &saturated, &outcomes(0.06, 0.02), ModelWay::Pairs).effects.unwrap();
    writeln!(text, "one replicate").unwrap();
    for saying in words::bench::sayings(&effects, &saturated, &bench.context().plain) {
        sound(&saying);
        writeln!(text, "  {saying}").unwrap();
    }
    let term = |term| words::bench::term(term, &series.factors, &bench.recipe);
    writeln!(text, "{}\n{}\n{}", term(Term::Blocks), term(Term::Main(1)), term(Term::Pair(0, 1))).unwrap();
    let level = |level: &Level| words::bench::level(level, &bench.context().plain);
    writeln!(text, "{}\n{}", level(&series.factors[0].levels[1]), level(&Level::System(String::new()))).unwrap();
    for (property, value, met) in [
        (Property::InternalBond, Some(0.5e6), Some(true)),
        (Property::InternalBond, Some(0.4e6), Some(false)),
        (Property::InternalBond, None, None),
        (Property::Swelling, Some(0.13), Some(false)),
    ] {
        let required = if property == Property::Swelling { 0.12 } else { 0.45e6 };
        let unverified = property == Property::Swelling;
        let judged = Judged { property, required, unverified, value, met };
        let saying = words::bench::verdict(&judged, &bench.context().plain);
        sound(&saying);
        writeln!(text, "{saying}").unwrap();
    }
    snapshot!("bench", "sayings", text);
}
