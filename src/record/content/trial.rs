//! Trials: what was weighed, planned and measured, kept with the recipe that made the boards.

pub mod boards;
pub mod field;
pub mod outcome;
pub mod progress;

use crate::domain::Draft;
use crate::domain::trial::boards::target::RequirementDraft;
use crate::domain::trial::series::effects::ModelWay;
use crate::domain::trial::series::field::{FactorId, Of};
use crate::domain::trial::series::made::{MadeRun, MadeWith};
use crate::domain::trial::series::runs::{Series, of_run, series};
use crate::domain::trial::weigh_sheet::recovery_draft::RecoveryDraft;
use crate::domain::trial::weigh_sheet::weighing::BatchDraft;
use crate::domain::trial::{BoardDraft, BoardId, SeriesDraft, SheetDraft};
use crate::record::content::revision::{Stamp, Standing};
use crate::record::content::sealed::{Content, Headed, Sealed};
use crate::record::document::Document;
use crate::record::id::{Id, RecipeId, RevisionId, TrialId};
use crate::record::limits;
use crate::record::refusal::Refusal;
use crate::record::store::library::{Library, SaveError, Unread};
use crate::record::store::{Store, StoreError};
use crate::record::time::utc;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// Followed by the id of a trial.
const TRIAL: &str = "haulm/trial/";
/// The format version that is written.
pub const VERSION: u32 = 1;
/// The largest file that is read, in bytes. 256 boards with 36 pieces each have 4 500 000.
pub const LARGEST: usize = 8_000_000;
/// The key `haulm` of a trial.
const KIND: &str = "trial";
/// The trial on the page.
pub const TRIAL_ON_PAGE: Document<OpenTrial> = Document::new("haulm/bench", "open_trial", VERSION, LARGEST);

/// What was weighed of one batch of one sheet.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct WeighedBatch {
    /// The place of the run in the run order, from 1; none outside a series.
    #[serde(default)]
    pub run: Option<u16>,
    /// Which batch of the sheet, from 1.
    pub batch: u16,
    /// What was weighed, line by line.
    pub lines: BatchDraft,
    /// What came out of the blender.
    #[serde(default)]
    pub recovered: RecoveryDraft,
}

/// The recipe that something was made with.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(default)]
pub struct MadeFrom {
    /// The recipe; none for work that was never saved.
    pub recipe: Option<RecipeId>,
    /// Its revision.
    pub revision: Option<RevisionId>,
    /// The number of the revision within its recipe.
    pub revision_number: Option<u32>,
    /// Its name.
    pub recipe_name: String,
}

/// A run of the series that was made, as it was planned then.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct MadeRunRecord {
    /// The recipe it was made with.
    pub from: MadeFrom,
    /// The run.
    pub run: MadeRun,
}

/// A board outside a series that was made, with its recipe and weigh sheet as they were then.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct MadeBoardRecord {
    /// The board.
    pub board: BoardId,
    /// The recipe it was made with.
    pub from: MadeFrom,
    /// Recipe and weigh sheet.
    pub with: MadeWith,
}

/// What a trial says. Numbers are text as typed, beside their units. Every key is always written.
///
/// The whole recipe is kept beside the revision that names it, so that the figures can be found
/// again without the library.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct TrialContent {
    /// The save that this one stands for from now on.
    #[serde(default)]
    pub replaces: Option<TrialId>,
    /// Milliseconds since 1970-01-01 00:00 UTC.
    pub saved_at: u64,
    /// The author's initials.
    #[serde(default)]
    pub author: String,
    /// Its name.
    pub name: String,
    /// The note.
    #[serde(default)]
    pub note: String,
    /// Whether it is kept from here on.
    #[serde(default)]
    #[cfg_attr(test, schemars(with = "String"))]
    pub standing: Standing,
    /// The recipe that made the boards; none for work that was never saved.
    #[serde(default)]
    pub recipe: Option<RecipeId>,
    /// The revision of it that made them.
    #[serde(default)]
    pub revision: Option<RevisionId>,
    /// The number of that revision within its recipe.
    #[serde(default)]
    pub revision_number: Option<u32>,
    /// The recipe's name.
    #[serde(default)]
    pub recipe_name: String,
    /// The recipe as it was then.
    pub draft: Draft,
    /// The weigh sheet.
    pub sheet: SheetDraft,
    /// What was weighed.
    #[serde(default)]
    pub weighed: Vec<WeighedBatch>,
    /// The series; none for boards by themselves.
    #[serde(default)]
    pub series: Option<SeriesDraft>,
    /// The runs that were made; they stay as they were when the plan changes.
    #[serde(default)]
    pub made_runs: Vec<MadeRunRecord>,
    /// The boards made.
    #[serde(default)]
    pub boards: Vec<BoardDraft>,
    /// What the boards outside a series were made with.
    #[serde(default)]
    pub made_boards: Vec<MadeBoardRecord>,
    /// Whose requirements these are: a standard with its type of board, or a customer.
    #[serde(default)]
    pub required_by: String,
    /// What is required of them.
    #[serde(default)]
    pub requirements: Vec<RequirementDraft>,
    /// Which terms the effects have.
    #[serde(default)]
    pub model: ModelWay,
}

/// A trial as a file: with the version of the app that wrote it, and the date in words; none for work that was not saved.
#[derive(Serialize)]
struct TrialFile<'a> {
    app: &'a str,
    #[serde(skip_serializing_if = "Option::is_none")]
    saved: Option<String>,
    #[serde(flatten)]
    trial: &'a TrialContent,
}

impl Content for TrialContent {
    const KIND: &'static str = KIND;
    const VERSION: u32 = VERSION;
    const LARGEST: usize = LARGEST;
}

/// One save of a trial, sealed.
pub type Trial = Sealed<TrialContent>;

impl WeighedBatch {
    /// Whether anything was weighed.
    #[must_use]
    pub fn is_begun(&self) -> bool {
        self.lines.lines.iter().any(|line| !line.mass.is_blank())
    }
}

impl TrialContent {
    /// A trial of a recipe with nothing done yet.
    #[must_use]
    pub fn of(recipe_name: String, draft: Draft, revision: Option<(RecipeId, RevisionId)>) -> Self {
        Self {
            replaces: None,
            saved_at: 0,
            author: String::new(),
            name: String::new(),
            note: String::new(),
            standing: Standing::Kept,
            recipe: revision.map(|(recipe, _)| recipe),
            revision: revision.map(|(_, revision)| revision),
            revision_number: None,
            recipe_name,
            draft,
            sheet: SheetDraft::default(),
            weighed: Vec::new(),
            series: None,
            made_runs: Vec::new(),
            boards: Vec::new(),
            made_boards: Vec::new(),
            required_by: String::new(),
            requirements: Vec::new(),
            model: ModelWay::default(),
        }
    }

    /// Whether another one says the same, whoever saved it and whatever recipe it names.
    #[must_use]
    pub fn says_same(&self, other: &Self) -> bool {
        (&self.name, &self.note, &self.draft, &self.sheet, &self.weighed)
            == (&other.name, &other.note, &other.draft, &other.sheet, &other.weighed)
            && (&self.series, &self.boards, &self.requirements, self.model)
                == (&other.series, &other.boards, &other.requirements, other.model)
    }

    /// The runs that were made, for [`series`].
    #[must_use]
    pub fn made(&self) -> Vec<MadeRun> {
        self.made_runs.iter().map(|record| record.run.clone()).collect()
    }

    /// The factors of their own that runs were made with: their numbers are not given out again.
    #[must_use]
    pub fn made_factors(&self) -> Vec<FactorId> {
        let levels = self.made_runs.iter().flat_map(|record| &record.run.levels);
        levels.filter_map(|level| if let Of::Own(id) = level.of { Some(id) } else { None }).collect()
    }

    /// The series as planned; the runs made already stay as they were. `None` without a series that can be planned.
    #[must_use]
    pub fn planned(&self) -> Option<Series> {
        series(&self.draft, self.series.as_ref()?, &self.made()).series
    }

    /// Keeps what each newly made run and board was made with, and drops it again where nothing is weighed or measured
    /// any more. To be called after every change, so that a later change of plan finds it kept.
    pub fn keep_made(&mut self) {
        let weighed = self.weighed.iter().filter(|batch| batch.is_begun());
        let measured = self.boards.iter().filter(|board| board.has_readings());
        let runs: BTreeSet<u16> =
            weighed.filter_map(|batch| batch.run).chain(measured.clone().filter_map(|board| board.run)).collect();
        let boards: BTreeSet<BoardId> = measured.filter(|board| board.run.is_none()).map(|board| board.id).collect();
        self.made_runs.retain(|record| runs.contains(&record.run.place));
        self.made_boards.retain(|record| boards.contains(&record.board));
        let from = self.current_recipe();
        let new = |run: &u16| !self.made_runs.iter().any(|record| record.run.place == *run);
        let new: Vec<u16> = runs.iter().copied().filter(new).collect();
        if !new.is_empty()
            && let Some(draft) = &self.series
            && let Some(planned) = self.planned()
        {
            let runs = new.into_iter().filter_map(|place| planned.run(place));
            let records: Vec<MadeRunRecord> = runs
                .map(|run| {
                    let basis = of_run(&self.draft, &self.sheet, draft, run);
                    MadeRunRecord { from: from.clone(), run: MadeRun::of(draft, run, basis) }
                })
                .collect();
            self.made_runs.extend(records);
        }
        for board in boards {
            if !self.made_boards.iter().any(|record| record.board == board) {
                let with = MadeWith { recipe: self.draft.clone(), sheet: self.sheet.clone() };
                self.made_boards.push(MadeBoardRecord { board, from: from.clone(), with });
            }
        }
    }

    /// The recipe under the trial now, with its revision.
    fn current_recipe(&self) -> MadeFrom {
        MadeFrom {
            recipe: self.recipe,
            revision: self.revision,
            revision_number: self.revision_number,
            recipe_name: self.recipe_name.clone(),
        }
    }

    fn made_run(&self, place: u16) -> Option<&MadeRunRecord> {
        self.made_runs.iter().find(|record| record.run.place == place)
    }

    /// The recipe, with its revision, that a board was, or will be, made with.
    #[must_use]
    pub fn made_from(&self, board: &BoardDraft) -> MadeFrom {
        match board.run {
            Some(_) => self.run_from(board.run),
            None => {
                let own = self.made_boards.iter().find(|record| record.board == board.id).map(|record| &record.from);
                own.cloned().unwrap_or_else(|| self.current_recipe())
            }
        }
    }

    /// The recipe, with its revision, that a run was, or will be, made with; of the base sheet, that of the trial.
    #[must_use]
    pub fn run_from(&self, run: Option<u16>) -> MadeFrom {
        run.and_then(|place| self.made_run(place)).map_or_else(|| self.current_recipe(), |record| record.from.clone())
    }

    /// The recipe and the weigh sheet that a board was, or will be, made with.
    #[must_use]
    pub fn made_with(&self, board: &BoardDraft) -> (Draft, SheetDraft) {
        let own = self.made_boards.iter().find(|record| record.board == board.id).map(|record| &record.with);
        match own.filter(|_| board.run.is_none()) {
            Some(with) => (with.recipe.clone(), with.sheet.clone()),
            None => self.basis_of(board.run),
        }
    }

    /// The recipe and the weigh sheet of a run as it was made, else as planned, or the base sheet's. A made run keeps its own
    /// while the plan has a slip in it, and after the series was removed.
    #[must_use]
    pub fn basis_of(&self, run: Option<u16>) -> (Draft, SheetDraft) {
        if let Some(made) = run.and_then(|place| self.made_run(place)) {
            return (made.run.with.recipe.clone(), made.run.with.sheet.clone());
        }
        let planned = run.and_then(|place| Some((place, self.series.as_ref()?, self.planned()?)));
        match planned.as_ref().and_then(|(place, draft, series)| Some((draft, series.run(*place)?))) {
            Some((draft, run)) => of_run(&self.draft, &self.sheet, draft, run),
            None => (self.draft.clone(), self.sheet.clone()),
        }
    }

    /// What was weighed of one batch.
    #[must_use]
    pub fn batch(&self, run: Option<u16>, batch: u16) -> Option<&BatchDraft> {
        let own = self.weighed.iter().find(|weighed| (weighed.run, weighed.batch) == (run, batch));
        own.map(|weighed| &weighed.lines)
    }

    /// What came out of the blender of one batch.
    #[must_use]
    pub fn recovered(&self, run: Option<u16>, batch: u16) -> Option<&RecoveryDraft> {
        let own = self.weighed.iter().find(|weighed| (weighed.run, weighed.batch) == (run, batch));
        own.map(|weighed| &weighed.recovered)
    }

    /// What was weighed of one batch, to type into; a new empty one where there was none.
    pub fn batch_mut(&mut self, run: Option<u16>, batch: u16) -> Option<&mut BatchDraft> {
        self.weighed_mut(run, batch).map(|weighed| &mut weighed.lines)
    }

    /// One batch, to type into; a new empty one where there was none.
    pub fn weighed_mut(&mut self, run: Option<u16>, batch: u16) -> Option<&mut WeighedBatch> {
        let own = |weighed: &WeighedBatch| (weighed.run, weighed.batch) == (run, batch);
        let at = self.weighed.iter().position(own).unwrap_or_else(|| {
            self.weighed.push(WeighedBatch {
                run,
                batch,
                lines: BatchDraft::default(),
                recovered: RecoveryDraft::default(),
            });
            self.weighed.len() - 1
        });
        self.weighed.get_mut(at)
    }

    /// Sealed as the next save: of the trial that `replaces` names, whose unknown keys live on.
    ///
    /// # Errors
    /// As [`Sealed::new`].
    pub fn seal(mut self, replaces: Option<&Trial>, stamp: Stamp) -> Result<Trial, serde_json::Error> {
        self.replaces = replaces.map(Trial::trial);
        (self.saved_at, self.author) = (stamp.at, stamp.author);
        Trial::with(self, replaces.map(Trial::extra).unwrap_or_default())
    }

    /// The text of a file: laid out to be read, with the app's version.
    ///
    /// # Errors
    /// When it has no JSON form. None lacks one.
    pub fn file(&self) -> Result<String, serde_json::Error> {
        let file = TrialFile {
            app: env!("CARGO_PKG_VERSION"),
            saved: (self.saved_at > 0).then(|| utc(self.saved_at)),
            trial: self,
        };
        Headed::new(KIND, VERSION, &file).pretty()
    }

    /// Reads the text of a file, or of a stored trial.
    ///
    /// # Errors
    /// Every [`Refusal`] but [`Altered`](Refusal::Altered).
    pub fn read_file(text: &str) -> Result<Self, Refusal> {
        limits::read_limited(text, LARGEST, KIND, VERSION)
    }
}

impl Trial {
    /// Its name among the records.
    #[must_use]
    pub const fn trial(&self) -> TrialId {
        TrialId(self.id())
    }

    /// A save that replaces this one and takes the trial out of the library, or puts it back.
    ///
    /// # Errors
    /// As [`Sealed::new`].
    pub fn with_standing(&self, standing: Standing, stamp: Stamp) -> Result<Self, serde_json::Error> {
        let mut content = self.content().clone();
        content.standing = standing;
        content.seal(Some(self), stamp)
    }
}

/// The trial on the page, kept after every change so that a reload loses nothing.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct OpenTrial {
    /// The save that was opened; none for a new trial.
    #[serde(default)]
    pub from: Option<TrialId>,
    /// What it says.
    pub trial: TrialContent,
}

/// The trials as the store has them.
#[derive(Debug, Clone, PartialEq)]
pub struct Trials {
    /// Of each trial its last save, the newest first; removed ones too.
    pub trials: Vec<Trial>,
    /// Keys of records that cannot be read, and why. They stay as they are.
    pub unreadable: Vec<(String, Unread)>,
}

impl Trials {
    /// The trials that are kept.
    pub fn kept(&self) -> impl Iterator<Item = &Trial> {
        self.trials.iter().filter(|trial| trial.content().standing == Standing::Kept)
    }

    /// The trials that are kept of one recipe, whatever the revision.
    pub fn of(&self, recipe: RecipeId) -> impl Iterator<Item = &Trial> {
        self.kept().filter(move |trial| trial.content().recipe == Some(recipe))
    }
}

impl<S: Store> Library<S> {
    /// Saves a trial. Once this is `Ok`, the store has it.
    ///
    /// # Errors
    /// When it is not in the store; nothing else has changed then.
    pub fn save_trial(&self, trial: &Trial) -> Result<TrialId, SaveError> {
        self.put(&format!("{TRIAL}{}", trial.id()), trial.text())?;
        Ok(trial.trial())
    }

    /// A save of a trial.
    ///
    /// # Errors
    /// When it is there and cannot be read.
    pub fn trial(&self, id: TrialId) -> Result<Option<Trial>, Unread> {
        match self.store().read(&format!("{TRIAL}{id}")).map_err(Unread::Store)? {
            Some(text) => Trial::read(id.0, &text).map(Some).map_err(Unread::Refused),
            None => Ok(None),
        }
    }

    /// Reads all trials.
    ///
    /// # Errors
    /// When the store does not list its keys. A single record that cannot be read is no error.
    pub fn trials(&self) -> Result<Trials, StoreError> {
        let (mut trials, mut unreadable) = (Vec::new(), Vec::new());
        for key in self.store().keys()? {
            let Some(hex) = key.strip_prefix(TRIAL) else { continue };
            let read = match Id::parse(hex) {
                Some(id) => match self.store().read(&key) {
                    Ok(text) => Trial::read(id, &text.unwrap_or_default()).map_err(Unread::Refused),
                    Err(error) => Err(Unread::Store(error)),
                },
                None => Err(Unread::BadKey),
            };
            match read {
                Ok(trial) => trials.push(trial),
                Err(why) => unreadable.push((key, why)),
            }
        }
        let replaced: BTreeSet<Id> =
            trials.iter().filter_map(|trial: &Trial| Some(trial.content().replaces?.0)).collect();
        trials.retain(|trial| !replaced.contains(&trial.id()));
        trials.sort_by(|a, b| b.content().saved_at.cmp(&a.content().saved_at).then(a.id().cmp(&b.id())));
        unreadable.sort_by(|a, b| a.0.cmp(&b.0));
        Ok(Trials { trials, unreadable })
    }
}
