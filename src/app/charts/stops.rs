//! Where the crosshair stops.

use super::chart::Chart;

/// A place that can be read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Stop {
    pub(super) x: f64,
    /// Whether what was before a jump that is there is meant.
    pub(super) is_before: bool,
}

impl Stop {
    /// A place, after a jump that is there.
    pub(super) fn at(x: f64) -> Self {
        Self { x, is_before: false }
    }
}

/// Where the crosshair stops, in order: wherever a line has a point, before and after
/// each jump, and at the marks. Gaps count too, so that charts over the same places stop
/// at the same ones.
pub(super) fn stops(chart: &Chart) -> Vec<Stop> {
    let lines = || chart.lines.iter().map(|line| line.points.as_slice());
    let points = lines().flatten().map(|it| Stop::at(it.x));
    let jumps = lines().flat_map(|it| it.windows(2)).filter(|it| it[1].x <= it[0].x);
    let before = jumps.map(|it| Stop { x: it[0].x, is_before: true });
    let mut stops: Vec<Stop> = points.chain(before).filter(|it| chart.x.spans(it.x)).collect();
    if !stops.is_empty() {
        stops.extend(chart.marks().map(|it| Stop::at(it.x)));
    }
    stops.sort_by(|a, b| a.x.total_cmp(&b.x).then(b.is_before.cmp(&a.is_before)));
    // Places that print alike are one.
    stops.dedup_by(|next, one| next.x - one.x <= chart.x.near() && next.is_before == one.is_before);
    stops
}

/// The stop that is read before the crosshair is led: that of the first mark, or
/// the last.
pub(super) fn rest(chart: &Chart, stops: &[Stop]) -> usize {
    let mark = chart.marks().next().map(|it| nearest(stops, it.x));
    mark.unwrap_or(stops.len().saturating_sub(1))
}

/// The index of the stop nearest to a place; of several there the last, as what is so
/// after a jump is what counts.
pub(super) fn nearest(stops: &[Stop], x: f64) -> usize {
    let last_at = |x: f64| stops.partition_point(|it| it.x <= x).saturating_sub(1);
    let after = stops.partition_point(|it| it.x <= x);
    match (after.checked_sub(1), stops.get(after)) {
        (Some(before), Some(next)) if next.x - x >= x - stops[before].x => before,
        (_, Some(next)) => last_at(next.x),
        (before, None) => before.unwrap_or(0),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::charts::axis::Axis;
    use crate::app::charts::chart::{Line, Mark};
    use crate::app::charts::point::Point;

    fn chart(lines: &[&[f64]], marks: &[f64]) -> Chart {
        let line = |xs: &&[f64]| Line {
            points: xs.iter().map(|x| Point::new(*x, 50.0, None)).collect(),
            ..Line::default()
        };
        let mark = |x: &f64| Mark { name: "tank".into(), x: *x, y: None };
        Chart {
            x: Axis { from: 1000.0, to: 7000.0, ..Axis::default() },
            lines: lines.iter().map(line).collect(),
            marks: marks.iter().map(mark).collect(),
            ..Chart::default()
        }
    }

    #[test]
    fn the_crosshair_stops_at_every_point_and_mark_once() {
        let chart = chart(&[&[1000.0, 2000.0, 3000.0], &[2000.0, 2500.0]], &[2250.0]);
        let expected = [1000.0, 2000.0, 2250.0, 2500.0, 3000.0].map(Stop::at);
        assert_eq!(stops(&chart), expected);
    }

    #[test]
    fn what_lies_beyond_the_axis_is_no_stop() {
        let chart = chart(&[&[500.0, 2000.0, 8000.0]], &[9000.0]);
        assert_eq!(stops(&chart), [Stop::at(2000.0)]);
    }

    #[test]
    fn without_lines_there_is_nothing_to_read() {
        assert_eq!(stops(&chart(&[], &[2000.0])), []);
    }

    #[test]
    fn the_first_mark_is_read_first() {
        let marked = chart(&[&[1000.0, 2000.0, 3000.0]], &[2000.0, 3000.0]);
        assert_eq!(rest(&marked, &stops(&marked)), 1);
        let plain = chart(&[&[1000.0, 2000.0, 3000.0]], &[]);
        assert_eq!(rest(&plain, &stops(&plain)), 2);
    }

    #[test]
    fn a_jump_is_read_before_and_after() {
        let chart = chart(&[&[1000.0, 2000.0, 2000.0, 3000.0]], &[]);
        let before = Stop { x: 2000.0, is_before: true };
        let expected = [Stop::at(1000.0), before, Stop::at(2000.0), Stop::at(3000.0)];
        assert_eq!(stops(&chart), expected);
    }

    #[test]
    fn the_nearest_stop_is_the_closest() {
        let stops = [1000.0, 1500.0, 4000.0].map(Stop::at);
        for x in (0..500).map(|it| f64::from(it) * 10.0) {
            let found = (stops[nearest(&stops, x)].x - x).abs();
            assert!(stops.iter().all(|stop| found <= (stop.x - x).abs()), "{x}");
        }
        assert_eq!(nearest(&[], 1.0), 0);
    }

    #[test]
    fn of_several_stops_at_a_place_the_last_is_the_nearest() {
        let stops = [0.0, 10.0, 11.0, 40.0, 40.0, 40.0, 90.0].map(Stop::at);
        for x in (-20..120).map(f64::from) {
            let found = (stops[nearest(&stops, x)].x - x).abs();
            assert!(stops.iter().all(|stop| found <= (stop.x - x).abs()), "{x}");
        }
        assert_eq!(nearest(&stops, 38.0), 5, "after the fill, not before it");
        assert_eq!(nearest(&[5.0, 5.0].map(Stop::at), 0.0), 1);
    }
}
