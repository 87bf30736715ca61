//! Recipes and stamps to test with: an invented mill's.

use haulm::domain::{Draft, Entry, LiquidDraft, LiquidId, Role, Substance};
use haulm::quantity::Unit;
use haulm::record::content::revision::{Stamp, Title};

pub fn draft(density: &str) -> Draft {
    let mut draft = Draft::default();
    draft.plain.board_density = Entry::typed(density, Unit::KilogramPerCubicMetre);
    draft.plain.thickness = Entry::typed("16", Unit::Millimetre);
    let mut binder = LiquidDraft::blank(LiquidId(1), Role::Binder);
    binder.name = "Neat isocyanate".to_owned();
    binder.substance = Substance::Pmdi;
    let mut wax = LiquidDraft::blank(LiquidId(2), Role::Wax);
    wax.name = "Wax 55".to_owned();
    wax.substance = Substance::WaxEmulsion;
    draft.liquids = vec![binder, wax];
    draft
}

pub fn title(name: &str) -> Title {
    Title { name: name.to_owned(), note: "after the new screen".to_owned(), tags: vec!["trial".to_owned()] }
}

pub fn stamp(at: u64) -> Stamp {
    Stamp { at, author: "AB".to_owned(), remark: String::new() }
}
