//! What the parts of a chart share, and where its crosshair is.

use leptos::prelude::*;

use super::frame::Frame;
use super::reading::{Print, Reading, nearest};
use super::{Timeline, draw};

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
    /// The width of the picture in CSS pixels, once it is known.
    pub(super) room: RwSignal<Option<usize>>,
    /// The point that the crosshair was led to.
    pub(super) at: RwSignal<Option<usize>>,
}

impl Chart {
    /// How wide the picture is drawn.
    pub(super) fn width(self) -> f64 {
        self.room.get().and_then(|it| u16::try_from(it).ok()).map_or(NARROW, f64::from)
    }

    fn frame(self, timeline: &Timeline) -> Frame {
        Frame::of(timeline, self.width(), &last_value(timeline, self.print))
    }

    /// The point that is read: the one under the crosshair, or the last.
    pub(super) fn index(self) -> usize {
        let last = self.timeline.with(|it| it.points.len()).saturating_sub(1);
        self.at.get().map_or(last, |at| at.min(last))
    }

    pub(super) fn reading(self) -> Option<Reading> {
        self.timeline.with(|it| Reading::of(it, self.index(), self.print))
    }

    /// Moves the crosshair by a key; whether it was one that does.
    pub(super) fn step(self, key: &str) -> bool {
        let last = self.timeline.with(|it| it.points.len()).saturating_sub(1);
        let now = self.index();
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
        let index = self
            .timeline
            .with(|it| nearest(&it.points, self.frame(it).minute_at(part * self.width())));
        self.at.set(Some(index));
    }

    /// All of the picture but the crosshair.
    pub(super) fn picture(self) -> Vec<AnyView> {
        self.timeline.with(|it| {
            draw::picture(self.id, it, &self.frame(it), self.print, last_value(it, self.print))
        })
    }

    /// The point that is read, with a line through it while the crosshair is led.
    pub(super) fn crosshair(self) -> Vec<AnyView> {
        self.timeline.with(|it| {
            let point = it.points.get(self.index());
            point.map_or_else(Vec::new, |point| {
                draw::crosshair(point, &self.frame(it), self.at.get().is_some())
            })
        })
    }
}

/// The label at the end of the line.
fn last_value(timeline: &Timeline, print: Print) -> String {
    timeline.points.last().map_or(String::new(), |last| print.value.run(last.expected))
}
