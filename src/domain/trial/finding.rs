//! What there is to say at the bench: data, without a word of any language.

use crate::domain::recipe::finding::{Place as RecipePlace, What as RecipeWhat};
use crate::domain::trial::boards::board::BoardId;
use crate::domain::trial::boards::field::BoardField;
use crate::domain::trial::boards::property::Property;
use crate::domain::trial::series::field::SeriesField;
use crate::domain::trial::weigh_sheet::field::WeighField;
use crate::domain::trial::weigh_sheet::line_id::LineId;
use crate::domain::trial::weigh_sheet::recovery_draft::RecoveryField;
use crate::domain::trial::weigh_sheet::slip::Slip;
use crate::domain::{BoardKind, Grade};
use crate::quantity::Amount;

/// Where a finding belongs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum TrialPlace {
    /// A box of the weigh sheet.
    Field(WeighField),
    /// A line of the weigh sheet.
    Line(LineId),
    /// A box of the furnish recovered.
    Recovery(RecoveryField),
    /// The weigh sheet as a whole.
    Sheet,
    /// Something in the recipe.
    Recipe(RecipePlace),
    /// A box of the series.
    Series(SeriesField),
    /// The series as a whole.
    Design,
    /// A box of a board made.
    Board(BoardId, BoardField),
    /// A property of the boards made.
    Property(Property),
}

/// What was found.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum TrialProblem {
    /// About one entry, as it can be said of any box.
    Entry(RecipeWhat),
    /// The number of boards, replicates or blocks is not whole.
    NotWhole,
    /// The recipe cannot be solved, so no sheet can be made out.
    RecipeUnsolved,
    /// The figures became too large or too small to compute with.
    OutOfRange,
    /// The furnish holds more water than the target mat moisture needs; no water is weighed out.
    TooWet {
        /// Water in excess in one batch.
        excess: Amount,
        /// Mat moisture that comes out.
        mat: Amount,
        /// The fibre moisture at which there would be no excess; `None` where no fibre is dry enough.
        way_out: Option<Amount>,
    },
    /// The blender does not take all at once.
    Split {
        /// How many equal batches it takes.
        batches: u32,
        /// How many boards one of them makes.
        boards: Amount,
    },
    /// More batches than anybody weighs out.
    TooManyBatches {
        /// The capacity at which one batch would do.
        whole: Amount,
    },
    /// A mass is below what the balance weighs sensibly.
    BelowMinimum {
        /// The mass.
        mass: Amount,
        /// The minimum.
        minimum: Amount,
        /// How many boards it would take to reach it, with the same number of batches.
        boards: Option<Amount>,
        /// Solids to which the liquid could be thinned to reach it, where the water dose has that
        /// much water and the liquid may meet it.
        dilute: Option<Amount>,
    },
    /// The rounded masses shift a dose by more than [`ROUNDING_LIMIT`](crate::domain::trial::weigh_sheet::sheet::ROUNDING_LIMIT).
    RoundingShifts {
        /// The target dose, solids on oven-dry fibre.
        target: Amount,
        /// The dose that the rounded masses give.
        actual: Amount,
    },
    /// Weighed so much of this line that all others must grow.
    WeighedOver {
        /// By how much all must grow.
        scale: Amount,
        /// The dose if nothing is added on its account; `None` for what is no dose.
        accepted: Option<Amount>,
    },
    /// A mass that looks like a slip; nothing is computed with it until it is answered.
    LikelySlip {
        /// The mass planned.
        planned: Amount,
        /// The mass entered.
        entered: Amount,
        /// What may have been meant.
        slip: Slip,
    },
    /// More solids came out of the blender than were weighed in.
    RecoveredTooMuch {
        /// Solids weighed in.
        put_in: Amount,
        /// Solids recovered.
        recovered: Amount,
    },
    /// A density that no board of fibre or particles has.
    UnlikelyDensity {
        /// The density.
        value: Amount,
    },
    /// A load that is plausible a thousand times as large: kilonewtons for newtons.
    LoadInKilonewton {
        /// The load that was probably meant.
        meant: Amount,
    },
    /// A span that is plausible ten times as large: centimetres for millimetres.
    SpanInCentimetre {
        /// The span that was probably meant.
        meant: Amount,
    },
    /// A piece that is thinner after it lay in water.
    NegativeSwelling,
    /// A span that is not that of EN 310.
    SpanOffStandard {
        /// The span that the standard asks for at this thickness.
        required: Amount,
    },
    /// With what was weighed, the batch no longer fits the blender.
    OverCapacity {
        /// What the batch comes to.
        mass: Amount,
        /// What the blender takes.
        capacity: Amount,
    },
    /// A factor that is there twice.
    SameFactor,
    /// A factor has fewer than two levels, or two that are alike.
    LevelsAlike,
    /// A liquid that a factor doses is not in the recipe.
    FactorMissing,
    /// A factor doses a liquid while another changes the binder system.
    DoseBesideSystem,
    /// A factor without a name.
    FactorUnnamed,
    /// A level with nothing typed.
    LevelBlank,
    /// A level of a factor with a unit that is no number.
    LevelNotANumber,
    /// No factor, so there is nothing to vary.
    NoFactors,
    /// More factors than a series holds.
    TooManyFactors {
        /// How many it holds.
        most: usize,
    },
    /// More runs than a series holds.
    TooManyRuns {
        /// How many there would be.
        runs: usize,
        /// How many it holds.
        most: usize,
    },
    /// A fraction is only made of factors with two levels.
    FractionNeedsTwoLevels,
    /// No such fraction is in the published table.
    NoSuchFraction {
        /// How many factors there are.
        factors: usize,
    },
    /// A block that splits a replicate needs two levels throughout, and enough runs.
    BlocksDoNotFit,
    /// Main effects are aliased with two-factor interactions.
    ResolutionThree,
    /// Two-factor interactions are aliased with each other.
    ResolutionFour,
    /// A two-factor interaction is confounded with a block.
    BlockHidesInteraction,
    /// Some runs are made and keep their number and levels; a change of plan moves the others only.
    MadeRunsStay {
        /// How many are made.
        made: usize,
        /// How many are not.
        open: usize,
    },
    /// Made runs that no longer belong to the design.
    RunsOutsideDesign {
        /// How many.
        count: usize,
    },
    /// One run cannot be solved.
    RunUnsolved {
        /// Its place in the run order.
        place: usize,
    },
    /// The oven-dry mass is larger than the moist one.
    DryAboveMoist,
    /// A property has too few boards for an interval.
    TooFewBoards,
    /// A property misses what is required.
    MissesRequirement {
        /// What it comes to.
        value: Amount,
        /// What is required.
        required: Amount,
    },
    /// The boards miss the target density by more than [`OFF_TARGET`](crate::domain::trial::boards::target::OFF_TARGET).
    OffTarget {
        /// What they come to at the target board moisture.
        value: Amount,
        /// The target.
        target: Amount,
    },
    /// The density within a board differs by more from its mean than the standard for its kind allows.
    UnevenProfile {
        /// The largest deviation, a share of the mean.
        deviation: Amount,
        /// The kind of board, which says how far it may be off.
        kind: BoardKind,
    },
    /// Runs without a board, which are left out of the effects.
    RunsMissing {
        /// How many.
        count: usize,
    },
    /// Boards that name a run that is not in the series, and are left out.
    BoardsWithoutRun {
        /// How many.
        count: usize,
    },
    /// Fewer results than the model has terms.
    TooFewResults,
    /// All results are the same.
    NoVariation,
    /// No degrees of freedom are left for the error: no intervals and no test.
    NoFreedom,
}

/// One finding.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TrialFinding {
    /// How grave.
    pub grade: Grade,
    /// Where.
    pub place: TrialPlace,
    /// What.
    pub what: TrialProblem,
}

impl TrialFinding {
    /// Something that cannot be computed.
    #[must_use]
    pub const fn stop(place: TrialPlace, what: TrialProblem) -> Self {
        Self { grade: Grade::Stop, place, what }
    }

    /// Something outside what is usual.
    #[must_use]
    pub const fn unusual(place: TrialPlace, what: TrialProblem) -> Self {
        Self { grade: Grade::Unusual, place, what }
    }

    /// Something worth knowing.
    #[must_use]
    pub const fn note(place: TrialPlace, what: TrialProblem) -> Self {
        Self { grade: Grade::Note, place, what }
    }
}
