//! Which boxes count in a recipe, by what was chosen.

use crate::domain::balance::station::Station;
use crate::domain::recipe::draft::{Draft, FeedWay, WaterWay};
use crate::domain::recipe::field::{Field, LiquidField};

/// The fields that count, in the order of the page: of the ways to set the fibre flow and the water only the one that is
/// chosen.
#[must_use]
pub fn in_effect(draft: &Draft) -> Vec<Field> {
    let counts = |field: &Field| match field {
        Field::FibreFlow => matches!(draft.feed_way, FeedWay::OvenDry | FeedWay::Belt),
        Field::WantedLineSpeed => draft.feed_way == FeedWay::LineSpeed,
        Field::WantedPressFactor => draft.feed_way == FeedWay::PressFactor,
        Field::MatMoisture => draft.water_way == WaterWay::ToMatMoisture,
        Field::WaterOnFibre => draft.water_way == WaterWay::OnFibre,
        Field::WaterFlow => draft.water_way == WaterWay::Flow,
        _ => true,
    };
    let plain =
        |station: Station| Field::PLAIN.iter().copied().filter(move |field| field.station() == station).filter(counts);
    let of_liquids = draft
        .liquids
        .iter()
        .flat_map(|liquid| LiquidField::ALL.iter().map(move |part| Field::Liquid(liquid.id, *part)));
    let mut fields: Vec<Field> = plain(Station::Fibre).chain(of_liquids).collect();
    for station in Station::ALL.iter().skip(1) {
        fields.extend(plain(*station));
    }
    fields
}

#[cfg(test)]
mod tests {
    use super::in_effect;
    use crate::domain::recipe::draft::{FeedWay, WaterWay};
    use crate::domain::recipe::example::example;
    use crate::domain::recipe::field::Field;

    #[test]
    fn only_what_is_chosen_counts() {
        let mut draft = example();
        let fields = in_effect(&draft);
        assert!(fields.contains(&Field::FibreFlow) && fields.contains(&Field::MatMoisture));
        for other in [Field::WantedLineSpeed, Field::WantedPressFactor, Field::WaterOnFibre, Field::WaterFlow] {
            assert!(!fields.contains(&other), "{other:?}");
        }
        (draft.feed_way, draft.water_way) = (FeedWay::LineSpeed, WaterWay::Flow);
        let fields = in_effect(&draft);
        assert!(fields.contains(&Field::WantedLineSpeed) && fields.contains(&Field::WaterFlow));
        assert!(!fields.contains(&Field::FibreFlow) && !fields.contains(&Field::MatMoisture));
    }

    #[test]
    fn each_field_comes_once() {
        let fields = in_effect(&example());
        for (at, field) in fields.iter().enumerate() {
            assert!(!fields[at + 1..].contains(field), "{field:?}");
        }
    }
}
