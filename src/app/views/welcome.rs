use leptos::prelude::*;

use crate::app::state::State;

/// The first start.
#[component]
pub(crate) fn Welcome() -> impl IntoView {
    let state = State::here();
    view! {
        <section class="welcome card">
            <h2>"What to put in the tank"</h2>
            <p>
                "Fillwright works out how many litres of each fuel make the ethanol blend that your calibration needs, and how far off that can be. Everything stays on this device."
            </p>
            <div class="buttons">
                <button class="button strong" on:click=move |_| state.start(false)>
                    "Enter my own car"
                </button>
                <button class="button" on:click=move |_| state.start(true)>
                    "Look at an invented example"
                </button>
            </div>
            <p class="note caution">
                "It estimates; it does not certify. The author of your calibration has the last word, and local law comes first."
            </p>
        </section>
    }
}
