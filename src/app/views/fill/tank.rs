//! The card of what is in the tank before a fill.

use fillwright::answers::tank::History;
use fillwright::document::{Field, Id, StartForm};
use fillwright::quantity::notation::{Entry, Measure};
use fillwright::tank::LevelReading;
use leptos::prelude::*;

use crate::app::device;
use crate::app::stages::Folded;
use crate::app::state::State;
use crate::app::views::LEVEL_READINGS;
use crate::app::views::extras::extras_fields;
use crate::app::views::how_sure::how_sure;
use crate::app::widgets::{
    Button, LEVEL_HINT, Options, TextField, When, holds, key_of, options, said, value_of,
};

/// Levels that a gauge shows, for one tap.
const MARKS: [(&str, &str); 5] =
    [("0", "Empty"), ("1/4", "¼"), ("1/2", "½"), ("3/4", "¾"), ("full", "Full")];

const STARTS: [(StartForm, &str, &str); 2] =
    [(StartForm::Log, "log", "The log"), (StartForm::Typed, "typed", "What I type")];

/// What is in the tank.
#[component]
pub(super) fn TankCard() -> impl IntoView {
    let state = State::here();
    let unit = state.volume_unit();
    let reading =
        said(move || state.document.with(|it| key_of(&LEVEL_READINGS, &it.here.fill.reading)));
    let choose_reading = state.set(|it, key| {
        let Some(reading) = value_of(&LEVEL_READINGS, &key) else { return };
        it.here.fill.reading = reading;
        // Brimmed says how full as well.
        if reading == LevelReading::Brimmed {
            it.here.fill.level = Entry { text: "full".into(), typed_in: it.settings.units };
        }
    });
    let put = state.set_entry(|it| Some(&mut it.here.fill.level));
    let from_log = holds(move || state.document.with(|it| it.here.fill.start == StartForm::Log));
    let has_log = holds(move || state.history.with(|it| it.estimator.is_some()));
    // Nothing comes without it, so it is asked for first; once typed here it stays in sight
    // until the view is left.
    let asks_for_size = Memo::new(move |before: Option<&(Id, bool)>| {
        state.document.with(|it| {
            let (car, capacity) = (&it.here.id, &it.here.car.capacity);
            let asked = before.is_some_and(|(id, asked)| id == car && *asked);
            (car.clone(), asked || capacity.is_blank())
        })
    });
    let asks_for_size = holds(move || asks_for_size.with(|it| it.1));
    view! {
        <section class="card" aria-labelledby="in-tank">
            <h2 id="in-tank">"In the tank"</h2>
            <When condition=asks_for_size>
                <TextField
                    field=Field::Capacity
                    label="Tank size"
                    words=true
                    unit=unit
                    value=state.entry(Measure::Volume, |it| Some(&it.here.car.capacity))
                    on_text=state.set_entry(|it| Some(&mut it.here.car.capacity))
                />
            </When>
            <When condition=holds(move || has_log.get() || from_log.get())>
                <Start />
            </When>
            <TextField
                field=Field::Level
                label="Level"
                hint=LEVEL_HINT
                words=true
                unit=unit
                value=state.entry(Measure::Level, |it| Some(&it.here.fill.level))
                on_text=put
            />
            <div class="buttons" role="group" aria-label="Level by the gauge">
                {MARKS
                    .map(|(text, name)| {
                        let put = Callback::new(move |()| put.run(text.to_owned()));
                        view! { <Button label=name look="small" on_press=put /> }
                    })}
            </div>
            <Options
                legend="How it was read"
                name="reading"
                options=options(&LEVEL_READINGS)
                chosen=reading
                on_choice=choose_reading
            />
            <When condition=holds(move || !from_log.get())>
                <TypedContents />
            </When>
        </section>
    }
}

/// Where the fill starts from, and what the log says.
#[component]
fn Start() -> impl IntoView {
    let state = State::here();
    let chosen = said(move || state.document.with(|it| key_of(&STARTS, &it.here.fill.start)));
    let choose = state.set(|it, key| {
        if let Some(start) = value_of(&STARTS, &key) {
            it.here.fill.start = start;
        }
    });
    let from_log = holds(move || state.document.with(|it| it.here.fill.start == StartForm::Log));
    let words = said(move || {
        let as_of = state.history.with(History::as_of);
        as_of.map_or_else(String::new, |as_of| {
            format!("{} As of {}.", state.by_the_log(), device::date(as_of.local_minutes(), true))
        })
    });
    let doubt = said(move || state.doubt_at_start());
    view! {
        <div id=Field::Start.id() tabindex="-1">
            <Options
                legend="Start from"
                name="start"
                options=options(&STARTS)
                chosen=chosen
                on_choice=choose
            />
        </div>
        <When condition=from_log>
            <p class="note" id="by-the-log">{words}</p>
            <p class="hint">
                "What the gauge shows now sharpens that; leave it empty if nothing was driven since."
            </p>
            <When condition=holds(move || doubt.with(|it| !it.is_empty()))>
                <p class="note caution" id="start-doubt">
                    {doubt}
                </p>
            </When>
        </When>
    }
}

/// What is in the tank, typed.
#[component]
fn TypedContents() -> impl IntoView {
    let state = State::here();
    let unit = state.volume_unit();
    view! {
            <div class="pair">
                <TextField
                    field=Field::TankShare
                    label="Ethanol in it"
                    unit="%"
                    hint="What you expect"
                    value=state.text(|it| Some(&it.here.fill.share))
                    on_text=state.set(|it, text| it.here.fill.share = text)
                />
                <TextField
                    field=Field::TankShareRange
                    label="May be"
                    unit="%"
                    hint="From–to: 8–12"
                    words=true
                    value=state.text(|it| Some(&it.here.fill.share_range))
                    on_text=state.set(|it, text| it.here.fill.share_range = text)
                />
            </div>
            {how_sure(
                "tank-how-sure",
                |it| Some((it.here.fill.how_sure, it.here.fill.share_assumed()?)),
                |it| Some(&mut it.here.fill.how_sure),
            )}
            <Folded summary="Octane and gauge error".into_any()>
                <div class="pair">
                    <TextField
                        field=Field::TankOctane
                        label="Octane, at least"
                        hint="98 RON, 93 AKI. Empty: not known"
                        unit=state.octane_unit()
                        words=true
                        value=state.entry(Measure::Octane, |it| Some(&it.here.fill.octane))
                        on_text=state.set_entry(|it| Some(&mut it.here.fill.octane))
                    />
                    <TextField
                        field=Field::TankMon
                        label="MON, at least"
                        value=state.text(|it| Some(&it.here.fill.mon))
                        on_text=state.set(|it, text| it.here.fill.mon = text)
                    />
                </div>
                {extras_fields(
                    Field::TankExtra,
                    |it| Some(&it.here.fill.extras),
                    |it| Some(&mut it.here.fill.extras),
                )}
                <TextField
                    field=Field::LevelError
                    label="Error of the level, plus or minus"
                    hint="Leave empty for the usual error of that reading"
                    words=true
                    unit=unit
                    value=state.entry(Measure::Volume, |it| Some(&it.here.fill.level_error))
                    on_text=state.set_entry(|it| Some(&mut it.here.fill.level_error))
                />
            </Folded>
    }
}
