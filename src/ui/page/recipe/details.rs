//! More about a liquid: what it is, how it is sprayed, its price and source, its place in the order.

use super::context::{SheetContext, details_button, substance_id, word};
use super::enum_choice::EnumChoice;
use super::field_box::FieldBox;
use super::figure_of::FigureOf;
use crate::browser::page;
use crate::domain::recipe::typical_density::{choose_role, choose_substance};
use crate::domain::{Draft, Field, Figure, LiquidDraft, LiquidField, LiquidFigure, LiquidId, Place, Role, Substance};
use crate::record::limits::{LONGEST_NAME, LONGEST_TEXT};
use crate::t;
use crate::ui::components::{Mark, TextBox};
use crate::ui::state::{Session, State};
use crate::ui::text::words;
use leptos::prelude::*;

/// The details of a liquid.
#[component]
pub fn Details(
    /// The liquid.
    id: LiquidId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SheetContext>();
    let label = move |part| {
        Signal::derive(move || state.draft.with(|draft| words::field(Field::Liquid(id, part), draft).label.to_owned()))
    };
    let said = move || {
        sheet.said_at(Place::Liquid(id)).map(|said| {
            view! {
                <p class="box-messages">
                    <Mark grade=said.finding.grade/> " " <b>{word(said.finding.grade)}</b>
                    " " {said.message.what} " " {said.message.fix}
                </p>
            }
        })
    };
    view! {
        {said}
        <div class="given">
            <SubstanceChoice id=id/>
            <RoleChoice id=id/>
            <LiquidText id=id session=Session::LiquidName(id) label=t!("recipe-liquid-name") key="name" longest=LONGEST_NAME
                read=|liquid| &liquid.name write=|liquid, text| liquid.name = text/>
            <FieldBox field=Field::Liquid(id, LiquidField::SpraySolids) label=label(LiquidField::SpraySolids)/>
            <FieldBox field=Field::Liquid(id, LiquidField::Price) label=label(LiquidField::Price)/>
            <LiquidText id=id session=Session::LiquidSource(id) label=t!("recipe-liquid-source") key="source" longest=LONGEST_TEXT
                read=|liquid| &liquid.source write=|liquid, text| liquid.source = text/>
        </div>
        <SameDose id=id/>
        <OrderButtons id=id/>
    }
}

fn change(state: State, session: Option<Session>, id: LiquidId, change: impl FnOnce(&mut LiquidDraft)) {
    state.edit(session, |draft| {
        if let Some(liquid) = draft.liquid_mut(id) {
            change(liquid);
        }
    });
}

#[component]
fn SubstanceChoice(
    /// The liquid.
    id: LiquidId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let all = Substance::ALL.iter().map(|each| (*each, words::substance(*each).to_owned())).collect::<Vec<_>>();
    let value = Signal::derive(move || state.draft.with(|draft| draft.liquid(id).map(|liquid| liquid.substance)));
    let choose = Callback::new(move |each: Substance| state.edit(None, |draft| choose_substance(draft, id, each)));
    view! { <EnumChoice id=substance_id(id) name=t!("recipe-material") labelled=true all=all value=value on_choose=choose/> }
}

#[component]
fn RoleChoice(
    /// The liquid.
    id: LiquidId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let all = Role::ALL.iter().map(|each| (*each, words::role(*each).to_owned())).collect::<Vec<_>>();
    let value = Signal::derive(move || state.draft.with(|draft| draft.liquid(id).map(|liquid| liquid.role)));
    let choose = Callback::new(move |each: Role| state.edit(None, |draft| choose_role(draft, id, each)));
    view! {
        <EnumChoice id=format!("liquid-role-{}", id.0) name=t!("recipe-function") labelled=true all=all value=value on_choose=choose/>
    }
}

#[component]
fn LiquidText(
    /// The liquid.
    id: LiquidId,
    /// What is typed without a break, to be taken back together.
    session: Session,
    /// Its label.
    #[prop(into)]
    label: String,
    /// The middle of its id.
    key: &'static str,
    /// The longest text, in characters.
    longest: usize,
    /// The text.
    read: fn(&LiquidDraft) -> &String,
    /// Puts a text there.
    write: fn(&mut LiquidDraft, String),
) -> impl IntoView {
    let state = expect_context::<State>();
    let value = Memo::new(move |_| {
        state.draft.with(|draft| draft.liquid(id).map(|liquid| read(liquid).clone()).unwrap_or_default())
    });
    let put = Callback::new(move |text: String| change(state, Some(session), id, |liquid| write(liquid, text)));
    let leave = Callback::new(move |()| state.leave());
    view! {
        <TextBox id=format!("liquid-{key}-{}", id.0) label=label value=value longest=longest on_input=put on_leave=leave/>
    }
}

/// The same dose on the other bases.
#[component]
fn SameDose(
    /// The liquid.
    id: LiquidId,
) -> impl IntoView {
    const FORMS: [LiquidFigure; 3] = [LiquidFigure::SolidsOnFibre, LiquidFigure::LiquidOnFibre, LiquidFigure::Spray];
    let form = move |part| {
        let figure = Figure::Liquid(id, part);
        view! { <li><span class="note">{words::figure(figure).label}</span> " " <FigureOf figure=figure/></li> }
    };
    view! { <ul class="same-dose">{FORMS.map(form).into_iter().collect_view()}</ul> }
}

/// Its place in the order of addition, and the way out of the recipe. The focus stays on what was pressed, or goes to
/// the next row.
#[component]
fn OrderButtons(
    /// The liquid.
    id: LiquidId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SheetContext>();
    let place = move |draft: &Draft| draft.liquids.iter().position(|liquid| liquid.id == id);
    let is_first = Memo::new(move |_| state.draft.with(|draft| place(draft) == Some(0)));
    let is_last =
        Memo::new(move |_| state.draft.with(|draft| place(draft).is_none_or(|at| at + 1 == draft.liquids.len())));
    let shift = move |by: isize, button: String| {
        state.edit(None, |draft| {
            let Some(from) = place(draft) else { return };
            if let Some(to) = from.checked_add_signed(by).filter(|to| *to < draft.liquids.len()) {
                draft.liquids.swap(from, to);
            }
        });
        request_animation_frame(move || page::focus(&button));
    };
    let delete = move |_| {
        let name = state.liquid_name(id);
        let next = state.draft.with_untracked(|draft| {
            let at = place(draft)?;
            draft.liquids.get(at + 1).or_else(|| draft.liquids.get(at.checked_sub(1)?)).map(|liquid| liquid.id)
        });
        sheet.open_liquid.set(None);
        state.edit(None, |draft| draft.liquids.retain(|liquid| liquid.id != id));
        state.tell_step(t!("recipe-liquid-deleted", name = name));
        request_animation_frame(move || page::focus(&next.map_or_else(|| "add-liquid".to_owned(), details_button)));
    };
    let (up, down) = (format!("liquid-up-{}", id.0), format!("liquid-down-{}", id.0));
    let (up_id, down_id) = (up.clone(), down.clone());
    let off = |at_end: bool| at_end.then_some("true");
    view! {
        <div class="order">
            <button type="button" id=up_id aria-disabled=move || off(is_first.get()) on:click=move |_| shift(-1, up.clone())>
                {t!("recipe-move-up")}
            </button>
            <button type="button" id=down_id aria-disabled=move || off(is_last.get()) on:click=move |_| shift(1, down.clone())>
                {t!("recipe-move-down")}
            </button>
            <button type="button" on:click=delete>{t!("recipe-delete-liquid")}</button>
        </div>
    }
}
