//! The card that shares what is entered, as a link and as a picture of it.

use fillwright::message::keys::data as keys;
use fillwright::share::{Kind, LinkError, Picture, Shared};
use fillwright::words::{files, shared as words};
use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::app::fill_memos::FillMemos;
use crate::app::hand_over;
use crate::app::session::Session;
use crate::app::trip_memos::TripMemos;
use crate::app::widgets::{Button, Drawn, Need, Section, When, holds, said};

/// What a card shares: its name, and its title.
fn heading(kind: Kind) -> (&'static str, &'static str) {
    match kind {
        Kind::Fill => ("share-fill", keys::SHARE_FILL.say()),
        Kind::Car => ("share-car", keys::SHARE_CAR.say()),
        Kind::Trip => ("share-trip", keys::SHARE_TRIP.say()),
    }
}

/// The address that shares what is entered now.
fn address(
    session: Session,
    fill_memos: FillMemos,
    trip_memos: TripMemos,
    kind: Kind,
) -> Result<String, LinkError> {
    let shared = session.document.with(|document| {
        session.printer.with(|printer| match kind {
            Kind::Fill => {
                fill_memos.reading.with(|it| Shared::fill_of(document, it.asked.as_ref(), printer))
            }
            Kind::Trip => {
                trip_memos.reading.with(|it| Shared::trip_of(document, it.asked.as_ref(), printer))
            }
            Kind::Car => Ok(Shared::car_of(document)),
        })
    });
    shared?.to_link().map(|link| hand_over::address(&link))
}

/// The way to hand on what is entered in a view: nothing is worked out before it is
/// opened.
#[component]
pub(super) fn ShareCard(kind: Kind) -> impl IntoView {
    let session = Session::here();
    let fill_memos = FillMemos::here();
    let trip_memos = TripMemos::here();
    let (id, title) = heading(kind);
    let opened = RwSignal::new(false);
    let address =
        Memo::new(move |_| opened.get().then(|| address(session, fill_memos, trip_memos, kind)));
    let link = said(move || address.with(|it| it.iter().flatten().cloned().collect()));
    let wrong = said(move || {
        address.with(|it| match it {
            Some(Err(error)) => keys::NoLink { why: files::link(error) }.say(),
            _ => String::new(),
        })
    });
    let short = said(|| keys::SHARE_SHORT.say().to_owned());
    view! {
        <Section id=id title=title short=short need=Signal::stored(Need::Nothing) opened=opened>
            <p class="hint">
                {words::what_is_in_it(kind)}
                " "
                {keys::WHOEVER_HAS_IT.say()}
            </p>
            <When condition=holds(move || wrong.with(|it| !it.is_empty()))>
                <p class="note caution" role="status">
                    {wrong}
                </p>
            </When>
            <When condition=holds(move || link.with(|it| !it.is_empty()))>
                <Link id=id kind=kind link=link />
                <Code link=link />
            </When>
        </Section>
    }
}

/// The link, and the ways to hand it over.
#[component]
fn Link(id: &'static str, kind: Kind, link: Signal<String>) -> impl IntoView {
    let told = RwSignal::new("");
    // What was said concerns the link as it was.
    Effect::new(move |_| {
        link.track();
        told.set("");
    });
    let tell = move |words: &'static str| {
        // The card may be gone by now.
        let _ = told.try_set(words);
    };
    let copy = Callback::new(move |()| {
        spawn_local(async move {
            tell(if hand_over::copy(link.get_untracked()).await {
                keys::COPIED.say()
            } else {
                keys::NOT_COPIED.say()
            });
        });
    });
    let hand_over = Callback::new(move |()| {
        spawn_local(async move {
            let title = words::title(kind);
            if !hand_over::hand_over(title, link.get_untracked()).await {
                tell(keys::NOT_HANDED_OVER.say());
            }
        });
    });
    let field = format!("{id}-link");
    view! {
        <div class="field">
            <label for=field.clone()>{keys::LINK.say()}</label>
            <div class="control">
                <input
                    id=field
                    type="text"
                    readonly
                    prop:value=link
                    on:focus:target=|event| event.target().select()
                />
            </div>
        </div>
        <div class="buttons">
            <When condition=holds(hand_over::has_clipboard)>
                <Button label=keys::COPY_LINK.say() look="strong" on_press=copy />
            </When>
            <When condition=holds(hand_over::has_sheet)>
                <Button label=keys::SEND_IT.say() on_press=hand_over />
            </When>
        </div>
        <p class="hint" role="status">
            {told}
        </p>
    }
}

/// The link as a QR code.
#[component]
fn Code(link: Signal<String>) -> impl IntoView {
    let drawn = move |()| -> Vec<AnyView> {
        let drawn = match Picture::of(&link.get()) {
            Err(error) => {
                let why = files::picture(&error);
                view! { <p class="hint">{keys::NoCode { why }.say()}</p> }.into_any()
            }
            Ok(Picture { size, path }) => view! {
                <svg
                    class="code"
                    viewBox=format!("0 0 {size} {size}")
                    role="img"
                    aria-label=keys::CODE.say()
                >
                    <rect width=size height=size />
                    <path d=path />
                </svg>
            }
            .into_any(),
        };
        vec![drawn]
    };
    view! { <Drawn what=Callback::new(drawn) /> }
}
