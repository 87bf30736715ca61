//! Worked examples from outside, recomputed by the balance.

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

/// Source: a thesis appendix on Gmelina particleboard bonded with UF (Indonesia, 2017): boards of
/// 25 × 25 × 1 cm at 0.75 g/cm³, 8 % resin solids on oven-dry particles, particles at 5 % moisture,
/// spillage 5 % of the oven-dry mass. The thesis takes the density oven-dry and rounds 1/1.08 to
/// 0.9259 and 8/108 to 0.0741; hence the tolerance of 0.05 % against its figures. The unrounded
/// figures are ours to 1e-6.
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
    for (solids, published, exact) in [("52.6543", 65.9666, 65.9438), ("48.6351", 71.4181, 71.3933)] {
        let case = particleboard(solids);
        let particles = grams(base(&case, Figure::MatFibre));
        assert_relative_eq!(particles, 434.0278, max_relative = 1e-6);
        assert_relative_eq!(particles, 434.016, max_relative = 5e-4);
        let moist = particles * base(&case, Figure::FibreWet) / base(&case, Figure::Fibre);
        assert_relative_eq!(moist, 455.7292, max_relative = 1e-6);
        assert_relative_eq!(moist, 455.7168, max_relative = 5e-4);
        // The source adds its spillage to the moist particles, as a share of the oven-dry ones.
        assert_relative_eq!(moist + 0.05 * particles, 477.4306, max_relative = 1e-6);
        assert_relative_eq!(moist + 0.05 * particles, 477.4168, max_relative = 5e-4);

        let resin = Figure::Liquid(LiquidId(1), LiquidFigure::InMat);
        assert_relative_eq!(grams(base(&case, resin)), 34.7222, max_relative = 1e-6);
        assert_relative_eq!(grams(base(&case, resin)), 34.734375, max_relative = 5e-4);
        let per_solids = base(&case, Figure::Liquid(LiquidId(1), LiquidFigure::Liquid))
            / base(&case, Figure::Liquid(LiquidId(1), LiquidFigure::Solids));
        let liquid = grams(base(&case, resin)) * per_solids;
        assert_relative_eq!(liquid, exact, max_relative = 1e-6);
        assert_relative_eq!(liquid, published, max_relative = 5e-4);
    }
}

/// Source: published weight of a board 48 × 96 × ½ in at 31 lb/ft³; published rounded as 41.23 lb,
/// exactly 41.3333 lb or 18.748 kg.
#[test]
fn mass_of_a_board_in_customary_units() {
    let mut draft = plain_recipe();
    set(&mut draft, Field::BoardDensity, "31", Unit::PoundPerCubicFoot);
    set(&mut draft, Field::Thickness, "0.5", Unit::Inch);
    let case = solve(&draft);
    let per_area = case.figure(Figure::RawBoard).unwrap();
    let pounds = per_area.get(Unit::PoundPerSquareFoot) * 4.0 * 8.0;
    assert_relative_eq!(pounds, 41.0 + 1.0 / 3.0, max_relative = 1e-12);
    assert_relative_eq!(pounds, 41.23, max_relative = 5e-3);
    assert_relative_eq!(per_area.base * 48.0 * 96.0 * 0.0254 * 0.0254, 18.748, max_relative = 1e-4);
}

/// Source: composition of an MDF as sold, by mass: 82 % fibre, 9 % UF solids, 8 % water, 1 % wax.
/// On oven-dry fibre that is 10.98 % resin and 1.22 % wax, and a board moisture of 8.70 %.
#[test]
fn composition_of_an_mdf_as_sold() {
    let mut draft = plain_recipe();
    draft.liquids = vec![
        liquid(1, &format!("{:e}", 100.0 * 9.0 / 82.0), "66", "1280"),
        liquid(2, &format!("{:e}", 100.0 / 82.0), "50", "950"),
    ];
    set(&mut draft, Field::BoardMoisture, &format!("{:e}", 100.0 * 8.0 / 92.0), Unit::PercentDryBasis);
    let case = solve(&draft);
    assert_relative_eq!(base(&case, Figure::FibrePerBoardMass), 0.82, max_relative = 1e-9);
    for (id, dose, solids_of_board) in [(1, 0.1098, 0.09), (2, 0.0122, 0.01)] {
        let part = |part| base(&case, Figure::Liquid(LiquidId(id), part));
        assert_relative_eq!(part(LiquidFigure::SolidsOnFibre), dose, max_relative = 5e-3);
        let solids = part(LiquidFigure::PerBoardMass) * part(LiquidFigure::Solids) / part(LiquidFigure::Liquid);
        assert_relative_eq!(solids, solids_of_board, max_relative = 1e-9);
    }
    let moisture = case.input.board.moisture;
    assert_relative_eq!(moisture.dry_basis().value, 0.0870, max_relative = 5e-4);
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
