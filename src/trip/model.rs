//! A route as plain numbers for the search.
//!
//! Volumes are in litres. Energy is counted in litres of petrol of equal energy, in
//! which a leg's demand is a fixed amount; where consumption goes by litres a litre
//! of any blend counts as one. With `c = 1 - h_e / h_g` the level is `V = H + c E`.
//! Octane is counted as the surplus over a fixed number, in octane numbers times
//! litres of petrol of equal moles: `S = sum n (r - r_0) / n_g`.
//!
//! In these, pouring and burning are linear in the litres bought and in the
//! compositions `u = E / H` and `w = S / H`, which stay along a leg; only
//! `E = H u` and `S = H w` are products. A window `lo <= E / V <= hi` is one for `u`,
//! and the octane number asks for `w >= (r - r_0) N / (n_g H)`, linear in `u`.

use uom::si::molar_concentration::mole_per_liter;
use uom::si::volume::liter;

use crate::quantity::{Money, Share, Volume};

use super::check::{needs_octane, usable_calibrations};
use super::checked::CheckedRoute;
use super::plan::PlanWanted;
use super::points::{self, Point};
use super::route::{Bought, Burn, Leg};

/// The octane number from which the surplus is counted: near those of pump
/// fuels, so that the surplus is small. Any number would do.
const OCTANE_DATUM: f64 = 95.0;
/// What makes a blend of which something can be asked, in litres of petrol of equal
/// energy: an empty tank has none.
const A_BLEND: f64 = 1e-4;

/// What a litre of fuel adds, or what is in the tank.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Triple {
    /// Energy, `H`.
    pub(super) h: f64,
    /// Ethanol, `E`.
    pub(super) e: f64,
    /// Octane surplus, `S`.
    pub(super) s: f64,
}

impl Triple {
    pub(super) fn plus_times(self, other: Self, factor: f64) -> Self {
        Self {
            h: self.h + other.h * factor,
            e: self.e + other.e * factor,
            s: self.s + other.s * factor,
        }
    }
}

/// One choice of calibration on a leg, as conditions on the composition.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Choice {
    /// The least and the most of `u`.
    pub(super) u: (f64, f64),
    /// The window in shares of volume.
    pub(super) share: (f64, f64),
    /// The octane number over the datum, where one is needed.
    pub(super) octane: Option<f64>,
    /// The least energy in the tank: something where a blend is asked for.
    pub(super) least: f64,
}

/// A leg.
#[derive(Clone, Debug)]
pub(super) struct LegNumbers {
    /// What it takes.
    pub(super) takes: f64,
    /// What must be left, in litres.
    pub(super) left: f64,
    /// The choices of calibration, at least one.
    pub(super) options: Vec<Choice>,
}

/// A fuel that can be bought.
#[derive(Clone, Copy, Debug)]
pub(super) struct Purchase {
    pub(super) stop: usize,
    pub(super) pump: usize,
    pub(super) price: f64,
    /// The most that can go in, in litres.
    pub(super) most: f64,
}

/// One possible truth that a plan must hold in.
#[derive(Clone, Debug)]
pub(super) struct Scenario {
    pub(super) start: Triple,
    /// A litre of each purchase.
    pub(super) litre: Vec<Triple>,
}

/// The route as numbers.
#[derive(Clone, Debug)]
pub(super) struct Model {
    pub(super) capacity: f64,
    /// `c`.
    pub(super) energy_deficit: f64,
    /// `N / n_g = H + k E`.
    pub(super) molar_excess: f64,
    /// Whether any rule needs the octane number.
    pub(super) has_octane: bool,
    pub(super) legs: Vec<LegNumbers>,
    /// What stopping costs, by stop.
    pub(super) fees: Vec<f64>,
    /// In the order of the stops.
    pub(super) purchases: Vec<Purchase>,
    pub(super) scenarios: Vec<Scenario>,
    /// The most that may be spent.
    pub(super) budget: Option<f64>,
    /// How far inside the windows the blend stays.
    margin: f64,
}

impl Model {
    /// The numbers of a route: over the corners of its box when the plan must hold
    /// over the box, else as expected.
    pub(super) fn new(route: &CheckedRoute, wish: &PlanWanted) -> Self {
        let blend = &route.blend;
        let petrol = blend.petrol_energy.megajoules_per_liter();
        let ratio = blend.ethanol_energy.megajoules_per_liter() / petrol;
        let energy_deficit =
            if matches!(route.burn, Burn::Energy { .. }) { 1.0 - ratio } else { 0.0 };
        let moles_g = blend.moles_per_volume(Share::ZERO).get::<mole_per_liter>();
        let moles_e = blend.moles_per_volume(Share::ONE).get::<mole_per_liter>();
        let capacity = route.tank.capacity.get::<liter>();
        let mut purchases = Vec::new();
        for (stop, place) in route.stops.iter().enumerate() {
            for (pump, fuel) in place.pumps.iter().enumerate() {
                if fuel.closed {
                    continue;
                }
                let price = fuel.price.of(Volume::new::<liter>(1.0)).amount();
                let most = fuel.limit.map_or(capacity, |limit| limit.get::<liter>().min(capacity));
                purchases.push(Purchase { stop, pump, price, most });
            }
        }
        let mut model = Self {
            capacity,
            energy_deficit,
            molar_excess: moles_e / moles_g - (1.0 - energy_deficit),
            has_octane: route.legs.iter().any(|leg| needs_octane(route, leg)),
            legs: Vec::new(),
            fees: route.stops.iter().map(|stop| stop.fixed_cost.amount()).collect(),
            purchases,
            scenarios: Vec::new(),
            budget: wish.budget.map(Money::amount),
            margin: wish.margin.fraction(),
        };
        model.legs =
            route.legs.iter().enumerate().map(|(i, leg)| model.leg(route, i, leg)).collect();
        let points =
            if wish.is_robust { points::corners(route) } else { vec![points::expected(route)] };
        for point in &points {
            model.add_scenario(route, point);
        }
        model
    }

    fn leg(&self, route: &CheckedRoute, index: usize, leg: &Leg) -> LegNumbers {
        let takes = match route.burn {
            Burn::Energy { .. } => {
                let litre = route.blend.petrol_energy.of(Volume::new::<liter>(1.0));
                (leg.energy(&route.burn, &route.blend) / litre).into()
            }
            Burn::Litres(consumption) => leg.litres(consumption).get::<liter>(),
        };
        let mut options: Vec<Choice> = usable_calibrations(route, leg)
            .map(|index| {
                let calibration = &route.calibrations[index];
                let octane = [calibration.ron_min, leg.ron_min].into_iter().flatten();
                let share = self.inside(calibration.low.fraction(), calibration.high.fraction());
                Choice { least: A_BLEND, ..self.option(share, octane.reduce(f64::max)) }
            })
            .collect();
        if options.is_empty() {
            options.push(self.option((0.0, 1.0), leg.ron_min));
        }
        LegNumbers { takes, left: route.least_on_arrival(index).get::<liter>(), options }
    }

    /// A window less the margin at its ends; the ends of the scale need none.
    fn inside(&self, low: f64, high: f64) -> (f64, f64) {
        let least = if low > 0.0 { low + self.margin } else { low };
        let most = if high < 1.0 { high - self.margin } else { high };
        // Of a window narrower than the margins the middle is left.
        let middle = f64::midpoint(low, high);
        if least <= most { (least, most) } else { (middle, middle) }
    }

    /// A window of shares and an octane number as conditions on the composition.
    pub(super) fn option(&self, share: (f64, f64), octane: Option<f64>) -> Choice {
        let u = |share: f64| share / (1.0 - self.energy_deficit * share);
        let octane = octane.map(|least| least - OCTANE_DATUM);
        let least = if octane.is_some() { A_BLEND } else { 0.0 };
        Choice { u: (u(share.0), u(share.1)), share, octane, least }
    }

    /// Asks the plan to hold in one more possible truth.
    pub(super) fn add_scenario(&mut self, route: &CheckedRoute, point: &Point) {
        let moles_g = route.blend.moles_per_volume(Share::ZERO).get::<mole_per_liter>();
        let litre = |share: Share, ron: Option<f64>| {
            let moles = route.blend.moles_per_volume(share).get::<mole_per_liter>() / moles_g;
            let e = share.fraction();
            // Where no rule needs the octane number it may be unknown.
            let surplus = ron.map_or(0.0, |ron| moles * (ron - OCTANE_DATUM));
            Triple { h: 1.0 - self.energy_deficit * e, e, s: surplus }
        };
        let start = Triple::default().plus_times(litre(point.share, route.tank.ron), point.level);
        let litre = self
            .purchases
            .iter()
            .map(|p| litre(point.pumps[p.stop][p.pump], route.stops[p.stop].pumps[p.pump].ron))
            .collect();
        self.scenarios.push(Scenario { start, litre });
    }

    /// The octane surplus that a tank must have, for each unit of `H` at the
    /// composition `u`: `(r - r_0) (1 + k u)`.
    pub(super) fn least_surplus(&self, octane: f64, u: f64) -> f64 {
        octane * (1.0 + self.molar_excess * u)
    }

    /// The litres of each purchase as they stand in the route.
    pub(super) fn bought(&self, route: &CheckedRoute, litres: &[f64]) -> Bought {
        let mut bought = route.nothing_bought();
        for (purchase, &x) in self.purchases.iter().zip(litres) {
            bought[purchase.stop][purchase.pump] = Volume::new::<liter>(x.max(0.0));
        }
        bought
    }

    /// The other way round.
    pub(super) fn litres(&self, bought: &Bought) -> Vec<f64> {
        self.purchases.iter().map(|p| bought[p.stop][p.pump].get::<liter>()).collect()
    }

    /// The places of a stop's purchases.
    pub(super) fn at_stop(&self, stop: usize) -> impl Iterator<Item = usize> + '_ {
        (0..self.purchases.len()).filter(move |&k| self.purchases[k].stop == stop)
    }
}
