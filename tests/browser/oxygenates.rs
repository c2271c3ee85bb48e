//! Water in a fuel, and an AKI that its ethanol does not allow.

use crate::app::{self, quarter_full};
use crate::harness::{Key, browse};

/// 16.0 L of an E85 with 4.8 % of water in a full tank of 60 L: 16 * 4.8 / 60 = 1.28 %.
#[test]
fn water_in_a_fuel_is_in_the_blend() {
    browse(async |page| {
        quarter_full(page).await;
        assert!(!page.visible_text().await.contains("Beside petrol and ethanol"));
        let fuel = page.within("group", app::E85.name);
        fuel.type_in("Water", "4.8").await;
        page.press(Key::Tab).await;
        page.sees("Beside petrol and ethanol").await;
        page.sees("water 1.3 %").await;

        fuel.type_in("Water", "20").await;
        page.press(Key::Tab).await;
        page.sees("come to 105.0 %. Correct one of them.").await;
        fuel.type_in("Water", "").await;
        page.press(Key::Tab).await;
        page.until("the water to be gone", async || {
            !page.visible_text().await.contains("Beside petrol and ethanol")
        })
        .await;
        page.assert_quiet().await;
    });
}

/// Neat ethanol has (109 + 90) / 2 = 99.5.
#[test]
fn an_aki_above_that_of_its_ethanol_is_refused_beside_its_field() {
    browse(async |page| {
        quarter_full(page).await;
        let fuel = page.within("group", app::E85.name);
        fuel.type_in(app::RON, "105 AKI").await;
        page.press(Key::Tab).await;
        page.sees("No E85 has 105 AKI: neat ethanol has 99.5").await;
        fuel.type_in(app::RON, "97 AKI").await;
        page.press(Key::Tab).await;
        page.until("the octane to be taken", async || {
            !page.visible_text().await.contains("No E85 has")
        })
        .await;
        page.sees("Makes E30").await;
    });
}
