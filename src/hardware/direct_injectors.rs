//! Injectors in the cylinders of a four-stroke engine.

use crate::message::keys::workings;
use std::f64::consts::PI;

use uom::si::angle::{degree, radian};
use uom::si::angular_velocity::radian_per_second;
use uom::si::time::{millisecond, second};

use crate::quantity::{Angle, Band, GaugePressure, MassRate, Pressure, Time};
use crate::workings::{Expression, literal, number};

use super::fuel_part::FuelSystemPart;
use super::nozzle::RatedFlow;
use super::operating_point::OperatingPoint;
use super::part_of::PartOf;
use super::part_workings::PartWorkings;
use super::requirement::Requirement;
use super::sources::CYCLE;
use super::table::OutsideTable;

/// Injectors in the cylinders of a four-stroke engine, each opening once a cycle
/// and only while the piston's position allows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DirectInjectors {
    /// How many.
    pub count: u32,
    /// What one passes when open.
    pub rated: RatedFlow,
    /// Pressure in the rail.
    pub rail: GaugePressure,
    /// Pressure in the cylinder while they flow. The later, the higher: about 3 bar
    /// early in the compression, 15 bar late.
    pub back_pressure: GaugePressure,
    /// Turn of the crank from the earliest start to the latest end of injection,
    /// above zero. From memory: 210 degrees, at best 260; earlier fuel wets the
    /// piston, later fuel does not mix.
    pub window: Angle,
    /// Time after the command for which nothing flows.
    pub opening_offset: Time,
    /// The largest use of the window, 0 to 1.
    pub limit: f64,
}

impl DirectInjectors {
    /// What all of them pass when held open, `n m`.
    pub fn static_flow(&self, at: &OperatingPoint<'_>) -> MassRate {
        let difference = self.rail.get() - self.back_pressure.get();
        self.rated.mass_flow(difference, at.fuel.density) * f64::from(self.count)
    }

    /// Share of the window that a fuel flow takes, `(m_inj / m + t_off) / t_window`:
    /// above 1 it cannot be done, infinite when nothing flows.
    pub fn window_use(&self, flow: MassRate, at: &OperatingPoint<'_>) -> f64 {
        let open: f64 =
            if flow > MassRate::default() { (flow / self.static_flow(at)).into() } else { 0.0 };
        open / self.window_share() + self.offset_share(at)
    }

    /// The fuel that they give at a use of the window; zero when opening takes all.
    pub fn capacity(&self, window_use: f64, at: &OperatingPoint<'_>) -> MassRate {
        self.static_flow(at) * self.open_share(window_use, at)
    }

    /// The rail pressure at which a fuel flow takes a share of the window; infinite
    /// when opening takes all of that share.
    pub fn required_rail(
        &self,
        flow: MassRate,
        at: &OperatingPoint<'_>,
        window_use: f64,
    ) -> GaugePressure {
        let open = self.open_share(window_use, at);
        let each = flow / f64::from(self.count);
        let difference = if each > MassRate::default() {
            self.rated.difference_for(each / open, at.fuel.density)
        } else {
            Pressure::default()
        };
        GaugePressure::new(self.back_pressure.get() + difference)
    }

    /// Share of the cycle for which they can flow within a use of the window.
    fn open_share(&self, window_use: f64, at: &OperatingPoint<'_>) -> f64 {
        ((window_use - self.offset_share(at)) * self.window_share()).max(0.0)
    }

    /// The window as a share of the cycle's two turns.
    fn window_share(&self) -> f64 {
        self.window.get::<radian>() / (4.0 * PI)
    }

    /// The opening offset as a share of the window.
    fn offset_share(&self, at: &OperatingPoint<'_>) -> f64 {
        self.opening_offset.get::<second>() * at.speed.get::<radian_per_second>()
            / self.window.get::<radian>()
    }
}

impl FuelSystemPart for DirectInjectors {
    fn id(&self) -> PartOf {
        PartOf::Direct
    }

    fn limit(&self) -> f64 {
        self.limit
    }

    fn capacity(&self, used: f64, at: &OperatingPoint<'_>) -> Result<Band<MassRate>, OutsideTable> {
        Ok(Band::exact(Self::capacity(self, used, at)))
    }

    fn used(&self, flow: MassRate, at: &OperatingPoint<'_>) -> Result<Band<f64>, OutsideTable> {
        Ok(Band::exact(self.window_use(flow, at)))
    }

    fn enough(&self, larger: f64, flow: MassRate, at: &OperatingPoint<'_>) -> Requirement {
        Requirement::DirectFlow {
            rated: self.rated.scaled(larger),
            rail: self.required_rail(flow, at, self.limit),
        }
    }

    fn derive(
        &self,
        workings: &mut PartWorkings<'_>,
        flow: Expression,
        share: f64,
    ) -> Option<Expression> {
        let flow = flow * number("s", share);
        let difference = self.rail.get() - self.back_pressure.get();
        let open = self.rated.derive(workings, difference);
        let speed = workings.speed();
        let window = number("W", self.window.get::<degree>()) / (literal(6.0) * speed.clone())
            * literal(1000.0);
        let window = workings.add(workings::TIME_INJECTION, "t", &window, (3, "ms"), &[CYCLE]);
        let each = flow / number("n", f64::from(self.count)) * literal(120_000.0) / speed;
        let each = workings.add(workings::FUEL_EACH_INJECTION, "i", &each, (1, "mg"), &[CYCLE]);
        let offset = number("t_o", self.opening_offset.get::<millisecond>());
        let needed = each / open;
        let used = (needed.clone() + offset.clone()) / window.clone();
        workings.add(workings::USE_TIME, "U", &used, (4, ""), &[CYCLE]);
        Some((number("L", self.limit) * window - offset) / needed - literal(1.0))
    }
}
