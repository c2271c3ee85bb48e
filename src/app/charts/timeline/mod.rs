//! A value over time: its band, what was noted, and the windows it should lie in.

mod dates;
mod draw;
mod frame;
mod reading;
mod table;
mod trace;

use leptos::{ev, html, prelude::*};
use web_sys::HtmlElement;

use super::super::widgets::{Drawn, When, holds, said};
use frame::{Frame, height};
use reading::{Print, Reading, nearest};
use table::{Table, noted};

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
    /// The end of the axis that begins at nought; 1 or more.
    pub(crate) top: f64,
    /// In the order of time.
    pub(crate) points: Vec<Point>,
    pub(crate) marks: Vec<Mark>,
    pub(crate) windows: Vec<Window>,
    /// The picture in one sentence.
    pub(crate) words: String,
}

/// The width that a picture is drawn for until it is known how much room it has.
const NARROW: f64 = 340.0;

/// How many points a large step of the crosshair passes.
const LEAP: usize = 10;

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
    let chart = Chart::new(id, timeline, Print { date, value });
    let some = holds(move || timeline.with(|it| !it.points.is_empty()));
    let part = move |read: fn(&Reading) -> String| said(move || chart.reading.with(read));
    let (when, read, ends) =
        (part(|it| it.when.clone()), part(|it| it.value.clone()), part(Reading::ends));
    let notes = Callback::new(move |()| noted(chart.reading.get().noted));
    let title = said(move || timeline.with(|it| it.title.clone()));
    view! {
        <figure class="timeline" id=id>
            <figcaption>
                <strong>{title}</strong>
                <When condition=some>
                    <span class="when">{when}</span>
                    <span class="read">
                        <strong class="number">{read}</strong>
                        " "
                        <span>{ends}</span>
                    </span>
                </When>
            </figcaption>
            <Stage chart=chart some=some />
            <When condition=some>
                <p class="notes">
                    <Drawn what=notes />
                </p>
                <Key timeline=timeline />
                <Table timeline=timeline print=chart.print />
            </When>
        </figure>
    }
}

/// What the parts of a chart share.
#[derive(Clone, Copy)]
struct Chart {
    id: &'static str,
    timeline: Signal<Timeline>,
    print: Print,
    width: RwSignal<f64>,
    frame: Memo<Frame>,
    /// The point under the crosshair.
    at: RwSignal<Option<usize>>,
    /// That point, or the last one.
    index: Memo<usize>,
    reading: Memo<Reading>,
}

impl Chart {
    fn new(id: &'static str, timeline: Signal<Timeline>, print: Print) -> Self {
        let width = RwSignal::new(NARROW);
        let at = RwSignal::new(None::<usize>);
        let index = Memo::new(move |_| {
            let last = timeline.with(|it| it.points.len()).saturating_sub(1);
            at.get().map_or(last, |at| at.min(last))
        });
        let frame = Memo::new(move |_| {
            timeline.with(|it| Frame::of(it, width.get(), &last_value(it, print)))
        });
        let reading = Memo::new(move |_| timeline.with(|it| Reading::of(it, index.get(), print)));
        Self { id, timeline, print, width, frame, at, index, reading }
    }

    /// Moves the crosshair by a key; whether it was one that does.
    fn step(self, key: &str) -> bool {
        let last = self.timeline.with_untracked(|it| it.points.len()).saturating_sub(1);
        let now = self.index.get_untracked();
        let to = match key {
            "ArrowLeft" | "ArrowDown" => now.saturating_sub(1),
            "ArrowRight" | "ArrowUp" => now + 1,
            "PageDown" => now.saturating_sub(LEAP),
            "PageUp" => now + LEAP,
            "Home" => 0,
            "End" => last,
            _ => return false,
        };
        self.at.set(Some(to.min(last)));
        true
    }

    /// Moves the crosshair to the point nearest to a place, as a part of the width.
    fn point_at(self, part: f64) {
        let minute = self.frame.get_untracked().minute_at(part * self.width.get_untracked());
        let index = self.timeline.with_untracked(|it| nearest(&it.points, minute));
        self.at.set(Some(index));
    }

    /// The line of the crosshair, while it is led.
    fn cross(self) -> String {
        let frame = self.frame.get();
        let place = self.at.get().and_then(|_| self.point());
        place.map_or(String::new(), |point| {
            format!("M{:.1} {:.1}V{:.1}", frame.x(point.minute), frame.top, frame.bottom)
        })
    }

    /// The band at the point that is read, as a bar.
    fn bar(self) -> String {
        let frame = self.frame.get();
        self.point().map_or(String::new(), |point| {
            let x = frame.x(point.minute);
            let (low, high) = (frame.y(point.low), frame.y(point.high));
            format!("M{0:.1} {high:.1}h8m-4 0V{low:.1}m-4 0h8", x - 4.0)
        })
    }

    /// A disc at what is expected there.
    fn disc(self) -> String {
        let frame = self.frame.get();
        self.point().map_or(String::new(), |point| {
            let (x, y) = (frame.x(point.minute) - 4.5, frame.y(point.expected));
            format!("M{x:.1} {y:.1}a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0-9 0z")
        })
    }

    fn point(self) -> Option<Point> {
        self.timeline.with(|it| it.points.get(self.index.get()).copied())
    }
}

fn last_value(timeline: &Timeline, print: Print) -> String {
    timeline.points.last().map_or(String::new(), |last| print.value.run(last.expected))
}

/// The picture, and over it what takes pointer and keys.
#[component]
fn Stage(chart: Chart, some: Signal<bool>) -> impl IntoView {
    let stage = NodeRef::<html::Div>::new();
    let measure = move || {
        let width = stage.get().map_or(0, |it| it.client_width());
        // A hidden chart has no width; it is drawn for a narrow one until it has.
        if width > 0 {
            chart.width.set(width.into());
        }
    };
    Effect::new(move |_| measure());
    let handle = window_event_listener(ev::resize, move |_| untrack(measure));
    on_cleanup(move || handle.remove());
    let picture = Callback::new(move |()| {
        let frame = chart.frame.get();
        let timeline = chart.timeline;
        timeline.with(|it| {
            draw::picture(chart.id, it, &frame, chart.print, last_value(it, chart.print))
        })
    });
    let view_box =
        said(move || format!("0 0 {0} {1}", chart.width.get(), height(chart.width.get())));
    let words = said(move || chart.timeline.with(|it| it.words.clone()));
    let cross = said(move || chart.cross());
    let bar = said(move || chart.bar());
    let disc = said(move || chart.disc());
    view! {
        <div class="stage" node_ref=stage>
            <svg viewBox=view_box role="img" aria-label=words>
                <Drawn what=picture />
                <path class="cross" d=cross></path>
                <path class="bar" d=bar></path>
                <path class="disc" d=disc></path>
            </svg>
            <When condition=some>
                <Reader chart=chart />
            </When>
        </div>
    }
}

/// What is led over the picture. Its value is the number of the point, and the text
/// of that value is the reading, so that a screen reader says each reading once.
#[component]
fn Reader(chart: Chart) -> impl IntoView {
    let focused = RwSignal::new(false);
    let to = move |event: &ev::PointerEvent| {
        let Some(width) = over(event).map(|it| it.client_width()).filter(|it| *it > 0) else {
            return;
        };
        chart.point_at(f64::from(event.offset_x()) / f64::from(width));
    };
    let press = move |event: ev::PointerEvent| {
        if let Some(element) = over(&event) {
            // Nothing is lost where it cannot have the focus.
            let _ = element.focus();
        }
        to(&event);
    };
    let key = move |event: ev::KeyboardEvent| {
        if chart.step(&event.key()) {
            event.prevent_default();
        }
    };
    let enter = move |_| {
        focused.set(true);
        chart.at.set(Some(chart.index.get_untracked()));
    };
    let leave = move |_| {
        focused.set(false);
        chart.at.set(None);
    };
    let pass = move |_| {
        if !focused.get_untracked() {
            chart.at.set(None);
        }
    };
    let title = said(move || chart.timeline.with(|it| format!("Read {}", it.title)));
    let count = said(move || chart.timeline.with(|it| it.points.len()).to_string());
    let number = said(move || (chart.index.get() + 1).to_string());
    let sentence = said(move || chart.reading.with(Reading::sentence));
    view! {
        <div
            class="reader"
            id=format!("{}-reader", chart.id)
            role="slider"
            tabindex="0"
            aria-label=title
            aria-valuemin="1"
            aria-valuemax=count
            aria-valuenow=number
            aria-valuetext=sentence
            on:pointerdown=press
            on:pointermove=move |event| to(&event)
            on:pointerleave=pass
            on:keydown=key
            on:focus=enter
            on:blur=leave
        ></div>
    }
}

fn over(event: &ev::PointerEvent) -> Option<HtmlElement> {
    use wasm_bindgen::JsCast;
    event.current_target().and_then(|target| target.dyn_into().ok())
}

/// What the lines and shapes stand for, as far as they occur.
#[component]
fn Key(timeline: Signal<Timeline>) -> impl IntoView {
    const MARKS: [(MarkKind, &str); 4] = [
        (MarkKind::Fill, "fill"),
        (MarkKind::Level, "level read"),
        (MarkKind::ShareReading, "share read"),
        (MarkKind::Other, "other entry"),
    ];
    let entries = Callback::new(move |()| {
        let occurs = |kind: MarkKind| timeline.with(|it| it.marks.iter().any(|m| m.kind == kind));
        let line = view! { <path class="expected" d="M-8 0H8"></path> }.into_any();
        let band = view! { <path class="bound" d="M-8-5H8M-8 5H8"></path> }.into_any();
        let marks = MARKS.into_iter().filter(|(kind, _)| occurs(*kind));
        let marks = marks.map(|(kind, words)| (draw::glyph(kind, 0.0, 0.0), words));
        let lines = [(line, "expected"), (band, "low and high")];
        lines.into_iter().chain(marks).map(entry).collect()
    });
    view! {
        <ul class="key plain">
            <Drawn what=entries />
        </ul>
    }
}

fn entry((shape, words): (AnyView, &'static str)) -> AnyView {
    view! {
        <li>
            <svg viewBox="-9 -9 18 18" aria-hidden="true">
                {shape}
            </svg>
            {words}
        </li>
    }
    .into_any()
}
