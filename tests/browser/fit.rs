//! What does not fit is asked about before it is kept.

use crate::app::{self, CAPACITY, CONSUMPTION, start_own_car, to_car, to_tank};
use crate::harness::{Key, Page, browse};

/// What has the focus.
const FOCUSED: &str = "return '#' + document.activeElement.id";

const ASKED: &str = "#does-it-fit";

/// A car with a tank of 55 L that takes 8 L/100 km, and an empty log.
async fn car(page: &Page) {
    start_own_car(page).await;
    to_car(page).await;
    page.type_in(CAPACITY, "55").await;
    page.type_in(CONSUMPTION, "8").await;
    page.press(Key::Tab).await;
    to_tank(page).await;
}

/// Waits for the question, which has the focus, and says what it asks.
async fn asked(page: &Page) -> String {
    page.find("button", "Save anyway").await;
    page.becomes(ASKED.into(), async || page.script(FOCUSED, vec![]).await).await;
    let said = app::texts(page, ASKED).await.join(" ");
    assert!(said.starts_with("Does this fit?"), "{said}");
    assert_eq!(app::log(page).await, Vec::<String>::new());
    said
}

#[test]
fn a_distance_that_the_tank_cannot_cover_is_asked_about() {
    browse(async |page| {
        car(page).await;
        app::add(page, "Distance driven").await;
        page.type_in("Distance", "1800").await;
        app::keep(page).await;
        let said = asked(page).await;
        // 55 L of petrol over 0.6 times 8 L/100 km, measured on E10 of which a litre holds a
        // tenth of 1 - 21.2 / 32 less energy: 1186 km.
        let farthest = 55.0 / (0.6 * 8.0 * (1.0 - 0.1 * (1.0 - 21.2 / 32.0))) * 100.0;
        assert!(said.contains("1800") && said.contains(&format!("{farthest:.0}")), "{said}");
        page.click("button", "Change it").await;
        page.becomes("Distance".to_owned(), async || page.focused().await.name).await;
        page.type_in("Distance", "400").await;
        app::keep(page).await;
        page.becomes(1, async || app::log(page).await.len()).await;
    });
}

#[test]
fn what_is_odd_is_kept_when_it_is_right() {
    browse(async |page| {
        car(page).await;
        app::add(page, "Distance driven").await;
        page.type_in("Distance", "1800").await;
        app::keep(page).await;
        asked(page).await;
        // Whoever goes on typing has answered; what is odd is asked about once more.
        page.type_in("Distance", "1900").await;
        page.until("the question to go", async || !page.has("button", "Save anyway").await).await;
        app::keep(page).await;
        asked(page).await;
        page.click("button", "Save anyway").await;
        page.becomes(1, async || app::log(page).await.len()).await;
        assert!(app::log(page).await[0].contains("1900"));
    });
}

#[test]
fn a_date_in_the_future_is_asked_about() {
    browse(async |page| {
        car(page).await;
        app::add(page, "Note").await;
        set_time(page, "2999-05-03T17:40").await;
        app::keep(page).await;
        let said = asked(page).await;
        assert!(said.contains("2999") && said.contains("has not come yet"), "{said}");
        page.click("button", "Change it").await;
        set_time(page, "2020-05-03T17:40").await;
        app::keep(page).await;
        page.becomes(1, async || app::log(page).await.len()).await;
    });
}

#[test]
fn a_drain_without_a_figure_is_not_all_of_it() {
    browse(async |page| {
        car(page).await;
        app::add(page, "Drained").await;
        app::keep(page).await;
        page.sees("Say how much was drained, or that the tank was drained completely.").await;
        assert_eq!(app::log(page).await, Vec::<String>::new());
        app::pick(page, "Drained completely").await;
        page.until("the field to go", async || !page.has("textbox", "Drained").await).await;
        app::keep(page).await;
        page.becomes(1, async || app::log(page).await.len()).await;
        let log = app::log(page).await;
        assert!(log[0].contains("Drained all of it"), "{log:?}");
        // It still says so when it is opened again.
        page.click("button", &app::button_of(page, "Change: Drained").await).await;
        page.sees("Change: Drained").await;
        assert!(!page.has("textbox", "Drained").await);
        app::pick(page, "A part of it").await;
        page.type_in("Drained", "5").await;
        app::keep(page).await;
        page.becomes(true, async || app::log(page).await[0].contains("Drained 5")).await;
    });
}

/// Sets when it was, as a date picker does.
async fn set_time(page: &Page, time: &str) {
    const SET: &str = "
        const field = document.getElementById('entry-time');
        const proto = HTMLInputElement.prototype;
        Object.getOwnPropertyDescriptor(proto, 'value').set.call(field, arguments[0]);
        field.dispatchEvent(new Event('change', { bubbles: true }));";
    page.script(SET, vec![time.into()]).await;
}
