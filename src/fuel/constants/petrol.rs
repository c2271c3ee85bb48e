//! The petrol base: properties and octane.

use crate::source::{Confidence, Source, SourceKind};

use super::{Constant, US_FUEL_PROPERTIES, source};

const TYPICAL_PETROL: Source = source(
    SourceKind::CommonPractice,
    Confidence::Weak,
    "a middling summer petrol without oxygenates: common practice, no source",
);

/// Density at 15 degC of the petrol base (without oxygenates) when nothing is
/// known of it.
pub static PETROL_DENSITY: Constant = Constant {
    id: "petrol-density",
    name: "density of the petrol base at 15 degC",
    symbol: "rho_g",
    unit: "kg/m3",
    value: 745.0,
    source: TYPICAL_PETROL,
};

/// Molar mass of the petrol base.
pub static PETROL_MOLAR_MASS: Constant = Constant {
    id: "petrol-molar-mass",
    name: "mean molar mass of the petrol base",
    symbol: "M_g",
    unit: "g/mol",
    value: 100.0,
    source: US_FUEL_PROPERTIES,
};

/// Hydrogen atoms for each carbon atom of the petrol base.
pub static PETROL_HYDROGEN: Constant = Constant {
    id: "petrol-hydrogen",
    name: "hydrogen to carbon ratio of the petrol base",
    symbol: "y_g",
    unit: "mol/mol",
    value: 1.85,
    source: TYPICAL_PETROL,
};

/// Lower heating value of the petrol base.
pub static PETROL_HEATING_VALUE: Constant = Constant {
    id: "petrol-heating-value",
    name: "lower heating value of the petrol base",
    symbol: "H_g",
    unit: "MJ/kg",
    value: 43.2,
    source: TYPICAL_PETROL,
};

/// Heat of vaporisation of the petrol base.
pub static PETROL_VAPORISATION: Constant = Constant {
    id: "petrol-vaporisation",
    name: "heat of vaporisation of the petrol base (about 150 Btu/lb)",
    symbol: "h_g",
    unit: "kJ/kg",
    value: 350.0,
    source: US_FUEL_PROPERTIES,
};

/// RON less MON of a petrol base of which only the AKI is known.
pub static PETROL_SENSITIVITY: Constant = Constant {
    id: "petrol-sensitivity",
    name: "octane sensitivity (RON - MON) of a petrol base known by its AKI only",
    symbol: "S",
    unit: "1",
    value: 8.0,
    source: source(
        SourceKind::CommonPractice,
        Confidence::Weak,
        "usual for petrol without ethanol: common practice, no source",
    ),
};
