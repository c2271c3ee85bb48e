//! One extended Kalman filter: what is thought of the tank if strong fuels spread
//! so many times wider than their bands.

use super::gaussian::{
    Form, GAIN, GAUGE_BIAS, Gaussian, Innovation, LEVEL, SENSOR_BIAS, SHARE, STRONG_OFFSET,
};
use super::prior::{
    COUNTED_LEG_SD, Content, GAIN_SD, GAUGE_BIAS_SD, LASTING_PART, LASTING_TO_NEXT, LEG_SD,
    LEG_VARIANCE, SENSOR_BIAS_SD, STOOD, WEAK_SPREAD,
};
use super::vehicle::Car;
use crate::tank::DISPENSER_ERROR;

/// A level that was read, in litres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct LevelRead {
    /// What was read.
    pub(super) litres: f64,
    /// Its variance.
    pub(super) variance: f64,
    /// Whether by the gauge, which has a bias.
    pub(super) by_gauge: bool,
}

impl LevelRead {
    fn form(&self) -> Form<'static> {
        if self.by_gauge { &[(LEVEL, 1.0), (GAUGE_BIAS, 1.0)] } else { &[(LEVEL, 1.0)] }
    }
}

/// A share that was read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct ShareRead {
    /// What was read.
    pub(super) share: f64,
    /// Its variance.
    pub(super) variance: f64,
    /// Whether by the sensor, which has a bias.
    pub(super) by_sensor: bool,
}

impl ShareRead {
    fn form(&self) -> Form<'static> {
        if self.by_sensor { &[(SHARE, 1.0), (SENSOR_BIAS, 1.0)] } else { &[(SHARE, 1.0)] }
    }
}

/// Variance of what a dispenser gave, taken as even over its allowed error.
pub(super) fn dispenser_variance(litres: f64) -> f64 {
    (DISPENSER_ERROR.value * litres).powi(2) / 3.0
}

/// A Kalman filter over the six quantities.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Filter {
    state: Gaussian,
    spread: f64,
}

impl Filter {
    /// Any level, any share.
    pub(super) fn new(car: &Car, spread: f64) -> Self {
        let mean = [car.capacity / 2.0, 0.5, 1.0, 0.0, 0.0, 0.0];
        let variance = [
            car.capacity.powi(2) / 12.0,
            1.0 / 12.0,
            GAIN_SD.value.powi(2),
            (GAUGE_BIAS_SD.value * car.capacity).powi(2),
            spread * spread,
            SENSOR_BIAS_SD.value.powi(2),
        ];
        Self { state: Gaussian::independent(mean, variance), spread }
    }

    pub(super) fn level(&self) -> f64 {
        self.state.mean(LEVEL)
    }

    pub(super) fn share(&self) -> f64 {
        self.state.mean(SHARE)
    }

    pub(super) fn level_variance(&self) -> f64 {
        self.state.variance(LEVEL)
    }

    pub(super) fn share_variance(&self) -> f64 {
        self.state.variance(SHARE)
    }

    fn keep_in_tank(&mut self, car: &Car) {
        self.state.set_mean(LEVEL, self.level().clamp(0.0, car.capacity));
        self.state.set_mean(SHARE, self.share().clamp(0.0, 1.0));
    }

    /// Burns the energy of so many litres of petrol:
    /// `b = g petrol / (1 - c e)`, `V - b`.
    pub(super) fn drive(&mut self, car: &Car, petrol: f64) {
        let energy = (1.0 - car.ethanol_lacks * self.share()).max(f64::EPSILON);
        let at_unit_gain = petrol / energy;
        let burned = self.state.mean(GAIN) * at_unit_gain;
        let by_share = -burned * car.ethanol_lacks / energy;
        self.state.transform(LEVEL, &[(LEVEL, 1.0), (SHARE, by_share), (GAIN, -at_unit_gain)]);
        self.burn(car, burned, LEG_SD.value);
    }

    /// Burns what the trip computer counted: `b = g counted`, `V - b`.
    pub(super) fn count(&mut self, car: &Car, counted: f64) {
        self.state.transform(LEVEL, &[(LEVEL, 1.0), (GAIN, -counted)]);
        self.burn(car, self.state.mean(GAIN) * counted, COUNTED_LEG_SD.value);
    }

    fn burn(&mut self, car: &Car, burned: f64, sd: f64) {
        self.state.spread(LEVEL, (sd * burned).powi(2) + LEG_VARIANCE.value);
        self.state.set_mean(LEVEL, self.level() - burned);
        self.keep_in_tank(car);
    }

    /// Takes out so many litres, known with this variance.
    pub(super) fn drain(&mut self, car: &Car, litres: f64, variance: f64) {
        self.state.spread(LEVEL, variance);
        self.state.set_mean(LEVEL, self.level() - litres);
        self.keep_in_tank(car);
    }

    /// The level is anything from empty to what it was, but not above `most`:
    /// `V u` with u even over 0 to 1.
    pub(super) fn use_unknown(&mut self, most: f64) {
        let level = self.level();
        let top = level.min(most.max(0.0));
        let kept = if level > 0.0 { 0.5 * top / level } else { 0.5 };
        let square = (kept * 2.0).powi(2) * self.level_variance() + top * top;
        self.state.transform(LEVEL, &[(LEVEL, kept)]);
        let even = square / 3.0 - (0.5 * top).powi(2);
        self.state.spread(LEVEL, even - self.level_variance());
        self.state.set_mean(LEVEL, 0.5 * top);
    }

    /// Pours in so many litres of a fuel:
    /// `e' = (V e + x c) / (V + x)`, `V + x`.
    pub(super) fn pour(&mut self, car: &Car, litres: f64, content: &Content) {
        let (level, share) = (self.level(), self.share());
        let total = level + litres;
        if litres <= 0.0 || total <= 0.0 {
            return;
        }
        let sd = content.variance.sqrt();
        let lasting = if content.strong { LASTING_PART.value } else { 0.0 };
        let by_offset = sd * lasting.sqrt();
        let poured_share = content.mean + by_offset * self.state.mean(STRONG_OFFSET);
        let spread = if content.strong { self.spread } else { WEAK_SPREAD.value };
        let of_this_fill = content.variance * (1.0 - lasting) * spread * spread;

        let (kept, added) = (level / total, litres / total);
        let mixed = kept * share + added * poured_share;
        let by_level = (share - mixed) / total;
        let curve = self.curvature(by_level / total, added / total);
        self.state.transform(
            SHARE,
            &[(LEVEL, by_level), (SHARE, kept), (STRONG_OFFSET, added * by_offset)],
        );
        let dispenser = dispenser_variance(litres);
        let by_litres = (poured_share - mixed) / total;
        let noise = added * added * of_this_fill + by_litres * by_litres * dispenser;
        self.state.spread(SHARE, noise + curve);
        self.state.spread(LEVEL, dispenser);
        self.state.correlate(LEVEL, SHARE, by_litres * dispenser);
        self.state.set_mean(SHARE, mixed);
        self.state.set_mean(LEVEL, total);
        self.keep_in_tank(car);
        if content.strong {
            self.forget_a_little();
        }
    }

    /// What the second derivatives of the mixed share add to its variance:
    /// `d²e'/dV² = -2 (e - e') / W²`, `d²e'/dV de = x / W²`. They would move the mean as
    /// well, but what is expected is what comes of expected values, here as in a plan.
    fn curvature(&self, slope_by_level: f64, slope_by_share: f64) -> f64 {
        let level = self.state.variance(LEVEL);
        let share = self.state.variance(SHARE);
        let both = self.state.covariance(LEVEL, SHARE);
        let by_level = -2.0 * slope_by_level;
        let twice = by_level * by_level * level * level
            + 4.0 * by_level * slope_by_share * level * both
            + 2.0 * slope_by_share * slope_by_share * (level * share + both * both);
        0.5 * twice
    }

    /// The pump's offset drifts towards anything its spread allows.
    fn forget_a_little(&mut self) {
        let kept = LASTING_TO_NEXT.value;
        self.state.transform(STRONG_OFFSET, &[(STRONG_OFFSET, kept)]);
        self.state.spread(STRONG_OFFSET, (1.0 - kept * kept) * self.spread * self.spread);
        self.state.set_mean(STRONG_OFFSET, kept * self.state.mean(STRONG_OFFSET));
    }

    pub(super) fn level_innovation(&self, read: &LevelRead) -> Innovation {
        self.state.innovation(read.form(), read.litres, read.variance)
    }

    pub(super) fn share_innovation(&self, read: &ShareRead) -> Innovation {
        self.state.innovation(read.form(), read.share, read.variance)
    }

    pub(super) fn read_level(&mut self, car: &Car, read: &LevelRead) {
        self.state.measure(read.form(), read.litres, read.variance);
        self.keep_in_tank(car);
    }

    /// Takes in a level before which fuel may have been burned that nobody logged.
    pub(super) fn read_level_after_unknown_use(&mut self, car: &Car, read: &LevelRead) {
        let (mut stood, mut driven) = (*self, *self);
        driven.use_unknown(f64::INFINITY);
        let odds = (STOOD.value / (1.0 - STOOD.value)).ln()
            + stood.level_innovation(read).log_likelihood()
            - driven.level_innovation(read).log_likelihood();
        stood.read_level(car, read);
        driven.read_level(car, read);
        // The logistic function, the right way round for either sign.
        let probability = 1.0 / (1.0 + (-odds).exp());
        self.state = stood.state.or(probability, &driven.state);
        self.keep_in_tank(car);
    }

    pub(super) fn read_share(&mut self, car: &Car, read: &ShareRead) -> Innovation {
        let innovation = self.state.measure(read.form(), read.share, read.variance);
        self.keep_in_tank(car);
        innovation
    }

    /// Believes the level that was read and nothing else of it.
    pub(super) fn set_level(&mut self, car: &Car, read: &LevelRead) {
        // So wide that only the reading counts, and what it has in common with
        // the gauge's bias comes out as it should.
        let wide = 1e3 * (car.capacity * car.capacity + read.variance + 1.0);
        self.state.replace(LEVEL, read.litres, wide);
        self.read_level(car, read);
    }

    /// A fill that nobody logged: the share becomes `f e + (1 - f) c`, of which
    /// the moments are given.
    pub(super) fn mix_unlogged(&mut self, car: &Car, kept: Moments, content: Moments) {
        let square_of_rest = kept.variance + (1.0 - kept.mean).powi(2);
        let square_of_kept = kept.variance + kept.mean * kept.mean;
        let apart = self.share() - content.mean;
        let own = self.share_variance();
        let mixed = kept.mean * self.share() + (1.0 - kept.mean) * content.mean;
        self.state.transform(SHARE, &[(SHARE, kept.mean)]);
        self.state.spread(
            SHARE,
            (square_of_kept - kept.mean * kept.mean) * own
                + kept.variance * apart * apart
                + square_of_rest * content.variance,
        );
        self.state.set_mean(SHARE, mixed);
        self.keep_in_tank(car);
    }

    /// What is so with the given probability, and otherwise as in `other`.
    pub(super) fn or(&self, probability: f64, other: &Self) -> Self {
        Self { state: self.state.or(probability, &other.state), ..*self }
    }

    /// Replaces what is thought of the contents; what was learnt of car, gauge,
    /// sensor and pump stays.
    pub(super) fn correct(&mut self, car: &Car, level: Moments, share: Moments) {
        self.state.replace(LEVEL, level.mean, level.variance);
        self.state.replace(SHARE, share.mean, share.variance);
        self.keep_in_tank(car);
    }
}

/// A mean and a variance.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Moments {
    pub(super) mean: f64,
    pub(super) variance: f64,
}
