//! What the blend is: density, air-fuel ratio, heating value, octane, lambda.

use super::{CONSERVATION, Derivation, constant, litres};
use crate::answers::fill::answer::BlendAnswer;
use crate::fuel::{
    Constant, Corner, MixtureParts, air_for_oxygen, anti_knock_index, constants as c,
    open_loop_ratio, oxygen_needed, volume_ratio,
};
use crate::message::Message;
use crate::message::keys::practice as words;
use crate::message::keys::workings;
use crate::quantity::notation::LITRE;
use crate::quantity::{Share, Volume};
use crate::source::{Citation, Confidence, Source, SourceKind};
use crate::workings::{Expression, literal, number, sum};

const MASS_BALANCE: Source = Source::derived(words::MASS_BALANCE);
const EQUAL_AIR: Source = Source::derived(words::EQUAL_AIR);
const ENERGY: Source = Source::derived(words::ENERGY_BY_VOLUME);
const INJECTOR: Source = Source::derived(words::INJECTOR);
const AKI: Source = Source {
    kind: SourceKind::Definition,
    citation: Citation::Words(words::ANTI_KNOCK_INDEX),
    confidence: Confidence::Secondary,
};
const MOLAR_RULE: Source = Source {
    kind: SourceKind::Paper,
    citation: Citation::Words(words::MOLAR_RULE),
    confidence: Confidence::Secondary,
};

/// Densities and air-fuel ratios of a blend, as expressions.
struct OfBlend {
    density: Expression,
    afr: Expression,
}

/// A part of a blend that not every blend has.
struct Extra {
    letter: char,
    /// What its air-fuel ratio is called, and its atoms of carbon and hydrogen beside one of
    /// oxygen; none where it does not burn.
    atoms: Option<(Message, f64, f64)>,
    density: &'static Constant,
    /// None where it does not burn.
    heating_value: Option<&'static Constant>,
    volume: fn(&MixtureParts) -> Volume,
}

impl Extra {
    fn share(&self, litre: &MixtureParts) -> f64 {
        litres((self.volume)(litre))
    }
}

static EXTRAS: [Extra; 4] = [
    Extra {
        letter: 'm',
        atoms: Some((workings::AFR_OF_METHANOL, 1.0, 4.0)),
        density: &c::METHANOL_DENSITY,
        heating_value: Some(&c::METHANOL_HEATING_VALUE),
        volume: |parts| parts.methanol,
    },
    Extra {
        letter: 't',
        atoms: Some((workings::AFR_OF_MTBE, 5.0, 12.0)),
        density: &c::MTBE_DENSITY,
        heating_value: Some(&c::MTBE_HEATING_VALUE),
        volume: |parts| parts.mtbe,
    },
    Extra {
        letter: 'b',
        atoms: Some((workings::AFR_OF_ETBE, 6.0, 14.0)),
        density: &c::ETBE_DENSITY,
        heating_value: Some(&c::ETBE_HEATING_VALUE),
        volume: |parts| parts.etbe,
    },
    Extra {
        letter: 'w',
        atoms: None,
        density: &c::WATER_DENSITY,
        heating_value: None,
        volume: |parts| parts.water,
    },
];

/// What a part of a blend is.
enum Of {
    Petrol,
    Ethanol,
    Extra(&'static Extra),
}

/// A litre of petrol and ethanol.
fn splash(share: Share) -> MixtureParts {
    MixtureParts::splash(LITRE.quantity(1.0), share)
}

/// Share times density of each part of a litre.
fn masses(litre: &MixtureParts, suffix: &str) -> Vec<(Of, Expression)> {
    let ethanol = || number(format!("v{suffix}"), litres(litre.ethanol));
    let extras: Vec<(&Extra, Expression)> = EXTRAS
        .iter()
        .filter(|extra| extra.share(litre) > 0.0)
        .map(|it| (it, number(format!("v_{}{suffix}", it.letter), it.share(litre))))
        .collect();
    let petrol =
        extras.iter().fold(literal(1.0) - ethanol(), |left, (_, share)| left - share.clone());
    let mut masses = vec![
        (Of::Ethanol, ethanol() * constant(&c::ETHANOL_DENSITY)),
        (Of::Petrol, petrol * constant(&c::PETROL_DENSITY)),
    ];
    masses.extend(
        extras.into_iter().map(|(it, share)| (Of::Extra(it), share * constant(it.density))),
    );
    masses
}

impl Derivation<'_> {
    /// Air-fuel ratios of the constituents.
    fn neat(&mut self) -> (Expression, Expression) {
        let air = air_for_oxygen();
        let sources = [MASS_BALANCE, c::NITROGEN_PER_OXYGEN.source, c::CARBON_MASS.source];
        let air = self.lines.add(
            workings::AIR_BRINGS_MOLE_OXYGEN,
            "K",
            &air,
            (3, "g/mol"),
            &sources[1..],
        );
        let hydrogen = || constant(&c::PETROL_HYDROGEN);
        let petrol = oxygen_needed(literal(1.0), hydrogen(), None) * air.clone()
            / (constant(&c::CARBON_MASS) + hydrogen() * constant(&c::HYDROGEN_MASS));
        let with_petrol = [sources[0], sources[1], sources[2], c::PETROL_HYDROGEN.source];
        let petrol = self.lines.add(
            workings::STOICHIOMETRIC_AFR_PETROL_BASE,
            "AFR_g",
            &petrol,
            (3, ""),
            &with_petrol,
        );
        let oxygen = oxygen_needed(literal(2.0), literal(6.0), Some(literal(1.0)));
        let ethanol = oxygen * air.clone()
            / (literal(2.0) * constant(&c::CARBON_MASS)
                + literal(6.0) * constant(&c::HYDROGEN_MASS)
                + constant(&c::OXYGEN_MASS));
        let ethanol = self.lines.add(
            workings::STOICHIOMETRIC_AFR_ETHANOL,
            "AFR_e",
            &ethanol,
            (3, ""),
            &sources,
        );
        (petrol, ethanol)
    }

    /// Air-fuel ratios of what else is in the blend, each under a symbol of its own.
    fn neat_extras(&mut self, parts: &MixtureParts) {
        let sources = [MASS_BALANCE, c::CARBON_MASS.source];
        for extra in EXTRAS.iter().filter(|extra| extra.share(parts) > 0.0) {
            let Some((name, carbon, hydrogen)) = extra.atoms else { continue };
            let air = number("K", self.lines.value_of("K"));
            let oxygen = oxygen_needed(literal(carbon), literal(hydrogen), Some(literal(1.0)));
            let ratio = oxygen * air
                / (literal(carbon) * constant(&c::CARBON_MASS)
                    + literal(hydrogen) * constant(&c::HYDROGEN_MASS)
                    + constant(&c::OXYGEN_MASS));
            let symbol = format!("AFR_{}", extra.letter);
            self.lines.add(name, symbol, &ratio, (3, ""), &sources);
        }
    }

    /// Density and air-fuel ratio of a blend, written out.
    fn of_blend(
        &self,
        parts: &MixtureParts,
        suffix: &str,
        neat: &(Expression, Expression),
    ) -> OfBlend {
        let masses = masses(parts, suffix);
        let density = sum(masses.iter().map(|(_, mass)| mass.clone()));
        // Water takes no air.
        let air = masses.into_iter().filter_map(|(of, mass)| match of {
            Of::Petrol => Some(mass * neat.0.clone()),
            Of::Ethanol => Some(mass * neat.1.clone()),
            Of::Extra(extra) => extra.atoms.map(|_| {
                let symbol = format!("AFR_{}", extra.letter);
                let ratio = self.lines.value_of(&symbol);
                mass * number(symbol, ratio)
            }),
        });
        OfBlend { afr: sum(air) / density.clone(), density }
    }

    pub(crate) fn blend(&mut self, blend: &BlendAnswer) {
        let densities = [CONSERVATION, c::ETHANOL_DENSITY.source, c::PETROL_DENSITY.source];
        let neat = self.neat();
        let parts = blend.content().parts(Corner::Expected);
        self.neat_extras(&parts);
        let of = self.of_blend(&parts, "", &neat);
        let density =
            self.lines.add(workings::DENSITY_15_C, "rho", &of.density, (1, "kg/m³"), &densities);
        let afr = self.lines.add(
            workings::STOICHIOMETRIC_AFR_MEAN_MASS,
            "AFR",
            &of.afr,
            (2, ""),
            &[MASS_BALANCE, densities[1], densities[2]],
        );
        let reference = self.of_blend(&splash(self.asked.reference), "_ref", &neat);
        let density_ref = self.lines.add(
            workings::DENSITY_REFERENCE_FUEL,
            "rho_ref",
            &reference.density,
            (1, "kg/m³"),
            &densities,
        );
        let afr_ref = self.lines.add(
            workings::STOICHIOMETRIC_AFR_REFERENCE_FUEL,
            "AFR_ref",
            &reference.afr,
            (2, ""),
            &[MASS_BALANCE],
        );
        self.lines.add(
            workings::FUEL_VOLUME_EQUAL_AIR_AGAINST_REFERENCE,
            "m_V",
            &volume_ratio((afr_ref, density_ref), (afr, density)),
            (3, ""),
            &[EQUAL_AIR],
        );
        let heats = masses(&parts, "").into_iter().map(|(of, mass)| match of {
            Of::Petrol => mass * constant(&c::PETROL_HEATING_VALUE),
            Of::Ethanol => mass * constant(&c::ETHANOL_HEATING_VALUE),
            Of::Extra(extra) => match extra.heating_value {
                Some(value) => mass * constant(value),
                // Water leaves as vapour and takes its heat along.
                None => literal(0.0) - mass * constant(&c::WATER_VAPORISATION) / literal(1000.0),
            },
        });
        let energy = sum(heats) / literal(1000.0);
        self.lines.add(
            workings::LOWER_HEATING_VALUE,
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
        if blend.aki().is_some() {
            let [ron, mon] =
                ["RON", "MON"].map(|symbol| number(symbol, self.lines.value_of(symbol)));
            let mean = anti_knock_index(ron, mon);
            self.lines.add(workings::AKI_LEAST, "AKI", &mean, (1, ""), &[AKI]);
        }
    }

    fn octane(&mut self, which: &str, known: Option<(Option<f64>, Vec<Option<f64>>)>) {
        let Some((of_tank, of_offers)) = known else { return };
        let of_offer = |fuel: usize| of_offers[fuel];
        let octane = self.asked.problem.octane(which, &self.amounts(), of_tank, of_offer);
        let Some(octane) = octane else { return };
        let sources = [MOLAR_RULE, c::ETHANOL_DENSITY.source, c::PETROL_MOLAR_MASS.source];
        let name = workings::OctaneByMoles { scale: which }.sentence();
        self.lines.add(name, which, &octane, (1, ""), &sources);
    }

    pub(crate) fn calibrations(&mut self, blend: &BlendAnswer) {
        let neat = (
            number("AFR_g", self.lines.value_of("AFR_g")),
            number("AFR_e", self.lines.value_of("AFR_e")),
        );
        for (_, calibration) in &self.asked.calibrations {
            let parts = blend.content().parts(Corner::Expected);
            let actual = self.of_blend(&parts, "", &neat);
            let intended = self.of_blend(&splash(calibration.written_for), "_cal", &neat);
            let ratio = open_loop_ratio(
                (
                    number("AFR_cal", intended.afr.value()),
                    number("rho_cal", intended.density.value()),
                ),
                (number("AFR", actual.afr.value()), number("rho", actual.density.value())),
            );
            self.lines.add(
                workings::LambdaOfCalibration { calibration: &calibration.name }.sentence(),
                "λ_r",
                &ratio,
                (3, ""),
                &[INJECTOR, MASS_BALANCE],
            );
        }
    }
}
