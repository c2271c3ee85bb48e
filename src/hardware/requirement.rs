//! What a part has to be for a wanted reserve, all else as it is.

use super::nozzle::RatedFlow;
use crate::quantity::{GaugePressure, Pressure, Volume, VolumeRate};

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
