//! What the chart says at one place.

use leptos::prelude::*;

use super::{Figure, Graph, Line, curve, draw};

/// What is said where a line has a gap.
const NONE: &str = "no figure";

/// All lines at one place, in words.
#[derive(Debug)]
pub(super) struct Reading {
    /// The place with its unit.
    pub(super) place: String,
    /// The names of the marks there.
    marks: Vec<String>,
    values: Vec<Value>,
}

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
    pub(super) fn of(graph: &Graph, x: f64) -> Self {
        let near = 1e-9 * (graph.x.to - graph.x.from);
        let marks = graph.marks.iter().filter(|it| (it.x - x).abs() <= near);
        let print = |value: f64| graph.y.print(value, graph.style);
        let value = |line: &Line| {
            let figure = curve::at(&line.points, x);
            let ends = |it: Figure| {
                let (low, high) = graph.y.ends(it, graph.style);
                (it.low < it.high).then(|| (low, graph.y.with_unit(high)))
            };
            Value {
                name: line.name.clone(),
                look: line.look,
                emphasis: line.emphasis,
                expected: figure.map(|it| print(it.expected)),
                between: figure.and_then(ends),
            }
        };
        Self {
            place: graph.x.print(x, graph.style),
            marks: marks.map(|it| it.name.clone()).collect(),
            values: graph.lines.iter().map(value).collect(),
        }
    }

    /// A row of the key for each line of the picture.
    pub(super) fn drawn(self) -> Vec<AnyView> {
        self.values.into_iter().map(Value::drawn).collect()
    }

    /// All of it in one sentence.
    pub(super) fn sentence(&self) -> String {
        let values: Vec<String> = self.values.iter().map(Value::sentence).collect();
        let values = values.join("; ");
        if self.marks.is_empty() {
            format!("{}: {values}", self.place)
        } else {
            format!("{} ({}): {values}", self.place, self.marks.join(", "))
        }
    }
}

impl Value {
    fn drawn(self) -> AnyView {
        let class = if self.emphasis { "strong" } else { "" };
        let expected = match self.expected {
            Some(value) => view! { <strong class="number">{value}</strong> }.into_any(),
            None => NONE.into_any(),
        };
        let ends = self.between.map(|(low, high)| format!("{low} to {high}"));
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
        let name = &self.name;
        let ends = self.between.as_ref();
        let ends = ends.map_or(String::new(), |(low, high)| format!(", between {low} and {high}"));
        format!("{name} {}{ends}", self.expected.as_deref().unwrap_or(NONE))
    }
}

#[cfg(test)]
mod tests {
    use fillwright::quantity::notation::{DecimalMark, Style};

    use super::super::{Axis, Mark, Point};
    use super::*;

    fn graph() -> Graph {
        let line =
            |name: &str, points: Vec<Point>| Line { name: name.into(), points, ..Line::default() };
        Graph {
            x: Axis { unit: "rpm".into(), from: 1000.0, to: 7000.0, ..Axis::default() },
            y: Axis { unit: "%".into(), to: 150.0, decimals: 1, ..Axis::default() },
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
            style: Style { decimal: DecimalMark::Comma },
            ..Graph::default()
        }
    }

    #[test]
    fn a_reading_names_every_line_with_its_band() {
        let expected = "3000\u{202f}rpm (peak torque): Pump 50,0\u{202f}%, between \
                        47,0 and 55,0\u{202f}%; Injectors 71,3\u{202f}%";
        assert_eq!(Reading::of(&graph(), 3000.0).sentence(), expected);
    }

    #[test]
    fn a_gap_is_said() {
        let said = Reading::of(&graph(), 3500.0).sentence();
        assert!(said.ends_with("; Injectors no figure"), "{said}");
        assert!(said.starts_with("3500\u{202f}rpm: "), "{said}");
    }
}
