//! What is in the tank between fills, and which calibration may be selected.

mod charts;
mod entry;
mod entry_fields;
mod log;
mod now;
mod workings;

use leptos::prelude::*;

use charts::ChartsCard;
use entry::EntryCard;
use log::LogCard;
use now::{NowCard, VerdictsCard};

/// The Tank view: what is in it, and the log that tells.
#[component]
pub(crate) fn TankView() -> impl IntoView {
    view! {
        <div class="view two">
            <div class="question">
                <NowCard />
                <VerdictsCard />
                <ChartsCard />
            </div>
            <div class="question">
                <EntryCard />
                <LogCard />
            </div>
        </div>
    }
}
