//! The picture itself: all of it but the crosshair.

use std::collections::HashSet;

use leptos::prelude::*;

use super::dates::date_ticks;
use super::frame::{Frame, value_ticks, whole, width_of};
use super::reading::Print;
use super::{Mark, MarkKind, Timeline, Window, names, trace};

/// Within less than this, one mark covers most of another.
const GLYPH: f64 = 10.0;

/// The axes, the windows, the band, the line, the marks, and the value at the end.
pub(super) fn picture(
    id: &str,
    timeline: &Timeline,
    frame: &Frame,
    print: Print,
    label: String,
) -> Vec<AnyView> {
    let mut parts = vec![hatch(id, 0), hatch(id, 1)];
    parts.extend(value_axis(frame, timeline));
    if timeline.points.is_empty() {
        let (x, y) =
            (f64::midpoint(frame.left, frame.right), f64::midpoint(frame.top, frame.bottom));
        parts.push(text("empty", x, y, "middle", "Nothing in the log yet".to_owned()));
        return parts;
    }
    parts.extend(date_axis(frame, print.date));
    parts.extend(windows(id, frame, &timeline.windows));
    let alone = frame.from == frame.to;
    let points = trace::thinned(&timeline.points, frame);
    parts.push(shape("band", trace::area(frame, &points)));
    parts.push(shape("bound", trace::line(frame, &points, |it| it.low)));
    parts.push(shape("bound", trace::line(frame, &points, |it| it.high)));
    parts.push(shape("expected", trace::line(frame, &points, |it| it.expected)));
    parts.extend(marks(frame, &timeline.marks));
    let names = names::placed(frame, &timeline.windows, &points, print.value);
    parts.extend(names.into_iter().map(|it| text("name", it.left, it.base, "start", it.words)));
    if let Some(last) = timeline.points.last() {
        let x = frame.x(last.minute).max(if alone { 0.0 } else { frame.right });
        parts.push(text("end", x + 10.0, frame.y(last.expected) + 5.0, "start", label));
    }
    parts
}

fn shape(class: &'static str, d: String) -> AnyView {
    view! { <path class=class d=d></path> }.into_any()
}

fn text(class: &'static str, x: f64, y: f64, anchor: &'static str, words: String) -> AnyView {
    view! {
        <text class=class x=whole(x) y=whole(y) text-anchor=anchor>
            {words}
        </text>
    }
    .into_any()
}

/// The hatch of a window; neighbours are hatched either way.
fn hatch(id: &str, way: usize) -> AnyView {
    view! {
        <pattern
            id=format!("{id}-hatch{way}")
            width="7"
            height="7"
            patternUnits="userSpaceOnUse"
            patternTransform=format!("rotate({})", 45 + 90 * way)
        >
            <path class="hatch" d="M0 0V7"></path>
        </pattern>
    }
    .into_any()
}

fn value_axis(frame: &Frame, timeline: &Timeline) -> Vec<AnyView> {
    let Frame { left, right, top, bottom, .. } = frame;
    let unit = text("tick", left - 6.0, top - 10.0, "end", timeline.unit.clone());
    let ticks = value_ticks(timeline.top).into_iter().flat_map(|tick| {
        let y = frame.y(tick);
        let grid = shape("grid", format!("M{left:.1} {y:.1}H{right:.1}"));
        [grid, text("tick", left - 6.0, y + 5.0, "end", tick.to_string())]
    });
    let axes = format!("M{left:.1} {top:.1}V{bottom:.1}H{right:.1}");
    std::iter::once(unit).chain(ticks).chain([shape("axis", axes)]).collect()
}

fn date_axis(frame: &Frame, date: Callback<(i64, bool), String>) -> Vec<AnyView> {
    let most = |with_time| {
        let ends = [frame.from, frame.to].map(|minute| width_of(&date.run((minute, with_time))));
        let room = (frame.right - frame.left) / (ends[0].max(ends[1]) + 12.0);
        (2..=6).rfind(|count| f64::from(*count) <= room).map_or(1, |count: u8| count.into())
    };
    let ticks = date_ticks(frame.from, frame.to, most);
    let tick = |minute: &i64| {
        let x = frame.x(*minute);
        let words = date.run((*minute, ticks.with_time));
        let half = width_of(&words) / 2.0;
        // The first and the last label stay under the axis.
        let (anchor, at) = if x - half < frame.left - 12.0 {
            ("start", frame.left - 12.0)
        } else if x + half > frame.right + 12.0 {
            ("end", frame.right + 12.0)
        } else {
            ("middle", x)
        };
        let line = shape("axis", format!("M{x:.1} {:.1}v5", frame.bottom));
        [line, text("tick", at, frame.bottom + 20.0, anchor, words)]
    };
    ticks.minutes.iter().flat_map(tick).collect()
}

/// Each calibration's window as a hatched band between its two limits.
fn windows(id: &str, frame: &Frame, windows: &[Window]) -> Vec<AnyView> {
    let Frame { left, right, .. } = frame;
    let drawn = windows.iter().enumerate().flat_map(|(index, window)| {
        let (low, high) = (frame.y(window.low), frame.y(window.high));
        let fill = format!("url(#{id}-hatch{})", index % 2);
        let area = format!("M{left:.1} {high:.1}H{right:.1}V{low:.1}H{left:.1}z");
        let limits = format!("M{left:.1} {high:.1}H{right:.1}M{left:.1} {low:.1}H{right:.1}");
        [view! { <path class="window" d=area fill=fill></path> }.into_any(), shape("limit", limits)]
    });
    drawn.collect()
}

/// The marks; of those of one kind that would cover each other, the first.
fn marks(frame: &Frame, marks: &[Mark]) -> Vec<AnyView> {
    let mut taken = HashSet::new();
    let mut free = |mark: &Mark| {
        let (x, y) = (frame.x(mark.minute), frame.y(mark.value));
        taken.insert((mark.kind, whole(x / GLYPH), whole(y / GLYPH))).then_some((mark.kind, x, y))
    };
    marks.iter().filter_map(&mut free).map(|(kind, x, y)| glyph(kind, x, y)).collect()
}

/// The shape of a mark around a place.
pub(super) fn glyph(kind: MarkKind, x: f64, y: f64) -> AnyView {
    let (class, from_centre) = match kind {
        MarkKind::Fill => ("glyph fill", "m0-7l6.5 11h-13z"),
        MarkKind::Level => ("glyph level", "m-7-2h14v4h-14z"),
        MarkKind::ShareReading => ("glyph", "m0-6.5l6.5 6.5l-6.5 6.5l-6.5-6.5z"),
        MarkKind::Other => ("glyph", "m-4.5 0a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0-9 0z"),
    };
    shape(class, format!("M{x:.1} {y:.1}{from_centre}"))
}
