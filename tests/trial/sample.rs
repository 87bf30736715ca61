//! A recipe and a sheet to test with: an invented mill's.

use crate::support::{liquid, plain_recipe};
use haulm::domain::trial::weigh_sheet::plan::plan;
use haulm::domain::trial::weigh_sheet::sheet::{WeighSheet, make_out};
use haulm::domain::trial::{SheetDraft, TrialFinding, WeighField};
use haulm::domain::{DoseWay, Draft, Entry, LiquidId, Role, Substance};
use haulm::quantity::Unit;

/// UF with a hardener on its solids, and wax: liquids 1, 2 and 3.
pub fn recipe() -> Draft {
    let mut draft = plain_recipe();
    let mut resin = liquid(1, "12", "65", "1280");
    resin.substance = Substance::Uf;
    let mut hardener = liquid(2, "2", "40", "1228");
    hardener.role = Role::Hardener;
    hardener.substance = Substance::AmmoniumSulfate;
    hardener.dose_way = DoseWay::SolidsOnLiquid(LiquidId(1));
    let mut wax = liquid(3, "0.8", "55", "950");
    wax.role = Role::Wax;
    wax.substance = Substance::WaxEmulsion;
    draft.liquids = vec![resin, hardener, wax];
    // Drier fibre than on the line, so that there is a water line.
    draft.plain.fibre_moisture = Entry::typed("2", Unit::PercentDryBasis);
    draft.plain.mat_moisture = Entry::typed("12", Unit::PercentDryBasis);
    draft
}

/// A mat of 450 × 450 mm, one board, no overage, no rounding.
pub fn bare_sheet() -> SheetDraft {
    let mut sheet = SheetDraft::default();
    type_in(&mut sheet, WeighField::MatLength, "450");
    type_in(&mut sheet, WeighField::MatWidth, "450");
    for field in [WeighField::Overage, WeighField::WallLoss] {
        type_in(&mut sheet, field, "0");
    }
    for field in [WeighField::FibreStep, WeighField::LiquidStep, WeighField::FibreMinimum, WeighField::LiquidMinimum] {
        type_in(&mut sheet, field, "");
    }
    sheet
}

pub fn type_in(sheet: &mut SheetDraft, field: WeighField, text: &str) {
    sheet.entry_mut(field).text = text.to_owned();
    sheet.entry_mut(field).preset = false;
}

/// The sheet, with everything that there is to say about it.
pub fn made_out(recipe: &Draft, sheet: &SheetDraft) -> (Option<WeighSheet>, Vec<TrialFinding>) {
    let planned = plan(recipe, sheet);
    let mut findings = planned.findings;
    let Some(plan) = planned.plan else { return (None, findings) };
    let outcome = make_out(plan);
    findings.extend(outcome.findings);
    (outcome.sheet, findings)
}

pub fn sheet(recipe: &Draft, sheet: &SheetDraft) -> WeighSheet {
    let (sheet, findings) = made_out(recipe, sheet);
    sheet.unwrap_or_else(|| panic!("{findings:?}"))
}
