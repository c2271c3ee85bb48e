//! Quantities as the person wants to read them.

use super::document::{Entry, Settings};
use crate::quantity::notation::{
    Consumption, Decimals, DecimalMark, Style, UnitSystem, VolumeField, parse_consumption,
    parse_price, parse_volume, print_consumption, print_distance, print_number, print_price,
    print_volume,
};
use crate::quantity::{Band, Length, Money, Share, UnitPrice, Volume};

/// Narrow no-break space: joins a number to its unit.
const THIN: char = '\u{202f}';

/// Prints quantities in the units, the decimal mark and the currency chosen.
#[derive(Clone, Debug, PartialEq)]
pub struct Printer {
    /// The units.
    pub system: UnitSystem,
    /// The decimal mark.
    pub style: Style,
    /// The currency's sign or name.
    pub currency: String,
}

/// What an entry measures, for printing it in other units.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Measure {
    /// A volume.
    Volume,
    /// A price per volume.
    Price,
    /// Fuel over distance.
    Consumption,
}

impl Printer {
    /// A printer for these settings; `device` is the decimal mark of the device.
    pub fn new(settings: &Settings, device: DecimalMark) -> Self {
        Self {
            system: settings.system,
            style: Style { decimal: settings.decimal.unwrap_or(device) },
            currency: settings.currency.clone(),
        }
    }

    /// A number with so many decimals.
    pub fn number(&self, value: f64, decimals: usize) -> String {
        print_number(value, decimals, self.style)
    }

    /// A volume: tenths, which is finer than a person can pump.
    pub fn volume(&self, volume: Volume) -> String {
        print_volume(volume, self.system.volume(), 1, self.style)
    }

    /// The number of a volume without its unit.
    pub fn volume_number(&self, volume: Volume) -> String {
        self.number(self.system.volume().value_of(volume), 1)
    }

    /// A share in percent, whole.
    pub fn percent(&self, share: Share) -> String {
        format!("{}{THIN}%", self.number(share.percent(), 0))
    }

    /// A share as a grade: `E30`.
    pub fn grade(&self, share: Share) -> String {
        format!("E{}", self.number(share.percent(), 0))
    }

    /// A band of shares as grades.
    pub fn grade_band(&self, band: Band<Share>) -> String {
        format!("{} to {}", self.grade(band.low()), self.grade(band.high()))
    }

    /// A sum of money.
    pub fn money(&self, money: Money) -> String {
        let amount = self.number(money.amount(), 2);
        if self.currency.is_empty() { amount } else { format!("{amount}{THIN}{}", self.currency) }
    }

    /// A price per volume.
    pub fn price(&self, price: UnitPrice) -> String {
        let unit = self.system.volume();
        let amount = self.number(price.of(unit.quantity(1.0)).amount(), 3);
        let currency =
            if self.currency.is_empty() { String::new() } else { format!("{THIN}{}", self.currency) };
        format!("{amount}{currency}/{}", unit.symbol())
    }

    /// A distance, whole.
    pub fn distance(&self, distance: Length) -> String {
        print_distance(distance, self.system.distance(), 0, self.style)
    }

    /// A consumption.
    pub fn consumption(&self, consumption: Consumption) -> String {
        print_consumption(consumption, self.system.consumption(), 1, self.style)
    }

    /// What to show in an entry's field: the text as typed, or, when it was typed
    /// in other units and means something else in these, its value in these.
    /// A text that cannot be read is shown as it is.
    pub fn shown(&self, entry: &Entry, measure: Measure) -> String {
        if entry.typed_in == self.system {
            return entry.text.clone();
        }
        let here = Decimals::UpTo(2);
        let (then, now) = (entry.typed_in, self.system);
        let reprinted = match measure {
            Measure::Volume => {
                let read = |unit| parse_volume(&entry.text, &VolumeField::anywhere(unit)).ok();
                match (read(then.volume()), read(now.volume())) {
                    (Some(meant), Some(same)) if meant == same => None,
                    (Some(meant), _) => {
                        Some(print_number(now.volume().value_of(meant), here, self.style))
                    }
                    // A fraction of the tank reads the same in any units.
                    (None, _) => None,
                }
            }
            Measure::Price => {
                let read = |unit| parse_price(&entry.text, unit).ok();
                match (read(then.volume()), read(now.volume())) {
                    (Some(meant), Some(same)) if meant == same => None,
                    (Some(meant), _) => {
                        let text = print_price(meant, now.volume(), Decimals::UpTo(3), self.style);
                        Some(text.split([THIN, '/']).next().unwrap_or_default().to_owned())
                    }
                    (None, _) => None,
                }
            }
            Measure::Consumption => {
                let read = |unit| parse_consumption(&entry.text, unit).ok();
                match (read(then.consumption()), read(now.consumption())) {
                    (Some(meant), Some(same)) if meant == same => None,
                    (Some(meant), _) => Some(print_number(
                        now.consumption().value_of(meant),
                        here,
                        self.style,
                    )),
                    (None, _) => None,
                }
            }
        };
        reprinted.unwrap_or_else(|| entry.text.clone())
    }
}
