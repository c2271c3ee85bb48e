//! Fuels on offer, at the pump or at a stop of the route.

mod add;
mod offer;

use fillwright::document::{Document, FuelForm};
use leptos::prelude::*;

use crate::app::state::State;
use crate::app::widgets::UndoableRows;
use add::AddFuel;
use offer::{OfferForm, OfferFormProps};

/// Where fuels are on offer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Shelf {
    /// Where the car is filled now.
    Here,
    /// At the stop of the route with this number.
    Halt(u32),
}

impl Shelf {
    fn fuels(self, document: &Document) -> &[FuelForm] {
        let stop = |id| document.here.route.stops.iter().find(move |it| it.id == id);
        match self {
            Self::Here => &document.here.fill.offers,
            Self::Halt(id) => stop(id).map_or(&[], |it| &it.fuels),
        }
    }

    fn fuels_mut(self, document: &mut Document) -> Option<&mut Vec<FuelForm>> {
        match self {
            Self::Here => Some(&mut document.here.fill.offers),
            Self::Halt(id) => {
                let stop = document.here.route.stops.iter_mut().find(|it| it.id == id)?;
                Some(&mut stop.fuels)
            }
        }
    }
}

/// The fuels on offer somewhere, and what adds one.
#[component]
pub(crate) fn Offers(shelf: Shelf) -> impl IntoView {
    let state = State::here();
    let ids = Memo::new(move |_| {
        state.document.with(|it| shelf.fuels(it).iter().map(|offer| offer.id).collect::<Vec<_>>())
    });
    view! {
        <UndoableRows ids=ids.into() row=|id| OfferForm(OfferFormProps { id }).into_any() />
        <AddFuel shelf=shelf />
    }
}
