//! What the rows of the weigh sheet show, as text.

use super::boxes::SheetBox;
use super::context::WeighContext;
use super::text::{balance_parts, on_balance, shown, signed, value_parts};
use crate::domain::trial::weigh_sheet::progress::{LineProgress, LineStatus};
use crate::domain::trial::weigh_sheet::slip::Slip;
use crate::domain::trial::{LineId, WeighFigure, WeighLineFigure, WeighSheet};
use crate::domain::{DoseWay, Draft, Entry, Faces};
use crate::quantity::{Amount, Kind, format};
use crate::t;
use crate::ui::page::bench::desk::Made;
use crate::ui::page::bench::sheet::figure::line_name;
use crate::ui::part::amount::{joined, with_unit};
use crate::ui::state::State;
use crate::ui::text::{symbol_shown, words};
use leptos::prelude::*;
use uom::si::f64::{Mass, Ratio};

/// A row.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct RowText {
    /// What is weighed.
    pub name: String,
    /// The target, below the name where it has no column.
    pub target: String,
    /// Volume and spray time, below the name where they have no columns.
    pub spray: String,
    /// What remains, in the decimals of the balance; blank where nothing does.
    pub to_add: String,
    /// What replaces what remains.
    pub status: RowStatus,
    /// The dose that was given, with its deviation from the target.
    pub given: String,
    /// The target dose and what it is on.
    pub dose: (String, String),
}

/// What replaces what remains to be added.
#[derive(Debug, Clone, PartialEq, Default)]
pub enum RowStatus {
    /// Nothing: what remains is shown.
    #[default]
    ToAdd,
    /// That it is done.
    Done,
    /// A question.
    Asked(Question),
    /// The choice between scaling and accepting.
    Over(OverChoice),
}

/// What a mass that looks like a slip raises.
#[derive(Debug, Clone, PartialEq)]
pub struct Question {
    /// The question.
    pub words: String,
    /// What may have been meant.
    pub offer: Option<Meant>,
    /// The answer that the mass is right.
    pub keep: String,
}

/// What may have been meant.
#[derive(Debug, Clone, PartialEq)]
pub enum Meant {
    /// Another mass: its words, and what is entered.
    Mass(String, Entry),
    /// The mass of another line.
    Swap(LineId),
}

/// What can be done about a mass over its plan.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct OverChoice {
    /// By how much it is over.
    pub by: String,
    /// That other lines grow.
    pub scale: String,
    /// That they do not.
    pub accept: String,
    /// Whether they do not.
    pub accepted: bool,
}

/// All rows, each with its line.
pub fn rows(sheet: WeighContext) -> Vec<(LineId, RowText)> {
    let state = sheet.desk.state;
    let typing = sheet.typing.get();
    sheet.desk.made.with(|made| {
        let Some(own) = &made.sheet else { return Vec::new() };
        let row = |line: &LineProgress| {
            let id = line.line.id;
            let quiet = typing == Some(SheetBox::Weighed(id));
            (id, row(state, made, own, line, quiet))
        };
        sheet.lines.with(|lines| lines.iter().map(row).collect())
    })
}

fn row(state: State, made: &Made, sheet: &WeighSheet, own: &LineProgress, quiet: bool) -> RowText {
    let id = own.line.id;
    let time = value_parts(state, sheet, WeighFigure::Line(id, WeighLineFigure::SprayTime)).0;
    let volume = value_parts(state, sheet, WeighFigure::Line(id, WeighLineFigure::Volume));
    let to_add = own.line.to_add;
    let status = match own.status {
        // Between two keys nothing is asked.
        LineStatus::Asked(_) | LineStatus::Over { .. } if quiet => RowStatus::ToAdd,
        LineStatus::Asked(slip) => RowStatus::Asked(question(state, made, sheet, own, slip)),
        LineStatus::Over { by, scale, accepted } => {
            RowStatus::Over(over(state, sheet, own, Over { by, scale, accepted }))
        }
        LineStatus::Done => RowStatus::Done,
        LineStatus::ToAdd => RowStatus::ToAdd,
    };
    let left = if to_add.value > 0.0 { balance_parts(state, sheet, id, to_add).0 } else { String::new() };
    RowText {
        name: line_name(made, id),
        target: on_balance(state, sheet, id, own.line.planned),
        spray: [joined(&volume.0, &volume.1), time]
            .into_iter()
            .filter(|text| !text.is_empty())
            .collect::<Vec<_>>()
            .join(" · "),
        to_add: left,
        status,
        given: given(state, own),
        dose: target_dose(state, made, sheet, id),
    }
}

/// "12.0 %", with its deviation where that is worth saying.
fn given(state: State, own: &LineProgress) -> String {
    let Some(dose) = own.dose else { return String::new() };
    let amount = dose.actual_as_entered.unwrap_or_else(|| Amount::from_base(Kind::Dose, dose.actual.value));
    let off = dose.deviation.value;
    let given = with_unit(state, amount, None);
    if off.abs() < 5e-4 { given } else { format!("{given} ({})", signed(state, Kind::Share, off)) }
}

/// The target dose as the recipe enters it; of water, what fixes it.
pub fn target_dose(state: State, made: &Made, sheet: &WeighSheet, id: LineId) -> (String, String) {
    let LineId::Liquid(liquid) = id else {
        let moisture = sheet.plan.case.solved.water.mat.dry_basis().value;
        let to_moisture = made.recipe.water_way == crate::domain::recipe::draft::WaterWay::ToMatMoisture;
        return match id {
            LineId::Water if to_moisture => {
                (String::new(), t!("bench-to-mat-moisture", moisture = shown(state, Kind::Moisture, moisture)))
            }
            _ => Default::default(),
        };
    };
    let dose = sheet.actual.dose(liquid).and_then(|dose| dose.target_as_entered);
    let way = made.recipe.liquid(liquid).map(|liquid| liquid.dose_way);
    (
        dose.map(|dose| with_unit(state, dose, None)).unwrap_or_default(),
        way.map(|way| basis(&made.recipe, way)).unwrap_or_default(),
    )
}

fn basis(recipe: &Draft, way: DoseWay) -> String {
    match way {
        DoseWay::SolidsOnFibre => t!("recipe-solids-on-fibre"),
        DoseWay::LiquidOnFibre => t!("recipe-liquid-on-fibre"),
        DoseWay::LiquidPerBoard => t!("recipe-liquid-per-board"),
        DoseWay::LiquidOnFaces(Faces::Both) => t!("recipe-on-both-faces"),
        DoseWay::LiquidOnFaces(Faces::Top) => t!("recipe-on-top-face"),
        DoseWay::LiquidOnFaces(Faces::Bottom) => t!("recipe-on-bottom-face"),
        DoseWay::SolidsOnLiquid(base) => match recipe.liquid(base) {
            Some(base) => t!("recipe-solids-on-liquid", name = words::liquid(base).into_owned()),
            None => t!("recipe-solids-on-missing"),
        },
    }
}

/// "7.28 g planned, 72.8 g entered: did you mean 7.28 g?"
fn question(state: State, made: &Made, sheet: &WeighSheet, own: &LineProgress, slip: Slip) -> Question {
    let id = own.line.id;
    let mass = |mass: Mass| on_balance(state, sheet, id, mass);
    let (planned, entered) = (mass(own.line.planned), mass(own.line.weighed.unwrap_or_default()));
    let keep = t!("bench-keep", mass = entered.clone());
    let (words, offer) = match slip {
        Slip::Factor { meant } => {
            let (unit, mark) = (state.unit(Kind::BenchMass), state.units.get().mark);
            let text = format::editable(meant.get(unit), mark);
            let words = format!("{text}\u{a0}{}", symbol_shown(unit));
            (
                t!("bench-slip", planned = planned, entered = entered, meant = words.clone()),
                Some(Meant::Mass(t!("common-use", entry = words), Entry::typed(text, unit))),
            )
        }
        Slip::Swapped { with } => (
            t!("bench-swapped", planned = planned, entered = entered, other = line_name(made, with)),
            Some(Meant::Swap(with)),
        ),
        Slip::FarOff => (t!("bench-far-off", planned = planned, entered = entered), None),
    };
    Question { words, offer, keep }
}

struct Over {
    by: Mass,
    scale: Ratio,
    accepted: bool,
}

fn over(state: State, sheet: &WeighSheet, own: &LineProgress, Over { by, scale, accepted }: Over) -> OverChoice {
    let id = own.line.id;
    let factor = format::significant(scale.value, 5, state.units.get().mark);
    let accept = match own.dose {
        Some(dose) => {
            let amount = dose.actual_as_entered.unwrap_or_else(|| Amount::from_base(Kind::Dose, dose.actual.value));
            t!("bench-accept-dose", dose = with_unit(state, amount, None))
        }
        None => t!("bench-keep-targets"),
    };
    let is_first = sheet.lines.first().is_some_and(|first| first.id == id);
    OverChoice {
        by: t!("bench-over", mass = on_balance(state, sheet, id, by)),
        scale: if is_first { t!("bench-scale-rest", factor = factor) } else { t!("bench-scale-all", factor = factor) },
        accept,
        accepted,
    }
}
