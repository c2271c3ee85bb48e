//! What goes to the printer: the button, and the head and the sources of a sheet.

use fillwright::document::CarFile;
use fillwright::message::keys::frame as keys;
use fillwright::words::{self, sources::cited};
use fillwright::workings::Working;
use leptos::{ev, prelude::*};

use super::{Button, When, holds};
use crate::app::device;

/// The button that prints, where there is something to be printed.
#[component]
pub(crate) fn PrintButton(printing: RwSignal<bool>, ready: Signal<bool>) -> impl IntoView {
    let print = Callback::new(move |()| {
        printing.set(true);
        // The sheet has to be on the page before the printer looks at it.
        request_animation_frame(|| {
            if let Err(error) = window().print() {
                leptos::logging::error!("{error:?}");
            }
        });
    });
    view! {
        <When condition=ready>
            <Button label=keys::PRINT.say() look="small" on_press=print />
        </When>
    }
}

/// A sheet, which is made only for the printer.
#[component]
pub(crate) fn Sheet(
    printing: RwSignal<bool>,
    ready: Signal<bool>,
    children: ChildrenFn,
) -> impl IntoView {
    let before = window_event_listener(ev::beforeprint, move |_| printing.set(true));
    let after = window_event_listener(ev::afterprint, move |_| printing.set(false));
    on_cleanup(move || {
        before.remove();
        after.remove();
    });
    view! {
        <When condition=holds(move || {
            printing.get() && ready.get()
        })>
            <article class="sheet">{children()}</article>
        </When>
    }
}

/// The head of a sheet: what it is about, the car and the day.
pub(crate) fn sheet_head(what: &str, car: &CarFile, more: &str) -> AnyView {
    let today: String = device::now().chars().take("2026-05-03".len()).collect();
    view! {
        <header>
            <h1>{format!("{what}: {}", words::car(car))}</h1>
            <p>{format!("{today}. {more}")}</p>
            <When condition=Signal::stored(car.demo)>
                <p>{keys::INVENTED_SHEET.say()}</p>
            </When>
        </header>
    }
    .into_any()
}

/// Where formulas and constants of a computation come from.
pub(crate) fn sheet_sources(lines: &[Working]) -> AnyView {
    let mut sources: Vec<String> =
        lines.iter().flat_map(|line| line.sources.iter().map(cited)).collect();
    sources.sort();
    sources.dedup();
    view! {
        <section class="sources">
            <h2>{keys::SOURCES.say()}</h2>
            <ul>{sources.into_iter().map(|it| view! { <li>{it}</li> }).collect::<Vec<_>>()}</ul>
        </section>
    }
    .into_any()
}
