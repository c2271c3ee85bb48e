//! Aims that cannot be met.

use crate::app::{self, quarter_full};
use crate::hand_arithmetic;
use crate::harness::browse;

#[test]
fn a_full_tank_says_why_and_what_helps() {
    let free = 60.0 - 52.5;
    let strongest = hand_arithmetic::share(&[(52.5, 10.0), (free, 85.0)]);
    let level = hand_arithmetic::burn_down(60.0, 10.0, 85.0, 60.0);

    browse(async |page| {
        quarter_full(page).await;
        page.type_in(app::LEVEL, "52.5").await;
        page.type_in(app::AIM, "E60").await;
        page.sees("the tank is too full").await;
        let plight = app::plight(page).await;
        for part in [
            "E60 cannot be reached now".to_owned(),
            format!("Within reach: E10 to E{:.0}.", strongest.floor()),
            format!("down to {level:.1} L"),
            format!("{:.1} L drained", 52.5 - level),
            format!("then {:.1} L E85 makes E60", 60.0 - level),
        ] {
            assert!(plight.contains(&part), "{part:?} is not in {plight:?}");
        }
        let outcome = app::outcome(page).await;
        assert!(outcome.starts_with(&format!("Closest: E{strongest:.0}")), "{outcome}");
        assert_eq!(app::steps(page).await, [format!("E85: {free:.1} L")]);
        assert_eq!(app::promise(page).await, "");

        // Burned down as far as it says, the aim is met just so.
        page.type_in(app::LEVEL, &format!("{level}")).await;
        page.sees("Makes E60").await;
        assert_eq!(app::plight(page).await, "");
        assert_eq!(app::steps(page).await, [format!("E85: {:.1} L", 60.0 - level)]);
    });
}

#[test]
fn an_aim_above_every_fuel_is_never_reached() {
    browse(async |page| {
        quarter_full(page).await;
        page.type_in(app::AIM, "E90").await;
        page.sees("E90 cannot be reached with these fuels").await;
        let plight = app::plight(page).await;
        assert!(plight.contains("the strongest is E85"), "{plight}");
        assert!(!plight.contains("Drive the tank down"), "no level helps: {plight}");
        // Nothing but E85 is the closest.
        let strongest = hand_arithmetic::share(&[(15.0, 10.0), (45.0, 85.0)]);
        let outcome = app::outcome(page).await;
        assert!(outcome.starts_with(&format!("Closest: E{strongest:.0}")), "{outcome}");
        assert_eq!(app::steps(page).await, ["E85: 45.0 L"]);
    });
}
