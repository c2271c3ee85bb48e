//! What readings teach of the pump: how far its fuel strays from what was typed.

use fillwright::fuel::Extras;
use fillwright::quantity::Consumption;
use fillwright::quantity::notation::KILOMETRE;
use fillwright::quantity::{Band, Share};
use fillwright::tank::{
    Estimate, Estimator, Evidence, Pour, ShareReading, ShareReadingKind, Vehicle,
};

use super::truth::{litres, share};

/// Typed 70 to 84 %, likeliest 77: a standard deviation of 2.9 points (the triangle's).
fn strong() -> Band<Share> {
    Band::new(share(0.70), share(0.77), share(0.84)).unwrap()
}

/// Fills 45 L onto 15 L, time after time, of a fuel that really holds these shares,
/// with a tube test after each. Then once more, without a test.
fn last_fill(contents: &[f64]) -> Estimate {
    let mut estimator = Estimator::new(Vehicle {
        capacity: litres(60.0),
        consumption: Some(Consumption::from_litres_per_100_km(8.0).unwrap()),
        reference: Share::ZERO,
    });
    let start = Evidence::State {
        level: Band::exact(litres(15.0)),
        share: Band::exact(share(0.77)),
        extras: Extras::default(),
        ron: None,
        mon: None,
    };
    estimator.take(&start);
    let fill = Evidence::Fill {
        pours: vec![Pour {
            volume: litres(45.0),
            share: strong(),
            extras: Extras::default(),
            ron: None,
            mon: None,
        }],
        clicked: true,
    };
    let mut blend = 0.77;
    for content in contents {
        estimator.take(&fill);
        blend = (15.0 * blend + 45.0 * content) / 60.0;
        estimator.take(&Evidence::Share(ShareReading {
            share: share(blend),
            standard_error: share(0.01),
            kind: ShareReadingKind::TubeTest,
        }));
        // 45 L of a blend near 77 %: 415 km at 8 L/100 km of petrol.
        estimator.take(&Evidence::Drive { distance: KILOMETRE.quantity(415.0) });
    }
    estimator.take(&fill);
    estimator.estimate()
}

fn width(estimate: &Estimate) -> f64 {
    estimate.share.high().percent() - estimate.share.low().percent()
}

/// A pump that keeps to its label earns a narrower band than one that does not,
/// though the same range was typed for both.
#[test]
fn the_band_is_as_wide_as_the_pump_deserves() {
    let steady = last_fill(&[0.77, 0.78, 0.76, 0.77, 0.78, 0.77, 0.76, 0.77]);
    let erratic = last_fill(&[0.77, 0.83, 0.71, 0.80, 0.70, 0.84, 0.72, 0.77]);
    let ratio = width(&erratic) / width(&steady);
    assert!(ratio > 1.3, "{} against {}", width(&erratic), width(&steady));
}
