//! Figures of the line: what each is, on which basis.

use crate::domain::line::{Check, Deviation, LineFigure, RunFigure, SettingUnit};
use crate::quantity::{Kind, Unit};
use crate::ui::text::{FigureWords, LineContext, trimmed_to};

const fn words(label: &'static str, note: &'static str) -> FigureWords {
    FigureWords { label, note }
}

pub(super) fn figure(figure: LineFigure) -> FigureWords {
    match figure {
        LineFigure::CaughtNet => words("Net mass caught", "without the vessel"),
        LineFigure::CaughtFlow => words("Flow of the catch", "by mass"),
        LineFigure::CaughtResidual => words("Residual", "flow above the fitted line"),
        LineFigure::Slope(SettingUnit::Percent) => words("Slope of the line", "per full setting, 100 %"),
        LineFigure::Slope(SettingUnit::Hertz) => words("Slope of the line", "per Hz"),
        LineFigure::Slope(SettingUnit::Rpm) => words("Slope of the line", "per turn a minute"),
        LineFigure::Intercept => words("Intercept of the line", "flow at a setting of zero"),
        LineFigure::ResidualSd => words("Scatter about the line", "residual standard deviation"),
        LineFigure::MeanFlow => words("Mean flow of the catches", ""),
        LineFigure::MeanSetting(_) => words("Mean setting of the catches", ""),
        LineFigure::StudentT => words("Student's t", "95 %, two-sided, of the line's degrees of freedom"),
        LineFigure::Leverage => words("Distance of the setting from the catches", "leverage"),
        LineFigure::Prediction => words("Half the prediction interval", "95 %, one catch at the setting"),
        LineFigure::Wanted => words("Flow wanted", "by mass, as delivered"),
        LineFigure::WantedVolume => words("Flow wanted by volume", "as delivered"),
        LineFigure::Setting(_) => words("Setting", "by the last catch test"),
        LineFigure::Spray => words("Through the nozzles", "by volume, with thinning water"),
        LineFigure::OpenNozzles => words("Nozzles to open", ""),
        LineFigure::NozzleFlow => words("Flow of one nozzle", "by volume"),
        LineFigure::PerFibre => words("Ratio by mass", "as delivered, per moist fibre on the belt scale"),
        LineFigure::VolumePerFibre => words("Ratio by volume", "as delivered, per moist fibre on the belt scale"),
        LineFigure::LeastFlow => words("Flow at the lowest usable setting", "by mass"),
        LineFigure::MostFlow => words("Flow at the highest usable setting", "by mass"),
        LineFigure::LeastFibre => words("Smallest fibre flow it serves", "oven-dry"),
        LineFigure::MostFibre => words("Largest fibre flow it serves", "oven-dry"),
        LineFigure::FlowThen => words("Flow by the earlier catch test", "at this setting and density"),
        LineFigure::FlowNow => words("Flow by the last catch test", "at this setting and density"),
        LineFigure::Drift => words("Drift", "last catch test against the earlier one"),
        LineFigure::RunFibre => words("Fibre running", "oven-dry"),
        LineFigure::RunFlow => words("Flow running", "as delivered"),
        LineFigure::RunSolids => words("Solids running", "oven-dry"),
        LineFigure::RunDose => words("Dose applied", "solids on oven-dry fibre"),
        LineFigure::RecipeDose => words("Dose of the recipe", "solids on oven-dry fibre"),
        LineFigure::DoseDeviation => words("Deviation of the dose", "relative"),
        LineFigure::RunWater => words("Water running in", "with liquids, thinning and dose"),
        LineFigure::RunFurnish => words("Furnish solids running", "oven-dry"),
        LineFigure::RunFurnishMoisture => {
            words("Furnish moisture running", "water per oven-dry furnish, from the flows")
        }
        LineFigure::RunMatMoisture => words("Mat moisture running", "water per oven-dry mat, from the flows"),
        LineFigure::SampleMoisture => words("Moisture of the sample", "water per oven-dry mat"),
        LineFigure::RunMat => words("Mat weight running", "oven-dry, of the sample"),
        LineFigure::RunDensity => words("Board density to expect", "at board moisture, from the mat weight"),
        LineFigure::CorrectionTarget => words("Flow wanted at this fibre", "as delivered"),
        LineFigure::CorrectionFactor => words("Correction of the pump", "flow wanted per flow running"),
        LineFigure::FormerFactor => words("Correction of the former", "mat weight wanted per mat weight running"),
        LineFigure::Content => words("Content", "by volume, with what cannot be pumped out"),
        LineFigure::Usable => words("Usable", "by volume"),
        LineFigure::UsableMass => words("Usable", "by mass"),
        LineFigure::Rate => words("Use now", "by mass"),
        LineFigure::Lasts => words("Lasts", "at today's use"),
        LineFigure::PerShift => words("Use per shift", "by mass"),
        LineFigure::Fits => words("Delivery that still fits", "by volume"),
        LineFigure::BetweenTime => words("Time of neither recipe", ""),
        LineFigure::BetweenArea => words("Board of neither recipe", "finished area"),
        LineFigure::BetweenVolume => words("Board of neither recipe", "finished volume"),
        LineFigure::ChartMean => words("Mean", "of the deviations"),
        LineFigure::MovingRange => words("Mean moving range", "of the deviations"),
        LineFigure::LowLimit => words("Lower control limit", "mean − 2.66 mean moving ranges"),
        LineFigure::HighLimit => words("Upper control limit", "mean + 2.66 mean moving ranges"),
        LineFigure::DensityPumped => words("Density at the pump", ""),
        LineFigure::DensityMeasured => words("Density as measured", ""),
    }
}

pub(super) fn run_figure(figure: RunFigure) -> FigureWords {
    match figure {
        RunFigure::Dose(_) => words("Dose", "solids on oven-dry fibre"),
        RunFigure::Water => words("Water dose", "water on oven-dry fibre"),
        RunFigure::FurnishMoisture => words("Furnish moisture", "water per oven-dry furnish, from the flows"),
        RunFigure::MatMoisture => words("Mat moisture", "water per oven-dry mat, at the former"),
        RunFigure::MatWeight => words("Mat weight", "oven-dry"),
        RunFigure::Density => words("Board density to expect", "at board moisture"),
        RunFigure::BeltScale => words("Belt scale", "wet"),
        RunFigure::FibreMoisture => words("Fibre moisture", ""),
        RunFigure::Flow(_) => words("Flow", ""),
        RunFigure::LineSpeed => words("Line speed", ""),
        RunFigure::MatWidth => words("Mat width", "trimmed"),
        RunFigure::RawDensity => words("Board density", "raw"),
        RunFigure::Thickness => words("Board thickness", "raw"),
        RunFigure::BoardMoisture => words("Board moisture", "raw"),
    }
}

/// With its sign. A moisture's is the difference of the two numbers shown, in their basis.
pub(super) fn deviation(check: &Check, context: &LineContext<'_>) -> String {
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
    if moisture == Unit::PercentWetBasis { "points w.b." } else { "points d.b." }
}
