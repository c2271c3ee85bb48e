//! The picture itself.

use fillwright::quantity::notation::print_number;
use leptos::prelude::*;

use super::frame::{Frame, LEADER};
use super::labels::{HATCH, Labelled};
use super::{Axis, Graph, LOOKS, Side, curve, ends, head, labels};
use crate::app::charts::plot::{
    LINE, hatch, path, pen, shape, text, ticks, width_of, window_hatches,
};

/// A tick of the lower axis takes so much more than its number.
const BETWEEN_TICKS: f64 = 24.0;

/// The axes, the windows, the bands, the limits, the lines, the marks, and all
/// their names.
pub(super) fn picture(id: &str, graph: &Graph, frame: &Frame) -> Vec<AnyView> {
    let mut parts = Vec::from(window_hatches(id));
    parts.push(hatch(format!("{id}-beyond"), "hatch bounds", 45));
    parts.push(clip(id, frame));
    value_axis(graph, frame, &mut parts);
    number_axis(graph, frame, &mut parts);
    if graph.lines.iter().all(|it| curve::stretches(&it.points).is_empty()) {
        let (x, y) =
            (f64::midpoint(frame.left, frame.right), f64::midpoint(frame.top, frame.bottom));
        parts.push(text("empty", x, y, "middle", "No figures yet".to_owned()));
        return parts;
    }
    windows(id, graph, frame, &mut parts);
    across(id, graph, frame, &mut parts);
    let mut inside = Vec::new();
    limits(id, graph, frame, &mut inside);
    let (plain, strong): (Vec<_>, Vec<_>) = graph.lines.iter().partition(|it| !it.emphasis);
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
        for (x, up) in curve::exits(&line.points, &graph.y) {
            parts.push(arrow(frame, x, up));
        }
    }
    marks(graph, frame, &mut parts);
    names(graph, frame, &mut parts);
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

fn value_axis(graph: &Graph, frame: &Frame, parts: &mut Vec<AnyView>) {
    let Frame { left, right, top, bottom, .. } = *frame;
    parts.push(text("tick", 0.0, 12.0, "start", graph.y.title()));
    let ticks = ticks(graph.y.from, graph.y.to, 4, graph.y.decimals);
    for tick in ticks.values {
        let y = frame.y(tick);
        parts.push(shape("grid", pen("M", &[left, y]).with("H", &[right])));
        let number = print_number(tick, ticks.decimals, graph.style);
        parts.push(text("tick", left - 6.0, y + 5.0, "end", number));
    }
    parts.push(shape("axis", pen("M", &[left, top]).with("V", &[bottom]).with("H", &[right])));
}

fn number_axis(graph: &Graph, frame: &Frame, parts: &mut Vec<AnyView>) {
    let Frame { left, right, bottom, .. } = *frame;
    let Axis { from, to, decimals, .. } = graph.x;
    let widest = [from, to].map(|it| width_of(&print_number(it, decimals, graph.style)));
    let room = BETWEEN_TICKS + widest[0].max(widest[1]);
    let most = (2..=6_u16).rev().find(|it| f64::from(*it) * room <= right - left).unwrap_or(1);
    let ticks = ticks(from, to, usize::from(most), decimals);
    for tick in ticks.values {
        let x = frame.x(tick);
        parts.push(shape("axis", pen("M", &[x, bottom]).with("v5", &[])));
        let number = print_number(tick, ticks.decimals, graph.style);
        parts.push(text("tick", x, bottom + 20.0, "middle", number));
    }
    parts.push(text("tick", right, bottom + 38.0, "end", graph.x.title()));
}

/// Each window as a hatched band between its two ends.
fn windows(id: &str, graph: &Graph, frame: &Frame, parts: &mut Vec<AnyView>) {
    let Frame { top, bottom, .. } = *frame;
    for (index, window) in graph.windows().enumerate() {
        let within = |x: f64| frame.x(graph.x.within(x));
        let (from, to) = (within(window.from), within(window.to));
        let fill = format!("url(#{id}-hatch{})", index % 2);
        let area = pen("M", &[from, top]).with("H", &[to]).with("V", &[bottom]).with("H", &[from]);
        parts.push(view! { <path class="window" d=area.text() fill=fill></path> }.into_any());
        let ends = pen("M", &[from, top]).with("V", &[bottom]);
        parts.push(shape("limit", ends.with("M", &[to, top]).with("V", &[bottom])));
    }
}

/// Each window of the values as a hatched band across the picture.
fn across(id: &str, graph: &Graph, frame: &Frame, parts: &mut Vec<AnyView>) {
    let Frame { left, right, .. } = *frame;
    for (index, window) in graph.across().enumerate() {
        let within = |y: f64| frame.y(graph.y.within(y));
        let (low, high) = (within(window.from), within(window.to));
        let fill = format!("url(#{id}-hatch{})", index % 2);
        let area = pen("M", &[left, high]).with("H", &[right]).with("V", &[low]).with("H", &[left]);
        parts.push(view! { <path class="window" d=area.text() fill=fill></path> }.into_any());
        let ends = pen("M", &[left, high]).with("H", &[right]);
        parts.push(shape("limit", ends.with("M", &[left, low]).with("H", &[right])));
    }
}

/// Each limit as a line, hatched on the side that is out of bounds.
fn limits(id: &str, graph: &Graph, frame: &Frame, parts: &mut Vec<AnyView>) {
    for limit in &graph.limits {
        let course = labels::course(limit, graph, frame);
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
fn marks(graph: &Graph, frame: &Frame, parts: &mut Vec<AnyView>) {
    let names = head::names(graph, frame);
    for (name, at) in &names {
        let line = pen("M", &[*at, name.base + 4.0]).with("V", &[frame.bottom]);
        parts.push(shape("marked", line));
    }
    for (name, _) in names {
        parts.push(text("name", name.left, name.base, "start", name.words));
    }
    for mark in graph.marks() {
        if let Some(y) = mark.y.filter(|it| graph.y.spans(*it)) {
            parts.push(disc(frame.x(mark.x), frame.y(y)));
        }
    }
}

fn names(graph: &Graph, frame: &Frame, parts: &mut Vec<AnyView>) {
    for (of, name) in labels::placed(graph, frame) {
        let class = match of {
            Labelled::Limit => "name bounds",
            Labelled::Line { emphasis: true } => "name strong",
            Labelled::Line { emphasis: false } | Labelled::Window => "name",
        };
        parts.push(text(class, name.left, name.base, "start", name.words));
    }
    for end in ends::beside(graph, frame) {
        let line = &graph.lines[end.line];
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

/// The values at a place, with a line through it while it is led.
pub(super) fn crosshair(graph: &Graph, x: f64, frame: &Frame, led: bool) -> Vec<AnyView> {
    let at = frame.x(x);
    let mut parts = Vec::new();
    if led {
        parts.push(shape("cross", pen("M", &[at, frame.top]).with("V", &[frame.bottom])));
    }
    for line in &graph.lines {
        let value = curve::at(&line.points, x).map(|it| it.expected);
        if let Some(y) = value.filter(|it| graph.y.spans(*it)) {
            parts.push(disc(at, frame.y(y)));
        }
    }
    parts
}
