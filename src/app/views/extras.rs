//! Fields of what a fuel or a tank holds beside petrol and ethanol.

use fillwright::document::{ExtraPart, Field};
use fillwright::message::Message;
use fillwright::message::keys::contents as keys;
use leptos::prelude::*;

use crate::app::widgets::TextField;

/// Each with its label and its hint.
const PARTS: [(ExtraPart, Message, Message); 4] = [
    (ExtraPart::Water, keys::WATER, keys::WATER_HINT),
    (ExtraPart::Methanol, keys::METHANOL, keys::METHANOL_HINT),
    (ExtraPart::Ethers, keys::ETHERS, keys::ETHERS_HINT),
    (ExtraPart::Oxygen, keys::OXYGEN, keys::OXYGEN_HINT),
];

/// The fields of one form.
pub(crate) fn extras_fields(field: impl Fn(ExtraPart) -> Field) -> AnyView {
    let fields = PARTS.map(|(part, label, hint)| {
        view! { <TextField field=field(part) label=label.say() hint=hint.say() words=true /> }
            .into_any()
    });
    view! { <div class="pair">{fields}</div> }.into_any()
}
