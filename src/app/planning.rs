//! The worker that plans routes, seen from the page.

use fillwright::message::keys::frame as keys;
use std::sync::Arc;

use fillwright::answers::trip::{TripAnswer, TripAsked};
use fillwright::trip::{Done, Question, Report};
use fillwright::words::trip::Standing;
use leptos::prelude::*;
use wasm_bindgen::prelude::*;
use web_sys::{MessageEvent, Worker, WorkerOptions, WorkerType};

use super::stages::soon;

/// Where the page says which file the worker is: its name tells its content, so that
/// page and worker always come from the same build.
const WORKER: &str = "meta[name=planner]";

/// What the worker said, and of which question.
#[derive(Clone)]
struct Reported {
    asked: Arc<TripAsked>,
    report: Report,
}

/// What is being planned, and how far that is.
#[derive(Clone, Copy)]
pub(crate) struct Planning {
    /// What the worker last said.
    reported: RwSignal<Option<Reported>>,
    /// Whether it is at work.
    running: RwSignal<bool>,
    /// Why it cannot work.
    pub(crate) trouble: RwSignal<Option<String>>,
    /// The plan that it last had, worked out exactly.
    pub(crate) plan: RwSignal<Option<Arc<TripAnswer>>>,
    /// The plan in hand, to compare others with.
    pub(crate) held: RwSignal<Option<Arc<TripAnswer>>>,
    worker: StoredValue<Option<Running>, LocalStorage>,
    /// What it was last asked; nothing where that was given up before it was answered.
    asked: RwSignal<Option<Arc<TripAsked>>>,
    /// The number of the last run.
    run: StoredValue<u32>,
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
            reported: RwSignal::new(None),
            running: RwSignal::new(false),
            trouble: RwSignal::new(None),
            plan: RwSignal::new(None),
            held: RwSignal::new(None),
            worker: StoredValue::new_local(None),
            asked: RwSignal::new(None),
            run: StoredValue::new(0),
        }
    }

    /// What the worker last said of a question; nothing where that was another one.
    pub(crate) fn report_on(self, question: Option<&TripAsked>) -> Option<Report> {
        self.reported.with(|it| {
            let it = it.as_ref().filter(|it| Some(&*it.asked) == question)?;
            Some(it.report.clone())
        })
    }

    /// Whether a question is the one that was last asked.
    pub(crate) fn has_asked(self, question: &TripAsked) -> bool {
        self.asked.with_untracked(|it| it.as_deref() == Some(question))
    }

    /// Whether a question is being worked on, or will be in a moment.
    pub(crate) fn is_at(self, question: &TripAsked) -> bool {
        self.running.get() || self.asked.with(|it| it.as_deref() != Some(question))
    }

    /// How what is known stands to the question on the page.
    pub(crate) fn standing(self, question: Option<&TripAsked>) -> Standing {
        let is_older = |plan: &Arc<TripAnswer>| Some(&plan.asked) != question;
        let shows_older = self.plan.with(|it| it.as_ref().is_some_and(is_older));
        match question {
            None => Standing::Unreadable,
            Some(_) if !shows_older && self.report_on(question).is_some() => Standing::Known,
            Some(question) if self.is_at(question) => Standing::Awaited,
            Some(_) => Standing::Stopped,
        }
    }

    /// Gives up a question that nobody looks at any more. It is asked again by whoever
    /// looks at it next.
    pub(crate) fn leave(self) {
        if self.running.get_untracked() {
            self.cancel();
            self.asked.set(None);
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
        if let Some(asked) = self.asked.get_untracked() {
            self.ask(asked);
        }
    }

    /// Plans a route. An older question is given up.
    pub(crate) fn ask(self, asked: Arc<TripAsked>) {
        let run = self.run.get_value() + 1;
        let question = Question::new(run, asked.route.clone(), asked.wish);
        self.run.set_value(run);
        self.asked.set(Some(asked));
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
            leptos::logging::error!("{error:?}");
            self.fail(keys::PLANNER_MISSING.say().to_owned());
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
            self.fail(keys::PLANNER_MISSING.say().into());
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
        let Some(asked) = self.asked_by(&report) else { return };
        // Most reports bring a better bound for a plan that is on show already.
        let is_known = self.plan.with_untracked(|it| {
            let known = it.as_ref().map(|it| (&it.asked, &it.bought));
            known.is_some() && known == Some(&*asked).zip(report.bought.as_ref())
        });
        let new = if is_known { None } else { report.bought.clone() };
        let plan = new.map(|bought| Arc::new(TripAnswer::of((*asked).clone(), bought)));
        soon(move || self.show(report, plan));
    }

    fn show(self, report: Report, plan: Option<Arc<TripAnswer>>) {
        let Some(asked) = self.asked_by(&report) else { return };
        let is_over = report.done != Done::Working;
        if plan.is_some() || (is_over && report.bought.is_none()) {
            // Where the search ends without a plan, an older one is none for this question.
            self.plan.set(plan);
        }
        self.running.set(!is_over);
        self.reported.set(Some(Reported { asked, report }));
    }

    /// The question that a report answers; nothing where it was since given up.
    fn asked_by(self, report: &Report) -> Option<Arc<TripAsked>> {
        (self.run.get_value() == report.run).then(|| self.asked.get_untracked())?
    }
}
