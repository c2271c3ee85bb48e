//! Text to quantity and back, for people typing on a phone.
//!
//! Typed text is read strictly: where it has one meaning it is taken in any of
//! the usual spellings (decimal point or comma, unit or none), and where it has
//! two the answer is a question, never a guess. Printing undoes reading: what
//! is printed with [`Decimals::Exact`] reads back as the same quantity.

mod consumption;
mod number;
mod style;
mod text;
mod units;

pub use consumption::{Consumption, ConsumptionError, ConsumptionUnit};
pub use number::{NumberError, parse_number};
pub use style::{DecimalMark, Decimals, Style, print_number, print_number_short};
pub use units::{
    DistanceUnit, KILOMETRES_PER_MILE, LITRES_PER_IMPERIAL_GALLON, LITRES_PER_US_GALLON,
    UnitSystem, VolumeUnit,
};
