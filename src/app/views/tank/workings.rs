//! The workings of the tank's estimate, for checking by hand.

use fillwright::message::keys::frame;
use fillwright::message::keys::tank as keys;
use leptos::prelude::*;

use crate::app::session::Session;
use crate::app::tank_memos::TankMemos;
use crate::app::widgets::{Drawn, working_shown};

/// How the estimate came about, for checking by hand.
#[component]
pub(super) fn Workings() -> impl IntoView {
    let session = Session::here();
    let tank_memos = TankMemos::here();
    // Worked out only while somebody looks.
    let open = RwSignal::new(false);
    let lines = Callback::new(move |()| {
        if !open.get() {
            return Vec::new();
        }
        let lines = tank_memos
            .course
            .with(|course| tank_memos.history.with(|history| history.workings(course)));
        session.printer.with(|printer| lines.iter().map(|it| working_shown(it, printer)).collect())
    });
    view! {
        <details
            id="tank-workings"
            on:toggle:target=move |event| open.set(event.target().has_attribute("open"))
        >
            <summary>{frame::WORKINGS.say()}</summary>
            <p class="hint">
                <a href="#/methods/tank">{frame::ALL_FORMULAS.say()}</a>
            </p>
            <p class="hint">
                {keys::WORKINGS_MEAN.say()}
            </p>
            <Drawn what=lines />
        </details>
    }
}
