//! The whole library as one file, and the union of several.

use crate::sample::{draft, stamp, title};
use haulm::record::content::revision::Revision;
use haulm::record::file::library::Merged;
use haulm::record::store::MemoryStore;
use haulm::record::{Library, Refusal, Store};
use proptest::prelude::*;

fn blank() -> Library<MemoryStore> {
    Library::open(MemoryStore::default()).unwrap()
}

/// A library whose recipes are those of `seeds`, each gone on by one revision.
fn filled(seeds: &[u8]) -> Library<MemoryStore> {
    let mut library = blank();
    for seed in seeds {
        let first = Revision::first(title(&format!("Straw {seed}")), draft("680"), stamp(u64::from(*seed))).unwrap();
        let next = first.next(title("Straw"), draft(&(600 + u32::from(*seed)).to_string()), stamp(1_000)).unwrap();
        library.save(first).unwrap();
        library.save(next).unwrap();
    }
    library
}

/// All records of ours, with their texts.
fn records(library: &Library<MemoryStore>) -> Vec<(String, String)> {
    let mut keys = library.store().keys().unwrap();
    keys.sort();
    keys.into_iter().map(|key| (key.clone(), library.store().read(&key).unwrap().unwrap())).collect()
}

fn file(library: &Library<MemoryStore>) -> String {
    library.library_file().unwrap().0
}

#[test]
fn a_library_read_from_its_file_is_the_same() {
    let library = filled(&[1, 2, 3]);
    let (text, count) = library.library_file().unwrap();
    assert_eq!(count, 6);
    let mut other = blank();
    assert_eq!(other.merge_file(&text), Ok(Merged { added: 6, ..Merged::default() }));
    assert_eq!(records(&other), records(&library));
    assert_eq!(other.recipes().len(), 3);
}

/// Pretty-printed on its way, a record keeps its name: it is made from the text without layout.
#[test]
fn layout_does_not_matter() {
    let library = filled(&[4]);
    let value: serde_json::Value = serde_json::from_str(&file(&library)).unwrap();
    let mut other = blank();
    assert_eq!(other.merge_file(&format!("{value:#}")).unwrap().added, 2);
    assert_eq!(records(&other), records(&library));
}

#[test]
fn what_cannot_be_read_is_left_out_and_counted() {
    let library = filled(&[5]);
    let text = file(&library)
        .replace("\"records\": [", "\"records\": [{\"haulm\":\"pie\"}, 7, {\"haulm\":\"revision\",\"version\":1},");
    let merged = blank().merge_file(&text).unwrap();
    assert_eq!((merged.added, merged.refused), (2, 3));
}

#[test]
fn a_damaged_record_of_the_store_does_not_travel() {
    let library = filled(&[6]);
    let key = library.store().keys().unwrap().pop().unwrap();
    library.store().write(&key, "{\"haulm\":\"revision\"").unwrap();
    let (text, count) = library.library_file().unwrap();
    assert_eq!(count, 1);
    assert_eq!(blank().merge_file(&text).unwrap().added, 1);
}

#[test]
fn a_newer_file_and_a_foreign_one_change_nothing() {
    let mut library = filled(&[7]);
    let before = records(&library);
    let newer = file(&library).replace("\"version\": 1", "\"version\": 2");
    assert!(matches!(library.merge_file(&newer), Err(Refusal::Newer { version: 2, known: 1 })));
    for text in ["", "[]", "{}", "{\"haulm\":\"recipe\",\"version\":1}", "{\"haulm\":\"library\",\"version\":1}"] {
        assert!(library.merge_file(text).is_err(), "{text}");
    }
    assert_eq!(records(&library), before);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// Taking in is a union: once more adds nothing, and the order does not matter.
    #[test]
    fn taking_in_is_idempotent_commutative_and_associative(
        a in prop::collection::vec(0_u8..12, 0..5),
        b in prop::collection::vec(0_u8..12, 0..5),
        c in prop::collection::vec(0_u8..12, 0..5),
    ) {
        let files = [file(&filled(&a)), file(&filled(&b)), file(&filled(&c))];
        let union = |order: &[usize]| {
            let mut library = blank();
            for at in order {
                library.merge_file(&files[*at]).unwrap();
            }
            library
        };
        let all = records(&union(&[0, 1, 2]));
        prop_assert_eq!(&records(&union(&[2, 1, 0])), &all);
        prop_assert_eq!(&records(&union(&[1, 0, 2, 1, 0])), &all);
        // (a ∪ b) ∪ c, by way of a file of the first two.
        let mut grouped = filled(&c);
        grouped.merge_file(&file(&union(&[0, 1]))).unwrap();
        prop_assert_eq!(&records(&grouped), &all);
    }
}

mod link {
    use super::{draft, title};
    use haulm::record::content::revision::Title;
    use haulm::record::file::recipe::RecipeFile;

    #[test]
    fn a_slim_recipe_reads_as_the_whole_one() {
        let mut whole = draft("680");
        whole.plain.sand_top.text = "0.4".to_owned();
        whole.plain.sand_top.preset = false;
        let file = RecipeFile::new(title("Straw"), whole, None);
        let slim = file.slim().unwrap();
        let read = RecipeFile::read_slim(&slim).unwrap();
        assert_eq!((read.draft, read.name, read.note), (file.draft.clone(), file.name.clone(), file.note.clone()));
        assert!(slim.len() * 4 < file.text().unwrap().len(), "{}", slim.len());
    }

    /// The recipe that the app starts with, and a blank one: what they say and no more.
    #[test]
    fn a_link_holds_only_what_differs_from_a_blank_recipe() {
        let slim = |draft| RecipeFile::new(Title::default(), draft, None).slim().unwrap();
        assert_eq!(slim(haulm::domain::Draft::default()), r#"{"draft":{}}"#);
        let example = haulm::domain::example();
        let text = slim(example.clone());
        assert!(text.len() < 1_000, "{} bytes: {text}", text.len());
        assert!(text.contains(r#""fibre_flow":"8500""#), "{text}");
        assert_eq!(RecipeFile::read_slim(&text).unwrap().draft, example);
    }

    /// A whole file in a link is one too, and what is no recipe is refused as from a file.
    #[test]
    fn a_whole_file_in_a_link_reads_too() {
        let file = RecipeFile::new(title("Straw"), draft("680"), None);
        assert_eq!(RecipeFile::read_slim(&file.text().unwrap()).unwrap(), file);
        for text in ["", "[]", "{", r#"{"haulm":"list"}"#, r#"{"draft":{"plain":7}}"#, r#"{"version":9,"draft":{}}"#] {
            assert!(RecipeFile::read_slim(text).is_err(), "{text}");
        }
    }
}
