//! The card for all that was entered: out, in, and away.

use fillwright::document::{CarMerge, Document, LARGEST_DOCUMENT};
use fillwright::message::keys::data as keys;
use fillwright::message::keys::shared;
use fillwright::words;
use fillwright::words::deeds::Deed;
use fillwright::words::files;
use leptos::prelude::*;

use crate::app::session::Session;
use crate::app::storage;
use crate::app::transfer::{self, FileError};
use crate::app::undo::{Act, Spot};
use crate::app::widgets::{Button, Drawn, FileButton, UndoLine, When, holds, said};

/// What can be done with all that was entered: out, in, and away.
#[component]
pub(crate) fn DataCard() -> impl IntoView {
    let session = Session::here();
    view! {
        <section class="card" id="data" aria-labelledby="data-title">
            <h2 id="data-title">{keys::DATA.say()}</h2>
            <p class="hint">
                {keys::DATA_HINT.say()}
            </p>
            <div class="buttons">
                <Button
                    label=keys::EXPORT_ALL.say()
                    on_press=Callback::new(move |()| transfer::export(session))
                />
                <Button
                    label=keys::EXPORT_LOG.say()
                    on_press=Callback::new(move |()| transfer::export_log(session))
                />
            </div>
            <Import />
            <UndoLine spot=Spot::Import />
            <Leftovers />
        </section>
    }
}

/// A file that was chosen, read, or why it holds no document.
type Chosen = Option<Result<Document, String>>;

/// Takes in a file: first a look at what it holds, then what to do with it.
#[component]
pub(crate) fn Import() -> impl IntoView {
    let session = Session::here();
    let chosen = RwSignal::<Chosen>::new(None);
    let choose = Callback::new(move |text: Option<Result<String, FileError>>| {
        chosen.set(text.map(|text| {
            let text = text.map_err(FileError::say)?;
            Document::from_json(&text).map_err(|error| files::document(&error))
        }));
    });
    let wrong = said(move || {
        chosen.with(|it| match it {
            Some(Err(error)) => keys::NothingTaken { why: error }.say(),
            _ => String::new(),
        })
    });
    view! {
        <FileButton
            label=keys::IMPORT.say()
            accept=".json,application/json"
            largest=LARGEST_DOCUMENT
            on_text=choose
        />
        <div role="status" class="import">
            <When condition=holds(move || wrong.with(|it| !it.is_empty()))>
                <p class="note caution">{wrong}</p>
            </When>
            <When condition=holds(move || chosen.with(|it| matches!(it, Some(Ok(_)))))>
                <Preview chosen=chosen />
            </When>
        </div>
        <When condition=holds(move || session.is_new.get())>
            <p class="hint">{keys::IMPORT_HINT.say()}</p>
        </When>
    }
}

/// What a file would bring, and the ways to take it in.
#[component]
fn Preview(chosen: RwSignal<Chosen>) -> impl IntoView {
    let session = Session::here();
    let lines = move |()| -> Vec<AnyView> {
        let Some(Ok(other)) = chosen.get() else { return Vec::new() };
        let mut here = session.document.get();
        let merged = here.merge(other);
        merged.iter().map(|car| view! { <li>{line(car)}</li> }.into_any()).collect()
    };
    let take = move |deed, take: fn(&mut Document, Document)| {
        let Some(Ok(other)) = chosen.get_untracked() else { return };
        chosen.set(None);
        if session.is_new.get_untracked() {
            session.show(other);
            session.is_new.set(false);
        } else {
            session.change_undoably(Act::at(Spot::Import, deed), |it| take(it, other));
        }
    };
    let merge = Callback::new(move |()| take(Deed::FileMerged, |it, other| drop(it.merge(other))));
    let replace = Callback::new(move |()| take(Deed::FileReplaced, Document::replace));
    view! {
        <ul class="plain">
            <Drawn what=Callback::new(lines) />
        </ul>
        <When condition=holds(move || !session.is_new.get())>
            <p class="hint">
                {keys::MERGE_HINT.say()}
            </p>
        </When>
        <div class="buttons">
            {move || {
                if session.is_new.get() {
                    view! { <Button label=keys::USE_IT.say() look="strong" on_press=replace /> }.into_any()
                } else {
                    view! {
                        <Button label=keys::MERGE.say() look="strong" on_press=merge />
                        <Button label=keys::REPLACE.say() on_press=replace />
                    }
                        .into_any()
                }
            }}
            <Button label=keys::CANCEL.say() on_press=Callback::new(move |()| chosen.set(None)) />
        </div>
    }
}

/// “Estate car: 3 entries new, 1 changed, 12 as here, 2026-05-01 to 2026-06-03”
fn line(car: &CarMerge) -> String {
    let name = words::name_or_unnamed(&car.name);
    let mut parts = Vec::new();
    if car.is_new {
        parts.push(keys::A_NEW_CAR.say().to_owned());
    }
    let count = car.added + car.changed + car.same;
    if count == 0 {
        parts.push(keys::NO_ENTRIES.say().to_owned());
    } else if car.is_new {
        parts.push(shared::Entries { count }.say());
    } else {
        parts.push(keys::EntriesNew { count: car.added }.say());
        parts.push(keys::EntriesChanged { count: car.changed }.say());
        parts.push(keys::EntriesSame { count: car.same }.say());
    }
    if car.removed > 0 {
        parts.push(keys::EntriesRemoved { count: car.removed }.say());
    }
    if let Some((first, last)) = car.span {
        let day = |local: String| local.chars().take("2026-05-03".len()).collect::<String>();
        parts.push(keys::Days { from: day(first.local()), to: day(last.local()) }.say());
    }
    format!("{name}: {}", parts.join(", "))
}

/// What was removed or could not be read, and is still kept.
#[component]
fn Leftovers() -> impl IntoView {
    let session = Session::here();
    let removed = Memo::new(move |_| {
        session.document.with(|it| {
            let entries = it.cars().filter(|car| !car.removed).flat_map(|car| car.log.all());
            let entries = entries.filter(|event| event.removed).count();
            (entries, it.others.iter().filter(|car| car.removed).count())
        })
    });
    let aside = session.aside;
    let kept = said(move || {
        let (entries, cars) = removed.get();
        let mut parts = Vec::new();
        if entries > 0 {
            parts.push(keys::RemovedEntries { count: entries }.say());
        }
        if cars > 0 {
            parts.push(keys::RemovedCars { count: cars }.say());
        }
        if let count @ 1.. = aside.get() {
            parts.push(keys::Unreadable { count }.say());
        }
        parts.join(", ")
    });
    let sure = RwSignal::new(false);
    let label = move || if sure.get() { keys::FORGET_SURE.say() } else { keys::FORGET.say() };
    view! {
        <When condition=holds(move || kept.with(|it| !it.is_empty()))>
            <p class="hint">{move || keys::StillKept { what: kept.get() }.say()}</p>
            <div class="buttons">
                <When condition=holds(move || { aside.get() > 0 })>
                    <Button
                        label=keys::DOWNLOAD_UNREADABLE.say()
                        on_press=Callback::new(move |()| transfer::download_aside())
                    />
                </When>
                <button
                    type="button"
                    class="button"
                    on:click=move |_| {
                        if sure.get_untracked() {
                            storage::forget(session);
                        }
                        sure.update(|sure| *sure = !*sure);
                    }
                    on:blur=move |_| sure.set(false)
                >
                    {label}
                </button>
            </div>
        </When>
    }
}
