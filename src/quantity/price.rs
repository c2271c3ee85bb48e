//! Money and the price of a unit of fuel.

use serde::{Deserialize, Serialize};
use std::ops::{Add, Mul};
use thiserror::Error;
use uom::si::volume::liter;

use super::Volume;

/// Why a number is not an amount of money or a price.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub struct MoneyError {
    /// The number that was given.
    pub given: f64,
}

/// An amount of money, zero or more, in the one currency that the person uses.
///
/// No currency is converted: the currency is only a label in the settings.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(try_from = "f64", into = "f64")]
pub struct Money(f64);

impl Money {
    /// An amount of money.
    ///
    /// # Errors
    /// When the amount is negative, infinite or not a number.
    pub fn new(amount: f64) -> Result<Self, MoneyError> {
        if amount.is_finite() && amount >= 0.0 {
            Ok(Self(amount))
        } else {
            Err(MoneyError { given: amount })
        }
    }

    /// The amount in units of the currency.
    pub fn amount(self) -> f64 {
        self.0
    }
}

impl TryFrom<f64> for Money {
    type Error = MoneyError;
    fn try_from(amount: f64) -> Result<Self, MoneyError> {
        Self::new(amount)
    }
}

impl From<Money> for f64 {
    fn from(money: Money) -> Self {
        money.0
    }
}

impl Add for Money {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

/// A price per volume of fuel.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd, Serialize, Deserialize)]
pub struct UnitPrice {
    per_liter: f64,
}

impl UnitPrice {
    /// What one `unit` of fuel costs.
    ///
    /// ```
    /// use fillwright::quantity::{Money, UnitPrice, Volume};
    /// use uom::si::volume::liter;
    /// // 7.57 for two US gallons, of 3.785 litres each.
    /// let price = UnitPrice::new(Money::new(7.57)?, Volume::new::<liter>(7.57));
    /// let cost = price * Volume::new::<liter>(10.0);
    /// assert!((cost.amount() - 10.0).abs() < 1e-9);
    /// # Ok::<(), fillwright::quantity::MoneyError>(())
    /// ```
    pub fn new(money: Money, unit: Volume) -> Self {
        Self { per_liter: money.0 / unit.get::<liter>() }
    }

    /// What the given volume of this fuel costs.
    pub fn of(self, volume: Volume) -> Money {
        Money(self.per_liter * volume.get::<liter>())
    }
}

impl Mul<Volume> for UnitPrice {
    type Output = Money;
    fn mul(self, volume: Volume) -> Money {
        self.of(volume)
    }
}
