//! The words for power curves.

use crate::answers::hardware::CurveRead;
use crate::answers::hardware::curve_table::{Column, CurveTable, Meaning};
use crate::document::MeasuredAt;
use crate::power::{
    AirCorrection, BandGain, Crossing, DrivelineLoss, Gain, LimitOf, Peak, PeakChange, PowerCurve,
};
use crate::quantity::notation::Printer;
use crate::quantity::{CrankPower, Torque, WheelPower};

use super::Fact;

/// A curve by its name.
pub fn curve(name: &str) -> String {
    let name = name.trim();
    if name.is_empty() { "Curve without a name".into() } else { name.to_owned() }
}

fn tenths(fraction: f64, printer: &Printer) -> String {
    format!("{}\u{202f}%", printer.number(fraction * 100.0, 1))
}

/// The loss in the other convention, and what it may be.
pub fn add_on_figures(loss: DrivelineLoss, printer: &Printer) -> (String, String) {
    let add_on = loss.add_on();
    let ends = printer.number_ends(add_on.map(|it| it * 100.0), 1);
    let [low, expected, high] = ends.map(|it| format!("{it}\u{202f}%"));
    (expected, format!("{low} to {high}"))
}

/// The loss in both conventions.
pub fn add_on(loss: DrivelineLoss, printer: &Printer) -> String {
    let (add_on, range) = add_on_figures(loss, printer);
    format!(
        "{} of crank power is the same as {add_on} added to wheel power, {range}. The add-on is never meant here.",
        tenths(loss.share_of_crank().expected(), printer)
    )
}

/// What a column was taken for: "Column 2, “Torque (Nm)”: torque in N·m, at the wheels"
pub fn column(at: usize, column: &Column) -> String {
    let header = column.header.trim();
    let named = if header.is_empty() { String::new() } else { format!(", “{header}”") };
    let mut meaning = match (column.meaning, column.is_read) {
        (Meaning::Unknown, _) => "not used".to_owned(),
        (meaning, false) => format!("{}, not used", meaning.name()),
        (meaning, true) => match column.unit {
            Some(unit) if column.unit_is_assumed => {
                format!("{} in {unit}, as the table names no unit", meaning.name())
            }
            Some(unit) => format!("{} in {unit}", meaning.name()),
            None => meaning.name().to_owned(),
        },
    };
    match column.place.filter(|_| column.is_read) {
        Some(MeasuredAt::Wheel) => meaning += ", at the wheels",
        Some(MeasuredAt::Crank) => meaning += ", at the crank",
        None => {}
    }
    format!("Column {}{named}: {meaning}", at + 1)
}

/// The heading of a table that names another place than the one chosen.
pub fn other_place(said: MeasuredAt) -> String {
    let (said, marked) = match said {
        MeasuredAt::Wheel => ("at the wheels", "at the crank"),
        MeasuredAt::Crank => ("at the crank", "at the wheels"),
    };
    format!(
        "The heading says that it was measured {said}, but below it is marked as {marked}. Correct one of them."
    )
}

/// How many rows were read, and from where to where.
pub fn rows_read(table: &CurveTable, printer: &Printer) -> String {
    let speeds = table.rows.iter().map(|row| row.speed);
    let low = speeds.clone().reduce(|a, b| if b < a { b } else { a });
    let high = speeds.reduce(|a, b| if b > a { b } else { a });
    let rows = keys::Rows { count: table.rows.len() }.say();
    let range = match (low, high) {
        (Some(low), Some(high)) => {
            format!(", {} to {}", printer.engine_speed(low), printer.engine_speed(high))
        }
        _ => String::new(),
    };
    format!("{rows} read{range}.")
}

/// Lines before the table that are neither header nor row.
pub fn unread(table: &CurveTable) -> Option<String> {
    let lines: Vec<String> = table.unread.iter().map(ToString::to_string).collect();
    (!lines.is_empty()).then(|| format!("Above the table, not read: line {}.", lines.join(", ")))
}

/// A limit that a curve crosses.
pub fn crossing(name: &str, crossing: &Crossing, printer: &Printer) -> String {
    let by = match crossing.worst.value {
        LimitOf::Power(power) => printer.power(power.get()),
        LimitOf::Torque(torque) => printer.torque(torque),
    };
    format!(
        "Above the {name} from {} to {}, by up to {by} at {}.",
        printer.engine_speed(crossing.from),
        printer.engine_speed(crossing.to),
        printer.engine_speed(crossing.worst.speed)
    )
}

/// A correction that lies beyond what such rules are meant for.
pub fn correction_warning(curve: &CurveRead, printer: &Printer) -> Option<String> {
    let all = [curve.corrected, curve.taken_off];
    let unusual = all.into_iter().flatten().find(|it| !it.is_usual())?;
    Some(format!(
        "{}: the correction to {} is × {}, beyond the 0.93 to 1.07 for which such rules are meant. Repeat the run in other weather.",
        self::curve(&curve.name),
        unusual.rule.name(),
        printer.number(unusual.factor, 3)
    ))
}

/// The highest power and torque of a curve.
pub fn curve_facts(curve: &CurveRead, at_crank: &PowerCurve, printer: &Printer) -> Vec<Fact> {
    let power = at_crank.peak_power();
    let torque = at_crank.peak_torque();
    let at = |speed| format!("at {}", printer.engine_speed(speed));
    let crank = curve.crank(power.value);
    let [low, _, high] = printer.power_ends(crank.map(CrankPower::get));
    let range = if low == high { String::new() } else { format!(", {low} to {high}") };
    let measured = match curve.place {
        MeasuredAt::Crank => "measured there",
        MeasuredAt::Wheel => "from the wheels",
    };
    let mut facts = vec![Fact::new(
        "Power at the crank",
        printer.power(power.value.get()),
        format!("{}{range}, {measured}", at(power.speed)),
    )];
    if let Some(wheel) = curve.wheel(power.value) {
        let [low, _, high] = printer.power_ends(wheel.map(WheelPower::get));
        let range = if low == high { "measured there".into() } else { format!("{low} to {high}") };
        facts.push(Fact::new("Power at the wheels", printer.power(wheel.expected().get()), range));
    }
    facts.push(Fact::new("Torque at the crank", printer.torque(torque.value), at(torque.speed)));
    facts
}

/// The highest power of a curve as a rule corrects it.
pub fn corrected(curve: &CurveRead, at_crank: &PowerCurve, printer: &Printer) -> Vec<Fact> {
    let mut facts = Vec::new();
    if let Some(rule) = curve.taken_off {
        facts.push(Fact::new(
            format!("Taken off: {}", rule.rule.name()),
            format!("÷ {}", printer.number(rule.factor, 3)),
            "so all figures here are as measured".into(),
        ));
    }
    if let Some(rule) = curve.corrected
        && let Ok(scaled) = at_crank.scaled(rule.factor)
    {
        facts.push(Fact::new(
            format!("Power by {}", rule.rule.name()),
            printer.power(scaled.peak_power().value.get()),
            format!(
                "at the crank, × {}; a boost that is held absolute makes it too much",
                printer.number(rule.factor, 3)
            ),
        ));
    }
    facts
}

/// What one curve gives more than another.
pub fn compared(gain: &Gain, printer: &Printer) -> Vec<Fact> {
    let range = format!(
        "{} to {}",
        printer.engine_speed(gain.speeds.0),
        printer.engine_speed(gain.speeds.1)
    );
    let power = |it: CrankPower| printer.power(it.get());
    let torque = |it: Torque| printer.torque(it);
    vec![
        peak(
            "Most power at the crank",
            &gain.peak_power,
            gain.peak_power.relative(),
            &power,
            printer,
        ),
        mean("Power, on average", &gain.power, &range, &power, printer),
        peak(
            "Most torque at the crank",
            &gain.peak_torque,
            gain.peak_torque.relative(),
            &torque,
            printer,
        ),
        mean("Torque, on average", &gain.torque, &range, &torque, printer),
    ]
}

fn peak<T: Copy>(
    what: &str,
    change: &PeakChange<T>,
    relative: f64,
    print: &dyn Fn(T) -> String,
    printer: &Printer,
) -> Fact {
    let (before, after) = (print(change.before.value), print(change.after.value));
    Fact::new(what, printer.change(relative), format!("{before} before, {after} after"))
}

fn mean<T: Copy>(
    what: &str,
    gain: &BandGain<T>,
    range: &str,
    print: &dyn Fn(T) -> String,
    printer: &Printer,
) -> Fact {
    let end =
        |peak: Peak<T>| format!("{} at {}", print(peak.value), printer.engine_speed(peak.speed));
    Fact::new(
        format!("{what}, {range}"),
        printer.change(gain.relative),
        format!("{}; most {}, least {}", print(gain.mean), end(gain.largest), end(gain.smallest)),
    )
}

/// A correction as a choice.
pub fn correction(rule: AirCorrection) -> String {
    match rule {
        AirCorrection::None => "As measured".into(),
        rule => format!("Corrected to {}", rule.name()),
    }
}
