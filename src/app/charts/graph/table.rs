//! The lines of the chart as a table, and what else it shows as a list.

use leptos::prelude::*;

use super::{Course, Graph, Line, Side, curve};
use crate::app::charts::plot::{ROWS, heading, table};

/// The values at the stops of the crosshair, and the limits, windows and marks.
pub(super) fn drawn(id: &str, graph: &Graph, stops: &[f64]) -> Vec<AnyView> {
    let id = format!("{id}-table");
    let names = graph.lines.iter().map(|it| it.name.clone());
    let headings = std::iter::once(graph.x.title()).chain(names).map(heading).collect();
    let rows = thinned(stops).into_iter().map(|x| row(graph, x)).collect();
    let caption = format!("{}: {}", graph.title, graph.y.title());
    let name = caption.clone();
    let others = others(graph);
    let mut parts = vec![
        // A table wider than the page is moved by keys too.
        view! {
            <div class="wide" id=id tabindex="0" role="group" aria-label=name>
                {table("readings", caption, headings, rows)}
            </div>
        }
        .into_any(),
    ];
    if !others.is_empty() {
        let items: Vec<_> =
            others.into_iter().map(|it| view! { <li>{it}</li> }.into_any()).collect();
        parts.push(view! { <ul class="plain others">{items}</ul> }.into_any());
    }
    parts
}

fn row(graph: &Graph, x: f64) -> AnyView {
    let cells: Vec<_> = graph.lines.iter().map(|line| cell(graph, line, x)).collect();
    view! {
        <tr>
            <th scope="row">{graph.x.number(x, graph.style)}</th>
            {cells}
        </tr>
    }
    .into_any()
}

fn cell(graph: &Graph, line: &Line, x: f64) -> AnyView {
    let number = |value: f64| graph.y.number(value, graph.style);
    let Some(figure) = curve::at(&line.points, x) else {
        return view! { <td>"—"</td> }.into_any();
    };
    let (low, high) = graph.y.ends(figure, graph.style);
    let ends = (figure.low < figure.high).then(|| format!("{low} to {high}"));
    view! {
        <td>
            <span>{number(figure.expected)}</span>
            <small>{ends}</small>
        </td>
    }
    .into_any()
}

/// As many of the stops as a table can have rows: every second, third and so on,
/// and the last.
fn thinned(stops: &[f64]) -> Vec<f64> {
    let Some((last, others)) = stops.split_last() else { return Vec::new() };
    let step = others.len().div_ceil(ROWS - 1).max(1);
    others.iter().step_by(step).chain([last]).copied().collect()
}

/// Limits, windows and marks in words.
fn others(graph: &Graph) -> Vec<String> {
    let x = |value: f64| graph.x.print(value, graph.style);
    let y = |value: f64| graph.y.print(value, graph.style);
    let mut others = Vec::new();
    for limit in &graph.limits {
        let bound = match limit.beyond {
            Side::Above => "at most",
            Side::Below => "at least",
        };
        let course = match &limit.course {
            Course::Level { y: level, from: None, to: None } => y(*level),
            Course::Level { y: level, from, to } => {
                let (from, to) = (from.unwrap_or(graph.x.from), to.unwrap_or(graph.x.to));
                format!("{} from {} to {}", y(*level), x(from), x(to))
            }
            Course::Through(places) => {
                let places = places.iter().map(|it| format!("{} at {}", y(it.1), x(it.0)));
                places.collect::<Vec<_>>().join(", ")
            }
        };
        others.push(format!("{}: {bound} {course}", limit.name));
    }
    for window in &graph.windows {
        others.push(format!("{}: {} to {}", window.name, x(window.from), x(window.to)));
    }
    for window in &graph.across {
        others.push(format!("{}: {} to {}", window.name, y(window.from), y(window.to)));
    }
    for mark in &graph.marks {
        let value = mark.y.map_or(String::new(), |it| format!(", {}", y(it)));
        others.push(format!("{}: {}{value}", mark.name, x(mark.x)));
    }
    others
}

#[cfg(test)]
mod tests {
    use super::super::{Axis, Limit, Mark, Window};
    use super::*;

    #[test]
    fn a_long_table_keeps_both_ends() {
        for count in [1_u16, 2, 49, 50, 51, 73, 1000] {
            let stops: Vec<f64> = (0..count).map(f64::from).collect();
            let shown = thinned(&stops);
            assert!(shown.len() <= ROWS, "{count}");
            assert!(shown.len() == stops.len() || stops.len() > ROWS, "{count}");
            let steps: Vec<_> = shown.windows(2).map(|it| it[1] - it[0]).collect();
            let (_, even) = steps.split_last().unwrap_or((&0.0, &[]));
            assert!(even.windows(2).all(|it| (it[0] - it[1]).abs() < 1e-9), "{steps:?}");
            assert_eq!((shown.first(), shown.last()), (stops.first(), stops.last()));
            assert!(shown.windows(2).all(|it| it[0] < it[1]), "{count}");
        }
        assert_eq!(thinned(&[]), [0.0; 0]);
    }

    #[test]
    fn all_that_is_no_line_is_in_words() {
        let limit = |name: &str, course, beyond| Limit { name: name.into(), course, beyond };
        let graph = Graph {
            x: Axis { unit: "rpm".into(), from: 1000.0, to: 7000.0, ..Axis::default() },
            y: Axis { unit: "%".into(), to: 150.0, ..Axis::default() },
            limits: vec![
                limit("Duty", Course::Level { y: 85.0, from: None, to: None }, Side::Above),
                limit("Idle", Course::Level { y: 5.0, from: None, to: Some(2000.0) }, Side::Below),
                limit("Rail", Course::Through(vec![(3000.0, 90.0), (7000.0, 70.0)]), Side::Above),
            ],
            windows: vec![Window { name: "Boost".into(), from: 2500.0, to: 6500.0 }],
            across: vec![Window { name: "Map".into(), from: 24.0, to: 40.0 }],
            marks: vec![Mark { name: "Gives first".into(), x: 6200.0, y: Some(100.0) }],
            ..Graph::default()
        };
        let expected = [
            "Duty: at most 85 %",
            "Idle: at least 5 % from 1000 rpm to 2000 rpm",
            "Rail: at most 90 % at 3000 rpm, 70 % at 7000 rpm",
            "Boost: 2500 rpm to 6500 rpm",
            "Map: 24 % to 40 %",
            "Gives first: 6200 rpm, 100 %",
        ];
        assert_eq!(
            others(&graph),
            expected.map(|it| it.replace(" %", "\u{202f}%").replace(" rpm", "\u{202f}rpm"))
        );
    }
}
