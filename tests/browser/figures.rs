//! How quickly the page answers, measured in the browser and printed. Figures depend on
//! the machine, so nothing is asserted of them: `tools/bench page` runs this.

use serde_json::Value;

use crate::app::{EXAMPLE, to_car};
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
