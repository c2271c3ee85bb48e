//! The points of a line, and the course through them.

use super::axis::Axis;
use super::chart::Line;
use super::frame::Frame;
use super::path::Path;
use super::path::whole;
use super::point::{Figure, Point};
use super::stops::Stop;

/// The stretches of a line without a gap.
pub(super) fn stretches(points: &[Point]) -> Vec<Vec<(f64, Figure)>> {
    let parts = points.split(|it| it.figure.is_none());
    let parts = parts.filter(|it| !it.is_empty());
    parts.map(|it| it.iter().filter_map(|p| Some((p.x, p.figure?))).collect()).collect()
}

/// The value of a line at a stop, straight between its points; at a jump that is there,
/// the one on the side of the stop.
pub(super) fn at(points: &[Point], stop: Stop) -> Option<Figure> {
    let after = points.partition_point(|it| it.x <= stop.x);
    let before = &points[after.checked_sub(1)?];
    let here =
        points.iter().find(|it| it.x >= stop.x).filter(|it| stop.is_before && it.x <= stop.x);
    let before = here.unwrap_or(before);
    let start = before.figure?;
    if before.x >= stop.x {
        return Some(start);
    }
    let next = points.get(after)?;
    let end = next.figure?;
    let part = (stop.x - before.x) / (next.x - before.x);
    let between = |from: f64, to: f64| from + part * (to - from);
    Some(Figure {
        low: between(start.low, end.low),
        expected: between(start.expected, end.expected),
        high: between(start.high, end.high),
    })
}

/// Of all points in one column of pixels, those that show: the first, the lowest,
/// the highest and the last, each with the widest band of the column.
fn thinned(stretch: &[(f64, Figure)], frame: &Frame) -> Vec<(f64, Figure)> {
    let column = |it: &(f64, Figure)| whole(frame.x(it.0));
    let mut shown = Vec::new();
    for points in stretch.chunk_by(|one, next| column(one) == column(next)) {
        if points.len() > 4 {
            extremes(points, &mut shown);
        } else {
            shown.extend_from_slice(points);
        }
    }
    shown
}

fn extremes(column: &[(f64, Figure)], shown: &mut Vec<(f64, Figure)>) {
    let mut band = column[0].1;
    let (mut lowest, mut highest) = (0, 0);
    for (index, (_, figure)) in column.iter().enumerate() {
        band.low = band.low.min(figure.low);
        band.high = band.high.max(figure.high);
        if figure.expected < column[lowest].1.expected {
            lowest = index;
        }
        if figure.expected > column[highest].1.expected {
            highest = index;
        }
    }
    let between = [lowest.min(highest), lowest.max(highest)];
    for index in [0, between[0], between[1], column.len() - 1] {
        let (x, Figure { expected, .. }) = column[index];
        shown.push((x, Figure { expected, ..band }));
    }
}

/// The stretches of a line, as finely as they show.
pub(super) fn shown(points: &[Point], frame: &Frame) -> Vec<Vec<(f64, Figure)>> {
    stretches(points).iter().map(|it| thinned(it, frame)).collect()
}

/// The path of a line.
pub(super) fn line(frame: &Frame, points: &[Point]) -> String {
    let mut path = Path::default();
    for stretch in shown(points, frame) {
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
    for stretch in shown(points, frame) {
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
    use super::*;
    use crate::app::charts::chart::Chart;
    use crate::app::charts::path::pen;

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
        let chart = Chart {
            x: Axis { from: 1000.0, to: 7000.0, ..Axis::default() },
            y: axis(),
            ..Chart::default()
        };
        Frame::of(&chart, 340.0)
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
        let read = |x| at(&points, Stop::at(x)).map(|it| (it.low, it.expected, it.high));
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
        let read = |stop| at(&jump, stop).map(|it| it.expected);
        assert_eq!(read(Stop::at(2000.0)), Some(90.0));
        assert_eq!(read(Stop { x: 2000.0, is_before: true }), Some(50.0));
        assert_eq!(read(Stop::at(1999.0)), Some(50.0));
        assert_eq!(read(Stop { x: 1999.0, is_before: true }), Some(50.0));
    }

    /// A frame over as many minutes as these points span.
    fn over(points: &[Point]) -> Frame {
        let (from, to) = (points[0].x, points[points.len() - 1].x);
        let x = Axis { from, to, ..Axis::default() };
        Frame::of(&Chart { x, y: axis(), ..Chart::default() }, 340.0)
    }

    fn hourly(hour: u32, expected: f64) -> Point {
        let ends = Some((expected - 2.0, expected + 3.0));
        Point::new(60.0 * f64::from(hour), expected, ends)
    }

    #[test]
    fn a_short_log_is_drawn_whole() {
        let points: Vec<_> = (0..40).map(|it| hourly(it, 30.0)).collect();
        assert_eq!(shown(&points, &over(&points)), stretches(&points));
    }

    #[test]
    fn a_long_log_keeps_its_ends_and_extremes() {
        let mut points: Vec<_> =
            (0..5000).map(|it| hourly(it, 40.0 + 10.0 * (f64::from(it) * 0.37).sin())).collect();
        let change = |point: &mut Point, to: fn(&mut Figure)| {
            if let Some(figure) = &mut point.figure {
                to(figure);
            }
        };
        change(&mut points[2345], |it| it.expected = 91.0);
        change(&mut points[3456], |it| it.low = 3.0);
        let frame = over(&points);
        let shown = shown(&points, &frame).concat();
        assert!(shown.len() < 4 * 340, "{} points", shown.len());
        assert_eq!(shown.first().map(|it| it.0), Some(0.0));
        assert_eq!(shown.last().map(|it| it.0), Some(4999.0 * 60.0));
        assert!(shown.is_sorted_by_key(|it| it.0));
        assert!(shown.iter().any(|it| (it.0 - 2345.0 * 60.0).abs() < 1e-9));
        // The band of every point lies within what is drawn in its column.
        for (x, figure) in stretches(&points).concat() {
            let column = whole(frame.x(x));
            let drawn = shown.iter().filter(|it| whole(frame.x(it.0)) == column);
            let (low, high) = drawn.fold((f64::MAX, f64::MIN), |(low, high), (_, it)| {
                (low.min(it.low), high.max(it.high))
            });
            assert!(low <= figure.low && figure.high <= high);
        }
    }

    #[test]
    fn a_jump_is_two_points_at_one_place() {
        let points = [hourly(0, 10.0), hourly(1, 10.0), hourly(1, 80.0), hourly(2, 80.0)];
        let frame = over(&points);
        let path = line(&frame, &points);
        let middle = pen("L", &[f64::midpoint(frame.left, frame.right)]).text() + " ";
        assert_eq!(path.matches(&middle).count(), 2);
        assert_eq!(path.matches('M').count(), 1);
    }

    #[test]
    fn the_band_is_one_closed_path() {
        let points = [hourly(0, 10.0), hourly(1, 20.0)];
        let path = area(&over(&points), &points);
        assert_eq!((path.matches('M').count(), path.matches('L').count()), (1, 3));
        assert!(path.ends_with('z'));
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
