//! Pictures of every view in both themes and at three widths, in
//! `target/screenshots/`: to be looked at, and three for the README. Nothing
//! is asserted; `tools/gallery` runs it.

use serde_json::json;

use crate::app::{EXAMPLE, OWN_CAR};
use crate::harness::{Page, Scheme, browse};

/// Each view with a text that stands on it once it is there.
pub(crate) const VIEWS: [(&str, &str); 6] = [
    ("fill", "Makes E"),
    ("tank", "Log"),
    ("hardware", "First to give"),
    ("trip", "The plan is settled."),
    ("car", "Calibrations"),
    ("methods", "Where does each number come from?"),
];

/// What the README shows of three views.
const README: [(&str, &str, &str); 3] = [
    ("fill", "Makes E", "#put-in"),
    ("tank", "Log", "header"),
    ("trip", "The plan is settled.", "#trip-answer"),
];

#[test]
#[ignore = "takes pictures and asserts nothing"]
fn pictures() {
    browse(async |page| {
        page.open("").await;
        page.sees(OWN_CAR).await;
        // As a phone has it.
        page.devtools("Emulation.setScrollbarsHidden", json!({ "hidden": true })).await;
        all(page, "first-start").await;
        page.click("button", EXAMPLE).await;
        for (view, text) in VIEWS {
            page.open(&format!("#/{view}")).await;
            page.sees(text).await;
            all(page, view).await;
        }
        // What the views say, on a phone.
        page.viewport(360, 740).await;
        for (view, text, part) in README {
            page.open(&format!("#/{view}")).await;
            page.sees(text).await;
            let show = "document.querySelector(arguments[0]).scrollIntoView()";
            page.script(show, vec![part.into()]).await;
            page.screenshot(&format!("readme-{view}")).await;
        }
    });
}

async fn all(page: &Page, name: &str) {
    for (theme, scheme) in [("light", Scheme::Light), ("dark", Scheme::Dark)] {
        page.colour_scheme(scheme).await;
        for (width, height) in [(360, 740), (768, 1024), (1280, 800)] {
            // As first seen, and the whole of it.
            page.viewport(width, height).await;
            page.script("scrollTo(0, 0)", vec![]).await;
            page.screenshot(&format!("{name}-{width}-{theme}")).await;
            let whole = page.script("return document.documentElement.scrollHeight", vec![]).await;
            let whole = whole.as_u64().and_then(|it| u32::try_from(it).ok()).expect("a height");
            page.viewport(width, whole).await;
            page.draws_every_picture().await;
            page.screenshot(&format!("{name}-{width}-{theme}-whole")).await;
        }
    }
    page.colour_scheme(Scheme::Light).await;
    page.viewport(1280, 800).await;
}
