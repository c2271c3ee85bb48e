//! Specific consumption: fuel for the work at the crank.

/// Grams in a kilogram times joules in a kilowatt-hour.
const GRAMS_PER_KILOWATT_HOUR: f64 = 1e3 * 3.6e6;

/// Kilograms in an avoirdupois pound, exact (international yard and pound
/// agreement, 1959).
pub(crate) const KILOGRAMS_PER_POUND: f64 = 0.453_592_37;

/// Watts in a horsepower of 550 foot-pounds force per second: 550 x 0.3048 m x
/// 0.453 592 37 kg x 9.806 65 m/s2, all exact.
pub(crate) const WATTS_PER_HORSEPOWER: f64 = 550.0 * 0.3048 * KILOGRAMS_PER_POUND * 9.806_65;

/// Fuel mass for each unit of work: what a brake or a dynamometer finds as
/// brake-specific fuel consumption.
///
/// It says nothing of whether it is possible: see
/// [`SPECIFIC_CONSUMPTION`](super::notation::quantities::SPECIFIC_CONSUMPTION)
/// for the range that is taken from a person.
///
/// ```
/// use fillwright::quantity::SpecificConsumption;
/// let rich = SpecificConsumption::of_pounds_per_horsepower_hour(0.6);
/// assert!((rich.grams_per_kilowatt_hour() - 364.966).abs() < 1e-3);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct SpecificConsumption {
    kilograms_per_joule: f64,
}

impl SpecificConsumption {
    /// From grams per kilowatt-hour.
    pub fn of_grams_per_kilowatt_hour(value: f64) -> Self {
        Self { kilograms_per_joule: value / GRAMS_PER_KILOWATT_HOUR }
    }

    /// From pounds per horsepower-hour: 608.277 g/kWh each, from the exact pound
    /// and the horsepower of 550 ft lbf/s.
    pub fn of_pounds_per_horsepower_hour(value: f64) -> Self {
        Self { kilograms_per_joule: value * KILOGRAMS_PER_POUND / (WATTS_PER_HORSEPOWER * 3600.0) }
    }

    /// From kilograms per joule, the unit of the SI.
    pub fn of_kilograms_per_joule(value: f64) -> Self {
        Self { kilograms_per_joule: value }
    }

    /// In grams per kilowatt-hour.
    pub fn grams_per_kilowatt_hour(self) -> f64 {
        self.kilograms_per_joule * GRAMS_PER_KILOWATT_HOUR
    }

    /// In pounds per horsepower-hour.
    pub fn pounds_per_horsepower_hour(self) -> f64 {
        self.kilograms_per_joule * WATTS_PER_HORSEPOWER * 3600.0 / KILOGRAMS_PER_POUND
    }

    /// In kilograms per joule.
    pub fn kilograms_per_joule(self) -> f64 {
        self.kilograms_per_joule
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    // pint 0.25.3, a general-purpose library of units: 1 hp is 745.6998715823 W and
    // 1 lb/(hp h) is 608.2773878418 g/kWh.
    #[test]
    fn a_pound_per_horsepower_hour_is_608_grams_per_kilowatt_hour() {
        assert_relative_eq!(WATTS_PER_HORSEPOWER, 745.699_871_582_3, max_relative = 1e-12);
        let one = SpecificConsumption::of_pounds_per_horsepower_hour(1.0);
        assert_relative_eq!(one.grams_per_kilowatt_hour(), 608.277_387_841_8, max_relative = 1e-12);
        // The negative: with the metric horsepower it would be 616.7.
        let metric = 453.592_37 / 0.735_498_75;
        assert!((one.grams_per_kilowatt_hour() - metric).abs() > 8.0);
    }

    #[test]
    fn each_unit_returns() {
        let value = SpecificConsumption::of_grams_per_kilowatt_hour(270.0);
        assert_relative_eq!(value.grams_per_kilowatt_hour(), 270.0, max_relative = 1e-14);
        // 75 ug/J is 270 g/kWh: 75e-9 x 3.6e9, arithmetic.
        assert_relative_eq!(value.kilograms_per_joule(), 75e-9, max_relative = 1e-14);
        let same =
            SpecificConsumption::of_pounds_per_horsepower_hour(value.pounds_per_horsepower_hour());
        assert_relative_eq!(same.grams_per_kilowatt_hour(), 270.0, max_relative = 1e-14);
    }
}
