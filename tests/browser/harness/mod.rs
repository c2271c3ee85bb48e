//! What a browser test stands on.
//!
//! [`browse`] gives a test its own server, browser and profile, and hands it a
//! [`Page`]. A test acts on the page as a user does: it finds things by role,
//! name and label, never by class or id, and types with real keys. Every look-up
//! waits until the thing is there, and panics with what was there instead.
//!
//! ```ignore
//! #[test]
//! fn a_blend_is_worked_out() {
//!     browse(async |page| {
//!         page.open("#fill").await;
//!         page.type_in("Litres in the tank", "12,5").await;
//!         page.click("button", "Work out").await;
//!         page.sees("31.4 L").await;
//!         page.axe().await;
//!     });
//! }
//! ```

#![allow(dead_code, reason = "a toolbox may hold more than the present tests take from it")]

mod audit;
mod chromium;
mod files;
mod markup;
mod page;
mod paper;
mod server;

use std::any::Any;
use std::panic::{AssertUnwindSafe, catch_unwind, resume_unwind};
use std::sync::{Condvar, Mutex, PoisonError};

pub(crate) use files::fresh_path;
pub(crate) use markup::wrong_markup;
pub(crate) use page::{Page, Scheme};
pub(crate) use paper::Paper;
// Tests name keys, so they need not know the driver's crate.
pub(crate) use thirtyfour::Key;

pub(crate) use server::Server;

use chromium::ChromeDriver;

/// Runs one test in a browser of its own.
///
/// When the test is through, the page must have been quiet and must have asked
/// only its own server ([`Page::assert_quiet`], [`Page::assert_own_origin_only`]):
/// that holds for every test, so none needs to say it. When it fails, the step it
/// failed in is printed and the page is kept in `target/screenshots/`.
pub(crate) fn browse(test: impl AsyncFnOnce(&Page)) {
    let _turn = Turn::wait();
    let server = Server::start();
    let chromedriver = ChromeDriver::start();
    let runtime =
        tokio::runtime::Builder::new_current_thread().enable_all().build().expect("a runtime");

    let page = runtime.block_on(Page::in_new_browser(&chromedriver, server));
    let outcome = catch_unwind(AssertUnwindSafe(|| {
        runtime.block_on(async {
            test(&page).await;
            page.assert_quiet().await;
            page.assert_own_origin_only().await;
        });
    }));
    if outcome.is_err() {
        runtime.block_on(page.report_failure());
    }
    runtime.block_on(page.close());
    outcome.unwrap_or_else(|panic: Box<dyn Any + Send>| resume_unwind(panic));
}

/// The right to run a browser. There are two at a time: more of them slow each
/// other down until waits run out.
struct Turn;

static RUNNING: Mutex<u32> = Mutex::new(0);
static ENDED: Condvar = Condvar::new();

impl Turn {
    const AT_ONCE: u32 = 2;

    fn wait() -> Self {
        let running = RUNNING.lock().unwrap_or_else(PoisonError::into_inner);
        let mut running = ENDED
            .wait_while(running, |running| *running >= Self::AT_ONCE)
            .unwrap_or_else(PoisonError::into_inner);
        *running += 1;
        Self
    }
}

impl Drop for Turn {
    fn drop(&mut self) {
        *RUNNING.lock().unwrap_or_else(PoisonError::into_inner) -= 1;
        ENDED.notify_one();
    }
}
