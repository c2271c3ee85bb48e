//! The names within the picture: those of limits, of windows, and of lines that
//! end early.

use fillwright::message::keys::charts as keys;

use super::chart::{Chart, Course, Limit, Side, Window};
use super::frame::Frame;
use super::names::{Area, GAP, LINE, Name, fitting, least_covering};
use super::svg::width_of;
use super::{curve, ends};

/// The width of the hatch along a limit.
pub(super) const HATCH: f64 = 8.0;

/// So long pieces of a line are looked at for what a name would cover.
const PIECE: f64 = 8.0;

/// What a name within the picture stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Labelled {
    Limit,
    Line { emphasis: bool },
    Window,
}

/// The names within the picture.
pub(super) fn placed(chart: &Chart, frame: &Frame) -> Vec<(Labelled, Name)> {
    let Frame { left, right, top, bottom, .. } = *frame;
    let inside = Area { left, right, top, bottom };
    let things = things(chart, frame);
    let limits = chart.limits.iter();
    let limits = limits.map(|it| (Labelled::Limit, beside_limit(it, chart, frame)));
    let lines = ends::within(chart, frame).into_iter().map(|(line, end)| {
        let line = &chart.lines[line];
        (Labelled::Line { emphasis: line.emphasis }, around(&line.label, end))
    });
    let windows = chart.windows();
    let windows = windows.map(|it| (Labelled::Window, within(it, chart, frame)));
    let across = chart.across();
    let across = across.map(|it| (Labelled::Window, within_band(it, chart, frame)));
    let (mut labelled, mut names) = (Vec::new(), Vec::new());
    for (of, places) in limits.chain(lines).chain(windows).chain(across) {
        if let Some(name) = least_covering(places.into_iter(), &inside, &things, &names) {
            labelled.push(of);
            names.push(name);
        }
    }
    labelled.into_iter().zip(names).collect()
}

/// The course of a limit as places, in the picture's units.
pub(super) fn course(limit: &Limit, chart: &Chart, frame: &Frame) -> Vec<(f64, f64)> {
    match &limit.course {
        Course::Level { y, from, to } => {
            let ends = [from.unwrap_or(chart.x.from), to.unwrap_or(chart.x.to)];
            ends.map(|x| (frame.x(chart.x.within(x)), frame.y(*y))).into()
        }
        Course::Through(places) => places.iter().map(|(x, y)| (frame.x(*x), frame.y(*y))).collect(),
    }
}

/// Places along a limit, first on the side that is allowed.
fn beside_limit(limit: &Limit, chart: &Chart, frame: &Frame) -> Vec<Name> {
    let course = course(limit, chart, frame);
    let (Some(first), Some(last)) = (course.first(), course.last()) else { return Vec::new() };
    let full = match &limit.course {
        Course::Level { y, .. } => format!("{} {}", limit.name, chart.y.print(*y)),
        Course::Through(_) => limit.name.clone(),
    };
    let words = fitting(&[&full, &limit.name], frame.right - frame.left - 2.0 * GAP);
    let width = width_of(&words);
    let free = last.0 - first.0 - 2.0 * GAP - width;
    let rightmost = frame.right - GAP - width;
    let (above, below) = match limit.beyond {
        Side::Above => (HATCH + GAP, GAP),
        Side::Below => (GAP, HATCH + GAP),
    };
    let parts = [0.0, 1.0, 0.5, 0.25, 0.75];
    let places = parts.map(|part| {
        let left = (first.0 + GAP + part * free).min(rightmost).max(frame.left + GAP);
        let (top, bottom) = heights(&course, left, left + width);
        let over = Name { words: words.clone(), left, base: top - above };
        let under = Name { words: words.clone(), left, base: bottom + below + LINE - GAP };
        match limit.beyond {
            Side::Above => (under, over),
            Side::Below => (over, under),
        }
    });
    let (allowed, out): (Vec<_>, Vec<_>) = places.into_iter().unzip();
    [allowed, out].concat()
}

/// The highest and the lowest place of a course between two.
fn heights(course: &[(f64, f64)], left: f64, right: f64) -> (f64, f64) {
    let mut span = (f64::INFINITY, f64::NEG_INFINITY);
    for area in pieces(course) {
        if area.left < right && left < area.right {
            span = (span.0.min(area.top), span.1.max(area.bottom));
        }
    }
    // A course without length has no pieces.
    if span.0 > span.1 { course.first().map_or((0.0, 0.0), |it| (it.1, it.1)) } else { span }
}

/// Places around the end of a line.
fn around(label: &str, (x, y): (f64, f64)) -> Vec<Name> {
    let middle = y + 5.0;
    let (right, left) = (x + GAP, x - GAP - width_of(label));
    let (above, below) = (y - GAP - 2.0, y + LINE + 2.0);
    let places = [(right, middle), (right, above), (right, below), (left, above), (left, below)];
    places.map(|(left, base)| Name { words: label.to_owned(), left, base }).into()
}

/// Places within a window, or centred on one that is narrower than its name.
fn within(window: &Window, chart: &Chart, frame: &Frame) -> Vec<Name> {
    let x = |x: f64| frame.x(chart.x.within(x));
    let (from, to) = (x(window.from), x(window.to));
    let words = fitting(&[&window.name], frame.right - frame.left - 2.0 * GAP);
    let free = to - from - 2.0 * GAP - width_of(&words);
    let rightmost = frame.right - GAP - width_of(&words);
    let parts: &[f64] = if free > 0.0 { &[0.5, 0.0, 1.0] } else { &[0.5] };
    let (top, bottom) = (frame.top + LINE, frame.bottom - GAP);
    let bases = [top, bottom, top + LINE, bottom - LINE, top + 2.0 * LINE, bottom - 2.0 * LINE];
    let place = |base: f64, part: f64| {
        let left = (from + GAP + part * free).min(rightmost).max(frame.left + GAP);
        Name { words: words.clone(), left, base }
    };
    bases.into_iter().flat_map(|base| parts.iter().map(move |part| place(base, *part))).collect()
}

/// Places within a band across the picture, beside its limits, and outside of one that
/// is narrower than its name.
fn within_band(window: &Window, chart: &Chart, frame: &Frame) -> Vec<Name> {
    let y = |y: f64| frame.y(chart.y.within(y));
    let (low, high) = (y(window.from), y(window.to));
    let (from, to) = (chart.y.number(window.from), chart.y.print(window.to));
    let full = keys::Window { name: &window.name, from, to }.say();
    let words = fitting(&[&full, &window.name], frame.right - frame.left - 2.0 * GAP);
    let free = frame.right - frame.left - 2.0 * GAP - width_of(&words);
    let inward = [high + LINE, low - GAP];
    let outward = [high - GAP, low + LINE];
    let bases = match low - high {
        room if room < LINE => vec![outward, inward],
        // Within it the name touches a limit, which is better than to stand outside.
        room if room < LINE + GAP => vec![inward],
        _ => vec![inward, outward],
    };
    let place = |base: f64, part: f64| Name {
        words: words.clone(),
        left: frame.left + GAP + part * free,
        base,
    };
    let parts = [0.0, 1.0, 0.5, 0.25, 0.75];
    bases.into_iter().flatten().flat_map(|base| parts.map(|part| place(base, part))).collect()
}

/// What a name should not cover.
fn things(chart: &Chart, frame: &Frame) -> Vec<Area> {
    let mut things = Vec::new();
    for line in &chart.lines {
        for stretch in curve::shown(&line.points, frame) {
            let places: Vec<_> =
                stretch.iter().map(|(x, it)| (frame.x(*x), frame.y(it.expected))).collect();
            things.extend(pieces(&places));
        }
    }
    for limit in &chart.limits {
        things.extend(pieces(&course(limit, chart, frame)));
    }
    for mark in chart.marks() {
        let x = frame.x(mark.x);
        things.extend(pieces(&[(x, frame.top), (x + 0.1, frame.bottom)]));
    }
    for window in chart.across() {
        for y in [window.from, window.to].map(|it| frame.y(chart.y.within(it))) {
            let limit = Area { left: frame.left, right: frame.right, top: y, bottom: y };
            // Its own limit is right beside a name.
            things.push(limit.wider(-1.0));
        }
    }
    for entry in &chart.entries {
        let (x, y) = (frame.x(entry.x), frame.y(entry.y));
        things.push(Area { left: x, right: x, top: y, bottom: y }.wider(GAP));
    }
    things
}

/// A course in short pieces.
fn pieces(course: &[(f64, f64)]) -> Vec<Area> {
    let mut pieces = Vec::new();
    for pair in course.windows(2) {
        let [(x, y), (to, end)] = [pair[0], pair[1]];
        let length = (to - x).abs().max((end - y).abs());
        let mut gone = 0.0;
        while gone < length {
            let next = (gone + PIECE).min(length);
            let along = |gone: f64| (x + (to - x) * gone / length, y + (end - y) * gone / length);
            let (a, b) = (along(gone), along(next));
            pieces.push(Area {
                left: a.0.min(b.0),
                right: a.0.max(b.0),
                top: a.1.min(b.1) - 1.0,
                bottom: a.1.max(b.1) + 1.0,
            });
            gone = next;
        }
    }
    pieces
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::charts::axis::Axis;
    use crate::app::charts::chart::Line;
    use crate::app::charts::point::Point;

    fn chart(points: &[(f64, f64)]) -> Chart {
        let line = Line {
            label: "Pump".into(),
            points: points.iter().map(|(x, y)| Point::new(*x, *y, None)).collect(),
            ..Line::default()
        };
        Chart {
            x: Axis { from: 0.0, to: 100.0, ..Axis::default() },
            y: Axis { from: 0.0, to: 100.0, ..Axis::default() },
            lines: vec![line],
            ..Chart::default()
        }
    }

    fn level(name: &str, y: f64, from: Option<f64>, beyond: Side) -> Limit {
        Limit { name: name.into(), course: Course::Level { y, from, to: None }, beyond }
    }

    fn names(chart: &Chart) -> (Frame, Vec<Name>) {
        let frame = Frame::of(chart, 340.0);
        let names = placed(chart, &frame).into_iter().map(|it| it.1).collect();
        (frame, names)
    }

    #[test]
    fn a_limit_is_named_on_the_side_that_is_allowed() {
        for (beyond, is_below) in [(Side::Above, true), (Side::Below, false)] {
            let mut chart = chart(&[(0.0, 1.0), (100.0, 2.0)]);
            chart.limits.push(level("Duty", 60.0, None, beyond));
            let (frame, names) = names(&chart);
            assert_eq!(names[0].words, "Duty 60");
            assert_eq!(names[0].base > frame.y(60.0), is_below, "{names:?}");
        }
    }

    #[test]
    fn the_name_of_a_limit_gives_way_to_a_line() {
        // The line runs right below the limit on the left half.
        let mut chart = chart(&[(0.0, 55.0), (50.0, 55.0), (51.0, 5.0), (100.0, 5.0)]);
        chart.limits.push(level("Duty", 60.0, None, Side::Above));
        let (frame, names) = names(&chart);
        assert!(names[0].left > frame.x(50.0), "{names:?}");
    }

    #[test]
    fn the_name_of_a_short_limit_stays_in_the_picture() {
        let mut chart = chart(&[(0.0, 1.0), (100.0, 2.0)]);
        chart.limits.push(level("Least pulse of the injectors", 60.0, Some(95.0), Side::Below));
        let (frame, names) = names(&chart);
        assert!(names[0].words.starts_with("Least pulse of the injectors"));
        assert!(names[0].area().right <= frame.right, "{names:?}");
    }

    #[test]
    fn a_line_that_ends_early_is_named_at_its_end() {
        let (frame, names) = names(&chart(&[(0.0, 50.0), (60.0, 50.0)]));
        assert_eq!(names.len(), 1);
        let end = (frame.x(60.0), frame.y(50.0));
        assert!(names[0].left > end.0 && names[0].left < end.0 + 10.0, "{names:?}");
        assert!((names[0].base - end.1).abs() < 10.0, "{names:?}");
    }

    #[test]
    fn windows_are_named_within_them_and_off_the_lines() {
        let mut chart = chart(&[(0.0, 98.0), (100.0, 95.0)]);
        for (name, from, to) in [("Map 1", 0.0, 40.0), ("Map 2", 50.0, 90.0)] {
            chart.windows.push(Window { name: name.into(), from, to });
        }
        let (frame, names) = names(&chart);
        for (name, window) in names.iter().zip(&chart.windows) {
            assert_eq!(name.words, window.name);
            assert!(name.left > frame.x(window.from) && name.area().right < frame.x(window.to));
            assert!(name.base > frame.y(90.0), "{name:?}");
        }
        assert_eq!(names.len(), 2);
    }

    #[test]
    fn bands_across_are_named_within_them_and_off_the_lines() {
        let mut chart = chart(&[(0.0, 30.0), (100.0, 45.0)]);
        for (name, from, to) in [("Map 1", 0.0, 12.0), ("Map 2", 24.0, 50.0)] {
            chart.across.push(Window { name: name.into(), from, to });
        }
        let (frame, names) = names(&chart);
        assert_eq!(names.len(), 2);
        for (name, band) in names.iter().zip(&chart.across) {
            assert_eq!(name.words, format!("{}: {} to {}", band.name, band.from, band.to));
            let (low, high) = (frame.y(band.from), frame.y(band.to));
            assert!(name.base <= low && name.base - LINE >= high, "{name:?}");
        }
        let line = things(&Chart { across: Vec::new(), ..chart }, &frame);
        let clear = |name: &Name| line.iter().all(|it| !it.meets(&name.area()));
        assert!(names.iter().all(clear), "{names:?}");
    }

    /// Bands of twenty over a line through these values.
    fn bands(lows: &[f64], name: &str, values: &[f64]) -> (Frame, Vec<Name>) {
        let points: Vec<_> = (0_u8..).map(f64::from).zip(values.iter().copied()).collect();
        let mut chart = chart(&points);
        chart.x.to = points[points.len() - 1].0;
        chart.lines[0].label.clear();
        let band = |low: &f64| Window { name: name.to_owned(), from: *low, to: low + 20.0 };
        chart.across = lows.iter().map(band).collect();
        let (frame, mut names) = names(&chart);
        names.retain(|it| !it.words.is_empty());
        (frame, names)
    }

    #[test]
    fn the_name_of_a_band_gives_way_to_the_line() {
        // The line crosses the window on the left, then leaves it.
        let (frame, names) = bands(&[20.0], "Map", &[30.0, 30.0, 80.0, 80.0, 80.0]);
        assert_eq!(names[0].words, "Map: 20 to 40");
        assert!(names[0].left > frame.x(1.0), "{names:?}");
        let (frame, names) = bands(&[20.0], "Map", &[80.0, 80.0, 80.0, 30.0, 30.0]);
        assert!(names[0].left < frame.x(1.0), "{names:?}");
    }

    #[test]
    fn a_name_stands_inside_its_band_where_it_can() {
        let (frame, names) = bands(&[20.0], "Map", &[90.0, 90.0]);
        assert!(names[0].base < frame.y(20.0) && names[0].base > frame.y(40.0));
        assert!(names[0].left - frame.left < 10.0);
    }

    #[test]
    fn names_of_bands_do_not_cover_each_other() {
        let (_, names) = bands(&[20.0, 20.0, 20.0, 20.0], "Map", &[80.0, 80.0]);
        assert_eq!(names.len(), 4);
        for (index, name) in names.iter().enumerate() {
            for other in &names[..index] {
                let apart = (name.base - other.base).abs() >= LINE
                    || (name.left - other.left).abs() >= width_of(&name.words);
                assert!(apart, "{name:?} {other:?}");
            }
        }
    }

    #[test]
    fn the_name_of_a_band_keeps_off_other_limits() {
        let (frame, names) = bands(&[20.0, 44.0], "Map", &[90.0, 90.0]);
        assert_eq!(names.len(), 2);
        for name in names {
            for limit in [20.0, 40.0, 44.0, 64.0].map(|limit| frame.y(limit)) {
                assert!(limit <= name.base - 13.0 || name.base < limit, "{name:?} {limit}");
            }
        }
    }

    #[test]
    fn the_long_name_of_a_band_is_cut() {
        let (frame, names) = bands(&[20.0], &"long ".repeat(20), &[80.0, 80.0]);
        assert!(names[0].words.ends_with('…'));
        assert!(names[0].left + width_of(&names[0].words) <= frame.right);
    }

    #[test]
    fn a_window_beyond_the_axis_is_not_named() {
        let mut chart = chart(&[(0.0, 98.0), (100.0, 95.0)]);
        chart.windows.push(Window { name: "Map".into(), from: 101.0, to: 120.0 });
        assert_eq!(names(&chart).1, []);
    }

    #[test]
    fn pieces_follow_a_steep_line() {
        let pieces = pieces(&[(0.0, 0.0), (10.0, 200.0)]);
        assert_eq!(pieces.len(), 25);
        assert!(pieces.iter().all(|it| it.right - it.left < 1.0 && it.bottom - it.top < 11.0));
    }
}
