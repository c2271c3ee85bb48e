//! The field that adds a fuel.

use fillwright::document::{Document, Field, FuelForm, FuelPart};
use fillwright::fuel::grades::CATALOGUE;
use leptos::prelude::*;

use super::Shelf;
use crate::app::state::State;
use crate::app::widgets::{Button, Choices};

/// The key of a choice in the list of fuels to add.
const OTHER: &str = "other";
const OWN: &str = "own-";

/// What adds a fuel: one of the owner's, one of the catalogue, or another.
#[component]
pub(super) fn AddFuel(shelf: Shelf) -> impl IntoView {
    let state = State::here();
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
        state.document.update(|it| add_to(shelf, it, &key));
        let added = state.document.with_untracked(|it| it.here.last_id);
        let part = Some(Field::Fuel(added, FuelPart::Share).id());
        state.route.update(|route| route.part = part);
    });
    let id = match shelf {
        Shelf::Here => "fuel-to-add".to_owned(),
        Shelf::Halt(id) => format!("fuel-to-add-{id}"),
    };
    view! {
        <div class="add">
            <Choices
                id=id
                label="Add a fuel"
                choices=choices.into()
                chosen=to_add.into()
                on_choice=Callback::new(move |key| to_add.set(key))
            />
            <Button label="Add" on_press=add />
        </div>
    }
}

/// Adds the fuel that a choice names.
fn add_to(shelf: Shelf, document: &mut Document, key: &str) {
    let own = key.strip_prefix(OWN).and_then(|id| id.parse::<u32>().ok());
    let own =
        own.and_then(|id| document.here.car.own_fuels.iter().find(|own| own.id == id)).cloned();
    let grade = CATALOGUE.iter().find(|grade| grade.id == key);
    let mut form = own.or_else(|| grade.map(FuelForm::of_grade)).unwrap_or_default();
    form.id = document.here.next_id();
    if let Some(fuels) = shelf.fuels_mut(document) {
        if form.name.is_empty() {
            form.name = format!("Fuel {}", fuels.len() + 1);
        }
        fuels.push(form);
    }
}
