//! Figures of boards, with their workings.

use super::context::{BoardsFigure, TrialDesk};
use super::group_name::{group_key, group_name};
use crate::browser::page;
use crate::domain::trial::boards::group::BoardGroup;
use crate::domain::trial::boards::working::{
    BoardFigure, BoardOrigin, BoardWorking, board_working, correction_working, summary_working,
};
use crate::domain::trial::{BoardId, Property};
use crate::quantity::{Amount, Kind};
use crate::record::content::trial::outcome::Tested;
use crate::t;
use crate::ui::components::{FigureValue, Rank, WorkingFrame, opens, working_text};
use crate::ui::page::bench::sheet::text::parts;
use crate::ui::state::State;
use crate::ui::text::{lower_first, words};
use leptos::prelude::*;

/// Number and unit.
pub fn amount_parts(state: State, kind: Kind, base: f64) -> (String, String) {
    parts(state, Amount::from_base(kind, base))
}

/// A share in percent with its sign, without the unit.
pub fn signed_share(state: State, share: f64) -> String {
    // Less than a tenth of a percent is beyond any balance.
    let percent = (share * 1_000.0).round() / 10.0;
    let mark = state.units.with(|units| units.mark.char());
    let number = format!("{:.1}", percent.abs()).replace('.', &mark.to_string());
    match percent {
        0.0 => "0".to_owned(),
        ..0.0 => format!("\u{2212}{number}"),
        _ => format!("+{number}"),
    }
}

impl BoardsFigure {
    /// What the figure is.
    const fn figure(self) -> BoardFigure {
        match self {
            Self::Of(_, figure) | Self::Combination(_, figure) | Self::Run(_, figure) => figure,
        }
    }

    fn group(self, tested: &Tested) -> Option<&BoardGroup> {
        match self {
            Self::Of(..) => None,
            Self::Combination(at, _) => tested.combinations.get(at).map(|own| &own.group),
            Self::Run(at, _) => tested.runs.get(at),
        }
    }

    /// `data-figure` on the page.
    fn key(self, tested: &Tested) -> String {
        let part = figure_key(self.figure());
        match (self, self.group(tested)) {
            (Self::Of(id, _), _) => format!("board.{}.{part}", id.0),
            (_, Some(group)) => format!("{}.{part}", group_key(&group.key)),
            (_, None) => part,
        }
    }

    fn working(self, tested: &Tested) -> Option<BoardWorking> {
        match (self, self.figure()) {
            (Self::Of(id, figure), _) => board_working(figure, tested.board(id)?),
            (_, BoardFigure::Correction) => Some(correction_working(self.group(tested)?.density.as_ref()?)),
            (_, figure) => {
                let property = property_of(figure)?;
                let result = self.group(tested)?.results.iter().find(|result| result.property == property)?;
                summary_working(figure, &result.summary)
            }
        }
    }
}

const fn property_of(figure: BoardFigure) -> Option<Property> {
    match figure {
        BoardFigure::HalfWidth(property) | BoardFigure::Lower(property) | BoardFigure::Upper(property) => {
            Some(property)
        }
        _ => None,
    }
}

fn figure_key(figure: BoardFigure) -> String {
    match figure {
        BoardFigure::WholeDensity => "whole".to_owned(),
        BoardFigure::Density(at) => format!("density.{at}"),
        BoardFigure::Moisture(at) => format!("moisture.{at}"),
        BoardFigure::OvenDryDensity(at) => format!("dry.{at}"),
        BoardFigure::BendingStrength(at) => format!("mor.{at}"),
        BoardFigure::BendingModulus(at) => format!("moe.{at}"),
        BoardFigure::InternalBond(at) => format!("bond.{at}"),
        BoardFigure::Swelling(at) => format!("swelling.{at}"),
        BoardFigure::HalfWidth(property) => format!("{}.half", property.key()),
        BoardFigure::Lower(property) => format!("{}.lower", property.key()),
        BoardFigure::Upper(property) => format!("{}.upper", property.key()),
        BoardFigure::Correction => "correction".to_owned(),
    }
}

/// A figure by its name, with whose it is.
fn name(state: State, desk: TrialDesk, figure: BoardsFigure) -> String {
    let own = figure.figure();
    let label = words::bench::board_figure(own).label;
    let property = property_of(own).map_or("", |property| words::bench::property(property).label);
    let whose = match figure {
        BoardsFigure::Of(id, _) => board_name(state, id),
        _ => desk
            .tested
            .with(|tested| figure.group(tested).map_or_else(String::new, |group| group_name(state, desk, &group.key))),
    };
    let piece = match own {
        BoardFigure::Density(at)
        | BoardFigure::Moisture(at)
        | BoardFigure::OvenDryDensity(at)
        | BoardFigure::BendingStrength(at)
        | BoardFigure::BendingModulus(at)
        | BoardFigure::InternalBond(at)
        | BoardFigure::Swelling(at) => t!("trial-piece-n", number = u32::from(at) + 1),
        _ => property.to_owned(),
    };
    [whose, piece, label.to_owned()].into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(", ")
}

/// A board as it is called in sentences.
pub fn board_name(state: State, id: BoardId) -> String {
    state.bench.open.with(|open| {
        let own = open.trial.board(id).map(|board| board.name.trim().to_owned()).filter(|name| !name.is_empty());
        t!("trial-board-n", name = own.unwrap_or_else(|| id.0.to_string()))
    })
}

/// The figure; a press opens its working below the table it is in. Nothing where the readings do not give it.
#[component]
pub fn FigureOfBoard(
    /// The figure.
    figure: BoardsFigure,
    /// How large.
    #[prop(optional)]
    rank: Rank,
    /// Whether the head of its column has the unit.
    #[prop(optional)]
    unit_in_head: bool,
    /// Written before the number, such as "±".
    #[prop(optional)]
    before: &'static str,
) -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let open = desk.open_figure;
    let text = Memo::new(move |_| {
        let amount = desk.tested.with(|tested| figure.working(tested)).map(|working| working.result);
        amount.filter(|amount| amount.base.is_finite()).map_or_else(Default::default, |amount| {
            let (number, unit) = amount_parts(state, amount.kind, amount.base);
            (format!("{before}{number}"), unit)
        })
    });
    let key = desk.tested.with_untracked(|tested| figure.key(tested));
    view! {
        <FigureValue
            key=key.clone()
            controls=format!("working-{key}")
            name=Signal::derive(move || name(state, desk, figure))
            text=text
            rank=rank
            unit_in_head=unit_in_head
            open=Signal::derive(move || open.get() == Some(figure))
            on_press=opens(open, figure)
        />
    }
}

/// The id of a figure's working.
fn working_id(desk: TrialDesk, figure: BoardsFigure) -> String {
    format!("working-{}", desk.tested.with_untracked(|tested| figure.key(tested)))
}

/// Closes the working that is open, if one is, and goes back to its figure.
pub fn close_working(desk: TrialDesk) {
    if let Some(figure) = desk.open_figure.get_untracked() {
        desk.open_figure.set(None);
        page::focus_opener(&working_id(desk, figure));
    }
}

/// The working of the figure that is open, if it belongs here.
#[component]
pub fn BoardsWorking(
    /// Whether a figure belongs here.
    belongs: fn(BoardsFigure) -> bool,
) -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let open = desk.open_figure;
    let here = Memo::new(move |_| open.get().filter(|figure| belongs(*figure)));
    let told = move |figure: BoardsFigure| {
        move || {
            let working = desk.tested.with(|tested| figure.working(tested))?;
            Some(working_text(state, &working, |origin| origin_words(*origin).into_any()))
        }
    };
    move || {
        here.get().map(|figure| {
            view! {
                <WorkingFrame
                    id=working_id(desk, figure)
                    name=name(state, desk, figure)
                    on_close=Callback::new(move |()| open.set(None))
                >
                    {told(figure)}
                </WorkingFrame>
            }
        })
    }
}

fn origin_words(origin: BoardOrigin) -> String {
    match origin {
        BoardOrigin::Field(field) => words::bench::board_field(field).label.to_owned(),
        BoardOrigin::Figure(figure) => words::bench::board_figure(figure).label.to_owned(),
        BoardOrigin::Mean => t!("trial-mean-of-boards"),
        BoardOrigin::Deviation => t!("trial-sd-of-boards"),
        BoardOrigin::Student => t!("trial-student"),
        BoardOrigin::RootOfCount => t!("trial-root-of-count"),
        BoardOrigin::Target => lower_first(&t!("trial-target-density")),
        BoardOrigin::Made => lower_first(&t!("trial-density-made")),
        BoardOrigin::TargetThickness => t!("trial-target-thickness"),
        BoardOrigin::MadeThickness => t!("trial-thickness-made"),
    }
}
