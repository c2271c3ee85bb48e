//! The fields of each kind of entry.

use fillwright::logbook::{
    BeforeForm, ContentsForm, Document, Entry, EntryPart, Field, FuelForm, FuelPart, LevelForm,
    Measure, What,
};
use fillwright::tank::{SensorScale, TubeTestMethod};
use leptos::prelude::*;

use crate::app::state::State;
use crate::app::views::LEVEL_READINGS;
use crate::app::widgets::{
    CheckBox, Options, TextField, When, holds, key_of, options, said, value_of,
};

const METHODS: [(TubeTestMethod, &str, &str); 2] = [
    (TubeTestMethod::SaltWater, "salt", "50 mL, salt water to 100"),
    (TubeTestMethod::PlainWater, "plain", "Any amounts, plain water"),
];

const SCALES: [(SensorScale, &str, &str); 2] =
    [(SensorScale::To125, "125", "5 ms is 125 °C"), (SensorScale::To95, "95", "5 ms is 95 °C")];

#[derive(Clone, Copy, PartialEq)]
enum Before {
    Nothing,
    Level,
    Contents,
}

const BEFORES: [(Before, &str, &str); 3] = [
    (Before::Nothing, "nothing", "Only the log"),
    (Before::Level, "level", "The level"),
    (Before::Contents, "contents", "Level and blend"),
];

fn what(document: &Document) -> Option<&What> {
    Some(&document.here.draft.as_ref()?.what)
}

fn what_mut(document: &mut Document) -> Option<&mut What> {
    Some(&mut document.here.draft.as_mut()?.what)
}

/// The fields of an entry of this kind.
pub(super) fn fields_of(what: &What) -> AnyView {
    match what {
        What::Fill(fill) => {
            let ids = fill.fuels.iter().map(|fuel| fuel.id).collect();
            FillFields(FillFieldsProps { ids }).into_any()
        }
        What::Level(_) => LevelFields().into_any(),
        What::Sensor(_) => SensorFields().into_any(),
        What::TubeTest(_) => TubeTestFields().into_any(),
        What::Drive(_) => DistanceField().into_any(),
        What::Trip(_) => view! {
            <DistanceField />
            <ConsumptionField />
        }
        .into_any(),
        What::Drain(_) => DrainField().into_any(),
        What::Correction(_) => view! {
            <LevelFields />
            <ContentsFields />
        }
        .into_any(),
        What::Note => ().into_any(),
    }
}

/// A text of the entry.
#[component]
fn EntryText(
    part: EntryPart,
    label: &'static str,
    read: fn(&What) -> Option<&String>,
    write: fn(&mut What) -> Option<&mut String>,
    #[prop(optional)] hint: &'static str,
    #[prop(optional)] unit: &'static str,
    #[prop(optional)] words: bool,
) -> impl IntoView {
    let state = State::here();
    view! {
        <TextField
            field=Field::Entry(part)
            label=label
            hint=hint
            unit=unit
            words=words
            value=state.text(move |it| read(what(it)?))
            on_text=state
                .set(move |it, text| {
                    if let Some(place) = what_mut(it).and_then(write) {
                        *place = text;
                    }
                })
        />
    }
}

/// A text of the entry whose meaning depends on the units.
#[component]
fn EntryMeasure(
    part: EntryPart,
    label: &'static str,
    measure: Measure,
    unit: Signal<String>,
    read: fn(&What) -> Option<&Entry>,
    write: fn(&mut What) -> Option<&mut Entry>,
    #[prop(optional)] hint: &'static str,
) -> impl IntoView {
    let state = State::here();
    view! {
        <TextField
            field=Field::Entry(part)
            label=label
            hint=hint
            unit=unit
            words=true
            value=state.entry(measure, move |it| read(what(it)?))
            on_text=state.set_entry(move |it| what_mut(it).and_then(write))
        />
    }
}

fn level(what: &What) -> Option<&LevelForm> {
    match what {
        What::Level(form) => Some(form),
        What::Correction(form) => Some(&form.level),
        What::Fill(fill) => match &fill.before {
            BeforeForm::Nothing => None,
            BeforeForm::Level(form) => Some(form),
            BeforeForm::Contents(form) => Some(&form.level),
        },
        _ => None,
    }
}

fn level_mut(what: &mut What) -> Option<&mut LevelForm> {
    match what {
        What::Level(form) => Some(form),
        What::Correction(form) => Some(&mut form.level),
        What::Fill(fill) => match &mut fill.before {
            BeforeForm::Nothing => None,
            BeforeForm::Level(form) => Some(form),
            BeforeForm::Contents(form) => Some(&mut form.level),
        },
        _ => None,
    }
}

#[component]
fn LevelFields() -> impl IntoView {
    let state = State::here();
    let unit = state.volume_unit();
    let reading = said(move || {
        state.document.with(|it| {
            let reading = what(it).and_then(level).map(|form| form.reading);
            reading.map_or_else(String::new, |it| key_of(&LEVEL_READINGS, &it))
        })
    });
    let choose = state.set(|it, key| {
        let form = what_mut(it).and_then(level_mut);
        if let (Some(form), Some(reading)) = (form, value_of(&LEVEL_READINGS, &key)) {
            form.reading = reading;
        }
    });
    view! {
        <EntryMeasure
            part=EntryPart::Level
            label="Level"
            hint="20, 1/4, 25 % or a distance to empty like 90 km"
            measure=Measure::Volume
            unit=unit
            read=|it| Some(&level(it)?.level)
            write=|it| Some(&mut level_mut(it)?.level)
        />
        <Options
            legend="How it was read"
            name="entry-reading"
            options=options(&LEVEL_READINGS)
            chosen=reading
            on_choice=choose
        />
        <EntryMeasure
            part=EntryPart::LevelError
            label="Error of the level, plus or minus"
            hint="Leave empty for the usual error of that reading"
            measure=Measure::Volume
            unit=unit
            read=|it| Some(&level(it)?.error)
            write=|it| Some(&mut level_mut(it)?.error)
        />
    }
}

fn contents(what: &What) -> Option<&ContentsForm> {
    match what {
        What::Correction(form) => Some(form),
        What::Fill(fill) => match &fill.before {
            BeforeForm::Contents(form) => Some(form),
            BeforeForm::Nothing | BeforeForm::Level(_) => None,
        },
        _ => None,
    }
}

fn contents_mut(what: &mut What) -> Option<&mut ContentsForm> {
    match what {
        What::Correction(form) => Some(form),
        What::Fill(fill) => match &mut fill.before {
            BeforeForm::Contents(form) => Some(form),
            BeforeForm::Nothing | BeforeForm::Level(_) => None,
        },
        _ => None,
    }
}

#[component]
fn ContentsFields() -> impl IntoView {
    view! {
        <div class="pair">
            <EntryText
                part=EntryPart::Share
                label="Ethanol in it"
                hint="What you expect"
                unit="%"
                read=|it| Some(&contents(it)?.share)
                write=|it| Some(&mut contents_mut(it)?.share)
            />
            <EntryText
                part=EntryPart::ShareRange
                label="May be"
                hint="From–to: 8–12"
                unit="%"
                words=true
                read=|it| Some(&contents(it)?.share_range)
                write=|it| Some(&mut contents_mut(it)?.share_range)
            />
            <EntryText
                part=EntryPart::Octane
                label="RON, at least"
                hint="Or AKI: 93 AKI"
                words=true
                read=|it| Some(&contents(it)?.octane)
                write=|it| Some(&mut contents_mut(it)?.octane)
            />
            <EntryText
                part=EntryPart::Mon
                label="MON, at least"
                read=|it| Some(&contents(it)?.mon)
                write=|it| Some(&mut contents_mut(it)?.mon)
            />
        </div>
    }
}

#[component]
fn SensorFields() -> impl IntoView {
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
fn TubeTestFields() -> impl IntoView {
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

#[component]
fn DistanceField() -> impl IntoView {
    let state = State::here();
    let unit = said(move || state.printer.with(|it| it.system.distance().symbol().to_owned()));
    view! {
        <EntryMeasure
            part=EntryPart::Distance
            label="Distance"
            hint="Since the entry before"
            measure=Measure::Distance
            unit=unit
            read=|it| match it {
                What::Drive(entry) => Some(entry),
                What::Trip(form) => Some(&form.distance),
                _ => None,
            }
            write=|it| match it {
                What::Drive(entry) => Some(entry),
                What::Trip(form) => Some(&mut form.distance),
                _ => None,
            }
        />
    }
}

#[component]
fn ConsumptionField() -> impl IntoView {
    let state = State::here();
    let unit = said(move || state.printer.with(|it| it.system.consumption().symbol().to_owned()));
    view! {
        <EntryMeasure
            part=EntryPart::Consumption
            label="Mean consumption over it"
            measure=Measure::Consumption
            unit=unit
            read=|it| match it {
                What::Trip(form) => Some(&form.consumption),
                _ => None,
            }
            write=|it| match it {
                What::Trip(form) => Some(&mut form.consumption),
                _ => None,
            }
        />
    }
}

#[component]
fn DrainField() -> impl IntoView {
    let state = State::here();
    view! {
        <EntryMeasure
            part=EntryPart::Drained
            label="Drained"
            hint="Leave empty if nothing was left"
            measure=Measure::Volume
            unit=state.volume_unit()
            read=|it| match it {
                What::Drain(entry) => Some(entry),
                _ => None,
            }
            write=|it| match it {
                What::Drain(entry) => Some(entry),
                _ => None,
            }
        />
        <p class="note caution">
            "Draining fuel is work for somebody equipped for it: vapour burns, static ignites it."
        </p>
    }
}

fn fuel(document: &Document, id: u32) -> Option<&FuelForm> {
    document.here.draft.as_ref()?.fuels().iter().find(|fuel| fuel.id == id)
}

fn fuel_mut(document: &mut Document, id: u32) -> Option<&mut FuelForm> {
    document.here.draft.as_mut()?.fuel_mut(id)
}

#[component]
fn FillFields(ids: Vec<u32>) -> impl IntoView {
    let state = State::here();
    let clicked = holds(move || {
        state.document.with(|it| matches!(what(it), Some(What::Fill(fill)) if fill.clicked))
    });
    let tick = Callback::new(move |clicked| {
        state.document.update(|it| {
            if let Some(What::Fill(fill)) = what_mut(it) {
                fill.clicked = clicked;
            }
        });
    });
    let before = Memo::new(move |_| {
        state.document.with(|it| match what(it) {
            Some(What::Fill(fill)) => match fill.before {
                BeforeForm::Nothing => Before::Nothing,
                BeforeForm::Level(_) => Before::Level,
                BeforeForm::Contents(_) => Before::Contents,
            },
            _ => Before::Nothing,
        })
    });
    let choose = state.set(|it, key| {
        let Some(What::Fill(fill)) = what_mut(it) else { return };
        let level = match std::mem::take(&mut fill.before) {
            BeforeForm::Nothing => LevelForm::default(),
            BeforeForm::Level(form) => form,
            BeforeForm::Contents(form) => form.level,
        };
        fill.before = match value_of(&BEFORES, &key) {
            Some(Before::Level) => BeforeForm::Level(level),
            Some(Before::Contents) => {
                BeforeForm::Contents(ContentsForm { level, ..ContentsForm::default() })
            }
            _ => BeforeForm::Nothing,
        };
    });
    let fuels: Vec<AnyView> =
        ids.into_iter().map(|id| PouredFuel(PouredFuelProps { id }).into_any()).collect();
    view! {
        {fuels}
        <CheckBox
            label="The nozzle clicked off: the tank was full"
            checked=clicked
            on_tick=tick
        />
        <Options
            legend="Known just before it"
            name="before"
            options=options(&BEFORES)
            chosen=said(move || key_of(&BEFORES, &before.get()))
            on_choice=choose
        />
        <When condition=holds(move || before.get() != Before::Nothing)>
            <LevelFields />
        </When>
        <When condition=holds(move || before.get() == Before::Contents)>
            <ContentsFields />
        </When>
    }
}

#[component]
fn PouredFuel(id: u32) -> impl IntoView {
    let state = State::here();
    let unit = state.volume_unit();
    let name = state.text(move |it| Some(&fuel(it, id)?.name));
    let per_unit = said(move || {
        state.printer.with(|it| format!("{}/{}", it.currency, it.system.volume().symbol()))
    });
    let text = move |part,
                     label,
                     unit: &'static str,
                     read: fn(&mut FuelForm) -> &mut String,
                     get: fn(&FuelForm) -> &String| {
        view! {
            <TextField
                field=Field::Poured(id, part)
                label=label
                unit=unit
                words=true
                value=state.text(move |it| fuel(it, id).map(get))
                on_text=state
                    .set(move |it, text| {
                        if let Some(fuel) = fuel_mut(it, id) {
                            *read(fuel) = text;
                        }
                    })
            />
        }
        .into_any()
    };
    view! {
        <fieldset class="offer">
            <legend class="legend">{name}</legend>
            <div class="pair">
                <TextField
                    field=Field::Poured(id, FuelPart::PutIn)
                    label="Put in"
                    hint="Leave empty if none"
                    unit=unit
                    words=true
                    value=state.entry(Measure::Volume, move |it| fuel(it, id).map(|it| &it.put_in))
                    on_text=state.set_entry(move |it| fuel_mut(it, id).map(|it| &mut it.put_in))
                />
                <TextField
                    field=Field::Poured(id, FuelPart::Price)
                    label="Price"
                    unit=per_unit
                    value=state.entry(Measure::Price, move |it| fuel(it, id).map(|it| &it.price))
                    on_text=state.set_entry(move |it| fuel_mut(it, id).map(|it| &mut it.price))
                />
            </div>
            <details>
                <summary>"Ethanol, octane, name"</summary>
                <div class="pair">
                    {text(FuelPart::Share, "Ethanol", "%", |it| &mut it.share, |it| &it.share)}
                    {text(
                        FuelPart::ShareRange,
                        "May be",
                        "%",
                        |it| &mut it.share_range,
                        |it| &it.share_range,
                    )}
                    {text(
                        FuelPart::Octane,
                        "RON, at least",
                        "",
                        |it| &mut it.octane,
                        |it| &it.octane,
                    )}
                    {text(FuelPart::Mon, "MON, at least", "", |it| &mut it.mon, |it| &it.mon)}
                    {text(FuelPart::Name, "Name", "", |it| &mut it.name, |it| &it.name)}
                </div>
            </details>
        </fieldset>
    }
}
