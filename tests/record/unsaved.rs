//! A trial that another one takes the place of is set aside only where something of it would be lost.

use super::sample::{draft, stamp};
use haulm::domain::Entry;
use haulm::domain::line::example_line;
use haulm::domain::trial::weigh_sheet::example::example_sheet;
use haulm::domain::trial::{BoardDraft, BoardId, WeighField};
use haulm::quantity::Unit;
use haulm::record::content::kept_line::{KeptLine, LineContent};
use haulm::record::content::revision::Standing;
use haulm::record::content::trial::{OpenTrial, TrialContent};
use haulm::record::limits::{LONGEST_NAME, clipped_name};
use haulm::record::store::MemoryStore;
use haulm::record::{Library, LineRecord, TrialId};

fn library() -> Library<MemoryStore> {
    Library::blank(MemoryStore::default())
}

fn new_trial() -> OpenTrial {
    OpenTrial { from: None, trial: TrialContent::of("Straw".to_owned(), draft("680"), None) }
}

fn with_mat(mut open: OpenTrial, length: &str) -> OpenTrial {
    *open.trial.sheet.entry_mut(WeighField::MatLength) = Entry::typed(length, Unit::Millimetre);
    open
}

fn saved(library: &Library<MemoryStore>, open: &OpenTrial) -> TrialId {
    let before = open.from.and_then(|id| library.trial(id).unwrap());
    library.save_trial(&open.trial.clone().seal(before.as_ref(), stamp(7)).unwrap()).unwrap()
}

#[test]
fn a_trial_with_nothing_typed_is_not_set_aside() {
    assert!(!library().is_unsaved(&new_trial()));
}

/// Nor is the example of a first start, nor a laboratory, which is kept by itself; a mat typed over the example is work.
#[test]
fn an_example_and_a_laboratory_are_not_set_aside() {
    let mut example = new_trial();
    example.trial.sheet = example_sheet();
    assert!(!library().is_unsaved(&example));
    assert!(library().is_unsaved(&with_mat(example.clone(), "450")));
    for mut open in [new_trial(), example] {
        *open.trial.sheet.entry_mut(WeighField::LiquidStep) = Entry::typed("0.1", Unit::Gram);
        assert!(!library().is_unsaved(&open));
    }
}

#[test]
fn whatever_was_typed_is_work() {
    let changes: [fn(&mut TrialContent); 3] = [
        |trial| trial.name = "Series 4".to_owned(),
        |trial| trial.note = "after the new screen".to_owned(),
        |trial| trial.boards.push(BoardDraft::blank(BoardId(1))),
    ];
    for change in changes {
        let mut open = new_trial();
        change(&mut open.trial);
        assert!(library().is_unsaved(&open), "{:?}", open.trial);
    }
    assert!(library().is_unsaved(&with_mat(new_trial(), "450")));
}

#[test]
fn a_saved_trial_is_work_again_once_it_is_changed() {
    let library = library();
    let mut open = with_mat(new_trial(), "450");
    open.trial.name = "Series 4".to_owned();
    open.from = Some(saved(&library, &open));
    assert!(!library.is_unsaved(&open));
    open.trial.note = "pressed longer".to_owned();
    assert!(library.is_unsaved(&open));
    // Set aside as a trial of its own: it is there now, and not a second time.
    let aside = OpenTrial { from: None, trial: open.trial.clone() };
    saved(&library, &aside);
    assert!(!library.is_unsaved(&open));
}

#[test]
fn a_new_trial_goes_on_with_the_weigh_sheet_of_a_saved_one() {
    let library = library();
    let mut open = with_mat(new_trial(), "450");
    open.trial.name = "Series 4".to_owned();
    saved(&library, &open);
    assert!(!library.is_unsaved(&with_mat(new_trial(), "450")));
    assert!(library.is_unsaved(&with_mat(new_trial(), "460")));
}

#[test]
fn a_line_of_the_mills_own_is_kept_once_and_found_again() {
    let library = library();
    let example = LineRecord { book: example_line(&draft("680")), example: true, ..LineRecord::default() };
    assert!(!library.is_line_unsaved(&LineRecord::default()));
    assert!(!library.is_line_unsaved(&example));
    let own = LineRecord { example: false, ..example };
    assert!(library.is_line_unsaved(&own));
    let kept = KeptLine::new(LineContent::new("Unsaved work".to_owned(), draft("680"), own.clone(), stamp(7))).unwrap();
    let id = library.save_line(&kept).unwrap();
    assert!(!library.is_line_unsaved(&own));
    assert_eq!(library.line(id), Some(kept.clone()));
    assert_eq!(library.lines().unwrap(), std::slice::from_ref(&kept));
    // Deleted, it is no longer there to fall back on; put back, it is.
    let deleted = kept.with_standing(Standing::Removed, stamp(8)).unwrap();
    library.save_line(&deleted).unwrap();
    assert!(library.lines().unwrap().is_empty());
    assert!(library.is_line_unsaved(&own));
    let back = deleted.with_standing(Standing::Kept, stamp(9)).unwrap();
    library.save_line(&back).unwrap();
    assert_eq!(library.lines().unwrap(), [back]);
}

#[test]
fn a_kept_line_goes_into_another_library_by_the_library_file() {
    let (from, mut to) = (library(), library());
    let own = LineRecord { book: example_line(&draft("680")), ..LineRecord::default() };
    let kept = KeptLine::new(LineContent::new("Unsaved work".to_owned(), draft("680"), own, stamp(7))).unwrap();
    from.save_line(&kept).unwrap();
    let merged = to.merge_file(&from.library_file().unwrap().0).unwrap();
    assert_eq!((merged.added, merged.refused), (1, 0));
    assert_eq!(to.lines().unwrap(), [kept]);
}

/// A name that grows by "Unsaved work, 10:42: " must still be read again.
#[test]
fn the_longest_name_is_read_again_after_it_was_set_aside() {
    let long = format!("Unsaved work, 10:42: {}", "n".repeat(LONGEST_NAME));
    let reads = |name: &str| {
        let mut open = new_trial();
        name.clone_into(&mut open.trial.name);
        let library = library();
        let id = saved(&library, &open);
        library.trial(id).is_ok_and(|trial| trial.is_some())
    };
    assert!(!reads(&long));
    assert!(reads(&clipped_name(&long)));
    assert!(clipped_name(&long).starts_with("Unsaved work, 10:42: n"));
}
