//! The single-plunger high-pressure pump.

use crate::message::keys::workings;
use std::f64::consts::PI;

use uom::si::angular_velocity::revolution_per_minute;
use uom::si::length::millimeter;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::mass_rate::gram_per_second;
use uom::si::pressure::megapascal;
use uom::si::volume::cubic_millimeter;
use uom::si::volume_rate::cubic_centimeter_per_second;

use crate::quantity::{
    AngularVelocity, Band, DynamicViscosity, GaugePressure, Length, MassRate, Pressure, Volume,
    VolumeRate,
};
use crate::workings::{Arithmetic, Expression, literal, number};

use super::constants as c;
use super::fuel_part::FuelSystemPart;
use super::operating_point::OperatingPoint;
use super::part_of::PartOf;
use super::part_workings::PartWorkings;
use super::requirement::Requirement;
use super::sources::{BALANCE, MURNAGHAN, PLUNGER};
use super::table::OutsideTable;

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
        Volume::new::<cubic_millimeter>(self.stroke())
    }

    /// The volume swept in each time.
    pub fn geometric_flow(&self, speed: AngularVelocity) -> VolumeRate {
        VolumeRate::new::<cubic_centimeter_per_second>(self.swept(self.stroke(), speed))
    }

    /// How much denser the fuel is in the rail than at the inlet, by Murnaghan:
    /// `(1 + n dp / K_0)^(1/n)`; 1 when the rail is no higher.
    pub fn density_ratio(&self) -> f64 {
        self.denser()
    }

    /// What compression leaves of the mass drawn in: the fuel that stays at the top
    /// of the stroke expands again, `1 - c (rho_2 / rho_1 - 1)`; zero when that fills
    /// the stroke.
    pub fn compression_efficiency(&self) -> f64 {
        self.compressed(self.density_ratio()).max(0.0)
    }

    /// The most that the pump delivers, with the doubt in its efficiency:
    /// `rho_1 V_geo eta_c eta_f`. The fuel's density counts as that at the inlet: where
    /// it gets there warm, give a fuel that is as light.
    pub fn delivery(&self, at: &OperatingPoint<'_>) -> Band<MassRate> {
        let swept = self.swept(self.stroke(), at.speed);
        let compressed = self.compression_efficiency();
        self.efficiency.map(|efficiency| {
            MassRate::new::<gram_per_second>(delivered(swept, at, compressed, efficiency))
        })
    }

    /// The volume of a stroke in mm3.
    fn stroke<A: Arithmetic>(&self) -> A {
        let bore = || A::number("d", self.bore.get::<millimeter>());
        A::number("pi", PI) / A::literal(4.0)
            * bore()
            * bore()
            * A::number("h", self.lift.get::<millimeter>())
    }

    /// The volume swept in a second, in cm3, from that of a stroke in mm3.
    fn swept<A: Arithmetic>(&self, stroke: A, speed: AngularVelocity) -> A {
        stroke
            * A::number("z", f64::from(self.lobes))
            * A::number("r", self.drive_ratio)
            * A::number("N", speed.get::<revolution_per_minute>())
            / A::literal(60_000.0)
    }

    fn denser<A: Arithmetic>(&self) -> A {
        let exponent = || c::MURNAGHAN_EXPONENT.in_formula::<A>();
        let rise = (self.rail.get() - self.inlet.get()).get::<megapascal>().max(0.0);
        let strain = exponent() * A::number("dp", rise)
            / A::number("K", self.bulk_modulus.get::<megapascal>());
        (A::literal(1.0) + strain).power(A::literal(1.0) / exponent())
    }

    fn compressed<A: Arithmetic>(&self, denser: A) -> A {
        A::literal(1.0) - A::number("c", self.dead_volume_ratio) * (denser - A::literal(1.0))
    }

    /// How what one pump gives comes about; its symbols end in `own` after the suffix.
    fn derive(&self, workings: &mut PartWorkings<'_>, own: &str) -> Expression {
        let suffix = format!("{}{own}", workings.suffix);
        let workings =
            &mut PartWorkings { lines: workings.lines, suffix: &suffix, at: workings.at };
        let stroke = self.stroke();
        let stroke = workings.add(workings::VOLUME_STROKE, "V", &stroke, (1, "mm3"), &[]);
        let swept = self.swept(stroke, workings.at.speed);
        let swept = workings.add(workings::VOLUME_SWEPT_SECOND, "S", &swept, (2, "cm3/s"), &[]);
        let sources = [MURNAGHAN, c::MURNAGHAN_EXPONENT.source];
        let name = workings::DENSITY_RAIL_OVER_INLET;
        let denser = workings.add(name, "r", &self.denser(), (5, ""), &sources);
        let compressed = self.compressed(denser);
        let delivered = delivered(swept, workings.at, compressed, self.efficiency.expected());
        workings.add(
            workings::WHAT_HIGH_PRESSURE_PUMP_GIVES,
            "G",
            &delivered,
            (2, "g/s"),
            &[PLUNGER],
        )
    }

    /// The greatest flow into the pump as the plunger draws, pi times the mean on a
    /// harmonic cam: what decides whether the inlet cavitates.
    pub fn peak_suction(&self, speed: AngularVelocity) -> VolumeRate {
        self.geometric_flow(speed) * PI
    }
}

/// All high-pressure pumps of an engine. They share the fuel of the direct injectors by
/// what each can deliver.
#[derive(Clone, Copy, Debug)]
pub(super) struct PlungerPumps<'a>(pub(super) &'a [PlungerPump]);

impl PlungerPumps<'_> {
    /// What all of them deliver together.
    fn delivery(&self, at: &OperatingPoint<'_>) -> Band<MassRate> {
        let nothing = Band::exact(MassRate::default());
        self.0.iter().fold(nothing, |sum, pump| {
            let one = pump.delivery(at);
            let expected = sum.expected() + one.expected();
            Band::enclosing(expected, [sum.low() + one.low(), sum.high() + one.high()])
                .unwrap_or(Band::exact(expected))
        })
    }
}

impl FuelSystemPart for PlungerPumps<'_> {
    fn id(&self) -> PartOf {
        PartOf::Plungers
    }

    fn limit(&self) -> f64 {
        self.0.iter().map(|pump| pump.limit).fold(1.0, f64::min)
    }

    fn capacity(&self, used: f64, at: &OperatingPoint<'_>) -> Result<Band<MassRate>, OutsideTable> {
        Ok(self.delivery(at).map(|flow| flow * used))
    }

    fn used(&self, flow: MassRate, at: &OperatingPoint<'_>) -> Result<Band<f64>, OutsideTable> {
        let delivery = self.delivery(at);
        let of = |delivered: MassRate| (flow / delivered).value;
        let expected = of(delivery.expected());
        Ok(Band::enclosing(expected, [of(delivery.high()), of(delivery.low())])
            .unwrap_or(Band::exact(expected)))
    }

    fn enough(&self, larger: f64, _: MassRate, _: &OperatingPoint<'_>) -> Requirement {
        let strokes = self.0.iter().map(PlungerPump::stroke_volume);
        Requirement::StrokeVolume(strokes.sum::<Volume>() * larger)
    }

    fn holds_pressure(&self) -> bool {
        true
    }

    fn derive(
        &self,
        workings: &mut PartWorkings<'_>,
        flow: Expression,
        share: f64,
    ) -> Option<Expression> {
        let flow = flow * number("s", share);
        let mut delivered: Option<Expression> = None;
        // Equal pumps are worked out once.
        for (place, alike) in self.0.chunk_by(|a, b| a == b).enumerate() {
            let Some(pump) = alike.first() else { continue };
            let own = if place == 0 { String::new() } else { format!("_{}", place + 1) };
            let one_gives = pump.derive(workings, &own);
            #[expect(clippy::cast_precision_loss, reason = "a car has few pumps")]
            let together = match alike.len() {
                1 => one_gives,
                count => literal(count as f64) * one_gives,
            };
            delivered = Some(match delivered {
                None => together,
                Some(sum) => sum + together,
            });
        }
        let used = flow / delivered.unwrap_or_else(|| literal(0.0));
        let used = workings.add(workings::USE_WHAT_PUMPS_GIVE, "U", &used, (4, ""), &[BALANCE]);
        Some(number("L", self.limit()) / used - literal(1.0))
    }
}

/// The fuel delivered in g/s, from the volume swept in cm3/s.
fn delivered<A: Arithmetic>(
    swept: A,
    at: &OperatingPoint<'_>,
    compressed: A,
    efficiency: f64,
) -> A {
    let density = A::number("rho", at.fuel.density.get::<kilogram_per_cubic_meter>());
    swept * density / A::literal(1000.0) * compressed * A::number("eta", efficiency)
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
