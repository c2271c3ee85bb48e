//! The methods of the fill and of the blend.

use super::Topic;

const BEFORE: (&str, &str, &str) = ("V0", "volume in the tank before", "L");
const SHARE_BEFORE: (&str, &str, &str) = ("e0", "its ethanol share by volume", "");
const OF_A: (&str, &str, &str) = ("x_a", "volume of fuel a that is put in", "L");
const OF_B: (&str, &str, &str) = ("x_b", "volume of fuel b that is put in", "L");
const SHARE_A: (&str, &str, &str) = ("e_a", "ethanol share of fuel a", "");
const SHARE_B: (&str, &str, &str) = ("e_b", "ethanol share of fuel b", "");

pub(super) const TOPICS: &[Topic] = &[
    Topic {
        id: "mixing",
        title: "Mixing, and what to put in",
        words: &[
            "Pouring adds litres of petrol and litres of ethanol, and burning takes both in the share in which they are there. So the share after a fill is a quotient of two sums.",
            "With several fuels, limits, octane and prices, all of it is linear in the litres: a linear programme finds the cheapest fill, or the proof that there is none. With two fuels and a full tank it comes to the formulas below.",
        ],
        lines: |example| example.fill.clone(),
        picks: &[
            ("F", None),
            ("e_add", None),
            ("x_b", Some("Volume of the second of two fuels, before rounding")),
            ("v", None),
            ("X", Some("Level to burn down to, where the tank is too full")),
        ],
        glossary: &[
            BEFORE,
            SHARE_BEFORE,
            OF_A,
            OF_B,
            SHARE_A,
            SHARE_B,
            ("C", "capacity of the tank", "L"),
            ("T", "ethanol share wanted", ""),
        ],
    },
    Topic {
        id: "worst",
        title: "Worst case of a fill, and the order of pouring",
        words: &[
            "The share grows with every uncertain strength, and between the levels at which a pour overflows it is monotone in the level. So the worst cases lie at the ends of the bands, and all of those are tried.",
            "What is poured to the click takes up the error of the gauge: the closer its share is to that of the tank, the less of the error is left in the blend. Every order is worked out, and the one with the narrowest worst case is proposed.",
        ],
        lines: |example| example.fill.clone(),
        picks: &[("v_low", None), ("v_high", None)],
        glossary: &[
            ("V0_low", "volume in the tank before, where the blend gets weakest", "L"),
            ("V0_high", "volume in the tank before, where the blend gets strongest", "L"),
            ("e0_low", "least ethanol share in the tank before", ""),
            ("e0_high", "largest ethanol share in the tank before", ""),
            ("e_a_low", "least ethanol share of fuel a", ""),
            ("e_a_high", "largest ethanol share of fuel a", ""),
            ("e_b_low", "least ethanol share of fuel b", ""),
            ("e_b_high", "largest ethanol share of fuel b", ""),
            ("x_a", "volume of fuel a that goes in then", "L"),
            ("x_b", "volume of fuel b that goes in then", "L"),
        ],
    },
    Topic {
        id: "air-fuel-ratio",
        title: "Air-fuel ratio, by mass",
        words: &[
            "A fuel takes the air that its carbon and hydrogen burn with, less the oxygen that it brings along. That is a matter of masses: averaged by volume, the ratio of a blend comes out wrong.",
            "The ratio of ethanol depends on the air that is reckoned with; texts that give 8.95 or 9.00 take another one.",
            "Water takes no air, methanol less than half of what petrol takes, and the ethers of petrol a sixth to a fifth less: each makes an engine leaner that is not corrected, and so the ends of all bands together are the worst cases. Which ether a petrol holds is not told: at one end it is ETBE, at the other MTBE, and half of each is expected. An oxygen content is turned into ethers by mass, after what ethanol and methanol bring.",
            "Metered open loop, injectors pass volume with the square root of density. How far lambda is off then follows from the two ratios and densities.",
        ],
        lines: |example| example.fill.clone(),
        picks: &[
            ("K", None),
            ("AFR_g", None),
            ("AFR_e", None),
            ("rho", None),
            ("AFR", None),
            ("m_V", None),
            ("λ_r", Some("Lambda over that intended by a calibration, open loop")),
        ],
        glossary: &[
            ("v", "ethanol share of the blend by volume", ""),
            ("AFR_cal", "air-fuel ratio of the blend that the calibration is written for", ""),
            ("rho_cal", "density of that blend", "kg/m³"),
        ],
    },
    Topic {
        id: "energy",
        title: "Energy, range and money, by volume",
        words: &[
            "Tanks and pumps count litres, so heating values are taken by volume: each part's density times its heating value by mass. A car is taken to need equal energy for equal distance, whatever the blend.",
        ],
        lines: |example| example.fill.clone(),
        picks: &[
            ("LHV_V", None),
            ("s", Some("Range with what is in the tank then")),
            ("cost", Some("Cost of a fill")),
            ("k", None),
            ("p_even", Some("Price below which the stronger of two fuels pays")),
        ],
        glossary: &[
            ("v", "ethanol share of the blend by volume", ""),
            ("V", "volume in the tank", "L"),
            ("LHV_ref", "heating value of the fuel that the consumption is stated for", "MJ/L"),
            ("q_ref", "consumption on that fuel", "L/100 km"),
            ("V_add", "volume that was put in", "L"),
            ("LHV_add", "heating value of what was put in", "MJ/L"),
            ("LHV_a", "heating value of fuel a, the stronger", "MJ/L"),
            ("LHV_b", "heating value of fuel b, the weaker", "MJ/L"),
            ("p_a", "price of fuel a", "per L"),
            ("p_b", "price of fuel b", "per L"),
            OF_A,
            OF_B,
        ],
    },
    Topic {
        id: "octane",
        title: "Octane by moles, a lower bound",
        words: &[
            "Ethanol is a small molecule: a tenth of the volume is far more than a tenth of the molecules. Averaged by moles, neat octane numbers come close to what engines measure on blends; averaged by volume they fall short.",
            "Of a fuel of which only the AKI is given, RON and MON are set apart by a sensitivity that goes by moles from 8 for petrol to 19 for neat ethanol: 93 AKI of an E10 is RON 98, 97 AKI of an E85 is RON 106. By the same rule no E85 has more than 100.4 AKI, and neat ethanol has 99.5.",
            "Measured blends lie somewhat above the molar rule, so the result counts as a floor. It can speak against a calibration, never for one. The high blending numbers that are quoted for ethanol belong to another rule and are not used.",
        ],
        lines: |example| example.fill.clone(),
        picks: &[("RON", None), ("MON", None), ("AKI", None)],
        glossary: &[
            BEFORE,
            SHARE_BEFORE,
            OF_A,
            OF_B,
            SHARE_A,
            SHARE_B,
            ("c_g", "moles in a litre of the petrol base", "mol/L"),
            ("c_e", "moles in a litre of ethanol", "mol/L"),
            ("RON_0", "RON of what is in the tank before", ""),
            ("RON_a", "RON of fuel a", ""),
            ("RON_b", "RON of fuel b", ""),
            ("MON_0", "MON of what is in the tank before", ""),
            ("MON_a", "MON of fuel a", ""),
            ("MON_b", "MON of fuel b", ""),
        ],
    },
];
