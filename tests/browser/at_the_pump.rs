//! Pouring does not always go as planned.

use crate::app::{self, pick, quarter_full};
use crate::hand_arithmetic;
use crate::harness::{Key, browse};

#[test]
fn two_litres_too_much_change_the_rest_of_the_plan() {
    let blend = hand_arithmetic::share(&[(15.0 + 27.0, 10.0), (18.0, 85.0)]);
    assert!((blend - 32.5).abs() < 1e-9);

    browse(async |page| {
        quarter_full(page).await;
        app::put_in(page, 0, "18").await;
        page.becomes(vec!["E85: 18.0 L".to_owned(), "Petrol: 27.0 L".to_owned()], async || {
            app::steps(page).await
        })
        .await;
        let asides = app::asides(page).await;
        assert_eq!(asides[0], "Done.");
        assert!(asides[1].contains("clicks off"), "{asides:?}");
        // 32.5 may be rounded either way.
        let outcome = app::outcome(page).await;
        assert!(["E32", "E33"].iter().any(|grade| outcome.contains(grade)), "{outcome}");
        assert!(app::plight(page).await.contains("E30"), "it says that E30 is no longer made");

        app::as_planned(page, 1).await;
        app::done(page, 2).await;
        assert_eq!(app::steps(page).await, ["E85: 18.0 L", "Petrol: 27.0 L"]);
        assert_eq!(
            page.all("button")
                .await
                .iter()
                .filter(|it| it.name.starts_with(app::AS_PLANNED))
                .count(),
            0
        );
        page.reload().await;
        app::done(page, 2).await;
    });
}

#[test]
fn as_planned_leaves_the_rest_as_it_was() {
    browse(async |page| {
        quarter_full(page).await;
        app::as_planned(page, 0).await;
        app::done(page, 1).await;
        assert_eq!(app::steps(page).await, ["E85: 16.0 L", "Petrol: 29.0 L"]);
        assert!(app::outcome(page).await.starts_with("Makes E30"));
        app::as_planned(page, 1).await;
        app::done(page, 2).await;
        // The line at the foot of a phone says so too.
        page.viewport(360, 740).await;
        page.sees(app::NOTHING_TO_POUR).await;
    });
}

#[test]
fn what_was_filled_becomes_what_is_in_the_tank() {
    browse(async |page| {
        quarter_full(page).await;
        app::as_planned(page, 0).await;
        app::done(page, 1).await;
        app::as_planned(page, 1).await;
        app::done(page, 2).await;
        page.sees(app::NOTHING_TO_POUR).await;
        page.click("button", app::RECORD).await;
        // 16 L of E85, and the rest is E10: as planned, so nothing is regretted.
        let blend = hand_arithmetic::share(&[(16.0, 85.0), (44.0, 10.0)]);
        page.sees(&format!("About E{blend:.0}, full.")).await;
        assert_eq!(app::plight(page).await, "");
        page.reload().await;
        page.sees(&format!("About E{blend:.0}, between")).await;
        page.becomes(String::new(), async || page.value(app::LEVEL).await).await;
        // Nobody has to believe the log.
        pick(page, app::START_FROM_TYPED).await;
        page.sees("Say what is in the tank").await;
    });
}

#[test]
fn more_than_was_free_is_refused_and_can_be_put_right() {
    browse(async |page| {
        quarter_full(page).await;
        // The gauge errs by 3 L at most, so never more than 48 L were free.
        app::put_in(page, 0, "50").await;
        page.sees("50.0 L cannot have gone in").await;
        page.sees("48.0 L were free").await;
        page.sees(app::NOT_UPDATED).await;
        page.type_in(app::PUT_IN, "").await;
        page.press(Key::Tab).await;
        page.becomes(vec!["E85: 16.0 L".to_owned(), "Petrol: 29.0 L".to_owned()], async || {
            app::steps(page).await
        })
        .await;
        assert!(!page.visible_text().await.contains(app::NOT_UPDATED));
    });
}

#[test]
fn without_an_aim_it_says_what_there_is() {
    let blend = hand_arithmetic::share(&[(15.0 + 4.0, 10.0), (6.0, 85.0)]);

    browse(async |page| {
        quarter_full(page).await;
        pick(page, app::NO_AIM).await;
        page.sees("You have E10").await;
        for (place, volume) in ["6", "4"].into_iter().enumerate() {
            app::put_in(page, place, volume).await;
        }
        page.sees(&format!("You have E{blend:.0}")).await;
        assert_eq!(app::fact(page, "In the tank then").await, "25.0 L");
    });
}
