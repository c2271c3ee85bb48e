//! The course of a line.

use super::frame::Frame;
use super::{Axis, Figure, Line, Point};
use crate::app::charts::plot::Path;

/// The stretches of a line without a gap.
pub(super) fn stretches(points: &[Point]) -> Vec<Vec<(f64, Figure)>> {
    let parts = points.split(|it| it.figure.is_none());
    let parts = parts.filter(|it| !it.is_empty());
    parts.map(|it| it.iter().filter_map(|p| Some((p.x, p.figure?))).collect()).collect()
}

/// The value of a line at a place, straight between its points; after a jump that
/// is there.
pub(super) fn at(points: &[Point], x: f64) -> Option<Figure> {
    let after = points.partition_point(|it| it.x <= x);
    let before = &points[after.checked_sub(1)?];
    let start = before.figure?;
    if before.x >= x {
        return Some(start);
    }
    let next = points.get(after)?;
    let end = next.figure?;
    let part = (x - before.x) / (next.x - before.x);
    let between = |from: f64, to: f64| from + part * (to - from);
    Some(Figure {
        low: between(start.low, end.low),
        expected: between(start.expected, end.expected),
        high: between(start.high, end.high),
    })
}

/// The path of a line.
pub(super) fn line(frame: &Frame, points: &[Point]) -> String {
    let mut path = Path::default();
    for stretch in stretches(points) {
        for (index, (x, figure)) in stretch.iter().enumerate() {
            let command = if index == 0 { "M" } else { "L" };
            path.add(command, &[frame.x(*x), frame.y(figure.expected)]);
        }
        if stretch.len() == 1 {
            // A point alone is as long as it is wide.
            path.add("m-1 0h2", &[]);
        }
    }
    path.text()
}

/// The path around the band of a line; empty where all of it is exact.
pub(super) fn area(frame: &Frame, points: &[Point]) -> String {
    let mut path = Path::default();
    for stretch in stretches(points) {
        if stretch.iter().all(|(_, it)| it.low >= it.high) {
            continue;
        }
        for (index, (x, figure)) in stretch.iter().enumerate() {
            let command = if index == 0 { "M" } else { "L" };
            path.add(command, &[frame.x(*x), frame.y(figure.high)]);
        }
        for (x, figure) in stretch.iter().rev() {
            path.add("L", &[frame.x(*x), frame.y(figure.low)]);
        }
        path.add("z", &[]);
    }
    path.text()
}

/// Where a line leaves the chart at the top (`true`) or at the bottom.
pub(super) fn exits(points: &[Point], axis: &Axis) -> Vec<(f64, bool)> {
    let mut exits = Vec::new();
    for stretch in stretches(points) {
        for (edge, up) in [(axis.to, true), (axis.from, false)] {
            let past = |y: f64| if up { y > edge } else { y < edge };
            if let Some((x, _)) = stretch.first().filter(|(_, it)| past(it.expected)) {
                exits.push((*x, up));
            }
            for pair in stretch.windows(2) {
                let [(x, from), (next, to)] = [pair[0], pair[1]];
                if !past(from.expected) && past(to.expected) {
                    let part = (edge - from.expected) / (to.expected - from.expected);
                    exits.push((x + part * (next - x), up));
                }
            }
        }
    }
    exits
}

/// Where a line lies farthest above and below the chart: x and value.
pub(super) fn farthest(line: &Line, axis: &Axis) -> [Option<(f64, f64)>; 2] {
    let all = || line.points.iter().filter_map(|it| Some((it.x, it.figure?.expected)));
    [
        all().filter(|it| it.1 > axis.to).max_by(|a, b| a.1.total_cmp(&b.1)),
        all().filter(|it| it.1 < axis.from).min_by(|a, b| a.1.total_cmp(&b.1)),
    ]
}

#[cfg(test)]
mod tests {
    use super::super::Graph;
    use super::*;

    /// Points 1,000 rpm apart; what is not a number is a gap.
    fn points(values: &[f64]) -> Vec<Point> {
        let xs = (1_u16..).map(|it| 1000.0 * f64::from(it));
        xs.zip(values).map(|(x, y)| Point::new(x, *y, Some((y - 4.0, y + 6.0)))).collect()
    }

    const GAP: f64 = f64::NAN;

    fn axis() -> Axis {
        Axis { from: 0.0, to: 150.0, ..Axis::default() }
    }

    fn frame() -> Frame {
        let graph = Graph {
            x: Axis { from: 1000.0, to: 7000.0, ..Axis::default() },
            y: axis(),
            ..Graph::default()
        };
        Frame::of(&graph, 340.0)
    }

    #[test]
    fn a_gap_breaks_the_line() {
        let points = points(&[50.0, 60.0, GAP, GAP, 80.0, 90.0, GAP]);
        let lengths: Vec<_> = stretches(&points).iter().map(Vec::len).collect();
        assert_eq!(lengths, [2, 2]);
        let path = line(&frame(), &points);
        assert_eq!((path.matches('M').count(), path.matches('L').count()), (2, 2));
        assert_eq!(area(&frame(), &points).matches('z').count(), 2);
    }

    #[test]
    fn a_point_alone_is_a_dot() {
        assert!(line(&frame(), &points(&[GAP, 60.0, GAP])).ends_with("m-1 0h2"));
    }

    #[test]
    fn an_exact_line_has_no_band() {
        let exact = [Point::new(1000.0, 5.0, None), Point::new(2000.0, 6.0, None)];
        assert_eq!(area(&frame(), &exact), "");
    }

    #[test]
    fn a_value_between_points_lies_straight_between_them() {
        let points = points(&[50.0, 60.0, GAP, 80.0]);
        let read = |x| at(&points, x).map(|it| (it.low, it.expected, it.high));
        assert_eq!(read(1000.0), Some((46.0, 50.0, 56.0)));
        assert_eq!(read(1250.0), Some((48.5, 52.5, 58.5)));
        assert_eq!(read(2000.0), Some((56.0, 60.0, 66.0)));
        for nowhere in [999.0, 2001.0, 3000.0, 3500.0, 4001.0] {
            assert_eq!(read(nowhere), None, "{nowhere}");
        }
    }

    #[test]
    fn after_a_jump_the_new_value_counts() {
        let jump = [
            Point::new(1000.0, 50.0, None),
            Point::new(2000.0, 50.0, None),
            Point::new(2000.0, 90.0, None),
            Point::new(3000.0, 90.0, None),
        ];
        assert_eq!(at(&jump, 2000.0).map(|it| it.expected), Some(90.0));
        assert_eq!(at(&jump, 1999.0).map(|it| it.expected), Some(50.0));
    }

    #[test]
    fn a_line_leaves_where_it_crosses_the_edge() {
        // From 100 to 200 in 1,000 rpm it crosses 150 in the middle.
        let rising = points(&[100.0, 200.0, 220.0, 140.0, 160.0, GAP, 170.0]);
        let expected = [(1500.0, true), (4500.0, true), (7000.0, true)];
        assert_eq!(exits(&rising, &axis()), expected);
        let falling = points(&[10.0, -10.0]);
        assert_eq!(exits(&falling, &axis()), [(1500.0, false)]);
        assert_eq!(exits(&points(&[0.0, 150.0]), &axis()), []);
    }

    #[test]
    fn the_farthest_values_beyond_the_chart_are_found() {
        let line = Line { points: points(&[100.0, 200.0, 220.0, GAP, 160.0]), ..Line::default() };
        assert_eq!(farthest(&line, &axis()), [Some((3000.0, 220.0)), None]);
    }

    #[test]
    fn what_is_not_finite_is_a_gap() {
        for value in [f64::NAN, f64::INFINITY] {
            assert_eq!(Point::new(1.0, value, None), Point::gap(1.0));
        }
    }
}
