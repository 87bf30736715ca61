//! Names of things at the line.

use crate::domain::line::changeover::Stop;
use crate::domain::line::{
    Fed, FlowSource, LineBook, Metering, Model, PeriodLiquidId, PumpDraft, PumpId, RSquared, RangeStatus, SettingUnit,
    TableRows, TankDraft, TankId, TankWay,
};
use crate::domain::{Draft, LiquidId};
use crate::ui::text::LineContext;
use crate::ui::text::words::name;
use std::borrow::Cow;

pub(super) fn pump(pump: &PumpDraft) -> Cow<'_, str> {
    match pump.name.trim() {
        "" => Cow::Owned(format!("Pump {}", pump.id.0)),
        own => Cow::Borrowed(own),
    }
}

pub(super) fn tank(tank: &TankDraft) -> Cow<'_, str> {
    match tank.name.trim() {
        "" => Cow::Owned(format!("Tank {}", tank.id.0)),
        own => Cow::Borrowed(own),
    }
}

pub(super) fn pump_called(id: PumpId, context: &LineContext<'_>) -> String {
    context.book.pump(id).map_or_else(|| format!("Pump {}", id.0), |draft| pump(draft).into_owned())
}

pub(super) fn tank_called(id: TankId, context: &LineContext<'_>) -> String {
    context.book.tank(id).map_or_else(|| format!("Tank {}", id.0), |draft| tank(draft).into_owned())
}

pub(super) fn period_liquid(id: PeriodLiquidId, book: &LineBook) -> String {
    match book.period.liquid(id).map(|liquid| &liquid.tie) {
        Some(tie) if !tie.name.trim().is_empty() => tie.name.trim().to_owned(),
        Some(tie) => name::role(tie.role).to_owned(),
        None => "Liquid".to_owned(),
    }
}

pub(super) fn liquid(id: LiquidId, draft: &Draft) -> String {
    draft.liquid(id).map_or_else(|| "Liquid".to_owned(), |liquid| name::liquid(liquid).into_owned())
}

pub(super) fn fed(fed: Fed, draft: &Draft) -> String {
    match fed {
        Fed::Liquid(id) => liquid(id, draft),
        Fed::Thinning(id) => format!("Thinning water of {}", liquid(id, draft)),
        Fed::Water => "Water".to_owned(),
        Fed::FaceWater => "Face water".to_owned(),
    }
}

pub(super) fn stop(stop: Stop) -> &'static str {
    match stop {
        Stop::Blender => "Blender",
        Stop::Former => "Former",
        Stop::PressIn => "Press, in",
        Stop::PressOut => "Press, out",
        Stop::Saw => "Saw",
    }
}

pub(super) fn range_status(range_status: RangeStatus) -> &'static str {
    match range_status {
        RangeStatus::Within => "within what was tested",
        RangeStatus::BelowTested => "below what was tested",
        RangeStatus::AboveTested => "above what was tested",
        RangeStatus::BelowLimit => "below the lowest setting allowed",
        RangeStatus::AboveLimit => "above the highest setting allowed",
    }
}

pub(super) fn source(source: FlowSource) -> &'static str {
    match source {
        FlowSource::Read => "read",
        FlowSource::Inferred => "inferred from the setting",
        FlowSource::Assumed => "not read, assumed at its target",
    }
}

pub(super) fn setting_unit(unit: SettingUnit) -> &'static str {
    match unit {
        SettingUnit::Percent => "Percent of full setting",
        SettingUnit::Hertz => "Frequency of the drive, Hz",
        SettingUnit::Rpm => "Shaft speed, rpm",
    }
}

pub(super) fn metering(metering: Metering) -> &'static str {
    match metering {
        Metering::Volume => "Volume: mass flow follows the density",
        Metering::Mass => "Mass: mass flow does not follow the density",
    }
}

pub(super) fn model(model: Model) -> &'static str {
    match model {
        Model::WithIntercept => "Line with intercept",
        Model::ThroughOrigin => "Line through the origin",
    }
}

pub(super) fn r_squared(r_squared: RSquared) -> &'static str {
    match r_squared {
        RSquared::Centred(_) => "R², about the mean",
        RSquared::Uncentred(_) => "R², about zero (line through the origin)",
    }
}

pub(super) fn tank_way(way: TankWay) -> &'static str {
    match way {
        TankWay::Level => "Level, share of the full tank",
        TankWay::Volume => "Volume",
        TankWay::Mass => "Mass",
    }
}

pub(super) fn table_rows(rows: TableRows) -> &'static str {
    match rows {
        TableRows::Belt => "Belt scale reading, moist fibre",
        TableRows::OvenDry => "Oven-dry fibre flow",
    }
}
