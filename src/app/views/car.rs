//! The Car view: what is set once.

use fillwright::answers::FieldError;
use fillwright::calibration::FluidState;
use fillwright::document::Field;
use fillwright::message::Message;
use fillwright::message::keys::car as keys;
use fillwright::share::Kind;
use fillwright::tank::RangeDisplay;
use fillwright::words::deeds::Deed;
use fillwright::words::fields;
use leptos::prelude::*;

use super::calibrations::CalibrationsCard;
use super::cars::CarsCard;
use super::data::DataCard;
use super::share::ShareCard;
use super::units::UnitsCard;
use crate::app::field_errors::FieldErrors;
use crate::app::fill_memos::FillMemos;
use crate::app::route::View;
use crate::app::session::Session;
use crate::app::stages::Deferred;
use crate::app::trip_memos::TripMemos;
use crate::app::undo::{Act, Spot};
use crate::app::widgets::{
    Button, ErrorSummary, Options, Spoken, TextField, UndoableRows, When, holds, in_a_sentence,
    key_of, options, said, value_of,
};

const RANGE_DISPLAYS: [(RangeDisplay, &str, Message); 3] = [
    (RangeDisplay::ToReserve, "to-reserve", keys::TO_RESERVE),
    (RangeDisplay::ToDry, "to-dry", keys::TO_DRY),
    (RangeDisplay::Unknown, "unknown", keys::UNKNOWN),
];

const FLUIDS: [(FluidState, &str, Message); 3] = [
    (FluidState::Ready, "ready", keys::FLUID_READY),
    (FluidState::Unknown, "unknown", keys::FLUID_UNCHECKED),
    (FluidState::Absent, "absent", keys::FLUID_NONE),
];

/// The Car view: what is set once.
#[component]
pub(crate) fn CarView() -> impl IntoView {
    let fill_memos = FillMemos::here();
    let trip_memos = TripMemos::here();
    FieldErrors::provide(move || wrong_in_car(fill_memos, trip_memos));
    view! {
        <div class="view two">
            <div class="question">
                <Deferred>
                    <CarsCard />
                </Deferred>
                <Deferred>
                    <TankCard />
                </Deferred>
                <Deferred>
                    <UnitsCard />
                </Deferred>
            </div>
            <div class="question">
                <Deferred>
                    <CalibrationsCard />
                </Deferred>
                <Deferred>
                    <OwnFuelsCard />
                </Deferred>
                <Deferred>
                    <ShareCard kind=Kind::Car />
                </Deferred>
                <Deferred>
                    <DataCard />
                </Deferred>
            </div>
        </div>
        <Deferred>
            <WrongCard />
        </Deferred>
    }
}

/// What is missing or wrong with the fields of the car. Some of its figures are needed for
/// a route alone.
fn wrong_in_car(fill_memos: FillMemos, trip_memos: TripMemos) -> Vec<FieldError> {
    let of_car = |all: &[FieldError]| -> Vec<FieldError> {
        all.iter().filter(|it| it.field.is_of_car()).cloned().collect()
    };
    let mut wrong = fill_memos.reading.with(|reading| of_car(&reading.field_errors));
    for other in trip_memos.reading.with(|reading| of_car(&reading.field_errors)) {
        if wrong.iter().all(|it| it.field != other.field) {
            wrong.push(other);
        }
    }
    wrong
}

/// What is missing or wrong, at the end, so that it moves nothing that a finger is about
/// to hit when it comes; a line that stays in sight leads there.
#[component]
fn WrongCard() -> impl IntoView {
    let session = Session::here();
    let field_errors = FieldErrors::here().all();
    let short = said(move || field_errors.with(|it| fields::summary(&session.told(it))));
    let is_wrong = move || field_errors.with(|it| session.told(it).iter().any(|it| !it.is_missing));
    let class = said(move || {
        if is_wrong() { "short stale always" } else { "short open always" }.to_owned()
    });
    view! {
        <Spoken words=said(move || session.printer.with(|printer| field_errors.with(|it| in_a_sentence(it, printer)))) />
        <ErrorSummary id="car-to-mend" view=View::Car field_errors=field_errors />
        <When condition=holds(move || short.with(|it| !it.is_empty()))>
            <a class=class href="#/car/car-to-mend">
                <span>{short}</span>
                <small>{keys::WHICH.say()}</small>
            </a>
        </When>
    }
}

/// The tank and what the engine takes from it.
#[component]
fn TankCard() -> impl IntoView {
    let session = Session::here();
    view! {
        <section class="card" aria-labelledby="tank-title">
            <h2 id="tank-title">{keys::TANK.say()}</h2>
            <TextField
                field=Field::Capacity
                label=keys::CAPACITY.say()
                words=true
            />
            <TextField
                field=Field::Reserve
                label=keys::RESERVE.say()
                words=true
                hint=keys::RESERVE_HINT.say()
            />
            <TextField
                field=Field::Consumption
                label=keys::CONSUMPTION.say()
            />
            <Options
                legend=keys::RANGE_DISPLAY.say()
                name="range-display"
                options=options(&RANGE_DISPLAYS)
                chosen=said(move || {
                    session.document.with(|it| key_of(&RANGE_DISPLAYS, &it.here.car.range_display))
                })
                on_choice=session
                    .set(|it, key| {
                        if let Some(display) = value_of(&RANGE_DISPLAYS, &key) {
                            it.here.car.range_display = display;
                        }
                    })
            />
            <TextField
                field=Field::Reference
                label=keys::REFERENCE.say()
                hint=keys::REFERENCE_HINT.say()
                words=true
            />
            <TextField
                field=Field::Line
                label=keys::FUEL_LINE.say()
                words=true
                hint=keys::FUEL_LINE_HINT.say()
            />
        </section>
    }
}

/// The fuels that the owner keeps, and the injection fluid.
#[component]
fn OwnFuelsCard() -> impl IntoView {
    let session = Session::here();
    let fluid = said(move || session.document.with(|it| key_of(&FLUIDS, &it.here.car.fluid)));
    let own = Memo::new(move |_| {
        session
            .document
            .with(|it| it.here.car.own_fuels.iter().map(|own| own.id).collect::<Vec<_>>())
    });
    view! {
        <section class="card" aria-labelledby="fluid-title">
            <h2 id="fluid-title">{keys::FLUID.say()}</h2>
            <Options
                legend=keys::FLUID_ABOARD.say()
                name="fluid"
                options=options(&FLUIDS)
                chosen=fluid
                on_choice=session
                    .set(|it, key| {
                        if let Some(fluid) = value_of(&FLUIDS, &key) {
                            it.here.car.fluid = fluid;
                        }
                    })
            />
            <p class="note caution">
                {keys::FLUID_CAUTION.say()}
            </p>
        </section>
        <section class="card" aria-labelledby="own-title">
            <h2 id="own-title">{keys::MY_FUELS.say()}</h2>
            <When condition=holds(move || own.with(Vec::is_empty))>
                <p class="hint">{keys::MY_FUELS_HINT.say()}</p>
            </When>
            <ul class="plain">
                <UndoableRows ids=own.into() row=|id| OwnFuel(OwnFuelProps { id }).into_any() />
            </ul>
        </section>
    }
}

/// A fuel that the owner keeps.
#[component]
fn OwnFuel(id: u32) -> impl IntoView {
    let session = Session::here();
    let name = session.document.with_untracked(|it| {
        let own = it.here.car.own_fuels.iter().find(|own| own.id == id);
        own.map(|own| own.name.clone()).unwrap_or_default()
    });
    let remove = Callback::new(move |()| {
        let act = Act::at(Spot::Row(id), Deed::OwnFuelRemoved);
        session.change_undoably(act, |it| it.here.car.own_fuels.retain(|own| own.id != id));
    });
    view! {
        <li class="head">
            <span>{name.clone()}</span>
            <Button label=keys::REMOVE.say() look="small" name=keys::RemoveFuel { fuel: &name }.say() on_press=remove />
        </li>
    }
}
