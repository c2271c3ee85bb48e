//! A route as it is typed: the car, the stops with their pumps, the legs.

use serde::{Deserialize, Serialize};
use uom::si::length::kilometer;

use crate::calibration::{Calibration, FluidState};
use crate::fuel::Extras;
use crate::tank::Tank;

use crate::quantity::Consumption;
use crate::quantity::{Band, Length, Money, Share, UnitPrice, Volume};

use super::blend::BlendModel;

/// A drive with chances to refill: stop 0 comes before leg 0, and so on.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Route {
    /// The tank at the start. Its reserve is what must be left at the end of every leg.
    pub tank: Tank,
    /// What is in it beside petrol and ethanol.
    pub extras: Extras,
    /// What a litre of a blend holds. The same for every route that is typed, so it is
    /// not handed on with one.
    #[serde(skip)]
    pub blend: BlendModel,
    /// What the car burns.
    pub burn: Burn,
    /// The calibrations that it may run.
    pub calibrations: Vec<Calibration>,
    /// Whether there is injection fluid aboard.
    pub injection_fluid: FluidState,
    /// The places to refill, in order; as many as there are legs.
    pub stops: Vec<Stop>,
    /// What is driven after each stop.
    pub legs: Vec<Leg>,
    /// What the tank must hold at least at the end, where that is more than the reserve.
    pub final_level: Option<Volume>,
}

/// How consumption depends on the blend.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub enum Burn {
    /// Equal energy for equal distance, as measured on a fuel of this share.
    Energy {
        /// What the car used.
        consumption: Consumption,
        /// The fuel it used.
        on: Share,
    },
    /// Equal litres for equal distance, whatever the blend.
    Litres(Consumption),
}

/// A place to refill.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Stop {
    /// The pumps.
    pub pumps: Vec<Pump>,
    /// What it costs to refill here at all, fuel apart: a detour, a toll, an hour.
    pub fixed_cost: Money,
}

/// A fuel at a stop.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Pump {
    /// The ethanol share that may come out of it.
    pub share: Band<Share>,
    /// What it may hold beside petrol and ethanol. It bears on the air-fuel ratio and on
    /// the verdicts; a litre counts with the energy of petrol and ethanol alone.
    pub extras: Extras,
    /// What it costs.
    pub price: UnitPrice,
    /// Its research octane number, at least.
    pub ron: Option<f64>,
    /// The most that may be bought.
    pub limit: Option<Volume>,
    /// Whether it is out of use.
    pub closed: bool,
}

/// A stretch between two stops.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Leg {
    /// How far it is.
    pub distance: Length,
    /// How much more it takes than the car's consumption: 1 is normal, more on a
    /// motorway, in mountains or on a circuit. From 0.1 to 10.
    pub factor: f64,
    /// The calibrations of which one has to be usable all along, by their place in
    /// the route's list; none asked for where empty.
    pub calibrations: Vec<usize>,
    /// The research octane number that the blend must have at least.
    pub ron_min: Option<f64>,
}

/// Litres of each pump at each stop, `bought[stop][pump]`.
pub type Bought = Vec<Vec<Volume>>;

impl Leg {
    /// The distance that would take as much without the factor.
    pub fn weighted_distance(&self) -> Length {
        Length::new::<kilometer>(self.distance.get::<kilometer>() * self.factor)
    }
}
