//! The picture itself.

use fillwright::message::keys::charts as keys;
use leptos::prelude::*;

use super::chart::{Chart, EntryKind, LOOKS, Side};
use super::frame::{Frame, LEADER, VALUES};
use super::labels::{HATCH, Labelled};
use super::names::LINE;
use super::path::pen;
use super::path::whole;
use super::stops::Stop;
use super::svg::{hatch, path, shape, text, width_of, window_hatches};
use super::{curve, ends, head, labels};

/// How far a date reaches over the end of its axis.
const OVER: f64 = 12.0;

/// Within less than this, the shape of one entry covers most of another.
const GLYPH: f64 = 10.0;

/// The axes, the windows, the bands, the limits, the lines, the marks, and all
/// their names.
pub(super) fn picture(id: &str, chart: &Chart, frame: &Frame) -> Vec<AnyView> {
    let mut parts = Vec::from(window_hatches(id));
    parts.push(hatch(format!("{id}-beyond"), "hatch bounds", 45));
    parts.push(clip(id, frame));
    value_axis(chart, frame, &mut parts);
    lower_axis(chart, frame, &mut parts);
    if chart.lines.iter().all(|it| curve::stretches(&it.points).is_empty()) {
        let (x, y) =
            (f64::midpoint(frame.left, frame.right), f64::midpoint(frame.top, frame.bottom));
        parts.push(text("empty", x, y, "middle", keys::NO_FIGURES.say().to_owned()));
        return parts;
    }
    windows(id, chart, frame, &mut parts);
    across(id, chart, frame, &mut parts);
    let mut inside = Vec::new();
    limits(id, chart, frame, &mut inside);
    let (plain, strong): (Vec<_>, Vec<_>) = chart.lines.iter().partition(|it| !it.emphasis);
    let lines = || plain.iter().chain(&strong);
    for line in lines() {
        let area = curve::area(frame, &line.points);
        inside.push(looking("band", line.look, line.emphasis, area));
    }
    for line in lines() {
        let course = curve::line(frame, &line.points);
        inside.push(looking("line", line.look, line.emphasis, course));
    }
    let clip = format!("url(#{id}-inside)");
    parts.push(view! { <g clip-path=clip>{inside}</g> }.into_any());
    for line in lines() {
        for (x, up) in curve::exits(&line.points, &chart.y) {
            parts.push(arrow(frame, x, up));
        }
    }
    marks(chart, frame, &mut parts);
    entries(chart, frame, &mut parts);
    names(chart, frame, &mut parts);
    parts
}

/// A path in the look of a line.
fn looking(part: &str, look: usize, emphasis: bool, d: String) -> AnyView {
    let strong = if emphasis { " strong" } else { "" };
    let class = format!("{part} look{}{strong}", look % LOOKS);
    view! { <path class=class d=d></path> }.into_any()
}

/// A short piece of a line with this look.
pub(super) fn sample(look: usize, emphasis: bool) -> AnyView {
    view! {
        <svg class="sample" viewBox="0 0 28 10" aria-hidden="true">
            {looking("line", look, emphasis, "M0 5H28".to_owned())}
        </svg>
    }
    .into_any()
}

/// The inside, with room for half the width of a line on its edge.
fn clip(id: &str, frame: &Frame) -> AnyView {
    let Frame { left, right, top, bottom, .. } = *frame;
    let inside = pen("M", &[left, top - 2.0]).with("H", &[right + 2.0]);
    let inside = inside.with("V", &[bottom + 2.0]).with("H", &[left]).text();
    view! {
        <clipPath id=format!("{id}-inside")>
            <path d=inside></path>
        </clipPath>
    }
    .into_any()
}

fn value_axis(chart: &Chart, frame: &Frame, parts: &mut Vec<AnyView>) {
    let Frame { left, right, top, bottom, .. } = *frame;
    parts.push(text("tick", 0.0, 12.0, "start", chart.y.title()));
    for (tick, number) in chart.y.ticks(VALUES) {
        let y = frame.y(tick);
        parts.push(shape("grid", pen("M", &[left, y]).with("H", &[right])));
        parts.push(text("tick", left - 6.0, y + 5.0, "end", number));
    }
    parts.push(shape("axis", pen("M", &[left, top]).with("V", &[bottom]).with("H", &[right])));
}

fn lower_axis(chart: &Chart, frame: &Frame, parts: &mut Vec<AnyView>) {
    let Frame { left, right, bottom, .. } = *frame;
    let mut taken = f64::MIN;
    for (tick, words) in chart.x.ticks_along(right - left) {
        let (x, width) = (frame.x(tick), width_of(&words));
        parts.push(shape("axis", pen("M", &[x, bottom]).with("v5", &[])));
        // Dates are so long that the first and the last have to be kept under the axis.
        let is_date = chart.x.date.is_some();
        let (anchor, at, start) = if is_date && x - width / 2.0 < left - OVER {
            ("start", left - OVER, left - OVER)
        } else if is_date && x + width / 2.0 > right + OVER {
            ("end", right + OVER, right + OVER - width)
        } else {
            ("middle", x, x - width / 2.0)
        };
        if start >= taken {
            taken = start + width;
            parts.push(text("tick", at, bottom + 20.0, anchor, words));
        }
    }
    if chart.x.date.is_none() {
        let title = chart.x.title();
        // One that is longer than the axis goes on under what stands beside it.
        let (anchor, at) = if width_of(&title) > right { ("start", 0.0) } else { ("end", right) };
        parts.push(text("tick", at, bottom + 38.0, anchor, title));
    }
}

/// Each window as a hatched band between its two ends.
fn windows(id: &str, chart: &Chart, frame: &Frame, parts: &mut Vec<AnyView>) {
    let Frame { top, bottom, .. } = *frame;
    for (index, window) in chart.windows().enumerate() {
        let within = |x: f64| frame.x(chart.x.within(x));
        let (from, to) = (within(window.from), within(window.to));
        let fill = format!("url(#{id}-hatch{})", index % 2);
        let area = pen("M", &[from, top]).with("H", &[to]).with("V", &[bottom]).with("H", &[from]);
        parts.push(view! { <path class="window" d=area.text() fill=fill></path> }.into_any());
        let ends = pen("M", &[from, top]).with("V", &[bottom]);
        parts.push(shape("limit", ends.with("M", &[to, top]).with("V", &[bottom])));
    }
}

/// Each window of the values as a hatched band across the picture.
fn across(id: &str, chart: &Chart, frame: &Frame, parts: &mut Vec<AnyView>) {
    let Frame { left, right, .. } = *frame;
    for (index, window) in chart.across().enumerate() {
        let within = |y: f64| frame.y(chart.y.within(y));
        let (low, high) = (within(window.from), within(window.to));
        let fill = format!("url(#{id}-hatch{})", index % 2);
        let area = pen("M", &[left, high]).with("H", &[right]).with("V", &[low]).with("H", &[left]);
        parts.push(view! { <path class="window" d=area.text() fill=fill></path> }.into_any());
        let ends = pen("M", &[left, high]).with("H", &[right]);
        parts.push(shape("limit", ends.with("M", &[left, low]).with("H", &[right])));
    }
}

/// Each limit as a line, hatched on the side that is out of bounds.
fn limits(id: &str, chart: &Chart, frame: &Frame, parts: &mut Vec<AnyView>) {
    for limit in &chart.limits {
        let course = labels::course(limit, chart, frame);
        let out = match limit.beyond {
            Side::Above => -HATCH,
            Side::Below => HATCH,
        };
        let (mut line, mut strip) = (pen("", &[]), pen("", &[]));
        for (x, y) in &course {
            line.add(if line.is_empty() { "M" } else { "L" }, &[*x, *y]);
            strip.add(if strip.is_empty() { "M" } else { "L" }, &[*x, *y]);
        }
        for (x, y) in course.iter().rev() {
            strip.add("L", &[*x, *y + out]);
        }
        let fill = format!("url(#{id}-beyond)");
        let strip = strip.text();
        parts.push(view! { <path class="window" d=strip fill=fill></path> }.into_any());
        parts.push(shape("bounds", line));
    }
}

/// Where a line leaves the chart.
fn arrow(frame: &Frame, x: f64, up: bool) -> AnyView {
    let x = frame.x(x);
    let arrow = if up {
        pen("M", &[x, frame.top - 5.0]).with("l5 8h-10z", &[])
    } else {
        pen("M", &[x, frame.bottom + 5.0]).with("l5-8h-10z", &[])
    };
    shape("arrow", arrow)
}

/// The marks as lines that reach up to their names.
fn marks(chart: &Chart, frame: &Frame, parts: &mut Vec<AnyView>) {
    let names = head::names(chart, &frame.across, frame.top);
    for (name, at) in &names {
        let line = pen("M", &[*at, name.base + 4.0]).with("V", &[frame.bottom]);
        parts.push(shape("marked", line));
    }
    for (name, _) in names {
        parts.push(text("name", name.left, name.base, "start", name.words));
    }
    for mark in chart.marks() {
        if let Some(y) = mark.y.filter(|it| chart.y.spans(*it)) {
            parts.push(disc(frame.x(mark.x), frame.y(y)));
        }
    }
}

/// What was noted; of what is of one kind and would cover each other, the first, and where
/// there is more than fits side by side, less still.
fn entries(chart: &Chart, frame: &Frame, parts: &mut Vec<AnyView>) {
    let fit = (frame.right - frame.left) / GLYPH;
    let crowded = u16::try_from(chart.entries.len()).map_or(true, |count| f64::from(count) > fit);
    let apart = if crowded { 3.0 * GLYPH } else { GLYPH };
    let mut taken = Vec::new();
    for entry in &chart.entries {
        let (x, y) = (frame.x(entry.x), frame.y(chart.y.within(entry.y)));
        let place = (entry.kind, whole(x / apart), whole(y / apart));
        if !taken.contains(&place) {
            taken.push(place);
            parts.push(glyph(entry.kind, x, y));
        }
    }
}

/// The shape of an entry around a place.
pub(super) fn glyph(kind: EntryKind, x: f64, y: f64) -> AnyView {
    let (class, from_centre) = match kind {
        EntryKind::Fill => ("glyph fill", "m0-7l6.5 11h-13z"),
        EntryKind::Level => ("glyph level", "m-7-2h14v4h-14z"),
        EntryKind::ShareReading => ("glyph", "m0-6.5l6.5 6.5l-6.5 6.5l-6.5-6.5z"),
        EntryKind::Other => ("glyph", "m-4.5 0a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0-9 0z"),
    };
    shape(class, pen("M", &[x, y]).with(from_centre, &[]))
}

fn names(chart: &Chart, frame: &Frame, parts: &mut Vec<AnyView>) {
    for (of, name) in labels::placed(chart, frame) {
        let class = match of {
            Labelled::Limit => "name bounds",
            Labelled::Line { emphasis: true } => "name strong",
            Labelled::Line { emphasis: false } | Labelled::Window => "name",
        };
        parts.push(text(class, name.left, name.base, "start", name.words));
    }
    for end in ends::beside(chart, frame) {
        let line = &chart.lines[end.line];
        let leader = pen("M", &[frame.right + 2.0, end.from.1]);
        let leader = leader.with("L", &[frame.right + LEADER - 6.0, end.y]);
        parts.push(path("leader", leader.text()));
        let class = if line.emphasis { "end strong" } else { "end" };
        let x = frame.right + LEADER - 3.0;
        parts.push(text(class, x, end.y + 0.3 * LINE, "start", end.words));
    }
}

fn disc(x: f64, y: f64) -> AnyView {
    shape("disc", pen("M", &[x - 3.5, y]).with("a3.5 3.5 0 1 0 7 0a3.5 3.5 0 1 0-7 0z", &[]))
}

/// The values at a stop, with the ends of the line that matters as a bar, and with a line
/// through them while it is led.
pub(super) fn crosshair(chart: &Chart, stop: Stop, frame: &Frame, led: bool) -> Vec<AnyView> {
    let at = frame.x(stop.x);
    let mut parts = Vec::new();
    if led {
        parts.push(shape("cross", pen("M", &[at, frame.top]).with("V", &[frame.bottom])));
    }
    for line in &chart.lines {
        let figure = curve::at(&line.points, stop);
        let Some(figure) = figure.filter(|it| chart.y.spans(it.expected)) else { continue };
        if line.emphasis && figure.low < figure.high {
            let [low, high] = [figure.low, figure.high].map(|it| frame.y(chart.y.within(it)));
            let bar = pen("M", &[at - 4.0, high]).with("h8m-4 0V", &[low]).with("m-4 0h8", &[]);
            parts.push(shape("bar", bar));
        }
        parts.push(disc(at, frame.y(figure.expected)));
    }
    parts
}
