//! Every constant of the fuel model, with its source, in one table.
//!
//! The formulas of this module read these statics and no other number, so a list
//! of [`ALL`] shows exactly what was computed with.

mod compounds;
mod elements;
mod expansion;
mod petrol;

pub use compounds::*;
pub use elements::*;
pub use expansion::*;
pub use petrol::*;

use crate::message::Message;
use crate::message::keys::constants as words;
use crate::quantity::{MassDensity, MolarMass, SpecificEnergy};
use crate::source::{Citation, Confidence, Source, SourceKind};
use crate::workings::Arithmetic;
use uom::si::available_energy::{kilojoule_per_kilogram, megajoule_per_kilogram};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::molar_mass::gram_per_mole;

/// A number that a formula uses, and where it comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Constant {
    /// A short name that never changes, for links and stored notes.
    pub id: &'static str,
    /// What it is.
    pub name: Message,
    /// The letter that formulas write for it.
    pub symbol: &'static str,
    /// Its unit; `1` for a pure number.
    pub unit: &'static str,
    /// Its value in that unit.
    pub value: f64,
    /// Where it comes from.
    pub source: Source,
}

impl Constant {
    /// The value as a density, when its unit is kg/m3.
    pub fn density(&self) -> MassDensity {
        MassDensity::new::<kilogram_per_cubic_meter>(self.value)
    }

    /// The value in a formula, under its own symbol.
    pub fn in_formula<A: Arithmetic>(&self) -> A {
        A::number(self.symbol, self.value)
    }

    /// The value as a molar mass, when its unit is g/mol.
    pub(super) fn molar_mass(&self) -> MolarMass {
        MolarMass::new::<gram_per_mole>(self.value)
    }

    /// The value as a heating value, when its unit is MJ/kg.
    pub(super) fn heating_value(&self) -> SpecificEnergy {
        SpecificEnergy::new::<megajoule_per_kilogram>(self.value)
    }

    /// The value as a heat of vaporisation, when its unit is kJ/kg.
    pub(super) fn vaporisation_heat(&self) -> SpecificEnergy {
        SpecificEnergy::new::<kilojoule_per_kilogram>(self.value)
    }
}

const fn source(kind: SourceKind, confidence: Confidence, citation: Citation) -> Source {
    Source { kind, citation, confidence }
}

const US_FUEL_PROPERTIES: Source =
    source(SourceKind::Dataset, Confidence::Secondary, Citation::Words(words::US_FUEL_PROPERTIES));

/// Every constant of the fuel model.
pub static ALL: &[&Constant] = &[
    &CARBON_MASS,
    &HYDROGEN_MASS,
    &OXYGEN_MASS,
    &NITROGEN_PER_OXYGEN,
    &NITROGEN_MOLAR_MASS,
    &PETROL_DENSITY,
    &PETROL_MOLAR_MASS,
    &PETROL_HYDROGEN,
    &PETROL_HEATING_VALUE,
    &PETROL_VAPORISATION,
    &ETHANOL_DENSITY,
    &ETHANOL_HEATING_VALUE,
    &ETHANOL_VAPORISATION,
    &ETHANOL_RON,
    &ETHANOL_MON,
    &METHANOL_DENSITY,
    &METHANOL_HEATING_VALUE,
    &METHANOL_VAPORISATION,
    &METHANOL_RON,
    &METHANOL_MON,
    &MTBE_DENSITY,
    &MTBE_HEATING_VALUE,
    &MTBE_VAPORISATION,
    &MTBE_RON,
    &MTBE_MON,
    &ETBE_DENSITY,
    &ETBE_HEATING_VALUE,
    &ETBE_VAPORISATION,
    &ETBE_RON,
    &ETBE_MON,
    &TOLUENE_RON,
    &TOLUENE_MON,
    &WATER_DENSITY,
    &WATER_VAPORISATION,
    &EXPANSION_K0,
    &EXPANSION_K1,
    &EXPANSION_SECOND_ORDER,
    &EXPANSION_DENSITY_MIN,
    &EXPANSION_DENSITY_MAX,
    &EXPANSION_TEMPERATURE_MIN,
    &EXPANSION_TEMPERATURE_MAX,
    &PETROL_SENSITIVITY,
];

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::HashSet;

    #[test]
    fn the_list_holds_every_constant_once() {
        let files = [
            include_str!("compounds.rs"),
            include_str!("elements.rs"),
            include_str!("expansion.rs"),
            include_str!("petrol.rs"),
        ];
        let written = files.iter().flat_map(|file| file.lines());
        let written = written.filter(|line| line.starts_with("pub static")).count();
        let ids: HashSet<_> = ALL.iter().map(|constant| constant.id).collect();
        assert_eq!((ids.len(), ALL.len()), (written, written));
    }
}
