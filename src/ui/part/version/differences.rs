//! Two revisions side by side, or one and what is on the page: what was typed differently, and what that does to the doses.
//! Two heads of one recipe are made one here, thing by thing.

use super::{Seen, line};
use crate::browser::element::{El, Part, View, button, el};
use crate::browser::graph::*;
use crate::domain::recipe::difference::{Difference, LiquidChoice, differences};
use crate::domain::recipe::liquid_pairs::LiquidPairs;
use crate::domain::{Case, Draft, Field, Figure, LiquidFigure, LiquidId, work_out};
use crate::record::content::revision::Title;
use crate::record::{RevisionId, Version};
use crate::ui::field::number_text::in_box;
use crate::ui::part::amount::{joined, with_unit};
use crate::ui::part::working::figure_name;
use crate::ui::signal::RwSignal;
use crate::ui::state::{State, state};
use crate::ui::text::unit_shown;

/// What the figures of the comparison are, besides those of the liquids.
const FIGURES: [Figure; 9] = [
    Figure::WaterDose,
    Figure::MatMoisture,
    Figure::MatWet,
    Figure::MatOvenDry,
    Figure::Fibre,
    Figure::LineSpeed,
    Figure::PressFactor,
    Figure::FinishedVolume,
    Figure::Cost,
];

/// Two revisions, the later one second.
#[derive(Clone, Copy)]
pub struct Pair {
    /// The earlier one.
    pub one: RevisionId,
    /// The later one.
    pub other: RevisionId,
    /// Whether both are heads, to be made one.
    pub heads: bool,
}

/// One of the two that are compared.
pub struct Side {
    heading: String,
    title: Title,
    draft: Draft,
}

impl Side {
    /// A saved revision; `None` where it cannot be read.
    #[must_use]
    pub fn of_revision(state: State, id: RevisionId) -> Option<Self> {
        state.library.with_untracked(|library| {
            let revision = library.revision(id)?;
            let seen = library.version(id).as_ref().map(|version: &Version<'_>| Seen::from(version))?;
            Some(Self { heading: line(state, &seen), title: revision.title(), draft: revision.into_content().draft })
        })
    }

    /// What is on the page.
    #[must_use]
    pub fn of_page(state: State) -> Self {
        let page = state.current_recipe();
        Self { heading: state.words.versions.on_page.to_owned(), title: page.title, draft: page.draft }
    }
}

/// Two revisions beside each other, and for two heads the choice.
pub fn differences_of(pair: Pair) -> View {
    let state = state();
    match (Side::of_revision(state, pair.one), Side::of_revision(state, pair.other)) {
        (Some(old), Some(new)) => tables(state, &old, &new, pair.heads.then_some(pair)),
        _ => el("p").child(state.words.library_page.no_revision).view(),
    }
}

/// Two sides beside each other.
pub fn compared(state: State, old: &Side, new: &Side) -> View {
    tables(state, old, new, None)
}

/// The two tables; with a pair of heads to be made one also the choice.
fn tables(state: State, one: &Side, other: &Side, heads: Option<Pair>) -> View {
    let words = &state.words.library_page;
    let (old, new) = (&one.draft, &other.draft);
    let found = differences(old, new);
    let taken = RwSignal::new(vec![false; found.len()]);
    let texts = [
        (words.new_name, &one.title.name, &other.title.name),
        (state.words.recipe_page.note, &one.title.note, &other.title.note),
    ];
    let titles = texts.into_iter().filter(|(_, old, new)| old != new);
    let titles = titles.map(|(name, old, new)| row(name.to_owned(), old.clone(), new.clone()));
    let typed = found.iter().enumerate().map(|(at, difference)| {
        let Told { name, old, new } = told(state, *difference, old, new);
        let label = format!("{}: {name}", words.take_older);
        row(name, old, new).child(heads.map(|_| {
            let tick = el("input")
                .set("type", "checkbox")
                .set("aria-label", label)
                .property("checked", move || taken.with(|taken| taken.get(at) == Some(&true)))
                .on("change", move |event| {
                    let now = event_target_checked(&event);
                    taken.update(|taken| taken.iter_mut().skip(at).take(1).for_each(|taken| *taken = now));
                });
            el("td").child(tick)
        }))
    });
    let typed: Vec<El> = titles.collect::<Vec<_>>().into_iter().chain(typed).collect();
    let heading = |side: &Side| el("th").set("scope", "col").child(side.heading.clone());
    let headings = || el("tr").child(el("td")).child(heading(one)).child(heading(other));
    let ticks = heads.map(|_| el("th").set("scope", "col").child(words.take_older));
    let nothing = typed.is_empty().then(|| el("p").child(words.no_difference));
    let table = (!typed.is_empty()).then(|| {
        scrolled(words.differences, el("table").child(el("thead").child(headings().child(ticks))).child(body(typed)))
    });
    let moved = moved(state, old, new);
    let figures = (!moved.is_empty()).then(|| {
        let rows = moved.into_iter().map(|Told { name, old, new }| row(name, old, new)).collect();
        scrolled(words.figures_differ, el("table").child(el("thead").child(headings())).child(body(rows)))
    });
    let same = figures.is_none().then(|| el("p").child(words.figures_same));
    let save = heads.map(|pair| {
        let merge = move || state.merge_heads(pair.other, pair.one, &taken.get_untracked());
        el("div").class("actions").child(button().class("primary").on_click(merge).child(words.make_one))
    });
    el("div").class("differences").child(nothing).child(table).child(save).child(figures).child(same).view()
}

fn scrolled(title: &'static str, table: El) -> El {
    el("div")
        .class("scroll")
        .set("tabindex", "0")
        .set("role", "region")
        .set("aria-label", title)
        .child(table.child(el("caption").child(title)))
}

fn body(rows: Vec<El>) -> El {
    el("tbody").child(rows)
}

fn row(name: String, old: String, new: String) -> El {
    el("tr").child(el("th").set("scope", "row").child(name)).child(el("td").child(old)).child(el("td").child(new))
}

/// One line of a table.
struct Told {
    name: String,
    old: String,
    new: String,
}

fn liquid(state: State, id: LiquidId, draft: &Draft) -> String {
    draft.liquid(id).map(|liquid| (state.words.liquid)(liquid).into_owned()).unwrap_or_default()
}

/// What a difference is called, and what both say.
fn told(state: State, difference: Difference, old: &Draft, new: &Draft) -> Told {
    let words = state.words;
    let page = &words.recipe_page;
    let both =
        |name: &str, say: &dyn Fn(&Draft) -> String| Told { name: name.to_owned(), old: say(old), new: say(new) };
    let (there, not_there) = (words.library_page.there.to_owned(), words.library_page.not_there.to_owned());
    match difference {
        Difference::FeedWay => both(page.feed_way, &|draft| (words.feed_way)(draft.feed_way).to_owned()),
        Difference::SprayedFaces => both(page.sprayed_faces, &|draft| (words.faces)(draft.sprayed_faces).to_owned()),
        Difference::WaterWay => both(page.water_way, &|draft| (words.water_way)(draft.water_way).to_owned()),
        Difference::Furnish => both(page.furnish, &|draft| (words.furnish)(draft.furnish).to_owned()),
        Difference::BoardKind => both(page.board_kind, &|draft| (words.board_kind)(draft.board_kind).to_owned()),
        Difference::Entry(field) => both(&(words.field_name)(field, new), &|draft| entered(state, draft, field)),
        Difference::LiquidEntry(pair, part) => Told {
            name: (words.field_name)(Field::Liquid(pair.new, part), new),
            old: entered(state, old, Field::Liquid(pair.old, part)),
            new: entered(state, new, Field::Liquid(pair.new, part)),
        },
        Difference::Choice(pair, choice) => {
            let what = match choice {
                LiquidChoice::Name => page.liquid_name,
                LiquidChoice::Role => page.liquid_role,
                LiquidChoice::Substance => page.liquid_substance,
                LiquidChoice::DoseWay => page.dose_way,
                LiquidChoice::Source => page.liquid_source,
            };
            Told {
                name: format!("{}: {what}", liquid(state, pair.new, new)),
                old: chosen(state, old, pair.old, choice),
                new: chosen(state, new, pair.new, choice),
            }
        }
        Difference::Replaced(pair) => {
            let role = new.liquid(pair.new).map_or("", |liquid| (words.role)(liquid.role));
            Told {
                name: (words.versions.replaced)(role),
                old: liquid(state, pair.old, old),
                new: liquid(state, pair.new, new),
            }
        }
        Difference::Removed(id) => Told { name: liquid(state, id, old), old: there, new: not_there },
        Difference::Added(id) => Told { name: liquid(state, id, new), old: not_there, new: there },
    }
}

/// What a draft says in one choice about a liquid.
fn chosen(state: State, draft: &Draft, id: LiquidId, choice: LiquidChoice) -> String {
    let words = state.words;
    draft.liquid(id).map_or_else(String::new, |liquid| match choice {
        LiquidChoice::Name => liquid.name.clone(),
        LiquidChoice::Role => (words.role)(liquid.role).to_owned(),
        LiquidChoice::Substance => (words.substance)(liquid.substance).to_owned(),
        LiquidChoice::DoseWay => (words.dose_way)(liquid.dose_way, draft).into_owned(),
        LiquidChoice::Source => liquid.source.clone(),
    })
}

fn entered(state: State, draft: &Draft, field: Field) -> String {
    let Some(entry) = draft.entry(field).filter(|entry| !entry.is_blank()) else {
        return state.words.tools.no_figure.to_owned();
    };
    let (kind, units) = (draft.kind(field), state.units.get());
    let unit = units.unit(kind);
    state.currency.with(|currency| joined(&in_box(entry, kind, &units), &unit_shown(unit, currency)))
}

/// The figures that read differently.
fn moved(state: State, old: &Draft, new: &Draft) -> Vec<Told> {
    let (old_case, new_case) = (work_out(old).case, work_out(new).case);
    let text = |case: &Option<Case>, figure: Option<Figure>| {
        let amount = case.as_ref().zip(figure).and_then(|(case, figure)| case.figure(figure));
        amount.map_or_else(|| state.words.tools.no_figure.to_owned(), |amount| with_unit(state, amount, None))
    };
    let line = |name: String, in_old: Option<Figure>, in_new: Option<Figure>| {
        let (old, new) = (text(&old_case, in_old), text(&new_case, in_new));
        (old != new).then_some(Told { name, old, new })
    };
    let dose = |id: LiquidId| Figure::Liquid(id, LiquidFigure::Liquid);
    let labelled = |id: LiquidId, name: String| format!("{name}: {}", (state.words.figure)(dose(id)).label);
    let pairs = LiquidPairs::of(old, new);
    let mut lines = Vec::new();
    for pair in &pairs.same {
        let name = labelled(pair.new, liquid(state, pair.new, new));
        lines.extend(line(name, Some(dose(pair.old)), Some(dose(pair.new))));
    }
    let gone = pairs.replaced.iter().map(|pair| pair.old).chain(pairs.removed.iter().copied());
    for id in gone {
        lines.extend(line(labelled(id, liquid(state, id, old)), Some(dose(id)), None));
    }
    let come = pairs.replaced.iter().map(|pair| pair.new).chain(pairs.added.iter().copied());
    for id in come {
        lines.extend(line(labelled(id, liquid(state, id, new)), None, Some(dose(id))));
    }
    lines.extend(FIGURES.into_iter().filter_map(|figure| line(figure_name(state, figure), Some(figure), Some(figure))));
    lines
}
