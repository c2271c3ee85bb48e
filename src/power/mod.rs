//! What an engine gives: at the crank and at the wheels, in which air, and over
//! engine speed.

mod correction;
mod curve;
mod driveline;
mod gain;
mod humid_air;
mod limit;
mod parabola;

pub use correction::{AirCorrection, is_in_usual_range};
pub use curve::{CurvePoint, Peak, PowerCurve, PowerCurveError};
pub use driveline::{DrivelineLoss, DrivelineLossError};
pub(crate) use driveline::{add_on, at_crank};
pub use gain::{BandGain, Gain, PeakChange, compare};
pub use humid_air::{
    AmbientAir, AmbientAirError, VAPOUR_PRESSURE_SOURCE, saturation_vapour_pressure,
};
pub use limit::{Crossing, Limit, LimitOf};
