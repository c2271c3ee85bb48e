//! The exact course of a route under given purchases: nothing here is linearised.
//!
//! What is known within bands is run through at the corners of the box (level low
//! or high, all shares low or all high), at points within it, and at the worst that a
//! climb from these finds. With consumption by energy the corners are not always the
//! worst case: more ethanol bought early means less of it left later. So the bands are
//! those of all the points, and a plan that must hold over the box is checked at each
//! of them.

use uom::si::volume::liter;

use crate::calibration::{Contents, Judgement};
use crate::fuel::{Content, Corner, Extras};
use crate::quantity::notation::LITRE;
use crate::quantity::{Band, Money, Share, Volume};

use super::amounts::Amounts;
use super::check::usable_calibrations;
use super::checked::CheckedRoute;
use super::extremes;
use super::points::{self, Point};
use super::route::{Bought, Leg};
use super::rule::{Breach, TripRule};
use super::run::{Passed, litres_of};

/// How far a rule may be missed, in litres, before it counts: a thousandth of what
/// a pump shows.
pub(super) const TOLERANCE: f64 = 1e-6;
/// The same for an octane number.
const OCTANE_TOLERANCE: f64 = 1e-5;

/// How a route goes under given purchases.
#[derive(Clone, Debug, PartialEq)]
pub struct TripCourse {
    /// What happens at each stop and on the leg after it.
    pub legs: Vec<LegCourse>,
    /// What fuel and stops cost together.
    pub cost: Money,
    /// At how many stops something is bought.
    pub stops: usize,
    /// Mean over the legs of the ethanol's part in the energy burnt, weighted by
    /// energy; by litres where consumption goes by litres.
    pub ethanol_part: f64,
    /// The rules that do not hold even if everything is as expected, in the order of
    /// the legs.
    pub breaches: Vec<Breach>,
    /// The rules that may not hold, everything being as bad as it can be.
    pub possible_breaches: Vec<Breach>,
}

/// A stop and the leg after it.
#[derive(Clone, Debug, PartialEq)]
pub struct LegCourse {
    /// What is in the tank after the refill.
    pub departure: TankState,
    /// The level at the end of the leg; zero where the tank runs dry.
    pub arrival: Band<Volume>,
    /// The verdict on every calibration of the car along the leg.
    pub verdicts: Vec<Judgement>,
}

/// What is in the tank. The share, octane and air-fuel ratio stay along a leg.
#[derive(Clone, Debug, PartialEq)]
pub struct TankState {
    /// How much; above what the tank holds by what would not go in.
    pub level: Band<Volume>,
    /// The ethanol share; none of an empty tank.
    pub share: Option<Band<Share>>,
    /// The research octane number, at least.
    pub ron: Option<Band<f64>>,
    /// Stoichiometric air-fuel ratio by mass.
    pub air_fuel_ratio: Option<Band<f64>>,
}

impl CheckedRoute {
    /// The exact course over the box of what is possible.
    ///
    /// Purchases that are not given count as none; what does not fit the tank is
    /// reported as a breach and carried along all the same, so that one breach
    /// does not hide another.
    pub fn simulate(&self, bought: &Bought) -> TripCourse {
        let (_, runs) = self.tried(bought);
        let legs: Vec<LegCourse> = (0..self.legs.len()).map(|leg| self.leg(leg, &runs)).collect();
        TripCourse {
            cost: self.cost(bought),
            stops: bought.iter().filter(|stop| is_used(stop)).count(),
            ethanol_part: ethanol_part(&runs[0]),
            breaches: self.breaches(bought, &runs[..1]),
            possible_breaches: self.breaches(bought, &runs),
            legs,
        }
    }

    /// The points of the box that a plan is tried at, the expected one first, and how it
    /// goes at each.
    pub(super) fn tried(&self, bought: &Bought) -> (Vec<Point>, Vec<Vec<Passed>>) {
        let mut points = points::of(self);
        let mut runs: Vec<_> = points.iter().map(|point| self.run(bought, point)).collect();
        let beyond = extremes::beyond(self, bought, &points, &runs);
        runs.extend(beyond.iter().map(|point| self.run(bought, point)));
        points.extend(beyond);
        (points, runs)
    }

    /// What is paid for fuel and for stopping.
    pub fn cost(&self, bought: &Bought) -> Money {
        let mut cost = Money::default();
        for (index, stop) in self.stops.iter().enumerate() {
            let volumes = bought.get(index).map_or(&[][..], Vec::as_slice);
            for (pump, volume) in stop.pumps.iter().zip(volumes) {
                cost = cost + pump.price.of(*volume);
            }
            if is_used(volumes) {
                cost = cost + stop.fixed_cost;
            }
        }
        cost
    }

    fn leg(&self, leg: usize, runs: &[Vec<Passed>]) -> LegCourse {
        let level = enclosing(runs.iter().map(|run| run[leg].departure.volume))
            .map(|litres| LITRE.quantity(litres));
        let share = all(runs.iter().map(|run| run[leg].departure.share()));
        let ron = all(runs.iter().map(|run| run[leg].departure.ron()));
        let extras = enclosing_extras(runs.iter().map(|run| run[leg].departure.extras()));
        let content = share.zip(extras).map(|(ethanol, extras)| Content { ethanol, extras });
        let air_fuel_ratio = content.and_then(|content| {
            let at = |corner| content.litre(corner, &self.blend.base).stoichiometric_afr();
            Band::enclosing(at(Corner::Expected)?, [at(Corner::High)?, at(Corner::Low)?])
        });
        let arrival = enclosing(runs.iter().map(|run| run[leg].arrival.max(0.0)))
            .map(|litres| LITRE.quantity(litres));
        let verdicts = content.map_or_else(Vec::new, |content| {
            let contents = Contents { share: content.ethanol, extras: content.extras, ron };
            let judge = |calibration: &crate::calibration::Calibration| {
                calibration.judge(&contents, self.injection_fluid)
            };
            self.calibrations.iter().map(judge).collect()
        });
        LegCourse { departure: TankState { level, share, ron, air_fuel_ratio }, arrival, verdicts }
    }

    /// The rules that do not hold in one of the runs.
    fn breaches(&self, bought: &Bought, runs: &[Vec<Passed>]) -> Vec<Breach> {
        let mut breaches = Vec::new();
        for (index, leg) in self.legs.iter().enumerate() {
            let mut found = |rule| breaches.push(Breach { stop: index, rule });
            for (pump, fuel) in self.stops[index].pumps.iter().enumerate() {
                let litres = litres_of(bought, index, pump).get::<liter>();
                let most =
                    if fuel.closed { Some(0.0) } else { fuel.limit.map(|l| l.get::<liter>()) };
                if litres < -TOLERANCE || most.is_some_and(|most| litres > most + TOLERANCE) {
                    found(TripRule::Limit);
                }
            }
            let full = self.tank.capacity.get::<liter>() + TOLERANCE;
            if runs.iter().any(|run| run[index].departure.volume > full) {
                found(TripRule::Brim);
            }
            if !leg.calibrations.is_empty() && !self.is_one_usable(leg, index, runs) {
                found(TripRule::Calibration);
            }
            if let Some(least) = leg.ron_min
                && !runs.iter().all(|run| has_octane(&run[index].departure, least))
            {
                found(TripRule::Octane);
            }
            let least = self.least_on_arrival(index).get::<liter>() - TOLERANCE;
            if runs.iter().any(|run| run[index].arrival < least) {
                let is_final = self.least_on_arrival(index) > self.tank.reserve;
                found(if is_final { TripRule::FinalLevel } else { TripRule::Reserve });
            }
        }
        breaches
    }

    /// Whether one calibration that the leg allows is usable in every run. An edge
    /// may be missed by what no pump could show, which the verdict does not forgive.
    fn is_one_usable(&self, leg: &Leg, index: usize, runs: &[Vec<Passed>]) -> bool {
        usable_calibrations(self, leg).any(|chosen| {
            let calibration = &self.calibrations[chosen];
            runs.iter().all(|run| {
                let tank = &run[index].departure;
                let at = |share: Share| share.fraction() * tank.volume;
                tank.volume > 0.0
                    && tank.ethanol >= at(calibration.low) - TOLERANCE
                    && tank.ethanol <= at(calibration.high) + TOLERANCE
                    && calibration.ron_min.is_none_or(|least| has_octane(tank, least))
            })
        })
    }
}

/// Whether the octane number is reached, give or take what nobody could measure.
fn has_octane(tank: &Amounts, least: f64) -> bool {
    tank.ron().is_some_and(|ron| ron >= least - OCTANE_TOLERANCE)
}

fn is_used(volumes: &[Volume]) -> bool {
    volumes.iter().any(|volume| volume.get::<liter>() > TOLERANCE)
}

fn ethanol_part(run: &[Passed]) -> f64 {
    let burnt: f64 = run.iter().map(|passed| passed.burnt).sum();
    let ethanol: f64 = run.iter().map(|passed| passed.ethanol_burnt).sum();
    if burnt > 0.0 { ethanol / burnt } else { 0.0 }
}

/// The band of values of which the first is the expected one.
fn enclosing(values: impl Iterator<Item = f64>) -> Band<f64> {
    let mut band: Option<Band<f64>> = None;
    for value in values {
        band = Some(match band {
            None => Band::exact(value),
            Some(so_far) => {
                let ends = [so_far.low().min(value), so_far.high().max(value)];
                Band::enclosing(so_far.expected(), ends).unwrap_or(so_far)
            }
        });
    }
    band.unwrap_or_else(|| Band::exact(0.0))
}

/// What there is beside petrol and ethanol over all runs, as expected in the first; none
/// where a tank is empty.
fn enclosing_extras(runs: impl Iterator<Item = Option<Extras>>) -> Option<Extras> {
    let runs: Option<Vec<Extras>> = runs.collect();
    let runs = runs?;
    let first = *runs.first()?;
    Some(Extras::each(|of| {
        runs.iter().map(of).fold(of(&first), |band, it| {
            let low = if it.low() < band.low() { it.low() } else { band.low() };
            let high = if it.high() > band.high() { it.high() } else { band.high() };
            Band::at_ends(low, band.expected(), high)
        })
    }))
}

/// The band of values of which the first is the expected one; none where one is
/// missing.
fn all<T: PartialOrd + Copy>(values: impl Iterator<Item = Option<T>>) -> Option<Band<T>> {
    let mut band: Option<Band<T>> = None;
    for value in values {
        let value = value?;
        band = match band {
            None => Some(Band::exact(value)),
            Some(so_far) => Band::enclosing(
                so_far.expected(),
                [
                    if value < so_far.low() { value } else { so_far.low() },
                    if value > so_far.high() { value } else { so_far.high() },
                ],
            ),
        };
    }
    band
}
