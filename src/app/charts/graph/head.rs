//! The names of windows and marks, in rows above the picture.

use super::Graph;
use super::frame::Frame;
use crate::app::charts::plot::{GAP, LINE, Name, fitting, width_of};

/// A name of a window or a mark takes no more of the width than this.
const MOST: f64 = 0.6;

/// What a name above the picture stands for.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Headed {
    pub(super) name: Name,
    /// The place that it names.
    pub(super) at: f64,
    pub(super) is_mark: bool,
}

/// How many rows the names take.
pub(super) fn rows(graph: &Graph, frame: &Frame) -> u16 {
    placed(graph, frame).iter().map(|it| it.1 + 1).max().unwrap_or(0)
}

/// The names in their rows.
pub(super) fn names(graph: &Graph, frame: &Frame) -> Vec<Headed> {
    let mut names = placed(graph, frame);
    for (headed, row) in &mut names {
        headed.name.base = frame.top - GAP - f64::from(*row) * LINE;
    }
    names.into_iter().map(|it| it.0).collect()
}

/// Each name with its row, the lowest that is free: next to its place.
fn placed(graph: &Graph, frame: &Frame) -> Vec<(Headed, u16)> {
    let within = |x: f64| (graph.x.from..=graph.x.to).contains(&x);
    let windows = graph.windows.iter().filter_map(|it| {
        let (from, to) = (it.from.max(graph.x.from), it.to.min(graph.x.to));
        (from <= to).then(|| (&it.name, frame.x(f64::midpoint(from, to)), false))
    });
    let marks = graph.marks.iter().filter(|it| within(it.x));
    let marks = marks.map(|it| (&it.name, frame.x(it.x), true));
    let mut names: Vec<(Headed, u16)> = Vec::new();
    for (words, at, is_mark) in marks.chain(windows) {
        let words = fitting(&[words], MOST * frame.width);
        let width = width_of(&words);
        let left = (at - width / 2.0).clamp(0.0, (frame.width - width).max(0.0));
        let free = |row: u16| {
            names.iter().filter(|it| it.1 == row).all(|(other, _)| {
                let taken = other.name.left..other.name.left + width_of(&other.name.words) + GAP;
                left >= taken.end || left + width + GAP <= taken.start
            })
        };
        let mut row = 0;
        while !free(row) {
            row += 1;
        }
        names.push((Headed { name: Name { words, left, base: 0.0 }, at, is_mark }, row));
    }
    names
}

#[cfg(test)]
mod tests {
    use super::super::{Axis, Mark, Window};
    use super::*;

    fn graph(windows: &[(&str, f64, f64)], marks: &[(&str, f64)]) -> Graph {
        let window = |it: &(&str, f64, f64)| Window { name: it.0.into(), from: it.1, to: it.2 };
        let mark = |it: &(&str, f64)| Mark { name: it.0.into(), x: it.1, y: None };
        Graph {
            x: Axis { from: 0.0, to: 85.0, ..Axis::default() },
            y: Axis { from: 0.0, to: 500.0, ..Axis::default() },
            windows: windows.iter().map(window).collect(),
            marks: marks.iter().map(mark).collect(),
            ..Graph::default()
        }
    }

    fn names_of(graph: &Graph) -> (Frame, Vec<Headed>) {
        let frame = Frame::of(graph, 340.0);
        let names = names(graph, &frame);
        (frame, names)
    }

    #[test]
    fn names_that_fit_share_a_row() {
        let (frame, names) = names_of(&graph(&[("Map 1", 5.0, 15.0), ("Map 2", 55.0, 70.0)], &[]));
        assert_eq!(names.len(), 2);
        for name in &names {
            assert!((name.name.base - (frame.top - GAP)).abs() < 1e-9, "{name:?}");
        }
    }

    #[test]
    fn names_do_not_cover_each_other() {
        let windows = [("Map for pump petrol", 0.0, 12.0), ("Map for the blend", 10.0, 40.0)];
        let marks = [("in the tank", 8.0), ("gives first", 12.0), ("at 85", 85.0)];
        let (frame, names) = names_of(&graph(&windows, &marks));
        assert_eq!(names.len(), 5);
        for (index, one) in names.iter().enumerate() {
            let (left, right) = (one.name.left, one.name.left + width_of(&one.name.words));
            assert!(left >= 0.0 && right <= 340.0, "{one:?}");
            assert!(one.name.base <= frame.top && one.name.base - LINE > 10.0, "{one:?}");
            for other in &names[..index] {
                let apart = (one.name.base - other.name.base).abs() >= LINE
                    || left >= other.name.left + width_of(&other.name.words)
                    || right <= other.name.left;
                assert!(apart, "{one:?} {other:?}");
            }
        }
    }

    #[test]
    fn what_lies_beyond_the_axis_is_not_named() {
        let (_, names) = names_of(&graph(&[("Map", 90.0, 95.0)], &[("tank", 100.0)]));
        assert_eq!(names, []);
    }

    #[test]
    fn a_long_name_is_cut() {
        let (_, names) = names_of(&graph(&[], &[("a name that is far too long for a phone", 8.0)]));
        assert!(names[0].name.words.ends_with('…'));
    }
}
