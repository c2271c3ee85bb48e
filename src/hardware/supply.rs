//! The low-pressure side: tank to rail.

use crate::message::keys::workings;
use uom::si::mass_rate::gram_per_second;
use uom::si::pressure::{bar, pascal};
use uom::si::volume_rate::{cubic_meter_per_second, liter_per_minute};

use crate::quantity::{Band, MassRate, Pressure, VolumeRate};
use crate::workings::{Expression, literal, number};

use super::fuel_line::FuelLine;
use super::fuel_part::FuelSystemPart;
use super::operating_point::OperatingPoint;
use super::part_of::PartOf;
use super::part_workings::PartWorkings;
use super::pump_curve::{PumpCurve, outside};
use super::regulator::Regulator;
use super::requirement::Requirement;
use super::sources::{BALANCE, DARCY};
use super::table::OutsideTable;

/// How several pumps work together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Arrangement {
    /// Side by side: at one pressure their flows add up.
    Parallel,
    /// One feeds the other: at one flow their pressures add up.
    Series,
}

/// Pumps, lines and regulator.
///
/// The pumps work against the rail's pressure and every loss on the way to it, and
/// give the less the higher that is; what they give above the demand goes back.
#[derive(Clone, Debug, PartialEq)]
pub struct Supply {
    /// The pumps, each at the voltage that it gets under load.
    pub pumps: Vec<PumpCurve>,
    /// How they work together.
    pub arrangement: Arrangement,
    /// How the rail's pressure is held.
    pub regulator: Regulator,
    /// The lines, one after the other.
    pub lines: Vec<FuelLine>,
    /// What filter and fittings take, measured at the largest flow. Taken as the same
    /// at every flow, so less flow is judged on the safe side.
    pub other_losses: Pressure,
    /// The largest use of what the pumps can give, 0 to 1.
    pub limit: f64,
}

impl Supply {
    /// The pressure that the pumps work against at a flow: rail, lines, height and
    /// other losses.
    pub fn pump_pressure(&self, flow: VolumeRate, at: &OperatingPoint<'_>) -> Pressure {
        let rail = self.regulator.rail(at.manifold).get();
        let lines = self.lines.iter().map(|line| line.pressure_loss(flow, at.fuel));
        lines.fold(rail + self.other_losses, |sum, loss| sum + loss)
    }

    /// What the pumps can give against the pressure that a demand meets; nothing
    /// without a pump.
    ///
    /// # Errors
    /// When that pressure is outside the pumps' tables.
    pub fn available(
        &self,
        demand: VolumeRate,
        at: &OperatingPoint<'_>,
    ) -> Result<VolumeRate, OutsideTable> {
        let pressure = self.pump_pressure(demand, at);
        self.settle(|_| pressure)
    }

    /// The fuel that takes a share of what the pumps can give while it flows: the
    /// flow `q` with `q = use * available(q)`.
    ///
    /// # Errors
    /// When the pressure at that flow is outside the pumps' tables.
    pub fn capacity(&self, share: f64, at: &OperatingPoint<'_>) -> Result<MassRate, OutsideTable> {
        let share = share.max(0.0);
        let full = self.settle(|flow| self.pump_pressure(flow * share, at))?;
        Ok(full * share * at.fuel.density)
    }

    /// The flow of the pumps where what they work against is that which the flow
    /// itself causes.
    fn settle(
        &self,
        resistance: impl Fn(VolumeRate) -> Pressure,
    ) -> Result<VolumeRate, OutsideTable> {
        if self.pumps.is_empty() {
            return Ok(VolumeRate::default());
        }
        match self.arrangement {
            Arrangement::Parallel => self.settle_parallel(resistance),
            Arrangement::Series => self.settle_series(resistance),
        }
    }

    /// Sought over pressure, inside what all tables hold.
    fn settle_parallel(
        &self,
        resistance: impl Fn(VolumeRate) -> Pressure,
    ) -> Result<VolumeRate, OutsideTable> {
        let (low, high) = common(self.pumps.iter().map(PumpCurve::pressures));
        let flow = |pressure| -> Result<VolumeRate, OutsideTable> {
            let mut sum = VolumeRate::default();
            for pump in &self.pumps {
                sum += pump.flow(pressure)?;
            }
            Ok(sum)
        };
        let excess = |pascals| -> Result<f64, OutsideTable> {
            let pressure = Pressure::new::<pascal>(pascals);
            Ok(pascals - resistance(flow(pressure)?).get::<pascal>())
        };
        // Without flow the resistance is least, and with what the pumps give against
        // that it is more than can be: between the two it settles.
        let low_end = resistance(VolumeRate::default()).max(low).get::<pascal>();
        let at_low = excess(low_end)?;
        let high_end = high.get::<pascal>().min(low_end - at_low).max(low_end);
        let at_high = excess(high_end)?;
        if at_low <= 0.0 && at_high >= 0.0 {
            let found = crossing((low_end, at_low), (high_end, at_high), excess)?;
            flow(Pressure::new::<pascal>(found))
        } else {
            let end = if at_high < 0.0 { high } else { low };
            Err(outside(resistance(flow(end)?), low, high))
        }
    }

    /// Sought over flow, inside what all tables hold.
    fn settle_series(
        &self,
        resistance: impl Fn(VolumeRate) -> Pressure,
    ) -> Result<VolumeRate, OutsideTable> {
        let (low, high) = common(self.pumps.iter().map(PumpCurve::flows));
        let rise = |flow| -> Result<Pressure, OutsideTable> {
            let mut sum = Pressure::default();
            for pump in &self.pumps {
                sum += pump.pressure(flow)?;
            }
            Ok(sum)
        };
        let excess = |cubic_meters| -> Result<f64, OutsideTable> {
            let flow = VolumeRate::new::<cubic_meter_per_second>(cubic_meters);
            Ok((resistance(flow) - rise(flow)?).get::<pascal>())
        };
        let ends = (low.get::<cubic_meter_per_second>(), high.get::<cubic_meter_per_second>());
        let (at_low, at_high) = (excess(ends.0)?, excess(ends.1)?);
        if at_low <= 0.0 && at_high >= 0.0 {
            let found = crossing((ends.0, at_low), (ends.1, at_high), excess)?;
            Ok(VolumeRate::new::<cubic_meter_per_second>(found))
        } else {
            let end = if at_high < 0.0 { high } else { low };
            Err(outside(resistance(end), rise(high)?, rise(low)?))
        }
    }
}

impl FuelSystemPart for &Supply {
    fn id(&self) -> PartOf {
        PartOf::Supply
    }

    fn limit(&self) -> f64 {
        self.limit
    }

    fn capacity(&self, used: f64, at: &OperatingPoint<'_>) -> Result<Band<MassRate>, OutsideTable> {
        Ok(Band::exact(Supply::capacity(self, used, at)?))
    }

    fn used(&self, flow: MassRate, at: &OperatingPoint<'_>) -> Result<Band<f64>, OutsideTable> {
        let wanted = flow / at.fuel.density;
        Ok(Band::exact((wanted / self.available(wanted, at)?).value))
    }

    fn enough(&self, _: f64, flow: MassRate, at: &OperatingPoint<'_>) -> Requirement {
        let flow = flow / at.fuel.density;
        Requirement::SupplyFlow { flow: flow / self.limit, pressure: self.pump_pressure(flow, at) }
    }

    /// The pumps do not turn with the engine.
    fn goes_with_speed(&self) -> bool {
        false
    }

    fn holds_pressure(&self) -> bool {
        true
    }

    fn derive(
        &self,
        workings: &mut PartWorkings<'_>,
        flow: Expression,
        _: f64,
    ) -> Option<Expression> {
        let wanted = flow.clone() * literal(3600.0) / workings.density();
        let wanted = workings.add(workings::SAME_VOLUME, "Q", &wanted, (1, "L/h"), &[]);
        let volume = VolumeRate::new::<cubic_meter_per_second>(wanted.value() / 3.6e6);
        let rail = self.regulator.rail(workings.at.manifold).get();
        let mut pressure = number("p_rail", rail.get::<bar>());
        for (place, line) in self.lines.iter().enumerate() {
            let loss = line.pressure_loss(volume, workings.at.fuel).get::<bar>();
            pressure = pressure + number(format!("dp_line{}", place + 1), loss);
        }
        pressure = pressure + number("dp_other", self.other_losses.get::<bar>());
        workings.add(workings::PRESSURE_PUMPS, "p_p", &pressure, (2, "bar"), &[DARCY]);
        let there = self.available(volume, workings.at).ok()?.get::<liter_per_minute>() * 60.0;
        let used = wanted / number(format!("T{}", workings.suffix), there);
        let name = workings::USE_WHAT_PUMPS_GIVE_READ_FROM;
        workings.add(name, "U", &used, (4, ""), &[BALANCE]);
        // At the limit the line takes more than now, so this is not the use turned over.
        let capacity = Supply::capacity(self, self.limit, workings.at).ok()?;
        let capacity = capacity.get::<gram_per_second>();
        Some(number(format!("C{}", workings.suffix), capacity) / flow - literal(1.0))
    }
}

/// What all ranges share. Where they share nothing, the first lies above the second,
/// and one of the tables refuses it.
fn common<T: PartialOrd + Default>(ranges: impl Iterator<Item = (T, T)>) -> (T, T) {
    let narrower = |(low, high): (T, T), (from, to): (T, T)| {
        (if from > low { from } else { low }, if to < high { to } else { high })
    };
    ranges.reduce(narrower).unwrap_or_default()
}

/// How near to zero the search comes, relative to what it began with.
const CLOSE: f64 = 1e-9;
/// More than any search takes.
const STEPS: usize = 100;

/// Where a rising function is zero, between two points about it, by the secant that
/// always keeps it enclosed (regula falsi in the form of Anderson and Bjoerck).
fn crossing<E>(
    low: (f64, f64),
    high: (f64, f64),
    function: impl Fn(f64) -> Result<f64, E>,
) -> Result<f64, E> {
    let ((mut below, mut at_below), (mut above, mut at_above)) = (low, high);
    let enough = CLOSE * (at_above - at_below);
    let mut last_was_below = None;
    for _ in 0..STEPS {
        let rise = at_above - at_below;
        if rise <= enough {
            break;
        }
        let guess = (above - at_above * (above - below) / rise).clamp(below, above);
        let value = function(guess)?;
        if value.abs() <= enough {
            return Ok(guess);
        }
        // An end that stays twice draws the secant away from the root: count it less.
        let is_below = value < 0.0;
        let stuck = last_was_below == Some(is_below);
        if is_below {
            at_above *= if stuck { weight(value / at_below) } else { 1.0 };
            (below, at_below) = (guess, value);
        } else {
            at_below *= if stuck { weight(value / at_above) } else { 1.0 };
            (above, at_above) = (guess, value);
        }
        last_was_below = Some(is_below);
    }
    Ok(f64::midpoint(below, above))
}

/// How much an end that stays counts, from how much the other one has fallen.
fn weight(fall: f64) -> f64 {
    if fall < 1.0 { 1.0 - fall } else { 0.5 }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use std::cell::Cell;

    /// Steps and place of the root of a function between 0.5 and 4.
    fn search(function: impl Fn(f64) -> f64) -> (u32, f64) {
        let calls = Cell::new(0);
        let counted = |x: f64| {
            calls.set(calls.get() + 1);
            Ok::<_, ()>(function(x))
        };
        let root = crossing((0.5, function(0.5)), (4.0, function(4.0)), counted).unwrap();
        (calls.get(), root)
    }

    #[test]
    fn the_search_takes_few_steps() {
        // Nearly straight, as a pump against a line, and as bent as none is.
        for (bend, most) in [(0.05, 4), (0.5, 7), (5.0, 12)] {
            let (steps, root) = search(|x| (x - 3.0) + bend * (x * x - 9.0));
            approx::assert_relative_eq!(root, 3.0, max_relative = 1e-6);
            assert!(steps <= most, "{bend}: {steps} steps");
        }
    }

    #[test]
    fn a_root_at_an_end_is_found() {
        let function = |x: f64| Ok::<_, ()>(x - 1.0);
        approx::assert_relative_eq!(crossing((1.0, 0.0), (2.0, 1.0), function).unwrap(), 1.0);
        approx::assert_relative_eq!(crossing((0.0, -1.0), (1.0, 0.0), function).unwrap(), 1.0);
    }
}
