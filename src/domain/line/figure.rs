//! Every key figure of the line by name, so that views and workings share one list.
//!
//! A name does not say which pump or tank: the sheet that holds the figure does.

use crate::domain::line::pumps::setting::SettingUnit;
use crate::domain::working::Symbol;
use crate::quantity::Kind;

/// A figure of the line.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum LineFigure {
    /// What was caught, without the vessel.
    CaughtNet,
    /// Mass flow of one row of a catch test.
    CaughtFlow,
    /// How far the flow of a row is above its line.
    CaughtResidual,
    /// Slope of a pump's line: mass flow per setting, in percent per full setting.
    Slope(SettingUnit),
    /// Intercept of a pump's line.
    Intercept,
    /// Residual standard deviation of a pump's line.
    ResidualSd,
    /// Mean flow of the rows.
    MeanFlow,
    /// Mean setting of the rows.
    MeanSetting(SettingUnit),
    /// Student's t of the line's degrees of freedom, 95 % two-sided.
    StudentT,
    /// Leverage of the setting, 1/n + (x−x̄)²/Σ(x−x̄)².
    Leverage,
    /// Half the width of the 95 % prediction interval at the setting.
    Prediction,
    /// Flow wanted of a pump, by mass.
    Wanted,
    /// Flow wanted of a pump, by volume.
    WantedVolume,
    /// Setting of a pump.
    Setting(SettingUnit),
    /// Flow through all nozzles, by volume.
    Spray,
    /// Number of nozzles to open.
    OpenNozzles,
    /// Flow of one nozzle.
    NozzleFlow,
    /// Mass of a liquid per mass of moist fibre.
    PerFibre,
    /// Volume of a liquid per mass of moist fibre.
    VolumePerFibre,
    /// Flow at the lowest setting that is tested and allowed.
    LeastFlow,
    /// Flow at the highest setting that is tested and allowed.
    MostFlow,
    /// Smallest fibre flow, oven-dry, that a pump serves.
    LeastFibre,
    /// Largest fibre flow, oven-dry, that a pump serves.
    MostFibre,
    /// Flow at the setting by an earlier catch test.
    FlowThen,
    /// Flow at the setting by the last catch test.
    FlowNow,
    /// Relative change between them.
    Drift,
    /// Oven-dry fibre flow that runs.
    RunFibre,
    /// Flow of a liquid that runs.
    RunFlow,
    /// Solids of a liquid that run.
    RunSolids,
    /// Dose really applied, solids per oven-dry fibre.
    RunDose,
    /// Dose of the recipe, on the same basis.
    RecipeDose,
    /// Relative deviation of a dose.
    DoseDeviation,
    /// Water that runs into the blender with liquids and by itself.
    RunWater,
    /// Solids of the furnish that runs.
    RunFurnish,
    /// Furnish moisture that runs.
    RunFurnishMoisture,
    /// Mat moisture that runs, from the flows.
    RunMatMoisture,
    /// Moisture by which the mat sample is computed: its own, or else the mat's from the flows.
    SampleMoisture,
    /// Oven-dry mat weight of the sample.
    RunMat,
    /// Board density that this mat weight gives.
    RunDensity,
    /// Flow that the recipe wants at the fibre that runs.
    CorrectionTarget,
    /// What to multiply a pump's flow by.
    CorrectionFactor,
    /// What to multiply the mat weight by.
    FormerFactor,
    /// What is in a tank, heel included.
    Content,
    /// What can be pumped out of a tank, by volume.
    Usable,
    /// The same by mass.
    UsableMass,
    /// How a tank is used.
    Rate,
    /// How long a tank lasts.
    Lasts,
    /// Use of a tank per shift.
    PerShift,
    /// Delivery that still fits, by volume.
    Fits,
    /// Time for which neither recipe's board is made.
    BetweenTime,
    /// Finished area of that board.
    BetweenArea,
    /// Finished volume of that board.
    BetweenVolume,
    /// Mean of logged deviations.
    ChartMean,
    /// Mean moving range of logged deviations.
    MovingRange,
    /// Lower control limit.
    LowLimit,
    /// Upper control limit.
    HighLimit,
    /// Density of a delivery at the temperature at which it is pumped.
    DensityPumped,
    /// Density of a delivery as measured.
    DensityMeasured,
}

impl LineFigure {
    /// What the figure measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::CaughtNet | Self::UsableMass | Self::PerShift => Kind::BatchMass,
            Self::Slope(unit) => unit.slope_kind(),
            Self::MeanSetting(unit) | Self::Setting(unit) => unit.kind(),
            Self::CaughtFlow
            | Self::CaughtResidual
            | Self::Intercept
            | Self::ResidualSd
            | Self::MeanFlow
            | Self::Prediction
            | Self::Wanted
            | Self::LeastFlow
            | Self::MostFlow
            | Self::FlowThen
            | Self::FlowNow
            | Self::RunFlow
            | Self::RunSolids
            | Self::RunWater
            | Self::CorrectionTarget
            | Self::Rate => Kind::LiquidFlow,
            Self::StudentT | Self::Leverage | Self::OpenNozzles | Self::CorrectionFactor | Self::FormerFactor => {
                Kind::Ratio
            }
            Self::WantedVolume | Self::Spray | Self::NozzleFlow => Kind::PumpFlow,
            Self::PerFibre => Kind::DoseRate,
            Self::VolumePerFibre => Kind::VolumeDoseRate,
            Self::LeastFibre | Self::MostFibre | Self::RunFibre | Self::RunFurnish => Kind::FibreFlow,
            Self::RunDose | Self::RecipeDose => Kind::Dose,
            Self::Drift
            | Self::DoseDeviation
            | Self::ChartMean
            | Self::MovingRange
            | Self::LowLimit
            | Self::HighLimit => Kind::Share,
            Self::RunFurnishMoisture | Self::RunMatMoisture | Self::SampleMoisture => Kind::Moisture,
            Self::RunMat => Kind::MatWeight,
            Self::RunDensity => Kind::BoardDensity,
            Self::Content | Self::Usable | Self::Fits => Kind::BatchVolume,
            Self::Lasts => Kind::ShiftTime,
            Self::BetweenTime => Kind::RunTime,
            Self::BetweenArea => Kind::SampleArea,
            Self::BetweenVolume => Kind::BatchVolume,
            Self::DensityPumped | Self::DensityMeasured => Kind::LiquidDensity,
        }
    }

    /// The letter of the figure.
    #[must_use]
    pub const fn symbol(self) -> Symbol {
        let (letter, index) = match self {
            Self::CaughtNet => ("m", "net"),
            Self::CaughtFlow => ("L", "row"),
            Self::CaughtResidual => ("e", "row"),
            Self::Slope(_) => ("b", "p"),
            Self::Intercept => ("a", "p"),
            Self::ResidualSd => ("s", "e"),
            Self::MeanFlow => ("L", "mean"),
            Self::MeanSetting(_) => ("n", "mean"),
            Self::StudentT => ("t", "95"),
            Self::Leverage => ("h", "n"),
            Self::Prediction => ("Δ", "L"),
            Self::Wanted => ("L", "p"),
            Self::WantedVolume => ("V", "p"),
            Self::Setting(_) => ("n", ""),
            Self::Spray => ("V", "sp"),
            Self::OpenNozzles => ("N", ""),
            Self::NozzleFlow => ("V", "N"),
            Self::PerFibre => ("r", "m"),
            Self::VolumePerFibre => ("r", "V"),
            Self::LeastFlow => ("L", "min"),
            Self::MostFlow => ("L", "max"),
            Self::LeastFibre => ("F", "min"),
            Self::MostFibre => ("F", "max"),
            Self::FlowThen => ("L", "then"),
            Self::FlowNow => ("L", "now"),
            Self::Drift => ("Δ", "n"),
            Self::RunFibre => ("F", "run"),
            Self::RunFlow => ("L", "run"),
            Self::RunSolids => ("m", "run"),
            Self::RunDose => ("x", "run"),
            Self::RecipeDose => ("x", ""),
            Self::DoseDeviation => ("Δ", "x"),
            Self::RunWater => ("W", "run"),
            Self::RunFurnish => ("S", "run"),
            Self::RunFurnishMoisture => ("ω", "out,run"),
            Self::RunMatMoisture => ("ω", "mat,run"),
            Self::SampleMoisture => ("ω", "s"),
            Self::RunMat => ("M", "run"),
            Self::RunDensity => ("ρ", "run"),
            Self::CorrectionTarget => ("L", "want"),
            Self::CorrectionFactor => ("k", "p"),
            Self::FormerFactor => ("k", "M"),
            Self::Content => ("V", "in"),
            Self::Usable => ("V", "use"),
            Self::UsableMass => ("m", "use"),
            Self::Rate => ("L", "tank"),
            Self::Lasts => ("T", "empty"),
            Self::PerShift => ("m", "T"),
            Self::Fits => ("V", "fits"),
            Self::BetweenTime => ("T", "mix"),
            Self::BetweenArea => ("A", "mix"),
            Self::BetweenVolume => ("V", "mix"),
            Self::ChartMean => ("x", "mean"),
            Self::MovingRange => ("R", "m"),
            Self::LowLimit => ("x", "low"),
            Self::HighLimit => ("x", "high"),
            Self::DensityPumped => ("ρ", "θ"),
            Self::DensityMeasured => ("ρ", "0"),
        };
        Symbol { letter, index, liquid: None }
    }

    /// The stable key of the figure, on the page.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::CaughtNet => "caught_net",
            Self::CaughtFlow => "caught_flow",
            Self::CaughtResidual => "residual",
            Self::Slope(_) => "slope",
            Self::Intercept => "intercept",
            Self::ResidualSd => "residual_sd",
            Self::MeanFlow => "mean_flow",
            Self::MeanSetting(_) => "mean_setting",
            Self::StudentT => "student_t",
            Self::Leverage => "leverage",
            Self::Prediction => "prediction",
            Self::Wanted => "wanted",
            Self::WantedVolume => "wanted_volume",
            Self::Setting(_) => "setting",
            Self::Spray => "spray",
            Self::OpenNozzles => "open_nozzles",
            Self::NozzleFlow => "nozzle_flow",
            Self::PerFibre => "per_fibre",
            Self::VolumePerFibre => "volume_per_fibre",
            Self::LeastFlow => "least_flow",
            Self::MostFlow => "most_flow",
            Self::LeastFibre => "least_fibre",
            Self::MostFibre => "most_fibre",
            Self::FlowThen => "flow_then",
            Self::FlowNow => "flow_now",
            Self::Drift => "drift",
            Self::RunFibre => "run_fibre",
            Self::RunFlow => "run_flow",
            Self::RunSolids => "run_solids",
            Self::RunDose => "run_dose",
            Self::RecipeDose => "recipe_dose",
            Self::DoseDeviation => "dose_deviation",
            Self::RunWater => "run_water",
            Self::RunFurnish => "run_furnish",
            Self::RunFurnishMoisture => "run_furnish_moisture",
            Self::RunMatMoisture => "run_mat_moisture",
            Self::SampleMoisture => "sample_moisture",
            Self::RunMat => "run_mat",
            Self::RunDensity => "run_density",
            Self::CorrectionTarget => "correction_target",
            Self::CorrectionFactor => "correction_factor",
            Self::FormerFactor => "former_factor",
            Self::Content => "content",
            Self::Usable => "usable",
            Self::UsableMass => "usable_mass",
            Self::Rate => "rate",
            Self::Lasts => "lasts",
            Self::PerShift => "per_shift",
            Self::Fits => "fits",
            Self::BetweenTime => "between_time",
            Self::BetweenArea => "between_area",
            Self::BetweenVolume => "between_volume",
            Self::ChartMean => "chart_mean",
            Self::MovingRange => "moving_range",
            Self::LowLimit => "low_limit",
            Self::HighLimit => "high_limit",
            Self::DensityPumped => "density_pumped",
            Self::DensityMeasured => "density_measured",
        }
    }
}
