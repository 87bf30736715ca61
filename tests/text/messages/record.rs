//! Files and stored records that are not taken, and saves that fail.

use super::{Carrier, example, words, written};
use haulm::record::content::revision::Title;
use haulm::record::file::recipe::{LARGEST, RecipeFile};
use haulm::record::id::Id;
use haulm::record::refusal::DEEPEST;
use haulm::record::store::library::{SaveError, Unread};
use haulm::record::{Refusal, StoreError};

fn text_of_example() -> String {
    RecipeFile::new(Title { name: "Example".to_owned(), ..Title::default() }, example(), None).text().unwrap()
}

/// Texts that are refused, each by what is wrong with it.
fn spoiled() -> Vec<(&'static str, String)> {
    let whole = text_of_example();
    let swap = |from: &str, to: &str| {
        assert!(whole.contains(from), "{from}");
        whole.replacen(from, to, 1)
    };
    vec![
        ("too large", " ".repeat(LARGEST + 1)),
        ("too deep", format!("{}{}", "[".repeat(DEEPEST + 1), "]".repeat(DEEPEST + 1))),
        ("empty", String::new()),
        ("nothing but spaces", " \n\t".to_owned()),
        ("breaks off", whole[..whole.len() / 2].to_owned()),
        ("no JSON", "Dear colleague,\nhere is the recipe.".to_owned()),
        ("too many liquids", many_liquids(&whole)),
        ("too long a name", swap("\"name\": \"Example\"", &format!("\"name\": \"{}\"", "x".repeat(201)))),
        ("foreign", "{\"name\": \"a list of songs\"}".to_owned()),
        ("another kind", swap("\"recipe\"", "\"library\"")),
        ("newer", swap("\"version\": 1", "\"version\": 9")),
        ("without a version", swap("\"version\": 1,", "")),
        ("a key twice", swap("\"version\": 1,", "\"version\": 1,\n  \"version\": 1,")),
        ("an unknown key twice", swap("\"version\": 1,", "\"version\": 1,\n  \"later\": 1,\n  \"later\": 2,")),
        ("a key of a part twice", swap("\"liquids\":", "\"liquids\": [],\n    \"liquids\":")),
        ("a part is missing", swap("\"liquids\":", "\"juices\":")),
        ("a part of another type", swap("\"name\": \"Example\"", "\"name\": 7")),
        ("a choice that is none", swap("\"oven_dry\"", "\"sun_dry\"")),
        ("a unit that is none", swap("\"unit\": \"kg/h\"", "\"unit\": \"stone/h\"")),
    ]
}

/// With the first liquid five hundred times.
fn many_liquids(whole: &str) -> String {
    let mut file: serde_json::Value = serde_json::from_str(whole).unwrap();
    let liquid = file["draft"]["liquids"][0].clone();
    file["draft"]["liquids"] = vec![liquid; 500].into();
    file.to_string()
}

#[test]
fn refusals() {
    let mut text = String::new();
    let mut seen = [false; 13];
    let mut put = |name: &str, refusal: &Refusal| {
        seen[match refusal {
            Refusal::TooLarge { .. } => 0,
            Refusal::TooDeep { .. } => 1,
            Refusal::NotJson { .. } => 2,
            Refusal::Foreign => 3,
            Refusal::OtherKind { .. } => 4,
            Refusal::Newer { .. } => 5,
            Refusal::Damaged { .. } => 6,
            Refusal::Altered { .. } => 7,
            Refusal::NoVersion => 8,
            Refusal::TooMany { .. } => 9,
            Refusal::TooLong { .. } => 10,
            Refusal::Empty => 11,
            Refusal::DuplicateKey { .. } => 12,
        }] = true;
        for carrier in [Carrier::File, Carrier::Record] {
            text += &format!("{name}, {carrier:?}\n{}", written(&words::refusal(refusal, carrier)));
        }
    };
    for (name, spoiled) in spoiled() {
        put(name, &RecipeFile::read(&spoiled).unwrap_err());
    }
    put("altered", &Refusal::Altered { found: Id::of("a record") });
    assert_eq!(seen, [true; 13]);
    snapshot!("messages", "record_refusals", text);
}

#[test]
fn stores() {
    let errors = [
        StoreError::Full,
        StoreError::Blocked,
        StoreError::Silent,
        StoreError::Other("quota state unknown".to_owned()),
    ];
    let unread = [Unread::Refused(Refusal::Foreign), Unread::BadKey, Unread::Store(StoreError::Blocked)];
    let unsaved = [
        SaveError::Store(StoreError::Full),
        SaveError::NotKept,
        SaveError::Occupied { key: "haulm/revision/0".to_owned() },
        SaveError::Unknown,
        SaveError::NoJson("key must be a string".to_owned()),
    ];
    let mut text = String::new();
    text.extend(errors.iter().map(|error| written(&words::store(error))));
    text.extend(unread.iter().map(|error| written(&words::unread(error))));
    text.extend(unsaved.iter().map(|error| written(&words::unsaved(error))));
    snapshot!("messages", "record_stores", text);
}
