//! Every figure of the weigh sheet by name.

use crate::domain::trial::weigh_sheet::line_id::LineId;
use crate::domain::trial::weigh_sheet::sheet::WeighSheet;
use crate::quantity::{Amount, Kind};

/// A figure of the weigh sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum WeighFigure {
    /// Area of the mat.
    MatArea,
    /// Oven-dry mass of one mat.
    MatOvenDry,
    /// Resinated furnish to lay for one mat, with its moisture.
    MatMoist,
    /// Mass expected of the raw board at board moisture, before sanding.
    RawBoard,
    /// Mass expected of the finished board at board moisture.
    FinishedBoard,
    /// By how much the fibre grows for the overage.
    FibreFactor,
    /// By how much the liquids grow for the overage.
    LiquidFactor,
    /// Everything that goes into the blender in one batch.
    Batch,
    /// Stops thickness.
    Stops,
    /// Pressing time.
    PressTime,
    /// Spray time of all lines of one batch.
    SprayTime,
    /// Moisture of the mat that the rounded masses give.
    ActualMoisture,
    /// A figure of one line.
    Line(LineId, WeighLineFigure),
}

/// A figure of one line.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum WeighLineFigure {
    /// The exact mass.
    Mass,
    /// The mass rounded to the balance's step.
    Rounded,
    /// Volume of the rounded mass.
    Volume,
    /// Time to spray it.
    SprayTime,
    /// Target dose, solids on oven-dry fibre.
    Target,
    /// Dose that the rounded masses give, solids on oven-dry fibre.
    Actual,
    /// By how much that differs, a share of the target dose.
    Deviation,
}

impl WeighLineFigure {
    /// All of them, in the order of the page.
    pub const ALL: &'static [WeighLineFigure] =
        &[Self::Mass, Self::Rounded, Self::Volume, Self::SprayTime, Self::Target, Self::Actual, Self::Deviation];

    /// What the figure measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::Mass | Self::Rounded => Kind::BenchMass,
            Self::Volume => Kind::BenchVolume,
            Self::SprayTime => Kind::PressTime,
            Self::Target | Self::Actual => Kind::Dose,
            Self::Deviation => Kind::Share,
        }
    }

    const fn key(self) -> &'static str {
        match self {
            Self::Mass => "mass",
            Self::Rounded => "rounded",
            Self::Volume => "volume",
            Self::SprayTime => "spray_time",
            Self::Target => "target",
            Self::Actual => "actual",
            Self::Deviation => "deviation",
        }
    }
}

impl WeighFigure {
    /// The figures outside the lines, in the order of the page.
    pub const PLAIN: &'static [WeighFigure] = &[
        Self::MatArea,
        Self::MatOvenDry,
        Self::MatMoist,
        Self::RawBoard,
        Self::FinishedBoard,
        Self::FibreFactor,
        Self::LiquidFactor,
        Self::Batch,
        Self::Stops,
        Self::PressTime,
        Self::SprayTime,
        Self::ActualMoisture,
    ];

    /// What the figure measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::MatArea => Kind::BenchArea,
            Self::MatOvenDry | Self::MatMoist | Self::RawBoard | Self::FinishedBoard | Self::Batch => Kind::BenchMass,
            Self::FibreFactor | Self::LiquidFactor => Kind::Ratio,
            Self::Stops => Kind::Thickness,
            Self::PressTime | Self::SprayTime => Kind::PressTime,
            Self::ActualMoisture => Kind::Moisture,
            Self::Line(_, part) => part.kind(),
        }
    }

    /// The stable key of the figure: `data-figure` on the page, and in exports.
    #[must_use]
    pub fn key(self) -> String {
        match self {
            Self::MatArea => "bench_mat_area".to_owned(),
            Self::MatOvenDry => "bench_mat_oven_dry".to_owned(),
            Self::MatMoist => "bench_mat_moist".to_owned(),
            Self::RawBoard => "bench_raw_board".to_owned(),
            Self::FinishedBoard => "bench_finished_board".to_owned(),
            Self::FibreFactor => "bench_fibre_factor".to_owned(),
            Self::LiquidFactor => "bench_liquid_factor".to_owned(),
            Self::Batch => "bench_batch".to_owned(),
            Self::Stops => "bench_stops".to_owned(),
            Self::PressTime => "bench_press_time".to_owned(),
            Self::SprayTime => "bench_spray_time".to_owned(),
            Self::ActualMoisture => "bench_actual_moisture".to_owned(),
            Self::Line(id, part) => format!("bench_{}.{}", part.key(), id.key()),
        }
    }
}

impl WeighSheet {
    /// A figure; `None` where the sheet does not have it, such as a spray time without a flow.
    #[must_use]
    pub fn figure(&self, figure: WeighFigure) -> Option<Amount> {
        self.base(figure).map(|base| Amount::from_base(figure.kind(), base))
    }

    /// Every figure that the sheet has, in the order of the page.
    pub fn figures(&self) -> impl Iterator<Item = (WeighFigure, Amount)> {
        let lines = self
            .lines
            .iter()
            .flat_map(|line| WeighLineFigure::ALL.iter().map(|part| WeighFigure::Line(line.id, *part)));
        let all = WeighFigure::PLAIN.iter().copied().chain(lines);
        all.filter_map(|figure| self.figure(figure).map(|amount| (figure, amount)))
    }

    fn base(&self, figure: WeighFigure) -> Option<f64> {
        let mat = &self.mat;
        Some(match figure {
            WeighFigure::MatArea => mat.area.value,
            WeighFigure::MatOvenDry => mat.oven_dry.value,
            WeighFigure::MatMoist => mat.moist.value,
            WeighFigure::RawBoard => mat.raw_board.value,
            WeighFigure::FinishedBoard => mat.finished_board.value,
            WeighFigure::FibreFactor => self.plan.fibre_factor().value,
            WeighFigure::LiquidFactor => self.plan.furnish_factor().value,
            WeighFigure::Batch => self.batch.value,
            WeighFigure::Stops => self.stops.value,
            WeighFigure::PressTime => self.press_time?.value,
            WeighFigure::SprayTime => self.spray_time?.value,
            WeighFigure::ActualMoisture => self.actual.mat_moisture.value,
            WeighFigure::Line(id, part) => {
                let line = self.line(id)?;
                let dose = match id {
                    LineId::Liquid(liquid) => self.actual.dose(liquid),
                    LineId::Fibre | LineId::Thinning(_) | LineId::Water => None,
                };
                match part {
                    WeighLineFigure::Mass => line.mass.value,
                    WeighLineFigure::Rounded => line.rounded.value,
                    WeighLineFigure::Volume => line.volume?.value,
                    WeighLineFigure::SprayTime => line.spray_time?.value,
                    WeighLineFigure::Target => dose?.target.value,
                    WeighLineFigure::Actual => dose?.actual.value,
                    WeighLineFigure::Deviation => dose?.deviation.value,
                }
            }
        })
    }
}
