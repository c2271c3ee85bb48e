//! The card of units and how numbers are written.

use fillwright::document::{Document, Field};
use fillwright::message::Message;
use fillwright::message::keys::car as keys;
use fillwright::quantity::notation::{Choosable, Currency, DecimalMark, UnitSystem, Units};
use fillwright::words::units;
use leptos::prelude::*;

use crate::app::device;
use crate::app::session::Session;
use crate::app::stages::Folded;
use crate::app::widgets::{Choices, Drawn, Options, TextField, key_of, options, said, value_of};

const SYSTEMS: [(UnitSystem, &str, Message); 3] = [
    (UnitSystem::Metric, "metric", keys::METRIC),
    (UnitSystem::Us, "us", keys::US),
    (UnitSystem::Imperial, "imperial", keys::IMPERIAL),
];

const MARKS: [(Option<DecimalMark>, &str, Message); 3] = [
    (None, "device", keys::AS_DEVICE),
    (Some(DecimalMark::Point), "point", keys::DECIMAL_POINT),
    (Some(DecimalMark::Comma), "comma", keys::DECIMAL_COMMA),
];

/// Units and how numbers are written.
#[component]
pub(super) fn UnitsCard() -> impl IntoView {
    let session = Session::here();
    // Where some unit was chosen apart, no system is: choosing one then takes all.
    let system = said(move || {
        let units = session.document.with(|it| it.settings.units);
        if units.are_mixed() { String::new() } else { key_of(&SYSTEMS, &units.system()) }
    });
    let mark = said(move || session.document.with(|it| key_of(&MARKS, &it.settings.decimal)));
    view! {
        <section class="card" id="units" aria-labelledby="units-title">
            <h2 id="units-title">{keys::UNITS.say()}</h2>
            <Options
                legend=keys::ALL_AT_ONCE.say()
                name="system"
                options=options(&SYSTEMS)
                chosen=system
                on_choice=session
                    .set(|it, key| {
                        if let Some(system) = value_of(&SYSTEMS, &key) {
                            it.settings.units = Units::of(system);
                        }
                    })
            />
            <Folded class="long one-by-one" summary=keys::ONE_BY_ONE.say().into_any()>
                <p class="hint">
                    {keys::ONE_BY_ONE_HINT.say()}
                </p>
                <div class="pair">
                    {Choosable::ALL.map(|quantity| UnitOf(UnitOfProps { quantity }).into_any())}
                </div>
            </Folded>
            <Options
                legend=keys::DECIMALS.say()
                name="decimal-mark"
                options=options(&MARKS)
                chosen=mark
                on_choice=session
                    .set(|it, key| {
                        if let Some(mark) = value_of(&MARKS, &key) {
                            it.settings.decimal = mark;
                        }
                    })
            />
            <TextField
                field=Field::Currency
                label=keys::CURRENCY.say()
                words=true
                hint=keys::CURRENCY_HINT.say()
            />
            <Rates />
            <TextField
                field=Field::PumpStep
                label=keys::PUMP_STEP.say()
                hint=keys::PUMP_STEP_HINT.say()
            />
        </section>
    }
}

/// What other currencies are worth, for each in which something was typed.
#[component]
fn Rates() -> impl IntoView {
    let session = Session::here();
    let currencies = Memo::new(move |_| session.document.with(Document::other_currencies));
    let row = |currency| RateOf(RateOfProps { currency }).into_any();
    let drawn =
        Callback::new(move |()| currencies.get().into_iter().map(row).collect::<Vec<AnyView>>());
    view! { <Drawn what=drawn /> }
}

/// What one other currency is worth, and when that was typed.
#[component]
fn RateOf(currency: Currency) -> impl IntoView {
    let session = Session::here();
    let typed_on = said(move || {
        let day = session.document.with(|it| {
            let typed = it.settings.rate_of(currency).filter(|form| !form.rate.trim().is_empty());
            typed.map(|form| form.typed_on.clone())
        });
        day.map_or_else(String::new, |day| {
            keys::RateTyped { currency: currency.to_string(), day }.say()
        })
    });
    view! {
        <TextField
            field=Field::Rate(currency)
            label=said(move || keys::Rate { currency: currency.to_string() }.say())
            on_text=session
                .set(move |it, text| {
                    let today = device::now().chars().take(10).collect();
                    it.settings.set_rate(currency, text, today);
                })
        />
        <p class="hint">{typed_on}</p>
    }
}

/// The unit of one quantity.
#[component]
fn UnitOf(quantity: Choosable) -> impl IntoView {
    let session = Session::here();
    let table = quantity
        .choices()
        .map(|choice| (choice.word.to_owned(), units::choice(choice).to_owned()))
        .collect();
    let chosen = said(move || {
        session.document.with(|it| it.settings.units.choice(quantity).word.to_owned())
    });
    view! {
        <Choices
            id=format!("unit-{}", quantity as usize)
            label=units::quantity(quantity)
            choices=Signal::stored(table)
            chosen=chosen
            on_choice=session
                .set(move |it, word| {
                    if let Some(units) = it.settings.units.with(quantity, &word) {
                        it.settings.units = units;
                    }
                })
        />
    }
}
