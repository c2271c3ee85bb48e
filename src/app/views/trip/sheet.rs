//! What is printed.

use fillwright::answers::trip::TripAnswer;
use fillwright::document::CarFile;
use fillwright::message::keys::trip as keys;
use fillwright::quantity::notation::Printer;
use fillwright::words::trip;
use leptos::prelude::*;

use super::legs::legs;
use super::strip::{level_graph, share_graph};
use crate::app::charts::ChartOnPaper;
use crate::app::session::Session;
use crate::app::trip_memos::TripMemos;
use crate::app::widgets::{Drawn, facts, sheet_head, table};

/// The sheet.
#[component]
pub(super) fn Paper() -> impl IntoView {
    let session = Session::here();
    let trip_memos = TripMemos::here();
    let content = Callback::new(move |()| {
        let report = trip_memos.report();
        trip_memos
            .of_plan(|plan, printer| {
                let quality = report.as_ref().and_then(|it| trip::quality(plan, it, printer));
                session.document.with(|document| drawn(plan, quality, &document.here, printer))
            })
            .unwrap_or_default()
    });
    view! {
        <Drawn what=content />
        <section>
            <ChartOnPaper id="level-on-paper" chart=level_graph(trip_memos) />
        </section>
        <section>
            <ChartOnPaper id="trip-share-on-paper" chart=share_graph(trip_memos) />
        </section>
        <section>
            <h2>{keys::CAUTIONS.say()}</h2>
            <ul>{trip::CAUTIONS.map(|it| view! { <li>{it.say()}</li> })}</ul>
        </section>
    }
}

/// All but the pictures.
fn drawn(
    plan: &TripAnswer,
    quality: Option<String>,
    car: &CarFile,
    printer: &Printer,
) -> Vec<AnyView> {
    let whole: fillwright::quantity::Length =
        plan.asked.route.legs.iter().map(|leg| leg.distance).sum();
    let tank = &plan.asked.route.tank;
    let start = keys::AtStart {
        level: printer.volume(tank.level.expected()),
        levels: printer.volume_band(tank.level),
        share: printer.grade(tank.share.expected()),
        shares: printer.grade_band(tank.share),
    }
    .say();
    let holds_for = if plan.asked.wish.is_robust {
        keys::HOLDS_WHATEVER.say()
    } else {
        keys::HOLDS_AS_EXPECTED.say()
    };
    let open = trip::left_open(plan);
    let open = (!open.is_empty()).then(|| {
        let open: Vec<_> = open.into_iter().map(|it| view! { <li>{it}</li> }).collect();
        view! {
            <section>
                <h2>{keys::LEFT_OPEN.say()}</h2>
                <ul>{open}</ul>
            </section>
        }
    });
    vec![
        sheet_head(keys::TRIP.say(), car, &keys::InAll { distance: printer.distance(whole) }.say()),
        view! {
            <section>
                <h2>{trip::next(plan, printer).0}</h2>
                <p>{quality} " " {holds_for}</p>
                <p>{start}</p>
                <dl>{facts(trip::in_short(plan, printer))}</dl>
            </section>
            {open}
            <section>
                <h2>{keys::STOP_BY_STOP.say()}</h2>
                {legs(plan, printer)}
            </section>
            <section>
                <h2>{keys::GIVEN.say()}</h2>
                {fuels(plan, printer)}
            </section>
        }
        .into_any(),
    ]
}

/// The fuels and the ways as they were given.
fn fuels(plan: &TripAnswer, printer: &Printer) -> AnyView {
    let headings = [
        keys::STOP.say(),
        keys::FUEL.say(),
        keys::ETHANOL.say(),
        "RON",
        keys::PRICE.say(),
        keys::WAY_AFTER_HEADING.say(),
    ];
    let headings = headings.map(str::to_owned).into();
    let route = &plan.asked.route;
    let mut rows = Vec::new();
    for (at, (stop, leg)) in route.stops.iter().zip(&route.legs).enumerate() {
        let name = |pump: usize| {
            let fuel = plan.asked.stops.get(at).and_then(|it| it.fuels.get(pump));
            fuel.map_or_else(String::new, |it| it.name.clone())
        };
        let rate = |pump: usize| {
            plan.asked.stops.get(at).and_then(|it| it.fuels.get(pump)).and_then(|it| it.rate)
        };
        let way = keys::Way {
            distance: printer.distance(leg.distance),
            factor: printer.number(leg.factor, 2),
        }
        .say();
        for (index, pump) in stop.pumps.iter().enumerate() {
            let fuel = name(index);
            let fuel = if pump.closed { keys::FuelClosed { fuel }.say() } else { fuel };
            let ron = pump.ron.map_or_else(|| "—".into(), |it| printer.number(it, 1));
            rows.push(
                view! {
                    <tr>
                        <th scope="row">{trip::stop(&plan.asked, at)}</th>
                        <td>{fuel}</td>
                        <td>
                            {format!(
                                "{} ({})",
                                printer.grade(pump.share.expected()),
                                printer.grade_band(pump.share),
                            )}
                        </td>
                        <td>{ron}</td>
                        <td>{printer.price_both(pump.price, rate(index))}</td>
                        <td>{way.clone()}</td>
                    </tr>
                }
                .into_any(),
            );
        }
    }
    table("readings", keys::GIVEN_CAPTION.say().to_owned(), headings, rows)
}
