//! The methods of the tank between fills and of the fuel system.

use crate::message::Message;
use crate::message::keys::methods_car as keys;
use crate::message::keys::workings;
use uom::si::available_energy::kilojoule_per_kilogram;
use uom::si::specific_heat_capacity::kilojoule_per_kilogram_kelvin;

use super::Topic;
use crate::hardware::Evaporation;
use crate::hardware::constants::{AIR_HEAT_CAPACITY, COOLING_REALISED};
use crate::message::keys::practice as words;
use crate::quantity::Share;
use crate::source::{Citation, Confidence, Source, SourceKind};
use crate::workings::{Lines, Working, number};

const HEAT_BALANCE: Source = Source {
    kind: SourceKind::Derivation,
    citation: Citation::Words(words::HEAT_BALANCE),
    confidence: Confidence::Checked,
};
/// The blend and the lambda of the example.
const COOLED_BY: f64 = 0.3;
const COOLED_AT: f64 = 0.84;

const TAKEN_THERE: Message = keys::FUEL_WHOLE_ENGINE_TAKES;
const PASSED: (&str, Message, &str) = ("s", keys::PART_FUEL_PASSES_HERE, "");
const SPEED: (&str, Message, &str) = ("N", keys::ENGINE_SPEED, "rpm");
const DENSITY: (&str, Message, &str) = ("rho", keys::DENSITY_BLEND, "kg/m³");
const LIMIT: (&str, Message, &str) = ("L", keys::LARGEST_USE_ALLOWED, "");
const LAMBDA: (&str, Message, &str) = ("lambda", keys::LAMBDA_FULL_LOAD, "");
const RATIO: (&str, Message, &str) = ("AFR", keys::STOICHIOMETRIC_AIR_FUEL_RATIO_BLEND, "");

pub(super) const TOPICS: &[Topic] = &[
    Topic {
        id: "tank",
        title: keys::TITLE_TANK,
        words: &[keys::TANK_1, keys::TANK_2, keys::TANK_3],
        lines: |example| example.tank.clone(),
        picks: &[
            ("c_a", Some(keys::WHAT_FUEL_HOLDS_ON_AVERAGE)),
            ("e1", None),
            ("z_s", Some(keys::SHARE_SENSOR_S_FREQUENCY)),
            ("z_t", Some(keys::SHARE_TUBE_TEST_SALT_WATER)),
            ("d", None),
        ],
        glossary: &[
            ("least", keys::LEAST_SHARE_FUEL_MAY_HOLD, ""),
            ("likeliest", keys::SHARE_LIKELIEST, ""),
            ("most", keys::LARGEST_SHARE_MAY_HOLD, ""),
            ("V0", keys::VOLUME_TANK_BEFORE, "L"),
            ("e0", keys::ETHANOL_SHARE_VOLUME, ""),
            ("x_a", keys::VOLUME_FUEL_WAS_PUT, "L"),
            ("c_a", keys::WHAT_FUEL_A_HOLDS_ON_AVERAGE, ""),
            ("f", keys::FREQUENCY_SENSOR, "Hz"),
            ("f0", keys::FREQUENCY_WITHOUT_ETHANOL, "Hz"),
            ("A", keys::BOUNDARY_STANDS_TUBE, "mL"),
            ("L", keys::VOLUME_PUMP_LINES_RAIL, "L"),
            ("H_old", keys::HEATING_VALUE_OLD_BLEND, "MJ/L"),
            ("H_ref", keys::HEATING_VALUE_FUEL_CONSUMPTION_STATED, "MJ/L"),
            ("k", keys::CONSUMPTION_ON_FUEL, "L/100 km"),
        ],
    },
    Topic {
        id: "air-correction",
        title: keys::TITLE_AIR_CORRECTION,
        words: &[keys::AIR_CORRECTION_1, keys::AIR_CORRECTION_2],
        lines: |example| example.corrections.clone(),
        picks: &[("CF", None)],
        glossary: &[
            ("p_dry", keys::PRESSURE_AIR_WITHOUT_VAPOUR, "kPa"),
            ("p", keys::PRESSURE_AIR, "kPa"),
            ("t", keys::TEMPERATURE_AIR, "°C"),
            ("T", keys::TEMPERATURE_AIR, "K"),
        ],
    },
    Topic {
        id: "driveline",
        title: keys::TITLE_DRIVELINE,
        words: &[keys::DRIVELINE_1],
        lines: |example| example.hardware.clone(),
        picks: &[("P_c", None), ("a", None)],
        glossary: &[
            ("P_w", keys::POWER_WHEELS, "kW"),
            ("l", keys::DRIVELINE_LOSS_SHARE_CRANK_POWER, ""),
        ],
    },
    Topic {
        id: "demand",
        title: keys::TITLE_DEMAND,
        words: &[keys::DEMAND_1],
        lines: |example| example.hardware.clone(),
        picks: &[("m", None), ("Q", None), ("m_a", None), ("m_b", None), ("m_f", None)],
        glossary: &[
            ("P", keys::POWER_CRANK, "kW"),
            ("b", keys::BRAKE_SPECIFIC_FUEL_CONSUMPTION, "g/kWh"),
            ("H_0", keys::HEATING_VALUE_FUEL_STATED, "MJ/kg"),
            ("H", keys::HEATING_VALUE_BLEND, "MJ/kg"),
            ("g", keys::GAIN_EFFICIENCY_ETHANOL, ""),
            DENSITY,
            LAMBDA,
            RATIO,
            ("VE", keys::VOLUMETRIC_EFFICIENCY, ""),
            ("p_m", keys::ABSOLUTE_PRESSURE_MANIFOLD, "kPa"),
            ("V_d", keys::DISPLACEMENT, "L"),
            ("T", keys::TEMPERATURE_MANIFOLD, "K"),
            SPEED,
        ],
    },
    Topic {
        id: "injectors",
        title: keys::TITLE_INJECTORS,
        words: &[keys::INJECTORS_1, keys::INJECTORS_2],
        lines: |example| example.hardware.clone(),
        picks: &[
            ("q_1", None),
            ("D_1", Some(keys::DUTY_PORT_INJECTORS_COMMANDED)),
            ("R_1", Some(keys::RESERVE_PORT_INJECTORS_BEFORE_LIMIT)),
            ("t_2", Some(keys::TIME_DIRECT_INJECTION)),
            ("i_2", None),
            ("U_2", None),
            ("R_2", Some(keys::RESERVE_DIRECT_INJECTORS_BEFORE_LIMIT)),
            ("P_1", None),
        ],
        glossary: &[
            ("m_r", keys::RATED_FLOW_MASS, "g/s"),
            ("dp", keys::PRESSURE_ACROSS_INJECTOR, "bar"),
            ("p_r", keys::PRESSURE_RATED, "bar"),
            ("rho_t", keys::DENSITY_FLUID_RATED, "kg/m³"),
            DENSITY,
            ("m_1", TAKEN_THERE, "g/s"),
            ("m_2", TAKEN_THERE, "g/s"),
            PASSED,
            ("n", keys::NUMBER_INJECTORS, ""),
            ("t_d", keys::DEAD_TIME, "ms"),
            SPEED,
            LIMIT,
            ("W", keys::WINDOW_INJECTION_CRANK, "°"),
            ("t_o", keys::OFFSET_OPENING, "ms"),
            ("q_2", keys::FLOW_ONE_DIRECT_INJECTOR_HELD, "g/s"),
            ("P", keys::HIGHEST_POWER_CURVE_CRANK, "kW"),
        ],
    },
    Topic {
        id: "pumps",
        title: keys::TITLE_PUMPS,
        words: &[keys::PUMPS_1, keys::PUMPS_2],
        lines: |example| example.hardware.clone(),
        picks: &[
            ("V_3", None),
            ("S_3", None),
            ("r_3", None),
            ("G_3", None),
            ("U_3", None),
            ("R_3", Some(keys::RESERVE_HIGH_PRESSURE_PUMP_BEFORE)),
            ("Q_4", Some(keys::FUEL_ENGINE_TAKES_VOLUME)),
            ("p_p_4", None),
            ("U_4", None),
            ("R_4", Some(keys::RESERVE_SUPPLY_BEFORE_LIMIT)),
        ],
        glossary: &[
            ("pi", keys::RATIO_CIRCUMFERENCE_DIAMETER, ""),
            ("d", keys::BORE, "mm"),
            ("h", keys::LIFT, "mm"),
            ("z", keys::LOBES_CAM, ""),
            ("r", keys::TURNS_CAM_EACH_TURN_CRANK, ""),
            SPEED,
            ("dp", keys::RISE_PRESSURE_PUMP, "MPa"),
            ("K", keys::BULK_MODULUS_FUEL_INLET, "MPa"),
            DENSITY,
            ("c", keys::DEAD_VOLUME_OVER_VOLUME_STROKE, ""),
            ("eta", keys::SHARE_FILLING_LEAKAGE_LEAVE, ""),
            ("m_3", TAKEN_THERE, "g/s"),
            ("m_4", TAKEN_THERE, "g/s"),
            PASSED,
            LIMIT,
            ("p_rail", keys::PRESSURE_REGULATOR, "bar"),
            ("dp_line1", keys::LOSS_LINE_FRICTION, "bar"),
            ("dp_other", keys::OTHER_LOSSES, "bar"),
            ("T_4", keys::WHAT_PUMPS_GIVE_FROM_THEIR, "L/h"),
            ("C_4", keys::WHAT_PUMPS_GIVE_LIMIT, "g/s"),
        ],
    },
    Topic {
        id: "fluid",
        title: keys::TITLE_FLUID,
        words: &[keys::FLUID_1],
        lines: |example| example.hardware.clone(),
        picks: &[("k", None), ("lambda_w", None), ("lambda_s", None)],
        glossary: &[
            ("m_w", keys::FLOW_FLUID, "g/s"),
            ("A_w", keys::AIR_BURNS_MASS, ""),
            RATIO,
            LAMBDA,
        ],
    },
    Topic {
        id: "charge-cooling",
        title: keys::TITLE_CHARGE_COOLING,
        words: &[keys::CHARGE_COOLING_1, keys::CHARGE_COOLING_2],
        lines: |_| cooling(),
        picks: &[("dT", None), ("dT_di", None)],
        glossary: &[
            ("h", keys::HEAT_VAPORISATION_BLEND, "kJ/kg"),
            LAMBDA,
            RATIO,
            ("c_l", keys::HEAT_CAPACITY_LIQUID, "kJ/(kg K)"),
        ],
    },
];

/// The cooling of the example's blend.
fn cooling() -> Vec<Working> {
    let blend = Evaporation::of_share(Share::clamped(COOLED_BY));
    let air = number("lambda", COOLED_AT)
        * number("AFR", blend.stoichiometric_afr)
        * number(AIR_HEAT_CAPACITY.symbol, AIR_HEAT_CAPACITY.value);
    let liquid = blend.liquid_heat_capacity.get::<kilojoule_per_kilogram_kelvin>();
    let most =
        number("h", blend.heat.get::<kilojoule_per_kilogram>()) / (air + number("c_l", liquid));
    let mut lines = Lines::default();
    let sources = [HEAT_BALANCE, AIR_HEAT_CAPACITY.source];
    let most = lines.add(workings::LARGEST_COOLING_CHARGE, "dT", &most, (1, "K"), &sources);
    let shown = number(COOLING_REALISED.symbol, COOLING_REALISED.value) * most;
    let sources = [COOLING_REALISED.source];
    lines.add(workings::COOLING_DIRECT_INJECTION_SHOWS, "dT_di", &shown, (1, "K"), &sources);
    lines.into_vec()
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::temperature_interval::kelvin;

    #[test]
    fn the_cooling_is_that_of_the_model() {
        let lines = cooling();
        let blend = Evaporation::of_share(Share::clamped(COOLED_BY));
        let most = blend.largest_cooling(COOLED_AT).get::<kelvin>();
        let likely = blend.likely_cooling(COOLED_AT).get::<kelvin>();
        approx::assert_relative_eq!(lines[0].value, most, max_relative = 1e-9);
        approx::assert_relative_eq!(lines[1].value, likely, max_relative = 1e-9);
    }
}
