//! The shape of a mill's line.

use super::{choice, fields, forms, through};
use crate::domain::line::book::{CardDraft, DeliveryDraft, RunningDraft, ToleranceDraft, TransportDraft};
use crate::domain::line::catch_test::{CalibrationDraft, CalibrationId, RowDraft, RowId};
use crate::domain::line::{
    CardRows, Feeds, LineBook, Metering, Model, PumpDraft, PumpId, ReadingWay, SettingUnit, TankDraft, TankId, TankWay,
    Tie,
};

through!(PumpId 0, TankId 0, CalibrationId 0, RowId 0);
forms!(TransportDraft, ToleranceDraft, RunningDraft, CardDraft, DeliveryDraft);

fields!(Tie { May name, Must role, Must substance });
fields!(RowDraft { Must id, Must setting, Must seconds, Must mass, Must tare, Spare set_aside });
fields!(CalibrationDraft { Must id, Must at, Must density, Must temperature, May remark, Must rows });
fields!(PumpDraft {
    Must id, Must name, Must feeds, Must unit, Must metering, Must model, Must reading_way, Must least_setting,
    Must most_setting, Must share, Must nozzles, Must nozzle_least, Must nozzle_most, Must pipe_volume, Must reading,
    May calibrations
});
fields!(TankDraft {
    Must id, Must name, Must feeds, Must way, Must capacity, Must heel, Must content, Must lead_time
});
fields!(default LineBook {
    May pumps, May tanks, May transport, May tolerances, May running, May remark, May card_rows, May card,
    May delivered, May delivery
});

choice!(plain CardRows { OvenDry = "oven_dry", Belt = "belt" });
choice!(plain TankWay { Level = "level", Volume = "volume", Mass = "mass" });
choice!(plain Model { WithIntercept = "with_intercept", ThroughOrigin = "through_origin" });
choice!(plain SettingUnit { Percent = "percent", Hertz = "hertz", Rpm = "rpm" });
choice!(plain Metering { Volume = "volume", Mass = "mass" });
choice!(plain ReadingWay { MassMeter = "mass_meter", VolumeMeter = "volume_meter", Setting = "setting" });
choice!(Feeds { Liquid(tie: Tie) = "liquid", Thinning(tie: Tie) = "thinning", Water = "water" });
