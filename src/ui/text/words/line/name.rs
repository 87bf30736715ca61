//! Names of things at the line.

use crate::domain::line::changeover::Stop;
use crate::domain::line::{
    Fed, FlowSource, LineBook, Metering, Model, PeriodLiquidId, PumpDraft, PumpId, RSquared, RangeStatus, SettingUnit,
    TableRows, TankDraft, TankId, TankWay,
};
use crate::domain::{Draft, LiquidId};
use crate::ui::text::LineContext;
use crate::ui::text::words::name;
use crate::{label, t};
use std::borrow::Cow;

/// What a pump is called: its own name, or its number while it has none.
#[must_use]
pub fn pump(pump: &PumpDraft) -> Cow<'_, str> {
    match pump.name.trim() {
        "" => Cow::Owned(t!("line-name-pump", number = pump.id.0)),
        own => Cow::Borrowed(own),
    }
}

/// What a tank is called: its own name, or its number while it has none.
#[must_use]
pub fn tank(tank: &TankDraft) -> Cow<'_, str> {
    match tank.name.trim() {
        "" => Cow::Owned(t!("line-name-tank", number = tank.id.0)),
        own => Cow::Borrowed(own),
    }
}

pub(super) fn pump_called(id: PumpId, context: &LineContext<'_>) -> String {
    context.book.pump(id).map_or_else(|| t!("line-name-pump", number = id.0), |draft| pump(draft).into_owned())
}

pub(super) fn tank_called(id: TankId, context: &LineContext<'_>) -> String {
    context.book.tank(id).map_or_else(|| t!("line-name-tank", number = id.0), |draft| tank(draft).into_owned())
}

/// What a liquid of a period is called.
#[must_use]
pub fn period_liquid(id: PeriodLiquidId, book: &LineBook) -> String {
    match book.period.liquid(id).map(|liquid| &liquid.tie) {
        Some(tie) if !tie.name.trim().is_empty() => tie.name.trim().to_owned(),
        Some(tie) => name::role(tie.role).to_owned(),
        None => t!("line-name-liquid"),
    }
}

pub(super) fn liquid(id: LiquidId, draft: &Draft) -> String {
    draft.liquid(id).map_or_else(|| t!("line-name-liquid"), |liquid| name::liquid(liquid).into_owned())
}

/// What a pump delivers or a tank holds, in this recipe.
#[must_use]
pub fn fed(fed: Fed, draft: &Draft) -> String {
    match fed {
        Fed::Liquid(id) => liquid(id, draft),
        Fed::Thinning(id) => t!("line-name-thinning-water", liquid = liquid(id, draft)),
        Fed::Water => t!("line-name-water"),
        Fed::FaceWater => t!("line-name-face-water"),
    }
}

/// A place that the new furnish reaches.
#[must_use]
pub fn stop(stop: Stop) -> &'static str {
    match stop {
        Stop::Blender => label!("line-stop-blender"),
        Stop::Former => label!("line-stop-former"),
        Stop::PressIn => label!("line-stop-press-in"),
        Stop::PressOut => label!("line-stop-press-out"),
        Stop::Saw => label!("line-stop-saw"),
    }
}

/// Where a setting lies, in a few words for beside its mark.
#[must_use]
pub fn range_status(range_status: RangeStatus) -> &'static str {
    match range_status {
        RangeStatus::Within => label!("line-range-within"),
        RangeStatus::BelowTested => label!("line-range-below-tested"),
        RangeStatus::AboveTested => label!("line-range-above-tested"),
        RangeStatus::BelowLimit => label!("line-range-below-limit"),
        RangeStatus::AboveLimit => label!("line-range-above-limit"),
    }
}

/// Where a flow comes from.
#[must_use]
pub fn source(source: FlowSource) -> &'static str {
    match source {
        FlowSource::Read => label!("line-source-read"),
        FlowSource::Inferred => label!("line-source-inferred"),
        FlowSource::Assumed => label!("line-source-assumed"),
    }
}

/// The scale of a drive.
#[must_use]
pub fn setting_unit(unit: SettingUnit) -> &'static str {
    match unit {
        SettingUnit::Percent => label!("line-setting-percent"),
        SettingUnit::Hertz => label!("line-setting-hertz"),
        SettingUnit::Rpm => label!("line-setting-rpm"),
    }
}

/// What a pump's setting fixes.
#[must_use]
pub fn metering(metering: Metering) -> &'static str {
    match metering {
        Metering::Volume => label!("line-metering-volume"),
        Metering::Mass => label!("line-metering-mass"),
    }
}

/// Which line is fitted.
#[must_use]
pub fn model(model: Model) -> &'static str {
    match model {
        Model::WithIntercept => label!("line-model-intercept"),
        Model::ThroughOrigin => label!("line-model-origin"),
    }
}

/// Which coefficient of determination it is.
#[must_use]
pub fn r_squared(r_squared: RSquared) -> &'static str {
    match r_squared {
        RSquared::Centred(_) => label!("line-r-squared-centred"),
        RSquared::Uncentred(_) => label!("line-r-squared-uncentred"),
    }
}

/// How a tank's content is read.
#[must_use]
pub fn tank_way(way: TankWay) -> &'static str {
    match way {
        TankWay::Level => label!("line-tank-level"),
        TankWay::Volume => label!("line-tank-volume"),
        TankWay::Mass => label!("line-tank-mass"),
    }
}

/// What the rows of a settings table mean.
#[must_use]
pub fn table_rows(rows: TableRows) -> &'static str {
    match rows {
        TableRows::Belt => label!("line-rows-belt"),
        TableRows::OvenDry => label!("line-rows-oven-dry"),
    }
}
