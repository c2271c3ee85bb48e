//! What is in the tank now, and how sure that is, from all that was logged.
//!
//! A bank of extended Kalman filters over level, share, consumption, gauge bias,
//! the pump's offset and the sensor's bias gives the bands; hard bounds run beside
//! it. Neither knows a clock or a random source: the same evidence in the same
//! order gives the same estimate, so an edit of the log is a replay.

mod doubt;
mod envelope;
mod evidence;
mod extras;
mod figures;
mod fill;
mod filter;
mod gaussian;
mod mixture;
mod normal;
mod octane_floor;
mod prior;
mod reach;
mod reading;
mod unlogged;
mod vehicle;

pub use doubt::Doubt;
pub use evidence::{Evidence, Pour, ShareReading, ShareReadingKind};
pub(super) use figures::figures;
pub use vehicle::Vehicle;

use uom::si::volume::liter;

use super::CLICK_ERROR_L;
use crate::fuel::{Content, Extras, MolarDensity};
use crate::quantity::{Band, Share, Volume};
use envelope::Envelope;
use extras::Beside;
use filter::{LevelRead, Moments, dispenser_variance};
use mixture::Bank;
use octane_floor::Floor;
use reading::{HARD, LEAST_SD};
use unlogged::KnownFuels;
use vehicle::Car;

/// What is thought of the tank, from the evidence taken in so far.
///
/// ```
/// use fillwright::quantity::{Band, Share, Volume};
/// use fillwright::tank::{Estimator, Evidence, Pour, Vehicle};
/// use uom::si::volume::liter;
/// let litres = |value| Volume::new::<liter>(value);
/// let percent = Share::from_percent;
/// let mut estimator = Estimator::new(Vehicle {
///     capacity: litres(60.0),
///     consumption: None,
///     reference: percent(5.0)?,
/// });
/// // Anything may be in it: the doubtless part is what is poured now.
/// let e85 = Pour {
///     volume: litres(50.0),
///     share: Band::new(percent(70.0)?, percent(77.0)?, percent(84.0)?)?,
///     extras: fillwright::fuel::Extras::default(),
///     ron: None,
///     mon: None,
/// };
/// let doubt = estimator.take(&Evidence::Fill { pours: vec![e85], clicked: true });
/// assert_eq!(doubt, None);
/// let estimate = estimator.estimate();
/// assert!(estimate.level.low() > litres(58.0));
/// assert!(estimate.share.low() > percent(50.0)?);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Debug)]
pub struct Estimator {
    car: Car,
    bank: Bank,
    envelope: Envelope,
    extras: Beside,
    ron: Floor,
    mon: Floor,
    fuels: KnownFuels,
    latest: Latest,
    density: MolarDensity,
}

/// What was logged last of the level.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Latest {
    /// Nothing yet.
    Nothing,
    /// A level or a fill: what was burned since, nobody logged.
    Level,
    /// Driving or a drain.
    Use,
}

/// What is in the tank.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Estimate {
    /// The level: it lies in the band with 95 % probability.
    pub level: Band<Volume>,
    /// The ethanol share: it lies in the band with 95 % probability.
    pub share: Band<Share>,
    /// What the evidence leaves possible of the level.
    pub possible_level: Band<Volume>,
    /// What the evidence leaves possible of the share.
    pub possible_share: Band<Share>,
    /// What may be in it beside petrol and ethanol, and what is expected.
    pub extras: Extras,
    /// Research octane number, at least: low at the worst end of the bands. None
    /// while that of a part is unknown.
    pub ron: Option<Band<f64>>,
    /// Motor octane number, likewise.
    pub mon: Option<Band<f64>>,
}

impl Estimate {
    /// What the fuel in the tank may be made of.
    pub fn content(&self) -> Content {
        Content { ethanol: self.share, extras: self.extras }
    }
}

fn litres(volume: Volume) -> f64 {
    // Also takes what is not a number for none.
    volume.get::<liter>().max(0.0)
}

fn volume(litres: f64) -> Volume {
    Volume::new::<liter>(litres)
}

/// The 95 % band, cut to what is possible where it then still holds what is
/// expected.
fn cut(band: Band<f64>, possible: &Band<f64>) -> Band<f64> {
    let low = band.low().max(possible.low());
    let high = band.high().min(possible.high());
    Band::new(low, band.expected(), high).unwrap_or(band)
}

impl Estimator {
    /// Nothing is known: any level, any share.
    pub fn new(vehicle: Vehicle) -> Self {
        let car = Car::new(&vehicle);
        Self {
            bank: Bank::new(&car),
            envelope: Envelope::new(&car),
            extras: Beside::default(),
            ron: Floor::Unknown,
            mon: Floor::Unknown,
            fuels: KnownFuels::default(),
            latest: Latest::Nothing,
            density: MolarDensity::default(),
            car,
        }
    }

    /// Takes in a piece of evidence. What does not fit with what was known is
    /// returned as a doubt and not decided: both stay possible.
    pub fn take(&mut self, evidence: &Evidence) -> Option<Doubt> {
        match evidence {
            Evidence::Fill { pours, clicked } => self.fill(pours, *clicked),
            Evidence::Level { level, reading, error } => {
                let doubt = self.level(*level, *reading, *error);
                self.latest = Latest::Level;
                doubt
            }
            Evidence::Share(reading) => self.share(reading),
            Evidence::Drive { distance } => {
                match self.car.petrol_for(*distance) {
                    Some(petrol) => {
                        self.bank.each(|filter| filter.drive(&self.car, petrol));
                        self.envelope.drive(&self.car, petrol);
                    }
                    None => self.use_unknown(),
                }
                self.latest = Latest::Use;
                None
            }
            Evidence::Burned { volume } => {
                let counted = litres(*volume);
                self.bank.each(|filter| filter.count(&self.car, counted));
                self.envelope.count(&self.car, counted);
                self.latest = Latest::Use;
                None
            }
            Evidence::Drain { volume } => {
                self.drain(*volume);
                self.latest = Latest::Use;
                None
            }
            Evidence::State { level, share, extras, ron, mon } => {
                self.correct(level, share);
                self.extras.correct(*extras);
                let empty = litres(level.high()) <= 0.0;
                (self.ron, self.mon) = if empty {
                    (Floor::Nothing, Floor::Nothing)
                } else {
                    (Floor::given(*ron), Floor::given(*mon))
                };
                self.latest = Latest::Level;
                None
            }
        }
    }

    /// What is in the tank now.
    pub fn estimate(&self) -> Estimate {
        let level = self.bank.level_band(&self.car);
        let share = self.share_band();
        let possible_level = self.envelope.level_about(level.expected());
        let possible_share = self.envelope.share_about(share.expected());
        Estimate {
            level: cut(level, &possible_level).map(volume),
            share: share.map(Share::clamped),
            possible_level: possible_level.map(volume),
            possible_share: possible_share.map(Share::clamped),
            extras: self.extras.now(),
            ron: self.ron.band(),
            mon: self.mon.band(),
        }
    }

    /// The share, 95 %, within what is possible.
    fn share_band(&self) -> Band<f64> {
        let share = self.bank.share_band();
        cut(share, &self.envelope.share_about(share.expected()))
    }

    fn use_unknown(&mut self) {
        self.bank.each(|filter| filter.use_unknown(f64::INFINITY));
        self.envelope.use_unknown();
    }

    fn drain(&mut self, drained: Option<Volume>) {
        if let Some(drained) = drained {
            let taken = litres(drained);
            let variance = (CLICK_ERROR_L.value * 0.5).powi(2) + dispenser_variance(taken);
            self.bank.each(|filter| filter.drain(&self.car, taken, variance));
            let error = HARD * variance.sqrt();
            self.envelope.take_out(&self.car, [(taken - error).max(0.0), taken + error]);
        } else {
            let variance = CLICK_ERROR_L.value.powi(2);
            let empty = LevelRead { litres: 0.0, variance, by_gauge: false };
            self.bank.each(|filter| filter.set_level(&self.car, &empty));
            self.envelope.empty(&self.car, HARD * CLICK_ERROR_L.value);
            (self.ron, self.mon) = (Floor::Nothing, Floor::Nothing);
        }
    }

    fn correct(&mut self, level: &Band<Volume>, share: &Band<Share>) {
        let (level, share) = (level.map(litres), share.map(Share::fraction));
        // The ends are taken for those of a 95 % band.
        let moments = |band: &Band<f64>, least: f64| {
            let sd = ((band.high() - band.low()) / 4.0).max(least);
            Moments { mean: band.expected(), variance: sd * sd }
        };
        let (of_level, of_share) = (moments(&level, LEAST_SD.0), moments(&share, LEAST_SD.1));
        self.bank.each(|filter| filter.correct(&self.car, of_level, of_share));
        self.envelope.correct(&self.car, [level.low(), level.high()], [share.low(), share.high()]);
    }
}
