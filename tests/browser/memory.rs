//! What is typed lasts.

use serde_json::{Value, json};

use crate::app::{self, Calibration, E85, calibrate, pick, quarter_full, to_car, to_fill};
use crate::harness::{Key, Page, browse};

const DOCUMENT: &str = "fillwright.document";
const UNREADABLE: &str = "fillwright.unreadable.1";

#[test]
fn a_reload_keeps_everything_typed_and_chosen() {
    browse(async |page| {
        quarter_full(page).await;
        to_car(page).await;
        page.type_in(app::CAPACITY, " 60,0 l").await;
        let middle = Calibration { name: "Middle", weakest: "E24", strongest: "E40", ron: "98" };
        calibrate(page, 1, middle).await;
        pick(page, app::US_GALLONS).await;
        pick(page, app::COMMA).await;
        to_fill(page).await;
        pick(page, "Middle").await;
        page.sees("Middle: usable").await;
        let (fill, steps) = (entries(page).await, app::steps(page).await);
        to_car(page).await;
        let car = entries(page).await;

        page.reload().await;
        page.field(app::CAPACITY).await;
        assert_eq!(entries(page).await, car);
        assert_eq!(page.value(app::CAPACITY).await, " 60,0 l");
        to_fill(page).await;
        assert_eq!(entries(page).await, fill);
        assert_eq!(app::steps(page).await, steps);
    });
}

#[test]
fn a_removed_fuel_can_be_brought_back() {
    browse(async |page| {
        quarter_full(page).await;
        // Its details are open still, and the button is among them.
        page.within("group", E85.name).click("button", app::REMOVE).await;
        page.until("the fuel to be gone", async || !page.has("group", E85.name).await).await;
        page.sees("cannot be reached").await;
        app::undo(page, "Fuel removed").await;
        assert_eq!(page.within("group", E85.name).value(app::SHARE).await, E85.share);
        assert_eq!(page.within("group", E85.name).value(app::PRICE).await, E85.price);
        page.becomes(vec!["E85: 16.0 L".to_owned(), "Petrol: 29.0 L".to_owned()], async || {
            app::steps(page).await
        })
        .await;
    });
}

#[test]
fn a_text_that_cannot_be_read_is_kept_aside() {
    let later = r#"{"schema": 999, "car": "as a later version may write it"}"#;
    for (unreadable, said) in [("{not a document", "cannot be read"), (later, "later version")] {
        browse(async |page| {
            page.open("").await;
            store(page, DOCUMENT, unreadable).await;
            page.reload().await;
            page.sees(said).await;
            assert_eq!(stored(page, UNREADABLE).await, json!(unreadable));

            // The app works all the same, and what it stores does not touch that.
            page.click("button", app::OWN_CAR).await;
            to_car(page).await;
            page.type_in(app::CAPACITY, "60").await;
            page.press(Key::Tab).await;
            page.reload().await;
            page.becomes("60".to_owned(), async || page.value(app::CAPACITY).await).await;
            assert_eq!(stored(page, UNREADABLE).await, json!(unreadable));
            assert!(!page.visible_text().await.contains(said));
        });
    }
}

#[test]
fn two_unreadable_texts_are_both_kept() {
    browse(async |page| {
        page.open("").await;
        for text in ["the first", "the second"] {
            store(page, DOCUMENT, text).await;
            page.reload().await;
            page.sees("cannot be read").await;
        }
        let all = page.script("return Object.values(localStorage).join()", vec![]).await;
        let all = all.as_str().unwrap_or_default();
        assert!(all.contains("the first") && all.contains("the second"), "{all}");
    });
}

async fn store(page: &Page, key: &str, text: &str) {
    page.script("localStorage.setItem(...arguments)", vec![key.into(), text.into()]).await;
}

async fn stored(page: &Page, key: &str) -> Value {
    page.script("return localStorage.getItem(arguments[0])", vec![key.into()]).await
}

/// All that is typed and chosen on the view in sight.
async fn entries(page: &Page) -> Value {
    const READ: &str = "
        return [...document.querySelectorAll('input, select')].map(field =>
            [field.id || field.name, field.matches('[type=radio], [type=checkbox]')
                ? `${field.value} ${field.checked}` : field.value]);";
    page.script(READ, vec![]).await
}
