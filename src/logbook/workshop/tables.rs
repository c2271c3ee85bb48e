//! Small tables that people type: dead time over voltage, and a pump's flow over
//! pressure and voltage.

use thiserror::Error;

use crate::hardware::{
    DeadTimeError, DeadTimes, OutsideTable, PumpCurve, PumpTable, PumpTableError,
};
use crate::quantity::notation::UnitSystem;
use crate::quantity::notation::workshop::{PRESSURE, PUMP_FLOW, TIME, VOLTAGE};
use crate::quantity::{ElectricPotential, Time};

/// More rows than any published table has.
const MOST_ROWS: usize = 60;

/// Why a text is no table.
#[derive(Clone, Debug, Error, PartialEq)]
pub(super) enum TableError {
    /// A cell cannot be read.
    #[error("line {line}: {reason}")]
    Cell { line: usize, reason: String },
    /// A row has another number of cells than the others.
    #[error("line {line} has {found} numbers; {wanted} are needed there")]
    Width { line: usize, found: usize, wanted: usize },
    /// There are too many rows.
    #[error("these are more than {MOST_ROWS} lines: leave some out")]
    TooLong,
    /// The table has several columns, and no voltage says which holds.
    #[error("the table is for several voltages: give the voltage at the part")]
    NoVoltage,
    /// The table has one column and does not say for which voltage.
    #[error(
        "begin with a line of voltages, such as 12 13.5, or give only pressure and flow in each line"
    )]
    NoHeader,
    /// The values make no table.
    #[error(transparent)]
    DeadTimes(#[from] DeadTimeError),
    /// The values make no table.
    #[error(transparent)]
    Pump(#[from] PumpTableError),
    /// The voltage is not in the table.
    #[error(transparent)]
    Outside(#[from] OutsideTable),
}

/// The cells of each line that has any, with the line's number.
fn rows(text: &str) -> Result<Vec<(usize, Vec<&str>)>, TableError> {
    let cells = |line| -> Vec<&str> {
        let separators = |c: char| c.is_whitespace() || matches!(c, ';' | '|' | ':' | '=');
        str::split(line, separators).filter(|cell| !cell.is_empty()).collect()
    };
    let lines = text.lines().enumerate().map(|(at, line)| (at + 1, cells(line)));
    let rows: Vec<_> = lines.filter(|(_, cells)| !cells.is_empty()).collect();
    if rows.len() > MOST_ROWS { Err(TableError::TooLong) } else { Ok(rows) }
}

fn cell<T, E: std::fmt::Display>(line: usize, read: Result<T, E>) -> Result<T, TableError> {
    read.map_err(|error| TableError::Cell { line, reason: error.to_string() })
}

/// The dead time at a voltage: `text` is one time, or lines of voltage and time.
pub(super) fn dead_time(
    text: &str,
    voltage: Option<ElectricPotential>,
    system: UnitSystem,
) -> Result<Time, TableError> {
    let rows = rows(text)?;
    if let [(line, cells)] = &rows[..]
        && let [one] | [one, "ms" | "µs" | "us"] = &cells[..]
    {
        let whole = if cells.len() == 1 { one } else { text.trim() };
        return cell(*line, TIME.parse(whole, system));
    }
    let pairs = rows.into_iter().map(|(line, cells)| {
        let [volts, time] = cells[..] else {
            return Err(TableError::Width { line, found: cells.len(), wanted: 2 });
        };
        Ok((cell(line, VOLTAGE.parse(volts, system))?, cell(line, TIME.parse(time, system))?))
    });
    let table = DeadTimes::new(pairs.collect::<Result<_, _>>()?)?;
    Ok(table.at(voltage.ok_or(TableError::NoVoltage)?)?)
}

/// A pump's flow over pressure at a voltage: `text` has a line of voltages, then
/// lines of a pressure and a flow for each voltage; or, for one voltage, only lines
/// of pressure and flow.
pub(super) fn pump_curve(
    text: &str,
    voltage: Option<ElectricPotential>,
    system: UnitSystem,
) -> Result<PumpCurve, TableError> {
    let mut rows = rows(text)?;
    let width = rows.get(1).or(rows.first()).map_or(0, |(_, cells)| cells.len());
    let has_header = rows.len() > 1 && rows[0].1.len() + 1 == width;
    let voltages = if has_header {
        let (line, cells) = rows.remove(0);
        let volts = cells.into_iter().map(|it| cell(line, VOLTAGE.parse(it, system)));
        volts.collect::<Result<Vec<_>, _>>()?
    } else if width == 2 {
        // The voltage of such a table is the one at the pump, whatever it is.
        vec![voltage.unwrap_or_default()]
    } else {
        return Err(TableError::NoHeader);
    };
    let voltage = match (voltage, &voltages[..]) {
        (Some(voltage), _) => voltage,
        (None, [only]) => *only,
        (None, _) => return Err(TableError::NoVoltage),
    };
    let mut pressures = Vec::new();
    let mut flows = vec![Vec::new(); voltages.len()];
    for (line, cells) in rows {
        if cells.len() != voltages.len() + 1 {
            let (found, wanted) = (cells.len(), voltages.len() + 1);
            return Err(TableError::Width { line, found, wanted });
        }
        pressures.push(cell(line, PRESSURE.parse(cells[0], system))?);
        for (flows, text) in flows.iter_mut().zip(&cells[1..]) {
            flows.push(cell(line, PUMP_FLOW.parse(text, system))?);
        }
    }
    Ok(PumpTable::new(pressures, &voltages, &flows)?.at(voltage)?)
}
