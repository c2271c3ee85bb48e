//! The methods of the tank between fills and of the fuel system.

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

const TAKEN_THERE: &str = "fuel that the whole engine takes there";
const PASSED: (&str, &str, &str) = ("s", "part of the fuel that passes here", "");
const SPEED: (&str, &str, &str) = ("N", "engine speed", "rpm");
const DENSITY: (&str, &str, &str) = ("rho", "density of the blend", "kg/m³");
const LIMIT: (&str, &str, &str) = ("L", "largest use that is allowed", "");
const LAMBDA: (&str, &str, &str) = ("lambda", "lambda at full load", "");
const RATIO: (&str, &str, &str) = ("AFR", "stoichiometric air-fuel ratio of the blend", "");

pub(super) const TOPICS: &[Topic] = &[
    Topic {
        id: "tank",
        title: "What is in the tank, between fills",
        words: &[
            "Level, share, consumption, what the gauge, the pump and the sensor always read high or low: all of it is followed together by four Kalman filters side by side, each of which believes another spread of what strong fuels hold. Readings shift the weight between them. Below is what the balance and each reading say by itself; the estimate weighs them by their errors.",
            "The 95 % band is what the readings make likely. Beside it stands what cannot be ruled out, by interval arithmetic; it cuts the band.",
            "The bands were tested in simulation: invented lives of cars whose truth is known, with errors drawn as people make them. They hold nine times in ten where the true spread of the fuels is twice the typed one, and 99 times in 100 where the typed one is honest. Four thousand particles in place of the filters did no better. They were not tested in the field.",
        ],
        lines: |example| example.tank.clone(),
        picks: &[
            ("c_a", Some("What a fuel holds on average, of its band")),
            ("e1", None),
            ("z_s", Some("Share by a sensor's frequency")),
            ("z_t", Some("Share by a tube test with salt water")),
            ("d", None),
        ],
        glossary: &[
            ("least", "least share that the fuel may hold", ""),
            ("likeliest", "share that is likeliest", ""),
            ("most", "largest share that it may hold", ""),
            ("V0", "volume in the tank before", "L"),
            ("e0", "its ethanol share by volume", ""),
            ("x_a", "volume of fuel a that was put in", "L"),
            ("c_a", "what fuel a holds on average", ""),
            ("f", "frequency of the sensor", "Hz"),
            ("f0", "its frequency without ethanol", "Hz"),
            ("A", "where the boundary stands in the tube", "mL"),
            ("L", "volume of pump, lines and rail", "L"),
            ("H_old", "heating value of the old blend", "MJ/L"),
            ("H_ref", "heating value of the fuel that the consumption is stated for", "MJ/L"),
            ("k", "consumption on that fuel", "L/100 km"),
        ],
    },
    Topic {
        id: "air-correction",
        title: "Air correction of a power curve",
        words: &[
            "A measured power is multiplied by a factor that takes it to the air of a standard day. The correction says so of engines whose power follows the air around. One that holds an absolute boost pressure is over-corrected: so as measured comes first, and a factor beyond 0.93 to 1.07 is pointed out.",
            "Example: 35 °C, 98 kPa, 40 % relative humidity.",
        ],
        lines: |example| example.corrections.clone(),
        picks: &[("CF", None)],
        glossary: &[
            ("p_dry", "pressure of the air without its vapour", "kPa"),
            ("p", "pressure of the air", "kPa"),
            ("t", "temperature of the air", "°C"),
            ("T", "temperature of the air", "K"),
        ],
    },
    Topic {
        id: "driveline",
        title: "Driveline loss, from wheels to crank",
        words: &[
            "The loss is a share of the power at the crank. The other convention adds a share of the power at the wheels; it is shown and never read as this one.",
        ],
        lines: |example| example.hardware.clone(),
        picks: &[("P_c", None), ("a", None)],
        glossary: &[
            ("P_w", "power at the wheels", "kW"),
            ("l", "driveline loss as a share of crank power", ""),
        ],
    },
    Topic {
        id: "demand",
        title: "What the engine takes",
        words: &[
            "Fuel follows from power and brake specific fuel consumption, brought to the blend by heating value. The air that the engine breathes gives a second, independent figure to compare with.",
        ],
        lines: |example| example.hardware.clone(),
        picks: &[("m", None), ("Q", None), ("m_a", None), ("m_b", None), ("m_f", None)],
        glossary: &[
            ("P", "power at the crank", "kW"),
            ("b", "brake specific fuel consumption", "g/kWh"),
            ("H_0", "heating value of the fuel that it is stated for", "MJ/kg"),
            ("H", "heating value of the blend", "MJ/kg"),
            ("g", "gain in efficiency with ethanol", ""),
            DENSITY,
            LAMBDA,
            RATIO,
            ("VE", "volumetric efficiency", ""),
            ("p_m", "absolute pressure in the manifold", "kPa"),
            ("V_d", "displacement", "L"),
            ("T", "temperature in the manifold", "K"),
            SPEED,
        ],
    },
    Topic {
        id: "injectors",
        title: "Injectors, port and direct",
        words: &[
            "A rated flow holds for one fluid at one pressure. By mass it goes with the square root of pressure and of density; a flow in cc of test fluid is none of petrol.",
            "Port injectors may open over the whole cycle but for their dead time; direct ones over their window. Both have least room where time per cycle is short, so the tightest speed of the whole curve is shown.",
        ],
        lines: |example| example.hardware.clone(),
        picks: &[
            ("q_1", None),
            ("D_1", Some("Duty of port injectors, as commanded")),
            ("R_1", Some("Reserve of port injectors before the limit")),
            ("t_2", Some("Time for direct injection")),
            ("i_2", None),
            ("U_2", None),
            ("R_2", Some("Reserve of direct injectors before the limit")),
            ("P_1", None),
        ],
        glossary: &[
            ("m_r", "rated flow by mass", "g/s"),
            ("dp", "pressure across the injector", "bar"),
            ("p_r", "pressure that it is rated at", "bar"),
            ("rho_t", "density of the fluid that it is rated with", "kg/m³"),
            DENSITY,
            ("m_1", TAKEN_THERE, "g/s"),
            ("m_2", TAKEN_THERE, "g/s"),
            PASSED,
            ("n", "number of injectors", ""),
            ("t_d", "dead time", "ms"),
            SPEED,
            LIMIT,
            ("W", "window for injection, of the crank", "°"),
            ("t_o", "offset for opening", "ms"),
            ("q_2", "flow of one direct injector held open", "g/s"),
            ("P", "highest power of the curve, at the crank", "kW"),
        ],
    },
    Topic {
        id: "pumps",
        title: "Pumps and lines",
        words: &[
            "A high-pressure pump gives so much for each turn of the crank, less what stays compressed in its bore. It is tightest at peak torque; injectors are at peak power.",
            "A supply pump is read from its own table of flow over pressure and voltage, at the pressure that regulator and line ask of it. Outside the table there is no figure, and the part cannot be judged.",
        ],
        lines: |example| example.hardware.clone(),
        picks: &[
            ("V_3", None),
            ("S_3", None),
            ("r_3", None),
            ("G_3", None),
            ("U_3", None),
            ("R_3", Some("Reserve of the high-pressure pump before the limit")),
            ("Q_4", Some("Fuel that the engine takes, by volume")),
            ("p_p_4", None),
            ("U_4", None),
            ("R_4", Some("Reserve of the supply before the limit")),
        ],
        glossary: &[
            ("pi", "ratio of circumference to diameter", ""),
            ("d", "bore", "mm"),
            ("h", "lift", "mm"),
            ("z", "lobes of the cam", ""),
            ("r", "turns of the cam for each turn of the crank", ""),
            SPEED,
            ("dp", "rise of pressure in the pump", "MPa"),
            ("K", "bulk modulus of the fuel at the inlet", "MPa"),
            DENSITY,
            ("c", "dead volume over the volume of a stroke", ""),
            ("eta", "share that filling and leakage leave", ""),
            ("m_3", TAKEN_THERE, "g/s"),
            ("m_4", TAKEN_THERE, "g/s"),
            PASSED,
            LIMIT,
            ("p_rail", "pressure at the regulator", "bar"),
            ("dp_line1", "loss in the line by its friction", "bar"),
            ("dp_other", "other losses", "bar"),
            ("T_4", "what the pumps give there, from their tables", "L/h"),
            ("C_4", "what the pumps give at the limit", "g/s"),
        ],
    },
    Topic {
        id: "fluid",
        title: "Injection fluid",
        words: &[
            "Injection fluid counts for nothing in a verdict: a fuel map leaned for a spray runs lean the moment the spray stops. What it would do stands beside.",
        ],
        lines: |example| example.hardware.clone(),
        picks: &[("k", None), ("lambda_w", None), ("lambda_s", None)],
        glossary: &[
            ("m_w", "flow of the fluid", "g/s"),
            ("A_w", "air that it burns with, by mass", ""),
            RATIO,
            LAMBDA,
        ],
    },
    Topic {
        id: "charge-cooling",
        title: "Charge cooling",
        words: &[
            "The most by which a fuel can cool the charge, if all of it evaporates there and takes all the heat from it; and what engines with direct injection show of that.",
            "Example: E30 at lambda 0.84.",
        ],
        lines: |_| cooling(),
        picks: &[("dT", None), ("dT_di", None)],
        glossary: &[
            ("h", "heat of vaporisation of the blend", "kJ/kg"),
            LAMBDA,
            RATIO,
            ("c_l", "heat capacity of the liquid", "kJ/(kg K)"),
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
    let most = lines.add("Largest cooling of the charge", "dT", &most, (1, "K"), &sources);
    let shown = number(COOLING_REALISED.symbol, COOLING_REALISED.value) * most;
    let sources = [COOLING_REALISED.source];
    lines.add("Cooling that direct injection shows", "dT_di", &shown, (1, "K"), &sources);
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
