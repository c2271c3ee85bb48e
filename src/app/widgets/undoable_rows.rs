//! Rows of which one can be removed and brought back.

use leptos::prelude::*;

use super::undo_line::UndoLine;
use crate::app::session::Session;
use crate::app::undo::Spot;

/// One of the rows of [`UndoableRows`].
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
enum Row {
    Form(u32),
    /// What was done to the one with this number, where it is or was.
    Undo(u32),
}

/// A row for each id, where a row can be removed: what was done is told where it stood.
#[component]
pub(crate) fn UndoableRows(ids: Signal<Vec<u32>>, row: fn(u32) -> AnyView) -> impl IntoView {
    let session = Session::here();
    let rows = Memo::new(move |before: Option<&Vec<Row>>| {
        let mut rows: Vec<Row> = ids.with(|ids| ids.iter().copied().map(Row::Form).collect());
        let spot = session.undoing.act().and_then(|act| act.spot);
        let (Some(Spot::Row(id)), Some(before)) = (spot, before) else { return rows };
        let now = rows.iter().position(|row| *row == Row::Form(id));
        let told = before.iter().position(|row| *row == Row::Undo(id));
        let stood = before.iter().position(|row| *row == Row::Form(id));
        let at = match (now, told.or(stood)) {
            // Taken back: beside the row that came back.
            (Some(now), _) => told.map(|_| now + 1),
            (None, then) => then.map(|then| then.min(rows.len())),
        };
        if let Some(at) = at {
            rows.insert(at, Row::Undo(id));
        }
        rows
    });
    let one = move |it| match it {
        Row::Form(id) => row(id),
        Row::Undo(id) => view! { <UndoLine spot=Spot::Row(id) /> }.into_any(),
    };
    view! { <For each=move || rows.get() key=|row| *row children=one /> }
}
