//! What follows the state: texts, conditions and rows.

use leptos::prelude::*;

use super::undo_line::UndoLine;
use crate::app::state::State;
use crate::app::undo::Spot;

/// A text that follows what it is made of.
pub(crate) fn said(text: impl Fn() -> String + Send + Sync + 'static) -> Signal<String> {
    fn boxed(text: Box<dyn Fn() -> String + Send + Sync>) -> Signal<String> {
        Memo::new(move |_| text()).into()
    }
    boxed(Box::new(text))
}

/// A condition that follows what it is made of.
pub(crate) fn holds(condition: impl Fn() -> bool + Send + Sync + 'static) -> Signal<bool> {
    fn boxed(condition: Box<dyn Fn() -> bool + Send + Sync>) -> Signal<bool> {
        Memo::new(move |_| condition()).into()
    }
    boxed(Box::new(condition))
}

/// Shows its children while a condition holds.
#[component]
pub(crate) fn When(condition: Signal<bool>, children: ChildrenFn) -> impl IntoView {
    move || condition.get().then(|| children())
}

/// A row for each id; a row stays what it is while others come and go.
#[component]
pub(crate) fn Rows(ids: Signal<Vec<u32>>, row: fn(u32) -> AnyView) -> impl IntoView {
    view! { <For each=move || ids.get() key=|id| *id children=row /> }
}

/// One of the rows of [`UndoableRows`].
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
enum Row {
    Form(u32),
    /// What was done to the one with this number, where it is or was.
    Undo(u32),
}

/// The same where a row can be removed: what was done is told where it stood.
#[component]
pub(crate) fn UndoableRows(ids: Signal<Vec<u32>>, row: fn(u32) -> AnyView) -> impl IntoView {
    let state = State::here();
    let rows = Memo::new(move |before: Option<&Vec<Row>>| {
        let mut rows: Vec<Row> = ids.with(|ids| ids.iter().copied().map(Row::Form).collect());
        let spot = state.undoing.act().and_then(|act| act.spot);
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

/// What is drawn anew whenever something that it shows changes.
#[component]
pub(crate) fn Drawn(what: Callback<(), Vec<AnyView>>) -> impl IntoView {
    move || what.run(())
}
