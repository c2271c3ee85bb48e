//! The app without a network, and its newer versions: the page's side of the service
//! worker (`src/service-worker.js`), which keeps a whole build on the device.
//!
//! Where a browser has none, or does not let this page have one, the app works as it
//! does without.

use fillwright::message::keys::frame as keys;
use leptos::ev;
use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    ServiceWorker, ServiceWorkerContainer, ServiceWorkerRegistration, ServiceWorkerState as Stage,
    VisibilityState,
};

use super::widgets::{Button, When, holds};

/// Made by the build, beside the page; a debug build has none.
const SCRIPT: &str = "./service-worker.js";

/// What is kept of the app, and what waits to take its place.
#[derive(Clone, Copy)]
struct Versions {
    /// Whether the app became independent of the network during this visit.
    became_ready: RwSignal<bool>,
    /// A version that is newer than this page.
    newer: RwSignal<Option<ServiceWorker>, LocalStorage>,
    /// Where the browser keeps track of all this.
    registration: StoredValue<Option<ServiceWorkerRegistration>, LocalStorage>,
    /// Whether the person wants it now.
    wanted: RwSignal<bool>,
    /// Whether the person wants it later.
    put_off: RwSignal<bool>,
}

impl Versions {
    /// Has the app kept, and looks out for newer versions of it.
    fn follow() -> Self {
        let versions = Self {
            became_ready: RwSignal::new(false),
            newer: RwSignal::new_local(None),
            registration: StoredValue::new_local(None),
            wanted: RwSignal::new(false),
            put_off: RwSignal::new(false),
        };
        if let Some(container) = container() {
            spawn_local(async move {
                // A refusal takes nothing from the app but this.
                let registered = JsFuture::from(container.register(SCRIPT)).await;
                if let Ok(Ok(registration)) = registered.map(JsCast::dyn_into) {
                    versions.watch(registration);
                }
            });
        }
        versions
    }

    fn watch(self, registration: ServiceWorkerRegistration) {
        self.registration.set_value(Some(registration.clone()));
        if let Some(active) = registration.active() {
            tell(&active, "started");
        }
        if let Some(waiting) = registration.waiting() {
            self.offer(waiting);
        }
        // One that is coming in may have begun to before anybody listened.
        self.await_arrival(&registration);
        let found = {
            let registration = registration.clone();
            move || self.await_arrival(&registration)
        };
        registration.set_onupdatefound(Some(&listener(found)));
        // An installed app may stay open for weeks.
        window_event_listener(ev::visibilitychange, move |_| {
            if document().visibility_state() == VisibilityState::Visible {
                look_for_newer(&registration);
            }
        });
    }

    /// Waits until what is coming in is there.
    fn await_arrival(self, registration: &ServiceWorkerRegistration) {
        let Some(worker) = registration.installing() else { return };
        let is_first = registration.active().is_none();
        let arriving = worker.clone();
        let changed = move || match arriving.state() {
            Stage::Installed if !is_first => self.offer(arriving.clone()),
            Stage::Activated if is_first => self.became_ready.set(true),
            _ => {}
        };
        worker.set_onstatechange(Some(&listener(changed)));
    }

    /// Offers a version that waits. From another window it may be taken into use too;
    /// this page then stays what it is, and the offer stands.
    fn offer(self, worker: ServiceWorker) {
        let offered = worker.clone();
        let changed = move || match offered.state() {
            Stage::Activated if self.wanted.get_untracked() => reload(),
            // A still newer one is there instead, and offered itself.
            Stage::Redundant => self.newer.update(|newer| {
                if newer.as_ref() == Some(&offered) {
                    *newer = None;
                }
            }),
            _ => {}
        };
        worker.set_onstatechange(Some(&listener(changed)));
        self.put_off.set(false);
        self.newer.set(Some(worker));
    }

    /// Takes the newer version into use, and loads the page anew from it.
    fn accept(self) {
        self.wanted.set(true);
        // The one that waits now may be newer than the one that was offered.
        let waiting = self.registration.with_value(|it| it.as_ref()?.waiting());
        if let Some(waiting) = waiting {
            self.offer(waiting.clone());
            tell(&waiting, "use");
        } else {
            reload();
        }
    }
}

/// The browser's side of service workers; none where a page has no right to them, as
/// without an encrypted connection.
fn container() -> Option<ServiceWorkerContainer> {
    let container = js_sys::Reflect::get(&window().navigator(), &"serviceWorker".into());
    container.ok()?.dyn_into().ok()
}

fn tell(worker: &ServiceWorker, what: &str) {
    // It fails only for what cannot be copied, and a text can.
    let _ = worker.post_message(&what.into());
}

fn reload() {
    // Where the browser refuses, the newer version comes with the next start.
    let _ = window().location().reload();
}

/// The browser looks by itself only when a page is loaded.
fn look_for_newer(registration: &ServiceWorkerRegistration) {
    if let Ok(looking) = registration.update() {
        // Without a network there is nothing to be found, and the next look is soon.
        spawn_local(async move { drop(JsFuture::from(looking).await) });
    }
}

/// What listens for as long as the page is there.
fn listener(act: impl FnMut() + 'static) -> js_sys::Function {
    Closure::<dyn FnMut()>::new(act).into_js_value().unchecked_into()
}

/// Offers a newer version, and says once that the network is not needed any more.
#[component]
pub(crate) fn Offline() -> impl IntoView {
    let versions = Versions::follow();
    let is_offered = holds(move || versions.newer.with(Option::is_some) && !versions.put_off.get());
    view! {
        <div class="newer" role="status">
            <When condition=is_offered>
                <p>{keys::NEW_VERSION.say()}</p>
                <div class="buttons">
                    <Button
                        label=keys::USE_IT.say()
                        look="small"
                        on_press=Callback::new(move |()| versions.accept())
                    />
                    <Button
                        label=keys::LATER.say()
                        look="small"
                        on_press=Callback::new(move |()| versions.put_off.set(true))
                    />
                </div>
            </When>
        </div>
        <footer class="page-foot">
            <div role="status">
                <When condition=versions
                    .became_ready
                    .into()>
                    <p>{keys::KEPT.say()}</p>
                </When>
            </div>
        </footer>
    }
}
