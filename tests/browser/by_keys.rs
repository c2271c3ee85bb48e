//! Each view by keys alone, from the tabs to its answer, and where the focus is after
//! something has gone.

use serde_json::{Value, json};

use crate::app::{self, OPENER};
use crate::harness::{Key, Page, browse};
use crate::states::State;

#[test]
fn the_tank_goes_by_keys() {
    browse(async |page| {
        State::Fill.reach(page).await;
        to_view(page, "Tank").await;
        page.sees("Log").await;
        let before = app::log(page).await.len();
        read_chart(page, "Read Ethanol share").await;
        page.tab_to("button", "Note").await;
        page.press(Key::Enter).await;
        page.sees("Add: Note").await;
        page.tab_to("textbox", "Place").await;
        page.press("Home").await;
        page.tab_to("button", "Save").await;
        page.press(Key::Enter).await;
        page.becomes(before + 1, async || app::log(page).await.len()).await;
        has_focus(page).await;

        let remove = app::button_of(page, "Remove: Note").await;
        page.tab_to("button", &remove).await;
        page.press(Key::Enter).await;
        page.becomes(before, async || app::log(page).await.len()).await;
        has_focus(page).await;
        undo(page, "Entry removed").await;
        page.becomes(before + 1, async || app::log(page).await.len()).await;
    });
}

#[test]
fn the_hardware_goes_by_keys() {
    browse(async |page| {
        State::Fill.reach(page).await;
        to_view(page, "Hardware").await;
        page.sees("hold?").await;
        page.tab_to(OPENER, &opener(page, "Parts").await).await;
        page.press(Key::Enter).await;
        page.tab_to("button", "Port injectors").await;
        page.press(Key::Enter).await;
        page.sees(app::NOT_UPDATED).await;
        page.tab_back_to("checkbox", "Set aside, for comparison").await;
        page.press(" ").await;
        page.sees("Set aside").await;
        page.tab_to("button", "Remove Port injectors").await;
        page.press(Key::Enter).await;
        page.until("the part to go", async || !page.has("button", "Remove Port injectors").await)
            .await;
        has_focus(page).await;
        undo(page, "Part removed").await;
        page.find("button", "Remove Port injectors").await;
        read_chart(page, "Read Use of each part").await;
    });
}

#[test]
fn the_trip_goes_by_keys() {
    browse(async |page| {
        State::Fill.reach(page).await;
        to_view(page, "Trip").await;
        page.sees(crate::trip::SETTLED).await;
        page.tab_to("button", "Add a stop").await;
        page.press(Key::Enter).await;
        page.becomes("Place".to_owned(), async || page.focused().await.name).await;
        page.press("Far away").await;
        page.tab_to("button", "Remove: Far away").await;
        page.press(Key::Enter).await;
        page.until("the stop to go", async || !page.has("button", "Remove: Far away").await).await;
        has_focus(page).await;
        undo(page, "Stop removed").await;
        page.sees("Far away").await;
    });
}

#[test]
fn the_car_goes_by_keys() {
    browse(async |page| {
        State::Fill.reach(page).await;
        to_view(page, "Car").await;
        page.tab_to("button", app::ADD_CALIBRATION).await;
        page.press(Key::Enter).await;
        let calibration = "Calibration 4";
        page.sees(calibration).await;
        page.tab_back_to("textbox", "Name").await;
        has_focus(page).await;
        let count = async || {
            let all = page.all("group").await;
            all.iter().filter(|it| it.name == calibration).count()
        };
        page.becomes(1, count).await;
        page.tab_to("button", app::REMOVE).await;
        page.press(Key::Enter).await;
        page.becomes(0, count).await;
        has_focus(page).await;
        undo(page, "Calibration removed").await;
        page.becomes(1, count).await;
    });
}

#[test]
fn the_methods_go_by_keys() {
    browse(async |page| {
        State::Fill.reach(page).await;
        to_view(page, "Methods").await;
        page.sees("Where does each number come from?").await;
        let openers = page.all(OPENER).await;
        let first = &openers.first().expect("something that opens").name;
        page.tab_to(OPENER, first).await;
        page.press(Key::Enter).await;
        let open = "return document.activeElement.parentElement.open";
        page.becomes(json!(true), async || page.script(open, vec![]).await).await;
    });
}

#[test]
fn a_link_to_another_view_leaves_the_focus_on_the_page() {
    browse(async |page| {
        State::FillRecorded.reach(page).await;
        page.tab_to("link", "See Tank.").await;
        page.press(Key::Enter).await;
        page.sees("Log").await;
        has_focus(page).await;
    });
}

/// Goes to a view by its tab.
async fn to_view(page: &Page, name: &str) {
    page.tab_to("link", name).await;
    page.press(Key::Enter).await;
    has_focus(page).await;
}

/// Takes the crosshair of a chart a point further, which changes what it says.
async fn read_chart(page: &Page, name: &str) {
    const SAID: &str = "return document.activeElement.getAttribute('aria-valuetext')";
    page.tab_to("slider", name).await;
    page.press(Key::Home).await;
    let first = page.script(SAID, vec![]).await;
    assert!(first.as_str().is_some_and(|it| !it.is_empty()), "{first}");
    page.press(Key::Right).await;
    page.until("another reading", async || page.script(SAID, vec![]).await != first).await;
}

/// Takes back what was done, where the focus went after it.
async fn undo(page: &Page, done: &str) {
    page.tab_to("button", &format!("Undo: {done}")).await;
    page.press(Key::Enter).await;
    page.until("the offer to go", async || !app::can_undo(page).await).await;
    has_focus(page).await;
}

/// The whole name of what opens and begins so.
async fn opener(page: &Page, beginning: &str) -> String {
    let all = page.all(OPENER).await;
    let found = all.iter().find(|it| it.name.starts_with(beginning));
    found.unwrap_or_else(|| panic!("no {beginning:?} among {all:?}")).name.clone()
}

/// Waits until something in sight has the focus.
async fn has_focus(page: &Page) {
    const LOOK: &str = "
        const focused = document.activeElement;
        const { top, bottom } = focused.getBoundingClientRect();
        return focused !== document.body && bottom > 0 && top < innerHeight;";
    page.becomes(Value::Bool(true), async || page.script(LOOK, vec![]).await).await;
}
