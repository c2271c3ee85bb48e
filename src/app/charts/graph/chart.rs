//! What the parts of a chart share, and where its crosshair can stop.

use leptos::prelude::*;

use super::frame::Frame;
use super::reading::Reading;
use super::{Graph, draw, table};
use crate::app::charts::plot::{Crosshair, Room, height};

/// The width of a picture on paper: the printed width of A4 in CSS pixels.
const PAPER: f64 = 660.0;

/// What the parts of a chart share.
#[derive(Clone, Copy)]
pub(super) struct Chart {
    pub(super) id: &'static str,
    pub(super) graph: Signal<Graph>,
    pub(super) stops: Memo<Vec<f64>>,
    pub(super) room: Room,
    pub(super) crosshair: Crosshair,
}

impl Chart {
    /// Where the crosshair is.
    fn x(self) -> Option<f64> {
        self.stops.with(|stops| stops.get(self.crosshair.index()).copied())
    }

    pub(super) fn reading(self) -> Option<Reading> {
        self.x().map(|x| self.graph.with(|it| Reading::of(it, x)))
    }

    /// Moves the crosshair to the stop nearest to a place, as a part of the width.
    pub(super) fn point_at(self, part: f64) {
        let width = self.room.width();
        let x = self.graph.with(|it| Frame::of(it, width).x_at(part * width));
        self.crosshair.at.set(Some(self.stops.with(|stops| nearest(stops, x))));
    }

    /// All of the picture but the crosshair.
    pub(super) fn picture(self) -> Vec<AnyView> {
        self.graph.with(|it| draw::picture(self.id, it, &Frame::of(it, self.room.width())))
    }

    /// The values that are read, with a line through them while the crosshair is led.
    pub(super) fn cross(self) -> Vec<AnyView> {
        let Some(x) = self.x() else { return Vec::new() };
        let led = self.crosshair.is_led();
        self.graph.with(|it| draw::crosshair(it, x, &Frame::of(it, self.room.width()), led))
    }

    pub(super) fn table(self) -> Vec<AnyView> {
        self.graph.with(|it| self.stops.with(|stops| table::drawn(self.id, it, stops)))
    }
}

/// The picture on paper.
pub(super) fn on_paper(id: &str, graph: &Graph) -> Vec<AnyView> {
    draw::picture(id, graph, &Frame::of(graph, PAPER))
}

/// What the picture on paper spans.
pub(super) fn paper_box() -> String {
    format!("0 0 {PAPER} {}", height(PAPER))
}

/// Where the crosshair stops, in order: wherever a line has a point, and at the
/// marks.
pub(super) fn stops(graph: &Graph) -> Vec<f64> {
    let points = graph.lines.iter().flat_map(|line| &line.points).map(|it| it.x);
    let mut stops: Vec<f64> = points.filter(|it| graph.x.spans(*it)).collect();
    if !stops.is_empty() {
        stops.extend(graph.marks().map(|it| it.x));
    }
    stops.sort_by(f64::total_cmp);
    // Places that print alike are one.
    stops.dedup_by(|one, next| (*one - *next).abs() < 1e-9 * (graph.x.to - graph.x.from));
    stops
}

/// The stop that is read before the crosshair is led: that of the first mark, or
/// the last.
pub(super) fn rest(graph: &Graph, stops: &[f64]) -> usize {
    let mark = graph.marks().next().map(|it| nearest(stops, it.x));
    mark.unwrap_or(stops.len().saturating_sub(1))
}

/// The index of the stop nearest to a place.
pub(super) fn nearest(stops: &[f64], x: f64) -> usize {
    let after = stops.partition_point(|it| *it <= x);
    let Some(before) = after.checked_sub(1) else { return 0 };
    match stops.get(after) {
        Some(next) if next - x < x - stops[before] => after,
        _ => before,
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Axis, Line, Mark, Point};
    use super::*;

    fn graph(lines: &[&[f64]], marks: &[f64]) -> Graph {
        let line = |xs: &&[f64]| Line {
            points: xs.iter().map(|x| Point::new(*x, 50.0, None)).collect(),
            ..Line::default()
        };
        let mark = |x: &f64| Mark { name: "tank".into(), x: *x, y: None };
        Graph {
            x: Axis { from: 1000.0, to: 7000.0, ..Axis::default() },
            lines: lines.iter().map(line).collect(),
            marks: marks.iter().map(mark).collect(),
            ..Graph::default()
        }
    }

    #[test]
    fn the_crosshair_stops_at_every_point_and_mark_once() {
        let graph = graph(&[&[1000.0, 2000.0, 3000.0], &[2000.0, 2500.0]], &[2250.0]);
        assert_eq!(stops(&graph), [1000.0, 2000.0, 2250.0, 2500.0, 3000.0]);
    }

    #[test]
    fn what_lies_beyond_the_axis_is_no_stop() {
        let graph = graph(&[&[500.0, 2000.0, 8000.0]], &[9000.0]);
        assert_eq!(stops(&graph), [2000.0]);
    }

    #[test]
    fn without_lines_there_is_nothing_to_read() {
        assert_eq!(stops(&graph(&[], &[2000.0])), [0.0; 0]);
    }

    #[test]
    fn the_first_mark_is_read_first() {
        let marked = graph(&[&[1000.0, 2000.0, 3000.0]], &[2000.0, 3000.0]);
        assert_eq!(rest(&marked, &stops(&marked)), 1);
        let plain = graph(&[&[1000.0, 2000.0, 3000.0]], &[]);
        assert_eq!(rest(&plain, &stops(&plain)), 2);
    }

    #[test]
    fn the_nearest_stop_is_the_closest() {
        let stops = [1000.0, 1500.0, 4000.0];
        for x in (0..500).map(|it| f64::from(it) * 10.0) {
            let found = (stops[nearest(&stops, x)] - x).abs();
            assert!(stops.iter().all(|stop| found <= (stop - x).abs()), "{x}");
        }
        assert_eq!(nearest(&[], 1.0), 0);
    }
}
