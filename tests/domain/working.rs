//! Every working's formula, evaluated with its numbers by a general-purpose expression library,
//! gives the figure that the solver gave: words and code cannot drift apart.

use crate::formula;
use crate::support::solved;
use haulm::domain::Figure;
use haulm::domain::working::{Ground, working};
use proptest::prelude::*;

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn formulas_give_the_figures((_, case) in solved()) {
        let mut count = 0;
        for (figure, amount) in case.figures() {
            prop_assert!(amount.base.is_finite());
            let working = working(figure, &case).unwrap_or_else(|| panic!("{figure:?} has no working"));
            formula::check(&working);
            // Without liquids the furnish is the fibre; every other formula has numbers to put in.
            prop_assert!(
                working.ground == Ground::Entered || figure == Figure::FurnishPerFibre || !working.givens.is_empty(),
                "{figure:?} says nothing"
            );
            count += 1;
        }
        prop_assert!(count > 40);
    }
}
