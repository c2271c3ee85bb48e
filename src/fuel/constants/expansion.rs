//! The thermal expansion of petrol.

use crate::message::keys::constants as words;
use crate::source::{Citation, Confidence, Source, SourceKind};

use super::{Constant, source};

const GENERALISED_GASOLINE: Source = source(
    SourceKind::Standard,
    Confidence::Secondary,
    Citation::Words(words::GENERALISED_GASOLINE),
);

const EXPANSION_RANGE: Source =
    source(SourceKind::FromMemory, Confidence::Weak, Citation::WithCaveat(words::EXPANSION_RANGE));

/// First coefficient of the thermal expansion of petrol.
pub static EXPANSION_K0: Constant = Constant {
    id: "expansion-k0",
    name: words::EXPANSION_K0,
    symbol: "K_0",
    unit: "kg2/m6/K",
    value: 346.4228,
    source: GENERALISED_GASOLINE,
};

/// Second coefficient of the thermal expansion of petrol.
pub static EXPANSION_K1: Constant = Constant {
    id: "expansion-k1",
    name: words::EXPANSION_K1,
    symbol: "K_1",
    unit: "kg/m3/K",
    value: 0.4388,
    source: GENERALISED_GASOLINE,
};

/// Weight of the second-order term of the volume correction factor.
pub static EXPANSION_SECOND_ORDER: Constant = Constant {
    id: "expansion-second-order",
    name: words::EXPANSION_SECOND_ORDER,
    symbol: "k",
    unit: "1",
    value: 0.8,
    source: GENERALISED_GASOLINE,
};

/// Lowest density at 15 degC that the expansion of petrol is stated for.
pub static EXPANSION_DENSITY_MIN: Constant = Constant {
    id: "expansion-density-min",
    name: words::EXPANSION_DENSITY_MIN,
    symbol: "rho_min",
    unit: "kg/m3",
    value: 653.0,
    source: GENERALISED_GASOLINE,
};

/// Highest density at 15 degC that the expansion of petrol is stated for.
pub static EXPANSION_DENSITY_MAX: Constant = Constant {
    id: "expansion-density-max",
    name: words::EXPANSION_DENSITY_MAX,
    symbol: "rho_max",
    unit: "kg/m3",
    value: 770.0,
    source: GENERALISED_GASOLINE,
};

/// Lowest temperature at which the expansion of petrol is computed.
pub static EXPANSION_TEMPERATURE_MIN: Constant = Constant {
    id: "expansion-temperature-min",
    name: words::EXPANSION_TEMPERATURE_MIN,
    symbol: "T_min",
    unit: "degC",
    value: -20.0,
    source: EXPANSION_RANGE,
};

/// Highest temperature at which the expansion of petrol is computed.
pub static EXPANSION_TEMPERATURE_MAX: Constant = Constant {
    id: "expansion-temperature-max",
    name: words::EXPANSION_TEMPERATURE_MAX,
    symbol: "T_max",
    unit: "degC",
    value: 60.0,
    source: EXPANSION_RANGE,
};
