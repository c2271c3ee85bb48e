use fillwright::fuel::grades::CATALOGUE;
use fillwright::logbook::{Document, Field, FuelForm, FuelPart};
use leptos::prelude::*;

use super::offer::{OfferForm, OfferFormProps};
use crate::app::state::State;
use crate::app::widgets::{Button, Choices, Rows, When, holds, said};

/// The key of a choice in the list of fuels to add.
const OTHER: &str = "other";
const OWN: &str = "own-";

/// The fuels on offer.
#[component]
pub(super) fn OffersCard() -> impl IntoView {
    let state = State::here();
    let ids = Memo::new(move |_| {
        state
            .document
            .with(|it| it.here.fill.offers.iter().map(|offer| offer.id).collect::<Vec<_>>())
    });
    let nothing = said(move || state.complaint(Field::Offers).unwrap_or_default());
    let to_add = RwSignal::new(OTHER.to_owned());
    let choices = Memo::new(move |_| {
        let mut choices = vec![(OTHER.to_owned(), "Another fuel, to be filled in".to_owned())];
        state.document.with(|it| {
            choices.extend(
                it.here
                    .car
                    .own_fuels
                    .iter()
                    .map(|own| (format!("{OWN}{}", own.id), format!("My {}", own.name))),
            );
        });
        choices.extend(
            CATALOGUE
                .iter()
                .map(|grade| (grade.id.to_owned(), format!("{} ({})", grade.name, grade.region))),
        );
        choices
    });
    let add = Callback::new(move |()| {
        let key = to_add.get_untracked();
        state.document.update(|it| add_offer(it, &key));
        let added = state.document.with_untracked(|it| it.here.last_id);
        let part = Some(Field::Fuel(added, FuelPart::Share).id());
        state.route.update(|route| route.part = part);
    });
    view! {
        <section class="card" id="offers" aria-labelledby="on-offer">
            <h2 id="on-offer">"On offer here"</h2>
            <When condition=holds(move || nothing.with(|it| !it.is_empty()))>
                <p class="note caution">{nothing}</p>
            </When>
            <Rows ids=ids.into() row=|id| OfferForm(OfferFormProps { id }).into_any() />
            <div class="add">
                <Choices
                    id="fuel-to-add"
                    label="Add a fuel"
                    choices=choices.into()
                    chosen=to_add.into()
                    on_choice=Callback::new(move |key| to_add.set(key))
                />
                <Button label="Add" on_press=add />
            </div>
        </section>
    }
}

/// Adds the fuel that a choice names.
fn add_offer(document: &mut Document, key: &str) {
    let own = key.strip_prefix(OWN).and_then(|id| id.parse::<u32>().ok());
    let own =
        own.and_then(|id| document.here.car.own_fuels.iter().find(|own| own.id == id)).cloned();
    let grade = CATALOGUE.iter().find(|grade| grade.id == key);
    let mut form = own.or_else(|| grade.map(FuelForm::of_grade)).unwrap_or_default();
    form.id = document.here.next_id();
    if form.name.is_empty() {
        form.name = format!("Fuel {}", document.here.fill.offers.len() + 1);
    }
    document.here.fill.offers.push(form);
}
