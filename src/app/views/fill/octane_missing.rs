//! Where an octane number has to be given before anything can be said that depends on it.

use fillwright::answers::fill::FillAnswer;
use fillwright::document::{ContentsOf, ContentsPart, Field};
use fillwright::message::keys::fill as keys;
use leptos::prelude::*;

use crate::app::fill_memos::FillMemos;
use crate::app::route::View;
use crate::app::session::Session;
use crate::app::widgets::{Drawn, When};

/// What is not known, each with a way to where it is given.
#[component]
pub(super) fn OctaneMissing(
    id: &'static str,
    /// What that means.
    words: &'static str,
    condition: Signal<bool>,
) -> impl IntoView {
    let session = Session::here();
    let fill_memos = FillMemos::here();
    let links = Callback::new(move |()| {
        let Some(answer) = fill_memos.answer() else { return Vec::new() };
        // What the log does not know is put right there.
        let from_log = session.document.with(|it| it.here.fill.is_from_log());
        let link = |field: Field| {
            let name = owner(&answer, field)?;
            let view =
                if field == Field::Contents(ContentsOf::Fill, ContentsPart::Octane) && from_log {
                    View::Tank.link().to_owned()
                } else {
                    format!("{}/{}", View::Fill.link(), field.id())
                };
            Some(view! { <li><a href=view>{name}</a></li> }.into_any())
        };
        answer.octane_missing().into_iter().filter_map(link).collect()
    });
    view! {
        <When condition=condition>
            <div class="note" id=id>
                <p>{words}</p>
                <ul>
                    <Drawn what=links />
                </ul>
            </div>
        </When>
    }
}

/// What an octane number belongs to.
fn owner(answer: &FillAnswer, field: Field) -> Option<String> {
    match field {
        Field::Contents(ContentsOf::Fill, ContentsPart::Octane) => {
            Some(keys::WHAT_IS_IN_THE_TANK.say().to_owned())
        }
        Field::Fuel(id, _) => {
            answer.asked.fuels.iter().find(|fuel| fuel.id == id).map(|fuel| fuel.name.clone())
        }
        _ => None,
    }
}
