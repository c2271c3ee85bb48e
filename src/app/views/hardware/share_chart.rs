//! The chart of the power that each part supports, over the ethanol share.

use fillwright::document::{BlendForm, Document, HardwareForm};
use fillwright::message::keys::hardware as keys;
use fillwright::quantity::notation::quantities::POWER;
use fillwright::quantity::notation::{Printer, parse_share};
use fillwright::quantity::{Band, CrankPower};
use fillwright::words::hardware;

use crate::app::charts::{Axis, Chart, Course, Limit, Line, Mark, Point, Side, Window};
use crate::app::hardware_memos::Judged;

/// So far above what is wanted, in parts of it, it no longer matters how far.
const MOST: f64 = 1.6;

/// Room below the lowest line and above the highest.
const BELOW: f64 = 0.85;
const ABOVE: f64 = 1.05;

/// The power that each part supports, over the ethanol share.
pub(super) fn graph(judged: &Judged, document: &Document, printer: &Printer) -> Chart {
    let answer = &judged.answer;
    let hardware: &HardwareForm = &document.here.hardware;
    let unit = POWER.own(printer.units);
    let wanted = unit.value_of(answer.asked.load.peak_power().get());
    let lines: Vec<Line> = answer
        .parts
        .iter()
        .enumerate()
        .map(|(at, part)| {
            let name = hardware::part_answer(part, hardware);
            let points = answer.power_over_share(at).into_iter().map(|(share, power)| {
                let x = share.percent();
                power.map_or(Point::gap(x), |power| {
                    let [low, expected, high] = [power.low(), power.expected(), power.high()]
                        .map(|it| unit.value_of(it.get()));
                    Point::new(x, expected, Some((low, high)))
                })
            });
            Line {
                label: name.clone(),
                name,
                points: points.collect(),
                look: at,
                emphasis: answer.first == Some(at),
            }
        })
        .collect();
    let ends = |of: fn(&Band<CrankPower>) -> CrankPower| {
        let all = (0..answer.parts.len()).flat_map(|at| answer.power_over_share(at));
        let all = all.filter_map(move |(_, power)| Some(unit.value_of(of(&power?).get())));
        all.collect::<Vec<_>>()
    };
    let lowest = ends(Band::low).into_iter().fold(wanted, f64::min);
    let highest = ends(Band::high).into_iter().fold(wanted, f64::max) * ABOVE;
    let highest = highest.min(wanted * MOST);
    let blend = answer.asked.blend;
    let of_blend = match hardware.blend {
        BlendForm::Tank => keys::IN_THE_TANK.say(),
        BlendForm::Typed => keys::BLEND.say(),
    };
    let mut windows = vec![Window {
        name: of_blend.into(),
        from: blend.low().percent(),
        to: blend.high().percent(),
    }];
    windows.extend(document.here.car.calibrations.iter().filter_map(|form| {
        let [from, to] = [&form.low, &form.high].map(|text| parse_share(text).ok());
        Some(Window { name: form.name.clone(), from: from?.percent(), to: to?.percent() })
    }));
    windows.retain(|window| window.from < window.to);
    Chart {
        title: keys::SHARE_CHART.say().into(),
        words: keys::ShareChartWords {
            limits: hardware::limits_of_share(answer, printer).unwrap_or_default(),
        }
        .say(),
        x: Axis {
            name: keys::ETHANOL_SHARE.say().into(),
            unit: "%".into(),
            from: 0.0,
            to: 100.0,
            decimals: 0,
            style: printer.style,
            ..Axis::default()
        },
        y: Axis {
            name: keys::POWER_AT_CRANK.say().into(),
            unit: unit.symbol().into(),
            from: BELOW * lowest,
            to: highest,
            decimals: unit.decimals(),
            style: printer.style,
            ..Axis::default()
        },
        lines,
        limits: vec![Limit {
            name: keys::WANTED.say().into(),
            course: Course::Level { y: wanted, from: None, to: None },
            beyond: Side::Below,
        }],
        windows,
        across: Vec::new(),
        marks: vec![Mark {
            name: printer.grade(blend.expected()),
            x: blend.expected().percent(),
            y: None,
        }],
        entries: Vec::new(),
    }
}
