//! All that a chart shows: lines with their bands over an axis, limits that they should
//! keep, windows along the axis and across it, marked places, and what was noted.

use super::axis::Axis;
use super::point::Point;
use super::svg::width_of;

/// All that the chart shows.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Chart {
    pub(crate) title: String,
    /// The picture in one sentence, for those who do not see it; never empty.
    pub(crate) words: String,
    pub(crate) x: Axis,
    pub(crate) y: Axis,
    /// Up to [`LOOKS`] lines can be told apart.
    pub(crate) lines: Vec<Line>,
    pub(crate) limits: Vec<Limit>,
    pub(crate) windows: Vec<Window>,
    /// Windows of the values: bands that lie across the picture.
    pub(crate) across: Vec<Window>,
    /// The first of them is read until the crosshair is led elsewhere.
    pub(crate) marks: Vec<Mark>,
    /// What was noted along the axis, in its order.
    pub(crate) entries: Vec<Entry>,
}

/// One of the lines.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Line {
    pub(crate) name: String,
    /// The name in short, for the end of the line.
    pub(crate) label: String,
    /// In the order of x.
    pub(crate) points: Vec<Point>,
    /// Which of the [`LOOKS`] it has: a dash and a colour.
    pub(crate) look: usize,
    /// Whether it is the one that matters.
    pub(crate) emphasis: bool,
}

/// So many looks of lines differ in their dash.
pub(crate) const LOOKS: usize = 8;

/// What lines should not pass.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Limit {
    pub(crate) name: String,
    pub(crate) course: Course,
    pub(crate) beyond: Side,
}

/// Where a limit runs.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Course {
    /// At one level, over all of the axis or a part of it.
    Level { y: f64, from: Option<f64>, to: Option<f64> },
    /// Through places, each x and y.
    Through(Vec<(f64, f64)>),
}

/// The side of a limit that is out of bounds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Side {
    Above,
    Below,
}

/// A band along an axis, such as a calibration's window.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Window {
    pub(crate) name: String,
    pub(crate) from: f64,
    pub(crate) to: f64,
}

/// A place on the axis, such as the blend that is in the tank.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Mark {
    pub(crate) name: String,
    pub(crate) x: f64,
    /// The value there, where one point is meant.
    pub(crate) y: Option<f64>,
}

/// What was noted at a place, said together with the stop next to it.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Entry {
    pub(crate) x: f64,
    pub(crate) y: f64,
    pub(crate) kind: EntryKind,
    /// For instance "Fill: 16 L E85".
    pub(crate) words: String,
    /// The address of the log's entry.
    pub(crate) href: Option<String>,
}

/// What an entry stands for; each kind has a shape of its own.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum EntryKind {
    /// Fuel went in.
    Fill,
    /// The level was read.
    Level,
    /// The ethanol share was read.
    ShareReading,
    Other,
}

impl Chart {
    /// The windows that can be seen.
    pub(super) fn windows(&self) -> impl Iterator<Item = &Window> {
        self.windows.iter().filter(|it| it.from <= self.x.to && it.to >= self.x.from)
    }

    /// The windows of the values that can be seen.
    pub(super) fn across(&self) -> impl Iterator<Item = &Window> {
        self.across.iter().filter(|it| it.from <= self.y.to && it.to >= self.y.from)
    }

    /// The marks that can be seen.
    pub(super) fn marks(&self) -> impl Iterator<Item = &Mark> {
        self.marks.iter().filter(|it| self.x.spans(it.x))
    }
}

/// The name of a line takes no more of the width than this.
const WIDEST_NAME: f64 = 0.3;

impl Chart {
    /// The room that the names of the lines take beside the picture.
    pub(super) fn room_beside(&self, width: f64) -> f64 {
        let widest = self.lines.iter().map(|it| width_of(&it.label)).fold(0.0, f64::max);
        widest.min(WIDEST_NAME * width)
    }
}
