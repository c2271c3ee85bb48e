//! Links into the app, and back out of it.

use serde_json::json;

use crate::app;
use crate::harness::{Key, Page, browse};

#[test]
fn every_view_has_an_address() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::EXAMPLE).await;
        page.sees("Makes E30").await;

        page.open("#/car").await;
        page.field(app::CAPACITY).await;
        assert_eq!(current(page).await, "Car");
        page.open("#/fill").await;
        page.field(app::LEVEL).await;
        assert_eq!(current(page).await, "Fill");
        page.viewport(360, 740).await;
        page.open("#/car").await;
        page.field(app::CAPACITY).await;
        page.open("#/fill/put-in").await;
        page.until("the plan to come into sight", async || plan_is_in_sight(page).await).await;
        assert_eq!(current(page).await, "Fill");
        page.reload().await;
        page.until("the plan to come into sight", async || plan_is_in_sight(page).await).await;
        // What is not an address is no dead end.
        page.open("#/nowhere").await;
        page.field(app::LEVEL).await;
    });
}

#[test]
fn back_and_forward_go_between_the_views() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::EXAMPLE).await;
        page.click("link", "Car").await;
        page.field(app::CAPACITY).await;
        page.click("link", "Fill").await;
        page.field(app::LEVEL).await;
        page.back().await;
        page.field(app::CAPACITY).await;
        assert_eq!(page.hash().await, "#/car");
        assert_eq!(current(page).await, "Car");
        page.back().await;
        page.field(app::LEVEL).await;
        page.forward().await;
        page.field(app::CAPACITY).await;
        page.forward().await;
        page.field(app::LEVEL).await;
        assert_eq!(current(page).await, "Fill");
    });
}

#[test]
fn the_line_at_the_foot_leads_to_the_plan_each_time() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::EXAMPLE).await;
        page.viewport(360, 740).await;
        for _ in 0..2 {
            page.script("scrollTo(0, 0)", vec![]).await;
            assert!(!plan_is_in_sight(page).await);
            page.script("document.querySelector('a[href=\"#/fill/put-in\"]').click()", vec![])
                .await;
            page.until("the plan to come into sight", async || plan_is_in_sight(page).await).await;
        }
    });
}

#[test]
fn the_first_link_skips_to_the_content_of_the_view_in_sight() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::EXAMPLE).await;
        page.open("#/car").await;
        page.field(app::CAPACITY).await;
        page.tab_to("link", "Skip to the content").await;
        page.press(Key::Enter).await;
        page.becomes("main".to_owned(), async || page.focused().await.role).await;
        assert_eq!(current(page).await, "Car");
    });
}

/// The view that is marked as the present one.
async fn current(page: &Page) -> String {
    app::texts(page, "nav [aria-current=page]").await.join(" ")
}

async fn plan_is_in_sight(page: &Page) -> bool {
    const LOOK: &str = "
        const { top, bottom } = document.getElementById('put-in').getBoundingClientRect();
        return top >= 0 && top < innerHeight / 2 && bottom > 0;";
    page.script(LOOK, vec![]).await == json!(true)
}
