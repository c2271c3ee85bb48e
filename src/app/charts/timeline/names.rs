//! The names of the windows, where they cover least of the line.

use leptos::prelude::Callable;
use leptos::prelude::Callback;

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
        let places = bases.into_iter().flatten().flat_map(|base| {
            let at = |part: f64| Name {
                words: words.clone(),
                left: frame.left + GAP + part * free,
                base,
            };
            [at(0.0), at(1.0), at(0.5)]
        });
        names.extend(places.min_by_key(|place| covered(place, frame, points, &names)));
    }
    names
}

/// How much a name would cover in a place. Other names and the axis weigh more than
/// any line.
fn covered(place: &Name, frame: &Frame, points: &[Point], names: &[Name]) -> usize {
    let sides = |name: &Name| (name.left, name.left + width_of(&name.words));
    let (left, right) = sides(place);
    let over = |name: &&Name| {
        let (from, to) = sides(name);
        (name.base - place.base).abs() < LINE && from < right && left < to
    };
    let lines = points.windows(2).filter(|pair| {
        let x = [frame.x(pair[0].minute), frame.x(pair[1].minute)];
        let y = [frame.y(pair[0].expected), frame.y(pair[1].expected)];
        // A mark reaches so far from the line.
        let (top, bottom) = (place.base - LINE - GAP, place.base + GAP);
        x[0] < right
            && left < x[1].max(x[0] + GAP)
            && y[0].min(y[1]) < bottom
            && top < y[0].max(y[1])
    });
    let outside = place.base - LINE < frame.top || place.base > frame.bottom;
    let weight = points.len() + 1;
    lines.count() + weight * (names.iter().filter(over).count() + usize::from(outside))
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
    fn a_long_name_is_cut() {
        Owner::new().with(|| {
            let (frame, names) = place(&[20.0], &"long ".repeat(20), &[80.0, 80.0]);
            assert!(names[0].words.ends_with('…'));
            assert!(names[0].left + width_of(&names[0].words) <= frame.right);
        });
    }
}
