//! The browser app: it shows what the core works out.

#![allow(unreachable_pub, reason = "the component macro makes its function public")]

mod app;

fn main() {
    console_error_panic_hook::set_once();
    // What stood there until now.
    if let Some(shell) = leptos::prelude::document().get_element_by_id("shell") {
        shell.remove();
    }
    leptos::mount::mount_to_body(app::App);
}
