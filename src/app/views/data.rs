//! The card for all that was entered: out, in, and away.

use fillwright::document::{CarMerge, Document, LARGEST_DOCUMENT};
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
            <h2 id="data-title">"Data"</h2>
            <p class="hint">
                "All of it is on this device only. An export is a copy to keep, or to take to another device."
            </p>
            <div class="buttons">
                <Button
                    label="Export everything"
                    on_press=Callback::new(move |()| transfer::export(session))
                />
                <Button
                    label="Export the log as a table"
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
            Some(Err(error)) => format!("Nothing was taken in: {error}."),
            _ => String::new(),
        })
    });
    view! {
        <FileButton
            label="Import an export"
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
            <p class="hint">"An export from another device brings its cars and their logs."</p>
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
                "Merging adds what is new and leaves your settings and forms. Replacing takes the file for everything; what is not in it is removed. Both can be undone."
            </p>
        </When>
        <div class="buttons">
            {move || {
                if session.is_new.get() {
                    view! { <Button label="Use it" look="strong" on_press=replace /> }.into_any()
                } else {
                    view! {
                        <Button label="Merge" look="strong" on_press=merge />
                        <Button label="Replace everything" on_press=replace />
                    }
                        .into_any()
                }
            }}
            <Button label="Cancel" on_press=Callback::new(move |()| chosen.set(None)) />
        </div>
    }
}

/// “Estate car: 3 entries new, 1 changed, 12 as here, 2026-05-01 to 2026-06-03”
fn line(car: &CarMerge) -> String {
    let name = words::name_or_unnamed(&car.name);
    let mut parts = Vec::new();
    if car.is_new {
        parts.push("a new car".to_owned());
    }
    let count = car.added + car.changed + car.same;
    if count == 0 {
        parts.push("no entries".to_owned());
    } else if car.is_new {
        parts.push(words::counted(count, "entry", "entries"));
    } else {
        parts.push(format!("{} new", words::counted(car.added, "entry", "entries")));
        parts.push(format!("{} changed", car.changed));
        parts.push(format!("{} as here", car.same));
    }
    if car.removed > 0 {
        parts.push(format!("{} of them removed", car.removed));
    }
    if let Some((first, last)) = car.span {
        let day = |local: String| local.chars().take("2026-05-03".len()).collect::<String>();
        parts.push(format!("{} to {}", day(first.local()), day(last.local())));
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
        let kinds = [
            (entries, "removed entry", "removed entries"),
            (cars, "removed car", "removed cars"),
            (aside.get(), "text that could not be read", "texts that could not be read"),
        ];
        let kinds = kinds.iter().filter(|kind| kind.0 > 0);
        let parts: Vec<String> = kinds.map(|it| words::counted(it.0, it.1, it.2)).collect();
        parts.join(", ")
    });
    let sure = RwSignal::new(false);
    let label =
        move || if sure.get() { "Press again: this cannot be undone" } else { "Forget for good" };
    view! {
        <When condition=holds(move || kept.with(|it| !it.is_empty()))>
            <p class="hint">"Still kept: " {kept} "."</p>
            <div class="buttons">
                <When condition=holds(move || { aside.get() > 0 })>
                    <Button
                        label="Download the unreadable texts"
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
