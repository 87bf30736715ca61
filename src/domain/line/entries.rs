//! The numbers entered about a line beside its pumps and tanks: one table a form, from which fields, entries, checks and storage follow.

use crate::domain::form::form;
use crate::domain::limit::Limit;
use crate::domain::limit::Source::CommonPractice;
use crate::quantity::Unit as U;
use serde::{Deserialize, Serialize};

const fn seconds() -> Limit {
    Limit::from_to(U::Second, 0.0, 36_000.0)
}

const fn tolerance() -> Limit {
    Limit::above_to(U::Percent, 0.0, 50.0)
}

const fn uncertainty(unit: U, most: f64) -> Limit {
    Limit::above_to(unit, 0.0, most).optional()
}

const fn flow() -> Limit {
    Limit::above_to(U::KilogramPerHour, 0.0, 1e6)
}

const fn moisture() -> Limit {
    Limit::from_to(U::PercentDryBasis, 0.0, 200.0)
}

const fn area() -> Limit {
    Limit::above_to(U::SquareMetre, 0.0, 100.0).usually(0.01, 10.0, CommonPractice).optional()
}

const fn mass() -> Limit {
    Limit::above_to(U::Kilogram, 0.0, 10_000.0).optional()
}

/// What a liquid's density may be.
pub(super) const fn density() -> Limit {
    Limit::above_to(U::KilogramPerCubicMetre, 0.0, 3_000.0).usually(700.0, 1_500.0, CommonPractice)
}

/// What a liquid's temperature may be.
pub(super) const fn temperature() -> Limit {
    Limit::from_to(U::Celsius, -30.0, 150.0).usually(5.0, 60.0, CommonPractice).optional()
}

form! {
    /// How long material travels.
    enum TransportField {
        /// From the blender to the former, bunker included.
        BlenderToFormer: blender_to_former, RunTime, Second, "", seconds().usually(5.0, 1_800.0, CommonPractice).optional();
        /// From the former to the press.
        FormerToPress: former_to_press, RunTime, Second, "", seconds().usually(1.0, 1_800.0, CommonPractice).optional();
        /// From the press exit to the saw.
        PressToSaw: press_to_saw, RunTime, Second, "", seconds().usually(1.0, 1_800.0, CommonPractice).optional();
        /// How long old and new furnish mix in blender, bunker and former.
        Mixing: mixing, RunTime, Second, "0", seconds().usually(0.0, 1_800.0, CommonPractice);
        /// Between two groups of steps of a changeover.
        StepGap: step_gap, RunTime, Second, "10", seconds().usually(0.0, 300.0, CommonPractice);
    }

    /// Transport times as entered.
    struct TransportEntries;
}

form! {
    /// How far what runs may be from the recipe.
    enum ToleranceField {
        /// A dose, relative.
        Dose: dose, Share, Percent, "3", tolerance().usually(0.5, 10.0, CommonPractice);
        /// A moisture, in points.
        Moisture: moisture, Share, Percent, "0.5", tolerance().usually(0.1, 2.0, CommonPractice);
        /// The oven-dry mat weight, relative.
        MatWeight: mat_weight, Share, Percent, "2", tolerance().usually(0.5, 5.0, CommonPractice);
        /// The board density, relative.
        Density: density, Share, Percent, "3", tolerance().usually(1.0, 7.0, CommonPractice);
        /// The belt scale reading, relative.
        BeltScale: belt_scale, Share, Percent, "2", tolerance().usually(0.5, 10.0, CommonPractice);
        /// The line speed, relative.
        LineSpeed: line_speed, Share, Percent, "1", tolerance().usually(0.2, 5.0, CommonPractice);
        /// The mat width, relative.
        MatWidth: mat_width, Share, Percent, "1", tolerance().usually(0.2, 5.0, CommonPractice);
        /// The thickness of the raw board, relative.
        Thickness: thickness, Share, Percent, "2", tolerance().usually(0.5, 5.0, CommonPractice);
        /// The moisture of the raw board, in points.
        BoardMoisture: board_moisture, Share, Percent, "1", tolerance().usually(0.2, 3.0, CommonPractice);
    }

    /// Tolerances as entered.
    struct ToleranceEntries;
}

form! {
    /// A standard uncertainty of one of the line's instruments; blank for that of the usual instrument.
    enum UncertaintyField {
        /// Belt scale, relative.
        BeltScale: belt_scale, Share, Percent, "", uncertainty(U::Percent, 50.0);
        /// Moisture meters, in points of dry basis.
        Moisture: moisture, Share, Percent, "", uncertainty(U::Percent, 50.0);
        /// Flow meters, relative.
        FlowMeter: flow_meter, Share, Percent, "", uncertainty(U::Percent, 50.0);
        /// Solids contents, in points.
        Solids: solids, Share, Percent, "", uncertainty(U::Percent, 50.0);
        /// Line speed, relative.
        LineSpeed: line_speed, Share, Percent, "", uncertainty(U::Percent, 50.0);
        /// Mass per area of a mat sample, relative.
        MatSample: mat_sample, Share, Percent, "", uncertainty(U::Percent, 50.0);
        /// Mass per area of a raw board, relative.
        BoardMass: board_mass, Share, Percent, "", uncertainty(U::Percent, 50.0);
        /// Thickness.
        Thickness: thickness, Thickness, Millimetre, "", uncertainty(U::Millimetre, 100.0);
        /// Mat width.
        MatWidth: mat_width, Thickness, Millimetre, "", uncertainty(U::Millimetre, 100.0);
    }

    /// Standard uncertainties as entered.
    struct UncertaintyEntries;
}

/// What a reading is taken from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ReadOf {
    /// The fibre on its way to the blender.
    Fibre,
    /// The line, its mat and its boards.
    Line,
}

form! {
    /// What is read off the running line beside the pumps.
    enum RunningField at ReadOf {
        /// Reading of the belt scale, moist fibre.
        Belt: belt, FibreFlow, KilogramPerHour, "", ReadOf::Fibre, flow().usually(500.0, 60_000.0, CommonPractice);
        /// Moisture of that fibre.
        Moisture: moisture, Moisture, PercentDryBasis, "", ReadOf::Fibre, moisture().usually(1.0, 12.0, CommonPractice);
        /// Speed of the line.
        LineSpeed: line_speed, LineSpeed, MetrePerMinute, "", ReadOf::Line,
            Limit::above_to(U::MetrePerMinute, 0.0, 500.0).usually(1.0, 150.0, CommonPractice).optional();
        /// Width of the trimmed mat, measured; blank for the recipe's.
        MatWidth: mat_width, Extent, Metre, "", ReadOf::Line,
            Limit::above_to(U::Metre, 0.0, 20.0).usually(0.3, 4.5, CommonPractice).optional();
        /// Area of a mat sample.
        SampleArea: sample_area, SampleArea, SquareMetre, "", ReadOf::Line, area();
        /// Its mass, moist.
        SampleMass: sample_mass, BatchMass, Kilogram, "", ReadOf::Line, mass();
        /// Its moisture.
        SampleMoisture: sample_moisture, Moisture, PercentDryBasis, "", ReadOf::Line,
            moisture().usually(4.0, 16.0, CommonPractice).optional();
        /// Area of a raw board, or of a piece of it.
        BoardArea: board_area, SampleArea, SquareMetre, "", ReadOf::Line, area();
        /// Its mass.
        BoardMass: board_mass, BatchMass, Kilogram, "", ReadOf::Line, mass();
        /// Its thickness as it leaves the press.
        BoardThickness: board_thickness, Thickness, Millimetre, "", ReadOf::Line,
            Limit::above_to(U::Millimetre, 0.0, 200.0).usually(2.0, 60.0, CommonPractice).optional();
        /// Its moisture.
        BoardMoisture: board_moisture, Moisture, PercentDryBasis, "", ReadOf::Line,
            moisture().usually(2.0, 12.0, CommonPractice).optional();
    }

    /// Readings as entered; the pumps' own are with the pumps.
    struct RunningEntries;
}

form! {
    /// At what the pumps are set; blank for the recipe's.
    enum ConditionField {
        /// Reading of the belt scale, moist fibre.
        Belt: belt, FibreFlow, KilogramPerHour, "", flow().usually(500.0, 60_000.0, CommonPractice).optional();
        /// Moisture of that fibre.
        Moisture: moisture, Moisture, PercentDryBasis, "", moisture().usually(1.0, 12.0, CommonPractice).optional();
    }

    /// Belt scale and fibre moisture as entered for the pump settings.
    struct ConditionEntries;
}

form! {
    /// The rows and columns of the settings table.
    enum TableField {
        /// Lowest fibre flow.
        FlowFrom: flow_from, FibreFlow, KilogramPerHour, "", flow();
        /// Highest fibre flow.
        FlowTo: flow_to, FibreFlow, KilogramPerHour, "", flow();
        /// From one row to the next.
        FlowStep: flow_step, FibreFlow, KilogramPerHour, "", flow();
        /// Lowest fibre moisture.
        MoistureFrom: moisture_from, Moisture, PercentDryBasis, "", moisture();
        /// Highest fibre moisture.
        MoistureTo: moisture_to, Moisture, PercentDryBasis, "", moisture();
        /// From one column to the next, in points of dry-basis moisture.
        MoistureStep: moisture_step, Share, Percent, "1", Limit::above_to(U::Percent, 0.0, 100.0);
    }

    /// Rows and columns as entered.
    struct TableEntries;
}

form! {
    /// What a certificate says of a new delivery. Blank boxes change nothing.
    enum DeliveryField {
        /// Solids.
        Solids: solids, Solids, Percent, "", Limit::above_to(U::Percent, 0.0, 100.0).optional();
        /// Density at the certificate's temperature.
        Density: density, LiquidDensity, KilogramPerCubicMetre, "", density().optional();
        /// Temperature at which the density was measured.
        MeasuredAt: measured_at, Temperature, Celsius, "20", temperature();
        /// Temperature at which it will be pumped.
        PumpedAt: pumped_at, Temperature, Celsius, "", temperature();
        /// How much its volume grows per degree.
        Expansion: expansion, Expansion, PercentPerKelvin, "",
            Limit::from_to(U::PercentPerKelvin, 0.0, 0.5).usually(0.02, 0.12, CommonPractice).optional();
        /// Mass delivered, to be blended with what is in the tank.
        Amount: amount, BatchMass, Kilogram, "", Limit::above_to(U::Kilogram, 0.0, 1e7).optional();
    }

    /// A new delivery as entered.
    struct DeliveryEntries;
}

/// What the rows of the settings table mean.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum TableRows {
    /// Oven-dry fibre flow.
    OvenDry,
    /// What the belt scale reads.
    #[default]
    Belt,
}

impl TableRows {
    /// Both, in the order in which they are offered.
    pub const ALL: &'static [TableRows] = &[Self::Belt, Self::OvenDry];
}
