//! Ethanol, methanol, the ethers of petrol, and water.

use crate::source::{Confidence, Source, SourceKind};

use super::{Constant, US_FUEL_PROPERTIES, source};

const EQUATION_OF_STATE: Source = source(
    SourceKind::Library,
    Confidence::Checked,
    "CoolProp 8.0.0, reference equation of state at 101.325 kPa",
);

const FORMATION_ENTHALPIES: Source = source(
    SourceKind::Library,
    Confidence::Checked,
    "chemicals 1.5.2, LHV of the liquid at 25 degC from standard enthalpies of formation",
);

const NEAT_OCTANE: Source = source(
    SourceKind::Dataset,
    Confidence::Secondary,
    "Compilation of pure-component octane numbers (Kubic 2017, Abdul Jameel 2018, NREL), file \
     DCN_MON_RON_joined_all_shuffled.csv of the repository \
     graph_neural_network_for_fuel_ignition_quality_simplest, commit 1ff9983",
);

const ETHER_FROM_MEMORY: Source = source(
    SourceKind::FromMemory,
    Confidence::Weak,
    "from memory: as handbooks of petrol's oxygenates state it, to about 1 %",
);

const MTBE_FROM_MEMORY: Source = source(
    SourceKind::FromMemory,
    Confidence::Weak,
    "from memory: as handbooks of petrol's oxygenates state it; chemicals 1.5.2 (Perry, 8th edition) \
     has 740.8 at 20 degC and 745.8 at 15 degC, 0.7 % more",
);

const ETHER_VAPORISATION: Source = source(
    SourceKind::Library,
    Confidence::Checked,
    "chemicals 1.5.2, difference of the standard enthalpies of formation of gas and liquid",
);

/// Density of ethanol at 15 degC.
pub static ETHANOL_DENSITY: Constant = Constant {
    id: "ethanol-density",
    name: "density of ethanol at 15 degC",
    symbol: "rho_e",
    unit: "kg/m3",
    value: 793.7,
    source: EQUATION_OF_STATE,
};

/// Lower heating value of ethanol.
pub static ETHANOL_HEATING_VALUE: Constant = Constant {
    id: "ethanol-heating-value",
    name: "lower heating value of ethanol",
    symbol: "H_e",
    unit: "MJ/kg",
    value: 26.816,
    source: FORMATION_ENTHALPIES,
};

/// Heat of vaporisation of ethanol.
pub static ETHANOL_VAPORISATION: Constant = Constant {
    id: "ethanol-vaporisation",
    name: "heat of vaporisation of ethanol (396 Btu/lb)",
    symbol: "h_e",
    unit: "kJ/kg",
    value: 921.0,
    source: US_FUEL_PROPERTIES,
};

/// Research octane number of neat ethanol.
pub static ETHANOL_RON: Constant = Constant {
    id: "ethanol-ron",
    name: "RON of neat ethanol (not a blending number)",
    symbol: "RON_e",
    unit: "1",
    value: 109.0,
    source: NEAT_OCTANE,
};

/// Motor octane number of neat ethanol.
pub static ETHANOL_MON: Constant = Constant {
    id: "ethanol-mon",
    name: "MON of neat ethanol (not a blending number)",
    symbol: "MON_e",
    unit: "1",
    value: 90.0,
    source: NEAT_OCTANE,
};

/// Density of methanol at 15 degC.
pub static METHANOL_DENSITY: Constant = Constant {
    id: "methanol-density",
    name: "density of methanol at 15 degC",
    symbol: "rho_m",
    unit: "kg/m3",
    value: 795.7,
    source: EQUATION_OF_STATE,
};

/// Lower heating value of methanol.
pub static METHANOL_HEATING_VALUE: Constant = Constant {
    id: "methanol-heating-value",
    name: "lower heating value of methanol",
    symbol: "H_m",
    unit: "MJ/kg",
    value: 19.933,
    source: FORMATION_ENTHALPIES,
};

/// Heat of vaporisation of methanol.
pub static METHANOL_VAPORISATION: Constant = Constant {
    id: "methanol-vaporisation",
    name: "heat of vaporisation of methanol at 25 degC",
    symbol: "h_m",
    unit: "kJ/kg",
    value: 1169.0,
    source: EQUATION_OF_STATE,
};

/// Research octane number of neat methanol.
pub static METHANOL_RON: Constant = Constant {
    id: "methanol-ron",
    name: "RON of neat methanol",
    symbol: "RON_m",
    unit: "1",
    value: 109.6,
    source: NEAT_OCTANE,
};

/// Motor octane number of neat methanol.
pub static METHANOL_MON: Constant = Constant {
    id: "methanol-mon",
    name: "MON of neat methanol",
    symbol: "MON_m",
    unit: "1",
    value: 87.4,
    source: NEAT_OCTANE,
};

/// Density of MTBE at 15 degC.
pub static MTBE_DENSITY: Constant = Constant {
    id: "mtbe-density",
    name: "density of MTBE at 15 degC",
    symbol: "rho_t",
    unit: "kg/m3",
    value: 740.4,
    source: MTBE_FROM_MEMORY,
};

/// Lower heating value of MTBE.
pub static MTBE_HEATING_VALUE: Constant = Constant {
    id: "mtbe-heating-value",
    name: "lower heating value of MTBE",
    symbol: "H_t",
    unit: "MJ/kg",
    value: 35.221,
    source: FORMATION_ENTHALPIES,
};

/// Heat of vaporisation of MTBE.
pub static MTBE_VAPORISATION: Constant = Constant {
    id: "mtbe-vaporisation",
    name: "heat of vaporisation of MTBE at 25 degC",
    symbol: "h_t",
    unit: "kJ/kg",
    value: 339.2,
    source: ETHER_VAPORISATION,
};

/// Research octane number of neat MTBE.
pub static MTBE_RON: Constant = Constant {
    id: "mtbe-ron",
    name: "RON of neat MTBE",
    symbol: "RON_t",
    unit: "1",
    value: 117.0,
    source: ETHER_FROM_MEMORY,
};

/// Motor octane number of neat MTBE.
pub static MTBE_MON: Constant = Constant {
    id: "mtbe-mon",
    name: "MON of neat MTBE",
    symbol: "MON_t",
    unit: "1",
    value: 101.0,
    source: ETHER_FROM_MEMORY,
};

/// Density of ETBE at 15 degC.
pub static ETBE_DENSITY: Constant = Constant {
    id: "etbe-density",
    name: "density of ETBE at 15 degC",
    symbol: "rho_b",
    unit: "kg/m3",
    value: 747.0,
    source: ETHER_FROM_MEMORY,
};

/// Lower heating value of ETBE.
pub static ETBE_HEATING_VALUE: Constant = Constant {
    id: "etbe-heating-value",
    name: "lower heating value of ETBE",
    symbol: "H_b",
    unit: "MJ/kg",
    value: 36.239,
    source: FORMATION_ENTHALPIES,
};

/// Heat of vaporisation of ETBE.
pub static ETBE_VAPORISATION: Constant = Constant {
    id: "etbe-vaporisation",
    name: "heat of vaporisation of ETBE at 25 degC",
    symbol: "h_b",
    unit: "kJ/kg",
    value: 361.1,
    source: ETHER_VAPORISATION,
};

/// Research octane number of neat ETBE.
pub static ETBE_RON: Constant = Constant {
    id: "etbe-ron",
    name: "RON of neat ETBE",
    symbol: "RON_b",
    unit: "1",
    value: 118.0,
    source: ETHER_FROM_MEMORY,
};

/// Motor octane number of neat ETBE.
pub static ETBE_MON: Constant = Constant {
    id: "etbe-mon",
    name: "MON of neat ETBE",
    symbol: "MON_b",
    unit: "1",
    value: 101.0,
    source: ETHER_FROM_MEMORY,
};

/// Research octane number of neat toluene: no petrol base has more.
pub static TOLUENE_RON: Constant = Constant {
    id: "toluene-ron",
    name: "RON of neat toluene, more than any petrol base has",
    symbol: "RON_l",
    unit: "1",
    value: 120.1,
    source: NEAT_OCTANE,
};

/// Motor octane number of neat toluene: no petrol base has more.
pub static TOLUENE_MON: Constant = Constant {
    id: "toluene-mon",
    name: "MON of neat toluene, more than any petrol base has",
    symbol: "MON_l",
    unit: "1",
    value: 103.5,
    source: NEAT_OCTANE,
};

/// Density of water at 15 degC.
pub static WATER_DENSITY: Constant = Constant {
    id: "water-density",
    name: "density of water at 15 degC",
    symbol: "rho_w",
    unit: "kg/m3",
    value: 999.1,
    source: EQUATION_OF_STATE,
};

/// Heat of vaporisation of water; its negative is the lower heating value.
pub static WATER_VAPORISATION: Constant = Constant {
    id: "water-vaporisation",
    name: "heat of vaporisation of water at 25 degC",
    symbol: "h_w",
    unit: "kJ/kg",
    value: 2441.7,
    source: EQUATION_OF_STATE,
};
