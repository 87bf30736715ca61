//! The numbers entered about a line beside its pumps and tanks, in groups.

use super::group::group;
use serde::{Deserialize, Serialize};

group! {
    /// How long material travels.
    TransportDraft,
    /// A time of the transport.
    TransportField;
    /// From the blender to the former, bunker included.
    blender_to_former: BlenderToFormer, RunTime, Second, "";
    /// From the former to the press.
    former_to_press: FormerToPress, RunTime, Second, "";
    /// From the press exit to the saw.
    press_to_saw: PressToSaw, RunTime, Second, "";
    /// How long old and new furnish mix in blender, bunker and former.
    mixing: Mixing, RunTime, Second, "0";
    /// Between two groups of steps of a changeover.
    step_gap: StepGap, RunTime, Second, "10";
}

group! {
    /// How far what runs may be from the recipe.
    ToleranceDraft,
    /// A tolerance.
    ToleranceField;
    /// A dose, relative.
    dose: Dose, Share, Percent, "3";
    /// A moisture, in points.
    moisture: Moisture, Share, Percent, "0.5";
    /// The oven-dry mat weight, relative.
    mat_weight: MatWeight, Share, Percent, "2";
    /// The board density, relative.
    density: Density, Share, Percent, "3";
}

group! {
    /// Standard uncertainties of the line's instruments; blank for those of the usual instrument.
    UncertaintyDraft,
    /// A standard uncertainty.
    UncertaintyField;
    /// Belt scale, relative.
    belt_scale: BeltScale, Share, Percent, "";
    /// Moisture meters, in points of dry basis.
    moisture: Moisture, Share, Percent, "";
    /// Flow meters, relative.
    flow_meter: FlowMeter, Share, Percent, "";
    /// Solids contents, in points.
    solids: Solids, Share, Percent, "";
    /// Line speed, relative.
    line_speed: LineSpeed, Share, Percent, "";
    /// Mass per area of a mat sample, relative.
    mat_sample: MatSample, Share, Percent, "";
    /// Mass per area of a raw board, relative.
    board_mass: BoardMass, Share, Percent, "";
    /// Thickness.
    thickness: Thickness, Thickness, Millimetre, "";
    /// Mat width.
    mat_width: MatWidth, Thickness, Millimetre, "";
}

group! {
    /// What is read off the running line beside the pumps.
    RunningDraft,
    /// A reading.
    RunningField;
    /// Reading of the belt scale, moist fibre.
    belt: Belt, FibreFlow, KilogramPerHour, "";
    /// Moisture of that fibre.
    moisture: Moisture, Moisture, PercentDryBasis, "";
    /// Speed of the line.
    line_speed: LineSpeed, LineSpeed, MetrePerMinute, "";
    /// Area of a mat sample.
    sample_area: SampleArea, SampleArea, SquareMetre, "";
    /// Its mass, moist.
    sample_mass: SampleMass, BatchMass, Kilogram, "";
    /// Its moisture.
    sample_moisture: SampleMoisture, Moisture, PercentDryBasis, "";
    /// Area of a raw board, or of a piece of it.
    board_area: BoardArea, SampleArea, SquareMetre, "";
    /// Its mass.
    board_mass: BoardMass, BatchMass, Kilogram, "";
    /// Its thickness as it leaves the press.
    board_thickness: BoardThickness, Thickness, Millimetre, "";
    /// Its moisture.
    board_moisture: BoardMoisture, Moisture, PercentDryBasis, "";
}

group! {
    /// The rows and columns of a rate card.
    TableDraft,
    /// A number of the rate card.
    TableField;
    /// Lowest fibre flow.
    flow_from: FlowFrom, FibreFlow, KilogramPerHour, "";
    /// Highest fibre flow.
    flow_to: FlowTo, FibreFlow, KilogramPerHour, "";
    /// From one row to the next.
    flow_step: FlowStep, FibreFlow, KilogramPerHour, "";
    /// Lowest fibre moisture.
    moisture_from: MoistureFrom, Moisture, PercentDryBasis, "";
    /// Highest fibre moisture.
    moisture_to: MoistureTo, Moisture, PercentDryBasis, "";
    /// From one column to the next, in points of dry-basis moisture.
    moisture_step: MoistureStep, Share, Percent, "1";
}

group! {
    /// What a certificate says of a new delivery. Blank boxes change nothing.
    DeliveryDraft,
    /// A number of a new delivery.
    DeliveryField;
    /// Solids.
    solids: Solids, Solids, Percent, "";
    /// Density at the certificate's temperature.
    density: Density, LiquidDensity, KilogramPerCubicMetre, "";
    /// Temperature at which the density was measured.
    measured_at: MeasuredAt, Temperature, Celsius, "20";
    /// Temperature at which it will be pumped.
    pumped_at: PumpedAt, Temperature, Celsius, "";
    /// How much its volume grows per degree.
    expansion: Expansion, Expansion, PercentPerKelvin, "";
    /// Mass delivered, to be blended with what is in the tank.
    amount: Amount, BatchMass, Kilogram, "";
}

/// What the rows of a rate card mean.
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
