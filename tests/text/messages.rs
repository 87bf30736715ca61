//! Every message, caution and refusal in words: a snapshot of each, and what holds for all of them.

use crate::words::{sound, written};
use haulm::domain::chemistry::solute::Solute;
use haulm::domain::recipe::binder_system::{SystemKey, add_liquids};
use haulm::domain::recipe::caution::Caution;
use haulm::domain::recipe::draft::{FeedWay, LiquidDraft, WaterWay};
use haulm::domain::recipe::safety_limit::safety_limits;
use haulm::domain::{
    DoseWay, Draft, Entry, Faces, Field, Figure, Finding, Grade, LiquidField, LiquidFigure, LiquidId, Place, Role,
    Station, Substance, What, Work, cautions, cautions_at, cautions_of_solution, example, work_out,
};
use haulm::quantity::format::DecimalMark;
use haulm::quantity::kind::UnitSystem;
use haulm::quantity::number::ReadError;
use haulm::quantity::{Amount, Kind, Moisture, Unit, Units};
use haulm::ui::text::{Carrier, Context, words};
use std::collections::BTreeSet;
use std::fmt::Write;

const BINDER: LiquidId = LiquidId(1);
const WAX: LiquidId = LiquidId(2);

/// The findings of `draft` in words.
fn say(draft: &Draft, findings: &[Finding], units: &Units) -> String {
    let context = Context { units, draft, currency: "€" };
    let mut text = String::new();
    for finding in findings {
        let message = words::finding(finding, &context);
        write!(text, "  [{}]\n{}", words::grade(finding.grade), written(&message)).unwrap();
    }
    text
}

fn type_in(draft: &mut Draft, field: Field, text: &str) {
    draft.entry_mut(field).unwrap().text = text.to_owned();
}

fn binder(part: LiquidField) -> Field {
    Field::Liquid(BINDER, part)
}

fn take(draft: &mut Draft, key: SystemKey) {
    draft.liquids.clear();
    add_liquids(draft, &key.system().liquids);
}

/// What is wrong with a draft, and the draft.
type Case = (&'static str, fn(&mut Draft));

/// Each does one thing wrong to the example.
const CASES: &[Case] = &[
    ("a field left blank", |draft| type_in(draft, Field::FibreMoisture, "  ")),
    ("a liquid's field left blank", |draft| type_in(draft, binder(LiquidField::Density), "")),
    ("letters", |draft| type_in(draft, Field::Thickness, "fifteen")),
    ("a long text", |draft| type_in(draft, Field::Thickness, "about fifteen millimetres or perhaps sixteen")),
    ("two decimal marks", |draft| type_in(draft, Field::Thickness, "12..5")),
    ("a comma that may group", |draft| type_in(draft, Field::FibreFlow, "8,500")),
    ("both marks", |draft| type_in(draft, Field::FibreFlow, "8.500,5")),
    ("an unknown unit", |draft| type_in(draft, Field::FibreFlow, "8500 stone")),
    ("an unknown unit behind a bare number", |draft| type_in(draft, Field::SurfaceRatio, "1.1 times")),
    ("a unit of something else", |draft| type_in(draft, Field::FibreFlow, "15 mm")),
    ("too large", |draft| type_in(draft, Field::FibreFlow, "9e99")),
    ("below zero", |draft| type_in(draft, Field::FibreMoisture, "-2")),
    ("above what is possible", |draft| type_in(draft, Field::Liquid(WAX, LiquidField::Solids), "120")),
    ("only just above what is possible", |draft| type_in(draft, Field::Liquid(WAX, LiquidField::Solids), "100.00001")),
    ("far above what is possible", |draft| type_in(draft, binder(LiquidField::Dose), "400")),
    ("percent typed where a fraction is meant", |draft| {
        *draft.entry_mut(Field::Liquid(WAX, LiquidField::Solids)).unwrap() = Entry::typed("65", Unit::PerUnit);
    }),
    ("all of it rejected", |draft| type_in(draft, Field::Reject, "100")),
    ("a width of zero", |draft| type_in(draft, Field::MatWidth, "0")),
    ("a fraction typed where percent is meant", |draft| {
        take(draft, SystemKey::Uf);
        type_in(draft, binder(LiquidField::Solids), "0.65");
    }),
    ("above the usual, published", |draft| type_in(draft, binder(LiquidField::Dose), "9")),
    ("below the usual, from memory", |draft| type_in(draft, Field::MatBulkDensity, "8")),
    ("above the usual, common practice", |draft| type_in(draft, Field::FibreMoisture, "15")),
    ("an isocyanate with water", |draft| type_in(draft, binder(LiquidField::Solids), "97")),
    ("an isocyanate above 100 %", |draft| type_in(draft, binder(LiquidField::Solids), "100.5")),
    ("an isocyanate without solids", |draft| type_in(draft, binder(LiquidField::Solids), "")),
    ("thicker spray", |draft| type_in(draft, Field::Liquid(WAX, LiquidField::SpraySolids), "60")),
    ("a base that leads back", |draft| {
        draft.liquids[0].dose_way = DoseWay::SolidsOnLiquid(WAX);
        draft.liquids[1].dose_way = DoseWay::SolidsOnLiquid(BINDER);
    }),
    ("a base that is not there", |draft| draft.liquids[1].dose_way = DoseWay::SolidsOnLiquid(LiquidId(77))),
    ("too many liquids", |draft| {
        for number in 0..12 {
            let wax = LiquidDraft { name: format!("Wax {number}"), ..draft.liquids[1].clone() };
            add_liquids(draft, &[wax]);
        }
    }),
    ("a narrow spread", |draft| type_in(draft, Field::SpreadWidth, "1.5")),
    ("a press factor without a press length", |draft| {
        draft.feed_way = FeedWay::PressFactor;
        type_in(draft, Field::WantedPressFactor, "9");
        type_in(draft, Field::PressLength, "");
    }),
    ("a line speed without a width", |draft| {
        draft.feed_way = FeedWay::LineSpeed;
        type_in(draft, Field::WantedLineSpeed, "10");
        type_in(draft, Field::MatWidth, "");
    }),
    ("doses that fill the board", |draft| {
        draft.liquids[0].dose_way = DoseWay::LiquidPerBoard;
        *draft.entry_mut(binder(LiquidField::Dose)).unwrap() = Entry::typed("900", Unit::KilogramPerCubicMetre);
    }),
    ("a base on the faces", |draft| {
        draft.liquids[0].dose_way = DoseWay::LiquidOnFaces(Faces::Both);
        draft.liquids[0].dose = Entry::typed("20", Unit::GramPerSquareMetre);
        draft.liquids[1].dose_way = DoseWay::SolidsOnLiquid(BINDER);
    }),
    ("sprays that fill the board", |draft| {
        draft.liquids[0].dose_way = DoseWay::LiquidOnFaces(Faces::Both);
        draft.liquids[0].dose = Entry::typed("1000", Unit::GramPerSquareMetre);
        type_in(draft, Field::Thickness, "2");
    }),
    ("a flow of water without a fibre flow", |draft| {
        draft.feed_way = FeedWay::None;
        draft.water_way = WaterWay::Flow;
        type_in(draft, Field::WaterFlow, "300");
    }),
    ("too wet without a fibre flow", |draft| {
        draft.feed_way = FeedWay::None;
        type_in(draft, Field::FibreMoisture, "12");
    }),
    ("drier than dry", |draft| {
        draft.water_way = WaterWay::None;
        type_in(draft, Field::FibreMoisture, "1");
        type_in(draft, Field::DryingLoss, "5");
    }),
    ("too wet", |draft| type_in(draft, Field::FibreMoisture, "12")),
    ("too wet by the liquids alone", |draft| {
        take(draft, SystemKey::Soy);
        type_in(draft, binder(LiquidField::Solids), "25");
        type_in(draft, binder(LiquidField::Dose), "12");
    }),
    ("more than the machines can do", |draft| type_in(draft, Field::FibreFlow, "45000")),
    ("pressed for long", |draft| type_in(draft, Field::FibreFlow, "2000")),
    ("a wet board out of the press", |draft| {
        type_in(draft, Field::ExitMoisture, "9.9");
        type_in(draft, Field::MatMoisture, "8");
        type_in(draft, Field::SurfaceSpray, "0");
    }),
    ("a mat denser than the board", |draft| type_in(draft, Field::MatBulkDensity, "900")),
    ("no hardener", |draft| {
        take(draft, SystemKey::Uf);
        draft.liquids.remove(1);
    }),
    ("a hardener on fibre", |draft| {
        take(draft, SystemKey::Uf);
        draft.liquids[1].dose_way = DoseWay::SolidsOnFibre;
    }),
    ("no binder", |draft| draft.liquids.clear()),
    ("two of one name", |draft| draft.liquids[1].name = "pMDI".to_owned()),
    ("a liquid without a name", |draft| {
        draft.liquids[1].name.clear();
        type_in(draft, Field::Liquid(WAX, LiquidField::Dose), "x");
    }),
    ("figures out of range", |draft| {
        type_in(draft, Field::Thickness, "1e-300");
        type_in(draft, Field::MatWidth, "1e-300");
        type_in(draft, Field::SandTop, "0");
        type_in(draft, Field::SandBottom, "0");
    }),
];

/// The variant of a finding. A new one does not compile until it is named here, and then the test
/// below asks for a case of it.
fn variant(what: &What) -> &'static str {
    match what {
        What::Missing => "Missing",
        What::Unreadable(ReadError::Empty) => "Unreadable(Empty)",
        What::Unreadable(ReadError::NotANumber) => "Unreadable(NotANumber)",
        What::Unreadable(ReadError::SecondDecimalMark) => "Unreadable(SecondDecimalMark)",
        What::Unreadable(ReadError::Ambiguous { .. }) => "Unreadable(Ambiguous)",
        What::Unreadable(ReadError::UnknownUnit) => "Unreadable(UnknownUnit)",
        What::Unreadable(ReadError::OtherUnit { .. }) => "Unreadable(OtherUnit)",
        What::Unreadable(ReadError::TooLarge) => "Unreadable(TooLarge)",
        What::NotAllowed { .. } => "NotAllowed",
        What::LikelyFraction { .. } => "LikelyFraction",
        What::NotUsual { .. } => "NotUsual",
        What::SprayThicker => "SprayThicker",
        What::BaseLoop => "BaseLoop",
        What::BaseMissing => "BaseMissing",
        What::BaseOnFaces => "BaseOnFaces",
        What::NeedsFibreFlow => "NeedsFibreFlow",
        What::TooManyLiquids { .. } => "TooManyLiquids",
        What::SpreadNarrower => "SpreadNarrower",
        What::NeededForFeed => "NeededForFeed",
        What::DosesFillBoard { .. } => "DosesFillBoard",
        What::DriesBelowZero { .. } => "DriesBelowZero",
        What::OutOfRange => "OutOfRange",
        What::TooWet { .. } => "TooWet",
        What::OverLimit { .. } => "OverLimit",
        What::PressAddsWater => "PressAddsWater",
        What::MatThinnerThanBoard => "MatThinnerThanBoard",
        What::NoHardener => "NoHardener",
        What::HardenerNotOnBinder => "HardenerNotOnBinder",
        What::NoBinder => "NoBinder",
        What::SameName => "SameName",
    }
}

/// All names of [`variant`] that a draft can lead to. An empty text is put down as missing before it
/// comes to words.
const VARIANTS: &[&str] = &[
    "Missing",
    "Unreadable(NotANumber)",
    "Unreadable(SecondDecimalMark)",
    "Unreadable(Ambiguous)",
    "Unreadable(UnknownUnit)",
    "Unreadable(OtherUnit)",
    "Unreadable(TooLarge)",
    "NotAllowed",
    "LikelyFraction",
    "NotUsual",
    "SprayThicker",
    "BaseLoop",
    "BaseMissing",
    "BaseOnFaces",
    "NeedsFibreFlow",
    "TooManyLiquids",
    "SpreadNarrower",
    "NeededForFeed",
    "DosesFillBoard",
    "DriesBelowZero",
    "OutOfRange",
    "TooWet",
    "OverLimit",
    "PressAddsWater",
    "MatThinnerThanBoard",
    "NoHardener",
    "HardenerNotOnBinder",
    "NoBinder",
    "SameName",
];

fn all_cases(units: &Units) -> (String, BTreeSet<&'static str>) {
    let mut text = String::new();
    let mut seen = BTreeSet::new();
    for (name, spoil) in CASES {
        let mut draft = example();
        spoil(&mut draft);
        let findings = work_out(&draft).findings;
        assert!(!findings.is_empty(), "{name}: nothing found");
        seen.extend(findings.iter().map(|finding| variant(&finding.what)));
        writeln!(text, "{name}\n{}", say(&draft, &findings, units)).unwrap();
    }
    (text, seen)
}

#[test]
fn findings() {
    let (text, seen) = all_cases(&Units::default());
    let missing: Vec<_> = VARIANTS.iter().filter(|name| !seen.contains(*name)).collect();
    assert!(missing.is_empty(), "no case of {missing:?}");
    snapshot!("messages", "findings", text);
}

#[test]
fn findings_in_us_units_with_a_comma() {
    let mut units = Units::default();
    units.mark = DecimalMark::Comma;
    units.set_system(UnitSystem::Us);
    units.choose(Kind::Moisture, Unit::PercentWetBasis);
    snapshot!("messages", "findings_in_us_units_with_a_comma", all_cases(&units).0);
}

/// Not reached from a draft today; they have words all the same.
#[test]
fn findings_away_from_their_usual_place() {
    let draft = example();
    let mut text = String::new();
    let at = |place| Finding { grade: Grade::Stop, place, what: What::Missing };
    for place in [Place::Field(Field::FibreFlow), Place::Liquid(BINDER), Place::Liquid(LiquidId(9))] {
        text += &say(&draft, &[at(place)], &Units::default());
        let unreadable = What::Unreadable(ReadError::Empty);
        text += &say(&draft, &[Finding { what: unreadable, ..at(place) }], &Units::default());
    }
    let price = Amount::from_base(Kind::Price, 3.0);
    let window = haulm::domain::recipe::limit::PRESS_FACTOR;
    let what = What::NotUsual { value: price, window, unit: Unit::PerTonne };
    let place = Place::Field(binder(LiquidField::Price));
    text += &say(&draft, &[Finding { grade: Grade::Unusual, place, what }], &Units::default());
    snapshot!("messages", "findings_elsewhere", text);
}

#[test]
fn all_cautions() {
    let mut text = String::new();
    for caution in Caution::ALL {
        let words = words::caution(*caution, DecimalMark::Point);
        [words.title, words.text].into_iter().for_each(sound);
        assert!(!words.title.is_empty() && words.text.ends_with('.'));
        writeln!(text, "{}: {}\n  {}", caution.key(), words.title, words.text).unwrap();
        assert_eq!(words.limits.len(), safety_limits(*caution).count(), "{caution:?}");
        for (limit, data) in words.limits.iter().zip(safety_limits(*caution)) {
            sound(limit);
            // Each has its regulation, and the rule that the local limit counts.
            assert!(limit.ends_with("Check the current local limit.") && limit.contains(data.regulation), "{limit}");
            writeln!(text, "  {limit}").unwrap();
        }
    }
    snapshot!("messages", "cautions", text);
}

/// The cautions of a library system in the example's mill.
fn cautions_of(key: SystemKey, change: fn(&mut Draft)) -> Vec<Caution> {
    let mut draft = example();
    take(&mut draft, key);
    type_in(&mut draft, Field::FibreMoisture, "2");
    change(&mut draft);
    cautions(&draft, &work_out(&draft))
}

#[test]
fn cautions_apply_where_they_should() {
    use Caution::{
        AcidCure, Advice, Alkaline, Ammonia, Corrosion, DampBales, Dust, Emulsion, Formaldehyde, Isocyanate,
        IsocyanateTank, Oxidiser, ReleaseAgent, Steam,
    };
    let as_it_is: fn(&mut Draft) = |_| ();
    for (key, change, expected) in [
        (SystemKey::Pmdi, as_it_is, vec![Isocyanate, IsocyanateTank, ReleaseAgent]),
        (SystemKey::PmdiEmulsified, as_it_is, vec![Isocyanate, IsocyanateTank, Emulsion, ReleaseAgent]),
        (SystemKey::Pmdi, |draft| draft.liquids[1].role = Role::ReleaseAgent, vec![Isocyanate, IsocyanateTank]),
        (SystemKey::Uf, as_it_is, vec![Formaldehyde, AcidCure]),
        (SystemKey::Muf, as_it_is, vec![Formaldehyde, AcidCure]),
        (SystemKey::Pf, as_it_is, vec![Formaldehyde, Alkaline]),
        (
            SystemKey::Pf,
            |draft| draft.liquids[1].substance = Substance::AmmoniumSulfate,
            vec![Formaldehyde, Alkaline, Ammonia, AcidCure],
        ),
        (SystemKey::UfPmdi, as_it_is, vec![Isocyanate, IsocyanateTank, ReleaseAgent, Formaldehyde, AcidCure]),
        (SystemKey::Soy, as_it_is, vec![]),
        (SystemKey::Tannin, |draft| type_in(draft, Field::MatMoisture, "12"), vec![Formaldehyde]),
        (
            SystemKey::Uf,
            |draft| draft.liquids[1].substance = Substance::AmmoniumNitrate,
            vec![Formaldehyde, AcidCure, Oxidiser],
        ),
        (
            SystemKey::Uf,
            |draft| draft.liquids[1].substance = Substance::AmmoniumChloride,
            vec![Formaldehyde, AcidCure, Corrosion],
        ),
        (
            SystemKey::Pmdi,
            |draft| type_in(draft, Field::FibreMoisture, "18"),
            vec![Steam, Isocyanate, IsocyanateTank, ReleaseAgent],
        ),
        // Too wet by a fixed dose, which is no finding of its own.
        (
            SystemKey::Soy,
            |draft| {
                draft.water_way = WaterWay::OnFibre;
                type_in(draft, Field::WaterOnFibre, "9");
            },
            vec![Steam],
        ),
        // Cannot be solved: what the liquids are still holds.
        (SystemKey::Pf, |draft| type_in(draft, Field::FibreFlow, "x"), vec![Formaldehyde, Alkaline]),
    ] {
        let expected: Vec<_> = expected.into_iter().chain([Dust, DampBales, Advice]).collect();
        assert_eq!(cautions_of(key, change), expected, "{key:?}");
    }
}

/// Beside the work itself: what it takes to catch an isocyanate, a measured mat too wet, the press and its vapour.
#[test]
fn cautions_are_where_the_work_is() {
    use Caution::{BenchSpray, CatchTest, HighPressure, Isocyanate, IsocyanateCatch, Press, PressVapour, Steam};
    let at = |key, work, mat: f64| {
        let mut draft = example();
        take(&mut draft, key);
        cautions_at(work, &draft, Moisture::from_dry_basis(mat))
    };
    let catch = at(SystemKey::Pmdi, Work::CatchTest, 0.1);
    assert_eq!(catch, [Isocyanate, IsocyanateCatch, HighPressure, CatchTest]);
    assert_eq!(at(SystemKey::Soy, Work::CatchTest, 0.1), [HighPressure, CatchTest]);
    let words = words::caution(IsocyanateCatch, DecimalMark::Point).text;
    for needed in ["dry, open vessel", "respirator", "neutraliser"] {
        assert!(words.contains(needed), "{words}");
    }
    assert_eq!(at(SystemKey::Soy, Work::LineCheck, 0.10), [Press]);
    assert_eq!(at(SystemKey::Soy, Work::LineCheck, 0.30), [Steam, Press]);
    assert_eq!(at(SystemKey::Pmdi, Work::PumpSettings, 0.30), [Steam, Isocyanate, Caution::Advice]);
    assert_eq!(at(SystemKey::Soy, Work::PumpSettings, 0.10), [Caution::Advice]);
    let bench = at(SystemKey::Soy, Work::Bench, 0.1);
    assert!([PressVapour, BenchSpray, Press].iter().all(|caution| bench.contains(caution)), "{bench:?}");
    assert_eq!(cautions_of_solution(Solute::AmmoniumSulfate), []);
    for solute in [Solute::Urea, Solute::AmmoniumChloride, Solute::AmmoniumNitrate] {
        assert!(cautions_of_solution(solute).contains(&Caution::Cooling), "{solute:?}");
    }
    // Every caution but that of a missing recipe is reached by some work.
    let mut reached: BTreeSet<_> = Solute::ALL.into_iter().flat_map(cautions_of_solution).map(Caution::key).collect();
    for work in [Work::Recipe, Work::CatchTest, Work::LineCheck, Work::Bench] {
        for key in SystemKey::ALL {
            let mut draft = example();
            take(&mut draft, *key);
            for substance in Substance::ALL {
                draft.liquids[1].substance = *substance;
                reached.extend(cautions_at(work, &draft, Moisture::from_dry_basis(0.3)).into_iter().map(Caution::key));
            }
        }
    }
    assert_eq!(reached.len(), Caution::ALL.len(), "{reached:?}");
}

/// Sources: the regulations named in each line.
#[test]
fn limits_are_those_of_the_regulations() {
    let told = |caution| words::caution(caution, DecimalMark::Point).limits.join("\n").replace('\u{a0}', " ");
    let isocyanate = told(Caution::Isocyanate);
    let formaldehyde = told(Caution::Formaldehyde);
    for part in [
        "(Directive (EU) 2024/869): 8 h mean 10 µg NCO/m³ until 31 December 2028; short-term 20 µg NCO/m³ until 31 December 2028",
        "8 h mean 6 µg NCO/m³ after 31 December 2028; short-term 12 µg NCO/m³ after 31 December 2028",
        "(Regulation (EU) 2020/1149): all users must be trained",
        "(29 CFR 1910.1000 Table Z-1): ceiling 0.02 ppm",
    ] {
        assert!(isocyanate.contains(part), "{part}\n{isocyanate}");
    }
    for part in [
        "(Directive (EU) 2019/983): 8 h mean 0.3 ppm (0.37 mg/m³); short-term 0.6 ppm (0.74 mg/m³)",
        "(29 CFR 1910.1048): 8 h mean 0.75 ppm; short-term 2 ppm",
        "(Regulation (EU) 2023/1464): wood-based articles and furniture 0.062 mg/m³ from 6 August 2026",
        "(TSCA Title VI (40 CFR 770)): particleboard 0.09 ppm; MDF 0.11 ppm; thin MDF 0.13 ppm; hardwood plywood 0.05 ppm",
    ] {
        assert!(formaldehyde.contains(part), "{part}\n{formaldehyde}");
    }
    assert!(!(isocyanate + &formaldehyde).contains("memory"));
}

#[test]
fn everything_has_a_name() {
    let draft = example();
    let liquids = [BINDER, WAX].into_iter().flat_map(|id| LiquidField::ALL.iter().map(move |part| (id, *part)));
    let fields = Field::PLAIN.iter().copied().chain(liquids.map(|(id, part)| Field::Liquid(id, part)));
    let mut names = BTreeSet::new();
    for field in fields {
        let words = words::field(field, &draft);
        assert!(!words.label.is_empty(), "{field:?}");
        [words.label, words.hint].into_iter().for_each(sound);
        assert!(words.hint.is_empty() || words.hint.ends_with('.'), "{field:?}: {}", words.hint);
        assert!(names.insert(words::field_name(field, &draft)), "a second field with the name of {field:?}");
    }
    let mut labels = BTreeSet::new();
    for figure in Figure::PLAIN {
        let words = words::figure(*figure);
        assert!(labels.insert((words.label, words.note)), "a second figure with the words of {figure:?}");
        if figure.kind() == Kind::Moisture {
            assert!(words.note.contains("per oven-dry"), "{figure:?} does not say its basis");
        }
    }
    for part in LiquidFigure::ALL {
        let words = words::figure(Figure::Liquid(BINDER, *part));
        assert!(!words.label.is_empty() && !words.note.is_empty(), "{part:?}");
        assert!(labels.insert((words.label, words.note)), "a second figure with the words of {part:?}");
    }
    let stations: BTreeSet<_> = Station::ALL.iter().map(|station| words::station(*station)).collect();
    assert_eq!(stations.len(), Station::ALL.len());
    for key in SystemKey::ALL {
        let words = words::binder_system(*key);
        assert!(!words.name.is_empty() && words.note.ends_with('.'));
    }
}

/// A moisture or a dose says its basis, in its label or in the unit beside it.
#[test]
fn labels_say_the_basis() {
    let mut draft = example();
    let label = |draft: &Draft, field| words::field(field, draft).label;
    for way in FeedWay::ALL {
        draft.feed_way = *way;
        let basis = if *way == FeedWay::Belt { "wet" } else { "oven-dry" };
        assert!(label(&draft, Field::FibreFlow).contains(basis), "{way:?}");
    }
    for (way, basis) in [
        (DoseWay::SolidsOnFibre, "solids on oven-dry fibre"),
        (DoseWay::SolidsOnLiquid(WAX), "solids on the other liquid's solids"),
        (DoseWay::LiquidOnFibre, "liquid as delivered on oven-dry fibre"),
        (DoseWay::LiquidPerBoard, "liquid as delivered per volume of finished board"),
        (DoseWay::LiquidOnFaces(Faces::Top), "liquid as delivered per area of face"),
    ] {
        draft.liquids[0].dose_way = way;
        assert!(label(&draft, binder(LiquidField::Dose)).contains(basis), "{way:?}");
        let choice = words::dose_way(way, &draft);
        assert!(!choice.is_empty());
    }
    assert_eq!(words::dose_way(DoseWay::SolidsOnLiquid(WAX), &draft), "Solids on the solids of Wax emulsion");
}

mod compare;
mod make_up;
mod record;
mod versions;
