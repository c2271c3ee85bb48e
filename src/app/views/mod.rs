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

use fillwright::message::Message;
use fillwright::message::keys::contents as keys;
use fillwright::tank::LevelReading;

/// How a level can have been read.
const LEVEL_READINGS: [(LevelReading, &str, Message); 3] = [
    (LevelReading::Gauge, "gauge", keys::BY_GAUGE),
    (LevelReading::Counted, "counted", keys::COUNTED),
    (LevelReading::Brimmed, "brimmed", keys::BRIMMED),
];
