//! The limits of power and torque that must not be passed.

use uom::si::angular_velocity::radian_per_second;
use uom::si::power::watt;
use uom::si::torque::newton_meter;

use super::curve::{Peak, PowerCurve};
use super::parabola::Parabola;
use crate::quantity::{AngularVelocity, CrankPower, Power, Torque};

/// What arithmetic adds in the last digits, as a part of the limit.
const ROUNDING: f64 = 1e-12;

/// What must not be passed: by a gearbox, a clutch, a rod or a rule.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LimitOf {
    /// Power at the crank.
    Power(CrankPower),
    /// Torque at the crank.
    Torque(Torque),
}

/// A limit, and the engine speeds for which it holds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limit {
    /// What is limited, and to how much.
    pub of: LimitOf,
    /// The lowest and the highest speed at which it holds; all where there are none.
    pub speeds: Option<(AngularVelocity, AngularVelocity)>,
}

/// Where a curve passes a limit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Crossing {
    /// The lowest speed from which it is above.
    pub from: AngularVelocity,
    /// The highest speed to which it is above; in between it may dip below.
    pub to: AngularVelocity,
    /// Where it is worst, and by how much it is above there.
    pub worst: Peak<LimitOf>,
}

impl Limit {
    /// The most power that the limit leaves at a speed.
    pub fn power_at(&self, speed: AngularVelocity) -> CrankPower {
        match self.of {
            LimitOf::Power(most) => most,
            LimitOf::Torque(most) => CrankPower::new(Power::new::<watt>(
                most.get::<newton_meter>() * speed.get::<radian_per_second>(),
            )),
        }
    }

    /// The most torque that the limit leaves at a speed above zero.
    pub fn torque_at(&self, speed: AngularVelocity) -> Torque {
        match self.of {
            LimitOf::Torque(most) => most,
            LimitOf::Power(most) => Torque::new::<newton_meter>(
                most.get().get::<watt>() / speed.get::<radian_per_second>(),
            ),
        }
    }
    /// Where a curve passes the limit; nothing where it stays at or below it.
    pub fn crossed_by(&self, curve: &PowerCurve) -> Option<Crossing> {
        match self.of {
            LimitOf::Power(most) => {
                let most = most.get().get::<watt>();
                self.passed(curve.powers(), most, |excess| {
                    LimitOf::Power(CrankPower::new(Power::new::<watt>(excess)))
                })
            }
            LimitOf::Torque(most) => {
                let most = most.get::<newton_meter>();
                self.passed(curve.torques(), most, |excess| {
                    LimitOf::Torque(Torque::new::<newton_meter>(excess))
                })
            }
        }
    }

    fn passed(
        &self,
        pieces: impl Iterator<Item = Parabola>,
        most: f64,
        quantity: impl Fn(f64) -> LimitOf,
    ) -> Option<Crossing> {
        let (low, high) = self.speeds.map_or((f64::NEG_INFINITY, f64::INFINITY), |speeds| {
            (speeds.0.get::<radian_per_second>(), speeds.1.get::<radian_per_second>())
        });
        let above: Vec<_> = pieces
            .filter_map(|piece| {
                let excess = piece.within(low, high)?.less_constant(most);
                let highest = excess.highest();
                // A curve that touches the limit passes it by rounding alone.
                (highest.1 > ROUNDING * most.abs()).then_some((excess.above_zero()?, highest))
            })
            .collect();
        let (((from, _), _), ((_, to), _)) = (above.first()?, above.last()?);
        let worst = above.iter().map(|(_, peak)| *peak);
        let worst = worst.reduce(|worst, peak| if peak.1 > worst.1 { peak } else { worst })?;
        let speed = AngularVelocity::new::<radian_per_second>;
        Some(Crossing {
            from: speed(*from),
            to: speed(*to),
            worst: Peak { speed: speed(worst.0), value: quantity(worst.1) },
        })
    }
}

#[cfg(test)]
mod tests {
    use super::super::CurvePoint;
    use super::*;
    use approx::assert_relative_eq;
    use uom::si::angular_velocity::revolution_per_minute;
    use uom::si::power::kilowatt;

    fn rpm(value: f64) -> AngularVelocity {
        AngularVelocity::new::<revolution_per_minute>(value)
    }

    /// 300 N m at 2000, 500 at 4000, 400 at 6000, by straight lines.
    fn curve() -> PowerCurve {
        let point = |(speed, torque)| CurvePoint {
            speed: rpm(speed),
            torque: Torque::new::<newton_meter>(torque),
            boost: None,
        };
        let points = [(2000.0, 300.0), (4000.0, 500.0), (6000.0, 400.0)];
        PowerCurve::new(points.map(point).to_vec()).unwrap()
    }

    fn torque(most: f64, speeds: Option<(f64, f64)>) -> Limit {
        Limit {
            of: LimitOf::Torque(Torque::new::<newton_meter>(most)),
            speeds: speeds.map(|(low, high)| (rpm(low), rpm(high))),
        }
    }

    fn power(most: f64) -> Limit {
        let most = CrankPower::new(Power::new::<kilowatt>(most));
        Limit { of: LimitOf::Power(most), speeds: None }
    }

    fn is(crossing: &Crossing, from: f64, to: f64, worst: f64) {
        let speeds = [crossing.from, crossing.to, crossing.worst.speed];
        for (speed, expected) in speeds.into_iter().zip([from, to, worst]) {
            assert_relative_eq!(
                speed.get::<revolution_per_minute>(),
                expected,
                max_relative = 1e-9
            );
        }
    }

    // By hand: the rise passes 450 at 3500, the fall at 5000.
    #[test]
    fn torque_passes_a_limit() {
        let crossing = torque(450.0, None).crossed_by(&curve()).unwrap();
        is(&crossing, 3500.0, 5000.0, 4000.0);
        let LimitOf::Torque(excess) = crossing.worst.value else { panic!("a torque") };
        assert_relative_eq!(excess.get::<newton_meter>(), 50.0, max_relative = 1e-9);
        assert_eq!(torque(500.0, None).crossed_by(&curve()), None);
    }

    // Only the speeds of the limit count: 470 N m are passed at 3700 and 4600.
    #[test]
    fn a_limit_holds_for_its_speeds_alone() {
        let crossing = torque(470.0, Some((2500.0, 3900.0))).crossed_by(&curve()).unwrap();
        is(&crossing, 3700.0, 3900.0, 3900.0);
        assert_eq!(torque(470.0, Some((5000.0, 8000.0))).crossed_by(&curve()), None);
        assert_eq!(torque(470.0, Some((7000.0, 8000.0))).crossed_by(&curve()), None);
    }

    // Above 4000 torque is 700 - 0.05 n. 240 kW are 240 x 9549.2966 N m rpm: 0.05 n^2 -
    // 700 n + 2 291 831 = 0 has its lower root near 5221, its upper beyond 6000.
    #[test]
    fn power_passes_a_limit_between_points() {
        let crossing = power(240.0).crossed_by(&curve()).unwrap();
        let from = (700.0 - f64::sqrt(490_000.0 - 0.2 * 240.0 * 9_549.296_585_5)) / 0.1;
        is(&crossing, from, 6000.0, 6000.0);
        let LimitOf::Power(excess) = crossing.worst.value else { panic!("a power") };
        // 400 N m at 6000 rpm are 251.327 kW.
        assert_relative_eq!(excess.get().get::<kilowatt>(), 11.327_412, max_relative = 1e-6);
        assert_eq!(power(252.0).crossed_by(&curve()), None);
    }
}
