//! What is printed.

use fillwright::answers::trip::TripAnswer;
use fillwright::document::CarFile;
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
            <h2>"Cautions"</h2>
            <ul>{trip::CAUTIONS.map(|it| view! { <li>{it}</li> })}</ul>
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
    let start = format!(
        "In the tank at the start: {} ({}) of {} ({}).",
        printer.volume(tank.level.expected()),
        printer.volume_band(tank.level),
        printer.grade(tank.share.expected()),
        printer.grade_band(tank.share),
    );
    let holds_for = if plan.asked.wish.is_robust {
        "It holds whatever is true within the bands given."
    } else {
        "It holds if everything is as expected."
    };
    let open = trip::left_open(plan);
    let open = (!open.is_empty()).then(|| {
        let open: Vec<_> = open.into_iter().map(|it| view! { <li>{it}</li> }).collect();
        view! {
            <section>
                <h2>"What the bands leave open"</h2>
                <ul>{open}</ul>
            </section>
        }
    });
    vec![
        sheet_head("Trip", car, &format!("{} in all.", printer.distance(whole))),
        view! {
            <section>
                <h2>{trip::next(plan, printer).0}</h2>
                <p>{quality} " " {holds_for}</p>
                <p>{start}</p>
                <dl>{facts(trip::in_short(plan, printer))}</dl>
            </section>
            {open}
            <section>
                <h2>"Stop by stop"</h2>
                {legs(plan, printer)}
            </section>
            <section>
                <h2>"What was reckoned with"</h2>
                {fuels(plan, printer)}
            </section>
        }
        .into_any(),
    ]
}

/// The fuels and the ways as they were given.
fn fuels(plan: &TripAnswer, printer: &Printer) -> AnyView {
    let headings = ["Stop", "Fuel", "Ethanol", "RON", "Price", "Way after it"];
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
        let way =
            format!("{}, factor {}", printer.distance(leg.distance), printer.number(leg.factor, 2));
        for (index, pump) in stop.pumps.iter().enumerate() {
            let closed = if pump.closed { ", not to be had" } else { "" };
            let ron = pump.ron.map_or_else(|| "—".into(), |it| printer.number(it, 1));
            rows.push(
                view! {
                    <tr>
                        <th scope="row">{trip::stop(&plan.asked, at)}</th>
                        <td>{format!("{}{closed}", name(index))}</td>
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
    table("readings", "Fuels and ways as given".to_owned(), headings, rows)
}
