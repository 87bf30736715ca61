//! What a pump is: what it delivers, the scale of its drive, its limits and its nozzles.

use crate::browser::page;
use crate::domain::Grade;
use crate::domain::line::{
    Feeds, LineField, LineFinding, LineFindingKind, LinePlace, Metering, Model, PumpDraft, PumpField, PumpId,
    SettingUnit,
};
use crate::record::limits::LONGEST_NAME;
use crate::t;
use crate::ui::components::{Choice, ChoiceOption, Fold, Mark, TextBox};
use crate::ui::page::line::context::with_context;
use crate::ui::page::line::parts::ties;
use crate::ui::page::line::settings::line_box::{LineFieldBox, LineMessage};
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// The boxes but for those of the line check.
const BOXES: [PumpField; 8] = [
    PumpField::LeastSetting,
    PumpField::MostSetting,
    PumpField::SettingStep,
    PumpField::Share,
    PumpField::Nozzles,
    PumpField::NozzleLeast,
    PumpField::NozzleMost,
    PumpField::PipeVolume,
];

/// The fold.
#[component]
pub fn PumpSetup(
    /// The pump.
    id: PumpId,
    /// Whether it is open at first.
    open: bool,
) -> impl IntoView {
    let state = expect_context::<State>();
    let note = Memo::new(move |_| {
        state
            .line
            .book(|book| {
                book.pump(id).map(|pump| {
                    format!("{} · {}", words::line::setting_unit(pump.unit), words::line::model(pump.model))
                })
            })
            .unwrap_or_default()
    });
    view! {
        <Fold id="pump-setup" title=t!("catch-setup") note=note open=open ready=true>
            <div class="setup">
                <PumpName id=id/>
                <DeliveredBy id=id/>
                <PumpChoice id=id key="unit" label=t!("catch-drive") all=SettingUnit::ALL words=words::line::setting_unit of=|pump| pump.unit put=PumpDraft::set_unit/>
                <PumpChoice id=id key="metering" label=t!("catch-metering") all=Metering::ALL words=words::line::metering of=|pump| pump.metering put=|pump, metering| pump.metering = metering/>
                <PumpChoice id=id key="model" label=t!("catch-model") all=Model::ALL words=words::line::model of=|pump| pump.model put=|pump, model| pump.model = model/>
            </div>
            <div class="setup">{BOXES.iter().map(|part| setup_box(state, LineField::Pump(id, *part))).collect_view()}</div>
            <div class="box-messages">
                {BOXES.iter().map(|part| view! { <LineMessage field=LineField::Pump(id, *part)/> }).collect_view()}
                <PumpMessages id=id/>
            </div>
            <DeletePump id=id/>
        </Fold>
    }
}

/// A box with its hint below it.
fn setup_box(state: State, field: LineField) -> impl IntoView {
    let words = Memo::new(move |_| {
        let words = state.line.book(|book| words::line::field(field, book));
        (words.label.to_owned(), words.hint.to_owned())
    });
    view! {
        <LineFieldBox
            field=field
            label=Signal::derive(move || words.get().0)
            aside=Signal::derive(move || words.get().1)
        />
    }
}

/// What there is to say about the pump and about its boxes beside each other, as it was at the last pause.
#[component]
fn PumpMessages(
    /// The pump.
    id: PumpId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let told = Memo::new(move |before: Option<&Vec<(Grade, String)>>| {
        if state.typing.get()
            && let Some(before) = before
        {
            return before.clone();
        }
        let is_here = |found: &&LineFinding| match (found.place, &found.what) {
            (_, LineFindingKind::Entry(_)) => false,
            (LinePlace::Pump(pump) | LinePlace::Field(LineField::Pump(pump, _)), _) => pump == id,
            _ => false,
        };
        let found = state.line.checked.with(|line| line.findings.iter().filter(is_here).cloned().collect::<Vec<_>>());
        let told = |found: &LineFinding| {
            let message = with_context(state, |context| words::line::finding(found, context));
            (found.grade, format!("{} {}", message.what, message.fix))
        };
        found.iter().map(told).collect()
    });
    let line = |(grade, words): (Grade, String)| view! { <p><Mark grade=grade/> " " {words}</p> };
    move || told.get().into_iter().map(line).collect_view()
}

#[component]
fn PumpName(
    /// The pump.
    id: PumpId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let name =
        Memo::new(move |_| state.line.book(|book| book.pump(id).map(|pump| pump.name.clone()).unwrap_or_default()));
    let put = Callback::new(move |text: String| {
        state.line.type_into(format!("pump-name-{}", id.0), |book| {
            if let Some(pump) = book.pump_mut(id) {
                pump.name = text;
            }
        });
    });
    view! {
        <TextBox
            id=format!("pump-name-{}", id.0)
            label=t!("catch-pump-name")
            value=name
            longest=LONGEST_NAME
            on_input=put
            on_leave=Callback::new(move |()| state.leave_line())
        />
    }
}

/// What the pump delivers: a liquid of the recipe or water, or what it was tied to before.
#[component]
fn DeliveredBy(
    /// The pump.
    id: PumpId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let feeds = Memo::new(move |_| state.line.book(|book| book.pump(id).map(|pump| pump.feeds.clone())));
    let offered = Memo::new(move |_| ties(state, feeds.get()));
    let options = Memo::new(move |_| {
        let option = |(at, (_, words)): (usize, (Feeds, String))| ChoiceOption::new(at.to_string(), words);
        offered.get().into_iter().enumerate().map(option).collect::<Vec<_>>()
    });
    let value = Memo::new(move |_| {
        let place = feeds.with(|own| {
            let own = own.as_ref()?;
            offered.with(|all| all.iter().position(|(other, _)| other.same(own)))
        });
        place.unwrap_or(0).to_string()
    });
    let choose = Callback::new(move |at: String| {
        let chosen = at
            .parse()
            .ok()
            .and_then(|at: usize| offered.with_untracked(|all| all.get(at).map(|(feeds, _)| feeds.clone())));
        if let Some(feeds) = chosen {
            state.line.edit(|book| {
                if let Some(pump) = book.pump_mut(id) {
                    pump.feeds = feeds;
                }
            });
        }
    });
    view! {
        <Choice id=format!("pump-feeds-{}", id.0) name=t!("catch-delivers") labelled=true options=options value=value on_choose=choose/>
    }
}

/// A choice of a pump among the values of a type.
#[component]
fn PumpChoice<T>(
    /// The pump.
    id: PumpId,
    /// The end of its id on the page.
    key: &'static str,
    /// Its label.
    label: String,
    /// What is offered.
    all: &'static [T],
    /// The words of each.
    words: fn(T) -> &'static str,
    /// What is chosen.
    of: fn(&PumpDraft) -> T,
    /// Chooses.
    put: fn(&mut PumpDraft, T),
) -> impl IntoView
where
    T: Copy + PartialEq + Send + Sync + 'static,
{
    let state = expect_context::<State>();
    let value = Memo::new(move |_| {
        let chosen = state.line.book(|book| book.pump(id).map(of));
        all.iter().position(|each| Some(*each) == chosen).unwrap_or(0).to_string()
    });
    let options: Vec<ChoiceOption> =
        all.iter().enumerate().map(|(at, each)| ChoiceOption::new(at.to_string(), words(*each))).collect();
    let choose = Callback::new(move |at: String| {
        if let Some(chosen) = at.parse().ok().and_then(|at: usize| all.get(at)) {
            state.line.edit(|book| {
                if let Some(pump) = book.pump_mut(id) {
                    put(pump, *chosen);
                }
            });
        }
    });
    view! { <Choice id=format!("pump-{key}-{}", id.0) name=label labelled=true options=options value=value on_choose=choose/> }
}

#[component]
fn DeletePump(
    /// The pump.
    id: PumpId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let delete = move |_| {
        let deleted = state.line.change(|record| record.book.pumps.retain(|pump| pump.id != id));
        state.line.pump.set(None);
        state.tell_undo(t!("catch-pump-deleted"), move || {
            state.line.take_back(&deleted);
            state.line.pump.set(Some(id));
        });
        request_animation_frame(|| page::focus("add-pump"));
    };
    view! { <p><button type="button" on:click=delete>{t!("catch-delete-pump")}</button></p> }
}
