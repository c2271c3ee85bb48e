//! What would make a calibration usable: a reading, or so much of which fuel.

use uom::si::volume::liter;

use crate::calibration::{Calibration, Contents, FluidState, Verdict};
use crate::quantity::{Share, Volume};
use crate::tank::{Estimate, Estimator, Evidence, Pour, ShareReading};

/// Something that would make a calibration usable.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Remedy {
    /// A reading of the ethanol share that comes out between these two.
    Reading {
        /// The weakest that would do.
        from: Share,
        /// The strongest that would do.
        to: Share,
    },
    /// At least so much of a fuel.
    Pour {
        /// The index of the fuel among those on offer.
        fuel: usize,
        /// How much.
        volume: Volume,
    },
}

/// What the tank would be known to hold after a reading or a pour.
#[derive(Clone, Debug)]
pub(super) struct Prospects {
    readings: Vec<(Share, Contents)>,
    pours: Vec<Vec<(Volume, Contents)>>,
}

pub(super) fn contents(estimate: &Estimate) -> Contents {
    Contents { share: estimate.share, extras: estimate.extras, ron: estimate.ron }
}

impl Prospects {
    /// Tries every reading in whole percents and every pour in whole steps with
    /// the estimator itself, so that what is promised is what will be said.
    pub(super) fn new(
        estimator: &Estimator,
        reading: impl Fn(Share) -> ShareReading,
        fuels: &[Pour],
        capacity: Volume,
        step: Volume,
    ) -> Self {
        let now = estimator.estimate();
        let after = |evidence: &Evidence| {
            let mut estimator = estimator.clone();
            // What would not fit with the log settles nothing.
            let fits = estimator.take(evidence).is_none();
            fits.then(|| contents(&estimator.estimate()))
        };
        let readings = (0..=100_u8)
            .map(|percent| Share::clamped(f64::from(percent) / 100.0))
            .filter_map(|share| Some((share, after(&Evidence::Share(reading(share)))?)))
            .collect();
        let free = capacity - now.level.high();
        let step = step.max(Volume::new::<liter>(0.5));
        let pours = fuels.iter().map(|fuel| {
            let volumes = (1..).map(|count| step * f64::from(count)).take_while(|it| *it <= free);
            let pour =
                |volume| Evidence::Fill { pours: vec![Pour { volume, ..*fuel }], clicked: false };
            volumes.filter_map(|volume| Some((volume, after(&pour(volume))?))).collect()
        });
        Self { readings, pours: pours.collect() }
    }

    /// What would make this calibration usable.
    pub(super) fn remedies(&self, calibration: &Calibration, fluid: FluidState) -> Vec<Remedy> {
        let usable =
            |contents: &Contents| calibration.judge(contents, fluid).verdict == Verdict::Usable;
        let mut readings = self.readings.iter().filter(|it| usable(&it.1)).map(|it| it.0);
        let reading = readings
            .next()
            .map(|from| Remedy::Reading { from, to: readings.next_back().unwrap_or(from) });
        let pours = self.pours.iter().enumerate().filter_map(|(fuel, pours)| {
            let volume = pours.iter().find(|it| usable(&it.1))?.0;
            Some(Remedy::Pour { fuel, volume })
        });
        reading.into_iter().chain(pours).collect()
    }
}
