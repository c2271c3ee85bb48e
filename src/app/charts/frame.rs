//! Where numbers lie in the picture.

use super::across::{Across, FAR};
use super::chart::Chart;
use super::head;
use super::names::LINE;
use super::stage::height;
use super::svg::width_of;

/// From a line's end to its label.
pub(super) const LEADER: f64 = 20.0;

/// At most so many steps are written along the values.
pub(super) const VALUES: usize = 4;

/// The inside of the axes, in the picture's own units, and what it spans.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Frame {
    pub(super) left: f64,
    pub(super) right: f64,
    pub(super) top: f64,
    pub(super) bottom: f64,
    pub(super) width: f64,
    /// The same from left to right.
    pub(super) across: Across,
    y: (f64, f64),
}

impl Frame {
    /// The frame of a picture so wide: room on the left for the numbers, on the
    /// right for the names of the lines, above for those of marks.
    pub(super) fn of(chart: &Chart, width: f64) -> Self {
        let values = chart.y.ticks(VALUES);
        let left = 12.0 + values.iter().map(|it| width_of(&it.1)).fold(0.0, f64::max);
        let label = chart.room_beside(width);
        // Names have letters that are wider than most.
        let right = width - if label > 0.0 { LEADER + 1.12 * label } else { 12.0 };
        let mut frame = Self {
            left,
            right,
            top: 0.0,
            bottom: 0.0,
            width,
            across: Across { left, right, width, from: chart.x.from, to: chart.x.to },
            y: (chart.y.from, chart.y.to),
        };
        // The name of the axis stands above all names. How many rows these take is known
        // only once the width is, and must not move what stands below the picture.
        frame.top = 14.0 + LINE * (0.5 + f64::from(head::rows(chart, &frame.across)));
        // Dates say by themselves what they are; other axes have their name below.
        frame.bottom = height(width) - if chart.x.date.is_some() { 26.0 } else { 44.0 };
        frame
    }

    pub(super) fn x(&self, x: f64) -> f64 {
        self.across.x(x)
    }

    /// The place of a value, also beyond the frame.
    pub(super) fn y(&self, y: f64) -> f64 {
        let part = (y - self.y.0) / (self.y.1 - self.y.0);
        near(self.bottom - part * (self.bottom - self.top))
    }

    /// The number at a place.
    pub(super) fn x_at(&self, place: f64) -> f64 {
        self.across.x_at(place)
    }
}

fn near(place: f64) -> f64 {
    place.clamp(-FAR, FAR)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::charts::axis::Axis;
    use crate::app::charts::chart::Line;
    use crate::app::charts::point::Point;

    fn chart() -> Chart {
        let line = Line {
            label: "HP pump".into(),
            points: vec![Point::new(7000.0, 90.0, None)],
            ..Line::default()
        };
        Chart {
            x: Axis { from: 1000.0, to: 7000.0, ..Axis::default() },
            y: Axis { from: 50.0, to: 150.0, ..Axis::default() },
            lines: vec![line],
            ..Chart::default()
        }
    }

    #[test]
    fn the_ends_of_the_axes_are_the_ends_of_the_frame() {
        for width in [300.0, 340.0, 660.0, 1000.0] {
            let frame = Frame::of(&chart(), width);
            let close = |a: f64, b: f64| assert!((a - b).abs() < 1e-9, "{a} {b}");
            close(frame.x(1000.0), frame.left);
            close(frame.x(7000.0), frame.right);
            close(frame.y(50.0), frame.bottom);
            close(frame.y(150.0), frame.top);
            close(frame.x_at(frame.x(4321.0)), 4321.0);
            assert!(frame.right + width_of("HP pump") < width);
            assert!(frame.right - frame.left > 0.5 * width, "most of it is the picture");
        }
    }

    #[test]
    fn endless_values_stay_numbers() {
        let frame = Frame::of(&chart(), 340.0);
        assert!(frame.y(f64::INFINITY).is_finite() && frame.y(f64::NEG_INFINITY).is_finite());
        assert!(frame.y(f64::INFINITY) < frame.top);
    }
    fn over_time(from: i32, to: i32) -> Frame {
        let x = Axis { from: from.into(), to: to.into(), ..Axis::default() };
        Frame::of(&Chart { x, ..chart() }, 340.0)
    }

    #[test]
    fn a_place_leads_back_to_its_time() {
        let frame = over_time(28_000_000, 29_000_000);
        for minute in (28_000_000..=29_000_000).step_by(9_973).map(f64::from) {
            assert!((frame.x_at(frame.x(minute)) - minute).abs() < 0.5);
        }
    }

    #[test]
    fn a_single_time_is_in_the_middle() {
        let frame = over_time(7, 7);
        assert!((frame.x(7.0) - frame.left - (frame.right - frame.x(7.0))).abs() < 1e-9);
        assert!((frame.x_at(0.0) - 7.0).abs() < 1e-9);
    }
}
