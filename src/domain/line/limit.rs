//! What a box at the line may hold and what is usual, in the style of the recipe's table.

use super::book::LineBook;
use super::entries::{DeliveryField, RunningField, TableField, ToleranceField, TransportField, UncertaintyField};
use super::field::LineField;
use crate::domain::line::pumps::catch_test::{CalibrationField, RowField};
use crate::domain::line::pumps::pump::{PumpField, ReadingWay};
use crate::domain::line::pumps::setting::SettingUnit;
use crate::domain::line::tanks::tank::{TankField, TankWay};
use crate::domain::recipe::limit::Limit;
use crate::domain::recipe::limit::Source::CommonPractice;
use crate::quantity::Unit as U;

/// The limit of a field of this book.
#[must_use]
pub fn limit(field: LineField, book: &LineBook) -> Limit {
    let drive = |pump| book.pump(pump).map_or(SettingUnit::Percent, |pump| pump.unit);
    match field {
        LineField::Pump(id, part) => {
            let way = book.pump(id).map_or(ReadingWay::MassMeter, |pump| pump.reading_way);
            pump(part, drive(id), way)
        }
        LineField::Calibration(_, _, part) => match part {
            CalibrationField::Density => density(),
            CalibrationField::Temperature => temperature().optional(),
        },
        LineField::Row(pump, _, _, part) => row(part, drive(pump)),
        LineField::Tank(id, part) => tank(part, book.tank(id).map_or(TankWay::Level, |tank| tank.way)),
        LineField::Transport(part) => transport(part),
        LineField::Tolerance(part) => tolerance(part),
        LineField::Uncertainty(part) => uncertainty(part),
        LineField::Running(part) => running(part),
        LineField::Table(part) => card(part),
        LineField::Delivery(part) => delivery(part),
    }
}

/// The settings that a drive can be at.
const fn setting(unit: SettingUnit) -> Limit {
    match unit {
        SettingUnit::Percent => Limit::from_to(U::Percent, 0.0, 150.0).usually(5.0, 100.0, CommonPractice),
        SettingUnit::Hertz => Limit::from_to(U::Hertz, 0.0, 400.0).usually(5.0, 70.0, CommonPractice),
        SettingUnit::Rpm => Limit::from_to(U::TurnPerMinute, 0.0, 20_000.0).usually(5.0, 3_600.0, CommonPractice),
    }
}

const fn density() -> Limit {
    Limit::above_to(U::KilogramPerCubicMetre, 0.0, 3_000.0).usually(700.0, 1_500.0, CommonPractice)
}

const fn temperature() -> Limit {
    Limit::from_to(U::Celsius, -30.0, 150.0).usually(5.0, 60.0, CommonPractice)
}

const fn pump(field: PumpField, unit: SettingUnit, way: ReadingWay) -> Limit {
    match field {
        PumpField::LeastSetting | PumpField::MostSetting => setting(unit).optional(),
        PumpField::Share => Limit::above_to(U::Percent, 0.0, 100.0),
        PumpField::Nozzles => Limit::from_to(U::One, 1.0, 500.0).optional(),
        PumpField::NozzleLeast | PumpField::NozzleMost => Limit::above_to(U::LitrePerHour, 0.0, 100_000.0).optional(),
        PumpField::PipeVolume => Limit::above_to(U::Litre, 0.0, 10_000.0).optional(),
        PumpField::Reading => match way {
            ReadingWay::MassMeter => Limit::from_to(U::KilogramPerHour, 0.0, 1e6).optional(),
            ReadingWay::VolumeMeter => Limit::from_to(U::LitrePerHour, 0.0, 1e6).optional(),
        },
        PumpField::PresentSetting => setting(unit).optional(),
        PumpField::SettingStep => match unit {
            SettingUnit::Percent => Limit::above_to(U::Percent, 0.0, 10.0).optional(),
            SettingUnit::Hertz => Limit::above_to(U::Hertz, 0.0, 10.0).optional(),
            SettingUnit::Rpm => Limit::above_to(U::TurnPerMinute, 0.0, 100.0).optional(),
        },
    }
}

const fn row(field: RowField, unit: SettingUnit) -> Limit {
    match field {
        RowField::Setting => setting(unit),
        RowField::Seconds => Limit::above_to(U::Second, 0.0, 36_000.0).usually(10.0, 600.0, CommonPractice),
        RowField::Mass => Limit::from_to(U::Kilogram, 0.0, 10_000.0).usually(0.2, 500.0, CommonPractice),
        RowField::Tare => Limit::from_to(U::Kilogram, 0.0, 10_000.0).optional(),
    }
}

const fn tank(field: TankField, way: TankWay) -> Limit {
    match field {
        TankField::Capacity => Limit::above_to(U::Litre, 0.0, 1e7),
        TankField::Heel => Limit::from_to(U::Litre, 0.0, 1e7),
        TankField::Content => match way {
            TankWay::Level => Limit::from_to(U::Percent, 0.0, 100.0),
            TankWay::Volume => Limit::from_to(U::Litre, 0.0, 1e7),
            TankWay::Mass => Limit::from_to(U::Kilogram, 0.0, 1e7),
        },
        TankField::LeadTime => Limit::from_to(U::Hour, 0.0, 8_760.0).optional(),
    }
}

const fn transport(field: TransportField) -> Limit {
    let limit = Limit::from_to(U::Second, 0.0, 36_000.0);
    match field {
        TransportField::BlenderToFormer => limit.usually(5.0, 1_800.0, CommonPractice).optional(),
        TransportField::FormerToPress | TransportField::PressToSaw => {
            limit.usually(1.0, 1_800.0, CommonPractice).optional()
        }
        TransportField::Mixing => limit.usually(0.0, 1_800.0, CommonPractice),
        TransportField::StepGap => limit.usually(0.0, 300.0, CommonPractice),
    }
}

const fn tolerance(field: ToleranceField) -> Limit {
    let limit = Limit::above_to(U::Percent, 0.0, 50.0);
    match field {
        ToleranceField::Dose => limit.usually(0.5, 10.0, CommonPractice),
        ToleranceField::Moisture => limit.usually(0.1, 2.0, CommonPractice),
        ToleranceField::MatWeight => limit.usually(0.5, 5.0, CommonPractice),
        ToleranceField::Density => limit.usually(1.0, 7.0, CommonPractice),
    }
}

const fn uncertainty(field: UncertaintyField) -> Limit {
    match field {
        UncertaintyField::Thickness | UncertaintyField::MatWidth => Limit::above_to(U::Millimetre, 0.0, 100.0),
        _ => Limit::above_to(U::Percent, 0.0, 50.0),
    }
    .optional()
}

const fn flow() -> Limit {
    Limit::above_to(U::KilogramPerHour, 0.0, 1e6)
}

const fn moisture() -> Limit {
    Limit::from_to(U::PercentDryBasis, 0.0, 200.0)
}

const fn running(field: RunningField) -> Limit {
    match field {
        RunningField::Belt => flow().usually(500.0, 60_000.0, CommonPractice),
        RunningField::Moisture => moisture().usually(1.0, 12.0, CommonPractice),
        RunningField::LineSpeed => {
            Limit::above_to(U::MetrePerMinute, 0.0, 500.0).usually(1.0, 150.0, CommonPractice).optional()
        }
        RunningField::SampleArea | RunningField::BoardArea => {
            Limit::above_to(U::SquareMetre, 0.0, 100.0).usually(0.01, 10.0, CommonPractice).optional()
        }
        RunningField::SampleMass | RunningField::BoardMass => Limit::above_to(U::Kilogram, 0.0, 10_000.0).optional(),
        RunningField::BoardThickness => {
            Limit::above_to(U::Millimetre, 0.0, 200.0).usually(2.0, 60.0, CommonPractice).optional()
        }
        RunningField::BoardMoisture => moisture().usually(2.0, 12.0, CommonPractice).optional(),
        RunningField::SampleMoisture => moisture().usually(4.0, 16.0, CommonPractice).optional(),
    }
}

const fn card(field: TableField) -> Limit {
    match field {
        TableField::FlowFrom | TableField::FlowTo | TableField::FlowStep => flow(),
        TableField::MoistureFrom | TableField::MoistureTo => moisture(),
        TableField::MoistureStep => Limit::above_to(U::Percent, 0.0, 100.0),
    }
}

const fn delivery(field: DeliveryField) -> Limit {
    match field {
        DeliveryField::Solids => Limit::above_to(U::Percent, 0.0, 100.0).optional(),
        DeliveryField::Density => density().optional(),
        DeliveryField::MeasuredAt | DeliveryField::PumpedAt => temperature().optional(),
        DeliveryField::Amount => Limit::above_to(U::Kilogram, 0.0, 1e7).optional(),
        DeliveryField::Expansion => {
            Limit::from_to(U::PercentPerKelvin, 0.0, 0.5).usually(0.02, 0.12, CommonPractice).optional()
        }
    }
}
