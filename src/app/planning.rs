//! The worker that plans routes, seen from the page.

use std::sync::Arc;

use fillwright::logbook::road::{RoadAsked, RoadPlan, RoadReading};
use fillwright::trip::{Done, Question, Report};
use leptos::prelude::*;
use wasm_bindgen::prelude::*;
use web_sys::{MessageEvent, Worker, WorkerOptions, WorkerType};

use super::route::View;
use super::stages::{Stages, soon};
use super::state::State;

/// Where the page says which file the worker is: its name tells its content, so that
/// page and worker always come from the same build.
const WORKER: &str = "meta[name=planner]";

/// What is being planned, and how far that is.
#[derive(Clone, Copy)]
pub(crate) struct Planning {
    /// What the worker last said of the route.
    pub(crate) report: RwSignal<Option<Report>>,
    /// Whether it is at work.
    pub(crate) running: RwSignal<bool>,
    /// Why it cannot work.
    pub(crate) trouble: RwSignal<Option<String>>,
    /// The plan that it last had, worked out exactly.
    pub(crate) plan: RwSignal<Option<Arc<RoadPlan>>>,
    /// The plan in hand, to compare others with.
    pub(crate) held: RwSignal<Option<Arc<RoadPlan>>>,
    worker: StoredValue<Option<Running>, LocalStorage>,
    /// The number of the last run, and what it is for.
    asked: StoredValue<(u32, Option<RoadAsked>)>,
}

/// A worker and what listens to it.
struct Running {
    worker: Worker,
    is_ready: bool,
    /// What is sent as soon as it is ready.
    waiting: Option<String>,
    _listen: Closure<dyn FnMut(MessageEvent)>,
    _failed: Closure<dyn FnMut(web_sys::Event)>,
}

impl Planning {
    pub(crate) fn new() -> Self {
        Self {
            report: RwSignal::new(None),
            running: RwSignal::new(false),
            trouble: RwSignal::new(None),
            plan: RwSignal::new(None),
            held: RwSignal::new(None),
            worker: StoredValue::new_local(None),
            asked: StoredValue::new((0, None)),
        }
    }

    /// Stops the work; what was found stays.
    pub(crate) fn cancel(self) {
        self.worker.update_value(|it| {
            if let Some(running) = it.take() {
                running.worker.terminate();
            }
        });
        self.running.set(false);
    }

    /// Takes the plan on show in hand.
    pub(crate) fn hold(self) {
        self.held.set(self.plan.get_untracked());
    }

    /// Plans the route that was last asked for once more.
    pub(crate) fn again(self) {
        if let Some(asked) = self.asked.with_value(|it| it.1.clone()) {
            self.ask(asked);
        }
    }

    /// Plans a route. An older question is given up.
    fn ask(self, asked: RoadAsked) {
        let run = self.asked.with_value(|it| it.0) + 1;
        let question = Question::new(run, asked.route.clone(), asked.wish);
        self.asked.set_value((run, Some(asked)));
        self.trouble.set(None);
        match serde_json::to_string(&question) {
            Ok(text) => self.send(text),
            Err(error) => self.fail(error.to_string()),
        }
    }

    fn fail(self, why: String) {
        self.cancel();
        self.trouble.set(Some(why));
    }

    fn send(self, text: String) {
        let has_worker = self.worker.with_value(Option::is_some);
        if !has_worker && let Err(error) = self.hire() {
            self.fail(format!("{error:?}"));
            return;
        }
        self.running.set(true);
        self.worker.update_value(|it| {
            let Some(running) = it else { return };
            if running.is_ready {
                // It fails only for what cannot be copied, and a text can.
                let _ = running.worker.post_message(&JsValue::from_str(&text));
            } else {
                running.waiting = Some(text);
            }
        });
    }

    /// Starts the worker.
    fn hire(self) -> Result<(), JsValue> {
        let options = WorkerOptions::new();
        options.set_type(WorkerType::Module);
        let named = document().query_selector(WORKER)?;
        let file = named.and_then(|it| it.get_attribute("content"));
        let file = file.ok_or("the page names no worker")?;
        let worker = Worker::new_with_options(&file, &options)?;
        let listen = Closure::<dyn FnMut(MessageEvent)>::new(move |event: MessageEvent| {
            if let Some(text) = event.data().as_string() {
                self.hear(&text);
            }
        });
        let failed = Closure::<dyn FnMut(web_sys::Event)>::new(move |_| {
            self.fail("The part that plans could not be loaded: reload the page.".into());
        });
        worker.set_onmessage(Some(listen.as_ref().unchecked_ref()));
        worker.set_onerror(Some(failed.as_ref().unchecked_ref()));
        self.worker.set_value(Some(Running {
            worker,
            is_ready: false,
            waiting: None,
            _listen: listen,
            _failed: failed,
        }));
        Ok(())
    }

    fn hear(self, text: &str) {
        if text == "ready" {
            self.worker.update_value(|it| {
                let Some(running) = it else { return };
                running.is_ready = true;
                if let Some(text) = running.waiting.take() {
                    let _ = running.worker.post_message(&JsValue::from_str(&text));
                }
            });
            return;
        }
        match serde_json::from_str::<Report>(text) {
            Ok(report) => soon(move || self.take(report)),
            Err(_) => self.fail(text.to_owned()),
        }
    }

    /// Works out what a report says. Showing that is a task of its own.
    fn take(self, report: Report) {
        if !self.is_wanted(&report) {
            return;
        }
        let asked = self.asked.with_value(|it| it.1.clone());
        // Most reports bring a better bound for a plan that is on show already.
        let is_known = self.plan.with_untracked(|it| {
            let known = it.as_ref().map(|it| (&it.asked, &it.bought));
            known.is_some() && known == asked.as_ref().zip(report.bought.as_ref())
        });
        let new = if is_known { None } else { asked.zip(report.bought.clone()) };
        let plan = new.map(|(asked, bought)| Arc::new(RoadPlan::of(asked, bought)));
        soon(move || self.show(report, plan));
    }

    fn show(self, report: Report, plan: Option<Arc<RoadPlan>>) {
        if !self.is_wanted(&report) {
            return;
        }
        if matches!(report.done, Done::Impossible(_)) {
            self.plan.set(None);
        } else if let Some(plan) = plan {
            self.plan.set(Some(plan));
        }
        self.running.set(report.done == Done::Working);
        self.report.set(Some(report));
    }

    /// Whether a report answers the last question. An older one was since given up.
    fn is_wanted(self, report: &Report) -> bool {
        self.asked.with_value(|it| it.0) == report.run
    }
}

/// Plans whatever route is asked for, as long as the Trip view is open. The worker begins
/// when the view is there: on a small device the two would only get in each other's way.
pub(crate) fn follow(state: State, stages: Stages) {
    let is_there =
        Memo::new(move |_| state.route.with(|it| it.view == View::Trip) && !stages.busy.get());
    let asked = Memo::new(move |_| {
        is_there.get().then(|| state.road.with(|it: &RoadReading| it.asked.clone())).flatten()
    });
    Effect::new(move |_| {
        let planning = state.planning;
        match asked.get() {
            Some(asked) => {
                let before = planning.asked.with_value(|it| it.1.clone());
                let is_known = before.as_ref() == Some(&asked);
                if !is_known || planning.report.with_untracked(Option::is_none) {
                    planning.ask(asked);
                }
            }
            None => planning.cancel(),
        }
    });
}
