//! What is asked of each kind of part.

use fillwright::document::{HardwareField, Mark, PartKind};
use fillwright::message::Message;
use fillwright::message::keys::hardware as keys;
use fillwright::message::keys::hardware_rows as rows;

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

const HOW_MANY: Row = Row::figure(HardwareField::Count, rows::COUNT).hint(rows::COUNT_HINT);
const RATED_PRESSURE: Row =
    Row::figure(HardwareField::RatedPressure, rows::RATED_PRESSURE).hint(rows::RATED_PRESSURE_HINT);
const TEST_DENSITY: Row =
    Row::figure(HardwareField::TestDensity, rows::TEST_DENSITY).hint(rows::TEST_DENSITY_HINT);
const USE_LIMIT: Row =
    Row::figure(HardwareField::UseLimit, rows::USE_LIMIT).hint(rows::USE_LIMIT_HINT);
const RATED_FLOW: Row =
    Row::figure(HardwareField::RatedFlow, rows::RATED_FLOW).hint(rows::RATED_FLOW_HINT);
const RATED_MASS: Row = Row::figure(HardwareField::RatedMassFlow, rows::RATED_MASS_FLOW)
    .hint(rows::RATED_MASS_FLOW_HINT);

static PORT_INJECTORS: [Row; 9] = [
    Row::figure(HardwareField::Count, rows::COUNT),
    RATED_FLOW.only(Mark::ByMass, false),
    RATED_MASS.only(Mark::ByMass, true),
    RATED_PRESSURE,
    TEST_DENSITY,
    Row::figure(HardwareField::RailPressure, rows::RAIL_PRESSURE).hint(rows::RAIL_PRESSURE_HINT),
    Row::figure(HardwareField::Voltage, rows::VOLTAGE).hint(rows::VOLTAGE_HINT),
    USE_LIMIT,
    Row::lines(HardwareField::DeadTime, rows::DEAD_TIME, 3).hint(rows::DEAD_TIME_HINT),
];

static DIRECT_INJECTORS: [Row; 10] = [
    Row::figure(HardwareField::Count, rows::COUNT).hint(rows::COUNT_DIRECT_INJECTORS_HINT),
    RATED_FLOW.only(Mark::ByMass, false),
    RATED_MASS.only(Mark::ByMass, true),
    RATED_PRESSURE,
    TEST_DENSITY,
    Row::figure(HardwareField::RailPressure, rows::RAIL_PRESSURE_DIRECT_INJECTORS),
    Row::figure(HardwareField::BackPressure, rows::BACK_PRESSURE).hint(rows::BACK_PRESSURE_HINT),
    Row::figure(HardwareField::Window, rows::WINDOW).hint(rows::WINDOW_HINT),
    Row::figure(HardwareField::OpeningOffset, rows::OPENING_OFFSET).hint(rows::OPENING_OFFSET_HINT),
    USE_LIMIT,
];

static PLUNGER_PUMP: [Row; 12] = [
    HOW_MANY,
    Row::figure(HardwareField::Bore, rows::BORE),
    Row::figure(HardwareField::Lift, rows::LIFT).hint(rows::LIFT_HINT),
    Row::figure(HardwareField::Lobes, rows::LOBES).hint(rows::LOBES_HINT),
    Row::figure(HardwareField::RailPressure, rows::RAIL_PRESSURE_PLUNGER_PUMP),
    Row::figure(HardwareField::DriveRatio, rows::DRIVE_RATIO).hint(rows::DRIVE_RATIO_HINT),
    Row::figure(HardwareField::InletPressure, rows::INLET_PRESSURE).hint(rows::INLET_PRESSURE_HINT),
    Row::figure(HardwareField::Efficiency, rows::EFFICIENCY).hint(rows::EFFICIENCY_HINT),
    Row::words(HardwareField::EfficiencyRange, rows::EFFICIENCY_RANGE)
        .hint(rows::EFFICIENCY_RANGE_HINT),
    Row::figure(HardwareField::DeadVolume, rows::DEAD_VOLUME).hint(rows::DEAD_VOLUME_HINT),
    Row::figure(HardwareField::BulkModulus, rows::BULK_MODULUS).hint(rows::BULK_MODULUS_HINT),
    USE_LIMIT,
];

static SUPPLY_PUMP: [Row; 3] = [
    HOW_MANY,
    Row::figure(HardwareField::Voltage, rows::VOLTAGE_SUPPLY_PUMP)
        .hint(rows::VOLTAGE_SUPPLY_PUMP_HINT),
    Row::lines(HardwareField::FlowTable, rows::FLOW_TABLE, 5).hint(rows::FLOW_TABLE_HINT),
];

static SUPPLY_LINE: [Row; 7] = [
    Row::figure(HardwareField::RailPressure, rows::RAIL_PRESSURE_SUPPLY_LINE)
        .hint(rows::RAIL_PRESSURE_HINT),
    Row::figure(HardwareField::OtherLosses, rows::OTHER_LOSSES).hint(rows::OTHER_LOSSES_HINT),
    Row::figure(HardwareField::LineLength, rows::LINE_LENGTH),
    Row::figure(HardwareField::LineBore, rows::LINE_BORE),
    Row::figure(HardwareField::LineRoughness, rows::LINE_ROUGHNESS).hint(rows::LINE_ROUGHNESS_HINT),
    Row::figure(HardwareField::LineRise, rows::LINE_RISE).hint(rows::LINE_RISE_HINT),
    USE_LIMIT,
];

static FLUID_NOZZLE: [Row; 6] = [
    HOW_MANY,
    RATED_FLOW,
    RATED_PRESSURE,
    Row::figure(HardwareField::TestDensity, rows::TEST_DENSITY)
        .hint(rows::TEST_DENSITY_FLUID_NOZZLE_HINT),
    Row::figure(HardwareField::FluidPressure, rows::FLUID_PRESSURE),
    Row::figure(HardwareField::Strength, rows::STRENGTH).hint(rows::STRENGTH_HINT),
];

const FROM: Row =
    Row::figure(HardwareField::FromSpeed, rows::FROM_SPEED).hint(rows::FROM_SPEED_HINT);
const TO: Row = Row::figure(HardwareField::ToSpeed, rows::TO_SPEED).hint(rows::TO_SPEED_HINT);

static POWER_LIMIT: [Row; 3] =
    [Row::figure(HardwareField::LimitPower, rows::LIMIT_POWER), FROM, TO];

static TORQUE_LIMIT: [Row; 3] =
    [Row::figure(HardwareField::LimitTorque, rows::LIMIT_TORQUE), FROM, TO];

static AIR_LIMIT: [Row; 1] =
    [Row::figure(HardwareField::LimitAir, rows::LIMIT_AIR).hint(rows::LIMIT_AIR_HINT)];

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
pub(super) fn marks_of(kind: PartKind) -> &'static [(Mark, Message)] {
    const BY_MASS: (Mark, Message) = (Mark::ByMass, keys::RATED_BY_MASS);
    const FIXED: (Mark, Message) = (Mark::FixedRail, keys::PRESSURE_IS_FIXED);
    match kind {
        PartKind::PortInjectors => &[BY_MASS, FIXED],
        PartKind::DirectInjectors => &[BY_MASS],
        PartKind::SupplyLine => &[FIXED, (Mark::InSeries, keys::IN_SERIES)],
        PartKind::FluidNozzle => &[(Mark::ByMass, keys::METHANOL_BY_MASS)],
        _ => &[],
    }
}
