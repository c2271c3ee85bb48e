//! After the first visit the network is not needed any more, and where a browser
//! keeps nothing, the app is what it is without.

use serde_json::{Value, json};

use crate::app::{self, EXAMPLE};
use crate::harness::{Page, browse};
use crate::trip;

const IS_KEPT: &str = "from now on it works without a network too";

/// The views by their links, with the example, and what each shows then.
const LINKS: [(&str, &str); 6] = [
    ("#/fill", "Makes E30"),
    ("#/tank", "Log"),
    ("#/hardware", "hold?"),
    ("#/trip", trip::SETTLED),
    ("#/car", "Calibrations"),
    ("#/methods", "Where does each number come from?"),
];

#[test]
fn without_a_network_each_view_comes_by_its_link() {
    browse(async |page| {
        page.open("").await;
        page.click("button", EXAMPLE).await;
        app::kept(page).await;
        page.server().stop();
        for (link, shows) in LINKS {
            page.open(link).await;
            page.reload().await;
            page.sees(shows).await;
            page.sees(app::IS_INVENTED).await;
        }
    });
}

#[test]
fn without_a_network_a_fill_is_completed() {
    browse(async |page| {
        page.open("").await;
        app::kept(page).await;
        page.server().stop();
        page.reload().await;
        app::quarter_full(page).await;
        app::as_planned(page, 0).await;
        app::as_planned(page, 1).await;
        app::done(page, 2).await;
        page.click("button", app::RECORD).await;
        page.sees("See Tank.").await;
        page.reload().await;
        app::to_tank(page).await;
        page.becomes(1, async || app::log(page).await.len()).await;
        assert!(app::estimate(page).await.contains("E30"), "{}", app::estimate(page).await);
    });
}

#[test]
fn with_the_network_cut_each_view_comes_by_its_link_and_a_fill_is_recorded() {
    browse(async |page| {
        page.open("").await;
        page.click("button", EXAMPLE).await;
        app::kept(page).await;
        page.cut_network().await;
        is_cut_off(page).await;
        for (link, shows) in LINKS {
            page.open(link).await;
            page.reload().await;
            page.sees(shows).await;
            page.sees(app::IS_INVENTED).await;
        }
        page.open("#/tank").await;
        page.sees("Log").await;
        let before = app::log(page).await.len();
        page.open("#/fill").await;
        page.sees("Makes E30").await;
        for step in 0..2 {
            app::as_planned(page, step).await;
            app::done(page, step + 1).await;
        }
        page.click("button", app::RECORD).await;
        page.sees("See Tank.").await;
        page.open("#/tank").await;
        page.reload().await;
        page.becomes(before + 1, async || app::log(page).await.len()).await;
        assert_eq!(reached(page), Vec::<String>::new(), "the server was asked all the same");
    });
}

/// Waits until the page is denied what nobody keeps for it: the service worker hears of
/// the cut a little later than the page.
async fn is_cut_off(page: &Page) {
    const ASK: &str = "
        return fetch('./nobody-keeps-this', { cache: 'no-store' }).then(() => 'there', () => 'none');";
    page.becomes(json!("none"), async || page.script(ASK, vec![]).await).await;
    assert_eq!(page.script("return navigator.onLine", vec![]).await, json!(false));
    page.console().await;
    page.server().forget();
}

/// What has reached the server since. When the browser looks for a newer version of the
/// service worker is its own affair; neither the page nor that worker asks for it then, so
/// that it is not cut off with them.
fn reached(page: &Page) -> Vec<String> {
    let requests = page.server().requests();
    let asked = requests.iter().filter(|it| !it.path.ends_with("/service-worker.js"));
    asked.map(ToString::to_string).collect()
}

#[test]
fn the_page_by_its_file_name_is_kept_as_well() {
    browse(async |page| {
        page.open("").await;
        app::kept(page).await;
        page.server().stop();
        page.open("index.html?from=elsewhere#/car").await;
        page.find("button", app::OWN_CAR).await;
    });
}

#[test]
fn that_it_is_kept_is_said_on_the_first_visit_alone() {
    browse(async |page| {
        page.open("").await;
        page.sees(IS_KEPT).await;
        app::kept(page).await;
        page.reload().await;
        page.find("button", app::OWN_CAR).await;
        // The page has spoken with the service worker by then.
        let ready = "return navigator.serviceWorker.ready.then(() => true)";
        assert_eq!(page.script(ready, vec![]).await, json!(true));
        assert!(!page.visible_text().await.contains(IS_KEPT));
    });
}

#[test]
fn a_browser_that_keeps_nothing_has_the_app_all_the_same() {
    for obstacle in [
        // As without an encrypted connection.
        "delete Navigator.prototype.serviceWorker",
        // As where a person forbids it.
        "ServiceWorkerContainer.prototype.register = () => Promise.reject(new Error('no'))",
    ] {
        browse(async |page| {
            page.before_each_load(obstacle).await;
            app::quarter_full(page).await;
            assert_eq!(app::steps(page).await, ["E85: 16.0 L", "Petrol: 29.0 L"]);
            page.click("link", "Trip").await;
            page.sees("Which fills, and where?").await;
            assert!(!page.visible_text().await.contains(IS_KEPT));
            let kept = "return caches.keys().then(names => names.length)";
            assert_eq!(page.script(kept, vec![]).await, json!(0));
        });
    }
}

#[test]
fn it_can_be_installed() {
    browse(async |page| {
        page.open("").await;
        app::kept(page).await;
        let manifest = page.devtools("Page.getAppManifest", json!({})).await;
        assert_eq!(manifest["errors"], json!([]), "{manifest}");
        let address = manifest["url"].as_str().expect("an address");
        assert_eq!(address, format!("{}manifest.webmanifest", page.server().base()));
        let told: Value =
            serde_json::from_str(manifest["data"].as_str().expect("a manifest")).expect("JSON");
        assert_eq!(told["display"], "standalone");
        // It starts where it lies, wherever that is.
        for place in ["id", "start_url", "scope"] {
            assert_eq!(told[place], "./", "{place}");
        }
        let errors = page.devtools("Page.getInstallabilityErrors", json!({})).await;
        assert_eq!(errors["installabilityErrors"], json!([]));
        // Each icon is of the size that the manifest gives.
        for icon in told["icons"].as_array().expect("icons") {
            let size = "
                const image = new Image();
                image.src = arguments[0];
                return image.decode().then(() => `${image.width}x${image.height}`);";
            let size = page.script(size, vec![icon["src"].clone()]).await;
            assert_eq!(size, icon["sizes"], "{icon}");
        }
    });
}
