//! The card of what the plan should be like.

use fillwright::document::{Field, PreferForm, TripPart};
use fillwright::message::Message;
use fillwright::message::keys::trip as keys;
use fillwright::words::trip::preference;
use leptos::prelude::*;

use super::need;
use crate::app::session::Session;
use crate::app::widgets::{
    CheckBox, Options, Section, TextField, holds, key_of, options, said, value_of,
};

const PREFERENCES: [(PreferForm, &str, Message); 3] = [
    (PreferForm::Cheapest, "cheapest", preference(PreferForm::Cheapest)),
    (PreferForm::FewestStops, "fewest-stops", preference(PreferForm::FewestStops)),
    (PreferForm::MostEthanol, "most-ethanol", preference(PreferForm::MostEthanol)),
];

fn is_here(field: Field) -> bool {
    matches!(field, Field::Trip(TripPart::Budget | TripPart::Margin | TripPart::FinalLevel))
}

/// What the plan should be like.
#[component]
pub(super) fn WishSection() -> impl IntoView {
    let session = Session::here();
    let chosen =
        said(move || session.document.with(|it| key_of(&PREFERENCES, &it.here.route.prefer)));
    let choose = session.set(|it, key| {
        if let Some(prefer) = value_of(&PREFERENCES, &key) {
            it.here.route.prefer = prefer;
        }
    });
    let careful = holds(move || session.document.with(|it| it.here.route.careful));
    let tick = Callback::new(move |careful| {
        session.document.update(|it| it.here.route.careful = careful);
    });
    let short = said(move || {
        let prefer = session.document.with(|it| it.here.route.prefer);
        let label = preference(prefer).say();
        if careful.get() { keys::WishCareful { wish: label }.say() } else { label.to_owned() }
    });
    view! {
        <Section id="trip-wish" title=keys::WISH.say() short=short need=need(is_here) open=true>
            <Options
                legend=keys::ABOVE_ALL.say()
                name="prefer"
                options=options(&PREFERENCES)
                chosen=chosen
                on_choice=choose
            />
            <CheckBox label=keys::HOLD_WHATEVER.say() checked=careful on_tick=tick />
            <p class="hint">
                {keys::HOLD_WHATEVER_MEANS.say()}
            </p>
            <div class="pair">
                <TextField
                    field=Field::Trip(TripPart::Budget)
                    label=keys::BUDGET.say()
                    hint=keys::BUDGET_HINT.say()
                />
                <TextField
                    field=Field::Trip(TripPart::Margin)
                    label=keys::MARGIN.say()
                    hint=keys::MARGIN_HINT.say()
                />
                <TextField
                    field=Field::Trip(TripPart::FinalLevel)
                    label=keys::FINAL_LEVEL.say()
                    hint=keys::FINAL_LEVEL_HINT.say()
                    words=true
                />
            </div>
        </Section>
    }
}
