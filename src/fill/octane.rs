//! The octane number after a fill, over the box of what is possible.

use super::problem::{Problem, in_litres};
use super::worst::Pours;
use crate::quantity::{Band, Share};

impl Problem {
    /// The octane number after these pours, given that of the tank's contents
    /// and of each fuel, RON or MON alike: as expected, and over the box.
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
        let expected = self.octane_at(pours, self.level(), of_tank, of_offers, None)?;
        let mut low = expected;
        let mut high = expected;
        for level in [in_litres(self.tank.level.low()), in_litres(self.tank.level.high())] {
            low = low.min(self.octane_at(pours, level, of_tank, of_offers, Some(-1.0))?);
            high = high.max(self.octane_at(pours, level, of_tank, of_offers, Some(1.0))?);
        }
        Band::new(low, expected, high).ok()
    }

    /// The mean by moles. With a `side`, each part has the moles that push the
    /// mean furthest to that side; which end that is depends on the mean, so the
    /// two are repeated until they agree.
    fn octane_at(
        &self,
        pours: &Pours,
        level: f64,
        of_tank: Option<f64>,
        of_offers: &[Option<f64>],
        side: Option<f64>,
    ) -> Option<f64> {
        let mut parts: Vec<(f64, Band<Share>, f64)> = Vec::with_capacity(of_offers.len() + 1);
        let amounts = self.amounts(pours, level);
        if level > 0.0 {
            parts.push((level, self.tank.share, of_tank?));
        }
        for ((offer, &amount), octane) in self.offers.iter().zip(&amounts).zip(of_offers) {
            if amount > 0.0 {
                parts.push((amount, offer.share, (*octane)?));
            }
        }
        let mean = |threshold: Option<f64>| {
            let (mut moles, mut octane) = (0.0, 0.0);
            for (litres, share, number) in &parts {
                let share = match (side, threshold) {
                    // More moles of what is above the mean lift it.
                    (Some(side), Some(threshold)) if side * (number - threshold) > 0.0 => {
                        share.high()
                    }
                    (Some(_), Some(_)) => share.low(),
                    _ => share.expected(),
                };
                let n = self.moles_per_litre(share) * litres;
                moles += n;
                octane += n * number;
            }
            (moles > 0.0).then(|| octane / moles)
        };
        let mut value = mean(None)?;
        if side.is_some() {
            for _ in 0..=parts.len() {
                value = mean(Some(value))?;
            }
        }
        Some(value)
    }
}
