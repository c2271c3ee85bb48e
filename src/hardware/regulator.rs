//! The regulator: how the pressure in the rail is held.

use crate::quantity::{GaugePressure, Pressure};

/// How the pressure in the rail is held.
///
/// ```
/// use fillwright::hardware::Regulator;
/// use fillwright::quantity::{GaugePressure, Pressure};
/// use uom::si::pressure::bar;
/// let boost = GaugePressure::new(Pressure::new::<bar>(1.5));
/// let four = Pressure::new::<bar>(4.0);
/// // Boost takes nothing from a referenced rail, and 1.5 bar from a fixed one.
/// assert_eq!(Regulator::Referenced(four).difference(boost).get::<bar>(), 4.0);
/// assert_eq!(Regulator::Fixed(GaugePressure::new(four)).difference(boost).get::<bar>(), 2.5);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Regulator {
    /// So much above the manifold, whatever the boost.
    Referenced(Pressure),
    /// So much above the air around, whatever the boost.
    Fixed(GaugePressure),
}

impl Regulator {
    /// The pressure that drives fuel through an injector, from rail to manifold.
    pub fn difference(self, manifold: GaugePressure) -> Pressure {
        match self {
            Self::Referenced(above) => above,
            Self::Fixed(rail) => rail.get() - manifold.get(),
        }
    }

    /// The pressure in the rail.
    pub fn rail(self, manifold: GaugePressure) -> GaugePressure {
        match self {
            Self::Referenced(above) => GaugePressure::new(above + manifold.get()),
            Self::Fixed(rail) => rail,
        }
    }
}
