//! Every constant of fuel chemistry that this crate uses, in one table. Formulas
//! read these and nothing else, so a list of sources made from [`ALL`] is
//! complete.

use crate::source::{Confidence, Source, SourceKind};

/// A constant with its unit and its source.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Constant {
    /// What it is.
    pub name: &'static str,
    /// Its symbol in the workings.
    pub symbol: &'static str,
    /// The unit of the value.
    pub unit: &'static str,
    /// The value.
    pub value: f64,
    /// Where it comes from.
    pub source: Source,
}

const ATOMIC_MASSES: Source = Source {
    kind: SourceKind::FromMemory,
    citation: "standard atomic masses C 12.011, H 1.008, O 15.999 (IUPAC)",
    confidence: Confidence::Checked,
};

const AIR: Source = Source {
    kind: SourceKind::Handbook,
    citation: "air of 3.773 mol atmospheric nitrogen (28.16 g/mol) per mol oxygen, as in Heywood, Internal Combustion Engine Fundamentals; recalled, recomputed as 31.998 + 3.773 x 28.16",
    confidence: Confidence::Weak,
};

const EQUATION_OF_STATE: Source = Source {
    kind: SourceKind::Library,
    citation: "CoolProp 8.0.0, reference equation of state, 15 degrees Celsius, 101.325 kPa",
    confidence: Confidence::Checked,
};

const ENTHALPIES: Source = Source {
    kind: SourceKind::Library,
    citation: "chemicals 1.5.2, lower heating value from standard enthalpies of formation, liquid, 25 degrees Celsius",
    confidence: Confidence::Checked,
};

const EVAPORATION: Source = Source {
    kind: SourceKind::Library,
    citation: "CoolProp 8.0.0, enthalpy of vaporisation at 25 degrees Celsius",
    confidence: Confidence::Checked,
};

const TYPICAL_PETROL: Source = Source {
    kind: SourceKind::CommonPractice,
    citation: "a typical petrol base without oxygenates, inside the ranges of the US DOE/AFDC table of fuel properties",
    confidence: Confidence::Weak,
};

const NEAT_OCTANE: Source = Source {
    kind: SourceKind::Dataset,
    citation: "compilation of pure-component octane numbers published with a graph neural network for fuel ignition quality (Kubic 2017, Abdul Jameel 2018, NREL); the US DOE/AFDC table gives 108/92 for ethanol",
    confidence: Confidence::Secondary,
};

macro_rules! constants {
    ($($(#[$doc:meta])* $id:ident: $name:literal, $symbol:literal, $value:literal $unit:literal, $source:expr;)*) => {
        $($(#[$doc])* pub static $id: Constant = Constant {
            name: $name, symbol: $symbol, unit: $unit, value: $value, source: $source,
        };)*
        /// All constants of this table.
        pub static ALL: &[&Constant] = &[$(&$id),*];
    };
}

constants! {
    /// Molar mass of carbon.
    CARBON: "molar mass of carbon", "M_C", 12.011 "g/mol", ATOMIC_MASSES;
    /// Molar mass of hydrogen.
    HYDROGEN: "molar mass of hydrogen", "M_H", 1.008 "g/mol", ATOMIC_MASSES;
    /// Molar mass of oxygen.
    OXYGEN: "molar mass of oxygen", "M_O", 15.999 "g/mol", ATOMIC_MASSES;
    /// Mass of air that carries one mole of oxygen molecules. The air
    /// composition decides whether ethanol's air-fuel ratio is 9.00 or 8.95.
    AIR_PER_OXYGEN: "air per mole of oxygen", "K", 138.246 "g/mol", AIR;

    /// Density of the petrol base.
    PETROL_DENSITY: "density of the petrol base at 15 degC", "rho_g", 745.0 "kg/m3", TYPICAL_PETROL;
    /// Molar mass of the petrol base.
    PETROL_MOLAR_MASS: "molar mass of the petrol base", "M_g", 100.0 "g/mol", TYPICAL_PETROL;
    /// Hydrogen atoms per carbon atom of the petrol base.
    PETROL_HYDROGEN: "hydrogen per carbon of the petrol base", "y_g", 1.85 "", TYPICAL_PETROL;
    /// Lower heating value of the petrol base.
    PETROL_HEATING_VALUE: "lower heating value of the petrol base", "LHV_g", 43.2 "MJ/kg", TYPICAL_PETROL;
    /// Heat of vaporisation of the petrol base.
    PETROL_VAPORISATION: "heat of vaporisation of the petrol base", "h_g", 350.0 "kJ/kg", TYPICAL_PETROL;

    /// Density of ethanol.
    ETHANOL_DENSITY: "density of ethanol at 15 degC", "rho_e", 793.69 "kg/m3", EQUATION_OF_STATE;
    /// Lower heating value of ethanol.
    ETHANOL_HEATING_VALUE: "lower heating value of ethanol", "LHV_e", 26.816 "MJ/kg", ENTHALPIES;
    /// Heat of vaporisation of ethanol.
    ETHANOL_VAPORISATION: "heat of vaporisation of ethanol", "h_e", 920.7 "kJ/kg", EVAPORATION;
    /// Research octane number of neat ethanol. The 129 that is often quoted is a
    /// blending number by volume and has no place in a molar rule.
    ETHANOL_RON: "RON of neat ethanol", "RON_e", 109.0 "", NEAT_OCTANE;
    /// Motor octane number of neat ethanol.
    ETHANOL_MON: "MON of neat ethanol", "MON_e", 90.0 "", NEAT_OCTANE;

    /// Density of methanol.
    METHANOL_DENSITY: "density of methanol at 15 degC", "rho_m", 795.69 "kg/m3", EQUATION_OF_STATE;
    /// Lower heating value of methanol.
    METHANOL_HEATING_VALUE: "lower heating value of methanol", "LHV_m", 19.933 "MJ/kg", ENTHALPIES;
    /// Heat of vaporisation of methanol.
    METHANOL_VAPORISATION: "heat of vaporisation of methanol", "h_m", 1169.0 "kJ/kg", EVAPORATION;
    /// Research octane number of neat methanol.
    METHANOL_RON: "RON of neat methanol", "RON_m", 109.6 "", NEAT_OCTANE;
    /// Motor octane number of neat methanol.
    METHANOL_MON: "MON of neat methanol", "MON_m", 87.4 "", NEAT_OCTANE;

    /// Density of water.
    WATER_DENSITY: "density of water at 15 degC", "rho_w", 999.10 "kg/m3", EQUATION_OF_STATE;
    /// Heat of vaporisation of water.
    WATER_VAPORISATION: "heat of vaporisation of water", "h_w", 2441.7 "kJ/kg", EVAPORATION;
}
