//! The names at the right ends of the lines, moved apart.

use super::chart::Chart;
use super::curve::stretches;
use super::frame::Frame;
use super::names::fitting;

/// From one name to the next.
const APART: f64 = 15.0;

/// A line that ends nearer than this to the right edge is named beside it.
const NEAR: f64 = 8.0;

/// The name of a line beside the picture.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct End {
    /// Which of the lines.
    pub(super) line: usize,
    pub(super) words: String,
    /// Where the line ends, within the frame.
    pub(super) from: (f64, f64),
    /// The middle of the name.
    pub(super) y: f64,
}

/// The last value of a line that is in the picture: x and y, in the picture's units.
fn last(chart: &Chart, line: usize, frame: &Frame) -> Option<(f64, f64)> {
    let stretches = stretches(&chart.lines[line].points);
    let (x, figure) = stretches.last()?.last()?;
    let y = frame.y(figure.expected).clamp(frame.top, frame.bottom);
    Some((frame.x(*x), y))
}

/// The names of the lines that end at the right edge, as near as they can be to
/// the ends without covering each other.
pub(super) fn beside(chart: &Chart, frame: &Frame) -> Vec<End> {
    let room = chart.room_beside(frame.width);
    let mut ends: Vec<End> = (0..chart.lines.len())
        .filter_map(|line| {
            let from = last(chart, line, frame).filter(|it| it.0 > frame.right - NEAR)?;
            let words = fitting(&[&chart.lines[line].label], room);
            Some(End { line, words, from, y: from.1 })
        })
        .collect();
    ends.sort_by(|a, b| a.y.total_cmp(&b.y));
    let wanted: Vec<f64> = ends.iter().map(|it| it.y).collect();
    let places = spread(&wanted, APART, (frame.top, frame.bottom));
    for (end, y) in ends.iter_mut().zip(places) {
        end.y = y;
    }
    ends
}

/// The lines that end within the picture, and where.
pub(super) fn within(chart: &Chart, frame: &Frame) -> Vec<(usize, (f64, f64))> {
    let ends = (0..chart.lines.len()).filter_map(|it| Some((it, last(chart, it, frame)?)));
    ends.filter(|(_, end)| end.0 <= frame.right - NEAR).collect()
}

/// Places in order, so far apart and within bounds, that are least moved from those
/// wanted (in order too). With the distances taken off, only the order is left to
/// keep: neighbours that break it are pooled at their mean, which is the regression
/// onto rising sequences.
fn spread(wanted: &[f64], apart: f64, (top, bottom): (f64, f64)) -> Vec<f64> {
    let offsets = || std::iter::successors(Some(0.0), |it| Some(it + apart));
    let mut pools: Vec<(f64, f64)> = Vec::new();
    for (place, offset) in wanted.iter().zip(offsets()) {
        let mut pool = (place - offset, 1.0);
        while let Some((mean, count)) = pools.pop_if(|it| it.0 > pool.0) {
            pool = ((mean * count + pool.0 * pool.1) / (count + pool.1), count + pool.1);
        }
        pools.push(pool);
    }
    let taken = offsets().nth(wanted.len().saturating_sub(1)).unwrap_or(0.0);
    let lowest = (bottom - taken).max(top);
    let mut places = Vec::new();
    let mut pools = pools.into_iter();
    let mut pool = (0.0, 0.0);
    for offset in offsets().take(wanted.len()) {
        if pool.1 < 1.0 {
            pool = pools.next().unwrap_or(pool);
        }
        pool.1 -= 1.0;
        places.push(pool.0.clamp(top, lowest) + offset);
    }
    places
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::charts::axis::Axis;
    use crate::app::charts::chart::Line;
    use crate::app::charts::point::Point;

    const BOUNDS: (f64, f64) = (0.0, 200.0);

    #[test]
    fn names_that_are_apart_stay_where_they_are() {
        let wanted = [10.0, 40.0, 90.0, 200.0];
        assert_eq!(spread(&wanted, 15.0, BOUNDS), wanted);
        assert_eq!(spread(&[], 15.0, BOUNDS), [0.0; 0]);
    }

    #[test]
    fn names_at_one_place_part_evenly() {
        assert_eq!(spread(&[100.0, 100.0, 100.0], 15.0, BOUNDS), [85.0, 100.0, 115.0]);
        assert_eq!(spread(&[20.0, 100.0, 105.0], 15.0, BOUNDS), [20.0, 95.0, 110.0]);
    }

    #[test]
    fn names_stay_within_the_picture() {
        assert_eq!(spread(&[0.0, 0.0], 15.0, BOUNDS), [0.0, 15.0]);
        assert_eq!(spread(&[199.0, 200.0], 15.0, BOUNDS), [185.0, 200.0]);
    }

    /// Against all places on a grid of halves.
    #[test]
    fn no_other_places_are_nearer() {
        let cost = |places: &[f64], wanted: &[f64]| -> f64 {
            places.iter().zip(wanted).map(|(a, b)| (a - b).powi(2)).sum()
        };
        let grid = || (0..=60).map(|it| f64::from(it) * 0.5);
        for wanted in [[3.0, 4.0, 20.0], [10.0, 11.0, 12.0], [0.0, 26.0, 30.0], [15.0; 3]] {
            let found = spread(&wanted, 8.0, (0.0, 30.0));
            for a in grid() {
                for b in grid().filter(|b| b - a >= 8.0) {
                    for c in grid().filter(|c| c - b >= 8.0) {
                        let other = cost(&[a, b, c], &wanted);
                        assert!(cost(&found, &wanted) <= other + 1e-9, "{wanted:?} {found:?}");
                    }
                }
            }
            assert!(found.windows(2).all(|it| it[1] - it[0] >= 8.0 - 1e-9));
        }
    }

    #[test]
    fn eight_lines_are_named_apart() {
        let line = |index: u16| Line {
            label: format!("Part {index}"),
            points: vec![
                Point::new(1000.0, 20.0, None),
                Point::new(7000.0, 95.0 + f64::from(index), None),
            ],
            ..Line::default()
        };
        let mut chart = Chart {
            x: Axis { from: 1000.0, to: 7000.0, ..Axis::default() },
            y: Axis { from: 0.0, to: 100.0, ..Axis::default() },
            lines: (0..8).map(line).collect(),
            ..Chart::default()
        };
        chart.lines[3].points[1] = Point::new(5000.0, 60.0, None);
        let frame = Frame::of(&chart, 340.0);
        let ends = beside(&chart, &frame);
        assert_eq!(ends.len(), 7);
        assert!(ends.windows(2).all(|it| it[1].y - it[0].y >= APART - 1e-9));
        assert!(ends.iter().all(|it| (frame.top..=frame.bottom).contains(&it.y)));
        assert_eq!(ends.iter().map(|it| it.line).max(), Some(7));
        assert_eq!(within(&chart, &frame).iter().map(|it| it.0).collect::<Vec<_>>(), [3]);
    }
}
