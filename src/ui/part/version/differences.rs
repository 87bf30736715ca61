//! Two revisions side by side, or one and what is on the page: what was typed differently, and what that does to the doses.
//! Two heads of one recipe are made one here, thing by thing.

use super::{Seen, line};
use crate::domain::recipe::difference::{Difference, LiquidChoice, differences};
use crate::domain::recipe::liquid_pairs::LiquidPairs;
use crate::domain::{Case, Draft, Field, Figure, LiquidFigure, LiquidId, work_out};
use crate::record::content::revision::Title;
use crate::record::{RevisionId, Version};
use crate::ui::part::amount::{joined, with_unit};
use crate::ui::part::entered::entered_number;
use crate::ui::part::working::figure_name;
use crate::ui::state::State;
use crate::ui::text::{unit_shown, words};
use crate::{label, t};
use leptos::prelude::*;

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
            Some(Self { heading: line(&seen), title: revision.title(), draft: revision.into_content().draft })
        })
    }

    /// What is on the page.
    #[must_use]
    pub fn of_page(state: State) -> Self {
        let page = state.current_recipe();
        Self { heading: t!("record-on-page"), title: page.title, draft: page.draft }
    }
}

/// Two revisions beside each other, and for two heads the choice.
#[component]
pub fn RevisionDifferences(
    /// The revisions.
    pair: Pair,
) -> impl IntoView {
    let state = expect_context::<State>();
    match (Side::of_revision(state, pair.one), Side::of_revision(state, pair.other)) {
        (Some(old), Some(new)) => view! { <Differences old=old new=new heads=pair.heads.then_some(pair)/> }.into_any(),
        _ => view! { <p>{t!("record-no-revision")}</p> }.into_any(),
    }
}

/// A saved revision beside what is on the page.
#[component]
pub fn DifferencesFromPage(
    /// The revision.
    id: RevisionId,
) -> impl IntoView {
    let state = expect_context::<State>();
    match Side::of_revision(state, id) {
        Some(saved) => view! { <Differences old=saved new=Side::of_page(state) heads=None/> }.into_any(),
        None => view! { <p>{t!("record-no-revision")}</p> }.into_any(),
    }
}

/// What was typed differently, and what that does to the figures.
#[component]
fn Differences(
    /// The earlier side.
    old: Side,
    /// The later side.
    new: Side,
    /// Two heads that are to be made one.
    heads: Option<Pair>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let found = differences(&old.draft, &new.draft);
    let taken = RwSignal::new(vec![false; found.len()]);
    let titles = [
        (label!("record-new-name"), &old.title.name, &new.title.name),
        (label!("recipe-note"), &old.title.note, &new.title.note),
    ];
    let titles = titles.into_iter().filter(|(_, old, new)| old != new).map(|(name, old, new)| {
        let told = Told { name: name.to_owned(), old: old.clone(), new: new.clone() };
        view! { <Row told=told/> }.into_any()
    });
    let typed = found.iter().enumerate().map(|(at, difference)| {
        let told = told(state, *difference, &old.draft, &new.draft);
        let tick = heads.is_some().then_some(Tick { at, taken });
        view! { <Row told=told tick=tick/> }.into_any()
    });
    let typed: Vec<AnyView> = titles.chain(typed).collect();
    let is_same = typed.is_empty();
    let moved: Vec<AnyView> =
        moved(state, &old.draft, &new.draft).into_iter().map(|told| view! { <Row told=told/> }.into_any()).collect();
    let headings = [old.heading, new.heading];
    let inputs = (!is_same).then(|| {
        view! { <SideTable title=label!("record-differences") headings=headings.clone() ticks=heads.is_some() rows=typed/> }
    });
    let save = heads.map(|pair| {
        let merge = move |_| state.merge_heads(pair.other, pair.one, &taken.get_untracked());
        view! {
            <div class="actions"><button type="button" class="primary" on:click=merge>{t!("record-merge-heads")}</button></div>
        }
    });
    let figures = if moved.is_empty() {
        view! { <p>{t!("record-figures-same")}</p> }.into_any()
    } else {
        view! { <SideTable title=label!("record-figures-differ") headings=headings ticks=false rows=moved/> }.into_any()
    };
    view! {
        <div class="differences">
            {is_same.then(|| view! { <p>{t!("record-no-difference")}</p> })}
            {inputs}
            {save}
            {figures}
        </div>
    }
}

/// A table with a column a side.
#[component]
fn SideTable(
    /// What it lists.
    title: &'static str,
    /// The two sides.
    headings: [String; 2],
    /// Whether it has a column to tick.
    ticks: bool,
    /// Its rows.
    rows: Vec<AnyView>,
) -> impl IntoView {
    let [old, new] = headings;
    let ticks = ticks.then(|| view! { <th scope="col">{t!("record-take-older")}</th> });
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label=title>
            <table>
                <caption>{title}</caption>
                <thead><tr><td></td><th scope="col">{old}</th><th scope="col">{new}</th>{ticks}</tr></thead>
                <tbody>{rows}</tbody>
            </table>
        </div>
    }
}

/// Which of the differences are taken from the older side.
#[derive(Clone, Copy)]
struct Tick {
    at: usize,
    taken: RwSignal<Vec<bool>>,
}

#[component]
fn Row(
    /// What it says.
    told: Told,
    /// Its tick.
    #[prop(optional_no_strip)]
    tick: Option<Tick>,
) -> impl IntoView {
    let Told { name, old, new } = told;
    let label = t!("record-take-older-of", input = &name);
    let tick = tick.map(|Tick { at, taken }| {
        let put = move |event| {
            let now = event_target_checked(&event);
            taken.update(|taken| taken.iter_mut().skip(at).take(1).for_each(|taken| *taken = now));
        };
        let is_taken = move || taken.with(|taken| taken.get(at) == Some(&true));
        view! { <td><input type="checkbox" aria-label=label prop:checked=is_taken on:change=put/></td> }
    });
    view! { <tr><th scope="row">{name}</th><td>{old}</td><td>{new}</td>{tick}</tr> }
}

/// One line of a table.
struct Told {
    name: String,
    old: String,
    new: String,
}

fn liquid(id: LiquidId, draft: &Draft) -> String {
    draft.liquid(id).map(|liquid| words::liquid(liquid).into_owned()).unwrap_or_default()
}

/// What a difference is called, and what both say.
fn told(state: State, difference: Difference, old: &Draft, new: &Draft) -> Told {
    let both =
        |name: &str, say: &dyn Fn(&Draft) -> String| Told { name: name.to_owned(), old: say(old), new: say(new) };
    let (there, not_there) = (t!("record-in-recipe"), t!("record-not-in-recipe"));
    match difference {
        Difference::FeedWay => {
            both(label!("frame-choice-feed-way"), &|draft| words::feed_way(draft.feed_way).to_owned())
        }
        Difference::SprayedFaces => {
            both(label!("frame-choice-sprayed-faces"), &|draft| words::faces(draft.sprayed_faces).to_owned())
        }
        Difference::WaterWay => {
            both(label!("frame-choice-water-way"), &|draft| words::water_way(draft.water_way).to_owned())
        }
        Difference::Furnish => both(label!("frame-choice-furnish"), &|draft| words::furnish(draft.furnish).to_owned()),
        Difference::BoardKind => {
            both(label!("frame-choice-board-kind"), &|draft| words::board_kind(draft.board_kind).to_owned())
        }
        Difference::Entry(field) => both(&words::field_name(field, new), &|draft| entered_words(state, draft, field)),
        Difference::LiquidEntry(pair, part) => Told {
            name: words::field_name(Field::Liquid(pair.new, part), new),
            old: entered_words(state, old, Field::Liquid(pair.old, part)),
            new: entered_words(state, new, Field::Liquid(pair.new, part)),
        },
        Difference::Choice(pair, choice) => {
            let what = match choice {
                LiquidChoice::Name => label!("frame-choice-liquid-name"),
                LiquidChoice::Role => label!("frame-choice-liquid-role"),
                LiquidChoice::Substance => label!("frame-choice-liquid-substance"),
                LiquidChoice::DoseWay => label!("frame-choice-dose-way"),
                LiquidChoice::Source => label!("frame-choice-liquid-source"),
            };
            Told {
                name: format!("{}: {what}", liquid(pair.new, new)),
                old: chosen(old, pair.old, choice),
                new: chosen(new, pair.new, choice),
            }
        }
        Difference::Replaced(pair) => {
            let role = new.liquid(pair.new).map_or("", |liquid| words::role(liquid.role));
            Told { name: t!("record-replaced", role = role), old: liquid(pair.old, old), new: liquid(pair.new, new) }
        }
        Difference::Removed(id) => Told { name: liquid(id, old), old: there, new: not_there },
        Difference::Added(id) => Told { name: liquid(id, new), old: not_there, new: there },
    }
}

/// What a draft says in one choice about a liquid.
fn chosen(draft: &Draft, id: LiquidId, choice: LiquidChoice) -> String {
    draft.liquid(id).map_or_else(String::new, |liquid| match choice {
        LiquidChoice::Name => liquid.name.clone(),
        LiquidChoice::Role => words::role(liquid.role).to_owned(),
        LiquidChoice::Substance => words::substance(liquid.substance).to_owned(),
        LiquidChoice::DoseWay => words::dose_way(liquid.dose_way, draft).into_owned(),
        LiquidChoice::Source => liquid.source.clone(),
    })
}

/// What was entered, with its unit.
fn entered_words(state: State, draft: &Draft, field: Field) -> String {
    entered_number(state, draft, field).map_or_else(
        || t!("frame-no-figure"),
        |(number, unit)| state.currency.with(|currency| joined(&number, &unit_shown(unit, currency))),
    )
}

/// The figures that read differently.
fn moved(state: State, old: &Draft, new: &Draft) -> Vec<Told> {
    let (old_case, new_case) = (work_out(old).case, work_out(new).case);
    let text = |case: &Option<Case>, figure: Option<Figure>| {
        let amount = case.as_ref().zip(figure).and_then(|(case, figure)| case.figure(figure));
        amount.map_or_else(|| t!("frame-no-figure"), |amount| with_unit(state, amount, None))
    };
    let line = |name: String, in_old: Option<Figure>, in_new: Option<Figure>| {
        let (old, new) = (text(&old_case, in_old), text(&new_case, in_new));
        (old != new).then_some(Told { name, old, new })
    };
    let dose = |id: LiquidId| Figure::Liquid(id, LiquidFigure::Liquid);
    let labelled = |id: LiquidId, name: String| format!("{name}: {}", words::figure(dose(id)).label);
    let pairs = LiquidPairs::of(old, new);
    let mut lines = Vec::new();
    for pair in &pairs.same {
        let name = labelled(pair.new, liquid(pair.new, new));
        lines.extend(line(name, Some(dose(pair.old)), Some(dose(pair.new))));
    }
    let gone = pairs.replaced.iter().map(|pair| pair.old).chain(pairs.removed.iter().copied());
    for id in gone {
        lines.extend(line(labelled(id, liquid(id, old)), Some(dose(id)), None));
    }
    let come = pairs.replaced.iter().map(|pair| pair.new).chain(pairs.added.iter().copied());
    for id in come {
        lines.extend(line(labelled(id, liquid(id, new)), None, Some(dose(id))));
    }
    lines.extend(FIGURES.into_iter().filter_map(|figure| line(figure_name(state, figure), Some(figure), Some(figure))));
    lines
}
