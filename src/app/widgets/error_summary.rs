//! The summary of what is missing or wrong, each with a way to its field.

use fillwright::answers::FieldError;
use fillwright::document::Field;
use fillwright::message::keys::frame as keys;
use fillwright::quantity::notation::Printer;
use fillwright::words::fields;
use fillwright::words::problems::problem;
use leptos::prelude::*;

use super::flow::{Drawn, When};
use crate::app::route::View;
use crate::app::session::Session;
use crate::app::signals::{holds, said};

/// So many are named at a time; the next come up as these are put right.
const NAMED: usize = 6;

/// What field errors mean for the answer.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Lead {
    /// Nothing that has to be said.
    #[default]
    Nothing,
    /// It is of what was entered before.
    NotUpdated,
    /// What was entered is not kept.
    NotKept,
}

/// What is missing or wrong in a sentence, with the first that is wrong.
pub(crate) fn in_a_sentence(field_errors: &[FieldError], printer: &Printer) -> String {
    let summary = fields::summary(field_errors);
    match field_errors.iter().find(|it| !it.is_missing) {
        Some(wrong) => format!("{summary}: {}", problem(&wrong.problem, printer)),
        None => summary,
    }
}

/// What is still to be filled in or wrong in a view, each with a link that gives its field
/// the focus; what is wrong comes first. Nothing is wrong before it was left: a field that
/// somebody types in is left out until then.
#[component]
pub(crate) fn ErrorSummary(
    id: &'static str,
    /// The view that the fields stand in, but for those of the car.
    view: View,
    field_errors: Signal<Vec<FieldError>>,
    /// What that means for the answer.
    #[prop(optional, into)]
    lead: Signal<Lead>,
    /// What a field belongs to, where its own words do not tell.
    #[prop(optional)]
    owner: Option<fn(Session, Field) -> String>,
) -> impl IntoView {
    let session = Session::here();
    let title_id = format!("{id}-title");
    let field_errors = Memo::new(move |_| session.told(&field_errors.read()));
    let title = said(move || {
        let what = field_errors.with(|it| fields::summary(it));
        match lead.get() {
            Lead::Nothing => what,
            Lead::NotUpdated => keys::NotUpdated { what }.say(),
            Lead::NotKept => keys::NotKept { what }.say(),
        }
    });
    let is_wrong = holds(move || field_errors.with(|it| it.iter().any(|it| !it.is_missing)));
    let class = said(move || {
        if is_wrong.get() { "note caution to-mend" } else { "note to-mend" }.to_owned()
    });
    let item = move |field_error: &FieldError| {
        // The size of the tank can be given where it is first needed.
        let elsewhere = field_error.field.is_of_car()
            && !(view == View::Fill && field_error.field == Field::Capacity);
        let view = if elsewhere { View::Car } else { view };
        let link = format!("{}/{}", view.link(), field_error.field.id());
        let owner = owner.map(|owner| format!("{}: ", owner(session, field_error.field)));
        view! {
            <li>
                {owner} <a href=link>{session.printer.with(|printer| problem(&field_error.problem, printer))}</a>
            </li>
        }
        .into_any()
    };
    let items = Callback::new(move |()| {
        field_errors.with(|all| {
            let (missing, wrong): (Vec<_>, Vec<_>) = all.iter().partition(|it| it.is_missing);
            let in_order = wrong.into_iter().chain(missing);
            let mut items: Vec<AnyView> = in_order.take(NAMED).map(item).collect();
            if let more @ 1.. = all.len().saturating_sub(NAMED) {
                items.push(view! { <li>{keys::AndMore { count: more }.say()}</li> }.into_any());
            }
            items
        })
    });
    view! {
        <When condition=holds(move || field_errors.with(|it| !it.is_empty()))>
            <div
                class=class
                id=id
                tabindex="-1"
                role="group"
                aria-labelledby=title_id.clone()
            >
                <h3 id=title_id.clone()>{title}</h3>
                <ul class="cautions">
                    <Drawn what=items />
                </ul>
            </div>
        </When>
    }
}
