//! The lines of the chart as a table, and what else it shows as a list.

use fillwright::message::keys::{charts as keys, notation};
use leptos::prelude::*;

use super::chart::{Chart, Course, Line, Side, Window};
use super::curve;
use super::notes::noted;
use super::reading::Reading;
use super::stops::Stop;
use crate::app::widgets::{Drawn, table};

/// So many rows are read in a table.
const ROWS: usize = 50;

/// What opens the table; it is made when it is opened.
#[component]
pub(super) fn AsTable(what: Callback<(), Vec<AnyView>>) -> impl IntoView {
    let opened = RwSignal::new(false);
    let shown = Callback::new(move |()| if opened.get() { what.run(()) } else { Vec::new() });
    view! {
        <details on:toggle:target=move |event| opened.set(event.target().has_attribute("open"))>
            <summary>{keys::AS_A_TABLE.say()}</summary>
            <Drawn what=shown />
        </details>
    }
}

/// The values at the stops of the crosshair, and the limits, windows and marks.
pub(super) fn drawn(id: &str, chart: &Chart, stops: &[Stop]) -> Vec<AnyView> {
    let id = format!("{id}-table");
    let names = chart.lines.iter().map(|it| it.name.clone());
    let noted = (!chart.entries.is_empty()).then(|| keys::NOTED.say().to_owned());
    let headings = std::iter::once(chart.x.title()).chain(names).chain(noted).collect();
    // A log is read from its newest end; the whole of it is for a spreadsheet.
    let is_log = chart.x.date.is_some();
    let rows = if is_log { newest(stops.len()) } else { thinned(stops.len()) };
    let caption = match (is_log, stops.len().saturating_sub(rows.len())) {
        (false, _) => format!("{}: {}", chart.title, chart.y.title()),
        (true, 0) => keys::NewestFirst { what: chart.y.title() }.say(),
        (true, older) => keys::NewestFirstCut { what: chart.y.title(), older }.say(),
    };
    let rows = rows.into_iter().filter_map(|index| row(chart, stops, index)).collect();
    let name = caption.clone();
    let others = others(chart);
    let table = table("readings", caption, headings, rows);
    let mut parts = vec![if is_log {
        // What was noted is words: they wrap.
        table
    } else {
        // A table wider than the page is moved by keys too.
        view! {
            <div class="wide" id=id tabindex="0" role="group" aria-label=name>
                {table}
            </div>
        }
        .into_any()
    }];
    if !others.is_empty() {
        let items: Vec<_> =
            others.into_iter().map(|it| view! { <li>{it}</li> }.into_any()).collect();
        parts.push(view! { <ul class="plain others">{items}</ul> }.into_any());
    }
    parts
}

fn row(chart: &Chart, stops: &[Stop], index: usize) -> Option<AnyView> {
    let stop = *stops.get(index)?;
    let cells: Vec<_> = chart.lines.iter().map(|line| cell(chart, line, stop)).collect();
    let noted = (!chart.entries.is_empty()).then(|| {
        let noted = Reading::of(chart, stops, index).map_or_else(Vec::new, |it| noted(it.noted));
        view! { <td>{noted}</td> }
    });
    let row = view! {
        <tr>
            <th scope="row">{chart.x.number(stop.x)}</th>
            {cells}
            {noted}
        </tr>
    };
    Some(row.into_any())
}

fn cell(chart: &Chart, line: &Line, stop: Stop) -> AnyView {
    let number = |value: f64| chart.y.number(value);
    let Some(figure) = curve::at(&line.points, stop) else {
        return view! { <td>"—"</td> }.into_any();
    };
    let (low, high) = chart.y.ends(figure);
    let ends = (figure.low < figure.high).then(|| notation::Band { low, high }.say());
    view! {
        <td>
            <span>{number(figure.expected)}</span>
            " "
            <small>{ends}</small>
        </td>
    }
    .into_any()
}

/// Which of so many stops a table can have rows for: every second, third and so on,
/// and the last.
fn thinned(count: usize) -> Vec<usize> {
    let Some(last) = count.checked_sub(1) else { return Vec::new() };
    let step = last.div_ceil(ROWS - 1).max(1);
    (0..last).step_by(step).chain([last]).collect()
}

/// The last of so many stops, as many as a table can have rows, the very last first.
fn newest(count: usize) -> Vec<usize> {
    (0..count).rev().take(ROWS).collect()
}

/// Limits, windows and marks in words.
fn others(chart: &Chart) -> Vec<String> {
    let x = |value: f64| chart.x.print(value);
    let y = |value: f64| chart.y.print(value);
    let mut others = Vec::new();
    for limit in &chart.limits {
        let bound = match &limit.course {
            Course::Level { y: level, from: None, to: None } => y(*level),
            Course::Level { y: level, from, to } => {
                let (from, to) = (from.unwrap_or(chart.x.from), to.unwrap_or(chart.x.to));
                keys::LevelFromTo { level: y(*level), from: x(from), to: x(to) }.say()
            }
            Course::Through(places) => {
                let places =
                    places.iter().map(|it| keys::ValueAt { value: y(it.1), place: x(it.0) }.say());
                places.collect::<Vec<_>>().join(", ")
            }
        };
        let name = &limit.name;
        others.push(match limit.beyond {
            Side::Above => keys::AtMost { name, bound }.say(),
            Side::Below => keys::AtLeast { name, bound }.say(),
        });
    }
    let window = |window: &Window, print: &dyn Fn(f64) -> String| {
        let (from, to) = (print(window.from), print(window.to));
        keys::Window { name: &window.name, from, to }.say()
    };
    others.extend(chart.windows.iter().map(|it| window(it, &x)));
    others.extend(chart.across.iter().map(|it| window(it, &y)));
    for mark in &chart.marks {
        let value = mark.y.map_or(String::new(), |it| format!(", {}", y(it)));
        others.push(format!("{}: {}{value}", mark.name, x(mark.x)));
    }
    others
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::charts::axis::Axis;
    use crate::app::charts::chart::{Limit, Mark, Window};

    #[test]
    fn a_long_table_keeps_both_ends() {
        for count in [1, 2, 49, 50, 51, 73, 1000] {
            let shown = thinned(count);
            assert!(shown.len() <= ROWS, "{count}");
            assert!(shown.len() == count || count > ROWS, "{count}");
            let steps: Vec<_> = shown.windows(2).map(|it| it[1] - it[0]).collect();
            let (_, even) = steps.split_last().unwrap_or((&0, &[]));
            assert!(even.windows(2).all(|it| it[0] == it[1]), "{steps:?}");
            assert_eq!((shown.first(), shown.last()), (Some(&0), Some(&(count - 1))));
            assert!(shown.windows(2).all(|it| it[0] < it[1]), "{count}");
        }
        assert_eq!(thinned(0), [0; 0]);
    }

    #[test]
    fn a_long_log_keeps_its_newest_rows() {
        assert_eq!(newest(3), [2, 1, 0]);
        let shown = newest(ROWS + 7);
        assert_eq!((shown.len(), shown[0], shown[ROWS - 1]), (ROWS, ROWS + 6, 7));
    }

    #[test]
    fn all_that_is_no_line_is_in_words() {
        let limit = |name: &str, course, beyond| Limit { name: name.into(), course, beyond };
        let chart = Chart {
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
            ..Chart::default()
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
            others(&chart),
            expected.map(|it| it.replace(" %", "\u{202f}%").replace(" rpm", "\u{202f}rpm"))
        );
    }
}
