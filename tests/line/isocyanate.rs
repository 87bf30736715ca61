//! No advice at the line puts water into an isocyanate.

use super::mill::Mill;
use haulm::domain::line::{DeliveryField, Help, LineField, LineFindingKind, deliver};
use haulm::domain::{Entry, Field, Grade, Substance, work_out};
use haulm::quantity::Unit;
use std::collections::BTreeSet;

/// Over all substances and fibre flows from far below to far above what the pump delivers: other solids are named for liquids that
/// bring water, and never for an isocyanate.
#[test]
fn no_pump_asks_for_an_isocyanate_with_other_solids() {
    let mut thinned = BTreeSet::new();
    let mut out_of_reach = 0;
    for substance in Substance::ALL {
        for fibre in ["400", "1500", "3000", "8500", "17000", "25000", "60000"] {
            for spray in ["", "50"] {
                let mut mill = Mill::new();
                mill.draft.liquids[0].substance = *substance;
                mill.draft.liquids[0].spray_solids = Entry::typed(spray, Unit::Percent);
                *mill.draft.entry_mut(Field::FibreFlow).unwrap() = Entry::typed(fibre, Unit::KilogramPerHour);
                mill.case = work_out(&mill.draft).case.unwrap();
                let name = mill.draft.liquids[0].id;
                for row in mill.sheet().rows.iter().filter(|row| row.fed == haulm::domain::line::Fed::Liquid(name)) {
                    for finding in &mill.sheet().findings {
                        let LineFindingKind::OutOfReach { help, .. } = &finding.what else { continue };
                        if finding.pump() != Some(row.pump) {
                            continue;
                        }
                        out_of_reach += 1;
                        if help.iter().any(|help| matches!(help, Help::Solids(_))) {
                            thinned.insert(format!("{substance:?}"));
                        }
                    }
                }
            }
        }
    }
    assert!(out_of_reach > 50, "only {out_of_reach} pumps out of reach");
    assert!(!thinned.contains("Pmdi"), "an isocyanate with other solids");
    assert_eq!(thinned.len(), Substance::ALL.len() - 1, "the others may have other solids: {thinned:?}");
}

/// A certificate of 97 % solids for an isocyanate is asked about: it is no 3 % of water, blended or not, and cannot be accepted as such.
#[test]
fn a_certificate_does_not_bring_water_into_an_isocyanate() {
    for amount in ["", "5000"] {
        let mut mill = Mill::new();
        let binder = mill.draft.liquids[0].id;
        assert!(mill.draft.liquids[0].substance.is_isocyanate());
        mill.book.delivered = Some(binder);
        mill.put(LineField::Delivery(DeliveryField::Solids), "97", Unit::Percent);
        mill.put(LineField::Delivery(DeliveryField::Amount), amount, Unit::Kilogram);
        let delivered = deliver(&mill.draft, &mill.case, &mill.line(), &mill.book).0.unwrap();
        assert!(delivered.after.is_none(), "no settings for it: {amount:?}");
        assert!(delivered.recipe_findings.iter().any(|finding| finding.grade == Grade::Stop), "{delivered:?}");
    }
}
