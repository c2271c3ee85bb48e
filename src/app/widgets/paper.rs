use leptos::{ev, prelude::*};

use super::{Button, When, holds};

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
            <Button label="Print" look="small" on_press=print />
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
