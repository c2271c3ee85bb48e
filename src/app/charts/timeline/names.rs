//! The names of the windows, where they cover least of the line.

use leptos::prelude::{Callable, Callback};

use super::frame::Frame;
use super::{Point, Window};
use crate::app::charts::plot::{Area, GAP, LINE, Name, fitting, least_covering, width_of};

/// The name of each window with its limits, beside one of its limits.
pub(super) fn placed(
    frame: &Frame,
    windows: &[Window],
    points: &[Point],
    value: Callback<f64, String>,
) -> Vec<Name> {
    let Frame { left, right, top, bottom, .. } = *frame;
    let inside = Area { left, right, top, bottom };
    let things = things(frame, windows, points);
    let mut names: Vec<Name> = Vec::new();
    for window in windows {
        let words = named(window, right - left - 2.0 * GAP, value);
        let free = right - left - 2.0 * GAP - width_of(&words);
        let (low, high) = (frame.y(window.low), frame.y(window.high));
        let inward = [high + LINE, low - GAP];
        let outward = [high - GAP, low + LINE];
        let bases = if low - high < LINE + GAP { [outward, inward] } else { [inward, outward] };
        let places = bases.into_iter().flatten().flat_map(|base| {
            let words = &words;
            [0.0, 1.0, 0.5].map(|part| Name {
                words: words.clone(),
                left: left + GAP + part * free,
                base,
            })
        });
        names.extend(least_covering(places, &inside, &things, &names));
    }
    names
}

/// What a name should not cover: the line between two points, and the limits.
fn things(frame: &Frame, windows: &[Window], points: &[Point]) -> Vec<Area> {
    let between = |(index, point): (usize, &Point)| {
        // The last point counts on its own: it may be the only one.
        let next = points.get(index + 1).unwrap_or(point);
        let (y, to) = (frame.y(point.expected), frame.y(next.expected));
        let area = Area {
            left: frame.x(point.minute),
            right: frame.x(next.minute),
            top: y.min(to),
            bottom: y.max(to),
        };
        // A mark reaches so far from the line.
        area.wider(GAP)
    };
    let limit = |value: f64| {
        let y = frame.y(value);
        // Its own limit is right beside a name.
        Area { left: frame.left, right: frame.right, top: y, bottom: y }.wider(-1.0)
    };
    let limits = windows.iter().flat_map(|it| [it.low, it.high]).map(limit);
    points.iter().enumerate().map(between).chain(limits).collect()
}

/// The name of a window with its limits, as far as there is room.
fn named(window: &Window, room: f64, value: Callback<f64, String>) -> String {
    let (low, high) = (value.run(window.low), value.run(window.high));
    let full = format!("{}: {low} to {high}", window.name);
    fitting(&[&full, &window.name], room)
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
