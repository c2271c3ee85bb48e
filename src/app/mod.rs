//! The app's frame: the views, the tabs between them, and what is always there.

mod charts;
mod device;
mod field_errors;
mod fill_memos;
mod focus;
mod hand_over;
mod hardware_memos;
mod language;
mod offline;
mod planner_follows;
mod planning;
mod route;
mod session;
mod signals;
mod stages;
mod storage;
mod tank_memos;
mod transfer;
mod trip_memos;
mod undo;
mod views;
mod widgets;

use fillwright::message::keys::frame as keys;
use fillwright::words::files::trouble;
use leptos::ev;
use leptos::prelude::*;

use fill_memos::FillMemos;
use hardware_memos::HardwareMemos;
use leptos::mount::mount_to_body;
use offline::Offline;
use route::{Route, View};
use session::Session;
use stages::{Stages, soon};
use storage::Stored;
use tank_memos::TankMemos;
use trip_memos::TripMemos;
use views::{CarView, FillView, HardwareView, MethodsView, TakeView, TankView, TripView, Welcome};
use widgets::{Button, UndoAbove, When, holds, said};

/// Starts the app, which takes the place of what the page says until then. Each step is a
/// task of its own, so that the page can be scrolled meanwhile.
pub(crate) fn start() {
    soon(|| {
        let found = storage::found();
        soon(|| {
            let stored = storage::open(found);
            soon(|| {
                language::once_spoken(|| {
                    if let Some(shell) = document().get_element_by_id("shell") {
                        shell.remove();
                    }
                    mount_to_body(|| view! { <App stored=stored /> });
                });
            });
        });
    });
}

/// Shows a part of the page, which may not be made yet.
fn show_once_there(stages: Stages, part: String) {
    stages.hurry();
    request_animation_frame(move || {
        if route::is_there(&part) {
            route::show(&part);
        } else if stages.busy.get_untracked() {
            show_once_there(stages, part);
        } else {
            stages.unfold(move || route::show(&part));
        }
    });
}

/// The whole app.
#[component]
fn App(stored: Stored) -> impl IntoView {
    let session = Session::of(stored, storage::aside().len(), device::decimal_mark());
    let tank_memos = TankMemos::of(session);
    let fill_memos = FillMemos::of(session, tank_memos);
    let trip_memos = TripMemos::of(session, tank_memos);
    provide_context(session);
    provide_context(tank_memos);
    provide_context(fill_memos);
    provide_context(HardwareMemos::of(session, tank_memos));
    provide_context(trip_memos);
    let stages = Stages::new();
    provide_context(stages);
    let handle = window_event_listener(ev::hashchange, move |_| {
        session.route.set(Route::of_location());
    });
    on_cleanup(move || handle.remove());
    // A link to the address already shown changes no hash, yet should lead there.
    let handle = window_event_listener(ev::click, move |event| {
        if route::leads_here(&event) {
            session.route.set(Route::of_location());
        }
    });
    on_cleanup(move || handle.remove());
    focus::keep();
    stages.then(move || storage::keep(session));
    stages.then(move || planner_follows::follow(session, trip_memos, stages));
    stages.compute(tank_memos.history);
    stages.then(move || fill_memos.follow());
    Effect::new(move |_| {
        let Route { view, part } = session.route.get();
        // What is shared is no part of a page.
        if let Some(part) = part.filter(|_| view != View::Take) {
            show_once_there(stages, part);
        }
    });
    // A link to another part of the same view must not draw the view anew.
    let view = Memo::new(move |_| session.route.with(|route| route.view));
    Effect::new(move |before: Option<View>| {
        let now = view.get();
        if before.is_some_and(|before| before != now) {
            window().scroll_to_with_x_and_y(0.0, 0.0);
            session.undoing.settle();
        }
        now
    });
    // Which car it is need only be said where there are several.
    let several =
        holds(move || session.document.with(|it| it.cars().filter(|car| !car.removed).count() > 1));
    let name = said(move || session.document.with(|it| fillwright::words::car(&it.here)));
    let skip = move |event: ev::MouseEvent| {
        event.prevent_default();
        route::show("main");
    };
    let busy = move || stages.busy.get().then_some("true");
    view! {
        <header class="page-head">
            <a class="skip" href="#main" on:click=skip>
                {keys::SKIP.say()}
            </a>
            <div class="top">
                <h1>"Fillwright"</h1>
                <When condition=several>
                    <p class="car-in-use">{name}</p>
                </When>
            </div>
            <nav class="tabs" aria-label=keys::VIEWS.say()>
                {View::ALL
                    .map(|tab| {
                        let current = move || (view.get() == tab).then_some("page");
                        view! { <a href=tab.link() aria-current=current>{tab.name()}</a> }
                    })}
            </nav>
        </header>
        <Invented />
        <Troubles />
        <main id="main" tabindex="-1" aria-busy=busy>
            {move || {
                let view = view.get();
                if session.is_new.get() && view != View::Take {
                    Welcome().into_any()
                } else {
                    match view {
                        View::Fill => FillView().into_any(),
                        View::Tank => TankView().into_any(),
                        View::Hardware => HardwareView().into_any(),
                        View::Trip => TripView().into_any(),
                        View::Car => CarView().into_any(),
                        View::Methods => MethodsView().into_any(),
                        View::Take => TakeView().into_any(),
                    }
                }
            }}
        </main>
        <Offline />
    }
}

/// Says on every view that the example is one.
#[component]
fn Invented() -> impl IntoView {
    let session = Session::here();
    let is_demo = holds(move || !session.is_new.get() && session.document.with(|it| it.here.demo));
    view! {
        <When condition=is_demo>
            <aside class="invented" aria-label=keys::EXAMPLE.say()>
                <p>
                    <strong>{keys::INVENTED.say()}</strong>
                    " "
                    {keys::EVERY_FIGURE.say()}
                </p>
                <Button
                    label=keys::OWN_CAR.say()
                    look="small"
                    on_press=Callback::new(move |()| storage::start(session, false))
                />
            </aside>
        </When>
        <UndoAbove />
    }
}

/// What went wrong with storage, if anything, and what can be saved from it.
#[component]
fn Troubles() -> impl IntoView {
    let session = Session::here();
    let aside =
        holds(move || session.troubles.with(|it| !it.is_empty()) && session.aside.get() > 0);
    let unsaved = holds(move || session.unsaved.with(Option::is_some));
    let said = said(move || {
        let mut texts = session.troubles.with(|it| it.iter().map(trouble).collect::<Vec<_>>());
        session.unsaved.with(|it| {
            let text = it.as_ref().map(trouble);
            texts.extend(text.filter(|text| !texts.contains(text)));
        });
        texts.join(" ")
    });
    view! {
        <When condition=holds(move || said.with(|said| !said.is_empty()))>
            <div class="invented note caution" role="status">
                <p>{said}</p>
                <When condition=unsaved>
                    <Button
                        label=keys::EXPORT_NOW.say()
                        look="small"
                        on_press=Callback::new(move |()| transfer::export(session))
                    />
                </When>
                <When condition=aside>
                    <Button
                        label=keys::DOWNLOAD_ASIDE.say()
                        look="small"
                        on_press=Callback::new(move |()| transfer::download_aside())
                    />
                </When>
            </div>
        </When>
    }
}
