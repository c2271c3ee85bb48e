//! The fields of an entry that says what is in the tank.

use fillwright::document::{BeforeForm, ContentsForm, EntryPart, Field, LevelForm, What};
use fillwright::quantity::notation::Measure;
use leptos::prelude::*;

use super::{EntryMeasure, EntryText, what, what_mut};
use crate::app::stages::Folded;
use crate::app::state::State;
use crate::app::views::LEVEL_READINGS;
use crate::app::views::extras::{EXTRAS, extras_fields};
use crate::app::views::how_sure::how_sure;
use crate::app::widgets::{LEVEL_HINT, OCTANE_HINT, Options, key_of, options, said, value_of};

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
pub(super) fn LevelFields() -> impl IntoView {
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
            hint=LEVEL_HINT
            measure=Measure::Level
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
pub(super) fn ContentsFields() -> impl IntoView {
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
            <EntryMeasure
                part=EntryPart::Octane
                label="Octane, at least"
                hint=OCTANE_HINT
                measure=Measure::Octane
                unit=State::here().octane_unit()
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
        {how_sure(
            "entry-how-sure",
            |it| {
                let form = what(it).and_then(contents)?;
                Some((form.how_sure, form.share_assumed()?))
            },
            |it| Some(&mut contents_mut(what_mut(it)?)?.how_sure),
        )}
        <Folded summary=EXTRAS.into_any()>
            {extras_fields(
                |part| Field::Entry(EntryPart::Extra(part)),
                |it| Some(&contents(what(it)?)?.extras),
                |it| Some(&mut contents_mut(what_mut(it)?)?.extras),
            )}
        </Folded>
    }
}
