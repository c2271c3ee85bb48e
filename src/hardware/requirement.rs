//! What a part has to be for a wanted reserve, all else as it is.

use super::headroom::{Load, PartOverSpeed};
use super::load::Blend;
use super::nozzle::RatedFlow;
use super::operating_point::OperatingPoint;
use super::system::FuelSystem;
use crate::quantity::{Band, GaugePressure, MassRate, Pressure, Volume, VolumeRate};

/// What a part has to be for a wanted reserve, all else as it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Requirement {
    /// Port injectors: the flow of one, at the pressure and with the fluid of the
    /// present rating.
    PortFlow(RatedFlow),
    /// Direct injectors: either the flow of one, as above, or the rail pressure with
    /// the present ones; infinite where opening takes the whole window.
    DirectFlow {
        /// The flow of one.
        rated: RatedFlow,
        /// The rail pressure.
        rail: GaugePressure,
    },
    /// High-pressure pumps: the stroke volume of all together, at the present lobes
    /// and drive.
    StrokeVolume(Volume),
    /// The low-pressure supply: what it has to give at a pressure and the voltage
    /// there, all pumps together.
    SupplyFlow {
        /// The flow.
        flow: VolumeRate,
        /// The pressure at the pumps.
        pressure: Pressure,
    },
}

impl FuelSystem {
    /// What a part has to be so that its reserve is as wanted: as expected, and with
    /// everything that is not known at its worst.
    ///
    /// `flows` are those of the headroom from which the part was taken. Nothing where
    /// the part has no figure for every speed.
    pub fn requirements(
        &self,
        part: &PartOverSpeed,
        load: &Load,
        blends: &Band<Blend>,
        flows: &[Band<MassRate>],
        wanted: f64,
    ) -> Option<[Requirement; 2]> {
        let tightest = part.tightest?;
        let (point, flow) = (load.points.get(tightest.at)?, flows.get(tightest.at)?);
        let cases = [
            (blends.expected(), tightest.reserve.expected(), flow.expected()),
            (blends.high(), tightest.reserve.low(), flow.high()),
        ];
        let fitted = self.part(part.part)?;
        let enough = |(blend, reserve, flow): (Blend, f64, MassRate)| {
            let at =
                OperatingPoint { speed: point.speed, manifold: point.manifold, fuel: &blend.fuel };
            fitted.enough((1.0 + wanted) / (1.0 + reserve), flow * (1.0 + wanted), &at)
        };
        Some(cases.map(enough))
    }
}
