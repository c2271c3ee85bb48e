//! What the chart says at one place.

use fillwright::message::Message;
use fillwright::message::keys::{charts as keys, notation};
use leptos::prelude::*;

use super::chart::{Chart, Line};
use super::point::Figure;
use super::stops::{Stop, nearest};
use super::{curve, draw};

/// What is said where a line has a gap.
const NONE: Message = keys::NO_FIGURE;

/// All lines at one place, in words.
#[derive(Debug)]
pub(super) struct Reading {
    /// The place with its unit.
    pub(super) place: String,
    /// The names of the marks there.
    marks: Vec<String>,
    values: Vec<Value>,
    pub(super) noted: Vec<Noted>,
}

/// What somebody noted, and where the log says so.
pub(super) type Noted = (String, Option<String>);

/// One line at a place, in words.
#[derive(Debug)]
struct Value {
    name: String,
    look: usize,
    emphasis: bool,
    expected: Option<String>,
    /// Its ends, the high one with the unit, where it is not exact.
    between: Option<(String, String)>,
}

impl Reading {
    /// The stop at an index, with what is marked and noted there.
    pub(super) fn of(chart: &Chart, stops: &[Stop], index: usize) -> Option<Self> {
        let stop = *stops.get(index)?;
        let is_here = |x: f64| !stop.is_before && (x - stop.x).abs() <= chart.x.near();
        let marks = chart.marks.iter().filter(|it| is_here(it.x));
        let value = |line: &Line| {
            let figure = curve::at(&line.points, stop);
            let ends = |it: Figure| {
                let (low, high) = chart.y.ends(it);
                (it.low < it.high).then(|| (low, chart.y.with_unit(high)))
            };
            Value {
                name: line.name.clone(),
                look: line.look,
                emphasis: line.emphasis,
                expected: figure.map(|it| chart.y.print(it.expected)),
                between: figure.and_then(ends),
            }
        };
        let noted = chart.entries.iter().filter(|it| nearest(stops, it.x) == index);
        let noted = noted.map(|it| {
            let words = if is_here(it.x) {
                it.words.clone()
            } else {
                format!("{} ({})", it.words, chart.x.print(it.x))
            };
            (words, it.href.clone())
        });
        Some(Self {
            place: chart.x.print(stop.x),
            marks: marks.map(|it| it.name.clone()).collect(),
            values: chart.lines.iter().map(value).collect(),
            noted: noted.collect(),
        })
    }

    /// A row of the key for each line of the picture.
    pub(super) fn values(self) -> Vec<AnyView> {
        self.values.into_iter().map(Value::drawn).collect()
    }

    /// All of it in one sentence.
    pub(super) fn sentence(&self) -> String {
        let values: Vec<String> = self.values.iter().map(Value::sentence).collect();
        let marks = self.marks.join(", ");
        let marks = if marks.is_empty() { marks } else { format!(" ({marks})") };
        let mut words = format!("{}{marks}: {}", self.place, values.join("; "));
        for (noted, _) in &self.noted {
            words.push_str(". ");
            words.push_str(noted);
        }
        words
    }
}

impl Value {
    fn drawn(self) -> AnyView {
        let class = if self.emphasis { "strong" } else { "" };
        let expected = match self.expected {
            Some(value) => view! { <strong class="number">{value}</strong> }.into_any(),
            None => NONE.say().into_any(),
        };
        let ends = self.between.map(|(low, high)| notation::Band { low, high }.say());
        view! {
            <li class=class>
                {draw::sample(self.look, self.emphasis)} <span class="line-name">{self.name}</span>
                <span class="read">{expected}</span>
                <span class="ends number">{ends}</span>
            </li>
        }
        .into_any()
    }

    fn sentence(&self) -> String {
        let line = &self.name;
        let value = self.expected.as_deref().unwrap_or_else(|| NONE.say());
        match &self.between {
            Some((low, high)) => keys::ValueBetween { line, value, low, high }.say(),
            None => keys::Value { line, value }.say(),
        }
    }
}

#[cfg(test)]
mod tests {
    use fillwright::quantity::notation::{DecimalMark, Style};

    use super::*;
    use crate::app::charts::axis::{Axis, PrintDate};
    use crate::app::charts::chart::{Entry, EntryKind, Mark};
    use crate::app::charts::point::Point;

    fn chart() -> Chart {
        let line =
            |name: &str, points: Vec<Point>| Line { name: name.into(), points, ..Line::default() };
        let style = Style { decimal: DecimalMark::Comma };
        Chart {
            x: Axis { unit: "rpm".into(), from: 1000.0, to: 7000.0, ..Axis::default() },
            y: Axis { unit: "%".into(), to: 150.0, decimals: 1, style, ..Axis::default() },
            lines: vec![
                line(
                    "Pump",
                    vec![
                        Point::new(2000.0, 40.0, Some((38.0, 44.0))),
                        Point::new(4000.0, 60.0, Some((56.0, 66.0))),
                    ],
                ),
                line("Injectors", vec![Point::new(3000.0, 71.28, None), Point::gap(3500.0)]),
            ],
            marks: vec![Mark { name: "peak torque".into(), x: 3000.0, y: None }],
            ..Chart::default()
        }
    }

    fn said(chart: &Chart, stop: Stop) -> String {
        let said = Reading::of(chart, &[stop], 0).map(|it| it.sentence());
        said.expect("a reading")
    }

    #[test]
    fn a_reading_names_every_line_with_its_band() {
        let expected = "3000\u{202f}rpm (peak torque): Pump 50,0\u{202f}%, between \
                        47,0 and 55,0\u{202f}%; Injectors 71,3\u{202f}%";
        assert_eq!(said(&chart(), Stop::at(3000.0)), expected);
    }

    #[test]
    fn a_gap_is_said() {
        let said = said(&chart(), Stop::at(3500.0));
        assert!(said.ends_with("; Injectors no figure"), "{said}");
        assert!(said.starts_with("3500\u{202f}rpm: "), "{said}");
    }

    fn over_time(points: Vec<Point>) -> Chart {
        let date = |minute: i64, _: bool| format!("minute {minute}");
        let line = Line { name: "Expected".into(), points, ..Line::default() };
        Chart {
            x: Axis { to: 60.0, date: Some(PrintDate(date)), ..Axis::default() },
            y: Axis { unit: "%".into(), to: 100.0, ..Axis::default() },
            lines: vec![line],
            ..Chart::default()
        }
    }

    #[test]
    fn a_reading_names_what_was_noted() {
        let point = |x| Point::new(x, 31.0, Some((28.0, 34.0)));
        let mut chart = over_time(vec![point(0.0), point(60.0)]);
        chart.entries = [(60.0, "Fill: 16 L E85"), (50.0, "Drained")]
            .map(|(x, words)| Entry {
                x,
                y: 31.0,
                kind: EntryKind::Fill,
                words: words.to_owned(),
                href: None,
            })
            .into();
        let stops = [0.0, 60.0].map(Stop::at);
        let said = |index| Reading::of(&chart, &stops, index).map(|it| it.sentence());
        let expected = "minute 60: Expected 31\u{202f}%, between 28 and 34\u{202f}%. \
                        Fill: 16 L E85. Drained (minute 50)";
        assert_eq!(said(1).as_deref(), Some(expected));
        let expected = "minute 0: Expected 31\u{202f}%, between 28 and 34\u{202f}%";
        assert_eq!(said(0).as_deref(), Some(expected));
        assert_eq!(said(2), None);
    }

    #[test]
    fn what_is_exact_has_no_ends() {
        let chart = over_time(vec![Point::new(0.0, 31.0, None)]);
        assert_eq!(said(&chart, Stop::at(0.0)), "minute 0: Expected 31\u{202f}%");
    }
}
