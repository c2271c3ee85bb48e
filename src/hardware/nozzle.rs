//! A nozzle's rated flow, and its flow at another pressure and with another liquid.

use crate::message::keys::workings;
use thiserror::Error;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::mass_rate::gram_per_second;
use uom::si::pressure::bar;

use crate::quantity::{MassDensity, MassRate, Pressure, VolumeRate};
use crate::workings::{Arithmetic, Expression};

use super::part_workings::PartWorkings;
use super::sources::ORIFICE;

/// Why a flow is not the rating of a nozzle.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum NozzleError {
    /// The flow is not above zero.
    Flow {
        /// The flow given, in g/s.
        given: f64,
    },
    /// The pressure difference is not above zero.
    Difference {
        /// The pressure difference given, in bar.
        given: f64,
    },
    /// The density is that of no liquid that flows are rated with.
    Density {
        /// The density given, in kg/m3.
        given: f64,
    },
}

/// Liquids lie in this range, in kg/m3; it catches g/cm3 taken for kg/m3.
pub(crate) const LIGHTEST: f64 = 400.0;
pub(crate) const HEAVIEST: f64 = 1500.0;

/// What a nozzle or an open injector passes: the flow of a test fluid at a pressure
/// difference. One without the others says nothing, so the three stay together.
///
/// By Bernoulli, with the same coefficient of discharge for every fluid,
/// `m = m_1 sqrt(dp / dp_1) sqrt(rho / rho_1)`. Cold ethanol has three times the
/// viscosity of n-heptane and may pass a few per cent less (from memory).
///
/// ```
/// use fillwright::hardware::{RatedFlow, constants::N_HEPTANE_DENSITY};
/// use fillwright::quantity::{MassDensity, Pressure, VolumeRate};
/// use uom::si::mass_density::kilogram_per_cubic_meter;
/// use uom::si::{pressure::bar, volume_rate::liter_per_minute};
/// let (three, four) = (Pressure::new::<bar>(3.0), Pressure::new::<bar>(4.0));
/// let rated = RatedFlow::of_volume(
///     VolumeRate::new::<liter_per_minute>(1.0),
///     three,
///     N_HEPTANE_DENSITY.density(),
/// )?;
/// let petrol = MassDensity::new::<kilogram_per_cubic_meter>(745.0);
/// let flow = |difference| {
///     rated.volume_flow(difference, petrol).get::<liter_per_minute>()
/// };
/// assert!((flow(three) - 0.9581).abs() < 1e-4); // not 1: petrol is denser
/// assert!((flow(four) - 1.1063).abs() < 1e-4);
/// # Ok::<(), fillwright::hardware::NozzleError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RatedFlow {
    mass_flow: MassRate,
    difference: Pressure,
    density: MassDensity,
}

impl RatedFlow {
    /// A rating by volume, at a pressure difference, with a fluid of 400 to 1500
    /// kg/m3.
    ///
    /// # Errors
    /// When one of the three is not possible.
    pub fn of_volume(
        flow: VolumeRate,
        difference: Pressure,
        density: MassDensity,
    ) -> Result<Self, NozzleError> {
        Self::of_mass(flow * density, difference, density)
    }

    /// A rating by mass, at a pressure difference, with a fluid of 400 to 1500
    /// kg/m3.
    ///
    /// # Errors
    /// When one of the three is not possible.
    pub fn of_mass(
        mass_flow: MassRate,
        difference: Pressure,
        density: MassDensity,
    ) -> Result<Self, NozzleError> {
        let given = density.get::<kilogram_per_cubic_meter>();
        if !(LIGHTEST..=HEAVIEST).contains(&given) {
            return Err(NozzleError::Density { given });
        }
        let given = difference.get::<bar>();
        if !(given > 0.0 && given.is_finite()) {
            return Err(NozzleError::Difference { given });
        }
        let given = mass_flow.get::<gram_per_second>();
        if !(given > 0.0 && given.is_finite()) {
            return Err(NozzleError::Flow { given });
        }
        Ok(Self { mass_flow, difference, density })
    }

    /// Mass of a liquid that passes at a pressure difference; none at or below zero.
    pub fn mass_flow(&self, difference: Pressure, density: MassDensity) -> MassRate {
        if difference > Pressure::default() {
            MassRate::new::<gram_per_second>(self.formula(difference, density))
        } else {
            MassRate::default()
        }
    }

    /// Volume of a liquid that passes at a pressure difference; none at or below
    /// zero.
    pub fn volume_flow(&self, difference: Pressure, density: MassDensity) -> VolumeRate {
        self.mass_flow(difference, density) / density
    }

    /// The pressure difference that a mass flow of a liquid needs; zero for none.
    pub fn difference_for(&self, mass_flow: MassRate, density: MassDensity) -> Pressure {
        let share: f64 = (mass_flow / self.per_root_drive(density)).into();
        self.difference * share.max(0.0).powi(2)
    }

    /// The rating of a nozzle that passes so many times as much; zero or less
    /// closes it.
    #[must_use]
    pub fn scaled(self, factor: f64) -> Self {
        Self { mass_flow: self.mass_flow * factor.max(0.0), ..self }
    }

    /// The rating by volume of the test fluid.
    pub fn rated_volume(&self) -> VolumeRate {
        self.mass_flow / self.density
    }

    /// The rating by mass of the test fluid.
    pub fn rated_mass(&self) -> MassRate {
        self.mass_flow
    }

    /// The pressure difference that it was rated at.
    pub fn rated_difference(&self) -> Pressure {
        self.difference
    }

    /// The density of the fluid that it was rated with.
    pub fn rated_density(&self) -> MassDensity {
        self.density
    }

    /// The mass that passes at a pressure difference, in g/s.
    fn formula<A: Arithmetic>(&self, difference: Pressure, density: MassDensity) -> A {
        let ratio = A::number("dp", difference.get::<bar>())
            / A::number("p_r", self.difference.get::<bar>())
            * A::number("rho", density.get::<kilogram_per_cubic_meter>())
            / A::number("rho_t", self.density.get::<kilogram_per_cubic_meter>());
        A::number("m_r", self.mass_flow.get::<gram_per_second>()) * ratio.sqrt()
    }

    /// How the flow of one nozzle, held open, comes about at a pressure difference.
    pub(super) fn derive(
        &self,
        workings: &mut PartWorkings<'_>,
        difference: Pressure,
    ) -> Expression {
        let flow = self.formula(difference, workings.at.fuel.density);
        let name = workings::FLOW_ONE_INJECTOR_HELD_OPEN_ON;
        workings.add(name, "q", &flow, (3, "g/s"), &[ORIFICE])
    }

    /// Flow of a liquid at the pressure difference of the rating.
    fn per_root_drive(&self, density: MassDensity) -> MassRate {
        let ratio: f64 = (density / self.density).into();
        self.mass_flow * ratio.sqrt()
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    fn density(value: f64) -> MassDensity {
        MassDensity::new::<kilogram_per_cubic_meter>(value)
    }

    fn of_mass(flow: f64, difference: f64, rho: f64) -> Result<RatedFlow, NozzleError> {
        RatedFlow::of_mass(
            MassRate::new::<gram_per_second>(flow),
            Pressure::new::<bar>(difference),
            density(rho),
        )
    }

    #[test]
    fn nothing_flows_backwards() {
        let rated = of_mass(10.0, 3.0, 684.0).unwrap();
        for difference in [-1.0, 0.0, f64::NAN] {
            let flow = rated.mass_flow(Pressure::new::<bar>(difference), density(745.0));
            assert_eq!(flow, MassRate::default());
        }
        let closed = rated.scaled(-1.0).mass_flow(Pressure::new::<bar>(3.0), density(745.0));
        assert_eq!(closed, MassRate::default());
    }

    #[test]
    fn a_rating_needs_all_three() {
        assert!(matches!(of_mass(0.0, 3.0, 684.0), Err(NozzleError::Flow { .. })));
        assert!(matches!(of_mass(10.0, 0.0, 684.0), Err(NozzleError::Difference { .. })));
        // 0.684 g/cm3, given as if it were kg/m3.
        assert!(matches!(of_mass(10.0, 3.0, 0.684), Err(NozzleError::Density { .. })));
        assert!(of_mass(f64::INFINITY, 3.0, 684.0).is_err());
    }

    #[test]
    fn the_pressure_for_a_flow_gives_that_flow() {
        let rated = of_mass(10.0, 3.0, 684.0).unwrap();
        let wanted = MassRate::new::<gram_per_second>(13.0);
        let difference = rated.difference_for(wanted, density(780.0));
        let flow = rated.mass_flow(difference, density(780.0));
        approx::assert_relative_eq!(flow.value, wanted.value, max_relative = 1e-12);
    }
}
