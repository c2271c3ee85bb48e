//! The card that says which car it is, and changes between cars.

use fillwright::document::{CarFile, Document, Field, Id};
use fillwright::message::keys::car as keys;
use fillwright::words;
use fillwright::words::deeds::Deed;
use leptos::prelude::*;

use crate::app::device;
use crate::app::session::Session;
use crate::app::undo::{Act, Spot};
use crate::app::widgets::{Button, Choices, Drawn, TextField, UndoLine, When, holds, said};

/// Which car it is: its name, the others, and those that were removed.
#[component]
pub(crate) fn CarsCard() -> impl IntoView {
    let session = Session::here();
    let several = holds(move || session.document.with(|it| present(it).count() > 1));
    let choices = Memo::new(move |_| {
        session.document.with(|it| {
            let mut cars: Vec<&CarFile> = present(it).collect();
            // In an order that stays when another one is chosen.
            cars.sort_by_key(|car| &car.id);
            let pair = |car: &&CarFile| (car.id.to_string(), words::car(car));
            cars.iter().map(pair).collect::<Vec<_>>()
        })
    });
    let choose = Callback::new(move |key: String| {
        if let Ok(id) = Id::new(&key) {
            session.choose(&id);
        }
    });
    view! {
        <section class="card" id="cars" aria-labelledby="cars-title">
            <h2 id="cars-title">{keys::CAR.say()}</h2>
            <When condition=several>
                <Choices
                    id="car-in-use"
                    label=keys::IN_USE.say()
                    choices=choices.into()
                    chosen=said(move || session.document.with(|it| it.here.id.to_string()))
                    on_choice=choose
                />
            </When>
            <TextField
                field=Field::CarName
                label=keys::NAME.say()
                words=true
            />
            <div class="buttons">
                <Button
                    label=keys::ADD_A_CAR.say()
                    look="small"
                    on_press=Callback::new(move |()| {
                        let act = Act::at(Spot::Cars, Deed::CarAdded);
                        session.change_undoably(act, |it| it.add(CarFile::new(device::new_id())));
                    })
                />
                <Button
                    label=keys::REMOVE_CAR.say()
                    look="small"
                    on_press=Callback::new(move |()| {
                        session.change_undoably(Act::at(Spot::Cars, Deed::CarRemoved), remove);
                    })
                />
            </div>
            <UndoLine spot=Spot::Cars />
            <Removed />
        </section>
    }
}

/// The cars that were removed, to be brought back.
#[component]
fn Removed() -> impl IntoView {
    let session = Session::here();
    let removed = Memo::new(move |_| {
        session.document.with(|it| {
            let removed = it.others.iter().filter(|car| car.removed);
            removed.map(|car| (car.id.clone(), words::car(car))).collect::<Vec<_>>()
        })
    });
    let row = move |(id, name): (Id, String)| {
        let bring_back = Callback::new(move |()| {
            session.change_undoably(Act::at(Spot::Cars, Deed::CarBroughtBack), |it| {
                if let Some(car) = it.car_mut(&id) {
                    car.removed = false;
                }
            });
        });
        view! {
            <li class="head">
                <span>{keys::Removed { car: &name }.say()}</span>
                <Button
                    label=keys::BRING_BACK.say()
                    look="small"
                    name=keys::BringBackCar { car: &name }.say()
                    on_press=bring_back
                />
            </li>
        }
        .into_any()
    };
    view! {
        <When condition=holds(move || removed.with(|it| !it.is_empty()))>
            <ul class="plain">
                <Drawn what=Callback::new(move |()| removed.get().into_iter().map(row).collect()) />
            </ul>
        </When>
    }
}

/// The cars that were not removed.
fn present(document: &Document) -> impl Iterator<Item = &CarFile> {
    document.cars().filter(|car| !car.removed)
}

/// Removes the car in use. There is always one in use, so another one takes its
/// place, a new one if need be.
fn remove(document: &mut Document) {
    document.here.removed = true;
    let next = present(document).next().map(|car| car.id.clone());
    match next {
        Some(id) => document.choose(&id),
        None => document.add(CarFile::new(device::new_id())),
    }
}
