//! Boards put together by run and by combination of levels, never over different targets.

use crate::domain::trial::boards::at_density::{AtDensity, at_densities};
use crate::domain::trial::boards::density::{DensityTarget, density_target};
use crate::domain::trial::boards::measured::MeasuredBoard;
use crate::domain::trial::boards::property::Property;
use crate::domain::trial::series::run::Run;
use crate::domain::trial::weigh_sheet::sheet::WeighSheet;
use crate::statistics::sample::SampleSummary;

/// A property over several boards: each board counts once, with the mean of its pieces.
#[derive(Debug, Clone, PartialEq)]
pub struct PropertyResult {
    /// The property.
    pub property: Property,
    /// The mean of each board that gives it, with the board's place in the list.
    pub boards: Vec<(usize, f64)>,
    /// Mean, scatter and quantiles of these means.
    pub summary: SampleSummary,
}

/// Every property that any of the boards gives.
#[must_use]
pub fn results(boards: &[MeasuredBoard]) -> Vec<PropertyResult> {
    let of = |property: &Property| {
        let means: Vec<(usize, f64)> =
            boards.iter().enumerate().filter_map(|(at, board)| Some((at, board.mean(*property)?))).collect();
        let values: Vec<f64> = means.iter().map(|(_, mean)| *mean).collect();
        Some(PropertyResult { property: *property, boards: means, summary: SampleSummary::of(&values)? })
    };
    Property::ALL.iter().filter_map(of).collect()
}

/// A measured board with what it was made from.
#[derive(Debug, Clone, PartialEq)]
pub struct BoardMade {
    /// The board.
    pub board: MeasuredBoard,
    /// Its run in the series.
    pub run: Option<Run>,
    /// The weigh sheet of its run, or the base sheet that it was made from.
    pub sheet: Option<WeighSheet>,
}

/// What boards are put together by.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum GroupBy {
    /// Their run.
    Run,
    /// The levels of their run: replicates together.
    Combination,
}

/// What the boards of a group have in common.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum GroupKey {
    /// Made outside a series.
    Base,
    /// One run, by its number.
    Run(u16),
    /// The level of each factor, from 0.
    Combination(Vec<u8>),
}

/// Boards that may be compared with one target.
#[derive(Debug, Clone, PartialEq)]
pub struct BoardGroup {
    /// What they have in common.
    pub key: GroupKey,
    /// The boards.
    pub boards: Vec<MeasuredBoard>,
    /// Every property.
    pub results: Vec<PropertyResult>,
    /// Density against the target of these boards.
    pub density: Option<DensityTarget>,
    /// Strengths at the target density, where pieces were weighed.
    pub at_density: Vec<AtDensity>,
}

/// The numbers of a target, bit by bit.
type TargetBits = [u64; 4];
/// What boards of a group have in common: name, target, and whether they are sanded.
type FullKey = (GroupKey, Option<TargetBits>, bool);

/// Density, moisture and thickness that a board was to have.
fn target_of(sheet: Option<&WeighSheet>) -> Option<TargetBits> {
    let sheet = sheet?;
    let board = &sheet.plan.case.input.board;
    let numbers = [board.density.value, board.moisture.wet_per_dry().value, board.thickness.value, sheet.stops.value];
    Some(numbers.map(f64::to_bits))
}

/// The boards without a question open: what is asked about corrects nothing.
fn sure(boards: &[MeasuredBoard]) -> Vec<MeasuredBoard> {
    boards.iter().filter(|board| !board.doubtful).cloned().collect()
}

/// Puts boards together in the order in which their groups come first. Boards with different targets never share a group,
/// even where run or levels are the same, and neither do sanded boards and others.
#[must_use]
pub fn groups(made: &[BoardMade], by: GroupBy) -> Vec<BoardGroup> {
    let key = |own: &BoardMade| match (&own.run, own.board.run) {
        (Some(run), _) if by == GroupBy::Combination && run.is_in_design() => GroupKey::Combination(run.levels.clone()),
        (Some(run), _) => GroupKey::Run(run.place),
        (None, Some(place)) => GroupKey::Run(place),
        (None, None) => GroupKey::Base,
    };
    let mut sorted: Vec<(FullKey, Vec<&BoardMade>)> = Vec::new();
    for own in made {
        let key = (key(own), target_of(own.sheet.as_ref()), own.board.sanded);
        match sorted.iter_mut().find(|(other, _)| *other == key) {
            Some((_, members)) => members.push(own),
            None => sorted.push((key, vec![own])),
        }
    }
    let group = |((key, ..), members): (FullKey, Vec<&BoardMade>)| {
        let boards: Vec<MeasuredBoard> = members.iter().map(|own| own.board.clone()).collect();
        let sheet = members.first().and_then(|own| own.sheet.as_ref());
        let density = sheet.and_then(|sheet| density_target(sheet, &sure(&boards)));
        BoardGroup { key, results: results(&boards), density, at_density: Vec::new(), boards }
    };
    let mut groups: Vec<BoardGroup> = sorted.into_iter().map(group).collect();
    let sure: Vec<Vec<MeasuredBoard>> = groups.iter().map(|group| sure(&group.boards)).collect();
    let targets = groups.iter().map(|group| group.density.map(|density| density.target));
    let with_targets: Vec<_> = sure.iter().map(Vec::as_slice).zip(targets).collect();
    for property in [Property::BendingStrength, Property::InternalBond] {
        let found = at_densities(property, &with_targets);
        for (group, found) in groups.iter_mut().zip(found) {
            group.at_density.extend(found);
        }
    }
    groups
}
