//! A button that has a file chosen and hands on its text.

use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::app::transfer::{self, FileError};

/// A button that has a file chosen and hands on its text.
#[component]
pub(crate) fn FileButton(
    label: &'static str,
    /// The endings and kinds of the files to choose from, as HTML writes them.
    accept: &'static str,
    /// The most that is read, in bytes.
    largest: usize,
    /// Nothing as soon as a file is chosen, then what was read from it.
    on_text: Callback<Option<Result<String, FileError>>>,
) -> impl IntoView {
    view! {
        <label class="button file">
            {label}
            <input
                type="file"
                accept=accept
                on:change:target=move |event| {
                    let input = event.target();
                    on_text.run(None);
                    if let Some(file) = input.files().and_then(|files| files.get(0)) {
                        spawn_local(async move {
                            let text = transfer::read(file, largest).await;
                            // The button may be gone by now, and whom the text concerns.
                            on_text.try_run(Some(text));
                        });
                    }
                    // The same file may be chosen again.
                    input.set_value("");
                }
            />
        </label>
    }
}
