//! The fields of the entries that record a reading: of a sensor, or of a tube test.

use fillwright::document::{EntryPart, What};
use fillwright::tank::{SensorScale, TubeTestMethod};
use leptos::prelude::*;

use super::{EntryText, what, what_mut};
use crate::app::state::State;
use crate::app::widgets::{CheckBox, Options, When, holds, key_of, options, said, value_of};

const METHODS: [(TubeTestMethod, &str, &str); 2] = [
    (TubeTestMethod::SaltWater, "salt", "50 mL, salt water to 100"),
    (TubeTestMethod::PlainWater, "plain", "Any amounts, plain water"),
];

const SCALES: [(SensorScale, &str, &str); 2] =
    [(SensorScale::To125, "125", "5 ms is 125 °C"), (SensorScale::To95, "95", "5 ms is 95 °C")];

#[component]
pub(super) fn SensorFields() -> impl IntoView {
    let state = State::here();
    let scale = said(move || state.document.with(|it| key_of(&SCALES, &it.here.car.sensor_scale)));
    let choose = state.set(|it, key| {
        if let Some(scale) = value_of(&SCALES, &key) {
            it.here.car.sensor_scale = scale;
        }
    });
    let old = holds(move || {
        state.document.with(|it| matches!(what(it), Some(What::Sensor(form)) if form.old_fuel))
    });
    let tick = Callback::new(move |old| {
        state.document.update(|it| {
            if let Some(What::Sensor(form)) = what_mut(it) {
                form.old_fuel = old;
            }
        });
    });
    let temperature = said(move || {
        let temperature = state.document.with(|it| it.here.draft_temperature());
        temperature.map_or_else(String::new, |it| {
            format!("The fuel is at {}.", state.printer.with(|printer| printer.temperature(it)))
        })
    });
    view! {
        <EntryText
            part=EntryPart::Sensor
            label="It shows"
            hint="A share like 31 %, or its frequency: 81 Hz"
            words=true
            read=|it| sensor_text(it, false)
            write=|it| sensor_text_mut(it, false)
        />
        <CheckBox
            label="The new fuel had not reached it yet: keep the reading, do not count it"
            checked=old
            on_tick=tick
        />
        <details>
            <summary>"Fuel temperature by the pulse"</summary>
            <EntryText
                part=EntryPart::Pulse
                label="Width of the pulse"
                unit="ms"
                read=|it| sensor_text(it, true)
                write=|it| sensor_text_mut(it, true)
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

fn sensor_text(what: &What, pulse: bool) -> Option<&String> {
    match what {
        What::Sensor(form) => Some(if pulse { &form.pulse } else { &form.reading }),
        _ => None,
    }
}

fn sensor_text_mut(what: &mut What, pulse: bool) -> Option<&mut String> {
    match what {
        What::Sensor(form) => Some(if pulse { &mut form.pulse } else { &mut form.reading }),
        _ => None,
    }
}

#[component]
pub(super) fn TubeTestFields() -> impl IntoView {
    let state = State::here();
    let method = move || {
        state.document.with(|it| match what(it) {
            Some(What::TubeTest(form)) => Some(form.method),
            _ => None,
        })
    };
    let chosen = said(move || method().map_or_else(String::new, |it| key_of(&METHODS, &it)));
    let choose = state.set(|it, key| {
        if let (Some(What::TubeTest(form)), Some(method)) = (what_mut(it), value_of(&METHODS, &key))
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
                <EntryText
                    part=EntryPart::TubeFuel
                    label="Fuel poured in"
                    unit="mL"
                    read=|it| tube_text(it, EntryPart::TubeFuel)
                    write=|it| tube_text_mut(it, EntryPart::TubeFuel)
                />
                <EntryText
                    part=EntryPart::TubeWater
                    label="Water poured in"
                    unit="mL"
                    read=|it| tube_text(it, EntryPart::TubeWater)
                    write=|it| tube_text_mut(it, EntryPart::TubeWater)
                />
            </div>
        </When>
        <div class="pair">
            <EntryText
                part=EntryPart::Boundary
                label="Boundary afterwards"
                hint="Volume of the lower, watery part"
                unit="mL"
                read=|it| tube_text(it, EntryPart::Boundary)
                write=|it| tube_text_mut(it, EntryPart::Boundary)
            />
            <EntryText
                part=EntryPart::TubeStep
                label="Step of the marks"
                hint="1 mL if left empty"
                unit="mL"
                read=|it| tube_text(it, EntryPart::TubeStep)
                write=|it| tube_text_mut(it, EntryPart::TubeStep)
            />
        </div>
        <p class="note caution">
            "Fuel vapour burns: test outdoors, away from flames and sparks, with gloves, in glass or fuel-proof plastic; hand the mixture in as hazardous waste, never pour it back or away."
        </p>
    }
}

fn tube_text(what: &What, part: EntryPart) -> Option<&String> {
    let What::TubeTest(form) = what else { return None };
    Some(match part {
        EntryPart::TubeFuel => &form.fuel,
        EntryPart::TubeWater => &form.water,
        EntryPart::TubeStep => &form.step,
        _ => &form.boundary,
    })
}

fn tube_text_mut(what: &mut What, part: EntryPart) -> Option<&mut String> {
    let What::TubeTest(form) = what else { return None };
    Some(match part {
        EntryPart::TubeFuel => &mut form.fuel,
        EntryPart::TubeWater => &mut form.water,
        EntryPart::TubeStep => &mut form.step,
        _ => &mut form.boundary,
    })
}
