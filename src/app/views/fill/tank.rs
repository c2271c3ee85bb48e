use fillwright::logbook::{Entry, Field, Measure};
use fillwright::tank::LevelReading;
use leptos::prelude::*;

use crate::app::state::State;
use crate::app::widgets::{Button, Options, TextField, key_of, options, said, value_of};

/// Levels that a gauge shows, for one tap.
const MARKS: [(&str, &str); 5] =
    [("0", "Empty"), ("1/4", "¼"), ("1/2", "½"), ("3/4", "¾"), ("full", "Full")];

const READINGS: [(LevelReading, &str, &str); 3] = [
    (LevelReading::Gauge, "gauge", "By the gauge"),
    (LevelReading::Counted, "counted", "Counted since full"),
    (LevelReading::Brimmed, "brimmed", "Just brimmed"),
];

/// What is in the tank.
#[component]
pub(super) fn TankCard() -> impl IntoView {
    let state = State::here();
    let unit = state.volume_unit();
    let reading = said(move || state.document.with(|it| key_of(&READINGS, &it.here.fill.reading)));
    let choose_reading = state.set(|it, key| {
        let Some(reading) = value_of(&READINGS, &key) else { return };
        it.here.fill.reading = reading;
        // Brimmed says how full as well.
        if reading == LevelReading::Brimmed {
            it.here.fill.level = Entry { text: "full".into(), typed_in: it.settings.system };
        }
    });
    let put = state.set_entry(|it| Some(&mut it.here.fill.level));
    let error_hint = "Leave empty for the usual error of that reading";
    view! {
        <section class="card" aria-labelledby="in-tank">
            <h2 id="in-tank">"In the tank"</h2>
            <TextField
                field=Field::Level
                label="Level"
                hint="20, 1/4, 25 % or a distance to empty like 90 km"
                words=true
                unit=unit
                value=state.entry(Measure::Volume, |it| Some(&it.here.fill.level))
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
                options=options(&READINGS)
                chosen=reading
                on_choice=choose_reading
            />
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
            <details>
                <summary>"Octane of it, error of the reading"</summary>
                <div class="pair">
                    <TextField
                        field=Field::TankOctane
                        label="RON, at least"
                        hint="Or AKI: 93 AKI"
                        words=true
                        value=state.text(|it| Some(&it.here.fill.octane))
                        on_text=state.set(|it, text| it.here.fill.octane = text)
                    />
                    <TextField
                        field=Field::TankMon
                        label="MON, at least"
                        value=state.text(|it| Some(&it.here.fill.mon))
                        on_text=state.set(|it, text| it.here.fill.mon = text)
                    />
                </div>
                <TextField
                    field=Field::LevelError
                    label="Error of the level, plus or minus"
                    hint=error_hint
                    words=true
                    unit=unit
                    value=state.entry(Measure::Volume, |it| Some(&it.here.fill.level_error))
                    on_text=state.set_entry(|it| Some(&mut it.here.fill.level_error))
                />
            </details>
        </section>
    }
}
