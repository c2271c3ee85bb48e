//! Text to quantity and back, for people typing on a phone.
//!
//! Typed text is read strictly: where it has one meaning it is taken in any of
//! the usual spellings (decimal point or comma, unit or none), and where it has
//! two the answer is a question, never a guess. Printing undoes reading: what
//! is printed with [`Decimals::Exact`] reads back as the same quantity.

mod consumption;
mod measure;
mod money;
mod number;
mod octane;
mod share;
mod share_band;
mod style;
mod text;
mod units;
mod volume;
mod words;

pub use consumption::{Consumption, ConsumptionError, ConsumptionUnit};
pub use measure::{MeasureTextError, parse_consumption, parse_distance};
pub use money::{MoneyTextError, parse_money, parse_price};
pub use number::{NumberError, parse_number};
pub use octane::{OctaneFigure, OctaneTextError, parse_octane};
pub use share::{ShareTextError, parse_share};
pub use share_band::parse_share_band;
pub use style::{DecimalMark, Decimals, Style, print_number, print_number_short};
pub use units::{
    DistanceUnit, KILOMETRES_PER_MILE, LITRES_PER_IMPERIAL_GALLON, LITRES_PER_US_GALLON,
    UnitSystem, VolumeUnit,
};
pub use volume::{VolumeField, VolumeTextError, parse_volume};
