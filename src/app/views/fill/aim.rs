use fillwright::logbook::{AimForm, Field, Measure, StopForm};
use leptos::prelude::*;

use crate::app::state::State;
use crate::app::widgets::{Choices, Options, TextField};

const SHARE: &str = "share";

const STOPS: [(StopForm, &str, &str); 5] = [
    (StopForm::Brim, "brim", "Full, to the click"),
    (StopForm::Level, "level", "At a level"),
    (StopForm::AtMost, "volume", "After a volume, at most"),
    (StopForm::Budget, "money", "After a sum of money, at most"),
    (StopForm::Least, "least", "As soon as the aim is reached"),
];

/// The blend that is wanted, and when to stop.
#[component]
pub(super) fn AimCard() -> impl IntoView {
    let state = State::here();
    let unit =
        Signal::derive(move || state.printer.with(|it| it.system.volume().symbol().to_owned()));
    let aims = Memo::new(move |_| {
        state.document.with(|it| {
            let share = (SHARE.to_owned(), "A blend".to_owned());
            let calibrations = it.car.calibrations.iter();
            let calibrations = calibrations.map(|form| (form.id.to_string(), form.name.clone()));
            std::iter::once(share).chain(calibrations).collect::<Vec<_>>()
        })
    });
    let aim = Memo::new(move |_| match state.document.with(|it| it.fill.aim) {
        AimForm::Share => SHARE.to_owned(),
        AimForm::Calibration(id) => id.to_string(),
    });
    let choose_aim = state.set(|it, key| {
        it.fill.aim = key.parse().map_or(AimForm::Share, AimForm::Calibration);
    });
    let complaint = state.complaint(Field::AimCalibration);
    let stops: Vec<_> = STOPS.iter().map(|it| (it.1.to_owned(), it.2.to_owned())).collect();
    let stop = Memo::new(move |_| state.document.with(|it| it.fill.stop));
    let stop_key = Memo::new(move |_| {
        STOPS.iter().find(|it| it.0 == stop.get()).map_or("", |it| it.1).to_owned()
    });
    let choose_stop = state.set(|it, key| {
        if let Some(found) = STOPS.iter().find(|it| it.1 == key) {
            it.fill.stop = found.0;
        }
    });
    let currency = Signal::derive(move || state.printer.with(|it| it.currency.clone()));
    view! {
        <section class="card" aria-labelledby="aim">
            <h2 id="aim">"Aim"</h2>
            <Options
                legend="What it should suit"
                name="aim"
                options=aims
                chosen=aim
                on_choice=choose_aim
            />
            <Show
                when=move || aim.get() == SHARE
                fallback=move || {
                    view! {
                        <Show when=move || complaint.with(Option::is_some)>
                            <p class="note caution">{move || complaint.get()}</p>
                        </Show>
                    }
                }
            >
                <TextField
                    field=Field::AimShare
                    label="Blend wanted"
                    hint="E30, 30 or 30 %"
                    words=true
                    value=state.text(|it| Some(&it.fill.aim_share))
                    on_text=state.set(|it, text| it.fill.aim_share = text)
                />
            </Show>
            <Choices
                id="stop"
                label="Stop"
                choices=Signal::stored(stops)
                chosen=stop_key
                on_choice=choose_stop
            />
            {move || match stop.get() {
                StopForm::Brim | StopForm::Least => ().into_any(),
                StopForm::Level => {
                    view! {
                        <TextField
                            field=Field::StopLevel
                            label="Level to stop at"
                            hint="3/4, 75 % or a volume"
                            words=true
                            unit=unit
                            value=state.entry(Measure::Volume, |it| Some(&it.fill.stop_level))
                            on_text=state.set_entry(|it| Some(&mut it.fill.stop_level))
                        />
                    }
                        .into_any()
                }
                StopForm::AtMost => {
                    view! {
                        <TextField
                            field=Field::StopVolume
                            label="Volume to stop after"
                            unit=unit
                            words=true
                            value=state.entry(Measure::Volume, |it| Some(&it.fill.stop_volume))
                            on_text=state.set_entry(|it| Some(&mut it.fill.stop_volume))
                        />
                    }
                        .into_any()
                }
                StopForm::Budget => {
                    view! {
                        <TextField
                            field=Field::StopMoney
                            label="Money to stop after"
                            unit=currency
                            value=state.text(|it| Some(&it.fill.stop_money))
                            on_text=state.set(|it, text| it.fill.stop_money = text)
                        />
                    }
                        .into_any()
                }
            }}
        </section>
    }
}
