use leptos::prelude::*;

/// One of a few, all in sight: radio buttons that look like chips.
#[component]
pub(crate) fn Options(
    legend: &'static str,
    name: &'static str,
    /// Key and label of each option.
    #[prop(into)]
    options: Signal<Vec<(String, String)>>,
    #[prop(into)] chosen: Signal<String>,
    on_choice: Callback<String>,
) -> impl IntoView {
    view! {
        <fieldset class="options">
            <legend class="legend">{legend}</legend>
            <div class="row">
                <For each=move || options.get() key=Clone::clone let:option>
                    {
                        let (key, label) = option;
                        let is_chosen = {
                            let key = key.clone();
                            move || chosen.with(|chosen| *chosen == key)
                        };
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
                    }
                </For>
            </div>
        </fieldset>
    }
}

/// One of many, in a list that opens.
#[component]
pub(crate) fn Choices(
    id: &'static str,
    label: &'static str,
    /// Key and label of each choice.
    #[prop(into)]
    choices: Signal<Vec<(String, String)>>,
    #[prop(into)] chosen: Signal<String>,
    on_choice: Callback<String>,
) -> impl IntoView {
    view! {
        <div class="field">
            <label for=id>{label}</label>
            <select
                id=id
                class="select"
                prop:value=move || chosen.get()
                on:change:target=move |event| on_choice.run(event.target().value())
            >
                <For each=move || choices.get() key=Clone::clone let:choice>
                    {
                        let (key, label) = choice;
                        let is_chosen = {
                            let key = key.clone();
                            move || chosen.with(|chosen| *chosen == key)
                        };
                        view! {
                            <option value=key.clone() selected=is_chosen>
                                {label}
                            </option>
                        }
                    }
                </For>
            </select>
        </div>
    }
}
