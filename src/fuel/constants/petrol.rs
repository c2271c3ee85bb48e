//! The petrol base: properties and octane.

use crate::message::keys::constants as words;
use crate::source::{Citation, Confidence, Source, SourceKind};

use super::{Constant, US_FUEL_PROPERTIES, source};

const TYPICAL_PETROL: Source = source(
    SourceKind::CommonPractice,
    Confidence::Weak,
    Citation::WithCaveat(words::TYPICAL_PETROL),
);

/// Density at 15 degC of the petrol base (without oxygenates) when nothing is
/// known of it.
pub static PETROL_DENSITY: Constant = Constant {
    id: "petrol-density",
    name: words::PETROL_DENSITY,
    symbol: "rho_g",
    unit: "kg/m3",
    value: 745.0,
    source: TYPICAL_PETROL,
};

/// Molar mass of the petrol base.
pub static PETROL_MOLAR_MASS: Constant = Constant {
    id: "petrol-molar-mass",
    name: words::PETROL_MOLAR_MASS,
    symbol: "M_g",
    unit: "g/mol",
    value: 100.0,
    source: US_FUEL_PROPERTIES,
};

/// Hydrogen atoms for each carbon atom of the petrol base.
pub static PETROL_HYDROGEN: Constant = Constant {
    id: "petrol-hydrogen",
    name: words::PETROL_HYDROGEN,
    symbol: "y_g",
    unit: "mol/mol",
    value: 1.85,
    source: TYPICAL_PETROL,
};

/// Lower heating value of the petrol base.
pub static PETROL_HEATING_VALUE: Constant = Constant {
    id: "petrol-heating-value",
    name: words::PETROL_HEATING_VALUE,
    symbol: "H_g",
    unit: "MJ/kg",
    value: 43.2,
    source: TYPICAL_PETROL,
};

/// Heat of vaporisation of the petrol base.
pub static PETROL_VAPORISATION: Constant = Constant {
    id: "petrol-vaporisation",
    name: words::PETROL_VAPORISATION,
    symbol: "h_g",
    unit: "kJ/kg",
    value: 350.0,
    source: US_FUEL_PROPERTIES,
};

/// RON less MON of a petrol base of which only the AKI is known.
pub static PETROL_SENSITIVITY: Constant = Constant {
    id: "petrol-sensitivity",
    name: words::PETROL_SENSITIVITY,
    symbol: "S",
    unit: "1",
    value: 8.0,
    source: source(
        SourceKind::CommonPractice,
        Confidence::Weak,
        Citation::WithCaveat(words::PETROL_SENSITIVITY_SOURCE),
    ),
};
