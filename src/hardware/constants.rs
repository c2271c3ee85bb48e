//! Every constant of the hardware models, with its source, in one table.

use crate::fuel::Constant;
use crate::source::{Confidence, Source, SourceKind};

const fn source(kind: SourceKind, confidence: Confidence, citation: &'static str) -> Source {
    Source { kind, citation, confidence }
}

const EQUATION_OF_STATE: Source = source(
    SourceKind::Library,
    Confidence::Checked,
    "CoolProp 8.0.0, reference equation of state at 20 degC and 101.325 kPa",
);

const TRADE: Source = source(
    SourceKind::CommonPractice,
    Confidence::Weak,
    "usual reserve when fuel systems are sized: common practice, no source",
);

/// Gas constant of dry air.
pub static AIR_GAS_CONSTANT: Constant = Constant {
    id: "air-gas-constant",
    name: "specific gas constant of dry air",
    symbol: "R_a",
    unit: "J/(kg K)",
    value: 287.05,
    source: source(
        SourceKind::FromMemory,
        Confidence::Weak,
        "from memory: ISO 2533:1975, standard atmosphere, 287.05287 J/(kg K)",
    ),
};

/// Heat capacity of air at constant pressure.
pub static AIR_HEAT_CAPACITY: Constant = Constant {
    id: "air-heat-capacity",
    name: "heat capacity of air at constant pressure",
    symbol: "c_p",
    unit: "kJ/(kg K)",
    value: 1.006,
    source: EQUATION_OF_STATE,
};

/// Heat capacity of liquid petrol.
pub static PETROL_HEAT_CAPACITY: Constant = Constant {
    id: "petrol-heat-capacity",
    name: "heat capacity of liquid petrol",
    symbol: "c_g",
    unit: "kJ/(kg K)",
    value: 2.1,
    source: source(
        SourceKind::FromMemory,
        Confidence::Weak,
        "from memory: 2.0 to 2.2 kJ/(kg K) at room temperature",
    ),
};

/// Heat capacity of liquid ethanol.
pub static ETHANOL_HEAT_CAPACITY: Constant = Constant {
    id: "ethanol-heat-capacity",
    name: "heat capacity of liquid ethanol",
    symbol: "c_e",
    unit: "kJ/(kg K)",
    value: 2.4,
    source: EQUATION_OF_STATE,
};

/// How much of the greatest possible charge cooling an engine with direct
/// injection shows.
pub static COOLING_REALISED: Constant = Constant {
    id: "cooling-realised",
    name: "share of the greatest possible charge cooling that direct injection shows",
    symbol: "k_c",
    unit: "1",
    value: 0.7,
    source: source(
        SourceKind::Paper,
        Confidence::Secondary,
        "SAE 2012-01-1275, Charge Cooling Effects on Knock Limits in SI DI Engines Using \
         Gasoline/Ethanol Blends: Part 1 (abstract: about 70 % for all blends)",
    ),
};

/// Density of n-heptane, a usual test fluid for injectors.
pub static N_HEPTANE_DENSITY: Constant = Constant {
    id: "n-heptane-density",
    name: "density of n-heptane at 20 degC",
    symbol: "rho_t",
    unit: "kg/m3",
    value: 683.82,
    source: EQUATION_OF_STATE,
};

/// Density of mineral spirits, a usual test fluid of workshops' benches.
pub static MINERAL_SPIRITS_DENSITY: Constant = Constant {
    id: "mineral-spirits-density",
    name: "density of mineral spirits at 20 degC",
    symbol: "rho_t",
    unit: "kg/m3",
    value: 770.0,
    source: source(
        SourceKind::FromMemory,
        Confidence::Weak,
        "from memory: about 760 to 790 kg/m3, by maker",
    ),
};

/// Density of petrol as a test fluid.
pub static TEST_PETROL_DENSITY: Constant = Constant {
    id: "test-petrol-density",
    name: "density of petrol that a flow was measured with",
    symbol: "rho_t",
    unit: "kg/m3",
    value: 745.0,
    source: source(
        SourceKind::CommonPractice,
        Confidence::Weak,
        "a middling petrol, of 720 to 775 kg/m3: common practice, no source",
    ),
};

/// Viscosity of petrol.
pub static PETROL_VISCOSITY: Constant = Constant {
    id: "petrol-viscosity",
    name: "dynamic viscosity of petrol (upper end of 0.37 to 0.44 cP at 60 degF)",
    symbol: "mu_g",
    unit: "mPa s",
    value: 0.44,
    source: source(
        SourceKind::Dataset,
        Confidence::Secondary,
        "US DOE Alternative Fuels Data Center, Fuel Property Comparison for Ethanol, Gasoline and \
         No. 2 Diesel, Table 2 (read in a copy)",
    ),
};

/// Viscosity of ethanol.
pub static ETHANOL_VISCOSITY: Constant = Constant {
    id: "ethanol-viscosity",
    name: "dynamic viscosity of ethanol at 20 degC",
    symbol: "mu_e",
    unit: "mPa s",
    value: 1.194,
    source: EQUATION_OF_STATE,
};

/// The rule by which the viscosities of the parts make that of a blend.
pub static VISCOSITY_RULE: Source = source(
    SourceKind::FromMemory,
    Confidence::Weak,
    "from memory: Arrhenius, ln mu = v ln mu_e + (1 - v) ln mu_g over volume shares; real blends \
     may lie 10 % off",
);

/// Bulk modulus of fuel at the inlet of a high-pressure pump.
pub static FUEL_BULK_MODULUS: Constant = Constant {
    id: "fuel-bulk-modulus",
    name: "isentropic bulk modulus of fuel at 60 degC and 0.6 MPa",
    symbol: "K_0",
    unit: "MPa",
    value: 802.0,
    source: source(
        SourceKind::Library,
        Confidence::Checked,
        "CoolProp 8.0.0, rho c^2 of ethanol; n-heptane 638, toluene 1118, and petrol between them",
    ),
};

/// How the bulk modulus grows with pressure.
pub static MURNAGHAN_EXPONENT: Constant = Constant {
    id: "murnaghan-exponent",
    name: "growth of the bulk modulus with pressure, dK/dp",
    symbol: "n",
    unit: "1",
    value: 12.0,
    source: source(
        SourceKind::Library,
        Confidence::Checked,
        "chosen against CoolProp 8.0.0: densities of ethanol, n-heptane and toluene along \
         isentropes from 20 and 60 degC within 0.05 % up to 20 MPa and 0.13 % up to 35 MPa",
    ),
};

/// What filling and leakage leave of the volume that a plunger sweeps.
pub static PLUNGER_EFFICIENCY: Constant = Constant {
    id: "plunger-efficiency",
    name: "share of the swept volume that filling and leakage leave",
    symbol: "eta_f",
    unit: "1",
    value: 0.85,
    source: source(
        SourceKind::FromMemory,
        Confidence::Weak,
        "from memory: 0.80 to 0.90 at middling speed and 150 to 200 bar; no published map is known",
    ),
};

/// How far the efficiency of a plunger pump may be off either way.
pub static PLUNGER_EFFICIENCY_DOUBT: Constant = Constant {
    id: "plunger-efficiency-doubt",
    name: "how far that share may be off either way",
    symbol: "d_eta",
    unit: "1",
    value: 0.05,
    source: PLUNGER_EFFICIENCY.source,
};

/// The largest commanded duty of port injectors.
pub static PORT_DUTY_LIMIT: Constant = Constant {
    id: "port-duty-limit",
    name: "largest commanded duty of port injectors",
    symbol: "D_max",
    unit: "1",
    value: 0.85,
    source: source(
        SourceKind::Paper,
        Confidence::Weak,
        "Motor magazine, Go With the Flow, July 2007: 80 to 85 % in original equipment; how it was \
         found is not said there",
    ),
};

/// The largest use of the window of direct injectors.
pub static WINDOW_LIMIT: Constant = Constant {
    id: "window-limit",
    name: "largest use of the injection window",
    symbol: "w_max",
    unit: "1",
    value: 0.85,
    source: TRADE,
};

/// The largest use of a high-pressure pump's delivery.
pub static PLUNGER_LIMIT: Constant = Constant {
    id: "plunger-limit",
    name: "largest use of a high-pressure pump's delivery",
    symbol: "h_max",
    unit: "1",
    value: 0.85,
    source: TRADE,
};

/// The largest use of the low-pressure supply.
pub static SUPPLY_LIMIT: Constant = Constant {
    id: "supply-limit",
    name: "largest use of the low-pressure supply at the voltage under load",
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

    #[test]
    fn what_was_not_looked_up_says_so() {
        let sources = ALL.iter().map(|constant| constant.source).chain([VISCOSITY_RULE]);
        for source in sources {
            if let Some(caveat) = source.caveat() {
                assert!(source.citation.contains(caveat), "{}", source.citation);
                assert_eq!(source.confidence, Confidence::Weak, "{}", source.citation);
            }
        }
    }
}
