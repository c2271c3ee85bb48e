//! Entries that cannot be.

use serde_json::{Value, json};

use crate::app::{self, quarter_full};
use crate::harness::{Key, Page, browse};

#[test]
fn more_than_the_tank_holds_is_refused_beside_its_field() {
    browse(async |page| {
        quarter_full(page).await;
        assert_eq!(beside(page, "level").await["invalid"], Value::Null);
        // Seven litres would do, but nobody asked for them: with the next digit
        // they are seventy.
        let good = app::steps(page).await;
        page.type_in(app::LEVEL, "70").await;
        page.press(Key::Tab).await;
        page.becomes(json!("true"), async || beside(page, "level").await["invalid"].clone()).await;
        let said = beside(page, "level").await["described"].to_string();
        assert!(said.contains("70.0\u{202f}L") && said.contains("60.0\u{202f}L"), "{said}");

        // The last good answer stays, marked as one of before.
        page.sees(app::NOT_UPDATED).await;
        assert_eq!(app::steps(page).await, good);
        assert!(page.has("link", said.trim_matches('"')).await, "no link to the field");

        page.type_in(app::LEVEL, "30").await;
        page.becomes(Value::Null, async || beside(page, "level").await["invalid"].clone()).await;
        page.becomes(vec!["E85: 16.0 L".to_owned(), "Petrol: 14.0 L".to_owned()], async || {
            app::steps(page).await
        })
        .await;
        assert!(!page.visible_text().await.contains(app::NOT_UPDATED));
    });
}

#[test]
fn an_answer_of_before_stays_in_sight_but_never_with_another_car() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::EXAMPLE).await;
        page.sees("Makes E30").await;
        let steps = app::steps(page).await;
        assert_eq!(steps.len(), 2);
        // No field was entered yet; the stop rule now misses its level.
        page.choose("How far to fill", "At a level").await;
        page.sees(app::NOT_UPDATED).await;
        assert_eq!(app::steps(page).await, steps);
        page.click("button", app::OWN_CAR).await;
        page.sees(app::SOMETHING_MISSING).await;
        assert!(app::steps(page).await.is_empty());
        assert!(!page.visible_text().await.contains(app::NOT_UPDATED));
    });
}

#[test]
fn a_slip_is_quoted_and_an_empty_field_asks() {
    browse(async |page| {
        quarter_full(page).await;
        page.type_in(app::AIM, "E3O").await;
        page.press(Key::Tab).await;
        page.becomes(json!("true"), async || beside(page, "aim-share").await["invalid"].clone())
            .await;
        let said = beside(page, "aim-share").await["described"].to_string();
        assert!(said.contains("E3O"), "{said}");
        page.type_in(app::AIM, "").await;
        page.press(Key::Tab).await;
        page.sees("Give the blend you want").await;
        page.type_in(app::AIM, "30").await;
        page.becomes(Value::Null, async || beside(page, "aim-share").await["invalid"].clone())
            .await;
        assert!(app::outcome(page).await.starts_with("Makes E30"));
    });
}

/// What a field says of itself to assistive technology.
async fn beside(page: &Page, id: &str) -> Value {
    const READ: &str = "
        const field = document.getElementById(arguments[0]);
        const text = document.getElementById(field.getAttribute('aria-describedby'));
        return { invalid: field.getAttribute('aria-invalid'), described: text?.innerText };";
    page.script(READ, vec![id.into()]).await
}
