//! The octane number after a fill, over the box of what is possible.

use super::check::CheckedProblem;
use super::worst::Pours;
use crate::quantity::Band;

impl CheckedProblem {
    /// The octane number after these pours, given that of the tank's contents
    /// and of each fuel, RON or MON alike: as expected, and its exact extremes over the
    /// level, all ethanol shares and the meter's error in each dose.
    ///
    /// Each number is a floor that holds for the finished fuel whatever its
    /// ethanol share; the share only changes how many moles, hence how much
    /// weight, a litre of it has. `None` where a part has no number.
    pub fn worst_octane(
        &self,
        pours: &Pours,
        of_tank: Option<f64>,
        of_offers: &[Option<f64>],
    ) -> Option<Band<f64>> {
        let number = |fuel: Option<usize>| match fuel {
            Some(fuel) => of_offers.get(fuel).copied().flatten(),
            None => of_tank,
        };
        let contents = self.contents(pours, |fuel, share| {
            let moles = (self.moles_per_litre(share.low()), self.moles_per_litre(share.high()));
            Some(((moles.0.min(moles.1), moles.0.max(moles.1)), number(fuel)?))
        })?;
        let amounts = self.amounts(pours, self.level());
        let expected = self.octane("ON", &amounts, of_tank, |fuel| number(Some(fuel)))?;
        let (low, high) = (contents.lowest()?.mean, contents.highest()?.mean);
        // Rounding may leave the expected one a hair outside.
        Band::new(low.min(expected), expected, high.max(expected)).ok()
    }
}
