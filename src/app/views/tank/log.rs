//! The log as a list: what happened, the latest first.

use fillwright::answers::tank::Replayed;
use fillwright::document::{Draft, Event, Id};
use fillwright::message::keys::tank as keys;
use fillwright::quantity::notation::Printer;
use fillwright::words::deeds::Deed;
use fillwright::words::problems::problem;
use fillwright::words::tank;
use leptos::prelude::*;

use crate::app::session::Session;
use crate::app::tank_memos::TankMemos;
use crate::app::undo::{Act, Spot};
use crate::app::widgets::{Button, Drawn, UndoAtEntry, When, holds, said};
use crate::app::{device, route};

/// Entries shown at first, and with each press for more.
const PAGE: usize = 20;

/// The log: what happened, the latest first.
#[component]
pub(super) fn LogCard() -> impl IntoView {
    let session = Session::here();
    let tank_memos = TankMemos::here();
    let shown = RwSignal::new(PAGE);
    let count = Memo::new(move |_| tank_memos.history.with(|history| history.replays.len()));
    // The entry of the last act, if it is no longer there.
    let gone = Memo::new(move |_| {
        let id = session.undoing.act().and_then(|act| act.entry)?;
        let gone = session.document.with(|it| it.here.log.find(&id).is_some_and(|it| it.removed));
        gone.then_some(id)
    });
    let entries = Callback::new(move |()| {
        let history = tank_memos.history.get();
        let gone = gone.get();
        let is_shown = |event: &&Event| !event.removed || Some(&event.id) == gone.as_ref();
        session.document.with_untracked(|document| {
            session.printer.with(|printer| {
                let latest = document.here.log.all().iter().rev().filter(is_shown);
                latest
                    .take(shown.get())
                    .filter_map(|event| match history.replayed(&event.id) {
                        Some(replayed) => Some(entry(event, replayed, printer)),
                        None => event.removed.then(|| stood(event)),
                    })
                    .collect()
            })
        })
    });
    let none = holds(move || count.get() == 0);
    let more = holds(move || count.get() > shown.get());
    let show_more = Callback::new(move |()| shown.update(|it| *it += PAGE));
    view! {
        <section class="card" id="log" aria-labelledby="log-title">
            <h2 id="log-title">{keys::LOG.say()}</h2>
            <When condition=none>
                <p class="hint">{keys::NO_ENTRIES.say()}</p>
            </When>
            <ol class="log" reversed>
                <Drawn what=entries />
            </ol>
            <When condition=more>
                <Button label=keys::SHOW_EARLIER.say() look="small" on_press=show_more />
            </When>
            <Removed />
        </section>
    }
}

/// An entry in words.
pub(super) struct Told {
    pub(super) when: String,
    pub(super) kind: &'static str,
    pub(super) detail: String,
    /// Where it was, and the note with it.
    pub(super) place: String,
    /// What was in the tank after it.
    pub(super) then: String,
    /// What does not fit.
    pub(super) trouble: String,
}

impl Told {
    pub(super) fn of(event: &Event, replayed: &Replayed, printer: &Printer) -> Self {
        let place = [event.place.as_str(), event.note.as_str()];
        let doubts = replayed.doubts.iter().map(|it| tank::doubt(it, printer));
        let unused =
            replayed.unused.iter().map(|it| keys::NotUsed { why: problem(it, printer) }.say());
        Self {
            when: device::date(event.time.local_minutes(), true),
            kind: tank::kind(&event.what),
            detail: tank::detail(event, printer),
            place: place.into_iter().filter(|it| !it.is_empty()).collect::<Vec<_>>().join(" · "),
            then: tank::then(replayed, printer).unwrap_or_default(),
            trouble: doubts.chain(unused).collect::<Vec<_>>().join(" "),
        }
    }
}

fn entry(event: &Event, replayed: &Replayed, printer: &Printer) -> AnyView {
    let session = Session::here();
    let tank_memos = TankMemos::here();
    let Told { when, kind, detail, place, then, trouble } = Told::of(event, replayed, printer);
    let trouble =
        (!trouble.is_empty()).then(|| view! { <p class="note caution">{trouble}</p> }.into_any());
    let name = name_of(event);
    let id = event.id.clone();
    let edit = Callback::new(move |()| edit(session, tank_memos, &id));
    let id = event.id.clone();
    let remove = Callback::new(move |()| {
        let act = Act::at(Spot::Log, Deed::EntryRemoved).on(id.clone());
        session.change_undoably(act, |it| it.here.log.set_removed(&id, true));
    });
    view! {
        <li id=format!("event-{}", event.id) tabindex="-1">
            <p class="when">{when}</p>
            <p>
                <strong>{kind}</strong>
                " "
                {detail}
            </p>
            <p class="place">{place}</p>
            <p class="then">{then}</p>
            {trouble}
            <div class="buttons">
                <Button label=keys::CHANGE.say() look="small" name=keys::ChangeEntry { entry: &name }.say() on_press=edit />
                <Button label=keys::REMOVE.say() look="small" name=keys::RemoveEntry { entry: &name }.say() on_press=remove />
            </div>
            <UndoAtEntry entry=event.id.clone() name=name />
        </li>
    }
    .into_any()
}

/// The name of an entry, which tells it apart from the others.
fn name_of(event: &Event) -> String {
    format!("{}, {}", tank::kind(&event.what), device::date(event.time.local_minutes(), true))
}

/// Where an entry stood that is no longer there.
fn stood(event: &Event) -> AnyView {
    let name = name_of(event);
    view! {
        <li class="gone" tabindex="-1">
            <p class="place">{name.clone()}</p>
            <UndoAtEntry entry=event.id.clone() name=name />
        </li>
    }
    .into_any()
}

/// Opens an entry for changing.
fn edit(session: Session, tank_memos: TankMemos, id: &Id) {
    session.document.update(|it| {
        it.here.draft = it.here.log.find(id).map(Draft::of);
    });
    tank_memos.tried.set(false);
    request_animation_frame(|| route::show("entry-title"));
}

/// Entries that were removed: they are kept and can come back.
#[component]
fn Removed() -> impl IntoView {
    let session = Session::here();
    let ids = Memo::new(move |_| {
        session.document.with(|it| {
            let removed = it.here.log.all().iter().filter(|event| event.removed);
            removed.rev().map(|event| event.id.clone()).collect::<Vec<_>>()
        })
    });
    let items = Callback::new(move |()| {
        let item = |id: Id| {
            let name = session.document.with_untracked(|it| it.here.log.find(&id).map(name_of));
            let name = name.unwrap_or_default();
            let back = Callback::new(move |()| {
                let act = Act::at(Spot::Log, Deed::EntryBroughtBack).on(id.clone());
                session.change_undoably(act, |it| it.here.log.set_removed(&id, false));
            });
            view! {
                <li class="head">
                    <span>{name.clone()}</span>
                    <Button
                        label=keys::BRING_BACK.say()
                        look="small"
                        name=keys::BringBackEntry { entry: &name }.say()
                        on_press=back
                    />
                </li>
            }
            .into_any()
        };
        ids.get().into_iter().map(item).collect()
    });
    let summary = said(move || keys::RemovedEntries { count: ids.with(Vec::len) }.say());
    view! {
        <When condition=holds(move || ids.with(|ids| !ids.is_empty()))>
            <details>
                <summary>{summary}</summary>
                <ul class="plain">
                    <Drawn what=items />
                </ul>
            </details>
        </When>
    }
}
