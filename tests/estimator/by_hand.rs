//! Single steps against arithmetic written out here.

use approx::assert_abs_diff_eq;
use fillwright::fuel::Extras;
use fillwright::quantity::Consumption;
use fillwright::quantity::notation::KILOMETRE;
use fillwright::quantity::{Band, Share, Volume};
use fillwright::tank::{
    Doubt, Estimate, Estimator, Evidence, LevelReading, Pour, ShareReading, ShareReadingKind,
    Vehicle,
};
use uom::si::volume::liter;

use super::truth::{litres, share};

fn car() -> Vehicle {
    Vehicle {
        capacity: litres(60.0),
        consumption: Some(Consumption::from_litres_per_100_km(8.0).unwrap()),
        reference: Share::ZERO,
    }
}

fn band(low: f64, expected: f64, high: f64) -> Band<Share> {
    Band::new(share(low), share(expected), share(high)).unwrap()
}

fn level_band(low: f64, expected: f64, high: f64) -> Band<Volume> {
    Band::new(litres(low), litres(expected), litres(high)).unwrap()
}

fn state(level: Band<Volume>, share: Band<Share>) -> Evidence {
    Evidence::State { level, share, extras: Extras::default(), ron: None, mon: None }
}

fn known(level: f64, fraction: f64) -> Evidence {
    state(Band::exact(litres(level)), Band::exact(share(fraction)))
}

fn pour(volume: f64, share: Band<Share>) -> Pour {
    Pour { volume: litres(volume), share, extras: Extras::default(), ron: None, mon: None }
}

fn fill(pours: Vec<Pour>, clicked: bool) -> Evidence {
    Evidence::Fill { pours, clicked }
}

fn gauge(level: f64) -> Evidence {
    Evidence::Level { level: litres(level), reading: LevelReading::Gauge, error: None }
}

fn drive(kilometres: f64) -> Evidence {
    Evidence::Drive { distance: KILOMETRE.quantity(kilometres) }
}

fn after(log: &[Evidence]) -> (Estimate, Vec<Option<Doubt>>) {
    let mut estimator = Estimator::new(car());
    let doubts = log.iter().map(|evidence| estimator.take(evidence)).collect();
    (estimator.estimate(), doubts)
}

fn level(estimate: &Estimate) -> f64 {
    estimate.level.expected().get::<liter>()
}

fn percent(estimate: &Estimate) -> f64 {
    estimate.share.expected().percent()
}

fn half_width(estimate: &Estimate) -> f64 {
    (estimate.level.high() - estimate.level.low()).get::<liter>() / 2.0
}

/// 20 L at 10 % and 30 L of exactly 80 % make 50 L at 52 %.
#[test]
fn fuels_mix_by_their_litres() {
    let (estimate, doubts) =
        after(&[known(20.0, 0.1), fill(vec![pour(30.0, Band::exact(share(0.8)))], false)]);
    assert_abs_diff_eq!(level(&estimate), 50.0, epsilon = 1e-6);
    assert_abs_diff_eq!(percent(&estimate), 52.0, epsilon = 1e-4);
    assert_eq!(doubts, [None, None]);
}

/// With an exact fuel only the level is uncertain: 16 to 24 L at 10 % and 30 L at
/// 80 % make between 55.65 and 48.89 %; the slope at the middle, 0.84 points a
/// litre, carries 4 L to 3.36 points.
#[test]
fn an_uncertain_level_makes_the_share_uncertain() {
    let (estimate, _) = after(&[
        state(level_band(16.0, 20.0, 24.0), Band::exact(share(0.1))),
        fill(vec![pour(30.0, Band::exact(share(0.8)))], false),
    ]);
    let half = (estimate.share.high().percent() - estimate.share.low().percent()) / 2.0;
    // A band is taken for 2 deviations to each side and shown as 1.96.
    assert_abs_diff_eq!(half, 3.36 / 2.0 * 1.96, epsilon = 0.1);
}

/// 100 km at 8 L of petrol with 21.2 MJ/L in ethanol and 32 in petrol: at 50 % a
/// litre holds 26.6 MJ, so 9.6 L are burned. The heating values are common ones
/// of handbooks; the project's own differ by less than 1 %.
#[test]
fn a_distance_takes_more_of_a_strong_blend() {
    let (estimate, _) = after(&[known(40.0, 0.5), drive(100.0)]);
    assert_abs_diff_eq!(level(&estimate), 40.0 - 8.0 * 32.0 / 26.6, epsilon = 0.1);
    assert_abs_diff_eq!(percent(&estimate), 50.0, epsilon = 1e-9);
    // 8 % of consumption and 6 % of the leg, of 9.6 L, and the 0.05 of the start.
    let variance = (0.08_f64.powi(2) + 0.06_f64.powi(2)) * 9.62_f64.powi(2) + 0.05;
    assert_abs_diff_eq!(half_width(&estimate), 1.96 * variance.sqrt(), epsilon = 0.05);
}

/// Two readings weigh by their variances: 20 L within 2 and 24 L within 4, so
/// 4 : 1.
#[test]
fn two_levels_weigh_by_their_errors() {
    let typed = Evidence::Level {
        level: litres(24.0),
        reading: LevelReading::Counted,
        error: Some(litres(4.0)),
    };
    // Burning nothing keeps the level, and the log from having a gap.
    let nothing = Evidence::Drain { volume: Some(litres(0.0)) };
    let (estimate, _) =
        after(&[state(level_band(18.0, 20.0, 22.0), band(0.0, 0.1, 0.2)), nothing, typed]);
    // The drain itself errs by a quarter of a litre.
    let before = 1.0 + 0.0625;
    assert_abs_diff_eq!(level(&estimate), 20.0 + 4.0 * before / (before + 4.0), epsilon = 1e-6);
}

/// A nozzle that clicks off after 40 L leaves no doubt that 20 L were there.
#[test]
fn a_click_tells_the_level() {
    let fuel = pour(40.0, Band::exact(share(0.8)));
    let (estimate, _) = after(&[
        state(level_band(10.0, 18.0, 26.0), Band::exact(share(0.1))),
        drive(1.0),
        fill(vec![fuel], true),
    ]);
    assert_abs_diff_eq!(level(&estimate), 60.0, epsilon = 0.1);
    assert!(half_width(&estimate) < 1.2);
    let by_hand = (20.0 * 10.0 + 40.0 * 80.0) / 60.0;
    assert_abs_diff_eq!(percent(&estimate), by_hand, epsilon = 0.3);
}

/// People seldom log what they drove: the gauge then speaks alone.
#[test]
fn driving_that_nobody_logged_is_no_contradiction() {
    let (estimate, doubts) = after(&[known(50.0, 0.3), gauge(15.0)]);
    assert_eq!(doubts, [None, None]);
    assert_abs_diff_eq!(level(&estimate), 15.0, epsilon = 1.5);
    assert_abs_diff_eq!(percent(&estimate), 30.0, epsilon = 1e-6);
}

#[test]
fn a_second_look_at_the_gauge_changes_little() {
    let (once, _) = after(&[known(50.0, 0.3)]);
    let (twice, doubts) = after(&[known(50.0, 0.3), gauge(52.5)]);
    assert_eq!(doubts, [None, None]);
    assert_abs_diff_eq!(level(&once), level(&twice), epsilon = 1.0);
}

#[test]
fn much_more_than_logged_means_a_missing_fill_or_a_wrong_reading() {
    let weak = fill(vec![pour(1.0, band(0.05, 0.095, 0.1))], false);
    let (estimate, doubts) = after(&[known(30.0, 0.8), weak, drive(200.0), gauge(52.5)]);
    let Some(Some(Doubt::UnloggedFill { volume })) = doubts.last() else { panic!("{doubts:?}") };
    assert!((30.0..50.0).contains(&volume.get::<liter>()), "{volume:?}");
    // What the log said stays possible, and what the gauge says.
    assert!(estimate.level.low() < litres(15.0) && estimate.level.high() > litres(52.0));
    assert!(estimate.share.low() < share(0.3) && estimate.share.high() > share(0.77));
    assert!(estimate.possible_share.low() < share(0.1));
}

#[test]
fn much_less_than_logged_means_missing_use_or_a_wrong_reading() {
    let (estimate, doubts) = after(&[known(50.0, 0.5), drive(10.0), gauge(15.0)]);
    let Some(Some(Doubt::UnloggedUse { volume })) = doubts.last() else { panic!("{doubts:?}") };
    assert_abs_diff_eq!(volume.get::<liter>(), 50.0 - 0.96 - 15.0, epsilon = 0.2);
    assert!(estimate.level.contains(litres(15.0)) && estimate.level.contains(litres(49.0)));
    assert_abs_diff_eq!(percent(&estimate), 50.0, epsilon = 1e-6);
}

#[test]
fn a_click_far_too_early_means_a_missing_fill() {
    let early = fill(vec![pour(10.0, band(0.7, 0.8, 0.85))], true);
    let (_, doubts) = after(&[known(30.0, 0.5), drive(10.0), early]);
    assert!(matches!(doubts.last(), Some(Some(Doubt::UnloggedFill { .. }))), "{doubts:?}");
}

#[test]
fn more_than_the_tank_has_room_for_is_doubted() {
    let into = |log: &[Evidence], volume: f64, clicked: bool| {
        let mut log = log.to_vec();
        log.push(fill(vec![pour(volume, band(0.7, 0.8, 0.85))], clicked));
        after(&log).1.last().copied().flatten()
    };
    let half_full = [known(30.0, 0.5), drive(10.0)];
    let Some(Doubt::Overfull { volume }) = into(&half_full, 45.0, false) else { panic!() };
    assert_abs_diff_eq!(volume.get::<liter>(), 14.0, epsilon = 0.2);
    let Some(Doubt::Overfull { volume }) = into(&half_full, 75.0, true) else { panic!() };
    assert_abs_diff_eq!(volume.get::<liter>(), 15.0, epsilon = 1e-9);
    assert_eq!(into(&half_full, 20.0, false), None);
    // Where no use was logged there may have been any.
    assert_eq!(into(&[known(30.0, 0.5)], 45.0, false), None);
}

#[test]
fn a_share_far_off_is_doubted_and_both_stay_possible() {
    let read = |fraction| {
        Evidence::Share(ShareReading {
            share: share(fraction),
            standard_error: share(0.02),
            kind: ShareReadingKind::TubeTest,
        })
    };
    let before = state(Band::exact(litres(40.0)), band(0.26, 0.30, 0.34));
    let (fits, doubts) = after(&[before.clone(), read(0.34)]);
    assert_eq!(doubts, [None, None]);
    // Equal variances meet halfway.
    assert_abs_diff_eq!(percent(&fits), 32.0, epsilon = 1e-6);
    let (far, doubts) = after(&[before, read(0.70)]);
    let Some(Doubt::ShareContradicts { expected, read }) = doubts[1] else { panic!("{doubts:?}") };
    assert!(expected.contains(share(0.3)) && !expected.contains(read));
    // Counted as 3 deviations: `K = P / S` with `S = (0.4 / 3)²`.
    assert_abs_diff_eq!(
        percent(&far),
        30.0 + 40.0 * 0.0004 / (0.4 / 3.0_f64).powi(2),
        epsilon = 1e-6
    );
    assert!(far.possible_share.contains(share(0.3)) && far.possible_share.contains(share(0.7)));
}

/// A sensor that always reads high is found out by tube tests.
#[test]
fn the_bias_of_a_sensor_is_learnt() {
    let read = |fraction, kind| {
        Evidence::Share(ShareReading { share: share(fraction), standard_error: share(0.01), kind })
    };
    let mut log = vec![state(Band::exact(litres(40.0)), band(0.2, 0.3, 0.4))];
    for _ in 0..10 {
        log.push(read(0.33, ShareReadingKind::Sensor));
        log.push(read(0.30, ShareReadingKind::TubeTest));
    }
    let (estimate, _) = after(&log);
    assert_abs_diff_eq!(percent(&estimate), 30.0, epsilon = 0.3);
}

/// Moles by hand, 7.45 a litre of petrol and 17.1 of ethanol (common values): 20 L
/// of E10 with 95 and 30 L of E80 with 104.
#[test]
fn octane_blends_by_moles_and_is_a_floor() {
    let known = Evidence::State {
        level: level_band(18.0, 20.0, 22.0),
        share: band(0.08, 0.1, 0.12),
        extras: Extras::default(),
        ron: Some(95.0),
        mon: None,
    };
    let strong = Pour { ron: Some(104.0), mon: Some(88.0), ..pour(30.0, band(0.75, 0.8, 0.85)) };
    let (estimate, _) = after(&[known, fill(vec![strong], false)]);
    let mean = |tank: f64, tank_share: f64, pumped_share: f64| {
        let moles = |litres: f64, share: f64| litres * (7.45 * (1.0 - share) + 17.1 * share);
        let (tank, pumped) = (moles(tank, tank_share), moles(30.0, pumped_share));
        (tank * 95.0 + pumped * 104.0) / (tank + pumped)
    };
    let ron = estimate.ron.unwrap();
    assert_abs_diff_eq!(ron.expected(), mean(20.0, 0.1, 0.8), epsilon = 0.02);
    // The most of the weaker part and the least of the better one.
    assert_abs_diff_eq!(ron.low(), mean(22.0, 0.12, 0.75), epsilon = 0.05);
    assert_eq!(estimate.mon, None);
}

#[test]
fn draining_until_nothing_comes_forgets_an_unknown_octane() {
    let strong = Pour { ron: Some(104.0), mon: Some(88.0), ..pour(30.0, band(0.75, 0.8, 0.85)) };
    let refill = fill(vec![strong], false);
    let (unknown, _) = after(&[known(20.0, 0.1), refill.clone()]);
    assert_eq!((unknown.ron, unknown.mon), (None, None));
    let (fresh, _) = after(&[known(20.0, 0.1), Evidence::Drain { volume: None }, refill]);
    assert_eq!(fresh.ron, Some(Band::exact(104.0)));
    assert_eq!(fresh.mon, Some(Band::exact(88.0)));
    assert_abs_diff_eq!(level(&fresh), 30.0, epsilon = 0.1);
}
