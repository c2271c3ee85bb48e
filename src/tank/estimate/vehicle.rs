//! The tank and the car around it, as far as the estimate needs them.

use uom::si::length::kilometer;
use uom::si::volume::liter;

use crate::fuel::{EnergyDensity, HydrocarbonBase, Mixture};

use crate::quantity::Consumption;
use crate::quantity::{Length, Share, Volume};

/// The tank and the car around it, as far as the estimate needs them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Vehicle {
    /// What the tank holds when the nozzle clicks off.
    pub capacity: Volume,
    /// What the car uses on the reference blend; none when unknown.
    pub consumption: Option<Consumption>,
    /// The ethanol share of the reference blend.
    pub reference: Share,
}

/// The same in litres, as the filters compute.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Car {
    /// Litres at the click.
    pub(super) capacity: f64,
    /// Litres of petrol without ethanol per kilometre.
    pub(super) petrol_per_kilometre: Option<f64>,
    /// What a litre of ethanol lacks in energy against one of petrol, as a fraction.
    pub(super) ethanol_lacks: f64,
}

impl Car {
    pub(super) fn new(vehicle: &Vehicle) -> Self {
        let base = HydrocarbonBase::default();
        let of_a_litre = |share| {
            Mixture::splash(Volume::new::<liter>(1.0), share, &base)
                .energy_density()
                .map_or(0.0, EnergyDensity::megajoules_per_liter)
        };
        let (petrol, ethanol) = (of_a_litre(Share::ZERO), of_a_litre(Share::ONE));
        let ethanol_lacks = if petrol > 0.0 { 1.0 - ethanol / petrol } else { 0.0 };
        let of_reference = 1.0 - ethanol_lacks * vehicle.reference.fraction();
        Self {
            capacity: vehicle.capacity.get::<liter>().max(0.0),
            petrol_per_kilometre: vehicle
                .consumption
                .map(|consumption| consumption.litres_per_100_km() / 100.0 * of_reference),
            ethanol_lacks,
        }
    }

    /// Litres of petrol that a distance takes; none when the consumption is unknown.
    pub(super) fn petrol_for(&self, distance: Length) -> Option<f64> {
        Some(self.petrol_per_kilometre? * distance.get::<kilometer>().max(0.0))
    }
}
