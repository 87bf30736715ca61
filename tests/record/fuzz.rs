//! Anything at all is thrown at what reads texts from outside: files, links, stored records, numbers, units. Nothing panics, nothing
//! hangs, and what is refused changes nothing.
//!
//! In the check a short run. The long one, of 10⁶ inputs for each reader, also holds every input to a time:
//!
//! ```text
//! HAULM_FUZZ=1000000 cargo test --release --test record fuzz
//! ```

use haulm::domain::mixing::MixDraft;
use haulm::domain::{Draft, work_out};
use haulm::quantity::format::{self, DecimalMark};
use haulm::quantity::{Kind, Unit, number};
use haulm::record::content::line::LINE;
use haulm::record::content::mixing::MIXING;
use haulm::record::content::revision::{Stamp, Title};
use haulm::record::content::trial::TRIAL_ON_PAGE;
use haulm::record::document::open_draft::{OpenDraft, RECIPE};
use haulm::record::file::recipe::RecipeFile;
use haulm::record::id::Id;
use haulm::record::store::MemoryStore;
use haulm::record::{Library, LineRecord, OpenTrial, Revision, Settings, Store, Stored, TrialContent};
use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};
use std::time::{Duration, Instant};

const LONG_RUN: &str = "HAULM_FUZZ";

/// No input may take longer.
const LONGEST: Duration = Duration::from_millis(500);

fn cases() -> u32 {
    std::env::var(LONG_RUN).ok().and_then(|count| count.parse().ok()).unwrap_or(2_000)
}

/// Runs `read` on inputs of `strategy`. In the long run, on a machine that does nothing else, the slowest one must not be felt.
fn check<T: std::fmt::Debug>(strategy: impl Strategy<Value = T>, read: impl Fn(&T)) {
    let config = Config { cases: cases(), failure_persistence: None, ..Config::default() };
    let run = TestRunner::new(config).run(&strategy, |input| {
        let time = || {
            let start = Instant::now();
            read(&input);
            start.elapsed()
        };
        // What was slow once may have waited for other work on the machine; what hangs does so each time.
        let slow = || (0..3).map(|_| time()).min().filter(|least| *least >= LONGEST);
        let took = time();
        prop_assert!(std::env::var_os(LONG_RUN).is_none() || took < LONGEST || slow().is_none(), "took {took:?}");
        Ok(())
    });
    run.unwrap();
}

fn sample() -> String {
    let draft = haulm::domain::recipe::example::example();
    RecipeFile::new(Title { name: "Straw".to_owned(), ..Title::default() }, draft, None).text().unwrap()
}

fn library() -> Library<MemoryStore> {
    let mut library = Library::open(MemoryStore::default()).unwrap();
    let first = Revision::first(Title::default(), Draft::default(), Stamp::default()).unwrap();
    library.save(first).unwrap();
    library
}

/// A sound text with some places of it changed, doubled or cut out: what comes of a bad disk or a careless editor.
fn spoilt(text: String) -> impl Strategy<Value = String> {
    let change = (
        any::<prop::sample::Index>(),
        0_usize..40,
        "[\\PC\\x00-\\x1f]{0,8}|[-0-9eE.,\"{}\\[\\]:]{0,12}|null|true|1e999|\\\\u0000",
    );
    prop::collection::vec(change, 1..6).prop_map(move |changes| {
        let mut chars: Vec<char> = text.chars().collect();
        for (at, cut, put) in changes {
            let at = at.index(chars.len() + 1);
            let end = (at + cut).min(chars.len());
            chars.splice(at..end, put.chars());
        }
        chars.into_iter().collect()
    })
}

/// What looks like one of ours, of a kind, with anything in it.
fn alike(kind: &'static str) -> impl Strategy<Value = String> {
    let leaf = prop_oneof![
        Just("null".to_owned()),
        any::<bool>().prop_map(|value| value.to_string()),
        any::<f64>().prop_map(|value| format!("{value:e}")),
        "[a-z_]{0,12}|\\PC{0,6}".prop_map(|text| serde_json::to_string(&text).unwrap()),
    ];
    let tree = leaf.prop_recursive(5, 40, 6, |inner| {
        let key = prop_oneof![
            "draft|plain|liquids|text|unit|preset|name|tags|board_density|records|id|dose|solids|role",
            "[a-z_]{0,8}"
        ];
        prop_oneof![
            prop::collection::vec(inner.clone(), 0..6).prop_map(|items| format!("[{}]", items.join(","))),
            prop::collection::vec((key, inner), 0..6).prop_map(|pairs| {
                let pairs: Vec<String> = pairs.iter().map(|(key, value)| format!("{key:?}:{value}")).collect();
                format!("{{{}}}", pairs.join(","))
            }),
        ]
    });
    (tree.clone(), tree).prop_map(move |(draft, records)| {
        format!("{{\"haulm\":\"{kind}\",\"version\":1,\"draft\":{draft},\"records\":{records},\"name\":\"x\"}}")
    })
}

fn any_text() -> impl Strategy<Value = String> {
    prop_oneof![
        spoilt(sample()),
        spoilt(sample()),
        alike("recipe"),
        "\\PC{0,200}",
        (0_usize..200_000, prop_oneof![Just("["), Just("{\"a\":"), Just("\""), Just("9")])
            .prop_map(|(count, part)| part.repeat(count)),
    ]
}

/// That, or what comes of a sound text of another kind.
fn any_text_or(sound: String) -> impl Strategy<Value = String> {
    prop_oneof![3 => spoilt(sound), 1 => any_text()]
}

fn revision() -> Revision {
    Revision::first(Title::default(), haulm::domain::recipe::example::example(), Stamp::default()).unwrap()
}

#[test]
fn a_recipe_file_or_link() {
    check(any_text(), |text| {
        // However a link is damaged, nothing panics.
        let _ = RecipeFile::read_slim(text);
        if let Ok(file) = RecipeFile::read(text) {
            let outcome = work_out(&file.draft);
            if let Some(case) = outcome.case {
                assert!(case.solved.solids.value.is_finite());
            }
            // What was taken can be written again, and says the same.
            assert_eq!(RecipeFile::read_slim(&file.slim().unwrap()).unwrap().draft, file.draft);
        }
    });
}

#[test]
fn a_library_file() {
    let sound = library().library_file().unwrap().0;
    check(prop_oneof![spoilt(sound), alike("library"), any_text()], |text| {
        let mut other = Library::open(MemoryStore::default()).unwrap();
        let before = other.store().keys().unwrap().len();
        let merged = other.merge_file(text);
        let added = merged.map_or(0, |merged| merged.added);
        assert_eq!(other.store().keys().unwrap().len(), before + added);
        assert_eq!(other.unreadable().count(), 0);
    });
}

#[test]
fn a_stored_record() {
    let draft = haulm::domain::recipe::example::example();
    let open = OpenDraft { from: None, title: Title::default(), draft, remark: String::new(), example: false };
    let open = RECIPE.text(&Stored::new(open));
    let texts = prop_oneof![
        spoilt(open),
        spoilt(Settings::default().text().unwrap()),
        alike("draft"),
        alike("trial"),
        alike("line"),
        any_text()
    ];
    check(texts, |text| {
        _ = RECIPE.read(text);
        _ = Settings::read(text);
        _ = LINE.read(text);
        _ = TRIAL_ON_PAGE.read(text);
    });
}

/// Under the name that fits, so that the content is looked at; and under one that does not.
#[test]
fn a_sealed_revision() {
    check(any_text_or(revision().text().to_owned()), |text| {
        if let Ok(revision) = Revision::read(Id::of(text), text) {
            assert_eq!(revision.text(), text);
        }
        assert!(Revision::read(Id::of("another"), text).is_err());
    });
}

/// What is taken of the line, a trial or the make-up can be written again, and says the same.
#[test]
fn what_is_typed_elsewhere() {
    let trial = TrialContent::of("Straw".to_owned(), haulm::domain::recipe::example::example(), None);
    let texts = prop_oneof![
        any_text_or(TRIAL_ON_PAGE.text(&Stored::new(OpenTrial { from: None, trial: trial.clone() }))),
        any_text_or(trial.file().unwrap()),
        any_text_or(LINE.text(&Stored::new(LineRecord::default()))),
        any_text_or(MIXING.text(&Stored::new(MixDraft::default()))),
    ];
    check(texts, |text| {
        if let Ok(trial) = TRIAL_ON_PAGE.read(text) {
            assert_eq!(TRIAL_ON_PAGE.read(&TRIAL_ON_PAGE.text(&trial)), Ok(trial));
        }
        if let Ok(trial) = TrialContent::read_file(text) {
            assert_eq!(TrialContent::read_file(&trial.file().unwrap()), Ok(trial));
        }
        if let Ok(line) = LINE.read(text) {
            assert_eq!(LINE.read(&LINE.text(&line)), Ok(line));
        }
        if let Ok(typed) = MIXING.read(text) {
            assert_eq!(MIXING.read(&MIXING.text(&typed)), Ok(typed));
        }
    });
}

/// A store with anything in it opens, and stands as it stood.
#[test]
fn a_store_with_anything_in_it() {
    let places = prop::sample::select(vec![
        "revision", "release", "system", "trial", "check", "draft", "mix", "settings", "line", "bench",
    ]);
    let name = prop_oneof![Just(revision().id().to_string()), "[0-9a-f]{30,33}", ".{0,4}"];
    let contents = |store: &MemoryStore| -> Vec<(String, Option<String>)> {
        store.keys().unwrap().into_iter().map(|key| (key.clone(), store.read(&key).unwrap())).collect()
    };
    check((places, name, any_text_or(revision().text().to_owned())), |(place, name, text)| {
        let store = MemoryStore::default();
        for key in [format!("haulm/{place}/{name}"), format!("haulm/{place}")] {
            store.write(&key, text).unwrap();
        }
        let before = contents(&store);
        let mut library = Library::open(store.clone()).unwrap();
        library.verify(usize::MAX);
        assert!(library.unreadable().count() + library.recipes().len() + library.systems().len() <= 1);
        drop((
            library.document(&RECIPE),
            library.document(&MIXING),
            library.document(&LINE),
            library.document(&TRIAL_ON_PAGE),
        ));
        drop((library.settings(), library.log(), library.trials()));
        library.refresh().unwrap();
        assert_eq!(contents(&store), before);
    });
}

/// Units behind a number, in any spelling; and the symbols of files, which are exact.
#[test]
fn a_unit() {
    let mut parts: Vec<&'static str> =
        vec![" ", "  ", "per ", "/", "2", "3", "²", "³", ".", "%", "\u{200b}", "µ", "ſ", "K", "İ"];
    for unit in Unit::ALL {
        parts.push(unit.symbol());
        parts.extend(unit.aliases());
    }
    let text = prop_oneof![
        "\\PC{0,12}",
        prop::collection::vec(prop::sample::select(parts), 0..5).prop_map(|parts| parts.concat()),
        prop::sample::select(Unit::ALL).prop_map(|unit| unit.symbol().to_uppercase()),
    ];
    check((text, prop::sample::select(Kind::ALL)), |(text, kind)| {
        if let Ok(reading) = number::read(&format!("1 {text}"), *kind, kind.units().next().unwrap()) {
            assert_eq!(reading.unit.dimension(), kind.dimension());
        }
        assert!(Unit::from_symbol(text).is_none_or(|unit| unit.symbol() == text));
    });
}

#[test]
fn a_number_with_or_without_its_unit() {
    let entry = prop_oneof![
        "[-+ 0-9.,'\u{202f}\u{a0}eE]{0,24}",
        "[-+]?[0-9]{0,400}[.,]?[0-9]{0,400}( ?[a-zA-Z/³²·°%µ ]{0,14})?",
        "\\PC{0,40}",
        (any::<f64>(), prop::sample::select(Unit::ALL.to_vec()))
            .prop_map(|(value, unit)| format!("{value} {}", unit.symbol())),
    ];
    check((entry, prop::sample::select(Kind::ALL.to_vec())), |(text, kind)| {
        for unit in kind.units() {
            if let Ok(reading) = number::read(text, *kind, unit) {
                assert!(reading.amount(*kind).get(reading.unit).is_finite(), "{text}");
                // In any unit, what is shown is a number or nothing.
                let shown = format::amount(reading.amount(*kind), unit, DecimalMark::Point);
                assert!(!shown.contains("inf") && !shown.contains("NaN") && !shown.contains('∞'), "{text}: {shown}");
            }
        }
        _ = Unit::from_symbol(text);
    });
}

/// Far too large, and far too deep: refused. How soon: `tests/bench/record.rs`.
#[test]
fn what_is_huge_is_refused() {
    let huge = "[".repeat(100_000_000);
    assert!(RecipeFile::read(&huge).is_err());
    assert!(library().merge_file(&huge).is_err());
    assert!(library().merge_file(&huge[..40_000_000]).is_err());
}
