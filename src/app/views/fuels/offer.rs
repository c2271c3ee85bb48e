//! The fields of one fuel, at the pump or along the route.

use fillwright::document::{Field, FuelPart};
use fillwright::fuel::grades;
use fillwright::message::keys::fuels as keys;
use fillwright::words::sources::citation;
use fillwright::words::{self, deeds::Deed};
use leptos::prelude::*;

use crate::app::session::Session;
use crate::app::stages::Folded;
use crate::app::undo::{Act, Spot};
use crate::app::views::extras::extras_fields;
use crate::app::views::how_sure::how_sure;
use crate::app::widgets::{Button, CheckBox, OCTANE_HINT, TextField, When, holds, said};

/// One fuel on offer, at the pump or along the route.
#[component]
pub(super) fn OfferForm(id: u32) -> impl IntoView {
    let session = Session::here();
    let name = session.typed(Field::Fuel(id, FuelPart::Name));
    let exchanged = said(move || {
        let exchanged = session
            .document
            .with(|it| it.fuel(id).and_then(|offer| it.settings.exchanged(&offer.price)));
        exchanged.map_or_else(String::new, |it| {
            session.printer.with(|printer| words::exchanged(&it, printer))
        })
    });
    let on_route = holds(move || session.document.with(|it| it.stop_of_fuel(id).is_some()));
    let closed = holds(move || {
        session
            .document
            .with(|it| it.stop_of_fuel(id).is_some_and(|stop| stop.closed.contains(&id)))
    });
    let close =
        Callback::new(move |closed| session.document.update(|it| it.close_fuel(id, closed)));
    view! {
        <fieldset class="offer">
            <legend class="legend">{name}</legend>
            <When condition=on_route>
                <CheckBox label=keys::NOT_TO_BE_HAD.say() checked=closed on_tick=close />
            </When>
            <div class="pair">
                <TextField
                    field=Field::Fuel(id, FuelPart::Share)
                    label=keys::ETHANOL.say()
                    hint=keys::ETHANOL_HINT.say()
                />
                <TextField
                    field=Field::Fuel(id, FuelPart::ShareRange)
                    label=keys::MAY_BE.say()
                    hint=keys::MAY_BE_HINT.say()
                    words=true
                />
                <TextField
                    field=Field::Fuel(id, FuelPart::Octane)
                    label=keys::OCTANE.say()
                    hint=OCTANE_HINT.say()
                    words=true
                />
                <TextField
                    field=Field::Fuel(id, FuelPart::Price)
                    label=keys::PRICE.say()
                />
            </div>
            <When condition=holds(move || exchanged.with(|it| !it.is_empty()))>
                <p class="hint" id=format!("fuel-{id}-exchanged")>
                    {exchanged}
                </p>
            </When>
            {how_sure(Field::Fuel(id, FuelPart::Share))}
            <MoreOfOffer id=id on_route=on_route />
        </fieldset>
    }
}

/// What is seldom needed of a fuel on offer.
#[component]
fn MoreOfOffer(id: u32, on_route: Signal<bool>) -> impl IntoView {
    let session = Session::here();
    let use_all =
        holds(move || session.document.with(|it| it.fuel(id).is_some_and(|offer| offer.use_all)));
    let tick = Callback::new(move |all| {
        session.document.update(|it| {
            if let Some(offer) = it.fuel_mut(id) {
                offer.use_all = all;
            }
        });
    });
    let remove = Callback::new(move |()| {
        session.change_undoably(Act::at(Spot::Row(id), Deed::FuelRemoved), |it| it.remove_fuel(id));
    });
    let keep = Callback::new(move |()| session.document.update(|it| it.keep_fuel(id)));
    let kept = holds(move || session.document.with(|it| it.keeps_fuel(id)));
    let grade_note = said(move || {
        let grade = session
            .document
            .with(|it| it.fuel(id).and_then(|offer| grades::find(offer.grade.as_deref()?)));
        grade.map_or_else(String::new, |grade| {
            keys::Grade {
                standard: grade.standard.say(),
                note: grade.note.say(),
                source: citation(&grade.source),
            }
            .say()
        })
    });
    view! {
        <Folded summary=keys::MORE.say().into_any()>
            <TextField
                field=Field::Fuel(id, FuelPart::Name)
                label=keys::NAME.say()
                words=true
            />
            <div class="pair">
                <TextField
                    field=Field::Fuel(id, FuelPart::Limit)
                    label=keys::LIMIT.say()
                    hint=keys::LIMIT_HINT.say()
                    words=true
                />
                <TextField
                    field=Field::Fuel(id, FuelPart::Mon)
                    label=keys::MON.say()
                />
            </div>
            {extras_fields(|part| Field::Fuel(id, FuelPart::Extra(part)))}
            <When condition=holds(move || !on_route.get())>
                <CheckBox label=keys::USE_ALL.say() checked=use_all on_tick=tick />
            </When>
            <p class="hint">{grade_note}</p>
            <div class="buttons">
                <When condition=holds(move || !kept.get())>
                    <Button label=keys::KEEP.say() look="small" on_press=keep />
                </When>
                <When condition=kept>
                    <p class="hint">{keys::KEPT.say()}</p>
                </When>
                <Button label=keys::REMOVE.say() look="small" on_press=remove />
            </div>
        </Folded>
    }
}
