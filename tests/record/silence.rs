//! A database is told as one that does not answer by its own silence, not by a busy machine's.

use haulm::record::store::silence::{PATIENCE, Silence, TICK};
use proptest::prelude::*;

/// The time at which the silence is told, where ticks take so many milliseconds each; `None` when they end before.
fn told(ticks: impl IntoIterator<Item = u64>) -> Option<u64> {
    let mut now = 1_000_000;
    let mut silence = Silence::new(now);
    ticks.into_iter().find_map(|took| {
        now += took;
        silence.tick(now).then_some(now - 1_000_000)
    })
}

fn every(ms: u64) -> impl Iterator<Item = u64> {
    std::iter::repeat_n(ms, 100_000)
}

#[test]
fn a_quiet_machine_tells_after_three_seconds() {
    assert_eq!(told(every(u64::from(TICK))), Some(3000));
    // A timer is never exact to the millisecond.
    assert_eq!(told(every(u64::from(TICK) + 4)), Some(3120));
}

#[test]
fn a_page_that_stood_still_is_no_silence_of_the_database() {
    // One long task, or a lid closed for an hour, counts for less than a tick.
    for stop in [4_000, 60_000, 3_600_000] {
        let once = told([stop].into_iter().chain(every(100))).unwrap() - stop;
        assert!((2900..=3000).contains(&once), "{stop}: {once}");
    }
}

#[test]
fn a_slow_machine_is_given_its_time() {
    assert_eq!(told(every(240)), Some(14_400));
    // Four programs beside it on two cores.
    let loaded = told([90, 100, 350, 100, 700, 240].into_iter().cycle().take(10_000)).unwrap();
    assert!(loaded > 6000, "{loaded}");
    // And is told in the end all the same.
    assert!(told(every(1000)).is_some());
}

#[test]
fn a_clock_that_is_set_back_neither_hastens_nor_stops_it() {
    let mut silence = Silence::new(5_000_000);
    let mut ticks = 0;
    while !silence.tick(1_000 + 100 * ticks) {
        ticks += 1;
    }
    assert_eq!(ticks + 1, 30);
}

proptest! {
    #[test]
    fn never_before_three_seconds_and_never_by_fewer_than_thirty_ticks(ticks in prop::collection::vec(0_u64..5_000, 0..400)) {
        let mut now = 0;
        let mut silence = Silence::new(now);
        for (at, took) in ticks.iter().enumerate() {
            // A timer may be late and not early.
            now += took.max(&u64::from(TICK));
            if silence.tick(now) {
                prop_assert!(at + 1 >= 30, "after {} ticks", at + 1);
                prop_assert!(now as f64 >= PATIENCE, "after {now} ms");
                break;
            }
        }
    }
}
