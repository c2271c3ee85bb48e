//! The headroom of a fuel system over engine speed and ethanol share.

use super::fuel_part::FittedPart;
use super::injection_fluid::FluidNozzle;
use super::load::{Blend, Demand, LoadPoint, stood_in_for};
use super::operating_point::OperatingPoint;
use super::part_of::PartOf;
use super::shortage::{Shortage, shortage};
use super::system::FuelSystem;
use super::table::OutsideTable;
use crate::quantity::{Band, CrankPower, GaugePressure, MassRate, Power, Share};

/// What is asked of a fuel system: a power over engine speed.
#[derive(Clone, Debug, PartialEq)]
pub struct Load {
    /// The power at each speed.
    pub points: Vec<LoadPoint>,
    /// How much fuel it takes.
    pub demand: Demand,
    /// Injection fluid that stands in for part of the fuel. A verdict leaves it out:
    /// a spray that stops would take the margin with it.
    pub fluid: Option<FluidNozzle>,
}

/// What a part does at one speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Loading {
    /// How much of it is used: of the duty, of the injection window, of what a pump
    /// gives. Above 1 it cannot be done.
    pub used: Band<f64>,
    /// What is left before its limit: capacity over demand, less 1.
    pub reserve: Band<f64>,
}

/// Where a part is tightest.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tightest {
    /// The place among the points of the load.
    pub at: usize,
    /// What is left there before the limit.
    pub reserve: Band<f64>,
}

/// A part over all speeds.
#[derive(Clone, Debug, PartialEq)]
pub struct PartOverSpeed {
    /// The part.
    pub part: PartOf,
    /// The use beyond which nobody should plan.
    pub limit: f64,
    /// What it does at each point of the load, or why there is no figure.
    pub points: Vec<Result<Loading, OutsideTable>>,
    /// Where it is tightest, if there is a figure for every point.
    pub tightest: Option<Tightest>,
    /// What happens there if nothing is changed: only where even all that the part
    /// has is not enough.
    pub shortage: Option<Shortage>,
}

impl PartOverSpeed {
    /// Why there is no figure for all speeds.
    pub fn no_figure(&self) -> Option<&OutsideTable> {
        self.points.iter().find_map(|point| point.as_ref().err())
    }
}

/// Every part over all speeds, on one blend.
#[derive(Clone, Debug, PartialEq)]
pub struct Headroom {
    /// What the engine takes at each point of the load.
    pub flows: Vec<Band<MassRate>>,
    /// The dry air that goes with it.
    pub air: Vec<Band<MassRate>>,
    /// The parts.
    pub parts: Vec<PartOverSpeed>,
}

impl Headroom {
    /// The part that gives first: the one with the least reserve, as expected.
    /// `None` where there is no part, or none with a figure for every speed.
    pub fn first_to_give(&self) -> Option<(&PartOverSpeed, Tightest)> {
        let with_figures = self.parts.iter().filter_map(|part| Some((part, part.tightest?)));
        with_figures.min_by(|a, b| a.1.reserve.expected().total_cmp(&b.1.reserve.expected()))
    }
}

/// What is left of every part on one ethanol share.
#[derive(Clone, Debug, PartialEq)]
pub struct AtShare {
    /// The ethanol share.
    pub share: Share,
    /// For each part of the system its least reserve over all speeds; nothing where
    /// there is no figure.
    pub reserves: Vec<Option<Band<f64>>>,
}

impl AtShare {
    /// The least reserve of all parts; nothing where one has no figure.
    pub fn least(&self) -> Option<Band<f64>> {
        self.reserves.iter().copied().reduce(|a, b| {
            let (a, b) = (a?, b?);
            let least = |of: fn(&Band<f64>) -> f64| of(&a).min(of(&b));
            Band::new(least(Band::low), least(Band::expected), least(Band::high)).ok()
        })?
    }
}

impl Load {
    /// What the engine takes at a point, less what injection fluid stands in for.
    fn flow(&self, point: &LoadPoint, blend: &Blend) -> Band<MassRate> {
        let flow = self.demand.fuel_flow(point.power, blend);
        let Some(nozzle) = &self.fluid else { return flow };
        let less = stood_in_for(nozzle, point.manifold, &blend.fuel);
        flow.map(|flow| (flow - less).max(MassRate::default()))
    }

    /// The highest power of the load, as expected.
    pub fn peak_power(&self) -> CrankPower {
        let powers = self.points.iter().map(|point| point.power.expected().get());
        CrankPower::new(powers.fold(Power::default(), Power::max))
    }
}

impl FuelSystem {
    /// Every part over all speeds, for a blend that is known within a band.
    ///
    /// More ethanol, water, methanol or ether takes more fuel by volume and by mass, so
    /// the ends of the band are the ends of every result.
    pub fn headroom(&self, load: &Load, blends: &Band<Blend>) -> Headroom {
        let flows: Vec<Band<MassRate>> = load
            .points
            .iter()
            .map(|point| {
                let expected = load.flow(point, &blends.expected()).expected();
                let ends = [
                    load.flow(point, &blends.low()).low(),
                    load.flow(point, &blends.high()).high(),
                ];
                Band::enclosing(expected, ends).unwrap_or(Band::exact(expected))
            })
            .collect();
        let air = load
            .points
            .iter()
            .map(|point| {
                let blend = &blends.expected();
                load.demand.air_flow(load.demand.fuel_flow(point.power, blend), blend)
            })
            .collect();
        let parts =
            self.parts().iter().map(|part| over_speed(part, load, blends, &flows)).collect();
        Headroom { flows, air, parts }
    }

    /// What is left of every part over a range of ethanol shares.
    pub fn over_share(&self, load: &Load, shares: &[Share]) -> Vec<AtShare> {
        let parts = self.parts();
        shares.iter().map(|share| at_share(load, &parts, *share)).collect()
    }
}

/// The largest ethanol share that a load allows: nothing where even petrol is too
/// much, or where a part has no figure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LargestShare {
    /// As expected.
    pub expected: Option<Share>,
    /// With everything that is not known at its worst.
    pub at_worst: Option<Share>,
}

impl LargestShare {
    /// That of one part, by its place among the parts, from what is left of it over
    /// rising shares. In between, a straight line is close enough: a reserve bends
    /// very little within one per cent.
    pub fn of_part(over_share: &[AtShare], part: usize) -> Self {
        let up_to = |of: fn(&Band<f64>) -> f64| {
            let reserves = over_share
                .iter()
                .map(|at| (at.share, at.reserves.get(part).copied().flatten().as_ref().map(of)));
            largest(reserves)
        };
        Self { expected: up_to(Band::expected), at_worst: up_to(Band::low) }
    }

    /// That of all parts together: the least of them. Nothing where there is no part.
    pub fn of_all(over_share: &[AtShare]) -> Self {
        let parts = over_share.first().map_or(0, |at| at.reserves.len());
        let each = || (0..parts).map(|part| Self::of_part(over_share, part));
        let least = |of: fn(Self) -> Option<Share>| {
            let shares = each().map(of).reduce(|a, b| {
                let (a, b) = (a?, b?);
                Some(if b < a { b } else { a })
            });
            shares.flatten()
        };
        Self { expected: least(|it| it.expected), at_worst: least(|it| it.at_worst) }
    }
}

/// The largest share up to which nothing is short.
fn largest(reserves: impl Iterator<Item = (Share, Option<f64>)>) -> Option<Share> {
    let mut last: Option<(Share, f64)> = None;
    for (share, reserve) in reserves {
        match reserve {
            Some(left) if left >= 0.0 => last = Some((share, left)),
            Some(short) => {
                let (before, left) = last?;
                let part = left / (left - short);
                let way = share.fraction() - before.fraction();
                return Some(Share::clamped(before.fraction() + way * part));
            }
            None => return last.map(|(share, _)| share),
        }
    }
    last.map(|(share, _)| share)
}

fn over_speed(
    part: &FittedPart<'_>,
    load: &Load,
    blends: &Band<Blend>,
    flows: &[Band<MassRate>],
) -> PartOverSpeed {
    let limit = part.limit();
    let points: Vec<_> = load
        .points
        .iter()
        .zip(flows)
        .map(|(point, flow)| loading(part, limit, point, blends, *flow))
        .collect();
    let tightest = tightest(points.iter().map(|it| it.ok().map(|it| it.reserve)));
    let shortage = tightest.and_then(|tightest| {
        let (point, flow) = (load.points.get(tightest.at)?, flows.get(tightest.at)?);
        let all = part.capacity(1.0, &operating(point, &blends.expected())).ok()?;
        let density = blends.expected().fuel.density;
        shortage(all.expected() / density, flow.expected() / density, load.demand.lambda)
    });
    PartOverSpeed { part: part.id(), limit, points, tightest, shortage }
}

fn loading(
    part: &FittedPart<'_>,
    limit: f64,
    point: &LoadPoint,
    blends: &Band<Blend>,
    flow: Band<MassRate>,
) -> Result<Loading, OutsideTable> {
    let (low, expected, high) = (blends.low(), blends.expected(), blends.high());
    let used = |flow, blend| part.used(flow, &operating(point, blend));
    let middle = used(flow.expected(), &expected)?.expected();
    let ends = [used(flow.low(), &low)?.low(), used(flow.high(), &high)?.high()];
    let used = Band::enclosing(middle, ends).unwrap_or(Band::exact(middle));
    let capacity = |blend| part.capacity(limit, &operating(point, blend));
    let middle = reserve(capacity(&expected)?.expected(), flow.expected());
    let ends =
        [reserve(capacity(&high)?.low(), flow.high()), reserve(capacity(&low)?.high(), flow.low())];
    let reserve = Band::enclosing(middle, ends).unwrap_or(Band::exact(middle));
    Ok(Loading { used, reserve })
}

fn at_share(load: &Load, parts: &[FittedPart<'_>], share: Share) -> AtShare {
    let blend = Blend::of(share);
    let flows: Vec<_> = load.points.iter().map(|point| load.flow(point, &blend)).collect();
    let least = |part: &FittedPart<'_>| {
        let limit = part.limit();
        // What does not turn with the engine gives the same at the same boost: that
        // spares most of the search for what the supply gives.
        let mut last: Option<(GaugePressure, Option<Band<MassRate>>)> = None;
        let reserves = load.points.iter().zip(&flows).map(|(point, flow)| {
            let known =
                last.filter(|(boost, _)| !part.goes_with_speed() && *boost == point.manifold);
            let capacity = match known {
                Some((_, capacity)) => capacity,
                None => part.capacity(limit, &operating(point, &blend)).ok(),
            };
            last = Some((point.manifold, capacity));
            let capacity = capacity?;
            let expected = reserve(capacity.expected(), flow.expected());
            let ends = [reserve(capacity.low(), flow.high()), reserve(capacity.high(), flow.low())];
            Band::enclosing(expected, ends)
        });
        Some(tightest(reserves)?.reserve)
    };
    AtShare { share, reserves: parts.iter().map(least).collect() }
}

fn operating<'a>(point: &LoadPoint, blend: &'a Blend) -> OperatingPoint<'a> {
    OperatingPoint { speed: point.speed, manifold: point.manifold, fuel: &blend.fuel }
}

/// Capacity over demand, less 1; without end where nothing is asked.
fn reserve(capacity: MassRate, demand: MassRate) -> f64 {
    if demand > MassRate::default() { (capacity / demand).value - 1.0 } else { f64::INFINITY }
}

/// The least of all reserves, each end of the band over all of them; nothing where
/// one has no figure.
fn tightest(reserves: impl Iterator<Item = Option<Band<f64>>>) -> Option<Tightest> {
    let mut found: Option<Tightest> = None;
    for (at, reserve) in reserves.enumerate() {
        let reserve = reserve?;
        found = Some(match found {
            None => Tightest { at, reserve },
            Some(before) => {
                let least = |of: fn(&Band<f64>) -> f64| of(&before.reserve).min(of(&reserve));
                let is_tighter = reserve.expected() < before.reserve.expected();
                let band = Band::new(least(Band::low), least(Band::expected), least(Band::high));
                Tightest {
                    at: if is_tighter { at } else { before.at },
                    reserve: band.unwrap_or(reserve),
                }
            }
        });
    }
    found
}
