//! The checks of the harness notice what they are there for. A check that could
//! not fail would make every other test here worthless.

use serde_json::json;

use crate::harness::{Key, browse};

#[test]
#[should_panic(expected = "the page is not quiet")]
fn a_warning_on_the_console_is_noticed() {
    browse(async |page| {
        page.open("").await;
        page.script("console.warn('mind the step')", vec![]).await;
    });
}

#[test]
#[should_panic(expected = "missing.svg -> 404")]
fn a_missing_file_is_noticed() {
    browse(async |page| {
        page.open("").await;
        page.script("return fetch('missing.svg').then(() => null)", vec![]).await;
    });
}

#[test]
#[should_panic(expected = "the page reaches beyond")]
fn a_foreign_request_is_noticed() {
    browse(async |page| {
        // The app's own policy would not let it out.
        page.devtools("Page.setBypassCSP", json!({ "enabled": true })).await;
        page.open("").await;
        page.script("return fetch('http://127.0.0.1:9/').catch(() => null)", vec![]).await;
        page.console().await;
    });
}

#[test]
#[should_panic(expected = "color-contrast-enhanced")]
fn faint_text_is_noticed() {
    browse(async |page| {
        page.open("").await;
        page.script("document.querySelector('h1').style.color = '#666'", vec![]).await;
        page.axe().await;
    });
}

#[test]
#[should_panic(expected = "scrolls sideways")]
fn a_page_too_wide_is_noticed() {
    browse(async |page| {
        page.open("").await;
        page.script("document.querySelector('h1').style.width = '200vw'", vec![]).await;
        page.no_horizontal_scroll().await;
    });
}

#[test]
#[should_panic(expected = "Fillwright")]
fn a_failed_search_tells_what_there_is() {
    browse(async |page| {
        page.open("").await;
        page.find("heading", "Overfill").await;
    });
}

#[test]
fn fields_are_found_by_label_and_filled_by_key() {
    const FIELDS: &str = "
        const form = document.createElement('form');
        form.innerHTML = `
            <label>Litres <input value='40'></label>
            <label>Grade <select><option>Plain<option>Fine</select></label>`;
        form.querySelector('input').oninput = event => document.title = event.target.value;
        document.querySelector('main').append(form);";
    browse(async |page| {
        page.open("").await;
        page.script(FIELDS, vec![]).await;
        page.type_in("Litres", "12,5").await;
        page.press("0").await;
        assert_eq!(page.value("Litres").await, "12,50");
        assert_eq!(page.script("return document.title", vec![]).await, json!("12,50"));
        page.press(Key::Tab).await;
        assert_eq!(page.focused().await.name, "Grade");
        page.choose("Grade", "Fine").await;
        assert_eq!(page.value("Grade").await, "Fine");
        page.type_in("Litres", "").await;
        assert_eq!(page.value("Litres").await, "");
    });
}

#[test]
fn a_stopped_server_is_out_of_reach() {
    browse(async |page| {
        // A page that the device keeps would be answered from there.
        page.before_each_load("delete Navigator.prototype.serviceWorker").await;
        page.open("").await;
        page.server().stop();
        let fetch = "return fetch('index.html').then(() => 'reached', () => 'refused')";
        assert_eq!(page.script(fetch, vec![]).await, json!("refused"));
        // The browser says so, rightly.
        assert_eq!(page.console().await.len(), 1);
    });
}
