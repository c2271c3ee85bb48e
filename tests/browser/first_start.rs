//! Nothing is stored yet.

use serde_json::json;

use crate::app::{self, E85, PETROL, offer, start_own_car, to_car, to_fill};
use crate::harness::{Page, browse};

#[test]
fn it_offers_an_own_car_or_an_invented_one() {
    browse(async |page| {
        page.open("").await;
        assert_eq!(page.text("heading", "Fillwright").await, "Fillwright");
        page.find("button", app::OWN_CAR).await;
        page.find("button", app::EXAMPLE).await;
        assert!(!page.visible_text().await.contains(app::IS_INVENTED));
        // Nothing is put into storage before a choice.
        assert_eq!(page.script("return localStorage.length", vec![]).await, json!(0));

        // All that the page is made of comes with it.
        page.reload().await;
        page.find("button", app::OWN_CAR).await;
        let asked = page.server().requests();
        assert!(asked.iter().any(|request| request.path.contains("_bg.wasm")), "{asked:?}");
    });
}

#[test]
fn the_example_says_on_both_views_that_it_is_invented() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::EXAMPLE).await;
        page.sees("Makes E30").await;
        page.sees(app::IS_INVENTED).await;
        to_car(page).await;
        page.sees(app::IS_INVENTED).await;
        page.reload().await;
        page.sees(app::IS_INVENTED).await;

        // An own car takes its place, and the example can be had back.
        page.click("button", app::OWN_CAR).await;
        page.becomes(String::new(), async || page.value(app::CAPACITY).await).await;
        assert!(!page.visible_text().await.contains(app::IS_INVENTED));
        app::undo(page, "Example removed").await;
        page.sees(app::IS_INVENTED).await;
        page.becomes("58".to_owned(), async || page.value(app::CAPACITY).await).await;
    });
}

#[test]
fn an_own_car_starts_empty_and_says_what_is_missing() {
    browse(async |page| {
        start_own_car(page).await;
        assert_eq!(page.value(app::LEVEL).await, "");
        assert_eq!(app::steps(page).await, Vec::<String>::new());

        // Each thing that is missing leads to where it is given.
        let links = missing(page).await;
        assert!(links.len() >= 4, "{links:?}");
        for link in &links {
            to_fill(page).await;
            page.click("link", link).await;
            let hash = page.hash().await;
            let place = hash.rsplit('/').next().unwrap_or_default().to_owned();
            page.until(&format!("{link:?} to bring {place:?} into sight"), async || {
                in_sight(page, &place).await
            })
            .await;
        }

        // One after the other they are given, and the list gets shorter.
        to_car(page).await;
        page.type_in(app::CAPACITY, "60").await;
        to_fill(page).await;
        page.becomes(links.len() - 1, async || missing(page).await.len()).await;
        page.type_in(app::LEVEL, "15").await;
        page.type_in(app::TANK_SHARE, "10").await;
        page.type_in(app::AIM, "E30").await;
        offer(page, E85).await;
        // A fuel alone is enough for the aim, though not to be full as well.
        page.sees("and stop: E30.").await;
        offer(page, PETROL).await;
        page.sees("Makes E30").await;
        assert_eq!(missing(page).await, Vec::<String>::new());
        assert_eq!(app::steps(page).await, ["E85: 16.0 L", "Petrol: 29.0 L"]);
        // No octane was given for what is in the tank, so none is made up.
        assert!(app::fact(page, "RON").await.starts_with("not known"));
    });
}

async fn missing(page: &Page) -> Vec<String> {
    app::texts(page, "#put-in a[href^='#/']:not([href='#/car/calibrations'])").await
}

async fn in_sight(page: &Page, id: &str) -> bool {
    const LOOK: &str = "
        const element = document.getElementById(arguments[0]);
        if (!element) return false;
        const { top, bottom } = element.getBoundingClientRect();
        return top >= 0 && top < innerHeight && bottom > 0;";
    page.script(LOOK, vec![id.into()]).await == json!(true)
}
