//! What the parts of a chart share, and where its crosshair is.

use leptos::prelude::*;

use super::frame::Frame;
use super::reading::{Print, Reading, nearest};
use super::{Point, Timeline};

/// The width that a picture is drawn for until it is known how much room it has.
const NARROW: f64 = 340.0;

/// How many points a large step of the crosshair passes.
const LEAP: usize = 10;

/// What the parts of a chart share.
#[derive(Clone, Copy)]
pub(super) struct Chart {
    pub(super) id: &'static str,
    pub(super) timeline: Signal<Timeline>,
    pub(super) print: Print,
    pub(super) width: RwSignal<f64>,
    pub(super) frame: Memo<Frame>,
    /// The point under the crosshair.
    pub(super) at: RwSignal<Option<usize>>,
    /// That point, or the last one.
    pub(super) index: Memo<usize>,
    pub(super) reading: Memo<Reading>,
}

impl Chart {
    pub(super) fn new(id: &'static str, timeline: Signal<Timeline>, print: Print) -> Self {
        let width = RwSignal::new(NARROW);
        let at = RwSignal::new(None::<usize>);
        let index = Memo::new(move |_| {
            let last = timeline.with(|it| it.points.len()).saturating_sub(1);
            at.get().map_or(last, |at| at.min(last))
        });
        let frame = Memo::new(move |_| {
            timeline.with(|it| Frame::of(it, width.get(), &last_value(it, print)))
        });
        let reading = Memo::new(move |_| timeline.with(|it| Reading::of(it, index.get(), print)));
        Self { id, timeline, print, width, frame, at, index, reading }
    }

    /// Moves the crosshair by a key; whether it was one that does.
    pub(super) fn step(self, key: &str) -> bool {
        let last = self.timeline.with_untracked(|it| it.points.len()).saturating_sub(1);
        let now = self.index.get_untracked();
        let to = match key {
            "ArrowLeft" | "ArrowDown" => now.saturating_sub(1),
            "ArrowRight" | "ArrowUp" => now + 1,
            "PageDown" => now.saturating_sub(LEAP),
            "PageUp" => now + LEAP,
            "Home" => 0,
            "End" => last,
            _ => return false,
        };
        self.at.set(Some(to.min(last)));
        true
    }

    /// Moves the crosshair to the point nearest to a place, as a part of the width.
    pub(super) fn point_at(self, part: f64) {
        let minute = self.frame.get_untracked().minute_at(part * self.width.get_untracked());
        let index = self.timeline.with_untracked(|it| nearest(&it.points, minute));
        self.at.set(Some(index));
    }

    /// The line of the crosshair, while it is led.
    pub(super) fn cross(self) -> String {
        let frame = self.frame.get();
        let place = self.at.get().and_then(|_| self.point());
        place.map_or(String::new(), |point| {
            format!("M{:.1} {:.1}V{:.1}", frame.x(point.minute), frame.top, frame.bottom)
        })
    }

    /// The band at the point that is read, as a bar.
    pub(super) fn bar(self) -> String {
        let frame = self.frame.get();
        self.point().map_or(String::new(), |point| {
            let x = frame.x(point.minute);
            let (low, high) = (frame.y(point.low), frame.y(point.high));
            format!("M{0:.1} {high:.1}h8m-4 0V{low:.1}m-4 0h8", x - 4.0)
        })
    }

    /// A disc at what is expected there.
    pub(super) fn disc(self) -> String {
        let frame = self.frame.get();
        self.point().map_or(String::new(), |point| {
            let (x, y) = (frame.x(point.minute) - 4.5, frame.y(point.expected));
            format!("M{x:.1} {y:.1}a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0-9 0z")
        })
    }

    fn point(self) -> Option<Point> {
        self.timeline.with(|it| it.points.get(self.index.get()).copied())
    }
}

/// The label at the end of the line.
pub(super) fn last_value(timeline: &Timeline, print: Print) -> String {
    timeline.points.last().map_or(String::new(), |last| print.value.run(last.expected))
}
