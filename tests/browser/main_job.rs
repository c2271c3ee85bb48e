//! What the app is for: how much of each fuel to put in, and what that makes.

use crate::app::{self, Calibration, calibrate, quarter_full, to_car, to_fill};
use crate::hand_arithmetic;
use crate::harness::browse;

const BRIM: f64 = 60.0;
const LEVEL: f64 = 15.0;

#[test]
fn a_quarter_of_e10_is_filled_up_to_e30() {
    // Reckoned, not read from the app: 16 L of E85, 29 L of petrol.
    let strong = hand_arithmetic::dose(BRIM, (LEVEL, 10.0), (85.0, 10.0), 30.0);
    let weak = BRIM - LEVEL - strong;
    let (low, high) = hand_arithmetic::worst(BRIM, strong, (70.0, 85.0), 10.0);
    let mixed = |tank_and_petrol, e85| {
        hand_arithmetic::octane(&[(LEVEL + weak, 10.0, tank_and_petrol), (strong, 85.0, e85)])
    };
    let (ron, mon) = (mixed(95.0, 104.0), mixed(85.0, 88.0));
    let aki = f64::midpoint(ron, mon);
    let afr = hand_arithmetic::afr(30.0);
    let multiplier = hand_arithmetic::volume_multiplier(30.0, 10.0);
    let cost = strong * 12.5 + weak * 17.0;

    browse(async |page| {
        quarter_full(page).await;
        to_car(page).await;
        let calibrations = [
            ("Pump petrol", "E0", "E12", "95"),
            ("Middle", "E24", "E40", "98"),
            ("Narrow", "E28", "E40", "98"),
            ("Hungry", "E20", "E40", "101"),
        ];
        for (place, (name, weakest, strongest, ron)) in calibrations.into_iter().enumerate() {
            calibrate(page, place + 1, Calibration { name, weakest, strongest, ron }).await;
        }
        to_fill(page).await;

        page.becomes(
            vec![format!("E85: {strong:.1} L"), format!("Petrol: {weak:.1} L")],
            async || app::steps(page).await,
        )
        .await;
        assert_eq!(
            app::outcome(page).await,
            format!("Makes E30 between E{:.0} and E{:.0}", low.floor(), high.ceil())
        );
        // Only the last one is left to the click; the gauge may be off by 3 L.
        let asides = app::asides(page).await;
        assert!(!asides[0].contains("clicks off"), "{asides:?}");
        let range = format!("clicks off: expect {:.1} to {:.1}", weak - 3.0, weak + 3.0);
        assert!(asides[1].contains(&range), "{asides:?}");

        for (what, expected) in [("RON", ron), ("MON", mon), ("AKI", aki)] {
            let shown = app::fact(page, what).await;
            assert!(shown.starts_with(&format!("≥ {expected:.1} ")), "{what}: {shown}");
            assert!(shown.contains("at worst"), "{what}: {shown}");
        }
        let shown = app::fact(page, "Stoichiometric AFR").await;
        assert!(shown.starts_with(&format!("{afr:.2} ")), "{shown}");
        assert!(["12.82", "12.83"].contains(&&shown[..5]), "{shown}");
        let shown = app::fact(page, "Fuel volume at equal air").await;
        assert!(shown.starts_with(&format!("× {multiplier:.3} ")), "{shown}");
        assert!(shown.ends_with("against E10"), "{shown}");
        assert_eq!(app::fact(page, "Cost").await, format!("{cost:.2} kr"));
        assert_eq!(app::fact(page, "In the tank then").await, format!("{BRIM:.1} L"));

        // The band E25 to E31 is above E12, inside of E24 to E40, and reaches below
        // E28; RON 101 is more than the blend has.
        for (name, word) in [
            ("Pump petrol", "do not select"),
            ("Middle", "usable"),
            ("Narrow", "confirm first"),
            ("Hungry", "do not select"),
        ] {
            let shown = app::verdict(page, name).await;
            assert!(shown.starts_with(&format!("{name}: {word} ")), "{shown}");
        }
    });
}
