//! The words for the parts of a fuel system.

use crate::answers::hardware::{HardwareAnswer, PartAnswer};
use crate::document::{HardwareForm, Mark, PartForm, PartKind};
use crate::hardware::{LargestShare, Requirement};
use crate::message::keys::{hardware_said as keys, notation};
use crate::quantity::notation::Printer;
use crate::quantity::{Band, CrankPower};
use crate::words::and;

/// What a kind of part is called.
pub fn kind(kind: PartKind) -> &'static str {
    match kind {
        PartKind::PortInjectors => keys::PORT_INJECTORS,
        PartKind::DirectInjectors => keys::DIRECT_INJECTORS,
        PartKind::PlungerPump => keys::PLUNGER_PUMP,
        PartKind::SupplyPump => keys::SUPPLY_PUMP,
        PartKind::SupplyLine => keys::SUPPLY_LINE,
        PartKind::FluidNozzle => keys::FLUID_NOZZLE,
        PartKind::PowerLimit => keys::POWER_LIMIT,
        PartKind::TorqueLimit => keys::TORQUE_LIMIT,
        PartKind::AirLimit => keys::AIR_LIMIT,
    }
    .say()
}

/// A part by its name, or by what it is.
pub fn part(form: &PartForm) -> String {
    let name = form.name.trim();
    if name.is_empty() { kind(form.kind).to_owned() } else { name.to_owned() }
}

/// A limit by the name of what it protects, or by what it is.
pub fn limit(form: &PartForm) -> String {
    let name = part(form);
    let is_said = name.to_lowercase().ends_with(keys::LIMIT_WORD.say());
    if is_said { name } else { keys::LimitOf { name }.say() }
}

/// What was judged, by the names of its forms. A line is judged with its pumps.
pub fn part_answer(answer: &PartAnswer, hardware: &HardwareForm) -> String {
    let forms = hardware.parts.iter().filter(|form| answer.forms.contains(&form.id));
    let forms = forms.filter(|form| form.kind != PartKind::SupplyLine);
    let names: Vec<String> = forms.map(part).collect();
    if names.is_empty() { keys::REMOVED_PART.say().into() } else { and(&names) }
}

/// Use at its tightest, its limit, and at which speed.
pub fn tightest(
    part: &PartAnswer,
    answer: &HardwareAnswer,
    printer: &Printer,
) -> Option<(String, String)> {
    let at = part.over_speed.tightest?.at;
    let used = part.over_speed.points.get(at)?.as_ref().ok()?.used;
    let speed = answer.asked.load.points.get(at)?.speed;
    let limit = printer.fraction(part.over_speed.limit);
    let used = keys::UsedOf { used: printer.fraction(used.expected()), limit }.say();
    Some((used, printer.engine_speed(speed)))
}

/// A reserve, worst to best.
pub fn reserve(reserve: Band<f64>, printer: &Printer) -> (String, String) {
    (printer.fraction(reserve.expected()), printer.fractions(reserve))
}

/// The power that a part supports.
pub fn supported(part: &PartAnswer, printer: &Printer) -> (String, String) {
    part.power.map_or_else(
        || ("—".to_owned(), String::new()),
        |power| {
            let [low, expected, high] = printer.power_ends(power.map(CrankPower::get));
            (expected, notation::Band { low, high }.say())
        },
    )
}

/// The largest ethanol share, as expected and at worst.
pub fn largest_share(share: LargestShare, printer: &Printer) -> (String, String) {
    let none = || keys::NONE.say().to_owned();
    let at_worst = share.at_worst.map_or_else(none, |it| printer.grade_at_least(it));
    let expected = share.expected.map_or_else(none, |it| printer.grade(it));
    (expected, keys::AtWorst { share: at_worst }.say())
}

/// What would be enough.
pub fn enough(requirement: &Requirement, by_mass: bool, printer: &Printer) -> String {
    match requirement {
        Requirement::PortFlow(rated) => keys::Each { flow: flow(rated, by_mass, printer) }.say(),
        Requirement::DirectFlow { rated, rail } => {
            let flow = flow(rated, by_mass, printer);
            let pressure = rail.get();
            if pressure.is_finite() {
                keys::EachOrRail { flow, pressure: printer.pressure(pressure) }.say()
            } else {
                keys::Each { flow }.say()
            }
        }
        Requirement::StrokeVolume(volume) => {
            keys::PerStroke { volume: printer.stroke_volume(*volume) }.say()
        }
        Requirement::SupplyFlow { flow, pressure } => {
            let (flow, pressure) = (printer.pump_flow(*flow), printer.pressure(*pressure));
            keys::FlowAt { flow, pressure }.say()
        }
    }
}

fn flow(rated: &crate::hardware::RatedFlow, by_mass: bool, printer: &Printer) -> String {
    let flow = if by_mass {
        printer.mass_flow(rated.rated_mass())
    } else {
        printer.injector_flow(rated.rated_volume())
    };
    keys::FlowAt { flow, pressure: printer.pressure(rated.rated_difference()) }.say()
}

/// Whether a part was rated by mass.
pub fn is_rated_by_mass(answer: &PartAnswer, hardware: &HardwareForm) -> bool {
    let mut forms = hardware.parts.iter().filter(|form| answer.forms.contains(&form.id));
    forms.any(|form| form.is(Mark::ByMass))
}

/// What happens where even all that a part has is not enough.
pub fn shortage(part: &PartAnswer, answer: &HardwareAnswer, printer: &Printer) -> String {
    part.over_speed.shortage.map_or_else(
        || "—".to_owned(),
        |short| {
            let pressure = printer.fraction(short.pressure_ratio);
            if short.lambda.is_finite() {
                let mixture = printer.mixture(short.lambda, answer.stoichiometric_ratio());
                keys::ShortMixture { mixture, pressure }.say()
            } else {
                keys::NO_FUEL.say().to_owned()
            }
        },
    )
}
