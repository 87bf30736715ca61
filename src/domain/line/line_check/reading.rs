//! What was read off the running line.

use crate::domain::line::book::LineBook;
use crate::domain::line::entries::{RunningField, UncertaintyField};
use crate::domain::line::field::LineField;
use crate::domain::line::finding::{LineFinding, LineFindingKind, LinePlace};
use crate::domain::line::line_check::reconcile::uncertainty::Uncertainties;
use crate::domain::line::pumps::pump::{PumpField, PumpId, ReadingWay};
use crate::domain::line::pumps::setting::Setting;
use crate::domain::line::read::Reader;
use crate::domain::recipe::finding::Grade;
use crate::quantity::Moisture;
use uom::si::f64::{Area, ArealMassDensity, Length, Mass, MassRate, Velocity, VolumeRate};

/// What the flow meter of a pump reads.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum MeterReading {
    /// By mass.
    Mass(MassRate),
    /// By volume.
    Volume(VolumeRate),
}

/// What was read of one pump.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PumpReading {
    /// The pump.
    pub pump: PumpId,
    /// Its flow meter.
    pub meter: Option<MeterReading>,
    /// Its setting.
    pub setting: Option<Setting>,
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

/// A raw board as it leaves the press.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct RawBoard {
    /// Mass per area.
    pub weight: Option<ArealMassDensity>,
    /// Thickness.
    pub thickness: Option<Length>,
    /// Moisture.
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
    pub pumps: Vec<PumpReading>,
    /// Speed of the line.
    pub line_speed: Option<Velocity>,
    /// Width of the trimmed mat; `None` for the recipe's.
    pub mat_width: Option<Length>,
    /// A piece of mat.
    pub sample: Option<Sample>,
    /// A raw board, or a piece of it.
    pub board: RawBoard,
    /// How well all of that is known.
    pub uncertainties: Uncertainties,
}

impl Readings {
    /// What was read of a pump.
    #[must_use]
    pub fn pump(&self, id: PumpId) -> Option<&PumpReading> {
        self.pumps.iter().find(|reading| reading.pump == id)
    }
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
        let meter = reader.number(LineField::Pump(pump.id, PumpField::Reading)).map(|base| match pump.reading_way {
            ReadingWay::MassMeter => MeterReading::Mass(si!(MassRate, base)),
            ReadingWay::VolumeMeter => MeterReading::Volume(si!(VolumeRate, base)),
        });
        let setting = reader.number(LineField::Pump(pump.id, PumpField::PresentSetting)).map(Setting);
        if meter.is_some() || setting.is_some() {
            pumps.push(PumpReading { pump: pump.id, meter, setting });
        }
    }
    let line_speed = reader.number(field(RunningField::LineSpeed)).map(|speed| si!(Velocity, speed));
    let mat_width = reader.number(field(RunningField::MatWidth)).map(|width| si!(Length, width));
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
        reader.say(Grade::Note, LinePlace::Field(field(missing)), LineFindingKind::SampleIncomplete);
    }
    let sample = area.zip(mass).map(|(area, mass)| Sample {
        area: si!(Area, area),
        mass: si!(Mass, mass),
        moisture: sample_moisture,
    });
    let board = reader.raw_board();
    for part in UncertaintyField::ALL {
        reader.number(LineField::Uncertainty(*part));
    }
    let uncertainties = Uncertainties::of(book);
    let stopped = reader.stopped_since(0);
    let readings = belt.zip(moisture).filter(|_| !stopped).map(|(belt, moisture)| Readings {
        belt: si!(MassRate, belt),
        moisture,
        pumps,
        line_speed,
        mat_width,
        sample,
        board,
        uncertainties,
    });
    (readings, reader.findings)
}

impl Reader<'_> {
    fn raw_board(&mut self) -> RawBoard {
        let field = LineField::Running;
        let mut read = |part| self.number(field(part));
        let (area, mass) = (read(RunningField::BoardArea), read(RunningField::BoardMass));
        let thickness = read(RunningField::BoardThickness);
        let moisture = read(RunningField::BoardMoisture);
        let missing = match (area, mass) {
            (None, Some(_)) => Some(RunningField::BoardArea),
            (Some(_), None) => Some(RunningField::BoardMass),
            _ => None,
        };
        if let Some(missing) = missing.filter(|part| self.book.running.entry(*part).is_blank()) {
            self.say(Grade::Note, LinePlace::Field(field(missing)), LineFindingKind::SampleIncomplete);
        }
        RawBoard {
            weight: area.zip(mass).map(|(area, mass)| si!(ArealMassDensity, mass / area)),
            thickness: thickness.map(|thickness| si!(Length, thickness)),
            moisture: moisture.and_then(Moisture::from_dry_basis),
        }
    }
}
