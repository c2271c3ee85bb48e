//! Values over a number: lines with their bands, limits that they should keep,
//! windows along the axis, and marked places.

mod chart;
mod curve;
mod draw;
mod ends;
mod frame;
mod head;
mod labels;
mod notes;
mod reading;
mod table;

use fillwright::quantity::notation::{Style, print_number, round_down, round_up};
use leptos::prelude::*;

use super::plot::{AsTable, Crosshair, Room, Show, Stage};
use crate::app::widgets::{Drawn, When, holds, said};
use chart::{Chart, rest, stops};

/// All that the chart shows.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Graph {
    pub(crate) title: String,
    /// The picture in one sentence, for those who do not see it; never empty.
    pub(crate) words: String,
    pub(crate) x: Axis,
    pub(crate) y: Axis,
    /// Up to [`LOOKS`] lines can be told apart.
    pub(crate) lines: Vec<Line>,
    pub(crate) limits: Vec<Limit>,
    pub(crate) windows: Vec<Window>,
    /// Windows of the values: bands that lie across the picture.
    pub(crate) across: Vec<Window>,
    /// The first of them is read until the crosshair is led elsewhere.
    pub(crate) marks: Vec<Mark>,
    /// How numbers are printed.
    pub(crate) style: Style,
}

/// An axis. What lies beyond its ends is not drawn, but said.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Axis {
    pub(crate) name: String,
    /// The symbol of the unit; empty where there is none.
    pub(crate) unit: String,
    pub(crate) from: f64,
    /// More than `from`.
    pub(crate) to: f64,
    /// How many decimals its values are printed with.
    pub(crate) decimals: usize,
}

/// One of the lines.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Line {
    pub(crate) name: String,
    /// The name in short, for the end of the line.
    pub(crate) label: String,
    /// In the order of x.
    pub(crate) points: Vec<Point>,
    /// Which of the [`LOOKS`] it has: a dash and a colour.
    pub(crate) look: usize,
    /// Whether it is the one that matters.
    pub(crate) emphasis: bool,
}

/// So many looks of lines differ in their dash.
pub(crate) const LOOKS: usize = 8;

/// A value of a line, or a gap in it. A jump is two points at one place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Point {
    x: f64,
    figure: Option<Figure>,
}

impl Point {
    /// A value with its low and its high end, where it is not exact. What is no
    /// finite number is a gap.
    pub(crate) fn new(x: f64, expected: f64, ends: Option<(f64, f64)>) -> Self {
        let (low, high) = ends.unwrap_or((expected, expected));
        let known = expected.is_finite() && !low.is_nan() && !high.is_nan();
        Self { x, figure: known.then_some(Figure { low, expected, high }) }
    }

    /// A place without a value: the line breaks there.
    pub(crate) fn gap(x: f64) -> Self {
        Self { x, figure: None }
    }
}

/// A value with its ends.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Figure {
    low: f64,
    expected: f64,
    high: f64,
}

/// What lines should not pass.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Limit {
    pub(crate) name: String,
    pub(crate) course: Course,
    pub(crate) beyond: Side,
}

/// Where a limit runs.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Course {
    /// At one level, over all of the axis or a part of it.
    Level { y: f64, from: Option<f64>, to: Option<f64> },
    /// Through places, each x and y.
    Through(Vec<(f64, f64)>),
}

/// The side of a limit that is out of bounds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Side {
    Above,
    Below,
}

/// A band along an axis, such as a calibration's window.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Window {
    pub(crate) name: String,
    pub(crate) from: f64,
    pub(crate) to: f64,
}

/// A place on the axis, such as the blend that is in the tank.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Mark {
    pub(crate) name: String,
    pub(crate) x: f64,
    /// The value there, where one point is meant.
    pub(crate) y: Option<f64>,
}

impl Graph {
    /// The windows that can be seen.
    fn windows(&self) -> impl Iterator<Item = &Window> {
        self.windows.iter().filter(|it| it.from <= self.x.to && it.to >= self.x.from)
    }

    /// The windows of the values that can be seen.
    fn across(&self) -> impl Iterator<Item = &Window> {
        self.across.iter().filter(|it| it.from <= self.y.to && it.to >= self.y.from)
    }

    /// The marks that can be seen.
    fn marks(&self) -> impl Iterator<Item = &Mark> {
        self.marks.iter().filter(|it| self.x.spans(it.x))
    }
}

impl Axis {
    /// Whether a value lies between its ends.
    fn spans(&self, value: f64) -> bool {
        (self.from..=self.to).contains(&value)
    }

    /// The nearest place on the axis.
    fn within(&self, value: f64) -> f64 {
        value.min(self.to).max(self.from)
    }

    fn number(&self, value: f64, style: Style) -> String {
        print_number(value, self.decimals, style)
    }

    /// The ends of a figure, rounded outwards.
    fn ends(&self, figure: Figure, style: Style) -> (String, String) {
        let (low, high) =
            (round_down(figure.low, self.decimals), round_up(figure.high, self.decimals));
        (self.number(low, style), self.number(high, style))
    }

    /// A value with its unit.
    fn print(&self, value: f64, style: Style) -> String {
        self.with_unit(self.number(value, style))
    }

    fn with_unit(&self, number: String) -> String {
        if self.unit.is_empty() { number } else { format!("{number}\u{202f}{}", self.unit) }
    }

    /// What it measures, with its unit.
    fn title(&self) -> String {
        if self.unit.is_empty() {
            self.name.clone()
        } else {
            format!("{}, {}", self.name, self.unit)
        }
    }
}

/// The chart, with a crosshair that is led by pointer, finger or arrow keys, what
/// it reads, and all of it as a table.
#[component]
pub(crate) fn GraphChart(
    /// Also the beginning of the ids inside.
    id: &'static str,
    graph: Signal<Graph>,
    /// Where the crosshair was led, for charts over the same places that share it.
    #[prop(optional)]
    led: Option<RwSignal<Option<usize>>>,
) -> impl IntoView {
    let stops = Memo::new(move |_| graph.with(stops));
    let crosshair = Crosshair {
        count: Signal::derive(move || stops.with(Vec::len)),
        rest: Signal::derive(move || graph.with(|it| stops.with(|stops| rest(it, stops)))),
        at: led.unwrap_or_else(|| RwSignal::new(None)),
    };
    let chart = Chart { id, graph, stops, room: Room::new(), crosshair };
    let some = holds(move || stops.with(|it| !it.is_empty()));
    let title = said(move || graph.with(|it| it.title.clone()));
    let show = Show {
        id,
        title,
        words: said(move || graph.with(|it| it.words.clone())),
        picture: Callback::new(move |()| chart.picture()),
        cross: Callback::new(move |()| chart.cross()),
        sentence: said(move || chart.reading().map_or(String::new(), |it| it.sentence())),
        point_at: Callback::new(move |part| chart.point_at(part)),
        crosshair,
        room: chart.room,
    };
    let place =
        said(move || chart.reading().map_or(String::new(), |it| format!("at {}", it.place)));
    let values =
        Callback::new(move |()| chart.reading().map_or_else(Vec::new, reading::Reading::drawn));
    let notes = Callback::new(move |()| graph.with(notes::drawn));
    let table = Callback::new(move |()| chart.table());
    view! {
        <figure class="plot graph" id=id>
            <figcaption>
                <strong>{title}</strong>
                <span class="when">{place}</span>
            </figcaption>
            <ul class="values plain">
                <Drawn what=values />
            </ul>
            <Stage show=show some=some />
            <When condition=some>
                <Drawn what=notes />
                <AsTable what=table />
            </When>
        </figure>
    }
}

/// The chart on paper: what it shows, and nothing that is led or opened.
#[component]
pub(crate) fn GraphOnPaper(
    /// Also the beginning of the ids inside.
    id: &'static str,
    graph: Signal<Graph>,
) -> impl IntoView {
    let title = said(move || graph.with(|it| it.title.clone()));
    let words = said(move || graph.with(|it| it.words.clone()));
    let picture = Callback::new(move |()| graph.with(|it| chart::on_paper(id, it)));
    let notes = Callback::new(move |()| graph.with(notes::drawn));
    view! {
        <figure class="plot graph" id=id>
            <figcaption>
                <strong>{title}</strong>
            </figcaption>
            <svg viewBox=chart::paper_box() role="img" aria-label=words>
                <Drawn what=picture />
            </svg>
            <Drawn what=notes />
        </figure>
    }
}
