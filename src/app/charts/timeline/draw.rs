//! The picture itself.

use leptos::prelude::*;

use super::dates::date_ticks;
use super::frame::{Frame, value_ticks};
use super::reading::Print;
use super::{Mark, MarkKind, Point, Timeline, Window, names, trace};
use crate::app::charts::plot::{Path, path, pen, shape, text, whole, width_of, window_hatches};

/// Within less than this, one mark covers most of another.
const GLYPH: f64 = 10.0;

/// How far a date reaches over the end of its axis.
const OVER: f64 = 12.0;

/// The axes, the windows, the band, the line, the marks, and the value at the end.
pub(super) fn picture(
    id: &str,
    timeline: &Timeline,
    frame: &Frame,
    print: Print,
    label: String,
) -> Vec<AnyView> {
    let mut parts = Vec::from(window_hatches(id));
    value_axis(frame, timeline, &mut parts);
    if timeline.points.is_empty() {
        let (x, y) =
            (f64::midpoint(frame.left, frame.right), f64::midpoint(frame.top, frame.bottom));
        parts.push(text("empty", x, y, "middle", "Nothing in the log yet".to_owned()));
        return parts;
    }
    date_axis(frame, print.date, &mut parts);
    windows(id, frame, &timeline.windows, &mut parts);
    let alone = frame.from == frame.to;
    let points = trace::thinned(&timeline.points, frame);
    parts.push(path("band", trace::area(frame, &points)));
    parts.push(path("bound", trace::line(frame, &points, |it| it.low)));
    parts.push(path("bound", trace::line(frame, &points, |it| it.high)));
    parts.push(path("expected", trace::line(frame, &points, |it| it.expected)));
    marks(frame, &timeline.marks, &mut parts);
    let names = names::placed(frame, &timeline.windows, &points, print.value);
    for name in names {
        parts.push(text("name", name.left, name.base, "start", name.words));
    }
    if let Some(last) = timeline.points.last() {
        let x = frame.x(last.minute).max(if alone { 0.0 } else { frame.right });
        parts.push(text("end", x + 10.0, frame.y(last.expected) + 5.0, "start", label));
    }
    parts
}

fn value_axis(frame: &Frame, timeline: &Timeline, parts: &mut Vec<AnyView>) {
    let Frame { left, right, top, bottom, .. } = *frame;
    parts.push(text("tick", left - 6.0, top - 10.0, "end", timeline.unit.clone()));
    for tick in value_ticks(timeline.top) {
        let y = frame.y(tick);
        parts.push(shape("grid", pen("M", &[left, y]).with("H", &[right])));
        parts.push(text("tick", left - 6.0, y + 5.0, "end", tick.to_string()));
    }
    parts.push(shape("axis", pen("M", &[left, top]).with("V", &[bottom]).with("H", &[right])));
}

fn date_axis(frame: &Frame, date: Callback<(i64, bool), String>, parts: &mut Vec<AnyView>) {
    let Frame { left, right, bottom, from, to, .. } = *frame;
    let apart = |with_time| {
        let ends = [from, to].map(|minute| width_of(&date.run((minute, with_time))));
        frame.minute_at(left + ends[0].max(ends[1]) + GLYPH) - from
    };
    let ticks = date_ticks(from, to, apart);
    let mut taken = 0.0;
    for minute in ticks.minutes {
        let x = frame.x(minute);
        let words = date.run((minute, ticks.with_time));
        let width = width_of(&words);
        parts.push(shape("axis", pen("M", &[x, bottom]).with("v5", &[])));
        // The first and the last label stay under the axis.
        let (anchor, at, start) = if x - width / 2.0 < left - OVER {
            ("start", left - OVER, left - OVER)
        } else if x + width / 2.0 > right + OVER {
            ("end", right + OVER, right + OVER - width)
        } else {
            ("middle", x, x - width / 2.0)
        };
        if start >= taken {
            taken = start + width;
            parts.push(text("tick", at, bottom + 20.0, anchor, words));
        }
    }
}

/// Each calibration's window as a hatched band between its two limits.
fn windows(id: &str, frame: &Frame, windows: &[Window], parts: &mut Vec<AnyView>) {
    let Frame { left, right, .. } = *frame;
    for (index, window) in windows.iter().enumerate() {
        let (low, high) = (frame.y(window.low), frame.y(window.high));
        let fill = format!("url(#{id}-hatch{})", index % 2);
        let top = pen("M", &[left, high]).with("H", &[right]);
        let area = top.with("V", &[low]).with("H", &[left]).text();
        parts.push(view! { <path class="window" d=area fill=fill></path> }.into_any());
        let top = pen("M", &[left, high]).with("H", &[right]);
        let limits = top.with("M", &[left, low]).with("H", &[right]);
        parts.push(shape("limit", limits));
    }
}

/// The marks; of those of one kind that would cover each other, the first, and where
/// there are more than fit side by side, fewer still.
fn marks(frame: &Frame, marks: &[Mark], parts: &mut Vec<AnyView>) {
    let fit = (frame.right - frame.left) / GLYPH;
    let crowded = u16::try_from(marks.len()).map_or(true, |count| f64::from(count) > fit);
    let apart = if crowded { 3.0 * GLYPH } else { GLYPH };
    let mut taken = Vec::new();
    for mark in marks {
        let (x, y) = (frame.x(mark.minute), frame.y(mark.value));
        let place = (mark.kind, whole(x / apart), whole(y / apart));
        if !taken.contains(&place) {
            taken.push(place);
            parts.push(glyph(mark.kind, x, y));
        }
    }
}

/// The shape of a mark around a place.
pub(super) fn glyph(kind: MarkKind, x: f64, y: f64) -> AnyView {
    let (class, from_centre) = match kind {
        MarkKind::Fill => ("glyph fill", "m0-7l6.5 11h-13z"),
        MarkKind::Level => ("glyph level", "m-7-2h14v4h-14z"),
        MarkKind::ShareReading => ("glyph", "m0-6.5l6.5 6.5l-6.5 6.5l-6.5-6.5z"),
        MarkKind::Other => ("glyph", "m-4.5 0a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0-9 0z"),
    };
    shape(class, pen("M", &[x, y]).with(from_centre, &[]))
}

/// A point with its band as a bar, and a line through it while it is led.
pub(super) fn crosshair(point: &Point, frame: &Frame, led: bool) -> Vec<AnyView> {
    let Frame { top, bottom, .. } = *frame;
    let (x, y) = (frame.x(point.minute), frame.y(point.expected));
    let (low, high) = (frame.y(point.low), frame.y(point.high));
    let line = if led { pen("M", &[x, top]).with("V", &[bottom]) } else { Path::default() };
    let bar = pen("M", &[x - 4.0, high]).with("h8m-4 0V", &[low]).with("m-4 0h8", &[]);
    let disc = pen("M", &[x - 4.0, y]).with("a4 4 0 1 0 8 0a4 4 0 1 0-8 0z", &[]);
    vec![shape("cross", line), shape("bar", bar), shape("disc", disc)]
}
