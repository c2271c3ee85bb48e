//! Facts as a list of terms with what is said of them.

use leptos::prelude::*;

use fillwright::words::hardware::Fact;

/// Figures as a list of definitions.
pub(crate) fn facts(facts: Vec<Fact>) -> Vec<AnyView> {
    let fact = |it: Fact| {
        view! {
            <dt>{it.what}</dt>
            <dd>
                {it.value} " " <small>{it.aside}</small>
            </dd>
        }
        .into_any()
    };
    facts.into_iter().map(fact).collect()
}
