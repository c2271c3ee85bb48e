//! The fields of one power curve.

use fillwright::document::{CurvePart, Field, HardwareField, MeasuredAt};
use fillwright::message::Message;
use fillwright::message::keys::hardware as keys;
use fillwright::message::keys::hardware_rows as rows;
use fillwright::power::AirCorrection;
use fillwright::words::deeds::Deed;
use fillwright::words::hardware;
use leptos::prelude::*;

use super::curve_form::{read, set};
use super::curve_table::TableField;
use super::section::need;
use super::slots::{Owner, Row, fields};
use crate::app::session::Session;
use crate::app::stages::Folded;
use crate::app::undo::{Act, Spot};
use crate::app::widgets::{
    Button, Choices, NeedInShort, Options, TextField, key_of, options, value_of,
};

const PLACES: [(MeasuredAt, &str, Message); 2] =
    [(MeasuredAt::Crank, "crank", keys::AT_CRANK), (MeasuredAt::Wheel, "wheel", keys::AT_WHEELS)];

const NO_CALIBRATION: &str = "none";

static AIR: [Row; 3] = [
    Row::figure(HardwareField::AirTemperature, rows::AIR_TEMPERATURE)
        .hint(rows::AIR_TEMPERATURE_HINT),
    Row::figure(HardwareField::AirPressure, rows::AIR_PRESSURE).hint(rows::AIR_PRESSURE_HINT),
    Row::figure(HardwareField::Humidity, rows::HUMIDITY).hint(rows::HUMIDITY_HINT),
];

/// A power curve.
pub(super) fn one(id: u32) -> AnyView {
    view! { <OneCurve id=id /> }.into_any()
}

#[component]
fn OneCurve(id: u32) -> impl IntoView {
    let session = Session::here();
    let title = read(id, |form| hardware::curve(&form.name));
    let is_new = session
        .document
        .with_untracked(|it| it.here.hardware.curve(id).is_some_and(|form| form.table.is_blank()));
    let need = need(move |field| matches!(field, Field::Curve(of, _) if of == id));
    let remove = Callback::new(move |()| {
        let act = Act::at(Spot::Row(id), Deed::CurveRemoved);
        session.change_undoably(act, |it| it.here.hardware.curves.retain(|form| form.id != id));
    });
    let summary = view! {
        <span>{title}</span>
        <NeedInShort need=need />
    };
    view! {
        <Folded class="part" open=is_new summary=summary.into_any()>
            <div class="inside" role="group" aria-label=title>
                <TextField
                    field=Field::Curve(id, CurvePart::Name)
                    label=keys::NAME.say()
                    words=true
                />
                <TableField id=id />
                <Options
                    legend=keys::MEASURED.say()
                    name=format!("curve-{id}-place")
                    options=options(&PLACES)
                    chosen=read(id, |form| key_of(&PLACES, &form.place))
                    on_choice=set(id, |form, key| {
                        if let Some(place) = value_of(&PLACES, &key) {
                            form.place = place;
                        }
                    })
                />
                <WithWhat id=id />
                <Air id=id />
                <div>
                    <Button
                        label=keys::REMOVE.say()
                        look="small"
                        name=Signal::derive(move || Some(keys::RemoveIt { what: title.get() }.say()))
                        on_press=remove
                    />
                </div>
            </div>
        </Folded>
    }
}

/// The calibration and the blend with which it was measured.
#[component]
fn WithWhat(id: u32) -> impl IntoView {
    let session = Session::here();
    let calibrations = Memo::new(move |_| {
        session.document.with(|it| {
            let none = (NO_CALIBRATION.to_owned(), keys::NOT_SAID.say().to_owned());
            let all = it.here.car.calibrations.iter();
            let all = all.map(|form| (form.id.to_string(), form.name.clone()));
            std::iter::once(none).chain(all).collect::<Vec<_>>()
        })
    });
    let chosen = read(id, |form| {
        form.calibration.map_or_else(|| NO_CALIBRATION.to_owned(), |id| id.to_string())
    });
    view! {
        <div class="pair">
            <Choices
                id=format!("curve-{id}-calibration")
                label=keys::CALIBRATION.say()
                choices=calibrations.into()
                chosen=chosen
                on_choice=set(id, |form, key| form.calibration = key.parse().ok())
            />
            <TextField
                field=Field::Curve(id, CurvePart::Blend)
                label=keys::BLEND_THEN.say()
                words=true
            />
        </div>
    }
}

/// The air in which it was measured, and what is made of that.
#[component]
fn Air(id: u32) -> impl IntoView {
    let rules: Vec<(String, String)> = AirCorrection::ALL
        .iter()
        .map(|rule| (rule.id().to_owned(), hardware::correction(*rule)))
        .collect();
    view! {
        <details>
            <summary>{keys::AIR_AND_CORRECTION.say()}</summary>
            <div class="inside">
                <p class="hint">
                    {keys::CORRECTIONS_MEAN.say()}
                </p>
                <div class="inside">
                    <Choices
                        id=format!("curve-{id}-given")
                        label=keys::FIGURES_ARE.say()
                        choices=Signal::stored(rules.clone())
                        chosen=read(id, |form| form.given.id().to_owned())
                        on_choice=set(
                            id,
                            |form, key| {
                                form.given = AirCorrection::of_id(&key).unwrap_or_default();
                            },
                        )
                    />
                    <Choices
                        id=format!("curve-{id}-correction")
                        label=keys::SHOW_THEM.say()
                        choices=Signal::stored(rules)
                        chosen=read(id, |form| form.correction.id().to_owned())
                        on_choice=set(
                            id,
                            |form, key| {
                                form.correction = AirCorrection::of_id(&key).unwrap_or_default();
                            },
                        )
                    />
                </div>
                {fields(Owner::Air(id), &AIR)}
            </div>
        </details>
    }
}
