//! Text to quantity and back, for people typing on a phone.
//!
//! Typed text is read strictly: where it has one meaning it is taken in any of
//! the usual spellings (decimal point or comma, unit or none), and where it has
//! two the answer is a question, never a guess. Printing undoes reading: what
//! is printed with [`Decimals::Exact`] reads back as the same quantity.
//!
//! ```
//! use fillwright::quantity::notation::{
//!     DecimalMark, Decimals, LITRE, Style, Units, VolumeField, parse_volume,
//! };
//! let litre = LITRE;
//! let field = VolumeField {
//!     units: Units::METRIC,
//!     tank: Some(litre.quantity(50.0)),
//!     consumption: None,
//!     largest: litre.quantity(60.0),
//!     part_is_usual: true,
//! };
//! let level = parse_volume("1/4", &field)?;
//! let style = Style { decimal: DecimalMark::Comma };
//! assert_eq!(litre.print(level, 1, style), "12,5\u{202f}L");
//! # Ok::<(), fillwright::quantity::notation::VolumeTextError>(())
//! ```

mod choice;
mod choosable;
mod comparable;
#[cfg(test)]
mod corpus;
mod currency;
mod entry;
mod field;
mod figure;
mod measure;
mod money;
mod number;
mod number_error;
mod octane;
mod print;
mod printer;
pub mod quantities;
mod share;
mod share_band;
mod signal;
mod system;
mod text;
mod unit;
mod units;
mod volume;

pub use crate::quantity::style::{
    DecimalMark, Decimals, Style, print_anew, print_number, print_number_short,
};
pub use choice::{MixtureScale, OctaneScale, UnitsError};
pub use choosable::Choosable;
pub use currency::{Currency, InCurrency, Rate};
pub use entry::Entry;
pub use field::{FigureTextError, QuantityField};
pub use figure::{PETROL_GAUGE_RATIO, parse_factor, parse_fraction, parse_lambda};
pub use measure::Measure;
pub use money::{MoneyTextError, parse_money, parse_price};
pub use number::parse_number;
pub(crate) use number_error::MAX_CHARS;
pub use number_error::NumberError;
pub use octane::{OctaneFigure, OctaneTextError, parse_octane};
pub use print::{
    outwards, print_money, print_octane, print_percent, print_price, print_share, print_share_band,
    round_down, round_up,
};
pub use printer::Printer;
pub use quantities::{
    IMPERIAL_GALLON, KILOMETRE, KILOMETRES_PER_MILE, LITRE, LITRES_PER_IMPERIAL_GALLON,
    LITRES_PER_US_GALLON, MILE, US_GALLON,
};
pub use share::{ShareTextError, parse_share};
pub use share_band::{ShareText, Spread, parse_part_band, parse_share_band, parse_share_text};
pub use signal::{
    SensorFigure, SignalTextError, parse_millilitres, parse_pulse_width, parse_sensor,
};
pub use system::UnitSystem;
pub use unit::{InSi, Unit, UnitName};
pub use units::Units;
pub use volume::{LevelText, VolumeField, VolumeTextError, parse_level, parse_volume};
