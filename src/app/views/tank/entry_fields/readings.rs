//! The fields of the entries that record a reading: of a sensor, or of a tube test.

use fillwright::document::{EntryPart, Field, What};
use fillwright::tank::{SensorScale, TubeTestMethod};
use leptos::prelude::*;

use crate::app::session::Session;
use crate::app::widgets::{
    CheckBox, Options, TextField, When, holds, key_of, options, said, value_of,
};

const METHODS: [(TubeTestMethod, &str, &str); 2] = [
    (TubeTestMethod::SaltWater, "salt", "50 mL, salt water to 100"),
    (TubeTestMethod::PlainWater, "plain", "Any amounts, plain water"),
];

const SCALES: [(SensorScale, &str, &str); 2] =
    [(SensorScale::To125, "125", "5 ms is 125 °C"), (SensorScale::To95, "95", "5 ms is 95 °C")];

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
            format!("The fuel is at {}.", session.printer.with(|printer| printer.temperature(it)))
        })
    });
    view! {
        <TextField
            field=Field::Entry(EntryPart::Sensor)
            label="It shows"
            hint="A share like 31 %, or its frequency: 81 Hz"
            words=true
        />
        <CheckBox
            label="The new fuel had not reached it yet: keep the reading, do not count it"
            checked=old
            on_tick=tick
        />
        <details>
            <summary>"Fuel temperature by the pulse"</summary>
            <TextField
                field=Field::Entry(EntryPart::Pulse)
                label="Width of the pulse"
            />
            <p class="hint">{temperature}</p>
            <Options
                legend="Scale of this sensor: both are published"
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
            legend="How it was done"
            name="tube-method"
            options=options(&METHODS)
            chosen=chosen
            on_choice=choose
        />
        <When condition=plain>
            <div class="pair">
                <TextField
                    field=Field::Entry(EntryPart::TubeFuel)
                    label="Fuel poured in"
                />
                <TextField
                    field=Field::Entry(EntryPart::TubeWater)
                    label="Water poured in"
                />
            </div>
        </When>
        <div class="pair">
            <TextField
                field=Field::Entry(EntryPart::Boundary)
                label="Boundary afterwards"
                hint="Volume of the lower, watery part"
            />
            <TextField
                field=Field::Entry(EntryPart::TubeStep)
                label="Step of the marks"
                hint="1 mL if left empty"
            />
        </div>
        <p class="note caution">
            "Fuel vapour burns: test outdoors, away from flames and sparks, with gloves, in glass or fuel-proof plastic; hand the mixture in as hazardous waste, never pour it back or away."
        </p>
    }
}
