//! Text to quantity and back, for people typing on a phone.
//!
//! Typed text is read strictly: where it has one meaning it is taken in any of
//! the usual spellings (decimal point or comma, unit or none), and where it has
//! two the answer is a question, never a guess. Printing undoes reading: what
//! is printed with [`Decimals::Exact`] reads back as the same quantity.
//!
//! ```
//! use fillwright::quantity::notation::{
//!     Decimals, DecimalMark, Style, Units, VolumeField, VolumeUnit, parse_volume, print_volume,
//! };
//! let litre = VolumeUnit::Litre;
//! let field = VolumeField {
//!     units: Units::METRIC,
//!     tank: Some(litre.quantity(50.0)),
//!     consumption: None,
//!     largest: litre.quantity(60.0),
//!     part_is_usual: true,
//! };
//! let level = parse_volume("1/4", &field)?;
//! let style = Style { decimal: DecimalMark::Comma };
//! assert_eq!(print_volume(level, litre, 1, style), "12,5\u{202f}L");
//! # Ok::<(), fillwright::quantity::notation::VolumeTextError>(())
//! ```

mod distance;
mod entry;
pub mod hardware;
mod printer;

mod choice;
mod consumption;
#[cfg(test)]
mod corpus;
mod currency;
mod measure;
mod money;
mod number;
mod octane;
mod print;
mod share;
mod share_band;
mod signal;
mod style;
mod text;
mod units;
mod volume;
mod words;

pub use entry::Entry;
pub use measure::Measure;
pub use printer::Printer;

pub use crate::quantity::notation::hardware::{
    FigureTextError, InSi, QuantityField, Unit, parse_air_flow, parse_air_pressure, parse_angle,
    parse_boost, parse_density, parse_engine_speed, parse_factor, parse_fraction,
    parse_injector_flow, parse_lambda, parse_length, parse_line_length, parse_mass_flow,
    parse_power, parse_pressure, parse_pump_flow, parse_specific_consumption, parse_speed_range,
    parse_temperature, parse_time, parse_torque, parse_voltage,
};
pub use choice::{Choice, Choosable, MixtureScale, OctaneScale, Units, UnitsError};
pub use consumption::{Consumption, ConsumptionError, ConsumptionUnit};
pub use currency::{Currency, InCurrency, Rate};
pub use distance::{MeasureTextError, parse_consumption, parse_distance};
pub use money::{MoneyTextError, parse_money, parse_price};
pub use number::{NumberError, parse_number};
pub use octane::{OctaneFigure, OctaneTextError, parse_octane};
pub use print::{
    outwards, print_consumption, print_distance, print_money, print_octane, print_percent,
    print_price, print_share, print_share_band, print_volume, round_down, round_up,
};
pub use share::{ShareTextError, parse_share};
pub use share_band::{ShareText, Spread, parse_part_band, parse_share_band, parse_share_text};
pub use signal::{
    SensorFigure, SignalTextError, parse_millilitres, parse_pulse_width, parse_sensor,
};
pub(crate) use style::plain;
pub use style::{DecimalMark, Decimals, Style, print_anew, print_number, print_number_short};
pub use units::{
    DistanceUnit, KILOMETRES_PER_MILE, LITRES_PER_IMPERIAL_GALLON, LITRES_PER_US_GALLON,
    UnitSystem, VolumeUnit,
};
pub use volume::{LevelText, VolumeField, VolumeTextError, parse_level, parse_volume};
