//! Figures of the line: what each is, on which basis.

use crate::domain::line::{Check, Deviation, LineFigure, RunFigure, SettingUnit};
use crate::quantity::{Kind, Unit};
use crate::ui::text::{FigureWords, LineContext, trimmed_to};
use crate::{figure, label};

/// Label and basis of a figure.
#[must_use]
pub fn figure(figure: LineFigure) -> FigureWords {
    match figure {
        LineFigure::CaughtNet => figure!("line-figure-caught-net"),
        LineFigure::CaughtFlow => figure!("line-figure-caught-flow"),
        LineFigure::CaughtResidual => figure!("line-figure-caught-residual"),
        LineFigure::Slope(SettingUnit::Percent) => figure!("line-figure-slope-percent"),
        LineFigure::Slope(SettingUnit::Hertz) => figure!("line-figure-slope-hertz"),
        LineFigure::Slope(SettingUnit::Rpm) => figure!("line-figure-slope-rpm"),
        LineFigure::Intercept => figure!("line-figure-intercept"),
        LineFigure::ResidualSd => figure!("line-figure-residual-sd"),
        LineFigure::MeanFlow => figure!("line-figure-mean-flow"),
        LineFigure::MeanSetting(_) => figure!("line-figure-mean-setting"),
        LineFigure::StudentT => figure!("line-figure-student-t"),
        LineFigure::Leverage => figure!("line-figure-leverage"),
        LineFigure::Prediction => figure!("line-figure-prediction"),
        LineFigure::Wanted => figure!("line-figure-wanted"),
        LineFigure::WantedVolume => figure!("line-figure-wanted-volume"),
        LineFigure::Setting(_) => figure!("line-figure-setting"),
        LineFigure::Spray => figure!("line-figure-spray"),
        LineFigure::OpenNozzles => figure!("line-figure-open-nozzles"),
        LineFigure::NozzleFlow => figure!("line-figure-nozzle-flow"),
        LineFigure::PerFibre => figure!("line-figure-per-fibre"),
        LineFigure::VolumePerFibre => figure!("line-figure-volume-per-fibre"),
        LineFigure::LeastFlow => figure!("line-figure-least-flow"),
        LineFigure::MostFlow => figure!("line-figure-most-flow"),
        LineFigure::LeastFibre => figure!("line-figure-least-fibre"),
        LineFigure::MostFibre => figure!("line-figure-most-fibre"),
        LineFigure::FlowThen => figure!("line-figure-flow-then"),
        LineFigure::FlowNow => figure!("line-figure-flow-now"),
        LineFigure::Drift => figure!("line-figure-drift"),
        LineFigure::RunFibre => figure!("line-figure-run-fibre"),
        LineFigure::RunFlow => figure!("line-figure-run-flow"),
        LineFigure::RunSolids => figure!("line-figure-run-solids"),
        LineFigure::RunDose => figure!("line-figure-run-dose"),
        LineFigure::RecipeDose => figure!("line-figure-recipe-dose"),
        LineFigure::DoseDeviation => figure!("line-figure-dose-deviation"),
        LineFigure::RunWater => figure!("line-figure-run-water"),
        LineFigure::RunFurnish => figure!("line-figure-run-furnish"),
        LineFigure::RunFurnishMoisture => figure!("line-figure-run-furnish-moisture"),
        LineFigure::RunMatMoisture => figure!("line-figure-run-mat-moisture"),
        LineFigure::SampleMoisture => figure!("line-figure-sample-moisture"),
        LineFigure::RunMat => figure!("line-figure-run-mat"),
        LineFigure::RunDensity => figure!("line-figure-run-density"),
        LineFigure::CorrectionTarget => figure!("line-figure-correction-target"),
        LineFigure::CorrectionFactor => figure!("line-figure-correction-factor"),
        LineFigure::FormerFactor => figure!("line-figure-former-factor"),
        LineFigure::Content => figure!("line-figure-content"),
        LineFigure::Usable => figure!("line-figure-usable"),
        LineFigure::UsableMass => figure!("line-figure-usable-mass"),
        LineFigure::Rate => figure!("line-figure-rate"),
        LineFigure::Lasts => figure!("line-figure-lasts"),
        LineFigure::PerShift => figure!("line-figure-per-shift"),
        LineFigure::Fits => figure!("line-figure-fits"),
        LineFigure::BetweenTime => figure!("line-figure-between-time"),
        LineFigure::BetweenArea => figure!("line-figure-between-area"),
        LineFigure::BetweenVolume => figure!("line-figure-between-volume"),
        LineFigure::ChartMean => figure!("line-figure-chart-mean"),
        LineFigure::MovingRange => figure!("line-figure-moving-range"),
        LineFigure::LowLimit => figure!("line-figure-low-limit"),
        LineFigure::HighLimit => figure!("line-figure-high-limit"),
        LineFigure::DensityPumped => figure!("line-figure-density-pumped"),
        LineFigure::DensityMeasured => figure!("line-figure-density-measured"),
    }
}

/// Label and basis of a figure that is compared with the recipe, a dose without its liquid's name.
#[must_use]
pub fn run_figure(figure: RunFigure) -> FigureWords {
    match figure {
        RunFigure::Dose(_) => figure!("line-check-dose"),
        RunFigure::Water => figure!("line-check-water"),
        RunFigure::FurnishMoisture => figure!("line-check-furnish-moisture"),
        RunFigure::MatMoisture => figure!("line-check-mat-moisture"),
        RunFigure::MatWeight => figure!("line-check-mat-weight"),
        RunFigure::Density => figure!("line-check-density-expected"),
        RunFigure::BeltScale => figure!("line-check-belt-scale"),
        RunFigure::FibreMoisture => figure!("line-check-fibre-moisture"),
        RunFigure::Flow(_) => figure!("line-check-flow"),
        RunFigure::LineSpeed => figure!("line-check-line-speed"),
        RunFigure::MatWidth => figure!("line-check-mat-width"),
        RunFigure::RawDensity => figure!("line-check-raw-density"),
        RunFigure::Thickness => figure!("line-check-thickness"),
        RunFigure::BoardMoisture => figure!("line-check-board-moisture"),
    }
}

/// With its sign. A moisture's is the difference of the two numbers shown, in their basis.
#[must_use]
pub fn deviation(check: &Check, context: &LineContext<'_>) -> String {
    let moisture = context.plain.units.unit(Kind::Moisture);
    let percent = match check.deviation {
        Deviation::Relative(by) => 100.0 * by.value,
        Deviation::Points(_) => check.actual.get(moisture) - check.target.get(moisture),
    };
    // What rounds to nothing has no sign.
    let percent = if percent.abs() < 0.005 { 0.0 } else { percent };
    let sign = if percent > 0.0 { "+" } else { "" };
    let number = trimmed_to((percent * 100.0).round() / 100.0, 3, context.plain.units.mark);
    match check.deviation {
        Deviation::Relative(_) => format!("{sign}{number}\u{a0}%"),
        Deviation::Points(_) => format!("{sign}{number} {}", points(moisture)),
    }
}

/// What differences of moistures in that unit are called.
pub(super) fn points(moisture: Unit) -> &'static str {
    if moisture == Unit::PercentWetBasis { label!("line-points-wet-basis") } else { label!("line-points-dry-basis") }
}
