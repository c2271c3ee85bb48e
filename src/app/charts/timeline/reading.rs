//! What the chart says at one of its points.

use fillwright::quantity::notation::{round_down, round_up};
use leptos::prelude::*;

use super::{Point, Timeline};

/// What somebody noted, and where the log says so.
pub(super) type Noted = (String, Option<String>);

/// A point in words.
#[derive(Debug)]
pub(super) struct Reading {
    pub(super) when: String,
    pub(super) value: String,
    /// Its ends, where it is not exact.
    pub(super) between: Option<(String, String)>,
    pub(super) noted: Vec<Noted>,
}

/// How times and values are printed.
#[derive(Clone, Copy)]
pub(super) struct Print {
    pub(super) date: Callback<(i64, bool), String>,
    pub(super) value: Callback<f64, String>,
}

impl Reading {
    /// The point at an index, with the marks next to it.
    pub(super) fn of(timeline: &Timeline, index: usize, print: Print) -> Option<Self> {
        let points = &timeline.points;
        let point = points.get(index)?;
        let exact = point.low >= point.high;
        let decimals = timeline.decimals;
        let ends = || {
            let (low, high) = (round_down(point.low, decimals), round_up(point.high, decimals));
            (print.value.run(low), print.value.run(high))
        };
        let here = timeline.marks.iter().filter(|it| nearest(points, it.minute) == index);
        let noted = here.map(|mark| {
            let words = if mark.minute == point.minute {
                mark.words.clone()
            } else {
                format!("{} ({})", mark.words, print.date.run((mark.minute, true)))
            };
            (words, mark.href.clone())
        });
        Some(Self {
            when: print.date.run((point.minute, true)),
            value: print.value.run(point.expected),
            between: (!exact).then(ends),
            noted: noted.collect(),
        })
    }

    /// Its ends in words, to follow the value.
    pub(super) fn ends(&self) -> String {
        let ends = self.between.as_ref();
        ends.map_or(String::new(), |(low, high)| format!(" between {low} and {high}"))
    }

    /// The time, and the value with its ends.
    pub(super) fn drawn(self) -> Vec<AnyView> {
        let ends = self.ends();
        let when = view! { <span class="when">{self.when}</span> };
        let read = view! {
            <span class="read">
                <strong class="number">{self.value}</strong>
                {ends}
            </span>
        };
        vec![when.into_any(), read.into_any()]
    }

    /// All of it in one sentence.
    pub(super) fn sentence(&self) -> String {
        let comma = if self.between.is_some() { "," } else { "" };
        let mut words = format!("{}: {}{comma}{}", self.when, self.value, self.ends());
        for (noted, _) in &self.noted {
            words.push_str(". ");
            words.push_str(noted);
        }
        words
    }
}

/// The index of the point nearest to a time; of several at that time the last, as
/// what is so after a fill is what counts.
pub(super) fn nearest(points: &[Point], minute: i64) -> usize {
    let after = points.partition_point(|it| it.minute <= minute);
    let Some(before) = after.checked_sub(1) else {
        let first = points.first().map(|it| it.minute);
        return points.partition_point(|it| Some(it.minute) <= first).saturating_sub(1);
    };
    match points.get(after) {
        Some(next) if next.minute - minute < minute - points[before].minute => {
            points.partition_point(|it| it.minute <= next.minute) - 1
        }
        _ => before,
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Mark, MarkKind};
    use super::*;

    fn at(minutes: &[i64]) -> Vec<Point> {
        let point = |minute: &i64| Point { minute: *minute, low: 28.0, expected: 31.0, high: 34.0 };
        minutes.iter().map(point).collect()
    }

    fn print() -> Print {
        Print {
            date: Callback::new(|(minute, _)| format!("minute {minute}")),
            value: Callback::new(|value| format!("E{value}")),
        }
    }

    #[test]
    fn the_nearest_point_is_the_one_closest_in_time() {
        let points = at(&[0, 10, 11, 40, 40, 40, 90]);
        for minute in -20..120 {
            let found = points[nearest(&points, minute)].minute;
            let least = points.iter().map(|it| (it.minute - minute).abs()).min();
            assert_eq!(Some((found - minute).abs()), least, "minute {minute}");
        }
        assert_eq!(nearest(&points, 38), 5, "after the fill, not before it");
        assert_eq!(nearest(&at(&[5, 5]), 0), 1);
        assert_eq!(nearest(&[], 0), 0);
    }

    #[test]
    fn a_reading_names_what_was_noted() {
        Owner::new().with(|| {
            let mark = |minute, words: &str| Mark {
                minute,
                value: 31.0,
                kind: MarkKind::Fill,
                words: words.to_owned(),
                href: None,
            };
            let timeline = Timeline {
                points: at(&[0, 60]),
                marks: vec![mark(60, "Fill: 16 L E85"), mark(50, "Drained")],
                ..Timeline::default()
            };
            let said = |index| Reading::of(&timeline, index, print()).map(|it| it.sentence());
            let expected =
                "minute 60: E31, between E28 and E34. Fill: 16 L E85. Drained (minute 50)";
            assert_eq!(said(1).as_deref(), Some(expected));
            assert_eq!(said(0).as_deref(), Some("minute 0: E31, between E28 and E34"));
            assert_eq!(said(2), None);
        });
    }

    #[test]
    fn what_is_exact_has_no_ends() {
        Owner::new().with(|| {
            let point = Point { minute: 0, low: 31.0, expected: 31.0, high: 31.0 };
            let timeline = Timeline { points: vec![point], ..Timeline::default() };
            let said = Reading::of(&timeline, 0, print()).map(|it| it.sentence());
            assert_eq!(said.as_deref(), Some("minute 0: E31"));
        });
    }
}
