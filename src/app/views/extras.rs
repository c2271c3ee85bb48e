//! Fields of what a fuel or a tank holds beside petrol and ethanol.

use fillwright::document::{ExtraPart, Field};
use leptos::prelude::*;

use crate::app::widgets::TextField;

/// Each with its label and its hint.
const PARTS: [(ExtraPart, &str, &str); 4] = [
    (ExtraPart::Water, "Water", "Hydrous ethanol: 4.8"),
    (ExtraPart::Methanol, "Methanol", "Expected (from–to): 1 (0–3)"),
    (ExtraPart::Ethers, "Ethers", "MTBE, ETBE"),
    (ExtraPart::Oxygen, "Or oxygen, by mass", "In place of the ethers"),
];

/// The fields of one form.
pub(crate) fn extras_fields(field: impl Fn(ExtraPart) -> Field) -> AnyView {
    let fields = PARTS.map(|(part, label, hint)| {
        view! { <TextField field=field(part) label=label hint=hint words=true /> }.into_any()
    });
    view! { <div class="pair">{fields}</div> }.into_any()
}
