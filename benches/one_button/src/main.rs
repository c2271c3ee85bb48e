//! One button that counts: what a page in this framework costs at the least.

use leptos::prelude::*;

fn main() {
    console_error_panic_hook::set_once();
    leptos::mount::mount_to_body(App);
}

#[component]
fn App() -> impl IntoView {
    let count = RwSignal::new(0_u32);
    view! { <button on:click=move |_| count.update(|count| *count += 1)>{count}</button> }
}
