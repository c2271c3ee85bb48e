//! What readings of level and share tell, and when they do not fit with the log.

use super::doubt::Doubt;
use super::evidence::{ShareReading, ShareReadingKind};
use super::filter::{LevelRead, ShareRead};
use super::prior::{GAUGE_BIAS_SD, GAUGE_SD, GAUGE_STEP, MISREAD, SENSOR_BIAS_SD};
use super::{Estimator, Latest, litres, volume};
use crate::quantity::{Share, Volume};
use crate::tank::LevelReading;

/// Deviations from which on a level does not fit with the log.
pub(super) const LEVEL_GATE: f64 = 3.0;
/// Deviations from which on a share does not fit with the log.
const SHARE_GATE: f64 = 4.0;
/// What a share that does not fit still counts as.
const SHARE_COUNTS_AS: f64 = 3.0;
/// Deviations that hard bounds allow a reading.
pub(super) const HARD: f64 = 3.0;
/// No reading is better than this: a thousandth of a litre, or of a point.
pub(super) const LEAST_SD: (f64, f64) = (1e-3, 1e-5);

impl Estimator {
    pub(super) fn level(
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
    pub(super) fn read_level(&mut self, read: &LevelRead, largest_error: f64) -> Option<Doubt> {
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
                self.extras.doubt_log();
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

    pub(super) fn share(&mut self, reading: &ShareReading) -> Option<Doubt> {
        let by_sensor = reading.kind == ShareReadingKind::Sensor;
        let sd = reading.standard_error.fraction().max(LEAST_SD.1);
        let share = reading.share.fraction();
        let mut read = ShareRead { share, variance: sd * sd, by_sensor };
        let innovation = self.bank.share_innovation(&read);
        let square = innovation.residual * innovation.residual;
        let contradicts = square > SHARE_GATE * SHARE_GATE * innovation.variance;
        let doubt = contradicts.then(|| {
            let expected = self.share_band().map(Share::clamped);
            Doubt::ShareContradicts { expected, read: reading.share }
        });
        if contradicts {
            read.variance += square / (SHARE_COUNTS_AS * SHARE_COUNTS_AS) - innovation.variance;
        }
        self.bank.read_share(&self.car, &read);
        let bias = if by_sensor { SENSOR_BIAS_SD.value } else { 0.0 };
        self.envelope.read_share(&self.car, share, HARD * (sd + bias));
        doubt
    }
}
