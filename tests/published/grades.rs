//! The catalogue of grades against the limits of the standards, as others state them.

use super::support::{mistaken, near, parts};
use fillwright::fuel::{Constituent, Corner, HydrocarbonBase, grades};
use uom::si::mass::kilogram;
use uom::si::volume::liter;

/// The band of ethanol of a grade in percent by volume: least, expected, most.
fn ethanol(id: &str) -> (f64, f64, f64) {
    let band = grades::find(id).unwrap().ethanol();
    (band.low().percent(), band.expected().percent(), band.high().percent())
}

#[track_caller]
fn limits(id: &str, low: f64, high: f64) {
    let band = ethanol(id);
    near(band.0, low, 1e-9);
    near(band.2, high, 1e-9);
}

/// EN 228:2012+A1:2017 as stated in Fuels 2021, 2(4), 501 (10 % v/v); Directive 98/70/EC,
/// Annex I (RON 95, MON 85; option 91 and 81) and Article 3(3) (5 % v/v).
#[test]
fn en_228() {
    near(ethanol("en228-95-e10").2, 10.0, 1e-9);
    near(ethanol("en228-95-e5").2, 5.0, 1e-9);
    for (id, ron, mon) in
        [("en228-95-e10", 95.0, 85.0), ("en228-95-e5", 95.0, 85.0), ("en228-91", 91.0, 81.0)]
    {
        let grade = grades::find(id).unwrap();
        assert_eq!((grade.ron_min, grade.mon_min), (Some(ron), Some(mon)), "{id}");
    }
}

/// GB regulations of 2021 as summarised: E10 holds 5.5 to 10 %.
#[test]
fn great_britain() {
    limits("gb-95-e10", 5.5, 10.0);
}

/// US DOE Alternative Fuels Data Center, table of ASTM D5798-15: 51 to 83 % v/v in all four
/// classes. US Annual Energy Outlook 2011: 74 % in the mean of a year. The name
/// on the pump, 85, is not even possible.
#[test]
fn flex_fuel_of_the_united_states() {
    for id in
        ["astm-d5798-class-1", "astm-d5798-class-2", "astm-d5798-class-3", "astm-d5798-class-4"]
    {
        limits(id, 51.0, 83.0);
        near(ethanol(id).1, 74.0, 1e-9);
        assert!(ethanol(id).2 < 85.0);
    }
}

/// CEN/TR 15993:2018, scope: E85 is nominally 85 %, seasonal grades at least 50 %. The
/// most that is allowed is not what is to be expected: nothing could make up for fuel
/// below it.
#[test]
fn e85_of_europe() {
    near(ethanol("en15293-e85-summer").2, 85.0, 1e-9);
    mistaken(ethanol("en15293-e85-summer").1, 85.0, 1.0);
    for id in ["en15293-e85-summer", "en15293-e85-transition", "en15293-e85-winter"] {
        assert!(ethanol(id).0 >= 50.0 && ethanol(id).2 <= 85.0, "{id}");
    }
}

/// Swedish fuel trade association on SS 15 54 80: about 75 % in winter. French decree of
/// 28 December 2006: 65 to 85 %. Australian Fuel Standard (Ethanol E85) Determination 2012:
/// 70 to 85 %, RON 100, MON 87.
#[test]
fn e85_of_single_countries() {
    near(ethanol("se-e85-winter").1, 75.0, 1e-9);
    limits("fr-e85", 65.0, 85.0);
    limits("au-e85", 70.0, 85.0);
    let australian = grades::find("au-e85").unwrap();
    assert_eq!((australian.ron_min, australian.mon_min), (Some(100.0), Some(87.0)));
}

/// Trade press on the decision in force since 1 August 2025: 30 % in Brazilian petrol, 25 % in
/// premium.
#[test]
fn brazil() {
    near(ethanol("br-gasoline-c").1, 30.0, 1e-9);
    near(ethanol("br-gasoline-premium").1, 25.0, 1e-9);
    // 27 % before that (the same press).
    near(ethanol("br-gasoline-c-e27").1, 27.0, 1e-9);
}

/// Swedish decree SFS 2014:536, 4 §, 9 a and f, which states EN 228: methanol at most 3.0 and
/// ethers of five or more carbon atoms at most 22.0 % v/v. Directive 98/70/EC, Article 3(3): 2.7 %
/// m/m oxygen in E5; EN 228:2012+A1:2017: 3.7 % in E10. Both bind together: even the most of
/// everything that a grade is taken to hold has no more oxygen than is allowed, and a maximum
/// is not what is expected.
#[test]
fn what_petrol_may_hold_beside_ethanol() {
    let oxygen = |id: &str| {
        let litre = grades::find(id).unwrap().content();
        let litre = litre.litre(Corner::High, &HydrocarbonBase::default());
        100.0 * litre.oxygen_mass_fraction().unwrap()
    };
    for (id, oxygen_max) in [
        ("en228-95-e10", 3.7),
        ("en228-95-e5", 2.7),
        ("en228-98-e5", 2.7),
        ("en228-91", 3.7),
        ("gb-95-e10", 3.7),
        ("gb-97-e5", 2.7),
    ] {
        let grade = grades::find(id).unwrap();
        let allowed = (grade.methanol_max_percent, grade.ethers_max_percent);
        assert_eq!(allowed, (Some(3.0), Some(22.0)), "{id}");
        assert_eq!(grade.oxygen_max_percent, Some(oxygen_max), "{id}");
        let extras = grade.extras();
        assert!(extras.methanol.high().percent() <= 3.0, "{id}");
        assert!(extras.ethers.high().percent() <= 22.0, "{id}");
        assert!(oxygen(id) <= oxygen_max, "{id}: {} %", oxygen(id));
        assert!(extras.ethers.expected() < extras.ethers.high() || extras.is_none(), "{id}");
    }
    // The room is used to within a tenth: 5 % of ethanol alone bring 1.84.
    near(oxygen("en228-98-e5"), 2.7, 0.1);
    // Ethers in place of all ethanol lean an engine hardly more: 14.95 % v/v of MTBE have 2.7 %, and
    // 20.6 % have 3.7 % (mass balance). A litre takes 0.745 * 14.571 = 10.855 g of air as petrol and
    // 8.709 as MTBE.
    for (id, mtbe) in [("en228-98-e5", 0.1495), ("en228-95-e10", 0.206)] {
        let litre = grades::find(id).unwrap().content();
        let litre = litre.litre(Corner::High, &HydrocarbonBase::default());
        let ethers_only = (1.0 - mtbe) * 10.855 + mtbe * 8.709;
        let more = litre.stoichiometric_air().get::<kilogram>() / ethers_only;
        assert!((1.0..1.01).contains(&more), "{id}: {more}");
    }
    // All maxima at once would have twice as much.
    mistaken(1.844 + 1.59 + 22.0 / 14.95 * 2.7, 2.7, 4.0);
    // CEN/TS 18227: at most 8.0 % m/m.
    assert!(oxygen("cen-ts-18227-e20") <= 8.0);
}

/// CEN/TS 15293:2018 by a secondary text: at most 0.4 % of water in E85. ASTM D4806-98: at most
/// 1.0 % of water in the ethanol, so at most 0.83 % in an E83.
#[test]
fn water_in_flex_fuel() {
    for (id, most) in [("en15293-e85-summer", 0.4), ("astm-d5798-class-1", 0.83)] {
        let water = grades::find(id).unwrap().extras().water;
        assert!(water.high().percent() <= most && water.expected() < water.high(), "{id}");
    }
}

/// ANP 907/2022 (from memory): 92.5 to 94.6 % m/m, 811.2 to 805.2 kg/m3 at 20 degC. An
/// alcoholometer counts w rho / 789.24, which is 95.07 and 96.51 % v/v (arithmetic); the
/// volumes added up give 1 point less. The grade spans both.
#[test]
fn hydrous_ethanol_by_volume() {
    let (low, _, high) = ethanol("br-hydrous-ethanol");
    for (mass_percent, density, alcoholometer) in [(92.5, 811.2, 95.07), (94.6, 805.2, 96.51)] {
        near(mass_percent * density / 789.24, alcoholometer, 0.01);
        let fuel = parts(0.0, mass_percent / 0.7937, 0.0, (100.0 - mass_percent) / 0.9991);
        near(100.0 * fuel.mass_fraction(Constituent::Ethanol).unwrap(), mass_percent, 1e-9);
        let added_up = fuel.ethanol_share().unwrap().percent();
        assert!((low..=high).contains(&added_up) && (low..=high).contains(&alcoholometer));
        // The share by mass is neither.
        mistaken(mass_percent, added_up, 0.5);
    }
    // What is not ethanol is water.
    let grade = grades::find("br-hydrous-ethanol").unwrap();
    near(
        grade.extras().water.expected().percent(),
        100.0 - grade.ethanol().expected().percent(),
        1e-9,
    );
    let litre = grade.content().parts(Corner::Expected);
    near(litre.hydrocarbon.get::<liter>(), 0.0, 1e-12);
}

/// ASTM D4806-98 as tabulated by a distiller: ethanol at least 92.1, water at most 1.0,
/// methanol at most 0.5, denaturant at least 1.96 % v/v.
#[test]
fn denatured_ethanol() {
    let (low, _, high) = ethanol("astm-d4806-denatured");
    near(low, 92.1, 1e-9);
    near(high, 100.0 - 1.96, 0.05);
    let grade = grades::find("astm-d4806-denatured").unwrap();
    assert_eq!((grade.water_max_percent, grade.methanol_max_percent), (Some(1.0), Some(0.5)));
}

/// CEN/TS 18227, scope: up to 20 % v/v. JIS K 2202 as described by a secondary text:
/// premium at least RON 96.
#[test]
fn other_standards() {
    near(ethanol("cen-ts-18227-e20").2, 20.0, 1e-9);
    assert_eq!(grades::find("jis-k2202-premium").unwrap().ron_min, Some(96.0));
}
