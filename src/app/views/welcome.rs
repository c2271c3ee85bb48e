//! The view of the first start.

use fillwright::message::keys::welcome as keys;
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
            <h2>{keys::WHAT_TO_PUT_IN.say()}</h2>
            <p>
                {keys::WELCOME.say()}
            </p>
            <div class="buttons">
                <Button
                    label=keys::OWN_CAR.say()
                    look="strong"
                    on_press=Callback::new(move |()| storage::start(session, false))
                />
                <Button
                    label=keys::EXAMPLE.say()
                    on_press=Callback::new(move |()| storage::start(session, true))
                />
            </div>
            <Import />
            <p class="note caution">
                {keys::ESTIMATES.say()}
            </p>
        </section>
    }
}
