//! Where times and values lie in the picture.

use super::Timeline;
use crate::app::charts::plot::{height, ticks, whole, width_of};

/// The inside of the axes, in the picture's own units, and what it spans.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Frame {
    pub(super) left: f64,
    pub(super) right: f64,
    pub(super) top: f64,
    pub(super) bottom: f64,
    /// The first and the last time, in minutes since 1970.
    pub(super) from: i64,
    pub(super) to: i64,
    /// The value at the top.
    end: f64,
}

impl Frame {
    /// The frame of a picture so wide, with room on the right for the label at the
    /// end of the line.
    pub(super) fn of(timeline: &Timeline, width: f64, label: &str) -> Self {
        let (mut from, mut to) = match timeline.points.as_slice() {
            [first, .., last] => (first.minute, last.minute),
            [only] => (only.minute, only.minute),
            [] => (0, 0),
        };
        for mark in &timeline.marks {
            (from, to) = (from.min(mark.minute), to.max(mark.minute));
        }
        let highest = value_ticks(timeline.top).last().map(f64::to_string).unwrap_or_default();
        Self {
            left: 12.0 + width_of(&highest).max(width_of(&timeline.unit)),
            right: width - 16.0 - width_of(label),
            top: 24.0,
            bottom: height(width) - 26.0,
            from,
            to,
            end: timeline.top,
        }
    }

    pub(super) fn x(&self, minute: i64) -> f64 {
        if self.from == self.to {
            return f64::midpoint(self.left, self.right);
        }
        let part = number(minute - self.from) / number(self.to - self.from);
        self.left + part * (self.right - self.left)
    }

    pub(super) fn y(&self, value: f64) -> f64 {
        let part = (value / self.end).clamp(0.0, 1.0);
        self.bottom - part * (self.bottom - self.top)
    }

    /// The time at a place, also outside of the frame.
    pub(super) fn minute_at(&self, x: f64) -> i64 {
        let part = (x - self.left) / (self.right - self.left);
        self.from + whole(part * number(self.to - self.from))
    }
}

/// Ticks of an axis from nought to `end`: whole numbers, so that they need no
/// decimals, and no more than five.
pub(super) fn value_ticks(end: f64) -> Vec<f64> {
    ticks(0.0, end, 4, 0).values
}

#[expect(clippy::cast_precision_loss, reason = "any calendar's minutes are far below 2^53")]
fn number(minutes: i64) -> f64 {
    minutes as f64
}

#[cfg(test)]
mod tests {
    use super::super::Point;
    use super::*;

    fn timeline(minutes: &[i64]) -> Timeline {
        let point = |minute: &i64| Point { minute: *minute, low: 1.0, expected: 2.0, high: 3.0 };
        Timeline { top: 50.0, points: minutes.iter().map(point).collect(), ..Timeline::default() }
    }

    #[test]
    fn the_ends_of_time_and_value_are_the_ends_of_the_frame() {
        let frame = Frame::of(&timeline(&[100, 130, 300]), 340.0, "E31");
        let close = |a: f64, b: f64| (a - b).abs() < 1e-9;
        assert!(close(frame.x(100), frame.left) && close(frame.x(300), frame.right));
        assert!(close(frame.y(0.0), frame.bottom) && close(frame.y(50.0), frame.top));
        assert!(close(frame.y(60.0), frame.top), "what is too high stays inside");
        assert!(frame.left > 0.0 && frame.right + width_of("E31") < 340.0);
    }

    #[test]
    fn a_place_leads_back_to_its_time() {
        let frame = Frame::of(&timeline(&[28_000_000, 29_000_000]), 340.0, "");
        for minute in (28_000_000..=29_000_000).step_by(9_973) {
            assert_eq!(frame.minute_at(frame.x(minute)), minute);
        }
    }

    #[test]
    fn a_single_time_is_in_the_middle() {
        let frame = Frame::of(&timeline(&[7]), 340.0, "");
        assert!((frame.x(7) - frame.left - (frame.right - frame.x(7))).abs() < 1e-9);
        assert_eq!(frame.minute_at(0.0), 7);
    }
}
