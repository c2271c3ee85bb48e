//! The page around the app: that it comes up, works and keeps to itself.

use crate::harness::{Key, Scheme, browse};

#[test]
fn the_page_has_its_heading() {
    browse(async |page| {
        page.open("").await;
        assert_eq!(page.text("heading", "Fillwright").await, "Fillwright");
    });
}

#[test]
fn the_button_counts_each_click() {
    browse(async |page| {
        page.open("").await;
        page.sees("Count: 0").await;
        page.click("button", "Add one").await;
        page.click("button", "Add one").await;
        page.sees("Count: 2").await;
        assert_eq!(page.text("status", "").await, "Count: 2");
    });
}

#[test]
fn the_keyboard_alone_is_enough() {
    browse(async |page| {
        page.open("").await;
        page.tab_to("button", "Add one").await;
        page.press(Key::Enter).await;
        page.press(" ").await;
        page.sees("Count: 2").await;
    });
}

#[test]
fn a_reload_starts_afresh_and_asks_for_nothing_that_is_missing() {
    browse(async |page| {
        page.open("").await;
        page.click("button", "Add one").await;
        page.sees("Count: 1").await;
        page.reload().await;
        page.sees("Count: 0").await;
        page.assert_quiet().await;
        page.assert_own_origin_only().await;
        let asked = page.server().requests();
        assert!(asked.iter().any(|request| request.path.contains("_bg.wasm")), "{asked:?}");
    });
}

#[test]
fn it_is_accessible_in_every_width_and_scheme() {
    browse(async |page| {
        page.open("").await;
        for (width, height) in [(320, 640), (390, 844), (1280, 900)] {
            for scheme in [Scheme::Light, Scheme::Dark] {
                page.viewport(width, height).await;
                page.colour_scheme(scheme).await;
                page.no_horizontal_scroll().await;
                page.axe().await;
                page.screenshot(&format!("shell-{width}-{scheme:?}").to_lowercase()).await;
            }
        }
    });
}
