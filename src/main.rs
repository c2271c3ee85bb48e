//! The browser app: it shows what the core works out.

#![allow(unreachable_pub, reason = "the component macro makes its function public")]

mod app;

fn main() {
    console_error_panic_hook::set_once();
    app::start();
}
