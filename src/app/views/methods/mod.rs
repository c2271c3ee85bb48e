//! Where each number comes from.

mod chapter;
mod constants;
mod formulas;
mod grades;
mod limits;

use chapter::Chapter;
use fillwright::message::keys::methods as keys;
use leptos::prelude::*;

/// The Methods view.
#[component]
pub(crate) fn MethodsView() -> impl IntoView {
    view! {
        <div class="view methods">
            <div class="intro">
                <h2>{keys::TITLE.say()}</h2>
                <p>
                    {keys::TITLE_MEANS.say()}
                </p>
            </div>
            <Chapter
                id="constants"
                title=keys::CONSTANTS.say()
                short=keys::CONSTANTS_SHORT.say()
                holds_part=|_| false
                content=constants::drawn
            />
            <Chapter
                id="formulas"
                title=keys::FORMULAS.say()
                short=keys::FORMULAS_SHORT.say()
                holds_part=formulas::hold
                content=formulas::drawn
            />
            <Chapter
                id="grades"
                title=keys::GRADES.say()
                short=keys::GRADES_SHORT.say()
                holds_part=|_| false
                content=grades::drawn
            />
            <Chapter
                id="limits"
                title=keys::LIMITS.say()
                short=keys::LIMITS_SHORT.say()
                holds_part=|_| false
                content=limits::drawn
            />
            <Chapter
                id="cautions"
                title=keys::CAUTIONS.say()
                short=keys::CAUTIONS_SHORT.say()
                holds_part=|_| false
                content=limits::cautions
            />
        </div>
    }
}
