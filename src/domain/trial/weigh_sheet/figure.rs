//! Every figure of the weigh-out sheet by name.

use crate::domain::trial::weigh_sheet::line_id::LineId;
use crate::domain::trial::weigh_sheet::sheet::Sheet;
use crate::quantity::{Amount, Kind};

/// A figure of the weigh-out sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Figure {
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
    GivenMoisture,
    /// A figure of one line.
    Line(LineId, LineFigure),
}

/// A figure of one line.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum LineFigure {
    /// The exact mass.
    Mass,
    /// The mass rounded to the balance's step.
    Rounded,
    /// Volume of the rounded mass.
    Volume,
    /// Time to spray it.
    SprayTime,
    /// Dose wanted, solids on oven-dry fibre.
    Wanted,
    /// Dose that the rounded masses give, solids on oven-dry fibre.
    Given,
    /// By how much that differs, a share of the dose wanted.
    Deviation,
}

impl LineFigure {
    /// All of them, in the order of the page.
    pub const ALL: &'static [LineFigure] =
        &[Self::Mass, Self::Rounded, Self::Volume, Self::SprayTime, Self::Wanted, Self::Given, Self::Deviation];

    /// What the figure measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::Mass | Self::Rounded => Kind::BenchMass,
            Self::Volume => Kind::BenchVolume,
            Self::SprayTime => Kind::PressTime,
            Self::Wanted | Self::Given => Kind::Dose,
            Self::Deviation => Kind::Share,
        }
    }

    const fn key(self) -> &'static str {
        match self {
            Self::Mass => "mass",
            Self::Rounded => "rounded",
            Self::Volume => "volume",
            Self::SprayTime => "spray_time",
            Self::Wanted => "wanted",
            Self::Given => "given",
            Self::Deviation => "deviation",
        }
    }
}

impl Figure {
    /// The figures outside the lines, in the order of the page.
    pub const PLAIN: &'static [Figure] = &[
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
        Self::GivenMoisture,
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
            Self::GivenMoisture => Kind::Moisture,
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
            Self::GivenMoisture => "bench_given_moisture".to_owned(),
            Self::Line(id, part) => format!("bench_{}.{}", part.key(), id.key()),
        }
    }
}

impl Sheet {
    /// A figure; `None` where the sheet does not have it, such as a spray time without a flow.
    #[must_use]
    pub fn figure(&self, figure: Figure) -> Option<Amount> {
        self.base(figure).map(|base| Amount::from_base(figure.kind(), base))
    }

    /// Every figure that the sheet has, in the order of the page.
    pub fn figures(&self) -> impl Iterator<Item = (Figure, Amount)> {
        let lines = self.lines.iter().flat_map(|line| LineFigure::ALL.iter().map(|part| Figure::Line(line.id, *part)));
        let all = Figure::PLAIN.iter().copied().chain(lines);
        all.filter_map(|figure| self.figure(figure).map(|amount| (figure, amount)))
    }

    fn base(&self, figure: Figure) -> Option<f64> {
        let mat = &self.mat;
        Some(match figure {
            Figure::MatArea => mat.area.value,
            Figure::MatOvenDry => mat.oven_dry.value,
            Figure::MatMoist => mat.moist.value,
            Figure::RawBoard => mat.raw_board.value,
            Figure::FinishedBoard => mat.finished_board.value,
            Figure::FibreFactor => self.plan.fibre_factor().value,
            Figure::LiquidFactor => self.plan.furnish_factor().value,
            Figure::Batch => self.batch.value,
            Figure::Stops => self.stops.value,
            Figure::PressTime => self.press_time?.value,
            Figure::SprayTime => self.spray_time?.value,
            Figure::GivenMoisture => self.given.mat_moisture.value,
            Figure::Line(id, part) => {
                let line = self.line(id)?;
                let dose = match id {
                    LineId::Liquid(liquid) => self.given.dose(liquid),
                    LineId::Fibre | LineId::Thinning(_) | LineId::Water => None,
                };
                match part {
                    LineFigure::Mass => line.mass.value,
                    LineFigure::Rounded => line.rounded.value,
                    LineFigure::Volume => line.volume?.value,
                    LineFigure::SprayTime => line.spray_time?.value,
                    LineFigure::Wanted => dose?.wanted.value,
                    LineFigure::Given => dose?.given.value,
                    LineFigure::Deviation => dose?.deviation.value,
                }
            }
        })
    }
}
