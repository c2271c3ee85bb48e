//! The thermal expansion of petrol.

use crate::source::{Confidence, Source, SourceKind};

use super::{Constant, source};

const GENERALISED_GASOLINE: Source = source(
    SourceKind::Standard,
    Confidence::Secondary,
    "ASTM D1250-80 / API 2540, Table 54B, gasolines 653 to 770 kg/m3 (read in published code)",
);

const EXPANSION_RANGE: Source = source(
    SourceKind::FromMemory,
    Confidence::Weak,
    "from memory: Table 54B of ASTM D1250-80 runs from 0 to 200 degF (-18 to 93 degC) at these \
     densities; here the range of the other constituents' tables",
);

/// First coefficient of the thermal expansion of petrol.
pub static EXPANSION_K0: Constant = Constant {
    id: "expansion-k0",
    name: "first coefficient of the thermal expansion of petrol",
    symbol: "K_0",
    unit: "kg2/m6/K",
    value: 346.4228,
    source: GENERALISED_GASOLINE,
};

/// Second coefficient of the thermal expansion of petrol.
pub static EXPANSION_K1: Constant = Constant {
    id: "expansion-k1",
    name: "second coefficient of the thermal expansion of petrol",
    symbol: "K_1",
    unit: "kg/m3/K",
    value: 0.4388,
    source: GENERALISED_GASOLINE,
};

/// Weight of the second-order term of the volume correction factor.
pub static EXPANSION_SECOND_ORDER: Constant = Constant {
    id: "expansion-second-order",
    name: "weight of the second-order term of the volume correction factor",
    symbol: "k",
    unit: "1",
    value: 0.8,
    source: GENERALISED_GASOLINE,
};

/// Lowest density at 15 degC that the expansion of petrol is stated for.
pub static EXPANSION_DENSITY_MIN: Constant = Constant {
    id: "expansion-density-min",
    name: "lowest density at 15 degC for the thermal expansion of petrol",
    symbol: "rho_min",
    unit: "kg/m3",
    value: 653.0,
    source: GENERALISED_GASOLINE,
};

/// Highest density at 15 degC that the expansion of petrol is stated for.
pub static EXPANSION_DENSITY_MAX: Constant = Constant {
    id: "expansion-density-max",
    name: "highest density at 15 degC for the thermal expansion of petrol",
    symbol: "rho_max",
    unit: "kg/m3",
    value: 770.0,
    source: GENERALISED_GASOLINE,
};

/// Lowest temperature at which the expansion of petrol is computed.
pub static EXPANSION_TEMPERATURE_MIN: Constant = Constant {
    id: "expansion-temperature-min",
    name: "lowest temperature for the thermal expansion of petrol",
    symbol: "T_min",
    unit: "degC",
    value: -20.0,
    source: EXPANSION_RANGE,
};

/// Highest temperature at which the expansion of petrol is computed.
pub static EXPANSION_TEMPERATURE_MAX: Constant = Constant {
    id: "expansion-temperature-max",
    name: "highest temperature for the thermal expansion of petrol",
    symbol: "T_max",
    unit: "degC",
    value: 60.0,
    source: EXPANSION_RANGE,
};
