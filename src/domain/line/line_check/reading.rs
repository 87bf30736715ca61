//! What was read off the running line.

use crate::domain::line::book::{LineBook, RunningField};
use crate::domain::line::field::LineField;
use crate::domain::line::finding::{LineFinding, LinePlace, LineWhat};
use crate::domain::line::pumps::pump::{PumpField, PumpId, ReadingWay};
use crate::domain::line::pumps::setting::Setting;
use crate::domain::line::read::Reader;
use crate::domain::recipe::finding::Grade;
use crate::quantity::Moisture;
use uom::si::f64::{Area, Mass, MassRate, VolumeRate};

/// What one pump was read to deliver.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Reading {
    /// By a mass flow meter.
    Mass(MassRate),
    /// By a volume flow meter.
    Volume(VolumeRate),
    /// By the drive's setting.
    Setting(Setting),
}

/// A piece of mat, weighed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sample {
    /// Its area.
    pub area: Area,
    /// Its mass, moist.
    pub mass: Mass,
    /// Its moisture; `None` when it was not measured.
    pub moisture: Option<Moisture>,
}

/// What was read off the line.
#[derive(Debug, Clone, PartialEq)]
pub struct Readings {
    /// What the belt scale reads, G.
    pub belt: MassRate,
    /// Moisture of that fibre, ω_f.
    pub moisture: Moisture,
    /// The pumps that were read.
    pub pumps: Vec<(PumpId, Reading)>,
    /// A piece of mat.
    pub sample: Option<Sample>,
}

/// Reads what was typed about the running line.
#[must_use]
pub fn read_running(book: &LineBook) -> (Option<Readings>, Vec<LineFinding>) {
    let mut reader = Reader::new(book);
    let field = LineField::Running;
    let belt = reader.number(field(RunningField::Belt));
    let moisture = reader.number(field(RunningField::Moisture)).and_then(Moisture::from_dry_basis);
    let mut pumps = Vec::new();
    for pump in &book.pumps {
        let reading = reader.number(LineField::Pump(pump.id, PumpField::Reading));
        pumps.extend(reading.map(|base| {
            let reading = match pump.reading_way {
                ReadingWay::MassMeter => Reading::Mass(si!(MassRate, base)),
                ReadingWay::VolumeMeter => Reading::Volume(si!(VolumeRate, base)),
                ReadingWay::Setting => Reading::Setting(Setting(base)),
            };
            (pump.id, reading)
        }));
    }
    let area = reader.number(field(RunningField::SampleArea));
    let mass = reader.number(field(RunningField::SampleMass));
    let sample_moisture = reader.number(field(RunningField::SampleMoisture)).and_then(Moisture::from_dry_basis);
    let blank = |part| book.running.entry(part).is_blank();
    let missing =
        [RunningField::SampleArea, RunningField::SampleMass].into_iter().find(|part| blank(*part)).filter(|_| {
            let parts = [RunningField::SampleArea, RunningField::SampleMass, RunningField::SampleMoisture];
            parts.into_iter().any(|part| !blank(part))
        });
    if let Some(missing) = missing {
        reader.say(Grade::Note, LinePlace::Field(field(missing)), LineWhat::SampleIncomplete);
    }
    let sample = area.zip(mass).map(|(area, mass)| Sample {
        area: si!(Area, area),
        mass: si!(Mass, mass),
        moisture: sample_moisture,
    });
    let stopped = reader.stopped_since(0);
    let readings = belt.zip(moisture).filter(|_| !stopped).map(|(belt, moisture)| Readings {
        belt: si!(MassRate, belt),
        moisture,
        pumps,
        sample,
    });
    (readings, reader.findings)
}
