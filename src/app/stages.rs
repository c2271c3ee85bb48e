//! The page in parts, each a task of its own: between them the browser shows what is there
//! already and takes what the person does. On a phone one whole view would hold it up for
//! the better part of a second.

use std::collections::VecDeque;
use std::time::Duration;

use leptos::prelude::*;

/// What is done when its turn has come.
type Stage = Box<dyn FnOnce() + Send + Sync>;

/// What waits for its turn.
#[derive(Clone, Copy)]
pub(crate) struct Stages {
    waiting: StoredValue<VecDeque<Stage>>,
    /// What came up since the last stage: its own parts, which go before what is below it.
    new: StoredValue<Vec<Stage>>,
    /// Whether anything does.
    pub(crate) busy: RwSignal<bool>,
    /// Whether what is folded is wanted too.
    unfolded: RwSignal<bool>,
}

impl Stages {
    pub(crate) fn new() -> Self {
        Self {
            waiting: StoredValue::new(VecDeque::new()),
            new: StoredValue::new(Vec::new()),
            busy: RwSignal::new(false),
            unfolded: RwSignal::new(false),
        }
    }

    /// The stages of the app around this component.
    pub(crate) fn here() -> Self {
        expect_context()
    }

    /// Does something when its turn has come, as if it were done here.
    pub(crate) fn then(self, what: impl FnOnce() + Send + Sync + 'static) {
        let here = Owner::current().unwrap_or_default();
        let what = Box::new(move || here.with(what));
        self.new.update_value(|it| it.push(what));
        if !self.busy.get_untracked() {
            self.busy.set(true);
            self.go_on();
        }
    }

    /// Works out what a view shows, apart from laying it out.
    pub(crate) fn compute<T: Send + Sync + 'static>(self, what: Memo<T>) {
        self.then(move || {
            // The view may be gone by now.
            what.try_with_untracked(|_| ());
        });
    }

    fn go_on(self) {
        soon(move || {
            let mut waiting = self.take();
            let next = waiting.pop_front();
            self.waiting.set_value(waiting);
            if let Some(next) = next {
                next();
                self.go_on();
            } else {
                self.busy.set(false);
            }
        });
    }

    /// Does all of it at once, since something in it is wanted now.
    pub(crate) fn hurry(self) {
        for stage in self.take() {
            stage();
        }
    }

    /// All that waits, in its order.
    fn take(self) -> VecDeque<Stage> {
        let new = self.new.try_update_value(std::mem::take).unwrap_or_default();
        let waiting = self.waiting.try_update_value(std::mem::take).unwrap_or_default();
        new.into_iter().chain(waiting).collect()
    }

    /// Has what is folded made, since something in it is wanted, and does something with
    /// it then.
    pub(crate) fn unfold(self, then: impl FnOnce() + 'static) {
        self.unfolded.set(true);
        request_animation_frame(move || {
            self.unfolded.set(false);
            then();
        });
    }
}

/// A part of a view, laid out after those before it.
#[component]
pub(crate) fn Deferred(children: Children) -> impl IntoView {
    let turn = ArcRwSignal::new(false);
    let comes = turn.clone();
    Stages::here().then(move || comes.set(true));
    once(turn.into(), children)
}

/// What can be folded: what is in it is made when that is to be seen, or when a link may
/// lead there.
#[component]
pub(crate) fn Folded(
    #[prop(optional)] id: Option<&'static str>,
    #[prop(optional)] class: &'static str,
    #[prop(optional)] open: bool,
    /// Whether it is open; who sets it has what is in it made.
    #[prop(optional)]
    opened: Option<RwSignal<bool>>,
    summary: AnyView,
    children: Children,
) -> impl IntoView {
    let stages = Stages::here();
    let opened = opened.unwrap_or_else(|| RwSignal::new(open));
    let made = Memo::new(move |before: Option<&bool>| {
        before == Some(&true) || opened.get() || stages.unfolded.get()
    });
    view! {
        <details
            id=id
            class=class
            open=open
            on:toggle:target=move |event| opened.set(event.target().has_attribute("open"))
        >
            // Before it opens, so that it never shows empty.
            <summary on:click=move |_| opened.set(true)>{summary}</summary>
            {once(made.into(), children)}
        </details>
    }
}

/// What is made when a condition holds for the first time.
fn once(condition: Signal<bool>, children: Children) -> impl IntoView {
    let mut children = Some(children);
    move || if condition.get() { children.take().map(|children| children()) } else { None }
}

/// A condition whose changes take effect a task later, so that what hangs on it is not made
/// together with what hangs on the condition itself.
pub(crate) fn deferred(condition: Signal<bool>) -> Signal<bool> {
    let follows = RwSignal::new(condition.get_untracked());
    Effect::new(move |_| {
        let now = condition.get();
        // The view may be gone by then.
        soon(move || {
            follows.try_set(now);
        });
    });
    follows.into()
}

/// Does something in a task of its own.
pub(crate) fn soon(what: impl FnOnce() + 'static) {
    set_timeout(what, Duration::ZERO);
}
