//! The plan: which combinations are made, how often, and in which blocks.

use super::context::SeriesProgress;
use crate::domain::trial::series::draft::{BlockWay, DesignWay};
use crate::domain::trial::series::field::SeriesField;
use crate::domain::trial::series::fraction;
use crate::domain::trial::{SeriesDraft, WeighField};
use crate::record::content::trial::field::TrialField;
use crate::t;
use crate::ui::page::bench::entry::{PlaceChoice, TrialBox, TrialDesk, TrialMessages};
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

const FIELDS: [TrialField; 2] = [TrialField::Series(SeriesField::Replicates), TrialField::Sheet(WeighField::Boards)];

/// The boxes.
#[component]
pub fn PlanBoxes() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let SeriesProgress(progress) = expect_context::<SeriesProgress>();
    let read = move |read: fn(&SeriesDraft) -> usize| {
        Memo::new(move |_| desk.basis.with(|basis| basis.series.as_ref().map_or(0, read)))
    };
    let change = move |change: &dyn Fn(&mut SeriesDraft)| {
        state.bench.edit(|trial| {
            if let Some(series) = &mut trial.series {
                change(series);
            }
        });
    };
    let factors = read(|series| series.factors.len());
    let ways = Memo::new(move |_| {
        let fractions = fraction::offered(factors.get()).into_iter().map(DesignWay::Fraction);
        let words = |way| words::bench::design_way(way, factors.get());
        std::iter::once(DesignWay::Full).chain(fractions).map(words).collect::<Vec<_>>()
    });
    let way = read(|series| match series.design {
        DesignWay::Full => 0,
        DesignWay::Fraction(p) => {
            fraction::offered(series.factors.len()).iter().position(|own| *own == p).map_or(0, |at| at + 1)
        }
    });
    let choose_way = Callback::new(move |at: usize| {
        change(&|series| {
            let chosen = at.checked_sub(1).and_then(|at| fraction::offered(series.factors.len()).get(at).copied());
            series.design = chosen.map_or(DesignWay::Full, DesignWay::Fraction);
        });
    });
    let block_ways: Vec<String> = BlockWay::ALL.iter().map(|way| words::bench::block_way(*way).to_owned()).collect();
    let blocks = read(|series| BlockWay::ALL.iter().position(|way| *way == series.blocks).unwrap_or(0));
    let choose_blocks = Callback::new(move |at: usize| {
        if let Some(way) = BlockWay::ALL.get(at) {
            change(&|series| series.blocks = *way);
        }
    });
    let fixed = move || {
        let (fixed, all) = progress.with(|runs| (runs.iter().filter(|run| run.is_fixed).count(), runs.len()));
        (fixed > 0).then(|| t!("trial-fixed-runs", fixed = fixed, open = all - fixed))
    };
    view! {
        <div class="plan">
            <h3>{t!("trial-plan")}</h3>
            <div class="boxes">
                <PlaceChoice
                    id="bench-design"
                    name=t!("trial-combinations")
                    labelled=true
                    offered=ways
                    chosen=way
                    on_choose=choose_way
                />
                <TrialBox field=TrialField::Sheet(WeighField::Boards) label=t!("trial-boards-a-run")/>
                <PlaceChoice
                    id="bench-blocks"
                    name=t!("trial-blocks")
                    labelled=true
                    offered=block_ways
                    chosen=blocks
                    on_choose=choose_blocks
                />
                <TrialBox field=TrialField::Series(SeriesField::Replicates) label=t!("trial-replicates")/>
            </div>
            <TrialMessages fields=FIELDS.to_vec()/>
            <p class="note">{fixed}</p>
        </div>
    }
}
