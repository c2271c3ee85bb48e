//! The page around the views: that it comes up, keeps to itself, and can be used
//! by anyone on any screen.

use crate::harness::{Scheme, browse};

#[test]
fn the_page_has_its_heading() {
    browse(async |page| {
        page.open("").await;
        assert_eq!(page.text("heading", "Fillwright").await, "Fillwright");
    });
}

#[test]
fn the_first_stop_of_the_keyboard_leads_past_the_tabs() {
    browse(async |page| {
        page.open("").await;
        page.tab_to("link", "Skip to the content").await;
    });
}

#[test]
fn a_reload_asks_for_nothing_that_is_missing() {
    browse(async |page| {
        page.open("").await;
        page.reload().await;
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
