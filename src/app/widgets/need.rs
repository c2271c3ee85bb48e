//! What a folded part of the question needs, said on its head.

use fillwright::answers::FieldError;
use fillwright::document::Field;
use fillwright::message::keys::frame as keys;
use leptos::prelude::*;

use super::flow::When;
use super::holds;

/// What a part of the question needs before there is an answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Need {
    Nothing,
    /// Something is still to be filled in.
    FillingIn,
    /// Something is wrong.
    Mending,
}

impl Need {
    /// What is needed by the fields that are meant.
    pub(crate) fn of(field_errors: &[FieldError], is_meant: impl Fn(Field) -> bool) -> Self {
        let of = |it: &FieldError| if it.is_missing { Self::FillingIn } else { Self::Mending };
        let meant = field_errors.iter().filter(|it| is_meant(it.field));
        meant.map(of).max().unwrap_or(Self::Nothing)
    }
}

/// The words for it.
#[component]
pub(crate) fn NeedInShort(need: Signal<Need>) -> impl IntoView {
    view! {
        <When condition=holds(move || need.get() == Need::FillingIn)>
            <span class="in-short">{keys::TO_FILL_IN.say()}</span>
        </When>
        <When condition=holds(move || need.get() == Need::Mending)>
            <span class="in-short missing">{keys::IS_WRONG.say()}</span>
        </When>
    }
}
