//! What is sprayed on the faces, at the line: pump, settings table, line check. And that none of it goes into an isocyanate.

use super::line_check::{exact, runs};
use super::mill::Mill;
use approx::assert_relative_eq;
use haulm::domain::line::changeover::Recipe;
use haulm::domain::line::working::pump_working;
use haulm::domain::line::{
    Fed, Feeds, Help, LineFigure, LineFindingKind, LineVerdict, PumpId, Tie, changeover, pump_settings, settings_table,
};
use haulm::domain::recipe::draft::FeedWay;
use haulm::domain::{
    Caution, DoseWay, Entry, Faces, Field, Figure, LiquidDraft, LiquidField, LiquidFigure, LiquidId, Role, cautions,
    work_out,
};
use haulm::quantity::Unit;

const AGENT: LiquidId = LiquidId(9);
const AGENT_PUMP: PumpId = PumpId(91);
const FACE_WATER: PumpId = PumpId(92);

/// The mill, whose binder is an isocyanate, with a water-borne release agent on both faces; agent and face water have pumps like that
/// of the wax.
fn sprayed(dose: &str) -> Mill {
    let mut mill = Mill::new();
    let agent = LiquidDraft {
        name: "Release agent".to_owned(),
        dose_way: DoseWay::LiquidOnFaces(Faces::Both),
        dose: Entry::typed(dose, Unit::GramPerSquareMetre),
        solids: Entry::typed("40", Unit::Percent),
        density: Entry::typed("1010", Unit::KilogramPerCubicMetre),
        ..LiquidDraft::blank(AGENT, Role::ReleaseAgent)
    };
    let like = mill.book.pumps[1].clone();
    for (id, feeds) in [(AGENT_PUMP, Feeds::Liquid(Tie::to(&agent))), (FACE_WATER, Feeds::FaceWater)] {
        let mut pump = like.clone();
        (pump.id, pump.name, pump.feeds) = (id, format!("P{}", id.0), feeds);
        mill.book.pumps.push(pump);
    }
    mill.draft.liquids.push(agent);
    mill.case = work_out(&mill.draft).case.unwrap();
    mill
}

#[test]
fn both_pumps_are_on_the_settings() {
    let mill = sprayed("20");
    let sheet = mill.sheet();
    let row = |id| sheet.rows.iter().find(|row| row.pump == id).unwrap();
    let flow = |figure| mill.case.figure(figure).unwrap().base;
    let (agent, water) = (row(AGENT_PUMP), row(FACE_WATER));
    assert_eq!((agent.fed, water.fed), (Fed::Liquid(AGENT), Fed::FaceWater));
    let liquid = flow(Figure::Liquid(AGENT, LiquidFigure::Liquid));
    assert_relative_eq!(agent.mass.value, liquid, max_relative = 1e-12);
    assert_relative_eq!(water.mass.value, flow(Figure::SurfaceSpray), max_relative = 1e-12);
    assert_relative_eq!(water.volume.value, flow(Figure::SurfaceSprayVolume), max_relative = 1e-12);
    for row in [agent, water] {
        let working = pump_working(LineFigure::Wanted, row, &mill.case).unwrap();
        let value = working.formula.value(&|at| working.givens[at].amount.base);
        assert_relative_eq!(value, row.mass.value, max_relative = 1e-12);
        assert!(pump_working(LineFigure::WantedVolume, row, &mill.case).is_some());
    }
}

/// A dose per area follows the line speed, and that the fibre flow: in each cell it is the one of the recipe solved there.
#[test]
fn the_settings_table_follows_the_line_speed() {
    let mill = sprayed("20");
    let (table, said) = settings_table(&mill.draft, &mill.case, &mill.line(), &mill.book);
    assert_eq!(said, []);
    let table = table.unwrap();
    let own: Vec<usize> =
        [AGENT_PUMP, FACE_WATER].iter().map(|id| table.pumps.iter().position(|pump| pump == id).unwrap()).collect();
    let mass = |row: usize, pump: usize| table.cells[row][0].as_ref().unwrap().pumps[pump].mass.value;
    for pump in own {
        let last = table.flows.len() - 1;
        let expected = table.flows[last].value / table.flows[0].value;
        assert!(expected > 1.1, "the table has several flows");
        assert_relative_eq!(mass(last, pump) / mass(0, pump), expected, max_relative = 1e-9);
    }
}

/// It is no part of the furnish, and its solids are in the board: a line that runs as the recipe says is consistent.
#[test]
fn the_line_check_knows_where_it_goes() {
    let (with, without) = (sprayed("400"), Mill::new());
    let mut readings = exact(&with);
    let exit = with.case.input.exit_moisture();
    let mat = &with.case.solved.mat;
    assert!(mat.on_faces.value > 0.3, "enough to be seen");
    readings.board.weight = Some((mat.od + mat.on_faces) * exit.wet_per_dry());
    readings.board.thickness = Some(mat.pressed_thickness);
    readings.board.moisture = Some(exit);
    let check = runs(&with, &readings);
    let found = check.reconciliation.as_ref().unwrap();
    assert_eq!(found.verdict, LineVerdict::Consistent);
    assert!(found.all.global.unwrap().chi_squared < 1e-9);
    let plain = runs(&without, &exact(&without));
    let moisture = |check: &haulm::domain::line::LineCheck| check.actual.furnish_moisture.dry_basis().value;
    assert_relative_eq!(moisture(&check), moisture(&plain), max_relative = 1e-9);
    let density = check.actual.density.unwrap().value;
    assert_relative_eq!(density, with.case.input.board.density.value, max_relative = 1e-9);
}

/// No help for the agent's pump, and no finding about it, says to thin it or to mix it; the isocyanate beside it keeps its own rule.
/// With an agent in the recipe the caution that asks for one is gone.
#[test]
fn no_advice_puts_it_into_the_isocyanate() {
    let mut out_of_reach = 0;
    for dose in ["0.2", "2", "20", "200", "900"] {
        let mill = sprayed(dose);
        assert!(mill.draft.liquids[0].substance.is_isocyanate());
        for finding in mill.sheet().findings {
            let LineFindingKind::OutOfReach { help, .. } = &finding.what else { continue };
            if finding.pump() == Some(AGENT_PUMP) || finding.pump() == Some(FACE_WATER) {
                out_of_reach += 1;
                assert!(!help.iter().any(|help| matches!(help, Help::Solids(_))), "{help:?}");
            }
        }
        assert!(!cautions(&mill.draft, &work_out(&mill.draft)).contains(&Caution::ReleaseAgent));
        let solids = Field::Liquid(mill.draft.liquids[0].id, LiquidField::Solids);
        assert_eq!(mill.draft.entry(solids).unwrap().text, "100");
    }
    assert!(out_of_reach > 2, "only {out_of_reach} out of reach");
}

/// A recipe of a laboratory has nothing for a line: no pump, no tank, no change of the fibre flow.
#[test]
fn a_recipe_of_a_laboratory_sets_no_pump() {
    let mill = sprayed("20");
    let mut laboratory = mill.draft.clone();
    laboratory.feed_way = FeedWay::None;
    let case = work_out(&laboratory).case.unwrap();
    assert_eq!(pump_settings(&laboratory, &case, &mill.line()).rows, []);
    let old = Recipe { draft: &mill.draft, case: &mill.case };
    let plan = changeover(old, Recipe { draft: &laboratory, case: &case }, &mill.line(), 0);
    assert!(plan.findings.iter().any(|finding| finding.what == LineFindingKind::NoFibreFlow), "{:?}", plan.findings);
    assert!(plan.between.is_none());
    let table = settings_table(&laboratory, &case, &mill.line(), &mill.book).0.unwrap();
    assert_eq!(table.present, None);
}
