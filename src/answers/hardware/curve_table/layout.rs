//! Which line of a text is the header, and which are rows.

use std::collections::BTreeMap;

use super::header::{Meaning, Named, Understood, named, understood};
use super::split::{Separator, lines};
use super::{MOST_COLUMNS, MOST_ROWS};
use crate::answers::problem::CurveTableError;
use crate::quantity::notation::{NumberError, Units, parse_number};

/// A row of cells.
pub(super) struct Line {
    pub(super) number: usize,
    pub(super) text: String,
    pub(super) cells: Vec<String>,
}

/// A text cut into header and rows.
pub(super) struct Layout {
    pub(super) separator: Separator,
    /// One for each column.
    pub(super) headers: Vec<String>,
    pub(super) understood: Vec<Understood>,
    pub(super) rows: Vec<Line>,
    /// The numbers of the lines that are neither.
    pub(super) unread: Vec<usize>,
}

impl Layout {
    pub(super) fn of(text: &str, units: Units) -> Result<Self, CurveTableError> {
        let all = lines(text);
        let mut lines: Vec<_> = all.iter().map(|(line, text)| (*line, text.as_str())).collect();
        let mut unread = Vec::new();
        let announced =
            lines.first().and_then(|(line, text)| Some((*line, Separator::announced(text)?)));
        if let Some((line, _)) = announced {
            unread.push(line);
            lines.remove(0);
        }
        let separator = announced.map_or_else(|| Separator::of(&lines), |(_, separator)| separator);
        let cells = |text: &str| match separator {
            Separator::Blank => with_their_units(&separator.cells(text), units),
            _ => separator.cells(text),
        };
        let numbers = |cells: &[String]| cells.iter().filter(|cell| is_number(cell)).count();
        let all: Vec<_> = lines
            .iter()
            .map(|(line, text)| Line {
                number: *line,
                text: (*text).to_owned(),
                cells: cells(text),
            })
            .collect();
        let numeric = |line: &&Line| numbers(&line.cells) >= 2;
        // A title may hold two numbers, a date perhaps, but not in as many cells.
        let width = usual(all.iter().filter(numeric).map(|line| line.cells.len()));
        let width = width.ok_or(CurveTableError::NoRows)?;
        let first =
            all.iter().position(|line| numeric(&line) && line.cells.len() == width).unwrap_or(0);
        // A line above that begins with a bare number is a row that went wrong.
        let (before, mut rows): (Vec<_>, Vec<_>) =
            all.into_iter().enumerate().partition(|(index, line)| {
                *index < first && !line.cells.first().is_some_and(|cell| is_bare_number(cell))
            });
        if rows.len() > MOST_ROWS {
            return Err(CurveTableError::TooManyRows { given: rows.len() });
        }
        let rows: Vec<_> = rows.drain(..).map(|(_, line)| line).collect();
        let before: Vec<_> = before.into_iter().map(|(_, line)| line).collect();
        let width = rows.iter().map(|row| row.cells.len()).max().unwrap_or(0);
        let (headers, used) = headers(&before, separator, width, units);
        unread.extend(before.iter().map(|line| line.number).filter(|line| !used.contains(line)));
        let columns = width.max(headers.len());
        if columns > MOST_COLUMNS {
            return Err(CurveTableError::TooManyColumns { given: columns });
        }
        let headers: Vec<_> =
            (0..columns).map(|at| headers.get(at).cloned().unwrap_or_default()).collect();
        let understood = headers.iter().map(|header| understood(header, units)).collect();
        Ok(Self { separator, headers, understood, rows, unread })
    }
}

/// The number that occurs most, the largest of several.
fn usual(numbers: impl Iterator<Item = usize>) -> Option<usize> {
    let mut counts = BTreeMap::new();
    for number in numbers {
        *counts.entry(number).or_insert(0) += 1;
    }
    counts.into_iter().max_by_key(|(_, count)| *count).map(|(number, _)| number)
}

/// The headers among the lines above the rows, and the numbers of their lines.
fn headers(
    before: &[Line],
    separator: Separator,
    width: usize,
    units: Units,
) -> (Vec<String>, Vec<usize>) {
    let cells = |line: &Line| match separator {
        Separator::Blank => by_blanks(&line.text, width),
        _ => line.cells.clone(),
    };
    let score = |cells: &[String]| {
        let meant = cells.iter().filter(|cell| understood(cell, units).meaning != Meaning::Unknown);
        meant.count()
    };
    // A row of units below a row of names.
    if let [.., names, symbols] = before {
        let (name, unit) = (cells(names), cells(symbols));
        let are_units = unit.iter().any(|cell| named(cell, units).is_some());
        let bare = name.iter().all(|cell| understood(cell, units).unit.is_none_or(is_speed));
        if are_units && bare && name.len() > 1 && score(&name) > 0 {
            let both = (0..name.len().max(unit.len())).map(|at| {
                let part = |cells: &[String]| cells.get(at).cloned().unwrap_or_default();
                let (name, unit) = (part(&name), part(&unit));
                format!("{name} {unit}").trim().to_owned()
            });
            return (both.collect(), vec![names.number, symbols.number]);
        }
    }
    // The line that says most; of several the nearest to the rows.
    let best =
        before.iter().map(|line| (score(&cells(line)), line)).max_by_key(|(score, _)| *score);
    match best {
        Some((1.., line)) => (cells(line), vec![line.number]),
        _ => match before.last() {
            Some(line) if cells(line).len() == width => (cells(line), vec![line.number]),
            _ => (Vec::new(), Vec::new()),
        },
    }
}

/// "RPM" is the name of a column and a unit at once.
fn is_speed(unit: Named) -> bool {
    matches!(unit, Named::Speed(_))
}

/// The headers of a line that blanks part: names of several words are joined where
/// brackets, wider gaps or their meaning tell.
fn by_blanks(text: &str, width: usize) -> Vec<String> {
    let text = text.trim_start_matches(['#', ' ']);
    let wide: Vec<_> = text
        .split("  ")
        .map(str::trim)
        .filter(|cell| !cell.is_empty())
        .map(str::to_owned)
        .collect();
    if wide.len() == width {
        return wide;
    }
    let mut joined: Vec<String> = Vec::new();
    for word in text.split_whitespace() {
        let before = joined.last().map(|before| before.to_lowercase());
        let opens = word.starts_with(['(', '[']);
        let is_open = before
            .as_deref()
            .is_some_and(|before| before.contains(['(', '[']) && !before.ends_with([')', ']']));
        let is_second = matches!(
            (before.as_deref(), word.to_lowercase().as_str()),
            (Some("engine"), "speed" | "torque" | "power")
                | (Some("wheel" | "crank" | "flywheel"), "power" | "torque")
                | (Some("boost" | "charge"), "pressure")
        );
        match joined.last_mut() {
            Some(last) if opens || is_open || is_second => {
                last.push(' ');
                last.push_str(word);
            }
            _ => joined.push(word.to_owned()),
        }
    }
    joined
}

/// Cells that blanks part, with each unit back beside its number.
fn with_their_units(cells: &[String], units: Units) -> Vec<String> {
    let mut joined: Vec<String> = Vec::new();
    for cell in cells {
        match joined.last_mut() {
            Some(last) if is_bare_number(last) && named(cell, units).is_some() => {
                last.push(' ');
                last.push_str(cell);
            }
            _ => joined.push(cell.clone()),
        }
    }
    joined
}

/// Whether a cell is a number and nothing else.
pub(super) fn is_bare_number(cell: &str) -> bool {
    let read = parse_number(cell, -1e12..=1e12);
    matches!(read, Ok(_) | Err(NumberError::Ambiguous { .. } | NumberError::OutOfRange { .. }))
}

/// Whether a cell is a number, perhaps with a unit.
fn is_number(cell: &str) -> bool {
    let end = cell.find(|c: char| c.is_alphabetic() || matches!(c, '°' | '"' | '/'));
    is_bare_number(cell.get(..end.unwrap_or(cell.len())).unwrap_or_default())
}
