//! A curve of power over engine speed.

use thiserror::Error;
use uom::si::angular_velocity::radian_per_second;
use uom::si::power::watt;
use uom::si::pressure::pascal;
use uom::si::torque::newton_meter;

use super::parabola::Parabola;
use crate::quantity::{AngularVelocity, CrankPower, GaugePressure, Power, Pressure, Torque};

/// Why points are no curve.
#[derive(Clone, Copy, Debug, Error, PartialEq, Eq)]
#[error("{self:?}")]
pub enum PowerCurveError {
    /// Fewer than two different engine speeds.
    TooFew {
        /// How many there are.
        given: usize,
    },
    /// A speed or a torque that is not above zero, or no number.
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

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;
    use uom::si::angular_velocity::revolution_per_minute;
    use uom::si::power::{horsepower, kilowatt};
    use uom::si::pressure::bar;

    fn rpm(value: f64) -> AngularVelocity {
        AngularVelocity::new::<revolution_per_minute>(value)
    }

    fn point(speed: f64, torque: f64, boost: Option<f64>) -> CurvePoint {
        let gauge = |value| GaugePressure::new(Pressure::new::<bar>(value));
        CurvePoint {
            speed: rpm(speed),
            torque: Torque::new::<newton_meter>(torque),
            boost: boost.map(gauge),
        }
    }

    /// Up to 400 N m at 3000, flat to 5000, falling to 320 at 7000.
    fn curve() -> PowerCurve {
        PowerCurve::new(vec![
            point(5000.0, 400.0, Some(1.2)),
            point(2000.0, 300.0, Some(0.5)),
            point(7000.0, 320.0, None),
            point(3000.0, 400.0, Some(1.5)),
        ])
        .unwrap()
    }

    fn torque_at(curve: &PowerCurve, speed: f64) -> Option<f64> {
        curve.torque_at(rpm(speed)).map(|torque| torque.get::<newton_meter>())
    }

    // 450 N m at 6000 rpm are 282.743 kW, and 657.3147 N m at 6500 are 600 hp: P = T n /
    // 9549.2966, and the horsepower of 550 ft lbf/s (uom's is rounded to 745.6999 W).
    #[test]
    fn power_is_torque_times_speed() {
        let power = point(6000.0, 450.0, None).power().get();
        assert_relative_eq!(power.get::<kilowatt>(), 282.743_339, max_relative = 1e-8);
        let power = point(6500.0, 657.3147, None).power().get();
        assert_relative_eq!(power.get::<horsepower>(), 600.0, max_relative = 1e-6);
    }

    #[test]
    fn between_points_torque_is_straight_and_outside_unknown() {
        let curve = curve();
        assert_relative_eq!(torque_at(&curve, 2500.0).unwrap(), 350.0, max_relative = 1e-12);
        assert_relative_eq!(torque_at(&curve, 6000.0).unwrap(), 360.0, max_relative = 1e-12);
        assert_eq!(torque_at(&curve, 2000.0), Some(300.0));
        assert_eq!(torque_at(&curve, 7000.0), Some(320.0));
        assert_eq!((torque_at(&curve, 1999.0), torque_at(&curve, 7001.0)), (None, None));
        assert_eq!(torque_at(&curve, f64::NAN), None);
        let boost = |speed| curve.boost_at(rpm(speed)).map(|it| it.get().get::<bar>());
        assert_relative_eq!(boost(4000.0).unwrap(), 1.35, max_relative = 1e-12);
        assert_eq!(boost(6000.0), None);
        let power = curve.power_at(rpm(6000.0)).unwrap().get().get::<kilowatt>();
        assert_relative_eq!(power, 360.0 * 6000.0 / 9_549.296_585_5, max_relative = 1e-10);
    }

    // Torque falls from 400 by 0.04 N m for each rpm above 5000: 600 - 0.04 n. Power is
    // highest where 600 - 0.08 n = 0, at 7500: beyond the curve, so at its end.
    #[test]
    fn peaks_by_hand() {
        let peak = curve().peak_torque();
        assert_eq!((peak.speed, peak.value), (rpm(3000.0), Torque::new::<newton_meter>(400.0)));
        let peak = curve().peak_power();
        assert_relative_eq!(
            peak.speed.get::<revolution_per_minute>(),
            7000.0,
            max_relative = 1e-12
        );
        // Torque 800 - 0.1 n: power is highest where 800 - 0.2 n = 0, at 4000 with 400.
        let falling =
            PowerCurve::new(vec![point(3500.0, 450.0, None), point(5000.0, 300.0, None)]).unwrap();
        let peak = falling.peak_power();
        assert_relative_eq!(peak.speed.get::<revolution_per_minute>(), 4000.0, max_relative = 1e-9);
        let expected = 400.0 * 4000.0 / 9_549.296_585_5;
        assert_relative_eq!(peak.value.get().get::<kilowatt>(), expected, max_relative = 1e-9);
    }

    #[test]
    fn points_of_one_speed_count_as_their_mean() {
        let twice = PowerCurve::new(vec![
            point(3000.0, 400.0, Some(1.0)),
            point(2000.0, 300.0, None),
            point(3000.0, 420.0, None),
        ])
        .unwrap();
        assert_eq!(twice.points().len(), 2);
        assert_eq!(torque_at(&twice, 3000.0), Some(410.0));
        assert_eq!(twice.points()[1].boost, point(1.0, 1.0, Some(1.0)).boost);
    }

    #[test]
    fn what_is_no_curve_is_refused() {
        let new = PowerCurve::new;
        assert_eq!(new(vec![]), Err(PowerCurveError::TooFew { given: 0 }));
        let once = point(3000.0, 400.0, None);
        assert_eq!(new(vec![once, once]), Err(PowerCurveError::TooFew { given: 1 }));
        for wrong in [
            point(0.0, 400.0, None),
            point(4000.0, 0.0, None),
            point(4000.0, -1.0, None),
            point(f64::NAN, 400.0, None),
            point(4000.0, f64::INFINITY, None),
            point(4000.0, 400.0, Some(f64::NAN)),
        ] {
            assert_eq!(new(vec![once, wrong]), Err(PowerCurveError::NotPositive { point: 2 }));
        }
    }

    #[test]
    fn samples_are_evenly_spaced_and_on_the_curve() {
        let samples = curve().sampled(11);
        assert_eq!((samples.len(), curve().sampled(0).len()), (11, 2));
        for (step, sample) in samples.iter().enumerate() {
            let speed = 2000.0 + 500.0 * f64::from(u32::try_from(step).unwrap());
            let sampled = sample.speed.get::<revolution_per_minute>();
            assert_relative_eq!(sampled, speed, max_relative = 1e-12);
            assert_eq!(Some(sample.torque), curve().torque_at(sample.speed));
        }
        assert_eq!(samples.last().map(|it| it.speed), Some(rpm(7000.0)));
        let half = curve().scaled(0.5).unwrap();
        assert_eq!(torque_at(&half, 4000.0), Some(200.0));
        assert!(curve().scaled(0.0).is_err());
    }
}
