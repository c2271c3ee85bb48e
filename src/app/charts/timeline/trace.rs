//! The lines through the points.

use super::Point;
use super::frame::Frame;
use crate::app::charts::plot::{Path, whole};

/// Of all points in one column of pixels, those that show: the first, the lowest,
/// the highest and the last, each with the widest band of the column.
pub(super) fn thinned(points: &[Point], frame: &Frame) -> Vec<Point> {
    let column = |point: &Point| whole(frame.x(point.minute));
    let mut shown = Vec::new();
    for points in points.chunk_by(|one, next| column(one) == column(next)) {
        if points.len() > 4 {
            extremes(points, &mut shown);
        } else {
            shown.extend_from_slice(points);
        }
    }
    shown
}

fn extremes(column: &[Point], shown: &mut Vec<Point>) {
    let mut band = column[0];
    let (mut lowest, mut highest) = (0, 0);
    for (index, point) in column.iter().enumerate() {
        band.low = band.low.min(point.low);
        band.high = band.high.max(point.high);
        if point.expected < column[lowest].expected {
            lowest = index;
        }
        if point.expected > column[highest].expected {
            highest = index;
        }
    }
    let between = [lowest.min(highest), lowest.max(highest)];
    for index in [0, between[0], between[1], column.len() - 1] {
        let Point { minute, expected, .. } = column[index];
        shown.push(Point { minute, expected, ..band });
    }
}

/// The path of one value through the points.
pub(super) fn line(frame: &Frame, points: &[Point], value: fn(&Point) -> f64) -> String {
    let mut path = Path::default();
    for point in points {
        through(&mut path, frame, point, value);
    }
    path.text()
}

/// The path around the band.
pub(super) fn area(frame: &Frame, points: &[Point]) -> String {
    let mut path = Path::default();
    for point in points {
        through(&mut path, frame, point, |it| it.high);
    }
    for point in points.iter().rev() {
        through(&mut path, frame, point, |it| it.low);
    }
    path.with("z", &[]).text()
}

fn through(path: &mut Path, frame: &Frame, point: &Point, value: fn(&Point) -> f64) {
    let command = if path.is_empty() { "M" } else { "L" };
    path.add(command, &[frame.x(point.minute), frame.y(value(point))]);
}

#[cfg(test)]
mod tests {
    use super::super::Timeline;
    use super::*;
    use crate::app::charts::plot::pen;

    fn point(minute: i64, expected: f64) -> Point {
        Point { minute, low: expected - 2.0, expected, high: expected + 3.0 }
    }

    fn frame(points: &[Point]) -> Frame {
        let timeline = Timeline { top: 100.0, points: points.to_vec(), ..Timeline::default() };
        Frame::of(&timeline, 340.0, "E31")
    }

    #[test]
    fn a_short_log_is_drawn_whole() {
        let points: Vec<_> = (0..40).map(|it| point(it * 60, 30.0)).collect();
        assert_eq!(thinned(&points, &frame(&points)), points);
    }

    #[test]
    fn a_long_log_keeps_its_ends_and_extremes() {
        let mut points: Vec<_> = (0..5000_u32)
            .map(|it| point(i64::from(it) * 60, 40.0 + 10.0 * (f64::from(it) * 0.37).sin()))
            .collect();
        points[2345].expected = 91.0;
        points[3456].low = 3.0;
        let frame = frame(&points);
        let shown = thinned(&points, &frame);
        assert!(shown.len() < 4 * 340, "{} points", shown.len());
        assert_eq!(shown.first().map(|it| it.minute), Some(0));
        assert_eq!(shown.last().map(|it| it.minute), Some(4999 * 60));
        assert!(shown.is_sorted_by_key(|it| it.minute));
        assert!(shown.iter().any(|it| it.minute == 2345 * 60));
        // The band of every point lies within what is drawn in its column.
        for point in &points {
            let column = whole(frame.x(point.minute));
            let drawn = shown.iter().filter(|it| whole(frame.x(it.minute)) == column);
            let (low, high) = drawn
                .fold((f64::MAX, f64::MIN), |(low, high), it| (low.min(it.low), high.max(it.high)));
            assert!(low <= point.low && point.high <= high);
        }
    }

    #[test]
    fn a_jump_is_two_points_at_one_time() {
        let points = [point(0, 10.0), point(60, 10.0), point(60, 80.0), point(120, 80.0)];
        let frame = frame(&points);
        let path = line(&frame, &points, |it| it.expected);
        let middle = pen("L", &[f64::midpoint(frame.left, frame.right)]).text() + " ";
        assert_eq!(path.matches(&middle).count(), 2);
        assert_eq!(path.matches('M').count(), 1);
    }

    #[test]
    fn the_band_is_one_closed_path() {
        let points = [point(0, 10.0), point(60, 20.0)];
        let path = area(&frame(&points), &points);
        assert_eq!((path.matches('M').count(), path.matches('L').count()), (1, 3));
        assert!(path.ends_with('z'));
    }
}
