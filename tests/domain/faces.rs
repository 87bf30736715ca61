//! What is sprayed on the faces of the mat: release agent and water, dosed per area of face.

use crate::support::{plain_recipe, set};
use approx::assert_relative_eq;
use haulm::domain::balance::closure::{closures, largest_gap, streams};
use haulm::domain::recipe::typical_density::choose_role;
use haulm::domain::working::{Ground, working};
use haulm::domain::{
    Case, DoseWay, Draft, Entry, Faces, Field, Figure, Grade, LiquidDraft, LiquidField, LiquidFigure, LiquidId, Place,
    Role, What, work_out,
};
use haulm::quantity::Unit;

const AGENT: LiquidId = LiquidId(1);

/// A release agent of 20 g/m² a face with 25 % solids.
fn agent(faces: Faces) -> LiquidDraft {
    LiquidDraft {
        name: "Release agent".to_owned(),
        dose_way: DoseWay::LiquidOnFaces(faces),
        dose: Entry::typed("20", Unit::GramPerSquareMetre),
        solids: Entry::typed("25", Unit::Percent),
        density: Entry::typed("1000", Unit::KilogramPerCubicMetre),
        price: Entry::typed("3000", Unit::PerTonne),
        ..LiquidDraft::blank(AGENT, Role::ReleaseAgent)
    }
}

fn sprayed(faces: Faces) -> Draft {
    Draft { liquids: vec![agent(faces)], ..plain_recipe() }
}

fn solved(draft: &Draft) -> Case {
    work_out(draft).case.unwrap()
}

fn figure(case: &Case, figure: Figure, unit: Unit) -> f64 {
    case.figure(figure).unwrap_or_else(|| panic!("{figure:?}")).get(unit)
}

fn of_agent(case: &Case, part: LiquidFigure, unit: Unit) -> f64 {
    figure(case, Figure::Liquid(AGENT, part), unit)
}

/// Worked by hand: 10 000 kg/h of fibre and nothing else in the furnish, board of 700 kg/m³ and 16 mm at 7 %, mat 2.5 m wide. Both
/// faces take 40 g/m² of agent with 10 g/m² of solids, so the former lays 11.2/1.07 − 0.01 kg/m², oven-dry.
#[test]
fn a_release_agent_is_dosed_by_face_width_and_speed() {
    let case = solved(&sprayed(Faces::Both));
    let mat = 11.2 / 1.07 - 0.01;
    let area = 10_000.0 / mat;
    let near = |found: f64, expected: f64| assert_relative_eq!(found, expected, max_relative = 1e-12);
    near(figure(&case, Figure::MatOvenDry, Unit::KilogramPerSquareMetre), mat);
    near(figure(&case, Figure::LineSpeed, Unit::MetrePerMinute), area / 2.5 / 60.0);
    near(of_agent(&case, LiquidFigure::Liquid, Unit::KilogramPerHour), 0.04 * area);
    near(of_agent(&case, LiquidFigure::Volume, Unit::LitrePerHour), 0.04 * area);
    near(of_agent(&case, LiquidFigure::Volume, Unit::LitrePerMinute), 0.04 * area / 60.0);
    near(of_agent(&case, LiquidFigure::Solids, Unit::KilogramPerHour), 0.01 * area);
    near(of_agent(&case, LiquidFigure::Water, Unit::KilogramPerHour), 0.03 * area);
    // Mat at 10 %, board out of the press at 7 %: its water, and that of the agent less what its solids keep.
    let vapour = 10_000.0 * (0.10 - 0.07) + 0.03 * area - 0.01 * area * 0.07;
    near(figure(&case, Figure::PressVapour, Unit::KilogramPerHour), vapour);
    // 3 a kilogram, 40 g/m² of a board 16 mm thick.
    near(case.figure(Figure::Cost).unwrap().base, 0.04 / 0.016 * 3.0);
    assert!(largest_gap(&closures(&streams(&case))).value < 1e-12);
    // It is no part of the furnish.
    near(figure(&case, Figure::Solids, Unit::KilogramPerHour), 10_000.0);
    for part in [LiquidFigure::Share, LiquidFigure::SolidsOnFibre, LiquidFigure::InMat] {
        assert_eq!(case.figure(Figure::Liquid(AGENT, part)), None, "{part:?}");
    }
}

#[test]
fn one_face_takes_half_of_both() {
    let flow = |faces| {
        let case = solved(&sprayed(faces));
        let speed = figure(&case, Figure::LineSpeed, Unit::MetrePerMinute);
        of_agent(&case, LiquidFigure::Liquid, Unit::KilogramPerHour) / speed
    };
    assert_relative_eq!(flow(Faces::Top), flow(Faces::Both) / 2.0, max_relative = 1e-12);
    assert_relative_eq!(flow(Faces::Bottom), flow(Faces::Top), max_relative = 1e-12);
}

/// Worked by hand: 15 g/m² on both faces of 2.5 m at the line's speed, water at 20 °C.
#[test]
fn face_water_is_per_face() {
    let mut draft = plain_recipe();
    set(&mut draft, Field::SurfaceSpray, "15", Unit::GramPerSquareMetre);
    for (faces, count) in [(Faces::Both, 2.0), (Faces::Top, 1.0), (Faces::Bottom, 1.0)] {
        draft.sprayed_faces = faces;
        let case = solved(&draft);
        let area = figure(&case, Figure::LineSpeed, Unit::MetrePerMinute) * 60.0 * 2.5;
        let flow = figure(&case, Figure::SurfaceSpray, Unit::KilogramPerHour);
        assert_relative_eq!(flow, 0.015 * count * area, max_relative = 1e-12);
        let volume = figure(&case, Figure::SurfaceSprayVolume, Unit::LitrePerHour);
        assert_relative_eq!(volume, flow / 0.998_207, max_relative = 1e-5);
    }
}

/// A dose per area follows the line speed: twice the fibre, twice the flow; twice the board weight at the same fibre, half of it.
#[test]
fn the_flow_follows_the_line_speed() {
    let mut draft = sprayed(Faces::Both);
    let flow = |draft: &Draft| of_agent(&solved(draft), LiquidFigure::Liquid, Unit::KilogramPerHour);
    let before = flow(&draft);
    set(&mut draft, Field::FibreFlow, "20000", Unit::KilogramPerHour);
    assert_relative_eq!(flow(&draft), 2.0 * before, max_relative = 1e-12);
    set(&mut draft, Field::Thickness, "32", Unit::Millimetre);
    assert_relative_eq!(flow(&draft), before, max_relative = 1e-3);
}

/// The working is the one of the trade where a width is known: dose · faces · width · speed.
#[test]
fn its_working_names_width_and_speed() {
    let mut draft = sprayed(Faces::Both);
    let told = |draft: &Draft| {
        let working = working(Figure::Liquid(AGENT, LiquidFigure::Liquid), &solved(draft)).unwrap();
        assert_eq!(working.ground, Ground::MassBalance);
        working.formula.to_text(&|at| working.givens[at].symbol.to_text())
    };
    assert_eq!(told(&draft), "2 * d_1 * b * v");
    draft.liquids = vec![agent(Faces::Top)];
    assert_eq!(told(&draft), "d_1 * b * v");
    set(&mut draft, Field::MatWidth, "", Unit::Metre);
    assert_eq!(told(&draft), "d_1 * S_n / M");
}

#[test]
fn what_cannot_be_is_said() {
    let finds = |draft: &Draft, wanted: fn(&What) -> bool| {
        let outcome = work_out(draft);
        assert!(outcome.case.is_none());
        outcome.findings.iter().any(|finding| finding.grade == Grade::Stop && wanted(&finding.what))
    };
    // A dose on the solids of what is sprayed on the faces would be neither in the furnish nor on a face.
    let mut on_agent = sprayed(Faces::Both);
    on_agent.liquids.push(LiquidDraft {
        dose_way: DoseWay::SolidsOnLiquid(AGENT),
        dose: Entry::typed("2", Unit::Percent),
        ..LiquidDraft { id: LiquidId(2), ..agent(Faces::Both) }
    });
    assert!(finds(&on_agent, |what| *what == What::BaseOnFaces));
    // More on the faces than the board weighs.
    let mut thin = sprayed(Faces::Both);
    set(&mut thin, Field::Thickness, "0.5", Unit::Millimetre);
    set(&mut thin, Field::Liquid(AGENT, LiquidField::Dose), "900", Unit::GramPerSquareMetre);
    assert!(finds(&thin, |what| matches!(what, What::DosesFillBoard { .. })));
    // An unusual dose is said with its range.
    let mut much = sprayed(Faces::Both);
    set(&mut much, Field::Liquid(AGENT, LiquidField::Dose), "200", Unit::GramPerSquareMetre);
    let place = Place::Field(Field::Liquid(AGENT, LiquidField::Dose));
    let said = work_out(&much).findings.into_iter().find(|finding| finding.place == place).unwrap();
    assert!(matches!(said.what, What::NotUsual { unit: Unit::GramPerSquareMetre, .. }), "{said:?}");
}

/// A release agent starts on the faces, a base never is one, and a dose that was typed stays where it is.
#[test]
fn a_release_agent_starts_on_the_faces() {
    let mut draft = plain_recipe();
    draft.liquids = vec![LiquidDraft::blank(AGENT, Role::Other), LiquidDraft::blank(LiquidId(2), Role::Wax)];
    choose_role(&mut draft, AGENT, Role::ReleaseAgent);
    let way = |draft: &Draft| draft.liquid(AGENT).map(|own| (own.dose_way, own.dose.unit));
    assert_eq!(way(&draft), Some((DoseWay::LiquidOnFaces(Faces::Both), Unit::GramPerSquareMetre)));
    assert!(!draft.dose_ways(LiquidId(2)).contains(&DoseWay::SolidsOnLiquid(AGENT)));
    assert!(!draft.dose_ways(LiquidId(2)).iter().any(|way| way.is_on_faces()), "a wax goes into the furnish");
    assert_eq!(draft.dose_ways(AGENT).iter().filter(|way| way.is_on_faces()).count(), 3);
    choose_role(&mut draft, AGENT, Role::Wax);
    assert_eq!(way(&draft), Some((DoseWay::SolidsOnFibre, Unit::Percent)));
    draft.liquids[0].dose = Entry::typed("1", Unit::Percent);
    choose_role(&mut draft, AGENT, Role::ReleaseAgent);
    assert_eq!(way(&draft), Some((DoseWay::SolidsOnFibre, Unit::Percent)));
}

/// Another face keeps the agent's amount per area of mat; the way into the furnish is another one, and asks for a new dose.
#[test]
fn the_dose_on_another_face() {
    let case = solved(&sprayed(Faces::Both));
    let on_top = case.dose_in(AGENT, DoseWay::LiquidOnFaces(Faces::Top)).unwrap();
    assert_relative_eq!(on_top.get(Unit::GramPerSquareMetre), 40.0, max_relative = 1e-12);
    assert_eq!(case.dose_in(AGENT, DoseWay::SolidsOnFibre), None);
    assert_eq!(case.dose_in(AGENT, DoseWay::LiquidPerBoard), None);
}
