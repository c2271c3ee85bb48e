//! What people do without an estimator.

use super::truth::{CAPACITY, Stop};

/// Level and share that somebody reckons with.
#[derive(Clone, Copy)]
pub(crate) struct Books {
    pub(crate) level: f64,
    pub(crate) share: f64,
}

impl Books {
    /// A first guess.
    pub(crate) fn new() -> Self {
        Self { level: CAPACITY / 2.0, share: 0.4 }
    }

    fn add(&mut self, litres: f64, share: f64) {
        let total = self.level + litres;
        if litres <= 0.0 {
            return;
        }
        self.share = (self.level * self.share + litres * share) / total;
        self.level = total;
    }

    /// The gauge at face value and the labels on the pump.
    pub(crate) fn naive(&mut self, stop: &Stop) {
        self.level = stop.gauge;
        self.add(stop.weak, 0.10);
        self.add(stop.strong, 0.85);
        self.level = self.level.min(CAPACITY);
    }

    /// The gauge, but the click where there was one, and what the fuels hold in
    /// this season.
    pub(crate) fn careful(&mut self, stop: &Stop) {
        let room = (CAPACITY - stop.weak - stop.strong).max(0.0);
        self.level = if stop.clicked { room } else { stop.gauge.min(room) };
        self.add(stop.weak, 0.087);
        self.add(stop.strong, stop.season);
    }
}
