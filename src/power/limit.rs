use uom::si::angular_velocity::radian_per_second;
use uom::si::power::watt;
use uom::si::torque::newton_meter;

use super::curve::{Peak, PowerCurve};
use super::parabola::Parabola;
use crate::quantity::{AngularVelocity, CrankPower, Power, Torque};

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
                Some((excess.above_zero()?, excess.highest()))
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
