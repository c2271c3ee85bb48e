//! Every constant of the hardware models, with its source, in one table.

use crate::fuel::Constant;
use crate::message::keys::constants as words;
use crate::source::{Citation, Confidence, Source, SourceKind};

const fn source(kind: SourceKind, confidence: Confidence, citation: Citation) -> Source {
    Source { kind, citation, confidence }
}

const EQUATION_OF_STATE: Source =
    source(SourceKind::Library, Confidence::Checked, Citation::Words(words::EQUATION_OF_STATE_20));

const TRADE: Source = source(
    SourceKind::CommonPractice,
    Confidence::Weak,
    Citation::WithCaveat(words::USUAL_RESERVE),
);

/// Gas constant of dry air.
pub static AIR_GAS_CONSTANT: Constant = Constant {
    id: "air-gas-constant",
    name: words::AIR_GAS_CONSTANT,
    symbol: "R_a",
    unit: "J/(kg K)",
    value: 287.05,
    source: source(
        SourceKind::FromMemory,
        Confidence::Weak,
        Citation::WithCaveat(words::AIR_GAS_CONSTANT_SOURCE),
    ),
};

/// Heat capacity of air at constant pressure.
pub static AIR_HEAT_CAPACITY: Constant = Constant {
    id: "air-heat-capacity",
    name: words::AIR_HEAT_CAPACITY,
    symbol: "c_p",
    unit: "kJ/(kg K)",
    value: 1.006,
    source: EQUATION_OF_STATE,
};

/// Heat capacity of liquid petrol.
pub static PETROL_HEAT_CAPACITY: Constant = Constant {
    id: "petrol-heat-capacity",
    name: words::PETROL_HEAT_CAPACITY,
    symbol: "c_g",
    unit: "kJ/(kg K)",
    value: 2.1,
    source: source(
        SourceKind::FromMemory,
        Confidence::Weak,
        Citation::WithCaveat(words::PETROL_HEAT_CAPACITY_SOURCE),
    ),
};

/// Heat capacity of liquid ethanol.
pub static ETHANOL_HEAT_CAPACITY: Constant = Constant {
    id: "ethanol-heat-capacity",
    name: words::ETHANOL_HEAT_CAPACITY,
    symbol: "c_e",
    unit: "kJ/(kg K)",
    value: 2.4,
    source: EQUATION_OF_STATE,
};

/// How much of the greatest possible charge cooling an engine with direct
/// injection shows.
pub static COOLING_REALISED: Constant = Constant {
    id: "cooling-realised",
    name: words::COOLING_REALISED,
    symbol: "k_c",
    unit: "1",
    value: 0.7,
    source: source(
        SourceKind::Paper,
        Confidence::Secondary,
        Citation::Words(words::COOLING_REALISED_SOURCE),
    ),
};

/// Density of n-heptane, a usual test fluid for injectors.
pub static N_HEPTANE_DENSITY: Constant = Constant {
    id: "n-heptane-density",
    name: words::N_HEPTANE_DENSITY,
    symbol: "rho_t",
    unit: "kg/m3",
    value: 683.82,
    source: EQUATION_OF_STATE,
};

/// Density of mineral spirits, a usual test fluid of workshops' benches.
pub static MINERAL_SPIRITS_DENSITY: Constant = Constant {
    id: "mineral-spirits-density",
    name: words::MINERAL_SPIRITS_DENSITY,
    symbol: "rho_t",
    unit: "kg/m3",
    value: 770.0,
    source: source(
        SourceKind::FromMemory,
        Confidence::Weak,
        Citation::WithCaveat(words::MINERAL_SPIRITS_DENSITY_SOURCE),
    ),
};

/// Density of petrol as a test fluid.
pub static TEST_PETROL_DENSITY: Constant = Constant {
    id: "test-petrol-density",
    name: words::TEST_PETROL_DENSITY,
    symbol: "rho_t",
    unit: "kg/m3",
    value: 745.0,
    source: source(
        SourceKind::CommonPractice,
        Confidence::Weak,
        Citation::WithCaveat(words::TEST_PETROL_DENSITY_SOURCE),
    ),
};

/// Viscosity of petrol.
pub static PETROL_VISCOSITY: Constant = Constant {
    id: "petrol-viscosity",
    name: words::PETROL_VISCOSITY,
    symbol: "mu_g",
    unit: "mPa s",
    value: 0.44,
    source: source(
        SourceKind::Dataset,
        Confidence::Secondary,
        Citation::Words(words::US_FUEL_PROPERTIES),
    ),
};

/// Viscosity of ethanol.
pub static ETHANOL_VISCOSITY: Constant = Constant {
    id: "ethanol-viscosity",
    name: words::ETHANOL_VISCOSITY,
    symbol: "mu_e",
    unit: "mPa s",
    value: 1.194,
    source: EQUATION_OF_STATE,
};

/// The rule by which the viscosities of the parts make that of a blend.
pub static VISCOSITY_RULE: Source =
    source(SourceKind::FromMemory, Confidence::Weak, Citation::WithCaveat(words::VISCOSITY_RULE));

/// Bulk modulus of fuel at the inlet of a high-pressure pump.
pub static FUEL_BULK_MODULUS: Constant = Constant {
    id: "fuel-bulk-modulus",
    name: words::FUEL_BULK_MODULUS,
    symbol: "K_0",
    unit: "MPa",
    value: 802.0,
    source: source(
        SourceKind::Library,
        Confidence::Checked,
        Citation::Words(words::FUEL_BULK_MODULUS_SOURCE),
    ),
};

/// How the bulk modulus grows with pressure.
pub static MURNAGHAN_EXPONENT: Constant = Constant {
    id: "murnaghan-exponent",
    name: words::MURNAGHAN_EXPONENT,
    symbol: "n",
    unit: "1",
    value: 12.0,
    source: source(
        SourceKind::Library,
        Confidence::Checked,
        Citation::Words(words::MURNAGHAN_EXPONENT_SOURCE),
    ),
};

/// What filling and leakage leave of the volume that a plunger sweeps.
pub static PLUNGER_EFFICIENCY: Constant = Constant {
    id: "plunger-efficiency",
    name: words::PLUNGER_EFFICIENCY,
    symbol: "eta_f",
    unit: "1",
    value: 0.85,
    source: source(
        SourceKind::FromMemory,
        Confidence::Weak,
        Citation::WithCaveat(words::PLUNGER_EFFICIENCY_SOURCE),
    ),
};

/// How far the efficiency of a plunger pump may be off either way.
pub static PLUNGER_EFFICIENCY_DOUBT: Constant = Constant {
    id: "plunger-efficiency-doubt",
    name: words::PLUNGER_EFFICIENCY_DOUBT,
    symbol: "d_eta",
    unit: "1",
    value: 0.05,
    source: PLUNGER_EFFICIENCY.source,
};

/// The largest commanded duty of port injectors.
pub static PORT_DUTY_LIMIT: Constant = Constant {
    id: "port-duty-limit",
    name: words::PORT_DUTY_LIMIT,
    symbol: "D_max",
    unit: "1",
    value: 0.85,
    source: source(
        SourceKind::Paper,
        Confidence::Weak,
        Citation::Words(words::PORT_DUTY_LIMIT_SOURCE),
    ),
};

/// The largest use of the window of direct injectors.
pub static WINDOW_LIMIT: Constant = Constant {
    id: "window-limit",
    name: words::WINDOW_LIMIT,
    symbol: "w_max",
    unit: "1",
    value: 0.85,
    source: TRADE,
};

/// The largest use of a high-pressure pump's delivery.
pub static PLUNGER_LIMIT: Constant = Constant {
    id: "plunger-limit",
    name: words::PLUNGER_LIMIT,
    symbol: "h_max",
    unit: "1",
    value: 0.85,
    source: TRADE,
};

/// The largest use of the low-pressure supply.
pub static SUPPLY_LIMIT: Constant = Constant {
    id: "supply-limit",
    name: words::SUPPLY_LIMIT,
    symbol: "s_max",
    unit: "1",
    value: 0.85,
    source: TRADE,
};

/// Fluids that flows are rated with.
pub static TEST_FLUIDS: [&Constant; 3] =
    [&N_HEPTANE_DENSITY, &MINERAL_SPIRITS_DENSITY, &TEST_PETROL_DENSITY];

/// Every constant of the hardware models.
pub static ALL: &[&Constant] = &[
    &AIR_GAS_CONSTANT,
    &AIR_HEAT_CAPACITY,
    &PETROL_HEAT_CAPACITY,
    &ETHANOL_HEAT_CAPACITY,
    &COOLING_REALISED,
    &N_HEPTANE_DENSITY,
    &MINERAL_SPIRITS_DENSITY,
    &TEST_PETROL_DENSITY,
    &PETROL_VISCOSITY,
    &ETHANOL_VISCOSITY,
    &FUEL_BULK_MODULUS,
    &MURNAGHAN_EXPONENT,
    &PLUNGER_EFFICIENCY,
    &PLUNGER_EFFICIENCY_DOUBT,
    &PORT_DUTY_LIMIT,
    &WINDOW_LIMIT,
    &PLUNGER_LIMIT,
    &SUPPLY_LIMIT,
];

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::HashSet;

    #[test]
    fn the_list_holds_every_constant_once() {
        let written = include_str!("constants.rs")
            .lines()
            .filter(|line| line.starts_with("pub static") && line.contains(": Constant ="))
            .count();
        let ids: HashSet<_> = ALL.iter().map(|constant| constant.id).collect();
        assert_eq!((ids.len(), ALL.len()), (written, written));
    }

    #[test]
    fn no_id_is_one_of_the_fuel_models() {
        let fuel: HashSet<_> = crate::fuel::constants::ALL.iter().map(|c| c.id).collect();
        assert!(ALL.iter().all(|constant| !fuel.contains(constant.id)));
    }
}
