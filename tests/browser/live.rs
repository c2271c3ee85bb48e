//! What is said aloud of results that change: once when they stand, not at each key, and
//! nothing where nothing changed.

use serde_json::Value;

use crate::app;
use crate::harness::{Key, Page, browse};
use crate::states::State;

/// Notes from now on what every live region says when it changes.
const LISTEN: &str = "
    const live = '[role=status], [role=alert], [role=log], [aria-live]:not([aria-live=off])';
    window.heard = [];
    new MutationObserver(changes => {
        const regions = new Set(changes
            .map(({ target }) => target.nodeType === Node.TEXT_NODE ? target.parentElement : target)
            .map(element => element?.closest(live)));
        for (const region of regions) {
            const words = region?.isConnected && region.checkVisibility() && region.innerText.replace(/\\s+/g, ' ').trim();
            // At the foot the page says what it has kept of itself, whenever it has.
            if (words && !region.closest('.page-foot')) window.heard.push(words);
        }
    }).observe(document.body, { subtree: true, childList: true, characterData: true });";

#[test]
fn several_keys_in_a_field_are_told_of_once() {
    browse(async |page| {
        for (width, height) in [(360, 740), (1280, 800)] {
            State::Fill.reach(page).await;
            page.viewport(width, height).await;
            listen(page).await;
            page.type_in(app::LEVEL, "12.5").await;
            let heard = hears(page, 1).await;
            let steps = app::steps(page).await;
            for step in &steps {
                let (fuel, volume) = step.split_once(": ").expect("a fuel and its volume");
                assert!(heard[0].contains(&format!("{volume} {fuel}")), "{heard:?} of {steps:?}");
            }
            // Leaving the field changes nothing. The next change is then the second.
            page.press(Key::Tab).await;
            page.click("button", "½").await;
            let heard = hears(page, 2).await;
            assert_ne!(heard[0], heard[1]);
        }
    });
}

#[test]
fn what_comes_to_the_same_is_not_told_again() {
    browse(async |page| {
        State::Fill.reach(page).await;
        listen(page).await;
        page.type_in(app::AIM, "30 %").await;
        page.press(Key::Tab).await;
        page.until("the new words", async || page.value(app::AIM).await == "30 %").await;
        app::pick(page, app::NO_AIM).await;
        let heard = hears(page, 1).await;
        let outcome = app::outcome(page).await;
        let blend = outcome.strip_prefix("You have ").expect("what is in it").split(' ').next();
        assert!(heard[0].contains(blend.expect("a blend")), "{heard:?} of {outcome:?}");
    });
}

#[test]
fn a_wrong_entry_is_told_with_what_is_wrong() {
    browse(async |page| {
        for (state, label, wrong) in [
            (State::Fill, app::LEVEL, "900"),
            (State::HardwareOpen, "Driveline loss, of crank power", "950"),
            (State::TripOpen, "At most to spend", "much"),
            (State::Car, app::CAPACITY, "-60"),
        ] {
            state.reach(page).await;
            listen(page).await;
            page.type_in(label, wrong).await;
            page.press(Key::Tab).await;
            let said = format!("1 entry is wrong: {}", below(page, label).await);
            page.until("what is wrong to be told", async || heard(page).await.contains(&said))
                .await;
            // A plan may have settled meanwhile, and that is told too.
            let told = heard(page).await.into_iter().filter(|it| *it == said).count();
            assert_eq!(told, 1, "{state:?}");
        }
    });
}

#[test]
fn another_verdict_on_the_fuel_system_is_told_once() {
    browse(async |page| {
        State::HardwareOpen.reach(page).await;
        listen(page).await;
        page.type_in("Fuel per work at full load (BSFC)", "350").await;
        let heard = hears(page, 1).await;
        let verdict = app::texts(page, "#judgement .word, #judgement .more").await;
        assert_eq!(heard[0].replace(". ", " "), verdict.join(" ").replace(". ", " "));
    });
}

#[test]
fn a_table_that_is_typed_is_told_once_with_its_rows() {
    browse(async |page| {
        State::HardwareBegun.reach(page).await;
        page.press(Key::Tab).await;
        listen(page).await;
        page.type_in("The curve", "rpm Nm\n2000 200\n3000 300\n4000 x\n").await;
        page.until("the rows to be told", async || {
            heard(page).await.iter().any(|it| it.starts_with("2 rows read"))
        })
        .await;
        let rows: Vec<String> =
            heard(page).await.into_iter().filter(|it| it.contains("row")).collect();
        assert!(matches!(rows.as_slice(), [one] if one.ends_with("1 row not read.")), "{rows:?}");
    });
}

async fn listen(page: &Page) {
    page.script(LISTEN, vec![]).await;
}

/// All that was said so far.
async fn heard(page: &Page) -> Vec<String> {
    let heard = page.script("return window.heard", vec![]).await;
    let heard = heard.as_array().expect("what was heard");
    heard.iter().filter_map(Value::as_str).map(str::to_owned).collect()
}

/// Waits until this much was said in all, and fails if it is more.
async fn hears(page: &Page, times: usize) -> Vec<String> {
    page.until("something to be said", async || heard(page).await.len() >= times).await;
    let heard = heard(page).await;
    assert_eq!(heard.len(), times, "{heard:#?}");
    heard
}

/// What stands below a field.
async fn below(page: &Page, label: &str) -> String {
    let field = page.field(label).await;
    let id = field.attr("aria-describedby").await.expect("a field").expect("words below it");
    app::texts(page, &format!("[id='{id}']")).await.concat()
}
