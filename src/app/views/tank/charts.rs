//! The charts of the tank's estimate over time.

use fillwright::answers::tank::{History, Replayed, TankAnswer};
use fillwright::document::{Event, What};
use fillwright::quantity::notation::Printer;
use fillwright::quantity::{Band, Share, Volume};
use fillwright::tank::Estimate;
use leptos::prelude::*;

use crate::app::charts::{Mark, MarkKind, Point, Timeline, TimelineChart, Window};
use crate::app::device;
use crate::app::stages::Deferred;
use crate::app::state::State;
use crate::app::widgets::{When, holds};
use crate::app::wording::tank;

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
    Point { minute, low: band.low(), expected: band.expected(), high: band.high() }
}

/// Share and level over time.
#[component]
pub(super) fn ChartsCard() -> impl IntoView {
    let state = State::here();
    let drawn = holds(move || state.history.with(|it| it.replays.iter().any(Replayed::is_known)));
    let chart = move |shown: Shown| {
        Signal::derive(move || {
            let answer = state.tank.get();
            state.history.with(|history| {
                state.document.with_untracked(|document| {
                    state.printer.with(|printer| {
                        let event = |replayed: &Replayed| document.here.log.find(&replayed.event);
                        timeline(shown, history, answer.as_deref(), &event, printer)
                    })
                })
            })
        })
    };
    let (share, level) = (chart(Shown::Share), chart(Shown::Level));
    let date = Callback::new(|(minute, with_time)| device::date(minute, with_time));
    let percent = Callback::new(move |value: f64| {
        state.printer.with(|it| format!("{}\u{202f}%", it.number(value, 0)))
    });
    let volume = Callback::new(move |value: f64| {
        state.printer.with(|it| it.volume(it.units.volume().quantity(value)))
    });
    view! {
        <When condition=drawn>
            <section class="card" aria-labelledby="course-title">
                <h2 id="course-title">"Since the first entry"</h2>
                <TimelineChart id="share-over-time" timeline=share date=date value=percent />
                <Deferred>
                    <TimelineChart id="level-over-time" timeline=level date=date value=volume />
                </Deferred>
            </section>
        </When>
    }
}

fn timeline<'a>(
    shown: Shown,
    history: &History,
    answer: Option<&TankAnswer>,
    event: &dyn Fn(&Replayed) -> Option<&'a Event>,
    printer: &Printer,
) -> Timeline {
    let mut points = Vec::new();
    let mut marks = Vec::new();
    for replayed in history.replays.iter() {
        let Some(after) = replayed.after() else { continue };
        let minute = replayed.time.local_minutes();
        if let Some(before) = replayed.before() {
            points.push(point(minute, shown.of(&before, printer)));
        }
        let band = shown.of(&after, printer);
        points.push(point(minute, band));
        let Some(event) = event(replayed) else { continue };
        let kind = match event.what {
            What::Fill(_) => MarkKind::Fill,
            What::Level(_) => MarkKind::Level,
            What::Sensor(_) | What::TubeTest(_) => MarkKind::ShareReading,
            _ => MarkKind::Other,
        };
        marks.push(Mark {
            minute,
            value: band.expected(),
            kind,
            words: format!("{}: {}", tank::kind(&event.what), tank::detail(event, printer)),
            href: Some(format!("#/tank/event-{}", event.id)),
        });
    }
    let now = answer.map(|it| tank::estimate(&it.estimate, printer)).unwrap_or_default();
    match shown {
        Shown::Share => Timeline {
            title: "Ethanol share".into(),
            unit: "%".into(),
            decimals: 0,
            top: 100.0,
            words: format!("Ethanol share over time. {now}"),
            windows: answer
                .into_iter()
                .flat_map(|it| &it.verdicts)
                .map(|it| Window {
                    low: it.calibration.low.percent(),
                    high: it.calibration.high.percent(),
                    name: it.calibration.name.clone(),
                })
                .collect(),
            points,
            marks,
        },
        Shown::Level => Timeline {
            title: "Level".into(),
            unit: printer.units.volume().symbol().into(),
            decimals: 1,
            top: answer.map_or(1.0, |it| in_unit(it.capacity, printer)).max(1.0),
            words: format!("Level over time. {now}"),
            windows: Vec::new(),
            points,
            marks,
        },
    }
}
