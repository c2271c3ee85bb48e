use thiserror::Error;
use uom::si::angular_velocity::radian_per_second;
use uom::si::power::watt;
use uom::si::pressure::pascal;
use uom::si::torque::newton_meter;

use super::parabola::Parabola;
use crate::quantity::{AngularVelocity, CrankPower, GaugePressure, Power, Pressure, Torque};

/// Why points are no curve.
#[derive(Clone, Copy, Debug, Error, PartialEq, Eq)]
pub enum PowerCurveError {
    /// Fewer than two different engine speeds.
    #[error("a curve needs at least two different engine speeds: {given} were given")]
    TooFew {
        /// How many there are.
        given: usize,
    },
    /// A speed or a torque that is not above zero, or no number.
    #[error("engine speed and torque must be above zero: point {point} is not")]
    NotPositive {
        /// Which point, counted from 1.
        point: usize,
    },
}

/// What an engine gives at one speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CurvePoint {
    /// Engine speed, above zero.
    pub speed: AngularVelocity,
    /// Torque at the crank, above zero.
    pub torque: Torque,
    /// Boost, where it was recorded.
    pub boost: Option<GaugePressure>,
}

impl CurvePoint {
    /// The power: torque times speed.
    pub fn power(&self) -> CrankPower {
        power(self.torque, self.speed)
    }
}

/// A largest value, and the engine speed at which it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Peak<T> {
    /// Where.
    pub speed: AngularVelocity,
    /// How much.
    pub value: T,
}

/// Torque at the crank over engine speed, straight between its points. It says
/// nothing of speeds outside them.
#[derive(Clone, Debug, PartialEq)]
pub struct PowerCurve {
    /// At least two, with rising speeds.
    points: Vec<CurvePoint>,
}

impl PowerCurve {
    /// A curve from its points in any order. Points of the same speed count as
    /// their mean.
    ///
    /// # Errors
    /// When there are fewer than two speeds, or a speed or a torque is not above
    /// zero.
    pub fn new(mut points: Vec<CurvePoint>) -> Result<Self, PowerCurveError> {
        for (index, point) in points.iter().enumerate() {
            let (speed, torque) = (radians(point.speed), newton_meters(point.torque));
            let boost = point.boost.is_none_or(|boost| pascals(boost).is_finite());
            let positive = |value: f64| value.is_finite() && value > 0.0;
            if !(positive(speed) && positive(torque) && boost) {
                return Err(PowerCurveError::NotPositive { point: index + 1 });
            }
        }
        points.sort_by(|left, right| radians(left.speed).total_cmp(&radians(right.speed)));
        let points: Vec<_> =
            points.chunk_by(|left, right| left.speed == right.speed).map(mean).collect();
        if points.len() < 2 {
            return Err(PowerCurveError::TooFew { given: points.len() });
        }
        Ok(Self { points })
    }

    /// The points, with rising speeds.
    pub fn points(&self) -> &[CurvePoint] {
        &self.points
    }

    /// The lowest and the highest speed.
    pub fn speeds(&self) -> (AngularVelocity, AngularVelocity) {
        let ends = (self.points.first(), self.points.last());
        let speed = |point: Option<&CurvePoint>| point.map(|it| it.speed).unwrap_or_default();
        (speed(ends.0), speed(ends.1))
    }

    /// The torque at a speed; nothing outside the curve.
    pub fn torque_at(&self, speed: AngularVelocity) -> Option<Torque> {
        self.between(speed, |point| Some(newton_meters(point.torque)))
            .map(Torque::new::<newton_meter>)
    }

    /// The power at a speed; nothing outside the curve.
    pub fn power_at(&self, speed: AngularVelocity) -> Option<CrankPower> {
        Some(power(self.torque_at(speed)?, speed))
    }

    /// The boost at a speed; nothing outside the curve, or where it was not
    /// recorded on both sides.
    pub fn boost_at(&self, speed: AngularVelocity) -> Option<GaugePressure> {
        self.between(speed, |point| point.boost.map(pascals))
            .map(|value| GaugePressure::new(Pressure::new::<pascal>(value)))
    }

    /// The most torque, at the lowest speed that has it.
    pub fn peak_torque(&self) -> Peak<Torque> {
        let peak = highest(self.torques());
        Peak { speed: peak.0, value: Torque::new::<newton_meter>(peak.1) }
    }

    /// The most power, at the lowest speed that has it. It can lie between two
    /// points: where torque falls in a straight line, power has its own summit.
    pub fn peak_power(&self) -> Peak<CrankPower> {
        let peak = highest(self.powers());
        Peak { speed: peak.0, value: CrankPower::new(Power::new::<watt>(peak.1)) }
    }

    /// The same curve with its torque, and so its power, times a factor above zero.
    ///
    /// # Errors
    /// When the factor leaves no torque.
    pub fn scaled(&self, factor: f64) -> Result<Self, PowerCurveError> {
        let scaled = |point: &CurvePoint| CurvePoint { torque: point.torque * factor, ..*point };
        Self::new(self.points.iter().map(scaled).collect())
    }

    /// So many points of the curve, evenly spaced from its lowest to its highest
    /// speed; at least these two.
    pub fn sampled(&self, count: usize) -> Vec<CurvePoint> {
        let (low, high) = self.speeds();
        let steps = count.max(2) - 1;
        (0..=steps)
            .filter_map(|step| {
                #[expect(clippy::cast_precision_loss, reason = "a chart has few points")]
                let part = step as f64 / steps as f64;
                // This form meets both ends exactly.
                let speed = low * (1.0 - part) + high * part;
                let speed = if step == steps { high } else { speed };
                let (torque, boost) = (self.torque_at(speed)?, self.boost_at(speed));
                Some(CurvePoint { speed, torque, boost })
            })
            .collect()
    }

    /// Torque in newton metres over speed in radians per second, piece by piece.
    pub(super) fn torques(&self) -> impl Iterator<Item = Parabola> {
        self.points.windows(2).filter_map(|pair| {
            let [before, after] = pair else { return None };
            let (low, high) = (radians(before.speed), radians(after.speed));
            let (first, last) = (newton_meters(before.torque), newton_meters(after.torque));
            let slope = (last - first) / (high - low);
            Some(Parabola { low, high, coefficients: [first - slope * low, slope, 0.0] })
        })
    }

    /// Power in watts over speed in radians per second, piece by piece.
    pub(super) fn powers(&self) -> impl Iterator<Item = Parabola> {
        self.torques().map(|torque| {
            let [at_rest, slope, _] = torque.coefficients;
            Parabola { coefficients: [0.0, at_rest, slope], ..torque }
        })
    }

    /// A value between the two points beside a speed.
    fn between(
        &self,
        speed: AngularVelocity,
        value: impl Fn(&CurvePoint) -> Option<f64>,
    ) -> Option<f64> {
        let after = self.points.partition_point(|point| point.speed < speed);
        let next = self.points.get(after)?;
        if next.speed == speed {
            return value(next);
        }
        let last = self.points.get(after.checked_sub(1)?)?;
        let part =
            (radians(speed) - radians(last.speed)) / (radians(next.speed) - radians(last.speed));
        let (from, to) = (value(last)?, value(next)?);
        let between = from + (to - from) * part;
        between.is_finite().then_some(between)
    }
}

/// The highest of several pieces that follow each other.
fn highest(pieces: impl Iterator<Item = Parabola>) -> (AngularVelocity, f64) {
    let peaks = pieces.map(|piece| piece.highest());
    let best = peaks.reduce(|best, peak| if peak.1 > best.1 { peak } else { best });
    let (speed, value) = best.unwrap_or_default();
    (AngularVelocity::new::<radian_per_second>(speed), value)
}

/// One point for several of the same speed.
fn mean(points: &[CurvePoint]) -> CurvePoint {
    let average = |values: Vec<f64>| {
        #[expect(clippy::cast_precision_loss, reason = "a table has few rows")]
        let count = values.len() as f64;
        values.iter().sum::<f64>() / count
    };
    let boosts: Vec<_> = points.iter().filter_map(|point| point.boost.map(pascals)).collect();
    CurvePoint {
        speed: points.first().map(|point| point.speed).unwrap_or_default(),
        torque: Torque::new::<newton_meter>(average(
            points.iter().map(|point| newton_meters(point.torque)).collect(),
        )),
        boost: (!boosts.is_empty())
            .then(|| GaugePressure::new(Pressure::new::<pascal>(average(boosts)))),
    }
}

fn power(torque: Torque, speed: AngularVelocity) -> CrankPower {
    CrankPower::new(Power::new::<watt>(newton_meters(torque) * radians(speed)))
}

fn radians(speed: AngularVelocity) -> f64 {
    speed.get::<radian_per_second>()
}

fn newton_meters(torque: Torque) -> f64 {
    torque.get::<newton_meter>()
}

fn pascals(boost: GaugePressure) -> f64 {
    boost.get().get::<pascal>()
}
