//! What the picture cannot show: what lies beyond it, and what was noted.

use fillwright::message::keys::charts as keys;
use leptos::prelude::*;

use super::chart::Chart;
use super::curve;
use super::reading::Noted;

/// What lies beyond the chart.
pub(super) fn beyond(chart: &Chart) -> Vec<AnyView> {
    let notes = farthest(chart);
    if notes.is_empty() {
        return Vec::new();
    }
    vec![view! { <p class="beyond">{keys::Beyond { what: notes.join("; ") }.say()}</p> }.into_any()]
}

/// What was noted, with links to where the log says so.
pub(super) fn noted(noted: Vec<Noted>) -> Vec<AnyView> {
    let each = |(words, href): Noted| match href {
        Some(href) => view! { <a href=href>{words}</a> }.into_any(),
        None => view! { <span>{words}</span> }.into_any(),
    };
    noted.into_iter().map(each).collect()
}

/// "Port injectors, up to 183 % at 7000 rpm"
fn farthest(chart: &Chart) -> Vec<String> {
    let mut notes = Vec::new();
    for line in &chart.lines {
        let [above, below] = curve::farthest(line, &chart.y);
        let line = &line.name;
        let at = |(x, y): (f64, f64)| (chart.y.print(y), chart.x.print(x));
        notes.extend(above.map(at).map(|(value, place)| keys::UpTo { line, value, place }.say()));
        notes.extend(below.map(at).map(|(value, place)| keys::DownTo { line, value, place }.say()));
    }
    notes
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::charts::axis::Axis;
    use crate::app::charts::chart::Line;
    use crate::app::charts::point::Point;

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
        let chart = Chart {
            x: Axis { unit: "rpm".into(), from: 1000.0, to: 7000.0, ..Axis::default() },
            y: Axis { unit: "%".into(), from: 25.0, to: 170.0, ..Axis::default() },
            lines: vec![line("Injectors", 183.4), line("Pump", 80.0)],
            ..Chart::default()
        };
        let expected = [
            "Injectors, up to 183\u{202f}% at 6000\u{202f}rpm",
            "Injectors, down to 20\u{202f}% at 1000\u{202f}rpm",
            "Pump, down to 20\u{202f}% at 1000\u{202f}rpm",
        ];
        assert_eq!(farthest(&chart), expected);
    }
}
