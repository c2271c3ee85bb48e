//! The answer in rows and lines, as tables and charts show it.

use uom::si::angular_velocity::revolution_per_minute;

use super::answer::HardwareAnswer;
use super::curves::CurveRead;
use crate::hardware::{Load, LoadPoint};
use crate::quantity::{
    AngularVelocity, Band, CrankPower, GaugePressure, MassRate, Share, VolumeRate, WheelPower,
};

/// The step of engine speed between the rows of a table, in revolutions per minute.
const STEP_RPM: f64 = 500.0;

/// A speed with the power expected there, and the boost where it was recorded.
type Expected = (AngularVelocity, CrankPower, Option<GaugePressure>);

/// More rows than any engine has speeds of this step.
const MOST_ROWS: f64 = 100.0;

/// What the engine takes at one speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpeedRow {
    /// The speed.
    pub speed: AngularVelocity,
    /// The power at the crank.
    pub power: Band<CrankPower>,
    /// The power at the wheels, where the loss is known.
    pub wheel: Option<Band<WheelPower>>,
    /// Fuel by mass.
    pub fuel: Band<MassRate>,
    /// Fuel by volume.
    pub volume: Band<VolumeRate>,
    /// Fuel by the air that the engine breathes, where that is known.
    pub by_air: Option<ByAir>,
    /// Dry air.
    pub air: Band<MassRate>,
}

/// Fuel by the air that the engine breathes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ByAir {
    /// The fuel.
    pub fuel: MassRate,
    /// How far it lies above what power takes, relative to that; below zero under it.
    pub off: f64,
}

impl HardwareAnswer {
    /// What the engine takes at round speeds over a curve: the one that was asked.
    pub fn rows(&self, curve: &CurveRead) -> Vec<SpeedRow> {
        let (asked, Some(at_crank)) = (&self.asked, &curve.at_crank) else { return Vec::new() };
        let expected: Vec<Expected> = round_speeds(at_crank.speeds())
            .into_iter()
            .filter_map(|speed| Some((speed, at_crank.power_at(speed)?, at_crank.boost_at(speed))))
            .collect();
        let point = |(speed, power, boost): Expected| LoadPoint {
            speed,
            power: curve.crank(power),
            manifold: boost.or(asked.engine.boost).unwrap_or_default(),
        };
        let load =
            Load { points: expected.iter().copied().map(point).collect(), ..asked.load.clone() };
        let blends = asked.blends();
        let headroom = asked.parts.system.headroom(&load, &blends);
        let fuels = blends.map(|blend| blend.fuel);
        let points = load.points.iter().zip(&expected);
        points
            .zip(headroom.flows.iter().zip(&headroom.air))
            .map(|((point, (_, power, _)), (fuel, air))| {
                let expected = fuel.expected() / fuels.expected().density;
                let ends = [fuel.low() / fuels.low().density, fuel.high() / fuels.high().density];
                let by_air = asked.engine.breathing.map(|breathing| {
                    let route = breathing.route(point.manifold, asked.engine.ambient);
                    let lambda = asked.engine.demand.lambda;
                    let flow = route.fuel_flow(point.speed, lambda, &fuels.expected());
                    ByAir { fuel: flow, off: f64::from(flow / fuel.expected()) - 1.0 }
                });
                SpeedRow {
                    speed: point.speed,
                    power: point.power,
                    wheel: curve.wheel(*power),
                    fuel: *fuel,
                    volume: Band::enclosing(expected, ends).unwrap_or(Band::exact(expected)),
                    by_air,
                    air: *air,
                }
            })
            .collect()
    }

    /// The power that a part supports over the ethanol share; nothing where it has no
    /// figure.
    pub fn power_over_share(&self, part: usize) -> Vec<(Share, Option<Band<CrankPower>>)> {
        let peak = self.asked.load.peak_power();
        let power = |reserve: f64| CrankPower::new(peak.get() * (1.0 + reserve).max(0.0));
        let at = self.over_share.iter();
        at.map(|at| (at.share, at.reserves.get(part).copied().flatten().map(|it| it.map(power))))
            .collect()
    }
}

/// The round speeds of a range; its ends where there are fewer than two.
fn round_speeds((low, high): (AngularVelocity, AngularVelocity)) -> Vec<AngularVelocity> {
    let [from, to] = [low, high].map(|it| it.get::<revolution_per_minute>());
    // What arithmetic adds in the last digits decides nothing.
    let first = (from / STEP_RPM - 1e-9).ceil();
    let count = ((to / STEP_RPM + 1e-9).floor() - first + 1.0).clamp(0.0, MOST_ROWS);
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "clamped")]
    let steps = 0..count as u32;
    let rpm = |step: u32| (first + f64::from(step)) * STEP_RPM;
    let round: Vec<_> = steps
        .map(|step| AngularVelocity::new::<revolution_per_minute>(rpm(step)).max(low).min(high))
        .collect();
    if round.len() < 2 { vec![low, high] } else { round }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn speeds_are_round_and_inside_the_range() {
        let rpm = AngularVelocity::new::<revolution_per_minute>;
        let speeds = |low, high| -> Vec<i64> {
            let all = round_speeds((rpm(low), rpm(high))).into_iter();
            #[expect(clippy::cast_possible_truncation, reason = "engine speeds")]
            all.map(|it| it.get::<revolution_per_minute>().round() as i64).collect()
        };
        assert_eq!(speeds(2000.0, 3500.0), [2000, 2500, 3000, 3500]);
        assert_eq!(speeds(1870.0, 3120.0), [2000, 2500, 3000]);
        assert_eq!(speeds(2010.0, 2490.0), [2010, 2490]);
        assert_eq!(speeds(2010.0, 2510.0), [2010, 2510]);
    }
}
