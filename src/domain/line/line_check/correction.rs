//! What brings what runs back to the recipe.

use crate::domain::balance::outcome::Case;
use crate::domain::line::checked::CheckedLine;
use crate::domain::line::finding::Standing;
use crate::domain::line::line_check::running::{Known, Running};
use crate::domain::line::pumps::pump::PumpId;
use crate::domain::line::pumps::pump_settings::bare;
use crate::domain::line::pumps::setting::{Setting, SettingUnit};
use crate::domain::line::tanks::feeds::Fed;
use uom::ConstZero;
use uom::si::f64::{MassRate, Ratio, Velocity};

/// What to do with one pump.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Trim {
    /// The pump.
    pub pump: PumpId,
    /// What it delivers.
    pub fed: Fed,
    /// Whether its flow was read.
    pub known: Known,
    /// What it delivers now.
    pub now: MassRate,
    /// What the recipe wants of it at the fibre that runs.
    pub wanted: MassRate,
    /// wanted − now.
    pub change: MassRate,
    /// wanted/now; `None` when it stands.
    pub factor: Option<Ratio>,
    /// The scale of its drive.
    pub unit: SettingUnit,
    /// Its setting now, when that was read.
    pub setting_now: Option<Setting>,
    /// The setting for what is wanted, by its last catch test.
    pub setting: Option<Setting>,
    /// Where that setting lies.
    pub standing: Standing,
}

/// What to do with the former.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FormerTrim {
    /// Mat weight wanted per mat weight now: what the former has to lay more, per area.
    pub factor: Ratio,
    /// The line speed at which the furnish that runs gives the mat weight wanted; `None` without a mat width.
    pub line_speed: Option<Velocity>,
}

/// The trims of all pumps that the recipe uses. `wanted` is the recipe at the fibre that runs.
pub(in crate::domain::line) fn trims(running: &Running, line: &CheckedLine, wanted: &Case) -> Vec<Trim> {
    let one = |run: &crate::domain::line::line_check::running::PumpRun| {
        let pump = line.pump(run.pump)?;
        let bare = bare(pump, run.fed, wanted)?;
        Some(Trim {
            pump: run.pump,
            fed: run.fed,
            known: run.known,
            now: run.mass,
            wanted: bare.mass,
            change: bare.mass - run.mass,
            factor: (run.mass > MassRate::ZERO).then(|| bare.mass / run.mass),
            unit: pump.unit,
            setting_now: run.setting,
            setting: bare.setting,
            standing: bare.standing,
        })
    };
    running.pumps.iter().filter_map(one).collect()
}

/// The trim of the former: v = S_n/(M·b) with the solids that run and the mat weight wanted.
pub(in crate::domain::line) fn former_trim(running: &Running, case: &Case) -> Option<FormerTrim> {
    let factor: Ratio = case.solved.mat.od / running.mat_od?;
    let net = running.solids * (Ratio::new::<uom::si::ratio::ratio>(1.0) - case.input.line.reject);
    let line_speed: Option<Velocity> = case.input.line.width.map(|width| net / (case.solved.mat.od * width));
    factor.is_finite().then_some(FormerTrim { factor, line_speed })
}
