//! Texts that have two meanings, or say less than they seem to.

use serde_json::{Value, json};

use crate::app::{self, quarter_full};
use crate::harness::{Key, Page, browse};

/// Whether a field is wrong, and what stands below it.
async fn below(page: &Page, id: &str) -> (bool, String) {
    const READ: &str = "
        const field = document.getElementById(arguments[0]);
        const text = document.getElementById(field.getAttribute('aria-describedby'));
        return [field.getAttribute('aria-invalid') === 'true', text.textContent]";
    let read = page.script(READ, vec![json!(id)]).await;
    (read[0] == Value::Bool(true), read[1].as_str().unwrap_or_default().to_owned())
}

/// What an element says; nothing where it is not there.
async fn text_of(page: &Page, id: &str) -> String {
    const READ: &str = "return document.getElementById(arguments[0])?.textContent ?? ''";
    page.script(READ, vec![json!(id)]).await.as_str().unwrap_or_default().trim().to_owned()
}

#[test]
fn level_below_one_asks_which_is_meant() {
    browse(async |page| {
        quarter_full(page).await;
        for (text, offered) in [("0.75", "Type 0.75 L or 3/4"), (",75", "Type 0,75 L or 3/4")] {
            page.type_in(app::LEVEL, text).await;
            page.press(Key::Tab).await;
            page.becomes(true, async || below(page, "level").await.0).await;
            let said = below(page, "level").await.1;
            assert!(said.ends_with(offered), "{said}");
        }
        // 45 L of E10 are in: the same as three quarters on the gauge.
        page.type_in(app::LEVEL, "3/4").await;
        page.press(Key::Tab).await;
        page.becomes(false, async || below(page, "level").await.0).await;
        page.until("45 L in the tank", async || {
            page.markup().await.contains("45.0\u{202f}L in it")
        })
        .await;
    });
}

#[test]
fn ranges_are_read_in_every_spelling_and_a_reserve_above_the_tank_is_refused() {
    browse(async |page| {
        quarter_full(page).await;
        let tank = page.within("region", app::IN_TANK);
        // 16 L of 70 to 85 % onto 44 L, of which 15 L hold 5 to 15 %.
        let mut outcomes = Vec::new();
        for range in ["5-15", "15-5", "5..15", "5…15", "±5"] {
            tank.type_in(app::MAY_BE, range).await;
            page.press(Key::Tab).await;
            page.becomes(false, async || below(page, "tank-share-range").await.0).await;
            outcomes.push(app::outcome(page).await);
        }
        outcomes.dedup();
        assert_eq!(outcomes.len(), 1, "{outcomes:?}");
        app::to_car(page).await;
        page.type_in(app::RESERVE, "70").await;
        page.press(Key::Tab).await;
        page.sees("does not fit into a tank of 60.0 L").await;
    });
}

/// Where it stands what a share is taken as.
const TAKEN: &str = "tank-how-sure-taken";

/// 10 % without a range is taken as 9 to 11 % unless something else is chosen.
#[test]
fn share_without_a_range_says_what_it_is_taken_as() {
    browse(async |page| {
        quarter_full(page).await;
        let tank = page.within("region", app::IN_TANK);
        assert_eq!(text_of(page, TAKEN).await, "", "a range says it");
        tank.type_in(app::MAY_BE, "").await;
        for (choice, taken) in [
            ("Roughly", "Taken as 9 to 11\u{202f}%."),
            ("Sure", "Taken as 9.5 to 10.5\u{202f}%."),
            ("Don't know", "Taken as 0 to 100\u{202f}%."),
        ] {
            tank.click("radio", choice).await;
            page.becomes(taken.to_owned(), async || text_of(page, TAKEN).await).await;
        }
        tank.click("radio", "Roughly").await;
        page.becomes("Taken as 9 to 11\u{202f}%.".to_owned(), async || text_of(page, TAKEN).await)
            .await;
    });
}

/// 16 L of E85 that may hold 70 to 85 %, onto 44 L that may hold 8 to 12 %: by hand
/// (11.2 + 3.52) / 60 = 24.53 % to (13.6 + 5.28) / 60 = 31.47 %. Rounded to the nearest,
/// the mistake, that is E25 to E31.
#[test]
fn ends_of_a_blend_are_rounded_outwards() {
    browse(async |page| {
        quarter_full(page).await;
        page.within("region", app::IN_TANK).type_in(app::MAY_BE, "8-12").await;
        page.within("group", app::PETROL.name).type_in(app::MAY_BE, "8-12").await;
        page.press(Key::Tab).await;
        page.becomes(true, async || app::outcome(page).await.contains("between E24 and E32")).await;
    });
}

/// 100 km at 8 L/100 km are 8 L until dry, and 15 L where 7 L stay in reserve.
#[test]
fn distance_to_empty_counts_as_the_car_says() {
    browse(async |page| {
        quarter_full(page).await;
        app::to_car(page).await;
        page.type_in(app::CONSUMPTION, "8").await;
        page.type_in(app::RESERVE, "7").await;
        page.press(Key::Tab).await;
        for (choice, level) in
            [("Until dry", "8.0"), ("Down to the reserve", "15.0"), ("Don't know", "11.5")]
        {
            page.click("radio", choice).await;
            app::to_fill(page).await;
            page.type_in(app::LEVEL, "100 km").await;
            page.press(Key::Tab).await;
            let words = format!("{level}\u{202f}L in it");
            page.until(&words, async || page.markup().await.contains(&words)).await;
            app::to_car(page).await;
        }
    });
}

/// At 0.134 € for a crown, 12.90 DKK are 1.729 €.
#[test]
fn price_in_another_currency_asks_for_a_rate() {
    browse(async |page| {
        quarter_full(page).await;
        app::to_car(page).await;
        page.type_in(app::CURRENCY, "€").await;
        page.press(Key::Tab).await;
        app::to_fill(page).await;
        let fuel = page.within("group", app::PETROL.name);
        fuel.type_in(app::PRICE, "12.90 DKK").await;
        page.press(Key::Tab).await;
        page.sees("Give under Car what 1 DKK is in €, or type it in €.").await;
        app::to_car(page).await;
        page.type_in("1 DKK is", "0.134").await;
        page.press(Key::Tab).await;
        page.sees("Rate of DKK typed on").await;
        app::to_fill(page).await;
        page.sees("12.900 DKK/L is 1.729 €/L: 1 DKK is 0.134 €, typed on").await;
        page.sees("Makes E30").await;
    });
}
