//! How sure the figures are: the ± of each input, first order and Monte Carlo, and what to improve.

use super::Bench;
use super::desk::{Drawn, Stage};
use super::parts::{any, follow, number_box, output_name, picked, select, table};
use super::run;
use super::solve::{output_choices, output_of};
use super::sweep::first;
use super::systems::Compared;
use crate::browser::element::{Part, View, button, each, el, many};
use crate::browser::graph::*;
use crate::domain::check::read_entry;
use crate::domain::compare::Output;
use crate::domain::compare::agreement::compare;
use crate::domain::compare::budget::Budget;
use crate::domain::compare::draft::{CompareDraft, number_of};
use crate::domain::compare::side::System;
use crate::domain::compare::source::{self, Source, Stated, size_key};
use crate::domain::compare::spread::{Form, Size, Spread};
use crate::domain::compare::study::{Asked, NoStudy, Study, Uncertain};
use crate::domain::limit::Limit;
use crate::domain::{Entry, Grade};
use crate::quantity::number::plain;
use crate::quantity::{Coherent, Kind, Unit, format};
use crate::ui::field::choice::{self, Choice};
use crate::ui::field::loose::{LooseBox, number};
use crate::ui::math::{Style, combined_letters, combined_numbers};
use crate::ui::part::figure::joined;
use crate::ui::part::finding::told;
use crate::ui::part::fold::fold;
use crate::ui::signal::{Memo, Signal, memo};
use crate::ui::state::State;
use crate::ui::text::compare::Width;
use crate::ui::text::{FieldWords, Message, plus_minus, trimmed_to, unit_shown};

const OUTPUT: &str = "sure.output";
const FIRST_OUTPUT: &str = "mat_wet";
const OF: &str = "sure.of";
const DRAWS: &str = "sure.draws";
const SEED: &str = "seed";
const ADD: &str = "sure.add";
/// Draws to choose from; the usual number stands first.
const NUMBERS: [&str; 3] = ["100000", "10000", "1000000"];

/// What is known of the uncertainty.
#[derive(Debug, Clone, PartialEq)]
pub struct Known {
    /// All sources on the page.
    pub sources: Vec<Source>,
    /// Those that are not exact, as the study has them.
    pub uncertain: Vec<Uncertain>,
    /// The systems that give the figure.
    pub systems: Vec<System>,
    /// The figure.
    pub output: Option<Output>,
    /// The study, or why there is none.
    pub study: Result<Study, NoStudy>,
    /// Each figure asked for to first order.
    pub budgets: Vec<Budget>,
}

/// The uncertainty, as it is whenever something changes.
pub fn sure(bench: Bench) -> Memo<Option<Known>> {
    let Bench { state, shown } = bench;
    let own = follow(state, &["sure.", "plus_minus.", "form."]);
    memo(move || {
        own.track();
        state.compare.typed.with_untracked(|typed| shown.with(|shown| work_out(state, shown, typed)))
    })
}

/// The figures that can be asked for: those that are not a single liquid's.
fn figures(state: State, shown: &Compared) -> Vec<Choice> {
    let side = Output::side_by_side(shown.hours);
    let plain = |key: &str| side.iter().any(|output| output.key() == key);
    let all = first(shown).map(|system| output_choices(state, system, shown.hours)).unwrap_or_default();
    all.into_iter().filter(|(key, _)| plain(key)).collect()
}

fn work_out(state: State, shown: &Compared, typed: &CompareDraft) -> Option<Known> {
    let lead = first(shown)?;
    let output = output_of(lead, shown.hours, &picked(typed, OUTPUT, FIRST_OUTPUT, &figures(state, shown)));
    let gives = |system: &&System| output.zip(system.case()).is_some_and(|(output, case)| output.value(case).is_some());
    let systems: Vec<System> = shown.ready.iter().filter(gives).cloned().collect();
    let reference = systems.iter().position(|system| system == lead).unwrap_or(0);
    let sources = source::all(typed, &systems);
    let uncertain: Vec<Uncertain> = sources.iter().filter_map(|source| source.uncertain(typed)).collect();
    let mut asked = Vec::new();
    if let Some(output) = output {
        asked.extend((0..systems.len()).map(|system| Asked::Of { system, output }));
        let others = (0..systems.len()).filter(|at| *at != reference);
        asked.extend(others.map(|system| Asked::Difference { system, reference, output }));
    }
    let cases: Vec<_> = systems.iter().filter_map(|system| system.case().cloned()).collect();
    let study = Study::new(&cases, &uncertain, &asked);
    let budgets = match &study {
        Ok(study) => (0..asked.len()).filter_map(|at| study.budget(at)).collect(),
        Err(_) => Vec::new(),
    };
    Some(Known { sources, uncertain, systems, output, study, budgets })
}

impl Known {
    /// The value near which a difference lies: the reference's; `None` for a figure by itself.
    #[must_use]
    pub fn around(&self, budget: &Budget) -> Option<f64> {
        let Asked::Difference { reference, output, .. } = budget.asked else { return None };
        output.value(self.systems.get(reference)?.case()?).map(|amount| amount.base)
    }
}

/// A figure asked for in words: its system, or both.
fn asked_name(known: &Known, asked: Asked) -> String {
    let name = |at: usize| known.systems.get(at).map_or("", |system| system.name.as_str());
    match asked {
        Asked::Of { system, .. } => name(system).to_owned(),
        Asked::Difference { system, reference, .. } => format!("{} − {}", name(system), name(reference)),
    }
}

/// The section.
pub fn section(bench: Bench, sure: Memo<Option<Known>>) -> View {
    let Bench { state, shown } = bench;
    let page = &state.words.compare.page;
    let figures = memo(move || shown.with(|shown| figures(state, shown)));
    let of = memo(move || {
        sure.with(|known| {
            let Some(known) = known else { return Vec::new() };
            let choice = |(at, budget): (usize, &Budget)| (at.to_string(), asked_name(known, budget.asked));
            known.budgets.iter().enumerate().map(choice).collect::<Vec<Choice>>()
        })
    });
    let chosen = memo(move || state.compare.typed.with(|typed| typed.choice(OF).parse().unwrap_or(0_usize)));
    el("section")
        .set("aria-labelledby", "sure")
        .child(el("h2").set("id", "sure").set("tabindex", "-1").child(state.words.compare.sheet.uncertainty))
        .child(el("p").child(page.sure_hint))
        .child(el("div").class("fields").child(select(state, OUTPUT, page.sweep_output, FIRST_OUTPUT, figures)))
        .child(fold(page.sources, move || sources(bench, sure)))
        .child(controls(state, sure))
        .child(progress(state))
        .child(el("div").class("results").child(move || {
            sure.with(|known| {
                state.compare.drawn.with(|drawn| known.as_ref().map(|known| results(state, known, drawn)))
            })
        }))
        .child(el("h3").child(page.shares))
        .child(el("div").class("fields").child(select(state, OF, page.shares_of, "0", of)))
        .child(move || {
            let at = chosen.get();
            sure.with(|known| known.as_ref().map(|known| shares(state, known, at, true)))
        })
        .view()
}

/// A box and a choice for each source, and the way to add one.
fn sources(bench: Bench, sure: Memo<Option<Known>>) -> View {
    let Bench { state, shown } = bench;
    let page = &state.words.compare.page;
    let keys = move || {
        sure.with(|known| {
            let keys = known.iter().flat_map(|known| known.sources.iter().map(|source| source.key.clone()));
            keys.enumerate().collect::<Vec<_>>()
        })
    };
    // Numbers that no source acts on yet.
    let others = memo(move || {
        let there = sure.with(|known| {
            known.iter().flat_map(|known| known.sources.iter().map(|source| source.key.clone())).collect::<Vec<_>>()
        });
        let all =
            shown.with(|shown| first(shown).map(|system| super::sweep::inputs(state, system)).unwrap_or_default());
        all.into_iter().filter(|(key, _)| !there.contains(key)).collect::<Vec<Choice>>()
    });
    let add = move || {
        let key = state.compare.typed.with_untracked(|typed| others.with_untracked(|all| picked(typed, ADD, "", all)));
        let unit = shown.with_untracked(|shown| {
            let system = first(shown)?;
            let field = number_of(&system.draft, system.case()?, &key)?;
            Some(state.unit(system.draft.kind(field)))
        });
        if let Some(unit) = unit {
            state.compare.typed.update(|typed| typed.put(&size_key(&key), Entry::empty(unit)));
        }
    };
    many([
        el("p").class("note").child(page.sources_hint).view(),
        el("ul")
            .class("sources")
            .child(each(keys, |(at, key)| format!("{at} {key}"), move |(at, key)| one(state, sure, at, key)))
            .view(),
        el("div")
            .class("add")
            .child(select(state, ADD, page.add_source, "", others))
            .child(button().on_click(add).child(state.words.tools.add))
            .view(),
    ])
    .view()
}

/// One source: what it is, its ±, and how that is stated.
fn one(state: State, sure: Memo<Option<Known>>, at: usize, key: String) -> View {
    let page = &state.words.compare.page;
    let own = key.clone();
    let source = memo(move || {
        sure.with(|known| {
            known.as_ref().and_then(|known| known.sources.iter().find(|source| source.key == own).cloned())
        })
    });
    let name = memo(move || {
        sure.with(|known| match known.as_ref().zip(source.get()) {
            Some((known, source)) => source_name(state, &source, &known.systems),
            None => String::new(),
        })
    });
    let unit = move || source.with(|source| source.as_ref().map_or(Unit::One, |source| state.unit(source.kind)));
    let stated = move || {
        source.with(|source| {
            let first = Stated { form: Form::HalfWidth, relative: false };
            source.as_ref().map_or(first, |source| state.compare.typed.with(|typed| source.stated(typed)))
        })
    };
    let size = size_key(&key);
    let entry = {
        let size = size.clone();
        memo(move || {
            let typed = state.compare.typed.get();
            let mark = state.units.get().mark;
            let unit = unit();
            let width = || source.with(|source| source.as_ref().and_then(|source| source.width(&typed, unit)));
            let shown = || width().map(|width| trimmed_to(width, 4, mark)).unwrap_or_default();
            match typed.entry(&size) {
                None => Entry::preset(shown(), Unit::One),
                // As typed, unless another unit is shown meanwhile.
                Some(entry) if entry.unit == unit || stated().relative => Entry::typed(entry.text.clone(), Unit::One),
                Some(_) => Entry::typed(shown(), Unit::One),
            }
        })
    };
    let put = Callback::new(move |entry: Entry| {
        let unit = untrack(unit);
        state.compare.typed.update(|typed| typed.put(&size, Entry::typed(entry.text, unit)));
    });
    let choices: Vec<Choice> = Stated::ALL
        .iter()
        .map(|stated| {
            let label = (state.words.compare.form)(stated.form).label;
            let share = if stated.relative { page.of_value } else { "" };
            (stated.key().to_owned(), format!("{label}{share}"))
        })
        .collect();
    let choose = Callback::new(move |key: String| {
        let Some(to) = Stated::ALL.into_iter().find(|stated| stated.key() == key) else { return };
        let (unit, mark) = (untrack(unit), state.units.get_untracked().mark);
        if let Some(source) = source.get_untracked() {
            state.compare.typed.update(|typed| {
                source.state(typed, to, unit, |width| format::editable(rounded(width), mark));
            });
        }
    });
    let symbol = move || unit_of(state, stated(), unit());
    let now = memo(move || stated().key().to_owned());
    el("li")
        .child(el("p").child(move || name.get()))
        .child(
            el("div")
                .class("size")
                .child(move || {
                    let named = name.get();
                    (!named.is_empty()).then(|| {
                        number(LooseBox {
                            key: format!("plus-minus-{at}"),
                            words: FieldWords { label: page.plus_minus, hint: "" },
                            named: Some(format!("{}: {named}", page.plus_minus)),
                            kind: Kind::Ratio,
                            limit: Limit { above_least: true, optional: true, ..any(Unit::One, 0.0) },
                            entry,
                            put,
                        })
                    })
                })
                .child(el("span").class("unit").child(symbol)),
        )
        .child(choice::select(
            format!("form-{at}"),
            memo(move || format!("{}: {}", page.stated_as, name.get())),
            Signal::stored(choices),
            now,
            choose,
        ))
        .view()
}

/// The unit of a ±: of a number that is itself a share the ± is in percentage points.
fn unit_of(state: State, stated: Stated, unit: Unit) -> String {
    let page = &state.words.compare.page;
    match unit {
        _ if stated.relative => page.percent_of_value.to_owned(),
        Unit::Percent => page.points.to_owned(),
        unit => state.currency.with(|currency| unit_shown(unit, currency).into_owned()),
    }
}

/// Four digits are enough for a ±.
fn rounded(width: f64) -> f64 {
    let power = 10.0_f64.powi(3 - width.abs().max(f64::MIN_POSITIVE).log10().floor() as i32);
    let rounded = (width * power).round() / power;
    if rounded.is_finite() { rounded } else { width }
}

fn source_name(state: State, source: &Source, systems: &[System]) -> String {
    // A source that was made exact still has its name.
    let spread = Spread { form: Form::Standard, size: Size::Absolute(1.0), freedom: None };
    (state.words.compare.uncertain)(&Uncertain { targets: source.targets.clone(), spread }, systems)
}

/// How many draws from which seed, and the button that starts them.
fn controls(state: State, sure: Memo<Option<Known>>) -> View {
    let page = &state.words.compare.page;
    let desk = state.compare;
    let grouped = |draws: &&str| -> Choice {
        let number = plain(draws).unwrap_or(0.0);
        ((*draws).to_owned(), format::significant(number, 1, format::DecimalMark::Point))
    };
    let numbers: Vec<Choice> = NUMBERS.iter().map(grouped).collect();
    let offered = numbers.clone();
    let seed_limit = Limit { most: 9_007_199_254_740_991.0, ..any(Unit::One, 0.0) };
    let seed_start = || Entry::preset("1", Unit::One);
    let running = move || desk.drawn.with(|drawn| drawn.stage == Stage::Running);
    let start = move || {
        let typed = desk.typed.get_untracked();
        let draws = picked(&typed, DRAWS, NUMBERS[0], &offered).parse().unwrap_or(100_000);
        let entry = typed.entry(SEED).cloned().unwrap_or_else(seed_start);
        let Ok(Some(seed)) = read_entry(&entry, Kind::Ratio, &seed_limit) else { return };
        sure.with_untracked(|known| {
            if let Some(Known { study: Ok(study), budgets, .. }) = known {
                #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "from 0 to 2⁵³")]
                run::start(desk, study.clone(), budgets.clone(), seed as u64, draws);
            }
        });
    };
    el("div")
        .class("fields")
        .child(select(state, DRAWS, page.draws, NUMBERS[0], Signal::stored(numbers)))
        .child(number_box(
            state,
            (SEED.to_owned(), SEED.to_owned()),
            FieldWords { label: page.seed, hint: page.seed_hint },
            Kind::Ratio,
            seed_limit,
            seed_start,
        ))
        .child(
            el("div")
                .class("field actions end")
                .child(button().class("primary").set("id", "draw").on_click(start).child(page.draw))
                .child(
                    button()
                        .set("hidden", move || !running())
                        .on_click(move || run::cancel(desk))
                        .child(state.words.tools.cancel),
                ),
        )
        .view()
}

/// How far the draws are.
fn progress(state: State) -> View {
    let page = &state.words.compare.page;
    let drawn = state.compare.drawn;
    let running = move || drawn.with(|drawn| drawn.stage == Stage::Running);
    let percent = move || drawn.with(|drawn| (drawn.made * 100).checked_div(drawn.wanted).unwrap_or(0));
    many([
        el("progress")
            .set("aria-label", page.drawing)
            .set("max", "100")
            .set("hidden", move || !running())
            .set("value", move || percent().to_string())
            .view(),
        el("p")
            .class("note")
            .set("role", "status")
            .set("data-stage", move || match drawn.with(|drawn| drawn.stage) {
                Stage::None => "none",
                Stage::Running => "running",
                Stage::Done => "done",
                Stage::Cancelled => "cancelled",
            })
            .child(move || match drawn.with(|drawn| drawn.stage) {
                Stage::None => page.not_drawn.to_owned(),
                Stage::Running => page.drawing.to_owned(),
                Stage::Done => drawn.with(|drawn| (page.drawn)(drawn.made, drawn.seed, drawn.took)),
                Stage::Cancelled => page.cancelled.to_owned(),
            })
            .view(),
    ])
    .view()
}

/// Whether the draws made last are of what is on the page.
fn current(known: &Known, drawn: &Drawn) -> bool {
    drawn.stage == Stage::Done && drawn.budgets == known.budgets
}

/// The figures with their uncertainty by both methods, and whether they agree.
pub fn results(state: State, known: &Known, drawn: &Drawn) -> View {
    let page = &state.words.compare.page;
    let (sheet, units) = (&state.words.compare.sheet, state.units.get());
    let study = match &known.study {
        Ok(study) => study,
        Err(error) => return told(Grade::Unusual, (state.words.compare.no_study)(*error, &known.systems)),
    };
    let now = current(known, drawn);
    let mut head = vec![sheet.figure, sheet.unit, sheet.value, page.standard, page.expanded, page.factor];
    if now {
        head.push(page.interval);
    }
    let head: Vec<String> = head.into_iter().map(str::to_owned).collect();
    let mut rows = Vec::new();
    let mut said: Vec<(String, Message)> = Vec::new();
    for (at, budget) in known.budgets.iter().enumerate() {
        let (kind, around) = (budget.asked.kind(), known.around(budget));
        let unit = units.unit(kind);
        let symbol = state.currency.with(|currency| unit_shown(unit, currency).into_owned());
        let pair = |value, width| state.with_context(|context| plus_minus(kind, value, width, around, context));
        let (value, standard) = pair(budget.value, budget.standard);
        let (_, expanded) = pair(budget.value, budget.expanded);
        let name = asked_name(known, budget.asked);
        let factor = trimmed_to(budget.factor, 3, units.mark);
        let mut row = vec![name.clone(), symbol, value, standard, format!("± {expanded}"), factor];
        if now {
            let summary = drawn.summaries.get(at).and_then(Option::as_ref);
            row.push(summary.map_or_else(
                || state.words.tools.no_figure.to_owned(),
                |summary| {
                    let end = |value| pair(value, budget.standard).0;
                    format!("{} … {}", end(summary.low), end(summary.high))
                },
            ));
            // What no source acts on has nothing to disagree about.
            let exact = budget.standard <= 1e-9 * around.unwrap_or(budget.value).abs();
            if let Some(summary) = summary.filter(|_| !exact) {
                let agreement = compare(study, budget, summary, 1);
                let mut message = (state.words.compare.agreement)(&agreement);
                for reason in &agreement.why {
                    let why = state.with_context(|context| (state.words.compare.why)(*reason, context));
                    message.what = format!("{} {why}", message.what);
                }
                // What holds for several figures is said once.
                match said.iter_mut().find(|(_, other)| *other == message) {
                    Some((names, _)) => *names = format!("{names}; {name}"),
                    None => said.push((name, message)),
                }
            }
        }
        rows.push(row);
    }
    let tell = |(names, message): (String, Message)| {
        told(Grade::Note, Message { what: format!("{names}: {}", message.what), ..message })
    };
    many([
        table(sheet.uncertainty, &head, rows),
        (drawn.stage == Stage::Done && !now).then(|| el("p").class("note").child(page.draws_old)).view(),
        said.into_iter().map(tell).collect::<View>(),
    ])
    .view()
}

/// The share of each source in one figure, the largest first; what to improve first; and how it came about.
/// `at` is the figure's place.
pub fn shares(state: State, known: &Known, at: usize, with_working: bool) -> View {
    let page = &state.words.compare.page;
    let Some(budget) = known.budgets.get(at).or(known.budgets.first()) else { return View::Nothing };
    let units = state.units.get();
    let name = |at: usize| {
        known
            .uncertain
            .get(at)
            .map(|source| (state.words.compare.uncertain)(source, &known.systems))
            .unwrap_or_default()
    };
    let bar = |share: &crate::domain::compare::budget::Share| {
        let percent = share.share * 100.0;
        let text = joined(&trimmed_to(percent, 2, units.mark), "%");
        let wide = (percent * 10.0).round() / 10.0;
        el("li").child(el("span").child(name(share.source))).child(el("span").class("value").child(text)).child(
            el("span").class("bar-of").set("aria-hidden", "true").markup(&format!(
                "<svg viewBox=\"0 0 100 6\" preserveAspectRatio=\"none\"><rect width=\"{wide}\" height=\"6\" \
                 fill=\"currentColor\"/></svg>"
            )),
        )
    };
    let figure = known.output.map(|output| {
        let draft = known.systems.first().map(|system| system.draft.clone()).unwrap_or_default();
        format!("{}, {}", output_name(state, output, &draft), asked_name(known, budget.asked))
    });
    let improve = budget.improve_first().map(|found| {
        let at = known.around(budget).unwrap_or(budget.value);
        let width = Width { kind: budget.asked.kind(), at, standard: budget.standard };
        let names = [name(found.source), figure.clone().unwrap_or_default()];
        let message = state.with_context(|context| {
            (state.words.compare.improve)(&found, [names[0].as_str(), names[1].as_str()], width, context)
        });
        told(Grade::Note, message)
    });
    let currency = state.currency.get();
    let style = Style { set: Coherent::from(units.system), mark: units.mark, currency: &currency };
    let numbers = combined_numbers(budget, known.around(budget), style);
    let worked = el("details").class("more").child(el("summary").child(state.words.recipe_page.show_working)).child(
        el("div")
            .class("working")
            .child(el("div").class("math").markup(&combined_letters()))
            .child(
                el("div")
                    .class("math")
                    .set("tabindex", "0")
                    .set("role", "region")
                    .set("aria-label", state.words.recipe_page.numbers_put_in)
                    .markup(&numbers),
            )
            .child(el("p").class("note").child(page.combined_source)),
    );
    many([
        improve.view(),
        el("ol").class("shares").child(budget.shares.iter().map(bar).collect::<View>()).view(),
        with_working.then_some(worked).view(),
    ])
    .view()
}

/// The values of the inputs that a study varies, in words: for the report.
pub fn assumed(state: State, known: &Known) -> View {
    let sheet = &state.words.compare.sheet;
    let typed = state.compare.typed.get();
    let mut rows = Vec::new();
    for source in &known.sources {
        let stated = source.stated(&typed);
        let unit = state.unit(source.kind);
        let Some(width) = source.width(&typed, unit) else { continue };
        let symbol = unit_of(state, stated, unit);
        let mark = state.units.get().mark;
        let form = (state.words.compare.form)(stated.form).label;
        let width = joined(&trimmed_to(width, 3, mark), &symbol);
        rows.push(vec![source_name(state, source, &known.systems), width, form.to_owned()]);
    }
    let page = &state.words.compare.page;
    let head = [sheet.source, page.plus_minus, page.stated_as].map(str::to_owned);
    table(page.sources, &head, rows)
}
