//! Two revisions side by side: what was typed differently, and what that does to the doses. Two heads
//! of one recipe are made one here, thing by thing.

use crate::browser::element::{El, Part, View, button, el};
use crate::browser::graph::*;
use crate::domain::recipe::difference::{Difference, LiquidChoice, differences};
use crate::domain::{Case, Draft, Field, Figure, LiquidFigure, LiquidId, work_out};
use crate::record::{Revision, RevisionId};
use crate::ui::field::number_text::in_box;
use crate::ui::part::amount::{joined, with_unit};
use crate::ui::part::save::when;
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

/// What stands side by side, the newer one second.
#[derive(Clone, Copy)]
pub struct Pair {
    /// The older one.
    pub one: RevisionId,
    /// The newer one.
    pub other: RevisionId,
    /// Whether both are heads, to be made one.
    pub heads: bool,
}

/// The two tables, and for two heads the choice.
pub fn differences_of(pair: Pair) -> View {
    let state = state();
    let words = &state.words.library_page;
    let both =
        state.library.with_untracked(|library| Some((library.revision(pair.one)?, library.revision(pair.other)?)));
    let Some((one, other)) = both else { return el("p").child(words.no_revision).view() };
    let (old, new) = (&one.content().draft, &other.content().draft);
    let found = differences(old, new);
    let taken = RwSignal::new(vec![false; found.len()]);
    let texts = [
        (words.new_name, &one.content().name, &other.content().name),
        (state.words.recipe_page.note, &one.content().note, &other.content().note),
    ];
    let titles = texts.into_iter().filter(|(_, old, new)| old != new);
    let titles = titles.map(|(name, old, new)| row(name.to_owned(), old.clone(), new.clone()));
    let typed = found.iter().enumerate().map(|(at, difference)| {
        let name = name(state, *difference, old, new);
        let label = format!("{}: {name}", words.take_older);
        let cells = row(name, told(state, *difference, old), told(state, *difference, new));
        cells.child(pair.heads.then(|| {
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
    let heading = |revision: &Revision| {
        let content = revision.content();
        joined(&when(content.saved_at), &content.author)
    };
    let headings = || {
        el("tr")
            .child(el("td"))
            .child(el("th").set("scope", "col").child(heading(&one)))
            .child(el("th").set("scope", "col").child(heading(&other)))
    };
    let ticks = pair.heads.then(|| el("th").set("scope", "col").child(words.take_older));
    let nothing = typed.is_empty().then(|| el("p").child(words.no_difference));
    let table = (!typed.is_empty()).then(|| {
        scrolled(words.differences, el("table").child(el("thead").child(headings().child(ticks))).child(body(typed)))
    });
    let moved = moved(state, old, new);
    let figures = (!moved.is_empty()).then(|| {
        let rows = moved.into_iter().map(|(name, old, new)| row(name, old, new)).collect();
        scrolled(words.figures_differ, el("table").child(el("thead").child(headings())).child(body(rows)))
    });
    let same = figures.is_none().then(|| el("p").child(words.figures_same));
    let save = pair.heads.then(|| {
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

/// The draft of the two that has the liquid.
fn having<'a>(id: LiquidId, old: &'a Draft, new: &'a Draft) -> &'a Draft {
    if old.liquid(id).is_some() { old } else { new }
}

fn liquid(state: State, id: LiquidId, draft: &Draft) -> String {
    draft.liquid(id).map(|liquid| (state.words.liquid)(liquid).into_owned()).unwrap_or_default()
}

fn name(state: State, difference: Difference, old: &Draft, new: &Draft) -> String {
    let words = &state.words.recipe_page;
    match difference {
        Difference::FeedWay => words.feed_way.to_owned(),
        Difference::WaterWay => words.water_way.to_owned(),
        Difference::SprayedFaces => words.sprayed_faces.to_owned(),
        Difference::Furnish => words.furnish.to_owned(),
        Difference::BoardKind => words.board_kind.to_owned(),
        Difference::Entry(field) => (state.words.field_name)(field, new),
        Difference::Liquid(id) => liquid(state, id, having(id, old, new)),
        Difference::Choice(id, choice) => {
            let what = match choice {
                LiquidChoice::Name => words.liquid_name,
                LiquidChoice::Role => words.liquid_role,
                LiquidChoice::Substance => words.liquid_substance,
                LiquidChoice::DoseWay => words.dose_way,
                LiquidChoice::Source => words.liquid_source,
            };
            format!("{}: {what}", liquid(state, id, new))
        }
    }
}

/// What a draft says in one thing.
fn told(state: State, difference: Difference, draft: &Draft) -> String {
    let words = state.words;
    match difference {
        Difference::FeedWay => (words.feed_way)(draft.feed_way).to_owned(),
        Difference::WaterWay => (words.water_way)(draft.water_way).to_owned(),
        Difference::SprayedFaces => (words.faces)(draft.sprayed_faces).to_owned(),
        Difference::Furnish => (words.furnish)(draft.furnish).to_owned(),
        Difference::BoardKind => (words.board_kind)(draft.board_kind).to_owned(),
        Difference::Entry(field) => entered(state, draft, field),
        Difference::Liquid(id) => {
            (if draft.liquid(id).is_some() { words.library_page.there } else { words.library_page.not_there })
                .to_owned()
        }
        Difference::Choice(id, choice) => draft.liquid(id).map_or_else(String::new, |liquid| match choice {
            LiquidChoice::Name => liquid.name.clone(),
            LiquidChoice::Role => (words.role)(liquid.role).to_owned(),
            LiquidChoice::Substance => (words.substance)(liquid.substance).to_owned(),
            LiquidChoice::DoseWay => (words.dose_way)(liquid.dose_way, draft).into_owned(),
            LiquidChoice::Source => liquid.source.clone(),
        }),
    }
}

fn entered(state: State, draft: &Draft, field: Field) -> String {
    let Some(entry) = draft.entry(field).filter(|entry| !entry.is_blank()) else {
        return state.words.tools.no_figure.to_owned();
    };
    let (kind, units) = (draft.kind(field), state.units.get());
    let unit = units.unit(kind);
    state.currency.with(|currency| joined(&in_box(entry, kind, &units), &unit_shown(unit, currency)))
}

/// The figures that read differently: name, old, new.
fn moved(state: State, old: &Draft, new: &Draft) -> Vec<(String, String, String)> {
    let cases = [old, new].map(|draft| work_out(draft).case);
    let text = |case: &Option<Case>, figure: Figure| {
        let amount = case.as_ref().and_then(|case| case.figure(figure));
        amount.map_or_else(|| state.words.tools.no_figure.to_owned(), |amount| with_unit(state, amount, None))
    };
    let mut ids: Vec<LiquidId> = old.liquids.iter().map(|liquid| liquid.id).collect();
    ids.extend(new.liquids.iter().map(|liquid| liquid.id).filter(|id| old.liquid(*id).is_none()));
    let liquids = ids.into_iter().map(|id| {
        let figure = Figure::Liquid(id, LiquidFigure::Liquid);
        let label = (state.words.figure)(figure).label;
        (format!("{}: {label}", liquid(state, id, having(id, new, old))), figure)
    });
    let figures = FIGURES.into_iter().map(|figure| (figure_name(state, figure), figure));
    let row = |(name, figure)| {
        let [old, new] = [text(&cases[0], figure), text(&cases[1], figure)];
        (old != new).then_some((name, old, new))
    };
    liquids.chain(figures).filter_map(row).collect()
}
