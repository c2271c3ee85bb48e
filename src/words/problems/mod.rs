//! What is missing in a field, or wrong with it: what was given, what is allowed, what to do.

mod hardware;
mod refused;
mod typed;

use crate::answers::problem::{BadRow, CurveTableError, FieldProblem};
use crate::hardware::OutsideTable;
use crate::quantity::notation::Printer;

/// What to say beside a field.
pub fn problem(problem: &FieldProblem, printer: &Printer) -> String {
    let words = match problem {
        FieldProblem::Said(sentence) => sentence.say(),
        FieldProblem::Number(error) => typed::number_error(error, printer),
        FieldProblem::Share(error) => typed::share_text_error(error, printer),
        FieldProblem::Volume(error) => typed::volume_text_error(error, printer),
        FieldProblem::Figure(error) => typed::figure_text_error(error, printer),
        FieldProblem::Octane(error) => typed::octane_text_error(error, printer),
        FieldProblem::Signal(error) => typed::signal_text_error(error, printer),
        FieldProblem::MoneyText(error) => typed::money_text_error(error, printer),
        FieldProblem::Money(error) => typed::money_error(*error, printer),
        FieldProblem::Consumption(error) => typed::consumption_error(*error, printer),
        FieldProblem::Moment(error) => typed::moment_error(error),
        FieldProblem::Oxygen(error) => refused::oxygen_error(error, printer),
        FieldProblem::Aki(error) => refused::aki_error(error, printer),
        FieldProblem::Fill(error) => refused::fill_error(error, printer),
        FieldProblem::Route(error) => refused::route_error(error, printer),
        FieldProblem::Sensor(error) => refused::sensor_error(error, printer),
        FieldProblem::TubeTest(error) => refused::tube_test_error(error, printer),
        FieldProblem::Hardware(error) => hardware::problem(error, printer),
    };
    capital(&words)
}

/// Why a text is no table of a curve, inside a sentence.
pub fn no_curve_table(error: &CurveTableError) -> String {
    hardware::curve_table_error(error)
}

/// Why a row of such a table cannot be read, inside a sentence.
pub fn bad_row(row: &BadRow, printer: &Printer) -> String {
    hardware::bad_row(row, printer)
}

/// Why a value lies outside a table, inside a sentence.
pub(crate) fn outside_table(error: &OutsideTable, printer: &Printer) -> String {
    hardware::outside_table(error, printer)
}

/// A sentence begins with a capital letter, whatever stands first in it.
fn capital(words: &str) -> String {
    let mut letters = words.chars();
    let first = letters.next().map(|it| it.to_uppercase().to_string()).unwrap_or_default();
    first + letters.as_str()
}

/// What to say to somebody who reads in litres, with a point before decimals.
#[cfg(test)]
pub(crate) fn in_metric(wrong: impl Into<FieldProblem>) -> String {
    use crate::quantity::notation::{DecimalMark, Style, Units};

    let style = Style { decimal: DecimalMark::Point };
    problem(&wrong.into(), &Printer { units: Units::METRIC, style, currency: String::new() })
}
