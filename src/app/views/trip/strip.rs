//! The route as a strip: level, and share with the windows of the calibrations.

use fillwright::answers::trip::{TankAtPlace, TripAnswer};
use fillwright::message::keys::trip as keys;
use fillwright::quantity::notation::Printer;
use fillwright::quantity::{Share, Volume};
use fillwright::words::trip;
use leptos::prelude::*;

use super::answer::card;
use crate::app::charts::{
    Axis, Chart, ChartOnScreen, Course, Limit, Line, Mark, Point, Side, Window,
};
use crate::app::stages::deferred;
use crate::app::trip_memos::TripMemos;
use crate::app::widgets::{When, holds};

/// Room above the highest share, in percent.
const AIR: f64 = 5.0;

/// The route as a strip: level, and share with the windows of the calibrations.
#[component]
pub(super) fn StripCard() -> impl IntoView {
    let trip_memos = TripMemos::here();
    let has_plan = deferred(holds(move || trip_memos.planning.plan.with(Option::is_some)));
    let has_more = deferred(has_plan);
    let led = RwSignal::new(None);
    view! {
        <When condition=has_plan>
            <section class=card(trip_memos) aria-labelledby="strip-title">
                <h2 id="strip-title">{keys::ALONG_THE_ROUTE.say()}</h2>
                <ChartOnScreen id="trip-level" chart=level_graph(trip_memos) led=led />
                <When condition=has_more>
                    <ChartOnScreen id="trip-share" chart=share_graph(trip_memos) led=led />
                </When>
            </section>
        </When>
    }
}

/// The level along the route.
pub(super) fn level_graph(trip_memos: TripMemos) -> Signal<Chart> {
    Signal::derive(move || trip_memos.of_plan(level).unwrap_or_default())
}

/// The ethanol share along the route.
pub(super) fn share_graph(trip_memos: TripMemos) -> Signal<Chart> {
    Signal::derive(move || trip_memos.of_plan(share).unwrap_or_default())
}

fn distance_axis(places: &[TankAtPlace], printer: &Printer) -> Axis {
    let unit = printer.units.distance();
    Axis {
        name: keys::DISTANCE.say().into(),
        unit: unit.symbol().into(),
        from: 0.0,
        to: places.last().map_or(1.0, |it| unit.value_of(it.distance)).max(1.0),
        decimals: 0,
        style: printer.style,
        ..Axis::default()
    }
}

/// Where the stops are that have a name here.
fn marks(plan: &TripAnswer, printer: &Printer, name: impl Fn(usize) -> String) -> Vec<Mark> {
    let unit = printer.units.distance();
    let mut x = 0.0;
    let legs = plan.asked.route.legs.iter().enumerate();
    let marks = legs.map(|(at, leg)| {
        let mark = Mark { name: name(at), x, y: None };
        x += unit.value_of(leg.distance);
        mark
    });
    marks.filter(|mark| !mark.name.is_empty()).collect()
}

fn level(plan: &TripAnswer, printer: &Printer) -> Chart {
    let (places, tank) = (plan.places(), &plan.asked.route.tank);
    let volume = |it: Volume| printer.units.volume().value_of(it);
    let point = |place: &TankAtPlace| {
        let level = place.level.map(volume);
        let x = printer.units.distance().value_of(place.distance);
        Point::new(x, level.expected(), Some((level.low(), level.high())))
    };
    let name = |at: usize| {
        let parts = trip::bought(plan, at, printer).into_iter();
        parts
            .map(|(volume, fuel)| keys::Portion { volume, fuel }.say())
            .collect::<Vec<_>>()
            .join(" + ")
    };
    Chart {
        title: keys::LEVEL.say().into(),
        words: keys::LevelChart { plan: trip::next(plan, printer).0 }.say(),
        x: distance_axis(&places, printer),
        y: Axis {
            name: keys::LEVEL.say().into(),
            unit: printer.units.volume().symbol().into(),
            from: 0.0,
            to: volume(tank.capacity),
            decimals: 1,
            style: printer.style,
            ..Axis::default()
        },
        lines: vec![Line {
            name: keys::LEVEL.say().into(),
            label: keys::LEVEL.say().into(),
            points: places.iter().map(point).collect(),
            look: 0,
            emphasis: true,
        }],
        limits: vec![Limit {
            name: keys::RESERVE.say().into(),
            course: Course::Level { y: volume(tank.reserve), from: None, to: None },
            beyond: Side::Below,
        }],
        marks: marks(plan, printer, name),
        ..Chart::default()
    }
}

fn share(plan: &TripAnswer, printer: &Printer) -> Chart {
    let places = plan.places();
    let point = |place: &TankAtPlace| {
        let x = printer.units.distance().value_of(place.distance);
        place.share.map_or(Point::gap(x), |share| {
            let share = share.map(Share::percent);
            Point::new(x, share.expected(), Some((share.low(), share.high())))
        })
    };
    let windows: Vec<Window> = plan
        .asked
        .route
        .calibrations
        .iter()
        .map(|it| Window { name: it.name.clone(), from: it.low.percent(), to: it.high.percent() })
        .collect();
    let shares = places.iter().filter_map(|it| it.share.map(|share| share.high().percent()));
    let highest = shares.chain(windows.iter().map(|it| it.to)).fold(0.0, f64::max);
    let short = plan.in_short();
    let words = short.weakest.zip(short.strongest).map_or_else(
        || keys::SHARE_CHART_WORDS.say().to_owned(),
        |(low, high)| {
            keys::ShareChartBetween { low: printer.grade(low), high: printer.grade(high) }.say()
        },
    );
    Chart {
        title: keys::SHARE_CHART.say().into(),
        words,
        x: distance_axis(&places, printer),
        y: Axis {
            name: keys::SHARE_CHART.say().into(),
            unit: "%".into(),
            from: 0.0,
            to: (highest + AIR).min(100.0),
            decimals: 0,
            style: printer.style,
            ..Axis::default()
        },
        lines: vec![Line {
            name: keys::SHARE.say().into(),
            label: keys::SHARE.say().into(),
            points: places.iter().map(point).collect(),
            look: 1,
            emphasis: true,
        }],
        across: windows,
        marks: marks(plan, printer, |at| trip::stop(&plan.asked, at)),
        ..Chart::default()
    }
}
