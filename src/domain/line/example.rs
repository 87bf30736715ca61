//! The line of the invented wheat-straw mill, to go with the example recipe.

use super::book::LineBook;
use super::field::LineField;
use super::{RunningField, TableField, TransportField};
use crate::domain::line::pumps::catch_test::CalibrationDraft;
use crate::domain::line::pumps::pump::{PumpField, PumpId, ReadingWay};
use crate::domain::line::pumps::setting::SettingUnit;
use crate::domain::line::tanks::feeds::{Feeds, Tie};
use crate::domain::line::tanks::tank::{TankField, TankWay};
use crate::domain::recipe::draft::{Draft, Entry};
use crate::quantity::Unit;

/// A row of a catch test: setting, seconds, caught mass.
type Row = (&'static str, &'static str, &'static str);

/// One pump: its name, scale, catch tests (density, rows of setting, seconds and caught mass), nozzles and pipe.
struct Typed {
    name: &'static str,
    unit: SettingUnit,
    tests: &'static [(&'static str, &'static [Row])],
    most: &'static str,
    nozzles: [&'static str; 3],
    pipe: &'static str,
    reading: &'static str,
    present: &'static str,
}

const BINDER: Typed = Typed {
    name: "P1 binder",
    unit: SettingUnit::Percent,
    tests: &[
        ("1230", &[("20", "60", "2.64"), ("40", "60", "5.23"), ("60", "60", "7.82"), ("80", "60", "10.45")]),
        (
            "1230",
            &[
                ("20", "60", "2.71"),
                ("35", "60", "4.66"),
                ("50", "60", "6.68"),
                ("65", "60", "8.64"),
                ("80", "60", "10.61"),
            ],
        ),
    ],
    most: "95",
    nozzles: ["12", "15", "40"],
    pipe: "6",
    reading: "339",
    present: "42.4",
};

const WAX: Typed = Typed {
    name: "P2 wax",
    unit: SettingUnit::Hertz,
    tests: &[(
        "950",
        &[
            ("10", "120", "1.52"),
            ("20", "120", "3.10"),
            ("30", "120", "4.62"),
            ("40", "120", "6.21"),
            ("50", "120", "7.74"),
        ],
    )],
    most: "60",
    nozzles: ["6", "10", "30"],
    pipe: "3",
    reading: "110",
    present: "23.7",
};

const WATER: Typed = Typed {
    name: "P3 water",
    unit: SettingUnit::Rpm,
    tests: &[("998", &[("100", "60", "3.05"), ("200", "60", "6.02"), ("300", "60", "9.09"), ("400", "60", "12.05")])],
    most: "450",
    nozzles: ["10", "30", "90"],
    pipe: "4",
    reading: "566",
    present: "313",
};

/// 2026-03-02 06:00 UTC, the day of the first catch tests of this invented mill.
const FIRST: u64 = 1_772_431_200_000;
const WEEK: u64 = 7 * 24 * 3_600_000;

/// The line of the example: three pumps with catch tests, a tank of binder, transport times and one set of
/// readings. All of it is invented. `draft` is the example recipe, whose liquids the pumps are tied to.
#[must_use]
pub fn example_line(draft: &Draft) -> LineBook {
    let mut book = LineBook::default();
    let mut typed = [&BINDER, &WAX].into_iter();
    for (liquid, pump) in draft.liquids.iter().zip(typed.by_ref()) {
        add(&mut book, Feeds::Liquid(Tie::to(liquid)), pump);
    }
    add(&mut book, Feeds::Water, &WATER);
    if let Some(liquid) = draft.liquids.first() {
        let tank = book.add_tank(Feeds::Liquid(Tie::to(liquid)));
        if let Some(tank) = book.tank_mut(tank) {
            "T1 binder".clone_into(&mut tank.name);
            tank.set_way(TankWay::Level);
        }
        let tank = |part| LineField::Tank(tank, part);
        put(&mut book, tank(TankField::Capacity), "20000", Unit::Litre);
        put(&mut book, tank(TankField::Heel), "500", Unit::Litre);
        put(&mut book, tank(TankField::Content), "42", Unit::Percent);
        put(&mut book, tank(TankField::LeadTime), "72", Unit::Hour);
    }
    for (field, seconds) in [
        (TransportField::BlenderToFormer, "150"),
        (TransportField::FormerToPress, "40"),
        (TransportField::PressToSaw, "25"),
        (TransportField::Mixing, "90"),
    ] {
        put(&mut book, LineField::Transport(field), seconds, Unit::Second);
    }
    for (field, text, unit) in [
        (RunningField::Belt, "8880", Unit::KilogramPerHour),
        (RunningField::Moisture, "4.5", Unit::PercentDryBasis),
        (RunningField::SampleArea, "0.25", Unit::SquareMetre),
        (RunningField::SampleMass, "2.75", Unit::Kilogram),
        (RunningField::SampleMoisture, "10.3", Unit::PercentDryBasis),
        (RunningField::LineSpeed, "7.75", Unit::MetrePerMinute),
        (RunningField::BoardArea, "0.25", Unit::SquareMetre),
        (RunningField::BoardMass, "2.64", Unit::Kilogram),
        (RunningField::BoardThickness, "15.6", Unit::Millimetre),
        (RunningField::BoardMoisture, "6", Unit::PercentDryBasis),
    ] {
        put(&mut book, LineField::Running(field), text, unit);
    }
    for (field, text, unit) in [
        (TableField::FlowFrom, "6000", Unit::KilogramPerHour),
        (TableField::FlowTo, "10000", Unit::KilogramPerHour),
        (TableField::FlowStep, "500", Unit::KilogramPerHour),
        (TableField::MoistureFrom, "3", Unit::PercentDryBasis),
        (TableField::MoistureTo, "7", Unit::PercentDryBasis),
    ] {
        put(&mut book, LineField::Table(field), text, unit);
    }
    book
}

fn put(book: &mut LineBook, field: LineField, text: &str, unit: Unit) {
    if let Some(entry) = book.entry_mut(field) {
        *entry = Entry::typed(text, unit);
    }
}

fn add(book: &mut LineBook, feeds: Feeds, typed: &Typed) {
    let id = book.add_pump(feeds, typed.unit);
    if let Some(pump) = book.pump_mut(id) {
        typed.name.clone_into(&mut pump.name);
        pump.set_reading_way(ReadingWay::MassMeter);
        for (week, (density, rows)) in (0..).zip(typed.tests) {
            let id = pump.start_calibration(FIRST + week * WEEK);
            if let Some(test) = pump.calibration_mut(id) {
                test.entries.density = Entry::typed(*density, Unit::KilogramPerCubicMetre);
                caught(test, rows, typed.unit);
            }
        }
    }
    let [nozzles, least, most] = typed.nozzles;
    let field = |part| LineField::Pump(id, part);
    put(book, field(PumpField::MostSetting), typed.most, typed.unit.unit());
    put(book, field(PumpField::Nozzles), nozzles, Unit::One);
    put(book, field(PumpField::NozzleLeast), least, Unit::LitrePerHour);
    put(book, field(PumpField::NozzleMost), most, Unit::LitrePerHour);
    put(book, field(PumpField::PipeVolume), typed.pipe, Unit::Litre);
    put(book, field(PumpField::Reading), typed.reading, Unit::KilogramPerHour);
    put(book, field(PumpField::PresentSetting), typed.present, typed.unit.unit());
}

fn caught(test: &mut CalibrationDraft, rows: &[Row], unit: SettingUnit) {
    test.rows.clear();
    for (setting, seconds, mass) in rows {
        let id = test.add_row(unit);
        if let Some(row) = test.row_mut(id) {
            row.entries.setting = Entry::typed(*setting, unit.unit());
            row.entries.seconds = Entry::typed(*seconds, Unit::Second);
            row.entries.mass = Entry::typed(*mass, Unit::Kilogram);
        }
    }
}

/// The number of the example's first pump, for a first look.
pub const FIRST_PUMP: PumpId = PumpId(1);
