//! The worker that plans routes, away from the page's thread.
//!
//! It takes one question at a time. A planner's step is short, so between two slices
//! of its work it looks whether a newer question came, which then takes the place of
//! the older one.

use std::cell::RefCell;

use fillwright::trip::{Done, Planner, Question, Report};
use wasm_bindgen::prelude::*;
use web_sys::{DedicatedWorkerGlobalScope, MessageEvent};

/// How long a slice lasts, in milliseconds: far below what a person notices when it
/// has to be given up.
const SLICE_MS: f64 = 20.0;

/// How long after a report the next one waits, in milliseconds, unless the first plan
/// is there or the work is done.
const BETWEEN_REPORTS_MS: f64 = 120.0;

/// The work at hand.
struct Run {
    number: u32,
    planner: Planner,
    reported: f64,
    had_plan: bool,
}

thread_local! {
    static RUN: RefCell<Option<Run>> = const { RefCell::new(None) };
}

fn main() {
    console_error_panic_hook::set_once();
    let scope = scope();
    let listen = Closure::<dyn FnMut(MessageEvent)>::new(|event: MessageEvent| {
        let Some(text) = event.data().as_string() else { return };
        begin(&text);
    });
    scope.set_onmessage(Some(listen.as_ref().unchecked_ref()));
    listen.forget();
    // What is sent before somebody listens is lost, so the page waits for this.
    post("ready");
}

fn scope() -> DedicatedWorkerGlobalScope {
    js_sys::global().unchecked_into()
}

fn post(text: &str) {
    // It fails only for what cannot be copied, and a text can.
    let _ = scope().post_message(&JsValue::from_str(text));
}

/// Takes a question in place of the one at hand.
fn begin(text: &str) {
    let question = serde_json::from_str::<Question>(text).map_err(|error| error.to_string());
    let run = question.and_then(|question| {
        let number = question.run;
        let planner = question.planner().map_err(|error| error.to_string())?;
        Ok(Run { number, planner, reported: 0.0, had_plan: false })
    });
    match run {
        Ok(run) => {
            let waits = RUN.with_borrow_mut(|it| it.replace(run).is_some());
            if !waits {
                go_on();
            }
        }
        Err(error) => post(&format!("error: {error}")),
    }
}

/// Works for a slice, and comes back for the next.
fn go_on() {
    let more = RUN.with_borrow_mut(|run| {
        let Some(it) = run else { return false };
        let more = it.slice();
        if !more {
            *run = None;
        }
        more
    });
    if more {
        let next = Closure::once_into_js(go_on);
        // A timer of no length lets messages in between.
        let _ =
            scope().set_timeout_with_callback_and_timeout_and_arguments_0(next.unchecked_ref(), 0);
    }
}

impl Run {
    /// Whether there is more to do.
    fn slice(&mut self) -> bool {
        let began = js_sys::Date::now();
        loop {
            let progress = self.planner.step();
            let now = js_sys::Date::now();
            let is_done = progress.done != Done::Working;
            let is_first = !self.had_plan && progress.plan.is_some();
            self.had_plan |= is_first;
            if is_done || is_first || now - self.reported > BETWEEN_REPORTS_MS {
                self.reported = now;
                let report = Report::of(self.number, progress);
                match serde_json::to_string(&report) {
                    Ok(text) => post(&text),
                    Err(error) => post(&format!("error: {error}")),
                }
            }
            if is_done {
                return false;
            }
            if now - began > SLICE_MS {
                return true;
            }
        }
    }
}
