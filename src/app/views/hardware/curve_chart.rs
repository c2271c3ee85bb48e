//! The chart of the power curves.

use fillwright::answers::hardware::{CurveRead, HardwareReading, SetLimit};
use fillwright::document::HardwareForm;
use fillwright::message::Message;
use fillwright::message::keys::hardware as keys;
use fillwright::power::{Limit as PowerLimit, LimitOf, PowerCurve};
use fillwright::quantity::AngularVelocity;
use fillwright::quantity::notation::Printer;
use fillwright::quantity::notation::quantities::{ENGINE_SPEED, POWER, TORQUE};
use fillwright::words::hardware;
use leptos::prelude::*;

use super::gains::Gains;
use super::use_chart::speed_axis;
use crate::app::charts::{Axis, Chart, ChartOnScreen, Course, Limit, Line, Point, Side};
use crate::app::hardware_memos::HardwareMemos;
use crate::app::session::Session;
use crate::app::widgets::{Options, When, holds, key_of, options, said, value_of};

/// Points of each curve that are drawn.
const POINTS: usize = 80;

/// Room above the highest line.
const AIR: f64 = 1.1;

/// What the chart of curves shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Shown {
    Power,
    Torque,
}

const SHOWN: [(Shown, &str, Message); 2] =
    [(Shown::Power, "power", keys::POWER), (Shown::Torque, "torque", keys::TORQUE)];

/// The curves beside each other, and what one gives more than the other.
#[component]
pub(super) fn CurvesCard() -> impl IntoView {
    let session = Session::here();
    let hardware_memos = HardwareMemos::here();
    let some = holds(move || {
        hardware_memos.reading.with(|it| it.curves.iter().any(|curve| curve.at_crank.is_some()))
    });
    let shown = RwSignal::new(Shown::Power);
    let graph = Memo::new(move |_| {
        hardware_memos.reading.with(|reading| {
            session.document.with(|it| {
                session
                    .printer
                    .with(|printer| graph(shown.get(), reading, &it.here.hardware, printer))
            })
        })
    });
    let choose = Callback::new(move |key: String| {
        if let Some(it) = value_of(&SHOWN, &key) {
            shown.set(it);
        }
    });
    view! {
        <When condition=some>
            <section class="card" aria-labelledby="curves-shown-title">
                <h2 id="curves-shown-title">{keys::THE_CURVES.say()}</h2>
                <Options
                    legend=keys::AT_CRANK_AS_MEASURED.say()
                    name="curves-shown"
                    options=options(&SHOWN)
                    chosen=said(move || key_of(&SHOWN, &shown.get()))
                    on_choice=choose
                />
                <ChartOnScreen id="curves-chart" chart=graph.into() />
                <Gains />
            </section>
        </When>
    }
}

/// Power or torque of every curve, with the limits that people set.
pub(super) fn graph(
    shown: Shown,
    reading: &HardwareReading,
    hardware: &HardwareForm,
    printer: &Printer,
) -> Chart {
    let curves = reading.curves.iter().filter_map(|it| Some((it, it.at_crank.as_ref()?)));
    let curves: Vec<_> = curves.collect();
    let speeds = || curves.iter().flat_map(|(_, curve)| <[_; 2]>::from(curve.speeds()));
    let x = speed_axis(speeds(), printer);
    let rpm = ENGINE_SPEED.own(printer.units);
    let (power, torque) = (POWER.own(printer.units), TORQUE.own(printer.units));
    let served = reading.asked.as_ref().map(|it| it.target);
    let served = served.and_then(|at| reading.curves.get(at)).map(|it| it.id);
    let line = |(at, (curve, at_crank)): (usize, &(&CurveRead, &PowerCurve))| {
        let points = at_crank.sampled(POINTS).into_iter().map(|point| {
            let value = match shown {
                Shown::Power => {
                    let band = curve.crank(point.power());
                    let [low, expected, high] = [band.low(), band.expected(), band.high()]
                        .map(|it| power.value_of(it.get()));
                    return Point::new(rpm.value_of(point.speed), expected, Some((low, high)));
                }
                Shown::Torque => torque.value_of(point.torque),
            };
            Point::new(rpm.value_of(point.speed), value, None)
        });
        let name = hardware::curve(&curve.name);
        Line {
            label: name.clone(),
            name,
            points: points.collect(),
            look: at,
            emphasis: served == Some(curve.id),
        }
    };
    let lines: Vec<Line> = curves.iter().enumerate().map(line).collect();
    let peaks = curves.iter().map(|(curve, it)| match shown {
        Shown::Power => power.value_of(curve.crank(it.peak_power().value).high().get()),
        Shown::Torque => torque.value_of(it.peak_torque().value),
    });
    let limits = reading.limits.iter().filter_map(|(form, limit)| {
        let SetLimit::Curve(limit) = limit else { return None };
        let form = hardware.parts.iter().find(|it| it.id == *form)?;
        let value = |speed| match shown {
            Shown::Power => power.value_of(limit.power_at(speed).get()),
            Shown::Torque => torque.value_of(limit.torque_at(speed)),
        };
        Some(Limit {
            name: hardware::part(form),
            course: course(shown, limit, &x, &value),
            beyond: Side::Above,
        })
    });
    let limits: Vec<Limit> = limits.collect();
    let (name, unit) = match shown {
        Shown::Power => (keys::POWER_AT_CRANK.say(), power.symbol()),
        Shown::Torque => (keys::TORQUE_AT_CRANK.say(), torque.symbol()),
    };
    Chart {
        title: name.into(),
        words: keys::CurvesChart { what: name, count: lines.len() }.say(),
        x,
        y: Axis {
            name: name.into(),
            unit: unit.into(),
            from: 0.0,
            to: peaks.fold(1.0, f64::max) * AIR,
            decimals: 0,
            style: printer.style,
            ..Axis::default()
        },
        lines,
        limits,
        windows: Vec::new(),
        across: Vec::new(),
        marks: Vec::new(),
        entries: Vec::new(),
    }
}

/// Where a limit runs: level where it is of what is shown, else along a course.
fn course(
    shown: Shown,
    limit: &PowerLimit,
    x: &Axis,
    value: &dyn Fn(AngularVelocity) -> f64,
) -> Course {
    let rpm = ENGINE_SPEED.units().next();
    let in_rpm = |speed: AngularVelocity| rpm.map_or(0.0, |unit| unit.value_of(speed));
    let ends = limit.speeds.map(|(from, to)| (in_rpm(from), in_rpm(to)));
    let of_shown = match limit.of {
        LimitOf::Power(_) => shown == Shown::Power,
        LimitOf::Torque(_) => shown == Shown::Torque,
    };
    let (from, to) = ends.unwrap_or((x.from, x.to));
    let (from, to) = (from.max(x.from), to.min(x.to));
    if of_shown {
        let y = value(AngularVelocity::default());
        let end = |value| ends.map(|_| value);
        return Course::Level { y, from: end(from), to: end(to) };
    }
    let places = (0..=40_u32).filter_map(|step| {
        let at = from + (to - from) * f64::from(step) / 40.0;
        Some((at, value(rpm?.quantity(at))))
    });
    Course::Through(if from < to { places.collect() } else { Vec::new() })
}

#[cfg(test)]
mod tests {
    use fillwright::document::Document;
    use fillwright::quantity::notation::DecimalMark;

    use super::*;

    fn demo(shown: Shown) -> Chart {
        let document = Document::demo();
        let printer = document.settings.printer(DecimalMark::Point);
        let reading = HardwareReading::of(&document, None, &printer);
        graph(shown, &reading, &document.here.hardware, &printer)
    }

    fn limit<'a>(graph: &'a Chart, name: &str) -> &'a Course {
        &graph.limits.iter().find(|it| it.name == name).expect("a limit").course
    }

    // The example holds 385 N m safe up to 4000 rpm; P[kW] = T n / 9549.2966 by the
    // definition of power.
    #[test]
    fn a_limit_of_torque_is_a_course_among_powers() {
        let graph = demo(Shown::Power);
        let Course::Through(places) = limit(&graph, "Gearbox") else { panic!("not level") };
        let (first, last) = (places[0], places[places.len() - 1]);
        assert!((first.0 - 2000.0).abs() < 1e-6 && (last.0 - 4000.0).abs() < 1e-6);
        for (rpm, kilowatts) in [first, last] {
            assert!((kilowatts - 385.0 * rpm / 9549.2966).abs() < 1e-4, "{kilowatts} at {rpm}");
        }
    }

    #[test]
    fn a_limit_of_what_is_shown_is_level_where_it_holds() {
        let Course::Level { y, from, to } = *limit(&demo(Shown::Torque), "Gearbox") else {
            panic!("level")
        };
        assert!((y - 385.0).abs() < 1e-9);
        assert!(from.is_some_and(|it| (it - 2000.0).abs() < 1e-6));
        assert!(to.is_some_and(|it| (it - 4000.0).abs() < 1e-6));
        let power = demo(Shown::Power);
        let Course::Level { from, to, .. } = *limit(&power, "Engine builder") else {
            panic!("level")
        };
        assert_eq!((from, to), (None, None));
    }
}
