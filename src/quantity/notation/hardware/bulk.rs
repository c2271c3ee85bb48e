//! The fields for a bulk modulus and for a volume in litres, with their units.

use super::field::QuantityField;
use super::unit::Unit;
use crate::quantity::notation::UnitSystem::Us;
use crate::quantity::{Pressure, Volume};

/// Cubic metres in a cubic inch: the inch is 25.4 mm exactly (international yard and
/// pound agreement, 1959).
const CUBIC_INCH: f64 = 0.0254 * 0.0254 * 0.0254;

/// The bulk modulus of a liquid.
pub static BULK_MODULUS: QuantityField<Pressure> = QuantityField {
    choosable: None,
    main: Unit::new("MPa", 1e6, 0, &["mpa"]),
    others: &[Unit::new("GPa", 1e9, 3, &["gpa"]), Unit::new("bar", 1e5, 0, &["bar"])],
    refused: &[],
    low: 1e8,
    high: 9.99e9,
};

/// What an engine displaces, or an amount of fluid that is mixed for it.
pub static LITRES: QuantityField<Volume> = QuantityField {
    choosable: None,
    main: Unit::new("L", 1e-3, 2, &["l", "ltr", "litre", "litres", "liter", "liters"]),
    others: &[
        Unit::new("cc", 1e-6, 0, &["cc", "ccm", "cm3", "ml"]),
        Unit::new("cu in", CUBIC_INCH, 1, &["cu in", "in3", "cui", "cubic inches"]).at_home(&[Us]),
    ],
    refused: &[],
    low: 1e-5,
    high: 0.0999,
};
