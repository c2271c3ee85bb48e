use uom::si::angular_velocity::radian_per_second;
use uom::si::power::watt;
use uom::si::torque::newton_meter;

use super::curve::{Peak, PowerCurve};
use super::parabola::Parabola;
use crate::quantity::{AngularVelocity, CrankPower, Power, Torque};

/// A peak before and after a change.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PeakChange<T> {
    /// Before the change.
    pub before: Peak<T>,
    /// After it.
    pub after: Peak<T>,
}

impl PeakChange<CrankPower> {
    /// The change as a fraction of what was before.
    pub fn relative(&self) -> f64 {
        f64::from(self.after.value.get() / self.before.value.get()) - 1.0
    }
}

impl PeakChange<Torque> {
    /// The change as a fraction of what was before.
    pub fn relative(&self) -> f64 {
        f64::from(self.after.value / self.before.value) - 1.0
    }
}

/// What a change gave over the speeds that both curves cover; below zero where it
/// took.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BandGain<T> {
    /// The mean over engine speed.
    pub mean: T,
    /// The mean as a fraction of the mean before.
    pub relative: f64,
    /// The largest gain, and where it is.
    pub largest: Peak<T>,
    /// The smallest gain, and where it is.
    pub smallest: Peak<T>,
}

/// Two curves of one engine, compared.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gain {
    /// The lowest and the highest speed that both curves cover.
    pub speeds: (AngularVelocity, AngularVelocity),
    /// The most power of each curve, wherever it is.
    pub peak_power: PeakChange<CrankPower>,
    /// The most torque of each curve, wherever it is.
    pub peak_torque: PeakChange<Torque>,
    /// Power over the common speeds.
    pub power: BandGain<CrankPower>,
    /// Torque over the common speeds.
    pub torque: BandGain<Torque>,
}

/// What a change gave; nothing where the curves have no range of speeds in common.
pub fn compare(before: &PowerCurve, after: &PowerCurve) -> Option<Gain> {
    let (first, second) = (before.speeds(), after.speeds());
    let low = if first.0 > second.0 { first.0 } else { second.0 };
    let high = if first.1 < second.1 { first.1 } else { second.1 };
    if low >= high {
        return None;
    }
    let watts = |value: f64| CrankPower::new(Power::new::<watt>(value));
    let power = over(before.powers(), || after.powers())?;
    let torque = over(before.torques(), || after.torques())?;
    Some(Gain {
        speeds: (low, high),
        peak_power: PeakChange { before: before.peak_power(), after: after.peak_power() },
        peak_torque: PeakChange { before: before.peak_torque(), after: after.peak_torque() },
        power: power.map(watts),
        torque: torque.map(Torque::new::<newton_meter>),
    })
}

/// The gain over the pieces that two curves have in common.
fn over<A: Iterator<Item = Parabola>>(
    before: impl Iterator<Item = Parabola>,
    after: impl Fn() -> A,
) -> Option<BandGain<f64>> {
    // Each piece of the one is cut at the points of the other.
    let pairs: Vec<(Parabola, Parabola)> = before
        .flat_map(|old| {
            after().filter_map(move |new| {
                let (low, high) = (old.low.max(new.low), old.high.min(new.high));
                // Pieces that only touch have no width and would count nothing.
                (low < high).then_some((old.within(low, high)?, new.within(low, high)?))
            })
        })
        .collect();
    let width: f64 = pairs.iter().map(|(old, _)| old.high - old.low).sum();
    let area: f64 = pairs.iter().map(|(old, _)| old.area()).sum();
    let gained: f64 = pairs.iter().map(|(old, new)| new.less(old).area()).sum();
    let higher = |best: (f64, f64), next: (f64, f64)| if next.1 > best.1 { next } else { best };
    let largest = pairs.iter().map(|(old, new)| new.less(old).highest()).reduce(higher)?;
    let loss = pairs.iter().map(|(old, new)| old.less(new).highest()).reduce(higher)?;
    let at = |(speed, value): (f64, f64)| Peak {
        speed: AngularVelocity::new::<radian_per_second>(speed),
        value,
    };
    Some(BandGain {
        mean: gained / width,
        relative: gained / area,
        largest: at(largest),
        smallest: at((loss.0, -loss.1)),
    })
}

impl BandGain<f64> {
    fn map<T>(self, quantity: impl Fn(f64) -> T) -> BandGain<T> {
        let peak = |peak: Peak<f64>| Peak { speed: peak.speed, value: quantity(peak.value) };
        BandGain {
            mean: quantity(self.mean),
            relative: self.relative,
            largest: peak(self.largest),
            smallest: peak(self.smallest),
        }
    }
}
