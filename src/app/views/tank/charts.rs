//! The charts of the tank view: share and level over time.

use fillwright::answers::tank::{History, Replayed, TankAnswer};
use fillwright::document::{Event, What};
use fillwright::message::keys::tank as keys;
use fillwright::quantity::notation::Printer;
use fillwright::quantity::{Band, Share, Volume};
use fillwright::tank::Estimate;
use fillwright::words::tank;
use leptos::prelude::*;

use crate::app::charts::{
    Axis, Chart, ChartOnScreen, Entry, EntryKind, Line, Point, PrintDate, Window, minutes,
};
use crate::app::device;
use crate::app::session::Session;
use crate::app::stages::Deferred;
use crate::app::tank_memos::TankMemos;
use crate::app::widgets::{When, holds};

/// What a chart shows of an estimate.
#[derive(Clone, Copy)]
enum Shown {
    Share,
    Level,
}

impl Shown {
    /// The band of it, in the unit of the chart.
    fn of(self, estimate: &Estimate, printer: &Printer) -> Band<f64> {
        match self {
            Self::Share => estimate.share.map(Share::percent),
            Self::Level => estimate.level.map(|it| in_unit(it, printer)),
        }
    }
}

fn in_unit(volume: Volume, printer: &Printer) -> f64 {
    printer.units.volume().value_of(volume)
}

fn point(minute: i64, band: Band<f64>) -> Point {
    Point::new(minutes(minute), band.expected(), Some((band.low(), band.high())))
}

/// Share and level over time.
#[component]
pub(super) fn ChartsCard() -> impl IntoView {
    let session = Session::here();
    let tank_memos = TankMemos::here();
    let drawn =
        holds(move || tank_memos.history.with(|it| it.replays.iter().any(Replayed::is_known)));
    let chart = move |shown: Shown| {
        Signal::derive(move || {
            let answer = tank_memos.answer.get();
            tank_memos.history.with(|history| {
                session.document.with_untracked(|document| {
                    session.printer.with(|printer| {
                        let event = |replayed: &Replayed| document.here.log.find(&replayed.event);
                        over_time(shown, history, answer.as_deref(), &event, printer)
                    })
                })
            })
        })
    };
    let (share, level) = (chart(Shown::Share), chart(Shown::Level));
    view! {
        <When condition=drawn>
            <section class="card" aria-labelledby="course-title">
                <h2 id="course-title">{keys::SINCE_FIRST.say()}</h2>
                <ChartOnScreen id="share-over-time" chart=share />
                <Deferred>
                    <ChartOnScreen id="level-over-time" chart=level />
                </Deferred>
            </section>
        </When>
    }
}

/// Share or level over time, with what was noted.
fn over_time<'a>(
    shown: Shown,
    history: &History,
    answer: Option<&TankAnswer>,
    event: &dyn Fn(&Replayed) -> Option<&'a Event>,
    printer: &Printer,
) -> Chart {
    let mut points = Vec::new();
    let mut last = None;
    let mut entries = Vec::new();
    for replayed in history.replays.iter() {
        let Some(after) = replayed.after() else { continue };
        let minute = replayed.time.local_minutes();
        if let Some(before) = replayed.before() {
            points.push(point(minute, shown.of(&before, printer)));
        }
        let band = shown.of(&after, printer);
        points.push(point(minute, band));
        last = Some(band.expected());
        let Some(event) = event(replayed) else { continue };
        let kind = match event.what {
            What::Fill(_) => EntryKind::Fill,
            What::Level(_) => EntryKind::Level,
            What::Sensor(_) | What::TubeTest(_) => EntryKind::ShareReading,
            _ => EntryKind::Other,
        };
        entries.push(Entry {
            x: minutes(minute),
            y: band.expected(),
            kind,
            words: keys::Entry {
                kind: tank::kind(&event.what),
                detail: tank::detail(event, printer),
            }
            .say(),
            href: Some(format!("#/tank/event-{}", event.id)),
        });
    }
    let now = answer.map(|it| tank::estimate(&it.estimate, printer)).unwrap_or_default();
    let times = || history.replays.iter().filter(|it| it.after().is_some());
    let times = || times().map(|it| minutes(it.time.local_minutes()));
    let x = Axis {
        name: keys::WHEN.say().into(),
        from: times().reduce(f64::min).unwrap_or(0.0),
        to: times().reduce(f64::max).unwrap_or(0.0),
        date: Some(PrintDate(device::date)),
        ..Axis::default()
    };
    let y = match shown {
        Shown::Share => Axis {
            name: keys::ETHANOL_SHARE.say().into(),
            unit: "%".into(),
            to: 100.0,
            style: printer.style,
            ..Axis::default()
        },
        Shown::Level => Axis {
            name: keys::LEVEL.say().into(),
            unit: printer.units.volume().symbol().into(),
            to: answer.map_or(1.0, |it| in_unit(it.capacity, printer)).max(1.0),
            decimals: 1,
            style: printer.style,
            ..Axis::default()
        },
    };
    let verdicts = answer.filter(|_| matches!(shown, Shown::Share)).into_iter();
    let windows = verdicts.flat_map(|it| &it.verdicts).map(|it| Window {
        name: it.calibration.name.clone(),
        from: it.calibration.low.percent(),
        to: it.calibration.high.percent(),
    });
    let line = Line {
        name: keys::EXPECTED.say().into(),
        // The value that is so now stands at the end of the line.
        label: last.map_or(String::new(), |it| y.print(it)),
        points,
        look: 0,
        emphasis: true,
    };
    Chart {
        title: y.name.clone(),
        words: keys::OverTime { what: &y.name, now }.say(),
        lines: vec![line],
        across: windows.collect(),
        entries,
        x,
        y,
        ..Chart::default()
    }
}
