//! A new delivery of a liquid.

use super::mill::Mill;
use approx::assert_relative_eq;
use haulm::domain::line::tanks::delivery::density_at;
use haulm::domain::line::{
    Delivered, DeliveryField, Feeds, LineBook, LineField, LineFinding, LineFindingKind, PumpId, TankField, TankWay,
    Tie, deliver,
};
use haulm::domain::{Figure, LiquidFigure, LiquidId};
use haulm::quantity::Unit;
use haulm::record::content::line::LINE;
use haulm::record::content::revision::{Stamp, Title};
use haulm::record::document::step::DocumentStep;
use haulm::record::store::MemoryStore;
use haulm::record::store::library::Library;
use haulm::record::{LineRecord, Revision};
use uom::si::f64::{MassDensity, ThermodynamicTemperature};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::thermodynamic_temperature::degree_celsius;

const WAX: LiquidId = LiquidId(2);

fn delivered(fields: &[(DeliveryField, &str, Unit)]) -> (Option<Delivered>, Vec<LineFinding>) {
    let mut mill = Mill::new();
    mill.book.delivered = Some(WAX);
    for (field, text, unit) in fields {
        mill.put(LineField::Delivery(*field), text, *unit);
    }
    deliver(&mill.draft, &mill.case, &mill.line(), &mill.book)
}

/// Thinner wax: its own flow rises as its solids fall, the water dose falls by what it now brings.
#[test]
fn other_solids_move_their_pump_and_the_water() {
    let (delivered, findings) = delivered(&[(DeliveryField::Solids, "44", Unit::Percent)]);
    assert_eq!(findings, vec![]);
    let delivered = delivered.unwrap();
    assert_eq!(delivered.moved.iter().map(|moved| moved.pump).collect::<Vec<_>>(), [PumpId(2), PumpId(3)]);
    let old = Mill::new().case.input.liquids.as_slice()[1].solids.ratio().value;
    let [wax, water] = delivered.moved[..] else { panic!() };
    assert_relative_eq!((wax.mass_after / wax.mass_before).value, old / 0.44, max_relative = 1e-9);
    assert_relative_eq!(
        (water.mass_before - water.mass_after).value,
        (wax.mass_after - wax.mass_before).value,
        max_relative = 1e-9
    );
    assert!(wax.after.unwrap() > wax.before.unwrap() && water.after.unwrap() < water.before.unwrap());
    let moved = |figure| delivered.figures.iter().any(|(moved, ..)| *moved == figure);
    assert!(moved(Figure::WaterDose) && moved(Figure::Liquid(WAX, LiquidFigure::Liquid)));
    assert!(!moved(Figure::MatOvenDry));
    // Nothing is accepted yet, and the recipe to go on with is ready.
    assert_eq!(delivered.draft.liquid(WAX).unwrap().solids.text, "44");
}

/// A denser liquid through a pump that meters volume: the same mass at a lower setting.
#[test]
fn another_density_moves_the_setting_alone() {
    let (delivered, _) = delivered(&[(DeliveryField::Density, "0.97", Unit::KilogramPerLitre)]);
    let delivered = delivered.unwrap();
    let [wax] = delivered.moved[..] else { panic!("{:?}", delivered.moved) };
    assert_eq!((wax.pump, wax.mass_after), (PumpId(2), wax.mass_before));
    assert!(wax.after.unwrap() < wax.before.unwrap());
}

/// Worked by hand: 950 kg/m³ at 20 °C with 0.07 %/K at 35 °C: 950/1.0105 = 940.13 kg/m³.
#[test]
fn the_density_follows_the_temperature() {
    let fields = [
        (DeliveryField::Density, "950", Unit::KilogramPerCubicMetre),
        (DeliveryField::PumpedAt, "35", Unit::Celsius),
        (DeliveryField::Expansion, "0.07", Unit::PercentPerKelvin),
    ];
    let (delivered, findings) = delivered(&fields);
    assert_eq!(findings, vec![]);
    assert_relative_eq!(delivered.unwrap().density.unwrap().value, 950.0 / 1.0105, max_relative = 1e-12);
    let celsius = ThermodynamicTemperature::new::<degree_celsius>;
    let density = MassDensity::new::<kilogram_per_cubic_meter>(950.0);
    assert_eq!(density_at(density, 7e-4, celsius(20.0), celsius(20.0)), density);
}

#[test]
fn what_is_missing_is_said() {
    let (none, findings) = delivered(&[]);
    assert!(none.unwrap().moved.is_empty());
    assert!(matches!(findings[..], [ref f] if f.what == LineFindingKind::NothingDelivered));
    let (_, findings) = delivered(&[
        (DeliveryField::Density, "940", Unit::KilogramPerCubicMetre),
        (DeliveryField::PumpedAt, "35", Unit::Celsius),
    ]);
    assert!(matches!(findings[..], [ref f] if f.what == LineFindingKind::NoExpansion), "{findings:?}");
    let (none, findings) = delivered(&[(DeliveryField::Solids, "140", Unit::Percent)]);
    assert!(none.is_none() && matches!(findings[0].what, LineFindingKind::Entry(_)));
    let mill = Mill::new();
    let (none, findings) = deliver(&mill.draft, &mill.case, &mill.line(), &mill.book);
    assert!(none.is_none() && matches!(findings[0].what, LineFindingKind::NoLiquid));
}

/// Worked by hand: 8400 L of 100 % solids at 1230 kg/m³ are 10 332 kg. With 5000 kg of 97 % solids at 1200 kg/m³ there are
/// 15 332 kg at (10 332 + 4850)/15 332 = 99.0217 % and 15 332/(8.4 + 4.16667) = 1220.05 kg/m³. Six litres of pipe at
/// 340 kg/h take 6·1.23/340 h = 78.14 s.
#[test]
fn a_delivery_meets_what_is_in_the_tank() {
    let mut mill = Mill::new();
    mill.book.delivered = Some(LiquidId(1));
    mill.put(LineField::Delivery(DeliveryField::Solids), "97", Unit::Percent);
    mill.put(LineField::Delivery(DeliveryField::Density), "1200", Unit::KilogramPerCubicMetre);
    mill.put(LineField::Delivery(DeliveryField::Amount), "5000", Unit::Kilogram);
    let (delivered, findings) = deliver(&mill.draft, &mill.case, &mill.line(), &mill.book);
    assert_eq!(findings, vec![]);
    let delivered = delivered.unwrap();
    let blend = delivered.blend.unwrap();
    assert_relative_eq!(blend.before.mass.value, 10_332.0, max_relative = 1e-9);
    assert_relative_eq!(blend.after.solids.ratio().value, 15_182.0 / 15_332.0, max_relative = 1e-9);
    assert_relative_eq!(blend.after.density.value, 15_332.0 / (8.4 + 5_000.0 / 1_200.0), max_relative = 1e-9);
    assert_relative_eq!(blend.reaches_nozzle.unwrap().value, 6.0 * 1.23 / 340.0 * 3_600.0, max_relative = 1e-6);
    // The recipe has the blend, and not the certificate.
    let solids: f64 = delivered.draft.liquid(LiquidId(1)).unwrap().solids.text.parse().unwrap();
    assert!((solids - 99.0217).abs() < 1e-3, "{solids}");
    // Too much of it does not go in.
    mill.put(LineField::Delivery(DeliveryField::Amount), "20000", Unit::Kilogram);
    let (_, findings) = deliver(&mill.draft, &mill.case, &mill.line(), &mill.book);
    assert!(matches!(findings[..], [ref f] if f.what == LineFindingKind::OverFull), "{findings:?}");
}

/// It applies to every recipe that uses the liquid, and to no other.
#[test]
fn a_delivery_is_for_every_recipe_of_its_liquid() {
    let (delivered, _) = delivered(&[(DeliveryField::Solids, "44", Unit::Percent)]);
    let (delivered, own) = (delivered.unwrap(), Mill::new().draft);
    let mut other = own.clone();
    other.liquids.reverse();
    other.plain.board_density.text = "720".to_owned();
    let new = delivered.applied_to(&own, &other).unwrap();
    assert_eq!(new.liquid(WAX).unwrap().solids.text, "44");
    assert_eq!((&new.plain, &new.liquid(LiquidId(1))), (&other.plain, &other.liquid(LiquidId(1))));
    other.liquid_mut(WAX).unwrap().name = "another wax".to_owned();
    assert_eq!(delivered.applied_to(&own, &other), None);
    assert_eq!(delivered.applied_to(&own, &delivered.draft), None, "it has it already");
}

/// A tank of 20 000 L at 42 % with wax of 55 % solids and 950 kg/m³; 5000 kg of 44 % and 950 kg/m³ come. In it are 8400 L, 7980 kg; then
/// 12 980 kg, 13 663.16 L, 68.3158 % of the tank, with (7980 · 0.55 + 5000 · 0.44)/12 980 = 50.7627 % solids.
fn filled(way: TankWay, content: &str, unit: Unit) -> (Mill, Delivered) {
    let mut mill = Mill::new();
    let wax = mill.draft.liquid(WAX).unwrap();
    let tank = mill.book.add_tank(Feeds::Liquid(Tie::to(wax)));
    mill.book.tank_mut(tank).unwrap().set_way(way);
    mill.put(LineField::Tank(tank, TankField::Capacity), "20000", Unit::Litre);
    mill.put(LineField::Tank(tank, TankField::Content), content, unit);
    mill.book.delivered = Some(WAX);
    mill.put(LineField::Delivery(DeliveryField::Solids), "44", Unit::Percent);
    mill.put(LineField::Delivery(DeliveryField::Amount), "5000", Unit::Kilogram);
    let delivered = deliver(&mill.draft, &mill.case, &mill.line(), &mill.book).0.unwrap();
    (mill, delivered)
}

#[test]
fn an_accepted_delivery_raises_the_content_of_its_tank() {
    for (way, content, unit, expected) in [
        (TankWay::Level, "42", Unit::Percent, 68.3158),
        (TankWay::Volume, "8400", Unit::Litre, 13_663.16),
        (TankWay::Mass, "7980", Unit::Kilogram, 12_980.0),
    ] {
        let (mut mill, delivered) = filled(way, content, unit);
        let blend = delivered.blend.unwrap();
        assert_relative_eq!(blend.after.solids.ratio().value, 0.507_627, max_relative = 1e-5);
        let before = mill.book.tank(blend.tank).unwrap().read_at;
        delivered.fill(&mut mill.book, 1_772_431_200_000);
        let tank = mill.book.tank(blend.tank).unwrap();
        assert_relative_eq!(tank.entries.content.text.parse::<f64>().unwrap(), expected, max_relative = 1e-5);
        assert_eq!((before, tank.read_at, tank.entries.content.unit), (None, Some(1_772_431_200_000), unit));
        // The other tank is as it was.
        assert_eq!(mill.book.tanks[0].entries.content.text, "42");
    }
}

/// Of two tanks that hold the liquid the one chosen is filled; one that holds something else cannot be.
#[test]
fn a_delivery_goes_into_the_tank_chosen() {
    let (mut mill, delivered) = filled(TankWay::Level, "42", Unit::Percent);
    let first = delivered.blend.unwrap().tank;
    let second = mill.book.add_tank(Feeds::Liquid(Tie::to(mill.draft.liquid(WAX).unwrap())));
    mill.put(LineField::Tank(second, TankField::Capacity), "10000", Unit::Litre);
    mill.put(LineField::Tank(second, TankField::Content), "10", Unit::Percent);
    let into = |mill: &Mill| deliver(&mill.draft, &mill.case, &mill.line(), &mill.book).0.unwrap().blend.unwrap();
    assert_eq!(into(&mill).tank, first);
    mill.book.delivered_into = Some(second);
    let blend = into(&mill);
    assert_eq!(blend.tank, second);
    // 1000 L of 950 kg/m³.
    assert_relative_eq!(blend.before.mass.value, 950.0, max_relative = 1e-9);
    mill.book.delivered_into = Some(mill.book.tanks[0].id);
    assert_eq!(into(&mill).tank, first, "the other one holds the binder");
}

#[test]
fn a_delivery_is_taken_out_again_and_leaves_what_came_after() {
    let (mill, delivered) = filled(TankWay::Level, "42", Unit::Percent);
    let mut now = delivered.draft.clone();
    now.plain.board_density.text = "720".to_owned();
    delivered.take_out(&mill.draft, &mut now);
    assert_eq!(now.liquid(WAX), mill.draft.liquid(WAX));
    assert_eq!(now.plain.board_density.text, "720");
    // Solids that were typed since are the user's.
    now.clone_from(&delivered.draft);
    now.liquid_mut(WAX).unwrap().solids.text = "51".to_owned();
    delivered.take_out(&mill.draft, &mut now);
    assert_eq!(now.liquid(WAX).unwrap().solids.text, "51");
}

/// Two saved recipes use the wax, one under its name in capitals; a third has another wax, and a fourth is left out.
#[test]
fn each_saved_recipe_that_is_selected_gets_a_revision_of_its_own() {
    let (mill, delivered) = filled(TankWay::Level, "42", Unit::Percent);
    let mut library = Library::open(MemoryStore::default()).unwrap();
    let stamp = |at| Stamp { at, author: "AB".to_owned(), remark: "New delivery".to_owned() };
    let mut saved = |name: &str, wax: &str, density: &str| {
        let mut draft = mill.draft.clone();
        draft.liquid_mut(WAX).unwrap().name = wax.to_owned();
        draft.plain.board_density.text = density.to_owned();
        let title = Title { name: name.to_owned(), ..Title::default() };
        library.save(Revision::first(title, draft, stamp(1_000)).unwrap()).unwrap()
    };
    let own_name = mill.draft.liquid(WAX).unwrap().name.clone();
    let thin = saved("thin", &own_name, "720");
    let thick = saved("thick", &own_name.to_uppercase(), "640");
    let other = saved("other", "another wax", "680");
    let left_out = saved("left out", &own_name, "700");
    let tie = Tie::to(mill.draft.liquid(WAX).unwrap());
    let using: Vec<_> = library.recipes_with(&tie).into_iter().map(|(head, ..)| head).collect();
    assert_eq!(using.len(), 3);
    assert!(using.contains(&thin) && using.contains(&thick) && !using.contains(&other));
    let entered = library.enter_delivery(&[thin, thick], &delivered, &mill.draft, &stamp(2_000)).unwrap();
    assert_eq!(entered.iter().map(|(before, _)| *before).collect::<Vec<_>>(), [thin, thick]);
    for ((before, new), density) in entered.iter().zip(["720", "640"]) {
        let (before, new) = (library.revision(*before).unwrap(), library.revision(*new).unwrap());
        assert_eq!((new.recipe(), &new.content().parents), (before.recipe(), &vec![before.revision()]));
        let draft = &new.content().draft;
        assert_eq!((draft.plain.board_density.text.as_str(), new.content().remark.as_str()), (density, "New delivery"));
        let solids: f64 = draft.liquid(WAX).unwrap().solids.text.parse().unwrap();
        assert_relative_eq!(solids, 50.7627, max_relative = 1e-5);
        // What it said before is there still.
        assert_eq!(before.content().draft.liquid(WAX).unwrap().solids.text, "55");
    }
    for untouched in [other, left_out] {
        let recipe = library.revision(untouched).unwrap().recipe();
        assert_eq!(library.recipe(recipe).unwrap().head.summary.id, untouched);
    }
    // Entered a second time nothing changes.
    let heads: Vec<_> = entered.iter().map(|(_, new)| *new).collect();
    assert_eq!(library.enter_delivery(&heads, &delivered, &mill.draft, &stamp(3_000)).unwrap(), vec![]);
}

/// What a delivery moves in a saved recipe is what it moves in the open one where both are the same, and follows its own fibre flow.
#[test]
fn a_saved_recipe_has_its_own_new_settings() {
    let (delivered, _) = delivered(&[(DeliveryField::Solids, "44", Unit::Percent)]);
    let (delivered, mill) = (delivered.unwrap(), Mill::new());
    let line = mill.line();
    assert_eq!(delivered.moves_in(&mill.draft, &mill.draft, &line), delivered.moved);
    let mut half = mill.draft.clone();
    half.plain.fibre_flow.text = "4250".to_owned();
    let moved = delivered.moves_in(&mill.draft, &half, &line);
    assert_eq!(moved.len(), delivered.moved.len());
    for (own, other) in delivered.moved.iter().zip(&moved) {
        assert_relative_eq!(other.mass_after.value, own.mass_after.value / 2.0, max_relative = 1e-9);
    }
    half.liquid_mut(WAX).unwrap().name = "another wax".to_owned();
    assert_eq!(delivered.moves_in(&mill.draft, &half, &line), vec![]);
}

/// An accepted delivery is one entry in the list, ends the order, and clears the certificate for the next one; taking it back takes it
/// out again and leaves a delivery that came after it.
#[test]
fn an_accepted_delivery_is_listed_once() {
    let (mut mill, delivered) = filled(TankWay::Level, "42", Unit::Percent);
    let tank = delivered.tank.unwrap();
    mill.book.tank_mut(tank).unwrap().ordered_at = Some(1);
    mill.book.delivered_batch = " B-0107 ".to_owned();
    let mut record = LineRecord { book: mill.book, ..LineRecord::default() };
    let before = record.clone();
    let accept = |record: &mut LineRecord, at| {
        delivered.fill(&mut record.book, at);
        record.note_delivery(at, "Wax emulsion".to_owned(), delivered.tank);
    };
    accept(&mut record, 1_772_431_200_000);
    assert_eq!(record.book.tank(tank).unwrap().ordered_at, None);
    let [listed] = &record.deliveries[..] else { panic!("{:?}", record.deliveries) };
    assert_eq!(
        (listed.batch.as_str(), listed.tank, listed.certificate.amount.text.as_str()),
        ("B-0107", Some(tank), "5000")
    );
    assert_eq!((record.last_batch(tank), &record.book.delivery), (Some("B-0107"), &LineBook::default().delivery));
    let step = DocumentStep { before, after: record.clone() };
    record.book.delivered_batch = "B-0108".to_owned();
    accept(&mut record, 1_772_431_300_000);
    let then = step.taken_back(&LINE, &record);
    assert_eq!(then.deliveries.iter().map(|listed| listed.batch.as_str()).collect::<Vec<_>>(), ["B-0108"]);
}
