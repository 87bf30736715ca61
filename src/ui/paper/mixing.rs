//! The mixing card: what to weigh of the solution and of the glue, with a blank for what was weighed.

use super::end::End;
use super::sheet::{Sheet, recipe_line};
use super::warnings::{PaperLine, Warnings};
use crate::domain::mixing::{MixError, part_of};
use crate::quantity::Kind;
use crate::t;
use crate::ui::page::mixing::{MixingContext, part_name, shown, shown_parts};
use crate::ui::state::State;
use crate::ui::text::symbol_shown;
use leptos::prelude::*;

/// A line to weigh.
struct CardLine {
    name: String,
    note: String,
    mass: String,
    volume: String,
}

/// The document.
#[component]
pub fn MixingPaper() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = MixingContext::new(state);
    let lines = sheet.lines(state).into_iter().map(PaperLine::from).collect();
    let concentration = sheet.solution.with(|found| {
        let share = found.as_ref().ok().map(|made| (made.make_up.salt / made.make_up.total).value);
        share.map(|share| t!("paper-by-mass", share = shown(state, Kind::Share, share)))
    });
    let title =
        [Some(t!("mixing-solution-heading")), concentration].into_iter().flatten().collect::<Vec<_>>().join(", ");
    // A card of a solution alone is the usual one.
    let is_glue_asked = sheet.tank.with(|tank| tank.iter().any(|part| part.in_tank));
    let glue = is_glue_asked.then(|| view! { <Card title=t!("mixing-glue") lines=glue_lines(state, sheet)/> });
    view! {
        <Sheet title=t!("paper-mixing-card") about=recipe_line(state) kind=t!("mixing-title")>
            <Warnings lines=lines/>
            <Card title=title lines=solution_lines(state, sheet)/>
            {glue}
            <End cautions=sheet.cautions() signature=[t!("paper-weighed-by"), t!("paper-checked-by"), t!("paper-date-time")]/>
        </Sheet>
    }
}

/// What goes together, or why nothing does.
#[component]
fn Card(
    /// What is made.
    title: String,
    /// Each thing to weigh, in this order; the last line is the whole.
    lines: Result<Vec<CardLine>, String>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let (unit, volume_unit) = (symbol_shown(state.unit(Kind::BatchMass)), symbol_shown(state.unit(Kind::BatchVolume)));
    let body = match lines {
        Err(why) => view! { <p><b>{t!("paper-not-valid")}</b> " " {why}</p> }.into_any(),
        Ok(lines) => {
            let parts = lines.len().saturating_sub(1);
            let row = |(at, CardLine { name, note, mass, volume }): (usize, CardLine)| {
                let number = (at < parts).then(|| at + 1);
                view! {
                    <tr>
                        <td>{number}</td>
                        <th scope="row" class="l"><b>{name}</b> <span>{note}</span></th>
                        <td class="mass">{mass}</td>
                        <td>{volume}</td>
                        <td class="blank"></td>
                        <td class="blank"></td>
                    </tr>
                }
            };
            view! {
                <table class="print-table print-weigh">
                    <thead><tr>
                        <th scope="col">"#"</th>
                        <th scope="col" class="l">{t!("paper-add-in-order")}</th>
                        <th scope="col">{t!("paper-target-mass", unit = unit)}</th>
                        <th scope="col">{volume_unit}</th>
                        <th scope="col">{t!("paper-actual-mass", unit = unit)}</th>
                        <th scope="col">{t!("paper-time")}</th>
                    </tr></thead>
                    <tbody>{lines.into_iter().enumerate().map(row).collect_view()}</tbody>
                </table>
            }
            .into_any()
        }
    };
    view! { <section><h2>{title}</h2>{body}</section> }
}

fn line(state: State, name: String, note: String, mass: f64, volume: Option<f64>) -> CardLine {
    CardLine {
        name,
        note,
        mass: shown_parts(state, Kind::BatchMass, mass).0,
        volume: volume.map(|volume| shown_parts(state, Kind::BatchVolume, volume).0).unwrap_or_default(),
    }
}

fn solution_lines(state: State, sheet: MixingContext) -> Result<Vec<CardLine>, String> {
    let made = sheet.solution.get().map_err(|error| why(error, sheet.solution_error(state)))?.make_up;
    Ok(vec![
        line(state, t!("mixing-water"), t!("mixing-at-20"), made.water.value, Some(made.water_volume.value)),
        line(state, t!("paper-salt"), t!("mixing-stir"), made.salt.value, None),
        line(state, t!("mixing-solution"), String::new(), made.total.value, made.volume.map(|volume| volume.value)),
    ])
}

fn glue_lines(state: State, sheet: MixingContext) -> Result<Vec<CardLine>, String> {
    let batch = sheet.glue.get().map_err(|error| why(error, sheet.glue_error(state)))?;
    let tank = sheet.tank.get();
    let weighed = tank.iter().enumerate().filter_map(|(at, part)| Some((part, part_of(&batch, &tank, at)?)));
    let mut lines: Vec<CardLine> = weighed
        .map(|(part, found)| {
            let share = shown(state, Kind::Share, (found.mass / batch.mass).value);
            let note = t!("paper-by-mass", share = share);
            line(state, part_name(state, part), note, found.mass.value, Some(found.volume.value))
        })
        .collect();
    lines.push(line(state, t!("mixing-glue"), String::new(), batch.mass.value, Some(batch.volume.value)));
    Ok(lines)
}

/// Why there is nothing to weigh.
fn why<E>(error: MixError<E>, message: Option<crate::ui::text::Message>) -> String {
    match (error, message) {
        (MixError::Refused(_), Some(message)) => format!("{} {}", message.what, message.fix),
        (MixError::Refused(_), None) => t!("mixing-tick"),
        (MixError::Entry, _) => t!("mixing-fill-in"),
    }
}
