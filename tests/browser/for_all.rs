//! What every view owes everybody: contrast, names, room for a finger, no
//! scrolling sideways, in light and dark, on a phone and at a desk.

use crate::app::{self, CAPACITY, LEVEL};
use crate::harness::{Key, Page, Scheme, browse};
use crate::storage::notes;

#[test]
fn the_first_start_is_for_all() {
    browse(async |page| {
        page.open("").await;
        for_all(page, "welcome").await;
    });
}

#[test]
fn the_fill_is_for_all() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::EXAMPLE).await;
        page.sees("Makes E30").await;
        for_all(page, "fill").await;
        open_everything(page).await;
        page.sees("Orders of pouring").await;
        for_all(page, "fill-open").await;
    });
}

#[test]
fn the_car_is_for_all() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::EXAMPLE).await;
        page.open("#/car").await;
        page.field(CAPACITY).await;
        for_all(page, "car").await;
    });
}

#[test]
fn the_tank_is_for_all() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::EXAMPLE).await;
        app::to_tank(page).await;
        for_all(page, "tank").await;
        open_everything(page).await;
        for_all(page, "tank-open").await;
        for kind in ["Fill", "Tube test", "Contents stated"] {
            page.viewport(1280, 800).await;
            app::add(page, kind).await;
            app::keep(page).await;
            page.sees("Not kept yet.").await;
            open_everything(page).await;
            for_all(page, &format!("tank-{kind}").to_lowercase().replace(' ', "-")).await;
            page.viewport(1280, 800).await;
            page.click("button", "Leave it").await;
        }
    });
}

#[test]
fn the_hardware_is_for_all() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::EXAMPLE).await;
        app::to_hardware(page).await;
        for_all(page, "hardware").await;
        open_everything(page).await;
        page.sees("What was taken where nothing was typed").await;
        for_all(page, "hardware-open").await;
        // Everything that can be wrong says so at once.
        page.viewport(1280, 800).await;
        page.type_in("Lambda at full load", "7").await;
        page.type_in("Driveline loss, of crank power", "95").await;
        page.press(Key::Tab).await;
        page.click("button", "Port injectors").await;
        page.sees("Not updated").await;
        open_everything(page).await;
        for_all(page, "hardware-wrong").await;
    });
}

#[test]
fn an_empty_workshop_is_for_all() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::OWN_CAR).await;
        app::to_hardware(page).await;
        for_all(page, "hardware-empty").await;
    });
}

#[test]
fn the_trip_is_for_all() {
    browse(async |page| {
        crate::trip::example(page).await;
        for_all(page, "trip").await;
        page.viewport(1280, 800).await;
        page.click("button", "Hold this plan").await;
        page.sees("The plan that you hold").await;
        open_everything(page).await;
        for_all(page, "trip-open").await;
        // Everything that can be wrong says so at once.
        page.viewport(1280, 800).await;
        page.type_in("At most to spend", "much").await;
        page.type_in("Stay inside the windows by", "90").await;
        page.press(Key::Tab).await;
        page.sees("What is missing or wrong").await;
        for_all(page, "trip-wrong").await;
    });
}

#[test]
fn an_empty_route_is_for_all() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::OWN_CAR).await;
        page.click("link", "Trip").await;
        page.sees("Which fills, and where?").await;
        for_all(page, "trip-empty").await;
    });
}

#[test]
fn the_methods_are_for_all() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::EXAMPLE).await;
        page.click("link", "Methods").await;
        page.sees("Where does each number come from?").await;
        for_all(page, "methods").await;
        open_everything(page).await;
        page.sees("Octane by moles, a lower bound").await;
        for_all(page, "methods-open").await;
    });
}

#[test]
fn what_is_missing_is_for_all() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::OWN_CAR).await;
        page.sees(app::SOMETHING_MISSING).await;
        for_all(page, "missing").await;
    });
}

#[test]
fn an_impossible_aim_is_for_all() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::EXAMPLE).await;
        page.type_in(LEVEL, "54").await;
        page.type_in(app::AIM, "E60").await;
        page.sees("cannot be reached").await;
        for_all(page, "impossible").await;
    });
}

#[test]
fn a_wrong_entry_is_for_all() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::EXAMPLE).await;
        page.sees("Makes E30").await;
        page.type_in(LEVEL, "90").await;
        page.press(Key::Tab).await;
        page.sees(app::NOT_UPDATED).await;
        for_all(page, "wrong").await;
    });
}

#[test]
fn several_cars_and_an_import_are_for_all() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::EXAMPLE).await;
        app::to_car(page).await;
        page.click("button", "Add a car").await;
        page.type_in("Name of the car", "Second").await;
        page.click("button", "Remove this car").await;
        page.click("button", "Add a car").await;
        page.give_file(notes("other", 0, 3).as_bytes()).await;
        page.sees("a new car, 3 entries").await;
        for_all(page, "car-import").await;
    });
}

pub(crate) async fn for_all(page: &Page, name: &str) {
    for (width, height) in [(360, 740), (1280, 800)] {
        page.viewport(width, height).await;
        page.no_horizontal_scroll().await;
        page.targets_at_least(44).await;
        for scheme in [Scheme::Light, Scheme::Dark] {
            page.colour_scheme(scheme).await;
            page.axe().await;
            page.screenshot(&format!("{name}-{width}-{scheme:?}").to_lowercase()).await;
        }
    }
    page.viewport(320, 640).await;
    page.no_horizontal_scroll().await;
}

async fn open_everything(page: &Page) {
    // What opens may make more that opens.
    const OPEN: &str = "
        const closed = document.querySelectorAll('details:not([open])');
        closed.forEach(it => it.open = true);
        return closed.length;";
    page.becomes(Some(0), async || page.script(OPEN, vec![]).await.as_i64()).await;
}
