//! Fields at the line: what each holds, per what.

use crate::domain::line::{
    CalibrationField, ConditionField, DeliveryField, LineBook, LineField, PeriodField, PeriodLiquidField, PumpField,
    ReadingWay, RowField, RunningField, TableField, TableRows, TankField, TankWay, ToleranceField, TransportField,
    UncertaintyField,
};
use crate::field;
use crate::ui::text::FieldWords;

/// Label and hint of a field. A pump's field is labelled without the pump's name.
#[must_use]
pub fn field(field: LineField, book: &LineBook) -> FieldWords {
    match field {
        LineField::Pump(id, part) => pump(part, book.pump(id).map(|pump| pump.reading_way)),
        LineField::Calibration(_, _, part) => match part {
            CalibrationField::Density => field!("line-field-catch-density"),
            CalibrationField::Temperature => field!("line-field-catch-temperature"),
        },
        LineField::Row(_, _, _, part) => match part {
            RowField::Setting => field!("line-field-catch-setting"),
            RowField::Seconds => field!("line-field-catch-time"),
            RowField::Mass => field!("line-field-catch-mass"),
            RowField::Tare => field!("line-field-catch-tare"),
        },
        LineField::Tank(id, part) => tank(part, book.tank(id).map(|tank| tank.way)),
        LineField::Transport(part) => transport(part),
        LineField::Tolerance(part) => match part {
            ToleranceField::Dose => field!("line-field-tolerance-dose"),
            ToleranceField::Moisture => field!("line-field-tolerance-moisture"),
            ToleranceField::MatWeight => field!("line-field-tolerance-mat-weight"),
            ToleranceField::Density => field!("line-field-tolerance-density"),
            ToleranceField::BeltScale => field!("line-field-tolerance-belt-scale"),
            ToleranceField::LineSpeed => field!("line-field-tolerance-line-speed"),
            ToleranceField::MatWidth => field!("line-field-tolerance-mat-width"),
            ToleranceField::Thickness => field!("line-field-tolerance-thickness"),
            ToleranceField::BoardMoisture => field!("line-field-tolerance-board-moisture"),
        },
        LineField::Uncertainty(part) => match part {
            UncertaintyField::BeltScale => field!("line-field-uncertainty-belt-scale"),
            UncertaintyField::Moisture => field!("line-field-uncertainty-moisture"),
            UncertaintyField::FlowMeter => field!("line-field-uncertainty-flow-meter"),
            UncertaintyField::Solids => field!("line-field-uncertainty-solids"),
            UncertaintyField::LineSpeed => field!("line-field-uncertainty-line-speed"),
            UncertaintyField::MatSample => field!("line-field-uncertainty-mat-sample"),
            UncertaintyField::BoardMass => field!("line-field-uncertainty-board-mass"),
            UncertaintyField::Thickness => field!("line-field-uncertainty-thickness"),
            UncertaintyField::MatWidth => field!("line-field-uncertainty-mat-width"),
        },
        LineField::Running(part) => match part {
            RunningField::Belt => field!("line-field-run-belt"),
            RunningField::Moisture => field!("line-field-run-moisture"),
            RunningField::LineSpeed => field!("line-field-run-line-speed"),
            RunningField::MatWidth => field!("line-field-run-mat-width"),
            RunningField::BoardArea => field!("line-field-run-board-area"),
            RunningField::BoardMass => field!("line-field-run-board-mass"),
            RunningField::BoardThickness => field!("line-field-run-board-thickness"),
            RunningField::BoardMoisture => field!("line-field-run-board-moisture"),
            RunningField::SampleArea => field!("line-field-run-sample-area"),
            RunningField::SampleMass => field!("line-field-run-sample-mass"),
            RunningField::SampleMoisture => field!("line-field-run-sample-moisture"),
        },
        LineField::Condition(part) => match part {
            ConditionField::Belt => field!("line-field-belt-now"),
            ConditionField::Moisture => field!("line-field-moisture-now"),
        },
        LineField::Table(part) => card(part, book.table_rows),
        LineField::Delivery(part) => match part {
            DeliveryField::Solids => field!("line-field-delivery-solids"),
            DeliveryField::Density => field!("line-field-delivery-density"),
            DeliveryField::Amount => field!("line-field-delivery-amount"),
            DeliveryField::MeasuredAt => field!("line-field-delivery-measured-at"),
            DeliveryField::PumpedAt => field!("line-field-delivery-pumped-at"),
            DeliveryField::Expansion => field!("line-field-delivery-expansion"),
        },
        LineField::Period(part) => period(part),
        LineField::PeriodLiquid(_, part) => match part {
            PeriodLiquidField::Start => field!("line-field-period-start"),
            PeriodLiquidField::Delivered => field!("line-field-period-delivered"),
            PeriodLiquidField::End => field!("line-field-period-end"),
            PeriodLiquidField::Metered => field!("line-field-period-metered"),
            PeriodLiquidField::Density => field!("line-field-period-density"),
            PeriodLiquidField::Solids => field!("line-field-period-solids"),
        },
    }
}

fn period(part: PeriodField) -> FieldWords {
    match part {
        PeriodField::BeltTotal => field!("line-field-period-belt-total"),
        PeriodField::FibreMoisture => field!("line-field-period-fibre-moisture"),
        PeriodField::Boards => field!("line-field-period-boards"),
        PeriodField::BoardMass => field!("line-field-period-board-mass"),
        PeriodField::BoardMoisture => field!("line-field-period-board-moisture"),
        PeriodField::Reject => field!("line-field-period-reject"),
        PeriodField::Dip => field!("line-field-period-dip"),
        PeriodField::Delivery => field!("line-field-period-delivery"),
    }
}

fn pump(part: PumpField, way: Option<ReadingWay>) -> FieldWords {
    match part {
        PumpField::LeastSetting => field!("line-field-least-setting"),
        PumpField::MostSetting => field!("line-field-most-setting"),
        PumpField::Share => field!("line-field-share"),
        PumpField::Nozzles => field!("line-field-nozzles"),
        PumpField::NozzleLeast => field!("line-field-nozzle-least"),
        PumpField::NozzleMost => field!("line-field-nozzle-most"),
        PumpField::PipeVolume => field!("line-field-pipe-volume"),
        PumpField::SettingStep => field!("line-field-setting-step"),
        PumpField::PresentSetting => field!("line-field-present-setting"),
        PumpField::Reading => match way {
            Some(ReadingWay::VolumeMeter) => field!("line-field-reading-volume"),
            Some(ReadingWay::MassMeter) | None => field!("line-field-reading-mass"),
        },
    }
}

fn tank(part: TankField, way: Option<TankWay>) -> FieldWords {
    match part {
        TankField::Capacity => field!("line-field-tank-capacity"),
        TankField::Heel => field!("line-field-tank-heel"),
        TankField::Content => match way {
            Some(TankWay::Volume) => field!("line-field-tank-volume"),
            Some(TankWay::Mass) => field!("line-field-tank-mass"),
            Some(TankWay::Level) | None => field!("line-field-tank-level"),
        },
        TankField::LeadTime => field!("line-field-lead-time"),
    }
}

fn transport(part: TransportField) -> FieldWords {
    match part {
        TransportField::BlenderToFormer => field!("line-field-blender-to-former"),
        TransportField::FormerToPress => field!("line-field-former-to-press"),
        TransportField::PressToSaw => field!("line-field-press-to-saw"),
        TransportField::Mixing => field!("line-field-mixing"),
        TransportField::StepGap => field!("line-field-step-gap"),
    }
}

fn card(part: TableField, rows: TableRows) -> FieldWords {
    match (part, rows) {
        (TableField::FlowFrom, TableRows::Belt) => field!("line-field-belt-from"),
        (TableField::FlowTo, TableRows::Belt) => field!("line-field-belt-to"),
        (TableField::FlowFrom, TableRows::OvenDry) => field!("line-field-fibre-from"),
        (TableField::FlowTo, TableRows::OvenDry) => field!("line-field-fibre-to"),
        (TableField::FlowStep, _) => field!("line-field-flow-step"),
        (TableField::MoistureFrom, _) => field!("line-field-moisture-from"),
        (TableField::MoistureTo, _) => field!("line-field-moisture-to"),
        (TableField::MoistureStep, _) => field!("line-field-moisture-step"),
    }
}
