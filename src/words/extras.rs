//! What is said of water, methanol and ethers in a fuel.

use crate::document::ExtrasForm;
use crate::fuel::Extras;
use crate::message::keys::extras as keys;
use crate::quantity::notation::Printer;
use crate::quantity::{Band, Share};

/// “water 4.8 % (3.4 to 6.1 %), ethers 2 %”; nothing where there can be none. The ends are
/// rounded outwards.
pub fn beside_ethanol(extras: &Extras, printer: &Printer) -> Option<String> {
    let known = |band: Band<Share>| (band.high() > Share::ZERO).then(|| told(band, printer));
    let parts = [
        known(extras.water).map(|amount| keys::Water { amount }.say()),
        known(extras.methanol).map(|amount| keys::Methanol { amount }.say()),
        known(extras.ethers).map(|amount| keys::Ethers { amount }.say()),
    ];
    let known: Vec<String> = parts.into_iter().flatten().collect();
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
    keys::AmountBetween { expected, low: number(low), high: number(high) }.say()
}

/// The same as it was typed: “water 4.8 (3.4-6.1) %, oxygen 2.7 % by mass”.
pub fn typed(form: &ExtrasForm) -> String {
    let typed = |text: &str| {
        let number = text.trim().trim_end_matches('%').trim_end().to_owned();
        (!text.trim().is_empty()).then_some(number)
    };
    let percent = |text: &str| typed(text).map(|number| format!("{number}\u{202f}%"));
    let parts = [
        percent(&form.water).map(|amount| keys::Water { amount }.say()),
        percent(&form.methanol).map(|amount| keys::Methanol { amount }.say()),
        percent(&form.ethers).map(|amount| keys::Ethers { amount }.say()),
        typed(&form.oxygen)
            .map(|number| keys::Oxygen { amount: keys::ByMass { number }.say() }.say()),
    ];
    parts.into_iter().flatten().collect::<Vec<_>>().join(", ")
}
