//! The words of the bench.

use super::{Context, FieldWords, FigureWords, Message};
use crate::domain::Draft;
use crate::domain::trial::boards::at_density::AtDensity;
use crate::domain::trial::boards::field::BoardField;
use crate::domain::trial::boards::group::GroupKey;
use crate::domain::trial::boards::requirement_set::RequirementSet;
use crate::domain::trial::boards::target::Judged;
use crate::domain::trial::boards::target::RequirementDraft;
use crate::domain::trial::boards::working::BoardFigure;
use crate::domain::trial::series::draft::{BlockWay, DesignWay};
use crate::domain::trial::series::effects::{Effects, ModelWay, Term};
use crate::domain::trial::series::factor::{Factor, Level, OwnFactor};
use crate::domain::trial::series::field::{Of, SeriesField};
use crate::domain::trial::series::material::Material;
use crate::domain::trial::weigh_sheet::draft::{OverageOf, OverageOn, SprayWay, ThicknessWay, WaterPlace};
use crate::domain::trial::weigh_sheet::recovery_draft::{RecoveryDraft, RecoveryField};
use crate::domain::trial::weigh_sheet::working::WeighOrigin;
use crate::domain::trial::{
    BoardDraft, LineId, Property, Series, SeriesDraft, SheetDraft, TrialFinding, TrialPlace, WeighField, WeighFigure,
};

/// What a message at the bench needs to name things and to show numbers.
#[derive(Debug, Clone, Copy)]
pub struct BenchContext<'a> {
    /// Units, currency, and the recipe: that of the run, where a sheet of a series is spoken of.
    pub plain: Context<'a>,
    /// The weigh sheet as typed.
    pub sheet: &'a SheetDraft,
    /// What was typed for a line that is being weighed, so that a slip can be shown as typed.
    pub batch: Option<&'a crate::domain::trial::weigh_sheet::weighing::BatchDraft>,
    /// What was entered of the furnish recovered.
    pub recovered: Option<&'a RecoveryDraft>,
    /// The series as typed.
    pub series: &'a SeriesDraft,
    /// The boards as typed.
    pub boards: &'a [BoardDraft],
    /// The requirements as typed.
    pub requirements: &'a [RequirementDraft],
}

/// The words of the bench in one language.
pub struct BenchWords {
    /// Label and hint of a box of the weigh sheet.
    pub field: fn(WeighField, &SheetDraft) -> FieldWords,
    /// Label and hint of a box of the furnish recovered.
    pub recovery_field: fn(RecoveryField) -> FieldWords,
    /// Label and hint of a box of the series. A factor and its levels are labelled by what they are.
    pub series_field: fn(SeriesField) -> FieldWords,
    /// Label and hint of a box of a board, a piece without its number.
    pub board_field: fn(BoardField) -> FieldWords,
    /// What a line of the sheet weighs.
    pub line: fn(LineId, &Draft) -> String,
    /// Label and basis of a figure of the sheet, a line's without the line.
    pub figure: fn(WeighFigure) -> FigureWords,
    /// Label and basis of a figure of a board, a piece's without its number.
    pub board_figure: fn(BoardFigure) -> FigureWords,
    /// A property and the standard whose formula gives it.
    pub property: fn(Property) -> FigureWords,
    /// What a number put into a sheet's formula is, where it is neither a field nor a figure.
    pub origin: fn(WeighOrigin) -> &'static str,
    /// A box, a board's with the board and the piece; or what else a finding is about.
    pub place: fn(TrialPlace, &BenchContext<'_>) -> String,
    /// What was found, and how to fix it.
    pub finding: fn(&TrialFinding, &BenchContext<'_>) -> Message,
    /// What a factor changes.
    pub factor: fn(Of, &OwnFactor, &Draft) -> String,
    /// A level of a factor, with its unit.
    pub level: fn(&Level, &Context<'_>) -> String,
    /// A term of the model by its factors' names.
    pub term: fn(Term, &[Factor], &Draft) -> String,
    /// What the effects tell, in plain sentences, the largest first.
    pub sayings: fn(&Effects, &Series, &Context<'_>) -> Vec<String>,
    /// What a new run order moves, as a question: how many runs are made, how many are not.
    pub redraw: fn(usize, usize) -> String,
    /// What boards that are put together have in common: their run, or the levels of it.
    pub group: fn(&GroupKey, Option<&Series>, &Context<'_>) -> String,
    /// A strength at the target density, as a sentence.
    pub at_density: fn(&AtDensity, &Context<'_>) -> String,
    /// A set of requirements, with its standard and the type of board.
    pub requirement_set: fn(RequirementSet) -> String,
    /// "1 board", "3 boards".
    pub board_count: fn(usize) -> String,
    /// Whether a requirement is met, as a sentence.
    pub verdict: fn(&Judged, &Context<'_>) -> String,
    /// What is taken from the store.
    pub material: fn(Material, &SeriesDraft, &Draft) -> String,
    /// Which thickness is typed.
    pub thickness_way: fn(ThicknessWay) -> &'static str,
    /// Of which mass the overage is a share.
    pub overage_of: fn(OverageOf) -> &'static str,
    /// What the overage is weighed out of.
    pub overage_on: fn(OverageOn) -> &'static str,
    /// When the water is sprayed.
    pub water_place: fn(WaterPlace) -> &'static str,
    /// By what the flow of the spray is known.
    pub spray_way: fn(SprayWay) -> &'static str,
    /// Which combinations are made; the number of factors gives a fraction its name.
    pub design_way: fn(DesignWay, usize) -> String,
    /// How runs are put into blocks.
    pub block_way: fn(BlockWay) -> &'static str,
    /// Which terms the model has.
    pub model_way: fn(ModelWay) -> &'static str,
}
