//! What is read and written here, held against serde's derive on the same types.

use super::read::NOT_WHOLE;
use super::{Shape, read, value};
use crate::domain::bench::board_field::{BendingDraft, BondDraft, PieceDraft, SwellingDraft};
use crate::domain::bench::draft::{OverageOf, OverageOn, SprayWay, ThicknessWay, WaterPlace};
use crate::domain::bench::effects::ModelWay;
use crate::domain::bench::property::Property;
use crate::domain::bench::series_draft::{BlockWay, DesignWay, FactorDraft, LevelDraft};
use crate::domain::bench::series_field::{FactorId, Of};
use crate::domain::bench::target::RequirementDraft;
use crate::domain::bench::weighing::WeighedDraft;
use crate::domain::bench::{BoardDraft, BoardId, LineId, SeriesDraft};
use crate::domain::compare::draft::{Chosen, CompareDraft, Typed};
use crate::domain::draft::{FeedWay, WaterWay};
use crate::domain::line::{
    CardRows, Feeds, LineBook, Metering, Model, ReadingWay, SettingUnit, TankWay, Tie, example_line,
};
use crate::domain::mix::{AmountWay, MixDraft, PartKey, ShareWay, TankPart};
use crate::domain::solute::Solute;
use crate::domain::{DoseWay, Draft, Entry, LiquidDraft, LiquidId, Role, Substance, example};
use crate::quantity::Unit;
use crate::record::check_log::{CheckContent, LoggedFigure};
use crate::record::file::RecipeFile;
use crate::record::id::{Id, RecipeId, RevisionId, SystemId, TrialId};
use crate::record::line::{End, LineRecord, Planned};
use crate::record::open_draft::OpenDraft;
use crate::record::revision::{RevisionContent, Standing, Title};
use crate::record::system::SystemContent;
use crate::record::{OpenTrial, TrialContent};
use proptest::prelude::*;
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::{Value, json};

/// A kind of value that both ways know.
trait Both: Shape + Clone + PartialEq + std::fmt::Debug + Serialize + DeserializeOwned {}

impl<T: Shape + Clone + PartialEq + std::fmt::Debug + Serialize + DeserializeOwned> Both for T {}

/// It is written alike, to the letter, and comes back.
fn check_written<T: Both>(sample: &T) {
    let (ours, theirs) = (value(sample), serde_json::to_value(sample));
    assert_eq!(Some(&ours), theirs.as_ref().ok());
    assert_eq!(read::<T>(&ours.to_string()).ok().as_ref(), Some(sample));
}

fn check_all<T: Both>(samples: &[T]) {
    samples.iter().for_each(check_written);
    // The words of the refusal name all that there are.
    check_read::<T>("\"else\"");
    check_read::<T>("3");
}

/// It is taken or refused alike, at the same place and for the same reason.
fn check_read<T: Both>(text: &str) {
    let (ours, theirs) = (read::<T>(text), serde_json::from_str::<T>(text));
    let own = ours.as_ref().err().map(ToString::to_string).unwrap_or_default();
    if own.starts_with("invalid type: sequence, expected an object") {
        // serde's derive takes a list for the fields in their order, which nothing ever wrote.
        return;
    }
    if own.starts_with(&format!("invalid type: {NOT_WHOLE}")) {
        assert!(theirs.is_err(), "{text}");
        return;
    }
    match (ours, theirs) {
        (Ok(ours), Ok(theirs)) => assert_eq!(ours, theirs, "{text}"),
        (Err(ours), Err(theirs)) => {
            let other = theirs.to_string();
            assert_eq!(reason(&own), reason(&other), "{text}");
            // Of a text that is not of its kind we name the place, and serde the end of what holds it; of a list
            // that should be a number the place behind its bracket or before.
            let elsewhere = ["no unit", "an id has", "invalid type: sequence, expected u"];
            if !elsewhere.iter().any(|start| own.starts_with(start)) {
                assert_eq!((ours.line(), ours.column()), (theirs.line(), theirs.column()), "{own}\n{other}\n{text}");
            }
        }
        (ours, theirs) => assert_eq!(ours.ok(), theirs.ok(), "{text}"),
    }
}

/// What was said without the place, and without the name that serde has for what was expected: it calls a
/// struct by its name in this source.
fn reason(said: &str) -> &str {
    let said = said.split(" at line ").next().unwrap_or_default();
    if said.starts_with("invalid") { said.split(", expected ").next().unwrap_or_default() } else { said }
}

fn entry() -> Entry {
    Entry::typed("1", Unit::One)
}

fn title() -> Title {
    Title { name: "Straw".to_owned(), note: "\"n\"\n".to_owned(), tags: vec!["16 mm".to_owned()] }
}

fn draft() -> Draft {
    let mut draft = example();
    let ways = [DoseWay::SolidsOnFibre, DoseWay::SolidsOnLiquid(LiquidId(7)), DoseWay::LiquidPerBoard];
    for (at, way) in ways.into_iter().enumerate() {
        let mut liquid = LiquidDraft::blank(LiquidId(u16::MAX), Role::Other);
        (liquid.dose_way, liquid.source) = (way, "a".repeat(at));
        draft.liquids.push(liquid);
    }
    draft
}

fn trial() -> TrialContent {
    let mut trial =
        TrialContent::of("Straw".to_owned(), draft(), Some((RecipeId(Id::default()), RevisionId(Id::default()))));
    let level = LevelDraft { value: entry(), name: "a".to_owned(), liquids: draft().liquids };
    let bare = LevelDraft { value: entry(), name: String::new(), liquids: Vec::new() };
    let of = [Of::Dose(LiquidId(2)), Of::BoardDensity, Of::MatMoisture, Of::PressFactor, Of::System];
    let factors =
        of.into_iter().map(|of| FactorDraft { id: FactorId(3), of, levels: vec![level.clone(), bare.clone()] });
    trial.series =
        Some(SeriesDraft { factors: factors.collect(), design: DesignWay::Fraction(2), ..SeriesDraft::default() });
    let mut board = BoardDraft::blank(BoardId(4));
    board.run = Some(2);
    board.thickness.push(entry());
    board.pieces.push(PieceDraft::default());
    board.bending.push(BendingDraft::default());
    board.bond.push(BondDraft::default());
    board.swelling.push(SwellingDraft::default());
    trial.boards = vec![board];
    trial.requirements = vec![RequirementDraft { property: Property::Swelling, value: entry() }];
    let lines = [LineId::Fibre, LineId::Liquid(LiquidId(1)), LineId::Thinning(LiquidId(1)), LineId::Water];
    if let Some(batch) = trial.batch_mut(None, 1) {
        batch.lines = lines.into_iter().map(|line| WeighedDraft { line, mass: entry() }).collect();
    }
    (trial.replaces, trial.saved_at) = (Some(TrialId(Id::default())), u64::MAX);
    trial
}

fn line() -> LineRecord {
    let end = End { name: "a".to_owned(), draft: draft() };
    let mut book = example_line(&draft());
    book.delivered = Some(LiquidId(1));
    let planned = Some(Planned { from: end.clone(), to: end, started: Some(5) });
    LineRecord { book, planned, example: true, ..LineRecord::default() }
}

fn mix() -> MixDraft {
    let mut mix = MixDraft::default();
    for (key, in_tank) in
        [(PartKey::Liquid("a".to_owned()), None), (PartKey::Thinning, Some(true)), (PartKey::Water, Some(false))]
    {
        mix.tank.push(TankPart { key, in_tank, share: entry() });
    }
    mix
}

fn compare() -> CompareDraft {
    CompareDraft {
        systems: vec!["open".to_owned()],
        chosen: vec![Chosen { what: "a".to_owned(), key: "b".to_owned() }],
        typed: vec![Typed { what: "a".to_owned(), entry: entry() }],
        ..CompareDraft::default()
    }
}

fn revision() -> RevisionContent {
    RevisionContent {
        recipe: Some(RecipeId(Id::default())),
        parents: vec![RevisionId(Id::default())],
        copy_of: Some(RevisionId(Id::default())),
        saved_at: 1,
        author: "CD".to_owned(),
        remark: "b".to_owned(),
        name: "a".to_owned(),
        note: String::new(),
        tags: title().tags,
        standing: Standing::Removed,
        released: true,
        draft: draft(),
    }
}

fn system() -> SystemContent {
    SystemContent {
        replaces: Some(SystemId(Id::default())),
        saved_at: 1,
        author: String::new(),
        name: "a".to_owned(),
        note: String::new(),
        standing: Standing::Kept,
        liquids: draft().liquids,
    }
}

fn logged() -> CheckContent {
    let figure = LoggedFigure {
        figure: "dose".to_owned(),
        liquid: Some("a".to_owned()),
        unit: Unit::Percent,
        actual: "1".to_owned(),
        wanted: "2".to_owned(),
        deviation: "3".to_owned(),
        points: true,
        tolerance: "4".to_owned(),
    };
    CheckContent {
        at: 1,
        author: String::new(),
        recipe: "a".to_owned(),
        revision: None,
        remark: String::new(),
        figures: vec![figure],
    }
}

#[test]
fn every_record_is_written_alike() {
    check_written(&RecipeFile::new(title(), draft(), Some(RevisionId(Id::default()))));
    check_written(&RecipeFile::new(Title::default(), Draft::default(), None));
    check_written(&OpenDraft { from: None, title: title(), draft: draft(), remark: "c".to_owned(), example: true });
    check_written(&revision());
    check_written(&system());
    check_written(&logged());
    check_written(&trial());
    check_written(&OpenTrial { from: None, trial: TrialContent::of(String::new(), Draft::default(), None) });
    check_written(&line());
    check_written(&LineRecord::default());
    check_written(&mix());
    check_written(&compare());
}

#[test]
fn every_word_is_the_same() {
    check_all(FeedWay::ALL);
    check_all(WaterWay::ALL);
    check_all(Role::ALL);
    check_all(Substance::ALL);
    check_all(&[DoseWay::SolidsOnFibre, DoseWay::LiquidOnFibre, DoseWay::LiquidPerBoard]);
    check_all(ThicknessWay::ALL);
    check_all(OverageOf::ALL);
    check_all(OverageOn::ALL);
    check_all(WaterPlace::ALL);
    check_all(SprayWay::ALL);
    check_all(AmountWay::ALL);
    check_all(ShareWay::ALL);
    check_all(&[Solute::AmmoniumSulfate, Solute::AmmoniumChloride, Solute::AmmoniumNitrate, Solute::Urea]);
    check_all(CardRows::ALL);
    check_all(&[TankWay::Level, TankWay::Volume, TankWay::Mass]);
    check_all(&[Model::WithIntercept, Model::ThroughOrigin]);
    check_all(&[SettingUnit::Percent, SettingUnit::Hertz, SettingUnit::Rpm]);
    check_all(&[Metering::Volume, Metering::Mass]);
    check_all(&[ReadingWay::MassMeter, ReadingWay::VolumeMeter, ReadingWay::Setting]);
    check_all(&[BlockWay::None, BlockWay::Replicate, BlockWay::Halves, BlockWay::Quarters]);
    check_all(&[ModelWay::Pairs, ModelWay::Mains]);
    check_all(&[DesignWay::Full, DesignWay::Fraction(3)]);
    check_all(&[Standing::Kept, Standing::Removed]);
    check_all(Property::ALL);
    check_all(&[LineId::Fibre, LineId::Water]);
    check_all(&[PartKey::Thinning, PartKey::Liquid(String::new())]);
    check_all(&[Of::System, Of::Dose(LiquidId(0))]);
    let tie = Tie { name: String::new(), role: Role::Wax, substance: Substance::Other };
    check_all(&[Feeds::Liquid(tie.clone()), Feeds::Thinning(tie), Feeds::Water]);
    check_all(Unit::ALL);
}

/// Pointers to every part of a value.
fn pointers(value: &Value, at: &str, all: &mut Vec<String>) {
    all.push(at.to_owned());
    match value {
        Value::Object(map) => map.iter().for_each(|(key, value)| pointers(value, &format!("{at}/{key}"), all)),
        Value::Array(list) => list.iter().enumerate().for_each(|(n, value)| pointers(value, &format!("{at}/{n}"), all)),
        _ => {}
    }
}

/// What stands in the place of a part, or nothing for the part taken out.
fn odd_part() -> impl Strategy<Value = Option<Value>> {
    let odd = [
        json!(null),
        json!(true),
        json!(7),
        json!(-7),
        json!(70_000),
        json!(u64::MAX),
        json!(1.5),
        json!(""),
        json!("thinning"),
        json!("oven_dry"),
        json!("00112233445566778899aabbccddeeff"),
        json!([]),
        json!([1]),
        json!({}),
        json!({ "liquid": 1 }),
        json!({ "dose": 2, "liquid": 1 }),
        json!({ "oven_dry": null }),
        json!({ "oven_dry": 3 }),
        json!({ "text": "1", "unit": "%" }),
        json!({ "text": "1", "unit": "ell" }),
        json!({ "text": "1", "unit": "mm", "preset": false, "later": [{}] }),
    ];
    proptest::option::weighted(0.8, proptest::sample::select(odd.to_vec()))
}

/// With one part of it changed or taken out it is read alike.
fn check_spoilt<T: Both>(sample: &T, pick: prop::sample::Index, part: Option<Value>, pretty: bool) {
    let mut spoilt = value(sample);
    let mut all = Vec::new();
    pointers(&spoilt, "", &mut all);
    let pointer = &all[pick.index(all.len())];
    match (part, pointer.rsplit_once('/')) {
        (Some(part), _) => {
            let Some(place) = spoilt.pointer_mut(pointer) else { return };
            *place = part;
        }
        (None, Some((holder, key))) => match spoilt.pointer_mut(holder) {
            Some(Value::Object(map)) => drop(map.remove(key)),
            _ => return,
        },
        (None, None) => return,
    }
    check_read::<T>(&if pretty { format!("{spoilt:#}") } else { spoilt.to_string() });
}

/// With some of its bytes changed it is read alike.
fn check_bytes<T: Both>(sample: &T, changes: &[(prop::sample::Index, char)]) {
    let mut text: Vec<char> = value(sample).to_string().chars().collect();
    for (place, put) in changes {
        let place = place.index(text.len());
        text[place] = *put;
    }
    check_read::<T>(&text.into_iter().collect::<String>());
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn with_a_part_changed(which in 0..8, pick: prop::sample::Index, part in odd_part(), pretty: bool) {
        match which {
            0 => check_spoilt(&RecipeFile::new(title(), draft(), Some(RevisionId(Id::default()))), pick, part, pretty),
            1 => check_spoilt(&revision(), pick, part, pretty),
            2 => check_spoilt(&system(), pick, part, pretty),
            3 => check_spoilt(&logged(), pick, part, pretty),
            4 => check_spoilt(&trial(), pick, part, pretty),
            5 => check_spoilt(&line(), pick, part, pretty),
            6 => check_spoilt(&mix(), pick, part, pretty),
            _ => check_spoilt(&compare(), pick, part, pretty),
        }
    }

    #[test]
    fn with_bytes_changed(which in 0..3, changes in proptest::collection::vec((any::<prop::sample::Index>(), any::<char>()), 1..4)) {
        match which {
            0 => check_bytes(&revision(), &changes),
            1 => check_bytes(&mix(), &changes),
            _ => check_bytes(&LineBook::default(), &changes),
        }
    }

    #[test]
    fn with_anything(text in r#"[\[\]{}":,0-9a-z\\ \n.eE+-]{0,60}"#) {
        check_read::<Entry>(&format!("{{{text}"));
        check_read::<Vec<LiquidId>>(&text);
        check_read::<PartKey>(&text);
    }
}
