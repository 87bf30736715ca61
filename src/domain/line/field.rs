//! The address of every number that is typed at the line.

use super::entries::{
    ConditionField, DeliveryField, RunningField, TableField, ToleranceField, TransportField, UncertaintyField,
};
use crate::domain::line::period::draft::{PeriodField, PeriodLiquidField, PeriodLiquidId};
use crate::domain::line::pumps::catch_test::{CalibrationField, CalibrationId, RowField, RowId};
use crate::domain::line::pumps::pump::{PumpField, PumpId};
use crate::domain::line::tanks::tank::{TankField, TankId};

/// A number at the line.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum LineField {
    /// A number of a pump.
    Pump(PumpId, PumpField),
    /// A number of a catch test.
    Calibration(PumpId, CalibrationId, CalibrationField),
    /// A number of a row of a catch test.
    Row(PumpId, CalibrationId, RowId, RowField),
    /// A number of a tank.
    Tank(TankId, TankField),
    /// A transport time.
    Transport(TransportField),
    /// A tolerance.
    Tolerance(ToleranceField),
    /// A standard uncertainty.
    Uncertainty(UncertaintyField),
    /// A reading.
    Running(RunningField),
    /// At what the pumps are set.
    Condition(ConditionField),
    /// A number of the settings table.
    Table(TableField),
    /// A number of a new delivery.
    Delivery(DeliveryField),
    /// A number read over a period.
    Period(PeriodField),
    /// A number of a liquid over a period.
    PeriodLiquid(PeriodLiquidId, PeriodLiquidField),
}

impl LineField {
    /// The pump that the field belongs to, with its catch tests.
    #[must_use]
    pub const fn pump(self) -> Option<PumpId> {
        match self {
            Self::Pump(pump, _) | Self::Calibration(pump, ..) | Self::Row(pump, ..) => Some(pump),
            _ => None,
        }
    }

    /// The stable key of the field, as `data-field` on the page: `line.row.2.1.3.mass` is the caught mass of
    /// row 3 in catch test 1 of pump 2.
    #[must_use]
    pub fn key(self) -> String {
        match self {
            Self::Pump(pump, part) => format!("line.pump.{}.{}", pump.0, part.key()),
            Self::Calibration(pump, id, part) => format!("line.calibration.{}.{}.{}", pump.0, id.0, part.key()),
            Self::Row(pump, id, row, part) => format!("line.row.{}.{}.{}.{}", pump.0, id.0, row.0, part.key()),
            Self::Tank(tank, part) => format!("line.tank.{}.{}", tank.0, part.key()),
            Self::Transport(part) => format!("line.transport.{}", part.key()),
            Self::Tolerance(part) => format!("line.tolerance.{}", part.key()),
            Self::Uncertainty(part) => format!("line.uncertainty.{}", part.key()),
            Self::Running(part) => format!("line.running.{}", part.key()),
            Self::Condition(part) => format!("line.condition.{}", part.key()),
            Self::Table(part) => format!("line.table.{}", part.key()),
            Self::Delivery(part) => format!("line.delivery.{}", part.key()),
            Self::Period(part) => format!("line.period.{}", part.key()),
            Self::PeriodLiquid(id, part) => format!("line.period.{}.{}", id.0, part.key()),
        }
    }
}
