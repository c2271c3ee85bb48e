//! The line between pump and rail, and the pressure that it takes.

use std::f64::consts::{LN_10, PI};

use uom::si::acceleration::standard_gravity;
use uom::si::f64::Acceleration;

use crate::quantity::{Length, Pressure, VolumeRate};

use super::fuel_properties::FuelProperties;

/// Flow is laminar below this Reynolds number.
const LAMINAR: f64 = 2300.0;
/// Flow is turbulent above this Reynolds number; nobody knows what it is between.
const TURBULENT: f64 = 4000.0;

/// A line between pump and rail, of one bore. Fittings and filters lose more than
/// most lines and are no part of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FuelLine {
    /// How long it is.
    pub length: Length,
    /// Its inner diameter, above zero.
    pub bore: Length,
    /// Roughness of its wall; drawn tube 1.5 um (from memory).
    pub roughness: Length,
    /// How far its end lies above its beginning.
    pub head: Length,
}

impl FuelLine {
    /// What friction and height take from the pressure.
    ///
    /// Darcy and Weisbach, `dp = f L / D rho V^2 / 2`, with `f = 64 / Re` below
    /// Re 2300 and by Colebrook and White above 4000. Between them a straight line
    /// joins the two losses, so that more flow never loses less.
    pub fn pressure_loss(&self, flow: VolumeRate, fuel: &FuelProperties) -> Pressure {
        let (density, viscosity) = (fuel.density, fuel.viscosity);
        let flow = flow.max(VolumeRate::default());
        let reynolds: f64 = (density * flow * 4.0 / (viscosity * self.bore * PI)).into();
        let relative_roughness: f64 = (self.roughness / self.bore).into();
        // f L / D rho V^2 / 2, with V from the Reynolds number.
        let scale = viscosity * viscosity * self.length
            / (density * self.bore * self.bore * self.bore * 2.0);
        let friction: Pressure = scale * friction_number(reynolds, relative_roughness);
        let lift: Pressure = density * Acceleration::new::<standard_gravity>(1.0) * self.head;
        friction + lift
    }
}

/// `f Re^2`: the friction loss as a pure number, which never falls with flow.
fn friction_number(reynolds: f64, relative_roughness: f64) -> f64 {
    let laminar = |reynolds: f64| 64.0 * reynolds;
    let turbulent = |reynolds: f64| colebrook(reynolds, relative_roughness) * reynolds.powi(2);
    if reynolds <= LAMINAR {
        laminar(reynolds)
    } else if reynolds >= TURBULENT {
        turbulent(reynolds)
    } else {
        let part = (reynolds - LAMINAR) / (TURBULENT - LAMINAR);
        laminar(LAMINAR) * (1.0 - part) + turbulent(TURBULENT) * part
    }
}

/// The Darcy friction factor of `1 / sqrt(f) = -2 log10(e / 3.7 + 2.51 / (Re sqrt(f)))`.
fn colebrook(reynolds: f64, relative_roughness: f64) -> f64 {
    let (rough, smooth) = (relative_roughness / 3.7, 2.51 / reynolds);
    // Newton's method in 1 / sqrt(f), in which the equation is nearly straight: three
    // steps leave less than 1e-8. Always three, so that no jump makes the loss fall.
    let mut root = 6.0;
    for _ in 0..3 {
        let inside = rough + smooth * root;
        let residual = root + 2.0 / LN_10 * inside.ln();
        root -= residual / (1.0 + 2.0 / LN_10 * smooth / inside);
    }
    root.powi(-2)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// fluids 1.3.1, `friction_factor`: Colebrook at Re 1e5, e/D 1e-3; smooth at 1e4.
    #[test]
    fn friction_factors() {
        approx::assert_relative_eq!(colebrook(1e5, 1e-3), 0.022_174_536, max_relative = 1e-5);
        approx::assert_relative_eq!(colebrook(1e4, 0.0), 0.030_882_95, max_relative = 0.005);
    }

    /// The equation itself, over all that a line can be.
    #[test]
    fn three_steps_solve_the_equation() {
        for reynolds in [4e3, 1e4, 1e5, 1e6, 1e7] {
            for roughness in [0.0, 1e-5, 1e-3, 0.02, 0.05] {
                let root = colebrook(reynolds, roughness).powf(-0.5);
                let inside: f64 = roughness / 3.7 + 2.51 / reynolds * root;
                let again = -2.0 * inside.log10();
                approx::assert_relative_eq!(root, again, max_relative = 1e-8);
            }
        }
    }

    #[test]
    fn the_regimes_meet() {
        for (below, above) in [(2299.999, 2300.001), (3999.999, 4000.001)] {
            let (below, above) = (friction_number(below, 1e-3), friction_number(above, 1e-3));
            assert!(below < above && (above / below - 1.0) < 1e-5);
        }
    }
}
