//! What the parts of a chart share, and where its crosshair is.

use leptos::prelude::*;

use super::frame::Frame;
use super::reading::{Print, Reading, nearest};
use super::{Timeline, draw};
use crate::app::charts::plot::{Crosshair, Room};

/// What the parts of a chart share.
#[derive(Clone, Copy)]
pub(super) struct Chart {
    pub(super) id: &'static str,
    pub(super) timeline: Signal<Timeline>,
    pub(super) print: Print,
    pub(super) room: Room,
    pub(super) crosshair: Crosshair,
}

impl Chart {
    fn frame(self, timeline: &Timeline) -> Frame {
        Frame::of(timeline, self.room.width(), &last_value(timeline, self.print))
    }

    pub(super) fn reading(self) -> Option<Reading> {
        self.timeline.with(|it| Reading::of(it, self.crosshair.index(), self.print))
    }

    /// Moves the crosshair to the point nearest to a place, as a part of the width.
    pub(super) fn point_at(self, part: f64) {
        let place = part * self.room.width();
        let index = self.timeline.with(|it| nearest(&it.points, self.frame(it).minute_at(place)));
        self.crosshair.at.set(Some(index));
    }

    /// All of the picture but the crosshair.
    pub(super) fn picture(self) -> Vec<AnyView> {
        self.timeline.with(|it| {
            draw::picture(self.id, it, &self.frame(it), self.print, last_value(it, self.print))
        })
    }

    /// The point that is read, with a line through it while the crosshair is led.
    pub(super) fn cross(self) -> Vec<AnyView> {
        self.timeline.with(|it| {
            let point = it.points.get(self.crosshair.index());
            point.map_or_else(Vec::new, |point| {
                draw::crosshair(point, &self.frame(it), self.crosshair.is_led())
            })
        })
    }
}

/// The label at the end of the line.
fn last_value(timeline: &Timeline, print: Print) -> String {
    timeline.points.last().map_or(String::new(), |last| print.value.run(last.expected))
}
