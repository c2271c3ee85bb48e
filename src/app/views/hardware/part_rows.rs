//! What is asked of each kind of part.

use fillwright::document::{HardwareField, Mark, PartKind};

use super::slots::Row;

/// The kinds of parts, in the order in which fuel passes them backwards.
pub(super) const PARTS: [PartKind; 6] = [
    PartKind::PortInjectors,
    PartKind::DirectInjectors,
    PartKind::PlungerPump,
    PartKind::SupplyPump,
    PartKind::SupplyLine,
    PartKind::FluidNozzle,
];

/// The kinds of limits.
pub(super) const LIMITS: [PartKind; 3] =
    [PartKind::PowerLimit, PartKind::TorqueLimit, PartKind::AirLimit];

const HOW_MANY: Row = Row::figure(HardwareField::Count, "How many", "Equal ones; 1 where blank");
const RATED_PRESSURE: Row =
    Row::figure(HardwareField::RatedPressure, "Rated across", "A pressure difference");
const TEST_DENSITY: Row = Row::figure(
    HardwareField::TestDensity,
    "Density of the test fluid",
    "n-heptane 684, mineral spirits about 770 kg/m³",
);
const USE_LIMIT: Row = Row::figure(HardwareField::UseLimit, "Use at most", "85 % where blank");
const RATED_FLOW: Row = Row::figure(HardwareField::RatedFlow, "Rated flow of one", "Static");
const RATED_MASS: Row =
    Row::figure(HardwareField::RatedMassFlow, "Rated flow of one", "Static, by mass");

static PORT_INJECTORS: [Row; 9] = [
    Row::figure(HardwareField::Count, "How many", ""),
    RATED_FLOW.only(Mark::ByMass, false),
    RATED_MASS.only(Mark::ByMass, true),
    RATED_PRESSURE,
    TEST_DENSITY,
    Row::figure(HardwareField::RailPressure, "Rail pressure", "Above the manifold, unless fixed"),
    Row::figure(
        HardwareField::Voltage,
        "Voltage at the injector",
        "Loaded, for a table of dead times",
    ),
    USE_LIMIT,
    Row::lines(HardwareField::DeadTime, "Dead time", 3, "One time, or lines of voltage and time"),
];

static DIRECT_INJECTORS: [Row; 10] = [
    Row::figure(HardwareField::Count, "How many", "One per cylinder where blank"),
    RATED_FLOW.only(Mark::ByMass, false),
    RATED_MASS.only(Mark::ByMass, true),
    RATED_PRESSURE,
    TEST_DENSITY,
    Row::figure(HardwareField::RailPressure, "Rail pressure at full load", ""),
    Row::figure(
        HardwareField::BackPressure,
        "Pressure in the cylinder",
        "During injection; 10 bar where blank",
    ),
    Row::figure(HardwareField::Window, "Window to inject in", "Of crank angle; 210° where blank"),
    Row::figure(HardwareField::OpeningOffset, "From command to flow", "0.3 ms where blank"),
    USE_LIMIT,
];

static PLUNGER_PUMP: [Row; 12] = [
    HOW_MANY,
    Row::figure(HardwareField::Bore, "Plunger diameter", ""),
    Row::figure(HardwareField::Lift, "Stroke", "The cam's lift"),
    Row::figure(HardwareField::Lobes, "Lobes", "Strokes per turn of its cam"),
    Row::figure(HardwareField::RailPressure, "Rail pressure at full load", ""),
    Row::figure(
        HardwareField::DriveRatio,
        "Cam turns per crank turn",
        "0.5, a camshaft, where blank",
    ),
    Row::figure(HardwareField::InletPressure, "Pressure at its inlet", "5 bar where blank"),
    Row::figure(HardwareField::Efficiency, "Filling and leakage leave", "85 % where blank"),
    Row::words(HardwareField::EfficiencyRange, "They may leave", "From–to: 80–90"),
    Row::figure(HardwareField::DeadVolume, "Dead volume", "Times the stroke's; 1 where blank"),
    Row::figure(
        HardwareField::BulkModulus,
        "Bulk modulus of the fuel",
        "Usual for fuel where blank",
    ),
    USE_LIMIT,
];

static SUPPLY_PUMP: [Row; 3] = [
    HOW_MANY,
    Row::figure(HardwareField::Voltage, "Voltage at the pump", "Under load, not at rest"),
    Row::lines(
        HardwareField::FlowTable,
        "Measured flow",
        5,
        "Pressure and flow in each line; for several voltages, begin with a line of them",
    ),
];

static SUPPLY_LINE: [Row; 7] = [
    Row::figure(
        HardwareField::RailPressure,
        "Pressure to hold",
        "Above the manifold, unless fixed",
    ),
    Row::figure(HardwareField::OtherLosses, "Lost in filter and fittings", "None where blank"),
    Row::figure(HardwareField::LineLength, "Length of the line", ""),
    Row::figure(HardwareField::LineBore, "Its inner diameter", ""),
    Row::figure(HardwareField::LineRoughness, "Roughness", "Drawn tube where blank"),
    Row::figure(HardwareField::LineRise, "Rise from pump to rail", "None where blank"),
    USE_LIMIT,
];

static FLUID_NOZZLE: [Row; 6] = [
    HOW_MANY,
    RATED_FLOW,
    RATED_PRESSURE,
    Row::figure(HardwareField::TestDensity, "Density of the test fluid", "Water where blank"),
    Row::figure(HardwareField::FluidPressure, "Pressure of its pump", ""),
    Row::figure(HardwareField::Strength, "Methanol in the fluid", "By volume, unless ticked below"),
];

const FROM: Row = Row::figure(HardwareField::FromSpeed, "From", "Any speed where blank");
const TO: Row = Row::figure(HardwareField::ToSpeed, "To", "Any speed where blank");

static POWER_LIMIT: [Row; 3] =
    [Row::figure(HardwareField::LimitPower, "Power at the crank, at most", ""), FROM, TO];

static TORQUE_LIMIT: [Row; 3] =
    [Row::figure(HardwareField::LimitTorque, "Torque at the crank, at most", ""), FROM, TO];

static AIR_LIMIT: [Row; 1] = [Row::figure(
    HardwareField::LimitAir,
    "Air of the compressor, at most",
    "From its map, at the pressure ratio that is run",
)];

/// The fields of a kind of part.
pub(super) fn rows_of(kind: PartKind) -> &'static [Row] {
    match kind {
        PartKind::PortInjectors => &PORT_INJECTORS,
        PartKind::DirectInjectors => &DIRECT_INJECTORS,
        PartKind::PlungerPump => &PLUNGER_PUMP,
        PartKind::SupplyPump => &SUPPLY_PUMP,
        PartKind::SupplyLine => &SUPPLY_LINE,
        PartKind::FluidNozzle => &FLUID_NOZZLE,
        PartKind::PowerLimit => &POWER_LIMIT,
        PartKind::TorqueLimit => &TORQUE_LIMIT,
        PartKind::AirLimit => &AIR_LIMIT,
    }
}

/// What can be ticked of a kind of part.
pub(super) fn marks_of(kind: PartKind) -> &'static [(Mark, &'static str)] {
    const BY_MASS: (Mark, &str) = (Mark::ByMass, "Rated by mass");
    const FIXED: (Mark, &str) = (Mark::FixedRail, "The pressure is fixed, whatever the boost");
    match kind {
        PartKind::PortInjectors => &[BY_MASS, FIXED],
        PartKind::DirectInjectors => &[BY_MASS],
        PartKind::SupplyLine => &[FIXED, (Mark::InSeries, "Pumps feed one another, in series")],
        PartKind::FluidNozzle => &[(Mark::ByMass, "Methanol by mass")],
        _ => &[],
    }
}
