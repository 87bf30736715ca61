//! Fields at the line: what each holds, per what.

use crate::domain::line::{
    CalibrationField, ConditionField, DeliveryField, LineBook, LineField, PeriodField, PeriodLiquidField, PumpField,
    ReadingWay, RowField, RunningField, TableField, TableRows, TankField, TankWay, ToleranceField, TransportField,
    UncertaintyField,
};
use crate::ui::text::FieldWords;

/// All are standard uncertainties.
const BLANK_UNCERTAINTY: &str = "Standard; leave blank for the usual instrument.";

const fn words(label: &'static str, hint: &'static str) -> FieldWords {
    FieldWords { label, hint }
}

pub(super) fn field(field: LineField, book: &LineBook) -> FieldWords {
    match field {
        LineField::Pump(id, part) => pump(part, book.pump(id).map(|pump| pump.reading_way)),
        LineField::Calibration(_, _, part) => match part {
            CalibrationField::Density => words("Density of the liquid caught", "Saved with the test."),
            CalibrationField::Temperature => words("Temperature of the liquid caught", "For the record; optional."),
        },
        LineField::Row(_, _, _, part) => match part {
            RowField::Setting => words("Setting", "As the drive shows it."),
            RowField::Seconds => words("Time", "How long was caught."),
            RowField::Mass => words("Gross mass", "Vessel and liquid, or the liquid alone."),
            RowField::Tare => words("Tare", "Leave blank if tared."),
        },
        LineField::Tank(id, part) => tank(part, book.tank(id).map(|tank| tank.way)),
        LineField::Transport(part) => transport(part),
        LineField::Tolerance(part) => match part {
            ToleranceField::Dose => words("Tolerance of doses, relative", ""),
            ToleranceField::Moisture => words("Tolerance of moistures, dry-basis points", ""),
            ToleranceField::MatWeight => words("Tolerance of the mat weight, relative", ""),
            ToleranceField::Density => words("Tolerance of the board density, relative", ""),
            ToleranceField::BeltScale => words("Tolerance of the belt scale, relative", ""),
            ToleranceField::LineSpeed => words("Tolerance of the line speed, relative", ""),
            ToleranceField::MatWidth => words("Tolerance of the mat width, relative", ""),
            ToleranceField::Thickness => words("Tolerance of the board thickness, relative", ""),
            ToleranceField::BoardMoisture => words("Tolerance of the board moisture, dry-basis points", ""),
        },
        LineField::Uncertainty(part) => match part {
            UncertaintyField::BeltScale => words("Uncertainty of the belt scale", BLANK_UNCERTAINTY),
            UncertaintyField::Moisture => words("Uncertainty of moistures, dry-basis points", BLANK_UNCERTAINTY),
            UncertaintyField::FlowMeter => words("Uncertainty of flow meters", BLANK_UNCERTAINTY),
            UncertaintyField::Solids => words("Uncertainty of solids contents, points", BLANK_UNCERTAINTY),
            UncertaintyField::LineSpeed => words("Uncertainty of the line speed", BLANK_UNCERTAINTY),
            UncertaintyField::MatSample => words("Uncertainty of the mat sample", BLANK_UNCERTAINTY),
            UncertaintyField::BoardMass => words("Uncertainty of the board mass", BLANK_UNCERTAINTY),
            UncertaintyField::Thickness => words("Uncertainty of the thickness", BLANK_UNCERTAINTY),
            UncertaintyField::MatWidth => words("Uncertainty of the mat width", BLANK_UNCERTAINTY),
        },
        LineField::Running(part) => match part {
            RunningField::Belt => {
                words("Belt scale reading, moist fibre", "With its moisture, as the belt scale shows it.")
            }
            RunningField::Moisture => words("Moisture of that fibre", ""),
            RunningField::LineSpeed => words("Line speed", "As the press shows it."),
            RunningField::MatWidth => words("Trimmed mat width", "Leave blank for the recipe's."),
            RunningField::BoardArea => words("Raw board, area", "Of the whole board, or of the piece weighed."),
            RunningField::BoardMass => words("Raw board, mass", "As it leaves the press."),
            RunningField::BoardThickness => words("Raw board, thickness", "Before sanding."),
            RunningField::BoardMoisture => words("Raw board, moisture", ""),
            RunningField::SampleArea => words("Mat sample, area", "Cut before the press."),
            RunningField::SampleMass => words("Mat sample, mass", "Moist, as cut."),
            RunningField::SampleMoisture => words("Mat sample, moisture", "Blank: taken from the flows."),
        },
        LineField::Condition(part) => match part {
            ConditionField::Belt => words("Belt scale", "Leave blank for the recipe's."),
            ConditionField::Moisture => words("Fibre moisture", "Leave blank for the recipe's."),
        },
        LineField::Table(part) => card(part, book.table_rows),
        LineField::Delivery(part) => match part {
            DeliveryField::Solids => words("Solids on the certificate, by mass", "Blank: as before."),
            DeliveryField::Density => words("Density on the certificate", "Blank: as before."),
            DeliveryField::Amount => words("Mass delivered", "Leave blank for an empty tank."),
            DeliveryField::MeasuredAt => words("Temperature of that density", ""),
            DeliveryField::PumpedAt => words("Temperature at the pump", "Blank: the density is taken as measured."),
            DeliveryField::Expansion => words(
                "Thermal expansion, by volume",
                "Of the liquid, from its data sheet; for many resins near 0.06 %/K, from memory.",
            ),
        },
        LineField::Period(part) => period(part),
        LineField::PeriodLiquid(_, part) => match part {
            PeriodLiquidField::Start => words("Start dip", "All its tanks together."),
            PeriodLiquidField::Delivered => words("Delivered", "By the weighbridge."),
            PeriodLiquidField::End => words("End dip", "All its tanks together."),
            PeriodLiquidField::Metered => words("Flow meter total", "Litres times density where it meters volume."),
            PeriodLiquidField::Density => words("Density", ""),
            PeriodLiquidField::Solids => words("Solids content", ""),
        },
    }
}

fn period(part: PeriodField) -> FieldWords {
    match part {
        PeriodField::BeltTotal => words("Belt scale total, wet", "End less start."),
        PeriodField::FibreMoisture => words("Mean fibre moisture", ""),
        PeriodField::Boards => words("Raw boards counted", ""),
        PeriodField::BoardMass => words("Mean raw-board mass", "As it leaves the press."),
        PeriodField::BoardMoisture => words("Mean raw-board moisture", ""),
        PeriodField::Reject => words("Sifter reject", "Share of the furnish."),
        PeriodField::Dip => words("Uncertainty of a dip", "Standard, by volume."),
        PeriodField::Delivery => words("Uncertainty of a delivery", "Standard, relative."),
    }
}

fn pump(part: PumpField, way: Option<ReadingWay>) -> FieldWords {
    match part {
        PumpField::LeastSetting => words("Lowest setting allowed", "Blank: no limit."),
        PumpField::MostSetting => words("Highest setting allowed", "Blank: no limit."),
        PumpField::Share => words("Share of the liquid's flow", "100 % unless several pumps deliver it."),
        PumpField::Nozzles => words("Number of nozzles", "Blank: nozzles are left out."),
        PumpField::NozzleLeast => words("Least flow of one nozzle", "Below it the spray breaks up badly."),
        PumpField::NozzleMost => words("Greatest flow of one nozzle", ""),
        PumpField::PipeVolume => words("Pipe from valve to nozzles, volume", "Blank: left out of the changeover."),
        PumpField::SettingStep => words("Step of the setting", "Leave blank for the usual one."),
        PumpField::PresentSetting => words("Present setting", "As the drive shows it now."),
        PumpField::Reading => match way {
            Some(ReadingWay::VolumeMeter) => words("Flow meter reading, by volume", "Blank: not read."),
            Some(ReadingWay::MassMeter) | None => words("Flow meter reading, by mass", "Blank: not read."),
        },
    }
}

fn tank(part: TankField, way: Option<TankWay>) -> FieldWords {
    match part {
        TankField::Capacity => words("Volume when full", ""),
        TankField::Heel => words("Volume that cannot be pumped out", "What stays below the outlet."),
        TankField::Content => match way {
            Some(TankWay::Volume) => words("Content now, by volume", "With what cannot be pumped out."),
            Some(TankWay::Mass) => words("Content now, by mass", "With what cannot be pumped out."),
            Some(TankWay::Level) | None => words("Level now, share of the full tank", ""),
        },
        TankField::LeadTime => words("From order to delivery", "Blank: no reminder."),
    }
}

fn transport(part: TransportField) -> FieldWords {
    match part {
        TransportField::BlenderToFormer => words("From blender to former", "Bunker included, when it runs as usual."),
        TransportField::FormerToPress => words("From former to press", ""),
        TransportField::PressToSaw => words("From press exit to saw", ""),
        TransportField::Mixing => words(
            "Time for old and new to mix through",
            "In blender, bunker and former; the board of that time is neither.",
        ),
        TransportField::StepGap => words("Between two moments of steps", "What one needs to set the next pumps."),
    }
}

fn card(part: TableField, rows: TableRows) -> FieldWords {
    match (part, rows) {
        (TableField::FlowFrom, TableRows::Belt) => words("Lowest belt scale reading, moist fibre", ""),
        (TableField::FlowTo, TableRows::Belt) => words("Highest belt scale reading, moist fibre", ""),
        (TableField::FlowFrom, TableRows::OvenDry) => words("Lowest fibre flow, oven-dry", ""),
        (TableField::FlowTo, TableRows::OvenDry) => words("Highest fibre flow, oven-dry", ""),
        (TableField::FlowStep, _) => words("Step from row to row", ""),
        (TableField::MoistureFrom, _) => words("Lowest fibre moisture", ""),
        (TableField::MoistureTo, _) => words("Highest fibre moisture", ""),
        (TableField::MoistureStep, _) => words("Step from column to column, dry-basis points", ""),
    }
}
