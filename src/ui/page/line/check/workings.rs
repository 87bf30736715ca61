//! What is computed from the readings: doses, moistures, weights and corrections, each with its working.

use super::now::{CheckNow, CheckSheet};
use super::worked::Worked;
use crate::domain::LiquidId;
use crate::domain::line::working::{correction_working, dose_working, former_working, run_working};
use crate::domain::line::{LineFigure, LineWorking, PumpId};
use crate::t;
use crate::ui::components::Fold;
use crate::ui::page::line::context::solved;
use crate::ui::page::line::settings_text::{pump_name, signed};
use crate::ui::part::amount::with_unit;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// A figure of the fold.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
enum Computed {
    /// Of the whole run.
    Run(LineFigure),
    /// Of a liquid.
    Dose(LiquidId, LineFigure),
    /// The correction of a pump.
    Pump(PumpId),
    /// That of the former.
    Former,
}

/// The figures of the whole run.
const OF_RUN: [LineFigure; 5] = [
    LineFigure::RunFibre,
    LineFigure::RunFurnishMoisture,
    LineFigure::RunMatMoisture,
    LineFigure::RunMat,
    LineFigure::RunDensity,
];

impl Computed {
    fn key(self) -> String {
        match self {
            Self::Run(figure) => format!("run.{}", figure.key()),
            Self::Dose(id, figure) => format!("run.{}.{}", id.0, figure.key()),
            Self::Pump(id) => format!("correction.{}.{}", id.0, LineFigure::CorrectionFactor.key()),
            Self::Former => format!("run.{}", LineFigure::FormerFactor.key()),
        }
    }

    fn name(self, state: State) -> String {
        let label = |figure| words::line::figure(figure).label;
        match self {
            Self::Run(figure) => label(figure).to_owned(),
            Self::Dose(id, figure) => format!("{}: {}", state.liquid_name(id), label(figure)),
            Self::Pump(id) => format!("{}: {}", pump_name(state, id), label(LineFigure::CorrectionFactor)),
            Self::Former => label(LineFigure::FormerFactor).to_owned(),
        }
    }

    fn working(self, state: State, now: &CheckNow) -> Option<LineWorking> {
        let (check, readings) = (now.check.as_ref()?, now.readings.as_ref()?);
        let liquid = |id| check.actual.liquids.iter().find(|liquid| liquid.id == id);
        solved(state, |_, case, _, _| match self {
            Self::Run(figure) => run_working(figure, &check.actual, readings, case),
            Self::Dose(id, figure) => dose_working(figure, liquid(id)?, &check.actual, case),
            Self::Pump(id) => correction_working(now.correction(id)?),
            Self::Former => former_working(&check.former?, case),
        })?
    }

    fn value(self, state: State, now: &CheckNow) -> Option<String> {
        let working = self.working(state, now)?;
        Some(match self {
            Self::Dose(_, LineFigure::DoseDeviation) => signed(state, working.result.base),
            _ => with_unit(state, working.result, None),
        })
    }
}

/// The fold.
#[component]
pub fn WorkingsFold() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<CheckSheet>();
    let note = Memo::new(move |_| {
        sheet.now.with(|now| {
            let of = |figure| {
                Some(format!("{} {}", words::line::figure(figure).label, Computed::Run(figure).value(state, now)?))
            };
            let both = [LineFigure::RunFibre, LineFigure::RunFurnishMoisture].map(of);
            both.into_iter().flatten().collect::<Vec<_>>().join(" · ")
        })
    });
    let all = Memo::new(move |_| {
        sheet.now.with(|now| {
            let Some(check) = &now.check else { return Vec::new() };
            let doses = check.actual.liquids.iter().flat_map(|liquid| {
                [LineFigure::RunDose, LineFigure::DoseDeviation].map(|figure| Computed::Dose(liquid.id, figure))
            });
            let pumps = check.corrections.iter().map(|correction| Computed::Pump(correction.pump));
            let all = OF_RUN.map(Computed::Run).into_iter().chain(doses).chain(pumps).chain([Computed::Former]);
            all.filter(|each| each.value(state, now).is_some()).collect()
        })
    });
    let figure = move |each: Computed| {
        let value = Memo::new(move |_| sheet.now.with(|now| each.value(state, now)).unwrap_or_default());
        let working = Callback::new(move |()| sheet.now.with(|now| each.working(state, now)));
        view! { <Worked key=each.key() name=each.name(state) value=value working=working/> }
    };
    view! {
        <Fold id="check-workings" title=t!("check-computed") note=note>
            <div class="worked-figures">
                <For each=move || all.get() key=|each| *each let:each>{figure(each)}</For>
            </div>
        </Fold>
    }
}
