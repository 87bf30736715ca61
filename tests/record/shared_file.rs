//! Two laptops and one library file on a shared drive: however their looks, merges and writes fall between each other, nothing is
//! lost. A file there has no lock; all that a laptop sees is when it was written last.

use crate::sample::{draft, stamp, title};
use haulm::record::content::revision::Revision;
use haulm::record::store::MemoryStore;
use haulm::record::store::shared_file::plan;
use haulm::record::{Library, RevisionId};
use proptest::prelude::*;
use std::collections::BTreeSet;

/// The file, and how often it was written.
#[derive(Debug, Default)]
struct File {
    text: String,
    written: u32,
}

/// What a laptop does next. Anything may happen at the other one in between.
#[derive(Debug, Default, Clone)]
enum Next {
    /// Look at the file and merge it.
    #[default]
    Look,
    /// See whether the file is as it was when it was looked at.
    Check(String, usize),
    /// Write it.
    Write(String, usize),
    /// Read it back.
    Verify(String, usize),
    Done,
}

struct Laptop {
    library: Library<MemoryStore>,
    seen: Option<u32>,
    there: usize,
    next: Next,
}

impl Laptop {
    fn new(density: u32) -> Self {
        let mut library = Library::blank(MemoryStore::default());
        library.save(revision(density)).unwrap();
        Self { library, seen: None, there: 0, next: Next::Look }
    }

    /// The same steps as `ui::persistence::shared` takes, one at a time.
    fn step(&mut self, file: &mut File) {
        self.next = match std::mem::take(&mut self.next) {
            Next::Look => {
                let text = (self.seen != Some(file.written)).then(|| file.text.clone());
                self.seen = Some(file.written);
                let plan = plan(&mut self.library, text.as_deref(), self.there).unwrap();
                self.there = plan.there;
                plan.write.map_or(Next::Done, |text| Next::Check(text, plan.count))
            }
            Next::Check(..) if self.seen != Some(file.written) => Next::Look,
            Next::Check(text, count) => Next::Write(text, count),
            Next::Write(text, count) => {
                file.text.clone_from(&text);
                file.written += 1;
                Next::Verify(text, count)
            }
            Next::Verify(text, _) if file.text != text => Next::Look,
            Next::Verify(_, count) => {
                (self.seen, self.there) = (Some(file.written), count);
                Next::Done
            }
            Next::Done => Next::Done,
        };
    }

    fn finish(&mut self, file: &mut File) {
        if matches!(self.next, Next::Done) {
            self.next = Next::Look;
        }
        for _ in 0..50 {
            self.step(file);
        }
        assert!(matches!(self.next, Next::Done), "{:?}", self.next);
    }

    fn has(&self) -> BTreeSet<RevisionId> {
        self.library.recipes().iter().map(|listed| listed.head.summary.id).collect()
    }
}

fn revision(density: u32) -> Revision {
    Revision::first(title("Straw"), draft(&density.to_string()), stamp(u64::from(density))).unwrap()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn two_laptops_that_write_in_the_same_second_lose_nothing(
        turns in prop::collection::vec((any::<bool>(), prop::option::weighted(0.15, 600_u32..700)), 0..40),
    ) {
        let mut file = File::default();
        let mut laptops = [Laptop::new(500), Laptop::new(501)];
        let mut all = BTreeSet::from([revision(500).revision(), revision(501).revision()]);
        for (which, save) in turns {
            let laptop = &mut laptops[usize::from(which)];
            if let Some(density) = save {
                all.insert(laptop.library.save(revision(density)).unwrap());
                if matches!(laptop.next, Next::Done) {
                    laptop.next = Next::Look;
                }
            }
            laptop.step(&mut file);
        }
        // Each looks again, as it does whenever its window is looked at: what was saved last goes out, then comes in.
        for _ in 0..3 {
            laptops.iter_mut().for_each(|laptop| laptop.finish(&mut file));
        }
        let mut third = Library::blank(MemoryStore::default());
        third.merge_file(&file.text).unwrap();
        let in_file: BTreeSet<RevisionId> = third.recipes().iter().map(|listed| listed.head.summary.id).collect();
        prop_assert_eq!(&in_file, &all);
        prop_assert_eq!(&laptops[0].has(), &all);
        prop_assert_eq!(&laptops[1].has(), &all);
    }
}

#[test]
fn a_file_that_says_it_all_is_not_written_again() {
    let mut laptop = Laptop::new(500);
    let mut file = File::default();
    laptop.finish(&mut file);
    let written = file.written;
    laptop.finish(&mut file);
    laptop.seen = None;
    laptop.finish(&mut file);
    assert_eq!((written, file.written), (1, 1));
}

#[test]
fn a_file_with_records_that_cannot_be_read_is_left_as_it_is() {
    let mut library = Library::blank(MemoryStore::default());
    library.save(revision(500)).unwrap();
    let text = r#"{"haulm":"library","version":1,"records":[{"haulm":"something later"}]}"#;
    let plan = plan(&mut library, Some(text), 0).unwrap();
    assert_eq!((plan.write, plan.merged.refused), (None, 1));
}
