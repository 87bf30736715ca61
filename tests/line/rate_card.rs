//! The rate card: every cell is the recipe solved there.

use super::mill::Mill;
use approx::assert_relative_eq;
use haulm::domain::line::{
    CardField, CardRows, LineField, LinePlace, LineWhat, RateCard, Standing, rate_card, setting_sheet,
};
use haulm::domain::recipe::draft::{Entry, FeedWay};
use haulm::domain::{Field, work_out};
use haulm::quantity::Unit;

fn card(mill: &Mill) -> RateCard {
    let (card, findings) = rate_card(&mill.draft, &mill.case, &mill.line(), &mill.book);
    assert_eq!(findings, vec![]);
    card.unwrap()
}

#[test]
fn a_cell_is_the_recipe_solved_there() {
    for (rows, way) in [(CardRows::Belt, FeedWay::Belt), (CardRows::OvenDry, FeedWay::OvenDry)] {
        let mut mill = Mill::new();
        mill.book.card_rows = rows;
        let card = card(&mill);
        assert_eq!((card.flows.len(), card.moistures.len(), card.pumps.len()), (9, 5, 3));
        for (flow, cells) in card.flows.iter().zip(&card.cells) {
            for (moisture, cell) in card.moistures.iter().zip(cells) {
                let mut draft = mill.draft.clone();
                draft.feed_way = way;
                let mut put = |field, value: f64, unit: Unit| {
                    *draft.entry_mut(field).unwrap() = Entry::typed(format!("{:e}", unit.from_base(value)), unit);
                };
                put(Field::FibreFlow, flow.value, Unit::KilogramPerHour);
                put(Field::FibreMoisture, moisture.dry_basis().value, Unit::PercentDryBasis);
                let case = work_out(&draft).case.unwrap();
                let single = setting_sheet(&draft, &case, &mill.line());
                let cell = cell.as_ref().unwrap();
                for (there, row) in cell.pumps.iter().zip(&single.rows) {
                    assert_relative_eq!(there.mass.value, row.mass.value, max_relative = 1e-12);
                    assert_relative_eq!(there.setting.unwrap().0, row.setting.unwrap().setting.0, max_relative = 1e-12);
                    assert_eq!(there.standing, row.standing);
                }
            }
        }
    }
}

#[test]
fn cells_out_of_range_are_marked() {
    let mut mill = Mill::new();
    mill.put(LineField::Card(CardField::FlowTo), "20000", Unit::KilogramPerHour);
    let card = card(&mill);
    let marks = |at: usize| {
        let cells = &card.cells[at];
        cells.iter().flatten().flat_map(|cell| &cell.pumps).filter(|pump| pump.standing != Standing::Within).count()
    };
    assert_eq!(marks(2), 0);
    assert!(marks(card.flows.len() - 1) > 0);
}

#[test]
fn steps_that_cannot_be_are_said() {
    let cases = [
        (CardField::FlowTo, "5000", CardField::FlowTo, LineWhat::RangeCrossed),
        (CardField::FlowStep, "10", CardField::FlowStep, LineWhat::TooManySteps { most: 60 }),
        (CardField::MoistureStep, "0.1", CardField::MoistureStep, LineWhat::TooManySteps { most: 30 }),
    ];
    for (field, text, place, what) in cases {
        let mut mill = Mill::new();
        mill.book.entry_mut(LineField::Card(field)).unwrap().text = text.to_owned();
        let (card, findings) = rate_card(&mill.draft, &mill.case, &mill.line(), &mill.book);
        assert!(card.is_none());
        assert_eq!(findings.len(), 1, "{findings:?}");
        assert_eq!((findings[0].place, &findings[0].what), (LinePlace::Field(LineField::Card(place)), &what));
    }
}

/// 6000 to 10 000 in steps of 1500 ends at 9000.
#[test]
fn the_last_step_may_end_short() {
    let mut mill = Mill::new();
    mill.put(LineField::Card(CardField::FlowStep), "1500", Unit::KilogramPerHour);
    let flows: Vec<_> = card(&mill).flows.iter().map(|flow| Unit::KilogramPerHour.from_base(flow.value)).collect();
    for (flow, expected) in flows.iter().zip([6000.0, 7500.0, 9000.0]) {
        assert_relative_eq!(*flow, expected, max_relative = 1e-12);
    }
    assert_eq!(flows.len(), 3);
}
