//! What an electric pump gives, as it was measured.

use crate::message::keys::hardware_problems;
use thiserror::Error;
use uom::si::electric_potential::volt;
use uom::si::pressure::{bar, pascal};
use uom::si::volume_rate::{cubic_meter_per_second, liter_per_minute};

use crate::quantity::{ElectricPotential, Pressure, VolumeRate};

use super::table::{OutsideTable, locate, out_of_order};

/// Why values do not make a table of a pump's flow.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum PumpTableError {
    /// There are too few pressures or voltages.
    TooSmall {
        /// How many pressures were given.
        pressures: usize,
        /// How many voltages were given.
        voltages: usize,
    },
    /// The flows are not one for each pressure and voltage.
    Shape {
        /// The row, from 1.
        row: usize,
        /// How many flows it holds.
        given: usize,
        /// How many it must hold.
        allowed: usize,
    },
    /// The number of rows is not that of the voltages.
    Rows {
        /// How many rows were given.
        given: usize,
        /// How many there must be.
        allowed: usize,
    },
    /// The pressures do not rise.
    Pressures {
        /// A pressure, in bar.
        before: f64,
        /// The one after it, in bar.
        after: f64,
    },
    /// The voltages do not rise.
    Voltages {
        /// A voltage, in V.
        before: f64,
        /// The one after it, in V.
        after: f64,
    },
    /// A flow is below zero or not a number.
    Flow {
        /// The flow given, in L/min.
        given: f64,
    },
    /// The flow does not fall as the pressure rises.
    Rising {
        /// A flow, in L/min.
        before: f64,
        /// The one at the next pressure, in L/min.
        after: f64,
    },
}

#[derive(Clone, Copy, Debug, PartialEq)]
struct Point {
    pressure: Pressure,
    flow: VolumeRate,
}

/// The flow of a pump over the pressure that it works against, at one voltage.
///
/// Read with straight lines between measured points and never beyond them.
#[derive(Clone, Debug, PartialEq)]
pub struct PumpCurve {
    points: Vec<Point>,
}

impl PumpCurve {
    /// A curve from two or more pairs of pressure, rising, and flow, falling.
    ///
    /// # Errors
    /// When there are too few, or out of order, or a flow is below zero.
    pub fn new(pairs: &[(Pressure, VolumeRate)]) -> Result<Self, PumpTableError> {
        if pairs.len() < 2 {
            return Err(PumpTableError::TooSmall { pressures: pairs.len(), voltages: 1 });
        }
        if let Some((before, after)) = out_of_order(pairs.iter().map(|(p, _)| p.get::<bar>())) {
            return Err(PumpTableError::Pressures { before, after });
        }
        let flows = || pairs.iter().map(|(_, flow)| flow.get::<liter_per_minute>());
        if let Some(given) = flows().find(|flow| !(*flow >= 0.0 && flow.is_finite())) {
            return Err(PumpTableError::Flow { given });
        }
        if let Some((before, after)) = out_of_order(flows().map(|flow| -flow)) {
            return Err(PumpTableError::Rising { before: -before, after: -after });
        }
        let points = pairs.iter().map(|&(pressure, flow)| Point { pressure, flow }).collect();
        Ok(Self { points })
    }

    /// The flow against a pressure.
    ///
    /// # Errors
    /// When the pressure is outside the curve.
    pub fn flow(&self, pressure: Pressure) -> Result<VolumeRate, OutsideTable> {
        self.flow_inside(pressure).ok_or_else(|| {
            let (low, high) = self.pressures();
            outside(pressure, low, high)
        })
    }

    /// The pressure against which it gives a flow.
    ///
    /// # Errors
    /// When the flow is outside the curve.
    pub fn pressure(&self, flow: VolumeRate) -> Result<Pressure, OutsideTable> {
        self.pressure_inside(flow).ok_or_else(|| {
            let (low, high) = self.flows();
            OutsideTable {
                what: hardware_problems::PUMP_FLOW,
                unit: "L/min",
                given: flow.get::<liter_per_minute>(),
                low: low.get::<liter_per_minute>(),
                high: high.get::<liter_per_minute>(),
            }
        })
    }

    /// The lowest and the highest pressure of the curve.
    pub fn pressures(&self) -> (Pressure, Pressure) {
        let end = |point: Option<&Point>| point.map_or(Pressure::default(), |at| at.pressure);
        (end(self.points.first()), end(self.points.last()))
    }

    /// The smallest and the largest flow of the curve.
    pub fn flows(&self) -> (VolumeRate, VolumeRate) {
        let end = |point: Option<&Point>| point.map_or(VolumeRate::default(), |at| at.flow);
        (end(self.points.last()), end(self.points.first()))
    }

    fn flow_inside(&self, pressure: Pressure) -> Option<VolumeRate> {
        let at = pressure.get::<pascal>();
        let (below, above, part) = locate(&self.points, at, |row| row.pressure.get::<pascal>())?;
        let (low, high) = (self.points[below].flow, self.points[above].flow);
        Some(low + (high - low) * part)
    }

    fn pressure_inside(&self, flow: VolumeRate) -> Option<Pressure> {
        let step = |row: &Point| -row.flow.get::<cubic_meter_per_second>();
        let at = -flow.get::<cubic_meter_per_second>();
        let (below, above, part) = locate(&self.points, at, step)?;
        let (low, high) = (self.points[below].pressure, self.points[above].pressure);
        Some(low + (high - low) * part)
    }
}

pub(super) fn outside(given: Pressure, low: Pressure, high: Pressure) -> OutsideTable {
    let [given, low, high] = [given, low, high].map(|pressure| pressure.get::<bar>());
    OutsideTable { what: hardware_problems::PUMP_PRESSURES, unit: "bar", given, low, high }
}

/// The flow of a pump over pressure and voltage.
///
/// Between measured voltages it is read with straight lines too: a motor turns with
/// the voltage less what its current costs, so flow is a straight line in voltage
/// and pressure. It is *not* in proportion to the voltage at a fixed pressure: the
/// loss is larger, and grows with pressure.
#[derive(Clone, Debug, PartialEq)]
pub struct PumpTable {
    pressures: Vec<Pressure>,
    rows: Vec<(ElectricPotential, PumpCurve)>,
}

impl PumpTable {
    /// A table from rising pressures and voltages: a row of flows for each voltage,
    /// a flow in it for each pressure.
    ///
    /// # Errors
    /// When the table is not whole or out of order.
    pub fn new(
        pressures: Vec<Pressure>,
        voltages: &[ElectricPotential],
        flows: &[Vec<VolumeRate>],
    ) -> Result<Self, PumpTableError> {
        if pressures.len() < 2 || voltages.is_empty() {
            return Err(PumpTableError::TooSmall {
                pressures: pressures.len(),
                voltages: voltages.len(),
            });
        }
        if flows.len() != voltages.len() {
            return Err(PumpTableError::Rows { given: flows.len(), allowed: voltages.len() });
        }
        if let Some((before, after)) =
            out_of_order(voltages.iter().map(ElectricPotential::get::<volt>))
        {
            return Err(PumpTableError::Voltages { before, after });
        }
        let mut rows = Vec::with_capacity(voltages.len());
        for (index, (voltage, flows)) in voltages.iter().zip(flows).enumerate() {
            if flows.len() != pressures.len() {
                let (given, allowed) = (flows.len(), pressures.len());
                return Err(PumpTableError::Shape { row: index + 1, given, allowed });
            }
            let pairs: Vec<_> = pressures.iter().copied().zip(flows.iter().copied()).collect();
            rows.push((*voltage, PumpCurve::new(&pairs)?));
        }
        Ok(Self { pressures, rows })
    }

    /// The curve at a voltage: that under load, at the pump.
    ///
    /// # Errors
    /// When the voltage is outside the table.
    pub fn at(&self, voltage: ElectricPotential) -> Result<PumpCurve, OutsideTable> {
        let step = |row: &(ElectricPotential, PumpCurve)| row.0.get::<volt>();
        let given = voltage.get::<volt>();
        let (below, above, part) = locate(&self.rows, given, step).ok_or_else(|| OutsideTable {
            what: hardware_problems::PUMP_VOLTAGES,
            unit: "V",
            given,
            low: self.rows.first().map_or(f64::NAN, step),
            high: self.rows.last().map_or(f64::NAN, step),
        })?;
        let (low, high) = (&self.rows[below].1.points, &self.rows[above].1.points);
        let points =
            self.pressures.iter().zip(low.iter().zip(high)).map(|(&pressure, (low, high))| Point {
                pressure,
                flow: low.flow + (high.flow - low.flow) * part,
            });
        Ok(PumpCurve { points: points.collect() })
    }
}
