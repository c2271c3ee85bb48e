//! Fields with a choice from a list of options.

use fillwright::message::Message;
use leptos::prelude::*;

use super::flow::Drawn;
use crate::app::signals::holds;

/// Key and label of each option.
pub(crate) type Table = Vec<(String, String)>;

/// Keys and labels of a table of options.
pub(crate) fn options<T>(table: &[(T, &str, Message)]) -> Signal<Table> {
    Signal::stored(table.iter().map(|it| (it.1.to_owned(), it.2.say().to_owned())).collect())
}

/// The key of a value in a table of options.
pub(crate) fn key_of<T: PartialEq>(table: &[(T, &str, Message)], value: &T) -> String {
    table.iter().find(|it| it.0 == *value).map_or("", |it| it.1).to_owned()
}

/// The value of a key in a table of options.
pub(crate) fn value_of<T: Copy>(table: &[(T, &str, Message)], key: &str) -> Option<T> {
    table.iter().find(|it| it.1 == key).map(|it| it.0)
}

/// One of a few, all in sight: radio buttons that look like chips.
#[component]
pub(crate) fn Options(
    legend: &'static str,
    #[prop(into)] name: String,
    options: Signal<Table>,
    chosen: Signal<String>,
    on_choice: Callback<String>,
) -> impl IntoView {
    let option = move |name: &str, (key, label): (String, String)| {
        let is_chosen = {
            let key = key.clone();
            holds(move || chosen.with(|chosen| *chosen == key))
        };
        let name = name.to_owned();
        let value = key.clone();
        view! {
            <label>
                <input
                    type="radio"
                    name=name
                    value=value
                    prop:checked=is_chosen
                    on:change=move |_| on_choice.run(key.clone())
                />
                {label}
            </label>
        }
        .into_any()
    };
    let drawn =
        Callback::new(move |()| options.get().into_iter().map(|it| option(&name, it)).collect());
    view! {
        <fieldset class="options">
            <legend class="legend">{legend}</legend>
            <div class="row">
                <Drawn what=drawn />
            </div>
        </fieldset>
    }
}

/// One of many, in a list that opens.
#[component]
pub(crate) fn Choices(
    #[prop(into)] id: String,
    label: &'static str,
    choices: Signal<Table>,
    chosen: Signal<String>,
    on_choice: Callback<String>,
) -> impl IntoView {
    let choice = move |(key, label): (String, String)| {
        let is_chosen = {
            let key = key.clone();
            holds(move || chosen.with(|chosen| *chosen == key))
        };
        view! {
            <option value=key selected=is_chosen>
                {label}
            </option>
        }
        .into_any()
    };
    let drawn = Callback::new(move |()| choices.get().into_iter().map(choice).collect());
    view! {
        <div class="field">
            <label for=id.clone()>{label}</label>
            <select
                id=id
                class="select"
                prop:value=chosen
                on:change:target=move |event| on_choice.run(event.target().value())
            >
                <Drawn what=drawn />
            </select>
        </div>
    }
}

/// A box to tick.
#[component]
pub(crate) fn CheckBox(
    #[prop(into)] label: String,
    checked: Signal<bool>,
    on_tick: Callback<bool>,
) -> impl IntoView {
    view! {
        <label class="check">
            <input
                type="checkbox"
                prop:checked=checked
                on:change:target=move |event| on_tick.run(event.target().checked())
            />
            {label}
        </label>
    }
}
