//! The fuel system of a car, any of whose parts may be missing.

use super::direct_injectors::DirectInjectors;
use super::operating_point::OperatingPoint;
use super::plunger_pump::PlungerPump;
use super::port_injectors::PortInjectors;
use super::supply::Supply;
use super::table::OutsideTable;
use crate::quantity::{Band, MassRate};

/// A part of a [`FuelSystem`] that can be the first to give.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum PartOf {
    /// The set of port injectors with this place in the system.
    Port(usize),
    /// The direct injectors.
    Direct,
    /// The high-pressure pumps together.
    Plungers,
    /// The low-pressure supply.
    Supply,
}

/// The fuel system of a car: any of its parts may be missing, and then is not
/// judged.
///
/// All fuel flows here are those of the whole engine, whatever part of it runs
/// through one component: so the flow that a component supports can be compared
/// with the engine's demand, and with that of every other component.
#[derive(Clone, Debug, PartialEq)]
pub struct FuelSystem {
    /// Sets of port injectors. They share the fuel of the ports by their static
    /// flow, that is, they are open for equally long.
    pub port: Vec<PortInjectors>,
    /// The direct injectors.
    pub direct: Option<DirectInjectors>,
    /// The share of the fuel that goes through the ports where there is a
    /// high-pressure side too, 0 to 1.
    pub port_share: f64,
    /// High-pressure pumps. They share the fuel of the direct injectors by what
    /// each can deliver.
    pub plungers: Vec<PlungerPump>,
    /// The low-pressure supply; all fuel goes through it.
    pub supply: Option<Supply>,
}

impl FuelSystem {
    /// The parts that are there and have anything to do.
    pub fn parts(&self) -> Vec<PartOf> {
        let port = (0..self.port.len()).map(PartOf::Port);
        let direct = self.direct.iter().map(|_| PartOf::Direct);
        let plungers = self.plungers.first().map(|_| PartOf::Plungers);
        let supply = self.supply.iter().map(|_| PartOf::Supply);
        let all = port.chain(direct).chain(plungers).chain(supply);
        all.filter(|part| self.passes(*part) > 0.0).collect()
    }

    /// The share of the engine's fuel that runs through a part.
    pub fn passes(&self, part: PartOf) -> f64 {
        let has_high_pressure = self.direct.is_some() || !self.plungers.is_empty();
        let port = match (self.port.is_empty(), has_high_pressure) {
            (true, _) => 0.0,
            (false, false) => 1.0,
            (false, true) => self.port_share,
        };
        match part {
            PartOf::Port(_) => port,
            PartOf::Direct | PartOf::Plungers => 1.0 - port,
            PartOf::Supply => 1.0,
        }
    }

    /// The use of a part beyond which nobody should plan: that of the duty, of the
    /// injection window, or of what a pump gives.
    pub fn limit(&self, part: PartOf) -> f64 {
        match part {
            PartOf::Port(at) => self.port.get(at).map_or(1.0, |set| set.limit),
            PartOf::Direct => self.direct.map_or(1.0, |direct| direct.limit),
            PartOf::Plungers => self.plungers.iter().map(|pump| pump.limit).fold(1.0, f64::min),
            PartOf::Supply => self.supply.as_ref().map_or(1.0, |supply| supply.limit),
        }
    }

    /// The fuel of the whole engine at which a part comes to a use.
    ///
    /// # Errors
    /// When a pump's table does not reach the pressure at which it would work.
    pub fn capacity(
        &self,
        part: PartOf,
        used: f64,
        at: &OperatingPoint<'_>,
    ) -> Result<Band<MassRate>, OutsideTable> {
        let own = match part {
            PartOf::Port(set) => {
                // All sets are open for equally long: when this one is at the limit,
                // the others pass as much as that time lets them.
                let Some(injectors) = self.port.get(set) else {
                    return Ok(Band::exact(MassRate::default()));
                };
                let open = injectors.open_share(used, at);
                let all: MassRate = self.port.iter().map(|set| set.static_flow(at)).sum();
                Band::exact(all * open)
            }
            PartOf::Direct => Band::exact(
                self.direct.map_or_else(MassRate::default, |direct| direct.capacity(used, at)),
            ),
            PartOf::Plungers => self.delivery(at).map(|flow| flow * used),
            PartOf::Supply => Band::exact(match &self.supply {
                Some(supply) => supply.capacity(used, at)?,
                None => MassRate::default(),
            }),
        };
        let share = self.passes(part);
        Ok(own.map(|flow| flow / share))
    }

    /// The use to which a fuel flow of the whole engine brings a part; above 1 it
    /// cannot be done.
    ///
    /// # Errors
    /// As [`capacity`](Self::capacity).
    pub fn used(
        &self,
        part: PartOf,
        flow: MassRate,
        at: &OperatingPoint<'_>,
    ) -> Result<Band<f64>, OutsideTable> {
        let own = flow * self.passes(part);
        Ok(match part {
            PartOf::Port(set) => {
                let all: MassRate = self.port.iter().map(|set| set.static_flow(at)).sum();
                let one = self.port.get(set).map_or(f64::INFINITY, |set| {
                    set.duty(own * (set.static_flow(at) / all).value, at)
                });
                Band::exact(one)
            }
            PartOf::Direct => {
                Band::exact(self.direct.map_or(f64::INFINITY, |it| it.window_use(own, at)))
            }
            PartOf::Plungers => {
                let delivery = self.delivery(at);
                let of = |delivered: MassRate| (own / delivered).value;
                let expected = of(delivery.expected());
                Band::enclosing(expected, [of(delivery.high()), of(delivery.low())])
                    .unwrap_or(Band::exact(expected))
            }
            PartOf::Supply => Band::exact(match &self.supply {
                Some(supply) => {
                    let wanted = own / at.fuel.density;
                    (wanted / supply.available(wanted, at)?).value
                }
                None => f64::INFINITY,
            }),
        })
    }

    /// What all high-pressure pumps deliver together.
    fn delivery(&self, at: &OperatingPoint<'_>) -> Band<MassRate> {
        let nothing = Band::exact(MassRate::default());
        self.plungers.iter().fold(nothing, |sum, pump| {
            let one = pump.delivery(at);
            let expected = sum.expected() + one.expected();
            Band::enclosing(expected, [sum.low() + one.low(), sum.high() + one.high()])
                .unwrap_or(Band::exact(expected))
        })
    }
}
