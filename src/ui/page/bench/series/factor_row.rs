//! The row of a factor: what it changes, its unit, and its levels.

use super::level_box::LevelBox;
use crate::domain::DoseWay;
use crate::domain::trial::SeriesDraft;
use crate::domain::trial::series::draft::MAX_LEVELS;
use crate::domain::trial::series::editing::offered;
use crate::domain::trial::series::factor::OwnFactor;
use crate::domain::trial::series::field::{FactorId, Of, SeriesField};
use crate::domain::trial::series::word::letter;
use crate::quantity::Unit;
use crate::record::content::trial::field::TrialField;
use crate::record::limits::LONGEST_NAME;
use crate::t;
use crate::ui::components::{Menu, TextBox, UnitChoice};
use crate::ui::page::bench::entry::{PlaceChoice, TrialDesk};
use crate::ui::state::State;
use crate::ui::text::{lower_first, unit_short, words};
use leptos::prelude::*;

/// The row, and below it name and unit of a factor that changes nothing computed.
#[component]
pub fn FactorRow(
    /// The factor.
    id: FactorId,
    /// How many levels the factor with the most has.
    levels: Memo<usize>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let bench = state.bench;
    let now = Memo::new(move |_| {
        desk.basis.with(|basis| {
            let series = basis.series.as_ref()?;
            let at = series.factors.iter().position(|factor| factor.id == id)?;
            let factor = series.factors.get(at)?;
            Some((at, factor.of, factor.levels.len()))
        })
    });
    let place = Memo::new(move |_| now.get().map_or(0, |(at, ..)| at));
    let of = Memo::new(move |_| now.get().map(|(_, of, _)| of));
    let count = Memo::new(move |_| now.get().map_or(0, |(.., count)| count));
    let is_own = Memo::new(move |_| matches!(of.get(), Some(Of::Own(_))));
    let name = Signal::derive(move || t!("trial-factor-n", letter = letter(place.get()).to_string()));
    let choices = Memo::new(move |_| {
        desk.basis.with(|basis| {
            let blank = OwnFactor::default();
            let words = |of| words::bench::factor(of, &blank, &basis.recipe);
            offered(&basis.recipe, id).into_iter().map(words).collect::<Vec<_>>()
        })
    });
    let chosen = Memo::new(move |_| {
        desk.basis.with(|basis| offered(&basis.recipe, id).iter().position(|own| Some(*own) == of.get())).unwrap_or(0)
    });
    let choose = Callback::new(move |at: usize| {
        bench.edit(|trial| {
            let Some(of) = offered(&trial.draft, id).get(at).copied() else { return };
            if let Some(series) = &mut trial.series {
                series.choose_factor(id, of, &trial.draft);
            }
        });
    });
    let change = move |change: &dyn Fn(&mut SeriesDraft)| {
        bench.edit(|trial| {
            if let Some(series) = &mut trial.series {
                change(series);
            }
        });
    };
    let add = move |_| {
        bench.edit(|trial| {
            if let Some(series) = &mut trial.series {
                series.add_level(id, &trial.draft);
            }
        });
    };
    let fewer = move |_| {
        change(&|series| {
            if let Some(factor) = series.factor_mut(id) {
                factor.levels.pop();
            }
        });
    };
    let remove = move |_| change(&|series| series.factors.retain(|factor| factor.id != id));
    let level = move |at: usize| {
        let is_there = Memo::new(move |_| at < count.get());
        let named =
            Signal::derive(move || format!("{}, {}", name.get(), lower_first(&t!("trial-level-n", number = at + 1))));
        view! {
            <td data-label=move || t!("trial-level-n", number = at + 1)>
                <Show when=move || is_there.get()>
                    {move || of.get().map(|of| view! { <LevelBox id=id of=of at=u8::try_from(at).unwrap_or(u8::MAX) name=named/> })}
                </Show>
            </td>
        }
    };
    let menu_id: &'static str = menu_id(id);
    view! {
        <tr class="factor">
            <th scope="row" class="l letter"><b>{move || letter(place.get()).to_string()}</b></th>
            <td class="l choose">
                <PlaceChoice id=format!("factor-{}", id.0) name=name offered=choices chosen=chosen on_choose=choose/>
            </td>
            <td class="l unit-basis"><FactorUnit id=id of=of/></td>
            <For each=move || 0..levels.get() key=|at| *at children=level/>
            <td class="more">
                <Menu label=t!("trial-details-of-factor", letter = letter(place.get_untracked()).to_string()) sign="⋯" id=menu_id>
                    <Show when=move || { count.get() < MAX_LEVELS }>
                        <button type="button" on:click=add>{t!("trial-add-level")}</button>
                    </Show>
                    <Show when=move || { count.get() > 2 }>
                        <button type="button" on:click=fewer>{t!("trial-remove-level")}</button>
                    </Show>
                    <button type="button" on:click=remove>{t!("trial-remove-factor")}</button>
                </Menu>
            </td>
        </tr>
        <Show when=move || is_own.get()>
            <tr class="details"><td colspan=move || (levels.get() + 4).to_string()><OwnFactorBoxes id=id/></td></tr>
        </Show>
    }
}

/// The id of a factor's menu. A series has no more factors than that at once.
const fn menu_id(id: FactorId) -> &'static str {
    match id.0 % 16 {
        0 => "factor-menu-0",
        1 => "factor-menu-1",
        2 => "factor-menu-2",
        3 => "factor-menu-3",
        4 => "factor-menu-4",
        5 => "factor-menu-5",
        6 => "factor-menu-6",
        7 => "factor-menu-7",
        8 => "factor-menu-8",
        9 => "factor-menu-9",
        10 => "factor-menu-10",
        11 => "factor-menu-11",
        12 => "factor-menu-12",
        13 => "factor-menu-13",
        14 => "factor-menu-14",
        _ => "factor-menu-15",
    }
}

/// In which unit the levels are, and on what a dose is meant.
#[component]
fn FactorUnit(
    /// The factor.
    id: FactorId,
    /// What it changes.
    of: Memo<Option<Of>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let field = TrialField::Series(SeriesField::Level(id, 0));
    let kind = Memo::new(move |_| state.bench.open.with(|open| open.trial.kind(field)));
    let unit = Memo::new(move |_| state.unit(kind.get()));
    let has_unit = Memo::new(move |_| !matches!(of.get(), None | Some(Of::System | Of::Own(_))));
    let symbol = Callback::new(move |unit: Unit| unit_short(unit, &state.currency.get()));
    let choose = Callback::new(move |unit: Unit| desk.choose_unit(state, kind.get_untracked(), unit));
    let name = Signal::derive(move || {
        desk.basis.with(|basis| {
            of.get().map_or_else(String::new, |of| words::bench::factor(of, &OwnFactor::default(), &basis.recipe))
        })
    });
    let basis = move || {
        let Some(Of::Dose(liquid)) = of.get() else { return String::new() };
        desk.basis.with(|basis| match basis.recipe.liquid(liquid).map(|liquid| liquid.dose_way) {
            Some(DoseWay::SolidsOnFibre) => t!("trial-on-fibre"),
            Some(DoseWay::LiquidOnFibre) => t!("trial-liquid-on-fibre"),
            Some(DoseWay::SolidsOnLiquid(base)) => match basis.recipe.liquid(base) {
                Some(base) => t!("trial-on-solids-of", name = words::liquid(base).into_owned()),
                None => String::new(),
            },
            _ => String::new(),
        })
    };
    view! {
        <Show when=move || has_unit.get()>
            <UnitChoice kind=kind unit=unit symbol=symbol name=name on_choose=choose/>
            " "
            <span class="note">{basis}</span>
        </Show>
    }
}

/// Name and unit of a factor that changes nothing computed.
#[component]
fn OwnFactorBoxes(
    /// The factor.
    id: FactorId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let bench = state.bench;
    let read = move |read: fn(&OwnFactor) -> &String| {
        Signal::derive(move || {
            bench.open.with(|open| {
                let own = open.trial.series.as_ref().and_then(|series| series.factor(id)).map(|factor| &factor.own);
                own.map(|own| read(own).clone()).unwrap_or_default()
            })
        })
    };
    let put = move |part: fn(&mut OwnFactor) -> &mut String| {
        Callback::new(move |text: String| {
            bench.edit(|trial| {
                if let Some(factor) = trial.series.as_mut().and_then(|series| series.factor_mut(id)) {
                    *part(&mut factor.own) = text;
                }
            });
        })
    };
    let left = Callback::new(|()| ());
    view! {
        <div class="boxes">
            <TextBox
                id=format!("factor-name-{}", id.0)
                label=t!("trial-factor-name")
                value=read(|own| &own.name)
                longest=LONGEST_NAME
                on_input=put(|own| &mut own.name)
                on_leave=left
            />
            <TextBox
                id=format!("factor-unit-{}", id.0)
                label=t!("trial-factor-unit")
                value=read(|own| &own.unit)
                longest=LONGEST_NAME
                hint=t!("trial-factor-unit-hint")
                on_input=put(|own| &mut own.unit)
                on_leave=left
            />
        </div>
    }
}
