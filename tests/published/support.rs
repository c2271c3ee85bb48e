//! What the checks share.

use fillwright::fuel::{HydrocarbonBase, Mixture, MixtureParts};
use fillwright::quantity::{MassDensity, Share, Volume};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::volume::liter;

/// Holds a value to a published one.
#[track_caller]
pub(crate) fn near(value: f64, published: f64, tolerance: f64) {
    assert!(
        (value - published).abs() <= tolerance,
        "{value} is not within {tolerance} of the published {published}"
    );
}

/// Holds that a mistaken value would be noticed at the tolerance of the source.
#[track_caller]
pub(crate) fn mistaken(mistake: f64, published: f64, tolerance: f64) {
    assert!(
        (mistake - published).abs() > tolerance,
        "the mistaken {mistake} would pass for the published {published} +- {tolerance}"
    );
}

pub(crate) fn percent(percent: f64) -> Share {
    Share::from_percent(percent).unwrap()
}

pub(crate) fn liters(volume: f64) -> Volume {
    Volume::new::<liter>(volume)
}

pub(crate) fn density(density: f64) -> MassDensity {
    MassDensity::new::<kilogram_per_cubic_meter>(density)
}

/// A litre of the default petrol with so much ethanol, in percent by volume.
pub(crate) fn blend(ethanol: f64) -> Mixture {
    blend_of(&HydrocarbonBase::default(), ethanol)
}

/// A litre of some petrol with so much ethanol, in percent by volume.
pub(crate) fn blend_of(base: &HydrocarbonBase, ethanol: f64) -> Mixture {
    Mixture::splash(liters(1.0), percent(ethanol), base)
}

/// The default petrol, ethanol, methanol and water, in litres.
pub(crate) fn parts(hydrocarbon: f64, ethanol: f64, methanol: f64, water: f64) -> Mixture {
    let [hydrocarbon, ethanol, methanol, water] =
        [hydrocarbon, ethanol, methanol, water].map(liters);
    let parts = MixtureParts { hydrocarbon, ethanol, methanol, water, ..MixtureParts::default() };
    Mixture::from_parts(&parts, &HydrocarbonBase::default())
}
