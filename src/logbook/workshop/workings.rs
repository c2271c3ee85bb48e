//! The workings of the workshop: each number of the answer, to be checked by hand.
//! Units are those of the trade's metric half, whatever the person reads elsewhere.

use std::f64::consts::PI;

use uom::si::angle::degree;
use uom::si::angular_velocity::revolution_per_minute;
use uom::si::available_energy::megajoule_per_kilogram;
use uom::si::length::millimeter;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::mass_rate::gram_per_second;
use uom::si::power::kilowatt;
use uom::si::pressure::{bar, kilopascal, megapascal};
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::time::millisecond;
use uom::si::volume::liter;
use uom::si::volume_rate::{cubic_meter_per_second, liter_per_minute};

use super::answer::{HardwareAnswer, PartAnswer};
use super::engine::Breathing;
use super::forms::Place;
use super::reading::WorkshopReading;
use crate::fuel::Constant;
use crate::hardware::constants::{AIR_GAS_CONSTANT, MURNAGHAN_EXPONENT};
use crate::hardware::{
    Blend, DirectInjectors, LoadPoint, OperatingPoint, PartOf, PlungerPump, PortInjectors,
    RatedFlow, Supply,
};
use crate::quantity::{MassRate, VolumeRate};
use crate::source::{Confidence, Source, SourceKind};
use crate::workings::{Expression, Working, literal, number};

const EFFICIENCY: Source = derived("equal brake efficiency on both fuels, but for the gain given");
const CYCLE: Source = derived("four strokes: two turns of the crank for each cycle");
const ORIFICE: Source =
    derived("Bernoulli's equation for a nozzle with a constant discharge coefficient");
const BALANCE: Source = derived("balance of fuel and air");
const PLUNGER: Source = derived("mass trapped in the bore less what stays there compressed");
const RESERVE: Source = derived("capacity at the limit over demand, less one");
const DRIVELINE: Source = Source {
    kind: SourceKind::CommonPractice,
    citation: "loss as a share of crank power",
    confidence: Confidence::Weak,
};
const MURNAGHAN: Source = Source {
    kind: SourceKind::Paper,
    citation: "F. D. Murnaghan, The Compressibility of Media under Extreme Pressures, 1944 (from \
               memory)",
    confidence: Confidence::Weak,
};
const DARCY: Source = Source {
    kind: SourceKind::Handbook,
    citation: "Darcy and Weisbach, friction factor by Colebrook and White",
    confidence: Confidence::Weak,
};

const fn derived(citation: &'static str) -> Source {
    Source { kind: SourceKind::Derivation, citation, confidence: Confidence::Checked }
}

fn constant(constant: &Constant) -> Expression {
    number(constant.symbol, constant.value)
}

fn grams(flow: MassRate) -> f64 {
    flow.get::<gram_per_second>()
}

fn litres_per_hour(flow: VolumeRate) -> f64 {
    flow.get::<liter_per_minute>() * 60.0
}

impl HardwareAnswer {
    /// How each number came about: the demand at the highest power, and each part
    /// where it is tightest.
    pub fn workings(&self, reading: &WorkshopReading) -> Vec<Working> {
        let mut derivation = Derivation { answer: self, lines: Vec::new() };
        derivation.curve(reading);
        if let Some(at) = self.peak() {
            derivation.demand(at, "the highest power", "");
            derivation.air(at);
        }
        for (place, part) in self.parts.iter().enumerate() {
            derivation.part(place + 1, part);
        }
        derivation.fluid();
        derivation.lines
    }
}

struct Derivation<'a> {
    answer: &'a HardwareAnswer,
    lines: Vec<Working>,
}

impl Derivation<'_> {
    fn push(
        &mut self,
        name: impl Into<String>,
        symbol: impl Into<String>,
        expression: &Expression,
        (decimals, unit): (usize, &'static str),
        sources: &[Source],
    ) -> Expression {
        let symbol = symbol.into();
        self.lines.push(Working::new(name, symbol.clone(), expression, decimals, unit, sources));
        number(symbol, expression.value())
    }

    /// The corrections of the curve, and its power at the crank.
    fn curve(&mut self, reading: &WorkshopReading) {
        let Some(curve) = reading.curves.get(self.answer.asked.target) else { return };
        for corrected in [curve.taken_off, curve.corrected].into_iter().flatten() {
            self.lines.extend(corrected.rule.working(&corrected.air));
        }
        let (Place::Wheel, Some(loss)) = (curve.place, curve.loss) else { return };
        let Some(point) = self.answer.peak().and_then(|at| self.point(at)) else { return };
        let Some(wheel) = curve.wheel(point.power.expected()) else { return };
        let wheel = number("P_w", wheel.expected().get().get::<kilowatt>());
        let share = number("l", loss.share_of_crank().expected());
        self.push(
            "Highest power at the crank, from that at the wheels",
            "P_c",
            &(wheel / (literal(1.0) - share.clone())),
            (1, "kW"),
            &[DRIVELINE],
        );
        self.push(
            "The same loss as a share of wheel power",
            "a",
            &(share.clone() / (literal(1.0) - share)),
            (4, ""),
            &[DRIVELINE],
        );
    }

    fn point(&self, at: usize) -> Option<LoadPoint> {
        self.answer.asked.load.points.get(at).copied()
    }

    fn blend(&self) -> Blend {
        Blend::of(self.answer.asked.blend.expected())
    }

    fn density(&self) -> Expression {
        number("rho", self.blend().fuel.density.get::<kilogram_per_cubic_meter>())
    }

    fn speed(point: &LoadPoint) -> Expression {
        number("N", point.speed.get::<revolution_per_minute>())
    }

    /// The fuel at one point, under a symbol of its own.
    fn demand(&mut self, at: usize, place: &str, suffix: &str) -> Option<Expression> {
        let point = self.point(at)?;
        let (demand, blend) = (&self.answer.asked.load.demand, self.blend());
        let power = number("P", point.power.expected().get().get::<kilowatt>());
        let consumption = number("b", demand.route.consumption.grams_per_kilowatt_hour());
        let heat = |symbol: &str, of: crate::quantity::SpecificEnergy| {
            number(symbol, of.get::<megajoule_per_kilogram>())
        };
        let reference = heat("H_0", demand.route.reference.lower_heating_value);
        let heating = heat("H", blend.fuel.lower_heating_value);
        let gain = number("g", demand.gain(blend.share));
        let flow =
            power * consumption / literal(3600.0) * reference / heating / (literal(1.0) + gain);
        Some(self.push(
            format!("Fuel at {place}, by mass"),
            format!("m{suffix}"),
            &flow,
            (2, "g/s"),
            &[EFFICIENCY],
        ))
    }

    /// Volume and air at the highest power, and the fuel by the air route.
    fn air(&mut self, at: usize) {
        let Some(point) = self.point(at) else { return };
        let blend = self.blend();
        let demand = self.answer.asked.load.demand;
        let flow = number("m", self.value_of("m"));
        let volume = flow.clone() * literal(3600.0) / self.density();
        self.push("The same by volume", "Q", &volume, (1, "L/h"), &[]);
        let lambda = number("lambda", demand.lambda);
        let ratio = number("AFR", blend.fuel.stoichiometric_afr);
        let air = flow * lambda.clone() * ratio.clone();
        self.push("Air that goes with it", "m_a", &air, (1, "g/s"), &[BALANCE]);
        let Some(Breathing { displacement, volumetric_efficiency, temperature }) =
            self.answer.asked.engine.breathing
        else {
            return;
        };
        let manifold = point.manifold.absolute(self.answer.asked.engine.ambient);
        let breathed = number("VE", volumetric_efficiency)
            * number("p_m", manifold.get().get::<kilopascal>())
            * number("V_d", displacement.get::<liter>())
            * Self::speed(&point)
            / (constant(&AIR_GAS_CONSTANT)
                * number("T", temperature.get::<kelvin>())
                * literal(120.0))
            * literal(1000.0);
        let sources = [CYCLE, AIR_GAS_CONSTANT.source];
        let breathed =
            self.push("Air that the engine breathes there", "m_b", &breathed, (1, "g/s"), &sources);
        let fuel = breathed / (lambda * ratio);
        self.push("Fuel by that air", "m_f", &fuel, (2, "g/s"), &[BALANCE]);
    }

    fn value_of(&self, symbol: &str) -> f64 {
        self.lines.iter().find(|line| line.symbol == symbol).map_or(f64::NAN, |line| line.value)
    }

    /// A part where it is tightest. Its symbols end in its number.
    fn part(&mut self, number_of: usize, part: &PartAnswer) {
        let Some(tightest) = part.over_speed.tightest else { return };
        let Some(point) = self.point(tightest.at) else { return };
        let rpm = point.speed.get::<revolution_per_minute>();
        let suffix = format!("_{number_of}");
        let blend = self.blend();
        let at = OperatingPoint { speed: point.speed, manifold: point.manifold, fuel: &blend.fuel };
        let Some(flow) = self.demand(tightest.at, &format!("{rpm:.0} rpm"), &suffix) else {
            return;
        };
        let system = self.answer.asked.parts.system.clone();
        let limit = number("L", part.over_speed.limit);
        let one = Tight { suffix: &suffix, point: &point, at: &at, limit };
        let reserve = match part.part {
            PartOf::Port(set) => system.port.get(set).map(|injectors| {
                let all: MassRate = system.port.iter().map(|set| set.static_flow(&at)).sum();
                let own = (injectors.static_flow(&at) / all).value * system.passes(part.part);
                self.port(&one, injectors, flow * number("s", own))
            }),
            PartOf::Direct => system.direct.as_ref().map(|injectors| {
                self.direct(&one, injectors, flow * number("s", system.passes(part.part)))
            }),
            PartOf::Plungers => {
                let own = flow * number("s", system.passes(part.part));
                Some(self.plungers(&one, &system.plungers, own))
            }
            PartOf::Supply => {
                system.supply.as_ref().and_then(|supply| self.supply(&one, supply, flow))
            }
        };
        let Some(reserve) = reserve else { return };
        let reserve = self.push(
            "Reserve before the limit",
            format!("R{suffix}"),
            &reserve,
            (4, ""),
            &[RESERVE],
        );
        let peak = self.answer.asked.load.peak_power().get().get::<kilowatt>();
        let power = number("P", peak) * (literal(1.0) + reserve);
        self.push(
            "Power of the whole curve that it supports, at the crank",
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
            self.push(
                "Lambda there if nothing is changed",
                format!("lambda{suffix}"),
                &lambda,
                (3, ""),
                &sources,
            );
            if matches!(part.part, PartOf::Plungers | PartOf::Supply) {
                let pressure = supplied.clone() * supplied;
                self.push(
                    "Pressure across the injectors then, of what it should be",
                    format!("p{suffix}"),
                    &pressure,
                    (3, ""),
                    &sources,
                );
            }
        }
    }

    /// The flow of one nozzle, held open.
    fn nozzle(&mut self, one: &Tight<'_>, rated: &RatedFlow, difference: f64) -> Expression {
        let mass = rated.rated_mass().get::<gram_per_second>();
        let test = rated.rated_density().get::<kilogram_per_cubic_meter>();
        let rating = number("p_r", rated.rated_difference().get::<bar>());
        let ratio = number("dp", difference) / rating * self.density() / number("rho_t", test);
        self.push(
            "Flow of one injector held open, on this blend",
            format!("q{}", one.suffix),
            &(number("m_r", mass) * ratio.sqrt()),
            (3, "g/s"),
            &[ORIFICE],
        )
    }

    fn port(&mut self, one: &Tight<'_>, injectors: &PortInjectors, flow: Expression) -> Expression {
        let difference = injectors.regulator.difference(one.point.manifold).get::<bar>();
        let open = self.nozzle(one, &injectors.rated, difference);
        let count = number("n", f64::from(injectors.count));
        let dead = number("t_d", injectors.dead_time.get::<millisecond>()) * Self::speed(one.point)
            / literal(120_000.0);
        let effective = flow / (count * open);
        self.push(
            "Duty as commanded",
            format!("D{}", one.suffix),
            &(effective.clone() + dead.clone()),
            (4, ""),
            &[CYCLE],
        );
        (one.limit.clone() - dead) / effective - literal(1.0)
    }

    fn direct(
        &mut self,
        one: &Tight<'_>,
        injectors: &DirectInjectors,
        flow: Expression,
    ) -> Expression {
        let difference = injectors.rail.get() - injectors.back_pressure.get();
        let open = self.nozzle(one, &injectors.rated, difference.get::<bar>());
        let speed = Self::speed(one.point);
        let window = number("W", injectors.window.get::<degree>()) / (literal(6.0) * speed.clone())
            * literal(1000.0);
        let window = self.push(
            "Time for injection",
            format!("t{}", one.suffix),
            &window,
            (3, "ms"),
            &[CYCLE],
        );
        let each = flow / number("n", f64::from(injectors.count)) * literal(120_000.0) / speed;
        let each = self.push(
            "Fuel for each injection",
            format!("i{}", one.suffix),
            &each,
            (1, "mg"),
            &[CYCLE],
        );
        let offset = number("t_o", injectors.opening_offset.get::<millisecond>());
        let needed = each / open;
        self.push(
            "Use of that time",
            format!("U{}", one.suffix),
            &((needed.clone() + offset.clone()) / window.clone()),
            (4, ""),
            &[CYCLE],
        );
        (one.limit.clone() * window - offset) / needed - literal(1.0)
    }

    fn plungers(&mut self, one: &Tight<'_>, pumps: &[PlungerPump], flow: Expression) -> Expression {
        let mut delivered: Option<Expression> = None;
        // Equal pumps are worked out once.
        for (place, alike) in pumps.chunk_by(|a, b| a == b).enumerate() {
            let Some(pump) = alike.first() else { continue };
            let suffix = if place == 0 {
                one.suffix.to_owned()
            } else {
                format!("{}_{}", one.suffix, place + 1)
            };
            let one_gives = self.plunger(one, pump, &suffix);
            #[expect(clippy::cast_precision_loss, reason = "a car has few pumps")]
            let together = match alike.len() {
                1 => one_gives,
                count => literal(count as f64) * one_gives,
            };
            delivered = Some(match delivered {
                None => together,
                Some(sum) => sum + together,
            });
        }
        let delivered = delivered.unwrap_or_else(|| literal(0.0));
        let used = flow / delivered;
        let used = self.push(
            "Use of what the pumps give",
            format!("U{}", one.suffix),
            &used,
            (4, ""),
            &[BALANCE],
        );
        one.limit.clone() / used - literal(1.0)
    }

    fn plunger(&mut self, one: &Tight<'_>, pump: &PlungerPump, suffix: &str) -> Expression {
        let bore = number("d", pump.bore.get::<millimeter>());
        let stroke = number("pi", PI) / literal(4.0)
            * bore.clone()
            * bore
            * number("h", pump.lift.get::<millimeter>());
        let stroke =
            self.push("Volume of a stroke", format!("V{suffix}"), &stroke, (1, "mm3"), &[]);
        let swept = stroke
            * number("z", f64::from(pump.lobes))
            * number("r", pump.drive_ratio)
            * Self::speed(one.point)
            / literal(60_000.0);
        let swept =
            self.push("Volume swept in a second", format!("S{suffix}"), &swept, (2, "cm3/s"), &[]);
        let exponent = constant(&MURNAGHAN_EXPONENT);
        let rise = (pump.rail.get() - pump.inlet.get()).get::<megapascal>().max(0.0);
        let denser = (literal(1.0)
            + exponent.clone() * number("dp", rise)
                / number("K", pump.bulk_modulus.get::<megapascal>()))
        .power(literal(1.0) / exponent);
        let sources = [MURNAGHAN, MURNAGHAN_EXPONENT.source];
        let denser = self.push(
            "Density in the rail over that at the inlet",
            format!("r{suffix}"),
            &denser,
            (5, ""),
            &sources,
        );
        let compressed =
            literal(1.0) - number("c", pump.dead_volume_ratio) * (denser - literal(1.0));
        let delivered = swept * self.density() / literal(1000.0)
            * compressed
            * number("eta", pump.efficiency.expected());
        self.push(
            "What a high-pressure pump gives",
            format!("G{suffix}"),
            &delivered,
            (2, "g/s"),
            &[PLUNGER],
        )
    }

    fn supply(&mut self, one: &Tight<'_>, supply: &Supply, flow: Expression) -> Option<Expression> {
        let wanted = flow.clone() * literal(3600.0) / self.density();
        let wanted =
            self.push("The same by volume", format!("Q{}", one.suffix), &wanted, (1, "L/h"), &[]);
        let volume = VolumeRate::new::<cubic_meter_per_second>(wanted.value() / 3.6e6);
        let mut pressure =
            number("p_rail", supply.regulator.rail(one.point.manifold).get().get::<bar>());
        for (place, line) in supply.lines.iter().enumerate() {
            let loss = line.pressure_loss(volume, one.at.fuel).get::<bar>();
            pressure = pressure + number(format!("dp_line{}", place + 1), loss);
        }
        pressure = pressure + number("dp_other", supply.other_losses.get::<bar>());
        self.push(
            "Pressure at the pumps",
            format!("p_p{}", one.suffix),
            &pressure,
            (2, "bar"),
            &[DARCY],
        );
        let there = litres_per_hour(supply.available(volume, one.at).ok()?);
        self.push(
            "Use of what the pumps give there, read from their tables",
            format!("U{}", one.suffix),
            &(wanted / number(format!("T{}", one.suffix), there)),
            (4, ""),
            &[BALANCE],
        );
        // At the limit the line takes more than now, so this is not the use turned over.
        let capacity = supply.capacity(supply.limit, one.at).ok()?;
        Some(number(format!("C{}", one.suffix), grams(capacity)) / flow - literal(1.0))
    }

    /// What injection fluid does at the highest power.
    fn fluid(&mut self) {
        let (Some(fluid), Some((_, nozzle))) = (self.answer.fluid, self.answer.asked.parts.fluid)
        else {
            return;
        };
        let needs = number("m_w", grams(fluid.flow))
            * number("A_w", nozzle.fluid.stoichiometric_air())
            / (number("m", self.value_of("m"))
                * number("AFR", self.blend().fuel.stoichiometric_afr));
        let cut = self.push(
            "Share of the fuel that the injection fluid could stand in for",
            "k",
            &needs,
            (4, ""),
            &[BALANCE],
        );
        let lambda = number("lambda", self.answer.asked.load.demand.lambda);
        self.push(
            "Lambda with the fluid, nothing else changed",
            "lambda_w",
            &(lambda.clone() / (literal(1.0) + cut.clone())),
            (3, ""),
            &[BALANCE],
        );
        self.push(
            "Lambda if that fuel were cut and the spray stopped",
            "lambda_s",
            &(lambda / (literal(1.0) - cut)),
            (3, ""),
            &[BALANCE],
        );
    }
}

/// Where a part is tightest.
struct Tight<'a> {
    suffix: &'a str,
    point: &'a LoadPoint,
    at: &'a OperatingPoint<'a>,
    limit: Expression,
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::logbook::workshop::{BlendForm, Fields, PartForm, PartKind, Slot};
    use crate::logbook::{Document, Printer};
    use crate::quantity::notation::DecimalMark;

    /// The example with port injectors too, on a stated blend.
    fn read() -> WorkshopReading {
        let mut document = Document::demo();
        let workshop = &mut document.here.workshop;
        let fields = Fields::from([
            (Slot::Count, "4"),
            (Slot::RatedFlow, "300"),
            (Slot::RatedPressure, "3"),
            (Slot::TestDensity, "684"),
            (Slot::RailPressure, "4"),
            (Slot::DeadTime, "0.95"),
        ]);
        let part = PartForm::new(90, PartKind::PortInjectors);
        workshop.parts.push(PartForm { fields, ..part });
        workshop.engine.entry(Slot::PortShare).text = "40".into();
        workshop.engine.entry(Slot::BlendShare).text = "E85".into();
        workshop.blend = BlendForm::Typed;
        let printer = Printer::new(&document.settings, DecimalMark::Point);
        WorkshopReading::of(&document, None, &printer)
    }

    /// exmex 0.21, a general-purpose expression evaluator.
    #[test]
    fn every_line_evaluates_to_the_value_shown() {
        let reading = read();
        assert_eq!(reading.complaints, vec![]);
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
