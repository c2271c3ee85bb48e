//! Why what was typed is no hardware.

use super::typed::{figure_text_error, units};
use crate::answers::hardware::SMALL_TABLE_ROWS;
use crate::answers::hardware::curve_table::{LONGEST_TABLE, MOST_COLUMNS, MOST_ROWS};
use crate::answers::problem::{BadCell, BadRow, CurveTableError, HardwareProblem, TableError};
use crate::hardware::{
    DeadTimeError, FluidError, HEAVIEST, LIGHTEST, MixError, NozzleError, OutsideTable,
    PumpTableError,
};
use crate::message::keys::hardware_problems as keys;
use crate::power::{AmbientAirError, DrivelineLossError, PowerCurveError};
use crate::quantity::notation::{FigureTextError, NumberError, Printer, print_number_short};

/// What is wrong with the hardware.
pub(super) fn problem(problem: &HardwareProblem, printer: &Printer) -> String {
    match problem {
        HardwareProblem::Air(error) => ambient_air_error(error, printer),
        HardwareProblem::Curve(error) => power_curve_error(error),
        HardwareProblem::Driveline(error) => driveline_loss_error(*error, printer),
        HardwareProblem::Fluid(error) => fluid_error(*error, printer),
        HardwareProblem::Nozzle(error) => nozzle_error(error, printer),
        HardwareProblem::Mix(error) => mix_error(error, printer),
        HardwareProblem::Table(error) => table_error(error, printer),
        HardwareProblem::CurveTable(error) => curve_table_error(error),
        HardwareProblem::Row(row) => bad_row(row, printer),
    }
}

/// Why a row of a curve's table cannot be read.
pub(super) fn bad_row(row: &BadRow, printer: &Printer) -> String {
    let BadCell { column, given, error } = &row.cell;
    let column = *column;
    let short = |value: f64| print_number_short(value, 3, printer.style);
    let reason = match error {
        FigureTextError::Number(NumberError::Empty) => keys::CellEmpty { column }.say(),
        FigureTextError::Number(NumberError::Ambiguous { decimal, grouped, .. }) => {
            let (decimal, grouped) = (short(*decimal), short(*grouped));
            keys::CellAmbiguous { given, column, decimal, grouped }.say()
        }
        FigureTextError::OutOfRange { low, high, unit, .. } => {
            let (low, high) = (short(*low), short(*high));
            keys::CellOutOfRange { given, column, low, high, unit }.say()
        }
        FigureTextError::UnknownUnit { known, .. } => {
            keys::CellOtherUnit { given, column, known: units(known) }.say()
        }
        FigureTextError::NotAUnit { advice, .. } => {
            keys::CellNotAUnit { given, column, advice: *advice }.say()
        }
        _ => keys::CellNotANumber { given, column }.say(),
    };
    keys::RowLine { line: row.line.to_string(), reason }.say()
}

pub(super) fn ambient_air_error(error: &AmbientAirError, printer: &Printer) -> String {
    match error {
        AmbientAirError::Temperature { given } => {
            keys::AirTemperature { given: printer.number(*given, 0) }.say()
        }
        AmbientAirError::Pressure { given } => {
            keys::AirPressure { given: printer.number(*given, 1) }.say()
        }
        AmbientAirError::Humidity { given } => {
            keys::AirHumidity { given: printer.number(given * 100.0, 0) }.say()
        }
    }
}

pub(super) fn power_curve_error(error: &PowerCurveError) -> String {
    match error {
        PowerCurveError::TooFew { given } => keys::CurveTooFew { given: given.to_string() }.say(),
        PowerCurveError::NotPositive { point } => {
            keys::CurveNotPositive { point: point.to_string() }.say()
        }
    }
}

pub(super) fn driveline_loss_error(error: DrivelineLossError, printer: &Printer) -> String {
    keys::DrivelineLoss { given: printer.number(error.given * 100.0, 1) }.say()
}

pub(super) fn pump_table_error(error: &PumpTableError, printer: &Printer) -> String {
    match error {
        PumpTableError::TooSmall { pressures, voltages } => keys::PumpTableTooSmall {
            pressures: pressures.to_string(),
            voltages: voltages.to_string(),
        }
        .say(),
        PumpTableError::Shape { row, given, allowed } => keys::PumpTableShape {
            row: row.to_string(),
            given: given.to_string(),
            allowed: allowed.to_string(),
        }
        .say(),
        PumpTableError::Rows { given, allowed } => {
            keys::PumpTableRows { given: given.to_string(), allowed: allowed.to_string() }.say()
        }
        PumpTableError::Pressures { before, after } => keys::PumpTablePressures {
            after: printer.number(*after, 2),
            before: printer.number(*before, 2),
        }
        .say(),
        PumpTableError::Voltages { before, after } => keys::PumpTableVoltages {
            after: printer.number(*after, 2),
            before: printer.number(*before, 2),
        }
        .say(),
        PumpTableError::Flow { given } => {
            keys::PumpTableFlow { given: printer.number(*given, 3) }.say()
        }
        PumpTableError::Rising { before, after } => keys::PumpTableRising {
            after: printer.number(*after, 3),
            before: printer.number(*before, 3),
        }
        .say(),
    }
}

pub(super) fn dead_time_error(error: &DeadTimeError, printer: &Printer) -> String {
    match error {
        DeadTimeError::Empty => keys::DEAD_TIME_EMPTY.say().to_owned(),
        DeadTimeError::NotAscending { before, after } => keys::DeadTimeNotAscending {
            after: printer.number(*after, 2),
            before: printer.number(*before, 2),
        }
        .say(),
        DeadTimeError::Time { given } => {
            keys::DeadTimeTime { given: printer.number(*given, 3) }.say()
        }
    }
}

pub(super) fn fluid_error(error: FluidError, printer: &Printer) -> String {
    keys::Fluid { given: printer.number(error.given * 100.0, 1) }.say()
}

pub(super) fn outside_table(error: &OutsideTable, printer: &Printer) -> String {
    keys::Outside {
        given: printer.number(error.given, 2),
        unit: error.unit,
        what: error.what,
        low: printer.number(error.low, 2),
        high: printer.number(error.high, 2),
    }
    .say()
}

pub(super) fn nozzle_error(error: &NozzleError, printer: &Printer) -> String {
    match error {
        NozzleError::Flow { given } => keys::NozzleFlow { given: printer.number(*given, 3) }.say(),
        NozzleError::Difference { given } => {
            keys::NozzleDifference { given: printer.number(*given, 2) }.say()
        }
        NozzleError::Density { given } => keys::NozzleDensity {
            given: printer.number(*given, 0),
            lightest: printer.number(LIGHTEST, 0),
            heaviest: printer.number(HEAVIEST, 0),
        }
        .say(),
    }
}

pub(super) fn mix_error(error: &MixError, printer: &Printer) -> String {
    match error {
        MixError::Amount { given } => keys::MixAmount { given: printer.number(*given, 3) }.say(),
        MixError::TooWeak { given, allowed } => keys::MixTooWeak {
            allowed: printer.number(allowed * 100.0, 1),
            given: printer.number(given * 100.0, 1),
        }
        .say(),
    }
}

pub(super) fn table_error(error: &TableError, printer: &Printer) -> String {
    match error {
        TableError::Cell { line, reason } => {
            keys::TableCell { line: line.to_string(), reason: figure_text_error(reason, printer) }
                .say()
        }
        TableError::Width { line, found, wanted } => keys::TableWidth {
            line: line.to_string(),
            found: found.to_string(),
            wanted: wanted.to_string(),
        }
        .say(),
        TableError::TooLong => keys::TableTooLong { most_rows: SMALL_TABLE_ROWS.to_string() }.say(),
        TableError::Word { line, word, units } => {
            keys::TableWord { line: line.to_string(), word, units }.say()
        }
        TableError::NoVoltage => keys::TABLE_NO_VOLTAGE.say().to_owned(),
        TableError::NoHeader => keys::TABLE_NO_HEADER.say().to_owned(),
        TableError::DeadTimes(error) => dead_time_error(error, printer),
        TableError::Pump(error) => pump_table_error(error, printer),
        TableError::Outside(error) => outside_table(error, printer),
    }
}

pub(super) fn curve_table_error(error: &CurveTableError) -> String {
    match error {
        CurveTableError::TooLong { given } => keys::CurveTableTooLong {
            given: (given.div_ceil(1024)).to_string(),
            largest: (LONGEST_TABLE / 1024).to_string(),
        }
        .say(),
        CurveTableError::TooManyRows { given } => keys::CurveTableTooManyRows {
            given: given.to_string(),
            most_rows: MOST_ROWS.to_string(),
        }
        .say(),
        CurveTableError::TooManyColumns { given } => keys::CurveTableTooManyColumns {
            given: given.to_string(),
            most_columns: MOST_COLUMNS.to_string(),
        }
        .say(),
        CurveTableError::NoRows => keys::CURVE_TABLE_NO_ROWS.say().to_owned(),
        CurveTableError::NoSuchColumn { given, columns } => {
            keys::CurveTableNoSuchColumn { given: given.to_string(), columns: columns.to_string() }
                .say()
        }
        CurveTableError::ColumnChosenTwice { given } => {
            keys::CurveTableColumnChosenTwice { given: given.to_string() }.say()
        }
    }
}
