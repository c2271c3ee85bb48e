//! The most that what may be in the tank can have done: what lies beyond it did not happen,
//! or the log lacks a fill.

use uom::si::length::kilometer;

use super::envelope::{COUNTED, DRIVEN};
use super::{Estimator, volume};
use crate::message::keys::practice as words;
use crate::quantity::{Length, Volume};
use crate::source::{Citation, Confidence, Source, SourceKind, Sourced};

/// Litres of petrol without ethanol over 100 km that no car falls short of, unless its driver
/// says that it takes less.
pub(super) const THRIFTIEST_L: Sourced<f64> = Sourced {
    value: 3.5,
    source: Source {
        kind: SourceKind::CommonPractice,
        citation: Citation::Words(words::THRIFTIEST_L_SOURCE),
        confidence: Confidence::Weak,
    },
};

impl Estimator {
    /// The farthest that the car can have been driven on what may be in its tank: on all of
    /// it, at the weakest share that is possible, with the least consumption.
    pub fn farthest(&self) -> Length {
        let floor = THRIFTIEST_L.value / 100.0;
        let lacks = self.car.ethanol_lacks * self.envelope.weakest_share();
        let petrol = self.envelope.highest_level() * (1.0 - lacks);
        let least = match self.car.petrol_per_kilometre {
            Some(stated) => (DRIVEN.value.0 * stated).max(floor.min(stated)),
            None => floor,
        };
        Length::new::<kilometer>(petrol / least)
    }

    /// The most that a trip computer can have counted as burned of what may be in the tank.
    pub fn most_counted(&self) -> Volume {
        volume(self.envelope.highest_level() / COUNTED.value.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fuel::Extras;
    use crate::quantity::Share;

    use crate::quantity::Consumption;
    use crate::tank::{Evidence, Vehicle};
    use approx::assert_abs_diff_eq;

    fn farthest(litres: f64, consumption: Option<f64>) -> f64 {
        let consumption = consumption.map(|it| Consumption::from_litres_per_100_km(it).unwrap());
        let capacity = volume(litres);
        let estimator = Estimator::new(Vehicle { capacity, consumption, reference: Share::ZERO });
        estimator.farthest().get::<kilometer>()
    }

    /// Litres over consumption, by hand. The mistake to take the stated consumption for what
    /// no journey falls short of allows 687.5 km on 55 L at 8 L/100 km.
    #[test]
    fn a_tank_takes_the_car_so_far_and_no_further() {
        assert_abs_diff_eq!(farthest(55.0, Some(8.0)), 5500.0 / (0.6 * 8.0), epsilon = 1e-9);
        // A thrifty car, and one of which nothing is known.
        assert_abs_diff_eq!(farthest(55.0, Some(5.0)), 5500.0 / 3.5, epsilon = 1e-9);
        assert_abs_diff_eq!(farthest(55.0, None), 5500.0 / 3.5, epsilon = 1e-9);
        // Who says that it takes even less is believed.
        assert_abs_diff_eq!(farthest(55.0, Some(3.0)), 5500.0 / 3.0, epsilon = 1e-9);
    }

    /// Of a tank stated to hold 20 L no more than 20 L were burned, of which a computer may
    /// show a third more.
    #[test]
    fn only_what_was_in_can_be_counted() {
        let vehicle = Vehicle { capacity: volume(60.0), consumption: None, reference: Share::ZERO };
        let mut estimator = Estimator::new(vehicle);
        let level = crate::quantity::Band::exact(volume(20.0));
        let share = crate::quantity::Band::exact(Share::ZERO);
        estimator.take(&Evidence::State {
            level,
            share,
            extras: Extras::default(),
            ron: None,
            mon: None,
        });
        assert_abs_diff_eq!(
            estimator.most_counted().get::<uom::si::volume::liter>(),
            20.0 / 0.75,
            epsilon = 1e-9
        );
    }
}
