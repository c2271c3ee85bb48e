//! The workings of an answer: each number of it, to be checked by hand.

use uom::si::molar_concentration::mole_per_liter;
use uom::si::volume::liter;

use super::answer::Blend;
use super::interpret::Asked;
use crate::fill::{Order, Plan, Stop};
use crate::fuel::MolarDensity;
use crate::fuel::constants as c;
use crate::quantity::{Share, Volume};
use crate::source::{Confidence, Source, SourceKind};
use crate::tank::DISPENSER_ERROR;
use crate::workings::{Expression, Working, literal, number, sum};

const fn derived(citation: &'static str) -> Source {
    Source { kind: SourceKind::Derivation, citation, confidence: Confidence::Checked }
}

const CONSERVATION: Source =
    derived("conservation of volume and of ethanol, volumes taken as additive");
const CORNERS: Source = derived(
    "the share is monotone in each uncertain value, so its extremes lie at the ends of their bands",
);
const MASS_BALANCE: Source = derived("mean by mass; complete combustion of C, H and O with air");
const EQUAL_AIR: Source = derived("equal air and equal lambda, fuel metered by volume");
const MOLAR_RULE: Source = Source {
    kind: SourceKind::Paper,
    citation: "linear rule by moles: SAE 2012-01-1274 (abstract), which finds measured blends somewhat greater",
    confidence: Confidence::Secondary,
};
const ENERGY: Source = derived("mean by volume of density times lower heating value");
const INJECTOR: Source = derived(
    "Bernoulli: at given pressure and time an injector's mass flow goes with the square root of density",
);

fn litres(volume: Volume) -> f64 {
    volume.get::<liter>()
}

/// A constant under its own symbol.
fn constant(constant: &c::Constant) -> Expression {
    number(constant.symbol, constant.value)
}

/// The letter of a fuel: a for the first.
fn letter(fuel: usize) -> char {
    u8::try_from(fuel).ok().and_then(|fuel| b'a'.checked_add(fuel)).map_or('z', char::from)
}

/// Works out every number of the answer again, as expressions.
pub(super) fn workings(
    asked: &Asked,
    plan: &Plan,
    order: &Order,
    blend: Option<&Blend>,
) -> Vec<Working> {
    let mut derivation = Derivation { asked, plan, lines: Vec::new() };
    derivation.fill();
    derivation.worst(order);
    if let Some(blend) = blend {
        derivation.blend(blend);
        derivation.calibrations(blend.share.expected());
    }
    derivation.money();
    derivation.lines
}

struct Derivation<'a> {
    asked: &'a Asked,
    plan: &'a Plan,
    lines: Vec<Working>,
}

/// Densities and air-fuel ratios of a blend, as expressions.
struct OfBlend {
    density: Expression,
    afr: Expression,
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

    fn level(&self) -> Expression {
        number("V0", litres(self.asked.problem.tank.level.expected()))
    }

    fn present(&self) -> Expression {
        number("e0", self.asked.problem.tank.share.expected().fraction())
    }

    fn name(&self, fuel: usize) -> &str {
        &self.asked.fuels[fuel].name
    }

    /// The fuels of which the plan takes some.
    fn taken(&self) -> Vec<usize> {
        (0..self.asked.fuels.len()).filter(|&fuel| litres(self.plan.volumes[fuel]) > 1e-9).collect()
    }

    /// Litres of a fuel and its ethanol share, by letter.
    fn poured(&self, fuel: usize) -> (Expression, Expression) {
        let share = self.asked.problem.offers[fuel].share.expected().fraction();
        (
            number(format!("x_{}", letter(fuel)), litres(self.plan.volumes[fuel])),
            number(format!("e_{}", letter(fuel)), share),
        )
    }

    fn fill(&mut self) {
        let problem = &self.asked.problem;
        let taken = self.taken();
        if problem.stop == Stop::Brim && problem.aim.low() == problem.aim.high() {
            let capacity = number("C", litres(problem.tank.capacity));
            let target = number("T", problem.aim.low().fraction());
            let space = capacity.clone() - self.level();
            let space = self.push("Space in the tank", "F", &space, (1, "L"), &[CONSERVATION]);
            if space.value() > 0.0 {
                let needed = (target * capacity - self.level() * self.present()) / space.clone();
                let needed = self.push(
                    "Mean share of what is to be added",
                    "e_add",
                    &needed,
                    (4, ""),
                    &[CONSERVATION],
                );
                if let [a, b] = taken[..] {
                    let (_, of_a) = self.poured(a);
                    let (_, of_b) = self.poured(b);
                    if (of_a.value() - of_b.value()).abs() > 1e-9 {
                        let wanted = space * (needed - of_a.clone()) / (of_b - of_a);
                        self.push(
                            format!(
                                "{}, before rounding and what was poured differently",
                                self.name(b)
                            ),
                            format!("x_{}", letter(b)),
                            &wanted,
                            (2, "L"),
                            &[CONSERVATION],
                        );
                    }
                }
            }
        }
        let parts: Vec<_> = taken.iter().map(|&fuel| self.poured(fuel)).collect();
        let ethanol = sum(std::iter::once(self.level() * self.present())
            .chain(parts.iter().map(|(x, e)| x.clone() * e.clone())));
        let total = sum(std::iter::once(self.level()).chain(parts.into_iter().map(|(x, _)| x)));
        if total.value() > 0.0 {
            self.push(
                "Ethanol share afterwards, as expected",
                "v",
                &(ethanol / total),
                (4, ""),
                &[CONSERVATION],
            );
        }
    }

    fn worst(&mut self, order: &Order) {
        for (strong, name) in
            [(false, "Ethanol share at the weakest"), (true, "Ethanol share at the strongest")]
        {
            let corner = self.asked.problem.worst_corner(&order.pours, strong);
            let end = if strong { "high" } else { "low" };
            let level = || number(format!("V0_{end}"), litres(corner.level));
            let present = number(format!("e0_{end}"), corner.tank_share.fraction());
            let parts: Vec<_> = (0..corner.volumes.len())
                .filter(|&fuel| litres(corner.volumes[fuel]) > 0.0)
                .map(|fuel| {
                    (
                        number(format!("x_{}", letter(fuel)), litres(corner.volumes[fuel])),
                        number(format!("e_{}_{end}", letter(fuel)), corner.shares[fuel].fraction()),
                    )
                })
                .collect();
            let ethanol = sum(std::iter::once(level() * present)
                .chain(parts.iter().map(|(x, e)| x.clone() * e.clone())));
            let total = sum(std::iter::once(level()).chain(parts.into_iter().map(|(x, _)| x)));
            if total.value() > 0.0 {
                let sources = [CORNERS, DISPENSER_ERROR.source];
                self.push(name, format!("v_{end}"), &(ethanol / total), (4, ""), &sources);
            }
        }
    }

    /// Air-fuel ratios of the constituents.
    fn neat(&mut self) -> (Expression, Expression) {
        let air = literal(2.0) * constant(&c::OXYGEN_MASS)
            + constant(&c::NITROGEN_PER_OXYGEN) * constant(&c::NITROGEN_MOLAR_MASS);
        let sources = [MASS_BALANCE, c::NITROGEN_PER_OXYGEN.source, c::CARBON_MASS.source];
        let air =
            self.push("Air that brings a mole of oxygen", "K", &air, (3, "g/mol"), &sources[1..]);
        let hydrogen = || constant(&c::PETROL_HYDROGEN);
        let petrol = (literal(1.0) + hydrogen() / literal(4.0)) * air.clone()
            / (constant(&c::CARBON_MASS) + hydrogen() * constant(&c::HYDROGEN_MASS));
        let with_petrol = [sources[0], sources[1], sources[2], c::PETROL_HYDROGEN.source];
        let petrol = self.push(
            "Stoichiometric AFR of the petrol base",
            "AFR_g",
            &petrol,
            (3, ""),
            &with_petrol,
        );
        let ethanol = (literal(2.0) + literal(6.0) / literal(4.0) - literal(1.0) / literal(2.0))
            * air.clone()
            / (literal(2.0) * constant(&c::CARBON_MASS)
                + literal(6.0) * constant(&c::HYDROGEN_MASS)
                + constant(&c::OXYGEN_MASS));
        let ethanol =
            self.push("Stoichiometric AFR of ethanol", "AFR_e", &ethanol, (3, ""), &sources);
        (petrol, ethanol)
    }

    /// Density and air-fuel ratio of a blend, written out.
    fn of_blend(share: Share, suffix: &str, neat: &(Expression, Expression)) -> OfBlend {
        let v = || number(format!("v{suffix}"), share.fraction());
        let of_ethanol = || v() * constant(&c::ETHANOL_DENSITY);
        let of_petrol = || (literal(1.0) - v()) * constant(&c::PETROL_DENSITY);
        OfBlend {
            density: of_ethanol() + of_petrol(),
            afr: (of_ethanol() * neat.1.clone() + of_petrol() * neat.0.clone())
                / (of_ethanol() + of_petrol()),
        }
    }

    fn blend(&mut self, blend: &Blend) {
        let densities = [CONSERVATION, c::ETHANOL_DENSITY.source, c::PETROL_DENSITY.source];
        let neat = self.neat();
        let share = blend.share.expected();
        let of = Self::of_blend(share, "", &neat);
        let density = self.push("Density at 15 °C", "rho", &of.density, (1, "kg/m³"), &densities);
        let afr = self.push(
            "Stoichiometric AFR, mean by mass",
            "AFR",
            &of.afr,
            (2, ""),
            &[MASS_BALANCE, densities[1], densities[2]],
        );
        let reference = Self::of_blend(self.asked.reference, "_ref", &neat);
        let density_ref = self.push(
            "Density of the reference fuel",
            "rho_ref",
            &reference.density,
            (1, "kg/m³"),
            &densities,
        );
        let afr_ref = self.push(
            "Stoichiometric AFR of the reference fuel",
            "AFR_ref",
            &reference.afr,
            (2, ""),
            &[MASS_BALANCE],
        );
        self.push(
            "Fuel volume at equal air, against the reference fuel",
            "m_V",
            &(afr_ref / afr * density_ref / density),
            (3, ""),
            &[EQUAL_AIR],
        );
        let v = || number("v", share.fraction());
        let energy = (v() * constant(&c::ETHANOL_DENSITY) * constant(&c::ETHANOL_HEATING_VALUE)
            + (literal(1.0) - v())
                * constant(&c::PETROL_DENSITY)
                * constant(&c::PETROL_HEATING_VALUE))
            / literal(1000.0);
        self.push(
            "Lower heating value",
            "LHV_V",
            &energy,
            (2, "MJ/L"),
            &[ENERGY, c::ETHANOL_HEATING_VALUE.source, c::PETROL_HEATING_VALUE.source],
        );
        let tank = &self.asked.problem.tank;
        let ron: Vec<_> = self.asked.problem.offers.iter().map(|offer| offer.ron).collect();
        let mon: Vec<_> = self.asked.fuels.iter().map(|fuel| fuel.mon).collect();
        self.octane("RON", blend.ron.map(|_| (tank.ron, ron)));
        self.octane("MON", blend.mon.map(|_| (self.asked.tank_mon, mon)));
    }

    fn octane(&mut self, which: &str, known: Option<(Option<f64>, Vec<Option<f64>>)>) {
        let Some((of_tank, of_offers)) = known else { return };
        let molar = MolarDensity::default();
        let [of_petrol, of_ethanol] =
            [molar.hydrocarbon, molar.ethanol].map(|density| density.get::<mole_per_liter>());
        let per_litre = |e: Expression| {
            number("c_g", of_petrol) * (literal(1.0) - e.clone()) + number("c_e", of_ethanol) * e
        };
        let mut moles = Vec::new();
        let mut octane = Vec::new();
        let mut part = |litres: Expression, e: Expression, number: Expression| {
            moles.push(litres.clone() * per_litre(e.clone()));
            octane.push(litres * per_litre(e) * number);
        };
        if let (Some(ron), true) = (of_tank, self.level().value() > 0.0) {
            part(self.level(), self.present(), number(format!("{which}_0"), ron));
        }
        for fuel in self.taken() {
            let (x, e) = self.poured(fuel);
            if let Some(ron) = of_offers[fuel] {
                part(x, e, number(format!("{which}_{}", letter(fuel)), ron));
            }
        }
        let sources = [MOLAR_RULE, c::ETHANOL_DENSITY.source, c::PETROL_MOLAR_MASS.source];
        let name = format!("{which} by moles, at least");
        self.push(name, which, &(sum(octane) / sum(moles)), (1, ""), &sources);
    }

    fn calibrations(&mut self, share: Share) {
        let neat =
            (number("AFR_g", self.value_of("AFR_g")), number("AFR_e", self.value_of("AFR_e")));
        for (_, calibration) in &self.asked.calibrations {
            let actual = Self::of_blend(share, "", &neat);
            let intended = Self::of_blend(calibration.written_for, "_cal", &neat);
            let ratio = number("AFR_cal", intended.afr.value()) / number("AFR", actual.afr.value())
                * (number("rho_cal", intended.density.value())
                    / number("rho", actual.density.value()))
                .sqrt();
            self.push(
                format!("{}: lambda over that intended, open loop", calibration.name),
                "λ_r",
                &ratio,
                (3, ""),
                &[INJECTOR, MASS_BALANCE],
            );
        }
    }

    /// The value of an earlier line.
    fn value_of(&self, symbol: &str) -> f64 {
        self.lines.iter().find(|line| line.symbol == symbol).map_or(f64::NAN, |line| line.value)
    }

    fn money(&mut self) {
        if self.plan.cost.is_none() {
            return;
        }
        let litre = Volume::new::<liter>(1.0);
        let parts: Vec<_> = self
            .taken()
            .into_iter()
            .filter_map(|fuel| {
                let price = self.asked.problem.offers[fuel].price?.of(litre).amount();
                Some(self.poured(fuel).0 * number(format!("p_{}", letter(fuel)), price))
            })
            .collect();
        if !parts.is_empty() {
            let source = derived("litres times price per litre");
            self.push("Cost", "cost", &sum(parts), (2, ""), &[source]);
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::logbook::{Answer, Document, Printer, interpret};
    use crate::quantity::notation::DecimalMark;

    fn demo_answer() -> Answer {
        let document = Document::demo();
        let printer = Printer::new(&document.settings, DecimalMark::Point);
        let reading = interpret(&document, &printer);
        assert_eq!(reading.complaints, []);
        Answer::of(reading.asked.unwrap())
    }

    /// Every line, evaluated by exmex 0.21, a general-purpose expression
    /// evaluator, comes to the value that is shown.
    #[test]
    fn every_line_can_be_checked_by_hand() {
        let answer = demo_answer();
        assert!(answer.workings().len() > 12);
        for line in answer.workings() {
            let evaluated: f64 = exmex::eval_str(&line.numbers).unwrap();
            let shown = 0.5 * 10_f64.powi(-i32::try_from(line.decimals).unwrap());
            assert!(
                (evaluated - line.value).abs() < shown,
                "{}: {} comes to {evaluated}, not {}",
                line.name,
                line.numbers,
                line.value
            );
            assert!(!line.sources.is_empty(), "{} has no source", line.name);
        }
    }

    /// The lines say what the answer says, which is worked out another way.
    #[test]
    fn the_lines_agree_with_the_answer() {
        let answer = demo_answer();
        let workings = answer.workings();
        let line = |symbol: &str| {
            workings.iter().find(|line| line.symbol == symbol).map(|line| line.value)
        };
        let blend = answer.blend.as_ref().unwrap();
        let pairs = [
            ("v", Some(blend.share.expected().fraction())),
            ("v_low", Some(blend.share.low().fraction())),
            ("v_high", Some(blend.share.high().fraction())),
            ("AFR", blend.stoichiometric_afr.map(|band| band.expected())),
            ("m_V", blend.volume_multiplier.map(|band| band.expected())),
            ("RON", blend.ron.map(|band| band.expected())),
            ("MON", blend.mon.map(|band| band.expected())),
            ("cost", answer.cost.map(crate::quantity::Money::amount)),
        ];
        for (symbol, expected) in pairs {
            let (got, expected) = (line(symbol).unwrap(), expected.unwrap());
            assert!(
                (got - expected).abs() < 1e-9 * expected.abs().max(1.0),
                "{symbol}: {got} {expected}"
            );
        }
    }
}
