//! What is in the tank now, and how sure that is, from all that was logged.
//!
//! A bank of extended Kalman filters over level, share, consumption, gauge bias,
//! the pump's offset and the sensor's bias gives the bands; hard bounds run beside
//! it. Neither knows a clock or a random source: the same evidence in the same
//! order gives the same estimate, so an edit of the log is a replay.

mod doubt;
mod envelope;
mod evidence;
mod filter;
mod gaussian;
mod mixture;
mod normal;
mod octane_floor;
mod prior;
mod unlogged;
mod vehicle;

pub use doubt::Doubt;
pub use evidence::{Evidence, Pour, ShareReading, ShareReadingKind};
pub use vehicle::Vehicle;

use uom::si::volume::liter;

use super::{CLICK_ERROR_L, LevelReading};
use crate::fuel::MolarDensity;
use crate::quantity::{Band, Share, Volume};
use envelope::Envelope;
use filter::{LevelRead, Moments, ShareRead, dispenser_variance};
use mixture::Bank;
use octane_floor::{Floor, Part};
use prior::{Content, GAUGE_BIAS_SD, GAUGE_SD, GAUGE_STEP, MISREAD, SENSOR_BIAS_SD};
use unlogged::KnownFuels;
use vehicle::Car;

/// Deviations from which on a level does not fit with the log.
const LEVEL_GATE: f64 = 3.0;
/// Deviations from which on a share does not fit with the log.
const SHARE_GATE: f64 = 4.0;
/// What a share that does not fit still counts as.
const SHARE_COUNTS_AS: f64 = 3.0;
/// Deviations that hard bounds allow a reading.
const HARD: f64 = 3.0;
/// No reading is better than this: a thousandth of a litre, or of a point.
const LEAST_SD: (f64, f64) = (1e-3, 1e-5);

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
    /// Research octane number, at least: low at the worst end of the bands. None
    /// while that of a part is unknown.
    pub ron: Option<Band<f64>>,
    /// Motor octane number, likewise.
    pub mon: Option<Band<f64>>,
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
            Evidence::State { level, share, ron, mon } => {
                self.correct(level, share);
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

    fn level(
        &mut self,
        level: Volume,
        reading: LevelReading,
        error: Option<Volume>,
    ) -> Option<Doubt> {
        let capacity = self.car.capacity;
        let read = litres(level).min(capacity);
        let by_gauge = reading == LevelReading::Gauge;
        let own_error = litres(reading.error(volume(read), volume(capacity)));
        let (variance, half_step) = match (error, reading) {
            (Some(error), _) => ((litres(error) / 2.0).powi(2), 0.0),
            (None, LevelReading::Gauge) => {
                let step = GAUGE_STEP.value * capacity;
                ((GAUGE_SD.value * capacity).powi(2) + step * step / 12.0, step / 2.0)
            }
            (None, LevelReading::Counted) => ((own_error / 2.0).powi(2), 0.0),
            (None, LevelReading::Brimmed) => (own_error.powi(2), 0.0),
        };
        let variance = variance.max(LEAST_SD.0.powi(2));
        let bias = if by_gauge { GAUGE_BIAS_SD.value * capacity } else { 0.0 };
        let noise = match (error, by_gauge) {
            (None, true) => GAUGE_SD.value * capacity,
            _ => variance.sqrt(),
        };
        let read = LevelRead { litres: read, variance, by_gauge };
        self.read_level(&read, HARD * (noise + bias) + half_step)
    }

    /// Takes in a level; `largest_error` is that of the hard bounds.
    fn read_level(&mut self, read: &LevelRead, largest_error: f64) -> Option<Doubt> {
        let innovation = self.bank.level_innovation(read);
        let limit = LEVEL_GATE * innovation.variance.sqrt();
        let nothing_logged = self.latest == Latest::Level;
        let doubt = if innovation.residual > limit {
            Some(Doubt::UnloggedFill { volume: volume(innovation.residual) })
        } else if innovation.residual < -limit && !nothing_logged {
            Some(Doubt::UnloggedUse { volume: volume(-innovation.residual) })
        } else {
            None
        };
        match doubt {
            Some(Doubt::UnloggedFill { .. }) => {
                let added = innovation.residual;
                let (kept, content) = self.fuels.unlogged_fill(&self.car, added);
                self.bank.each(|filter| {
                    let logged = *filter;
                    filter.set_level(&self.car, read);
                    filter.mix_unlogged(&self.car, kept, content);
                    *filter = logged.or(MISREAD.value, filter);
                });
                self.ron = self.ron.or_mixed_with(self.fuels.least_ron());
                self.mon = self.mon.or_mixed_with(self.fuels.least_mon());
                self.envelope.doubt_log();
            }
            Some(_) => self.bank.each(|filter| {
                let logged = *filter;
                filter.set_level(&self.car, read);
                *filter = logged.or(MISREAD.value, filter);
            }),
            None if nothing_logged => {
                self.bank.each(|filter| filter.read_level_after_unknown_use(&self.car, read));
            }
            None => self.bank.each(|filter| filter.read_level(&self.car, read)),
        }
        if nothing_logged {
            self.envelope.use_unknown();
        }
        self.envelope.read_level(&self.car, read.litres, largest_error);
        doubt
    }

    fn share(&mut self, reading: &ShareReading) -> Option<Doubt> {
        let by_sensor = reading.kind == ShareReadingKind::Sensor;
        let sd = reading.standard_error.fraction().max(LEAST_SD.1);
        let share = reading.share.fraction();
        let mut read = ShareRead { share, variance: sd * sd, by_sensor };
        let innovation = self.bank.share_innovation(&read);
        let square = innovation.residual * innovation.residual;
        let contradicts = square > SHARE_GATE * SHARE_GATE * innovation.variance;
        let doubt = contradicts.then(|| {
            let expected =
                cut(self.bank.share_band(), &self.envelope.share_about(self.bank.share()));
            Doubt::ShareContradicts { expected: expected.map(Share::clamped), read: reading.share }
        });
        if contradicts {
            read.variance += square / (SHARE_COUNTS_AS * SHARE_COUNTS_AS) - innovation.variance;
        }
        self.bank.read_share(&self.car, &read);
        let bias = if by_sensor { SENSOR_BIAS_SD.value } else { 0.0 };
        self.envelope.read_share(&self.car, share, HARD * (sd + bias));
        doubt
    }

    fn fill(&mut self, pours: &[Pour], clicked: bool) -> Option<Doubt> {
        let poured: f64 = pours.iter().map(|pour| litres(pour.volume)).sum();
        if poured <= 0.0 && !clicked {
            return None;
        }
        let doubt = self.room_for(pours, poured, clicked);
        let before = self.clone();
        for pour in pours {
            let (amount, content) = (litres(pour.volume), Content::of(&pour.share));
            self.bank.each(|filter| filter.pour(&self.car, amount, &content));
            self.envelope.pour(&self.car, amount, &pour.share);
            self.fuels.remember(&content, pour, amount);
        }
        (self.ron, self.mon) = (
            before.floor(self.ron, pours, |pour| pour.ron),
            before.floor(self.mon, pours, |pour| pour.mon),
        );
        self.latest = Latest::Level;
        doubt
    }

    /// The octane of the contents, of which this is that before, after the pours.
    fn floor(&self, own: Floor, pours: &[Pour], of: fn(&Pour) -> Option<f64>) -> Floor {
        let poured = || pours.iter().filter(|pour| litres(pour.volume) > 0.0);
        if own == Floor::Unknown || poured().any(|pour| of(pour).is_none()) {
            return Floor::Unknown;
        }
        let level = self.bank.level_band(&self.car);
        let share = self.share_band().map(Share::clamped);
        let mut parts = vec![Part::new(level, share, own, &self.density)];
        parts.extend(poured().map(|pour| {
            let amount = Band::exact(litres(pour.volume));
            Part::new(amount, pour.share, Floor::given(of(pour)), &self.density)
        }));
        Floor::of_mixture(&parts)
    }

    /// What a fill tells of the level before it: at the click there was room for
    /// just that much, and otherwise for no less.
    fn room_for(&mut self, pours: &[Pour], poured: f64, clicked: bool) -> Option<Doubt> {
        let click = CLICK_ERROR_L.value;
        let room = self.car.capacity - poured;
        let dispensers: f64 =
            pours.iter().map(|pour| dispenser_variance(litres(pour.volume))).sum();
        let read = LevelRead {
            litres: room.max(0.0),
            variance: click * click + dispensers,
            by_gauge: false,
        };
        let largest_error = HARD * read.variance.sqrt();
        let overfull = (-room > largest_error).then(|| Doubt::Overfull { volume: volume(-room) });
        if clicked {
            let doubt = self.read_level(&read, largest_error);
            return overfull.or(doubt);
        }
        let over = self.bank.level() - room;
        if over <= 0.0 {
            return overfull;
        }
        if self.latest == Latest::Level {
            self.bank.each(|filter| filter.use_unknown(room));
            self.envelope.use_unknown();
            self.envelope.read_at_most(&self.car, room + largest_error);
            return overfull;
        }
        let misfit = self.read_level(&read, largest_error);
        overfull.or(misfit.map(|_| Doubt::Overfull { volume: volume(over) }))
    }
}
