//! What is in the tank between fills, and which calibration may be selected.

mod charts;
mod entry;
mod entry_fields;
mod log;
mod now;
mod sheet;
mod workings;

use leptos::prelude::*;

use crate::app::stages::{Deferred, Stages};
use crate::app::tank_memos::TankMemos;
use crate::app::widgets::{Sheet, holds};
use charts::ChartsCard;
use entry::EntryCard;
use log::LogCard;
use now::{NowCard, VerdictsCard};
use sheet::Paper;

/// The Tank view: what is in it, and the log that tells.
#[component]
pub(crate) fn TankView() -> impl IntoView {
    let tank_memos = TankMemos::here();
    let printing = RwSignal::new(false);
    let ready = holds(move || tank_memos.answer.with(Option::is_some));
    Stages::here().compute(tank_memos.answer);
    view! {
        <div class="view two">
            <div class="question">
                <Deferred>
                    <NowCard printing=printing />
                </Deferred>
                <Deferred>
                    <VerdictsCard />
                </Deferred>
                <Deferred>
                    <ChartsCard />
                </Deferred>
            </div>
            <div class="question">
                <Deferred>
                    <EntryCard />
                </Deferred>
                <Deferred>
                    <LogCard />
                </Deferred>
            </div>
        </div>
        <Sheet printing=printing ready=ready>
            <Paper />
        </Sheet>
    }
}
