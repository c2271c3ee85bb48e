//! The words for power curves.

use crate::answers::hardware::CurveRead;
use crate::answers::hardware::curve_table::{Column, CurveTable, Meaning};
use crate::document::MeasuredAt;
use crate::message::Message;
use crate::message::keys::{hardware_said as keys, notation};
use crate::power::{
    AirCorrection, BandGain, Crossing, DrivelineLoss, Gain, LimitOf, Peak, PeakChange, PowerCurve,
};
use crate::quantity::notation::Printer;
use crate::quantity::{CrankPower, Torque, WheelPower};

use super::Fact;

/// A curve by its name.
pub fn curve(name: &str) -> String {
    let name = name.trim();
    if name.is_empty() { keys::NAMELESS_CURVE.say().into() } else { name.to_owned() }
}

fn tenths(fraction: f64, printer: &Printer) -> String {
    format!("{}\u{202f}%", printer.number(fraction * 100.0, 1))
}

/// The loss in the other convention, and what it may be.
pub fn add_on_figures(loss: DrivelineLoss, printer: &Printer) -> (String, String) {
    let add_on = loss.add_on();
    let ends = printer.number_ends(add_on.map(|it| it * 100.0), 1);
    let [low, expected, high] = ends.map(|it| format!("{it}\u{202f}%"));
    (expected, notation::Band { low, high }.say())
}

/// The loss in both conventions.
pub fn add_on(loss: DrivelineLoss, printer: &Printer) -> String {
    let (added, range) = add_on_figures(loss, printer);
    keys::AddOn { loss: tenths(loss.share_of_crank().expected(), printer), added, range }.say()
}

/// What a column was taken for: "Column 2, “Torque (Nm)”: torque in N·m, at the wheels"
pub fn column(at: usize, column: &Column) -> String {
    let meaning = (column.meaning != Meaning::Unknown).then(|| column.meaning.name());
    let mut what = match (meaning, column.is_read, column.unit) {
        (None, ..) => keys::NOT_USED.say().to_owned(),
        (Some(what), false, _) => keys::KnownNotUsed { what }.say(),
        (Some(what), true, Some(unit)) if column.unit_is_assumed => {
            keys::InUnitAssumed { what, unit }.say()
        }
        (Some(what), true, Some(unit)) => keys::InUnit { what, unit }.say(),
        (Some(what), true, None) => what.say().to_owned(),
    };
    match column.place.filter(|_| column.is_read) {
        Some(MeasuredAt::Wheel) => what = keys::AtWheels { what }.say(),
        Some(MeasuredAt::Crank) => what = keys::AtCrank { what }.say(),
        None => {}
    }
    let number = (at + 1).to_string();
    match column.header.trim() {
        "" => keys::Column { number, what }.say(),
        header => keys::ColumnNamed { number, header, what }.say(),
    }
}

/// The heading of a table that names another place than the one chosen.
pub fn other_place(said: MeasuredAt) -> String {
    match said {
        MeasuredAt::Wheel => keys::HEADING_SAYS_WHEELS,
        MeasuredAt::Crank => keys::HEADING_SAYS_CRANK,
    }
    .say()
    .to_owned()
}

/// How many rows were read, and from where to where.
pub fn rows_read(table: &CurveTable, printer: &Printer) -> String {
    let speeds = table.rows.iter().map(|row| row.speed);
    let low = speeds.clone().reduce(|a, b| if b < a { b } else { a });
    let high = speeds.reduce(|a, b| if b > a { b } else { a });
    let count = table.rows.len();
    match (low, high) {
        (Some(low), Some(high)) => {
            let (from, to) = (printer.engine_speed(low), printer.engine_speed(high));
            keys::RowsReadBetween { count, from, to }.say()
        }
        _ => keys::RowsRead { count }.say(),
    }
}

/// Lines before the table that are neither header nor row.
pub fn unread(table: &CurveTable) -> Option<String> {
    let lines: Vec<String> = table.unread.iter().map(ToString::to_string).collect();
    (!lines.is_empty()).then(|| keys::Unread { lines: lines.join(", ") }.say())
}

/// A limit that a curve crosses.
pub fn crossing(name: &str, crossing: &Crossing, printer: &Printer) -> String {
    let by = match crossing.worst.value {
        LimitOf::Power(power) => printer.power(power.get()),
        LimitOf::Torque(torque) => printer.torque(torque),
    };
    keys::Crossing {
        limit: name,
        from: printer.engine_speed(crossing.from),
        to: printer.engine_speed(crossing.to),
        most: by,
        speed: printer.engine_speed(crossing.worst.speed),
    }
    .say()
}

/// A correction that lies beyond what such rules are meant for.
pub fn correction_warning(curve: &CurveRead, printer: &Printer) -> Option<String> {
    let all = [curve.corrected, curve.taken_off];
    let unusual = all.into_iter().flatten().find(|it| !it.is_usual())?;
    let unusual = keys::CorrectionUnusual {
        curve: self::curve(&curve.name),
        rule: rule_name(unusual.rule),
        factor: printer.number(unusual.factor, 3),
    };
    Some(unusual.say())
}

/// The highest power and torque of a curve.
pub fn curve_facts(curve: &CurveRead, at_crank: &PowerCurve, printer: &Printer) -> Vec<Fact> {
    let power = at_crank.peak_power();
    let torque = at_crank.peak_torque();
    let at = |speed| printer.engine_speed(speed);
    let crank = curve.crank(power.value);
    let [low, _, high] = printer.power_ends(crank.map(CrankPower::get));
    let speed = at(power.speed);
    let aside = match (curve.place, low == high) {
        (MeasuredAt::Crank, true) => keys::AtSpeedMeasured { speed }.say(),
        (MeasuredAt::Crank, false) => keys::AtSpeedBetweenMeasured { speed, low, high }.say(),
        (MeasuredAt::Wheel, true) => keys::AtSpeedFromWheels { speed }.say(),
        (MeasuredAt::Wheel, false) => keys::AtSpeedBetweenFromWheels { speed, low, high }.say(),
    };
    let power_at_crank = printer.power(power.value.get());
    let mut facts = vec![Fact::new(keys::POWER_AT_CRANK.say(), power_at_crank, aside)];
    if let Some(wheel) = curve.wheel(power.value) {
        let [low, _, high] = printer.power_ends(wheel.map(WheelPower::get));
        let range = if low == high {
            keys::MEASURED_THERE.say().into()
        } else {
            notation::Band { low, high }.say()
        };
        let power = printer.power(wheel.expected().get());
        facts.push(Fact::new(keys::POWER_AT_WHEELS.say(), power, range));
    }
    let at_speed = keys::AtSpeed { speed: at(torque.speed) }.say();
    let torque = printer.torque(torque.value);
    facts.push(Fact::new(keys::TORQUE_AT_CRANK.say(), torque, at_speed));
    facts
}

/// The highest power of a curve as a rule corrects it.
pub fn corrected(curve: &CurveRead, at_crank: &PowerCurve, printer: &Printer) -> Vec<Fact> {
    let mut facts = Vec::new();
    if let Some(rule) = curve.taken_off {
        facts.push(Fact::new(
            keys::TakenOff { rule: rule_name(rule.rule) }.say(),
            format!("÷ {}", printer.number(rule.factor, 3)),
            keys::TAKEN_OFF_MEANS.say().into(),
        ));
    }
    if let Some(rule) = curve.corrected
        && let Ok(scaled) = at_crank.scaled(rule.factor)
    {
        facts.push(Fact::new(
            keys::PowerBy { rule: rule_name(rule.rule) }.say(),
            printer.power(scaled.peak_power().value.get()),
            keys::PowerByMeans { factor: printer.number(rule.factor, 3) }.say(),
        ));
    }
    facts
}

/// What one curve gives more than another.
pub fn compared(gain: &Gain, printer: &Printer) -> Vec<Fact> {
    let (from, to) = gain.speeds;
    let (from, to) = (&printer.engine_speed(from), &printer.engine_speed(to));
    let power = |it: CrankPower| printer.power(it.get());
    let torque = |it: Torque| printer.torque(it);
    let (peak_power, peak_torque) = (&gain.peak_power, &gain.peak_torque);
    let (more_power, more_torque) = (peak_power.relative(), peak_torque.relative());
    let (of_power, of_torque) =
        (keys::PowerOnAverage { from, to }.say(), keys::TorqueOnAverage { from, to }.say());
    vec![
        peak(keys::MOST_POWER, peak_power, more_power, &power, printer),
        mean(of_power, &gain.power, &power, printer),
        peak(keys::MOST_TORQUE, peak_torque, more_torque, &torque, printer),
        mean(of_torque, &gain.torque, &torque, printer),
    ]
}

fn peak<T: Copy>(
    what: Message,
    change: &PeakChange<T>,
    relative: f64,
    print: &dyn Fn(T) -> String,
    printer: &Printer,
) -> Fact {
    let (before, after) = (print(change.before.value), print(change.after.value));
    let both = keys::BeforeAfter { before, after }.say();
    Fact::new(what.say(), printer.change(relative), both)
}

fn mean<T: Copy>(
    what: String,
    gain: &BandGain<T>,
    print: &dyn Fn(T) -> String,
    printer: &Printer,
) -> Fact {
    let end = |peak: Peak<T>| {
        let (value, speed) = (print(peak.value), printer.engine_speed(peak.speed));
        keys::ValueAt { value, speed }.say()
    };
    let (most, least) = (end(gain.largest), end(gain.smallest));
    let aside = keys::MeanMostLeast { mean: print(gain.mean), most, least }.say();
    Fact::new(what, printer.change(gain.relative), aside)
}

/// The name of the standard of a correction.
fn rule_name(rule: AirCorrection) -> &'static str {
    rule.standard().unwrap_or_else(|| keys::AS_MEASURED.say())
}

/// A correction as a choice.
pub fn correction(rule: AirCorrection) -> String {
    match rule {
        AirCorrection::None => keys::AS_MEASURED.say().into(),
        rule => keys::CorrectedTo { rule: rule_name(rule) }.say(),
    }
}
