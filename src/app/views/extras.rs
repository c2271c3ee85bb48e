//! Fields of what a fuel or a tank holds beside petrol and ethanol.

use fillwright::document::{Document, ExtraPart, ExtrasForm, Field};
use leptos::prelude::*;

use crate::app::state::State;
use crate::app::widgets::TextField;

/// Which text of the form, and how it is written.
type Part = (
    ExtraPart,
    &'static str,
    &'static str,
    fn(&ExtrasForm) -> &String,
    fn(&mut ExtrasForm) -> &mut String,
);

const PARTS: [Part; 4] = [
    (ExtraPart::Water, "Water", "Hydrous ethanol: 4.8", |it| &it.water, |it| &mut it.water),
    (
        ExtraPart::Methanol,
        "Methanol",
        "Expected (from–to): 1 (0–3)",
        |it| &it.methanol,
        |it| &mut it.methanol,
    ),
    (ExtraPart::Ethers, "Ethers", "MTBE, ETBE", |it| &it.ethers, |it| &mut it.ethers),
    (
        ExtraPart::Oxygen,
        "Or oxygen, by mass",
        "In place of the ethers",
        |it| &it.oxygen,
        |it| &mut it.oxygen,
    ),
];

/// The fields of one form.
pub(crate) fn extras_fields(
    field: impl Fn(ExtraPart) -> Field,
    read: impl Fn(&Document) -> Option<&ExtrasForm> + Copy + Send + Sync + 'static,
    write: impl Fn(&mut Document) -> Option<&mut ExtrasForm> + Copy + Send + Sync + 'static,
) -> AnyView {
    let state = State::here();
    let fields = PARTS.map(|(part, label, hint, get, put)| {
        let value = state.text(move |it| read(it).map(get));
        let on_text = state.set(move |it, text| {
            if let Some(form) = write(it) {
                *put(form) = text;
            }
        });
        view! {
            <TextField
                field=field(part)
                label=label
                hint=hint
                unit="%"
                words=true
                value=value
                on_text=on_text
            />
        }
        .into_any()
    });
    view! { <div class="pair">{fields}</div> }.into_any()
}
