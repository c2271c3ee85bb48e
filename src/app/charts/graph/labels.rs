//! The names within the picture: those of limits, and of lines that end early.

use super::frame::Frame;
use super::{Course, Graph, Limit, Side, curve, ends};
use crate::app::charts::plot::{Area, GAP, LINE, Name, fitting, least_covering, width_of};

/// The width of the hatch along a limit.
pub(super) const HATCH: f64 = 8.0;

/// So long pieces of a line are looked at for what a name would cover.
const PIECE: f64 = 8.0;

/// The names of the limits, then those of the lines that end within the picture,
/// each with the index of its line.
pub(super) fn placed(graph: &Graph, frame: &Frame) -> (Vec<Name>, Vec<(usize, Name)>) {
    let Frame { left, right, top, bottom, .. } = *frame;
    let inside = Area { left, right, top, bottom };
    let things = things(graph, frame);
    let mut names = Vec::new();
    for limit in &graph.limits {
        let places = beside_limit(limit, graph, frame);
        names.extend(least_covering(places.into_iter(), &inside, &things, &names));
    }
    let limits = names.len();
    let mut lines = Vec::new();
    for (line, end) in ends::within(graph, frame) {
        let places = around(&graph.lines[line].label, end);
        if let Some(name) = least_covering(places.into_iter(), &inside, &things, &names) {
            names.push(name);
            lines.push(line);
        }
    }
    let ends = names.split_off(limits);
    (names, lines.into_iter().zip(ends).collect())
}

/// The course of a limit as places, in the picture's units.
pub(super) fn course(limit: &Limit, graph: &Graph, frame: &Frame) -> Vec<(f64, f64)> {
    match &limit.course {
        Course::Level { y, from, to } => {
            let ends = [from.unwrap_or(graph.x.from), to.unwrap_or(graph.x.to)];
            ends.map(|x| (frame.x(x.clamp(graph.x.from, graph.x.to)), frame.y(*y))).into()
        }
        Course::Through(places) => places.iter().map(|(x, y)| (frame.x(*x), frame.y(*y))).collect(),
    }
}

/// Places along a limit, first on the side that is allowed.
fn beside_limit(limit: &Limit, graph: &Graph, frame: &Frame) -> Vec<Name> {
    let course = course(limit, graph, frame);
    let (Some(first), Some(last)) = (course.first(), course.last()) else { return Vec::new() };
    let room = (last.0 - first.0 - 2.0 * GAP).max(0.3 * (frame.right - frame.left));
    let full = match &limit.course {
        Course::Level { y, .. } => format!("{} {}", limit.name, graph.y.print(*y, graph.style)),
        Course::Through(_) => limit.name.clone(),
    };
    let words = fitting(&[&full, &limit.name], room);
    let width = width_of(&words);
    let free = (last.0 - first.0 - 2.0 * GAP - width).max(0.0);
    let (above, below) = match limit.beyond {
        Side::Above => (HATCH + GAP, GAP),
        Side::Below => (GAP, HATCH + GAP),
    };
    let at = |part: f64| {
        let left = first.0 + GAP + part * free;
        let along = heights(&course, left, left + width);
        (left, along)
    };
    let mut places = Vec::new();
    for part in [0.0, 1.0, 0.5, 0.25, 0.75] {
        let (left, (top, bottom)) = at(part);
        let over = Name { words: words.clone(), left, base: top - above };
        let under = Name { words: words.clone(), left, base: bottom + below + LINE - GAP };
        places.extend(match limit.beyond {
            Side::Above => [under, over],
            Side::Below => [over, under],
        });
    }
    places
}

/// The highest and the lowest place of a course between two.
fn heights(course: &[(f64, f64)], left: f64, right: f64) -> (f64, f64) {
    let mut span = (f64::INFINITY, f64::NEG_INFINITY);
    for area in pieces(course) {
        if area.left < right && left < area.right {
            span = (span.0.min(area.top), span.1.max(area.bottom));
        }
    }
    // A course without length has no pieces.
    if span.0 > span.1 { course.first().map_or((0.0, 0.0), |it| (it.1, it.1)) } else { span }
}

/// Places around the end of a line.
fn around(label: &str, (x, y): (f64, f64)) -> Vec<Name> {
    let middle = y + 5.0;
    let (right, left) = (x + GAP, x - GAP - width_of(label));
    let (above, below) = (y - GAP - 2.0, y + LINE + 2.0);
    let places = [(right, middle), (right, above), (right, below), (left, above), (left, below)];
    places.map(|(left, base)| Name { words: label.to_owned(), left, base }).into()
}

/// What a name should not cover.
fn things(graph: &Graph, frame: &Frame) -> Vec<Area> {
    let mut things = Vec::new();
    for line in &graph.lines {
        for stretch in curve::stretches(&line.points) {
            let places: Vec<_> =
                stretch.iter().map(|(x, it)| (frame.x(*x), frame.y(it.expected))).collect();
            things.extend(pieces(&places));
        }
    }
    for limit in &graph.limits {
        things.extend(pieces(&course(limit, graph, frame)));
    }
    for mark in &graph.marks {
        let x = frame.x(mark.x);
        things.extend(pieces(&[(x, frame.top), (x + 0.1, frame.bottom)]));
    }
    things
}

/// A course in short pieces.
fn pieces(course: &[(f64, f64)]) -> Vec<Area> {
    let mut pieces = Vec::new();
    for pair in course.windows(2) {
        let [(x, y), (to, end)] = [pair[0], pair[1]];
        let length = (to - x).abs().max((end - y).abs());
        let mut gone = 0.0;
        while gone < length {
            let next = (gone + PIECE).min(length);
            let along = |gone: f64| (x + (to - x) * gone / length, y + (end - y) * gone / length);
            let (a, b) = (along(gone), along(next));
            pieces.push(Area {
                left: a.0.min(b.0),
                right: a.0.max(b.0),
                top: a.1.min(b.1) - 1.0,
                bottom: a.1.max(b.1) + 1.0,
            });
            gone = next;
        }
    }
    pieces
}
