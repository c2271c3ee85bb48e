//! A table of a dynamometer run or of figures typed by hand: text to columns.
//!
//! What separates the cells, what stands before decimals, which line is the header
//! and what each column holds is found out where it can be, shown so that a person
//! can see it, and open to be chosen otherwise. A row that cannot be read is named,
//! never dropped in silence.
//!
//! ```
//! use fillwright::answers::hardware::curve_table::{ColumnChoice, CurveTable};
//! use fillwright::quantity::notation::Units;
//! let text = "rpm;Torque (Nm)\n2000;350,5\n2500;n/a\n3000;402,0";
//! let table = CurveTable::read(text, &ColumnChoice::default(), Units::METRIC)?;
//! assert_eq!(table.rows.len(), 2);
//! assert_eq!((table.bad[0].line, &*table.bad[0].cell.given), (3, "n/a"));
//! # Ok::<(), fillwright::answers::problem::CurveTableError>(())
//! ```

mod cell;
mod header;
mod layout;
mod split;
#[cfg(test)]
mod tests;

use uom::si::angular_velocity::radian_per_second;
use uom::si::power::watt;
use uom::si::torque::newton_meter;

use crate::answers::problem::{BadRow, CurveTableError};
use crate::document::MeasuredAt;
use crate::quantity::notation::{DecimalMark, Unit, Units, quantities};
use crate::quantity::{AngularVelocity, GaugePressure, Power, Torque};
use cell::Cells;
use header::{Named, Understood};
use layout::Layout;

pub use header::Meaning;
pub use split::Separator;

/// The longest text that is read, in bytes.
pub const LONGEST_TABLE: usize = 128 * 1024;

/// The most rows that are read.
pub const MOST_ROWS: usize = 5000;

/// The most columns that are read.
pub const MOST_COLUMNS: usize = 100;

/// What the column of values holds, and in which unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ValueIs {
    /// Torque.
    Torque(Unit<Torque>),
    /// Power.
    Power(Unit<Power>),
}

impl ValueIs {
    /// The symbol of its unit.
    pub fn symbol(self) -> &'static str {
        match self {
            Self::Torque(unit) => unit.symbol(),
            Self::Power(unit) => unit.symbol(),
        }
    }

    fn meaning(self) -> Meaning {
        match self {
            Self::Torque(_) => Meaning::Torque,
            Self::Power(_) => Meaning::Power,
        }
    }
}

/// What a person chose of the columns, counted from 0; the rest is found out.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct ColumnChoice {
    /// The column of engine speed.
    pub speed: Option<usize>,
    /// The column of torque or power.
    pub value: Option<usize>,
    /// The column of boost.
    pub boost: Option<usize>,
    /// What the column of values holds.
    pub value_is: Option<ValueIs>,
}

/// A column as it was understood, for a preview.
#[derive(Clone, Debug, PartialEq)]
pub struct Column {
    /// Its header as it stands in the text, its unit's row included; empty where
    /// there is none.
    pub header: String,
    /// What it holds.
    pub meaning: Meaning,
    /// The symbol of its unit, where it has one that is known here.
    pub unit: Option<&'static str>,
    /// Whether the table names no such unit: it was chosen, or is the system's own.
    pub unit_is_assumed: bool,
    /// Where it was measured, if the header tells.
    pub place: Option<MeasuredAt>,
    /// Whether its values are in [`CurveTable::rows`].
    pub is_read: bool,
}

/// Torque or power, at a place that the table alone does not tell.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CurveValue {
    /// A torque.
    Torque(Torque),
    /// A power.
    Power(Power),
}

impl CurveValue {
    /// The torque at an engine speed: power over speed.
    pub fn torque(self, speed: AngularVelocity) -> Torque {
        match self {
            Self::Torque(torque) => torque,
            Self::Power(power) => {
                Torque::new::<newton_meter>(power.get::<watt>() / speed.get::<radian_per_second>())
            }
        }
    }

    /// The power at an engine speed: torque times speed.
    pub fn power(self, speed: AngularVelocity) -> Power {
        match self {
            Self::Power(power) => power,
            Self::Torque(torque) => {
                Power::new::<watt>(torque.get::<newton_meter>() * speed.get::<radian_per_second>())
            }
        }
    }
}

/// A row that was read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CurveRow {
    /// Its line in the text, counted from 1.
    pub line: usize,
    /// Engine speed.
    pub speed: AngularVelocity,
    /// Torque or power.
    pub value: CurveValue,
    /// Boost, where there is one.
    pub boost: Option<GaugePressure>,
}

/// A table as it was understood.
#[derive(Clone, Debug, PartialEq)]
pub struct CurveTable {
    /// What separates the cells.
    pub separator: Separator,
    /// What stands before decimals, where any number tells.
    pub decimal: Option<DecimalMark>,
    /// The columns.
    pub columns: Vec<Column>,
    /// The column of engine speed; `None` where the table does not tell and
    /// [`ColumnChoice::speed`] has to.
    pub speed: Option<usize>,
    /// The column of values and what it holds; `None` where the table does not tell
    /// and [`ColumnChoice::value_is`] has to.
    pub value: Option<(usize, ValueIs)>,
    /// The rows that were read, in the order of the text; none as long as the columns
    /// of speed and value are not both known.
    pub rows: Vec<CurveRow>,
    /// The rows that cannot be read.
    pub bad: Vec<BadRow>,
    /// The lines before the table that are neither header nor row: their numbers.
    pub unread: Vec<usize>,
}

impl CurveTable {
    /// Where the torque or the power was measured, as far as a header tells.
    pub fn measured_at(&self) -> Option<MeasuredAt> {
        self.columns.iter().filter(|it| it.is_read).find_map(|it| it.place)
    }

    /// The table in a text. Where a column names no unit, it has the system's own.
    ///
    /// Of torque and power the table's power is taken unless the choice says
    /// otherwise: gears change torque, and a table may mean the axle's.
    ///
    /// # Errors
    /// When the text is too large, has no row, or a chosen column is not there.
    pub fn read(text: &str, choice: &ColumnChoice, units: Units) -> Result<Self, CurveTableError> {
        if text.len() > LONGEST_TABLE {
            return Err(CurveTableError::TooLong { given: text.len() });
        }
        let layout = Layout::of(text, units)?;
        let found = Found::of(choice, &layout, units)?;
        let cells = Cells::new(&layout, units);
        let (mut rows, mut bad) = (Vec::new(), Vec::new());
        if let Some(chosen) = found.chosen() {
            for line in &layout.rows {
                match cells.row(line, &chosen) {
                    Ok(row) => rows.push(row),
                    Err(cell) => bad.push(BadRow {
                        line: line.number,
                        text: cell::shortened(&line.text),
                        cell,
                    }),
                }
            }
        }
        Ok(Self {
            separator: layout.separator,
            decimal: cells.decimal(),
            columns: found.columns(&layout, units),
            speed: found.speed.map(|(at, _)| at),
            value: found.value,
            rows,
            bad,
            unread: layout.unread,
        })
    }
}

/// The columns that are read, all of them known.
struct Chosen {
    speed: (usize, Unit<AngularVelocity>),
    value: (usize, ValueIs),
    boost: Option<(usize, Unit<GaugePressure>)>,
}

/// The columns that were chosen or found out.
struct Found {
    speed: Option<(usize, Unit<AngularVelocity>)>,
    value: Option<(usize, ValueIs)>,
    boost: Option<(usize, Unit<GaugePressure>)>,
}

impl Found {
    fn of(choice: &ColumnChoice, layout: &Layout, units: Units) -> Result<Self, CurveTableError> {
        let columns: &[Understood] = &layout.understood;
        let chosen = [choice.speed, choice.value, choice.boost];
        for (index, given) in chosen.iter().enumerate() {
            let Some(given) = *given else { continue };
            if given >= columns.len() {
                let columns = columns.len();
                return Err(CurveTableError::NoSuchColumn { given: given + 1, columns });
            }
            if chosen.iter().skip(index + 1).any(|other| *other == Some(given)) {
                return Err(CurveTableError::ColumnChosenTwice { given: given + 1 });
            }
        }
        // What was chosen for one thing is not found out to be another.
        let free = |at: usize| !chosen.contains(&Some(at));
        let first = |meaning: Meaning| {
            let mut all = columns.iter().enumerate();
            all.find(|(at, it)| it.meaning == meaning && free(*at)).map(|(at, _)| at)
        };
        // Without a header, speed comes first and the value second. A header that says
        // something else is asked about.
        let nameless = |taken: Option<usize>| {
            let mut all = layout.headers.iter().enumerate();
            all.find(|(at, header)| header.is_empty() && free(*at) && taken != Some(*at))
                .map(|(at, _)| at)
        };
        let speed = choice.speed.or_else(|| first(Meaning::EngineSpeed)).or_else(|| nameless(None));
        let value = choice.value.or_else(|| {
            let known = match choice.value_is {
                Some(is) => first(is.meaning()),
                None => first(Meaning::Power).or_else(|| first(Meaning::Torque)),
            };
            known.or_else(|| nameless(speed))
        });
        let boost = choice.boost.or_else(|| first(Meaning::Boost));
        let unit = |at: usize| columns.get(at).and_then(|it| it.unit);
        let by_header = |at: usize| match (columns.get(at)?.meaning, unit(at)) {
            (_, Some(Named::Torque(unit))) => Some(ValueIs::Torque(unit)),
            (_, Some(Named::Power(unit))) => Some(ValueIs::Power(unit)),
            (Meaning::Torque, _) => Some(ValueIs::Torque(quantities::TORQUE.own(units))),
            (Meaning::Power, _) => Some(ValueIs::Power(quantities::POWER.own(units))),
            _ => None,
        };
        Ok(Self {
            speed: speed.map(|at| match unit(at) {
                Some(Named::Speed(unit)) => (at, unit),
                _ => (at, quantities::ENGINE_SPEED.own(units)),
            }),
            value: value.and_then(|at| Some((at, choice.value_is.or_else(|| by_header(at))?))),
            boost: boost.map(|at| match unit(at) {
                Some(Named::Boost(unit)) => (at, unit),
                _ => (at, quantities::BOOST.own(units)),
            }),
        })
    }

    fn chosen(&self) -> Option<Chosen> {
        Some(Chosen { speed: self.speed?, value: self.value?, boost: self.boost })
    }

    /// The columns as they are read.
    fn columns(&self, layout: &Layout, units: Units) -> Vec<Column> {
        let is_read = self.chosen().is_some();
        let columns = layout.understood.iter().zip(&layout.headers).enumerate();
        columns
            .map(|(at, (understood, header))| {
                let named = understood.unit.map(Named::symbol);
                let read = if let Some((_, unit)) = self.speed.filter(|it| it.0 == at) {
                    Some((Meaning::EngineSpeed, unit.symbol()))
                } else if let Some((_, is)) = self.value.filter(|it| it.0 == at) {
                    Some((is.meaning(), is.symbol()))
                } else {
                    let boost = self.boost.filter(|it| it.0 == at);
                    boost.map(|(_, unit)| (Meaning::Boost, unit.symbol()))
                };
                let meaning = read.map_or(understood.meaning, |(meaning, _)| meaning);
                let unit = read.map(|(_, unit)| unit).or(named).or_else(|| own(meaning, units));
                Column {
                    header: header.clone(),
                    meaning,
                    unit,
                    unit_is_assumed: unit.is_some() && unit != named,
                    place: understood.place,
                    is_read: is_read && read.is_some(),
                }
            })
            .collect()
    }
}

/// The symbol of a system's own unit.
fn own(meaning: Meaning, units: Units) -> Option<&'static str> {
    match meaning {
        Meaning::EngineSpeed => Some(quantities::ENGINE_SPEED.own(units).symbol()),
        Meaning::Torque => Some(quantities::TORQUE.own(units).symbol()),
        Meaning::Power => Some(quantities::POWER.own(units).symbol()),
        Meaning::Boost => Some(quantities::BOOST.own(units).symbol()),
        Meaning::Unknown => None,
    }
}
