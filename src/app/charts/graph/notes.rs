//! What the picture cannot show.

use leptos::prelude::*;

use super::{Graph, curve};

/// What lies beyond the chart.
pub(super) fn drawn(graph: &Graph) -> Vec<AnyView> {
    let notes = beyond(graph);
    if notes.is_empty() {
        return Vec::new();
    }
    vec![
        view! { <p class="beyond">{format!("Beyond the chart: {}.", notes.join("; "))}</p> }
            .into_any(),
    ]
}

/// "Port injectors, up to 183 % at 7000 rpm"
fn beyond(graph: &Graph) -> Vec<String> {
    let mut notes = Vec::new();
    for line in &graph.lines {
        let [above, below] = curve::farthest(line, &graph.y);
        for (words, place) in [("up to", above), ("down to", below)] {
            if let Some((x, y)) = place {
                let value = graph.y.print(y, graph.style);
                let at = graph.x.print(x, graph.style);
                notes.push(format!("{}, {words} {value} at {at}", line.name));
            }
        }
    }
    notes
}

#[cfg(test)]
mod tests {
    use super::super::{Axis, Line, Point};
    use super::*;

    #[test]
    fn what_lies_beyond_the_chart_is_said() {
        let line = |name: &str, top: f64| Line {
            name: name.into(),
            points: vec![
                Point::new(1000.0, 20.0, None),
                Point::new(6000.0, top, None),
                Point::new(7000.0, 160.0, None),
            ],
            ..Line::default()
        };
        let graph = Graph {
            x: Axis { unit: "rpm".into(), from: 1000.0, to: 7000.0, ..Axis::default() },
            y: Axis { unit: "%".into(), from: 25.0, to: 170.0, ..Axis::default() },
            lines: vec![line("Injectors", 183.4), line("Pump", 80.0)],
            ..Graph::default()
        };
        let expected = [
            "Injectors, up to 183\u{202f}% at 6000\u{202f}rpm",
            "Injectors, down to 20\u{202f}% at 1000\u{202f}rpm",
            "Pump, down to 20\u{202f}% at 1000\u{202f}rpm",
        ];
        assert_eq!(beyond(&graph), expected);
    }
}
