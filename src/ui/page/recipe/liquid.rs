//! One liquid on its card.

use crate::browser::element::{Part, View, button, el, svg};
use crate::browser::graph::*;
use crate::browser::page;
use crate::domain::recipe::typical_density::{choose_role, choose_substance};
use crate::domain::{
    DoseWay, Draft, Entry, Field, Figure, LiquidDraft, LiquidField, LiquidFigure, LiquidId, Place, Role, Substance,
};
use crate::quantity::format;
use crate::ui::field::choice::{Choice, labelled};
use crate::ui::field::number::number;
use crate::ui::field::text;
use crate::ui::part::figure;
use crate::ui::part::finding::says;
use crate::ui::signal::{Signal, memo};
use crate::ui::state::{Session, State, state};

/// The card of a liquid.
pub fn card(id: LiquidId) -> View {
    let state = state();
    let words = &state.words.recipe_page;
    let heading = format!("liquid-{}", id.0);
    let labelled_by = heading.clone();
    let name = state.cell(move || state.liquid_name(id));
    let field = move |part| number(Field::Liquid(id, part));
    let findings = state.cell(move || state.said(|finding| finding.place == Place::Liquid(id)));
    el("li")
        .child(
            el("section")
                .class("card")
                .set("aria-labelledby", labelled_by)
                .child(
                    el("header")
                        .child(el("h4").set("id", heading).child(move || name.get()))
                        .child(buttons(state, id, name)),
                )
                .child(move || findings.get().into_iter().map(says).collect::<View>())
                .child(
                    el("div")
                        .class("fields")
                        .child(substance(state, id))
                        .child(role(state, id))
                        .child(field(LiquidField::Dose))
                        .child(dose_way(state, id))
                        .child(other_forms(state, id))
                        .child(field(LiquidField::Solids))
                        .child(field(LiquidField::Density)),
                )
                .child(
                    el("details").class("more").child(el("summary").child(words.advanced)).child(
                        el("div")
                            .class("fields")
                            .child(name_box(state, id))
                            .child(field(LiquidField::SpraySolids))
                            .child(field(LiquidField::Price))
                            .child(source(state, id)),
                    ),
                ),
        )
        .view()
}

fn of<T>(state: State, id: LiquidId, read: impl FnOnce(&LiquidDraft) -> T) -> Option<T> {
    state.draft.with(|draft| draft.liquid(id).map(read))
}

fn change(state: State, session: Option<Session>, id: LiquidId, change: impl FnOnce(&mut LiquidDraft)) {
    state.edit(session, |draft| {
        if let Some(liquid) = draft.liquid_mut(id) {
            change(liquid);
        }
    });
}

// --- place in the order ------------------------------------------------------------------------

fn buttons(state: State, id: LiquidId, name: Signal<String>) -> View {
    let tools = &state.words.tools;
    let place = move |draft: &Draft| draft.liquids.iter().position(|liquid| liquid.id == id);
    let first = state.cell(move || state.draft.with(|draft| place(draft) == Some(0)));
    let last =
        state.cell(move || state.draft.with(|draft| place(draft).is_none_or(|at| at + 1 == draft.liquids.len())));
    let shift = move |by: isize| {
        state.edit(None, |draft| {
            let Some(from) = place(draft) else { return };
            if let Some(to) = from.checked_add_signed(by).filter(|to| *to < draft.liquids.len()) {
                draft.liquids.swap(from, to);
            }
        });
    };
    let remove = move |_| {
        let gone = format!("{}: {}", state.words.recipe_page.liquid_removed, name.get_untracked());
        state.edit(None, |draft| draft.liquids.retain(|liquid| liquid.id != id));
        state.tell_step(gone);
        page::focus("add-liquid");
    };
    let named = move |what: &'static str| move || format!("{what}: {}", name.get());
    el("div")
        .class("order")
        .child(
            button()
                .class("icon")
                .set("aria-label", named(tools.move_up))
                .set("title", tools.move_up)
                .set("aria-disabled", move || first.get().then_some("true"))
                .on_click(move || shift(-1))
                .child(arrow("M8,3L14,11H2Z")),
        )
        .child(
            button()
                .class("icon")
                .set("aria-label", named(tools.move_down))
                .set("title", tools.move_down)
                .set("aria-disabled", move || last.get().then_some("true"))
                .on_click(move || shift(1))
                .child(arrow("M8,13L2,5H14Z")),
        )
        .child(
            button()
                .class("icon")
                .set("aria-label", named(tools.remove))
                .set("title", tools.remove)
                .on("click", remove)
                .child(arrow("M3,4.4L4.4,3L8,6.6L11.6,3L13,4.4L9.4,8L13,11.6L11.6,13L8,9.4L4.4,13L3,11.6L6.6,8Z")),
        )
        .view()
}

fn arrow(outline: &'static str) -> View {
    svg("svg").set("viewBox", "0 0 16 16").set("aria-hidden", "true").child(svg("path").set("d", outline)).view()
}

// --- words -------------------------------------------------------------------------------------

fn name_box(state: State, id: LiquidId) -> View {
    let now = state.cell(move || of(state, id, |liquid| liquid.name.clone()).unwrap_or_default());
    let session = Session::LiquidName(id);
    let put = Callback::new(move |text: String| {
        change(state, Some(session), id, |liquid| liquid.name.clone_from(&text));
    });
    text::line(format!("liquid-name-{}", id.0), state.words.recipe_page.liquid_name, session, now, put)
}

fn source(state: State, id: LiquidId) -> View {
    let now = state.cell(move || of(state, id, |liquid| liquid.source.clone()).unwrap_or_default());
    let session = Session::LiquidSource(id);
    let put = Callback::new(move |text: String| {
        change(state, Some(session), id, |liquid| liquid.source.clone_from(&text));
    });
    text::line(format!("liquid-source-{}", id.0), state.words.recipe_page.liquid_source, session, now, put)
}

// --- choices -----------------------------------------------------------------------------------

/// A choice among the values of a type, each by its place in the list.
fn choice<T>(
    id: String,
    label: &'static str,
    all: &'static [T],
    words: fn(T) -> &'static str,
    now: Signal<Option<T>>,
    choose: Callback<T>,
) -> View
where
    T: Copy + PartialEq + Send + Sync + 'static,
{
    let choices = all.iter().enumerate().map(|(at, each)| (at.to_string(), words(*each).to_owned())).collect();
    let now = memo(move || {
        let now = now.get();
        all.iter().position(|each| Some(*each) == now).map(|at| at.to_string()).unwrap_or_default()
    });
    let choose = Callback::new(move |at: String| {
        if let Some(each) = at.parse().ok().and_then(|at: usize| all.get(at)) {
            choose.run(*each);
        }
    });
    labelled(id, Signal::stored(label.to_owned()), Signal::stored(choices), now, choose)
}

fn role(state: State, id: LiquidId) -> View {
    let now = state.cell(move || of(state, id, |liquid| liquid.role));
    let choose = Callback::new(move |role: Role| state.edit(None, |draft| choose_role(draft, id, role)));
    choice(
        format!("liquid-role-{}", id.0),
        state.words.recipe_page.liquid_role,
        Role::ALL,
        state.words.role,
        now,
        choose,
    )
}

fn substance(state: State, id: LiquidId) -> View {
    let now = state.cell(move || of(state, id, |liquid| liquid.substance));
    let choose = Callback::new(move |substance: Substance| {
        state.edit(None, |draft| choose_substance(draft, id, substance));
    });
    let key = substance_id(id);
    choice(key, state.words.recipe_page.liquid_substance, Substance::ALL, state.words.substance, now, choose)
}

/// The id of the select for what a liquid is made of.
#[must_use]
pub fn substance_id(id: LiquidId) -> String {
    format!("liquid-substance-{}", id.0)
}

fn way_key(way: DoseWay) -> String {
    match way {
        DoseWay::SolidsOnFibre => "solids_on_fibre".to_owned(),
        DoseWay::LiquidOnFibre => "liquid_on_fibre".to_owned(),
        DoseWay::LiquidPerBoard => "liquid_per_board".to_owned(),
        DoseWay::LiquidOnFaces(faces) => format!("on_faces-{}", faces.key()),
        DoseWay::SolidsOnLiquid(base) => format!("on-{}", base.0),
    }
}

fn dose_way(state: State, id: LiquidId) -> View {
    let choices = state.cell(move || {
        state.draft.with(|draft| {
            let words = |way: DoseWay| -> Choice { (way_key(way), (state.words.dose_way)(way, draft).into_owned()) };
            draft.dose_ways(id).into_iter().map(words).collect::<Vec<_>>()
        })
    });
    let now = state.cell(move || of(state, id, |liquid| way_key(liquid.dose_way)).unwrap_or_default());
    let choose = Callback::new(move |key: String| {
        let way = state.draft.with_untracked(|draft| draft.dose_ways(id).into_iter().find(|way| way_key(*way) == key));
        if let Some(way) = way {
            go_over(state, id, way);
        }
    });
    let label = Signal::stored(state.words.recipe_page.dose_way.to_owned());
    labelled(format!("dose-way-{}", id.0), label, choices, now, choose)
}

/// Goes over to another way of entering the dose. The dose itself stays, where it is known.
fn go_over(state: State, id: LiquidId, way: DoseWay) {
    let units = state.units.get_untracked();
    let unit = units.unit(LiquidField::Dose.kind(way));
    let same = state.outcome.with_untracked(|outcome| {
        outcome
            .case
            .as_ref()
            .and_then(|case| case.dose_in(id, way))
            .map(|dose| format::editable(dose.get(unit), units.mark))
    });
    change(state, None, id, |liquid| {
        let kept = LiquidField::Dose.kind(liquid.dose_way) == LiquidField::Dose.kind(way);
        liquid.dose_way = way;
        match &same {
            Some(text) => liquid.dose = Entry::typed(text.as_str(), unit),
            None if kept => {}
            None => liquid.dose = Entry::empty(unit),
        }
    });
}

/// The same dose in the ways that were not chosen.
fn other_forms(state: State, id: LiquidId) -> View {
    const FORMS: [LiquidFigure; 3] =
        [LiquidFigure::SolidsOnFibre, LiquidFigure::LiquidOnFibre, LiquidFigure::PerVolume];
    let texts = state.cell(move || FORMS.map(|part| figure::text(state, Figure::Liquid(id, part))));
    let line = move |(part, text): (LiquidFigure, Option<String>)| {
        let note = (state.words.figure)(Figure::Liquid(id, part)).note;
        text.map(|text| el("li").child(text).text(" ").child(el("span").class("note").child(note)))
    };
    el("div")
        .class("other-forms")
        .child(el("p").child(state.words.recipe_page.other_forms))
        .child(el("ul").child(move || FORMS.into_iter().zip(texts.get()).map(line).collect::<View>()))
        .view()
}
