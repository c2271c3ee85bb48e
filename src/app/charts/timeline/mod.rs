//! A value over time: its band, what was noted, and the windows it should lie in.

mod chart;
mod dates;
mod draw;
mod frame;
mod key;
mod names;
mod reading;
mod table;
mod trace;

use leptos::prelude::*;

use super::plot::{AsTable, Crosshair, Room, Show, Stage};
use crate::app::widgets::{Drawn, When, holds, said};
use chart::Chart;
use key::Key;
use reading::{Print, Reading};
use table::{drawn, noted};

/// What is thought of a value at one time. A jump is two points at one time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Point {
    /// Minutes since 1970, local time.
    pub(crate) minute: i64,
    pub(crate) low: f64,
    pub(crate) expected: f64,
    pub(crate) high: f64,
}

/// What was noted at a time, said together with the point next to it.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Mark {
    /// Minutes since 1970, local time.
    pub(crate) minute: i64,
    pub(crate) value: f64,
    pub(crate) kind: MarkKind,
    /// For instance "Fill: 16 L E85".
    pub(crate) words: String,
    /// The address of the log's entry.
    pub(crate) href: Option<String>,
}

/// What a mark stands for; each kind has a shape of its own.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(crate) enum MarkKind {
    /// Fuel went in.
    Fill,
    /// The level was read.
    Level,
    /// The ethanol share was read.
    ShareReading,
    Other,
}

/// The window of a calibration.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Window {
    pub(crate) low: f64,
    pub(crate) high: f64,
    pub(crate) name: String,
}

/// All that the chart shows. Values are in `unit`.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Timeline {
    pub(crate) title: String,
    /// The symbol of the unit, at the axis.
    pub(crate) unit: String,
    /// With how many decimals values are told.
    pub(crate) decimals: usize,
    /// The end of the axis that begins at nought; 1 or more.
    pub(crate) top: f64,
    /// In the order of time.
    pub(crate) points: Vec<Point>,
    pub(crate) marks: Vec<Mark>,
    pub(crate) windows: Vec<Window>,
    /// The picture in one sentence.
    pub(crate) words: String,
}

/// The chart, with a crosshair that is led by pointer, finger or arrow keys, what
/// it reads in words, and all of it as a table.
#[component]
pub(crate) fn TimelineChart(
    /// Also the beginning of the ids inside.
    id: &'static str,
    timeline: Signal<Timeline>,
    /// Prints a time, with the time of day or without.
    date: Callback<(i64, bool), String>,
    /// Prints a value with its unit.
    value: Callback<f64, String>,
) -> impl IntoView {
    let print = Print { date, value };
    let count = Memo::new(move |_| timeline.with(|it| it.points.len()));
    let crosshair = Crosshair {
        count: count.into(),
        rest: Signal::derive(move || count.get().saturating_sub(1)),
        at: RwSignal::new(None),
    };
    let chart = Chart { id, timeline, print, room: Room::new(), crosshair };
    let some = holds(move || timeline.with(|it| !it.points.is_empty()));
    let title = said(move || timeline.with(|it| it.title.clone()));
    let read = Callback::new(move |()| chart.reading().map_or_else(Vec::new, Reading::drawn));
    let notes =
        Callback::new(move |()| chart.reading().map_or_else(Vec::new, |it| noted(it.noted)));
    let sentence = said(move || chart.reading().map_or(String::new(), |it| it.sentence()));
    let show = Show {
        id,
        title,
        words: said(move || timeline.with(|it| it.words.clone())),
        picture: Callback::new(move |()| chart.picture()),
        cross: Callback::new(move |()| chart.cross()),
        sentence,
        point_at: Callback::new(move |part| chart.point_at(part)),
        crosshair,
        room: chart.room,
    };
    let table = Callback::new(move |()| timeline.with(|it| drawn(it, print)));
    view! {
        <figure class="plot timeline" id=id>
            <figcaption>
                <strong>{title}</strong>
                <Drawn what=read />
            </figcaption>
            <Stage show=show some=some />
            <When condition=some>
                <Key timeline=timeline />
                <p class="notes">
                    <Drawn what=notes />
                </p>
                <AsTable what=table />
            </When>
        </figure>
    }
}
