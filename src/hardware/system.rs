//! The fuel system of a car, any of whose parts may be missing.

use super::direct_injectors::DirectInjectors;
use super::fuel_part::{FittedPart, FuelSystemPart};
use super::part_of::PartOf;
use super::plunger_pump::{PlungerPump, PlungerPumps};
use super::port_injectors::{PortInjectors, PortSet};
use super::supply::Supply;

/// The fuel system of a car: any of its parts may be missing, and then is not
/// judged.
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
    pub fn parts(&self) -> Vec<FittedPart<'_>> {
        let port_share = self.through_ports();
        let port = (0..self.port.len()).map(|place| PortSet { sets: &self.port, place });
        let plungers = PlungerPumps(&self.plungers);
        let plungers = (!self.plungers.is_empty()).then_some(plungers);
        let all = port.map(|it| fitted(it, port_share));
        let all = all.chain(self.direct.map(|it| fitted(it, 1.0 - port_share)));
        let all = all.chain(plungers.map(|it| fitted(it, 1.0 - port_share)));
        let all = all.chain(self.supply.as_ref().map(|it| fitted(it, 1.0)));
        all.filter(|part| part.share > 0.0).collect()
    }

    /// One of these parts.
    pub fn part(&self, id: PartOf) -> Option<FittedPart<'_>> {
        self.parts().into_iter().find(|part| part.id() == id)
    }

    /// The share of the engine's fuel that runs through the ports.
    fn through_ports(&self) -> f64 {
        let has_high_pressure = self.direct.is_some() || !self.plungers.is_empty();
        match (self.port.is_empty(), has_high_pressure) {
            (true, _) => 0.0,
            (false, false) => 1.0,
            (false, true) => self.port_share,
        }
    }
}

fn fitted<'a>(part: impl FuelSystemPart + 'a, share: f64) -> FittedPart<'a> {
    FittedPart { part: Box::new(part), share }
}
