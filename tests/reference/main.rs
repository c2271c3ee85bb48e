//! The core against general-purpose libraries: CoolProp, cantera and chemicals, and
//! for the fuel system pint, fluids and scipy.
//!
//! `values.csv` is written by `compute.py` beside it, with the versions that
//! `requirements.txt` pins; `tools/reference` writes it again and compares. Each
//! row names its library, and how far the core may be from it; why, stands in the
//! script.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]
// Names of libraries are quoted as they are printed.
#![allow(clippy::doc_markdown)]

mod hardware;

use fillwright::fuel::Constituent::{self, Etbe, Ethanol, Hydrocarbon, Methanol, Mtbe, Water};
use fillwright::fuel::{HydrocarbonBase, Mixture, MixtureParts};
use fillwright::quantity::{MassDensity, MolarMass, ThermodynamicTemperature, Volume};
use std::collections::HashMap;
use uom::si::available_energy::{kilojoule_per_kilogram, megajoule_per_kilogram};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::molar_mass::gram_per_mole;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::volume::liter;

/// One row of the file.
struct Row {
    quantity: &'static str,
    fuel: &'static str,
    condition: &'static str,
    value: f64,
    tolerance: f64,
}

fn rows() -> Vec<Row> {
    let lines = include_str!("values.csv").lines().skip(1);
    lines
        .map(|line| {
            // Only the last column, which is not read, may hold a comma.
            let [quantity, fuel, condition, value, _unit, tolerance, _source] =
                line.splitn(7, ',').collect::<Vec<_>>().try_into().expect("seven columns");
            let [value, tolerance] = [value, tolerance].map(|text| text.parse().expect("a number"));
            Row { quantity, fuel, condition, value, tolerance }
        })
        .collect()
}

fn of(quantity: &str) -> Vec<Row> {
    let rows: Vec<_> = rows().into_iter().filter(|row| row.quantity == quantity).collect();
    assert!(!rows.is_empty(), "no row of {quantity}");
    rows
}

#[track_caller]
fn agrees(row: &Row, core: f64) {
    let allowed = (row.value.abs() * row.tolerance).max(1e-12);
    assert!(
        (core - row.value).abs() <= allowed,
        "{} of {} {}: core {core}, library {} +- {allowed}",
        row.quantity,
        row.fuel,
        row.condition,
        row.value,
    );
}

fn constituent(name: &str) -> Constituent {
    match name {
        "ethanol" => Ethanol,
        "methanol" => Methanol,
        "MTBE" => Mtbe,
        "ETBE" => Etbe,
        "water" => Water,
        _ => Hydrocarbon,
    }
}

/// The petrol base that the file describes, with the library's own density.
fn base(name: &str) -> HydrocarbonBase {
    let inputs: HashMap<_, _> = rows()
        .into_iter()
        .filter(|row| row.fuel == name)
        .map(|row| (row.quantity, row.value))
        .collect();
    HydrocarbonBase {
        density_15: MassDensity::new::<kilogram_per_cubic_meter>(inputs["base_density"]),
        molar_mass: MolarMass::new::<gram_per_mole>(inputs["base_molar_mass"]),
        hydrogen_to_carbon: inputs["base_hydrogen_to_carbon"],
        ..HydrocarbonBase::default()
    }
}

/// A fuel from its name, such as `isooctane:90 ethanol:10` (parts by volume).
fn fuel(name: &str) -> Mixture {
    let mut parts = MixtureParts::default();
    let mut hydrocarbon = HydrocarbonBase::default();
    for part in name.split(' ') {
        let (what, liters) = part.split_once(':').unwrap_or((part, "1"));
        let volume = Volume::new::<liter>(liters.parse().expect("a volume"));
        match constituent(what) {
            Hydrocarbon => {
                parts.hydrocarbon = volume;
                hydrocarbon = base(what);
            }
            Ethanol => parts.ethanol = volume,
            Methanol => parts.methanol = volume,
            Mtbe => parts.mtbe = volume,
            Etbe => parts.etbe = volume,
            Water => parts.water = volume,
        }
    }
    Mixture::from_parts(&parts, &hydrocarbon)
}

#[test]
fn densities_over_temperature() {
    for row in of("density") {
        let celsius: f64 = row.condition.parse().unwrap();
        let temperature = ThermodynamicTemperature::new::<degree_celsius>(celsius);
        let density = fuel(row.fuel).density_at(temperature).unwrap();
        agrees(&row, density.get::<kilogram_per_cubic_meter>());
    }
}

#[test]
fn molar_masses() {
    for row in of("molar_mass") {
        let fuel = fuel(row.fuel);
        agrees(&row, (fuel.mass() / fuel.moles()).get::<gram_per_mole>());
    }
}

#[test]
fn heats_of_vaporisation() {
    for row in of("heat_of_vaporisation") {
        let heat = fuel(row.fuel).heat_of_vaporisation().unwrap();
        agrees(&row, heat.get::<kilojoule_per_kilogram>());
    }
}

#[test]
fn lower_heating_values() {
    for row in of("lower_heating_value") {
        let value = fuel(row.fuel).lower_heating_value().unwrap();
        agrees(&row, value.get::<megajoule_per_kilogram>());
    }
}

#[test]
fn mass_fractions() {
    for row in of("mass_fraction") {
        agrees(&row, fuel(row.fuel).mass_fraction(constituent(row.condition)).unwrap());
    }
}

#[test]
fn mole_fractions() {
    for row in of("mole_fraction") {
        agrees(&row, fuel(row.fuel).mole_fraction(constituent(row.condition)).unwrap());
    }
}

#[test]
fn oxygen_by_mass() {
    for row in of("oxygen_mass_fraction") {
        agrees(&row, fuel(row.fuel).oxygen_mass_fraction().unwrap());
    }
}

#[test]
fn hydrogen_to_carbon_ratios() {
    for row in of("hydrogen_to_carbon") {
        agrees(&row, fuel(row.fuel).hydrogen_to_carbon().unwrap());
    }
}

#[test]
fn stoichiometric_ratios() {
    for row in of("stoichiometric_afr") {
        agrees(&row, fuel(row.fuel).stoichiometric_afr().unwrap());
    }
}

/// The classic mistake: averaging the air-fuel ratio by volume must not pass.
#[test]
fn ratios_averaged_by_volume_are_off() {
    for row in of("stoichiometric_afr") {
        let blend = fuel(row.fuel);
        let share = blend.ethanol_share().unwrap().fraction();
        if !row.fuel.starts_with("petrol") || !(0.05..0.5).contains(&share) {
            continue;
        }
        let neat = |name| fuel(name).stoichiometric_afr().unwrap();
        let by_volume = share * neat("ethanol") + (1.0 - share) * neat("petrol");
        assert!((by_volume - row.value).abs() > 2.0 * row.value * row.tolerance, "{}", row.fuel);
    }
}
