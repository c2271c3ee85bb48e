//! What a fuel may hold: the corners hold the extremes.

use fillwright::fuel::{Content, Corner, Extras, HydrocarbonBase, Mixture, MixtureParts};
use fillwright::quantity::{Band, Share, Volume};
use proptest::prelude::*;
use uom::si::volume::liter;

fn band(low: f64, width: f64) -> Band<Share> {
    let share = |value: f64| Share::new(value.clamp(0.0, 1.0)).unwrap();
    Band::new(share(low), share(low + width / 2.0), share(low + width)).unwrap()
}

prop_compose! {
    fn content()(
        ethanol in (0.0..0.95, 0.0..0.3), water in (0.0..0.05, 0.0..0.05),
        methanol in (0.0..0.1, 0.0..0.1), ethers in (0.0..0.15, 0.0..0.1),
    ) -> Content {
        // What must be there at least has to fit.
        let room = 1.0 - water.0 - methanol.0 - ethers.0;
        let low = f64::min(ethanol.0, room);
        Content {
            ethanol: band(low, ethanol.1),
            extras: Extras {
                water: band(water.0, water.1),
                methanol: band(methanol.0, methanol.1),
                ethers: band(ethers.0, ethers.1),
            },
        }
    }
}

/// A point of the box: a place within each band, and how much of the ethers is MTBE. None
/// where it comes to more than the whole.
fn at(content: &Content, places: [f64; 5]) -> Option<Mixture> {
    let [ethanol, water, methanol, ethers, mtbe] = places;
    let share = |band: &Band<Share>, place: f64| {
        let (low, high) = (band.low().fraction(), band.high().fraction());
        low + (high - low) * place
    };
    let ethanol = share(&content.ethanol, ethanol);
    let water = share(&content.extras.water, water);
    let methanol = share(&content.extras.methanol, methanol);
    let ethers = share(&content.extras.ethers, ethers);
    let hydrocarbon = 1.0 - ethanol - water - methanol - ethers;
    let volume = |part: f64| Volume::new::<liter>(part);
    let parts = MixtureParts {
        hydrocarbon: volume(hydrocarbon),
        ethanol: volume(ethanol),
        methanol: volume(methanol),
        mtbe: volume(ethers * mtbe),
        etbe: volume(ethers * (1.0 - mtbe)),
        water: volume(water),
    };
    (hydrocarbon >= 0.0).then(|| Mixture::from_parts(&parts, &HydrocarbonBase::default()))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    /// The air that a fuel takes, the volume that an engine needs of it, how lean it runs
    /// without lambda correction and the energy of a litre: no point of the box is beyond the
    /// corner where all bands are low or the one where all are high.
    #[test]
    fn the_corners_hold_the_extremes(
        content in content(),
        places in prop::collection::vec(prop::array::uniform5(0.0..=1.0_f64), 24),
        vertices in prop::collection::vec(prop::array::uniform5(prop::bool::ANY), 8),
    ) {
        let base = HydrocarbonBase::default();
        let petrol = Mixture::splash(Volume::new::<liter>(1.0), Share::ZERO, &base);
        let figures = |fuel: &Mixture| {
            [
                fuel.fuel_volume_multiplier(&petrol).unwrap(),
                fuel.open_loop_lambda_ratio(&petrol).unwrap(),
                -fuel.energy_density().unwrap().megajoules_per_liter(),
                -fuel.stoichiometric_afr().unwrap(),
            ]
        };
        let low = figures(&content.litre(Corner::Low, &base));
        let high = figures(&content.litre(Corner::High, &base));
        let corners = vertices.into_iter().map(|it| it.map(|end| if end { 1.0 } else { 0.0 }));
        for point in places.into_iter().chain(corners) {
            let Some(fuel) = at(&content, point) else { continue };
            for (is, (low, high)) in figures(&fuel).into_iter().zip(low.into_iter().zip(high)) {
                prop_assert!(low - 1e-9 <= is && is <= high + 1e-9, "{low} {is} {high}");
            }
        }
    }

    /// The parts of a corner come to one litre, and none is below nothing.
    #[test]
    fn a_corner_is_one_litre(content in content()) {
        for corner in [Corner::Low, Corner::Expected, Corner::High] {
            let parts = content.parts(corner);
            let all = [
                parts.hydrocarbon, parts.ethanol, parts.methanol, parts.mtbe, parts.etbe,
                parts.water,
            ];
            let litres = all.map(|part| part.get::<liter>());
            prop_assert!(litres.iter().all(|part| *part >= 0.0), "{litres:?}");
            prop_assert!((litres.iter().sum::<f64>() - 1.0).abs() < 1e-12, "{litres:?}");
        }
    }
}
