//! Whether the fuel system holds, what gives first, and what would be enough.

use super::crossed::CrossedLimit;
use super::engine::SetLimit;
use super::reading::{HardwareAsked, HardwareReading};
use crate::hardware::{
    AtShare, FluidEffect, Headroom, LargestShare, Load, LoadPoint, PartOf, PartOverSpeed,
    Requirement,
};
use crate::quantity::{AngularVelocity, Band, CrankPower, MassRate, Share};

/// How a part stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum PartStanding {
    /// It has the reserve that is wanted, and stays within its limit at worst.
    Enough,
    /// It stays within its limit as expected, but has less than the reserve wanted
    /// or passes the limit at worst.
    Tight,
    /// It passes its limit.
    Short,
    /// There is no figure for every speed, so it cannot be judged.
    NoFigure,
}

impl PartStanding {
    /// How a part stands with a reserve, of which so much is wanted.
    fn of(reserve: Option<Band<f64>>, wanted: f64) -> Self {
        match reserve {
            None => Self::NoFigure,
            Some(reserve) if reserve.expected() < 0.0 => Self::Short,
            Some(reserve) if reserve.low() < 0.0 || reserve.expected() < wanted => Self::Tight,
            Some(_) => Self::Enough,
        }
    }
}

/// A part, judged.
#[derive(Clone, Debug, PartialEq)]
pub struct PartAnswer {
    /// The part.
    pub part: PartOf,
    /// The forms that describe it.
    pub forms: Vec<u32>,
    /// What it does at each speed.
    pub over_speed: PartOverSpeed,
    /// The same with injection fluid standing in for part of the fuel, if there is
    /// any. It decides nothing.
    pub with_fluid: Option<PartOverSpeed>,
    /// How it stands, without injection fluid.
    pub standing: PartStanding,
    /// The power that it supports: that of the whole curve, grown until the part is
    /// at its limit somewhere.
    pub power: Option<Band<CrankPower>>,
    /// The largest ethanol share at which it holds the curve.
    pub largest_share: LargestShare,
    /// What it has to be for the reserve wanted: as expected and at worst.
    pub enough: Option<[Requirement; 2]>,
}

/// Air beyond what the compressor is rated for, or not.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AirAnswer {
    /// The form of the limit.
    pub form: u32,
    /// What the compressor is rated for.
    pub rated: MassRate,
    /// The most air that the engine takes, and where.
    pub most: (AngularVelocity, Band<MassRate>),
}

/// What injection fluid does at the speed of the highest power.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FluidAnswer {
    /// The form of the nozzles.
    pub form: u32,
    /// The fluid that flows.
    pub flow: MassRate,
    /// What it does.
    pub effect: FluidEffect,
}

/// The answer to what is asked of the fuel system.
#[derive(Clone, Debug, PartialEq)]
pub struct HardwareAnswer {
    /// What was asked.
    pub asked: HardwareAsked,
    /// Every part over all speeds. Injection fluid is not in it.
    pub headroom: Headroom,
    /// The parts, judged.
    pub parts: Vec<PartAnswer>,
    /// How the fuel system stands: as its weakest part. Nothing without a part.
    pub standing: Option<PartStanding>,
    /// The part that gives first, by its place among the parts.
    pub first: Option<usize>,
    /// What is left of every part over all ethanol shares.
    pub over_share: Vec<AtShare>,
    /// The largest ethanol share at which all parts hold the curve.
    pub largest_share: LargestShare,
    /// The compressor's air.
    pub air: Vec<AirAnswer>,
    /// The limits that the curve crosses, the one to name first being the first.
    pub crossed: Vec<CrossedLimit>,
    /// Fuel by the air that the engine breathes, at each speed.
    pub by_air: Option<Vec<MassRate>>,
    /// What injection fluid does.
    pub fluid: Option<FluidAnswer>,
}

impl HardwareAnswer {
    /// Mass of air for each mass of the blend at lambda 1.
    pub fn stoichiometric_ratio(&self) -> f64 {
        self.asked.blends().expected().fuel.stoichiometric_afr
    }

    /// Works out the answer; nothing while too little is understood.
    pub fn of(reading: &HardwareReading) -> Option<Self> {
        let asked = reading.asked.clone()?;
        let (system, load) = (&asked.parts.system, &asked.load);
        let blends = asked.blends();
        let headroom = system.headroom(load, &blends);
        let fluid = asked.parts.fluid;
        let with_fluid = fluid.map(|(_, nozzle)| {
            let load = Load { fluid: Some(nozzle), ..load.clone() };
            system.headroom(&load, &blends)
        });
        let shares: Vec<Share> =
            (0..=100).map(|percent| Share::clamped(f64::from(percent) / 100.0)).collect();
        let over_share = system.over_share(load, &shares);
        let largest_share = LargestShare::of_all(&over_share);
        let parts: Vec<_> = headroom
            .parts
            .iter()
            .enumerate()
            .map(|(at, over_speed)| {
                let with_fluid = with_fluid.as_ref().and_then(|it| it.parts.get(at).cloned());
                let largest_share = LargestShare::of_part(&over_share, at);
                part(&asked, &headroom, over_speed, with_fluid, largest_share)
            })
            .collect();
        let standing = parts.iter().map(|part| part.standing).max();
        let first = headroom
            .first_to_give()
            .and_then(|(first, _)| headroom.parts.iter().position(|part| part.part == first.part));
        let air = reading
            .limits
            .iter()
            .filter_map(|(form, limit)| {
                let SetLimit::Air(rated) = *limit else { return None };
                let all = load.points.iter().map(|point| point.speed).zip(headroom.air.clone());
                let most =
                    all.reduce(
                        |most, it| {
                            if it.1.expected() > most.1.expected() { it } else { most }
                        },
                    )?;
                Some(AirAnswer { form: *form, rated, most })
            })
            .collect();
        let speeds: Vec<_> = load.points.iter().map(|point| point.speed).collect();
        let crossed = CrossedLimit::all(reading, asked.target, &speeds, &headroom);
        let by_air = asked.engine.breathing.map(|breathing| {
            let fuel = blends.expected().fuel;
            let of = |point: &LoadPoint| {
                let route = breathing.route(point.manifold, asked.engine.ambient);
                route.fuel_flow(point.speed, asked.engine.demand.lambda, &fuel)
            };
            load.points.iter().map(of).collect()
        });
        let fluid = fluid.and_then(|(form, nozzle)| {
            let at = peak(load)?;
            let flow = nozzle.flow(load.points.get(at)?.manifold);
            let fuel = blends.expected().fuel;
            let lambda = asked.engine.demand.lambda;
            let effect =
                nozzle.fluid.effect(flow, headroom.flows.get(at)?.expected(), lambda, &fuel);
            Some(FluidAnswer { form, flow, effect })
        });
        Some(Self {
            asked,
            headroom,
            parts,
            standing,
            first,
            over_share,
            largest_share,
            air,
            crossed,
            by_air,
            fluid,
        })
    }

    /// How it all stands, fuel system and limits together: nothing holds where a limit
    /// is crossed, whatever the fuel system does. Nothing without a part, as long as no
    /// limit is crossed.
    pub fn overall(&self) -> Option<PartStanding> {
        let of_limit = |it: &CrossedLimit| {
            if it.is_expected { PartStanding::Short } else { PartStanding::Tight }
        };
        match (self.standing, self.crossed.iter().map(of_limit).max()) {
            (_, Some(PartStanding::Short)) => Some(PartStanding::Short),
            (Some(fuel), Some(limit)) => Some(fuel.max(limit)),
            (fuel, limit) => fuel.or(limit),
        }
    }

    /// The place of the highest power among the points of the load.
    pub fn peak(&self) -> Option<usize> {
        peak(&self.asked.load)
    }
}

/// The place of the highest power among the points of a load.
fn peak(load: &Load) -> Option<usize> {
    let powers = load.points.iter().map(|point| point.power.expected().get()).enumerate();
    powers.reduce(|most, it| if it.1 > most.1 { it } else { most }).map(|(at, _)| at)
}

fn part(
    asked: &HardwareAsked,
    headroom: &Headroom,
    over_speed: &PartOverSpeed,
    with_fluid: Option<PartOverSpeed>,
    largest_share: LargestShare,
) -> PartAnswer {
    let (parts, load) = (&asked.parts, &asked.load);
    let reserve = over_speed.tightest.map(|it| it.reserve);
    let peak = load.peak_power();
    PartAnswer {
        part: over_speed.part,
        forms: parts.forms_of(over_speed.part),
        standing: PartStanding::of(reserve, asked.engine.reserve),
        power: reserve
            .map(|reserve| reserve.map(|it| CrankPower::new(peak.get() * (1.0 + it).max(0.0)))),
        largest_share,
        enough: parts.system.requirements(
            over_speed,
            load,
            &asked.blends(),
            &headroom.flows,
            asked.engine.reserve,
        ),
        over_speed: over_speed.clone(),
        with_fluid,
    }
}
