//! Ethanol, methanol, the ethers of petrol, and water.

use crate::message::keys::constants as words;
use crate::source::{Citation, Confidence, Source, SourceKind};

use super::{Constant, US_FUEL_PROPERTIES, source};

const EQUATION_OF_STATE: Source =
    source(SourceKind::Library, Confidence::Checked, Citation::Words(words::EQUATION_OF_STATE));

const FORMATION_ENTHALPIES: Source =
    source(SourceKind::Library, Confidence::Checked, Citation::Words(words::FORMATION_ENTHALPIES));

const NEAT_OCTANE: Source =
    source(SourceKind::Dataset, Confidence::Secondary, Citation::Words(words::NEAT_OCTANE));

const ETHER_FROM_MEMORY: Source = source(
    SourceKind::FromMemory,
    Confidence::Weak,
    Citation::WithCaveat(words::ETHER_FROM_MEMORY),
);

const MTBE_FROM_MEMORY: Source =
    source(SourceKind::FromMemory, Confidence::Weak, Citation::WithCaveat(words::MTBE_FROM_MEMORY));

const ETHER_VAPORISATION: Source =
    source(SourceKind::Library, Confidence::Checked, Citation::Words(words::ETHER_VAPORISATION));

/// Density of ethanol at 15 degC.
pub static ETHANOL_DENSITY: Constant = Constant {
    id: "ethanol-density",
    name: words::ETHANOL_DENSITY,
    symbol: "rho_e",
    unit: "kg/m3",
    value: 793.7,
    source: EQUATION_OF_STATE,
};

/// Lower heating value of ethanol.
pub static ETHANOL_HEATING_VALUE: Constant = Constant {
    id: "ethanol-heating-value",
    name: words::ETHANOL_HEATING_VALUE,
    symbol: "H_e",
    unit: "MJ/kg",
    value: 26.816,
    source: FORMATION_ENTHALPIES,
};

/// Heat of vaporisation of ethanol.
pub static ETHANOL_VAPORISATION: Constant = Constant {
    id: "ethanol-vaporisation",
    name: words::ETHANOL_VAPORISATION,
    symbol: "h_e",
    unit: "kJ/kg",
    value: 921.0,
    source: US_FUEL_PROPERTIES,
};

/// Research octane number of neat ethanol.
pub static ETHANOL_RON: Constant = Constant {
    id: "ethanol-ron",
    name: words::ETHANOL_RON,
    symbol: "RON_e",
    unit: "1",
    value: 109.0,
    source: NEAT_OCTANE,
};

/// Motor octane number of neat ethanol.
pub static ETHANOL_MON: Constant = Constant {
    id: "ethanol-mon",
    name: words::ETHANOL_MON,
    symbol: "MON_e",
    unit: "1",
    value: 90.0,
    source: NEAT_OCTANE,
};

/// Density of methanol at 15 degC.
pub static METHANOL_DENSITY: Constant = Constant {
    id: "methanol-density",
    name: words::METHANOL_DENSITY,
    symbol: "rho_m",
    unit: "kg/m3",
    value: 795.7,
    source: EQUATION_OF_STATE,
};

/// Lower heating value of methanol.
pub static METHANOL_HEATING_VALUE: Constant = Constant {
    id: "methanol-heating-value",
    name: words::METHANOL_HEATING_VALUE,
    symbol: "H_m",
    unit: "MJ/kg",
    value: 19.933,
    source: FORMATION_ENTHALPIES,
};

/// Heat of vaporisation of methanol.
pub static METHANOL_VAPORISATION: Constant = Constant {
    id: "methanol-vaporisation",
    name: words::METHANOL_VAPORISATION,
    symbol: "h_m",
    unit: "kJ/kg",
    value: 1169.0,
    source: EQUATION_OF_STATE,
};

/// Research octane number of neat methanol.
pub static METHANOL_RON: Constant = Constant {
    id: "methanol-ron",
    name: words::METHANOL_RON,
    symbol: "RON_m",
    unit: "1",
    value: 109.6,
    source: NEAT_OCTANE,
};

/// Motor octane number of neat methanol.
pub static METHANOL_MON: Constant = Constant {
    id: "methanol-mon",
    name: words::METHANOL_MON,
    symbol: "MON_m",
    unit: "1",
    value: 87.4,
    source: NEAT_OCTANE,
};

/// Density of MTBE at 15 degC.
pub static MTBE_DENSITY: Constant = Constant {
    id: "mtbe-density",
    name: words::MTBE_DENSITY,
    symbol: "rho_t",
    unit: "kg/m3",
    value: 740.4,
    source: MTBE_FROM_MEMORY,
};

/// Lower heating value of MTBE.
pub static MTBE_HEATING_VALUE: Constant = Constant {
    id: "mtbe-heating-value",
    name: words::MTBE_HEATING_VALUE,
    symbol: "H_t",
    unit: "MJ/kg",
    value: 35.221,
    source: FORMATION_ENTHALPIES,
};

/// Heat of vaporisation of MTBE.
pub static MTBE_VAPORISATION: Constant = Constant {
    id: "mtbe-vaporisation",
    name: words::MTBE_VAPORISATION,
    symbol: "h_t",
    unit: "kJ/kg",
    value: 339.2,
    source: ETHER_VAPORISATION,
};

/// Research octane number of neat MTBE.
pub static MTBE_RON: Constant = Constant {
    id: "mtbe-ron",
    name: words::MTBE_RON,
    symbol: "RON_t",
    unit: "1",
    value: 117.0,
    source: ETHER_FROM_MEMORY,
};

/// Motor octane number of neat MTBE.
pub static MTBE_MON: Constant = Constant {
    id: "mtbe-mon",
    name: words::MTBE_MON,
    symbol: "MON_t",
    unit: "1",
    value: 101.0,
    source: ETHER_FROM_MEMORY,
};

/// Density of ETBE at 15 degC.
pub static ETBE_DENSITY: Constant = Constant {
    id: "etbe-density",
    name: words::ETBE_DENSITY,
    symbol: "rho_b",
    unit: "kg/m3",
    value: 747.0,
    source: ETHER_FROM_MEMORY,
};

/// Lower heating value of ETBE.
pub static ETBE_HEATING_VALUE: Constant = Constant {
    id: "etbe-heating-value",
    name: words::ETBE_HEATING_VALUE,
    symbol: "H_b",
    unit: "MJ/kg",
    value: 36.239,
    source: FORMATION_ENTHALPIES,
};

/// Heat of vaporisation of ETBE.
pub static ETBE_VAPORISATION: Constant = Constant {
    id: "etbe-vaporisation",
    name: words::ETBE_VAPORISATION,
    symbol: "h_b",
    unit: "kJ/kg",
    value: 361.1,
    source: ETHER_VAPORISATION,
};

/// Research octane number of neat ETBE.
pub static ETBE_RON: Constant = Constant {
    id: "etbe-ron",
    name: words::ETBE_RON,
    symbol: "RON_b",
    unit: "1",
    value: 118.0,
    source: ETHER_FROM_MEMORY,
};

/// Motor octane number of neat ETBE.
pub static ETBE_MON: Constant = Constant {
    id: "etbe-mon",
    name: words::ETBE_MON,
    symbol: "MON_b",
    unit: "1",
    value: 101.0,
    source: ETHER_FROM_MEMORY,
};

/// Research octane number of neat toluene: no petrol base has more.
pub static TOLUENE_RON: Constant = Constant {
    id: "toluene-ron",
    name: words::TOLUENE_RON,
    symbol: "RON_l",
    unit: "1",
    value: 120.1,
    source: NEAT_OCTANE,
};

/// Motor octane number of neat toluene: no petrol base has more.
pub static TOLUENE_MON: Constant = Constant {
    id: "toluene-mon",
    name: words::TOLUENE_MON,
    symbol: "MON_l",
    unit: "1",
    value: 103.5,
    source: NEAT_OCTANE,
};

/// Density of water at 15 degC.
pub static WATER_DENSITY: Constant = Constant {
    id: "water-density",
    name: words::WATER_DENSITY,
    symbol: "rho_w",
    unit: "kg/m3",
    value: 999.1,
    source: EQUATION_OF_STATE,
};

/// Heat of vaporisation of water; its negative is the lower heating value.
pub static WATER_VAPORISATION: Constant = Constant {
    id: "water-vaporisation",
    name: words::WATER_VAPORISATION,
    symbol: "h_w",
    unit: "kJ/kg",
    value: 2441.7,
    source: EQUATION_OF_STATE,
};
