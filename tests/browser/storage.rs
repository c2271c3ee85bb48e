//! Nothing that was logged is lost: not to a crash, a full or missing storage, a
//! ruined text, another tab or an import.

use fillwright::document::SCHEMA;
use serde_json::{Value, json};

use crate::app::{self, CAPACITY, EXAMPLE, OWN_CAR, to_car};
use crate::harness::{Key, Page, browse};

const EXPORT: &str = "Export everything";
const MERGE: &str = "Merge";
pub(crate) const REPLACE: &str = "Replace everything";
const USE_IT: &str = "Use it";
const CANCEL: &str = "Cancel";
const FORGET: &str = "Forget for good";
const FORGET_SURELY: &str = "Press again: this cannot be undone";

/// The example with its log, at the Car view.
async fn example(page: &Page) {
    page.open("").await;
    page.click("button", EXAMPLE).await;
    to_car(page).await;
    page.until("the log to be stored", async || count(page, "fillwright.log.").await > 0).await;
}

/// How many keys begin like this.
async fn count(page: &Page, beginning: &str) -> u64 {
    const READ: &str =
        "return Object.keys(localStorage).filter(it => it.startsWith(arguments[0])).length";
    page.script(READ, vec![beginning.into()]).await.as_u64().expect("a number")
}

/// All that is stored, apart from copies.
async fn stored(page: &Page) -> Value {
    const READ: &str = "
        return Object.fromEntries(Object.entries(localStorage)
            .filter(([key]) => !key.startsWith('fillwright.backup')).sort());";
    page.script(READ, vec![]).await
}

pub(crate) async fn export(page: &Page) -> String {
    let (name, text) = page.download(async || page.click("button", EXPORT).await).await;
    let parts: Vec<&str> = name.split(['-', '.']).collect();
    assert!(
        matches!(parts[..], ["fillwright", y, m, d, "json"] if [y.len(), m.len(), d.len()] == [4, 2, 2]),
        "{name}"
    );
    text
}

/// A document of one car with so many entries that are notes.
pub(crate) fn notes(car: &str, from: usize, to: usize) -> String {
    let note = |number: usize| {
        json!({
            "id": format!("note-{number}"), "revision": 1, "time": "2026-05-03T17:40:00+02:00",
            "note": format!("Note {number}"), "what": "note",
        })
    };
    let blank = json!({ "text": "", "typed_in": "metric" });
    json!({
        "schema": 2,
        "settings": { "system": "metric", "decimal": null, "currency": "", "pump_step": blank },
        "here": {
            "id": car, "demo": false, "last_id": 0,
            "car": {
                "name": "Imported", "capacity": { "text": "60", "typed_in": "metric" },
                "reserve": blank, "consumption": blank, "reference": "E10", "fluid": "unknown",
                "calibrations": [], "own_fuels": [],
            },
            "fill": {
                "level": blank, "reading": "gauge", "level_error": blank, "share": "",
                "share_range": "", "octane": "", "mon": "", "offers": [], "clicked": false,
                "aim": "share", "aim_share": "", "stop": "brim", "stop_level": blank,
                "stop_volume": blank, "stop_money": "",
            },
            "log": (from..to).map(note).collect::<Vec<_>>(),
        },
        "others": [],
    })
    .to_string()
}

#[test]
fn an_export_brings_everything_back_where_nothing_is() {
    browse(async |page| {
        example(page).await;
        page.type_in(CAPACITY, " 57,5 l").await;
        page.press(Key::Tab).await;
        let text = export(page).await;
        assert!(text.contains(" 57,5 l"), "{text}");
        page.script("localStorage.clear()", vec![]).await;
        page.reload().await;
        page.give_file(text.as_bytes()).await;
        page.click("button", USE_IT).await;
        to_car(page).await;
        assert_eq!(page.value(CAPACITY).await, " 57,5 l");
        assert_eq!(export(page).await, text);
        page.reload().await;
        page.field(CAPACITY).await;
        assert_eq!(export(page).await, text);
    });
}

#[test]
fn an_import_is_shown_first_and_can_be_undone() {
    browse(async |page| {
        example(page).await;
        let before = export(page).await;
        for (take, said, done) in [
            (MERGE, "Imported: a new car, 5 entries", "File merged"),
            (REPLACE, "Imported: ", "Everything replaced by the file"),
        ] {
            page.give_file(notes("other", 0, 5).as_bytes()).await;
            page.sees(said).await;
            page.click("button", take).await;
            page.until("the import", async || export(page).await.contains("Note 4")).await;
            app::undo(page, done).await;
            page.sees("Everything as before.").await;
            // What was taken back is marked as removed, so that it stays so elsewhere.
            let now: Value = serde_json::from_str(&export(page).await).expect("a document");
            let before: Value = serde_json::from_str(&before).expect("a document");
            assert_eq!(now["here"], before["here"]);
            assert_eq!(now["others"][0]["removed"], true);
        }
        // Forgetting takes a second press in the same place.
        page.click("button", FORGET).await;
        page.click("button", FORGET_SURELY).await;
        page.until("the car to be gone", async || count(page, "fillwright.log.other").await == 0)
            .await;
        assert_eq!(export(page).await, before);
        let all = page.script("return JSON.stringify(localStorage)", vec![]).await;
        assert!(!all.as_str().unwrap_or_default().contains("Note 4"));
    });
}

#[test]
fn ruined_files_do_no_harm() {
    browse(async |page| {
        example(page).await;
        let text = export(page).await;
        let before = stored(page).await;
        let mut ruined: Vec<Vec<u8>> = Vec::new();
        for part in 1..12 {
            let at = text.floor_char_boundary(text.len() * part / 12);
            ruined.push(text.as_bytes()[..at].to_vec());
            let mut bytes = text.as_bytes().to_vec();
            bytes[at] ^= 0x80;
            ruined.push(bytes);
        }
        let schema = |number: u32| format!("\"schema\":{number}");
        ruined.push(text.replacen(&schema(SCHEMA), &schema(SCHEMA + 1), 1).into());
        ruined.push(text.replace("\"revision\":1", "\"revision\":NaN").into());
        ruined.push(text.replace("\"revision\":1", "\"revision\":-1").into());
        ruined.push("[".repeat(1 << 20).into());
        ruined.push(vec![b' '; (8 << 20) + 1]);
        ruined.push(Vec::new());
        for file in ruined {
            page.give_file(&file).await;
            page.sees("Nothing was taken in").await;
            assert!(!page.has("button", MERGE).await);
        }
        page.give_file(text.as_bytes()).await;
        page.sees("as here").await;
        assert!(!page.visible_text().await.contains("Nothing was taken in"));
        page.click("button", CANCEL).await;
        assert_eq!(stored(page).await, before);
    });
}

/// The page ends after so many writes; what comes is the old or the new, whole.
#[test]
fn a_crash_between_two_writes_loses_nothing() {
    const CRASH: &str = "
        let left = arguments[0];
        for (const name of ['setItem', 'removeItem']) {
            const write = Storage.prototype[name];
            Storage.prototype[name] = function (...rest) {
                if (left-- <= 0) throw new Error('the page has ended');
                return write.apply(this, rest);
            };
        }";
    const RESTORE: &str = "
        localStorage.clear();
        for (const [key, text] of Object.entries(arguments[0])) localStorage.setItem(key, text);";
    browse(async |page| {
        example(page).await;
        page.reload().await;
        let before = stored(page).await;
        let (mut old, mut new) = (0, 0);
        for writes in 0..9 {
            page.script(RESTORE, vec![before.clone()]).await;
            page.reload().await;
            page.field(CAPACITY).await;
            page.script(CRASH, vec![writes.into()]).await;
            page.give_file(notes("other", 0, 4).as_bytes()).await;
            page.click("button", MERGE).await;
            page.sees(if writes < 7 { "could not be stored" } else { "File merged." }).await;
            page.reload().await;
            page.field(CAPACITY).await;
            assert_eq!(count(page, "fillwright.change.").await, 0);
            if count(page, "fillwright.log.other").await == 0 {
                assert_eq!(stored(page).await, before);
                old += 1;
            } else {
                let document: Value = serde_json::from_str(&export(page).await).expect("JSON");
                assert_eq!(document["others"][0]["car"]["name"], "Imported");
                assert_eq!(document["others"][0]["log"].as_array().map(Vec::len), Some(4));
                new += 1;
            }
        }
        assert_eq!((old, new), (1, 8), "from the first write on the change is written down");
    });
}

#[test]
fn a_full_storage_is_told_of_and_the_app_goes_on() {
    const FULL: &str = "
        window.setItem = Storage.prototype.setItem;
        Storage.prototype.setItem = () => {
            throw new DOMException('no room', 'QuotaExceededError');
        };";
    browse(async |page| {
        example(page).await;
        page.script(FULL, vec![]).await;
        page.type_in(CAPACITY, "61").await;
        page.sees("storage is full").await;
        let (_, text) = page.download(async || page.click("button", "Export now").await).await;
        assert!(text.contains("\"61\""));
        page.script("Storage.prototype.setItem = window.setItem", vec![]).await;
        page.type_in(CAPACITY, "62").await;
        page.press(Key::Tab).await;
        page.until("the message to go", async || {
            !page.visible_text().await.contains("storage is full")
        })
        .await;
        page.reload().await;
        page.becomes("62".to_owned(), async || page.value(CAPACITY).await).await;
    });
}

#[test]
fn without_storage_the_app_works_and_says_so() {
    const NONE: &str = "
        Object.defineProperty(window, 'localStorage', {
            get() { throw new DOMException('not here', 'SecurityError'); },
        });";
    browse(async |page| {
        page.before_each_load(NONE).await;
        page.open("").await;
        page.sees("does not let the page store anything").await;
        page.click("button", OWN_CAR).await;
        to_car(page).await;
        page.type_in(CAPACITY, "60").await;
        page.press(Key::Tab).await;
        assert!(export(page).await.contains("\"60\""));
    });
}

#[test]
fn entries_of_two_windows_are_in_both() {
    browse(async |page| {
        example(page).await;
        let windows = page.open_window("#/car").await;
        for (number, window) in windows.iter().enumerate() {
            page.to_window(window).await;
            page.give_file(notes("other", number, number + 1).as_bytes()).await;
            page.click("button", MERGE).await;
            page.until("the entry to be stored", async || {
                count(page, "fillwright.log.other.").await == number as u64 + 1
            })
            .await;
        }
        for window in &windows {
            page.to_window(window).await;
            page.until("both entries to be here", async || {
                let text = export(page).await;
                text.contains("Note 0") && text.contains("Note 1")
            })
            .await;
        }
        // What is typed in one is in the other, which goes on from there.
        page.type_in(CAPACITY, "63").await;
        page.press(Key::Tab).await;
        page.to_window(&windows[0]).await;
        page.becomes("63".to_owned(), async || page.value(CAPACITY).await).await;
        page.type_in(app::RESERVE, "9").await;
        page.press(Key::Tab).await;
        page.reload().await;
        page.becomes("63".to_owned(), async || page.value(CAPACITY).await).await;
        assert_eq!(page.value(app::RESERVE).await, "9");
        assert!(export(page).await.contains("Note 1"));
    });
}

#[test]
fn a_ruined_document_is_put_together_again() {
    browse(async |page| {
        example(page).await;
        // The copy is made when the page is opened.
        page.reload().await;
        page.field(CAPACITY).await;
        let before = export(page).await;
        let ruin = r#"{"revision":7,"document":{"schema":2,"sett"#;
        page.script("localStorage['fillwright.document'] = arguments[0]", vec![ruin.into()]).await;
        page.reload().await;
        page.sees("put together").await;
        page.field(CAPACITY).await;
        assert_eq!(export(page).await, before);
        let kept = page.script("return localStorage['fillwright.unreadable.1']", vec![]).await;
        assert_eq!(kept, ruin);
        let (_, aside) =
            page.download(async || page.click("button", "Download what is kept aside").await).await;
        assert!(aside.contains(ruin), "{aside}");
        page.reload().await;
        page.field(CAPACITY).await;
        assert!(!page.visible_text().await.contains("put together"));
    });
}

#[test]
fn a_ruined_entry_is_read_from_the_copy() {
    const RUIN: &str = "
        const key = Object.keys(localStorage).find(it => it.startsWith('fillwright.log.'));
        localStorage[key] = localStorage[key].slice(0, -9);";
    browse(async |page| {
        example(page).await;
        page.reload().await;
        page.field(CAPACITY).await;
        let before = export(page).await;
        page.script(RUIN, vec![]).await;
        page.reload().await;
        page.sees("of the stored entries cannot be read").await;
        page.field(CAPACITY).await;
        assert_eq!(export(page).await, before);
        assert_eq!(count(page, "fillwright.unreadable.1.log.").await, 1);
    });
}

#[test]
fn several_cars_are_kept_apart() {
    const CAR_NAME: &str = "Name of the car";
    browse(async |page| {
        example(page).await;
        page.type_in(CAR_NAME, "First").await;
        page.click("button", "Add a car").await;
        page.becomes(String::new(), async || page.value(CAPACITY).await).await;
        page.type_in(CAR_NAME, "Second").await;
        page.type_in(CAPACITY, "40").await;
        page.press(Key::Tab).await;
        page.choose("In use", "First").await;
        page.becomes("58".to_owned(), async || page.value(CAPACITY).await).await;
        page.open("#/fill").await;
        page.sees("First").await;
        page.open("#/car").await;
        page.choose("In use", "Second").await;
        page.becomes("40".to_owned(), async || page.value(CAPACITY).await).await;
        page.click("button", "Remove this car").await;
        page.becomes("58".to_owned(), async || page.value(CAPACITY).await).await;
        page.reload().await;
        page.click("button", "Bring back Second").await;
        page.choose("In use", "Second").await;
        page.becomes("40".to_owned(), async || page.value(CAPACITY).await).await;
    });
}
