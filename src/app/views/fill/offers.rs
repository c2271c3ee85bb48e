//! The card of the fuels on offer.

use fillwright::document::Field;
use fillwright::document::OfferedAt;
use fillwright::message::keys::fill as keys;
use leptos::prelude::*;

use crate::app::field_errors::FieldErrors;
use crate::app::views::fuels::Offers;
use crate::app::widgets::{When, holds, said};

/// The fuels on offer.
#[component]
pub(super) fn OffersCard() -> impl IntoView {
    let errors = FieldErrors::here();
    let nothing = said(move || errors.message(Field::Offers));
    view! {
        <section class="card" id="offers" tabindex="-1" aria-labelledby="on-offer">
            <h2 id="on-offer">{keys::ON_OFFER.say()}</h2>
            <When condition=holds(move || nothing.with(|it| !it.is_empty()))>
                <p class="note">{nothing}</p>
            </When>
            <Offers place=OfferedAt::Pump />
        </section>
    }
}
