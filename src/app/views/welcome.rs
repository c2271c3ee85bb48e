//! The view of the first start.

use leptos::prelude::*;

use super::data::Import;
use crate::app::session::Session;
use crate::app::storage;
use crate::app::widgets::Button;

/// The first start.
#[component]
pub(crate) fn Welcome() -> impl IntoView {
    let session = Session::here();
    view! {
        <section class="welcome card">
            <h2>"What to put in the tank"</h2>
            <p>
                "Fillwright works out how many litres of each fuel make the ethanol blend that your calibration needs, and how far off that can be. Everything stays on this device."
            </p>
            <div class="buttons">
                <Button
                    label="Enter my own car"
                    look="strong"
                    on_press=Callback::new(move |()| storage::start(session, false))
                />
                <Button
                    label="Look at an invented example"
                    on_press=Callback::new(move |()| storage::start(session, true))
                />
            </div>
            <Import />
            <p class="note caution">
                "It estimates; it does not certify. The author of your calibration has the last word, and local law comes first."
            </p>
        </section>
    }
}
