//! The chart of each part's use over engine speed.

use fillwright::answers::hardware::{HardwareAnswer, PartAnswer};
use fillwright::document::HardwareForm;
use fillwright::message::keys::hardware as keys;
use fillwright::quantity::AngularVelocity;
use fillwright::quantity::notation::Printer;
use fillwright::quantity::notation::quantities::ENGINE_SPEED;
use fillwright::words::hardware;

use crate::app::charts::{Axis, Chart, Course, Limit, Line, Mark, Point, Side};

/// Beyond this use, in percent, how much of it no longer matters.
const TOP: f64 = 160.0;

/// Room above the highest line.
const AIR: f64 = 1.08;

/// The axis of engine speed over the load of an answer.
pub(super) fn speed_axis(
    speeds: impl Iterator<Item = AngularVelocity> + Clone,
    printer: &Printer,
) -> Axis {
    let unit = ENGINE_SPEED.own(printer.units);
    let values = speeds.map(|it| unit.value_of(it));
    Axis {
        name: keys::ENGINE_SPEED.say().into(),
        unit: unit.symbol().into(),
        from: values.clone().fold(f64::INFINITY, f64::min),
        to: values.fold(f64::NEG_INFINITY, f64::max),
        decimals: unit.decimals(),
        style: printer.style,
        ..Axis::default()
    }
}

/// How much of each part is in use, over engine speed.
pub(super) fn graph(answer: &HardwareAnswer, hardware: &HardwareForm, printer: &Printer) -> Chart {
    let rpm = ENGINE_SPEED.own(printer.units);
    let speeds = || answer.asked.load.points.iter().map(|point| point.speed);
    let line = |(at, part): (usize, &PartAnswer)| {
        let name = hardware::part_answer(part, hardware);
        let points = speeds().zip(&part.over_speed.points).map(|(speed, loading)| {
            let x = rpm.value_of(speed);
            loading.as_ref().map_or(Point::gap(x), |loading| {
                let used = loading.used.map(|it| it * 100.0);
                Point::new(x, used.expected(), Some((used.low(), used.high())))
            })
        });
        Line {
            label: name.clone(),
            name,
            points: points.collect(),
            look: at,
            emphasis: answer.first == Some(at),
        }
    };
    let highest = answer
        .parts
        .iter()
        .flat_map(|part| part.over_speed.points.iter().flatten())
        .map(|loading| loading.used.high() * 100.0)
        .fold(100.0, f64::max);
    let first = answer.first.and_then(|at| answer.parts.get(at));
    let mark = first.and_then(|part| {
        let at = part.over_speed.tightest?.at;
        let used = part.over_speed.points.get(at)?.as_ref().ok()?.used.expected();
        let name = hardware::part_answer(part, hardware);
        Some(Mark {
            name: keys::First { part: name }.say(),
            x: rpm.value_of(speeds().nth(at)?),
            y: Some(used * 100.0),
        })
    });
    Chart {
        title: keys::USE_CHART.say().into(),
        words: keys::UseChartWords {
            first: hardware::first_to_give(answer, hardware, printer).unwrap_or_default(),
        }
        .say(),
        x: speed_axis(speeds(), printer),
        y: Axis {
            name: keys::USE.say().into(),
            unit: "%".into(),
            from: 0.0,
            to: (highest * AIR).min(TOP),
            decimals: 0,
            style: printer.style,
            ..Axis::default()
        },
        lines: answer.parts.iter().enumerate().map(line).collect(),
        limits: limits(answer, hardware),
        windows: Vec::new(),
        across: Vec::new(),
        marks: mark.into_iter().collect(),
        entries: Vec::new(),
    }
}

/// A line for each limit of use; parts that share one share its line.
fn limits(answer: &HardwareAnswer, hardware: &HardwareForm) -> Vec<Limit> {
    let mut limits: Vec<(f64, Vec<String>)> = Vec::new();
    for part in &answer.parts {
        let (level, name) = (part.over_speed.limit, hardware::part_answer(part, hardware));
        match limits.iter_mut().find(|it| it.0.to_bits() == level.to_bits()) {
            Some((_, names)) => names.push(name),
            None => limits.push((level, vec![name])),
        }
    }
    let shared = limits.len() == 1;
    let limit = |(level, names): (f64, Vec<String>)| Limit {
        name: if shared {
            keys::LIMIT.say().into()
        } else {
            keys::LimitOf { parts: names.join(", ") }.say()
        },
        course: Course::Level { y: level * 100.0, from: None, to: None },
        beyond: Side::Above,
    };
    limits.into_iter().map(limit).collect()
}

#[cfg(test)]
mod tests {
    use fillwright::answers::hardware::HardwareReading;
    use fillwright::document::{Document, HardwareField, PartKind};
    use fillwright::fuel::Content;
    use fillwright::quantity::notation::{DecimalMark, Entry};
    use fillwright::quantity::{Band, Share};

    use super::*;

    /// The chart of the example on petrol, with a limit of use typed for its pump.
    fn demo(limit: &str) -> Chart {
        let mut document = Document::demo();
        let mut parts = document.here.hardware.parts.iter_mut();
        let pump = parts.find(|it| it.kind == PartKind::PlungerPump).expect("a pump");
        *pump.fields.entry(HardwareField::UseLimit) = Entry::metric(limit);
        let printer = document.settings.printer(DecimalMark::Point);
        let reading = HardwareReading::of(
            &document,
            Some(Content::splash(Band::exact(Share::ZERO))),
            &printer,
        );
        let answer = HardwareAnswer::of(&reading).expect("an answer");
        graph(&answer, &document.here.hardware, &printer)
    }

    #[test]
    fn parts_that_share_a_limit_share_its_line() {
        let graph = demo("");
        assert_eq!(graph.limits.len(), 1);
        assert_eq!(graph.limits[0].name, "Limit");
    }

    #[test]
    fn a_limit_of_its_own_has_a_line_that_says_whose_it_is() {
        let graph = demo("70");
        let of_pump = graph.limits.iter().find(|it| it.name.contains("High-pressure pump"));
        let course = &of_pump.expect("the pump's").course;
        let Course::Level { y, .. } = *course else { panic!("level") };
        assert!((y - 70.0).abs() < 1e-9);
        assert_eq!(graph.limits.len(), 2);
    }

    #[test]
    fn the_first_part_is_marked_on_its_own_line() {
        let graph = demo("70");
        let first = graph.lines.iter().find(|it| it.emphasis).expect("a first one");
        assert_eq!(graph.marks[0].name, format!("First: {}", first.name));
    }
}
