//! The line that says what was done at a place, with a button that takes it back.

use fillwright::document::Id;
use fillwright::message::keys::frame as keys;
use fillwright::words::deeds;
use leptos::prelude::*;

use super::button::Button;
use super::flow::When;
use crate::app::session::Session;
use crate::app::signals::{holds, said};
use crate::app::undo::Spot;

/// What was done at this place, with a button that takes it back; then what that did.
#[component]
pub(crate) fn UndoLine(spot: Spot) -> impl IntoView {
    let session = Session::here();
    session.undoing.stands_at(spot);
    let shown = holds(move || session.undoing.is_at(spot));
    view! {
        <div class="undo" role="status">
            <When condition=shown>
                <Words />
            </When>
        </div>
    }
}

/// The same above the view, for what has no place of its own on the page.
#[component]
pub(crate) fn UndoAbove() -> impl IntoView {
    let session = Session::here();
    let shown = holds(move || session.undoing.is_homeless());
    view! {
        <div class="undo above" role="status">
            <When condition=shown>
                <Words />
            </When>
        </div>
    }
}

/// The same at an entry of the log, which this names. It is read out once: here only if the
/// act was done here.
#[component]
pub(crate) fn UndoAtEntry(entry: Id, #[prop(into)] name: String) -> impl IntoView {
    let session = Session::here();
    let entry = StoredValue::new(entry);
    let name = StoredValue::new(name);
    let act = Memo::new(move |_| {
        let act = session.undoing.act()?;
        entry.with_value(|it| act.entry.as_ref() == Some(it)).then_some(act.spot)
    });
    let here = holds(move || act.get() == Some(Some(Spot::Log)));
    let elsewhere = holds(move || act.get().is_some_and(|spot| spot != Some(Spot::Log)));
    view! {
        <When condition=here>
            <UndoLine spot=Spot::Log />
        </When>
        <When condition=elsewhere>
            <div class="undo">
                <Words of=name.get_value() />
            </div>
        </When>
    }
}

#[component]
fn Words(
    /// What it was done to, where that is not plain from the place.
    #[prop(optional)]
    of: String,
) -> impl IntoView {
    let session = Session::here();
    let offered = holds(move || session.undoing.is_offered());
    let words = said(move || {
        session.undoing.act().map_or_else(String::new, |act| {
            let words = if offered.get() { deeds::done } else { deeds::undone };
            format!("{}.", words(act.deed))
        })
    });
    let name = said(move || {
        let undo = session.undoing.act().map_or_else(String::new, |act| deeds::undo(act.deed));
        if of.is_empty() { undo } else { format!("{undo}, {of}") }
    });
    view! {
        <p>{words}</p>
        <When condition=offered>
            <Button
                label=keys::UNDO.say()
                look="small"
                name=name
                on_press=Callback::new(move |()| session.undo())
            />
        </When>
    }
}
