//! The limits that the load crosses, and which of them comes first.

use super::engine::SetLimit;
use super::reading::HardwareReading;
use crate::hardware::Headroom;
use crate::quantity::{AngularVelocity, Band, MassRate};

/// A limit that is crossed on the curve that is judged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CrossedLimit {
    /// The form of the limit.
    pub form: u32,
    /// The lowest engine speed from which it is crossed.
    pub from: AngularVelocity,
    /// Whether it is crossed as expected; else only at worst.
    pub is_expected: bool,
}

impl CrossedLimit {
    /// The limits that are crossed: those that are as expected before those that are at
    /// worst, and of these the one at the lowest speed first, since an engine that is
    /// driven up meets it first.
    pub(super) fn all(
        reading: &HardwareReading,
        target: usize,
        speeds: &[AngularVelocity],
        headroom: &Headroom,
    ) -> Vec<Self> {
        let by_curve = reading.curves.get(target).into_iter().flat_map(|curve| &curve.crossings);
        let by_curve = by_curve.map(|(form, crossing)| Self {
            form: *form,
            from: crossing.from,
            is_expected: true,
        });
        let by_air = reading.limits.iter().filter_map(|(form, limit)| {
            let SetLimit::Air(rated) = *limit else { return None };
            let from = |flow: fn(&Band<MassRate>) -> MassRate| {
                first_above(speeds, headroom.air.iter().map(flow), rated)
            };
            let (from, is_expected) = match from(Band::expected) {
                Some(from) => (from, true),
                None => (from(Band::high)?, false),
            };
            Some(Self { form: *form, from, is_expected })
        });
        let mut all: Vec<Self> = by_curve.chain(by_air).collect();
        all.sort_by(|a, b| {
            b.is_expected.cmp(&a.is_expected).then(a.from.value.total_cmp(&b.from.value))
        });
        all
    }
}

/// The lowest speed from which a flow is above a limit, straight between the speeds that
/// are worked out; none where it stays at or below it.
fn first_above(
    speeds: &[AngularVelocity],
    flows: impl Iterator<Item = MassRate>,
    limit: MassRate,
) -> Option<AngularVelocity> {
    let mut before: Option<(AngularVelocity, MassRate)> = None;
    for (&speed, flow) in speeds.iter().zip(flows) {
        if flow > limit {
            return Some(before.map_or(speed, |(slower, less)| {
                let part: f64 = ((limit - less) / (flow - less)).into();
                slower + (speed - slower) * part
            }));
        }
        before = Some((speed, flow));
    }
    None
}
