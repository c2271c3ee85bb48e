//! Fuels on offer, at the pump or at a stop of the route.

mod add;
mod offer;

use fillwright::document::OfferedAt;
use leptos::prelude::*;

use crate::app::session::Session;
use crate::app::widgets::UndoableRows;
use add::AddFuel;
use offer::{OfferForm, OfferFormProps};

/// The fuels on offer somewhere, and what adds one.
#[component]
pub(crate) fn Offers(place: OfferedAt) -> impl IntoView {
    let session = Session::here();
    let ids = Memo::new(move |_| {
        session
            .document
            .with(|it| it.offers(place).iter().map(|offer| offer.id).collect::<Vec<_>>())
    });
    view! {
        <UndoableRows ids=ids.into() row=|id| OfferForm(OfferFormProps { id }).into_any() />
        <AddFuel place=place />
    }
}
