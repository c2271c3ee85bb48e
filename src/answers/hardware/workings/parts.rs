//! Each part where it is tightest.

use crate::message::keys::workings;
use uom::si::angular_velocity::revolution_per_minute;
use uom::si::power::kilowatt;

use super::Derivation;
use crate::answers::hardware::answer::PartAnswer;
use crate::hardware::{BALANCE, ORIFICE, OperatingPoint, PartWorkings, RESERVE};
use crate::workings::{literal, number};

impl Derivation<'_> {
    /// A part where it is tightest. Its symbols end in its number.
    pub(super) fn part(&mut self, number_of: usize, part: &PartAnswer) {
        let Some(tightest) = part.over_speed.tightest else { return };
        let Some(point) = self.point(tightest.at) else { return };
        let Some(fitted) = self.answer.asked.parts.system.part(part.part) else { return };
        let rpm = point.speed.get::<revolution_per_minute>();
        let suffix = format!("_{number_of}");
        let blend = self.blend();
        let at = OperatingPoint { speed: point.speed, manifold: point.manifold, fuel: &blend.fuel };
        let name = workings::FuelAtSpeed { speed: format!("{rpm:.0}") }.sentence();
        let Some(flow) = self.demand(tightest.at, name, &suffix) else {
            return;
        };
        let mut workings = PartWorkings { lines: &mut self.lines, suffix: &suffix, at: &at };
        let Some(reserve) = fitted.derive(&mut workings, flow) else { return };
        let reserve = self.lines.add(
            workings::RESERVE_BEFORE_LIMIT,
            format!("R{suffix}"),
            &reserve,
            (4, ""),
            &[RESERVE],
        );
        let peak = self.answer.asked.load.peak_power().get().get::<kilowatt>();
        let power = number("P", peak) * (literal(1.0) + reserve);
        self.lines.add(
            workings::POWER_WHOLE_CURVE_SUPPORTS_CRANK,
            format!("P{suffix}"),
            &power,
            (1, "kW"),
            &[RESERVE],
        );
        if let Some(short) = part.over_speed.shortage {
            // What is there over what is wanted.
            let supplied = number("q", short.pressure_ratio.sqrt());
            let lambda = number("lambda", self.answer.asked.load.demand.lambda) / supplied.clone();
            let sources = [BALANCE, ORIFICE];
            self.lines.add(
                workings::LAMBDA_IF_NOTHING_CHANGED,
                format!("lambda{suffix}"),
                &lambda,
                (3, ""),
                &sources,
            );
            if fitted.holds_pressure() {
                let pressure = supplied.clone() * supplied;
                self.lines.add(
                    workings::PRESSURE_ACROSS_INJECTORS_THEN_WHAT_SHOULD,
                    format!("p{suffix}"),
                    &pressure,
                    (3, ""),
                    &sources,
                );
            }
        }
    }
}
