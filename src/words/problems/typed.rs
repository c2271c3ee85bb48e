//! Why a typed text is not what its field asks for.

use crate::document::MomentError;
use crate::message::keys::typed as keys;
use crate::quantity::notation::{
    FigureTextError, MAX_CHARS, MoneyTextError, NumberError, OctaneTextError, Printer,
    ShareTextError, SignalTextError, VolumeTextError, print_number_short,
};
use crate::quantity::{ConsumptionError, MoneyError, ShareError};
use crate::words::or;

pub(super) fn number_error(error: &NumberError, printer: &Printer) -> String {
    let short = |value: f64| print_number_short(value, 3, printer.style);
    match error {
        NumberError::Empty => keys::NUMBER_EMPTY.say().to_owned(),
        NumberError::TooLong => keys::NumberTooLong { max_chars: MAX_CHARS.to_string() }.say(),
        NumberError::NotANumber { given } => keys::NumberNotANumber { given }.say(),
        NumberError::Separators { given } => keys::NumberSeparators { given }.say(),
        NumberError::Ambiguous { given, decimal, grouped } => {
            keys::NumberAmbiguous { given, decimal: short(*decimal), grouped: short(*grouped) }
                .say()
        }
        NumberError::OutOfRange { given, low, high } => {
            keys::NumberOutOfRange { given, low: short(*low), high: short(*high) }.say()
        }
    }
}

pub(super) fn share_error(error: ShareError, printer: &Printer) -> String {
    let short = |value: f64| print_number_short(value, 4, printer.style);
    keys::Share { given: short(error.given) }.say()
}

pub(super) fn share_text_error(error: &ShareTextError, printer: &Printer) -> String {
    let short = |value: f64| print_number_short(value, 3, printer.style);
    match error {
        ShareTextError::Number(error) => number_error(error, printer),
        ShareTextError::Share(error) => share_error(*error, printer),
        ShareTextError::NotAShare { given } => keys::ShareTextNotAShare { given }.say(),
        ShareTextError::NotAPart { given } => keys::ShareTextNotAPart { given }.say(),
        ShareTextError::PercentOrFraction { given, percent } => {
            keys::ShareTextPercentOrFraction { given, percent: short(percent * 100.0) }.say()
        }
        ShareTextError::ExpectedOutside { given } => keys::ShareTextExpectedOutside { given }.say(),
        ShareTextError::SpreadAlone { given } => keys::ShareTextSpreadAlone { given }.say(),
        ShareTextError::NoRange { given } => keys::ShareTextNoRange { given }.say(),
    }
}

pub(super) fn volume_text_error(error: &VolumeTextError, printer: &Printer) -> String {
    let short = |value: f64| print_number_short(value, 3, printer.style);
    match error {
        VolumeTextError::Number(error) => number_error(error, printer),
        VolumeTextError::UnknownUnit { given } => keys::VolumeUnknownUnit { given }.say(),
        VolumeTextError::NotAPart { given } => keys::VolumeNotAPart { given }.say(),
        VolumeTextError::NeedsTank { given } => keys::VolumeNeedsTank { given }.say(),
        VolumeTextError::NeedsConsumption { given } => keys::VolumeNeedsConsumption { given }.say(),
        VolumeTextError::VolumeOrPart { given, as_volume, as_part } => {
            keys::VolumeVolumeOrPart { given, as_volume, as_part }.say()
        }
        VolumeTextError::OutOfRange { given, high, unit } => {
            keys::VolumeOutOfRange { given, high: short(*high), unit: *unit }.say()
        }
    }
}

/// Units one of which is to be typed.
pub(super) fn units(known: &[&str]) -> String {
    or(&known.iter().map(|it| (*it).to_owned()).collect::<Vec<_>>())
}

pub(super) fn figure_text_error(error: &FigureTextError, printer: &Printer) -> String {
    let short = |value: f64| print_number_short(value, 4, printer.style);
    match error {
        FigureTextError::Number(error) => number_error(error, printer),
        FigureTextError::UnknownUnit { given, known } => {
            keys::FigureUnknownUnit { given, known: units(known) }.say()
        }
        FigureTextError::OutOfRange { given, low, high, unit } => {
            keys::FigureOutOfRange { given, low: short(*low), high: short(*high), unit }.say()
        }
        FigureTextError::NotAUnit { given, advice } => {
            keys::FigureNotAUnit { given, advice: *advice }.say()
        }
        FigureTextError::PerhapsFraction { given, percent, fraction } => {
            keys::FigurePerhapsFraction {
                given,
                percent: short(*percent),
                fraction: short(*fraction * 100.0),
            }
            .say()
        }
    }
}

pub(super) fn octane_text_error(error: &OctaneTextError, printer: &Printer) -> String {
    match error {
        OctaneTextError::Number(error) => number_error(error, printer),
        OctaneTextError::Motor { given } => keys::OctaneMotor { given }.say(),
        OctaneTextError::UnknownScale { given } => keys::OctaneUnknownScale { given }.say(),
    }
}

pub(super) fn signal_text_error(error: &SignalTextError, printer: &Printer) -> String {
    match error {
        SignalTextError::Number(error) => number_error(error, printer),
        SignalTextError::Share(error) => share_text_error(error, printer),
        SignalTextError::UnknownUnit { given, known } => {
            keys::SignalUnknownUnit { given, known: *known }.say()
        }
    }
}

pub(super) fn money_error(error: MoneyError, printer: &Printer) -> String {
    let short = |value: f64| print_number_short(value, 4, printer.style);
    keys::MoneyAmount { given: short(error.given) }.say()
}

pub(super) fn money_text_error(error: &MoneyTextError, printer: &Printer) -> String {
    match error {
        MoneyTextError::Number(error) => number_error(error, printer),
        MoneyTextError::Money(error) => money_error(*error, printer),
        MoneyTextError::NotAnAmount { given } => keys::MoneyNotAnAmount { given }.say(),
        MoneyTextError::Hundredths { given } => keys::MoneyHundredths { given }.say(),
        MoneyTextError::UnknownUnit { given } => keys::MoneyUnknownUnit { given }.say(),
    }
}

pub(super) fn moment_error(error: &MomentError) -> String {
    keys::Moment { given: &error.given }.say()
}

pub(super) fn consumption_error(error: ConsumptionError, printer: &Printer) -> String {
    let short = |value: f64| print_number_short(value, 4, printer.style);
    keys::Consumption { given: short(error.given) }.say()
}
