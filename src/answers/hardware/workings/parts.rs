//! Each part where it is tightest.

use std::f64::consts::PI;

use uom::si::angle::degree;
use uom::si::angular_velocity::revolution_per_minute;
use uom::si::length::millimeter;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::mass_rate::gram_per_second;
use uom::si::power::kilowatt;
use uom::si::pressure::{bar, megapascal};
use uom::si::time::millisecond;
use uom::si::volume_rate::{cubic_meter_per_second, liter_per_minute};

use super::{BALANCE, CYCLE, Derivation, ORIFICE, constant, derived, grams};
use crate::answers::hardware::answer::PartAnswer;
use crate::hardware::constants::MURNAGHAN_EXPONENT;
use crate::hardware::{
    DirectInjectors, LoadPoint, OperatingPoint, PartOf, PlungerPump, PortInjectors, RatedFlow,
    Supply,
};
use crate::quantity::{MassRate, VolumeRate};
use crate::source::{Confidence, Source, SourceKind};
use crate::workings::{Expression, literal, number};

const PLUNGER: Source = derived("mass trapped in the bore less what stays there compressed");
const RESERVE: Source = derived("capacity at the limit over demand, less one");
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

fn litres_per_hour(flow: VolumeRate) -> f64 {
    flow.get::<liter_per_minute>() * 60.0
}

/// Where a part is tightest.
struct Tight<'a> {
    suffix: &'a str,
    point: &'a LoadPoint,
    at: &'a OperatingPoint<'a>,
    limit: Expression,
}

impl Derivation<'_> {
    /// A part where it is tightest. Its symbols end in its number.
    pub(super) fn part(&mut self, number_of: usize, part: &PartAnswer) {
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
        let reserve = self.lines.add(
            "Reserve before the limit",
            format!("R{suffix}"),
            &reserve,
            (4, ""),
            &[RESERVE],
        );
        let peak = self.answer.asked.load.peak_power().get().get::<kilowatt>();
        let power = number("P", peak) * (literal(1.0) + reserve);
        self.lines.add(
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
            self.lines.add(
                "Lambda there if nothing is changed",
                format!("lambda{suffix}"),
                &lambda,
                (3, ""),
                &sources,
            );
            if matches!(part.part, PartOf::Plungers | PartOf::Supply) {
                let pressure = supplied.clone() * supplied;
                self.lines.add(
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
        self.lines.add(
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
        self.lines.add(
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
        let window = self.lines.add(
            "Time for injection",
            format!("t{}", one.suffix),
            &window,
            (3, "ms"),
            &[CYCLE],
        );
        let each = flow / number("n", f64::from(injectors.count)) * literal(120_000.0) / speed;
        let each = self.lines.add(
            "Fuel for each injection",
            format!("i{}", one.suffix),
            &each,
            (1, "mg"),
            &[CYCLE],
        );
        let offset = number("t_o", injectors.opening_offset.get::<millisecond>());
        let needed = each / open;
        self.lines.add(
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
        let used = self.lines.add(
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
            self.lines.add("Volume of a stroke", format!("V{suffix}"), &stroke, (1, "mm3"), &[]);
        let swept = stroke
            * number("z", f64::from(pump.lobes))
            * number("r", pump.drive_ratio)
            * Self::speed(one.point)
            / literal(60_000.0);
        let swept = self.lines.add(
            "Volume swept in a second",
            format!("S{suffix}"),
            &swept,
            (2, "cm3/s"),
            &[],
        );
        let exponent = constant(&MURNAGHAN_EXPONENT);
        let rise = (pump.rail.get() - pump.inlet.get()).get::<megapascal>().max(0.0);
        let denser = (literal(1.0)
            + exponent.clone() * number("dp", rise)
                / number("K", pump.bulk_modulus.get::<megapascal>()))
        .power(literal(1.0) / exponent);
        let sources = [MURNAGHAN, MURNAGHAN_EXPONENT.source];
        let denser = self.lines.add(
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
        self.lines.add(
            "What a high-pressure pump gives",
            format!("G{suffix}"),
            &delivered,
            (2, "g/s"),
            &[PLUNGER],
        )
    }

    fn supply(&mut self, one: &Tight<'_>, supply: &Supply, flow: Expression) -> Option<Expression> {
        let wanted = flow.clone() * literal(3600.0) / self.density();
        let wanted = self.lines.add(
            "The same by volume",
            format!("Q{}", one.suffix),
            &wanted,
            (1, "L/h"),
            &[],
        );
        let volume = VolumeRate::new::<cubic_meter_per_second>(wanted.value() / 3.6e6);
        let mut pressure =
            number("p_rail", supply.regulator.rail(one.point.manifold).get().get::<bar>());
        for (place, line) in supply.lines.iter().enumerate() {
            let loss = line.pressure_loss(volume, one.at.fuel).get::<bar>();
            pressure = pressure + number(format!("dp_line{}", place + 1), loss);
        }
        pressure = pressure + number("dp_other", supply.other_losses.get::<bar>());
        self.lines.add(
            "Pressure at the pumps",
            format!("p_p{}", one.suffix),
            &pressure,
            (2, "bar"),
            &[DARCY],
        );
        let there = litres_per_hour(supply.available(volume, one.at).ok()?);
        self.lines.add(
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
}
