//! The course of a route at one point of what is known within bands.

use super::amounts::Amounts;
use super::checked::CheckedRoute;
use super::points::Point;
use super::route::{Bought, Burn, Leg};
use crate::quantity::notation::LITRE;
use crate::quantity::{Consumption, Energy, Volume};
use uom::si::energy::megajoule;
use uom::si::volume::liter;

/// A stop and its leg at one point of the box. The level on arrival is below zero
/// by what is missing.
#[derive(Clone, Copy, Debug)]
pub(super) struct Passed {
    pub(super) departure: Amounts,
    pub(super) arrival: f64,
    pub(super) ethanol_burnt: f64,
    pub(super) burnt: f64,
}

impl Leg {
    /// The part of this much in the tank that the leg leaves; below zero where it
    /// does not suffice.
    fn leaves(&self, burn: &Burn, blend: &super::BlendModel, tank: &Amounts) -> f64 {
        let (has, takes) = match *burn {
            Burn::Energy { .. } => (tank.energy, self.energy(burn, blend).get::<megajoule>()),
            Burn::Litres(consumption) => (tank.volume, self.litres(consumption).get::<liter>()),
        };
        if takes <= 0.0 { 1.0 } else { 1.0 - takes / has }
    }

    /// What the leg takes of the fuel on which the consumption was measured.
    fn measured(&self, burn: &Burn) -> Volume {
        match *burn {
            Burn::Energy { consumption, .. } | Burn::Litres(consumption) => {
                self.litres(consumption)
            }
        }
    }

    /// What the leg takes where consumption goes by litres.
    pub(super) fn litres(&self, consumption: Consumption) -> Volume {
        consumption.over(self.weighted_distance())
    }

    /// What the leg takes where consumption goes by energy; as petrol where by litres.
    pub(super) fn energy(&self, burn: &Burn, blend: &super::BlendModel) -> Energy {
        match *burn {
            Burn::Energy { consumption, on } => {
                blend.energy_density(on).of(self.litres(consumption))
            }
            Burn::Litres(consumption) => blend.petrol_energy.of(self.litres(consumption)),
        }
    }
}

impl CheckedRoute {
    /// The course at one point of the box.
    pub(super) fn run(&self, bought: &Bought, point: &Point) -> Vec<Passed> {
        self.run_to(bought, point, self.legs.len().saturating_sub(1))
    }

    /// The same up to a leg.
    pub(super) fn run_to(&self, bought: &Bought, point: &Point, last: usize) -> Vec<Passed> {
        let start = LITRE.quantity(point.level);
        let mut tank = Amounts::of(&self.blend, start, (point.share, &self.extras), self.tank.ron);
        let mut course = Vec::with_capacity(last + 1);
        for (index, leg) in self.legs.iter().enumerate().take(last + 1) {
            for (pump, fuel) in self.stops[index].pumps.iter().enumerate() {
                let volume = litres_of(bought, index, pump);
                let content = (point.pumps[index][pump], &fuel.extras);
                tank = tank.plus(Amounts::of(&self.blend, volume, content, fuel.ron));
            }
            let departure = tank;
            let left = leg.leaves(&self.burn, &self.blend, &tank);
            tank = tank.times(left.max(0.0));
            let arrival = if departure.volume > 0.0 {
                departure.volume * left
            } else {
                // Nothing says how much of which blend is missing: as much as was measured.
                -leg.measured(&self.burn).get::<liter>()
            };
            let energy = departure.energy * (1.0 - left.max(0.0));
            let ethanol = self.blend.ethanol_energy.megajoules_per_liter()
                * departure.ethanol
                * (1.0 - left.max(0.0));
            let (ethanol_burnt, burnt) = match self.burn {
                Burn::Energy { .. } => (ethanol, energy),
                Burn::Litres(_) => (
                    departure.ethanol * (1.0 - left.max(0.0)),
                    departure.volume * (1.0 - left.max(0.0)),
                ),
            };
            course.push(Passed { departure, arrival, ethanol_burnt, burnt });
        }
        course
    }
}

pub(super) fn litres_of(bought: &Bought, stop: usize, pump: usize) -> Volume {
    bought.get(stop).and_then(|stop| stop.get(pump)).copied().unwrap_or_default()
}
