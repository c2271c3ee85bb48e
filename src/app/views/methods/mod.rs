//! Where each number comes from.

mod chapter;
mod constants;
mod formulas;
mod grades;
mod limits;

use chapter::Chapter;
use leptos::prelude::*;

/// The Methods view.
#[component]
pub(crate) fn MethodsView() -> impl IntoView {
    view! {
        <div class="view methods">
            <div class="intro">
                <h2>"Where does each number come from?"</h2>
                <p>
                    "Every constant and every formula that is reckoned with, with its source and how far that can be relied on. What is printed is what is open."
                </p>
            </div>
            <Chapter
                id="constants"
                title="Constants"
                short="Values, with their sources"
                holds_part=|_| false
                content=constants::drawn
            />
            <Chapter
                id="formulas"
                title="Formulas"
                short="How things are worked out, each with an example"
                holds_part=formulas::hold
                content=formulas::drawn
            />
            <Chapter
                id="grades"
                title="Fuels at the pump"
                short="What each grade may really hold"
                holds_part=|_| false
                content=grades::drawn
            />
            <Chapter
                id="limits"
                title="Limits"
                short="What no figure here covers"
                holds_part=|_| false
                content=limits::drawn
            />
            <Chapter
                id="cautions"
                title="Cautions"
                short="What has to come first"
                holds_part=|_| false
                content=limits::cautions
            />
        </div>
    }
}
