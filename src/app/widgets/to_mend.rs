use fillwright::logbook::{Complaint, Field};
use leptos::prelude::*;

use super::flow::{Drawn, When, holds, said};
use crate::app::route::View;
use crate::app::state::State;
use crate::app::wording::counted;

/// So many are named at a time; the next come up as these are put right.
const NAMED: usize = 6;

/// "2 entries are missing or wrong"
pub(crate) fn count(complaints: &[Complaint]) -> String {
    counted(complaints.len(), "entry is missing or wrong", "entries are missing or wrong")
}

/// The same in a sentence, with the first of them.
pub(crate) fn in_a_sentence(complaints: &[Complaint]) -> String {
    let first = complaints.first();
    first.map_or_else(String::new, |it| format!("{}: {}", count(complaints), it.message))
}

/// What is missing or wrong in a view, each with a link that gives its field the focus.
#[component]
pub(crate) fn ToMend(
    id: &'static str,
    /// The view that the fields stand in, but for those of the car.
    view: View,
    complaints: Signal<Vec<Complaint>>,
    /// What that means for the answer.
    #[prop(optional, into)]
    lead: Signal<String>,
    /// What a field belongs to, where its own words do not tell.
    #[prop(optional)]
    owner: Option<fn(State, Field) -> String>,
) -> impl IntoView {
    let state = State::here();
    let title_id = format!("{id}-title");
    let title = said(move || format!("{}{}", lead.get(), complaints.with(|it| count(it))));
    let item = move |complaint: &Complaint| {
        let view = if complaint.field.is_of_car() { View::Car } else { view };
        let link = format!("{}/{}", view.link(), complaint.field.id());
        let owner = owner.map(|owner| format!("{}: ", owner(state, complaint.field)));
        view! {
            <li>
                {owner} <a href=link>{complaint.message.clone()}</a>
            </li>
        }
        .into_any()
    };
    let items = Callback::new(move |()| {
        complaints.with(|all| {
            let mut items: Vec<AnyView> = all.iter().take(NAMED).map(item).collect();
            if let more @ 1.. = all.len().saturating_sub(NAMED) {
                items.push(view! { <li>{format!("And {more} more.")}</li> }.into_any());
            }
            items
        })
    });
    view! {
        <When condition=holds(move || complaints.with(|it| !it.is_empty()))>
            <div
                class="note caution to-mend"
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
