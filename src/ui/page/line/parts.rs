//! Names and figures of the line as text.

use crate::domain::line::{Feeds, LineFigure, Setting, SettingUnit, Tie};
use crate::quantity::Amount;
use crate::ui::part::amount::with_unit;
use crate::ui::state::State;
use crate::ui::text::words;
use crate::{label, t};
use leptos::prelude::*;

/// What a pump or a tank can be tied to: what the recipe has, and what it is tied to now. The first that is
/// the same stands for it.
pub fn ties(state: State, now: Option<Feeds>) -> Vec<(Feeds, String)> {
    state.draft.with(|draft| {
        let mut all: Vec<(Feeds, String)> = Vec::new();
        for liquid in &draft.liquids {
            let name = words::liquid(liquid).into_owned();
            all.push((Feeds::Liquid(Tie::to(liquid)), name));
        }
        all.push((Feeds::Water, t!("line-name-water")));
        all.push((Feeds::FaceWater, t!("line-name-face-water")));
        for liquid in &draft.liquids {
            let name = words::liquid(liquid).into_owned();
            all.push((Feeds::Thinning(Tie::to(liquid)), t!("line-name-thinning-water", liquid = name)));
        }
        if let Some(now) = now.filter(|now| !all.iter().any(|(other, _)| other.same(now))) {
            let name = match &now {
                Feeds::Liquid(tie) | Feeds::Thinning(tie) if tie.name.is_empty() => words::role(tie.role),
                Feeds::Liquid(tie) | Feeds::Thinning(tie) => &tie.name,
                Feeds::Water => label!("line-name-water"),
                Feeds::FaceWater => label!("line-name-face-water"),
            };
            let name = t!("line-name-tied-elsewhere", name = name);
            all.push((now, name));
        }
        all
    })
}

/// An amount with its unit.
pub fn shown(state: State, figure: LineFigure, base: f64) -> String {
    with_unit(state, Amount::from_base(figure.kind(), base), None)
}

/// A setting with its unit.
pub fn setting(state: State, setting: Setting, unit: SettingUnit) -> String {
    with_unit(state, setting.amount(unit), None)
}
