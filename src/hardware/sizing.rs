//! How large the parts of a system have to be.

use super::headroom::{Load, PartOverSpeed};
use super::load::Blend;
use super::operating_point::OperatingPoint;
use super::requirement::Requirement;
use super::system::FuelSystem;
use crate::quantity::{Band, MassRate};

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
