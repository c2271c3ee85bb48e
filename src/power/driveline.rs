//! The loss of a driveline, between crank and wheels.

use thiserror::Error;

use uom::si::power::watt;

use crate::quantity::{Band, CrankPower, Power, WheelPower};
use crate::workings::Arithmetic;

/// The largest loss that is taken: what a driveline would turn into heat beyond
/// this would melt it.
const LARGEST: f64 = 0.4;

/// Why a share is no driveline loss.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub struct DrivelineLossError {
    /// The share of crank power given.
    pub given: f64,
}

/// What is lost between crank and wheels, as a share of the power at the crank.
///
/// The other convention adds a share of the power at the *wheels*: it is shown by
/// [`add_on`](Self::add_on) and never taken for this one. 10 % of crank is 11.1 %
/// as an add-on.
///
/// ```
/// use fillwright::power::DrivelineLoss;
/// use fillwright::quantity::Band;
/// let loss = DrivelineLoss::of_crank(Band::exact(0.10))?;
/// assert!((loss.add_on().expected() - 0.1111).abs() < 1e-4);
/// # Ok::<(), fillwright::power::DrivelineLossError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DrivelineLoss(Band<f64>);

impl DrivelineLoss {
    /// A loss as a share of crank power, 0 to 0.4, with its band.
    ///
    /// # Errors
    /// When the band leaves that range.
    pub fn of_crank(share: Band<f64>) -> Result<Self, DrivelineLossError> {
        for given in [share.low(), share.high()] {
            if !(0.0..=LARGEST).contains(&given) {
                return Err(DrivelineLossError { given });
            }
        }
        Ok(Self(share))
    }

    /// The share of crank power.
    pub fn share_of_crank(self) -> Band<f64> {
        self.0
    }

    /// The same loss as a share of wheel power: `l / (1 - l)`.
    pub fn add_on(self) -> Band<f64> {
        self.0.map(add_on)
    }

    /// The crank power behind a wheel power: `wheel / (1 - l)`.
    pub fn crank(self, wheel: WheelPower) -> Band<CrankPower> {
        self.0.map(|share| {
            let power = at_crank(wheel.get().get::<watt>(), share);
            CrankPower::new(Power::new::<watt>(power))
        })
    }

    /// The wheel power that a crank power leaves: `crank * (1 - l)`.
    pub fn wheel(self, crank: CrankPower) -> Band<WheelPower> {
        let at = |share: f64| WheelPower::new(crank.get() * (1.0 - share));
        let expected = at(self.0.expected());
        // A larger loss leaves less.
        Band::enclosing(expected, [at(self.0.high()), at(self.0.low())])
            .unwrap_or(Band::exact(expected))
    }
}

/// The power at the crank behind one at the wheels, by the loss as a share of crank
/// power: `P_w / (1 - l)`.
pub(crate) fn at_crank<A: Arithmetic>(wheel: A, loss: A) -> A {
    wheel / (A::literal(1.0) - loss)
}

/// A loss as a share of wheel power, from that of crank power: `l / (1 - l)`.
pub(crate) fn add_on<A: Arithmetic>(loss: A) -> A {
    loss.clone() / (A::literal(1.0) - loss)
}
