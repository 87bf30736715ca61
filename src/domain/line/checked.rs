//! From a book to pumps and tanks that can be used, or to what is wrong with them.
//!
//! Each pump, catch test and tank stands for itself: what is wrong with one takes nothing from the others.

use crate::domain::line::book::LineBook;
use crate::domain::line::entries::{ToleranceField, TransportField};
use crate::domain::line::field::LineField;
use crate::domain::line::finding::{LineFinding, LineFindingKind, LinePlace};
use crate::domain::line::pumps::catch_test::{
    Calibration, CalibrationDraft, CalibrationField, Caught, LEAST_ROWS, RowDraft, RowField, SuspectCatch, fit,
    suspects,
};
use crate::domain::line::pumps::curve::Curve;
use crate::domain::line::pumps::pump::{Nozzles, Pump, PumpDraft, PumpField, PumpId};
use crate::domain::line::pumps::setting::Setting;
use crate::domain::line::read::Reader;
use crate::domain::line::tanks::tank::{Tank, TankContent, TankDraft, TankField, TankId, TankWay};
use crate::domain::recipe::finding::Grade;
use crate::quantity::{Amount, Kind};
use crate::statistics::regression::Fit;
use uom::si::f64::{Mass, MassDensity, Ratio, Time, Volume};

/// Transport times; `None` while blank.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Transport {
    /// From the blender to the former, bunker included.
    pub blender_to_former: Option<Time>,
    /// From the former to the press.
    pub former_to_press: Option<Time>,
    /// From the press exit to the saw.
    pub press_to_saw: Option<Time>,
    /// How long old and new furnish mix.
    pub mixing: Option<Time>,
    /// Between two groups of steps.
    pub step_gap: Option<Time>,
}

/// How far what runs may be from the recipe.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tolerances {
    /// A dose, relative.
    pub dose: Ratio,
    /// A moisture, in points.
    pub moisture: Ratio,
    /// The oven-dry mat weight, relative.
    pub mat_weight: Ratio,
    /// The board density, relative.
    pub density: Ratio,
    /// The belt scale reading, relative.
    pub belt_scale: Ratio,
    /// The line speed, relative.
    pub line_speed: Ratio,
    /// The mat width, relative.
    pub mat_width: Ratio,
    /// The thickness of the raw board, relative.
    pub thickness: Ratio,
    /// The moisture of the raw board, in points.
    pub board_moisture: Ratio,
}

/// A line that was checked.
#[derive(Debug, Clone, PartialEq)]
pub struct CheckedLine {
    /// The pumps, in the order of the page.
    pub pumps: Vec<Pump>,
    /// The tanks that are known well enough.
    pub tanks: Vec<Tank>,
    /// Transport times.
    pub transport: Transport,
    /// Tolerances; `None` while one cannot be read.
    pub tolerances: Option<Tolerances>,
    /// What there is to say, in the order of the page.
    pub findings: Vec<LineFinding>,
}

impl CheckedLine {
    /// The pump with that number.
    #[must_use]
    pub fn pump(&self, id: PumpId) -> Option<&Pump> {
        self.pumps.iter().find(|pump| pump.id == id)
    }

    /// The tank with that number.
    #[must_use]
    pub fn tank(&self, id: TankId) -> Option<&Tank> {
        self.tanks.iter().find(|tank| tank.id == id)
    }
}

/// Reads every box of the mill's pumps, tanks, transport times and tolerances.
///
/// Readings, the rate card and a new delivery are read where they are used.
#[must_use]
pub fn check_line(book: &LineBook) -> CheckedLine {
    let mut reader = Reader::new(book);
    if book.pumps.is_empty() {
        reader.say(Grade::Note, LinePlace::Line, LineFindingKind::NoPumps);
    }
    // The tanks first, since a catch test is held against its tank; said in the order of the page.
    let tanks: Vec<Tank> = book.tanks.iter().filter_map(|tank| reader.tank(tank)).collect();
    let about_tanks = std::mem::take(&mut reader.findings);
    let pumps: Vec<Pump> = book.pumps.iter().map(|pump| reader.pump(pump, &tanks)).collect();
    reader.names();
    reader.shares(&pumps);
    reader.findings.extend(about_tanks);
    let transport = reader.transport();
    let tolerances = reader.tolerances();
    CheckedLine { pumps, tanks, transport, tolerances, findings: reader.findings }
}

/// A catch test as its rows come.
#[derive(Debug, Clone, PartialEq)]
pub struct Examined {
    /// The rows that can be used, in their order.
    pub rows: Vec<Caught>,
    /// Excluded rows that could be used.
    pub excluded: Vec<Caught>,
    /// The line through them as soon as there is one, kg/s on the setting's base unit.
    pub fit: Option<Fit>,
    /// Rows far off the line.
    pub suspects: Vec<SuspectCatch>,
    /// The catch test, once it counts.
    pub calibration: Option<Calibration>,
    /// What there is to say about it.
    pub findings: Vec<LineFinding>,
}

impl Examined {
    /// What was caught in a row, whether it counts or not; `None` while it cannot be computed.
    #[must_use]
    pub fn caught(&self, row: crate::domain::line::RowId) -> Option<&Caught> {
        self.rows.iter().chain(&self.excluded).find(|caught| caught.row == row)
    }
}

/// Looks at one catch test; `None` when it is not there.
#[must_use]
pub fn examine(book: &LineBook, pump: PumpId, calibration: crate::domain::line::CalibrationId) -> Option<Examined> {
    let pump = book.pump(pump)?;
    let calibration = pump.calibration(calibration)?;
    let mut tanks = Reader::new(book);
    let tanks: Vec<Tank> = book.tanks.iter().filter_map(|tank| tanks.tank(tank)).collect();
    let mut reader = Reader::new(book);
    let mut examined = reader.calibration(pump, calibration, &tanks);
    examined.findings = reader.findings;
    Some(examined)
}

impl Reader<'_> {
    fn pump(&mut self, pump: &PumpDraft, tanks: &[Tank]) -> Pump {
        let field = |part| LineField::Pump(pump.id, part);
        let least = self.number(field(PumpField::LeastSetting)).map(Setting);
        let most = self.number(field(PumpField::MostSetting)).map(Setting);
        if least.zip(most).is_some_and(|(least, most)| least >= most) {
            self.stop(LinePlace::Field(field(PumpField::MostSetting)), LineFindingKind::LimitsCrossed);
        }
        let share = self.number(field(PumpField::Share)).unwrap_or(1.0);
        let step = self.number(field(PumpField::SettingStep)).map_or(pump.unit.usual_step(), Setting);
        let nozzles = self.nozzles(pump.id);
        let pipe = self.number(field(PumpField::PipeVolume)).map(|volume| si!(Volume, volume));
        let mut calibrations = Vec::new();
        let mut faulty_test = false;
        for draft in &pump.calibrations {
            let calibration = self.calibration(pump, draft, tanks).calibration;
            faulty_test = calibration.is_none();
            calibrations.extend(calibration);
        }
        if calibrations.is_empty() && pump.calibrations.is_empty() {
            self.say(Grade::Note, LinePlace::Pump(pump.id), LineFindingKind::NotCalibrated);
        }
        Pump {
            id: pump.id,
            feeds: pump.feeds.clone(),
            unit: pump.unit,
            metering: pump.metering,
            least,
            most,
            share: si!(Ratio, share),
            step,
            nozzles,
            pipe,
            calibrations,
            faulty_test,
        }
    }

    fn nozzles(&mut self, pump: PumpId) -> Option<Nozzles> {
        let field = |part| LineField::Pump(pump, part);
        let count = self.number(field(PumpField::Nozzles));
        let least = self.number(field(PumpField::NozzleLeast));
        let most = self.number(field(PumpField::NozzleMost));
        if count.is_some_and(|count| count.fract() != 0.0) {
            self.stop(LinePlace::Field(field(PumpField::Nozzles)), LineFindingKind::NotWhole);
            return None;
        }
        if least.zip(most).is_some_and(|(least, most)| least >= most) {
            self.stop(LinePlace::Field(field(PumpField::NozzleMost)), LineFindingKind::WindowCrossed);
            return None;
        }
        let parts = [PumpField::Nozzles, PumpField::NozzleLeast, PumpField::NozzleMost];
        let blank = |part: &&PumpField| self.book.entry(field(**part)).is_none_or(|entry| entry.is_blank());
        let missing = parts.iter().find(blank);
        let any = count.or(least).or(most).is_some();
        if let Some(missing) = missing.filter(|_| any) {
            self.say(Grade::Note, LinePlace::Field(field(*missing)), LineFindingKind::NozzlesIncomplete);
        }
        Some(Nozzles {
            // Bounded by its limit.
            count: count? as u32,
            least: si!(VolumeRate, least?),
            most: si!(VolumeRate, most?),
        })
    }

    fn calibration(&mut self, pump: &PumpDraft, draft: &CalibrationDraft, tanks: &[Tank]) -> Examined {
        let from = self.findings.len();
        let place = LinePlace::Calibration(pump.id, draft.id);
        let part = |part| LineField::Calibration(pump.id, draft.id, part);
        let density = self.number(part(CalibrationField::Density)).map(|density| si!(MassDensity, density));
        let temperature = self
            .number(part(CalibrationField::Temperature))
            .map(|temperature| si!(ThermodynamicTemperature, temperature));
        let mut rows: Vec<Caught> = Vec::new();
        for row in draft.rows.iter().filter(|row| !row.is_blank() && !row.excluded) {
            let caught = self.row(pump, draft, row, density, tanks);
            if let Some((caught, before)) = caught.zip(rows.last())
                && caught.setting < before.setting
            {
                let before = before.setting.amount(pump.unit);
                let at = LineField::Row(pump.id, draft.id, row.id, RowField::Setting);
                self.say(Grade::Unusual, LinePlace::Field(at), LineFindingKind::SettingsNotIncreasing { before });
            }
            rows.extend(caught);
        }
        // Nothing is said about what does not count.
        let mut silent = Reader::new(self.book);
        let excluded = draft.rows.iter().filter(|row| !row.is_blank() && row.excluded);
        let excluded = excluded.filter_map(|row| silent.row(pump, draft, row, density, tanks)).collect();
        let fit = fit(&rows, pump.model).ok();
        let one_setting = rows.first().is_some_and(|first| {
            // The same text gives the same bits; settings that differ at all are two.
            rows.iter().all(|row| row.setting.0.to_bits() == first.setting.0.to_bits())
        });
        if rows.len() < LEAST_ROWS {
            self.stop(place, LineFindingKind::FewRows { rows: rows.len(), least: LEAST_ROWS });
        } else if one_setting {
            self.stop(place, LineFindingKind::OneSetting);
        } else if fit.is_none_or(|fit| fit.slope <= 0.0) {
            self.stop(place, LineFindingKind::FlowNotIncreasing);
        }
        let suspects = fit.as_ref().map(|fit| suspects(&rows, fit)).unwrap_or_default();
        for suspect in &suspects {
            let what = LineFindingKind::Suspect {
                studentised: Amount::from_base(Kind::Ratio, suspect.studentised),
                from: Amount::from_base(Kind::Ratio, suspect.from),
            };
            self.say(Grade::Unusual, LinePlace::Row(pump.id, draft.id, suspect.row), what);
        }
        let counts = !self.stopped_since(from);
        let calibration = density.zip(fit).filter(|_| counts).map(|(density, fit)| Calibration {
            id: draft.id,
            at: draft.at,
            density,
            temperature,
            rows: rows.clone(),
            curve: Curve::as_caught(fit),
        });
        Examined { rows, excluded, fit, suspects, calibration, findings: Vec::new() }
    }

    fn row(
        &mut self,
        pump: &PumpDraft,
        calibration: &CalibrationDraft,
        row: &RowDraft,
        density: Option<MassDensity>,
        tanks: &[Tank],
    ) -> Option<Caught> {
        let field = |part| LineField::Row(pump.id, calibration.id, row.id, part);
        if RowField::ALL.iter().any(|part| !part.limit().optional && row.entry(*part).is_blank()) {
            self.say(Grade::Note, LinePlace::Row(pump.id, calibration.id, row.id), LineFindingKind::CatchIncomplete);
            return None;
        }
        let from = self.findings.len();
        let setting = self.number(field(RowField::Setting));
        let seconds = self.number(field(RowField::Seconds));
        let mass = self.number(field(RowField::Mass));
        let tare = self.number(field(RowField::Tare)).unwrap_or(0.0);
        if self.stopped_since(from) {
            return None;
        }
        let caught = Caught {
            row: row.id,
            setting: Setting(setting?),
            time: si!(Time, seconds?),
            gross: si!(Mass, mass?),
            tare: si!(Mass, tare),
        };
        if caught.net().value < 0.0 {
            let net = Amount::from_base(Kind::BatchMass, caught.net().value);
            self.stop(LinePlace::Field(field(RowField::Mass)), LineFindingKind::NegativeMass { net });
            return None;
        }
        let tank = tanks.iter().find(|tank| tank.feeds.holds_for(&pump.feeds));
        if let Some((tank, density)) = tank.zip(density)
            && caught.net() > tank.capacity * density
        {
            let most: Mass = tank.capacity * density;
            let most = Amount::from_base(Kind::BatchMass, most.value);
            self.stop(LinePlace::Field(field(RowField::Mass)), LineFindingKind::AboveTank { tank: tank.id, most });
            return None;
        }
        Some(caught)
    }

    /// Two pumps of one name.
    fn names(&mut self) {
        let pumps = &self.book.pumps;
        let name = |pump: &PumpDraft| pump.name.trim().to_lowercase();
        for (at, pump) in pumps.iter().enumerate() {
            if !name(pump).is_empty() && pumps[..at].iter().any(|earlier| name(earlier) == name(pump)) {
                self.say(Grade::Unusual, LinePlace::Pump(pump.id), LineFindingKind::SamePumpName);
            }
        }
    }

    /// The pumps of one liquid share its flow.
    fn shares(&mut self, pumps: &[Pump]) {
        for (at, pump) in pumps.iter().enumerate() {
            if pumps[..at].iter().any(|earlier| earlier.feeds.same(&pump.feeds)) {
                continue;
            }
            let sum: Ratio = pumps.iter().filter(|other| other.feeds.same(&pump.feeds)).map(|other| other.share).sum();
            if (sum.value - 1.0).abs() > 1e-9 {
                let sum = Amount::from_base(Kind::Share, sum.value);
                let place = LinePlace::Field(LineField::Pump(pump.id, PumpField::Share));
                self.say(Grade::Unusual, place, LineFindingKind::SharesNotWhole { sum });
            }
        }
    }

    fn tank(&mut self, tank: &TankDraft) -> Option<Tank> {
        let field = |part| LineField::Tank(tank.id, part);
        let capacity = self.number(field(TankField::Capacity));
        let heel = self.number(field(TankField::Heel));
        let content = self.number(field(TankField::Content));
        let lead_time = self.number(field(TankField::LeadTime));
        let capacity: Volume = si!(Volume, capacity?);
        let heel: Volume = si!(Volume, heel?);
        if heel >= capacity {
            self.stop(LinePlace::Field(field(TankField::Heel)), LineFindingKind::HeelTooLarge);
            return None;
        }
        let content = content.map(|content| match tank.way {
            TankWay::Level => TankContent::Level(si!(Ratio, content)),
            TankWay::Volume => TankContent::Volume(si!(Volume, content)),
            TankWay::Mass => TankContent::Mass(si!(Mass, content)),
        });
        Some(Tank {
            id: tank.id,
            feeds: tank.feeds.clone(),
            capacity,
            heel,
            content,
            read_at: tank.read_at,
            ordered_at: tank.ordered_at,
            lead_time: lead_time.map(|time| si!(Time, time)),
        })
    }

    fn transport(&mut self) -> Transport {
        let mut time = |field| self.number(LineField::Transport(field)).map(|time| si!(Time, time));
        Transport {
            blender_to_former: time(TransportField::BlenderToFormer),
            former_to_press: time(TransportField::FormerToPress),
            press_to_saw: time(TransportField::PressToSaw),
            mixing: time(TransportField::Mixing),
            step_gap: time(TransportField::StepGap),
        }
    }

    fn tolerances(&mut self) -> Option<Tolerances> {
        let mut share = |field| self.number(LineField::Tolerance(field)).map(|share| si!(Ratio, share));
        let [dose, moisture, mat_weight] =
            [ToleranceField::Dose, ToleranceField::Moisture, ToleranceField::MatWeight].map(&mut share);
        let [density, belt_scale, line_speed] =
            [ToleranceField::Density, ToleranceField::BeltScale, ToleranceField::LineSpeed].map(&mut share);
        let [mat_width, thickness, board_moisture] =
            [ToleranceField::MatWidth, ToleranceField::Thickness, ToleranceField::BoardMoisture].map(&mut share);
        Some(Tolerances {
            dose: dose?,
            moisture: moisture?,
            mat_weight: mat_weight?,
            density: density?,
            belt_scale: belt_scale?,
            line_speed: line_speed?,
            mat_width: mat_width?,
            thickness: thickness?,
            board_moisture: board_moisture?,
        })
    }
}
