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

/// Shows its children while a condition holds.
#[component]
pub(crate) fn When(condition: Signal<bool>, children: ChildrenFn) -> impl IntoView {
    move || condition.get().then(|| children())
}

/// A row for each id; a row stays what it is while others come and go.
#[component]
pub(crate) fn Rows(ids: Signal<Vec<u32>>, row: fn(u32) -> AnyView) -> impl IntoView {
    view! { <For each=move || ids.get() key=|id| *id children=row /> }
}

/// What is drawn anew whenever something that it shows changes.
#[component]
pub(crate) fn Drawn(what: Callback<(), Vec<AnyView>>) -> impl IntoView {
    move || what.run(())
}
