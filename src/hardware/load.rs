//! The load at one point: the blend, and the power that the engine is to give on it.

use super::demand::{PowerRoute, air_for};
use super::fuel_properties::FuelProperties;
use super::injection_fluid::FluidNozzle;
use crate::fuel::Content;
use crate::quantity::{AngularVelocity, Band, CrankPower, GaugePressure, MassRate, Share};

/// A blend with what the fuel system needs to know of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Blend {
    /// Its ethanol share.
    pub share: Share,
    /// Its properties.
    pub fuel: FuelProperties,
}

impl Blend {
    /// The blend with this ethanol share.
    pub fn of(share: Share) -> Self {
        Self { share, fuel: FuelProperties::of_share(share) }
    }

    /// The blends at the ends of what a fuel may hold, and the one that is expected.
    pub fn over(content: &Content) -> Band<Self> {
        content.at_ends(|fuel| Self {
            share: fuel.ethanol_share().unwrap_or_default(),
            fuel: FuelProperties::of_mixture(fuel),
        })
    }
}

/// The power that the engine is to give at one speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LoadPoint {
    /// Speed of the crankshaft.
    pub speed: AngularVelocity,
    /// Power at the crank, with what is not known of the driveline.
    pub power: Band<CrankPower>,
    /// Pressure in the manifold above the air around.
    pub manifold: GaugePressure,
}

/// How much fuel the engine takes for its power.
///
/// ```
/// use fillwright::hardware::{Blend, BrakeSpecificFuelConsumption, Demand, FuelProperties, PowerRoute};
/// use fillwright::quantity::{Band, CrankPower, Power, Share};
/// use uom::si::{mass_rate::gram_per_second, power::kilowatt};
/// let demand = Demand {
///     route: PowerRoute {
///         consumption: BrakeSpecificFuelConsumption::of_grams_per_kilowatt_hour(360.0),
///         reference: FuelProperties::of_share(Share::ZERO),
///     },
///     reference: Share::ZERO,
///     doubt: 0.08,
///     gain_at_e85: 0.0,
///     lambda: 0.80,
/// };
/// let power = Band::exact(CrankPower::new(Power::new::<kilowatt>(100.0)));
/// let flow = demand.fuel_flow(power, &Blend::of(Share::ZERO));
/// assert!((flow.expected().get::<gram_per_second>() - 10.0).abs() < 1e-9);
/// assert!((flow.high().get::<gram_per_second>() - 10.8).abs() < 1e-9);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Demand {
    /// What the engine burns on the blend for which that is known.
    pub route: PowerRoute,
    /// That blend.
    pub reference: Share,
    /// How far the specific consumption may be off, relative, either way, 0 to 1.
    pub doubt: f64,
    /// How much better the engine turns E85 into work than that blend, relative;
    /// in between and beyond by ethanol share.
    pub gain_at_e85: f64,
    /// Lambda at full load.
    pub lambda: f64,
}

/// The ethanol share for which a gain in efficiency is given.
const GAIN_GIVEN_FOR: f64 = 0.85;

impl Demand {
    /// How much better the engine turns this blend into work than the reference.
    pub fn gain(&self, share: Share) -> f64 {
        let way = GAIN_GIVEN_FOR - self.reference.fraction();
        // A consumption known for E85 itself leaves nothing to scale by.
        if way <= 0.0 {
            return 0.0;
        }
        self.gain_at_e85 * (share.fraction() - self.reference.fraction()) / way
    }

    /// The fuel for a power on a blend.
    pub fn fuel_flow(&self, power: Band<CrankPower>, blend: &Blend) -> Band<MassRate> {
        let gain = self.gain(blend.share);
        let flow = |power: CrankPower| self.route.fuel_flow(power, &blend.fuel, gain);
        let expected = flow(power.expected());
        let low = flow(power.low()) * (1.0 - self.doubt);
        let high = flow(power.high()) * (1.0 + self.doubt);
        Band::enclosing(expected, [low, high]).unwrap_or(Band::exact(expected))
    }

    /// The dry air that goes with a fuel flow on a blend.
    pub fn air_flow(&self, fuel: Band<MassRate>, blend: &Blend) -> Band<MassRate> {
        fuel.map(|flow| air_for(flow, self.lambda, &blend.fuel))
    }
}

/// The fuel that injection fluid stands in for, if the blend is cut so as to hold
/// lambda.
pub(super) fn stood_in_for(
    nozzle: &FluidNozzle,
    manifold: GaugePressure,
    fuel: &FuelProperties,
) -> MassRate {
    nozzle.flow(manifold) * (nozzle.fluid.stoichiometric_air() / fuel.stoichiometric_afr)
}
