//! No advice puts water into an isocyanate: not in a tank, not by its certificate, not by what would help.

use crate::support::recipe;
use haulm::domain::compare::variable::{limit, set};
use haulm::domain::mixing::glue_batch::GlueError;
use haulm::domain::mixing::{MixDraft, MixError, PremixCandidate, batch, tank};
use haulm::domain::{
    Draft, Entry, Field, Finding, Grade, LiquidDraft, LiquidField, LiquidId, Place, Role, Substance, What, example,
    work_out,
};
use haulm::quantity::{Unit, Units};
use haulm::ui::text::{Context, words};
use proptest::prelude::*;

const FIRST: LiquidId = LiquidId(1);

fn said(draft: &Draft, finding: &Finding) -> String {
    let context = Context { units: &Units::default(), draft, currency: "€" };
    let message = words::finding(finding, &context);
    format!("{} {}", message.what, message.fix)
}

/// The example with its binder changed to `substance`.
fn bound_with(substance: Substance, role: Role, solids: &str) -> Draft {
    let mut draft = example();
    draft.liquids[0].substance = substance;
    draft.liquids[0].role = role;
    draft.liquids[0].solids = Entry::typed(solids, Unit::Percent);
    draft
}

/// The rest of the certificate's solids is never taken as water.
#[test]
fn solids_below_one_hundred_are_asked_about() {
    for substance in Substance::ALL {
        for solids in ["20", "37", "97", "99.9", "100"] {
            let draft = bound_with(*substance, Role::Binder, solids);
            let outcome = work_out(&draft);
            let place = Place::Field(Field::Liquid(FIRST, LiquidField::Solids));
            let stop = outcome.findings.iter().find(|found| found.grade == Grade::Stop && found.place == place);
            let refused = substance.is_isocyanate() && solids != "100";
            assert_eq!(stop.is_some(), refused, "{substance:?} with {solids} %");
            assert_eq!(outcome.case.is_none(), refused, "{substance:?} with {solids} %");
            if let Some(stop) = stop {
                assert!(said(&draft, stop).contains("Enter 100 %."), "{}", said(&draft, stop));
            }
        }
    }
}

/// An empty box asks for 100 % and not for those of a resin.
#[test]
fn the_example_for_an_empty_box_is_without_water() {
    let draft = bound_with(Substance::Pmdi, Role::Binder, "");
    let missing = work_out(&draft).findings.into_iter().find(|found| found.what == What::Missing).unwrap();
    assert!(said(&draft, &missing).contains("100"), "{}", said(&draft, &missing));
}

/// A comparison that looks for an input does not find other solids.
#[test]
fn no_input_that_is_looked_for_lowers_its_solids() {
    let mut input = work_out(&example()).case.unwrap().input;
    let field = Field::Liquid(FIRST, LiquidField::Solids);
    assert!(!limit(&input, field).allows(0.37));
    assert!(set(&mut input, field, 0.37).is_err());
}

fn brings_water(candidate: &PremixCandidate) -> bool {
    candidate.in_tank && !candidate.substance.is_some_and(Substance::is_isocyanate) && candidate.solids.value < 1.0
}

proptest! {
    /// Whatever the recipe, its roles and what was ticked: unasked no isocyanate goes into a tank, and with water there it is
    /// refused. No finding says to thin or premix one.
    #[test]
    fn never_with_water(mut draft in recipe(), role in prop::sample::select(Role::ALL), ticked in any::<u16>(), wet in 0.0..40.0_f64) {
        let id = draft.free_id();
        let pmdi = LiquidDraft {
            name: "isocyanate".to_owned(),
            substance: Substance::Pmdi,
            dose: Entry::typed("4", Unit::Percent),
            solids: Entry::typed("100", Unit::Percent),
            density: Entry::typed("1230", Unit::KilogramPerCubicMetre),
            ..LiquidDraft::blank(id, role)
        };
        draft.liquids.push(pmdi);
        *draft.entry_mut(Field::FibreMoisture).unwrap() = Entry::typed(format!("{wet:.3}"), Unit::PercentDryBasis);
        let outcome = work_out(&draft);
        for finding in &outcome.findings {
            let text = said(&draft, finding).to_lowercase();
            prop_assert!(!text.contains("premix") && !text.contains("thin the liquid") && !text.contains("thin it"), "{}", text);
            if finding.place == Place::Field(Field::Liquid(id, LiquidField::Solids)) {
                prop_assert!(matches!(finding.what, What::NotAllowed { .. }), "{}", text);
            }
        }
        let Some(case) = outcome.case else { return Ok(()) };
        let mut mix = MixDraft::default();
        let unasked = tank(&mix, &draft, &case);
        prop_assert!(!unasked.iter().any(|part| part.in_tank && part.substance.is_some_and(Substance::is_isocyanate)));
        for (at, part) in unasked.iter().enumerate() {
            mix.part_mut(&part.key).in_tank = Some(ticked >> (at % 16) & 1 == 1);
        }
        let chosen = tank(&mix, &draft, &case);
        let isocyanate = chosen.iter().any(|part| part.in_tank && part.substance.is_some_and(Substance::is_isocyanate));
        let refused = batch(&mix, &chosen).err() == Some(MixError::Refused(GlueError::IsocyanateWithWater));
        prop_assert_eq!(refused, isocyanate && chosen.iter().any(brings_water));
    }
}
