//! The workings of the hardware: each number of the answer, to be checked by hand.
//! Units are those of the trade's metric half, whatever the person reads elsewhere.

mod parts;

use crate::message::keys::workings;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::mass_rate::gram_per_second;
use uom::si::power::kilowatt;

use super::answer::HardwareAnswer;
use super::reading::HardwareReading;
use crate::document::MeasuredAt;
use crate::hardware::constants::AIR_GAS_CONSTANT;
use crate::hardware::{BALANCE, Blend, CYCLE, LoadPoint};
use crate::message::Sentence;
use crate::message::keys::practice as words;
use crate::power::{add_on, at_crank};
use crate::quantity::MassRate;
use crate::source::{Citation, Confidence, Source, SourceKind};
use crate::workings::{Expression, Lines, Working, literal, number};

const EFFICIENCY: Source = Source::derived(words::EQUAL_EFFICIENCY);
const DRIVELINE: Source = Source {
    kind: SourceKind::CommonPractice,
    citation: Citation::Words(words::DRIVELINE_LOSS),
    confidence: Confidence::Weak,
};

fn grams(flow: MassRate) -> f64 {
    flow.get::<gram_per_second>()
}

impl HardwareAnswer {
    /// How each number came about: the demand at the highest power, and each part
    /// where it is tightest.
    pub fn workings(&self, reading: &HardwareReading) -> Vec<Working> {
        let mut derivation = Derivation { answer: self, lines: Lines::default() };
        derivation.curve(reading);
        if let Some(at) = self.peak() {
            derivation.demand(at, workings::FUEL_AT_HIGHEST_POWER, "");
            derivation.air(at);
        }
        for (place, part) in self.parts.iter().enumerate() {
            derivation.part(place + 1, part);
        }
        derivation.fluid();
        derivation.lines.into_vec()
    }
}

struct Derivation<'a> {
    answer: &'a HardwareAnswer,
    lines: Lines,
}

impl Derivation<'_> {
    /// The corrections of the curve, and its power at the crank.
    fn curve(&mut self, reading: &HardwareReading) {
        let Some(curve) = reading.curves.get(self.answer.asked.target) else { return };
        for corrected in [curve.taken_off, curve.corrected].into_iter().flatten() {
            self.lines.extend(corrected.rule.working(&corrected.air));
        }
        let (MeasuredAt::Wheel, Some(loss)) = (curve.place, curve.loss) else { return };
        let Some(point) = self.answer.peak().and_then(|at| self.point(at)) else { return };
        let Some(wheel) = curve.wheel(point.power.expected()) else { return };
        let wheel = number("P_w", wheel.expected().get().get::<kilowatt>());
        let share = number("l", loss.share_of_crank().expected());
        self.lines.add(
            workings::HIGHEST_POWER_CRANK_FROM_WHEELS,
            "P_c",
            &at_crank(wheel, share.clone()),
            (1, "kW"),
            &[DRIVELINE],
        );
        self.lines.add(
            workings::SAME_LOSS_SHARE_WHEEL_POWER,
            "a",
            &add_on(share),
            (4, ""),
            &[DRIVELINE],
        );
    }

    fn point(&self, at: usize) -> Option<LoadPoint> {
        self.answer.asked.load.points.get(at).copied()
    }

    fn blend(&self) -> Blend {
        self.answer.asked.blends().expected()
    }

    fn density(&self) -> Expression {
        number("rho", self.blend().fuel.density.get::<kilogram_per_cubic_meter>())
    }

    /// The fuel at one point, under a symbol of its own.
    fn demand(&mut self, at: usize, name: impl Into<Sentence>, suffix: &str) -> Option<Expression> {
        let point = self.point(at)?;
        let (demand, blend) = (&self.answer.asked.load.demand, self.blend());
        let (power, gain) = (point.power.expected(), demand.gain(blend.share));
        let flow = demand.route.formula(power, &blend.fuel, gain);
        Some(self.lines.add(name, format!("m{suffix}"), &flow, (2, "g/s"), &[EFFICIENCY]))
    }

    /// Volume and air at the highest power, and the fuel by the air route.
    fn air(&mut self, at: usize) {
        let Some(point) = self.point(at) else { return };
        let blend = self.blend();
        let demand = self.answer.asked.load.demand;
        let flow = number("m", self.lines.value_of("m"));
        let volume = flow.clone() * literal(3600.0) / self.density();
        self.lines.add(workings::SAME_VOLUME, "Q", &volume, (1, "L/h"), &[]);
        let lambda = number("lambda", demand.lambda);
        let ratio = number("AFR", blend.fuel.stoichiometric_afr);
        let air = flow * lambda.clone() * ratio.clone();
        self.lines.add(workings::AIR_GOES, "m_a", &air, (1, "g/s"), &[BALANCE]);
        let Some(breathing) = self.answer.asked.engine.breathing else { return };
        let route = breathing.route(point.manifold, self.answer.asked.engine.ambient);
        let breathed = route.formula(point.speed);
        let sources = [CYCLE, AIR_GAS_CONSTANT.source];
        let breathed =
            self.lines.add(workings::AIR_ENGINE_BREATHES, "m_b", &breathed, (1, "g/s"), &sources);
        let fuel = breathed / (lambda * ratio);
        self.lines.add(workings::FUEL_AIR, "m_f", &fuel, (2, "g/s"), &[BALANCE]);
    }

    /// What injection fluid does at the highest power.
    fn fluid(&mut self) {
        let (Some(fluid), Some((_, nozzle))) = (self.answer.fluid, self.answer.asked.parts.fluid)
        else {
            return;
        };
        let needs = number("m_w", grams(fluid.flow))
            * number("A_w", nozzle.fluid.stoichiometric_air())
            / (number("m", self.lines.value_of("m"))
                * number("AFR", self.blend().fuel.stoichiometric_afr));
        let cut = self.lines.add(
            workings::SHARE_FUEL_INJECTION_FLUID_COULD_STAND,
            "k",
            &needs,
            (4, ""),
            &[BALANCE],
        );
        let lambda = number("lambda", self.answer.asked.load.demand.lambda);
        self.lines.add(
            workings::LAMBDA_FLUID_NOTHING_ELSE_CHANGED,
            "lambda_w",
            &(lambda.clone() / (literal(1.0) + cut.clone())),
            (3, ""),
            &[BALANCE],
        );
        self.lines.add(
            workings::LAMBDA_IF_FUEL_WERE_CUT_SPRAY,
            "lambda_s",
            &(lambda / (literal(1.0) - cut)),
            (3, ""),
            &[BALANCE],
        );
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::document::{BlendForm, Document, Fields, HardwareField, PartForm, PartKind};
    use crate::hardware::PartOf;
    use crate::quantity::notation::DecimalMark;

    /// The example with port injectors too, on a stated blend.
    fn read() -> HardwareReading {
        let mut document = Document::demo();
        let hardware = &mut document.here.hardware;
        let fields = Fields::from([
            (HardwareField::Count, "4"),
            (HardwareField::RatedFlow, "300"),
            (HardwareField::RatedPressure, "3"),
            (HardwareField::TestDensity, "684"),
            (HardwareField::RailPressure, "4"),
            (HardwareField::DeadTime, "0.95"),
        ]);
        let part = PartForm::new(90, PartKind::PortInjectors);
        hardware.parts.push(PartForm { fields, ..part });
        hardware.engine.entry(HardwareField::PortShare).text = "40".into();
        hardware.engine.entry(HardwareField::BlendShare).text = "E85".into();
        hardware.blend = BlendForm::Typed;
        let printer = document.settings.printer(DecimalMark::Point);
        HardwareReading::of(&document, None, &printer)
    }

    /// exmex 0.21, a general-purpose expression evaluator.
    #[test]
    fn every_line_evaluates_to_the_value_shown() {
        let reading = read();
        assert_eq!(reading.field_errors, vec![]);
        let workings = HardwareAnswer::of(&reading).unwrap().workings(&reading);
        assert!(workings.len() > 30, "{}", workings.len());
        for line in &workings {
            let evaluated: f64 = exmex::eval_str(&line.numbers).unwrap();
            approx::assert_relative_eq!(evaluated, line.value, max_relative = 1e-5, epsilon = 1e-6);
        }
    }

    /// The workings are written apart from the models: both must say the same.
    #[test]
    fn the_lines_agree_with_the_answer() {
        let reading = read();
        let answer = HardwareAnswer::of(&reading).unwrap();
        let workings = answer.workings(&reading);
        let value = |symbol: String| {
            workings
                .iter()
                .find(|line| line.symbol == symbol)
                .unwrap_or_else(|| panic!("{symbol}"))
                .value
        };
        assert_eq!(answer.parts.len(), 4);
        for (place, part) in answer.parts.iter().enumerate() {
            let tightest = part.over_speed.tightest.unwrap();
            let reserve = value(format!("R_{}", place + 1));
            approx::assert_relative_eq!(
                reserve,
                tightest.reserve.expected(),
                max_relative = 1e-5,
                epsilon = 1e-6
            );
            let used = part.over_speed.points[tightest.at].unwrap().used.expected();
            let symbol = if matches!(part.part, PartOf::Port(_)) { "D" } else { "U" };
            approx::assert_relative_eq!(
                value(format!("{symbol}_{}", place + 1)),
                used,
                max_relative = 1e-5
            );
        }
        let peak = answer.peak().unwrap();
        approx::assert_relative_eq!(
            value("m".into()),
            grams(answer.headroom.flows[peak].expected()),
            max_relative = 1e-9
        );
        approx::assert_relative_eq!(
            value("m_a".into()),
            grams(answer.headroom.air[peak].expected()),
            max_relative = 1e-9
        );
        let by_air = answer.by_air.as_ref().unwrap()[peak];
        approx::assert_relative_eq!(value("m_f".into()), grams(by_air), max_relative = 1e-6);
        let fluid = answer.fluid.unwrap().effect;
        approx::assert_relative_eq!(
            value("lambda_w".into()),
            fluid.lambda_with,
            max_relative = 1e-9
        );
        approx::assert_relative_eq!(
            value("lambda_s".into()),
            fluid.lambda_if_spray_stops,
            max_relative = 1e-9
        );
    }
}
