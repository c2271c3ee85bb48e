use fillwright::fuel::grades::CATALOGUE;
use fillwright::logbook::{Document, Field, FuelForm};
use leptos::prelude::*;

use super::offer::OfferForm;
use crate::app::state::State;
use crate::app::widgets::Choices;

/// The key of a choice in the list of fuels to add.
const OTHER: &str = "other";
const OWN: &str = "own-";

/// The fuels on offer.
#[component]
pub(super) fn OffersCard() -> impl IntoView {
    let state = State::here();
    let ids = Memo::new(move |_| {
        state.document.with(|it| it.fill.offers.iter().map(|offer| offer.id).collect::<Vec<_>>())
    });
    let nothing = state.complaint(Field::Offers);
    let to_add = RwSignal::new(OTHER.to_owned());
    let choices = Memo::new(move |_| {
        let mut choices = vec![(OTHER.to_owned(), "Another fuel, to be filled in".to_owned())];
        state.document.with(|it| {
            choices.extend(
                it.car
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
    let add = move |_| {
        let key = to_add.get_untracked();
        state.document.update(|it| add_offer(it, &key));
    };
    view! {
        <section class="card" aria-labelledby="on-offer">
            <h2 id="on-offer">"On offer here"</h2>
            <Show when=move || nothing.with(Option::is_some)>
                <p class="note caution">{move || nothing.get()}</p>
            </Show>
            <For each=move || ids.get() key=|id| *id let:id>
                <OfferForm id=id />
            </For>
            <div class="add">
                <Choices
                    id="fuel-to-add"
                    label="Add a fuel"
                    choices=choices
                    chosen=to_add
                    on_choice=Callback::new(move |key| to_add.set(key))
                />
                <button class="button" on:click=add>
                    "Add"
                </button>
            </div>
        </section>
    }
}

/// Adds the fuel that a choice names.
fn add_offer(document: &mut Document, key: &str) {
    let own = key.strip_prefix(OWN).and_then(|id| id.parse::<u32>().ok());
    let own = own.and_then(|id| document.car.own_fuels.iter().find(|own| own.id == id)).cloned();
    let grade = CATALOGUE.iter().find(|grade| grade.id == key);
    let mut form = own.or_else(|| grade.map(FuelForm::of_grade)).unwrap_or_default();
    form.id = document.next_id();
    if form.name.is_empty() {
        form.name = format!("Fuel {}", document.fill.offers.len() + 1);
    }
    document.fill.offers.push(form);
}
