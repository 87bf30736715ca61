//! Prices of liquids that have none of their own.

use crate::domain::compare::draft::CompareDraft;
use crate::domain::compare::number_key::liquid_key;
use crate::domain::recipe::check::read_entry;
use crate::domain::recipe::draft::{Draft, Entry, LiquidDraft};
use crate::domain::recipe::field::LiquidField;
use crate::domain::recipe::limit;
use crate::domain::recipe::product::Product;
use crate::quantity::{Kind, Unit};

/// The key of a liquid's price in [`CompareDraft::prices`].
#[must_use]
pub fn price_key(liquid: &LiquidDraft) -> String {
    liquid_key(&liquid.name, liquid.substance)
}

/// The price of a liquid that has none of its own: as typed for the comparison, else that of the same liquid in the
/// open recipe; blank for none.
#[must_use]
pub fn price_of(typed: &CompareDraft, open: &Draft, liquid: &LiquidDraft) -> Entry {
    let key = price_key(liquid);
    let same = |other: &&LiquidDraft| price_key(other) == key && !other.price.is_blank();
    let own = || open.liquids.iter().find(same).map(|other| Entry { preset: true, ..other.price.clone() });
    typed.prices.get(&key).cloned().or_else(own).unwrap_or_else(|| Entry::empty(Unit::PerTonne))
}

/// Fills in the prices that a system leaves blank, so far as they can be read. One that cannot is reported at its box,
/// and does not take the system's other figures with it.
pub fn fill_prices(typed: &CompareDraft, open: &Draft, system: &mut Draft) {
    for at in 0..system.liquids.len() {
        let Some(liquid) = system.liquids.get(at).filter(|liquid| liquid.price.is_blank()) else { continue };
        let price = price_of(typed, open, liquid);
        let limit = limit::liquid(liquid, LiquidField::Price, false, Product::default());
        if matches!(read_entry(&price, Kind::Price, &limit), Ok(Some(_)))
            && let Some(liquid) = system.liquids.get_mut(at)
        {
            liquid.price = price;
        }
    }
}
