//! The methods of the fill and of the blend.

use super::Topic;
use crate::message::Message;
use crate::message::keys::methods_fuel as keys;

const BEFORE: (&str, Message, &str) = ("V0", keys::VOLUME_TANK_BEFORE, "L");
const SHARE_BEFORE: (&str, Message, &str) = ("e0", keys::ETHANOL_SHARE_VOLUME, "");
const OF_A: (&str, Message, &str) = ("x_a", keys::VOLUME_FUEL_PUT, "L");
const OF_B: (&str, Message, &str) = ("x_b", keys::VOLUME_FUEL_B_PUT, "L");
const SHARE_A: (&str, Message, &str) = ("e_a", keys::ETHANOL_SHARE_FUEL, "");
const SHARE_B: (&str, Message, &str) = ("e_b", keys::ETHANOL_SHARE_FUEL_B, "");

pub(super) const TOPICS: &[Topic] = &[
    Topic {
        id: "mixing",
        title: keys::TITLE_MIXING,
        words: &[keys::MIXING_1, keys::MIXING_2],
        lines: |example| example.fill.clone(),
        picks: &[
            ("F", None),
            ("e_add", None),
            ("x_b", Some(keys::VOLUME_SECOND_TWO_FUELS_BEFORE)),
            ("v", None),
            ("X", Some(keys::LEVEL_BURN_DOWN_TANK_TOO)),
        ],
        glossary: &[
            BEFORE,
            SHARE_BEFORE,
            OF_A,
            OF_B,
            SHARE_A,
            SHARE_B,
            ("C", keys::CAPACITY_TANK, "L"),
            ("T", keys::ETHANOL_SHARE_WANTED, ""),
        ],
    },
    Topic {
        id: "worst",
        title: keys::TITLE_WORST,
        words: &[keys::WORST_1, keys::WORST_2],
        lines: |example| example.fill.clone(),
        picks: &[("v_low", None), ("v_high", None)],
        glossary: &[
            ("V0_low", keys::VOLUME_TANK_BEFORE_BLEND_GETS, "L"),
            ("V0_high", keys::VOLUME_TANK_BEFORE_BLEND_GETS_STRONGEST, "L"),
            ("e0_low", keys::LEAST_ETHANOL_SHARE_TANK_BEFORE, ""),
            ("e0_high", keys::LARGEST_ETHANOL_SHARE_TANK_BEFORE, ""),
            ("e_a_low", keys::LEAST_ETHANOL_SHARE_FUEL, ""),
            ("e_a_high", keys::LARGEST_ETHANOL_SHARE_FUEL, ""),
            ("e_b_low", keys::LEAST_ETHANOL_SHARE_FUEL_B, ""),
            ("e_b_high", keys::LARGEST_ETHANOL_SHARE_FUEL_B, ""),
            ("x_a", keys::VOLUME_FUEL_GOES_THEN, "L"),
            ("x_b", keys::VOLUME_FUEL_B_GOES_THEN, "L"),
        ],
    },
    Topic {
        id: "air-fuel-ratio",
        title: keys::TITLE_AIR_FUEL_RATIO,
        words: &[
            keys::AIR_FUEL_RATIO_1,
            keys::AIR_FUEL_RATIO_2,
            keys::AIR_FUEL_RATIO_3,
            keys::AIR_FUEL_RATIO_4,
        ],
        lines: |example| example.fill.clone(),
        picks: &[
            ("K", None),
            ("AFR_g", None),
            ("AFR_e", None),
            ("rho", None),
            ("AFR", None),
            ("m_V", None),
            ("λ_r", Some(keys::LAMBDA_OVER_INTENDED_CALIBRATION_OPEN)),
        ],
        glossary: &[
            ("v", keys::ETHANOL_SHARE_BLEND_VOLUME, ""),
            ("AFR_cal", keys::AIR_FUEL_RATIO_BLEND_CALIBRATION, ""),
            ("rho_cal", keys::DENSITY_BLEND, "kg/m³"),
        ],
    },
    Topic {
        id: "energy",
        title: keys::TITLE_ENERGY,
        words: &[keys::ENERGY_1],
        lines: |example| example.fill.clone(),
        picks: &[
            ("LHV_V", None),
            ("s", Some(keys::RANGE_WHAT_TANK_THEN)),
            ("cost", Some(keys::COST_FILL)),
            ("k", None),
            ("p_even", Some(keys::PRICE_BELOW_WHICH_STRONGER_TWO)),
        ],
        glossary: &[
            ("v", keys::ETHANOL_SHARE_BLEND_VOLUME, ""),
            ("V", keys::VOLUME_TANK, "L"),
            ("LHV_ref", keys::HEATING_VALUE_FUEL_CONSUMPTION_STATED, "MJ/L"),
            ("q_ref", keys::CONSUMPTION_ON_FUEL, "L/100 km"),
            ("V_add", keys::VOLUME_WAS_PUT, "L"),
            ("LHV_add", keys::HEATING_VALUE_WHAT_WAS_PUT, "MJ/L"),
            ("LHV_a", keys::HEATING_VALUE_FUEL_STRONGER, "MJ/L"),
            ("LHV_b", keys::HEATING_VALUE_FUEL_B_WEAKER, "MJ/L"),
            ("p_a", keys::PRICE_FUEL, "per L"),
            ("p_b", keys::PRICE_FUEL_B, "per L"),
            OF_A,
            OF_B,
        ],
    },
    Topic {
        id: "octane",
        title: keys::TITLE_OCTANE,
        words: &[keys::OCTANE_1, keys::OCTANE_2, keys::OCTANE_3],
        lines: |example| example.fill.clone(),
        picks: &[("RON", None), ("MON", None), ("AKI", None)],
        glossary: &[
            BEFORE,
            SHARE_BEFORE,
            OF_A,
            OF_B,
            SHARE_A,
            SHARE_B,
            ("c_g", keys::MOLES_LITRE_PETROL_BASE, "mol/L"),
            ("c_e", keys::MOLES_LITRE_ETHANOL, "mol/L"),
            ("RON_0", keys::RON_WHAT_TANK_BEFORE, ""),
            ("RON_a", keys::RON_FUEL, ""),
            ("RON_b", keys::RON_FUEL_B, ""),
            ("MON_0", keys::MON_WHAT_TANK_BEFORE, ""),
            ("MON_a", keys::MON_FUEL, ""),
            ("MON_b", keys::MON_FUEL_B, ""),
        ],
    },
];
