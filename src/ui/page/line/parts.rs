//! What the sections of the line share.

use super::context::with_context;
use crate::browser::element::{Part, View, button, el};
use crate::browser::graph::*;
use crate::browser::page;
use crate::domain::Entry;
use crate::domain::line::limit::limit;
use crate::domain::line::{
    Feeds, LineBook, LineField, LineFigure, LineFinding, LineFindingKind, LineOrigin, LinePlace, LineWorking, Setting,
    SettingUnit, Tie, on_line,
};
use crate::quantity::{Amount, Unit};
use crate::ui::field::choice::{self, Choice};
use crate::ui::field::loose::{self, LooseBox};
use crate::ui::field::text;
use crate::ui::part::amount::with_unit;
use crate::ui::part::finding;
use crate::ui::part::working::{origin_name, told};
use crate::ui::signal::{Signal, memo};
use crate::ui::state::State;
use crate::ui::text::FieldWords;

// --- boxes ---------------------------------------------------------------------------------------

/// A box for a number of the line. `hint` shows what the box has to say about itself.
pub fn number(state: State, field: LineField, hint: bool) -> View {
    let (words, kind, limit) = state.line.record.with_untracked(|record| {
        let book = &record.book;
        ((state.words.line.field)(field, book), book.kind(field), limit(field, book))
    });
    loose::number(LooseBox {
        key: field.key(),
        words: FieldWords { hint: if hint { words.hint } else { "" }, ..words },
        named: None,
        kind,
        limit,
        entry: memo(move || {
            state.line.book(|book| book.entry(field).cloned()).unwrap_or_else(|| Entry::empty(Unit::One))
        }),
        put: Callback::new(move |entry| {
            state.line.type_into(field.key(), |book| {
                if let Some(place) = book.entry_mut(field) {
                    *place = entry;
                }
                state.note_line_entry(book, field);
            });
        }),
    })
}

/// Several boxes side by side.
pub fn numbers(state: State, fields: impl IntoIterator<Item = LineField>) -> View {
    el("div").class("fields").child(fields.into_iter().map(|field| number(state, field, true)).collect::<View>()).view()
}

/// A box for a line of text.
pub fn text_box(
    state: State,
    id: String,
    label: &'static str,
    now: fn(&LineBook, u16) -> String,
    put: fn(&mut LineBook, u16, String),
    of: u16,
) -> View {
    let shown = move || state.line.book(|book| now(book, of));
    let session = id.clone();
    text::plain(id, label, shown, move |text| state.line.type_into(session.clone(), |book| put(book, of, text))).view()
}

/// A choice, each thing by its place among what is offered.
pub fn choose(
    state: State,
    id: String,
    label: &'static str,
    offered: Signal<Vec<Choice>>,
    now: impl Fn(&LineBook) -> usize + Send + Sync + 'static,
    put: impl Fn(&mut LineBook, usize) + Send + Sync + 'static,
) -> View {
    let now = memo(move || state.line.book(&now).to_string());
    let choose = Callback::new(move |chosen: String| {
        if let Ok(at) = chosen.parse() {
            state.line.edit(|book| put(book, at));
        }
    });
    choice::labelled(id, label.to_owned().into(), offered, now, choose)
}

/// What is offered, numbered.
pub fn numbered(words: impl IntoIterator<Item = String>) -> Vec<Choice> {
    words.into_iter().enumerate().map(|(at, words)| (at.to_string(), words)).collect()
}

/// What is always offered alike.
pub fn offered<T: Copy>(all: &[T], words: fn(T) -> &'static str) -> Signal<Vec<Choice>> {
    Signal::stored(numbered(all.iter().map(|each| words(*each).to_owned())))
}

/// What a pump or a tank can be tied to: what the recipe has, and what it is tied to now. The first that is
/// the same stands for it.
pub fn ties(state: State, now: Option<Feeds>) -> Vec<(Feeds, String)> {
    state.draft.with(|draft| {
        let mut all: Vec<(Feeds, String)> = Vec::new();
        for liquid in &draft.liquids {
            let name = (state.words.liquid)(liquid).into_owned();
            all.push((Feeds::Liquid(Tie::to(liquid)), name));
        }
        all.push((Feeds::Water, state.words.line_page.water.to_owned()));
        all.push((Feeds::FaceWater, state.words.line_page.face_water.to_owned()));
        for liquid in &draft.liquids {
            let name = (state.words.liquid)(liquid);
            all.push((Feeds::Thinning(Tie::to(liquid)), format!("{} {name}", state.words.line_page.thinning_of)));
        }
        if let Some(now) = now.filter(|now| !all.iter().any(|(other, _)| other.same(now))) {
            let name = match &now {
                Feeds::Liquid(tie) | Feeds::Thinning(tie) if tie.name.is_empty() => (state.words.role)(tie.role),
                Feeds::Liquid(tie) | Feeds::Thinning(tie) => &tie.name,
                Feeds::Water => state.words.line_page.water,
                Feeds::FaceWater => state.words.line_page.face_water,
            };
            let name = format!("{name} ({})", state.words.line_page.not_in_recipe);
            all.push((now, name));
        }
        all
    })
}

/// A button that removes something, named with what it removes.
pub fn remove(state: State, name: String, act: impl Fn() + 'static) -> View {
    let verb = state.words.tools.remove;
    button().set("aria-label", format!("{verb} {name}")).on_click(act).child(verb).view()
}

// --- figures -------------------------------------------------------------------------------------

/// An amount with its unit.
pub fn shown(state: State, figure: LineFigure, base: f64) -> String {
    with_unit(state, Amount::from_base(figure.kind(), base), None)
}

/// A setting with its unit.
pub fn setting(state: State, setting: Setting, unit: SettingUnit) -> String {
    with_unit(state, setting.amount(unit), None)
}

/// A figure in its cell: label, value, and its working on demand. `scope` tells the pump or tank.
pub fn figure(state: State, scope: &str, figure: LineFigure, value: String, working: Option<LineWorking>) -> View {
    let words = (state.words.line.figure)(figure);
    cell(state, format!("{scope}.{}", figure.key()), (words.label, words.note), value, working)
}

/// The same under another label.
pub fn cell(
    state: State,
    key: String,
    (label, note): (&'static str, &'static str),
    value: String,
    working: Option<LineWorking>,
) -> View {
    let open = state.line.open;
    let (own, other) = (key.clone(), key.clone());
    let is_open = move || open.with(|open| *open == own);
    let flip = move || {
        let own = other.clone();
        open.update(|open| *open = if *open == own { String::new() } else { own });
    };
    let (label_id, working_id) = (format!("figure-{key}"), format!("working-{key}"));
    let value = el("span").set("data-figure", key).child(value);
    let described = working.map(|working| {
        let (shown, expanded) = (is_open.clone(), is_open.clone());
        (
            el("div")
                .class("working")
                .set("id", working_id.clone())
                .set("hidden", move || !expanded())
                .child(move || shown().then(|| told(state, &working, |origin| origin_of(state, *origin)))),
            working_id,
        )
    });
    let opened = is_open.clone();
    let (value, working) = match described {
        Some((working, id)) => (
            button()
                .class("value")
                .set("title", state.words.recipe_page.show_working)
                .set("aria-describedby", label_id.clone())
                .set("aria-expanded", move || if is_open() { "true" } else { "false" })
                .set("aria-controls", id)
                .on_click(flip)
                .child(value),
            Some(working),
        ),
        None => (el("span").class("value").child(value), None),
    };
    el("div")
        .class("figure")
        .class_if("open", opened)
        .child(
            el("dt")
                .set("id", label_id)
                .child(label)
                .child((!note.is_empty()).then(|| el("span").class("note").child(note))),
        )
        .child(el("dd").child(value).child(working))
        .view()
}

/// What a number put in is, and the way to where it was entered.
fn origin_of(state: State, origin: LineOrigin) -> View {
    match origin {
        LineOrigin::Recipe(origin) => state.draft.with(|draft| origin_name(state, origin, draft, false)),
        LineOrigin::Figure(figure) => (state.words.line.figure)(figure).label.view(),
        LineOrigin::Entry(field) => {
            let name = with_context(state, |context| (state.words.line.field_name)(field, context));
            let go = move || {
                state.line.show_field(field);
                request_animation_frame(move || page::focus_field(&field.key()));
            };
            button().class("link").on_click(go).child(name).view()
        }
    }
}

// --- findings ------------------------------------------------------------------------------------

/// Findings in words. What is wrong with an entry is told at its box.
pub fn findings<'a>(state: State, findings: impl IntoIterator<Item = &'a LineFinding>) -> View {
    let at_its_box = |finding: &&LineFinding| {
        !(matches!(finding.place, LinePlace::Field(_)) && matches!(finding.what, LineFindingKind::Entry(_)))
    };
    let say = |found: &LineFinding| {
        finding::told(found.grade, with_context(state, |context| (state.words.line.finding)(found, context)))
    };
    findings.into_iter().filter(at_its_box).map(say).collect()
}

/// A table in what scrolls around it.
pub fn table(caption: &str, heads: &[&'static str], rows: View) -> View {
    let head = |words: &&'static str| el("th").set("scope", "col").child(*words);
    el("div")
        .class("scroll")
        .set("tabindex", "0")
        .set("role", "region")
        .set("aria-label", caption.to_owned())
        .child(
            el("table")
                .child(el("caption").child(caption.to_owned()))
                .child(el("thead").child(el("tr").child(heads.iter().map(head).collect::<View>())))
                .child(el("tbody").child(rows)),
        )
        .view()
}

/// A row of such a table: the first cell is its head.
pub fn table_row(head: View, cells: impl IntoIterator<Item = View>) -> View {
    el("tr")
        .child(el("th").set("scope", "row").child(head))
        .child(cells.into_iter().map(|cell| el("td").child(cell)).collect::<View>())
        .view()
}

/// What keeps the recipe off the line, when [`solved`](super::context::solved) has nothing.
pub fn off_line(state: State) -> View {
    let why = state.shown.with(|shown| on_line(shown.case.as_ref()).err());
    findings(state, &why)
}
