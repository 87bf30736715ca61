//! A trial that another one takes the place of is set aside only where something of it would be lost.

use super::sample::{draft, stamp};
use haulm::domain::Entry;
use haulm::domain::trial::{BoardDraft, BoardId, WeighField};
use haulm::quantity::Unit;
use haulm::record::content::trial::{OpenTrial, TrialContent};
use haulm::record::store::MemoryStore;
use haulm::record::{Library, TrialId};

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
