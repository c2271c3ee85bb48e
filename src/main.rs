//! The browser app: shows in a page what the core works out.

use leptos::prelude::*;

fn main() {
    console_error_panic_hook::set_once();
    leptos::mount::mount_to_body(App);
}

/// The whole page.
#[component]
fn App() -> impl IntoView {
    let count = RwSignal::new(0_u32);
    view! {
        <main>
            <h1>"Fillwright"</h1>
            <button type="button" on:click=move |_| count.update(|count| *count += 1)>
                "Add one"
            </button>
            <p role="status">"Count: " {count}</p>
        </main>
    }
}
