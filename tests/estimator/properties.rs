//! What holds for any evidence.

use fillwright::fuel::Extras;
use fillwright::quantity::Consumption;
use fillwright::quantity::notation::KILOMETRE;
use fillwright::quantity::{Band, Share, Volume};
use fillwright::tank::{
    Doubt, Estimate, Estimator, Evidence, LevelReading, Pour, ShareReading, ShareReadingKind,
    Vehicle,
};
use proptest::prelude::*;
use uom::si::volume::liter;

use super::truth::{litres, share};

prop_compose! {
    fn share_band()(ends in prop::array::uniform3(0.0..=1.0_f64)) -> Band<Share> {
        let mut ends = ends;
        ends.sort_by(f64::total_cmp);
        Band::new(share(ends[0]), share(ends[1]), share(ends[2])).unwrap()
    }
}

prop_compose! {
    fn level_band()(ends in prop::array::uniform3(0.0..=90.0_f64)) -> Band<Volume> {
        let mut ends = ends;
        ends.sort_by(f64::total_cmp);
        Band::new(litres(ends[0]), litres(ends[1]), litres(ends[2])).unwrap()
    }
}

/// Litres, with nothing and far too much among them.
fn amount() -> impl Strategy<Value = f64> {
    prop_oneof![3 => 0.0..70.0_f64, 1 => Just(0.0), 1 => 0.0..1e9_f64]
}

fn octane() -> impl Strategy<Value = Option<f64>> {
    prop::option::of(80.0..110.0_f64)
}

prop_compose! {
    fn pour()(volume in amount(), share in share_band(), ron in octane(), mon in octane()) -> Pour {
        Pour { volume: litres(volume), share, extras: Extras::default(), ron, mon }
    }
}

fn evidence() -> impl Strategy<Value = Evidence> {
    let reading = prop::sample::select(vec![
        LevelReading::Gauge,
        LevelReading::Counted,
        LevelReading::Brimmed,
    ]);
    let kind = prop::sample::select(vec![ShareReadingKind::Sensor, ShareReadingKind::TubeTest]);
    prop_oneof![
        (prop::collection::vec(pour(), 0..4), any::<bool>())
            .prop_map(|(pours, clicked)| Evidence::Fill { pours, clicked }),
        (amount(), reading, prop::option::of(0.0..20.0_f64)).prop_map(|(level, reading, error)| {
            Evidence::Level { level: litres(level), reading, error: error.map(litres) }
        }),
        (0.0..=1.0_f64, prop_oneof![Just(0.0), 0.0..=1.0_f64], kind).prop_map(
            |(read, sd, kind)| {
                Evidence::Share(ShareReading {
                    share: share(read),
                    standard_error: share(sd),
                    kind,
                })
            }
        ),
        amount()
            .prop_map(|hundreds| Evidence::Drive { distance: KILOMETRE.quantity(hundreds * 10.0) }),
        amount().prop_map(|volume| Evidence::Burned { volume: litres(volume) }),
        prop::option::of(amount())
            .prop_map(|volume| Evidence::Drain { volume: volume.map(litres) }),
        (level_band(), share_band(), octane(), octane()).prop_map(|(level, share, ron, mon)| {
            Evidence::State { level, share, extras: Extras::default(), ron, mon }
        }),
    ]
}

prop_compose! {
    fn vehicle()(
        capacity in prop_oneof![5 => 20.0..120.0_f64, 1 => Just(0.0)],
        consumption in prop::option::of(prop_oneof![4.0..25.0_f64, 1e-6..1e6_f64]),
        reference in 0.0..=1.0_f64,
    ) -> Vehicle {
        Vehicle {
            capacity: litres(capacity),
            consumption: consumption.map(|value| Consumption::from_litres_per_100_km(value).unwrap()),
            reference: share(reference),
        }
    }
}

fn assert_sound(estimate: &Estimate, capacity: f64) {
    for band in [estimate.level, estimate.possible_level] {
        assert!(band.contains(band.expected()), "{estimate:?}");
        let ends = [band.low(), band.high()].map(|end| end.get::<liter>());
        assert!(0.0 <= ends[0] && ends[1] <= capacity * (1.0 + 1e-12), "{estimate:?}");
    }
    for band in [estimate.share, estimate.possible_share] {
        assert!(band.contains(band.expected()), "{estimate:?}");
        assert!(Share::ZERO <= band.low() && band.high() <= Share::ONE, "{estimate:?}");
    }
    for octane in [estimate.ron, estimate.mon].into_iter().flatten() {
        assert!(octane.low() >= 80.0 - 1e-9 && octane.high() <= 110.0 + 1e-9, "{estimate:?}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn any_evidence_leaves_a_sound_estimate(
        vehicle in vehicle(), log in prop::collection::vec(evidence(), 0..40),
    ) {
        let mut estimator = Estimator::new(vehicle);
        for evidence in &log {
            let doubt = estimator.take(evidence);
            if let Some(
                Doubt::UnloggedFill { volume }
                | Doubt::UnloggedUse { volume }
                | Doubt::Overfull { volume }
            ) = doubt {
                prop_assert!(volume > litres(0.0), "{doubt:?}");
            }
            assert_sound(&estimator.estimate(), vehicle.capacity.get::<liter>());
        }
    }

    /// A fork that goes on alone ends where the whole log does, and leaves the one
    /// that it was taken from alone.
    #[test]
    fn a_log_replayed_in_two_parts_gives_the_same(
        vehicle in vehicle(), log in prop::collection::vec(evidence(), 1..30), at in any::<prop::sample::Index>(),
    ) {
        let (first, second) = log.split_at(at.index(log.len()));
        let mut whole = Estimator::new(vehicle);
        let doubts: Vec<_> = log.iter().map(|evidence| whole.take(evidence)).collect();
        let mut trunk = Estimator::new(vehicle);
        let mut parted: Vec<_> = first.iter().map(|evidence| trunk.take(evidence)).collect();
        let before = trunk.estimate();
        let mut fork = trunk.clone();
        parted.extend(second.iter().map(|evidence| fork.take(evidence)));
        prop_assert_eq!(whole.estimate(), fork.estimate());
        prop_assert_eq!(doubts, parted);
        prop_assert_eq!(before, trunk.estimate());
    }
}
