//! The card on which an entry of the log is written and saved.

use fillwright::answers::tank::Oddity;
use fillwright::document::{Draft, EntryPart, Field, What};
use fillwright::message::keys::tank as keys;
use fillwright::words::deeds::Deed;
use fillwright::words::tank;
use leptos::prelude::*;

use super::entry_fields::fields_of;
use crate::app::device;
use crate::app::field_errors::FieldErrors;
use crate::app::route::{self, View};
use crate::app::session::Session;
use crate::app::tank_memos::TankMemos;
use crate::app::undo::{Act, Spot};
use crate::app::widgets::{
    Button, Drawn, ErrorSummary, Lead, TextField, TimeField, UndoLine, When, holds, said,
};

/// Where what is wrong with the entry stands.
const ERROR_SUMMARY: &str = "entry-to-mend";

/// Where what is odd about it is asked about.
const DOES_IT_FIT: &str = "does-it-fit";

/// What is odd about an entry as it was when it was to be saved.
#[derive(Clone)]
struct Asked {
    draft: Draft,
    odd: Vec<Oddity>,
}

/// Adding an entry to the log, or changing one.
#[component]
pub(super) fn EntryCard() -> impl IntoView {
    let session = Session::here();
    let writing = holds(move || session.document.with(|it| it.here.draft.is_some()));
    view! {
        <section class="card" id="entry" aria-labelledby="entry-title">
            <When condition=holds(move || !writing.get())>
                <Kinds />
            </When>
            <When condition=writing>
                <Writing />
            </When>
            <UndoLine spot=Spot::Entry />
        </section>
    }
}

/// The kinds of entries to choose from.
#[component]
fn Kinds() -> impl IntoView {
    let session = Session::here();
    let tank_memos = TankMemos::here();
    let begin = move |mut what: What| {
        let time = device::now();
        let ahead = device::minutes_ahead(&time);
        tank_memos.tried.set(false);
        session.document.update(|it| {
            if let What::Fill(fill) = &mut what {
                fill.fuels = it.here.fuels_to_pour();
            }
            it.here.draft = Some(Draft::new(device::new_id(), what, time, ahead));
        });
        request_animation_frame(|| route::show("entry-title"));
    };
    view! {
        <h2 id="entry-title" tabindex="-1">
            {keys::ADD_TO_LOG.say()}
        </h2>
        <div class="buttons">
            {What::blank_ones()
                .map(|what| {
                    let label = tank::kind(&what);
                    let press = Callback::new(move |()| begin(what.clone()));
                    view! { <Button label=label look="small" on_press=press /> }
                })
                .into_iter()
                .collect_view()}
        </div>
        <p class="hint">{keys::FILLS_UNDER_FILL.say()}</p>
    }
}

/// The entry that is being written.
#[component]
fn Writing() -> impl IntoView {
    let session = Session::here();
    let tank_memos = TankMemos::here();
    let title = said(move || {
        session.document.with(|it| {
            it.here.draft.as_ref().map_or_else(String::new, |draft| {
                let kind = tank::kind(&draft.what);
                if draft.changes {
                    keys::ChangeKind { kind }.say()
                } else {
                    keys::AddKind { kind }.say()
                }
            })
        })
    });
    // Only another entry, or another kind of it, makes other fields.
    let shape = Memo::new(move |_| {
        session.document.with(|it| {
            it.here.draft.as_ref().map(|it| (it.id.clone(), std::mem::discriminant(&it.what)))
        })
    });
    let fields = Callback::new(move |()| {
        shape.track();
        let what = session.document.with_untracked(|it| Some(it.here.draft.as_ref()?.what.clone()));
        what.map(|what| fields_of(&what)).into_iter().collect()
    });
    let asked = RwSignal::new(None::<Asked>);
    let keep = Callback::new(move |sure: bool| {
        tank_memos.tried.set(true);
        let printer = session.printer.get_untracked();
        let mut next = session.document.get_untracked();
        let Ok(now) = device::this_moment() else { return };
        let Some(draft) = next.here.draft.clone() else { return };
        let odd = next.here.draft_oddities(&printer, now);
        if !sure && !odd.is_empty() {
            asked.set(Some(Asked { draft, odd }));
            request_animation_frame(|| route::show(DOES_IT_FIT));
        } else if next.here.keep_draft(&printer) {
            let deed = if draft.changes { Deed::EntryChanged } else { Deed::EntryAdded };
            session.replace_undoably(Act::at(Spot::Entry, deed).on(draft.id), next);
            tank_memos.tried.set(false);
        } else {
            // What stands in the way is read out, and the next Tab leads to its fields.
            request_animation_frame(|| route::show(ERROR_SUMMARY));
        }
    });
    // Whoever goes on typing has answered.
    let asking = holds(move || {
        asked.with(|asked| {
            let draft = asked.as_ref().map(|it| &it.draft);
            draft.is_some() && session.document.with(|it| it.here.draft.as_ref() == draft)
        })
    });
    let cancel = Callback::new(move |()| {
        let act = Act::at(Spot::Entry, Deed::EntryCancelled);
        session.change_undoably(act, |it| it.here.draft = None);
    });
    let wrong = FieldErrors::provide(move || tank_memos.wrong_in_draft());
    view! {
        <h2 id="entry-title" tabindex="-1">
            {title}
        </h2>
        <TimeField
            field=Field::Entry(EntryPart::Time)
            label=keys::WHEN.say()
            on_text=session
                .set(|it, time| {
                    if let Some(draft) = &mut it.here.draft {
                        let ahead = device::minutes_ahead(&time);
                        draft.happened(time, ahead);
                    }
                })
        />
        <Drawn what=fields />
        <div class="pair">
            <TextField
                field=Field::Entry(EntryPart::Place)
                label=keys::PLACE.say()
                words=true
            />
            <TextField
                field=Field::Entry(EntryPart::Note)
                label=keys::NOTE.say()
                words=true
            />
        </div>
        <ErrorSummary
            id=ERROR_SUMMARY
            view=View::Tank
            field_errors=wrong.all()
            lead=Lead::NotKept
        />
        <When condition=asking>
            <DoesItFit asked=asked keep=keep />
        </When>
        <When condition=holds(move || !asking.get())>
            <div class="buttons">
                <Button
                    label=keys::SAVE.say()
                    look="strong"
                    on_press=Callback::new(move |()| keep.run(false))
                />
                <Button label=keys::CANCEL.say() on_press=cancel />
            </div>
        </When>
    }
}

/// What is odd about the entry, and the two ways on.
#[component]
fn DoesItFit(asked: RwSignal<Option<Asked>>, keep: Callback<bool>) -> impl IntoView {
    let session = Session::here();
    let questions = Callback::new(move |()| {
        asked.with(|asked| {
            let odd = asked.iter().flat_map(|it| &it.odd);
            let date = |it| device::date(it, true);
            let words = |it| session.printer.with(|printer| tank::oddity(it, date, printer));
            odd.map(|it| view! { <p>{words(it)}</p> }.into_any()).collect()
        })
    });
    let change = Callback::new(move |()| {
        let field = asked.with_untracked(|it| it.as_ref()?.odd.first().map(Oddity::field));
        asked.set(None);
        if let Some(field) = field {
            request_animation_frame(move || route::show(&field.id()));
        }
    });
    view! {
        <div
            class="note caution"
            id=DOES_IT_FIT
            tabindex="-1"
            role="group"
            aria-labelledby="does-it-fit-title"
        >
            <h3 id="does-it-fit-title">{keys::DOES_IT_FIT.say()}</h3>
            <Drawn what=questions />
            <div class="buttons">
                <Button label=keys::SAVE_ANYWAY.say() on_press=Callback::new(move |()| keep.run(true)) />
                <Button label=keys::CHANGE_IT.say() look="strong" on_press=change />
            </div>
        </div>
    }
}
