//! What to put in, here and now.

mod aim;
mod octane_missing;
mod offers;
mod put_in;
mod record;
mod results;
mod sheet;
mod steps;
mod tank;
mod workings;

use fillwright::share::Kind;
use leptos::prelude::*;

use aim::AimCard;
use offers::OffersCard;
use put_in::{PutInCard, ShortAnswer, is_current};
use sheet::Paper;
use tank::TankCard;

use super::share::ShareCard;
use crate::app::stages::{Later, Stages};
use crate::app::state::State;
use crate::app::widgets::Sheet;

/// The Fill view: the question, and the answer beside or below it.
#[component]
pub(crate) fn FillView() -> impl IntoView {
    let printing = RwSignal::new(false);
    let state = State::here();
    Stages::here().reckon(state.reading);
    Stages::here().reckon(state.shown);
    view! {
        <div class="view two">
            <div class="question">
                <Later>
                    <TankCard />
                </Later>
                <Later>
                    <OffersCard />
                </Later>
                <Later>
                    <AimCard />
                </Later>
            </div>
            <div class="answer">
                <Later>
                    <PutInCard printing=printing />
                </Later>
                <Later>
                    <ShareCard kind=Kind::Fill />
                </Later>
            </div>
        </div>
        <Later>
            <ShortAnswer />
        </Later>
        <Sheet printing=printing ready=is_current(State::here())>
            <Paper />
        </Sheet>
    }
}
