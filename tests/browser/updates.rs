//! A newer version is offered, never forced, and never mixed with the older.

use serde_json::json;

use crate::app::{self, EXAMPLE};
use crate::builds::{self, Marks};
use crate::harness::{Page, browse};
use crate::trip::SETTLED;

const OFFER: &str = "A new version is ready.";
const USE_IT: &str = "Use it now";
const LATER: &str = "Later";

/// Comes back to the app after a while, which makes it look for a newer version.
async fn come_back(page: &Page) {
    const BACK: &str = "document.dispatchEvent(new Event('visibilitychange', { bubbles: true }))";
    page.script(BACK, vec![]).await;
}

/// Goes to the Trip view, which has its worker loaded and plan.
async fn plan(page: &Page) {
    page.click("link", "Trip").await;
    page.sees(SETTLED).await;
}

/// How many versions are kept.
async fn versions(page: &Page) -> u64 {
    let count = page.script("return caches.keys().then(names => names.length)", vec![]).await;
    count.as_u64().expect("a number")
}

#[test]
fn a_newer_version_waits_until_it_is_accepted() {
    browse(async |page| {
        page.open("").await;
        page.click("button", EXAMPLE).await;
        app::kept(page).await;
        page.server().publish(builds::build("later"));
        come_back(page).await;
        page.sees(OFFER).await;
        // The old worker is loaded only now, when the host has none of that name.
        plan(page).await;
        assert_eq!(Marks::in_use(page).await, Marks::original());
        page.reload().await;
        page.sees(OFFER).await;
        page.sees(SETTLED).await;
        assert_eq!(Marks::in_use(page).await, Marks::original());

        page.click("button", USE_IT).await;
        page.becomes(Marks::of("later"), async || Marks::in_use(page).await).await;
        page.sees(SETTLED).await;
        page.sees(app::IS_INVENTED).await;
        assert!(!page.visible_text().await.contains(OFFER));
        page.becomes(1, async || versions(page).await).await;

        // And it needs no network either.
        page.server().stop();
        page.reload().await;
        page.sees(SETTLED).await;
        assert_eq!(Marks::in_use(page).await, Marks::of("later"));
    });
}

#[test]
fn what_is_being_typed_is_left_alone_and_outlives_the_change() {
    browse(async |page| {
        app::quarter_full(page).await;
        app::kept(page).await;
        page.type_in(app::LEVEL, "17").await;
        let place = async || {
            let top = "return document.activeElement.getBoundingClientRect().top";
            page.script(top, vec![]).await
        };
        let before = place().await;
        page.server().publish(builds::build("later"));
        come_back(page).await;
        page.sees(OFFER).await;
        assert_eq!(page.focused().await.name, app::LEVEL);
        assert_eq!(place().await, before);
        page.press(".5").await;
        page.click("button", USE_IT).await;
        let expected = Marks::of("later").without_worker();
        page.becomes(expected, async || Marks::in_use(page).await).await;
        page.becomes("17.5".to_owned(), async || page.value(app::LEVEL).await).await;
    });
}

#[test]
fn later_means_with_the_next_start_at_the_earliest() {
    browse(async |page| {
        page.open("").await;
        app::kept(page).await;
        page.server().publish(builds::build("later"));
        come_back(page).await;
        page.click("button", LATER).await;
        page.until("the offer to go", async || !page.has("button", USE_IT).await).await;
        page.reload().await;
        page.sees(OFFER).await;
        assert_eq!(Marks::in_use(page).await, Marks::original().without_worker());
        // A still newer one takes the place of the one that waits.
        page.server().publish(builds::build("later_still"));
        come_back(page).await;
        let waits = "
            return navigator.serviceWorker.getRegistration()
                .then(({ installing, waiting }) => !installing && caches.keys())
                .then(names => names.length)";
        page.becomes(json!(3), async || page.script(waits, vec![]).await).await;
        page.click("button", USE_IT).await;
        let expected = Marks::of("later_still").without_worker();
        page.becomes(expected, async || Marks::in_use(page).await).await;
    });
}

#[test]
fn another_window_keeps_its_version_until_it_wants_the_newer() {
    browse(async |page| {
        page.open("").await;
        page.click("button", EXAMPLE).await;
        app::kept(page).await;
        let [first, second] = page.open_window("").await;
        page.sees("Makes E30").await;
        page.server().publish(builds::build("later"));
        come_back(page).await;
        page.click("button", USE_IT).await;
        let later = Marks::of("later").without_worker();
        page.becomes(later, async || Marks::in_use(page).await).await;

        // The first one was opened before; it can still load what it lacks.
        page.to_window(&first).await;
        page.sees(OFFER).await;
        plan(page).await;
        assert_eq!(Marks::in_use(page).await, Marks::original());
        assert_eq!(versions(page).await, 2);

        page.click("button", USE_IT).await;
        page.becomes(Marks::of("later"), async || Marks::in_use(page).await).await;
        page.becomes(1, async || versions(page).await).await;
        page.to_window(&second).await;
        page.sees("Makes E30").await;
    });
}

#[test]
fn a_build_that_is_not_whole_is_not_taken() {
    // One file is missing, or is another than the list says.
    let damages: [fn(&std::path::Path); 2] = [
        |file| std::fs::remove_file(file).expect("a file"),
        |file| std::fs::write(file, "of another build").expect("a file"),
    ];
    for damage in damages {
        browse(async |page| {
            page.open("").await;
            app::kept(page).await;
            let build = builds::build("later");
            damage(&build.join("style-later.css"));
            page.server().publish(build);
            let look = "
                return navigator.serviceWorker.getRegistration()
                    .then(registration => registration.update())
                    .then(() => true)";
            page.script(look, vec![]).await;
            let state = "
                return navigator.serviceWorker.getRegistration()
                    .then(({ installing, waiting }) => [installing !== null, waiting !== null])";
            page.becomes(json!([false, false]), async || page.script(state, vec![]).await).await;
            assert_eq!(versions(page).await, 1);
            assert!(!page.has("button", USE_IT).await);
            page.reload().await;
            assert_eq!(Marks::in_use(page).await, Marks::original().without_worker());
            // That a file was missing is what the test is about.
            page.console().await;
            page.server().forget();
        });
    }
}

#[test]
fn the_offer_is_for_all() {
    browse(async |page| {
        page.open("").await;
        page.click("button", EXAMPLE).await;
        app::kept(page).await;
        page.server().publish(builds::build("later"));
        come_back(page).await;
        page.sees(OFFER).await;
        crate::for_all::for_all(page, "offer").await;
    });
}
