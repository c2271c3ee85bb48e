//! How quickly the page answers, measured in the browser and printed. Figures depend on
//! the machine, so nothing is asserted of them: `tools/bench page` runs this.

use serde_json::{Value, json};

use crate::app::{EXAMPLE, LEVEL, OWN_CAR, to_car};
use crate::gallery::VIEWS;
use crate::harness::{Page, browse};
use crate::storage::REPLACE;
use crate::trip::long_route;

/// What the page's thread does for longer than 50 ms, as the browser counts it.
const WATCH: &str = "
    window.longTasks = [];
    new PerformanceObserver(list => {
        longTasks.push(...list.getEntries().map(task => task.duration));
    }).observe({ type: 'longtask' });";

/// Presses Cancel and notes when the page says that it stopped.
const CANCEL: &str = "
    const cancel = [...document.querySelectorAll('button')].find(it => it.innerText === 'Cancel');
    const began = performance.now();
    cancel.click();
    const look = () => {
        if (document.querySelector('#trip-standing').innerText.startsWith('Stopped')) {
            window.stoppedAfter = performance.now() - began;
        } else {
            requestAnimationFrame(look);
        }
    };
    look();";

/// How long each press of a key takes until the picture that follows is on the screen.
const WATCH_KEYS: &str = "
    window.presses = [];
    new PerformanceObserver(list => {
        for (const { name, duration } of list.getEntries()) {
            if (name === 'keydown') presses.push(duration);
        }
    }).observe({ type: 'event', durationThreshold: 16 });";

/// A phone of the middle range is so many times slower.
const SLOWER: u32 = 4;

/// One field and its text beside it: no page that does anything can answer sooner.
const LEAST: &str =
    "data:text/html,<input aria-label=Level oninput='told.value = value'><output id=told>";

/// When the largest part of the page was painted, in milliseconds from its start.
const LARGEST: &str = "
    return new Promise(resolve => new PerformanceObserver(list => {
        resolve(list.getEntries().at(-1).startTime);
    }).observe({ type: 'largest-contentful-paint', buffered: true }));";

async fn slow_down(page: &Page) {
    page.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": SLOWER })).await;
}

/// The median and the longest time from a key in the field to the picture that follows.
async fn answered(page: &Page, label: &str) -> (f64, f64) {
    page.script(WATCH_KEYS, vec![]).await;
    let keys = 24_u32;
    for level in 0..keys / 2 {
        // A letter short, so that each is one press and not the emptying of a field.
        let field = page.field(label).await;
        field.send_keys(if level % 2 == 0 { "1" } else { "\u{8}" }).await.expect("a key");
        field.send_keys(if level % 2 == 0 { "\u{8}" } else { "2" }).await.expect("a key");
    }
    // What takes less than the threshold is not told of.
    let told = page.script("return presses", vec![]).await;
    let mut told: Vec<f64> =
        told.as_array().expect("figures").iter().filter_map(Value::as_f64).collect();
    told.sort_by(f64::total_cmp);
    let (slow, all) = (told.len(), usize::try_from(keys).expect("a few"));
    let median = if slow * 2 > all { told[slow - all / 2 - 1] } else { 16.0 };
    (median, told.last().copied().unwrap_or(16.0))
}

#[test]
#[ignore = "prints figures and asserts nothing"]
fn a_key_is_answered_at_once() {
    browse(async |page| {
        page.open("").await;
        page.click("button", EXAMPLE).await;
        page.sees("Makes E").await;
        slow_down(page).await;
        let (median, longest) = answered(page, LEVEL).await;
        page.devtools("Page.navigate", json!({ "url": LEAST })).await;
        let (least, _) = answered(page, LEVEL).await;
        println!(
            "RESULT page: {SLOWER} times slower, a key under Fill is answered on the screen within {median:.0} ms by the median, {longest:.0} at the longest (aim: median 16; a page of one field: {least:.0})"
        );
    });
}

#[test]
#[ignore = "prints figures and asserts nothing"]
fn each_view_is_there_soon() {
    browse(async |page| {
        slow_down(page).await;
        page.open("").await;
        page.sees(OWN_CAR).await;
        let mut largest = vec![("first start", number(page, LARGEST).await.expect("a time"))];
        page.click("button", EXAMPLE).await;
        page.sees("Makes E").await;
        for (view, text) in VIEWS {
            page.open(&format!("#/{view}")).await;
            page.reload().await;
            page.sees(text).await;
            largest.push((view, number(page, LARGEST).await.expect("a time")));
        }
        let each: Vec<_> = largest.iter().map(|(view, ms)| format!("{view} {ms:.0}")).collect();
        println!(
            "RESULT page: {SLOWER} times slower, largest contentful paint in ms: {} (aim: 2000)",
            each.join(", ")
        );
    });
}

async fn number(page: &Page, script: &str) -> Option<f64> {
    page.script(script, vec![]).await.as_f64()
}

#[test]
#[ignore = "prints figures and asserts nothing"]
fn planning_leaves_the_page_free() {
    browse(async |page| {
        page.open("").await;
        page.click("button", EXAMPLE).await;
        to_car(page).await;
        page.give_file(long_route().as_bytes()).await;
        page.click("button", REPLACE).await;
        page.script(WATCH, vec![]).await;
        page.click("link", "Trip").await;
        page.sees("The search for a better one goes on.").await;
        let opening = number(page, "return Math.max(0, ...longTasks)").await.expect("a number");
        println!(
            "RESULT page: {opening:.0} ms for the longest task while the view is opened for the first time"
        );
        // Typing goes on while the worker plans.
        page.script("longTasks = [];", vec![]).await;
        for level in ["31", "32", "33"] {
            page.type_in("Level at the end", level).await;
        }
        page.sees("The search for a better one goes on.").await;
        let text = async || {
            page.script("return document.querySelector('#trip-quality').innerText", vec![]).await
        };
        let before: Value = text().await;
        page.until("a better bound", async || text().await != before).await;
        let tasks = number(page, "return longTasks.length").await.expect("a number");
        let longest = number(page, "return Math.max(0, ...longTasks)").await.expect("a number");
        page.script(CANCEL, vec![]).await;
        let stopped = async || number(page, "return window.stoppedAfter").await;
        page.until("the end", async || stopped().await.is_some()).await;
        let stopped = stopped().await.expect("a number");
        println!(
            "RESULT page: {tasks} tasks over 50 ms while twelve stops are planned and typed over, the longest {longest:.0} ms (aim: none)"
        );
        println!(
            "RESULT page: {stopped:.1} ms from Cancel to the word that it stopped (aim: under 100)"
        );
    });
}
