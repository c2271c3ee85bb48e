//! The fields of the entries that record a reading: of a sensor, or of a tube test.

use fillwright::document::{EntryPart, Field, What};
use fillwright::message::Message;
use fillwright::message::keys::tank as keys;
use fillwright::tank::{SensorScale, TubeTestMethod};
use leptos::prelude::*;

use crate::app::session::Session;
use crate::app::widgets::{
    CheckBox, Options, TextField, When, holds, key_of, options, said, value_of,
};

const METHODS: [(TubeTestMethod, &str, Message); 2] = [
    (TubeTestMethod::SaltWater, "salt", keys::SALT_WATER),
    (TubeTestMethod::PlainWater, "plain", keys::PLAIN_WATER),
];

const SCALES: [(SensorScale, &str, Message); 2] =
    [(SensorScale::To125, "125", keys::TO_125), (SensorScale::To95, "95", keys::TO_95)];

#[component]
pub(super) fn SensorFields() -> impl IntoView {
    let session = Session::here();
    let scale =
        said(move || session.document.with(|it| key_of(&SCALES, &it.here.car.sensor_scale)));
    let choose = session.set(|it, key| {
        if let Some(scale) = value_of(&SCALES, &key) {
            it.here.car.sensor_scale = scale;
        }
    });
    let old = holds(move || {
        session
            .document
            .with(|it| matches!(it.draft_what(), Some(What::Sensor(form)) if form.old_fuel))
    });
    let tick = Callback::new(move |old| {
        session.document.update(|it| {
            if let Some(What::Sensor(form)) = it.draft_what_mut() {
                form.old_fuel = old;
            }
        });
    });
    let temperature = said(move || {
        let temperature = session.document.with(|it| it.here.draft_temperature());
        temperature.map_or_else(String::new, |it| {
            let temperature = session.printer.with(|printer| printer.temperature(it));
            keys::FuelIsAt { temperature }.say()
        })
    });
    view! {
        <TextField
            field=Field::Entry(EntryPart::Sensor)
            label=keys::SENSOR.say()
            hint=keys::SENSOR_HINT.say()
            words=true
        />
        <CheckBox
            label=keys::NOT_REACHED.say()
            checked=old
            on_tick=tick
        />
        <details>
            <summary>{keys::FUEL_TEMPERATURE.say()}</summary>
            <TextField
                field=Field::Entry(EntryPart::Pulse)
                label=keys::PULSE.say()
            />
            <p class="hint">{temperature}</p>
            <Options
                legend=keys::SENSOR_SCALE.say()
                name="sensor-scale"
                options=options(&SCALES)
                chosen=scale
                on_choice=choose
            />
        </details>
    }
}

#[component]
pub(super) fn TubeTestFields() -> impl IntoView {
    let session = Session::here();
    let method = move || {
        session.document.with(|it| match it.draft_what() {
            Some(What::TubeTest(form)) => Some(form.method),
            _ => None,
        })
    };
    let chosen = said(move || method().map_or_else(String::new, |it| key_of(&METHODS, &it)));
    let choose = session.set(|it, key| {
        if let (Some(What::TubeTest(form)), Some(method)) =
            (it.draft_what_mut(), value_of(&METHODS, &key))
        {
            form.method = method;
        }
    });
    let plain = holds(move || method() == Some(TubeTestMethod::PlainWater));
    view! {
        <Options
            legend=keys::HOW_DONE.say()
            name="tube-method"
            options=options(&METHODS)
            chosen=chosen
            on_choice=choose
        />
        <When condition=plain>
            <div class="pair">
                <TextField
                    field=Field::Entry(EntryPart::TubeFuel)
                    label=keys::FUEL_POURED.say()
                />
                <TextField
                    field=Field::Entry(EntryPart::TubeWater)
                    label=keys::WATER_POURED.say()
                />
            </div>
        </When>
        <div class="pair">
            <TextField
                field=Field::Entry(EntryPart::Boundary)
                label=keys::BOUNDARY.say()
                hint=keys::BOUNDARY_HINT.say()
            />
            <TextField
                field=Field::Entry(EntryPart::TubeStep)
                label=keys::STEP.say()
                hint=keys::STEP_HINT.say()
            />
        </div>
        <p class="note caution">
            {keys::TUBE_CAUTION.say()}
        </p>
    }
}
