//! The names of the marks, in rows above the picture.

use super::across::Across;
use super::chart::Chart;
use super::names::{GAP, LINE, Name, fitting};
use super::svg::width_of;

/// A name takes no more of the width than this.
const MOST: f64 = 0.9;

/// The lowest row stands so far above the picture, clear of the uppermost number.
const ABOVE: f64 = 10.0;

/// How many rows the names take.
pub(super) fn rows(chart: &Chart, across: &Across) -> u16 {
    placed(chart, across).iter().map(|it| it.1 + 1).max().unwrap_or(0)
}

/// The names above the top of the frame, each with the place that it stands for.
pub(super) fn names(chart: &Chart, across: &Across, top: f64) -> Vec<(Name, f64)> {
    let names = placed(chart, across).into_iter();
    let base = |row: u16| top - ABOVE - f64::from(row) * LINE;
    names.map(|(name, row, at)| (Name { base: base(row), ..name }, at)).collect()
}

/// Each name with its row, the lowest that is free, and its place.
fn placed(chart: &Chart, across: &Across) -> Vec<(Name, u16, f64)> {
    let mut names: Vec<(Name, u16, f64)> = Vec::new();
    for mark in chart.marks() {
        let at = across.x(mark.x);
        let words = fitting(&[&mark.name], MOST * across.width);
        let width = width_of(&words);
        let left = (at - width / 2.0).clamp(0.0, (across.width - width).max(0.0));
        let free = |row: u16| {
            names.iter().filter(|it| it.1 == row).all(|(other, ..)| {
                let taken = other.left..other.left + width_of(&other.words);
                left >= taken.end + GAP || left + width + GAP <= taken.start
            })
        };
        let mut row = 0;
        while !free(row) {
            row += 1;
        }
        names.push((Name { words, left, base: 0.0 }, row, at));
    }
    names
}

#[cfg(test)]
mod tests {
    use super::super::frame::Frame;
    use super::*;
    use crate::app::charts::axis::Axis;
    use crate::app::charts::chart::Mark;

    fn names_of(marks: &[(&str, f64)]) -> (Frame, Vec<Name>) {
        let mark = |it: &(&str, f64)| Mark { name: it.0.into(), x: it.1, y: None };
        let chart = Chart {
            x: Axis { from: 0.0, to: 85.0, ..Axis::default() },
            y: Axis { from: 0.0, to: 500.0, ..Axis::default() },
            marks: marks.iter().map(mark).collect(),
            ..Chart::default()
        };
        let frame = Frame::of(&chart, 340.0);
        let names = names(&chart, &frame.across, frame.top).into_iter().map(|it| it.0).collect();
        (frame, names)
    }

    #[test]
    fn names_that_fit_share_a_row() {
        let (frame, names) = names_of(&[("tank", 10.0), ("wanted", 60.0)]);
        assert_eq!(names.len(), 2);
        for name in &names {
            assert!((name.base - (frame.top - ABOVE)).abs() < 1e-9, "{name:?}");
        }
    }

    #[test]
    fn names_do_not_cover_each_other() {
        let marks = [
            ("in the tank", 8.0),
            ("gives first", 12.0),
            ("at 85", 85.0),
            ("the blend that is wanted", 40.0),
            ("and one more", 14.0),
        ];
        let (frame, names) = names_of(&marks);
        assert_eq!(names.len(), 5);
        for (index, one) in names.iter().enumerate() {
            let (left, right) = (one.left, one.left + width_of(&one.words));
            assert!(left >= 0.0 && right <= 340.0, "{one:?}");
            assert!(one.base <= frame.top && one.base - LINE > 10.0, "{one:?}");
            for other in &names[..index] {
                let apart = (one.base - other.base).abs() >= LINE
                    || left >= other.left + width_of(&other.words)
                    || right <= other.left;
                assert!(apart, "{one:?} {other:?}");
            }
        }
    }

    #[test]
    fn what_lies_beyond_the_axis_is_not_named() {
        assert_eq!(names_of(&[("tank", 100.0)]).1, []);
    }

    #[test]
    fn a_long_name_is_cut() {
        let (_, names) = names_of(&[(&"far too long ".repeat(4), 8.0)]);
        assert!(names[0].words.ends_with('…'));
    }
}
