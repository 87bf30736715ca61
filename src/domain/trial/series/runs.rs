//! A series of trials: which combinations are made, how often, in which order.

use crate::domain::Grade;
use crate::domain::recipe::check::{read_entry, unusual};
use crate::domain::recipe::draft::{Draft, Entry, WaterWay};
use crate::domain::trial::finding::{TrialFinding, TrialPlace, TrialProblem};
use crate::domain::trial::series::design::Design;
use crate::domain::trial::series::draft::{
    BlockWay, DesignWay, FactorDraft, MAX_FACTORS, MAX_LEVELS, MAX_RUNS, SeriesDraft, kind_of, recipe_field,
};
use crate::domain::trial::series::factor::{Factor, Level};
use crate::domain::trial::series::field::{Of, SeriesField};
use crate::domain::trial::series::keep_made::keep_made;
use crate::domain::trial::series::made::MadeRun;
use crate::domain::trial::series::run::Run;
use crate::domain::trial::series::run_order::Chance;
use crate::domain::trial::series::word::Word;
use crate::domain::trial::{SheetDraft, WeighField};
use crate::quantity::Amount;
use uom::si::f64::Ratio;

/// A series.
#[derive(Debug, Clone, PartialEq)]
pub struct Series {
    /// The factors, A first.
    pub factors: Vec<Factor>,
    /// The design of one replicate.
    pub design: Design,
    /// The words that split a replicate into blocks.
    pub block_words: Vec<Word>,
    /// How often each combination is made.
    pub replicates: u16,
    /// How many blocks.
    pub blocks: u16,
    /// The seed of the run order.
    pub seed: u64,
    /// What is ordered beyond what the sheets say.
    pub margin: Ratio,
    /// The runs in run order.
    pub runs: Vec<Run>,
}

/// What comes of a series as entered.
#[derive(Debug, Clone, PartialEq)]
pub struct SeriesOutcome {
    /// The series, when nothing stands in the way.
    pub series: Option<Series>,
    /// What there is to say.
    pub findings: Vec<TrialFinding>,
}

/// Reads a series and draws its run order. The runs made already keep their number, levels, recipe and sheet.
#[must_use]
pub fn series(recipe: &Draft, draft: &SeriesDraft, made: &[MadeRun]) -> SeriesOutcome {
    let mut reader = Reader { recipe, draft, made, findings: Vec::new() };
    let series = reader.series();
    let stopped = reader.findings.iter().any(|finding| finding.grade == Grade::Stop);
    SeriesOutcome { series: series.filter(|_| !stopped), findings: reader.findings }
}

/// The recipe and the sheet of one run: its levels entered in their places, or those it was made with.
#[must_use]
pub fn of_run(recipe: &Draft, sheet: &SheetDraft, draft: &SeriesDraft, run: &Run) -> (Draft, SheetDraft) {
    if let Some(made) = &run.made {
        return (made.with.recipe.clone(), made.with.sheet.clone());
    }
    let (mut recipe, mut sheet) = (recipe.clone(), sheet.clone());
    for (factor, level) in draft.factors.iter().zip(&run.levels) {
        let Some(level) = factor.levels.get(usize::from(*level)) else { continue };
        match factor.of {
            Of::System => recipe.liquids.clone_from(&level.liquids),
            Of::Own(_) => {}
            Of::PressFactor => *sheet.entry_mut(WeighField::PressFactor) = level.value.clone(),
            Of::BoardDensity | Of::MatMoisture | Of::Dose(_) => {
                if let Some(place) = recipe_field(factor.of).and_then(|field| recipe.entry_mut(field)) {
                    place.clone_from(&level.value);
                }
                // What the sheet says in place of the recipe must not hide the factor.
                match factor.of {
                    Of::BoardDensity => sheet.entry_mut(WeighField::BoardDensity).text.clear(),
                    Of::MatMoisture => {
                        recipe.water_way = WaterWay::ToMatMoisture;
                        sheet.entry_mut(WeighField::MatMoisture).text.clear();
                    }
                    _ => {}
                }
            }
        }
    }
    (recipe, sheet)
}

struct Reader<'a> {
    recipe: &'a Draft,
    draft: &'a SeriesDraft,
    made: &'a [MadeRun],
    findings: Vec<TrialFinding>,
}

impl Reader<'_> {
    fn stop(&mut self, place: TrialPlace, what: TrialProblem) {
        self.findings.push(TrialFinding::stop(place, what));
    }

    fn number(&mut self, field: SeriesField, entry: &Entry) -> Option<f64> {
        let kind = self.draft.kind(field, self.recipe);
        let limit = self.draft.limit(field, self.recipe);
        match read_entry(entry, kind, &limit) {
            Ok(Some(base)) => {
                if let Some(what) = unusual(Amount::from_base(kind, base), &limit) {
                    self.findings.push(TrialFinding::unusual(TrialPlace::Series(field), TrialProblem::Entry(what)));
                }
                Some(base)
            }
            Ok(None) => None,
            Err(what) => {
                self.stop(TrialPlace::Series(field), TrialProblem::Entry(what));
                None
            }
        }
    }

    fn whole(&mut self, field: SeriesField, entry: &Entry) -> Option<u64> {
        let number = self.number(field, entry)?;
        if number.fract() > 0.0 {
            self.stop(TrialPlace::Series(field), TrialProblem::NotWhole);
            return None;
        }
        Some(number as u64)
    }

    fn factor(&mut self, factor: &FactorDraft) -> Option<Factor> {
        let place = TrialPlace::Series(SeriesField::Factor(factor.id));
        if let Of::Dose(liquid) = factor.of {
            if self.recipe.liquid(liquid).is_none() {
                self.stop(place, TrialProblem::FactorMissing);
                return None;
            }
            if self.draft.factors.iter().any(|other| other.of == Of::System) {
                self.stop(place, TrialProblem::DoseBesideSystem);
                return None;
            }
        }
        if matches!(factor.of, Of::Own(_)) && factor.own.name.trim().is_empty() {
            self.stop(place, TrialProblem::FactorUnnamed);
            return None;
        }
        let mut levels = Vec::new();
        for (at, level) in factor.levels.iter().enumerate().take(MAX_LEVELS) {
            if factor.of == Of::System {
                levels.push(Some(Level::System(level.name.trim().to_owned())));
                continue;
            }
            let field = SeriesField::Level(factor.id, u8::try_from(at).unwrap_or(u8::MAX));
            if matches!(factor.of, Of::Own(_)) {
                let read = factor.own.read(&level.value.text);
                levels.push(read.map_err(|what| self.stop(TrialPlace::Series(field), what)).ok());
                continue;
            }
            let kind = kind_of(factor.of, self.recipe);
            let value = self.number(field, &level.value);
            levels.push(value.map(|base| Level::Value(Amount::from_base(kind, base))));
        }
        let levels: Vec<Level> = levels.into_iter().collect::<Option<_>>()?;
        let twice = |(at, level): (usize, &Level)| levels[..at].contains(level);
        if levels.len() < 2 || factor.levels.len() > MAX_LEVELS || levels.iter().enumerate().any(twice) {
            self.stop(place, TrialProblem::LevelsAlike);
            return None;
        }
        Some(Factor { id: factor.id, of: factor.of, own: factor.own.clone(), levels })
    }

    fn factors(&mut self) -> Option<Vec<Factor>> {
        let draft = self.draft;
        if draft.factors.is_empty() {
            self.stop(TrialPlace::Design, TrialProblem::NoFactors);
        }
        if draft.factors.len() > MAX_FACTORS {
            self.stop(TrialPlace::Design, TrialProblem::TooManyFactors { most: MAX_FACTORS });
            return None;
        }
        let mut factors = Vec::new();
        for (at, factor) in draft.factors.iter().enumerate() {
            let named = |own: &FactorDraft| own.own.name.trim().to_lowercase();
            let is_own = |own: &FactorDraft| matches!(own.of, Of::Own(_));
            let same = |earlier: &FactorDraft| {
                earlier.of == factor.of || (is_own(earlier) && is_own(factor) && named(earlier) == named(factor))
            };
            if draft.factors[..at].iter().any(same) {
                self.stop(TrialPlace::Series(SeriesField::Factor(factor.id)), TrialProblem::SameFactor);
            }
            factors.push(self.factor(factor));
        }
        factors.into_iter().collect()
    }

    fn design(&mut self, factors: &[Factor]) -> Option<Design> {
        let levels: Vec<u8> =
            factors.iter().map(|factor| u8::try_from(factor.levels.len()).unwrap_or(u8::MAX)).collect();
        match self.draft.design {
            DesignWay::Full => {
                // Counted before any is made: eight factors of six levels have 1.7 million combinations.
                let count = levels.iter().try_fold(1_usize, |count, levels| count.checked_mul(usize::from(*levels)));
                match count {
                    Some(count) if count <= MAX_RUNS => Some(Design::full(&levels)),
                    _ => {
                        let runs = count.unwrap_or(usize::MAX);
                        self.stop(TrialPlace::Design, TrialProblem::TooManyRuns { runs, most: MAX_RUNS });
                        None
                    }
                }
            }
            DesignWay::Fraction(_) if levels.iter().any(|levels| *levels != 2) => {
                self.stop(TrialPlace::Design, TrialProblem::FractionNeedsTwoLevels);
                None
            }
            DesignWay::Fraction(p) => {
                let design = Design::fraction(levels.len(), usize::from(p));
                if design.is_none() {
                    self.stop(TrialPlace::Design, TrialProblem::NoSuchFraction { factors: levels.len() });
                }
                design
            }
        }
    }

    fn series(&mut self) -> Option<Series> {
        let draft = self.draft;
        let factors = self.factors();
        let replicates = self.whole(SeriesField::Replicates, &draft.replicates);
        let seed = self.whole(SeriesField::Seed, &draft.seed);
        let margin = self.number(SeriesField::Margin, &draft.margin);
        let factors = factors?;
        let design = self.design(&factors)?;
        let replicates = u16::try_from(replicates?).ok()?;
        let count = design.runs.len() * usize::from(replicates);
        if count > MAX_RUNS {
            self.stop(TrialPlace::Design, TrialProblem::TooManyRuns { runs: count, most: MAX_RUNS });
            return None;
        }
        let block_words = self.block_words(&design)?;
        self.notes(&design, &block_words);
        let seed = seed?;
        let drawn = runs(&design, &block_words, draft.blocks, replicates, seed);
        let runs = keep_made(drawn, self.made, &factors, &design);
        self.made_notes(&runs);
        let blocks = runs.iter().map(|run| run.block).max().unwrap_or(1);
        let margin = si!(Ratio, margin?);
        Some(Series { factors, design, block_words, replicates, blocks, seed, margin, runs })
    }

    fn block_words(&mut self, design: &Design) -> Option<Vec<Word>> {
        let halvings = match self.draft.blocks {
            BlockWay::None | BlockWay::Replicate => return Some(Vec::new()),
            BlockWay::Halves => 1,
            BlockWay::Quarters => 2,
        };
        let words = design.block_words(halvings);
        if words.is_none() {
            self.stop(TrialPlace::Design, TrialProblem::BlocksDoNotFit);
        }
        words
    }

    fn made_notes(&mut self, runs: &[Run]) {
        let made = runs.iter().filter(|run| run.made.is_some()).count();
        let outside = runs.iter().filter(|run| !run.is_in_design()).count();
        if made > 0 && made < runs.len() {
            let open = runs.len() - made;
            self.findings.push(TrialFinding::note(TrialPlace::Design, TrialProblem::MadeRunsStay { made, open }));
        }
        if outside > 0 {
            let what = TrialProblem::RunsOutsideDesign { count: outside };
            self.findings.push(TrialFinding::unusual(TrialPlace::Design, what));
        }
    }

    fn notes(&mut self, design: &Design, block_words: &[Word]) {
        match design.resolution() {
            Some(..=3) => self.findings.push(TrialFinding::unusual(TrialPlace::Design, TrialProblem::ResolutionThree)),
            Some(4) => self.findings.push(TrialFinding::note(TrialPlace::Design, TrialProblem::ResolutionFour)),
            _ => {}
        }
        if design.lost_to_blocks(block_words).iter().any(|word| design.lowest(*word) <= 2) {
            self.findings.push(TrialFinding::note(TrialPlace::Design, TrialProblem::BlockHidesInteraction));
        }
    }
}

/// The runs in an order drawn from the seed, block after block.
fn runs(design: &Design, block_words: &[Word], way: BlockWay, replicates: u16, seed: u64) -> Vec<Run> {
    let within = 1_u16 << block_words.len();
    let block_of = |replicate: u16, levels: &[u8]| match way {
        BlockWay::None => 1,
        BlockWay::Replicate => replicate,
        BlockWay::Halves | BlockWay::Quarters => {
            let part = block_words.iter().fold(0, |part, word| part * 2 + u16::from(word.sign(levels) > 0));
            (replicate - 1) * within + part + 1
        }
    };
    let mut runs: Vec<Run> = (1..=replicates)
        .flat_map(|replicate| {
            design.runs.iter().zip(1_u16..).map(move |(levels, standard)| {
                let block = block_of(replicate, levels);
                Run { place: 0, standard, replicate, block, levels: levels.clone(), made: None }
            })
        })
        .collect();
    // The order before the draw stays the standard one within each block.
    runs.sort_by_key(|run| run.block);
    let mut chance = Chance::from_seed(seed);
    for block in runs.chunk_by_mut(|one, next| one.block == next.block) {
        chance.shuffle(block);
    }
    for (run, place) in runs.iter_mut().zip(1..) {
        run.place = place;
    }
    runs
}

impl Series {
    /// The run at a place in the run order, from 1.
    #[must_use]
    pub fn run(&self, place: u16) -> Option<&Run> {
        self.runs.iter().find(|run| run.place == place)
    }

    /// The level that a factor has in a run.
    #[must_use]
    pub fn level(&self, run: &Run, factor: usize) -> Option<&Level> {
        self.factors.get(factor)?.levels.get(usize::from(*run.levels.get(factor)?))
    }
}
