//! What takes something away can be undone, and then the document reads as before. What
//! counts the changes alone goes on counting, so that another device hears of them.

use serde_json::Value;

use crate::app::{self, OPENER, REMOVE};
use crate::harness::{Page, browse};
use crate::states::{State, open_everything};
use crate::storage::export;

#[test]
fn what_was_removed_from_a_form_comes_back_as_it_was() {
    browse(async |page| {
        State::Fill.reach(page).await;
        is_undone(page, "Fuel removed", async || {
            app::to_fill(page).await;
            let fuel = page.within("group", "E85");
            fuel.click(OPENER, app::MORE_OF_FUEL).await;
            fuel.click("button", REMOVE).await;
        })
        .await;
        is_undone(page, "Calibration removed", async || {
            page.within("group", "Petrol").click("button", REMOVE).await;
        })
        .await;
        for (name, done) in [
            ("Remove Tank pump", "Part removed"),
            ("Remove Petrol, on the rollers", "Curve removed"),
            ("Remove Compressor", "Part removed"),
        ] {
            is_undone(page, done, async || {
                app::to_hardware(page).await;
                open_everything(page).await;
                page.click("button", name).await;
            })
            .await;
        }
        is_undone(page, "Stop removed", async || {
            page.click("link", "Trip").await;
            page.sees(crate::trip::SETTLED).await;
            open_everything(page).await;
            let stop = app::button_of(page, "Remove: ").await;
            page.click("button", &stop).await;
        })
        .await;
        is_undone(page, "Car removed", async || page.click("button", "Remove this car").await)
            .await;
    });
}

#[test]
fn what_was_done_to_the_log_is_undone() {
    browse(async |page| {
        State::Fill.reach(page).await;
        is_undone(page, "Entry removed", async || {
            app::to_tank(page).await;
            let entry = app::button_of(page, "Remove: Fill").await;
            page.click("button", &entry).await;
        })
        .await;
        app::to_tank(page).await;
        app::add(page, "Note").await;
        is_undone(page, "Entry cancelled", async || {
            app::to_tank(page).await;
            page.click("button", "Cancel").await;
        })
        .await;
    });
}

/// What was done is told where it was done, and at the entry; in another view above it.
#[test]
fn what_was_done_is_told_where_it_was_done() {
    const ABOVE: &str = ".undo.above";
    browse(async |page| {
        State::Fill.reach(page).await;
        let told = async |place: &str| app::texts(page, place).await.join("");
        let becomes = async |place: &str, words: &str| {
            page.becomes(words.to_owned(), async || told(place).await).await;
        };
        app::to_tank(page).await;
        let before = app::log(page).await.len();
        app::add(page, "Note").await;
        app::keep(page).await;
        becomes("#entry > .undo", "Entry added. Undo").await;
        becomes("#log li .undo", "Entry added. Undo").await;
        assert_eq!(told(ABOVE).await, "");
        // What happened in one view can be taken back in all.
        app::to_car(page).await;
        becomes(ABOVE, "Entry added. Undo").await;
        app::to_tank(page).await;
        becomes("#log li .undo", "Entry added. Undo").await;
        becomes(ABOVE, "").await;
        let at_entry = app::button_of(page, "Undo: Entry added, Note, ").await;
        page.click("button", &at_entry).await;
        page.becomes(before, async || {
            let all = page.all("button").await;
            all.iter().filter(|it| it.name.starts_with("Change: ")).count()
        })
        .await;
        becomes("#entry > .undo", "Entry taken back.").await;

        // Where an entry stood, its removal stands; then it is there again.
        let remove = app::button_of(page, "Remove: Fill").await;
        let when = remove.trim_start_matches("Remove: ").to_owned();
        page.click("button", &remove).await;
        becomes("#log li .undo", "Entry removed. Undo").await;
        assert_eq!(told("#entry > .undo").await, "");
        assert!(told("#log li:has(.undo)").await.starts_with(&when));
        app::undo(page, "Entry removed").await;
        becomes("#log li .undo", "Entry brought back.").await;
        // It has been said: in another view it is no longer.
        app::to_car(page).await;
        page.becomes(false, async || page.visible_text().await.contains("brought back")).await;

        // In a list of forms it stands where the form stood.
        page.within("group", "Petrol").click("button", REMOVE).await;
        becomes("#calibrations > .undo", "Calibration removed. Undo").await;
        assert_eq!(told(ABOVE).await, "");
        app::undo(page, "Calibration removed").await;
        becomes("#calibrations > .undo", "Calibration brought back.").await;
        assert!(page.has("group", "Petrol").await);
    });
}

#[test]
fn the_example_goes_without_a_trace_and_comes_back_whole() {
    browse(async |page| {
        const STORED: &str = "return JSON.stringify(Object.entries(localStorage))";
        State::Fill.reach(page).await;
        let before = document(page).await;
        let example = before["here"]["id"].as_str().expect("an id").to_owned();
        let stored = async || page.script(STORED, vec![]).await.to_string();
        page.until("the example to be stored", async || stored().await.contains(&example)).await;
        page.click("button", app::OWN_CAR).await;
        page.until("the example to go", async || !stored().await.contains(&example)).await;
        assert_eq!(document(page).await["others"], Value::Array(Vec::new()));
        assert!(!page.visible_text().await.contains("(removed)"));
        app::undo(page, "Example removed").await;
        page.sees(app::IS_INVENTED).await;
        page.becomes(before, async || document(page).await).await;
        // And it is stored whole again.
        page.reload().await;
        app::to_tank(page).await;
        assert!(!app::log(page).await.is_empty());
    });
}

/// Fails unless an act changes the document, and undoing it brings back what was there.
/// The undoing is offered where the document is looked at too, in another view.
async fn is_undone(page: &Page, done: &str, act: impl AsyncFnOnce()) {
    let before = document(page).await;
    act().await;
    page.find("button", &format!("Undo: {done}")).await;
    assert_ne!(document(page).await, before, "{done}: nothing changed");
    app::undo(page, done).await;
    assert_eq!(document(page).await, before, "{done}: it reads otherwise");
}

/// The document as it is exported, without what counts changes.
async fn document(page: &Page) -> Value {
    app::to_car(page).await;
    let mut document = serde_json::from_str(&export(page).await).expect("JSON");
    drop_counts(&mut document);
    document
}

fn drop_counts(value: &mut Value) {
    match value {
        Value::Object(map) => {
            map.retain(|key, _| key != "revision" && key != "last_id");
            map.values_mut().for_each(drop_counts);
        }
        Value::Array(all) => all.iter_mut().for_each(drop_counts),
        _ => {}
    }
}
