//! Pressure by what it is counted from: the air around or nothing.

use uom::si::pressure::{atmosphere, pascal};

use super::Pressure;

/// A pressure above that of the air around, as a gauge shows it; below zero where
/// there is suction.
///
/// ```
/// use fillwright::quantity::{AbsolutePressure, GaugePressure, Pressure};
/// use uom::si::pressure::kilopascal;
/// let boost = GaugePressure::new(Pressure::new::<kilopascal>(150.0));
/// let air = AbsolutePressure::new(Pressure::new::<kilopascal>(100.0));
/// assert_eq!(boost.absolute(air).get().get::<kilopascal>(), 250.0);
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct GaugePressure(Pressure);

/// A pressure above vacuum.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct AbsolutePressure(Pressure);

impl GaugePressure {
    /// A gauge's reading.
    pub fn new(above_ambient: Pressure) -> Self {
        Self(above_ambient)
    }

    /// What the gauge shows.
    pub fn get(self) -> Pressure {
        self.0
    }

    /// The same pressure above vacuum.
    #[must_use]
    pub fn absolute(self, ambient: AbsolutePressure) -> AbsolutePressure {
        AbsolutePressure(self.0 + ambient.0)
    }
}

impl AbsolutePressure {
    /// A pressure above vacuum.
    pub fn new(above_vacuum: Pressure) -> Self {
        Self(above_vacuum)
    }

    /// The standard atmosphere, 101.325 kPa (ISO 2533:1975).
    pub fn standard_atmosphere() -> Self {
        Self(Pressure::new::<atmosphere>(1.0))
    }

    /// The pressure above vacuum.
    pub fn get(self) -> Pressure {
        self.0
    }

    /// What a gauge would show.
    #[must_use]
    pub fn gauge(self, ambient: Self) -> GaugePressure {
        GaugePressure(self.0 - ambient.0)
    }

    /// Whether it is above vacuum and finite.
    pub fn is_possible(self) -> bool {
        let pascals = self.0.get::<pascal>();
        pascals.is_finite() && pascals > 0.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::pressure::bar;

    #[test]
    fn gauge_and_absolute_differ_by_the_air_around() {
        let air = AbsolutePressure::standard_atmosphere();
        let boost = GaugePressure::new(Pressure::new::<bar>(1.5));
        // ISO 2533:1975: the standard atmosphere is 1.01325 bar.
        approx::assert_relative_eq!(boost.absolute(air).get().get::<bar>(), 2.513_25);
        approx::assert_relative_eq!(boost.absolute(air).gauge(air).get().get::<bar>(), 1.5);
        assert!(!AbsolutePressure::new(Pressure::new::<bar>(0.0)).is_possible());
    }
}
