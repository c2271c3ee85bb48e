//! What to put in, here and now.

mod aim;
mod octane_missing;
mod offers;
mod poured;
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
use poured::{PouredCard, ShortAnswer, is_current};
use sheet::Paper;
use tank::TankCard;

use super::share::ShareCard;
use crate::app::field_errors::FieldErrors;
use crate::app::fill_memos::FillMemos;
use crate::app::stages::{Deferred, Stages};
use crate::app::widgets::Sheet;

/// The Fill view: the question, and the answer beside or below it.
#[component]
pub(crate) fn FillView() -> impl IntoView {
    let printing = RwSignal::new(false);
    let fill_memos = FillMemos::here();
    FieldErrors::provide(move || fill_memos.reading.with(|it| it.field_errors.clone()));
    Stages::here().compute(fill_memos.reading);
    Stages::here().compute(fill_memos.shown);
    view! {
        <div class="view two">
            <div class="question">
                <Deferred>
                    <TankCard />
                </Deferred>
                <Deferred>
                    <OffersCard />
                </Deferred>
                <Deferred>
                    <AimCard />
                </Deferred>
            </div>
            <div class="answer">
                <Deferred>
                    <PouredCard printing=printing />
                </Deferred>
                <Deferred>
                    <ShareCard kind=Kind::Fill />
                </Deferred>
            </div>
        </div>
        <Deferred>
            <ShortAnswer />
        </Deferred>
        <Sheet printing=printing ready=is_current(fill_memos)>
            <Paper />
        </Sheet>
    }
}
