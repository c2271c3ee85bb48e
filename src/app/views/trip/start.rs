//! The card of what is in the tank where the route begins.

use fillwright::answers::tank::History;
use fillwright::document::{Field, StartForm, TripPart};
use fillwright::quantity::notation::Measure;
use leptos::prelude::*;

use super::need;
use crate::app::device;
use crate::app::stages::Folded;
use crate::app::state::State;
use crate::app::views::LEVEL_READINGS;
use crate::app::views::extras::{EXTRAS, extras_fields};
use crate::app::views::how_sure::how_sure;
use crate::app::widgets::{
    LEVEL_HINT, OCTANE_HINT, Options, Section, TextField, When, holds, key_of, options, said,
    value_of,
};

const STARTS: [(StartForm, &str, &str); 2] =
    [(StartForm::Log, "log", "The log"), (StartForm::Typed, "typed", "What I type")];

fn is_here(field: Field) -> bool {
    use TripPart::{Extra, Level, LevelError, Mon, Octane, Share, ShareRange, Start};
    matches!(
        field,
        Field::Trip(Start | Level | LevelError | Share | ShareRange | Extra(_) | Octane | Mon)
    )
}

/// What is in the tank where the route begins.
#[component]
pub(super) fn StartSection() -> impl IntoView {
    let state = State::here();
    let chosen = said(move || state.document.with(|it| key_of(&STARTS, &it.here.route.start)));
    let choose = state.set(|it, key| {
        if let Some(start) = value_of(&STARTS, &key) {
            it.here.route.start = start;
        }
    });
    let from_log = holds(move || state.document.with(|it| it.here.route.start == StartForm::Log));
    let by_log = said(move || {
        let as_of = state.history.with(History::as_of);
        as_of.map_or_else(String::new, |as_of| {
            format!("{} As of {}.", state.by_the_log(), device::date(as_of.local_minutes(), true))
        })
    });
    let nothing = said(move || state.message(Field::Trip(TripPart::Start)));
    let short =
        said(
            move || {
                if from_log.get() { "From the log".to_owned() } else { "As typed".to_owned() }
            },
        );
    view! {
        <Section id="trip-start" title="In the tank at the start" short=short need=need(is_here) open=true>
            <Options
                legend="Start from"
                name="route-start"
                options=options(&STARTS)
                chosen=chosen
                on_choice=choose
            />
            <When condition=from_log>
                <p class="note">{by_log}</p>
                <When condition=holds(move || nothing.with(|it| !it.is_empty()))>
                    <p class="note caution" id=Field::Trip(TripPart::Start).id() tabindex="-1">
                        {nothing}
                    </p>
                </When>
            </When>
            <When condition=holds(move || !from_log.get())>
                <Typed />
            </When>
        </Section>
    }
}

/// What is in the tank, typed.
#[component]
fn Typed() -> impl IntoView {
    let state = State::here();
    let unit = state.volume_unit();
    let reading = said(move || {
        state.document.with(|it| key_of(&LEVEL_READINGS, &it.here.route.contents.level.reading))
    });
    let choose = state.set(|it, key| {
        if let Some(reading) = value_of(&LEVEL_READINGS, &key) {
            it.here.route.contents.level.reading = reading;
        }
    });
    view! {
        <TextField
            field=Field::Trip(TripPart::Level)
            label="Level"
            hint=LEVEL_HINT
            words=true
            unit=unit
            value=state.entry(Measure::Level, |it| Some(&it.here.route.contents.level.level))
            on_text=state.set_entry(|it| Some(&mut it.here.route.contents.level.level))
        />
        <Options
            legend="How it was read"
            name="route-reading"
            options=options(&LEVEL_READINGS)
            chosen=reading
            on_choice=choose
        />
        <div class="pair">
            <TextField
                field=Field::Trip(TripPart::Share)
                label="Ethanol in it"
                unit="%"
                hint="What you expect"
                value=state.text(|it| Some(&it.here.route.contents.share))
                on_text=state.set(|it, text| it.here.route.contents.share = text)
            />
            <TextField
                field=Field::Trip(TripPart::ShareRange)
                label="May be"
                unit="%"
                hint="From–to: 8–12"
                words=true
                value=state.text(|it| Some(&it.here.route.contents.share_range))
                on_text=state.set(|it, text| it.here.route.contents.share_range = text)
            />
            <TextField
                field=Field::Trip(TripPart::Octane)
                label="Octane, at least"
                hint=OCTANE_HINT
                unit=state.octane_unit()
                words=true
                value=state.entry(Measure::Octane, |it| Some(&it.here.route.contents.octane))
                on_text=state.set_entry(|it| Some(&mut it.here.route.contents.octane))
            />
            <TextField
                field=Field::Trip(TripPart::Mon)
                label="MON, at least"
                value=state.text(|it| Some(&it.here.route.contents.mon))
                on_text=state.set(|it, text| it.here.route.contents.mon = text)
            />
        </div>
        {how_sure(
            "route-how-sure",
            |it| {
                let form = &it.here.route.contents;
                Some((form.how_sure, form.share_assumed()?))
            },
            |it| Some(&mut it.here.route.contents.how_sure),
        )}
        <Folded summary=EXTRAS.into_any()>
            {extras_fields(
                |part| Field::Trip(TripPart::Extra(part)),
                |it| Some(&it.here.route.contents.extras),
                |it| Some(&mut it.here.route.contents.extras),
            )}
        </Folded>
        <TextField
            field=Field::Trip(TripPart::LevelError)
            label="Error of the level, plus or minus"
            hint="Leave empty for the usual error of that reading"
            words=true
            unit=unit
            value=state.entry(Measure::Volume, |it| Some(&it.here.route.contents.level.error))
            on_text=state.set_entry(|it| Some(&mut it.here.route.contents.level.error))
        />
    }
}
