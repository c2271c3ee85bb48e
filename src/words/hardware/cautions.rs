//! The cautions beside the verdict on a fuel system.

/// What stands beside the verdict.
pub const CAUTIONS: [&str; 5] = [
    "Under boost a lean mixture destroys pistons and valves within seconds.",
    "A rail pressure that falls is a lean mixture, whatever the injectors are told.",
    "Opening an injector beyond its limit gives no more fuel to rely on.",
    "A calculation is no calibration: verify it with a wideband sensor, the rail pressure and a knock log.",
    "No figure here says that an engine survives this power.",
];

/// Whose word comes first.
pub const RULES_FIRST: &str = "The word of whoever built the engine comes first, and so do the rules where you drive or race.";

/// What stands where injection fluid is mixed.
pub const FLUID_CAUTIONS: [&str; 3] = [
    "Methanol is toxic, through the skin and as vapour too, and burns with a flame that is hard to see: gloves, goggles, fresh air, nothing that can ignite it.",
    "Keep it in a closed container that says what is in it, out of reach of children.",
    "No calibration should depend on the spray without a fail-safe that acts by itself when the flow stops.",
];
