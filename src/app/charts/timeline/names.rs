//! The names of the windows, where they cover least of the line.

use leptos::prelude::{Callable, Callback};

use super::frame::{Frame, width_of};
use super::{Point, Window};

/// The height of a line of text.
const LINE: f64 = 16.0;

/// From the edge of something to the text beside it.
const GAP: f64 = 6.0;

/// A name in its place.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Name {
    pub(super) words: String,
    pub(super) left: f64,
    /// The line that the letters stand on.
    pub(super) base: f64,
}

/// The name of each window with its limits, beside one of its limits.
pub(super) fn placed(
    frame: &Frame,
    windows: &[Window],
    points: &[Point],
    value: Callback<f64, String>,
) -> Vec<Name> {
    let mut names: Vec<Name> = Vec::new();
    for window in windows {
        let words = named(window, frame.right - frame.left - 2.0 * GAP, value);
        let free = frame.right - frame.left - 2.0 * GAP - width_of(&words);
        let (low, high) = (frame.y(window.low), frame.y(window.high));
        let inside = [high + LINE, low - GAP];
        let outside = [high - GAP, low + LINE];
        let bases = if low - high < LINE + GAP { [outside, inside] } else { [inside, outside] };
        let mut best: Option<(usize, Name)> = None;
        for base in bases.into_iter().flatten() {
            for part in [0.0, 1.0, 0.5] {
                let left = frame.left + GAP + part * free;
                let place = Name { words: words.clone(), left, base };
                let cost = covered(&place, frame, windows, points, &names);
                if best.as_ref().is_none_or(|(least, _)| cost < *least) {
                    best = Some((cost, place));
                }
            }
        }
        names.extend(best.map(|(_, place)| place));
    }
    names
}

/// How much a name would cover in a place: lengths of the line between two points,
/// and limits. Other names and the axis weigh more than any of those.
fn covered(
    place: &Name,
    frame: &Frame,
    windows: &[Window],
    points: &[Point],
    names: &[Name],
) -> usize {
    let sides = |name: &Name| (name.left, name.left + width_of(&name.words));
    let (left, right) = sides(place);
    let (top, bottom) = (place.base - LINE, place.base + GAP);
    let mut cost = 0;
    for (index, point) in points.iter().enumerate() {
        // The last point counts on its own: it may be the only one.
        let next = points.get(index + 1).unwrap_or(point);
        let (y, to) = (frame.y(point.expected), frame.y(next.expected));
        // A mark reaches so far from the line.
        let across = frame.x(point.minute) - GAP < right && left < frame.x(next.minute) + GAP;
        if across && y.min(to) - GAP < bottom && top < y.max(to) + GAP {
            cost += 1;
        }
    }
    for limit in windows.iter().flat_map(|it| [it.low, it.high]) {
        // Its own limit is right beside it.
        if (top + 1.0..bottom - 1.0).contains(&frame.y(limit)) {
            cost += 1;
        }
    }
    let weight = points.len() + 2 * windows.len() + 1;
    for name in names {
        let (from, to) = sides(name);
        if (name.base - place.base).abs() < LINE && from < right && left < to {
            cost += weight;
        }
    }
    if top < frame.top || place.base > frame.bottom {
        cost += weight;
    }
    cost
}

/// The name of a window with its limits, as far as there is room.
fn named(window: &Window, room: f64, value: Callback<f64, String>) -> String {
    let (low, high) = (value.run(window.low), value.run(window.high));
    let full = format!("{}: {low} to {high}", window.name);
    if width_of(&full) <= room {
        return full;
    }
    if width_of(&window.name) <= room {
        return window.name.clone();
    }
    let mut cut = String::new();
    for letter in window.name.chars() {
        if width_of(&cut) + width_of("m…") > room {
            break;
        }
        cut.push(letter);
    }
    cut + "…"
}

#[cfg(test)]
mod tests {
    use leptos::prelude::Owner;

    use super::super::Timeline;
    use super::*;

    fn place(lows: &[f64], name: &str, values: &[f64]) -> (Frame, Vec<Name>) {
        let point = |(minute, value): (i64, &f64)| Point {
            minute,
            low: *value,
            expected: *value,
            high: *value,
        };
        let window = |low: &f64| Window { low: *low, high: low + 20.0, name: name.to_owned() };
        let timeline = Timeline {
            top: 100.0,
            points: (0..).zip(values).map(point).collect(),
            windows: lows.iter().map(window).collect(),
            ..Timeline::default()
        };
        let frame = Frame::of(&timeline, 340.0, "E31");
        let value = Callback::new(|value| format!("E{value}"));
        let names = placed(&frame, &timeline.windows, &timeline.points, value);
        (frame, names)
    }

    #[test]
    fn a_name_gives_way_to_the_line() {
        Owner::new().with(|| {
            // The line crosses the window on the left, then leaves it.
            let (frame, names) = place(&[20.0], "Map", &[30.0, 30.0, 80.0, 80.0, 80.0]);
            assert_eq!(names[0].words, "Map: E20 to E40");
            assert!(names[0].left > frame.x(1), "{names:?}");
            let (frame, names) = place(&[20.0], "Map", &[80.0, 80.0, 80.0, 30.0, 30.0]);
            assert!(names[0].left < frame.x(1), "{names:?}");
        });
    }

    #[test]
    fn a_name_stands_inside_its_window_where_it_can() {
        Owner::new().with(|| {
            let (frame, names) = place(&[20.0], "Map", &[90.0, 90.0]);
            assert!(names[0].base < frame.y(20.0) && names[0].base > frame.y(40.0));
            assert!(names[0].left - frame.left < 10.0);
        });
    }

    #[test]
    fn names_do_not_cover_each_other() {
        Owner::new().with(|| {
            let (_, names) = place(&[20.0, 20.0, 20.0, 20.0], "Map", &[80.0, 80.0]);
            for (index, name) in names.iter().enumerate() {
                for other in &names[..index] {
                    let apart = (name.base - other.base).abs() >= LINE
                        || (name.left - other.left).abs() >= width_of(&name.words);
                    assert!(apart, "{name:?} {other:?}");
                }
            }
        });
    }

    #[test]
    fn a_name_keeps_off_other_limits() {
        Owner::new().with(|| {
            let (frame, names) = place(&[20.0, 44.0], "Map", &[90.0, 90.0]);
            for name in names {
                for limit in [20.0, 40.0, 44.0, 64.0].map(|limit| frame.y(limit)) {
                    assert!(limit <= name.base - 13.0 || name.base < limit, "{name:?} {limit}");
                }
            }
        });
    }

    #[test]
    fn a_long_name_is_cut() {
        Owner::new().with(|| {
            let (frame, names) = place(&[20.0], &"long ".repeat(20), &[80.0, 80.0]);
            assert!(names[0].words.ends_with('…'));
            assert!(names[0].left + width_of(&names[0].words) <= frame.right);
        });
    }
}
