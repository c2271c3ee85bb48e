//! Worst cases whose extremes follow from a few lines of arithmetic.

#![allow(clippy::unwrap_used, reason = "a test fails by panicking")]

use fillwright::fill::{Aim, CheckedProblem, FillObjective, Offer, PlannedPour, Problem, StopRule};
use fillwright::fuel::MolarDensity;
use fillwright::quantity::{Band, Share, Volume};
use fillwright::tank::Tank;
use uom::si::volume::liter;

fn litres(value: f64) -> Volume {
    Volume::new::<liter>(value)
}

/// A band of shares, all in percent.
fn percent(low: f64, expected: f64, high: f64) -> Band<Share> {
    let share = |value| Share::from_percent(value).unwrap();
    Band::new(share(low), share(expected), share(high)).unwrap()
}

/// A tank of 60 L, filled to the brim.
fn problem(level: (f64, f64, f64), share: Band<Share>, offers: Vec<Offer>) -> CheckedProblem {
    Problem {
        tank: Tank {
            capacity: litres(60.0),
            level: Band::new(litres(level.0), litres(level.1), litres(level.2)).unwrap(),
            share,
            ron: None,
            reserve: litres(0.0),
        },
        offers,
        aim: Aim::share(Share::ZERO),
        ron_min: None,
        stop: StopRule::Brim,
        objective: FillObjective::LeastCost,
        // Densities at 15 degrees and molar masses as in tests/published.
        molar_density: MolarDensity::default(),
        meter_error: 0.0,
    }
    .checked()
    .unwrap()
}

fn pour(fuel: usize, volume: f64, to_click: bool) -> PlannedPour {
    PlannedPour { fuel, volume: litres(volume), to_click }
}

fn near(got: f64, wanted: f64, tolerance: f64) -> bool {
    (got - wanted).abs() <= tolerance
}

/// 30 L of E0, 20 L of E50 (48 to 52), then E85 (80 to 85) to the click at 60 L; a meter
/// off by half a percent, as it may be by OIML R 117-1. What more of the E50 goes in takes
/// the place of E85, so too large a dose makes the blend weaker and too small a one
/// stronger:
///
/// - `(20.1 * 0.48 + 9.9 * 0.80) / 60 = 17.568 / 60 = 29.280 %`,
/// - `(19.9 * 0.52 + 10.1 * 0.85) / 60 = 18.933 / 60 = 31.555 %`.
///
/// Mistaken: the dose held against the outcome of 31 %, than which it is stronger:
/// `(19.9 * 0.48 + 10.1 * 0.80) / 60 = 29.387 %` and 31.445 %.
#[test]
fn a_dose_counts_against_what_it_displaces() {
    let offers = vec![Offer::new(percent(48.0, 50.0, 52.0)), Offer::new(percent(80.0, 82.5, 85.0))];
    let exactly = percent(0.0, 0.0, 0.0);
    let problem = problem((30.0, 30.0, 30.0), exactly, offers);
    let problem = problem.changed(|it| it.meter_error = 0.005).unwrap();
    let pours = [pour(0, 20.0, false), pour(1, 10.0, true)];
    let share = problem.worst(&pours).share;
    let (low, high) = (share.low().percent(), share.high().percent());
    assert!(near(low, 29.280, 1e-9) && near(high, 1893.3 / 60.0, 1e-9), "{low} to {high}");
    assert!(!near(low, 29.387, 0.01) && !near(high, 31.445, 0.01));
    // The corners are where that is.
    for (strong, dose) in [(false, 20.1), (true, 19.9)] {
        let corner = problem.worst_corner(&pours, strong);
        let poured: Vec<f64> = corner.volumes.iter().map(Volume::get::<liter>).collect();
        assert!(near(poured[0], dose, 1e-9) && near(poured[1], 30.0 - dose, 1e-9), "{poured:?}");
    }
    // Where nothing overflows the outcome is what counts: 30 L of E0, 20 L of E50 and 5 L
    // of E85, all more of the two than planned.
    let share = problem.worst(&[pour(0, 20.0, false), pour(1, 5.0, false)]).share;
    let strongest = (20.1 * 0.52 + 5.025 * 0.85) / (30.0 + 20.1 + 5.025);
    assert!(near(share.high().fraction(), strongest, 1e-12), "{share:?}");
}

/// 18.6 L (13.6 to 23.6) of E10 with RON 98, 31.2 L of E85 (65 to 85, 80 expected) with
/// RON 104, then 9.2 L of E10 with RON 91. In a tank of 60 L that overflows from
/// `60 - 31.2 - 9.2 = 19.6` L on: up to there each litre of RON 98 brings the mean of 104
/// and 91 down, and from there on it also keeps RON 91 out. A litre of E10 holds 8.428 mol
/// and one of E65 13.806 mol (745 / 100 and 793.7 / 46.069 mol/L), so at 19.6 L
/// `(165.19 * 98 + 430.75 * 104 + 77.54 * 91) / (165.19 + 430.75 + 77.54) = 101.03`.
///
/// Mistaken: looked at only where the level is least, expected and most, 101.26.
#[test]
fn the_octane_number_is_least_where_a_pour_begins_to_overflow() {
    let e10 = percent(10.0, 10.0, 10.0);
    let offers = vec![Offer::new(percent(65.0, 80.0, 85.0)), Offer::new(e10)];
    let problem = problem((13.6, 18.6, 23.6), e10, offers);
    let pours = [pour(0, 31.2, false), pour(1, 9.2, false)];
    let octane = problem.worst_octane(&pours, Some(98.0), &[Some(104.0), Some(91.0)]).unwrap();
    assert!(near(octane.low(), 101.03, 0.005), "{octane:?}");
    assert!(near(octane.expected(), 101.26, 0.005), "{octane:?}");
    // The same with every litre metered half a percent wrong: all the more of RON 91 and
    // the less of RON 104 at `60 - 31.2 * 0.995 - 9.2 * 1.005` L.
    let metered = problem.changed(|it| it.meter_error = 0.005).unwrap();
    let octane = metered.worst_octane(&pours, Some(98.0), &[Some(104.0), Some(91.0)]).unwrap();
    let moles =
        |litres: f64, share: f64| litres * (745.0 / 100.0 * (1.0 - share) + 793.7 / 46.069 * share);
    let (strong, weak) = (moles(31.2 * 0.995, 0.65), moles(9.2 * 1.005, 0.1));
    let present = moles(60.0 - 31.2 * 0.995 - 9.2 * 1.005, 0.1);
    let least = (present * 98.0 + strong * 104.0 + weak * 91.0) / (present + strong + weak);
    assert!(near(octane.low(), least, 1e-6), "{octane:?} for {least}");
}
