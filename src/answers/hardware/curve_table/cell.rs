//! Cells to quantities.

use super::header::Meaning;
use super::layout::{Layout, Line};
use super::{Chosen, CurveRow, CurveValue, ValueIs};
use crate::answers::problem::BadCell;
use crate::quantity::notation::{
    DecimalMark, FigureTextError, InSi, NumberError, QuantityField, Unit, Units, quantities,
};

/// Longer texts are cut when they are quoted.
const QUOTED: usize = 40;

/// What stands in a cell where nothing was recorded.
const NOTHING: [&str; 6] = ["", "-", "–", "n/a", "na", "nan"];

/// How the cells of a table are read.
pub(super) struct Cells {
    decimal: Option<DecimalMark>,
    units: Units,
}

impl Cells {
    pub(super) fn new(layout: &Layout, units: Units) -> Self {
        let cells = layout.rows.iter().flat_map(|row| &row.cells);
        let (mut points, mut commas) = (0, 0);
        for cell in cells {
            match decimal_mark(cell) {
                Some(DecimalMark::Point) => points += 1,
                Some(DecimalMark::Comma) => commas += 1,
                None => {}
            }
        }
        // Where both occur, each number speaks for itself alone.
        let decimal = match (points, commas) {
            (1.., 0) => Some(DecimalMark::Point),
            (0, 1..) => Some(DecimalMark::Comma),
            _ => None,
        };
        Self { decimal, units }
    }

    /// What stands before decimals in all of the table.
    pub(super) fn decimal(&self) -> Option<DecimalMark> {
        self.decimal
    }

    /// A row, or why not.
    pub(super) fn row(&self, line: &Line, chosen: &Chosen) -> Result<CurveRow, BadCell> {
        let cell = |at: usize| line.cells.get(at).map_or("", String::as_str);
        let (at, unit) = chosen.speed;
        let speed =
            self.quantity(&quantities::ENGINE_SPEED, unit, cell(at), Meaning::EngineSpeed)?;
        let (at, is) = chosen.value;
        let value = match is {
            ValueIs::Torque(unit) => self
                .quantity(&quantities::TORQUE, unit, cell(at), Meaning::Torque)
                .map(CurveValue::Torque)?,
            ValueIs::Power(unit) => self
                .quantity(&quantities::POWER, unit, cell(at), Meaning::Power)
                .map(CurveValue::Power)?,
        };
        let boost = match chosen.boost {
            Some((at, unit)) if !NOTHING.contains(&cell(at).to_lowercase().as_str()) => {
                Some(self.quantity(&quantities::BOOST, unit, cell(at), Meaning::Boost)?)
            }
            _ => None,
        };
        Ok(CurveRow { line: line.number, speed, value, boost })
    }

    /// The quantity in a cell, or why there is none.
    fn quantity<Q: InSi>(
        &self,
        field: &QuantityField<Q>,
        unit: Unit<Q>,
        cell: &str,
        meaning: Meaning,
    ) -> Result<Q, BadCell> {
        let error = match field.parse_in(unit, cell, self.units) {
            Ok(quantity) => return Ok(quantity),
            Err(error) => error,
        };
        // The rest of the table may tell what this number alone does not. A number with a
        // unit of its own is asked about.
        if let FigureTextError::Number(NumberError::Ambiguous { decimal, grouped, .. }) = &error
            && let Some(mark) = self.decimal
            && super::layout::is_bare_number(cell)
        {
            let point = if cell.contains('.') { DecimalMark::Point } else { DecimalMark::Comma };
            return Ok(unit.quantity(if mark == point { *decimal } else { *grouped }));
        }
        Err(BadCell { column: meaning.name(), given: shortened(cell), error })
    }
}

/// A text short enough to be quoted.
pub(super) fn shortened(text: &str) -> String {
    let text = text.trim();
    match text.char_indices().nth(QUOTED) {
        Some((end, _)) => format!("{}…", text.get(..end).unwrap_or_default()),
        None => text.to_owned(),
    }
}

/// What stands before the decimals of a number, if its shape leaves one reading.
fn decimal_mark(cell: &str) -> Option<DecimalMark> {
    if !super::layout::is_bare_number(cell) {
        return None;
    }
    let (before, after) = cell.rsplit_once(['.', ','])?;
    let point = cell.get(before.len()..)?.starts_with('.');
    let (this, other) = if point {
        (DecimalMark::Point, DecimalMark::Comma)
    } else {
        (DecimalMark::Comma, DecimalMark::Point)
    };
    if before.contains(if point { '.' } else { ',' }) {
        // The same mark twice parts thousands.
        return Some(other);
    }
    let whole = before.trim_start_matches(['-', '\u{2212}']);
    let grouped = after.len() == 3 && (1..=3).contains(&whole.len()) && !whole.starts_with('0');
    // With the other mark before it, this one is the decimal one.
    (!grouped || before.contains(['.', ','])).then_some(this)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_shape_of_a_number_tells_its_mark() {
        use DecimalMark::{Comma, Point};
        for (cell, mark) in [
            ("350.5", Some(Point)),
            ("350,5", Some(Comma)),
            ("1.234,5", Some(Comma)),
            ("1,234.567", Some(Point)),
            ("1.234.567", Some(Comma)),
            ("0.125", Some(Point)),
            ("1234.567", Some(Point)),
            ("1.234", None),
            ("350", None),
            ("n.a.", None),
        ] {
            assert_eq!(decimal_mark(cell), mark, "{cell}");
        }
    }

    #[test]
    fn long_texts_are_cut_between_letters() {
        assert_eq!(shortened(" ab "), "ab");
        assert_eq!(shortened(&"é".repeat(50)), format!("{}…", "é".repeat(40)));
    }
}
