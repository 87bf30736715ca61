//! What there is to say at the line: data, without a word of any language.

use super::field::LineField;
use crate::domain::line::pumps::catch_test::{CalibrationId, RowId};
use crate::domain::line::pumps::help::Help;
use crate::domain::line::pumps::pump::PumpId;
use crate::domain::line::pumps::range_status::RangeStatus;
use crate::domain::line::tanks::tank::TankId;
use crate::domain::recipe::finding::{Grade, What};
use crate::domain::recipe::liquid::LiquidId;
use crate::quantity::Amount;

/// Where a finding belongs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum LinePlace {
    /// A box.
    Field(LineField),
    /// A pump as a whole.
    Pump(PumpId),
    /// A catch test as a whole.
    Calibration(PumpId, CalibrationId),
    /// A row of a catch test.
    Row(PumpId, CalibrationId, RowId),
    /// A tank as a whole.
    Tank(TankId),
    /// A liquid of the recipe.
    Liquid(LiquidId),
    /// The dosed water of the recipe.
    Water,
    /// The line as a whole.
    Line,
}

/// What was found.
#[derive(Debug, Clone, PartialEq)]
pub enum LineFindingKind {
    /// Something about what was typed.
    Entry(What),
    /// A setting is below that of the row before it.
    SettingsNotIncreasing {
        /// The setting of the row before.
        before: Amount,
    },
    /// The vessel weighs more than the vessel with what was caught.
    NegativeMass {
        /// Caught mass less the vessel.
        net: Amount,
    },
    /// More was caught than the tank can hold.
    AboveTank {
        /// The tank.
        tank: TankId,
        /// What it holds when full.
        most: Amount,
    },
    /// A catch of which something is still blank; it does not count yet.
    CatchIncomplete,
    /// Fewer rows than a catch test needs.
    FewRows {
        /// How many can be used.
        rows: usize,
        /// How many it takes.
        least: usize,
    },
    /// All rows were caught at one setting.
    OneSetting,
    /// The line falls, or is level: more setting does not give more flow.
    FlowNotIncreasing,
    /// A row lies far off the line.
    Suspect {
        /// Its externally studentised residual, a bare number.
        studentised: Amount,
        /// From which size on rows are pointed at.
        from: Amount,
    },
    /// The pump has no catch test that counts.
    NotCalibrated,
    /// The pump has a catch test, and something is wrong with it.
    FaultyTest,
    /// A count that is not whole.
    NotWhole,
    /// The lowest setting is not below the highest.
    LimitsCrossed,
    /// The least flow of a nozzle is not below its greatest.
    WindowCrossed,
    /// The nozzles are there, but not what one can spray, or the other way round.
    NozzlesIncomplete,
    /// Two pumps of one name.
    SamePumpName,
    /// The shares of the pumps of one liquid do not make a whole.
    SharesNotWhole {
        /// Their sum.
        sum: Amount,
    },
    /// The mill has no pumps yet.
    NoPumps,
    /// The recipe cannot be solved, so there is nothing to set.
    NoRecipe,
    /// The recipe is one of a laboratory: it has no fibre flow, and so nothing that a line could be set to.
    NoFibreFlow,
    /// No pump delivers this liquid of the recipe.
    NoPump,
    /// The pump's liquid is not in this recipe.
    NotInRecipe,
    /// The wanted flow leaves the tested settings or the pump's limits.
    OutOfReach {
        /// How.
        range_status: RangeStatus,
        /// The setting it would take, where the line gives one.
        setting: Option<Amount>,
        /// Smallest fibre flow, oven-dry, that the pump serves; `None` where the liquid's flow does not follow
        /// the fibre.
        least_fibre: Option<Amount>,
        /// Largest fibre flow, oven-dry, that the pump serves.
        most_fibre: Option<Amount>,
        /// What would help.
        help: Vec<Help>,
    },
    /// Even with all nozzles open each sprays more than it should.
    NozzlesTooFew {
        /// Flow of each.
        each: Amount,
        /// What one may spray at most.
        most: Amount,
    },
    /// Even a single nozzle sprays less than it should.
    NozzlesTooMany {
        /// Flow of the one.
        each: Amount,
        /// What one must spray at least.
        least: Amount,
    },
    /// One number of nozzles sprays too much each, one more too little.
    NozzlesBetween {
        /// The smaller number.
        open: u32,
    },
    /// The tank holds more than it can.
    OverFull,
    /// The tank is at its heel: nothing of it can be used.
    TankEmpty,
    /// The heel is as large as the tank.
    HeelTooLarge,
    /// The tank is empty before a delivery ordered now would come.
    OrderOverdue {
        /// How late the order is.
        by: Amount,
        /// The largest flow at which the tank lasts until a delivery ordered now, by volume.
        at_most: Option<Amount>,
    },
    /// The tank runs empty before the delivery that was ordered comes.
    DeliveryLate {
        /// How long before.
        by: Amount,
        /// The largest flow at which the tank lasts until then, by volume.
        at_most: Option<Amount>,
    },
    /// The readings are of another recipe, or from before a changeover.
    StaleReadings {
        /// The recipe that they were made on.
        recipe: String,
    },
    /// Belt scale or fibre moisture were entered on another recipe.
    OtherRecipe {
        /// The recipe that they were entered on.
        recipe: String,
    },
    /// The recipe has no balance at the belt scale and the fibre moisture entered.
    NoBalance,
    /// A mat sample of which only a part was typed.
    SampleIncomplete,
    /// No reading: the pump is taken to run as the recipe wants at this belt reading.
    Assumed,
    /// The last value of a range is below its first.
    RangeCrossed,
    /// The steps give more rows or columns than a card holds.
    TooManySteps {
        /// How many it holds.
        most: usize,
    },
    /// A transport time that is needed here is still blank.
    NoTransport,
    /// Without mat width and press length the time through the press is not known.
    NoPressTime,
    /// The two recipes take the same of every pump.
    NothingChanges,
    /// Between two steps the furnish is moister than both recipes want.
    WetBetween {
        /// Its moisture at the former.
        moisture: Amount,
    },
    /// A temperature, but no expansion: the density is taken as measured.
    NoExpansion,
    /// The certificate is still blank.
    NothingDelivered,
    /// The liquid of the delivery is not in the recipe.
    NoLiquid,
}

/// One finding.
#[derive(Debug, Clone, PartialEq)]
pub struct LineFinding {
    /// How grave.
    pub grade: Grade,
    /// Where.
    pub place: LinePlace,
    /// What.
    pub what: LineFindingKind,
}

impl LineFinding {
    /// A finding.
    #[must_use]
    pub const fn new(grade: Grade, place: LinePlace, what: LineFindingKind) -> Self {
        Self { grade, place, what }
    }

    /// Something that cannot be computed.
    #[must_use]
    pub const fn stop(place: LinePlace, what: LineFindingKind) -> Self {
        Self::new(Grade::Stop, place, what)
    }

    /// The pump that the finding is about, if it is about one.
    #[must_use]
    pub const fn pump(&self) -> Option<PumpId> {
        match self.place {
            LinePlace::Pump(pump)
            | LinePlace::Calibration(pump, _)
            | LinePlace::Row(pump, _, _)
            | LinePlace::Field(
                LineField::Pump(pump, _) | LineField::Calibration(pump, _, _) | LineField::Row(pump, _, _, _),
            ) => Some(pump),
            _ => None,
        }
    }
}
