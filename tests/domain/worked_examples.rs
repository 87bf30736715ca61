//! Examples worked by hand, recomputed by the balance.

use crate::support::{liquid, plain_recipe, set};
use approx::assert_relative_eq;
use haulm::domain::{Case, Draft, Field, Figure, LiquidFigure, LiquidId, work_out};
use haulm::quantity::Unit;

fn solve(draft: &Draft) -> Case {
    let outcome = work_out(draft);
    outcome.case.unwrap_or_else(|| panic!("{:?}", outcome.findings))
}

fn base(case: &Case, figure: Figure) -> f64 {
    case.figure(figure).unwrap().base
}

/// Worked by hand: a board of 25 × 25 × 1 cm at 0.75 g/cm³ oven-dry is 468.75 g; with 8 % resin solids on oven-dry
/// particles these are 468.75/1.08 = 434.0278 g and the solids 34.7222 g; at 5 % moisture the particles are 455.7292 g,
/// and 477.4306 g with a spillage of 5 % of the oven-dry mass.
fn particleboard(solids: &str) -> Case {
    let mut draft = plain_recipe();
    set(&mut draft, Field::FibreMoisture, "5", Unit::PercentDryBasis);
    set(&mut draft, Field::BoardDensity, "0.75", Unit::KilogramPerLitre);
    set(&mut draft, Field::BoardMoisture, "0", Unit::PercentDryBasis);
    set(&mut draft, Field::Thickness, "1", Unit::Centimetre);
    draft.liquids = vec![liquid(1, "8", solids, "1280")];
    solve(&draft)
}

#[test]
fn weigh_out_of_a_particleboard() {
    let grams = |per_area: f64| per_area * 0.25 * 0.25 * 1_000.0;
    // 34.7222/0.525 and 34.7222/0.48.
    for (solids, by_hand) in [("52.5", 66.137_566), ("48", 72.337_963)] {
        let case = particleboard(solids);
        let particles = grams(base(&case, Figure::MatFibre));
        assert_relative_eq!(particles, 434.0278, max_relative = 1e-6);
        let moist = particles * base(&case, Figure::FibreWet) / base(&case, Figure::Fibre);
        assert_relative_eq!(moist, 455.7292, max_relative = 1e-6);
        // The spillage is added to the moist particles, as a share of the oven-dry ones.
        assert_relative_eq!(moist + 0.05 * particles, 477.4306, max_relative = 1e-6);

        let resin = Figure::Liquid(LiquidId(1), LiquidFigure::InMat);
        assert_relative_eq!(grams(base(&case, resin)), 34.7222, max_relative = 1e-6);
        let per_solids = base(&case, Figure::Liquid(LiquidId(1), LiquidFigure::Liquid))
            / base(&case, Figure::Liquid(LiquidId(1), LiquidFigure::Solids));
        let liquid = grams(base(&case, resin)) * per_solids;
        assert_relative_eq!(liquid, by_hand, max_relative = 1e-6);
    }
}

/// By definition: 31 lb/ft³ × 48·96·0.5/1728 ft³ = 41.3333 lb, and × 0.45359237 kg/lb = 18.748485 kg.
#[test]
fn mass_of_a_board_in_customary_units() {
    let mut draft = plain_recipe();
    set(&mut draft, Field::BoardDensity, "31", Unit::PoundPerCubicFoot);
    set(&mut draft, Field::Thickness, "0.5", Unit::Inch);
    let case = solve(&draft);
    let per_area = case.figure(Figure::RawBoard).unwrap();
    let pounds = per_area.get(Unit::PoundPerSquareFoot) * 4.0 * 8.0;
    assert_relative_eq!(pounds, 41.0 + 1.0 / 3.0, max_relative = 1e-12);
    assert_relative_eq!(per_area.base * 48.0 * 96.0 * 0.0254 * 0.0254, 18.748_485, max_relative = 1e-7);
}

/// Worked by hand, invented: a board of 81 % fibre, 10 % resin solids, 8 % water and 1 % wax by mass. On oven-dry fibre
/// that is 10/81 = 12.3457 % resin and 1/81 = 1.23457 % wax, and a board moisture of 8/92 = 8.69565 %.
#[test]
fn composition_of_a_board_by_mass() {
    let mut draft = plain_recipe();
    draft.liquids = vec![
        liquid(1, &format!("{:e}", 100.0 * 10.0 / 81.0), "66", "1280"),
        liquid(2, &format!("{:e}", 100.0 / 81.0), "50", "950"),
    ];
    set(&mut draft, Field::BoardMoisture, &format!("{:e}", 100.0 * 8.0 / 92.0), Unit::PercentDryBasis);
    let case = solve(&draft);
    assert_relative_eq!(base(&case, Figure::FibrePerBoardMass), 0.81, max_relative = 1e-9);
    for (id, dose, solids_of_board) in [(1, 0.123_456_8, 0.1), (2, 0.012_345_68, 0.01)] {
        let part = |part| base(&case, Figure::Liquid(LiquidId(id), part));
        assert_relative_eq!(part(LiquidFigure::SolidsOnFibre), dose, max_relative = 1e-6);
        let solids = part(LiquidFigure::PerBoardMass) * part(LiquidFigure::Solids) / part(LiquidFigure::Liquid);
        assert_relative_eq!(solids, solids_of_board, max_relative = 1e-9);
    }
    let moisture = case.input.board.moisture;
    assert_relative_eq!(moisture.dry_basis().value, 0.086_956_52, max_relative = 1e-6);
    assert_relative_eq!(moisture.wet_basis().value, 0.08, max_relative = 1e-12);
}

/// Source: FAO Forestry Paper 93 (1990), appendix VI, table 3: particleboard, % of the furnish.
/// 83 new and 17 returned trim make 100; 6 % of shrinkage leave 94, 5 of fines 89; 6 of resin make 95;
/// 1 in pressing leaves 94; the trim of 17 returns and leaves 77, 5 sanded off leave 72. The balance
/// has the returned stream as an inner loop: what enters anew and what leaves as board must agree.
#[test]
fn a_line_with_returned_trim_closes() {
    let mut draft = plain_recipe();
    // Behind the dryer: the new part of 89 of dry, screened particles, resin on them.
    let new_fibre = 89.0 * 83.0 / 100.0;
    let new_resin = 6.0 * 83.0 / 100.0;
    set(&mut draft, Field::FibreFlow, &format!("{new_fibre:e}"), Unit::KilogramPerHour);
    draft.liquids = vec![liquid(1, &format!("{:e}", 100.0 * new_resin / new_fibre), "100", "1200")];
    // The trim is 17 of the 94 that were pressed.
    set(&mut draft, Field::MatWidth, "2", Unit::Metre);
    set(&mut draft, Field::SpreadWidth, &format!("{:e}", 2.0 * 94.0 / 77.0), Unit::Metre);
    let case = solve(&draft);
    let kg_h = |figure| case.figure(figure).unwrap().get(Unit::KilogramPerHour);
    let spread = kg_h(Figure::NetSolids) + kg_h(Figure::Trim);
    assert_relative_eq!(kg_h(Figure::Trim) / spread, 17.0 / 94.0, max_relative = 1e-9);
    // Of 94 pressed, 77 go on and 17 return; new solids in are what goes on, the 1 lost in pressing aside.
    assert_relative_eq!(kg_h(Figure::NetSolids), 95.0 * 0.83, max_relative = 1e-9);
    let streams = haulm::domain::balance::closure::streams(&case);
    assert!(
        haulm::domain::balance::closure::largest_gap(&haulm::domain::balance::closure::closures(&streams)).value
            < 1e-12
    );
}
