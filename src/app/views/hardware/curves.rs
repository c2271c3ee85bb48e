//! The section of the power curves.

use fillwright::document::{Document, Field};
use fillwright::message::keys::hardware as keys;
use fillwright::words::hardware;
use leptos::prelude::*;

use super::curve::one;
use super::section::need;
use crate::app::session::Session;
use crate::app::widgets::{Button, Choices, Section, UndoableRows, When, holds, said};

const NONE: &str = "none";

/// Adds a curve.
pub(super) fn add_curve(document: &mut Document) {
    document.here.add_curve(|count| keys::Curve { number: count.to_string() }.say());
}

fn is_here(field: Field) -> bool {
    matches!(field, Field::Curve(..))
}

/// The power curves.
#[component]
pub(super) fn CurvesSection() -> impl IntoView {
    let session = Session::here();
    let ids = Memo::new(move |_| {
        session
            .document
            .with(|it| it.here.hardware.curves.iter().map(|form| form.id).collect::<Vec<_>>())
    });
    let short = said(move || {
        session.document.with(|it| {
            let names = it.here.hardware.curves.iter().map(|form| hardware::curve(&form.name));
            names.collect::<Vec<_>>().join(", ")
        })
    });
    let is_new = session
        .document
        .with_untracked(|it| it.here.hardware.curves.iter().any(|form| form.table.is_blank()));
    let add = Callback::new(move |()| session.document.update(add_curve));
    let others = Memo::new(move |_| {
        session.document.with(|it| {
            let hardware = &it.here.hardware;
            let served = hardware.target_curve().map(|it| it.id);
            let others = hardware.curves.iter().filter(|it| Some(it.id) != served);
            let none = (NONE.to_owned(), keys::NONE.say().to_owned());
            let others = others.map(|it| (it.id.to_string(), hardware::curve(&it.name)));
            std::iter::once(none).chain(others).collect::<Vec<_>>()
        })
    });
    let compared = said(move || {
        let id = session.document.with(|it| it.here.hardware.compared_with);
        let key = id.map(|id| id.to_string());
        let known = |key: &String| others.with(|all| all.iter().any(|it| it.0 == *key));
        key.filter(known).unwrap_or_else(|| NONE.to_owned())
    });
    let choose = session.set(|it, key| it.here.hardware.compared_with = key.parse().ok());
    let several = holds(move || ids.with(|it| it.len() > 1));
    view! {
        <Section id="curves" title=keys::CURVES.say() short=short need=need(is_here) open=is_new>
            <div class="parts">
                <UndoableRows ids=ids.into() row=one />
            </div>
            <When condition=several>
                <Choices
                    id="compared-curve"
                    label=keys::COMPARE_WITH.say()
                    choices=others.into()
                    chosen=compared
                    on_choice=choose
                />
            </When>
            <div>
                <Button label=keys::ADD_A_CURVE.say() on_press=add />
            </div>
        </Section>
    }
}
