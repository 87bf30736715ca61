//! The test pieces of one test: one row a piece, and a row below them for the next one.

use super::column::{column, figure_head, head, piece_figures, test_name};
use crate::browser::page;
use crate::domain::trial::BoardId;
use crate::domain::trial::boards::board::MAX_PIECES;
use crate::domain::trial::boards::field::{BoardField, BoardTest};
use crate::domain::trial::boards::property::Property;
use crate::domain::trial::boards::working::BoardFigure;
use crate::record::content::trial::field::TrialField;
use crate::statistics::sample::SampleSummary;
use crate::t;
use crate::ui::components::Grid;
use crate::ui::page::bench::entry::{
    BoardsFigure, ColumnUnit, FigureOfBoard, TrialBox, TrialDesk, amount_parts, paste_column,
};
use crate::ui::state::State;
use crate::ui::text::unit_short;
use leptos::ev::ClipboardEvent;
use leptos::prelude::*;

/// The grid.
#[component]
pub fn PieceGrid(
    /// The board.
    id: BoardId,
    /// The test.
    test: BoardTest,
    /// Whether the columns that are seldom filled in are shown.
    shows_all: Memo<bool>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let bench = state.bench;
    let count = Memo::new(move |_| bench.open.with(|open| open.trial.board(id).map_or(0, |board| board.count(test))));
    // One more for the next piece.
    let rows = move || 0..u8::try_from((count.get() + 1).min(MAX_PIECES)).unwrap_or(u8::MAX);
    let shown = move |field: &BoardField| shows_all.get() || !field.is_seldom();
    let fields = Memo::new(move |_| test.fields(0).into_iter().filter(shown).collect::<Vec<_>>());
    let row = move |at: u8| view! { <PieceRow id=id test=test at=at fields=fields/> };
    let (name, standard) = test_name(test);
    let remove = move |_| {
        let before = bench.open.with_untracked(|open| open.trial.board(id).cloned());
        bench.edit(|trial| {
            if let Some(board) = trial.board_mut(id) {
                board.remove_piece(test);
            }
        });
        let Some(before) = before else { return };
        // Only the piece comes back; whatever else was typed meanwhile stays.
        let put_back = move || {
            bench.edit(|trial| {
                if let Some(board) = trial.board_mut(id) {
                    board.put_back_last_piece(test, &before);
                }
            });
        };
        state.tell_undo(t!("trial-piece-removed"), put_back);
    };
    view! {
        <h4>{name.clone()} " " <span class="note">{standard}</span></h4>
        <div on:paste:capture=move |event| paste(state, id, test, &event)>
            <Grid
                name=name
                class="tight pieces"
                head=view! { <Head test=test fields=fields/> }.into_any()
                foot=view! { <Means id=id test=test fields=fields/> }.into_any()
                on_paste=Callback::new(|_| ())
            >
                <For each=rows key=|at| *at children=row/>
            </Grid>
        </div>
        <Show when=move || { count.get() > 0 }>
            <button type="button" class="bare" on:click=remove>{t!("trial-remove-piece")}</button>
        </Show>
    }
}

/// A column pasted from a spreadsheet fills down from the focused box, and makes the pieces that it needs.
fn paste(state: State, id: BoardId, test: BoardTest, event: &ClipboardEvent) {
    let Some(text) = page::pasted(event) else { return };
    let texts: Vec<&str> = text.trim_end().split('\n').map(|line| line.trim_end_matches('\r')).collect();
    // Several columns are not a column; the box says so.
    if texts.len() < 2 || text.contains('\t') {
        return;
    }
    let Some(key) = page::focused_field() else { return };
    let focused = (0..=u8::MAX)
        .take(MAX_PIECES)
        .flat_map(|at| test.fields(at))
        .find(|field| TrialField::Board(id, *field).key() == key);
    let Some(first) = focused else { return };
    event.prevent_default();
    event.stop_propagation();
    let down = std::iter::successors(Some(first), |field| field.below());
    let room = MAX_PIECES.saturating_sub(first.piece().map_or(0, usize::from));
    let cells = down.zip(texts).take(room).map(|(field, text)| (TrialField::Board(id, field), text.to_owned()));
    paste_column(state, cells.collect());
}

#[component]
fn Head(
    /// The test.
    test: BoardTest,
    /// Its boxes.
    fields: Memo<Vec<BoardField>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let boxes = move || {
        let one = |field: BoardField| {
            view! { <th scope="col">{head(field)} <br/> <ColumnUnit name=head(field) kind=field.kind()/></th> }
        };
        fields.get().into_iter().map(one).collect_view()
    };
    let figure = move |(at, figure): (usize, &fn(u8) -> BoardFigure)| {
        let figure = figure(0);
        let unit = move || unit_short(state.unit(figure.kind()), &state.currency.get());
        view! { <th scope="col" class:edge=at == 0>{figure_head(figure)} <br/> {unit}</th> }
    };
    view! {
        <th scope="col" class="l">"#"</th>
        {boxes}
        {piece_figures(test).iter().enumerate().map(figure).collect_view()}
    }
}

#[component]
fn PieceRow(
    /// The board.
    id: BoardId,
    /// The test.
    test: BoardTest,
    /// The place of the piece, from 0.
    at: u8,
    /// The boxes of the first piece.
    fields: Memo<Vec<BoardField>>,
) -> impl IntoView {
    let boxes = move |field: BoardField| {
        let own = test.fields(at).into_iter().find(|own| column(*own) == column(field)).unwrap_or(field);
        view! { <td><TrialBox field=TrialField::Board(id, own) column=column(own) unit_in_head=true/></td> }
    };
    let figure = move |(place, figure): (usize, &fn(u8) -> BoardFigure)| {
        view! {
            <td class:edge=place == 0>
                <FigureOfBoard figure=BoardsFigure::Of(id, figure(at)) unit_in_head=true/>
            </td>
        }
    };
    view! {
        <tr>
            <th scope="row" class="l">{u32::from(at) + 1}</th>
            <For each=move || fields.get() key=|field| column(*field) children=boxes/>
            {piece_figures(test).iter().enumerate().map(figure).collect_view()}
        </tr>
    }
}

/// The properties that the test gives, in the order of its columns.
const fn properties(test: BoardTest) -> &'static [Property] {
    match test {
        BoardTest::Density => &[Property::Density, Property::Moisture, Property::OvenDryDensity],
        BoardTest::Bending => &[Property::BendingStrength, Property::BendingModulus],
        BoardTest::Bond => &[Property::InternalBond],
        BoardTest::Swelling => &[Property::Swelling],
    }
}

/// Mean and standard deviation of the pieces.
#[component]
fn Means(
    /// The board.
    id: BoardId,
    /// The test.
    test: BoardTest,
    /// Its boxes.
    fields: Memo<Vec<BoardField>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let summaries = Memo::new(move |_| {
        desk.tested.with(|tested| {
            let board = tested.board(id);
            let one = |property: &Property| {
                let summary = SampleSummary::of(&board?.values(*property))?;
                let number = |base: f64| amount_parts(state, property.kind(), base).0;
                Some((number(summary.mean), summary.deviation.map(number)))
            };
            // A board without pieces of its own has no means of them.
            let is_there = !state
                .bench
                .open
                .with(|open| open.trial.board(id).is_none_or(|board| board.begun_pieces(test).is_empty()));
            properties(test).iter().map(|property| one(property).filter(|_| is_there)).collect::<Vec<_>>()
        })
    });
    let deviations = move || {
        let all: Vec<String> = summaries.with(|all| all.iter().filter_map(|own| own.as_ref()?.1.clone()).collect());
        match all.as_slice() {
            [] => t!("trial-mean"),
            _ => t!("trial-mean-sd", deviation = all.join(" · ")),
        }
    };
    let mean = move |at: usize| {
        let text = move || summaries.with(|all| all.get(at).cloned().flatten().map(|(mean, _)| mean));
        view! { <td class:edge=at == 0><b>{text}</b></td> }
    };
    view! {
        <td class="l" colspan=move || (fields.with(Vec::len) + 1).to_string()>{deviations}</td>
        {(0..properties(test).len()).map(mean).collect_view()}
    }
}
