//! Small tables that people type: dead time over voltage, and a pump's flow over
//! pressure and voltage.

use crate::answers::problem::TableError;
use crate::hardware::{DeadTimes, PumpCurve, PumpTable};
use crate::quantity::notation::quantities::{PRESSURE, PUMP_FLOW, TIME, VOLTAGE};
use crate::quantity::notation::{FigureTextError, Units};
use crate::quantity::{ElectricPotential, Time};

/// More rows than any published table has.
pub(crate) const SMALL_TABLE_ROWS: usize = 60;

/// The cells of each line that has any, with the line's number. Words at the head
/// of the table may only say what is taken anyway.
fn rows<'a>(text: &'a str, units: &[&str]) -> Result<Vec<(usize, Vec<&'a str>)>, TableError> {
    let cells = |line| -> Vec<&str> {
        let separators = |c: char| c.is_whitespace() || matches!(c, ';' | '|' | ':' | '=');
        str::split(line, separators).filter(|cell| !cell.is_empty()).collect()
    };
    let lines = text.lines().enumerate().map(|(at, line)| (at + 1, cells(line)));
    let mut rows: Vec<_> = lines.filter(|(_, cells)| !cells.is_empty()).collect();
    let is_word = |cell: &&str| !cell.contains(|c: char| c.is_ascii_digit());
    while let Some((line, cells)) = rows.first_mut()
        && cells.first().is_some_and(is_word)
    {
        let word = cells.remove(0);
        if !units.iter().any(|unit| unit.eq_ignore_ascii_case(word)) {
            let (line, word, units) = (*line, word.to_owned(), units.join(", "));
            return Err(TableError::Word { line, word, units });
        }
        if cells.is_empty() {
            rows.remove(0);
        }
    }
    if rows.len() > SMALL_TABLE_ROWS { Err(TableError::TooLong) } else { Ok(rows) }
}

fn cell<T>(line: usize, read: Result<T, FigureTextError>) -> Result<T, TableError> {
    read.map_err(|error| TableError::Cell { line, reason: error })
}

/// The dead time at a voltage: `text` is one time, or lines of voltage and time.
pub(super) fn dead_time(
    text: &str,
    voltage: Option<ElectricPotential>,
    units: Units,
) -> Result<Time, TableError> {
    if let Ok(time) = TIME.parse(text, units) {
        return Ok(time);
    }
    let rows = rows(text, &["V", "ms"])?;
    if let [(line, cells)] = &rows[..]
        && cells.len() < 2
    {
        return cell(*line, TIME.parse(text, units));
    }
    let pairs = rows.into_iter().map(|(line, cells)| {
        let [volts, time] = cells[..] else {
            return Err(TableError::Width { line, found: cells.len(), wanted: 2 });
        };
        Ok((cell(line, VOLTAGE.parse(volts, units))?, cell(line, TIME.parse(time, units))?))
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
    units: Units,
) -> Result<PumpCurve, TableError> {
    let (pressure, flow) = (PRESSURE.own(units).symbol(), PUMP_FLOW.own(units).symbol());
    let mut rows = rows(text, &["V", pressure, flow])?;
    let width = rows.get(1).or(rows.first()).map_or(0, |(_, cells)| cells.len());
    let has_header = rows.len() > 1 && rows[0].1.len() + 1 == width;
    let voltages = if has_header {
        let (line, cells) = rows.remove(0);
        let volts = cells.into_iter().map(|it| cell(line, VOLTAGE.parse(it, units)));
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
        pressures.push(cell(line, PRESSURE.parse(cells[0], units))?);
        for (flows, text) in flows.iter_mut().zip(&cells[1..]) {
            flows.push(cell(line, PUMP_FLOW.parse(text, units))?);
        }
    }
    Ok(PumpTable::new(pressures, &voltages, &flows)?.at(voltage)?)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Pressure, VolumeRate};
    use uom::si::electric_potential::volt;
    use uom::si::pressure::bar;
    use uom::si::time::millisecond;
    use uom::si::volume_rate::liter_per_minute;

    fn volts(value: f64) -> ElectricPotential {
        ElectricPotential::new::<volt>(value)
    }

    fn milliseconds(text: &str, voltage: Option<f64>) -> Result<f64, TableError> {
        let voltage = voltage.map(volts);
        dead_time(text, voltage, Units::METRIC).map(|it| it.get::<millisecond>())
    }

    #[test]
    fn a_dead_time_is_one_figure_or_a_table() {
        for (text, voltage, expected) in [
            ("0.95", None, 0.95),
            ("0,95 ms", Some(13.0), 0.95),
            ("950 µs", None, 0.95),
            ("10 1.8\n12 1.2\n14 0.9", Some(13.0), 1.05),
            ("V; ms\n10;1,8\n12;1,2\n14;0,9", Some(12.0), 1.2),
            ("12V 1.2ms\n14V 900µs", Some(14.0), 0.9),
        ] {
            let read = milliseconds(text, voltage).unwrap();
            approx::assert_relative_eq!(read, expected, max_relative = 1e-12);
        }
        assert_eq!(milliseconds("10 1.8\n12 1.2", None), Err(TableError::NoVoltage));
        // Beyond the table there is no figure.
        for voltage in [9.9, 14.1] {
            let read = milliseconds("10 1.8\n14 0.9", Some(voltage));
            assert!(matches!(read, Err(TableError::Outside(_))), "{read:?}");
        }
        for text in ["", "quick", "10 1.8 3", "10 1.8\n12", "14 0.9\n10 1.8", "10 s\n12 1.2"] {
            assert!(milliseconds(text, Some(12.0)).is_err(), "{text:?}");
        }
    }

    fn litres_per_hour(text: &str, pressure: f64, voltage: Option<f64>) -> Result<f64, TableError> {
        let curve = pump_curve(text, voltage.map(volts), Units::METRIC)?;
        let flow: VolumeRate = curve.flow(Pressure::new::<bar>(pressure))?;
        Ok(flow.get::<liter_per_minute>() * 60.0)
    }

    /// Figures of an invented pump; between them by hand: straight lines.
    const TABLE: &str = "12 13.5\n3 285 340\n4 255 310\n5 225 280\n6 195 250\n7 165 220";

    #[test]
    fn a_pump_is_a_table_over_voltage_or_a_curve() {
        for (text, pressure, voltage, expected) in [
            (TABLE, 6.15, Some(13.5), 245.5),
            (TABLE, 6.15, Some(12.8), 219.833_333),
            ("bar L/h\nV 12 13.5\n3 285 340\n4 255 310", 3.5, Some(12.0), 270.0),
            ("3 285\n4 255", 3.5, None, 270.0),
            ("3bar; 285L/h\n400kPa; 255", 3.5, Some(12.0), 270.0),
        ] {
            let read = litres_per_hour(text, pressure, voltage).unwrap();
            approx::assert_relative_eq!(read, expected, max_relative = 1e-6);
        }
        assert_eq!(litres_per_hour(TABLE, 5.0, None), Err(TableError::NoVoltage));
        for (pressure, voltage) in [(7.5, 13.0), (2.9, 13.0), (5.0, 14.0), (5.0, 11.0)] {
            let read = litres_per_hour(TABLE, pressure, Some(voltage));
            assert!(matches!(read, Err(TableError::Outside(_))), "{read:?}");
        }
    }

    #[test]
    fn what_a_table_does_not_say_is_asked() {
        let read = |text| pump_curve(text, Some(volts(12.0)), Units::METRIC).unwrap_err();
        assert_eq!(read("3 285 340\n4 255 310"), TableError::NoHeader);
        let short = TableError::Width { line: 3, found: 2, wanted: 3 };
        assert_eq!(read("12 13.5\n3 285 340\n4 255"), short);
        let psi = read("psi 12 13.5\n40 285 340");
        assert!(psi.to_string().contains("psi"), "{psi}");
        assert!(matches!(read("12 13\n3 x 340\n4 255 300"), TableError::Cell { line: 2, .. }));
        assert!(matches!(read("3 255\n4 285"), TableError::Pump(_)));
        assert_eq!(read(&"3 255\n".repeat(61)), TableError::TooLong);
    }
}
