//! What passes each station: the streams of the balance, put together by station.

use super::strip_layout::{Leg, StripStream};
use crate::domain::Station;
use crate::domain::balance::closure::{Node, Stream as Flow, StreamName};

/// What passes each station, in the material's order. Mass flows are in the base unit, kg/s.
#[must_use]
pub fn legs(streams: &[Flow]) -> Vec<Leg> {
    Station::ALL.iter().map(|station| leg(streams, *station)).collect()
}

fn leg(streams: &[Flow], station: Station) -> Leg {
    let mut leg = Leg::default();
    for flow in streams {
        let here = |node: Node| node != Node::Outside && node.station() == station;
        let (solids, water) = (flow.solids.value, flow.water.value);
        match (here(flow.from), here(flow.to)) {
            // Fibre has no machine of its own: it comes and goes on.
            _ if flow.name == StreamName::Fibre && station == Station::Fibre => {
                add(&mut leg.arrives, solids, water);
                add(&mut leg.goes_on, solids, water);
            }
            (false, true) if flow.from == Node::Outside && flow.name != StreamName::Fibre => {
                let Leg { added, lost, .. } = &mut leg;
                signed(added, lost, solids, water);
            }
            (false, true) => add(&mut leg.arrives, solids, water),
            (true, false) if flow.to == Node::Outside && flow.name != StreamName::Board => {
                let Leg { added, lost, .. } = &mut leg;
                signed(lost, added, solids, water);
            }
            (true, false) => add(&mut leg.goes_on, solids, water),
            // Within the station, or elsewhere.
            (true, true) | (false, false) => {}
        }
    }
    leg
}

fn add(stream: &mut StripStream, solids: f64, water: f64) {
    stream.solids += solids;
    stream.water += water;
}

/// A stream below zero runs the other way, as water that a board loses where it usually takes some up.
fn signed(with: &mut StripStream, against: &mut StripStream, solids: f64, water: f64) {
    add(with, solids.max(0.0), water.max(0.0));
    add(against, (-solids).max(0.0), (-water).max(0.0));
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::f64::MassRate;
    use uom::si::mass_rate::kilogram_per_second;

    fn flow(name: StreamName, from: Node, to: Node, solids: f64, water: f64) -> Flow {
        let rate = MassRate::new::<kilogram_per_second>;
        Flow { name, from, to, solids: rate(solids), water: rate(water) }
    }

    #[test]
    fn streams_are_put_together_by_station_and_negative_ones_turned() {
        let streams = [
            flow(StreamName::Fibre, Node::Outside, Node::Blender, 100.0, 5.0),
            flow(StreamName::Water, Node::Outside, Node::Blender, 0.0, 7.0),
            flow(StreamName::Furnish, Node::Blender, Node::Sifter, 100.0, 12.0),
            flow(StreamName::Reject, Node::Sifter, Node::Outside, 10.0, 1.2),
            flow(StreamName::Sifted, Node::Sifter, Node::Way, 90.0, 10.8),
            flow(StreamName::TransportVapour, Node::Way, Node::Outside, 0.0, 0.8),
            flow(StreamName::Laid, Node::Way, Node::Former, 90.0, 10.0),
            flow(StreamName::Trim, Node::Former, Node::Former, 9.0, 1.0),
            flow(StreamName::Mat, Node::Former, Node::Press, 90.0, 10.0),
            flow(StreamName::PressVapour, Node::Press, Node::Outside, 0.0, -2.0),
            flow(StreamName::RawBoard, Node::Press, Node::Stack, 90.0, 12.0),
            flow(StreamName::Conditioning, Node::Outside, Node::Stack, 0.0, -3.0),
            flow(StreamName::SanderDust, Node::Sander, Node::Outside, 5.0, 0.5),
            flow(StreamName::Board, Node::Saw, Node::Outside, 85.0, 8.5),
        ];
        let stream = |solids, water| StripStream { solids, water };
        let none = StripStream::default();
        let expected = [
            Leg { arrives: stream(100.0, 5.0), added: none, lost: none, goes_on: stream(100.0, 5.0) },
            Leg { arrives: stream(100.0, 5.0), added: stream(0.0, 7.0), lost: none, goes_on: stream(100.0, 12.0) },
            Leg { arrives: stream(100.0, 12.0), added: none, lost: stream(10.0, 2.0), goes_on: stream(90.0, 10.0) },
            Leg { arrives: stream(90.0, 10.0), added: stream(0.0, 2.0), lost: none, goes_on: stream(90.0, 12.0) },
            Leg { arrives: stream(90.0, 12.0), added: none, lost: stream(5.0, 3.5), goes_on: stream(85.0, 8.5) },
        ];
        for (leg, expected) in legs(&streams).iter().zip(expected) {
            for (here, there) in [
                (leg.arrives, expected.arrives),
                (leg.added, expected.added),
                (leg.lost, expected.lost),
                (leg.goes_on, expected.goes_on),
            ] {
                assert!(
                    (here.solids - there.solids).abs() < 1e-9 && (here.water - there.water).abs() < 1e-9,
                    "{leg:?}"
                );
            }
        }
    }
}
