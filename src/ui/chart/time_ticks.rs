//! Round moments along an axis of time.

/// Steps between two ticks, in seconds.
const STEPS: [u64; 12] = [10, 20, 30, 60, 120, 180, 300, 600, 900, 1_800, 3_600, 7_200];

/// The round moments from one moment to another, both in milliseconds: as close as `most` of them allow, or only both ends.
#[must_use]
pub fn time_ticks(from: u64, to: u64, most: usize) -> Vec<u64> {
    let count = |step: u64| (to / step + 1).saturating_sub(from.div_ceil(step));
    let fits = |step: &u64| u64::try_from(most).is_ok_and(|most| (1..=most.max(2)).contains(&count(*step)));
    let step = STEPS.iter().map(|step| step * 1_000).filter(|_| from <= to).find(fits);
    step.map_or_else(|| vec![from, to], |step| (from.div_ceil(step)..=to / step).map(|at| at * step).collect())
}
