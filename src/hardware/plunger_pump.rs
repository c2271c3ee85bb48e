//! The single-plunger high-pressure pump.

use std::f64::consts::PI;

use uom::si::pressure::megapascal;

use crate::quantity::{
    AngularVelocity, Band, DynamicViscosity, GaugePressure, Length, MassRate, Pressure, Volume,
    VolumeRate,
};

use super::constants as c;
use super::demand::cycle_time;
use super::operating_point::OperatingPoint;

/// A high-pressure pump with one plunger on a cam.
///
/// It gives so much for each turn, so against what the engine takes each cycle it is
/// tightest at peak *torque*; injectors are tightest at peak power.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlungerPump {
    /// Diameter of the plunger.
    pub bore: Length,
    /// Lift of the cam.
    pub lift: Length,
    /// Strokes for each turn of the pump's cam.
    pub lobes: u32,
    /// Turns of the pump's cam for each turn of the crank; a half on a camshaft.
    pub drive_ratio: f64,
    /// Volume that stays at the top of the stroke relative to the stroke's, 0 or
    /// more; 0.5 to 2 is usual (from memory).
    pub dead_volume_ratio: f64,
    /// Bulk modulus of the fuel at the inlet, above zero.
    pub bulk_modulus: Pressure,
    /// What filling and leakage leave, 0 to 1; see [`Self::usual_efficiency`].
    pub efficiency: Band<f64>,
    /// Pressure in the rail.
    pub rail: GaugePressure,
    /// Pressure at the inlet.
    pub inlet: GaugePressure,
    /// The largest use of the delivery, 0 to 1.
    pub limit: f64,
}

impl PlungerPump {
    /// What filling and leakage leave when nothing is known: 0.85 +- 0.05, from
    /// memory.
    pub fn usual_efficiency() -> Band<f64> {
        let (expected, doubt) = (c::PLUNGER_EFFICIENCY.value, c::PLUNGER_EFFICIENCY_DOUBT.value);
        Band::enclosing(expected, [expected - doubt, expected + doubt])
            .unwrap_or(Band::exact(expected))
    }

    /// The bulk modulus when nothing is known of the fuel; petrol and ethanol differ
    /// by less than half a per cent in what is delivered.
    pub fn usual_bulk_modulus() -> Pressure {
        Pressure::new::<megapascal>(c::FUEL_BULK_MODULUS.value)
    }

    /// The volume that one stroke sweeps, `V_s = pi / 4 d^2 L`.
    pub fn stroke_volume(&self) -> Volume {
        self.bore * self.bore * self.lift * (PI / 4.0)
    }

    /// The volume swept in each time.
    pub fn geometric_flow(&self, speed: AngularVelocity) -> VolumeRate {
        // A cycle is two turns of the crank.
        let strokes = 2.0 * self.drive_ratio * f64::from(self.lobes);
        self.stroke_volume() * strokes / cycle_time(speed)
    }

    /// How much denser the fuel is in the rail than at the inlet, by Murnaghan:
    /// `(1 + n dp / K_0)^(1/n)`; 1 when the rail is no higher.
    pub fn density_ratio(&self) -> f64 {
        let exponent = c::MURNAGHAN_EXPONENT.value;
        let rise = (self.rail.get() - self.inlet.get()).max(Pressure::default());
        let strain: f64 = (rise / self.bulk_modulus).into();
        (1.0 + exponent * strain).powf(1.0 / exponent)
    }

    /// What compression leaves of the mass drawn in: the fuel that stays at the top
    /// of the stroke expands again, `1 - c (rho_2 / rho_1 - 1)`; zero when that fills
    /// the stroke.
    pub fn compression_efficiency(&self) -> f64 {
        (1.0 - self.dead_volume_ratio * (self.density_ratio() - 1.0)).max(0.0)
    }

    /// The most that the pump delivers, with the doubt in its efficiency:
    /// `rho_1 V_geo eta_c eta_f`. The fuel's density counts as that at the inlet: where
    /// it gets there warm, give a fuel that is as light.
    pub fn delivery(&self, at: &OperatingPoint<'_>) -> Band<MassRate> {
        let filled: MassRate = at.fuel.density * self.geometric_flow(at.speed);
        let compressed = filled * self.compression_efficiency();
        self.efficiency.map(|efficiency| compressed * efficiency)
    }

    /// The greatest flow into the pump as the plunger draws, pi times the mean on a
    /// harmonic cam: what decides whether the inlet cavitates.
    pub fn peak_suction(&self, speed: AngularVelocity) -> VolumeRate {
        self.geometric_flow(speed) * PI
    }
}

/// What leaks past a plunger that lies in the middle of its bore while pressure is
/// on it, `Q = pi d h^3 dp / (12 mu L)`; up to 2.5 times that when it lies to one
/// side.
pub fn leakage(
    bore: Length,
    gap: Length,
    seal_length: Length,
    difference: Pressure,
    viscosity: DynamicViscosity,
) -> VolumeRate {
    let conductance = bore * gap * gap * gap / (viscosity * seal_length);
    conductance * difference * (PI / 12.0)
}

/// Share of the stroke's volume that is delivered when the valve is shut for the
/// last share `command`, 0 to 1, of a harmonic cam's way up: `(1 - cos(pi u)) / 2`.
///
/// ```
/// use fillwright::hardware::delivered_fraction;
/// // A command of 90 % is no reserve of 10 %.
/// assert!((delivered_fraction(0.9) - 0.9755).abs() < 1e-4);
/// ```
pub fn delivered_fraction(command: f64) -> f64 {
    (1.0 - (PI * command.clamp(0.0, 1.0)).cos()) / 2.0
}
