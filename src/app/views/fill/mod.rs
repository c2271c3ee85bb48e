//! What to put in, here and now.

mod aim;
mod offers;
mod put_in;
mod results;
mod tank;
mod workings;

use fillwright::logbook::share::Kind;
use leptos::prelude::*;

use aim::AimCard;
use offers::OffersCard;
use put_in::{PutInCard, ShortAnswer};
use tank::TankCard;

use super::share::ShareCard;

/// The Fill view: the question, and the answer beside or below it.
#[component]
pub(crate) fn FillView() -> impl IntoView {
    view! {
        <div class="view two">
            <div class="question">
                <TankCard />
                <OffersCard />
                <AimCard />
            </div>
            <div class="answer">
                <PutInCard />
                <ShareCard kind=Kind::Fill />
            </div>
        </div>
        <ShortAnswer />
    }
}
