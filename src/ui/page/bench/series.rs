//! A series: factors with levels, the design with what it cannot tell apart, the run order, and the material.

use super::desk::{Desk, PlannedSeries};
use super::parts::{act, choose, findings, group, numbered, pick, shown, table, text_box};
use crate::browser::clock;
use crate::browser::element::{Part, View, button, each, el, many};
use crate::browser::graph::*;
use crate::domain::recipe::binder_system::SystemKey;
use crate::domain::trial::series::draft::{
    BlockWay, DesignWay, FactorDraft, LevelDraft, MAX_FACTORS, MAX_LEVELS, kind_of,
};
use crate::domain::trial::series::factor::OwnFactor;
use crate::domain::trial::series::field::{FactorId, Of, SeriesField};
use crate::domain::trial::series::fraction;
use crate::domain::trial::series::word::letter;
use crate::domain::trial::{Series, SeriesDraft};
use crate::domain::{Draft, Entry, LiquidDraft};
use crate::quantity::{Kind, Unit};
use crate::record::content::trial::TrialContent;
use crate::record::limits::LONGEST_NAME;
use crate::ui::field::choice;
use crate::ui::field::loose::{self, LooseBox};
use crate::ui::signal::{RwSignal, Signal, memo};
use crate::ui::state::State;

/// The section.
pub fn series(desk: Desk) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let there = memo(move || desk.basis.with(|basis| basis.series.is_some()));
    let plan = move || {
        state.bench.edit(|trial| {
            let mut series = SeriesDraft::begin(clock::now());
            series.factors.extend(first_factor(&trial.draft, &series, &[]));
            trial.series = Some(series);
        });
    };
    el("div")
        .class("series")
        .child(el("p").child(page.series_hint))
        .child(move || if there.get() { untrack(|| planned(desk)) } else { act(page.plan_series, plan) })
        .view()
}

fn blank_levels(of: Of, recipe: &Draft) -> Vec<LevelDraft> {
    let unit = kind_of(of, recipe).unit_in(crate::quantity::kind::UnitSystem::Metric);
    vec![LevelDraft::blank(unit), LevelDraft::blank(unit)]
}

fn first_factor(recipe: &Draft, series: &SeriesDraft, made: &[FactorId]) -> Option<FactorDraft> {
    let id = series.free_id(made);
    let of = offered(recipe, id).into_iter().find(|of| !series.factors.iter().any(|factor| factor.of == *of))?;
    Some(FactorDraft { id, of, own: OwnFactor::default(), levels: blank_levels(of, recipe) })
}

/// What a factor can change.
fn offered(recipe: &Draft, id: FactorId) -> Vec<Of> {
    let doses = recipe.liquids.iter().map(|liquid| Of::Dose(liquid.id));
    doses.chain([Of::BoardDensity, Of::MatMoisture, Of::PressFactor, Of::System, Of::Own(id)]).collect()
}

fn change(state: State, change: impl FnOnce(&mut SeriesDraft)) {
    state.bench.edit(|trial| {
        if let Some(series) = &mut trial.series {
            change(series);
        }
    });
}

fn of_series<T>(trial: &TrialContent, read: impl FnOnce(&SeriesDraft) -> Option<T>) -> Option<T> {
    trial.series.as_ref().and_then(read)
}

fn planned(desk: Desk) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let bench = state.bench;
    let ids = memo(move || {
        desk.basis.with(|basis| {
            let series = basis.series.as_ref();
            series.map_or_else(Vec::new, |series| series.factors.iter().map(|factor| factor.id.0).collect::<Vec<u8>>())
        })
    });
    let add = move || {
        bench.edit(|trial| {
            let made = trial.made_factors();
            if let Some(series) = &mut trial.series
                && let Some(factor) = first_factor(&trial.draft, series, &made)
            {
                series.factors.push(factor);
            }
        });
    };
    let drop = move || {
        let before = bench.open.get_untracked();
        bench.edit(|trial| trial.series = None);
        bench.run.set(0);
        state.tell_undo(page.series_dropped, move || bench.load(before.clone()));
    };
    let ways = memo(move || {
        let factors = ids.with(Vec::len);
        let fractions = fraction::offered(factors).into_iter().map(DesignWay::Fraction);
        numbered(
            std::iter::once(DesignWay::Full).chain(fractions).map(|way| (state.words.bench.design_way)(way, factors)),
        )
    });
    let way_at = |series: &SeriesDraft| match series.design {
        DesignWay::Full => Some(0),
        DesignWay::Fraction(p) => {
            fraction::offered(series.factors.len()).iter().position(|own| *own == p).map(|at| at + 1)
        }
    };
    let put_way = |series: &mut SeriesDraft, at: usize| {
        let chosen = at.checked_sub(1).and_then(|at| fraction::offered(series.factors.len()).get(at).copied());
        series.design = chosen.map_or(DesignWay::Full, DesignWay::Fraction);
    };
    let asked = RwSignal::new(false);
    let reseed = move || {
        asked.set(false);
        let seed = SeriesDraft::begin(clock::now()).seed;
        change(state, |series| series.seed = seed);
    };
    let made = move || bench.open.with_untracked(|open| open.trial.made_runs.len());
    // With boards made it is asked first what moves.
    let redraw = move || if made() == 0 { reseed() } else { asked.set(true) };
    let question = move || {
        asked.get().then(|| {
            let all = desk.planned.with_untracked(|planned| planned.sheets.len());
            let words = (state.words.bench.redraw)(made(), all.saturating_sub(made()));
            el("div").set("role", "alert").child(el("p").child(words)).child(
                el("div")
                    .class("actions")
                    .child(act(page.redraw, reseed))
                    .child(act(page.keep_order, move || asked.set(false))),
            )
        })
    };
    many([
        each(move || ids.get(), u8::to_string, move |id| factor(desk, FactorId(id))),
        el("div")
            .class("actions")
            .child(move || (ids.with(Vec::len) < MAX_FACTORS).then(|| act(page.add_factor, add)))
            .child(act(page.drop_series, drop))
            .view(),
        el("div")
            .class("fields")
            .child(choose(
                state,
                "bench-design",
                page.design,
                ways,
                move |trial| of_series(trial, way_at),
                move |trial, at| {
                    if let Some(series) = &mut trial.series {
                        put_way(series, at);
                    }
                },
            ))
            .child(pick(
                state,
                "bench-blocks",
                page.blocks,
                (BlockWay::ALL, state.words.bench.block_way),
                |trial| trial.series.as_ref().map_or(BlockWay::None, |series| series.blocks),
                |trial, blocks| {
                    if let Some(series) = &mut trial.series {
                        series.blocks = blocks;
                    }
                },
            ))
            .child(
                [SeriesField::Replicates, SeriesField::Seed, SeriesField::Margin]
                    .map(|field| number(desk, field, None)),
            )
            .view(),
        el("div").class("actions").child(act(page.new_seed, redraw)).view(),
        question.view(),
        (move || desk.planned.with(|planned| results(desk, planned))).view(),
    ])
}

/// A box of the series.
fn number(desk: Desk, field: SeriesField, named: Option<String>) -> View {
    let state = desk.state;
    let Some((kind, limit)) = desk.basis.with_untracked(|basis| {
        let series = basis.series.as_ref()?;
        Some((series.kind(field, &basis.recipe), series.limit(field, &basis.recipe)))
    }) else {
        return View::Nothing;
    };
    loose::number(LooseBox {
        key: field.key(),
        words: (state.words.bench.series_field)(field),
        named,
        kind,
        limit,
        entry: memo(move || {
            let typed = state.bench.open.with(|open| of_series(&open.trial, |series| series.entry(field).cloned()));
            typed.unwrap_or_else(|| Entry::empty(Unit::One))
        }),
        put: Callback::new(move |entry| {
            change(state, |series| {
                if let Some(place) = series.entry_mut(field) {
                    *place = entry;
                }
            });
        }),
    })
}

fn factor(desk: Desk, id: FactorId) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let now = memo(move || {
        desk.basis.with(|basis| {
            let series = basis.series.as_ref()?;
            let at = series.factors.iter().position(|factor| factor.id == id)?;
            let factor = series.factors.get(at)?;
            Some((at, factor.of, factor.levels.len()))
        })
    });
    let offers = memo(move || {
        desk.basis.with(|basis| {
            let blank = OwnFactor::default();
            let words = |of| (state.words.bench.factor)(of, &blank, &basis.recipe);
            numbered(offered(&basis.recipe, id).into_iter().map(words))
        })
    });
    let title = move || now.get().map(|(at, ..)| format!("{} {}", page.factor, letter(at)));
    let levels = move || now.get().map_or_else(Vec::new, |(_, of, count)| (0..count).map(|at| (of, at)).collect());
    let level = move |(of, at): (Of, usize)| {
        let at = u8::try_from(at).unwrap_or(u8::MAX);
        let name = untrack(title).unwrap_or_default();
        let named = format!("{name}, {} {}", page.level.to_lowercase(), at + 1);
        match of {
            Of::System => system(state, id, at, named),
            Of::Own(_) => own_level(state, id, at, named),
            _ => number(desk, SeriesField::Level(id, at), Some(named)),
        }
    };
    let add = move || {
        state.bench.edit(|trial| {
            let Some(series) = &mut trial.series else { return };
            if let Some(factor) = series.factors.iter_mut().find(|factor| factor.id == id)
                && factor.levels.len() < MAX_LEVELS
            {
                factor.levels.extend(blank_levels(factor.of, &trial.draft).pop());
            }
        });
    };
    let fewer = move || {
        change(state, |series| {
            if let Some(factor) = series.factors.iter_mut().find(|factor| factor.id == id) {
                factor.levels.pop();
            }
        });
    };
    let remove = move || change(state, |series| series.factors.retain(|factor| factor.id != id));
    el("fieldset")
        .class("factor")
        .child(el("legend").child(title))
        .child(choose(
            state,
            &format!("factor-{}", id.0),
            page.factor,
            offers,
            move |trial| {
                of_series(trial, |series| {
                    let of = series.factor(id)?.of;
                    offered(&trial.draft, id).iter().position(|own| *own == of)
                })
            },
            move |trial, at| {
                let Some(of) = offered(&trial.draft, id).get(at).copied() else { return };
                let levels = blank_levels(of, &trial.draft);
                if let Some(series) = &mut trial.series
                    && let Some(factor) = series.factors.iter_mut().find(|factor| factor.id == id)
                {
                    (factor.of, factor.levels) = (of, levels);
                }
            },
        ))
        .child(move || now.get().is_some_and(|(_, of, _)| matches!(of, Of::Own(_))).then(|| own_factor(state, id)))
        .child(el("div").class("levels").child(each(levels, |(of, at)| format!("{} {at}", of.key()), level)))
        .child(
            el("div")
                .class("actions")
                .child(act(page.add_level, add))
                .child(move || now.get().is_some_and(|(.., count)| count > 2).then(|| act(page.remove_level, fewer)))
                .child(act(page.remove_factor, remove)),
        )
        .view()
}

/// Name and unit of a factor that changes nothing computed.
fn own_factor(state: State, id: FactorId) -> View {
    let page = &state.words.bench_page;
    let own = move |part: fn(&OwnFactor) -> &String| {
        move |trial: &TrialContent| {
            of_series(trial, |series| Some(part(&series.factor(id)?.own).clone())).unwrap_or_default()
        }
    };
    let put = move |part: fn(&mut OwnFactor) -> &mut String| {
        move |trial: &mut TrialContent, text: String| {
            if let Some(series) = &mut trial.series
                && let Some(factor) = series.factors.iter_mut().find(|factor| factor.id == id)
            {
                *part(&mut factor.own) = text;
            }
        }
    };
    let name_box = format!("factor-name-{}", id.0);
    let unit_box = format!("factor-unit-{}", id.0);
    el("div")
        .class("fields")
        .child(text_box(state, name_box, page.factor_name, own(|own| &own.name), put(|own| &mut own.name)))
        .child(text_box(state, unit_box, page.factor_unit, own(|own| &own.unit), put(|own| &mut own.unit)))
        .child(el("p").class("note").child(page.factor_unit_hint))
        .view()
}

/// A level of such a factor: a number in its unit, or words.
fn own_level(state: State, id: FactorId, at: u8, named: String) -> View {
    let field = SeriesField::Level(id, at);
    let entry = move |trial: &TrialContent| of_series(trial, |series| series.entry(field).cloned());
    let shown = move || state.bench.open.with(|open| entry(&open.trial).map(|entry| entry.text).unwrap_or_default());
    let put = move |text: String| {
        change(state, |series| {
            if let Some(place) = series.entry_mut(field) {
                *place = Entry::typed(text, Unit::One);
            }
        });
    };
    let input = el("input")
        .set("id", format!("field-{}", field.key()))
        .set("type", "text")
        .set("autocomplete", "off")
        .set("maxlength", LONGEST_NAME.to_string())
        .set("data-field", field.key())
        .set("aria-label", named)
        .property("value", shown)
        .on("input", move |event| put(event_target_value(&event)));
    el("div").class("field").child(el("div").class("box").child(input)).view()
}

/// The binder systems that a level can be: the recipe's own liquids, the mill's, the library's.
fn systems(state: State) -> Vec<(String, Vec<LiquidDraft>)> {
    let own = state.bench.open.with(|open| open.trial.draft.liquids.clone());
    let mut all = vec![(state.words.bench_page.as_recipe.to_owned(), own)];
    state.library.with(|library| {
        all.extend(
            library.systems().into_iter().map(|own| (own.content().name.clone(), own.content().liquids.clone())),
        );
    });
    all.extend(
        SystemKey::ALL.iter().map(|key| ((state.words.binder_system)(*key).name.to_owned(), key.system().liquids)),
    );
    all
}

fn system(state: State, id: FactorId, at: u8, named: String) -> View {
    let field = move |series: &SeriesDraft| series.factor(id)?.levels.get(usize::from(at)).cloned();
    let all = systems(state);
    let names: Vec<String> = all.iter().map(|(name, _)| name.clone()).collect();
    let first = std::iter::once(state.words.bench_page.choose_system.to_owned());
    let choices = Signal::stored(numbered(first.chain(names.clone())));
    let now = memo(move || {
        let level = state.bench.open.with(|open| of_series(&open.trial, field));
        let at = level.and_then(|level| names.iter().position(|name| *name == level.name));
        at.map_or(0, |at| at + 1).to_string()
    });
    let choose = Callback::new(move |chosen: String| {
        let Some((name, liquids)) = chosen.parse().ok().and_then(|at: usize| all.get(at.checked_sub(1)?).cloned())
        else {
            return;
        };
        change(state, |series| {
            let level = series.factors.iter_mut().find(|factor| factor.id == id);
            if let Some(level) = level.and_then(|factor| factor.levels.get_mut(usize::from(at))) {
                (level.name, level.liquids) = (name, liquids);
            }
        });
    });
    choice::labelled(format!("level-{}-{at}", id.0), named.into(), choices, now, choose)
}

fn results(desk: Desk, planned: &PlannedSeries) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let said = desk.basis.with(|basis| findings(desk, &planned.findings, &basis.recipe, &basis.sheet));
    let Some(series) = &planned.series else { return said };
    let pair = |label: &'static str, value: String| {
        (!value.is_empty()).then(|| el("div").child(el("dt").child(label)).child(el("dd").child(value)))
    };
    many([
        said,
        el("dl")
            .class("notation")
            .child(pair(page.notation, series.design.notation()))
            .child(pair(page.generators, series.design.generators_in_letters().join(", ")))
            .child(pair(page.defining, series.design.defining_in_letters()))
            .view(),
        aliases(state, series),
        group(page.run_order, runs(desk, series)),
        group(page.material, many([el("p").class("note").child(page.with_margin).view(), material(desk, planned)])),
    ])
}

fn aliases(state: State, series: &Series) -> View {
    let page = &state.words.bench_page;
    if series.design.defining.is_empty() {
        return View::Nothing;
    }
    let rows = series.design.alias_table(3).into_iter().map(|row| {
        let with: Vec<String> = row.with.iter().map(|word| word.to_text()).collect();
        let with = if with.is_empty() { page.clear.to_owned() } else { with.join(", ") };
        vec![row.effect.to_text(), with]
    });
    let head = [page.effect.to_owned(), page.same_as.to_owned()];
    group(page.aliases, table(page.aliases, &head, rows.collect()))
}

/// Every run in its order, and the way to its sheet.
fn runs(desk: Desk, series: &Series) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let heads = run_heads(desk, series);
    let head = heads.into_iter().map(|words| el("th").set("scope", "col").child(words)).collect::<View>();
    let row = |run: &crate::domain::trial::series::run::Run| {
        let place = u32::from(run.place);
        let label = format!("{} {place}", page.weigh_run);
        let go = move || {
            state.bench.run.set(place);
            state.bench.batch.set(1);
            state.bench.section.set(super::tab::SHEET);
        };
        let mut cells = run_cells(desk, series, run).into_iter();
        let first = button().class("link").set("aria-label", label).on_click(go).child(cells.next());
        el("tr")
            .child(el("th").set("scope", "row").child(first))
            .child(cells.map(|cell| el("td").child(cell)).collect::<View>())
    };
    el("div")
        .class("scroll")
        .set("tabindex", "0")
        .set("role", "region")
        .set("aria-label", page.run_order)
        .child(
            el("table")
                .child(el("thead").child(el("tr").child(head)))
                .child(el("tbody").child(series.runs.iter().map(row).collect::<View>())),
        )
        .view()
}

/// The heads of the table of runs.
pub fn run_heads(desk: Desk, series: &Series) -> Vec<String> {
    let state = desk.state;
    let page = &state.words.bench_page;
    let mut heads =
        vec![page.run.to_owned(), page.standard.to_owned(), page.block.to_owned(), page.replicate.to_owned()];
    desk.with_context(|context| {
        let named = |(at, factor): (usize, &crate::domain::trial::series::factor::Factor)| {
            format!("{} {}", letter(at), (state.words.bench.factor)(factor.of, &factor.own, context.draft))
        };
        heads.extend(series.factors.iter().enumerate().map(named));
    });
    heads
}

/// The cells of a run.
pub fn run_cells(desk: Desk, series: &Series, run: &crate::domain::trial::series::run::Run) -> Vec<String> {
    let mut cells = [run.place, run.standard, run.block, run.replicate].map(|number| number.to_string()).to_vec();
    desk.with_context(|context| {
        let level = |at| {
            let level = series.level(run, at);
            level.map_or_else(String::new, |level| (desk.state.words.bench.level)(level, context))
        };
        cells.extend((0..series.factors.len()).map(level));
    });
    cells
}

/// The material of all runs.
pub fn material(desk: Desk, planned: &PlannedSeries) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let none = SeriesDraft::default();
    let rows = desk.basis.with(|basis| {
        let draft = basis.series.as_ref().unwrap_or(&none);
        let row = |needed: &crate::domain::trial::series::material::Needed| {
            vec![
                (state.words.bench.material)(needed.material, draft, &basis.recipe),
                shown(state, Kind::BenchMass, needed.mass.value),
                needed.volume.map_or_else(String::new, |volume| shown(state, Kind::BenchVolume, volume.value)),
            ]
        };
        planned.needed.iter().map(row).collect::<Vec<_>>()
    });
    let head = [page.material_name, page.mass, page.volume].map(str::to_owned);
    table(page.material, &head, rows)
}
