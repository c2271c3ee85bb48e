//! The views.

mod calibrations;
mod car;
mod cars;
mod contents;
mod data;
pub(crate) mod extras;
mod fill;
mod fuels;
mod hardware;
mod how_sure;
mod methods;
mod share;
mod take;
mod tank;
mod trip;
mod units;
mod welcome;

pub(crate) use car::CarView;
pub(crate) use fill::FillView;
pub(crate) use hardware::HardwareView;
pub(crate) use methods::MethodsView;
pub(crate) use take::TakeView;
pub(crate) use tank::TankView;
pub(crate) use trip::TripView;
pub(crate) use welcome::Welcome;

use fillwright::tank::LevelReading;

/// How a level can have been read.
const LEVEL_READINGS: [(LevelReading, &str, &str); 3] = [
    (LevelReading::Gauge, "gauge", "By the gauge"),
    (LevelReading::Counted, "counted", "Counted since full"),
    (LevelReading::Brimmed, "brimmed", "Just brimmed"),
];
