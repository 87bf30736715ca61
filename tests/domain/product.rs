//! Typical ranges know the furnish and the board; what a recipe starts with follows what was chosen.

use haulm::domain::chemistry::equilibrium_moisture::{at_standard_climate, equilibrium_moisture};
use haulm::domain::recipe::binder_system::SystemKey;
use haulm::domain::recipe::check::limit_of;
use haulm::domain::recipe::limit::{Source, Window, mat_moisture, press_factor};
use haulm::domain::recipe::typical_density::{choose_substance, follow_solids, typical_density};
use haulm::domain::{
    BoardKind, Caution, DoseWay, Draft, Entry, Field, Furnish, Grade, LiquidDraft, LiquidField, LiquidId, Role,
    Substance, What, cautions, example, work_out,
};
use haulm::quantity::Unit;
use haulm::ui::text::words;
use uom::si::f64::{Ratio, ThermodynamicTemperature};
use uom::si::ratio::percent;
use uom::si::thermodynamic_temperature::{degree_celsius, degree_fahrenheit};

const FIRST: LiquidId = LiquidId(1);

fn bound_with(substance: Substance, furnish: Furnish, board_kind: BoardKind) -> Draft {
    let mut draft = example();
    (draft.furnish, draft.board_kind) = (furnish, board_kind);
    draft.liquids[0].substance = substance;
    draft
}

fn window(draft: &Draft, field: Field) -> (f64, f64) {
    let Window { low, high, .. } = limit_of(draft, field).usual.unwrap();
    (low, high)
}

/// Sources: Halvarsson, Edlund, Norgren (2008), 14 to 17 %, and (2010), 12.5, 13.1 and 14 %, on wheat-straw MDF; Cheng, Han, Fang
/// (2013), about 3 % pMDI on split wheat straw. The ranges on wood and the ends of the pMDI range are unverified.
#[test]
fn typical_doses_know_furnish_and_board() {
    let dose = Field::Liquid(FIRST, LiquidField::Dose);
    for (substance, furnish, board, expected) in [
        (Substance::Uf, Furnish::Straw, BoardKind::Fibreboard, (12.5, 17.0)),
        (Substance::Muf, Furnish::Straw, BoardKind::Fibreboard, (12.5, 17.0)),
        (Substance::Uf, Furnish::Straw, BoardKind::Other, (9.0, 17.0)),
        (Substance::Uf, Furnish::Wood, BoardKind::Particleboard, (7.0, 13.0)),
        (Substance::Muf, Furnish::Wood, BoardKind::Fibreboard, (7.0, 13.0)),
        (Substance::Uf, Furnish::Mixed, BoardKind::Particleboard, (7.0, 17.0)),
        (Substance::Pmdi, Furnish::Straw, BoardKind::Fibreboard, (2.0, 6.0)),
    ] {
        assert_eq!(
            window(&bound_with(substance, furnish, board), dose),
            expected,
            "{substance:?} {furnish:?} {board:?}"
        );
    }
    // 8 % of UF is usual on wood and little on straw.
    for (furnish, unusual) in [(Furnish::Wood, false), (Furnish::Straw, true)] {
        let mut draft = bound_with(Substance::Uf, furnish, BoardKind::Fibreboard);
        draft.entry_mut(dose).unwrap().text = "8".to_owned();
        let said = work_out(&draft).findings.iter().any(|finding| {
            finding.place == haulm::domain::Place::Field(dose) && matches!(finding.what, What::NotUsual { .. })
        });
        assert_eq!(said, unusual, "{furnish:?}");
    }
    let mut salted = bound_with(Substance::Uf, Furnish::Straw, BoardKind::Fibreboard);
    salted.liquids[1].role = Role::Hardener;
    salted.liquids[1].substance = Substance::AmmoniumSulfate;
    salted.liquids[1].dose_way = DoseWay::SolidsOnLiquid(FIRST);
    assert_eq!(window(&salted, Field::Liquid(LiquidId(2), LiquidField::Dose)), (0.4, 4.0));
}

/// Source: Cai, Muehl, Winandy (2006), Forest Products Journal 56 (10): best 12.1 to 15.3 % at 673 kg/m³, lower and narrower at 769
/// and 833 kg/m³.
#[test]
fn the_typical_mat_moisture_falls_with_the_density() {
    let high = |density| mat_moisture(density).high;
    assert_eq!((high(400.0), high(673.0)), (15.3, 15.3));
    assert!(high(673.0) > high(769.0) && high(769.0) > high(833.0) && high(833.0) > 11.0);
    let mut draft = example();
    let field = Field::MatMoisture;
    draft.entry_mut(field).unwrap().text = "14".to_owned();
    for (density, unusual) in [("650", false), ("833", true)] {
        draft.entry_mut(Field::BoardDensity).unwrap().text = density.to_owned();
        let said = work_out(&draft).findings.iter().any(|finding| finding.place == haulm::domain::Place::Field(field));
        assert_eq!(said, unusual, "{density}");
    }
}

#[test]
fn the_typical_press_factor_is_that_of_the_binders() {
    let of = |binders: &[Substance]| {
        let Window { low, high, .. } = press_factor(binders.iter().copied());
        (low, high)
    };
    let (uf, pf) = (of(&[Substance::Uf]), of(&[Substance::Pf]));
    assert!(uf.0 < pf.0 && uf.1 < pf.1, "PF cures more slowly");
    assert_eq!(of(&[Substance::Uf, Substance::Pf]), (uf.0, pf.1));
    let laboratory = haulm::domain::recipe::limit::LABORATORY_PRESS_FACTOR;
    assert!(laboratory.low > uf.0 && laboratory.high > pf.1, "a laboratory press takes longer");
    // The finding about the line follows the binder.
    let mut draft = example();
    draft.entry_mut(Field::PressLength).unwrap().text = "12".to_owned();
    let said = |draft: &Draft| {
        let outcome = work_out(draft);
        let line = |finding: &&haulm::domain::Finding| {
            finding.place == haulm::domain::Place::Station(haulm::domain::Station::Press)
        };
        outcome.findings.iter().filter(line).any(|finding| matches!(finding.what, What::NotUsual { .. }))
    };
    let factor = work_out(&draft).case.unwrap().figure(haulm::domain::Figure::PressFactor).unwrap();
    let factor = factor.get(Unit::SecondPerMillimetre);
    let expected = |(low, high): (f64, f64)| factor < low || factor > high;
    assert_eq!(said(&draft), expected(of(&[Substance::Pmdi])));
    draft.liquids[0].substance = Substance::Pf;
    assert_eq!(said(&draft), expected(of(&[Substance::Pf])));
    assert_ne!(expected(of(&[Substance::Pmdi])), expected(of(&[Substance::Pf])), "{factor} tells them apart");
}

/// Sources: EN 622-1 (±7 %), EN 312 (±10 %).
#[test]
fn the_density_spread_is_that_of_the_standard() {
    let spread = BoardKind::ALL.iter().map(|kind| kind.density_spread()).collect::<Vec<_>>();
    assert_eq!(spread, [Some(0.07), Some(0.10), None]);
}

/// One source, in one place: the library's pMDI names the source of the range that its dose is checked against.
#[test]
fn the_typical_isocyanate_dose_has_the_source_of_its_range() {
    let dose = Field::Liquid(FIRST, LiquidField::Dose);
    for system in [SystemKey::Pmdi, SystemKey::PmdiEmulsified] {
        let liquids = system.system().liquids;
        let draft = Draft { liquids: liquids.clone(), ..Draft::default() };
        let window = limit_of(&draft, dose).usual.unwrap();
        let Source::Published(source) = window.source else { panic!("{window:?}") };
        assert!(liquids[0].source.contains(source), "{} names {source}", liquids[0].source);
        let typical: f64 = liquids[0].dose.text.parse().unwrap();
        assert!((window.low..=window.high).contains(&typical));
    }
}

/// Source: Wood Handbook, FPL-GTR-190, table 4-2, all 342 cells.
#[test]
fn equilibrium_moisture_is_that_of_the_table() {
    let table = include_str!("../values/wood_emc_gtr190_table_4_2.csv");
    let mut cells = 0;
    for row in table.lines().skip(1) {
        let cell: Vec<f64> = row.split(',').map(|cell| cell.parse().unwrap()).collect();
        let moisture = equilibrium_moisture(
            ThermodynamicTemperature::new::<degree_fahrenheit>(cell[0]),
            Ratio::new::<percent>(cell[1]),
        );
        let moisture = moisture.unwrap().dry_basis().get::<percent>();
        assert!((moisture - cell[2]).abs() < 1e-9, "{row}: {moisture}");
        cells += 1;
    }
    assert_eq!(cells, 342);
    let celsius = |at, humidity| {
        equilibrium_moisture(ThermodynamicTemperature::new::<degree_celsius>(at), Ratio::new::<percent>(humidity))
    };
    assert!(celsius(150.0, 65.0).is_none() && celsius(20.0, 99.0).is_none());
    // What is offered for the board moisture is what the table gives, between its rows of 60 and 70 °F.
    let room = celsius(20.0, 65.0).unwrap();
    assert_eq!(at_standard_climate(), Some(room));
    let between = 12.1 + (68.0 - 60.0) / 10.0 * (12.0 - 12.1);
    assert!((room.dry_basis().get::<percent>() - between).abs() < 1e-9);
    let mut draft = Draft::default();
    draft.enter_standard_climate();
    assert_eq!(draft.plain.board_moisture, Entry::typed("12", Unit::PercentDryBasis));
}

#[test]
fn what_assumes_nothing_is_no_typical_value() {
    let draft = Draft::default();
    for field in Field::PLAIN.iter().copied().filter(|field| field.starts_neutral()) {
        let text = &draft.entry(field).unwrap().text;
        assert!(["0", "1", "100"].contains(&text.as_str()), "{field:?} starts with {text}");
    }
    assert!(!Field::BoardMoisture.starts_neutral());
    let hint = words::field(Field::ExitMoisture, &draft).hint;
    assert!(hint.contains("board moisture") && hint.contains("press water"), "{hint}");
}

/// Source: CRC Handbook of Chemistry and Physics, 102nd ed.: 30 % ammonium sulfate at 20 °C, 1.1721 g/cm³.
#[test]
fn a_typical_density_follows_the_solids() {
    let mut draft = example();
    choose_substance(&mut draft, LiquidId(2), Substance::AmmoniumSulfate);
    let salt = &mut draft.liquids[1];
    salt.density = Entry::preset("1115.4", Unit::KilogramPerCubicMetre);
    salt.solids = Entry::typed("30", Unit::Percent);
    follow_solids(salt);
    let density: f64 = salt.density.text.parse().unwrap();
    assert!((density - 1172.1).abs() < 1.5, "{density}");
    assert!(salt.density.preset);
    // What was typed stays.
    salt.density = Entry::typed("1150", Unit::KilogramPerCubicMetre);
    salt.solids = Entry::typed("20", Unit::Percent);
    follow_solids(salt);
    assert_eq!(salt.density.text, "1150");
    // A resin by ideal mixing: itself at its own solids, lighter with more water, water without solids.
    for substance in [Substance::Uf, Substance::Muf, Substance::Pf] {
        let at = |solids| typical_density(substance, solids).unwrap();
        assert!(at(0.3) < at(0.6) && (at(1e-9) - 998.207).abs() < 0.01, "{substance:?}");
    }
    assert!((typical_density(Substance::Uf, 0.66).unwrap() - 1280.0).abs() < 1e-6);
    assert_eq!(typical_density(Substance::Other, 0.5), None);
}

/// A salt that is chosen is a hardener on the binder's solids, and not a wax on fibre.
#[test]
fn a_hardener_salt_starts_on_the_binder() {
    for substance in Substance::ALL.iter().copied().filter(|substance| substance.is_hardener_salt()) {
        let mut draft = example();
        let id = draft.free_id();
        draft.liquids.push(LiquidDraft::blank(id, Role::Other));
        choose_substance(&mut draft, id, substance);
        let salt = draft.liquid(id).unwrap();
        assert_eq!((salt.role, salt.dose_way), (Role::Hardener, DoseWay::SolidsOnLiquid(FIRST)), "{substance:?}");
        assert!(!salt.dose.is_blank() && !salt.solids.is_blank(), "{substance:?}");
        let stops = work_out(&draft).findings.iter().filter(|finding| finding.grade == Grade::Stop).count();
        assert_eq!(stops, usize::from(substance == Substance::AmmoniumNitrate), "no density is known of the nitrate");
        // A dose that somebody typed keeps its base.
        let mut typed = example();
        typed
            .liquids
            .push(LiquidDraft { dose: Entry::typed("1", Unit::Percent), ..LiquidDraft::blank(id, Role::Other) });
        choose_substance(&mut typed, id, substance);
        assert_eq!(typed.liquid(id).unwrap().dose_way, DoseWay::SolidsOnFibre);
    }
}

/// A mill that knows its press says so: its own limit takes the place of the typical range's upper end, and of the steam caution's.
#[test]
fn the_press_has_a_mat_moisture_limit_of_its_own() {
    let mut draft = example();
    draft.entry_mut(Field::MatMoisture).unwrap().text = "10.5".to_owned();
    let cautioned = |draft: &Draft| cautions(draft, &work_out(draft)).contains(&Caution::Steam);
    let said = |draft: &Draft| {
        let place = haulm::domain::Place::Field(Field::MatMoisture);
        work_out(draft).findings.iter().any(|finding| finding.place == place)
    };
    assert!(!cautioned(&draft) && !said(&draft));
    *draft.entry_mut(Field::SteamLimit).unwrap() = Entry::typed("9.5", Unit::PercentDryBasis);
    assert!(cautioned(&draft) && said(&draft));
    assert_eq!(work_out(&draft).case.unwrap().input.typical_mat_moisture().high.to_bits(), 9.5_f64.to_bits());
    draft.entry_mut(Field::SteamLimit).unwrap().text = "11".to_owned();
    assert!(!cautioned(&draft) && !said(&draft));
}
