//! Which system is the cheapest that can run now, and what the others would bring.

use crate::domain::balance::figure::Figure;
use crate::domain::compare::feasibility::feasibility;
use crate::domain::compare::output::Output;
use crate::domain::compare::overview::key_figures::KeyRow;
use crate::domain::compare::side::ComparedSystem;
use crate::quantity::Amount;

/// What another system would bring beside the cheapest one that can run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OtherSystem {
    /// Its place.
    pub at: usize,
    /// Whether it can run.
    pub can_run: bool,
    /// How much more it costs, money per m³; `None` where a price is missing.
    pub cost: Option<f64>,
    /// How much more board it gives, m³/s; `None` where it has no result.
    pub output: Option<f64>,
    /// The fibre moisture from which down it can run, where the furnish is too wet now.
    pub way_out: Option<Amount>,
}

/// The verdict.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct CostVerdict {
    /// The cheapest of those that can run; `None` where none can run, or none of those has a cost.
    pub cheapest: Option<usize>,
    /// Those that can run, in the order of the table.
    pub can_run: Vec<usize>,
    /// Those of them without a cost: one of them may be cheaper.
    pub unpriced: Vec<usize>,
    /// The others beside the cheapest.
    pub others: Vec<OtherSystem>,
}

/// Whether a system has a result, and nothing but advice stands in its way.
#[must_use]
pub fn can_run(system: &ComparedSystem) -> bool {
    system.case().is_some_and(|case| feasibility(case, &mut Vec::new()).is_feasible())
}

/// Compares costs among those that can run. `costs` is the row of the costs compared.
#[must_use]
pub fn verdict(systems: &[ComparedSystem], costs: &KeyRow) -> CostVerdict {
    let cost = |at: usize| costs.values.get(at).copied().flatten().map(|cost| cost.base);
    let runs: Vec<usize> = (0..systems.len()).filter(|at| systems.get(*at).is_some_and(can_run)).collect();
    let unpriced: Vec<usize> = runs.iter().copied().filter(|at| cost(*at).is_none()).collect();
    let priced = runs.iter().filter_map(|at| cost(*at).map(|cost| (*at, cost)));
    let cheapest = priced.min_by(|one, other| one.1.total_cmp(&other.1)).map(|(at, _)| at);
    let figure = |at: usize, figure: Figure| {
        let case = systems.get(at)?.case()?;
        Output::Figure(figure).value(case)
    };
    let others = cheapest.map_or_else(Vec::new, |best| {
        let other = |at: usize| {
            let more = |own: Option<f64>, other: Option<f64>| Some(own? - other?);
            let board = |at| figure(at, Figure::FinishedVolume).map(|amount| amount.base);
            let can_run = runs.contains(&at);
            let is_wet = figure(at, Figure::WaterExcess).is_some_and(|excess| excess.base > 0.0);
            OtherSystem {
                at,
                can_run,
                cost: more(cost(at), cost(best)),
                output: more(board(at), board(best)),
                way_out: figure(at, Figure::FibreMoistureForNoWater).filter(|_| !can_run && is_wet),
            }
        };
        (0..systems.len()).filter(|at| *at != best).map(other).collect()
    });
    CostVerdict { cheapest, can_run: runs, unpriced, others }
}
