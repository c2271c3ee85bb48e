//! Signals that follow what they are made of.

use leptos::prelude::*;

/// A text that follows what it is made of.
pub(crate) fn said(text: impl Fn() -> String + Send + Sync + 'static) -> Signal<String> {
    fn boxed(text: Box<dyn Fn() -> String + Send + Sync>) -> Signal<String> {
        Memo::new(move |_| text()).into()
    }
    boxed(Box::new(text))
}

/// A condition that follows what it is made of.
pub(crate) fn holds(condition: impl Fn() -> bool + Send + Sync + 'static) -> Signal<bool> {
    fn boxed(condition: Box<dyn Fn() -> bool + Send + Sync>) -> Signal<bool> {
        Memo::new(move |_| condition()).into()
    }
    boxed(Box::new(condition))
}
