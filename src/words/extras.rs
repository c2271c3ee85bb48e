//! What is said of water, methanol and ethers in a fuel.

use crate::document::ExtrasForm;
use crate::fuel::Extras;
use crate::quantity::notation::Printer;
use crate::quantity::{Band, Share};

/// “water 4.8 % (3.4 to 6.1 %), ethers 2 %”; nothing where there can be none. The ends are
/// rounded outwards.
pub fn beside_ethanol(extras: &Extras, printer: &Printer) -> Option<String> {
    let kinds = [("water", extras.water), ("methanol", extras.methanol), ("ethers", extras.ethers)];
    let known: Vec<String> = kinds
        .into_iter()
        .filter(|(_, band)| band.high() > Share::ZERO)
        .map(|(name, band)| format!("{name} {}", told(band, printer)))
        .collect();
    (!known.is_empty()).then(|| known.join(", "))
}

fn told(band: Band<Share>, printer: &Printer) -> String {
    // What is a whole number of tenths but for the last digits is not rounded on.
    let low = (band.low().percent() * 10.0 + 1e-6).floor() / 10.0;
    let high = (band.high().percent() * 10.0 - 1e-6).ceil() / 10.0;
    let number = |value: f64| printer.number(value, 1);
    let expected = number(band.expected().percent());
    if number(low) == number(high) {
        return format!("{expected}\u{202f}%");
    }
    format!("{expected}\u{202f}% ({} to {}\u{202f}%)", number(low), number(high))
}

/// The same as it was typed: “water 4.8 (3.4-6.1) %, oxygen 2.7 % by mass”.
pub fn typed(form: &ExtrasForm) -> String {
    let parts = [
        ("water", &form.water, "%"),
        ("methanol", &form.methanol, "%"),
        ("ethers", &form.ethers, "%"),
        ("oxygen", &form.oxygen, "% by mass"),
    ];
    let known: Vec<String> = parts
        .into_iter()
        .filter(|(_, text, _)| !text.trim().is_empty())
        .map(|(name, text, unit)| {
            let number = text.trim().trim_end_matches('%').trim_end();
            format!("{name} {number}\u{202f}{unit}")
        })
        .collect();
    known.join(", ")
}
