//! The fields of one stop.

use fillwright::document::{
    Document, Field, FuelForm, OfferedAt, PlannedStop, Shift, TripStopPart,
};
use fillwright::message::Message;
use fillwright::message::keys::trip as keys;
use fillwright::words::deeds::Deed;
use fillwright::words::trip;
use leptos::prelude::*;

use super::lead::lead_to;
use super::leg::LegFields;
use super::need_with;
use crate::app::route::View;
use crate::app::session::Session;
use crate::app::stages::Folded;
use crate::app::tank_memos::TankMemos;
use crate::app::trip_memos::TripMemos;
use crate::app::undo::{Act, Spot};
use crate::app::views::fuels::Offers;
use crate::app::widgets::{Button, NeedInShort, TextField, When, holds, said};

/// Whether a field stands on the card of this stop.
fn is_here(document: &Document, id: u32, field: Field) -> bool {
    match field {
        Field::TripStop(stop, _) => stop == id,
        Field::Fuel(fuel, _) => {
            document.here.route.stop(id).is_some_and(|it| it.fuels.iter().any(|it| it.id == fuel))
        }
        _ => false,
    }
}

/// Whether what has this id stands on the card of this stop.
fn leads_into(document: &Document, id: u32, part: &str) -> bool {
    let of_fuel = |fuel: &FuelForm| part.starts_with(&format!("fuel-{}-", fuel.id));
    part.starts_with(&format!("halt-{id}-"))
        || document.here.route.stop(id).is_some_and(|it| it.fuels.iter().any(of_fuel))
}

/// A stop, and the way after it.
#[component]
pub(super) fn StopCard(id: u32) -> impl IntoView {
    let session = Session::here();
    let title = said(move || {
        session.document.with(|it| {
            let place = it.here.route.place_of(id);
            place.map_or_else(String::new, |at| trip::stop_name(&it.here.route.stops[at].place, at))
        })
    });
    let short = said(move || {
        session.document.with(|it| {
            it.here.route.stop(id).map_or_else(String::new, |stop| {
                session.printer.with(|printer| trip::stop_in_short(stop, printer))
            })
        })
    });
    let here = said(move || {
        session.document.with(|it| {
            let route = &it.here.route;
            match route.here.and_then(|here| route.place_of(here)) {
                Some(now) if route.place_of(id) == Some(now) && route.filled => {
                    keys::HERE_AND_FILLED.say()
                }
                Some(now) if route.place_of(id) == Some(now) => keys::HERE.say(),
                Some(now) if route.place_of(id) < Some(now) => keys::PASSED.say(),
                _ => "",
            }
            .to_owned()
        })
    });
    let need = need_with(move |document, field| is_here(document, id, field));
    let is_new = session.document.with_untracked(|it| {
        it.here.route.stop(id).is_some_and(|stop| stop.fuels.is_empty() && stop.distance.is_blank())
    });
    // A long route has hundreds of fields, so a link makes those of one stop.
    let opened = RwSignal::new(is_new);
    Effect::new(move |_| {
        let wanted = session.route.with(|it| it.part.clone());
        if wanted
            .is_some_and(|part| session.document.with_untracked(|it| leads_into(it, id, &part)))
        {
            opened.set(true);
        }
    });
    let summary = view! {
        <span>{title}</span>
        <span class="in-short">{short}</span>
        <When condition=holds(move || here.with(|it| !it.is_empty()))>
            <span class="in-short">
                <strong>{here}</strong>
            </span>
        </When>
        <NeedInShort need=need />
    };
    view! {
        <Folded class="part" open=is_new opened=opened summary=summary.into_any()>
            <StopFields id=id title=title />
        </Folded>
    }
}

/// The fields of a stop.
#[component]
fn StopFields(id: u32, title: Signal<String>) -> impl IntoView {
    view! {
        <div class="inside" role="group" aria-label=title>
            <TextField
                field=Field::TripStop(id, TripStopPart::Place)
                label=keys::PLACE.say()
                words=true
            />
            <h3>{keys::FUELS_THERE.say()}</h3>
            <Offers place=OfferedAt::Stop(id) />
            <TextField
                field=Field::TripStop(id, TripStopPart::Fee)
                label=keys::FEE.say()
                hint=keys::FEE_HINT.say()
            />
            <h3>{keys::WAY_AFTER.say()}</h3>
            <LegFields id=id />
            <StopButtons id=id title=title />
        </div>
    }
}

/// What can be done with a stop.
#[component]
fn StopButtons(id: u32, title: Signal<String>) -> impl IntoView {
    let session = Session::here();
    let tank_memos = TankMemos::here();
    let trip_memos = TripMemos::here();
    let at = Memo::new(move |_| session.document.with(|it| it.here.route.place_of(id)));
    let last = Memo::new(move |_| session.document.with(|it| it.here.route.stops.len()));
    let shift = move |shift| {
        Callback::new(move |()| {
            session.document.update(|it| it.here.route.shift_stop(id, shift));
        })
    };
    let copy = Callback::new(move |()| {
        let mut copied = None;
        session.document.update(|it| copied = it.here.copy_stop(id));
        if let Some(copied) = copied {
            lead_to(session, copied);
        }
    });
    let remove = Callback::new(move |()| {
        let act = Act::at(Spot::Row(id), Deed::StopRemoved);
        session.change_undoably(act, |it| it.here.route.remove_stop(id));
    });
    let arrive = Callback::new(move |()| {
        let planned = planned(session, trip_memos, id);
        let has_log = tank_memos.history.with_untracked(|it| it.estimator.is_some());
        session.change_undoably(Deed::Arrived, |it| it.here.arrive(id, planned, has_log));
        if let Err(error) = window().location().set_hash(View::Fill.link()) {
            leptos::logging::error!("{error:?}");
        }
    });
    let name = move |what: Message| {
        Signal::derive(move || Some(keys::ButtonOf { what, stop: title.get() }.say()))
    };
    view! {
        <div class="buttons">
            <Button label=keys::ARRIVE.say() name=name(keys::ARRIVE) on_press=arrive />
            <When condition=holds(move || at.get().is_some_and(|at| at > 0))>
                <Button
                    label=keys::EARLIER.say()
                    look="small"
                    name=name(keys::EARLIER)
                    on_press=shift(Shift::Earlier)
                />
            </When>
            <When condition=holds(move || at.get().is_some_and(|at| at + 1 < last.get()))>
                <Button label=keys::LATER.say() look="small" name=name(keys::LATER) on_press=shift(Shift::Later) />
            </When>
            <Button label=keys::COPY.say() look="small" name=name(keys::COPY) on_press=copy />
            <Button label=keys::REMOVE.say() look="small" name=name(keys::REMOVE) on_press=remove />
        </div>
        <p class="hint">
            {keys::ARRIVE_MEANS.say()}
        </p>
    }
}

/// What the plan wants at a stop, in the person's units.
fn planned(session: Session, trip_memos: TripMemos, id: u32) -> Option<PlannedStop> {
    let plan = trip_memos.planning.plan.get_untracked()?;
    // A plan for the route before a change says nothing of this one.
    trip_memos
        .reading
        .with_untracked(|it| it.asked.as_ref().filter(|it| **it == plan.asked).map(drop))?;
    let at = plan.asked.stops.iter().position(|it| it.id == id)?;
    let departure = &plan.course.legs.get(at)?.departure;
    let share = departure.share?;
    Some(session.printer.with_untracked(|printer| PlannedStop {
        share: printer.number(share.expected().percent(), 1),
        level: fillwright::quantity::notation::Entry {
            text: printer.volume_number(departure.level.expected()),
            typed_in: printer.units,
        },
    }))
}
