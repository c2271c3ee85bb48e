//! A result that changes while somebody types, for those who listen to the page.

use std::time::Duration;

use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;

/// So long a result must stand before it is said.
const PAUSE: Duration = Duration::from_secs(1);

/// A result that changes while somebody types, for those who listen to the page. It is
/// said once it stands, not at each key, and not for what was there when the view opened:
/// that is read with the rest.
#[component]
pub(crate) fn Spoken(words: Signal<String>) -> impl IntoView {
    let spoken = RwSignal::new(String::new());
    let last = StoredValue::new(words.get_untracked());
    let waiting = StoredValue::new(None::<TimeoutHandle>);
    let stop_waiting = move || {
        waiting.update_value(|it| {
            if let Some(handle) = it.take() {
                handle.clear();
            }
        });
    };
    Effect::new(move |_| {
        let now = words.get();
        stop_waiting();
        // There and back is no change.
        if last.with_value(|last| *last == now) {
            return;
        }
        let say = move || {
            last.set_value(now.clone());
            spoken.set(now);
        };
        // Without a timer there is no page either.
        waiting.set_value(set_timeout_with_handle(say, PAUSE).ok());
    });
    on_cleanup(stop_waiting);
    view! {
        <p class="visually-hidden" role="status">
            {spoken}
        </p>
    }
}
