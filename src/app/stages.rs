//! The page in parts, each a task of its own: between them the browser shows what is there
//! already and takes what the person does. On a phone one whole view would hold it up for
//! the better part of a second.

use std::collections::VecDeque;
use std::time::Duration;

use leptos::prelude::*;

/// The parts that wait for their turn.
#[derive(Clone, Copy)]
pub(crate) struct Stages {
    waiting: StoredValue<VecDeque<ArcRwSignal<bool>>>,
    /// Whether any do.
    pub(crate) busy: RwSignal<bool>,
}

impl Stages {
    pub(crate) fn new() -> Self {
        Self { waiting: StoredValue::new(VecDeque::new()), busy: RwSignal::new(false) }
    }

    /// The stages of the app around this component.
    fn here() -> Self {
        expect_context()
    }

    /// A place in the row: true once its turn has come.
    fn turn(self) -> ArcRwSignal<bool> {
        let turn = ArcRwSignal::new(false);
        self.waiting.update_value(|it| it.push_back(turn.clone()));
        if !self.busy.get_untracked() {
            self.busy.set(true);
            self.go_on();
        }
        turn
    }

    fn go_on(self) {
        soon(move || {
            let next = self.waiting.try_update_value(VecDeque::pop_front).flatten();
            if let Some(turn) = next {
                turn.set(true);
                self.go_on();
            } else {
                self.busy.set(false);
            }
        });
    }

    /// Has all parts laid out at once, since something in them is wanted now.
    pub(crate) fn hurry(self) {
        for turn in self.waiting.try_update_value(std::mem::take).unwrap_or_default() {
            turn.set(true);
        }
    }
}

/// A part of a view, laid out after those before it.
#[component]
pub(crate) fn Later(children: Children) -> impl IntoView {
    let turn = Stages::here().turn();
    let mut children = Some(children);
    move || if turn.get() { children.take().map(|children| children()) } else { None }
}

/// Does something in a task of its own.
pub(crate) fn soon(what: impl FnOnce() + 'static) {
    set_timeout(what, Duration::ZERO);
}

/// Does something once what is on the page now is on the screen.
pub(crate) fn after_picture(what: impl FnOnce() + 'static) {
    if document().hidden() {
        // There will be no picture before somebody looks.
        soon(what);
    } else {
        request_animation_frame(move || soon(what));
    }
}
