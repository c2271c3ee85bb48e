//! What a route must satisfy before anything is worked out from it.

use thiserror::Error;
use uom::si::length::kilometer;
use uom::si::volume::liter;

use crate::calibration::FluidState;
use crate::quantity::{Money, Volume};

use super::route::{Leg, Pump, Route};

/// Factors outside this are slips of the pen.
const FACTORS: std::ops::RangeInclusive<f64> = 0.1..=10.0;
/// Octane numbers outside this are slips of the pen.
const OCTANES: std::ops::RangeInclusive<f64> = 40.0..=160.0;

/// Why a route cannot be worked out from what was given. Stops, legs and pumps
/// are counted from 0 in the fields and from 1 in the text.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum RouteError {
    /// The tank has no size.
    NoCapacity,
    /// More is said to be in the tank than it holds.
    Overfull {
        /// The level given, in litres.
        level_l: f64,
        /// The tank's size, in litres.
        capacity_l: f64,
    },
    /// A level to keep is above the brim.
    ReserveAboveBrim {
        /// The level asked for, in litres.
        level_l: f64,
        /// The tank's size, in litres.
        capacity_l: f64,
    },
    /// Petrol or ethanol holds no energy or moles, or ethanol more energy than petrol.
    Blend,
    /// There is nothing to drive.
    NoLeg,
    /// Stops and legs do not alternate.
    StopsAndLegs {
        /// How many stops there are.
        stops: usize,
        /// How many legs there are.
        legs: usize,
    },
    /// A distance is no distance.
    Distance {
        /// The leg.
        leg: usize,
    },
    /// A factor is out of range.
    Factor {
        /// The leg.
        leg: usize,
        /// The factor given.
        given: f64,
    },
    /// A leg asks for a calibration that is not in the list.
    UnknownCalibration {
        /// The leg.
        leg: usize,
    },
    /// All calibrations that a leg allows need injection fluid.
    FluidNeeded {
        /// The leg.
        leg: usize,
    },
    /// A window is the wrong way round.
    WindowReversed {
        /// The calibration.
        calibration: usize,
    },
    /// An octane number is out of range.
    Octane {
        /// The number given.
        given: f64,
    },
    /// A leg needs an octane number, but that of the tank is not known.
    TankOctaneMissing {
        /// The leg.
        leg: usize,
    },
    /// A leg needs an octane number, but that of a pump is not known.
    PumpOctaneMissing {
        /// The stop.
        stop: usize,
        /// The pump.
        pump: usize,
    },
    /// The most that may be bought is no volume.
    Limit {
        /// The stop.
        stop: usize,
        /// The pump.
        pump: usize,
    },
    /// A price is no price.
    Price {
        /// The stop.
        stop: usize,
        /// The pump.
        pump: usize,
    },
}

pub(super) fn check(route: &Route) -> Result<(), RouteError> {
    tank(route)?;
    blend(route)?;
    if route.legs.is_empty() {
        return Err(RouteError::NoLeg);
    }
    let (stops, legs) = (route.stops.len(), route.legs.len());
    if stops != legs {
        return Err(RouteError::StopsAndLegs { stops, legs });
    }
    for (calibration, given) in route.calibrations.iter().enumerate() {
        if given.low > given.high {
            return Err(RouteError::WindowReversed { calibration });
        }
        octane(given.ron_min)?;
    }
    for (index, given) in route.legs.iter().enumerate() {
        leg(route, index, given)?;
    }
    for (stop, place) in route.stops.iter().enumerate() {
        for (pump, fuel) in place.pumps.iter().enumerate() {
            self::pump(stop, pump, fuel)?;
        }
    }
    octane_known(route)
}

fn tank(route: &Route) -> Result<(), RouteError> {
    let litres = |volume: Volume| volume.get::<liter>();
    let capacity_l = litres(route.tank.capacity);
    if !(capacity_l > 0.0 && capacity_l.is_finite()) {
        return Err(RouteError::NoCapacity);
    }
    let level_l = litres(route.tank.level.high());
    // Not a number is refused as well.
    if !(litres(route.tank.level.low()) >= 0.0 && level_l <= capacity_l) {
        return Err(RouteError::Overfull { level_l, capacity_l });
    }
    for level in [Some(route.tank.reserve), route.final_level].into_iter().flatten() {
        let level_l = litres(level);
        if !(0.0..=capacity_l).contains(&level_l) {
            return Err(RouteError::ReserveAboveBrim { level_l, capacity_l });
        }
    }
    octane(route.tank.ron)
}

fn blend(route: &Route) -> Result<(), RouteError> {
    let petrol = route.blend.petrol_energy.megajoules_per_liter();
    let ethanol = route.blend.ethanol_energy.megajoules_per_liter();
    let moles = &route.blend.moles;
    let possible = |value: f64| value.is_finite() && value > 0.0;
    let fits = possible(petrol)
        && possible(ethanol)
        && ethanol <= petrol
        && possible(moles.hydrocarbon.value)
        && possible(moles.ethanol.value);
    if fits { Ok(()) } else { Err(RouteError::Blend) }
}

fn leg(route: &Route, leg: usize, given: &Leg) -> Result<(), RouteError> {
    let distance = given.distance.get::<kilometer>();
    if !(distance.is_finite() && distance >= 0.0) {
        return Err(RouteError::Distance { leg });
    }
    if !FACTORS.contains(&given.factor) {
        return Err(RouteError::Factor { leg, given: given.factor });
    }
    if given.calibrations.iter().any(|&index| index >= route.calibrations.len()) {
        return Err(RouteError::UnknownCalibration { leg });
    }
    if !given.calibrations.is_empty() && usable_calibrations(route, given).next().is_none() {
        return Err(RouteError::FluidNeeded { leg });
    }
    octane(given.ron_min)
}

/// The calibrations of a leg that do not wait for injection fluid, by their place
/// in the route's list.
pub(super) fn usable_calibrations<'a>(
    route: &'a Route,
    leg: &'a Leg,
) -> impl Iterator<Item = usize> + 'a {
    let has_fluid = route.injection_fluid == FluidState::Ready;
    leg.calibrations
        .iter()
        .copied()
        .filter(move |&index| has_fluid || !route.calibrations[index].needs_fluid)
}

/// Whether the leg cannot be judged without octane numbers.
pub(super) fn needs_octane(route: &Route, leg: &Leg) -> bool {
    leg.ron_min.is_some()
        || usable_calibrations(route, leg).any(|index| route.calibrations[index].ron_min.is_some())
}

fn pump(stop: usize, pump: usize, fuel: &Pump) -> Result<(), RouteError> {
    octane(fuel.ron)?;
    if let Some(limit) = fuel.limit {
        let litres = limit.get::<liter>();
        if !(litres.is_finite() && litres >= 0.0) {
            return Err(RouteError::Limit { stop, pump });
        }
    }
    let price = fuel.price.of(Volume::new::<liter>(1.0)).amount();
    if Money::new(price).is_err() {
        return Err(RouteError::Price { stop, pump });
    }
    Ok(())
}

fn octane(given: Option<f64>) -> Result<(), RouteError> {
    match given {
        Some(given) if !OCTANES.contains(&given) => Err(RouteError::Octane { given }),
        _ => Ok(()),
    }
}

fn octane_known(route: &Route) -> Result<(), RouteError> {
    let Some(leg) = route.legs.iter().position(|leg| needs_octane(route, leg)) else {
        return Ok(());
    };
    if route.tank.ron.is_none() && route.tank.level.high() > Volume::default() {
        return Err(RouteError::TankOctaneMissing { leg });
    }
    for (stop, place) in route.stops.iter().enumerate() {
        for (pump, fuel) in place.pumps.iter().enumerate() {
            if fuel.ron.is_none() && !fuel.closed {
                return Err(RouteError::PumpOctaneMissing { stop, pump });
            }
        }
    }
    Ok(())
}
