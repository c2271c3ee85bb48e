//! The view of what somebody shared by link, and whether to take it.

use fillwright::message::keys::data as keys;
use fillwright::share::{Kind, Shared};
use fillwright::words::deeds::Deed;
use fillwright::words::{files, shared as words};
use leptos::prelude::*;

use crate::app::device;
use crate::app::hand_over::replace_address;
use crate::app::route::{Route, View};
use crate::app::session::Session;
use crate::app::widgets::{Button, Drawn, facts};

/// Leaves what was shared for good.
fn leave(session: Session, view: View) {
    replace_address(view);
    session.route.set(Route::of_location());
}

/// What somebody shared by link: a look at it, and whether to take it. Nothing
/// changes before that.
#[component]
pub(crate) fn TakeView() -> impl IntoView {
    let session = Session::here();
    let offered = Memo::new(move |_| {
        let link = session.route.with(|it| it.part.clone()).unwrap_or_default();
        Shared::from_link(&link).map_err(|error| files::link(&error))
    });
    view! {
        <div class="view">
            {move || {
                match offered.get() {
                    Ok(shared) => Preview(PreviewProps { shared }).into_any(),
                    Err(error) => Unreadable(UnreadableProps { error }).into_any(),
                }
            }}
        </div>
    }
}

/// Why there is nothing to take.
#[component]
fn Unreadable(error: String) -> impl IntoView {
    let session = Session::here();
    view! {
        <section class="card taken" aria-labelledby="take-title">
            <h2 id="take-title">{keys::UNREADABLE_LINK.say()}</h2>
            <p class="note caution" role="status">
                {keys::UnreadableLinkMeans { why: error }.say()}
            </p>
            <div class="buttons">
                <Button
                    label=keys::GO_TO_FILL.say()
                    look="strong"
                    on_press=Callback::new(move |()| leave(session, View::Fill))
                />
            </div>
        </section>
    }
}

/// What is in it, in short.
#[component]
fn Preview(shared: Shared) -> impl IntoView {
    let session = Session::here();
    let kind = shared.kind();
    let shared = StoredValue::new(shared);
    let list = Callback::new(move |()| {
        session.printer.with(|printer| shared.with_value(|it| facts(words::facts(it, printer))))
    });
    let consequences = Callback::new(move |()| {
        let lines = session.document.with(|document| {
            session
                .printer
                .with(|printer| shared.with_value(|it| words::consequences(it, document, printer)))
        });
        lines.into_iter().map(|line| view! { <li>{line}</li> }.into_any()).collect()
    });
    let target = match kind {
        Kind::Fill => View::Fill,
        Kind::Car => View::Car,
        Kind::Trip => View::Trip,
    };
    let take = Callback::new(move |()| {
        let id = device::new_id();
        session.change_undoably(Deed::SharedTaken(kind), |document| {
            shared.with_value(|it| document.take_shared(it, id));
        });
        session.is_new.set(false);
        leave(session, target);
    });
    view! {
        <section class="card taken" aria-labelledby="take-title">
            <h2 id="take-title">{words::title(kind)}</h2>
            <p class="hint">{keys::ONLY_SHOWN.say()}</p>
            <dl class="facts">
                <Drawn what=list />
            </dl>
            <ul class="cautions note">
                <Drawn what=consequences />
            </ul>
            <p class="hint">
                {keys::NOT_YOURS.say()}
            </p>
            <div class="buttons">
                <Button label=keys::TAKE_IT.say() look="strong" on_press=take />
                <Button
                    label=keys::LEAVE_IT.say()
                    on_press=Callback::new(move |()| leave(session, View::Fill))
                />
            </div>
        </section>
    }
}
